//! What bisque drinks, in words.

use super::Sentence;
use super::units::StyleWords as _;
use crate::Note;
use crate::messages::editor_bisque_lot as say;
use laydown_domain::bisque::{Pores, SoakError, Trend};
use laydown_domain::units::Style;

impl Sentence for SoakError {
    fn sentence(&self) -> String {
        match self {
            SoakError::NoWeight => say::no_weight(),
            SoakError::SoakedUnderDry => say::soaked_under_dry(),
            SoakError::TooMuch => say::too_much(),
            SoakError::SuspendedOverDry => say::suspended_over_dry(),
            SoakError::NoWater => say::no_water(),
        }
    }
}

/// What the weight in water says.
pub(crate) fn soaked_pores(pores: &Pores, style: &Style) -> String {
    say::pores(style.number(pores.bulk_density, 2), style.percent(pores.apparent_porosity, 0))
}

/// How a lot stands to those before it; nothing while they are too few.
pub(crate) fn trend_of_lots(trend: Trend, style: &Style) -> Option<Note> {
    let percent = |mean: f64| style.percent(mean, 1);
    match trend {
        Trend::TooFew => None,
        Trend::AsBefore { mean } => Some(Note::plain(say::as_before(percent(mean)))),
        Trend::More { mean } => Some(Note::attention(say::drinks_more(percent(mean)))),
        Trend::Less { mean } => Some(Note::attention(say::drinks_less(percent(mean)))),
    }
}
