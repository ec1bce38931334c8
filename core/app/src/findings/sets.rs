//! Sets: which pieces of the shelf match best, and what a further one takes to match them.

use std::collections::BTreeMap;

use rusqlite::Connection;
use uuid::Uuid;

use super::FindingsSection;
use super::fired::Weighed;
use crate::evidence::{Pieces, bucket_in_use, bucket_today, finest_step, usable};
use crate::form_geometry::shape;
use crate::in_words::StyleWords;
use crate::messages::findings as say;
use crate::messages::kiln;
use crate::pooled::Known;
use crate::{Line, Now, Result};
use laydown_domain::coat::Solids;
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::set::best;
use laydown_domain::learning::spread::Spread;
use laydown_domain::units::{Grams, Laydown, Style};
use laydown_store::entity::{self, Coat, Entity};
use laydown_store::query;

/// So many equal pieces make a set. Common practice, no source.
const LEAST_SET: usize = 3;
/// The sizes of sets that are looked for.
const SIZES: [usize; 3] = [4, 6, 8];
/// The most coats that wait for a kiln and are looked through, and the most forms that sets are shown of.
const MOST_WAITING: u32 = 400;
const MOST_FORMS: usize = 3;

/// Pieces of one form and zone that stand on the same shelf.
struct Shelf {
    form: Uuid,
    zone: ZoneKind,
    is_fired: bool,
    /// The coat of each, and its laydown.
    pieces: Vec<(Uuid, Laydown)>,
    newest: i64,
}

/// The sets of a glaze; `None` where there is nothing to match.
pub(super) fn section(
    conn: &Connection,
    now: Now,
    glaze: &entity::Glaze,
    coats: &[Weighed],
    known: &Known,
    style: &Style,
) -> Result<Option<FindingsSection>> {
    let today = bucket_in_use(conn, glaze.id)?.map(|bucket| bucket_today(conn, now, glaze, bucket.id)).transpose()?;
    let solids = today.flatten().map(|(_, solids)| solids);
    let mut shelves = waiting(conn, now, glaze)?;
    shelves.extend(fired(known));
    shelves.retain(|shelf| shelf.pieces.len() > SIZES[0]);
    shelves.sort_by_key(|shelf| std::cmp::Reverse(shelf.newest));
    let mut lines = Vec::new();
    for shelf in shelves.iter().take(MOST_FORMS) {
        lines.extend(line(conn, shelf, solids.as_ref(), style)?);
    }
    lines.extend(last_set(conn, coats, now, style)?);
    Ok((!lines.is_empty()).then(|| FindingsSection {
        title: say::sets_title(),
        words: String::new(),
        lines,
        chart: None,
        answer: String::new(),
    }))
}

/// Pieces that wait for a kiln. A zone with two glazes is no one's set.
fn waiting(conn: &Connection, now: Now, glaze: &entity::Glaze) -> Result<Vec<Shelf>> {
    let from = now.unix_ms.saturating_sub(query::LONGEST_ON_THE_SHELF_MS);
    let mut zones: BTreeMap<(Uuid, String), Vec<Coat>> = BTreeMap::new();
    for coat in query::latest_coats_waiting(conn, from, MOST_WAITING)? {
        zones.entry((coat.piece, coat.zone.clone())).or_default().push(coat);
    }
    let mut pieces = Pieces::new(conn);
    let mut shelves: Vec<Shelf> = Vec::new();
    for ((_, zone), coats) in zones {
        let Ok(zone) = zone.parse::<ZoneKind>() else { continue };
        let Some(first) = coats.first().filter(|_| coats.iter().all(|coat| coat.glaze == glaze.id)) else { continue };
        let mut laydown = Laydown::ZERO;
        for coat in &coats {
            laydown = laydown + pieces.laydown(&coat.into(), glaze, zone)?.unwrap_or(Laydown::ZERO);
        }
        put(&mut shelves, (first.form, zone, false), first.id, laydown, first.at);
    }
    Ok(shelves)
}

/// Pieces that came out right.
fn fired(known: &Known) -> Vec<Shelf> {
    let mut shelves = Vec::new();
    for pot in known.evidence.pots.iter().filter(|pot| pot.thickness == Thickness::Right) {
        if let Some(of) = known.pots.get(&pot.id) {
            put(&mut shelves, (pot.place.form, pot.place.zone, true), pot.id, pot.laydown, of.at);
        }
    }
    shelves
}

fn put(shelves: &mut Vec<Shelf>, of: (Uuid, ZoneKind, bool), coat: Uuid, laydown: Laydown, at: i64) {
    let (form, zone, is_fired) = of;
    let known = shelves.iter().position(|shelf| (shelf.form, shelf.zone, shelf.is_fired) == of);
    let place = known.unwrap_or_else(|| {
        shelves.push(Shelf { form, zone, is_fired, pieces: Vec::new(), newest: at });
        shelves.len() - 1
    });
    if let Some(shelf) = shelves.get_mut(place) {
        shelf.pieces.push((coat, laydown));
        shelf.newest = shelf.newest.max(at);
    }
}

fn line(conn: &Connection, shelf: &Shelf, solids: Option<&Solids>, style: &Style) -> Result<Option<Line>> {
    let Some(form) = entity::Form::load(conn, shelf.form)? else { return Ok(None) };
    let area = usable(shape(conn, &form))?.and_then(|shape| shape.zone(shelf.zone).map(|zone| zone.area));
    let laydowns: Vec<Laydown> = shelf.pieces.iter().map(|(_, laydown)| *laydown).collect();
    let mut sentences = Vec::new();
    let mut next = None;
    // All of a shelf are no choice.
    for size in SIZES.into_iter().filter(|size| *size < shelf.pieces.len()) {
        let Some(found) = best(&laydowns, size) else { continue };
        let mut names = Vec::new();
        for (coat, _) in found.members.iter().filter_map(|member| shelf.pieces.get(*member)) {
            names.push(name(conn, *coat, shelf.zone, style)?);
        }
        let (least, most) = found.spread.range;
        sentences.push(say::best_set(size, style.percent(most / least - 1.0, 1), names.join(", ")));
        next = next.or(Some(found.next));
    }
    if let (Some(next), Some(area), Some(solids)) = (next, area, solids) {
        sentences.push(say::next_to_match(style.mass(solids.wet(next.dry_on(area)), finest_step(conn)?)));
    }
    let label = match shelf.is_fired {
        true => say::fired_shelf(shelf.zone.code(), form.name),
        false => say::waiting_shelf(shelf.zone.code(), form.name),
    };
    Ok((!sentences.is_empty()).then(|| Line { label, value: sentences.join(" ") }))
}

/// What is on its foot, or what it weighed where it has no code.
fn name(conn: &Connection, coat: Uuid, zone: ZoneKind, style: &Style) -> Result<String> {
    let Some(coat) = Coat::load(conn, coat)? else { return Ok(kiln::unknown_piece()) };
    // The code came with the first coat, which an outside often is not: the others of a piece are looked for only then.
    let of_first = match (&coat.code, zone) {
        (None, ZoneKind::Outside) => query::coats_of_piece(conn, coat.piece)?.into_iter().find_map(|other| other.code),
        _ => None,
    };
    let wet = style.mass(Grams::from_milligrams(coat.net_mg), Grams::new(0.1));
    Ok(coat.code.or(of_first).unwrap_or(wet))
}

/// The newest run of equal pieces, glazed on one day.
fn last_set(conn: &Connection, coats: &[Weighed], now: Now, style: &Style) -> Result<Option<Line>> {
    let day = |coat: &Weighed| now.days_since(coat.at);
    let runs = coats.chunk_by(|a, b| (a.form, a.zone) == (b.form, b.zone) && day(a) == day(b));
    let Some(run) = runs.into_iter().find(|run| run.len() >= LEAST_SET) else { return Ok(None) };
    let grams: Vec<f64> = run.iter().map(|coat| Grams::from_milligrams(coat.net_mg).value()).collect();
    let (Some(set), Some(first)) = (Spread::of(&grams), run.first()) else { return Ok(None) };
    let form = entity::Form::load(conn, first.form)?.map_or_else(kiln::unknown_form, |form| form.name);
    let step = Grams::new(0.1);
    Ok(Some(Line {
        label: say::last_set(first.zone.code(), form),
        value: say::last_set_weights(
            set.pieces,
            now.days_ago(first.at),
            style.mass(Grams::new(set.mean), step),
            style.mass_number(Grams::new(set.range.0), step),
            style.mass(Grams::new(set.range.1), step),
            style.percent(set.relative_spread(), 1),
        ),
    }))
}
