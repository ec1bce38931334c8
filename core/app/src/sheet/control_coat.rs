//! The sheet of a control piece that was weighed here: what it weighed, and what the potter says of it.

use super::draft::{Ask, Draft};
use super::{Desk, Keeping, Note};
use crate::Result;
use crate::facts::{code, sg_in_words};
use crate::rows::found;
use crate::words::sentence_case;
use laydown_domain::form::ZoneKind;
use laydown_domain::units::{Grams, Laydown};
use laydown_store::entity;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>, coat: entity::Coat) -> Result<Option<Keeping>> {
    let style = draft.style;
    let form: entity::Form = found(desk.conn, coat.form)?;
    let glaze: entity::Glaze = found(desk.conn, coat.glaze)?;
    let zone: ZoneKind = code(&coat.zone)?;
    draft.title = format!("{}, {}", form.name, zone.name());
    draft.remove_label = "No longer a control piece";

    let note =
        draft.remark(Ask::new("note", "What is right about it").hint("Breaks brown at the rim"), coat.note.as_deref());
    let wet = style.mass(Grams::from_milligrams(coat.net_mg), Grams::new(0.1));
    let sg = sg_in_words(style, coat.specific_gravity_e5);
    draft.result(Note::plain(format!("{}: {wet} wet at SG {sg}.", sentence_case(&glaze.name))));
    draft.result(Note::plain(format!("{}.", style.laydown(Laydown::from_milligrams_per_dm2(coat.laydown_mg_dm2)))));
    draft.result(Note::plain(format!("Weighed {}.", desk.now.moment(coat.at))));
    let Some(note) = note else { return Ok(None) };
    Ok(Some(Keeping::one(Some(coat.id), "Kept.".to_owned(), move |_| entity::Coat { note, ..coat })))
}
