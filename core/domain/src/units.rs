//! Quantities of the trade as their own types, and how people write and read them.
//!
//! A quantity holds one fixed unit. Storage keeps whole numbers of a small unit, so that what was kept reads back the
//! same on every device.

pub mod parse;
mod style;

use std::ops::{Add, Div, Mul, Neg, Sub};

use serde::{Deserialize, Serialize};

use crate::coded::coded;

pub use style::{AreaUnit, DecimalMark, LengthUnit, MassUnit, Style, VolumeUnit};

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $per_unit:literal, $stored:ident, $from_stored:ident, $stored_unit:literal) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(f64);

        impl $name {
            /// Nothing.
            pub const ZERO: Self = Self(0.0);

            /// From a number of the unit this type is named for.
            pub const fn new(value: f64) -> Self {
                Self(value)
            }

            /// The number of the unit this type is named for.
            pub const fn value(self) -> f64 {
                self.0
            }

            /// Without its sign.
            pub const fn abs(self) -> Self {
                Self(self.0.abs())
            }

            /// The larger of the two.
            pub const fn max(self, other: Self) -> Self {
                Self(self.0.max(other.0))
            }

            /// The smaller of the two.
            pub const fn min(self, other: Self) -> Self {
                Self(self.0.min(other.0))
            }

            /// A number that is neither infinite nor undefined, and above nothing.
            pub fn is_positive(self) -> bool {
                self.0.is_finite() && self.0 > 0.0
            }

            #[doc = concat!("Rounded to whole ", $stored_unit, ", as it is stored.")]
            pub fn $stored(self) -> i64 {
                (self.0 * $per_unit).round() as i64
            }

            #[doc = concat!("As it reads after it was stored in whole ", $stored_unit, ".")]
            pub fn as_stored(self) -> Self {
                Self::$from_stored(self.$stored())
            }

            #[doc = concat!("From whole ", $stored_unit, ", as it is stored.")]
            pub fn $from_stored(stored: i64) -> Self {
                Self(stored as f64 / $per_unit)
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self {
                Self(-self.0)
            }
        }

        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }

        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }

        impl Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }
    };
}

quantity!(
    /// Mass in grams.
    Grams, 1_000.0, milligrams, from_milligrams, "milligrams"
);
quantity!(
    /// Volume in millilitres.
    Millilitres, 1_000.0, microlitres, from_microlitres, "microlitres"
);
quantity!(
    /// Area in square centimetres.
    SquareCentimetres, 100.0, square_millimetres, from_square_millimetres, "square millimetres"
);
quantity!(
    /// Length in millimetres.
    Millimetres, 1_000.0, micrometres, from_micrometres, "micrometres"
);
quantity!(
    /// Dry glaze per glazed area, in grams per 100 cm² (the same number as grams per square decimetre).
    Laydown, 1_000.0, milligrams_per_dm2, from_milligrams_per_dm2, "milligrams per square decimetre"
);
quantity!(
    /// Temperature in degrees Celsius.
    Celsius, 1_000.0, millidegrees, from_millidegrees, "thousandths of a degree"
);
quantity!(
    /// Time in seconds.
    Seconds, 1_000.0, milliseconds, from_milliseconds, "milliseconds"
);

impl Laydown {
    /// The laydown of `dry` glaze spread over `area`.
    pub fn of(dry: Grams, area: SquareCentimetres) -> Self {
        Self(dry.value() / area.value() * 100.0)
    }

    /// Dry glaze that this laydown puts on `area`.
    pub fn dry_on(self, area: SquareCentimetres) -> Grams {
        Grams(self.0 * area.value() / 100.0)
    }
}

/// Weight of a glaze against the same volume of water: from 1.02 to under 2.2.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(try_from = "f64", into = "f64")]
pub struct SpecificGravity(f64);

impl SpecificGravity {
    /// Heaviest slurry accepted; beyond it a glaze no longer pours.
    pub const HEAVIEST: f64 = 2.2;

    /// A dipping glaze as usually mixed. Common practice, no source.
    pub const USUAL: Self = Self(1.45);

    /// Thinnest slurry accepted: under it next to no glaze is in the water, and what is calculated from it has no meaning.
    /// Common practice, no source.
    pub const LIGHTEST: f64 = 1.02;

    /// Thinner than any glaze is dipped or brushed; it is accepted, and doubted. Common practice, no source.
    pub const DOUBTFUL: f64 = 1.15;

    /// # Errors
    /// When `value`, rounded to whole hundred-thousandths as it is stored, is not from 1.02 to under 2.2.
    pub fn new(value: f64) -> Result<Self, UnitError> {
        let stored = rounded(value, 100_000.0);
        if (Self::LIGHTEST..Self::HEAVIEST).contains(&stored) {
            Ok(Self(value))
        } else if stored >= Self::HEAVIEST {
            Err(UnitError::TooHeavyForGlaze { value })
        } else if stored > 1.0 {
            Err(UnitError::TooThinForGlaze { value })
        } else {
            Err(UnitError::NoHeavierThanWater { value })
        }
    }

    /// Whether it is thinner than any glaze in use, so that a slip shows.
    pub fn is_doubtful(self) -> bool {
        self.0 < Self::DOUBTFUL
    }

    /// The plain number, for example 1.45.
    pub const fn value(self) -> f64 {
        self.0
    }

    /// Rounded to whole hundred-thousandths, as it is stored.
    pub fn hundred_thousandths(self) -> i64 {
        (self.0 * 100_000.0).round() as i64
    }

    /// From whole hundred-thousandths, as it is stored.
    ///
    /// # Errors
    /// When the stored number is no specific gravity.
    pub fn from_hundred_thousandths(stored: i64) -> Result<Self, UnitError> {
        Self::new(stored as f64 / 100_000.0)
    }
}

impl TryFrom<f64> for SpecificGravity {
    type Error = UnitError;
    fn try_from(value: f64) -> Result<Self, UnitError> {
        Self::new(value)
    }
}

impl From<SpecificGravity> for f64 {
    fn from(sg: SpecificGravity) -> f64 {
        sg.0
    }
}

/// Relative density of a glaze's dry powder, 1.5 to 7.0; 2.6 unless the glaze says otherwise.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(try_from = "f64", into = "f64")]
pub struct PowderDensity(f64);

impl PowderDensity {
    /// # Errors
    /// When `value`, rounded to whole thousandths as it is stored, is outside 1.5 to 7.0.
    pub fn new(value: f64) -> Result<Self, UnitError> {
        if (1.5..=7.0).contains(&rounded(value, 1_000.0)) {
            Ok(Self(value))
        } else {
            Err(UnitError::NoPowderDensity { value })
        }
    }

    /// The plain number, for example 2.6.
    pub const fn value(self) -> f64 {
        self.0
    }

    /// Rounded to whole thousandths, as it is stored.
    pub fn thousandths(self) -> i64 {
        (self.0 * 1_000.0).round() as i64
    }

    /// From whole thousandths, as it is stored.
    ///
    /// # Errors
    /// When the stored number is no powder density.
    pub fn from_thousandths(stored: i64) -> Result<Self, UnitError> {
        Self::new(stored as f64 / 1_000.0)
    }
}

impl Default for PowderDensity {
    /// 2.6, between feldspar and silica (Harrison et al., Handbook for Australian Potters, as reproduced; see tests).
    fn default() -> Self {
        Self(2.6)
    }
}

impl TryFrom<f64> for PowderDensity {
    type Error = UnitError;
    fn try_from(value: f64) -> Result<Self, UnitError> {
        Self::new(value)
    }
}

impl From<PowderDensity> for f64 {
    fn from(density: PowderDensity) -> f64 {
        density.0
    }
}

/// A number as it reads after it was stored in whole parts.
fn rounded(value: f64, parts: f64) -> f64 {
    (value * parts).round() / parts
}

coded! {
    /// What a number was asked for.
    "quantity" Quantity {
        /// Mass.
        Weight = "weight",
        /// Volume.
        Volume = "volume",
        /// Area.
        Surface = "surface",
        /// Length.
        Length = "length",
        /// A plain number.
        Number = "number",
        /// Time.
        Time = "time",
        /// Temperature.
        Temperature = "temperature",
        /// Specific gravity.
        SpecificGravity = "specific_gravity",
    }
}

/// Why a number cannot be used.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum UnitError {
    /// Nothing was typed.
    Empty {
        /// The quantity asked for.
        what: Quantity,
        /// A number written the potter's way.
        example: String,
    },
    /// Not a number at all.
    NotANumber {
        /// The quantity asked for.
        what: Quantity,
        /// What was typed.
        text: String,
        /// A number written the potter's way.
        example: String,
    },
    /// The letters after the number are no unit of this quantity.
    UnknownUnit {
        /// The quantity asked for.
        what: Quantity,
        /// The letters that were typed.
        unit: String,
        /// A number with its unit, written the potter's way.
        example: String,
    },
    /// A measure that is one size in the US and another in Britain.
    UsOrImperial {
        /// Its name, as typed.
        unit: String,
    },
    /// Parts such as pounds and ounces in the wrong order, or one without its unit.
    MixedUnits {
        /// What was typed.
        text: String,
    },
    /// A point and a comma, or one of them twice.
    TwoMarks {
        /// What was typed.
        text: String,
    },
    /// A single mark that may be decimal or thousands.
    ThousandsOrDecimal {
        /// What was typed.
        text: String,
        /// The number if the mark separates thousands.
        whole: String,
        /// The part before the mark.
        part: String,
        /// The decimal mark the potter has chosen.
        mark: char,
    },
    /// A gap inside a number.
    SpaceInNumber {
        /// What was typed.
        text: String,
    },
    /// Below nothing.
    Negative {
        /// The quantity asked for.
        what: Quantity,
    },
    /// More than anything in a studio.
    TooLarge {
        /// The quantity asked for.
        what: Quantity,
    },
    /// A temperature colder than any studio or hotter than any kiln.
    NoTemperature {
        /// Degrees Celsius.
        value: f64,
    },
    /// A specific gravity of 1 or less.
    NoHeavierThanWater {
        /// The number met.
        value: f64,
    },
    /// A specific gravity above 1 and under 1.02.
    TooThinForGlaze {
        /// The number met.
        value: f64,
    },
    /// A specific gravity of 2.2 or more.
    TooHeavyForGlaze {
        /// The number met.
        value: f64,
    },
    /// A laydown of nothing, or of more than bisque can hold.
    NoLaydown {
        /// The number met, g per 100 cm².
        value: f64,
        /// The most, g per 100 cm².
        most: f64,
    },
    /// A powder density outside 1.5 to 7.
    NoPowderDensity {
        /// The number met.
        value: f64,
    },
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use proptest::prelude::*;

    #[test]
    fn storage_saves_whole_numbers_both_ways() {
        assert_eq!(Grams::new(19.4).milligrams(), 19_400);
        assert_eq!(Grams::from_milligrams(19_400), Grams::new(19.4));
        assert_eq!(Millilitres::new(250.0).microlitres(), 250_000);
        assert_eq!(SquareCentimetres::new(187.25).square_millimetres(), 18_725);
        assert_eq!(Millimetres::new(3.5).micrometres(), 3_500);
        assert_eq!(Laydown::new(5.5).milligrams_per_dm2(), 5_500);
        assert_eq!(Celsius::new(-0.5).millidegrees(), -500);
        assert_eq!(Seconds::new(42.25).milliseconds(), 42_250);
        let sg = SpecificGravity::new(1.447).unwrap();
        assert_eq!(SpecificGravity::from_hundred_thousandths(sg.hundred_thousandths()).unwrap(), sg);
        let density = PowderDensity::default();
        assert_eq!(PowderDensity::from_thousandths(density.thousandths()).unwrap(), density);
    }

    #[test]
    fn specific_gravity_stays_between_water_and_what_pours() {
        for refused in [1.0, 0.5, -1.45, f64::NAN, f64::NEG_INFINITY] {
            assert!(matches!(SpecificGravity::new(refused), Err(UnitError::NoHeavierThanWater { .. })), "{refused}");
        }
        for refused in [2.199_996, 2.2, 145.0, f64::INFINITY] {
            assert!(matches!(SpecificGravity::new(refused), Err(UnitError::TooHeavyForGlaze { .. })), "{refused}");
        }
        for refused in [1.000_006, 1.001, 1.019_994] {
            assert!(matches!(SpecificGravity::new(refused), Err(UnitError::TooThinForGlaze { .. })), "{refused}");
        }
        for accepted in [1.019_996, 1.02, 2.199_994] {
            assert!(SpecificGravity::new(accepted).is_ok(), "{accepted}");
        }
        let is_doubtful = |value: f64| SpecificGravity::new(value).unwrap().is_doubtful();
        assert!(!is_doubtful(1.15) && is_doubtful(1.149));
    }

    #[test]
    fn powder_density_has_bounds() {
        assert!([1.499_6, 1.5, 7.0, 7.000_4].iter().all(|value| PowderDensity::new(*value).is_ok()));
        for refused in [1.49, 1.499_4, 7.000_6, 7.01, f64::NAN] {
            assert!(PowderDensity::new(refused).is_err(), "{refused}");
        }
    }

    #[test]
    fn stored_text_is_checked_on_the_way_in() {
        assert!(serde_json::from_str::<SpecificGravity>("1.45").is_ok());
        assert!(serde_json::from_str::<SpecificGravity>("0.9").is_err());
        assert!(serde_json::from_str::<PowderDensity>("9").is_err());
        assert_eq!(serde_json::to_string(&Grams::new(19.4)).unwrap(), "19.4");
    }

    proptest! {
        /// What is accepted is accepted again after it was stored, and is stored as the same number again.
        #[test]
        fn what_is_accepted_survives_being_stored(value in prop_oneof![0.9..2.3f64, 1.019_98..1.020_02f64, 2.199_98..2.200_02f64]) {
            if let Ok(sg) = SpecificGravity::new(value) {
                let again = SpecificGravity::from_hundred_thousandths(sg.hundred_thousandths()).unwrap();
                prop_assert_eq!(again.hundred_thousandths(), sg.hundred_thousandths());
            }
        }

        #[test]
        fn a_powder_density_survives_being_stored(value in prop_oneof![1.0..8.0f64, 1.499..1.501f64, 6.999..7.001f64]) {
            if let Ok(density) = PowderDensity::new(value) {
                let again = PowderDensity::from_thousandths(density.thousandths()).unwrap();
                prop_assert_eq!(again.thousandths(), density.thousandths());
            }
        }

        #[test]
        fn a_quantity_is_stored_as_the_same_number_again(value in -1e9..1e9f64) {
            let grams = Grams::new(value).as_stored();
            prop_assert_eq!(grams, grams.as_stored());
            let area = SquareCentimetres::new(value).as_stored();
            prop_assert_eq!(area, area.as_stored());
        }
    }

    #[test]
    fn laydown_is_dry_glaze_over_area() {
        let laydown = Laydown::of(Grams::new(11.0), SquareCentimetres::new(200.0));
        assert_relative_eq!(laydown.value(), 5.5);
        assert_relative_eq!(laydown.dry_on(SquareCentimetres::new(200.0)).value(), 11.0);
    }
}
