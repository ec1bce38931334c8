//! What can hurt in a glazing studio, in words.

use crate::messages::cautions as say;
use laydown_domain::caution::Caution;

/// What the caution is about.
pub(crate) fn caution_title(caution: Caution) -> String {
    match caution {
        Caution::Dust => say::dust(),
        Caution::Materials => say::materials(),
        Caution::Spraying => say::spraying(),
        Caution::Food => say::food(),
        Caution::Crazing => say::crazing(),
        Caution::Edges => say::edges(),
        Caution::Kiln => say::kiln(),
    }
}

/// What to mind, and whom to ask.
pub(crate) fn caution_text(caution: Caution) -> String {
    match caution {
        Caution::Dust => say::dust_text(),
        Caution::Materials => say::materials_text(),
        Caution::Spraying => say::spraying_text(),
        Caution::Food => say::food_text(),
        Caution::Crazing => say::crazing_text(),
        Caution::Edges => say::edges_text(),
        Caution::Kiln => say::kiln_text(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_caution_says_whom_to_ask() {
        let askable = ["rules", "data sheet", "licensed", "laboratory", "manual", "protection", "guess"];
        for caution in Caution::ALL {
            assert!(askable.iter().any(|word| caution_text(*caution).contains(word)), "{caution:?}");
        }
    }

    #[test]
    fn no_glaze_is_ever_called_safe() {
        for caution in Caution::ALL {
            let text = caution_text(*caution);
            assert!(!text.contains("food safe") && !text.contains("food-safe"));
        }
    }
}
