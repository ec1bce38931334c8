//! The scale: how sure a net weight is, and whether the scale can decide at all.

use super::coverage::NORMAL_95;
use super::verdict::{NOISE, whole_steps};
use crate::coded::coded;
use crate::units::Grams;

/// Half-widths that must fit into the tolerance for the scale to decide comfortably.
const COMFORTABLE: f64 = 4.0;

/// A scale as the potter uses it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scale {
    /// The most it weighs.
    pub capacity: Grams,
    /// The step of its display.
    pub step: Grams,
    /// The least it should be asked to weigh, if its maker says so.
    pub minimum: Option<Grams>,
    /// Standard deviation of one load weighed again and again, if tested.
    pub repeatability: Option<Grams>,
}

/// Why a scale cannot be.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum ScaleError {
    /// No step.
    NoStep,
    /// No capacity, or fewer than ten steps of it.
    NoCapacity,
    /// A minimum that is negative or not under the capacity.
    Minimum,
    /// A repeatability that is negative or larger than any scale's.
    Repeatability,
}

coded! {
    /// Whether a scale can decide about a coat.
    "scale_advice" ScaleAdvice {
        /// Comfortably.
        Decides = "decides",
        /// Yes, but a good part of the readings near the edges stays open.
        DecidesOnlyJust = "only_just",
        /// No weight that it shows could be called within.
        TooCoarse = "too_coarse",
        /// The piece with its coat is too heavy for it.
        OverCapacity = "over_capacity",
    }
}

coded! {
    /// Accuracy class of a weighing instrument, OIML R 76-1.
    "accuracy_class" AccuracyClass {
        /// I.
        Special = "I",
        /// II.
        High = "II",
        /// III.
        Medium = "III",
        /// IIII.
        Ordinary = "IIII",
    }
}

/// What is odd about a scale's step and capacity.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LabelDoubt {
    /// Only a laboratory balance weighs so much in such steps.
    LaboratoryBalance,
    /// So few steps up to the capacity.
    VeryFewSteps,
}

/// What a class of OIML R 76-1 (Table 3) allows at one step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ClassLimits {
    /// Fewest steps up to the capacity.
    pub fewest_steps: f64,
    /// Most steps up to the capacity, where there is a limit.
    pub most_steps: Option<f64>,
    /// Smallest load, in steps.
    pub minimum_in_steps: f64,
}

impl AccuracyClass {
    /// Limits of this class for instruments with this step; none where the class has no such step (OIML R 76-1, Table 3).
    pub fn limits(self, step: Grams) -> Option<ClassLimits> {
        let e = step.value() * (1.0 + 1e-9);
        let (fewest_steps, most_steps, minimum_in_steps) = match self {
            Self::Special if e >= 0.001 => (50_000.0, None, 100.0),
            Self::High if e >= 0.1 => (5_000.0, Some(100_000.0), 50.0),
            Self::High if (0.001..0.051).contains(&e) => (100.0, Some(100_000.0), 20.0),
            Self::Medium if e >= 5.0 => (500.0, Some(10_000.0), 20.0),
            Self::Medium if (0.1..2.1).contains(&e) => (100.0, Some(10_000.0), 20.0),
            Self::Ordinary if e >= 5.0 => (100.0, Some(1_000.0), 10.0),
            _ => return None,
        };
        Some(ClassLimits { fewest_steps, most_steps, minimum_in_steps })
    }

    /// Largest error allowed at first verification, in steps, for a load in steps (OIML R 76-1, Table 6); in service
    /// twice that. None past the last row.
    pub fn permitted_error(self, load_in_steps: f64) -> Option<f64> {
        let (half, one, one_and_half) = match self {
            Self::Special => (50_000.0, 200_000.0, f64::INFINITY),
            Self::High => (5_000.0, 20_000.0, 100_000.0),
            Self::Medium => (500.0, 2_000.0, 10_000.0),
            Self::Ordinary => (50.0, 200.0, 1_000.0),
        };
        [(half, 0.5), (one, 1.0), (one_and_half, 1.5)]
            .into_iter()
            .find(|(upper, _)| load_in_steps <= upper * (1.0 + 1e-12))
            .map(|(_, error)| error)
    }
}

/// What would decide where a scale is too coarse.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Deciding {
    /// So many pieces with the same aim, weighed together on the same scale; `None` where it takes too many, or more than the
    /// scale carries.
    pub together: Option<u32>,
    /// The largest usual step that decides, on a scale that repeats well; `None` where none does.
    pub step: Option<Grams>,
}

/// More pieces than go onto a scale at once. Common practice, no source.
const MOST_TOGETHER: f64 = 12.0;
/// Steps that scales have, in grams, the coarsest first (OIML R 76-1, 3.4.2: 1, 2 or 5 in a decimal place).
const USUAL_STEPS: [f64; 12] = [50.0, 20.0, 10.0, 5.0, 2.0, 1.0, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01];

/// 95% half-width of a net weight from its two roundings alone: the difference is triangular.
fn rounding_half_width(step: Grams) -> Grams {
    step * (1.0 - 0.05f64.sqrt())
}

impl Scale {
    /// Each figure is rounded to whole milligrams, as it is stored.
    ///
    /// # Errors
    /// When step or capacity is nothing, or the figures contradict each other.
    pub fn new(
        capacity: Grams,
        step: Grams,
        minimum: Option<Grams>,
        repeatability: Option<Grams>,
    ) -> Result<Self, ScaleError> {
        // As they are stored: what is accepted now is accepted when it is read again.
        let (capacity, step) = (capacity.as_stored(), step.as_stored());
        let (minimum, repeatability) = (minimum.map(Grams::as_stored), repeatability.map(Grams::as_stored));
        if !step.is_positive() {
            return Err(ScaleError::NoStep);
        }
        if !capacity.is_positive() || capacity / step < 10.0 {
            return Err(ScaleError::NoCapacity);
        }
        if minimum.is_some_and(|least| !(least >= Grams::ZERO && least < capacity)) {
            return Err(ScaleError::Minimum);
        }
        if repeatability.is_some_and(|spread| !(spread >= Grams::ZERO && spread < capacity / 10.0)) {
            return Err(ScaleError::Repeatability);
        }
        Ok(Self { capacity, step, minimum, repeatability })
    }

    /// One standard uncertainty of a net weight: two readings, each rounded to the step, give step/√6; a tested
    /// repeatability adds its own two readings.
    pub fn net_standard_uncertainty(&self) -> Grams {
        Grams::new((self.step.value() / 6f64.sqrt()).hypot(self.repeatability_of_net()))
    }

    /// Half the width of the 95% interval of a net weight. Two roundings alone are triangular, `(1 − √0.05) step`
    /// exactly; a tested repeatability is combined with that as root of the sum of squares of the two half-widths, which
    /// is within 1% of the exact convolution (`tests/oracle`).
    pub fn net_half_width(&self) -> Grams {
        Grams::new(rounding_half_width(self.step).value().hypot(NORMAL_95 * self.repeatability_of_net()))
    }

    fn repeatability_of_net(&self) -> f64 {
        self.repeatability.map_or(0.0, |spread| spread.value() * std::f64::consts::SQRT_2)
    }

    /// Whether this scale can decide about a coat of `wet` grams that is right from `low` to `high`, on a piece of this weight
    /// where it is known. As the verdict would: too coarse exactly where no weight that it shows passes.
    pub fn advice(&self, piece: Option<Grams>, wet: Grams, (low, high): (Grams, Grams)) -> ScaleAdvice {
        let half_width = self.net_half_width();
        let least = self.minimum.map_or(low + half_width, |minimum| minimum.max(low + half_width));
        if piece.unwrap_or(Grams::ZERO) + wet > self.capacity {
            ScaleAdvice::OverCapacity
        } else if whole_steps(least, high - half_width, self.step).is_none() {
            ScaleAdvice::TooCoarse
        } else if (high - low) / 2.0 < half_width * COMFORTABLE {
            ScaleAdvice::DecidesOnlyJust
        } else {
            ScaleAdvice::Decides
        }
    }

    /// From how many grams on this scale decides comfortably about a coat that may be out by `tolerance`, a fraction of it.
    pub fn decides_from(&self, tolerance: f64) -> Grams {
        self.net_half_width() * COMFORTABLE / tolerance
    }

    /// From how many grams on there is a weight that it shows and that is within, wherever the aim lies: the span is a step and two
    /// half-widths wide.
    pub fn tells_from(&self, tolerance: f64) -> Grams {
        (self.net_half_width() * 2.0 + self.step) / (2.0 * tolerance)
    }

    /// What would decide about such coats where this scale is too coarse. A span that is a step and two half-widths wide holds
    /// a weight that passes, wherever it lies.
    pub fn what_decides(&self, (low, high): (Grams, Grams)) -> Deciding {
        let width = high - low;
        let together = ((self.step + self.net_half_width() * 2.0 - NOISE) / width).ceil().max(2.0);
        let is_possible = width.is_positive() && together <= MOST_TOGETHER && high * together <= self.capacity;
        let fine = |step: f64| Grams::new(step) + rounding_half_width(Grams::new(step)) * 2.0 <= width + NOISE;
        Deciding {
            together: is_possible.then_some(together as u32),
            step: USUAL_STEPS
                .into_iter()
                .filter(|step| Grams::new(*step) < self.step)
                .find(|step| fine(*step))
                .map(Grams::new),
        }
    }

    /// The accuracy classes of OIML R 76-1 that a scale of this step and capacity could have.
    pub fn classes(&self) -> Vec<AccuracyClass> {
        let steps = self.capacity / self.step;
        AccuracyClass::ALL
            .iter()
            .copied()
            .filter(|class| {
                class.limits(self.step).is_some_and(|limits| {
                    steps >= limits.fewest_steps * (1.0 - 1e-9)
                        && limits.most_steps.is_none_or(|most| steps <= most * (1.0 + 1e-9))
                })
            })
            .collect()
    }

    /// A doubt when step and capacity hardly go together, so that a slip of a zero shows.
    pub fn doubt_about_label(&self) -> Option<LabelDoubt> {
        match self.classes().as_slice() {
            [AccuracyClass::Special] => Some(LabelDoubt::LaboratoryBalance),
            [] if self.capacity / self.step < 100.0 => Some(LabelDoubt::VeryFewSteps),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use proptest::prelude::*;

    fn scale(capacity: f64, step: f64) -> Scale {
        Scale::new(Grams::new(capacity), Grams::new(step), None, None).unwrap()
    }

    #[test]
    fn a_tested_repeatability_widens_the_reading() {
        let plain = scale(2_000.0, 0.1);
        let tested = Scale { repeatability: Some(Grams::new(0.1)), ..plain };
        assert_relative_eq!(
            tested.net_standard_uncertainty().value(),
            (0.01f64 / 6.0 + 2.0 * 0.01).sqrt(),
            max_relative = 1e-12
        );
        assert!(tested.net_half_width() > plain.net_half_width() * 3.0);
    }

    fn span(aim: f64, tolerance: f64) -> (Grams, Grams) {
        (Grams::new(aim - tolerance), Grams::new(aim + tolerance))
    }

    #[test]
    fn a_finer_scale_decides_and_a_coarse_one_only_just() {
        // common practice, no source: a mug's 20 g may be out by 1 to 2 g either way.
        for (tolerance, coarse) in
            [(1.0, ScaleAdvice::TooCoarse), (1.36, ScaleAdvice::DecidesOnlyJust), (2.0, ScaleAdvice::DecidesOnlyJust)]
        {
            let advice = |step: f64| {
                scale(2_000.0, step).advice(Some(Grams::new(300.0)), Grams::new(19.5), span(19.5, tolerance))
            };
            assert_eq!(advice(0.1), ScaleAdvice::Decides);
            // ±1 g of 19.5 leaves 19.28 to 19.72 g, where no whole gram lies.
            assert_eq!(advice(1.0), coarse);
            assert_eq!(advice(5.0), ScaleAdvice::TooCoarse);
        }
        let small = scale(200.0, 0.01);
        let advice = |piece: Option<Grams>| small.advice(piece, Grams::new(19.5), span(19.5, 1.0));
        assert_eq!(advice(Some(Grams::new(300.0))), ScaleAdvice::OverCapacity);
        assert_eq!(advice(None), ScaleAdvice::Decides);
        let from_50 = Scale { minimum: Some(Grams::new(50.0)), ..scale(2_000.0, 0.1) };
        assert_eq!(from_50.advice(None, Grams::new(19.5), span(19.5, 1.0)), ScaleAdvice::TooCoarse);
    }

    #[test]
    fn a_kitchen_scale_decides_about_several_together() {
        // 19.5 g, 7% either way: a 5 g step and two half-widths of 3.88 g are 12.8 g, five times 2.73 g are 13.7 g.
        let deciding = scale(5_000.0, 5.0).what_decides(span(19.5, 19.5 * 0.07));
        assert_eq!(deciding, Deciding { together: Some(5), step: Some(Grams::new(1.0)) });
        let tight = scale(5_000.0, 5.0).what_decides(span(19.5, 0.2));
        assert_eq!(tight, Deciding { together: None, step: Some(Grams::new(0.1)) });
    }

    #[test]
    fn a_scale_decides_from_a_weight_on() {
        let scale = scale(2_000.0, 0.1);
        for (from, advice) in
            [(scale.decides_from(0.07), ScaleAdvice::Decides), (scale.tells_from(0.07), ScaleAdvice::DecidesOnlyJust)]
        {
            let aim = from * 1.000_1;
            assert_eq!(scale.advice(None, aim, (aim * 0.93, aim * 1.07)), advice);
        }
        // 4 × 0.0776 g at 7%.
        assert_relative_eq!(scale.decides_from(0.07).value(), 4.436, epsilon = 0.001);
    }

    #[test]
    fn a_slip_of_a_zero_raises_a_doubt() {
        let doubt = |capacity: f64, step: f64| scale(capacity, step).doubt_about_label();
        assert_eq!(doubt(2_000.0, 0.1), None);
        assert_eq!(doubt(5_000.0, 1.0), None);
        assert_eq!(doubt(200.0, 0.01), None);
        assert_eq!(doubt(5_000.0, 0.01), Some(LabelDoubt::LaboratoryBalance));
        assert_eq!(doubt(500.0, 10.0), Some(LabelDoubt::VeryFewSteps));
    }

    #[test]
    fn impossible_scales_are_refused() {
        let new = |capacity: f64, step: f64, minimum: Option<f64>, repeatability: Option<f64>| {
            Scale::new(Grams::new(capacity), Grams::new(step), minimum.map(Grams::new), repeatability.map(Grams::new))
        };
        assert_eq!(new(2_000.0, 0.0, None, None), Err(ScaleError::NoStep));
        assert_eq!(new(2_000.0, f64::NAN, None, None), Err(ScaleError::NoStep));
        assert_eq!(new(2_000.0, 0.000_4, None, None), Err(ScaleError::NoStep));
        assert_eq!(new(0.015, 0.001_5, None, None), Err(ScaleError::NoCapacity));
        assert_eq!(new(1.0, 0.1, Some(0.999_6), None), Err(ScaleError::Minimum));
        assert_eq!(new(0.5, 0.1, None, None), Err(ScaleError::NoCapacity));
        assert_eq!(new(2_000.0, 0.1, Some(2_000.0), None), Err(ScaleError::Minimum));
        assert_eq!(new(2_000.0, 0.1, None, Some(-0.1)), Err(ScaleError::Repeatability));
    }

    proptest! {
        #[test]
        fn what_decides_decides(aim in 2.0..400.0f64, tolerance in 0.02..0.3f64, step in prop::sample::select(vec![0.5, 1.0, 2.0, 5.0, 10.0])) {
            let scale = scale(5_000.0, step);
            let span = span(aim, aim * tolerance);
            let deciding = scale.what_decides(span);
            if let Some(fine) = deciding.step {
                let fine = Scale { step: fine, ..scale };
                prop_assert_ne!(fine.advice(None, Grams::new(aim), span), ScaleAdvice::TooCoarse);
            }
            if let Some(together) = deciding.together {
                let together = f64::from(together);
                let all = (span.0 * together, span.1 * together);
                prop_assert_ne!(scale.advice(None, Grams::new(aim * together), all), ScaleAdvice::TooCoarse);
            }
        }

        /// Every figure near the smallest that can be stored and near the others.
        #[test]
        fn a_scale_that_is_accepted_is_accepted_after_it_was_stored(
            capacity in prop_oneof![0.0..0.02f64, 0.99..1.01f64, 0.0..5_000.0f64],
            step in prop_oneof![0.0..0.002f64, 0.0..10.0f64],
            minimum in prop::option::of(prop_oneof![0.0..0.002f64, 0.99..1.01f64]),
            repeatability in prop::option::of(prop_oneof![0.0..0.002f64, 0.099..0.101f64]),
        ) {
            let (minimum, repeatability) = (minimum.map(Grams::new), repeatability.map(Grams::new));
            if let Ok(scale) = Scale::new(Grams::new(capacity), Grams::new(step), minimum, repeatability) {
                let stored = |grams: Grams| Grams::from_milligrams(grams.milligrams());
                let again = Scale::new(
                    stored(scale.capacity),
                    stored(scale.step),
                    scale.minimum.map(stored),
                    scale.repeatability.map(stored),
                );
                prop_assert_eq!(again, Ok(scale));
            }
        }
    }
}
