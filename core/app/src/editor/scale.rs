//! The editor of a scale.

use super::builder::{Ask, EditorBuilder, mass_text};
use super::{EditContext, Note, PendingWrite};
use crate::Result;
use laydown_domain::coat::scale::Scale;
use laydown_domain::units::{Grams, parse};
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Scale> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = saved.map_or("New scale", |_| "Scale").to_owned();
    builder.remove_label = "Archive this scale".to_owned();

    let mass_text = |mg: i64| mass_text(style, mg);
    let ask = |key, label| Ask::new(key, label).hint(style.mass.symbol());
    let name = builder.text(Ask::new("name", "Name").hint("Bench scale"), saved.map(|scale| scale.name.as_str()));
    let capacity = builder.quantity(
        ask("capacity", "Most it carries").help("On its plate: Max."),
        saved.map(|scale| mass_text(scale.capacity_mg)),
        parse::mass,
    );
    let step = builder.quantity(
        ask("step", "Step it reads in").help("On its plate: d. The smallest change it shows."),
        saved.map(|scale| mass_text(scale.step_mg)),
        parse::mass,
    );
    let minimum = builder.optional(
        ask("minimum", "Least it should weigh, if known").help("On its plate: Min."),
        saved.and_then(|scale| scale.minimum_mg).map(mass_text),
        parse::mass,
    );
    let repeatability = builder.optional(
        ask("repeatability", "Scatter when one piece is weighed ten times, if tested").help("The standard deviation."),
        saved.and_then(|scale| scale.repeatability_mg).map(mass_text),
        parse::mass,
    );
    let (Some(capacity), Some(step), Some(minimum), Some(repeatability)) = (capacity, step, minimum, repeatability)
    else {
        return Ok(None);
    };
    let scale = match Scale::new(capacity, step, minimum, repeatability) {
        Ok(scale) => scale,
        Err(error) => {
            builder.field_error("step", error);
            return Ok(None);
        }
    };
    builder.result(Note::plain(format!(
        "A coat weighed after tare is accurate to ±{}, 95 times in 100.",
        style.mass(scale.net_half_width(), step * 0.1)
    )));
    builder.result_if(scale.doubt(style).map(Note::attention));
    let Some(name) = name else { return Ok(None) };
    let sentence = format!("{name} is saved.");
    let scale = move |id| entity::Scale {
        id,
        name,
        capacity_mg: capacity.milligrams(),
        step_mg: step.milligrams(),
        minimum_mg: minimum.map(Grams::milligrams),
        repeatability_mg: repeatability.map(Grams::milligrams),
        gone: false,
    };
    Ok(Some(PendingWrite::one(context.id, sentence, scale)))
}
