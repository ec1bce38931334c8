//! The sheet of a scale.

use super::draft::{Ask, Draft, mass_text};
use super::{Desk, Keeping, Note};
use crate::Result;
use laydown_domain::coat::scale::Scale;
use laydown_domain::units::{Grams, parse};
use laydown_store::entity;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let current: Option<entity::Scale> = desk.current()?;
    let kept = current.as_ref();
    let style = draft.style;
    draft.title = kept.map_or("New scale", |_| "Scale").to_owned();
    draft.remove_label = "Put this scale away";

    let mass_text = |mg: i64| mass_text(style, mg);
    let ask = |key, label| Ask::new(key, label).hint(style.mass.symbol());
    let name = draft.text(Ask::new("name", "Name").hint("Bench scale"), kept.map(|scale| scale.name.as_str()));
    let capacity = draft.quantity(
        ask("capacity", "Most it carries").help("On its plate: Max."),
        kept.map(|scale| mass_text(scale.capacity_mg)),
        parse::mass,
    );
    let step = draft.quantity(
        ask("step", "Step it reads in").help("On its plate: d. The smallest change it shows."),
        kept.map(|scale| mass_text(scale.step_mg)),
        parse::mass,
    );
    let minimum = draft.optional(
        ask("minimum", "Least it should weigh, if known").help("On its plate: Min."),
        kept.and_then(|scale| scale.minimum_mg).map(mass_text),
        parse::mass,
    );
    let repeatability = draft.optional(
        ask("repeatability", "Scatter when one piece is weighed ten times, if tested").help("The standard deviation."),
        kept.and_then(|scale| scale.repeatability_mg).map(mass_text),
        parse::mass,
    );
    let (Some(capacity), Some(step), Some(minimum), Some(repeatability)) = (capacity, step, minimum, repeatability)
    else {
        return Ok(None);
    };
    let scale = match Scale::new(capacity, step, minimum, repeatability) {
        Ok(scale) => scale,
        Err(error) => {
            draft.refuse("step", error);
            return Ok(None);
        }
    };
    draft.result(Note::plain(format!(
        "A coat weighed after tare is sure to {} either way, 95 times in 100.",
        style.mass(scale.net_half_width(), step * 0.1)
    )));
    draft.result_if(scale.doubt(style).map(Note::attention));
    let Some(name) = name else { return Ok(None) };
    let sentence = format!("{name} is kept.");
    let scale = move |id| entity::Scale {
        id,
        name,
        capacity_mg: capacity.milligrams(),
        step_mg: step.milligrams(),
        minimum_mg: minimum.map(Grams::milligrams),
        repeatability_mg: repeatability.map(Grams::milligrams),
        gone: false,
    };
    Ok(Some(Keeping::one(desk.id, sentence, scale)))
}
