//! How well a scale repeats itself: one load weighed again and again, as a potter can test it.

use statrs::distribution::{ChiSquared, ContinuousCDF};

use super::spread::Spread;
use crate::coat::scale::{AccuracyClass, Scale};
use crate::coat::verdict::NOISE;
use crate::units::Grams;

/// So many loads a test takes (OIML R 76-1, A.4.10 weighs ten times).
pub const LOADS: usize = 10;
/// The fewest that say anything of a spread. Common practice, no source.
pub const FEWEST_LOADS: usize = 5;
/// A reading this far from the middle one, as a fraction of it, is mistyped. Common practice, no source.
const STRAY: f64 = 0.05;
/// And so many steps at least. Common practice, no source.
const STRAY_STEPS: f64 = 20.0;

/// What a test found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Repeatability {
    /// How many loads.
    pub loads: usize,
    /// Mean of the readings.
    pub mean: Grams,
    /// Their sample standard deviation.
    pub standard_deviation: Grams,
    /// Where the scale's own standard deviation lies, 95 times in 100.
    pub between: (Grams, Grams),
}

/// Why readings are no test.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum RepeatabilityError {
    /// Too few.
    TooFew {
        /// How many there are.
        loads: usize,
    },
    /// A reading of nothing, or more than the scale weighs.
    NoLoad {
        /// Which, from 1.
        row: usize,
    },
    /// A reading far from the others.
    Stray {
        /// Which, from 1.
        row: usize,
        /// The reading.
        reading: Grams,
    },
}

impl Repeatability {
    /// From the readings of one load that was put on and taken off again and again. The interval is by the chi-square distribution of
    /// `(n − 1) s²/σ²` (NIST/SEMATECH e-Handbook, 7.2.3.1).
    ///
    /// # Errors
    /// When there are fewer than [`FEWEST_LOADS`], or one of them cannot be of the same load.
    pub fn of(readings: &[Grams], scale: &Scale) -> Result<Repeatability, RepeatabilityError> {
        let loads = readings.len();
        if loads < FEWEST_LOADS {
            return Err(RepeatabilityError::TooFew { loads });
        }
        let is_no_load = |reading: &Grams| !(reading.is_positive() && *reading <= scale.capacity);
        if let Some(at) = readings.iter().position(is_no_load) {
            return Err(RepeatabilityError::NoLoad { row: at + 1 });
        }
        let mut sorted: Vec<f64> = readings.iter().map(|reading| reading.value()).collect();
        sorted.sort_by(f64::total_cmp);
        let middle = sorted[loads / 2];
        let reach = (middle * STRAY).max(scale.step.value() * STRAY_STEPS);
        if let Some(at) = readings.iter().position(|reading| (reading.value() - middle).abs() > reach) {
            return Err(RepeatabilityError::Stray { row: at + 1, reading: readings[at] });
        }
        let spread = Spread::of(&sorted).ok_or(RepeatabilityError::TooFew { loads })?;
        Ok(Repeatability {
            loads,
            mean: Grams::new(spread.mean),
            standard_deviation: Grams::new(spread.sd),
            between: spread_between((loads - 1) as f64, spread.sd),
        })
    }
}

fn spread_between(freedom: f64, deviation: f64) -> (Grams, Grams) {
    let Ok(chi_square) = ChiSquared::new(freedom) else { return (Grams::ZERO, Grams::ZERO) };
    let end = |probability: f64| Grams::new(deviation * (freedom / chi_square.inverse_cdf(probability)).sqrt());
    (end(0.975), end(0.025))
}

/// A known weight on the scale, and whether what it shows is near enough.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct KnownWeightCheck {
    /// What it shows over what it should.
    pub error: Grams,
    /// How far it may be off: by its class in service, else by a step and two standard deviations.
    pub allowed: Grams,
}

impl KnownWeightCheck {
    /// Of a weight that is `known`, of which the scale shows `shown`. In service twice the error is allowed that is at the first
    /// verification (OIML R 76-1, 3.5.2); the verification interval is taken to be the step.
    pub fn of(known: Grams, shown: Grams, scale: &Scale, class: Option<AccuracyClass>) -> KnownWeightCheck {
        let by_class =
            class.and_then(|class| class.permitted_error(known / scale.step)).map(|steps| scale.step * steps * 2.0);
        let repeats = scale.repeatability.unwrap_or(Grams::ZERO) * 2.0;
        KnownWeightCheck { error: shown - known, allowed: by_class.unwrap_or(scale.step + repeats) }
    }

    /// Whether it is off by more than it may be.
    pub fn is_off(&self) -> bool {
        self.error.abs() > self.allowed + NOISE
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    fn scale() -> Scale {
        Scale::new(Grams::new(2_000.0), Grams::new(0.1), None, None).unwrap()
    }

    fn test(readings: &[f64]) -> Result<Repeatability, RepeatabilityError> {
        Repeatability::of(&readings.iter().copied().map(Grams::new).collect::<Vec<_>>(), &scale())
    }

    #[test]
    fn ten_loads_give_a_spread_and_how_sure_it_is() {
        let found = test(&[312.4, 312.5, 312.4, 312.3, 312.4, 312.6, 312.4, 312.3, 312.5, 312.4]).unwrap();
        assert_relative_eq!(found.mean.value(), 312.42, max_relative = 1e-12);
        assert_relative_eq!(found.standard_deviation.value(), 0.091_893_658, max_relative = 1e-6);
        // chi-square with 9 degrees of freedom: 19.023 and 2.700 (NIST/SEMATECH e-Handbook, 1.3.6.7.4).
        let ends = (0.091_893_658 * (9.0f64 / 19.023).sqrt(), 0.091_893_658 * (9.0f64 / 2.700).sqrt());
        assert_relative_eq!(found.between.0.value(), ends.0, max_relative = 1e-4);
        assert_relative_eq!(found.between.1.value(), ends.1, max_relative = 1e-4);
    }

    #[test]
    fn readings_that_are_all_alike_have_no_spread() {
        let found = test(&[50.0; 10]).unwrap();
        assert_eq!((found.standard_deviation, found.between), (Grams::ZERO, (Grams::ZERO, Grams::ZERO)));
    }

    #[test]
    fn what_is_no_test_is_refused_by_its_row() {
        assert_eq!(test(&[50.0; 4]), Err(RepeatabilityError::TooFew { loads: 4 }));
        assert_eq!(test(&[50.0, 50.0, 0.0, 50.0, 50.0]), Err(RepeatabilityError::NoLoad { row: 3 }));
        assert_eq!(test(&[50.0, 50.0, f64::NAN, 50.0, 50.0]), Err(RepeatabilityError::NoLoad { row: 3 }));
        assert_eq!(test(&[50.0, 5_000.0, 50.0, 50.0, 50.0]), Err(RepeatabilityError::NoLoad { row: 2 }));
        let stray = test(&[312.4, 312.5, 321.4, 332.4, 312.6]);
        assert_eq!(stray, Err(RepeatabilityError::Stray { row: 4, reading: Grams::new(332.4) }));
    }

    #[test]
    fn a_known_weight_is_held_against_the_class_or_the_step() {
        let check = |shown: f64, class| KnownWeightCheck::of(Grams::new(500.0), Grams::new(shown), &scale(), class);
        // 5,000 steps: class II allows half a step at first, a step in service; class III one and a half, three in service.
        assert!(!check(500.1, Some(AccuracyClass::High)).is_off() && check(500.2, Some(AccuracyClass::High)).is_off());
        assert!(!check(499.7, Some(AccuracyClass::Medium)).is_off());
        assert!(!check(499.9, None).is_off() && check(499.8, None).is_off());
    }
}
