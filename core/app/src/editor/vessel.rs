//! The editor of a vessel for checking SG: weighed once empty and once brim-full of water, it serves every bucket.

use super::builder::{Ask, EditorBuilder, bare, mass_text};
use super::{EditContext, Note, PendingWrite};
use crate::Result;
use laydown_domain::glaze::slurry::{SlurryError, water_density};
use laydown_domain::units::{Celsius, Grams, Millilitres, parse};
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Vessel> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = saved.map_or("New vessel", |_| "Vessel").to_owned();
    builder.remove_label = "Archive this vessel".to_owned();

    let mass_text = |mg: i64| mass_text(style, mg);
    let ask = |key, label| Ask::new(key, label).hint(style.mass.symbol());
    let name = builder.text(Ask::new("name", "Name").hint("Jam jar"), saved.map(|vessel| vessel.name.as_str()));
    let empty =
        builder.quantity(ask("empty", "Empty and dry"), saved.map(|vessel| mass_text(vessel.empty_mg)), parse::mass);
    let with_water = builder.quantity(
        ask("with_water", "Full of water")
            .help("To the brim or to a scratched line; fill it with glaze to the same place."),
        saved.map(|vessel| mass_text(vessel.with_water_mg)),
        parse::mass,
    );
    let temperature = builder.quantity(
        Ask::new("water_temperature", "Temperature of the water, °C"),
        Some(saved.map_or_else(
            || "20".to_owned(),
            |vessel| bare(style, Celsius::from_millidegrees(vessel.water_temperature_mc).value()),
        )),
        parse::temperature,
    );
    let (Some(empty), Some(with_water), Some(temperature)) = (empty, with_water, temperature) else { return Ok(None) };
    match volume(empty, with_water, temperature) {
        Ok(volume) => builder.result(Note::plain(format!("It holds {}.", style.volume(volume)))),
        Err(error) => {
            builder.field_error("with_water", error);
            return Ok(None);
        }
    }
    let Some(name) = name else { return Ok(None) };
    let sentence = format!("{name} is saved.");
    let vessel = move |id| entity::Vessel {
        id,
        name,
        empty_mg: empty.milligrams(),
        with_water_mg: with_water.milligrams(),
        water_temperature_mc: temperature.millidegrees(),
        gone: false,
    };
    Ok(Some(PendingWrite::one(context.id, sentence, vessel)))
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
