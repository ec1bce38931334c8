//! The sheet of a vessel for checking SG: weighed once empty and once brim-full of water, it serves every bucket.

use super::draft::{Ask, Draft, bare, mass_text};
use super::{Desk, Keeping, Note};
use crate::Result;
use laydown_domain::glaze::slurry::{SlurryError, water_density};
use laydown_domain::units::{Celsius, Grams, Millilitres, parse};
use laydown_store::entity;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let current: Option<entity::Vessel> = desk.current()?;
    let kept = current.as_ref();
    let style = draft.style;
    draft.title = kept.map_or("New vessel", |_| "Vessel").to_owned();
    draft.remove_label = "Put this vessel away";

    let mass_text = |mg: i64| mass_text(style, mg);
    let ask = |key, label| Ask::new(key, label).hint(style.mass.symbol());
    let name = draft.text(Ask::new("name", "Name").hint("Jam jar"), kept.map(|vessel| vessel.name.as_str()));
    let empty =
        draft.quantity(ask("empty", "Empty and dry"), kept.map(|vessel| mass_text(vessel.empty_mg)), parse::mass);
    let with_water = draft.quantity(
        ask("with_water", "Full of water")
            .help("To the brim or to a scratched line; fill it with glaze to the same place."),
        kept.map(|vessel| mass_text(vessel.with_water_mg)),
        parse::mass,
    );
    let temperature = draft.quantity(
        Ask::new("water_temperature", "Temperature of the water, °C"),
        Some(kept.map_or_else(
            || "20".to_owned(),
            |vessel| bare(style, Celsius::from_millidegrees(vessel.water_temperature_mc).value()),
        )),
        parse::temperature,
    );
    let (Some(empty), Some(with_water), Some(temperature)) = (empty, with_water, temperature) else { return Ok(None) };
    match volume(empty, with_water, temperature) {
        Ok(volume) => draft.result(Note::plain(format!("It holds {}.", style.volume(volume)))),
        Err(error) => {
            draft.refuse("with_water", error);
            return Ok(None);
        }
    }
    let Some(name) = name else { return Ok(None) };
    let sentence = format!("{name} is kept.");
    let vessel = move |id| entity::Vessel {
        id,
        name,
        empty_mg: empty.milligrams(),
        with_water_mg: with_water.milligrams(),
        water_temperature_mc: temperature.millidegrees(),
        gone: false,
    };
    Ok(Some(Keeping::one(desk.id, sentence, vessel)))
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
