//! Bisque before it is glazed: how much water it drinks, and whether water is still in it.

use crate::coded::coded;
use crate::units::Grams;

/// Standard uncertainty of blotting a soaked piece, as a fraction of its dry weight. Common practice, no source.
const BLOTTING: f64 = 0.002;
/// More than any bisque drinks, as a fraction of its dry weight. Common practice, no source.
pub const MOST_ABSORPTION: f64 = 0.4;
/// What bisque fired to cone 06 to 04 usually drinks, as fractions of its dry weight (T. Buck, Clayart, 14 August 1999).
pub const USUAL_ABSORPTION: (f64, f64) = (0.06, 0.09);
/// Lots differ by less than this by chance, as a fraction of the dry weight: one standard deviation. Common practice, no source.
const LOT_TO_LOT: f64 = 0.003;
/// So many earlier lots say what is usual.
const EARLIER_LOTS: usize = 8;
/// The fewest bare pieces that say what a form usually weighs.
pub const FEWEST_BARE: usize = 5;
/// How far bare pieces of one form spread where only their usual weight is known, as a fraction: one standard deviation. Common
/// practice, no source.
const BARE_SPREAD: f64 = 0.03;
/// Water under this fraction of a piece is not worth a word. Common practice, no source.
const LEAST_WATER: f64 = 0.01;
/// From the median of the distances to one standard deviation of a normal distribution.
const MEDIAN_DISTANCE_TO_DEVIATION: f64 = 1.4826;

coded! {
    /// How bisque was filled with water.
    "soaking" Soaking {
        /// Boiled for five hours and left in the water for a day, as ASTM C373 does.
        Boiled = "boil",
        /// A day in cold water: fills fewer pores.
        Cold = "cold",
        /// Under vacuum: fills the most.
        Vacuum = "vacuum",
    }
}

/// A piece of bisque weighed dry and soaked, and hanging in water where that was done.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SoakedPiece {
    /// Bone dry.
    pub dry: Grams,
    /// Soaked, and blotted with a damp cloth.
    pub soaked: Grams,
    /// Soaked, hanging in water.
    pub suspended: Option<Grams>,
}

/// Why weights are not those of a soaked piece.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub enum SoakError {
    /// No dry weight.
    NoWeight,
    /// Soaked it weighs less than dry.
    SoakedUnderDry,
    /// It drinks more than any bisque.
    TooMuch,
    /// Hanging in water it weighs as much as dry: nothing that sinks does.
    SuspendedOverDry,
    /// Water that is lighter or heavier than water.
    NoWater,
}

/// How much water bisque drinks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Absorption {
    /// Water over dry weight.
    pub fraction: f64,
    /// One standard uncertainty of it.
    pub standard_uncertainty: f64,
    /// What hanging it in water adds.
    pub pores: Option<Pores>,
}

/// What the weight in water says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pores {
    /// Volume with its pores, ml.
    pub exterior_volume: f64,
    /// Open pores over that volume.
    pub apparent_porosity: f64,
    /// Dry weight over that volume, g/ml.
    pub bulk_density: f64,
    /// Relative density of what is not open pores.
    pub apparent_specific_gravity: f64,
}

impl SoakedPiece {
    /// By the formulas of ASTM C373: absorption `(M − D)/D`, exterior volume `(M − S)/ρ`, apparent porosity `(M − D)/(M − S)`, bulk
    /// density `D/V`, apparent specific gravity `D/(D − S)`. `water_density` in g/ml; `step` is the scale's, each reading being
    /// rounded to it (JCGM 100:2008, F.2.2.1).
    ///
    /// # Errors
    /// When the weights cannot be.
    pub fn absorption(&self, water_density: f64, step: Grams) -> Result<Absorption, SoakError> {
        // As they are stored.
        let (dry, soaked) = (self.dry.as_stored(), self.soaked.as_stored());
        if !dry.is_positive() {
            return Err(SoakError::NoWeight);
        }
        if soaked < dry {
            return Err(SoakError::SoakedUnderDry);
        }
        if !(0.9..=1.1).contains(&water_density) {
            return Err(SoakError::NoWater);
        }
        let fraction = (soaked - dry) / dry;
        if fraction > MOST_ABSORPTION {
            return Err(SoakError::TooMuch);
        }
        let rounding = step.value() / 12f64.sqrt() / dry.value();
        let pores = self.suspended.map(|suspended| pores(dry, soaked, suspended, water_density)).transpose()?;
        Ok(Absorption {
            fraction,
            standard_uncertainty: rounding.hypot(rounding * (1.0 + fraction)).hypot(BLOTTING),
            pores,
        })
    }
}

/// What the weight in water says of a piece that weighs so much dry and soaked.
fn pores(dry: Grams, soaked: Grams, suspended: Grams, water_density: f64) -> Result<Pores, SoakError> {
    if !(suspended >= Grams::ZERO && suspended < dry) {
        return Err(SoakError::SuspendedOverDry);
    }
    let displaced = soaked - suspended;
    let exterior_volume = displaced.value() / water_density;
    Ok(Pores {
        exterior_volume,
        apparent_porosity: (soaked - dry) / displaced,
        bulk_density: dry.value() / exterior_volume,
        apparent_specific_gravity: dry / (dry - suspended),
    })
}

/// How a lot stands to those before it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Trend {
    /// There are too few to say.
    TooFew,
    /// It drinks as the others did.
    AsBefore {
        /// The mean of the earlier lots.
        mean: f64,
    },
    /// It drinks more: coats take up more in the same dip.
    More {
        /// The mean of the earlier lots.
        mean: f64,
    },
    /// It drinks less.
    Less {
        /// The mean of the earlier lots.
        mean: f64,
    },
}

/// Whether a lot that drinks `latest` differs from those before it, the newest first, by more than 95% of chance: the mean of the
/// newest eight, give or take twice what one lot differs from it.
pub fn trend(latest: f64, earlier: &[f64]) -> Trend {
    let earlier = &earlier[..earlier.len().min(EARLIER_LOTS)];
    if earlier.len() < 2 {
        return Trend::TooFew;
    }
    let count = earlier.len() as f64;
    let mean = earlier.iter().sum::<f64>() / count;
    let squares: f64 = earlier.iter().map(|lot| (lot - mean).powi(2)).sum();
    let spread = (squares / (count - 1.0)).sqrt().max(LOT_TO_LOT) * (1.0 + 1.0 / count).sqrt();
    match latest - mean {
        off if off > 2.0 * spread => Trend::More { mean },
        off if off < -2.0 * spread => Trend::Less { mean },
        _ => Trend::AsBefore { mean },
    }
}

/// What a bare, dry piece of a form usually weighs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UsualBare {
    /// The weight.
    pub weight: Grams,
    /// One standard deviation from piece to piece.
    pub spread: Grams,
}

impl UsualBare {
    /// From pieces that were weighed bare: their median, and the median of the distances from it, so that a few wet or mistyped ones
    /// change little. `None` for fewer than [`FEWEST_BARE`].
    pub fn of(pieces: &[Grams]) -> Option<UsualBare> {
        if pieces.len() < FEWEST_BARE || !pieces.iter().all(|piece| piece.is_positive()) {
            return None;
        }
        let weight = median(pieces.iter().map(|piece| piece.value()).collect());
        let distance = median(pieces.iter().map(|piece| (piece.value() - weight).abs()).collect());
        let spread = Grams::new((distance * MEDIAN_DISTANCE_TO_DEVIATION).max(weight * LEAST_WATER / 2.0));
        Some(UsualBare { weight: Grams::new(weight), spread })
    }

    /// From the weight that a form is said to have.
    pub fn said(weight: Grams) -> UsualBare {
        UsualBare { weight, spread: weight * BARE_SPREAD }
    }

    /// The water that may be in a piece which weighs `bare`, where it is heavier than the form's pieces are by more than two standard
    /// deviations. `most` is what its bisque drinks, as a fraction: more than that is a heavier pot, and no water.
    pub fn water_in(&self, bare: Grams, most: Option<f64>) -> Option<Grams> {
        let over = bare - self.weight;
        let could_be_water = self.weight * most.unwrap_or(MOST_ABSORPTION) + self.spread * 2.0;
        let is_wet = over > self.spread * 2.0 && over > self.weight * LEAST_WATER && over <= could_be_water;
        is_wet.then_some(over)
    }
}

fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    let middle = values.len() / 2;
    if values.len().is_multiple_of(2) { (values[middle - 1] + values[middle]) / 2.0 } else { values[middle] }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use proptest::prelude::*;

    fn piece(dry: f64, soaked: f64, suspended: Option<f64>) -> SoakedPiece {
        SoakedPiece { dry: Grams::new(dry), soaked: Grams::new(soaked), suspended: suspended.map(Grams::new) }
    }

    fn found(piece: SoakedPiece) -> Result<Absorption, SoakError> {
        piece.absorption(1.0, Grams::new(0.1))
    }

    #[test]
    fn impossible_weights_are_refused() {
        assert_eq!(found(piece(0.0, 10.0, None)), Err(SoakError::NoWeight));
        assert_eq!(found(piece(f64::NAN, 10.0, None)), Err(SoakError::NoWeight));
        assert_eq!(found(piece(100.0, 99.9, None)), Err(SoakError::SoakedUnderDry));
        assert_eq!(found(piece(100.0, f64::NAN, None)), Err(SoakError::SoakedUnderDry));
        assert_eq!(found(piece(100.0, 1_080.0, None)), Err(SoakError::TooMuch));
        // Printed in a worked example with 200% porosity.
        assert_eq!(found(piece(10.0, 14.0, Some(12.0))), Err(SoakError::SuspendedOverDry));
        assert_eq!(piece(100.0, 108.0, None).absorption(0.0, Grams::new(0.1)), Err(SoakError::NoWater));
    }

    #[test]
    fn a_coarse_scale_is_less_sure_of_it() {
        let sure =
            |step: f64| piece(100.0, 108.0, None).absorption(1.0, Grams::new(step)).unwrap().standard_uncertainty;
        assert!(sure(0.1) < sure(1.0) && sure(0.01) >= BLOTTING);
    }

    #[test]
    fn a_lot_is_held_against_those_before_it() {
        assert_eq!(trend(0.08, &[0.081]), Trend::TooFew);
        assert_eq!(trend(0.080, &[0.081, 0.079]), Trend::AsBefore { mean: 0.08 });
        assert!(matches!(trend(0.095, &[0.081, 0.079, 0.080]), Trend::More { .. }));
        assert!(matches!(trend(0.065, &[0.081, 0.079, 0.080]), Trend::Less { .. }));
        // Lots that always differed say little of one that does.
        assert!(matches!(trend(0.095, &[0.10, 0.07, 0.085]), Trend::AsBefore { .. }));
    }

    #[test]
    fn rinsed_bisque_is_heavier_than_its_form() {
        let bare: Vec<Grams> = [310.0, 314.0, 306.0, 312.0, 309.0, 311.0].map(Grams::new).to_vec();
        let usual = UsualBare::of(&bare).unwrap();
        assert_eq!(usual.weight, Grams::new(310.5));
        assert_eq!(usual.water_in(Grams::new(312.0), None), None);
        assert_eq!(usual.water_in(Grams::new(325.5), Some(0.08)), Some(Grams::new(15.0)));
        // More than it can drink: another pot.
        assert_eq!(usual.water_in(Grams::new(372.0), Some(0.08)), None);
        assert_eq!(UsualBare::of(&bare[..4]), None);
        assert_eq!(UsualBare::said(Grams::new(310.0)).water_in(Grams::new(320.0), None), None);
        assert!(UsualBare::said(Grams::new(310.0)).water_in(Grams::new(330.0), None).is_some());
    }

    #[test]
    fn a_few_wet_ones_do_not_make_wet_usual() {
        let bare = [310.0, 314.0, 330.0, 312.0, 309.0, 311.0, 333.0].map(Grams::new);
        let usual = UsualBare::of(&bare).unwrap();
        assert!(usual.water_in(Grams::new(330.0), Some(0.08)).is_some(), "{usual:?}");
    }

    proptest! {
        /// Porosity is absorption times bulk density over the water's density.
        #[test]
        fn what_hangs_in_water_fits_together(dry in 20.0..900.0f64, drinks in 0.0..0.3f64, lift in 0.3..0.7f64, water in 0.99..1.0f64) {
            let piece = piece(dry, dry * (1.0 + drinks), Some(dry * lift));
            let found = piece.absorption(water, Grams::new(0.01)).unwrap();
            let pores = found.pores.unwrap();
            assert_relative_eq!(pores.apparent_porosity, found.fraction * pores.bulk_density / water, epsilon = 1e-12);
        }
    }
}
