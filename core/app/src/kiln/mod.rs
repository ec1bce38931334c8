//! The Kiln screen: what waits for a firing, and the firings.

mod assessment;
mod compare;
mod contact_sheet;
mod fault_sketch;
mod find;
mod load;
mod paper;
mod piece;
mod plan;
mod pot;
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
use crate::messages::{editor_dry_weight as dry, kiln as say};
use crate::{Now, Result, Row, Studio};
use laydown_domain::caution::{self, Place};
use laydown_domain::coded::coded;
use laydown_store::entity::{self, Entity};
use laydown_store::query;

pub use assessment::{Assessment, AssessmentView, Choice, FaultChip, ZoneQuestion};
pub use compare::{CompareLine, CompareView};
pub use contact_sheet::{ContactSheetView, ContactTile};
pub use fault_sketch::fault_sketch;
pub use find::{Filter, FoundPiece, PiecesView};
pub(crate) use load::put_unweighed;
pub use load::{ChecklistItem, ConesRow, FiringView, PlacedPiece, ShelfView, WaitingGroup};
pub use piece::PieceView;
pub(crate) use pot::Pot;
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

/// The code in [`entity::Firing::fires`] of a firing of bare clay.
pub(crate) const BISQUE: &str = "bisque";

/// Whether bare clay is fired, and no glaze.
pub(crate) fn is_bisque(firing: &entity::Firing) -> bool {
    firing.fires.as_deref() == Some(BISQUE)
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
    /// What the button says that weighs one of them bone dry; empty while none waits that was weighed wet.
    pub dry_label: String,
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
            let any_weighed = !query::latest_coats_waiting(conn, longest_ago(now), 1)?.is_empty();
            let waiting: usize = waiting(conn, now, None)?.iter().map(|row| row.pieces.len()).sum();
            let firings = query::firings(conn, FIRINGS)?;
            Ok(KilnView {
                waiting: say::waiting(waiting),
                dry_label: if any_weighed { dry::weigh_a_dry_piece() } else { String::new() },
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

/// Whether a piece was in a firing that is over.
pub(crate) fn was_fired(conn: &Connection, piece: Uuid) -> Result<bool> {
    for placed in query::placements_of_piece(conn, piece)? {
        let firing = entity::Firing::load(conn, placed.firing)?.filter(|firing| !firing.gone);
        if firing.is_some_and(|firing| firing.state != FiringState::Loading.code()) {
            return Ok(true);
        }
    }
    Ok(false)
}

/// "Firing 12: cone 6, garden kiln", or by the name it was given; without a number where it has none.
pub(crate) fn firing_title(conn: &Connection, firing: &entity::Firing) -> Result<String> {
    let kiln: entity::Kiln = found(conn, firing.kiln)?;
    let title = match &firing.name {
        Some(name) => name.clone(),
        None if is_bisque(firing) => say::bisque_title(&firing.cone, kiln.name),
        None => say::firing_title(&firing.cone, kiln.name),
    };
    Ok(match firing.number {
        Some(number) => say::numbered_title(number.to_string(), title),
        None => sentence_case(&title),
    })
}

/// The same with its day.
fn firing_title_and_day(conn: &Connection, now: Now, firing: &entity::Firing) -> Result<String> {
    Ok(format!("{}, {}", firing_title(conn, firing)?, now.moment(when(firing))))
}

/// When it was fired, or begun while it was not.
pub(crate) fn when(firing: &entity::Firing) -> i64 {
    firing.fired_at.unwrap_or(firing.at)
}

/// The pieces that wait, the oldest first; those without a code that are alike and of one day make a run. Pieces that are
/// to be fired again come last. With `firing`, those that could be put into that one.
fn waiting(conn: &Connection, now: Now, firing: Option<&entity::Firing>) -> Result<Vec<WaitingRow>> {
    let mut rows: Vec<WaitingRow> = Vec::new();
    let mut runs: BTreeMap<(String, String), usize> = BTreeMap::new();
    let glazed = if firing.is_some_and(is_bisque) { Vec::new() } else { unfired(conn, now)? };
    for pot in glazed.into_iter().chain(unweighed(conn, now)?) {
        let Some(at) = pot.begun_at() else { continue };
        let title = pot.name(conn)?;
        let detail = format!("{}, {}", pot.glazes(conn)?, now.days_ago(at));
        let is_coded = !pot.code().is_empty();
        let run = runs.get(&(title.clone(), detail.clone())).filter(|_| !is_coded);
        match run.and_then(|place| rows.get_mut(*place)) {
            Some(row) => row.pieces.push(pot.id.to_string()),
            None => {
                if !is_coded {
                    runs.insert((title.clone(), detail.clone()), rows.len());
                }
                rows.push(WaitingRow { pieces: vec![pot.id.to_string()], title, detail });
            }
        }
    }
    for finding in
        to_fire_again(conn)?.into_iter().filter(|again| firing.is_none_or(|firing| firing.id != again.firing))
    {
        let pot = Pot::load(conn, finding.piece)?;
        let detail = [pot.glazes(conn)?, say::to_be_fired_again()].join(", ");
        rows.push(WaitingRow { pieces: vec![finding.piece.to_string()], title: pot.name(conn)?, detail });
    }
    Ok(rows)
}

/// The glazed pieces that have been in no firing.
fn unfired(conn: &Connection, now: Now) -> Result<Vec<Pot>> {
    let mut pots: Vec<Pot> = Vec::new();
    let mut places: BTreeMap<Uuid, usize> = BTreeMap::new();
    for coat in query::coats_waiting(conn, longest_ago(now), MOST_WAITING)? {
        let place = *places.entry(coat.piece).or_insert(pots.len());
        match pots.get_mut(place) {
            Some(pot) => pot.coats.push(coat),
            None => pots.push(Pot::weighed(coat.piece, vec![coat])),
        }
    }
    Ok(pots)
}

/// The pieces that were never weighed and are in no firing, as when they were taken out of one again.
fn unweighed(conn: &Connection, now: Now) -> Result<Vec<Pot>> {
    let pieces = query::unweighed_waiting(conn, longest_ago(now), MOST_WAITING)?;
    Ok(pieces.into_iter().map(Pot::unweighed).collect())
}

fn longest_ago(now: Now) -> i64 {
    now.unix_ms.saturating_sub(query::LONGEST_ON_THE_SHELF_MS)
}

/// What was found on the pieces that are to be fired again and have not been put into a later firing.
fn to_fire_again(conn: &Connection) -> Result<Vec<entity::Finding>> {
    let mut again = Vec::new();
    for finding in query::findings_again(conn, MOST_WAITING)? {
        let Some(came_from) = entity::Firing::load(conn, finding.firing)?.filter(|firing| !firing.gone) else {
            continue;
        };
        let mut waits = true;
        for placed in query::placements_of_piece(conn, finding.piece)? {
            if placed.firing != came_from.id {
                let other: entity::Firing = found(conn, placed.firing)?;
                waits = waits && load::is_out(conn, &placed, &other)? && when(&other) < when(&came_from);
            }
        }
        if waits {
            again.push(finding);
        }
    }
    Ok(again)
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
