//! Why a recipe or a bucket's figures cannot be used, and what can hurt in a material.

use super::Sentence;
use crate::messages::recipe as say;
use laydown_domain::glaze::material::Hazard;
use laydown_domain::glaze::recipe::{MOST_MATERIALS, RecipeError};

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
