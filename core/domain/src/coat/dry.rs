//! A coat weighed again when it is bone dry: its glaze powder by itself, beside what the bucket's specific gravity says.
//!
//! Uncertainties are combined as root of the sum of squares (JCGM 100:2008, 5.1.2). Their parts:
//!
//! | part | one standard uncertainty |
//! |---|---|
//! | two weighings of the piece | those of a net weight on the scale |
//! | water from the air | 0.05% of the bare piece |
//! | wet weight and specific gravity | those of the coat |
//! | density of the powder | 0.1 relative to water |

use super::Solids;
use super::coverage::NORMAL_95;
use super::scale::Scale;
use crate::glaze::slurry::SgReading;
use crate::units::{Grams, PowderDensity, SpecificGravity};

/// Water that bisque takes from the air and gives back, as a fraction of its weight. Common practice, no source.
const WATER_FROM_AIR: f64 = 0.000_5;
/// Standard uncertainty of a glaze powder's density relative to water. Its materials lie between 2.5 and 2.9 (Harrison et al.,
/// Handbook for Australian Potters): a rectangle that wide, JCGM 100:2008, 4.3.7.
const POWDER_DENSITY: f64 = 0.1;
/// The most by which a bucket's specific gravity is likely to be off. Common practice, no source.
const LIKELY_SG: f64 = 0.15;
/// Between these a glaze powder's density is likely to lie. Common practice, no source.
const LIKELY_POWDER: (f64, f64) = (2.3, 3.2);
/// Bisque hardly drinks more water than this, as a fraction of its weight. Common practice, no source.
const MOST_WATER: f64 = 0.25;

/// The dry glaze in a coat, found in one way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DryGlaze {
    /// Its weight.
    pub dry: Grams,
    /// One standard uncertainty of it.
    pub standard_uncertainty: Grams,
}

/// Why the weight of a dry piece says nothing of its coat.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum DryError {
    /// A bare piece that weighs nothing.
    NoBare,
    /// The dry piece weighs no more than the bare one.
    NotOverBare {
        /// The bare piece.
        bare: Grams,
    },
    /// The dry coat would weigh as much as it did wet.
    NotUnderWet {
        /// The coat when it was wet.
        wet: Grams,
    },
    /// More than the scale weighs.
    OverCapacity {
        /// The most it weighs.
        capacity: Grams,
    },
}

/// A coat by its wet weight and the specific gravity of its bucket.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WetCoat {
    /// Its wet weight.
    pub wet: Grams,
    /// One standard uncertainty of the wet weight.
    pub wet_standard_uncertainty: Grams,
    /// The bucket's specific gravity then.
    pub sg: SgReading,
    /// The density of the glaze's powder.
    pub powder: PowderDensity,
    /// The dry glaze per gram that follows.
    pub solids: Solids,
}

/// Something that could be wrong where two ways of finding the dry glaze disagree, and what would explain all of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Suspect {
    /// The bucket's specific gravity: the vessel, the temperature, water that evaporated, or glaze that settled.
    SpecificGravity {
        /// What it would have been then.
        would_be: SpecificGravity,
    },
    /// The density of the powder.
    PowderDensity {
        /// What it would be, relative to water.
        would_be: f64,
    },
    /// Water that was still in the bisque when it was weighed bare.
    WaterInBisque {
        /// So much.
        water: Grams,
    },
    /// Glaze that came off after the coat was weighed: a foot wiped clean, dust.
    GlazeLost {
        /// So much dry.
        dry: Grams,
    },
    /// Water that is still in the piece.
    NotDry {
        /// So much.
        water: Grams,
    },
}

/// Two ways of finding the dry glaze that disagree by more than their uncertainties allow.
#[derive(Debug, Clone, PartialEq)]
pub struct Disagreement {
    /// What was weighed over what the specific gravity says.
    pub ratio: f64,
    /// What could be wrong; never empty.
    pub suspects: Vec<Suspect>,
}

impl DryGlaze {
    /// From a piece weighed bare and bone dry on the same scale.
    ///
    /// # Errors
    /// When the weights cannot be those of a piece before and after glazing.
    pub fn of_piece(bare: Grams, bone_dry: Grams, scale: &Scale) -> Result<DryGlaze, DryError> {
        if !bare.is_positive() {
            return Err(DryError::NoBare);
        }
        if bone_dry > scale.capacity {
            return Err(DryError::OverCapacity { capacity: scale.capacity });
        }
        let dry = bone_dry - bare;
        if !dry.is_positive() {
            return Err(DryError::NotOverBare { bare });
        }
        let air = bare.value() * WATER_FROM_AIR;
        Ok(DryGlaze { dry, standard_uncertainty: Grams::new(scale.net_standard_uncertainty().value().hypot(air)) })
    }

    /// One standard uncertainty as a fraction of the weight; none of no weight.
    pub fn relative_uncertainty(&self) -> f64 {
        if self.dry.is_positive() { self.standard_uncertainty / self.dry } else { 0.0 }
    }

    /// Split among coats as their wet weights and specific gravities say. The shares are taken to err each by itself, which is the
    /// careful side: from one bucket they err together.
    ///
    /// # Errors
    /// When it weighs as much as all coats did wet.
    pub fn split(self, coats: &[WetCoat]) -> Result<Vec<DryGlaze>, DryError> {
        let wet = coats.iter().fold(Grams::ZERO, |sum, coat| sum + coat.wet);
        if self.dry >= wet || !self.dry.is_positive() || !wet.is_positive() {
            return Err(DryError::NotUnderWet { wet });
        }
        let expected: Vec<DryGlaze> = coats.iter().map(WetCoat::dry).collect();
        let all = together(&expected).dry;
        let shares: Vec<f64> = expected.iter().map(|coat| coat.dry / all).collect();
        let relative: Vec<f64> = expected.iter().map(DryGlaze::relative_uncertainty).collect();
        // d ln(share of this) = (1 - share) d ln(this) - the sum of the others' shares times d ln(other).
        let of_share = |this: usize| {
            let parts = shares.iter().zip(&relative).enumerate();
            parts.fold(0.0f64, |sum, (at, (share, relative))| {
                sum.hypot(relative * if at == this { 1.0 - share } else { *share })
            })
        };
        let one = |(at, share): (usize, &f64)| {
            let dry = self.dry * *share;
            DryGlaze { dry, standard_uncertainty: dry * self.relative_uncertainty().hypot(of_share(at)) }
        };
        Ok(shares.iter().enumerate().map(one).collect())
    }

    /// What was weighed dry and what the specific gravity says as one figure: their mean, each weighted by its inverse variance. It is
    /// calculated on with the glaze's powder density, so that an error of that, which cancels between coats judged by their specific
    /// gravities, is counted on the side of the weighing. Where the two disagree, the uncertainty grows by their Birge ratio
    /// (Birge, Phys. Rev. 40 (1932) 207).
    #[must_use]
    pub fn combined(weighed: DryGlaze, by_sg: DryGlaze, powder: PowderDensity) -> DryGlaze {
        let of_sg = by_sg.relative_uncertainty();
        let of_weighing = weighed.relative_uncertainty().hypot(powder_doubt(powder));
        let both = of_sg.hypot(of_weighing);
        if !(both > 0.0 && both.is_finite()) {
            return by_sg;
        }
        let off = (weighed.dry / by_sg.dry).ln();
        let dry = by_sg.dry * (off * (of_sg / both).powi(2)).exp();
        let birge = (off.abs() / both).max(1.0);
        DryGlaze { dry, standard_uncertainty: dry * (of_sg * of_weighing / both * birge) }
    }
}

impl WetCoat {
    /// Its dry glaze by the specific gravity, everything counted.
    pub fn dry(&self) -> DryGlaze {
        let dry = self.solids.dry(self.wet);
        let weighing = self.solids.dry(self.wet_standard_uncertainty).value();
        let of_solids = dry.value() * self.solids.relative_uncertainty.hypot(powder_doubt(self.powder));
        DryGlaze { dry, standard_uncertainty: Grams::new(weighing.hypot(of_solids)) }
    }
}

/// The dry glaze of several coats together, each erring by itself.
pub fn together(coats: &[DryGlaze]) -> DryGlaze {
    coats.iter().fold(DryGlaze { dry: Grams::ZERO, standard_uncertainty: Grams::ZERO }, |sum, coat| DryGlaze {
        dry: sum.dry + coat.dry,
        standard_uncertainty: Grams::new(sum.standard_uncertainty.value().hypot(coat.standard_uncertainty.value())),
    })
}

/// What a doubt about the powder's density makes of the dry glaze, as a fraction of it: the slope of Brongniart's formula.
fn powder_doubt(powder: PowderDensity) -> f64 {
    let density = powder.value();
    POWDER_DENSITY / (density * (density - 1.0))
}

/// Where what was weighed dry and what the specific gravities of `coats` say differ by more than 95% of chance, and what could be
/// wrong. `bare` is the weight of the bare piece.
pub fn disagreement(weighed: DryGlaze, bare: Grams, coats: &[WetCoat]) -> Option<Disagreement> {
    let by_sg = together(&coats.iter().map(WetCoat::dry).collect::<Vec<_>>());
    if !by_sg.dry.is_positive() {
        return None;
    }
    let off = weighed.dry - by_sg.dry;
    let uncertainty = weighed.standard_uncertainty.value().hypot(by_sg.standard_uncertainty.value());
    if off.abs() <= Grams::new(NORMAL_95 * uncertainty) {
        return None;
    }
    let mut suspects = Vec::new();
    // Which of several buckets it would be, nobody knows.
    if let [coat] = coats {
        suspects.extend(sg_that_explains(coat, weighed.dry));
        suspects.extend(powder_that_explains(coat, weighed.dry));
    }
    if off > Grams::ZERO {
        suspects.push(Suspect::NotDry { water: off });
    } else {
        if off.abs() < bare * MOST_WATER {
            suspects.push(Suspect::WaterInBisque { water: off.abs() });
        }
        suspects.push(Suspect::GlazeLost { dry: off.abs() });
    }
    Some(Disagreement { ratio: weighed.dry / by_sg.dry, suspects })
}

/// Brongniart's formula turned round to the specific gravity: `ρ / (ρ − w (ρ − 1))`.
fn sg_that_explains(coat: &WetCoat, dry: Grams) -> Option<Suspect> {
    let (fraction, density) = (dry / coat.wet, coat.powder.value());
    let would_be = SpecificGravity::new(density / (density - fraction * (density - 1.0))).ok()?;
    let is_likely = (would_be.value() - coat.sg.sg.value()).abs() <= LIKELY_SG;
    is_likely.then_some(Suspect::SpecificGravity { would_be })
}

/// The same to the density of the powder: `w SG / (w SG − SG + 1)`.
fn powder_that_explains(coat: &WetCoat, dry: Grams) -> Option<Suspect> {
    let in_one_ml = dry / coat.wet * coat.sg.sg.value();
    let would_be = in_one_ml / (in_one_ml - coat.sg.sg.value() + 1.0);
    (LIKELY_POWDER.0..=LIKELY_POWDER.1).contains(&would_be).then_some(Suspect::PowderDensity { would_be })
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use proptest::prelude::*;

    fn g(grams: f64) -> Grams {
        Grams::new(grams)
    }

    fn scale() -> Scale {
        Scale::new(g(2_000.0), g(0.1), None, None).unwrap()
    }

    /// A coat weighed on that scale, from a bucket that was checked.
    fn coat(wet: f64, sg: f64) -> WetCoat {
        let (sg, powder) = (SgReading::checked(SpecificGravity::new(sg).unwrap()), PowderDensity::default());
        let solids = Solids::of(sg, powder).unwrap();
        WetCoat { wet: g(wet), wet_standard_uncertainty: scale().net_standard_uncertainty(), sg, powder, solids }
    }

    #[test]
    fn a_dry_piece_gives_its_glaze_and_how_sure_that_is() {
        let found = DryGlaze::of_piece(g(312.4), g(322.9), &scale()).unwrap();
        assert_relative_eq!(found.dry.value(), 10.5, max_relative = 1e-12);
        // 0.1/√6 g of roundings and 0.1562 g of water from the air.
        assert_relative_eq!(found.standard_uncertainty.value(), 0.161_446, max_relative = 1e-5);
    }

    #[test]
    fn impossible_dry_weights_are_refused() {
        let of = |bare: f64, dry: f64| DryGlaze::of_piece(g(bare), g(dry), &scale());
        assert_eq!(of(0.0, 10.0), Err(DryError::NoBare));
        assert_eq!(of(f64::NAN, 10.0), Err(DryError::NoBare));
        assert_eq!(of(312.0, 312.0), Err(DryError::NotOverBare { bare: g(312.0) }));
        assert_eq!(of(312.0, f64::NAN), Err(DryError::NotOverBare { bare: g(312.0) }));
        assert_eq!(of(312.0, 3_120.0), Err(DryError::OverCapacity { capacity: g(2_000.0) }));
        let wet = of(312.0, 332.0).unwrap().split(&[coat(20.0, 1.45)]);
        assert_eq!(wet, Err(DryError::NotUnderWet { wet: g(20.0) }));
    }

    #[test]
    fn one_coat_has_all_of_it() {
        let all = DryGlaze::of_piece(g(312.4), g(322.9), &scale()).unwrap();
        let split = all.split(&[coat(20.0, 1.45)]).unwrap();
        assert_relative_eq!(split[0].dry.value(), all.dry.value(), max_relative = 1e-12);
        let (one, both) = (split[0].standard_uncertainty, all.standard_uncertainty);
        assert_relative_eq!(one.value(), both.value(), max_relative = 1e-12);
    }

    #[test]
    fn two_coats_share_it_by_their_wet_weights_and_are_less_sure() {
        let all = DryGlaze::of_piece(g(312.4), g(328.4), &scale()).unwrap();
        let split = all.split(&[coat(20.0, 1.45), coat(10.0, 1.45)]).unwrap();
        assert_relative_eq!(split[0].dry / split[1].dry, 2.0, max_relative = 1e-12);
        assert!(split.iter().all(|coat| coat.relative_uncertainty() > all.relative_uncertainty()));
        assert!(split[1].relative_uncertainty() > split[0].relative_uncertainty());
    }

    #[test]
    fn the_surer_of_two_ways_counts_more_and_neither_twice() {
        let weighed = DryGlaze { dry: g(10.8), standard_uncertainty: g(0.2) };
        let sg = |uncertainty: f64| DryGlaze { dry: g(10.5), standard_uncertainty: g(uncertainty) };
        let powder = PowderDensity::default();
        let checked = DryGlaze::combined(weighed, sg(0.1), powder);
        let unchecked = DryGlaze::combined(weighed, sg(0.7), powder);
        assert!(checked.dry < g(10.55) && unchecked.dry > g(10.7), "{checked:?} {unchecked:?}");
        // Surer than each by itself: 0.2/10.8 and the powder's 2.4% are 3.0%.
        assert!(checked.relative_uncertainty() < 0.1 / 10.5);
        assert!(unchecked.relative_uncertainty() < 0.031);
        // Two that disagree by more than chance are not averaged into something sure.
        let apart = DryGlaze::combined(DryGlaze { dry: g(13.0), ..weighed }, sg(0.1), powder);
        assert!(apart.relative_uncertainty() > checked.relative_uncertainty() * 2.0);
    }

    #[test]
    fn what_agrees_raises_no_suspicion() {
        let (coat, bare) = (coat(20.0, 1.45), g(312.4));
        let by_sg = coat.dry().dry.value();
        for off in [-0.5, 0.0, 0.5] {
            let weighed = DryGlaze::of_piece(bare, bare + g(by_sg + off), &scale()).unwrap();
            assert_eq!(disagreement(weighed, bare, &[coat]), None, "{off}");
        }
    }

    #[test]
    fn too_much_dry_glaze_speaks_of_evaporation_the_powder_or_water_that_is_still_there() {
        // The bucket had thickened from 1.45 to 1.52 since its check.
        let (coat, bare) = (coat(20.0, 1.45), g(312.4));
        let truly = super::super::SolidsFraction::new(2.6 * 0.52 / (1.52 * 1.6)).unwrap().value() * 20.0;
        let weighed = DryGlaze::of_piece(bare, bare + g(truly), &scale()).unwrap();
        let found = disagreement(weighed, bare, &[coat]).unwrap();
        let Suspect::SpecificGravity { would_be } = found.suspects[0] else { panic!("{found:?}") };
        assert_relative_eq!(would_be.value(), 1.52, epsilon = 1e-4);
        assert!(matches!(found.suspects[1..], [Suspect::NotDry { .. }]), "{found:?}");
    }

    #[test]
    fn too_little_speaks_of_wet_bisque_first_of_all() {
        // 3 g of water from rinsing were in the piece when it was weighed bare.
        let (coat, bare) = (coat(20.0, 1.45), g(315.4));
        let weighed = DryGlaze::of_piece(bare, g(312.4) + coat.dry().dry, &scale()).unwrap();
        let found = disagreement(weighed, bare, &[coat]).unwrap();
        let water = found.suspects.iter().find_map(|suspect| match suspect {
            Suspect::WaterInBisque { water } => Some(water.value()),
            _ => None,
        });
        assert_relative_eq!(water.unwrap(), 3.0, max_relative = 1e-9);
        // A density that would explain so much is no glaze's.
        assert!(!found.suspects.iter().any(|suspect| matches!(suspect, Suspect::PowderDensity { .. })), "{found:?}");
    }

    proptest! {
        #[test]
        fn shares_sum_to_the_whole(wet in prop::collection::vec(2.0..200.0f64, 1..4), sg in 1.3..1.7f64, part in 0.2..0.8f64) {
            let coats: Vec<WetCoat> = wet.iter().map(|wet| coat(*wet, sg)).collect();
            let all = DryGlaze { dry: g(wet.iter().sum::<f64>() * part), standard_uncertainty: g(0.2) };
            let split = all.split(&coats).unwrap();
            prop_assert!((together(&split).dry / all.dry - 1.0).abs() < 1e-12);
        }

        /// What would explain a disagreement explains all of it.
        #[test]
        fn suspects_explain_it(wet in 10.0..200.0f64, sg in 1.3..1.7f64, off in 0.8..1.2f64) {
            let coat = coat(wet, sg);
            let dry = coat.dry().dry * off;
            let fraction = |sg: SpecificGravity, powder: f64| {
                crate::glaze::slurry::solids_fraction(sg, PowderDensity::new(powder).unwrap()).unwrap().value()
            };
            if let Some(Suspect::SpecificGravity { would_be }) = sg_that_explains(&coat, dry) {
                prop_assert!((fraction(would_be, 2.6) * wet / dry.value() - 1.0).abs() < 1e-4);
            }
            if let Some(Suspect::PowderDensity { would_be }) = powder_that_explains(&coat, dry) {
                prop_assert!((fraction(coat.sg.sg, would_be) * wet / dry.value() - 1.0).abs() < 1e-3);
            }
        }
    }
}
