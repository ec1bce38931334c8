//! How the numbers that are stored stand in the fields of an editor, and how what is typed there is read.

use laydown_domain::coat::MOST_LAYDOWN;
use laydown_domain::units::{
    Celsius, Grams, Laydown, Millilitres, Millimetres, PowderDensity, Seconds, SpecificGravity, SquareCentimetres,
    Style, UnitError, parse,
};

/// How one kind of stored number is shown and read. Text is rounder than what is stored: where a field still shows what it
/// showed, the stored number is taken and not the text.
pub(super) struct Notation<T> {
    /// The stored number as it stands in a field.
    pub(super) show: fn(i64, &Style) -> String,
    /// What was typed.
    pub(super) read: fn(&str, &Style) -> Result<T, UnitError>,
    /// The stored number as it is calculated with; an error where it cannot be.
    pub(super) stored: fn(i64) -> Result<T, UnitError>,
}

/// Stored in milligrams.
pub(super) const MASS: Notation<Grams> = Notation {
    show: |mg, style| bare(style, Grams::from_milligrams(mg).value() / style.mass.grams()),
    read: parse::mass,
    stored: |mg| Ok(Grams::from_milligrams(mg)),
};

/// Stored in microlitres.
pub(super) const VOLUME: Notation<Millilitres> = Notation {
    show: |ul, style| bare(style, Millilitres::from_microlitres(ul).value() / style.volume.millilitres()),
    read: parse::volume,
    stored: |ul| Ok(Millilitres::from_microlitres(ul)),
};

/// Stored in square millimetres.
pub(super) const AREA: Notation<SquareCentimetres> = Notation {
    show: |mm2, style| {
        bare(style, SquareCentimetres::from_square_millimetres(mm2).value() / style.area.square_centimetres())
    },
    read: parse::area,
    stored: |mm2| Ok(SquareCentimetres::from_square_millimetres(mm2)),
};

/// Stored in micrometres.
pub(super) const LENGTH: Notation<Millimetres> = Notation {
    show: |um, style| style.length_number(Millimetres::from_micrometres(um)),
    read: parse::length,
    stored: |um| Ok(Millimetres::from_micrometres(um)),
};

/// Of water, stored in thousandths of a degree.
pub(super) const TEMPERATURE: Notation<Celsius> = Notation {
    show: |mc, style| bare(style, Celsius::from_millidegrees(mc).value()),
    read: parse::temperature,
    stored: |mc| Ok(Celsius::from_millidegrees(mc)),
};

/// Of a kiln, in whole degrees mostly; stored in thousandths.
pub(super) const TOP_TEMPERATURE: Notation<Celsius> = Notation {
    show: TEMPERATURE.show,
    read: |text, style| Ok(Celsius::new(parse::number(text, style)?).as_stored()),
    stored: TEMPERATURE.stored,
};

/// Stored in milliseconds.
pub(super) const TIME: Notation<Seconds> = Notation {
    show: |ms, style| bare(style, Seconds::from_milliseconds(ms).value()),
    read: parse::seconds,
    stored: |ms| Ok(Seconds::from_milliseconds(ms)),
};

/// Hours in the field; stored and calculated with in whole minutes.
pub(super) const HOURS: Notation<i64> = Notation {
    show: |minutes, style| bare(style, minutes as f64 / 60.0),
    read: |text, style| Ok((parse::number(text, style)? * 60.0).round() as i64),
    stored: Ok,
};

/// Stored in hundred-thousandths.
pub(super) const SG: Notation<SpecificGravity> = Notation {
    show: |e5, style| match SpecificGravity::from_hundred_thousandths(e5) {
        Ok(sg) => style.specific_gravity(sg),
        Err(_) => bare(style, e5 as f64 / 1e5),
    },
    read: parse::specific_gravity,
    stored: SpecificGravity::from_hundred_thousandths,
};

/// Of a dry powder, stored in thousandths.
pub(super) const POWDER_DENSITY: Notation<PowderDensity> = Notation {
    show: |e3, style| bare(style, e3 as f64 / 1e3),
    read: |text, style| PowderDensity::new(parse::number(text, style)?),
    stored: PowderDensity::from_thousandths,
};

/// Of bisque, in grams per millilitre in the field; stored and calculated with in milligrams per millilitre.
pub(super) const BISQUE_DENSITY: Notation<i64> = Notation {
    show: |mg_ml, style| bare(style, mg_ml as f64 / 1e3),
    read: |text, style| Ok((parse::number(text, style)? * 1e3).round() as i64),
    stored: Ok,
};

/// In dry grams on 100 cm², above nothing and no more than a bisque wall can hold; stored in milligrams per dm².
pub(super) const LAYDOWN: Notation<Laydown> = Notation {
    show: |mg_dm2, style| bare(style, Laydown::from_milligrams_per_dm2(mg_dm2).value()),
    read: |text, style| {
        let laydown = Laydown::new(parse::number(text, style)?).as_stored();
        if laydown.is_positive() && laydown <= MOST_LAYDOWN {
            Ok(laydown)
        } else {
            Err(UnitError::NoLaydown { value: laydown.value(), most: MOST_LAYDOWN.value() })
        }
    },
    stored: |mg_dm2| Ok(Laydown::from_milligrams_per_dm2(mg_dm2)),
};

/// A percentage in the field; stored and calculated with in ten-thousandths.
pub(super) const PERCENT: Notation<i64> = Notation {
    show: |e4, style| bare(style, e4 as f64 / 100.0),
    read: |text, style| Ok((parse::number(text.trim().trim_end_matches('%'), style)? * 100.0).round() as i64),
    stored: Ok,
};

/// A plain number that is stored as it is; what is typed may have decimals, which the editor refuses.
pub(super) const COUNT: Notation<f64> =
    Notation { show: |count, style| bare(style, count as f64), read: parse::number, stored: |count| Ok(count as f64) };

/// A plain number as it stands in a field, without zeros that say nothing.
pub(super) fn bare(style: &Style, value: f64) -> String {
    let written = style.number(value, 3);
    written.trim_end_matches('0').trim_end_matches(style.decimal.mark()).to_owned()
}
