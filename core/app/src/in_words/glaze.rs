//! Why a recipe or a bucket's figures cannot be used, and what can hurt in a material.

use super::units::{decimal_mark, figures};
use super::{Named, Sentence};
use crate::messages::{recipe as say, units};
use laydown_domain::glaze::bucket::BucketError;
use laydown_domain::glaze::flow_cup::OutsideCup;
use laydown_domain::glaze::material::Hazard;
use laydown_domain::glaze::recipe::{MOST_MATERIALS, RecipeError};
use laydown_domain::units::Style;

impl Sentence for RecipeError {
    fn sentence(&self) -> String {
        match self {
            RecipeError::NoAmount { line } => say::no_amount(line),
            RecipeError::WhichAmount { line } => say::which_amount(line),
            RecipeError::NoName { line } => say::no_name(line),
            RecipeError::LongName { line } => say::long_name(line),
            RecipeError::Figure { line, error } => say::figure(line, error.sentence()),
            RecipeError::Nothing => say::nothing(),
            RecipeError::TooMany => say::too_many(MOST_MATERIALS),
        }
    }
}

impl Sentence for BucketError {
    fn sentence(&self) -> String {
        let style = Style { decimal: decimal_mark(), ..Style::default() };
        match self {
            BucketError::AboveRim { depth } => units::above_rim(style.length(*depth)),
            BucketError::MoreWaterThanThereIs { water } => units::more_water_than_there_is(style.volume(*water)),
        }
    }
}

impl Sentence for OutsideCup {
    fn sentence(&self) -> String {
        let (cup, from, to) = (self.cup.name(), figures(self.from), figures(self.to));
        match self.better {
            Some(better) => units::outside_cup(cup, from, to, better.name()),
            None => units::outside_every_cup(cup, from, to),
        }
    }
}

/// What a material with this hazard does, and what to do against it.
pub(crate) fn hurts(hazard: Hazard) -> String {
    match hazard {
        Hazard::Silica => say::hurts_silica(),
        Hazard::Barium => say::hurts_barium(),
        Hazard::Manganese => say::hurts_manganese(),
        Hazard::Lithium => say::hurts_lithium(),
        Hazard::Cobalt => say::hurts_cobalt(),
        Hazard::Chromium => say::hurts_chromium(),
        Hazard::Nickel => say::hurts_nickel(),
        Hazard::Vanadium => say::hurts_vanadium(),
        Hazard::Copper => say::hurts_copper(),
        Hazard::Soluble => say::hurts_soluble(),
        Hazard::Lead => say::hurts_lead(),
        Hazard::Cadmium => say::hurts_cadmium(),
    }
}
