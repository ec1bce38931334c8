//! The editor of a kiln: how large its shelves are, and how many it takes.

use super::builder::{Ask, EditorBuilder};
use super::notation::{COUNT, LENGTH};
use super::{EditContext, PendingWrite};
use crate::Result;
use crate::messages::{editor as shared, editor_kiln as say};
use laydown_domain::units::Millimetres;
use laydown_store::entity;

/// The most shelves of a kiln.
pub(crate) const MOST_SHELVES: i64 = 30;
/// Sizes of a shelf, mm.
pub(crate) const SMALLEST_SHELF: Millimetres = Millimetres::new(50.0);
pub(crate) const LARGEST_SHELF: Millimetres = Millimetres::new(3_000.0);

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Kiln> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::archive();

    let name =
        builder.text(Ask::new("name", shared::name()).hint(say::name_hint()), saved.map(|kiln| kiln.name.as_str()));
    let round = builder.switch(Ask::new("round", say::round()), saved.is_some_and(|kiln| kiln.round));
    let symbol = style.length.symbol();
    let label = if round { say::across_round() } else { say::across() };
    let across = builder.quantity(Ask::new("across", label).hint(symbol), saved.map(|kiln| kiln.across_um), LENGTH);
    let saved_deep = saved.and_then(|kiln| kiln.deep_um);
    let deep = if round {
        Some(None)
    } else {
        builder.quantity(Ask::new("deep", say::deep()).hint(symbol), saved_deep, LENGTH).map(Some)
    };
    let shelves =
        builder.quantity(Ask::new("shelves", say::shelves()).hint("4"), saved.map(|kiln| kiln.shelves), COUNT);
    let (Some(across), Some(deep), Some(shelves)) = (across, deep, shelves) else { return Ok(None) };
    for (key, length) in [("across", Some(across)), ("deep", deep)] {
        if length.is_some_and(|length| length < SMALLEST_SHELF || length > LARGEST_SHELF) {
            builder.field_error(key, say::shelf_impossible());
            return Ok(None);
        }
    }
    if !(1.0..=MOST_SHELVES as f64).contains(&shelves) || shelves.fract() != 0.0 {
        builder.field_error("shelves", say::shelves_impossible(MOST_SHELVES));
        return Ok(None);
    }
    let Some(name) = name else { return Ok(None) };
    // A kiln that was round before keeps what it says of its depth.
    let was_round = saved.is_some_and(|kiln| kiln.round);
    let deep_um = if round && was_round { saved_deep } else { deep.map(Millimetres::micrometres) };
    let sentence = shared::is_saved(&name);
    let kiln = move |id| entity::Kiln {
        id,
        name,
        round,
        across_um: across.micrometres(),
        deep_um,
        shelves: shelves as i64,
        ..current.unwrap_or_default()
    };
    Ok(Some(PendingWrite::one(context, sentence, kiln)))
}
