//! How a potter wants numbers written: units, decimal mark, and no more figures than the scale gives.

use super::{Grams, Laydown, Millilitres, Millimetres, SpecificGravity, SquareCentimetres};
use crate::coded::coded;

coded! {
    /// Unit of mass on screen.
    "mass_unit" MassUnit {
        /// Gram.
        Gram = "gram",
        /// Avoirdupois ounce, 28.349523125 g.
        Ounce = "ounce",
    }
}

coded! {
    /// Unit of volume on screen.
    "volume_unit" VolumeUnit {
        /// Millilitre.
        Millilitre = "millilitre",
        /// US fluid ounce, 29.5735295625 ml.
        UsFluidOunce = "us_fluid_ounce",
        /// Imperial fluid ounce, 28.4130625 ml.
        ImperialFluidOunce = "imperial_fluid_ounce",
    }
}

coded! {
    /// Unit of area on screen.
    "area_unit" AreaUnit {
        /// Square centimetre.
        SquareCentimetre = "square_centimetre",
        /// Square inch, 6.4516 cm².
        SquareInch = "square_inch",
    }
}

coded! {
    /// Unit of length on screen.
    "length_unit" LengthUnit {
        /// Centimetre.
        Centimetre = "centimetre",
        /// Millimetre.
        Millimetre = "millimetre",
        /// Inch, 25.4 mm.
        Inch = "inch",
    }
}

coded! {
    /// Decimal mark on screen.
    "decimal_mark" DecimalMark {
        /// 19.4
        Point = "point",
        /// 19,4
        Comma = "comma",
    }
}

impl MassUnit {
    /// Grams in one of this unit; exact.
    pub const fn grams(self) -> f64 {
        match self {
            Self::Gram => 1.0,
            Self::Ounce => 28.349523125,
        }
    }

    /// As written after a number.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Gram => "g",
            Self::Ounce => "oz",
        }
    }
}

impl VolumeUnit {
    /// Millilitres in one of this unit; exact.
    pub const fn millilitres(self) -> f64 {
        match self {
            Self::Millilitre => 1.0,
            Self::UsFluidOunce => 29.5735295625,
            Self::ImperialFluidOunce => 28.4130625,
        }
    }

    /// As written after a number.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Millilitre => "ml",
            Self::UsFluidOunce | Self::ImperialFluidOunce => "fl oz",
        }
    }
}

impl AreaUnit {
    /// Square centimetres in one of this unit; exact.
    pub const fn square_centimetres(self) -> f64 {
        match self {
            Self::SquareCentimetre => 1.0,
            Self::SquareInch => 6.4516,
        }
    }

    /// As written after a number.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::SquareCentimetre => "cm²",
            Self::SquareInch => "in²",
        }
    }
}

impl LengthUnit {
    /// Millimetres in one of this unit; exact.
    pub const fn millimetres(self) -> f64 {
        match self {
            Self::Centimetre => 10.0,
            Self::Millimetre => 1.0,
            Self::Inch => 25.4,
        }
    }

    /// As written after a number.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Centimetre => "cm",
            Self::Millimetre => "mm",
            Self::Inch => "in",
        }
    }

    /// Decimals that show half a millimetre, which is as fine as a potter's calipers are read.
    const fn decimals(self) -> usize {
        match self {
            Self::Centimetre | Self::Inch => 2,
            Self::Millimetre => 1,
        }
    }
}

impl DecimalMark {
    /// The character itself.
    pub const fn mark(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }
}

/// How numbers are written for one potter.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Style {
    /// Unit of mass.
    pub mass: MassUnit,
    /// Unit of volume.
    pub volume: VolumeUnit,
    /// Unit of area.
    pub area: AreaUnit,
    /// Unit of length.
    pub length: LengthUnit,
    /// Decimal mark.
    pub decimal: DecimalMark,
}

impl Default for Style {
    fn default() -> Self {
        Self {
            mass: MassUnit::Gram,
            volume: VolumeUnit::Millilitre,
            area: AreaUnit::SquareCentimetre,
            length: LengthUnit::Centimetre,
            decimal: DecimalMark::Point,
        }
    }
}

impl Style {
    /// A plain number with so many decimals; never "−0".
    pub fn number(&self, value: f64, decimals: usize) -> String {
        let written = format!("{value:.decimals$}");
        let is_nothing = written.bytes().all(|byte| matches!(byte, b'-' | b'0' | b'.'));
        let written = if is_nothing { written.trim_start_matches('-').to_owned() } else { written.replace('-', "−") };
        match self.decimal {
            DecimalMark::Point => written,
            DecimalMark::Comma => written.replace('.', ","),
        }
    }

    /// A mass with its unit and as many decimals as the scale's `step` can show, for example "19.4 g".
    pub fn mass(&self, mass: Grams, step: Grams) -> String {
        format!("{} {}", self.mass_number(mass, step), self.mass.symbol())
    }

    /// As [`Style::mass`], without the unit.
    pub fn mass_number(&self, mass: Grams, step: Grams) -> String {
        let unit = self.mass.grams();
        self.number(mass.value() / unit, decimals_of(step.value() / unit))
    }

    /// A volume with its unit, to about three figures, for example "250 ml" or "8.45 fl oz".
    pub fn volume(&self, volume: Millilitres) -> String {
        let value = volume.value() / self.volume.millilitres();
        format!("{} {}", self.three_figures(value), self.volume.symbol())
    }

    /// An area with its unit, to about three figures, for example "187 cm²" or "29.0 in²".
    pub fn area(&self, area: SquareCentimetres) -> String {
        let value = area.value() / self.area.square_centimetres();
        format!("{} {}", self.three_figures(value), self.area.symbol())
    }

    /// A length with its unit, to half a millimetre, for example "8.4 cm" or "3.31 in".
    pub fn length(&self, length: Millimetres) -> String {
        format!("{} {}", self.length_number(length), self.length.symbol())
    }

    /// As [`Style::length`], without the unit and without zeros that say nothing.
    pub fn length_number(&self, length: Millimetres) -> String {
        let written = self.number(length.value() / self.length.millimetres(), self.length.decimals());
        written.trim_end_matches('0').trim_end_matches(self.decimal.mark()).to_owned()
    }

    /// A laydown in the units of mass and of 100 units of area, without them: "5.5".
    pub fn laydown_number(&self, laydown: Laydown) -> String {
        let value = self.in_laydown_units(laydown);
        self.number(value, if value < 3.0 { 2 } else { 1 })
    }

    /// A laydown as a plain number of the same units.
    pub fn in_laydown_units(&self, laydown: Laydown) -> f64 {
        laydown.value() / self.mass.grams() * self.area.square_centimetres()
    }

    /// A specific gravity: two decimals, or three where the third is not nothing.
    pub fn specific_gravity(&self, sg: SpecificGravity) -> String {
        let written = self.number(sg.value(), 3);
        written.strip_suffix('0').map(str::to_owned).unwrap_or(written)
    }

    fn three_figures(&self, value: f64) -> String {
        let decimals = match value.abs() {
            size if size < 9.995 => 2,
            size if size < 99.95 => 1,
            _ => 0,
        };
        self.number(value, decimals)
    }
}

/// Decimals needed to show a multiple of `step`.
fn decimals_of(step: f64) -> usize {
    (0..4).find(|&decimals| 10f64.powi(-decimals) <= step * 1.000_001).map_or(4, |decimals| decimals as usize)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn american() -> Style {
        Style {
            mass: MassUnit::Ounce,
            volume: VolumeUnit::UsFluidOunce,
            area: AreaUnit::SquareInch,
            length: LengthUnit::Inch,
            decimal: DecimalMark::Point,
        }
    }

    fn comma() -> Style {
        Style { decimal: DecimalMark::Comma, ..Style::default() }
    }

    #[test]
    fn mass_shows_what_the_step_can() {
        let check = |style: Style, grams: f64, step: f64, expect: &str| {
            assert_eq!(style.mass(Grams::new(grams), Grams::new(step)), expect);
        };
        check(Style::default(), 19.4, 0.1, "19.4 g");
        check(Style::default(), 19.4, 1.0, "19 g");
        check(Style::default(), 19.4, 5.0, "19 g");
        check(Style::default(), 19.4, 0.05, "19.40 g");
        check(Style::default(), 19.4, 0.01, "19.40 g");
        check(Style::default(), -2.25, 0.1, "−2.2 g");
        check(Style::default(), -0.04, 0.1, "0.0 g");
        check(comma(), 19.4, 0.1, "19,4 g");
        check(american(), 28.349523125, 0.1, "1.000 oz");
        check(american(), 28.349523125, 0.1417, "1.000 oz");
        check(american(), 28.349523125, 2.835, "1.0 oz");
    }

    #[test]
    fn other_quantities_read_naturally() {
        let metric = Style::default();
        assert_eq!(metric.volume(Millilitres::new(250.0)), "250 ml");
        assert_eq!(metric.volume(Millilitres::new(7.5)), "7.50 ml");
        assert_eq!(american().volume(Millilitres::new(250.0)), "8.45 fl oz");
        assert_eq!(metric.area(SquareCentimetres::new(187.3)), "187 cm²");
        assert_eq!(american().area(SquareCentimetres::new(187.3)), "29.0 in²");
        assert_eq!(metric.length(Millimetres::new(84.0)), "8.4 cm");
        assert_eq!(metric.length(Millimetres::new(84.5)), "8.45 cm");
        assert_eq!(metric.length(Millimetres::new(100.0)), "10 cm");
        assert_eq!(metric.length(Millimetres::ZERO), "0 cm");
        assert_eq!(american().length(Millimetres::new(84.0)), "3.31 in");
        let millimetres = Style { length: LengthUnit::Millimetre, ..comma() };
        assert_eq!(millimetres.length(Millimetres::new(84.5)), "84,5 mm");
        assert_eq!(metric.laydown_number(Laydown::new(5.5)), "5.5");
        assert_eq!(american().laydown_number(Laydown::new(5.5)), "1.25");
        assert_eq!(metric.specific_gravity(SpecificGravity::new(1.45).unwrap()), "1.45");
        assert_eq!(metric.specific_gravity(SpecificGravity::new(1.447).unwrap()), "1.447");
        assert_eq!(comma().specific_gravity(SpecificGravity::new(1.5).unwrap()), "1,50");
    }

    #[test]
    fn codes_read_back() {
        for unit in MassUnit::ALL {
            assert_eq!(unit.code().parse::<MassUnit>().unwrap(), *unit);
        }
        assert_eq!("stone".parse::<MassUnit>().unwrap_err().what, "mass_unit");
    }
}
