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
    /// The size of a unit in the quantity's own unit, by its name.
    unit: &'a dyn Fn(&str) -> Option<f64>,
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

/// The size of the unit of this name in a table of them.
fn size_in(units: &[(&str, f64)], unit: &str) -> Option<f64> {
    units.iter().find(|(name, _)| *name == unit).map(|(_, size)| *size)
}

const MASS_UNITS: &[(&str, f64)] = &[
    ("g", 1.0),
    // No potter weighs in grains. Common practice, no source.
    ("gr", 1.0),
    ("gm", 1.0),
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
        unit: &|unit| size_in(MASS_UNITS, unit),
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

const METRIC_VOLUMES: &[(&str, f64)] = &[
    ("ml", 1.0),
    ("millilitre", 1.0),
    ("millilitres", 1.0),
    ("milliliter", 1.0),
    ("milliliters", 1.0),
    ("cc", 1.0),
    ("cm³", 1.0),
    ("cl", 10.0),
    ("dl", 100.0),
    ("l", 1_000.0),
    ("litre", 1_000.0),
    ("litres", 1_000.0),
    ("liter", 1_000.0),
    ("liters", 1_000.0),
    ("metric cup", 250.0),
    ("metric cups", 250.0),
];

/// Fluid ounces in a measure: in the US, and in Britain with its own ounces. US customary: 16 to the pint (NIST Handbook
/// 44, appendix C); imperial: 20 (Units of Measurement Regulations 1995, schedule 1). A cup is half a pint.
fn fluid_ounces(measure: &str) -> Option<(f64, f64)> {
    Some(match measure {
        "fl oz" | "floz" | "oz" | "ounce" | "ounces" | "fluid ounce" | "fluid ounces" => (1.0, 1.0),
        "cup" | "cups" => (8.0, 10.0),
        "pt" | "pint" | "pints" => (16.0, 20.0),
        "qt" | "quart" | "quarts" => (32.0, 40.0),
        "gal" | "gallon" | "gallons" => (128.0, 160.0),
        _ => return None,
    })
}

/// Millilitres in a measure. Without "us" or "imp" before it, it is of the style's own system; in a metric style an ounce
/// is the US one (4% from the other), a cup 250 ml, and a pint could be either.
fn volume_unit(unit: &str, style: &Style) -> Option<f64> {
    if let Some(size) = size_in(METRIC_VOLUMES, unit) {
        return Some(size);
    }
    let (system, measure) = match unit.split_once(' ') {
        Some(("us", measure)) => (VolumeUnit::UsFluidOunce, measure),
        Some(("imp" | "imperial", measure)) => (VolumeUnit::ImperialFluidOunce, measure),
        _ => (style.volume, unit),
    };
    let (us, imperial) = fluid_ounces(measure)?;
    match system {
        VolumeUnit::UsFluidOunce => Some(us * VolumeUnit::UsFluidOunce.millilitres()),
        VolumeUnit::ImperialFluidOunce => Some(imperial * VolumeUnit::ImperialFluidOunce.millilitres()),
        VolumeUnit::Millilitre if us == 1.0 => Some(VolumeUnit::UsFluidOunce.millilitres()),
        VolumeUnit::Millilitre if us == 8.0 => Some(250.0),
        VolumeUnit::Millilitre => None,
    }
}

/// Reads a volume; a bare number is in the style's unit. "oz", "cup", "pint" and "gallon" are those of the style's system;
/// in a metric style a pint or a gallon must say whose it is.
///
/// # Errors
/// When the text is no volume between nothing and 1000 litres, or could be meant two ways.
pub fn volume(text: &str, style: &Style) -> Result<Millilitres, UnitError> {
    let kind = Kind {
        what: Quantity::Volume,
        example: 250.0,
        symbol: style.volume.symbol(),
        unit: &|unit| volume_unit(unit, style),
        bare: style.volume.millilitres(),
        largest: 1_000_000.0,
        thousands: true,
    };
    match measure(&text.to_lowercase().replace("cm3", "cm³"), style, &kind) {
        Err(UnitError::UnknownUnit { unit, .. }) if fluid_ounces(&unit).is_some() => {
            Err(UnitError::UsOrImperial { unit })
        }
        read => read.map(|value| Millilitres::new(value).as_stored()),
    }
}

const AREAS: &[(&str, f64)] = &[
    ("cm²", 1.0),
    ("sq cm", 1.0),
    ("mm²", 0.01),
    ("dm²", 100.0),
    ("m²", 10_000.0),
    ("in²", 6.4516),
    ("sq in", 6.4516),
    ("sq inch", 6.4516),
    ("sq inches", 6.4516),
    ("square inch", 6.4516),
    ("square inches", 6.4516),
    ("square cm", 1.0),
    ("square centimetre", 1.0),
    ("square centimetres", 1.0),
];

/// Reads an area; a bare number is in the style's unit.
///
/// # Errors
/// When the text is no area between nothing and 10 m², or could be meant two ways.
pub fn area(text: &str, style: &Style) -> Result<SquareCentimetres, UnitError> {
    let kind = Kind {
        what: Quantity::Surface,
        example: 187.0,
        symbol: style.area.symbol(),
        unit: &|unit| size_in(AREAS, unit),
        bare: style.area.square_centimetres(),
        largest: 100_000.0,
        thousands: true,
    };
    measure(&text.to_lowercase().replace("m2", "m²").replace("in2", "in²"), style, &kind)
        .map(|value| SquareCentimetres::new(value).as_stored())
}

const LENGTHS: &[(&str, f64)] = &[
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
];

/// Reads a length; a bare number is in the style's unit.
///
/// # Errors
/// When the text is no length between nothing and 10 m, or could be meant two ways.
pub fn length(text: &str, style: &Style) -> Result<Millimetres, UnitError> {
    let kind = Kind {
        what: Quantity::Length,
        example: 8.5,
        symbol: style.length.symbol(),
        unit: &|unit| size_in(LENGTHS, unit),
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
    let kind = Kind {
        what: Quantity::Number,
        example: 2.6,
        symbol: "",
        unit: &|_| None,
        bare: 1.0,
        largest: 1e9,
        thousands: true,
    };
    measure(text, style, &kind)
}

const TIMES: &[(&str, f64)] = &[
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
];

/// Reads a time; a bare number is in seconds. "1:05" is a minute and five seconds.
///
/// # Errors
/// When the text is no time between nothing and a day.
pub fn seconds(text: &str, style: &Style) -> Result<Seconds, UnitError> {
    let kind = Kind {
        what: Quantity::Time,
        example: 42.0,
        symbol: "s",
        unit: &|unit| size_in(TIMES, unit),
        bare: 1.0,
        largest: 86_400.0,
        thousands: false,
    };
    let seconds = match cleaned(text, style, &kind)?.split_once(':') {
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
        unit: &|_| None,
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
        unit: &|_| None,
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
            unit => match (kind.unit)(unit) {
                Some(size) => size,
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

/// Lower case, plain figures, signs and spaces: one way to write each, so that the rest reads only that one.
fn cleaned(text: &str, style: &Style, kind: &Kind<'_>) -> Result<String, UnitError> {
    let plain = |c: char| match c {
        '−' | '–' | '－' => '-',
        '⁄' | '∕' | '／' => '/',
        '．' => '.',
        '，' => ',',
        // Arabic: this mark is always the decimal one, and the next always parts thousands, as an apostrophe does.
        '٫' => style.decimal.mark(),
        '٬' | '\'' | '’' => ' ',
        '＋' => '+',
        c if c.is_whitespace() => ' ',
        c => latin_figure(c),
    };
    let clean: String = text.chars().take(LONGEST + 1).flat_map(char::to_lowercase).map(plain).collect();
    let clean = clean.trim().replace("^2", "²").replace("^3", "³");
    let clean = clean.strip_prefix('+').map_or(clean.as_str(), str::trim_start);
    if clean.is_empty() {
        return Err(UnitError::Empty { what: kind.what, example: kind.example(style) });
    }
    if clean.chars().count() > LONGEST {
        return Err(kind.not_a_number(text, style));
    }
    Ok(without_fraction_hyphen(clean))
}

/// A decimal figure of another script as ours: Arabic-Indic, Persian, Devanagari, Bengali, Thai and full width.
fn latin_figure(c: char) -> char {
    const ZEROS: [char; 6] = ['٠', '۰', '०', '০', '๐', '０'];
    let figure = ZEROS.iter().find_map(|zero| (c as u32).checked_sub(*zero as u32).filter(|figure| *figure < 10));
    figure.and_then(|figure| char::from_digit(figure, 10)).unwrap_or(c)
}

/// "1-1/2" and "1-½" as "1 1/2" and "1 ½": between a whole number and a fraction a hyphen is no minus sign.
fn without_fraction_hyphen(clean: &str) -> String {
    let Some((whole, fraction)) = clean.split_once('-') else { return clean.to_owned() };
    let is_whole = whole.ends_with(|c: char| c.is_ascii_digit());
    let is_fraction = fraction.starts_with(|c| vulgar(c).is_some())
        || fraction.trim_start_matches(|c: char| c.is_ascii_digit()).starts_with('/');
    if is_whole && is_fraction { format!("{whole} {fraction}") } else { clean.to_owned() }
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
            // "sq. in." is written as often as "sq in".
            unit: unit.replace(['.', ','], " ").split_whitespace().collect::<Vec<_>>().join(" "),
        });
        rest = after;
    }
    Ok(parts)
}

fn is_figure(c: char) -> bool {
    c.is_ascii_digit() || vulgar(c).is_some()
}

fn vulgar(c: char) -> Option<f64> {
    let (above, below) = match c {
        '¼' => (1.0, 4.0),
        '½' => (1.0, 2.0),
        '¾' => (3.0, 4.0),
        '⅐' => (1.0, 7.0),
        '⅑' => (1.0, 9.0),
        '⅒' => (1.0, 10.0),
        '⅓' => (1.0, 3.0),
        '⅔' => (2.0, 3.0),
        '⅕' => (1.0, 5.0),
        '⅖' => (2.0, 5.0),
        '⅗' => (3.0, 5.0),
        '⅘' => (4.0, 5.0),
        '⅙' => (1.0, 6.0),
        '⅚' => (5.0, 6.0),
        '⅛' => (1.0, 8.0),
        '⅜' => (3.0, 8.0),
        '⅝' => (5.0, 8.0),
        '⅞' => (7.0, 8.0),
        _ => return None,
    };
    Some(above / below)
}

/// A whole number with a fraction ("1 1/2", "1½"), a fraction, or a decimal number.
fn mixed_number(number: &str, text: &str, style: &Style, kind: &Kind<'_>) -> Result<f64, UnitError> {
    let (whole, fraction) = match number.char_indices().next_back() {
        Some((start, c)) if vulgar(c).is_some() => (number[..start].trim_end(), vulgar(c)),
        _ => match number.rsplit_once(' ') {
            Some((whole, last)) if last.contains('/') => (whole.trim_end(), Some(ratio(last, text, style, kind)?)),
            Some(_) if kind.thousands && in_thousands(number.split(['.', ',']).next().unwrap_or(number), ' ') => {
                return decimal(&number.replace(' ', ""), text, style, kind);
            }
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
        let whole = kind.thousands.then(|| without_thousands_marks(figures)).flatten();
        let whole = whole.ok_or_else(|| UnitError::TwoMarks { text: shortened(text) })?;
        return whole.parse().map_err(|_| kind.not_a_number(text, style));
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

/// "1,234.5" and "1.234,5" as 1234.5, and "1,234,567" as 1234567: of two marks the last is the decimal one, and one that
/// stands twice parts thousands.
fn without_thousands_marks(figures: &str) -> Option<String> {
    let (at, last) = figures.char_indices().rev().find(|(_, c)| ".,".contains(*c))?;
    let (whole, part) = figures.split_at(at);
    let other = if last == '.' { ',' } else { '.' };
    if in_thousands(figures, last) {
        Some(figures.replace(last, ""))
    } else if in_thousands(whole, other) {
        Some(format!("{}.{}", whole.replace(other, ""), &part[1..]))
    } else {
        None
    }
}

/// Whether this is one to three figures and then groups of three, parted by `mark`.
fn in_thousands(figures: &str, mark: char) -> bool {
    let mut groups = figures.split(mark);
    let first = groups.next().unwrap_or_default();
    let is_group = |group: &str, length: std::ops::RangeInclusive<usize>| {
        length.contains(&group.len()) && group.bytes().all(|byte| byte.is_ascii_digit())
    };
    figures.contains(mark) && is_group(first, 1..=3) && groups.all(|group| is_group(group, 3..=3))
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

    /// A mark, a figure or a fraction that a keyboard, a spreadsheet or another script writes otherwise.
    #[test]
    fn every_way_to_write_the_same_number() {
        let check = |text: &str, style: Style, expect: f64| {
            let read = mass(text, &style).unwrap_or_else(|error| panic!("{text:?}: {error}"));
            assert_eq!(read, Grams::new(expect).as_stored(), "{text:?}");
        };
        for text in ["1,234.5", "1.234,5", "1 234.5", "1\u{202f}234,5", "1'234.5", "1’234,5", "١٬٢٣٤٫٥", "+1,234.5 gr"]
        {
            check(text, point(), 1_234.5);
            check(text, comma(), 1_234.5);
        }
        for text in ["12,345,678 mg", "12.345.678 mg", "12 345 678 mg"] {
            check(text, point(), 12_345.678);
        }
        for text in ["٣١٫٥", "۳۱٫۵", "３１．５", "३१.५", "৩১.৫", "๓๑.๕", "+31.5", "＋31.5", "31.5 gr", "31.5 gm"]
        {
            check(text, point(), 31.5);
            check(text, comma(), 31.5);
        }
        for text in ["1 1/2", "1-1/2", "1½", "1-½", "1 1⁄2", "1 1∕2"] {
            check(text, ounces(), 1.5 * 28.349523125);
        }
        for (fraction, value) in [("⅕", 0.2), ("⅖", 0.4), ("⅗", 0.6), ("⅘", 0.8), ("⅙", 1.0 / 6.0), ("⅚", 5.0 / 6.0)]
        {
            check(fraction, ounces(), value * 28.349523125);
        }
        let area_of = |text: &str| area(text, &point()).unwrap_or_else(|error| panic!("{text:?}: {error}"));
        for text in ["187 cm^2", "187 sq. cm", "187 Square cm", "1.87 dm^2"] {
            assert_relative_eq!(area_of(text).value(), 187.0);
        }
        for text in ["29 sq. in.", "29 sq.in", "29 in^2", "29 square inches", "29 sq inch"] {
            assert_eq!(area_of(text), SquareCentimetres::new(187.0964).as_stored(), "{text}");
        }
        assert_relative_eq!(volume("250 cm^3", &point()).unwrap().value(), 250.0);
        assert_relative_eq!(seconds("١:٠٥", &point()).unwrap().value(), 65.0);
    }

    /// NIST Handbook 44, appendix C: a US pint is 473.176473 ml, a cup 236.588; the imperial pint is 568.26125 ml (Units of
    /// Measurement Regulations 1995).
    #[test]
    fn cups_and_pints_are_those_of_the_system() {
        let imperial = Style { volume: VolumeUnit::ImperialFluidOunce, ..point() };
        let check = |text: &str, style: &Style, expect: f64| {
            let read = volume(text, style).unwrap_or_else(|error| panic!("{text:?}: {error}"));
            assert_relative_eq!(read.value(), expect, epsilon = 0.0006);
        };
        check("1 cup", &ounces(), 236.588);
        check("2 cups", &imperial, 568.261);
        check("1 cup", &point(), 250.0);
        check("1 metric cup", &ounces(), 250.0);
        check("1 us cup", &point(), 236.588);
        check("1 pt", &ounces(), 473.176);
        for (us, imp) in [("us pint", "imp pint"), ("us pt", "imperial pt"), ("US pt.", "imp. pt")] {
            check(&format!("1 {us}"), &point(), 473.176);
            check(&format!("1 {imp}"), &point(), 568.261);
        }
        for unit in ["pt", "pint", "quarts", "gallon"] {
            let error = UnitError::UsOrImperial { unit: unit.to_owned() };
            assert_eq!(volume(&format!("1 {unit}"), &point()), Err(error));
        }
        let which = UnitError::UsOrImperial { unit: "pt".to_owned() };
        assert_eq!(specific_gravity("29 oz/pt", &point()), Err(which));
        // 29 avoirdupois ounces are 822.136 g.
        let sg = |text: &str| specific_gravity(text, &point()).unwrap().value();
        assert_relative_eq!(sg("29 oz/us pt"), 822.136 / 473.176, max_relative = 1e-4);
        assert_relative_eq!(sg("29 oz/imp pt"), 822.136 / 568.261, max_relative = 1e-4);
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
        for typed in ["1,23.5", "1.234.56", "1.5,000.2", "1,234,5"] {
            assert_eq!(refused(typed, point()), UnitError::TwoMarks { text: text(typed) });
        }
        for (typed, style) in [("1,234", point()), ("1.234", comma())] {
            let (whole, part, mark) = (text("1234"), text("1"), style.decimal.mark());
            let error = UnitError::ThousandsOrDecimal { text: text(typed), whole, part, mark };
            assert_eq!(refused(typed, style), error);
        }
        for typed in ["1 23", "12 3456", "1234 567"] {
            assert_eq!(refused(typed, point()), UnitError::SpaceInNumber { text: text(typed) });
        }
        for typed in ["-3", "−3"] {
            assert_eq!(refused(typed, point()), UnitError::Negative { what });
        }
        assert!(matches!(refused("101 kg", point()), UnitError::TooLarge { what: Quantity::Weight }));
        for typed in ["2 oz 1 lb", "1 lb 2"] {
            assert_eq!(refused(typed, point()), UnitError::MixedUnits { text: text(typed) });
        }
        for text in ["1/0 oz", "1/2/3", ".", "g", "1.5 1/2", "/", "19.4\u{0}", "12-14", "1-2", "1 + 2", "1-1/0"] {
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
        fn near_numbers_make_nothing_fall_over(text in "[0-9.,/ ½¼°gGolbzkm:tTwBbeé٣٫٬３⁄^+'-]{0,14}") {
            for style in [point(), comma()] {
                if let Ok(read) = mass(&text, &style) {
                    prop_assert!((0.0..=100_000.0).contains(&read.value()));
                }
                let _ = (specific_gravity(&text, &style), seconds(&text, &style), temperature(&text, &style));
            }
        }
    }
}
