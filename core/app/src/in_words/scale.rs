//! What a scale can do, and what its test found, in words.

use super::units::StyleWords as _;
use crate::Note;
use crate::messages::editor_scale_test as say;
use laydown_domain::coat::scale::{AccuracyClass, Scale, ScaleAdvice};
use laydown_domain::coat::target::Sensitivity;
use laydown_domain::learning::repeatability::{
    FEWEST_LOADS, KnownWeightCheck, LOADS, Repeatability, RepeatabilityError,
};
use laydown_domain::units::{Grams, Style};

/// From which coats on a scale decides: what a glaze of usual sensitivity accepts is taken.
pub(crate) fn good_from(scale: &Scale, style: &Style) -> String {
    let tolerance = Sensitivity::Medium.tolerance();
    let mass = |grams: Grams| style.mass(grams, scale.step);
    say::good_from(mass(scale.decides_from(tolerance)), style.percent(tolerance, 0), mass(scale.tells_from(tolerance)))
}

/// What a class allows at a load, and whether a scale of this step can have it.
pub(crate) fn class_allows(class: AccuracyClass, load: Grams, scale: &Scale, style: &Style) -> Note {
    if !scale.classes().contains(&class) {
        return Note::attention(say::class_impossible(class.code()));
    }
    match class.permitted_error(load / scale.step) {
        Some(steps) => {
            let allowed = style.mass(scale.step * steps * 2.0, scale.step);
            Note::plain(say::class_allows(class.code(), allowed, style.mass(load, scale.step)))
        }
        None => Note::attention(say::class_impossible(class.code())),
    }
}

/// How well it repeats, and how sure that is.
pub(crate) fn repeats(found: &Repeatability, step: Grams, style: &Style) -> String {
    let fine = |grams: Grams| style.mass(grams, step / 10.0);
    let (low, high) = found.between;
    say::repeats(
        found.loads,
        style.mass(found.mean, step / 10.0),
        fine(found.standard_deviation),
        style.mass_number(low, step / 10.0),
        fine(high),
    )
}

/// Whether it repeats as well as its step promises.
pub(crate) fn repeats_as_its_step(found: &Repeatability, step: Grams) -> Note {
    // A display that only rounds scatters by less than half a step.
    if found.standard_deviation <= step / 2.0 {
        Note::plain(say::repeats_as_its_step())
    } else {
        Note::attention(say::repeats_worse())
    }
}

/// What it shows of a known weight.
pub(crate) fn known_weight(check: &KnownWeightCheck, step: Grams, style: &Style) -> Note {
    let (off, allowed) = (style.mass(check.error.abs(), step), style.mass(check.allowed, step));
    match (check.is_off(), check.error > Grams::ZERO) {
        (false, _) => Note::plain(say::known_right(off, allowed)),
        (true, true) => Note::attention(say::known_over(off, allowed)),
        (true, false) => Note::attention(say::known_under(off, allowed)),
    }
}

/// Why the readings are no test.
pub(crate) fn repeatability_refused(error: &RepeatabilityError, style: &Style, step: Grams) -> String {
    match *error {
        RepeatabilityError::TooFew { loads } => say::too_few(loads, LOADS.to_string(), FEWEST_LOADS.to_string()),
        RepeatabilityError::NoLoad { row } => say::no_load(row.to_string()),
        RepeatabilityError::Stray { row, reading } => say::stray(row.to_string(), style.mass(reading, step)),
    }
}

/// What a scale can say of the coat that is weighed, in a word or two.
pub(crate) fn fits(advice: ScaleAdvice) -> String {
    say::fits(advice.code())
}
