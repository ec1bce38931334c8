//! The editor of a control piece that was weighed here: what it weighed, and what the potter says of it.

use super::builder::{Ask, EditorBuilder};
use super::{EditContext, Note, PendingWrite};
use crate::Result;
use crate::date_text::sentence_case;
use crate::evidence::{Pieces, WeighedCoat, sg_in_words};
use crate::in_words::{StyleWords, name_of};
use crate::messages::{editor as shared, editor_control as say};
use laydown_domain::form::ZoneKind;
use laydown_domain::units::{Grams, Laydown};
use laydown_store::entity::{self, Entity};

pub(super) fn build(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    coat: entity::Coat,
) -> Result<Option<PendingWrite>> {
    let style = builder.style;
    let form = entity::Form::load(context.conn, coat.form)?;
    let form = form.map_or_else(shared::not_on_this_phone, |form| form.name);
    let glaze = entity::Glaze::load(context.conn, coat.glaze)?;
    builder.title = format!("{form}, {}", name_of::<ZoneKind>(&coat.zone));
    builder.remove_label = say::no_longer();

    let note = builder.remark(Ask::new("note", say::note()).hint(say::note_hint()), coat.note.as_deref());
    let wet = style.mass(Grams::from_milligrams(coat.net_mg), Grams::new(0.1));
    let sg = sg_in_words(style, coat.specific_gravity_e5);
    // By what is known today, as targets take it.
    let weighed = WeighedCoat::from(&coat);
    let today = match (&glaze, coat.zone.parse().ok()) {
        (Some(glaze), Some(zone)) => Pieces::new(context.conn).laydown(&weighed, glaze, zone)?,
        _ => None,
    };
    let laydown = today.unwrap_or(Laydown::from_milligrams_per_dm2(coat.laydown_mg_dm2));
    let glaze = glaze.map_or_else(shared::not_on_this_phone, |glaze| glaze.name);
    builder.result(Note::plain(say::wet_at_sg(sentence_case(&glaze), wet, sg)));
    builder.result(Note::plain(say::laydown(style.laydown_with_unit(laydown))));
    builder.result(Note::plain(say::weighed(context.now.moment(coat.at))));
    let Some(note) = note else { return Ok(None) };
    Ok(Some(PendingWrite::one(context, shared::saved(), move |_| entity::Coat { note, ..coat })))
}
