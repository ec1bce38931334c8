//! The editor of a saved coat: what was saved by mistake is corrected, and what a touch-up added or rubbed off is told. The
//! history keeps what it was.

use laydown_domain::form::ZoneKind;
use laydown_domain::learning::dip_time::is_dip;
use laydown_domain::units::{Grams, Laydown, Seconds};
use laydown_store::entity::{self, Coat, Entity};
use laydown_store::{Transaction, query};
use uuid::Uuid;

use super::builder::{Ask, EditorBuilder, coded_item, item};
use super::notation::{MASS, TIME};
use super::{EditContext, FieldKind, Item, Note, PendingWrite};
use crate::archive::in_use;
use crate::date_text::sentence_case;
use crate::draft::piece_split_off;
use crate::evidence::{preference, usable};
use crate::form_geometry::shape;
use crate::in_words::{StyleWords, name_of};
use crate::kiln::piece_name;
use crate::messages::{editor as shared, editor_coat as say, weigh};
use crate::weigh::{corrected, new_code, unfired_newest_first};
use crate::{Result, StudioError};
use laydown_domain::coat::verdict::VerdictKind;

/// The code of the choice of a piece of its own.
const NEW: &str = "new";

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let coat = context.id.map(|id| Coat::load(context.conn, id)).transpose()?.flatten();
    let coat = coat.ok_or_else(|| StudioError::missing("coat"))?;
    builder.title = say::title();

    // What is corrected most often stands first.
    let weight = weight(builder, &coat);
    let mass = |key, label: String| Ask::new(key, label).hint(builder.style.mass.symbol());
    let (added, rubbed_off) = (mass("added", say::added()), mass("rubbed_off", say::rubbed_off()));
    let added = builder.optional(added.help(say::touch_up_help()), coat.added_mg, MASS);
    let rubbed_off = builder.optional(rubbed_off, coat.rubbed_off_mg, MASS);
    let bucket = bucket(context, builder, &coat)?;
    let Some(piece) = piece(context, builder, &coat)? else { return Ok(None) };
    let zone = zone(context, builder, &coat, piece.form)?;
    let dip = builder.optional(Ask::new("dip", say::dip()).help(say::dip_help()), coat.dip_ms, TIME);
    if dip.flatten().is_some_and(|time| Some(time.milliseconds()) != coat.dip_ms && !is_dip(time)) {
        builder.field_error("dip", say::dip_impossible());
        return Ok(None);
    }
    // Who writes no names down is not asked for one.
    let hand = match (&coat.hand, preference(context.conn)?.hand) {
        (None, None) => Some(None),
        (hand, _) => builder.remark(Ask::new("hand", say::hand()), hand.as_deref()),
    };
    let (Some(zone), Some((bucket, glaze)), Some(weight), Some(added), Some(rubbed_off), Some(hand), Some(dip)) =
        (zone, bucket, weight, added, rubbed_off, hand, dip)
    else {
        return Ok(None);
    };
    let touched_up = added.unwrap_or(Grams::ZERO) - rubbed_off.unwrap_or(Grams::ZERO);
    let changed = Coat {
        piece: piece.id,
        form: piece.form,
        zone,
        bucket,
        glaze,
        bare_mg: weight.bare.map(Grams::milligrams),
        glazed_mg: weight.glazed.map(Grams::milligrams),
        net_mg: (weight.net + touched_up).milligrams(),
        added_mg: added.map(Grams::milligrams),
        rubbed_off_mg: rubbed_off.map(Grams::milligrams),
        hand,
        dip_ms: dip.map(Seconds::milliseconds),
        ..coat.clone()
    };
    let changed = match corrected(context.conn, *builder.style, &coat, changed) {
        Ok(changed) => changed,
        Err(StudioError::Refused { sentence, .. }) => {
            builder.field_error(if coat.glazed_mg.is_some() { "glazed" } else { "net" }, sentence);
            return Ok(None);
        }
        Err(error) => return Err(error),
    };
    let wet = builder.style.mass(Grams::from_milligrams(changed.net_mg), Grams::new(0.1));
    let verdict = name_of::<VerdictKind>(&changed.verdict);
    builder.result(Note::plain(say::wet_and_verdict(wet, verdict)));
    let laydown = builder.style.laydown_with_unit(Laydown::from_milligrams_per_dm2(changed.laydown_mg_dm2));
    builder.result(Note::plain(shared::laydown_is(laydown)));
    Ok(Some(PendingWrite { sentence: say::corrected(), write: Box::new(move |tx| write(tx, &coat, changed)) }))
}

/// Saves what was corrected. The code on a foot stays with the piece that it is on.
fn write(tx: &mut Transaction<'_>, before: &Coat, changed: Coat) -> Result<Uuid> {
    let id = changed.id;
    if before.piece == changed.piece {
        tx.put(&changed)?;
        return Ok(id);
    }
    let left = others(tx.conn(), before)?;
    // What was weighed dry was the coats of both pieces together.
    for coat in left.iter().filter(|coat| coat.dry_mg.is_some()) {
        tx.put(&Coat { dry_mg: None, dry_uncertainty_mg: None, ..coat.clone() })?;
    }
    let left = others(tx.conn(), before)?;
    let changed = Coat { dry_mg: None, dry_uncertainty_mg: None, ..changed };
    if let Some(first) = left.first().filter(|_| left.iter().all(|coat| coat.code.is_none())) {
        tx.put(&Coat { code: before.code.clone(), ..first.clone() })?;
    }
    let joined = query::coats_of_piece(tx.conn(), changed.piece)?;
    let mut code = joined.iter().find_map(|coat| coat.code.clone());
    if joined.is_empty() && preference(tx.conn())?.code_pieces {
        code = new_code(tx.conn(), changed.piece)?;
    }
    tx.put(&Coat { code, ..changed })?;
    Ok(id)
}

/// The other coats of the piece that a coat is on.
fn others(conn: &rusqlite::Connection, coat: &Coat) -> Result<Vec<Coat>> {
    let mut coats = query::coats_of_piece(conn, coat.piece)?;
    coats.retain(|other| other.id != coat.id);
    Ok(coats)
}

/// A piece, as far as a coat on it needs to know.
struct OnPiece {
    id: Uuid,
    form: Uuid,
}

/// Which piece it is on: the one it was saved with, another unfired one, or one of its own.
fn piece(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>, coat: &Coat) -> Result<Option<OnPiece>> {
    let conn = context.conn;
    let others_on_it = others(conn, coat)?;
    let own = coat.piece.to_string();
    let name = piece_name(conn, &query::coats_of_piece(conn, coat.piece)?)?;
    let mut items: Vec<Item> = vec![item(&own, &name, "")];
    if !others_on_it.is_empty() {
        items.push(item(NEW, say::piece_of_its_own(), ""));
    }
    let unfired = unfired_newest_first(conn, context.now)?;
    for (piece, coats) in unfired.iter().filter(|(piece, _)| *piece != coat.piece) {
        let detail = crate::kiln::glazes(conn, coats)?;
        items.push(item(&piece.to_string(), piece_name(conn, coats)?, detail));
    }
    let Some(chosen) = builder.choice(Ask::new("piece", say::piece()), Some(&own), FieldKind::Choice, items) else {
        return Ok(None);
    };
    let moved = match chosen.as_str() {
        NEW => {
            let mut id = piece_split_off(coat.id);
            // Only where this was done before, and undone in part.
            while query::coats_of_piece(conn, id)?.iter().any(|other| other.id != coat.id) {
                id = piece_split_off(id);
            }
            OnPiece { id, form: coat.form }
        }
        text => match unfired.iter().find(|(piece, _)| piece.to_string() == text) {
            Some((id, coats)) => OnPiece { id: *id, form: coats.first().map_or(coat.form, |first| first.form) },
            None => OnPiece { id: coat.piece, form: coat.form },
        },
    };
    let is_moved = moved.id != coat.piece;
    if is_moved && others_on_it.is_empty() && is_known_otherwise(conn, coat.piece)? {
        builder.field_error("piece", say::only_coat(name));
        return Ok(None);
    }
    Ok(Some(moved))
}

/// Whether a piece is in a firing or has a photograph.
fn is_known_otherwise(conn: &rusqlite::Connection, piece: Uuid) -> Result<bool> {
    Ok(!query::placements_of_piece(conn, piece)?.is_empty() || !query::photos(conn, piece)?.is_empty())
}

/// Which zone of the form it is on.
fn zone(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>, coat: &Coat, form: Uuid) -> Result<Option<String>> {
    let form = entity::Form::load(context.conn, form)?;
    let shape = form.map(|form| usable(shape(context.conn, &form))).transpose()?.flatten();
    let zones: Vec<ZoneKind> =
        shape.map(|shape| shape.zones.iter().map(|zone| zone.kind).collect()).unwrap_or_default();
    let saved =
        Some(coat.zone.as_str()).filter(|code| zones.is_empty() || zones.iter().any(|zone| zone.code() == *code));
    let items = zones.iter().map(|zone| coded_item(*zone, "")).collect();
    let unknown = sentence_case(&name_of::<ZoneKind>(&coat.zone));
    Ok(builder.choice_or(Ask::new("zone", say::zone()), saved, FieldKind::Choice, items, unknown))
}

/// Which bucket the glaze came from, and the glaze in it.
fn bucket(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>, coat: &Coat) -> Result<Option<(Uuid, Uuid)>> {
    let buckets: Vec<entity::Bucket> = in_use(context.conn, Some(coat.bucket))?;
    let mut items = Vec::new();
    for bucket in &buckets {
        let glaze = entity::Glaze::load(context.conn, bucket.glaze)?;
        let glaze = glaze.map_or_else(shared::not_on_this_phone, |glaze| glaze.name);
        items.push(item(&bucket.id.to_string(), weigh::glaze_and_bucket(glaze, &bucket.name), ""));
    }
    let saved = coat.bucket.to_string();
    let ask = Ask::new("bucket", say::bucket());
    let chosen = builder.choice_or(ask, Some(&saved), FieldKind::Choice, items, shared::not_on_this_phone());
    let chosen = chosen.unwrap_or(saved);
    let bucket = buckets.iter().find(|bucket| bucket.id.to_string() == chosen && bucket.id != coat.bucket);
    Ok(Some(bucket.map_or((coat.bucket, coat.glaze), |bucket| (bucket.id, bucket.glaze))))
}

/// What the scale showed.
struct Weight {
    bare: Option<Grams>,
    glazed: Option<Grams>,
    net: Grams,
}

/// What was weighed, before any touch-up.
fn weight(builder: &mut EditorBuilder<'_>, coat: &Coat) -> Option<Weight> {
    let symbol = builder.style.mass.symbol();
    if let (Some(bare), Some(glazed)) = (coat.bare_mg, coat.glazed_mg) {
        let bare = builder.quantity(Ask::new("bare", weigh::bare()).hint(symbol), Some(bare), MASS);
        let glazed = builder.quantity(Ask::new("glazed", weigh::glazed()).hint(symbol), Some(glazed), MASS);
        let (bare, glazed) = (bare?, glazed?);
        return Some(Weight { bare: Some(bare), glazed: Some(glazed), net: glazed - bare });
    }
    let weighed = coat.net_mg - coat.added_mg.unwrap_or_default() + coat.rubbed_off_mg.unwrap_or_default();
    let net = builder.quantity(Ask::new("net", say::net()).hint(symbol), Some(weighed), MASS)?;
    Some(Weight { bare: coat.bare_mg.map(Grams::from_milligrams), glazed: None, net })
}
