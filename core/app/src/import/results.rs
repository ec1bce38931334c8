//! What came out of the kiln, where the sheet says so: which firing, and how each piece looked.

use std::collections::BTreeMap;

use uuid::Uuid;

use super::cells::{self, plain};
use super::columns::ColumnRole;
use super::plan::Planned;
use super::read::{Reader, short};
use super::studio_snapshot::Ground;
use super::table::Row;
use super::vocabulary;
use crate::date_text::DAY_MS;
use crate::in_words::Named;
use crate::kiln::{FiringState, is_bisque, when};
use crate::messages::import as say;
use crate::{Now, Result};
use laydown_domain::coded::Coded;
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::cone::{Cone, ConeKind};
use laydown_domain::kiln::fault::{Fault, Thickness};
use laydown_store::Transaction;
use laydown_store::entity::{self, Entity, Pairs};
use laydown_store::query;

/// The columns that say how a piece came out.
pub(super) const OUTCOMES: [ColumnRole; 3] = [ColumnRole::Result, ColumnRole::Faults, ColumnRole::Liking];

/// How the coat on a line came out of the kiln.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Fired {
    /// When it was fired, unix ms; never before it was glazed.
    pub(super) at: i64,
    pub(super) cone: Cone,
    thickness: Option<Thickness>,
    faults: Vec<Fault>,
    /// 1 to 5.
    liking: Option<i64>,
}

impl Fired {
    /// What the line `row` says of a coat that was weighed at `glazed_at`; `None` where it says nothing.
    pub(super) fn read(reader: &Reader<'_>, row: &Row, glazed_at: i64) -> Result<Option<Fired>, String> {
        let [result, faults, liking] = OUTCOMES.map(|holds| reader.cell(row, holds));
        let date = reader.cell(row, ColumnRole::Fired);
        if [result, faults, liking, date].iter().all(|cell| cell.is_empty()) {
            return Ok(None);
        }
        if date.is_empty() {
            return Err(say::no_firing_date());
        }
        let stamp = cells::stamp(date, reader.order).map_err(|_| say::not_a_date(short(date)))?;
        let at = stamp.unix_ms(reader.now).ok_or_else(|| say::not_a_date(short(date)))?;
        // Where the sheet gives no time of day, it may have been fired later that day.
        let at = if stamp.has_time() { at } else { at.max(glazed_at.min(at + DAY_MS / 2)) };
        if at < glazed_at {
            return Err(say::fired_before_glazed());
        }
        if at > reader.now.unix_ms + DAY_MS {
            return Err(say::still_to_come(short(date)));
        }
        let cone = match (reader.cell(row, ColumnRole::Cone), reader.cone) {
            ("", Some(cone)) => cone,
            ("", None) => return Err(say::no_cone()),
            (text, _) => cone_named(text).ok_or_else(|| say::not_a_cone(short(text)))?,
        };
        let thickness = match result {
            "" => None,
            text => Some(thickness(text).ok_or_else(|| say::not_a_result(short(text)))?),
        };
        let faults = faults.split([',', ';', '/', '+', '\n']).map(str::trim).filter(|name| !name.is_empty());
        let faults = faults.map(|name| fault(name).ok_or_else(|| say::not_a_fault(short(name))));
        let liking = match liking {
            "" => None,
            text => Some(stars(text).ok_or_else(|| say::not_a_rating(short(text)))?),
        };
        Ok(Some(Fired { at, cone, thickness, faults: faults.collect::<Result<_, _>>()?, liking }))
    }
}

/// A cone as potters write it: "6", "06", "cone 6", "c6", "^6".
pub(super) fn cone_named(text: &str) -> Option<Cone> {
    text.trim_start_matches(|letter: char| !letter.is_ascii_digit()).trim_end().parse().ok()
}

/// How thick it looks, by its code or in the words of the languages that are read.
fn thickness(text: &str) -> Option<Thickness> {
    let text = plain(text);
    text.parse().ok().or_else(|| vocabulary::thickness(&text))
}

/// A fault by its code or by its name in the language in use.
fn fault(text: &str) -> Option<Fault> {
    let text = plain(text);
    let code = text.replace(' ', "_");
    Fault::ALL.iter().copied().find(|fault| fault.code() == code || plain(&fault.name()) == text)
}

/// "4", "4/5" or four stars.
fn stars(text: &str) -> Option<i64> {
    let text = text.trim();
    let count = text.chars().count();
    if count > 0 && text.chars().all(|letter| matches!(letter, '*' | '★')) {
        return i64::try_from(count).ok().filter(|stars| (1..=5).contains(stars));
    }
    text.strip_suffix("/5").unwrap_or(text).trim().parse().ok().filter(|stars| (1..=5).contains(stars))
}

/// What a piece looked like after one firing, of all its coats.
#[derive(Default)]
struct Looks {
    inside: Option<Thickness>,
    outside: Option<Thickness>,
    faults: Vec<Fault>,
    liking: Option<i64>,
}

impl Looks {
    fn add(&mut self, zone: &str, fired: &Fired) {
        let zone = zone.parse::<ZoneKind>().ok();
        if zone != Some(ZoneKind::Outside) {
            self.inside = self.inside.or(fired.thickness);
        }
        if zone != Some(ZoneKind::Inside) {
            self.outside = self.outside.or(fired.thickness);
        }
        for fault in &fired.faults {
            if !self.faults.contains(fault) {
                self.faults.push(*fault);
            }
        }
        self.liking = self.liking.or(fired.liking);
    }

    fn is_empty(&self) -> bool {
        self.inside.is_none() && self.outside.is_none() && self.faults.is_empty() && self.liking.is_none()
    }
}

/// What came out of one firing.
struct OneFiring {
    /// When it was fired, the last its lines say, unix ms.
    at: i64,
    /// By their places among the plan's pieces.
    pieces: BTreeMap<usize, Looks>,
}

/// Saves the firings of the planned coats with what came out of them. `pieces` has the ids of the plan's pieces.
pub(super) fn write(
    tx: &mut Transaction<'_>,
    now: Now,
    ground: &Ground,
    kiln: usize,
    coats: &[Planned],
    pieces: &[Uuid],
) -> Result<()> {
    let Some(kiln) = ground.kilns.get(kiln) else { return Ok(()) };
    // One firing for each day and cone.
    let mut firings: BTreeMap<(i64, &str), OneFiring> = BTreeMap::new();
    for planned in coats {
        let Some(fired) = &planned.fired else { continue };
        let key = (now.at(fired.at).day_start(), fired.cone.code());
        let firing = firings.entry(key).or_insert_with(|| OneFiring { at: fired.at, pieces: BTreeMap::new() });
        firing.at = firing.at.max(fired.at);
        firing.pieces.entry(planned.piece).or_default().add(&planned.coat.zone, fired);
    }
    let here = entity::Firing::all(tx.conn())?;
    for ((day, cone), fired) in firings {
        let is_it = |firing: &&entity::Firing| {
            let is_out = firing.state.parse() != Ok(FiringState::Loading) && !firing.gone && !is_bisque(firing);
            let same_day = now.at(when(firing)).day_start() == day;
            is_out && same_day && firing.kiln == kiln.id && firing.cone == cone
        };
        let firing = match here.iter().find(is_it) {
            Some(firing) => firing.id,
            None => new_firing(tx, kiln, cone, fired.at)?,
        };
        let places = places(kiln.shelves, fired.pieces.len());
        for ((piece, looks), place) in fired.pieces.into_iter().zip(places) {
            came_out(tx, firing, fired.at, pieces[piece], place, looks)?;
        }
    }
    Ok(())
}

fn new_firing(tx: &mut Transaction<'_>, kiln: &entity::Kiln, cone: &str, at: i64) -> Result<Uuid> {
    let id = tx.new_id();
    tx.put(&entity::Firing {
        id,
        kiln: kiln.id,
        at,
        cone: cone.to_owned(),
        cone_kind: ConeKind::ALL.first().map_or_else(String::new, |kind| kind.code().to_owned()),
        state: FiringState::Done.code().to_owned(),
        fired_at: Some(at),
        note: Some(say::places_not_known()),
        ..entity::Firing::default()
    })?;
    Ok(id)
}

/// Saves that a piece came out of a firing, and how it looked. What the studio has of it already stays.
fn came_out(
    tx: &mut Transaction<'_>,
    firing: Uuid,
    at: i64,
    piece: Uuid,
    (shelf, x_e4, y_e4): (i64, i64, i64),
    looks: Looks,
) -> Result<()> {
    if query::placements_of_piece(tx.conn(), piece)?.iter().all(|placed| placed.firing != firing) {
        let id = tx.new_id();
        tx.put(&entity::Placement { id, firing, piece, shelf, x_e4, y_e4, gone: false })?;
    }
    if looks.is_empty() || query::finding(tx.conn(), piece, firing)?.is_some() {
        return Ok(());
    }
    let code = |thickness: Option<Thickness>| thickness.map(|thickness| thickness.code().to_owned());
    let faults: Vec<_> = looks.faults.iter().map(|fault| (fault.code().to_owned(), String::new())).collect();
    let finding = entity::Finding {
        id: tx.new_id(),
        firing,
        piece,
        at,
        inside: code(looks.inside),
        outside: code(looks.outside),
        faults: Some(Pairs(faults)).filter(|faults| !faults.0.is_empty()),
        liking: looks.liking,
        ..entity::Finding::default()
    };
    tx.put(&finding)?;
    Ok(())
}

/// Where so many pieces are drawn of which nobody wrote down where they stood: spread over the shelves.
fn places(shelves: i64, pieces: usize) -> impl Iterator<Item = (i64, i64, i64)> {
    let pieces = i64::try_from(pieces).unwrap_or(i64::MAX);
    let on_each = pieces.saturating_sub(1) / shelves.max(1) + 1;
    let across = (1..=on_each).find(|across| across.saturating_mul(*across) >= on_each).unwrap_or(1);
    (0..pieces).map(move |piece| {
        let (shelf, place) = (piece / on_each, piece % on_each);
        let middle = |number: i64| 10_000 * (2 * number + 1) / (2 * across);
        (shelf, middle(place % across), middle(place / across))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cones_and_ratings_are_read_as_potters_write_them() {
        for text in ["6", "cone 6", "c6", "^6", "Kegel 6 "] {
            assert_eq!(cone_named(text).map(Cone::code), Some("6"), "{text}");
        }
        assert_eq!(cone_named("cone 06").map(Cone::code), Some("06"));
        assert!(cone_named("hot").is_none() && cone_named("").is_none());
        assert_eq!(["4", "4/5", "****", "★★"].map(stars), [Some(4), Some(4), Some(4), Some(2)]);
        assert_eq!(["", "0", "6", "good"].map(stars), [None; 4]);
    }

    #[test]
    fn places_are_within_the_shelves_and_apart() {
        for (shelves, pieces) in [(1, 1), (3, 7), (2, 40), (1, 13)] {
            let all: Vec<_> = places(shelves, pieces).collect();
            let apart: std::collections::BTreeSet<_> = all.iter().copied().collect();
            assert_eq!((all.len(), apart.len()), (pieces, pieces));
            assert!(
                all.iter().all(|(shelf, x, y)| *shelf < shelves && (1..10_000).contains(x) && (1..10_000).contains(y))
            );
        }
    }
}
