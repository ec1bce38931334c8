//! The editor of a clay body: how it shrinks, so that a pot measured at one stage is known at the others.

use super::builder::{Ask, EditorBuilder};
use super::notation::{BISQUE_DENSITY, PERCENT};
use super::{EditContext, Note, PendingWrite};
use crate::Result;
use crate::form_geometry::USUAL_BISQUE_DENSITY;
use crate::in_words::StyleWords as _;
use crate::messages::{editor as shared, editor_body as say};
use laydown_domain::form::{Shrinkage, Stage};
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Body> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::archive();

    let name =
        builder.text(Ask::new("name", shared::name()).hint(say::name_hint()), saved.map(|body| body.name.as_str()));
    let to_bisque = builder.quantity(
        Ask::new("to_bisque", say::to_bisque()).hint("6").help(say::to_bisque_help()),
        saved.map(|body| body.to_bisque_e4),
        PERCENT,
    );
    let to_fired = builder.quantity(
        Ask::new("to_fired", say::to_fired()).hint("12").help(say::to_fired_help()),
        saved.map(|body| body.to_fired_e4),
        PERCENT,
    );
    let density = builder.optional(
        Ask::new("bisque_density", say::density())
            .hint(style.number(USUAL_BISQUE_DENSITY, 2))
            .help(say::density_help()),
        saved.and_then(|body| body.bisque_density_mg_ml),
        BISQUE_DENSITY,
    );
    let (Some(to_bisque_e4), Some(to_fired_e4), Some(density)) = (to_bisque, to_fired, density) else {
        return Ok(None);
    };
    let shrinkage = match Shrinkage::new(to_bisque_e4 as f64 / 1e4, to_fired_e4 as f64 / 1e4) {
        Ok(shrinkage) => shrinkage,
        Err(error) => {
            builder.field_error("to_fired", error);
            return Ok(None);
        }
    };
    if density.is_some_and(|density| !(1_000..3_000).contains(&density)) {
        builder.field_error("bisque_density", say::density_impossible());
        return Ok(None);
    }
    let grows = shrinkage.factor(Stage::Fired, Stage::Bisque);
    builder.result(Note::plain(say::grew(style.percent(grows - 1.0, 1), style.percent(grows * grows - 1.0, 1))));
    let Some(name) = name else { return Ok(None) };
    let sentence = shared::is_saved(&name);
    let body = move |id| entity::Body {
        id,
        name,
        to_bisque_e4,
        to_fired_e4,
        bisque_density_mg_ml: density,
        ..current.unwrap_or_default()
    };
    Ok(Some(PendingWrite::one(context, sentence, body)))
}
