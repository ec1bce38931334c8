//! What is typed where a quantity is asked for.

use laydown_domain::units::{AreaUnit, DecimalMark, LengthUnit, MassUnit, Style, UnitError, VolumeUnit, parse};

use crate::is_sentence;

pub fn seeds() -> Vec<Vec<u8>> {
    let texts = [
        "19.4",
        "31,5",
        "1 lb 2 oz",
        "½ oz",
        "1 1/2 in",
        "1450 g/l",
        "1.45",
        "1'234.5 g",
        "1,234,567",
        "2 min 30 s",
        "0:42",
        "68 °F",
        "12 fl oz",
        "1e9",
        "-3",
        "nan",
        "inf",
        "１９",
        "٣",
        "1/0",
        "0x10",
        "9999999999999999999999999999999999",
        "",
    ];
    texts.iter().zip(0..).map(|(text, style)| [&[style], text.as_bytes()].concat()).collect()
}

pub fn read(bytes: &[u8]) {
    let Some((style, text)) = bytes.split_first() else { return };
    let text = String::from_utf8_lossy(text);
    let style = style_of(*style);
    is_read(parse::mass(&text, &style).map(|mass| mass.value()));
    is_read(parse::volume(&text, &style).map(|volume| volume.value()));
    is_read(parse::area(&text, &style).map(|area| area.value()));
    is_read(parse::length(&text, &style).map(|length| length.value()));
    is_read(parse::number(&text, &style));
    is_read(parse::seconds(&text, &style).map(|seconds| seconds.value()));
    is_read(parse::temperature(&text, &style).map(|temperature| temperature.value()));
    is_read(parse::specific_gravity(&text, &style).map(|sg| sg.value()));
}

/// A number that can be calculated with, or a sentence.
fn is_read(quantity: Result<f64, UnitError>) {
    match quantity {
        Ok(value) => assert!(value.is_finite() && value.abs() < 1e12, "{value}"),
        Err(error) => is_sentence(error),
    }
}

fn style_of(bits: u8) -> Style {
    let bit = |at: u8| usize::from(bits >> at);
    Style {
        mass: MassUnit::ALL[bit(0) % MassUnit::ALL.len()],
        decimal: DecimalMark::ALL[bit(1) % DecimalMark::ALL.len()],
        volume: VolumeUnit::ALL[bit(2) % VolumeUnit::ALL.len()],
        length: LengthUnit::ALL[bit(4) % LengthUnit::ALL.len()],
        area: AreaUnit::ALL[bit(6) % AreaUnit::ALL.len()],
    }
}
