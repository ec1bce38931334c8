//! The sheet of a clay body: how it shrinks, so that a pot measured at one stage is known at the others.

use super::draft::{Ask, Draft, bare};
use super::{Desk, Keeping, Note};
use crate::Result;
use crate::shapes::USUAL_BISQUE_DENSITY;
use laydown_domain::form::{Shrinkage, Stage};
use laydown_domain::units::{Style, UnitError, parse};
use laydown_store::entity;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let current: Option<entity::Body> = desk.current()?;
    let kept = current.as_ref();
    let style = draft.style;
    draft.title = kept.map_or("New body", |_| "Body").to_owned();
    draft.remove_label = "Put this body away";

    let name = draft.text(Ask::new("name", "Name").hint("White stoneware"), kept.map(|body| body.name.as_str()));
    let percent = |e4: i64| bare(style, e4 as f64 / 100.0);
    let to_bisque = draft.quantity(
        Ask::new("to_bisque", "Shrinks from thrown to bisque, %")
            .hint("6")
            .help("Scratch two marks 100 mm apart into wet clay: each millimetre they lose is a percent."),
        kept.map(|body| percent(body.to_bisque_e4)),
        fraction,
    );
    let to_fired = draft.quantity(
        Ask::new("to_fired", "Shrinks from thrown to glaze-fired, %")
            .hint("12")
            .help("The same marks after the glaze firing."),
        kept.map(|body| percent(body.to_fired_e4)),
        fraction,
    );
    let density = draft.optional(
        Ask::new("bisque_density", "Density of the bisque, g/ml, if measured")
            .hint(style.number(USUAL_BISQUE_DENSITY, 2))
            .help("Dry weight over outer volume. It lets the weight of a bisque piece show a mistyped size."),
        kept.and_then(|body| body.bisque_density_mg_ml).map(|density| bare(style, density as f64 / 1e3)),
        parse::number,
    );
    let (Some(to_bisque), Some(to_fired), Some(density)) = (to_bisque, to_fired, density) else { return Ok(None) };
    let shrinkage = match Shrinkage::new(to_bisque, to_fired) {
        Ok(shrinkage) => shrinkage,
        Err(error) => {
            draft.refuse("to_fired", error);
            return Ok(None);
        }
    };
    if density.is_some_and(|density| !(1.0..3.0).contains(&density)) {
        draft.refuse("bisque_density", "Bisque weighs between 1 and 3 g per ml. Check the figure, or leave it empty.");
        return Ok(None);
    }
    let grows = shrinkage.factor(Stage::Fired, Stage::Bisque);
    draft.result(Note::plain(format!(
        "A fired pot was {} larger as bisque, and had {} more to glaze.",
        style.percent(grows - 1.0, 1),
        style.percent(grows * grows - 1.0, 1)
    )));
    let (to_bisque_e4, to_fired_e4) = shrinkage.ten_thousandths();
    let Some(name) = name else { return Ok(None) };
    let sentence = format!("{name} is kept.");
    let body = move |id| entity::Body {
        id,
        name,
        to_bisque_e4,
        to_fired_e4,
        bisque_density_mg_ml: density.map(|density| (density * 1e3).round() as i64),
        gone: false,
    };
    Ok(Some(Keeping::one(desk.id, sentence, body)))
}

/// Reads a percentage as a fraction.
fn fraction(text: &str, style: &Style) -> Result<f64, UnitError> {
    Ok(parse::number(text.trim().trim_end_matches('%'), style)? / 100.0)
}
