//! Reading people's notation: "31,5", "1 lb 2 oz", "½ oz", "1450 g/l". What could be meant two ways is refused.
//!
//! A quantity is rounded here to what is stored of it, so that whatever is made of it later is made of the same number.

use super::{
    Celsius, Grams, Millilitres, Millimetres, Quantity, Seconds, SpecificGravity, SquareCentimetres, Style, UnitError,
    VolumeUnit,
};
use crate::glaze::slurry;
use crate::truncate::truncate;

/// More characters than any quantity needs; what is longer was not typed as one.
const LONGEST: usize = 40;

/// One kind of quantity: its name, its units, the factor of a bare number, and its bounds.
struct Kind<'a> {
    what: Quantity,
    example: f64,
    symbol: &'a str,
    /// Names of units and their size in the quantity's own unit.
    units: &'a [(&'a str, f64)],
    bare: f64,
    largest: f64,
    /// Whether the quantity is ever large enough for a thousands mark to be meant.
    thousands: bool,
}

impl Kind<'_> {
    fn example(&self, style: &Style) -> String {
        let decimals = usize::from(self.example.fract() != 0.0) * if self.example < 2.0 { 2 } else { 1 };
        style.number(self.example, decimals)
    }

    fn not_a_number(&self, text: &str, style: &Style) -> UnitError {
        UnitError::NotANumber { what: self.what, text: shortened(text), example: self.example(style) }
    }
}

const MASS_UNITS: &[(&str, f64)] = &[
    ("g", 1.0),
    ("gram", 1.0),
    ("grams", 1.0),
    ("gramme", 1.0),
    ("grammes", 1.0),
    ("mg", 0.001),
    ("kg", 1_000.0),
    ("kilo", 1_000.0),
    ("kilos", 1_000.0),
    ("oz", 28.349523125),
    ("ounce", 28.349523125),
    ("ounces", 28.349523125),
    ("lb", 453.59237),
    ("lbs", 453.59237),
    ("pound", 453.59237),
    ("pounds", 453.59237),
];

fn mass_kind(style: &Style) -> Kind<'static> {
    Kind {
        what: Quantity::Weight,
        example: 19.4,
        symbol: style.mass.symbol(),
        units: MASS_UNITS,
        bare: style.mass.grams(),
        largest: 100_000.0,
        thousands: true,
    }
}

/// Reads a mass; a bare number is in the style's unit.
///
/// # Errors
/// When the text is no mass between nothing and 100 kg, or could be meant two ways.
pub fn mass(text: &str, style: &Style) -> Result<Grams, UnitError> {
    measure(text, style, &mass_kind(style)).map(|value| Grams::new(value).as_stored())
}

fn volume_units(style: &Style) -> Vec<(&'static str, f64)> {
    let us = VolumeUnit::UsFluidOunce.millilitres();
    let imperial = VolumeUnit::ImperialFluidOunce.millilitres();
    let (ounce, ounces_in_pint) = match style.volume {
        VolumeUnit::ImperialFluidOunce => (imperial, 20.0),
        VolumeUnit::UsFluidOunce | VolumeUnit::Millilitre => (us, 16.0),
    };
    let pint = ounce * ounces_in_pint;
    let mut units = vec![
        ("us fl oz", us),
        ("imp fl oz", imperial),
        ("imperial fl oz", imperial),
        ("us pint", us * 16.0),
        ("imp pint", imperial * 20.0),
        ("imperial pint", imperial * 20.0),
    ];
    for (names, size) in [
        (&["ml", "millilitre", "millilitres", "milliliter", "milliliters", "cc", "cm³"][..], 1.0),
        (&["cl"], 10.0),
        (&["dl"], 100.0),
        (&["l", "litre", "litres", "liter", "liters"], 1_000.0),
        (&["fl oz", "fl. oz", "floz", "oz", "ounce", "ounces", "fluid ounce", "fluid ounces"], ounce),
        (&["pt", "pint", "pints"], pint),
        (&["qt", "quart", "quarts"], pint * 2.0),
        (&["gal", "gallon", "gallons"], pint * 8.0),
    ] {
        units.extend(names.iter().map(|name| (*name, size)));
    }
    units
}

/// Reads a volume; a bare number is in the style's unit. "oz", "pint" and "gallon" are imperial in an imperial style,
/// otherwise US.
///
/// # Errors
/// When the text is no volume between nothing and 1000 litres, or could be meant two ways.
pub fn volume(text: &str, style: &Style) -> Result<Millilitres, UnitError> {
    let kind = Kind {
        what: Quantity::Volume,
        example: 250.0,
        symbol: style.volume.symbol(),
        units: &volume_units(style),
        bare: style.volume.millilitres(),
        largest: 1_000_000.0,
        thousands: true,
    };
    measure(&text.to_lowercase().replace("cm3", "cm³"), style, &kind).map(|value| Millilitres::new(value).as_stored())
}

/// Reads an area; a bare number is in the style's unit.
///
/// # Errors
/// When the text is no area between nothing and 10 m², or could be meant two ways.
pub fn area(text: &str, style: &Style) -> Result<SquareCentimetres, UnitError> {
    let kind = Kind {
        what: Quantity::Surface,
        example: 187.0,
        symbol: style.area.symbol(),
        units: &[
            ("cm²", 1.0),
            ("sq cm", 1.0),
            ("mm²", 0.01),
            ("dm²", 100.0),
            ("m²", 10_000.0),
            ("in²", 6.4516),
            ("sq in", 6.4516),
            ("square inches", 6.4516),
            ("square centimetres", 1.0),
        ],
        bare: style.area.square_centimetres(),
        largest: 100_000.0,
        thousands: true,
    };
    measure(&text.to_lowercase().replace("m2", "m²").replace("in2", "in²"), style, &kind)
        .map(|value| SquareCentimetres::new(value).as_stored())
}

/// Reads a length; a bare number is in the style's unit.
///
/// # Errors
/// When the text is no length between nothing and 10 m, or could be meant two ways.
pub fn length(text: &str, style: &Style) -> Result<Millimetres, UnitError> {
    let kind = Kind {
        what: Quantity::Length,
        example: 8.5,
        symbol: style.length.symbol(),
        units: &[
            ("mm", 1.0),
            ("cm", 10.0),
            ("m", 1_000.0),
            ("in", 25.4),
            ("inch", 25.4),
            ("inches", 25.4),
            ("\"", 25.4),
            ("″", 25.4),
            ("ft", 304.8),
            ("feet", 304.8),
        ],
        bare: style.length.millimetres(),
        largest: 10_000.0,
        thousands: true,
    };
    measure(text, style, &kind).map(|value| Millimetres::new(value).as_stored())
}

/// Reads a plain number from nothing to a thousand million, without a unit.
///
/// # Errors
/// When the text is no such number, or could be meant two ways.
pub fn number(text: &str, style: &Style) -> Result<f64, UnitError> {
    let kind =
        Kind { what: Quantity::Number, example: 2.6, symbol: "", units: &[], bare: 1.0, largest: 1e9, thousands: true };
    measure(text, style, &kind)
}

/// Reads a time; a bare number is in seconds. "1:05" is a minute and five seconds.
///
/// # Errors
/// When the text is no time between nothing and a day.
pub fn seconds(text: &str, style: &Style) -> Result<Seconds, UnitError> {
    let kind = Kind {
        what: Quantity::Time,
        example: 42.0,
        symbol: "s",
        units: &[
            ("s", 1.0),
            ("sec", 1.0),
            ("secs", 1.0),
            ("second", 1.0),
            ("seconds", 1.0),
            ("min", 60.0),
            ("mins", 60.0),
            ("minute", 60.0),
            ("minutes", 60.0),
            ("h", 3_600.0),
            ("hour", 3_600.0),
            ("hours", 3_600.0),
        ],
        bare: 1.0,
        largest: 86_400.0,
        thousands: false,
    };
    let seconds = match text.trim().split_once(':') {
        Some((minutes, rest)) if rest.len() >= 2 => {
            let whole_minutes: u32 = minutes.parse().map_err(|_| kind.not_a_number(text, style))?;
            let rest = measure(rest, style, &kind)?;
            if rest >= 60.0 {
                return Err(kind.not_a_number(text, style));
            }
            within(f64::from(whole_minutes) * 60.0 + rest, &kind)?
        }
        _ => measure(text, style, &kind)?,
    };
    Ok(Seconds::new(seconds).as_stored())
}

/// Reads a temperature; a bare number is in degrees Celsius, "68 F" in Fahrenheit.
///
/// # Errors
/// When the text is no temperature between −50 and 1500 °C.
pub fn temperature(text: &str, style: &Style) -> Result<Celsius, UnitError> {
    let kind = Kind {
        what: Quantity::Temperature,
        example: 20.0,
        symbol: "°C",
        units: &[],
        bare: 1.0,
        largest: 1e5,
        thousands: false,
    };
    let clean = cleaned(text, style, &kind)?;
    let (sign, unsigned) = match clean.strip_prefix('-') {
        Some(rest) => (-1.0, rest.trim_start()),
        None => (1.0, clean.as_str()),
    };
    let parts = parts(unsigned, text, style, &kind)?;
    let [part] = parts.as_slice() else { return Err(kind.not_a_number(text, style)) };
    let degrees = sign * part.number;
    let celsius = match part.unit.trim_start_matches(['°', ' ']) {
        "" | "c" | "celsius" => degrees,
        "f" | "fahrenheit" => (degrees - 32.0) / 1.8,
        _ => return Err(unknown_unit(part, style, &kind)),
    };
    if (-50.0..=1500.0).contains(&celsius) {
        Ok(Celsius::new(celsius).as_stored())
    } else {
        Err(UnitError::NoTemperature { value: celsius.round() })
    }
}

/// Reads a specific gravity: "1.45", a weight per volume ("1450 g/l", "290 g/200 ml", "29 oz/pt"; one gram to the
/// millilitre counts as 1), degrees Baumé ("40 Bé", heavy scale, modulus 145) or degrees Twaddell ("90 Tw").
///
/// # Errors
/// When the text is none of these, or the result is not from 1.02 to under 2.2.
pub fn specific_gravity(text: &str, style: &Style) -> Result<SpecificGravity, UnitError> {
    let kind = Kind {
        what: Quantity::SpecificGravity,
        example: 1.45,
        symbol: "",
        units: &[],
        bare: 1.0,
        largest: 1e5,
        thousands: false,
    };
    let clean = cleaned(text, style, &kind)?;
    if let Some((weight, per)) = clean.split_once('/').or_else(|| clean.split_once(" per "))
        && weight.contains(char::is_alphabetic)
    {
        let per = per.trim();
        let per = if per.starts_with(|c: char| c.is_ascii_digit()) { per.to_owned() } else { format!("1 {per}") };
        let (grams, millilitres) = (mass(weight, style)?, volume(&per, style)?);
        if !millilitres.is_positive() {
            return Err(kind.not_a_number(text, style));
        }
        return SpecificGravity::new(grams.value() / millilitres.value());
    }
    let parts = parts(refuse_minus(&clean, &kind)?, text, style, &kind)?;
    let [part] = parts.as_slice() else { return Err(kind.not_a_number(text, style)) };
    match part.unit.trim_start_matches(['°', ' ']) {
        "" | "sg" => SpecificGravity::new(part.number),
        "bé" | "be" | "baumé" | "baume" => slurry::sg_from_baume(part.number, slurry::BAUME_MODULUS),
        "tw" | "twaddell" | "twaddle" => slurry::sg_from_twaddell(part.number),
        _ => Err(unknown_unit(part, style, &kind)),
    }
}

struct Part {
    number: f64,
    unit: String,
}

fn measure(text: &str, style: &Style, kind: &Kind<'_>) -> Result<f64, UnitError> {
    let clean = cleaned(text, style, kind)?;
    let parts = parts(refuse_minus(&clean, kind)?, text, style, kind)?;
    let several = parts.len() > 1;
    let mut sum = 0.0;
    let mut smallest = f64::INFINITY;
    for part in &parts {
        let size = match part.unit.as_str() {
            "" if several => return Err(UnitError::MixedUnits { text: shortened(text) }),
            "" => kind.bare,
            unit => match kind.units.iter().find(|(name, _)| *name == unit) {
                Some((_, size)) => *size,
                None => return Err(unknown_unit(part, style, kind)),
            },
        };
        if size >= smallest {
            return Err(UnitError::MixedUnits { text: shortened(text) });
        }
        smallest = size;
        sum += part.number * size;
    }
    within(sum, kind)
}

fn within(value: f64, kind: &Kind<'_>) -> Result<f64, UnitError> {
    if value <= kind.largest { Ok(value) } else { Err(UnitError::TooLarge { what: kind.what }) }
}

fn unknown_unit(part: &Part, style: &Style, kind: &Kind<'_>) -> UnitError {
    let example = format!("{} {}", kind.example(style), kind.symbol);
    UnitError::UnknownUnit { what: kind.what, unit: shortened(&part.unit), example: example.trim_end().to_owned() }
}

/// Lower case, plain spaces and a plain minus sign.
fn cleaned(text: &str, style: &Style, kind: &Kind<'_>) -> Result<String, UnitError> {
    let clean: String = text
        .chars()
        .take(LONGEST + 1)
        .flat_map(char::to_lowercase)
        .map(|c| match c {
            '−' | '–' => '-',
            c if c.is_whitespace() => ' ',
            c => c,
        })
        .collect();
    let clean = clean.trim();
    if clean.is_empty() {
        return Err(UnitError::Empty { what: kind.what, example: kind.example(style) });
    }
    if clean.chars().count() > LONGEST {
        return Err(kind.not_a_number(text, style));
    }
    Ok(clean.to_owned())
}

fn refuse_minus<'a>(clean: &'a str, kind: &Kind<'_>) -> Result<&'a str, UnitError> {
    if clean.starts_with('-') { Err(UnitError::Negative { what: kind.what }) } else { Ok(clean) }
}

/// Splits into numbers, each with the unit that follows it (possibly none).
fn parts(clean: &str, text: &str, style: &Style, kind: &Kind<'_>) -> Result<Vec<Part>, UnitError> {
    let mut rest = clean;
    let mut parts = Vec::new();
    while !rest.is_empty() {
        let end = rest.find(|c: char| !is_figure(c) && !".,/ ".contains(c)).unwrap_or(rest.len());
        let (number, after) = rest.split_at(end);
        let unit_end = after.find(is_figure).unwrap_or(after.len());
        let (unit, after) = after.split_at(unit_end);
        parts.push(Part {
            number: mixed_number(number.trim(), text, style, kind)?,
            unit: unit.trim().trim_end_matches(['.', ',', ' ']).to_owned(),
        });
        rest = after;
    }
    Ok(parts)
}

fn is_figure(c: char) -> bool {
    c.is_ascii_digit() || vulgar(c).is_some()
}

fn vulgar(c: char) -> Option<f64> {
    Some(match c {
        '¼' => 0.25,
        '½' => 0.5,
        '¾' => 0.75,
        '⅓' => 1.0 / 3.0,
        '⅔' => 2.0 / 3.0,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => return None,
    })
}

/// A whole number with a fraction ("1 1/2", "1½"), a fraction, or a decimal number.
fn mixed_number(number: &str, text: &str, style: &Style, kind: &Kind<'_>) -> Result<f64, UnitError> {
    let (whole, fraction) = match number.char_indices().next_back() {
        Some((start, c)) if vulgar(c).is_some() => (number[..start].trim_end(), vulgar(c)),
        _ => match number.rsplit_once(' ') {
            Some((whole, last)) if last.contains('/') => (whole.trim_end(), Some(ratio(last, text, style, kind)?)),
            Some(_) => return Err(UnitError::SpaceInNumber { text: shortened(text) }),
            None if number.contains('/') => ("", Some(ratio(number, text, style, kind)?)),
            None => (number, None),
        },
    };
    match fraction {
        None => decimal(whole, text, style, kind),
        Some(fraction) if whole.is_empty() => Ok(fraction),
        Some(fraction) => Ok(whole_number(whole, text, style, kind)? + fraction),
    }
}

fn ratio(fraction: &str, text: &str, style: &Style, kind: &Kind<'_>) -> Result<f64, UnitError> {
    let (above, below) = fraction.split_once('/').ok_or_else(|| kind.not_a_number(text, style))?;
    let below = whole_number(below, text, style, kind)?;
    if below == 0.0 {
        return Err(kind.not_a_number(text, style));
    }
    Ok(whole_number(above, text, style, kind)? / below)
}

fn whole_number(figures: &str, text: &str, style: &Style, kind: &Kind<'_>) -> Result<f64, UnitError> {
    figures.parse::<u32>().map(f64::from).map_err(|_| kind.not_a_number(text, style))
}

fn decimal(figures: &str, text: &str, style: &Style, kind: &Kind<'_>) -> Result<f64, UnitError> {
    if figures.matches(['.', ',']).count() > 1 {
        return Err(UnitError::TwoMarks { text: shortened(text) });
    }
    let chosen = style.decimal.mark();
    if let Some((before, after)) = figures.split_once(['.', ','])
        && kind.thousands
        && !figures.contains(chosen)
        && after.len() == 3
        && (1..=3).contains(&before.len())
        && !before.starts_with('0')
    {
        return Err(UnitError::ThousandsOrDecimal {
            text: shortened(text),
            whole: format!("{before}{after}"),
            part: before.to_owned(),
            mark: chosen,
        });
    }
    figures.replace(',', ".").parse().map_err(|_| kind.not_a_number(text, style))
}

/// What was typed, short enough to repeat in a sentence.
fn shortened(text: &str) -> String {
    truncate(text.trim(), 24)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{AreaUnit, DecimalMark, LengthUnit, MassUnit};
    use approx::assert_relative_eq;
    use proptest::prelude::*;

    fn point() -> Style {
        Style::default()
    }

    fn comma() -> Style {
        Style { decimal: DecimalMark::Comma, ..Style::default() }
    }

    fn ounces() -> Style {
        Style {
            mass: MassUnit::Ounce,
            volume: VolumeUnit::UsFluidOunce,
            area: AreaUnit::SquareInch,
            length: LengthUnit::Inch,
            ..point()
        }
    }

    #[test]
    fn masses_as_people_write_them() {
        let check = |text: &str, style: Style, expect: f64| {
            let read = mass(text, &style).unwrap_or_else(|error| panic!("{text:?}: {error}"));
            // To the milligram that is stored.
            assert_eq!(read, Grams::new(expect).as_stored(), "{text:?}");
        };
        check("31.5", point(), 31.5);
        check("31,5", point(), 31.5);
        check(" 31.5 g ", point(), 31.5);
        check("31,5 g", comma(), 31.5);
        check("31.5", comma(), 31.5);
        check("0", point(), 0.0);
        check(".5", point(), 0.5);
        check("5.", point(), 5.0);
        check("1.2 kg", point(), 1_200.0);
        check("1.234", point(), 1.234);
        check("0,125 kg", point(), 125.0);
        check("1 kg 200 g", point(), 1_200.0);
        check("1 lb 2 oz", point(), 510.29141625);
        check("1lb2oz", point(), 510.29141625);
        check("1 lb., 2 oz.", point(), 510.29141625);
        check("2 oz", point(), 56.69904625);
        check("1/2 oz", point(), 14.1747615625);
        check("½", ounces(), 14.1747615625);
        check("1½ oz", ounces(), 42.5242846875);
        check("1 1/2", ounces(), 42.5242846875);
        check("12 g", ounces(), 12.0);
        check("19\u{a0}g", point(), 19.0);
    }

    #[test]
    fn nonsense_is_refused_for_what_is_wrong_with_it() {
        let refused = |text: &str, style: Style| mass(text, &style).unwrap_err();
        let what = Quantity::Weight;
        let (text, example) = (str::to_owned, "19.4".to_owned());
        assert_eq!(refused("", point()), UnitError::Empty { what, example: example.clone() });
        assert_eq!(refused("   ", comma()), UnitError::Empty { what, example: "19,4".to_owned() });
        for typed in ["l9.4", "inf", "NaN"] {
            let error = UnitError::NotANumber { what, text: text(typed), example: example.clone() };
            assert_eq!(refused(typed, point()), error);
        }
        for (typed, unit) in [("19.O", "o"), ("1e3", "e"), ("12 ml", "ml")] {
            let error = UnitError::UnknownUnit { what, unit: text(unit), example: "19.4 g".to_owned() };
            assert_eq!(refused(typed, point()), error);
        }
        for typed in ["1,234.5", "1.234.567"] {
            assert_eq!(refused(typed, point()), UnitError::TwoMarks { text: text(typed) });
        }
        for (typed, style) in [("1,234", point()), ("1.234", comma())] {
            let (whole, part, mark) = (text("1234"), text("1"), style.decimal.mark());
            let error = UnitError::ThousandsOrDecimal { text: text(typed), whole, part, mark };
            assert_eq!(refused(typed, style), error);
        }
        assert_eq!(refused("1 234", point()), UnitError::SpaceInNumber { text: text("1 234") });
        for typed in ["-3", "−3"] {
            assert_eq!(refused(typed, point()), UnitError::Negative { what });
        }
        assert!(matches!(refused("101 kg", point()), UnitError::TooLarge { what: Quantity::Weight }));
        for typed in ["2 oz 1 lb", "1 lb 2"] {
            assert_eq!(refused(typed, point()), UnitError::MixedUnits { text: text(typed) });
        }
        for text in ["1/0 oz", "1/2/3", ".", "g", "1.5 1/2", "/", "19.4\u{0}", "1٫5"] {
            assert!(mass(text, &point()).is_err(), "{text:?}");
        }
        assert!(mass(&"9".repeat(400), &point()).is_err());
    }

    #[test]
    fn other_quantities() {
        let imperial = Style { volume: VolumeUnit::ImperialFluidOunce, ..point() };
        let volume_of = |text: &str, style: &Style| volume(text, style).unwrap();
        assert_eq!(volume_of("12 fl oz", &point()), Millilitres::new(354.88235475).as_stored());
        assert_eq!(volume_of("12 oz", &imperial), Millilitres::new(340.95675).as_stored());
        assert_eq!(volume_of("12", &ounces()), Millilitres::new(354.88235475).as_stored());
        assert_eq!(volume_of("1 pint", &imperial), Millilitres::new(568.26125).as_stored());
        assert_relative_eq!(volume("7.5 l", &point()).unwrap().value(), 7_500.0);
        assert_relative_eq!(volume("250 CM3", &point()).unwrap().value(), 250.0);
        assert_relative_eq!(area("187 cm2", &point()).unwrap().value(), 187.0);
        assert_eq!(area("29 sq in", &point()).unwrap(), SquareCentimetres::new(187.0964).as_stored());
        assert_eq!(area("29 In2", &point()).unwrap(), SquareCentimetres::new(187.0964).as_stored());
        assert_relative_eq!(length("8,5 cm", &point()).unwrap().value(), 85.0);
        assert_relative_eq!(length("3 1/2", &ounces()).unwrap().value(), 88.9);
        assert_relative_eq!(number("2,6", &point()).unwrap(), 2.6);
        assert!(number("2.6 g", &point()).is_err());
        assert_relative_eq!(seconds("1:05", &point()).unwrap().value(), 65.0);
        assert_relative_eq!(seconds("1 min 5 s", &point()).unwrap().value(), 65.0);
        assert_relative_eq!(seconds("42", &point()).unwrap().value(), 42.0);
        assert!(seconds("1:75", &point()).is_err());
        assert_relative_eq!(temperature("68 F", &point()).unwrap().value(), 20.0, max_relative = 1e-12);
        assert_relative_eq!(temperature("-5 °C", &point()).unwrap().value(), -5.0);
        assert!(matches!(temperature("2000", &point()), Err(UnitError::NoTemperature { .. })));
    }

    #[test]
    fn specific_gravity_in_every_notation() {
        let check = |text: &str, style: Style, expect: f64| {
            let read = specific_gravity(text, &style).unwrap_or_else(|error| panic!("{text:?}: {error}"));
            assert_relative_eq!(read.value(), expect, max_relative = 1e-4);
        };
        check("1.45", point(), 1.45);
        check("1,45", point(), 1.45);
        check("1.450", comma(), 1.45);
        check("1450 g/l", point(), 1.45);
        check("1450 g/L", point(), 1.45);
        check("145 g/100ml", point(), 1.45);
        check("290 g per 200 ml", point(), 1.45);
        check("1.45 kg/l", point(), 1.45);
        check("40 Bé", point(), 1.381);
        check("40°Be", point(), 1.381);
        check("90 Tw", point(), 1.45);
        check("29 oz/pt", Style { volume: VolumeUnit::ImperialFluidOunce, ..point() }, 1.4467);
    }

    #[test]
    fn absurd_specific_gravity_is_refused() {
        let refused = |text: &str| specific_gravity(text, &point()).unwrap_err();
        assert_eq!(refused("1"), UnitError::NoHeavierThanWater { value: 1.0 });
        assert_eq!(refused("1450"), UnitError::TooHeavyForGlaze { value: 1_450.0 });
        for text in ["", "0.98", "-1.45", "1.4.5", "145 Be", "150 Be", "400 Tw", "1450 g/0 l", "g/l", "1.45 g"] {
            assert!(specific_gravity(text, &point()).is_err(), "{text:?}");
        }
    }

    proptest! {
        #[test]
        fn what_is_printed_reads_back(milligrams in 0i64..20_000_000, comma_mark: bool, in_ounces: bool) {
            let style = Style {
                mass: if in_ounces { MassUnit::Ounce } else { MassUnit::Gram },
                decimal: if comma_mark { DecimalMark::Comma } else { DecimalMark::Point },
                ..point()
            };
            let printed = style.mass(Grams::from_milligrams(milligrams), Grams::new(0.001));
            let read = mass(&printed, &style).unwrap();
            let rounding = if in_ounces { 0.5e-4 * 28.35 } else { 1e-9 };
            prop_assert!((read.value() - milligrams as f64 / 1000.0).abs() <= rounding, "{printed}");
        }

        #[test]
        fn no_text_makes_it_fall_over(text in "\\PC{0,44}") {
            for style in [point(), comma(), ounces()] {
                if let Ok(read) = mass(&text, &style) {
                    prop_assert!((0.0..=100_000.0).contains(&read.value()));
                }
                if let Ok(read) = specific_gravity(&text, &style) {
                    prop_assert!(read.value() > 1.0 && read.value() < 2.2);
                }
                let _ = (volume(&text, &style), area(&text, &style), length(&text, &style), number(&text, &style));
                let _ = (seconds(&text, &style), temperature(&text, &style));
            }
        }

        #[test]
        fn near_numbers_make_nothing_fall_over(text in "[0-9.,/ ½¼°gGolbzkm:tTwBbeé-]{0,14}") {
            for style in [point(), comma()] {
                if let Ok(read) = mass(&text, &style) {
                    prop_assert!((0.0..=100_000.0).contains(&read.value()));
                }
                let _ = (specific_gravity(&text, &style), seconds(&text, &style), temperature(&text, &style));
            }
        }
    }
}
