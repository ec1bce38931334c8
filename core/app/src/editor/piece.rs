//! The editor of pieces that were never weighed: what they are called, and onto which shelf of the firing they go.

use uuid::Uuid;

use super::builder::{Ask, EditorBuilder, item};
use super::notation::COUNT;
use super::{EditContext, FieldKind, PendingWrite};
use crate::archive::{found, in_use};
use crate::evidence::parse_id;
use crate::in_words::Named;
use crate::kiln::{Pot, put_unweighed};
use crate::messages::{editor as shared, editor_piece as say};
use crate::{Result, StudioError};
use laydown_domain::form::ShapeClass;
use laydown_domain::kiln::piece_code;
use laydown_store::{entity, query};

/// The most that are added at once.
const MOST: f64 = 200.0;
/// The most letters of a code.
const LONGEST_CODE: usize = 20;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Piece> = context.current()?;
    let saved = current.as_ref();
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::remove();

    let name = builder
        .name_or_none(Ask::new("name", shared::name()).hint(say::name_hint()), saved.map(|piece| piece.name.as_str()));
    let code = builder.name_or_none(
        Ask::new("code", say::code()).help(say::code_help()),
        saved.and_then(|piece| piece.code.as_deref()),
    );
    let form = form(context, builder, saved)?;
    let (Some(name), Some(code)) = (name, code) else { return Ok(None) };
    // What stays as it was is not asked of again.
    let is_new_code = code.as_deref() != saved.and_then(|piece| piece.code.as_deref());
    let code = code.map(|code| if is_new_code { piece_code::begun(&code) } else { code });
    if let Some(code) = code.as_deref().filter(|_| is_new_code) {
        if code.chars().count() > LONGEST_CODE {
            builder.field_error("code", shared::too_long(LONGEST_CODE));
            return Ok(None);
        }
        if let Some(piece) = query::piece_of_code(context.conn, code)? {
            builder.field_error("code", say::is_weighed(Pot::load(context.conn, piece)?.name(context.conn)?));
            return Ok(None);
        }
    }
    // How many, and where to, is asked where they go into a firing.
    let into = match (saved, context.subject) {
        (None, Some(_)) => Some(Into::build(context, builder, code.is_some())?),
        _ => None,
    };
    let name = name.unwrap_or_default();
    if name.is_empty() && code.is_none() && form.is_none() {
        builder.require("name", say::name_or_code());
        return Ok(None);
    }
    let piece = entity::Piece {
        name,
        code,
        form,
        ..current.unwrap_or_else(|| entity::Piece { at: context.now.unix_ms, ..entity::Piece::default() })
    };
    let into = match into {
        None => return Ok(Some(PendingWrite::one(context, shared::saved(), move |id| entity::Piece { id, ..piece }))),
        Some(None) => return Ok(None),
        Some(Some(into)) => into,
    };
    let first = context.new_id;
    let sentence = say::added(into.pieces, into.shelf + 1);
    Ok(Some(PendingWrite {
        sentence,
        write: Box::new(move |tx| {
            let mut ids: Vec<Uuid> = first.into_iter().collect();
            while ids.len() < into.pieces {
                ids.push(tx.new_id());
            }
            for id in &ids {
                tx.put(&entity::Piece { id: *id, ..piece.clone() })?;
            }
            put_unweighed(tx, &into.firing, &ids, into.shelf)?;
            ids.first().copied().ok_or_else(|| StudioError::missing("piece"))
        }),
    }))
}

/// Its form; `None` for none of the studio's.
fn form(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Piece>,
) -> Result<Option<Uuid>> {
    let saved = saved.and_then(|piece| piece.form);
    let mut forms = in_use::<entity::Form>(context.conn, saved)?;
    forms.sort_by(|one, other| one.name.cmp(&other.name));
    let detail = |form: &entity::Form| form.class.parse::<ShapeClass>().map(ShapeClass::name).unwrap_or_default();
    let items = std::iter::once(item("", say::no_form(), ""))
        .chain(forms.iter().map(|form| item(&form.id.to_string(), &form.name, detail(form))));
    let ask = Ask::new("form", shared::form()).help(say::form_help());
    let saved = saved.map(|form| form.to_string());
    let chosen = builder.choice_or(
        ask,
        Some(saved.as_deref().unwrap_or_default()),
        FieldKind::Choice,
        items.collect(),
        shared::not_on_this_phone(),
    );
    chosen.filter(|id| !id.is_empty()).map(|id| parse_id(&id, "form")).transpose()
}

/// The firing that new pieces go into, how many, and onto which shelf.
struct Into {
    firing: entity::Firing,
    pieces: usize,
    shelf: usize,
}

impl Into {
    /// `None` while it cannot be taken.
    fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>, is_one: bool) -> Result<Option<Into>> {
        let firing: entity::Firing = context.subject()?;
        let kiln: entity::Kiln = found(context.conn, firing.kiln)?;
        // A code is on one foot only.
        let pieces =
            if is_one { Some(1.0) } else { builder.quantity(Ask::new("pieces", say::how_many()), Some(1), COUNT) };
        let mut shelf = Some("0".to_owned());
        if kiln.shelves > 1 {
            let items = (0..kiln.shelves).map(|number| item(&number.to_string(), say::shelf(number + 1), ""));
            shelf = builder.choice(Ask::new("shelf", say::which_shelf()), None, FieldKind::Choice, items.collect());
        }
        let (Some(pieces), Some(shelf)) = (pieces, shelf) else { return Ok(None) };
        if !(1.0..=MOST).contains(&pieces) || pieces.fract() != 0.0 {
            builder.field_error("pieces", say::pieces_impossible(MOST));
            return Ok(None);
        }
        let shelf = shelf.parse().map_err(|_| StudioError::missing("shelf"))?;
        Ok(Some(Into { firing, pieces: pieces as usize, shelf }))
    }
}
