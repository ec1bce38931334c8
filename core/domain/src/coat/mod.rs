//! One coat on one zone: what it should weigh, what the scale says, and what to do.

pub mod coverage;
pub mod dry;
pub mod scale;
pub mod slip;
pub mod target;
pub mod tile;
pub mod trust;
pub mod verdict;

use crate::glaze::slurry::{SgReading, SlurryError, SolidsFraction, solids_fraction};
use crate::units::{Grams, Laydown, PowderDensity};

/// More dry glaze than a bisque wall can hold, in grams per 100 cm². Common practice, no source.
pub const MOST_LAYDOWN: Laydown = Laydown::new(25.0);

/// Dry glaze per gram of the bucket, and how sure that is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Solids {
    /// The fraction itself.
    pub fraction: SolidsFraction,
    /// One standard uncertainty, as a fraction of it.
    pub relative_uncertainty: f64,
}

impl Solids {
    /// From a specific gravity. Only the reading's uncertainty counts: an error of the powder's density is the same for
    /// the control piece and for today's piece, and cancels.
    ///
    /// # Errors
    /// When the slurry is as heavy as its powder.
    pub fn of(reading: SgReading, powder: PowderDensity) -> Result<Self, SlurryError> {
        let sg = reading.sg.value();
        Ok(Self {
            fraction: solids_fraction(reading.sg, powder)?,
            relative_uncertainty: reading.standard_uncertainty / (sg * (sg - 1.0)),
        })
    }

    /// Dry glaze in `wet` grams of the bucket.
    pub fn dry(&self, wet: Grams) -> Grams {
        wet * self.fraction.value()
    }

    /// Grams of the bucket that hold `dry` glaze.
    pub fn wet(&self, dry: Grams) -> Grams {
        dry / self.fraction.value()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::SpecificGravity;
    use approx::assert_relative_eq;

    #[test]
    fn uncertainty_of_solids_is_the_slope_of_the_formula() {
        let fraction =
            |sg: f64| solids_fraction(SpecificGravity::new(sg).unwrap(), PowderDensity::default()).unwrap().value();
        let slope = (fraction(1.4501) - fraction(1.4499)) / 0.000_2;
        let reading = SgReading { sg: SpecificGravity::USUAL, standard_uncertainty: 0.01 };
        let solids = Solids::of(reading, PowderDensity::default()).unwrap();
        assert_relative_eq!(solids.relative_uncertainty, 0.01 * slope / fraction(1.45), max_relative = 1e-6);
    }
}
