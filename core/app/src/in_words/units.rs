//! Numbers with words around them, and why a number, a code or a bucket's figures cannot be used.

use super::Sentence;
use crate::messages::units as say;
use laydown_domain::UnknownCode;
use laydown_domain::glaze::slurry::SlurryError;
use laydown_domain::kiln::piece_code::CodeError;
use laydown_domain::units::{DecimalMark, Laydown, SpecificGravity, Style, UnitError};

/// What a style writes with words and not only with the symbols of units.
pub(crate) trait StyleWords {
    /// A laydown with its unit, for example "5.5 g per 100 cm²" or "1.25 oz per 100 in²".
    fn laydown_with_unit(&self, laydown: Laydown) -> String;
    /// A fraction as a percentage with so many decimals, for example 0.07 as "7%".
    fn percent(&self, fraction: f64, decimals: usize) -> String;
    /// The unit of laydown, for example "g per 100 cm²".
    fn unit_of_laydown(&self) -> String;
}

impl StyleWords for Style {
    fn laydown_with_unit(&self, laydown: Laydown) -> String {
        say::laydown(self.laydown_number(laydown), self.unit_of_laydown())
    }

    fn percent(&self, fraction: f64, decimals: usize) -> String {
        say::percent(self.number(fraction * 100.0, decimals))
    }

    fn unit_of_laydown(&self) -> String {
        say::laydown_unit(self.mass.symbol(), self.area.symbol())
    }
}

/// The decimal mark of the language in use.
pub(crate) fn decimal_mark() -> DecimalMark {
    if say::decimal_mark() == "," { DecimalMark::Comma } else { DecimalMark::Point }
}

/// A number as it is, where the potter's own style is not at hand: with the decimal mark of the language.
pub(super) fn figures(number: f64) -> String {
    marked(number.to_string())
}

/// As [`figures`], with so many decimals.
fn rounded(number: f64, decimals: usize) -> String {
    marked(format!("{number:.decimals$}"))
}

fn marked(number: String) -> String {
    match decimal_mark() {
        DecimalMark::Point => number,
        DecimalMark::Comma => number.replace('.', ","),
    }
}

/// A doubt about a specific gravity that is thinner than any glaze in use, so that a slip shows.
pub(crate) fn thin_glaze(sg: SpecificGravity, style: &Style) -> Option<String> {
    sg.is_doubtful().then(|| say::very_thin_for_glaze(style.specific_gravity(sg)))
}

impl Sentence for UnitError {
    fn sentence(&self) -> String {
        match self {
            UnitError::Empty { what, example } => say::empty(what.code(), example),
            UnitError::NotANumber { what, text, example } => say::not_a_number(what.code(), text, example),
            UnitError::UnknownUnit { what, unit, example } => say::unknown_unit(what.code(), unit, example),
            UnitError::UsOrImperial { unit } => say::us_or_imperial(unit),
            UnitError::MixedUnits { text } => say::mixed_units(text),
            UnitError::TwoMarks { text } => say::two_marks(text),
            UnitError::ThousandsOrDecimal { text, whole, part, mark } => {
                say::thousands_or_decimal(text, whole, part, mark)
            }
            UnitError::SpaceInNumber { text } => say::space_in_number(text),
            UnitError::Negative { what } => say::negative(what.code()),
            UnitError::TooLarge { what } => say::too_large(what.code()),
            UnitError::NoTemperature { value } => say::no_temperature(figures(*value)),
            UnitError::NoHeavierThanWater { value } => say::no_heavier_than_water(rounded(*value, 2)),
            UnitError::TooThinForGlaze { value } => say::too_thin_for_glaze(rounded(*value, 3)),
            UnitError::TooHeavyForGlaze { value } => say::too_heavy_for_glaze(rounded(*value, 2)),
            UnitError::NoLaydown { value, most } => say::no_laydown(figures(*most), figures(*value)),
            UnitError::NoPowderDensity { value } => say::no_powder_density(rounded(*value, 2)),
        }
    }
}

impl Sentence for SlurryError {
    fn sentence(&self) -> String {
        match self {
            SlurryError::HeavierThanPowder { sg, density } => {
                say::heavier_than_powder(rounded(*sg, 2), rounded(*density, 2))
            }
            SlurryError::NoFraction { value } => say::no_fraction(figures(*value)),
            SlurryError::NothingToMix => say::nothing_to_mix(),
            SlurryError::EmptyVessel => say::empty_vessel(),
            SlurryError::TooUnsure => say::too_unsure(),
            SlurryError::NoVolume => say::no_volume(),
            SlurryError::WaterTemperature { celsius } => say::water_temperature(rounded(*celsius, 0)),
            SlurryError::Unit(error) => error.sentence(),
        }
    }
}

impl Sentence for UnknownCode {
    fn sentence(&self) -> String {
        say::unknown_code(&self.code, self.what)
    }
}

impl Sentence for CodeError {
    fn sentence(&self) -> String {
        match self {
            CodeError::Length => say::code_length(),
            CodeError::Character { character } => say::code_character(character),
            CodeError::Check => say::code_check(),
        }
    }
}
