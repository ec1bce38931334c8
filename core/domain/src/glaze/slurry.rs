//! Powder in water: how much dry glaze a gram of the bucket holds, how to thin it, and how to find its specific gravity.

use crate::units::{Celsius, Grams, Millilitres, PowderDensity, SpecificGravity, UnitError};

/// Modulus of the heavy Baumé scale in common use, for liquids heavier than water.
pub const BAUME_MODULUS: f64 = 145.0;

/// Specific gravities closer than this are the same on any potter's scale.
const SAME_SPECIFIC_GRAVITY: f64 = 0.000_5;

/// More glaze than any studio mixes.
const LARGEST_VOLUME: Millilitres = Millilitres::new(1e9);

/// Temperature that a vessel's water is reduced to, °C.
const ROOM: Celsius = Celsius::new(20.0);

/// Stirring, settling and the level by eye: the smallest standard uncertainty of a check. Common practice, no source.
const LEVEL_AND_STIRRING: f64 = 0.002;

/// Dry glaze per gram of wet glaze, between 0 and 1.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct SolidsFraction(f64);

impl SolidsFraction {
    /// # Errors
    /// When `value` is not between 0 and 1.
    pub fn new(value: f64) -> Result<Self, SlurryError> {
        if value > 0.0 && value < 1.0 { Ok(Self(value)) } else { Err(SlurryError::NoFraction { value }) }
    }

    /// Grams of dry glaze in a gram of wet glaze.
    pub const fn value(self) -> f64 {
        self.0
    }
}

/// A specific gravity and how sure it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SgReading {
    /// The reading.
    pub sg: SpecificGravity,
    /// One standard uncertainty, in specific gravity.
    pub standard_uncertainty: f64,
}

impl SgReading {
    /// Standard uncertainty of a bucket that nobody has checked. Common practice, no source.
    pub const UNCHECKED: f64 = 0.04;
    /// Standard uncertainty of a check whose scale is not known. Common practice, no source.
    pub const CHECKED: f64 = 0.005;

    /// The largest standard uncertainty that still tells one glaze from another. Common practice, no source.
    pub const LARGEST: f64 = 0.2;

    /// A specific gravity and one standard uncertainty of it.
    ///
    /// # Errors
    /// When `standard_uncertainty` is below nothing, above [`SgReading::LARGEST`], or no number.
    pub fn new(sg: SpecificGravity, standard_uncertainty: f64) -> Result<Self, SlurryError> {
        if (0.0..=Self::LARGEST).contains(&standard_uncertainty) {
            Ok(Self { sg, standard_uncertainty })
        } else {
            Err(SlurryError::TooUnsure)
        }
    }

    /// What a bucket is taken for before its first check: 1.45, give or take 0.04. Common practice, no source.
    pub const fn unchecked() -> Self {
        Self { sg: SpecificGravity::USUAL, standard_uncertainty: Self::UNCHECKED }
    }

    /// A check by hydrometer, or a figure the potter typed.
    pub const fn checked(sg: SpecificGravity) -> Self {
        Self { sg, standard_uncertainty: Self::CHECKED }
    }

    /// A check by [`sg_by_vessel`] with its uncertainty from the scale's `step`: three weighings, each rounded
    /// (step/√12, JCGM 100 F.2.2.1), and the level and stirring.
    ///
    /// # Errors
    /// As [`sg_by_vessel`], and when the scale is too coarse for so little glaze.
    pub fn by_vessel(
        empty: Grams,
        with_water: Grams,
        water_at: Celsius,
        with_glaze: Grams,
        step: Grams,
    ) -> Result<Self, SlurryError> {
        let sg = sg_by_vessel(empty, with_water, water_at, with_glaze)?;
        let ratio = sg.value();
        let sensitivity = (1.0 + ratio.powi(2) + (ratio - 1.0).powi(2)).sqrt();
        let weighing = rounding(step) * sensitivity / (with_water - empty).value();
        Self::new(sg, weighing.hypot(LEVEL_AND_STIRRING))
    }

    /// A check by [`sg_by_volume`] with its uncertainty from the scale's `step`: two weighings, each rounded, a volume
    /// mark good to 0.5% (common practice, no source), and the level and stirring.
    ///
    /// # Errors
    /// As [`sg_by_volume`], and when the scale is too coarse for so little glaze.
    pub fn by_volume(empty: Grams, with_glaze: Grams, volume: Millilitres, step: Grams) -> Result<Self, SlurryError> {
        let sg = sg_by_volume(empty, with_glaze, volume)?;
        let weighing = rounding(step) * std::f64::consts::SQRT_2 / volume.value();
        let mark = 0.005 * sg.value();
        Self::new(sg, weighing.hypot(mark).hypot(LEVEL_AND_STIRRING))
    }
}

/// Standard uncertainty of one reading rounded to the step (JCGM 100:2008, F.2.2.1).
fn rounding(step: Grams) -> f64 {
    step.value() / 12f64.sqrt()
}

/// What to do to bring a bucket to another specific gravity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Thinning {
    /// It is there already.
    Nothing,
    /// Stir in so much water.
    AddWater(Millilitres),
    /// Let it settle and take off so much clear water, or stir in so much dry powder instead.
    TakeOffWater {
        /// Clear water to take off.
        water: Millilitres,
        /// Dry powder that would do the same without taking water off.
        or_add_powder: Grams,
    },
}

/// Why the bucket's figures do not fit together.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum SlurryError {
    /// The slurry would be as heavy as its own powder.
    HeavierThanPowder {
        /// The slurry.
        sg: f64,
        /// Its powder.
        density: f64,
    },
    /// Not between 0 and 1.
    NoFraction {
        /// The number met.
        value: f64,
    },
    /// Weights that are not weights.
    NothingToMix,
    /// The vessel holds nothing.
    EmptyVessel,
    /// A weighing that says next to nothing of the specific gravity.
    TooUnsure,
    /// No volume.
    NoVolume,
    /// Water too cold or too hot for the density table.
    WaterTemperature {
        /// Degrees Celsius.
        celsius: f64,
    },
    /// The result is no specific gravity.
    #[error(transparent)]
    Unit(#[from] UnitError),
}

/// Dry glaze per gram of wet glaze, by Brongniart's formula: `ρ (SG − 1) / (SG (ρ − 1))`.
///
/// # Errors
/// When the slurry is as heavy as its powder.
pub fn solids_fraction(sg: SpecificGravity, powder: PowderDensity) -> Result<SolidsFraction, SlurryError> {
    let (slurry, density) = (sg.value(), powder.value());
    if slurry >= density {
        return Err(SlurryError::HeavierThanPowder { sg: slurry, density });
    }
    SolidsFraction::new(density * (slurry - 1.0) / (slurry * (density - 1.0)))
}

/// Grams of dry glaze in a litre of the bucket: `1000 ρ (SG − 1) / (ρ − 1)`.
pub fn dry_per_litre(sg: SpecificGravity, powder: PowderDensity) -> Grams {
    Grams::new(1_000.0 * powder.value() * (sg.value() - 1.0) / (powder.value() - 1.0))
}

/// Specific gravity of a mix of powder and water by weight.
///
/// # Errors
/// When either weight is nothing, or the mix is too thick or too thin to be a glaze.
pub fn specific_gravity_of_mix(
    powder: Grams,
    water: Grams,
    density: PowderDensity,
) -> Result<SpecificGravity, SlurryError> {
    if !powder.is_positive() || !water.is_positive() {
        return Err(SlurryError::NothingToMix);
    }
    let volume = powder.value() / density.value() + water.value();
    Ok(SpecificGravity::new((powder + water).value() / volume)?)
}

/// What brings `volume` of glaze from one specific gravity to another. Water: `V (SG₁ − SG₂)/(SG₂ − 1)`, one gram of
/// water taken as one millilitre.
///
/// # Errors
/// When there is no volume or more than 1000 m³, or the wish is as heavy as the powder itself.
pub fn thin(
    volume: Millilitres,
    from: SpecificGravity,
    to: SpecificGravity,
    powder: PowderDensity,
) -> Result<Thinning, SlurryError> {
    if !(volume.is_positive() && volume <= LARGEST_VOLUME) {
        return Err(SlurryError::NoVolume);
    }
    let (from, to) = (from.value(), to.value());
    for sg in [from, to] {
        if sg >= powder.value() {
            return Err(SlurryError::HeavierThanPowder { sg, density: powder.value() });
        }
    }
    if (from - to).abs() < SAME_SPECIFIC_GRAVITY {
        return Ok(Thinning::Nothing);
    }
    let water = volume * ((from - to) / (to - 1.0));
    if water > Millilitres::ZERO {
        return Ok(Thinning::AddWater(water));
    }
    let or_add_powder = Grams::new(volume.value() * (to - from) / (1.0 - to / powder.value()));
    Ok(Thinning::TakeOffWater { water: -water, or_add_powder })
}

/// Specific gravity from degrees on the heavy Baumé scale: `m/(m − °Bé)`.
///
/// # Errors
/// When the result is not from 1.02 to under 2.2.
pub fn sg_from_baume(degrees: f64, modulus: f64) -> Result<SpecificGravity, UnitError> {
    // Past its modulus the scale turns negative, which would read as lighter than water.
    if degrees >= modulus {
        return Err(UnitError::TooHeavyForGlaze { value: f64::INFINITY });
    }
    SpecificGravity::new(modulus / (modulus - degrees))
}

/// Specific gravity from degrees Twaddell: `1 + °Tw/200`.
///
/// # Errors
/// When the result is not from 1.02 to under 2.2.
pub fn sg_from_twaddell(degrees: f64) -> Result<SpecificGravity, UnitError> {
    SpecificGravity::new(1.0 + degrees / 200.0)
}

/// Density of air-free water in g/ml at `temperature`, 0 to 40 °C: Tanaka et al., Metrologia 38 (2001) 301, the CIPM's
/// formula (coefficients from memory; agrees with the published tables in the tests).
///
/// # Errors
/// When the water is not between 0 and 40 °C.
pub fn water_density(temperature: Celsius) -> Result<f64, SlurryError> {
    let t = temperature.value();
    if !(0.0..=40.0).contains(&t) {
        return Err(SlurryError::WaterTemperature { celsius: t });
    }
    let fall = (t - 3.983_035).powi(2) * (t + 301.797) / (522_528.9 * (t + 69.348_81));
    Ok(0.999_974_950 * (1.0 - fall))
}

/// Specific gravity from one vessel weighed empty, full of water and full of glaze to the same mark. The water's weight
/// is reduced to 20 °C, where the glaze is taken to be: 10 °C of error there is 0.2% at most.
///
/// # Errors
/// When a weight is out of order, the water is not between 0 and 40 °C, or the result is no specific gravity.
pub fn sg_by_vessel(
    empty: Grams,
    with_water: Grams,
    water_at: Celsius,
    with_glaze: Grams,
) -> Result<SpecificGravity, SlurryError> {
    let (water, glaze) = (with_water - empty, with_glaze - empty);
    if !water.is_positive() || !glaze.is_positive() || empty < Grams::ZERO {
        return Err(SlurryError::EmptyVessel);
    }
    let water_when_room = water.value() * water_density(ROOM)? / water_density(water_at)?;
    Ok(SpecificGravity::new(glaze.value() / water_when_room)?)
}

/// Specific gravity from a vessel of known volume, weighed empty and full of glaze; one gram to the millilitre counts
/// as 1, as in the trade's tables.
///
/// # Errors
/// When a weight is out of order, there is no volume, or the result is no specific gravity.
pub fn sg_by_volume(empty: Grams, with_glaze: Grams, volume: Millilitres) -> Result<SpecificGravity, SlurryError> {
    let glaze = with_glaze - empty;
    if !volume.is_positive() {
        return Err(SlurryError::NoVolume);
    }
    if !glaze.is_positive() || empty < Grams::ZERO {
        return Err(SlurryError::EmptyVessel);
    }
    Ok(SpecificGravity::new(glaze.value() / volume.value())?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use proptest::prelude::*;

    fn sg(value: f64) -> SpecificGravity {
        SpecificGravity::new(value).unwrap()
    }

    fn density(value: f64) -> PowderDensity {
        PowderDensity::new(value).unwrap()
    }

    #[test]
    fn equal_weights_of_powder_and_water_lie_between_1_4_and_1_5() {
        // common practice, no source
        let mixed =
            specific_gravity_of_mix(Grams::new(1_000.0), Grams::new(1_000.0), PowderDensity::default()).unwrap();
        assert_relative_eq!(mixed.value(), 1.444, epsilon = 0.000_5);
        let fraction = solids_fraction(mixed, PowderDensity::default()).unwrap();
        assert_relative_eq!(fraction.value(), 0.5, max_relative = 1e-12);
    }

    #[test]
    fn a_slurry_is_lighter_than_its_powder() {
        assert!(matches!(solids_fraction(sg(1.8), density(1.6)), Err(SlurryError::HeavierThanPowder { .. })));
        assert!(matches!(
            thin(Millilitres::new(1.0), sg(1.5), sg(1.8), density(1.6)),
            Err(SlurryError::HeavierThanPowder { .. })
        ));
    }

    #[test]
    fn a_vessel_gives_the_ratio_of_its_fillings() {
        let read = sg_by_vessel(Grams::new(50.0), Grams::new(150.0), Celsius::new(20.0), Grams::new(195.0)).unwrap();
        assert_relative_eq!(read.value(), 1.45, max_relative = 1e-12);
        let cold = sg_by_vessel(Grams::new(50.0), Grams::new(150.0), Celsius::new(5.0), Grams::new(195.0)).unwrap();
        assert_relative_eq!(cold.value(), 1.45 * 0.999_967 / 0.998_207, max_relative = 1e-5);
    }

    #[test]
    fn vessel_weights_out_of_order_are_refused() {
        let read = |empty: f64, water: f64, glaze: f64| {
            sg_by_vessel(Grams::new(empty), Grams::new(water), Celsius::new(20.0), Grams::new(glaze))
        };
        assert_eq!(read(50.0, 50.0, 195.0), Err(SlurryError::EmptyVessel));
        assert_eq!(read(50.0, 150.0, 40.0), Err(SlurryError::EmptyVessel));
        assert!(matches!(read(50.0, 150.0, 149.0), Err(SlurryError::Unit(UnitError::NoHeavierThanWater { .. }))));
        assert!(matches!(read(50.0, 60.0, 195.0), Err(SlurryError::Unit(UnitError::TooHeavyForGlaze { .. }))));
        assert_eq!(sg_by_volume(Grams::new(5.0), Grams::new(150.0), Millilitres::ZERO), Err(SlurryError::NoVolume));
        assert!(matches!(water_density(Celsius::new(60.0)), Err(SlurryError::WaterTemperature { .. })));
    }

    #[test]
    fn a_check_on_a_coarse_scale_is_less_sure() {
        let check = |step: f64| {
            let (empty, water, glaze) = (Grams::new(50.0), Grams::new(150.0), Grams::new(195.0));
            SgReading::by_vessel(empty, water, Celsius::new(20.0), glaze, Grams::new(step))
                .unwrap()
                .standard_uncertainty
        };
        assert!(check(0.01) < check(0.1) && check(0.1) < check(1.0));
        assert!(check(0.01) >= LEVEL_AND_STIRRING);
        assert_relative_eq!(check(1.0), 0.0057, epsilon = 0.000_1);
    }

    proptest! {
        #[test]
        fn thinning_lands_on_the_wish(volume in 100.0..50_000.0f64, from in 1.05..2.1f64, to in 1.05..2.1f64) {
            let powder = density(2.6);
            let start = Millilitres::new(volume);
            let mass = volume * from;
            let (mass, volume) = match thin(start, sg(from), sg(to), powder).unwrap() {
                Thinning::Nothing => {
                    prop_assert!((from - to).abs() < SAME_SPECIFIC_GRAVITY);
                    return Ok(());
                }
                Thinning::AddWater(water) => (mass + water.value(), volume + water.value()),
                Thinning::TakeOffWater { water, or_add_powder } => {
                    let powder = or_add_powder.value();
                    prop_assert!(((mass + powder) / (volume + powder / 2.6) - to).abs() < 1e-9);
                    (mass - water.value(), volume - water.value())
                }
            };
            prop_assert!(volume > 0.0 && (mass / volume - to).abs() < 1e-9);
        }

        #[test]
        fn mixing_and_solids_agree(dry in 1.0..5_000.0f64, water in 1.0..5_000.0f64) {
            if let Ok(mixed) = specific_gravity_of_mix(Grams::new(dry), Grams::new(water), PowderDensity::default()) {
                let fraction = solids_fraction(mixed, PowderDensity::default()).unwrap();
                prop_assert!((fraction.value() - dry / (dry + water)).abs() < 1e-9);
            }
        }
    }
}
