//! The editor of a vessel for checking SG: weighed once empty and once brim-full of water, it serves every bucket.

use super::builder::{Ask, EditorBuilder};
use super::notation::{MASS, TEMPERATURE};
use super::{EditContext, Note, PendingWrite};
use crate::Result;
use crate::messages::{editor as shared, editor_vessel as say};
use laydown_domain::glaze::slurry::{SlurryError, water_density};
use laydown_domain::units::{Celsius, Grams, Millilitres};
use laydown_store::entity;

/// Of the water, unless told. Common practice, no source.
const ROOM: Celsius = Celsius::new(20.0);

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Vessel> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::archive();

    let ask = |key, label: String| Ask::new(key, label).hint(style.mass.symbol());
    let name =
        builder.text(Ask::new("name", shared::name()).hint(say::name_hint()), saved.map(|vessel| vessel.name.as_str()));
    let empty =
        builder.quantity(ask("empty", say::empty()).help(say::empty_help()), saved.map(|vessel| vessel.empty_mg), MASS);
    let with_water = builder.quantity(
        ask("with_water", say::with_water()).help(say::with_water_help()),
        saved.map(|vessel| vessel.with_water_mg),
        MASS,
    );
    let temperature = builder.quantity(
        Ask::new("water_temperature", say::temperature()),
        Some(saved.map_or(ROOM.millidegrees(), |vessel| vessel.water_temperature_mc)),
        TEMPERATURE,
    );
    let (Some(empty), Some(with_water), Some(temperature)) = (empty, with_water, temperature) else { return Ok(None) };
    match volume(empty, with_water, temperature) {
        Ok(volume) => builder.result(Note::plain(say::holds(style.volume(volume)))),
        Err(error) => {
            builder.field_error("with_water", error);
            return Ok(None);
        }
    }
    let Some(name) = name else { return Ok(None) };
    let sentence = shared::is_saved(&name);
    let vessel = move |id| entity::Vessel {
        id,
        name,
        empty_mg: empty.milligrams(),
        with_water_mg: with_water.milligrams(),
        water_temperature_mc: temperature.millidegrees(),
        ..current.unwrap_or_default()
    };
    Ok(Some(PendingWrite::one(context, sentence, vessel)))
}

/// What the vessel holds, from the weight of the water in it.
fn volume(empty: Grams, with_water: Grams, temperature: Celsius) -> Result<Millilitres, SlurryError> {
    let water = with_water - empty;
    if water.is_positive() {
        Ok(Millilitres::new(water.value() / water_density(temperature)?))
    } else {
        Err(SlurryError::EmptyVessel)
    }
}
