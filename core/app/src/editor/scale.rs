//! The editor of a scale.

use super::builder::{Ask, EditorBuilder};
use super::notation::MASS;
use super::{EditContext, Note, PendingWrite};
use crate::Result;
use crate::in_words::scale_doubt;
use crate::messages::{editor as shared, editor_scale as say};
use laydown_domain::coat::scale::Scale;
use laydown_domain::units::Grams;
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Scale> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::archive();

    let ask = |key, label: String| Ask::new(key, label).hint(style.mass.symbol());
    let name =
        builder.text(Ask::new("name", shared::name()).hint(say::name_hint()), saved.map(|scale| scale.name.as_str()));
    let capacity = builder.quantity(
        ask("capacity", say::capacity()).help(say::capacity_help()),
        saved.map(|scale| scale.capacity_mg),
        MASS,
    );
    let step =
        builder.quantity(ask("step", say::step()).help(say::step_help()), saved.map(|scale| scale.step_mg), MASS);
    let minimum = builder.optional(
        ask("minimum", say::minimum()).help(say::minimum_help()),
        saved.and_then(|scale| scale.minimum_mg),
        MASS,
    );
    let repeatability = builder.optional(
        ask("repeatability", say::repeatability()).help(say::repeatability_help()),
        saved.and_then(|scale| scale.repeatability_mg),
        MASS,
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
    builder.result(Note::plain(say::accurate_to(style.mass(scale.net_half_width(), step * 0.1))));
    builder.result_if(scale_doubt(&scale, style).map(Note::attention));
    let Some(name) = name else { return Ok(None) };
    let sentence = shared::is_saved(&name);
    let scale = move |id| entity::Scale {
        id,
        name,
        capacity_mg: capacity.milligrams(),
        step_mg: step.milligrams(),
        minimum_mg: minimum.map(Grams::milligrams),
        repeatability_mg: repeatability.map(Grams::milligrams),
        ..current.unwrap_or_default()
    };
    Ok(Some(PendingWrite::one(context, sentence, scale)))
}
