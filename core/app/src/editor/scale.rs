//! The editor of a scale.

use super::builder::{Ask, EditorBuilder, item};
use super::notation::MASS;
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::Result;
use crate::in_words::{class_allows, good_from, scale_doubt};
use crate::messages::{editor as shared, editor_scale as say};
use laydown_domain::coat::scale::{AccuracyClass, Scale};
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
    let classes = AccuracyClass::ALL.iter().map(|class| item(class.code(), class.code(), ""));
    let class = builder.choice(
        Ask::new("accuracy_class", say::class()).help(say::class_help()),
        Some(saved.and_then(|scale| scale.accuracy_class.as_deref()).unwrap_or_default()),
        FieldKind::Choice,
        std::iter::once(item("", say::no_class(), "")).chain(classes).collect(),
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
    builder.result(Note::plain(good_from(&scale, style)));
    let marked = class.as_deref().and_then(|class| class.parse().ok());
    // At half its capacity, since nobody knows yet what will stand on it.
    builder.result_if(marked.map(|class| class_allows(class, scale.capacity / 2.0, &scale, style)));
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
        accuracy_class: class.filter(|class| !class.is_empty()),
        ..current.unwrap_or_default()
    };
    Ok(Some(PendingWrite::one(context, sentence, scale)))
}
