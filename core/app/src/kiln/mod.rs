//! The Kiln screen: what waits for a firing, and the firings.

mod assessment;
mod compare;
mod contact_sheet;
mod find;
mod load;
mod paper;
mod piece;
mod plan;
mod record;
mod whereabouts;

use std::collections::BTreeMap;

use rusqlite::Connection;
use uuid::Uuid;

use crate::archive::{found, in_use};
use crate::date_text::sentence_case;
use crate::editor::Point;
use crate::evidence::{parse_id, usable};
use crate::form_geometry::shape;
use crate::in_words::caution_text;
use crate::lists::outline;
use crate::messages::kiln as say;
use crate::{Now, Result, Row, Studio};
use laydown_domain::caution::{self, Place};
use laydown_domain::coded::coded;
use laydown_store::entity::{self, Entity};
use laydown_store::query;

pub use assessment::{Assessment, AssessmentView, Choice, FaultChip, ZoneQuestion};
pub use compare::{CompareLine, CompareView};
pub use contact_sheet::{ContactSheetView, ContactTile};
pub use find::{Filter, PiecesView};
pub use load::{ChecklistItem, FiringView, PlacedPiece, ShelfView};
pub use piece::PieceView;
pub use record::PhotoView;

/// The most coats looked through for pieces that wait.
const MOST_WAITING: u32 = 2_000;
/// How many firings the screen lists.
const FIRINGS: u32 = 60;

coded! {
    /// How far a firing has come.
    "firing_state" FiringState {
        /// Pieces are put in.
        Loading = "loading",
        /// It has been lit or switched on.
        Fired = "fired",
        /// All that was in it has been looked at, or the potter is done with it.
        Done = "done",
    }
}

/// Equal pieces that wait for a firing: one with a code, or a run of them.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct WaitingRow {
    /// The pieces' ids.
    pub pieces: Vec<String>,
    /// The form, and the code if there is one.
    pub title: String,
    /// Its glazes, and when it was glazed.
    pub detail: String,
}

/// All that the Kiln screen shows.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct KilnView {
    /// How many pieces wait, or what to do while none does.
    pub waiting: String,
    /// The firings, newest first.
    pub firings: Vec<Row>,
    /// What to do while there is no firing.
    pub empty: String,
    /// Whether there is a kiln to load.
    pub has_kiln: bool,
    /// Cautions that belong here.
    pub cautions: Vec<String>,
}

#[uniffi::export]
impl Studio {
    /// The Kiln screen.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn kiln(&self, now: Now) -> Result<KilnView> {
        self.store.read(|conn| {
            let waiting: usize = waiting(conn, now)?.iter().map(|row| row.pieces.len()).sum();
            let firings = query::firings(conn, FIRINGS)?;
            Ok(KilnView {
                waiting: say::waiting(waiting),
                firings: firings.iter().map(|firing| firing_row(conn, now, firing)).collect::<Result<_>>()?,
                empty: say::no_firing_yet(),
                has_kiln: !in_use::<entity::Kiln>(conn, None)?.is_empty(),
                cautions: caution::at(Place::Kiln).map(caution_text).collect(),
            })
        })
    }
}

fn firing_row(conn: &Connection, now: Now, firing: &entity::Firing) -> Result<Row> {
    let pieces = query::placements(conn, firing.id)?.len();
    Ok(Row {
        id: firing.id.to_string(),
        title: firing_title(conn, firing)?,
        detail: [now.moment(when(firing)), say::pieces(pieces), say::state(&firing.state)].join(", "),
        chosen: firing.state.parse() != Ok(FiringState::Done),
        outline: Vec::new(),
    })
}

/// "Cone 6, garden kiln".
pub(super) fn firing_title(conn: &Connection, firing: &entity::Firing) -> Result<String> {
    let kiln: entity::Kiln = found(conn, firing.kiln)?;
    Ok(say::firing_title(&firing.cone, kiln.name))
}

/// The same with its day.
fn firing_title_and_day(conn: &Connection, now: Now, firing: &entity::Firing) -> Result<String> {
    Ok(format!("{}, {}", firing_title(conn, firing)?, now.moment(when(firing))))
}

/// When it was fired, or begun while it was not.
pub(super) fn when(firing: &entity::Firing) -> i64 {
    firing.fired_at.unwrap_or(firing.at)
}

/// The pieces that wait, the oldest first; those without a code that are alike and of one day make a run. Pieces that are
/// to be fired again come last.
fn waiting(conn: &Connection, now: Now) -> Result<Vec<WaitingRow>> {
    let mut rows: Vec<WaitingRow> = Vec::new();
    let mut runs: BTreeMap<(String, String), usize> = BTreeMap::new();
    for (piece, coats) in unfired(conn, now)? {
        let Some(first) = coats.first() else { continue };
        let title = piece_name(conn, &coats)?;
        let detail = format!("{}, {}", glazes(conn, &coats)?, now.days_ago(first.at));
        let is_coded = coats.iter().any(|coat| coat.code.is_some());
        let run = runs.get(&(title.clone(), detail.clone())).filter(|_| !is_coded);
        match run.and_then(|place| rows.get_mut(*place)) {
            Some(row) => row.pieces.push(piece.to_string()),
            None => {
                if !is_coded {
                    runs.insert((title.clone(), detail.clone()), rows.len());
                }
                rows.push(WaitingRow { pieces: vec![piece.to_string()], title, detail });
            }
        }
    }
    for (finding, coats) in to_fire_again(conn)? {
        let detail = [glazes(conn, &coats)?, say::to_be_fired_again()].join(", ");
        rows.push(WaitingRow { pieces: vec![finding.piece.to_string()], title: piece_name(conn, &coats)?, detail });
    }
    Ok(rows)
}

/// The pieces that have been in no firing, with their coats.
fn unfired(conn: &Connection, now: Now) -> Result<Vec<(Uuid, Vec<entity::Coat>)>> {
    let from = now.unix_ms - query::LONGEST_ON_THE_SHELF_MS;
    let mut pieces: Vec<(Uuid, Vec<entity::Coat>)> = Vec::new();
    let mut places: BTreeMap<Uuid, usize> = BTreeMap::new();
    for coat in query::coats_waiting(conn, from, MOST_WAITING)? {
        let place = *places.entry(coat.piece).or_insert(pieces.len());
        match pieces.get_mut(place) {
            Some((_, coats)) => coats.push(coat),
            None => pieces.push((coat.piece, vec![coat])),
        }
    }
    Ok(pieces)
}

/// The pieces that are to be fired again and have not been put into a later firing.
fn to_fire_again(conn: &Connection) -> Result<Vec<(entity::Finding, Vec<entity::Coat>)>> {
    let mut pieces = Vec::new();
    for finding in query::findings_again(conn, MOST_WAITING)? {
        // Placements are in the order of their firings: the last one is the latest.
        let latest = query::placements_of_piece(conn, finding.piece)?.pop();
        if latest.is_some_and(|placed| placed.firing == finding.firing) {
            let coats = query::coats_of_piece(conn, finding.piece)?;
            pieces.push((finding, coats));
        }
    }
    Ok(pieces)
}

fn form_name(conn: &Connection, coat: &entity::Coat) -> Result<String> {
    Ok(entity::Form::load(conn, coat.form)?.map_or_else(say::unknown_form, |form| form.name))
}

/// "Ash white inside, Iron red outside".
pub(super) fn glazes(conn: &Connection, coats: &[entity::Coat]) -> Result<String> {
    let mut parts = Vec::new();
    for coat in coats {
        let zone = &coat.zone;
        parts.push(match entity::Glaze::load(conn, coat.glaze)? {
            Some(glaze) => say::glaze_on_zone(zone, glaze.name),
            None => say::unknown_glaze_on_zone(zone),
        });
    }
    parts.dedup();
    Ok(sentence_case(&parts.join(", ")))
}

/// What a piece is called: its form, and its code if it has one.
pub(super) fn piece_name(conn: &Connection, coats: &[entity::Coat]) -> Result<String> {
    let Some(first) = coats.first() else { return Ok(say::unknown_piece()) };
    let name = form_name(conn, first)?;
    Ok(match coats.iter().find_map(|coat| coat.code.as_ref()) {
        Some(foot) => format!("{name}, {foot}"),
        None => name,
    })
}

/// The outline of a piece's form; empty where it has none.
pub(super) fn outline_of(conn: &Connection, coats: &[entity::Coat]) -> Result<Vec<Point>> {
    let form = coats.first().map(|coat| entity::Form::load(conn, coat.form)).transpose()?.flatten();
    let shape = form.map(|form| usable(shape(conn, &form))).transpose()?.flatten();
    Ok(shape.map(|shape| outline(&shape)).unwrap_or_default())
}

fn piece_id(text: &str) -> Result<Uuid> {
    parse_id(text, "piece")
}

fn firing_of(conn: &Connection, id: &str) -> Result<entity::Firing> {
    found(conn, parse_id(id, "firing")?)
}
