//! What a piece weighed again bone dry says, in words.

use crate::messages::editor_dry_weight as say;
use laydown_domain::coat::coverage::NORMAL_95;
use laydown_domain::coat::dry::{DryError, DryGlaze};
use laydown_domain::units::{Grams, Style};

/// "10.5 ±0.3 g", 95 times in 100; to the scale's `step`.
pub(crate) fn with_doubt(found: &DryGlaze, style: &Style, step: Grams) -> String {
    let doubt = found.standard_uncertainty * NORMAL_95;
    say::with_doubt(style.mass_number(found.dry, step), style.mass(doubt, step))
}

/// Why the dry weight cannot be taken.
pub(crate) fn dry_refused(error: &DryError, style: &Style, step: Grams) -> String {
    let mass = |grams: &Grams| style.mass(*grams, step);
    match error {
        DryError::NoBare => say::no_bare(),
        DryError::NotOverBare { bare } => say::not_over_bare(mass(bare)),
        DryError::NotUnderWet { wet } => say::not_under_wet(mass(wet)),
        DryError::OverCapacity { capacity } => say::over_capacity(mass(capacity)),
    }
}
