//! One firing: what to look at before, which piece stands where, how far it has come, and how it was against earlier ones.

use rusqlite::Connection;
use uuid::Uuid;

use super::plan::{AIR, Arranging, Plan, Room, Stands, place_words};
use super::record::in_a_line;
use super::{FiringState, Pot, firing_of, firing_title, is_bisque, piece_id, waiting, when};
use crate::archive::found;
use crate::date_text::sentence_case;
use crate::editor::{Drawing, EditorKind, MOST_SHELVES, Spot};
use crate::evidence::{code, style};
use crate::in_words::{Named, witnessed};
use crate::messages::firing as say;
use crate::messages::{came_out, kiln};
use crate::{CommandResult, Line, Note, Now, Result, Row, Studio, StudioError, WaitingRow};
use laydown_domain::kiln::cone::{self, Cone, Witness};
use laydown_domain::kiln::fault::Fault;
use laydown_domain::units::{Celsius, Style};
use laydown_store::{Transaction, entity, query};

/// How many earlier firings of the kiln are shown.
const EARLIER: usize = 6;
/// Among how many of the newest firings they are looked for.
const LOOKED_THROUGH: u32 = 60;

/// The codes of what is looked at before the kiln. Common practice, no source.
const CHECKLIST: [&str; 6] = ["dust", "foot", "rim", "knocks", "cracks", "overlap"];
/// The same before a bisque firing. Common practice, no source.
const BISQUE_CHECKLIST: [&str; 4] = ["bone_dry", "closed", "stacked", "clay_cracks"];

/// Something to look at before the firing.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct ChecklistItem {
    /// What to hand back.
    pub code: String,
    /// What to look at.
    pub text: String,
    /// Whether it was.
    pub done: bool,
}

/// A piece in a firing.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct PlacedPiece {
    /// The piece's id.
    pub piece: String,
    /// Its form and code.
    pub title: String,
    /// Where it stands, and what was found on it.
    pub detail: String,
    /// Whether it has been looked at after the firing.
    pub looked_at: bool,
}

/// One shelf, seen from above.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ShelfView {
    /// Its number, from 0 at the bottom.
    pub number: u32,
    /// What it is called, and how much of it is free.
    pub title: String,
    /// The shelf with its pieces; each piece is a grip, keyed by its id.
    pub drawing: Drawing,
}

/// Pieces of one form that wait, to be ticked together.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct WaitingGroup {
    /// Which they are: "Breakfast mug: all 10".
    pub title: String,
    /// Their ids.
    pub pieces: Vec<String>,
}

/// The witness cones: asked for where they are placed, and read after the firing.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct ConesRow {
    /// What is asked.
    pub title: String,
    /// What is known, or what it is for.
    pub detail: String,
    /// The editor that it opens, of this firing.
    pub editor: EditorKind,
}

/// One firing as its page shows it.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct FiringView {
    /// Its id.
    pub id: String,
    /// The cone aimed at and the kiln.
    pub title: String,
    /// Its record.
    pub lines: Vec<Line>,
    /// How far it has come.
    pub state: String,
    /// Whether it is still being loaded.
    pub is_loading: bool,
    /// What to look at before; empty once it is fired.
    pub before: Vec<ChecklistItem>,
    /// The witness cones; none once all is done.
    pub cones: Option<ConesRow>,
    /// The shelves, the lowest first: to be arranged while it is loaded, a picture after that.
    pub shelves: Vec<ShelfView>,
    /// The pieces that could be put in; empty once all is done.
    pub waiting: Vec<WaitingRow>,
    /// Those of them that can be ticked together.
    pub groups: Vec<WaitingGroup>,
    /// What the button says that adds pieces which were never weighed; empty once all is done.
    pub add_label: String,
    /// What stands above them.
    pub waiting_label: String,
    /// The pieces in it.
    pub pieces: Vec<PlacedPiece>,
    /// What the button to look at the pieces says; empty while there is nothing to look at.
    pub look_label: String,
    /// Earlier firings of this kiln, the newest first; the id is the firing's.
    pub earlier: Vec<Row>,
    /// What to mind.
    pub notes: Vec<Note>,
    /// What the button to the next state says.
    pub next: String,
    /// What that means, to be asked before it is done; empty when it can simply be done.
    pub next_question: String,
}

#[uniffi::export]
impl Studio {
    /// A firing's page.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such firing.
    pub fn firing(&self, now: Now, id: &str) -> Result<FiringView> {
        self.store.read(|conn| {
            let firing = firing_of(conn, id)?;
            let kiln: entity::Kiln = found(conn, firing.kiln)?;
            // What only a newer version can do with it, it shows and leaves alone.
            let state = firing.state.parse().ok();
            let is_loading = state == Some(FiringState::Loading);
            let is_open = is_loading || state == Some(FiringState::Fired);
            let placed = query::placements(conn, firing.id)?;
            let pieces: Vec<PlacedPiece> =
                placed.iter().map(|placed| placed_piece(conn, placed)).collect::<Result<_>>()?;
            let before_it = fired_before(conn, &firing)?;
            let effective = effective(conn, &kiln, &placed)?;
            let left = pieces.iter().filter(|piece| !piece.looked_at).count();
            let (next, next_question) = state.map(|state| next(state, pieces.len(), left)).unwrap_or_default();
            let style = style(conn)?;
            let mut notes = notes(&firing, state, &before_it, &style);
            if is_loading && !is_bisque(&firing) {
                notes.extend(crowded(&effective));
            }
            let waiting = if is_open { waiting(conn, now, Some(&firing))? } else { Vec::new() };
            let arranging = Arranging { can_move: is_loading, can_remove: is_open, may_touch: is_bisque(&firing) };
            Ok(FiringView {
                id: id.to_owned(),
                title: firing_title(conn, &firing)?,
                lines: lines(now, &firing, placed.len(), &style),
                state: sentence_case(&kiln::state(&firing.state)),
                is_loading,
                before: if is_loading { before(&firing) } else { Vec::new() },
                cones: cones(&firing, state),
                shelves: effective.iter().map(|stands| stands.shelf(conn, arranging)).collect::<Result<_>>()?,
                groups: if is_open { groups(conn, &waiting)? } else { Vec::new() },
                waiting,
                add_label: if is_open { say::add_unweighed() } else { String::new() },
                waiting_label: if is_loading { say::waiting_label() } else { say::left_out_label() },
                look_label: match (is_loading || pieces.is_empty(), left) {
                    (true, _) => String::new(),
                    (false, 0) => say::look_again(),
                    (false, left) if left == pieces.len() => say::look(),
                    (false, left) => say::look_left(left),
                },
                pieces,
                earlier: earlier(conn, now, &before_it, &style)?,
                notes,
                next,
                next_question,
            })
        })
    }

    /// Puts pieces on a shelf, each where there is room. One that is in this firing already moves to that shelf.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when they do not fit, stand in another kiln, or the firing is done;
    /// [`StudioError::Missing`] for what is gone.
    pub fn load(&self, now: Now, firing: &str, pieces: &[String], shelf: u32) -> Result<CommandResult> {
        let stored = self.command(now, |tx| {
            let firing = open_firing(tx.conn(), firing)?;
            let kiln: entity::Kiln = found(tx.conn(), firing.kiln)?;
            let mut stands = effective(tx.conn(), &kiln, &query::placements(tx.conn(), firing.id)?)?;
            let shelf = usize::try_from(shelf).ok().filter(|shelf| *shelf < stands.len());
            let shelf = shelf.ok_or_else(|| StudioError::missing("shelf"))?;
            for piece in pieces {
                if !put(tx, &firing, &mut stands, piece_id(piece)?, shelf, at_most(&firing))? {
                    return Err(StudioError::refused("shelf", say::no_room()));
                }
            }
            Ok(if is_bisque(&firing) { 0 } else { stands[shelf].crowded().1 })
        })?;
        let sentence = match stored.value {
            0 => say::loaded(pieces.len(), shelf + 1),
            overlapping => say::loaded_and_overlapping(pieces.len(), shelf + 1, overlapping),
        };
        Ok(CommandResult::new(firing.to_owned(), sentence, stored.undo))
    }

    /// Puts all that waits into a firing, from the lowest shelf up, as far as there is room.
    ///
    /// # Errors
    /// As [`Studio::load`].
    pub fn load_all(&self, now: Now, firing: &str) -> Result<CommandResult> {
        let stored = self.command(now, |tx| {
            let firing = open_firing(tx.conn(), firing)?;
            let kiln: entity::Kiln = found(tx.conn(), firing.kiln)?;
            let mut stands = effective(tx.conn(), &kiln, &query::placements(tx.conn(), firing.id)?)?;
            let (mut fit, mut left) = (0_usize, 0_usize);
            for piece in waiting(tx.conn(), now, Some(&firing))?.into_iter().flat_map(|row| row.pieces) {
                let piece = piece_id(&piece)?;
                let mut is_in = false;
                for shelf in 0..stands.len() {
                    is_in = is_in || put(tx, &firing, &mut stands, piece, shelf, Room::Apart)?;
                }
                if is_bisque(&firing) {
                    is_in = is_in || put(tx, &firing, &mut stands, piece, 0, Room::Stacked)?;
                }
                if is_in { fit += 1 } else { left += 1 }
            }
            Ok((fit, left))
        })?;
        let (fit, left) = stored.value;
        let sentence = match left {
            0 => say::all_loaded(fit),
            left => say::some_loaded(fit, left),
        };
        Ok(CommandResult::new(firing.to_owned(), sentence, stored.undo))
    }

    /// Moves a piece on its shelf, as its grip was dragged to `to`.
    ///
    /// # Errors
    /// [`StudioError::Refused`] once it was fired; [`StudioError::Missing`] for what is gone.
    pub fn place(&self, now: Now, firing: &str, piece: &str, to: Spot) -> Result<CommandResult> {
        let stored = self.command(now, |tx| {
            let firing = firing_of(tx.conn(), firing)?;
            if code::<FiringState>(&firing.state)? != FiringState::Loading {
                return Err(StudioError::refused("", say::is_fired()));
            }
            let kiln: entity::Kiln = found(tx.conn(), firing.kiln)?;
            let placed = placement(tx.conn(), firing.id, piece_id(piece)?)?;
            let radius = Plan::of(&kiln).radius(tx.conn(), placed.piece)?;
            let (x_e4, y_e4) = Plan::of(&kiln).at(to, radius);
            tx.put(&entity::Placement { x_e4, y_e4, ..placed })?;
            Ok(())
        })?;
        Ok(CommandResult::new(piece.to_owned(), say::moved(), stored.undo))
    }

    /// Takes a piece out of a firing.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when the firing is done, or the piece has been looked at after it;
    /// [`StudioError::Missing`] for what is gone.
    pub fn take_out(&self, now: Now, firing: &str, piece: &str) -> Result<CommandResult> {
        let stored = self.command(now, |tx| {
            let firing = open_firing(tx.conn(), firing)?;
            let piece = piece_id(piece)?;
            let placed = placement(tx.conn(), firing.id, piece)?;
            if query::finding(tx.conn(), piece, firing.id)?.is_some() {
                return Err(StudioError::refused("", say::was_in_firing()));
            }
            tx.put(&entity::Placement { gone: true, ..placed })?;
            Ok(())
        })?;
        Ok(CommandResult::new(piece.to_owned(), say::taken_out(), stored.undo))
    }

    /// Ticks off, or on again, something to look at before the firing.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such firing; [`StudioError::Refused`] when that is not on its list.
    pub fn set_checklist_item(&self, now: Now, firing: &str, what: &str, done: bool) -> Result<CommandResult> {
        let stored = self.command(now, |tx| {
            let firing = firing_of(tx.conn(), firing)?;
            if !checklist(&firing).contains(&what) {
                return Err(StudioError::refused("", say::not_on_checklist()));
            }
            let ticked = |code: &str| if code == what { done } else { is_checked(&firing, code) };
            let codes: Vec<&str> = checklist(&firing).iter().copied().filter(|code| ticked(code)).collect();
            tx.put(&entity::Firing { checked: Some(codes.join(",")).filter(|codes| !codes.is_empty()), ..firing })?;
            Ok(())
        })?;
        let sentence = if done { say::looked_at() } else { say::not_looked_at() };
        Ok(CommandResult::new(firing.to_owned(), sentence, stored.undo))
    }

    /// Takes a firing on to its next state; one that is done is opened again.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such firing.
    pub fn advance(&self, now: Now, firing: &str) -> Result<CommandResult> {
        let stored = self.command(now, |tx| {
            let firing = firing_of(tx.conn(), firing)?;
            let before: FiringState = code(&firing.state)?;
            let next = match before {
                FiringState::Loading | FiringState::Done => FiringState::Fired,
                FiringState::Fired => FiringState::Done,
            };
            let fired_at = firing.fired_at.or(Some(now.unix_ms));
            tx.put(&entity::Firing { state: next.code().to_owned(), fired_at, ..firing })?;
            Ok(before)
        })?;
        let sentence = match stored.value {
            FiringState::Loading => say::fired_answer(),
            FiringState::Fired => say::done_answer(),
            FiringState::Done => say::opened_answer(),
        };
        Ok(CommandResult::new(firing.to_owned(), sentence, stored.undo))
    }
}

/// What the button to the next state says, and what is asked before.
fn next(state: FiringState, pieces: usize, left: usize) -> (String, String) {
    match state {
        FiringState::Loading if pieces == 0 => (say::to_fired(), say::ask_fired_empty()),
        FiringState::Loading => (say::to_fired(), say::ask_fired()),
        FiringState::Fired if left > 0 => (say::to_done(), say::ask_done(left)),
        FiringState::Fired => (say::to_done(), String::new()),
        FiringState::Done => (say::to_open(), String::new()),
    }
}

/// Puts a piece on a shelf; false when there is no room. What stands where is kept up to date.
fn put(
    tx: &mut Transaction<'_>,
    firing: &entity::Firing,
    effective: &mut [Stands],
    piece: Uuid,
    shelf: usize,
    room: Room,
) -> Result<bool> {
    let stood = stands_in(tx.conn(), firing, piece)?;
    let radius = effective[shelf].radius(tx.conn(), piece)?;
    let Some((x_e4, y_e4)) = effective[shelf].place_for(radius, piece, room) else { return Ok(false) };
    let id = stood.map_or_else(|| tx.new_id(), |stood| stood.id);
    let shelf_number = effective[shelf].number;
    tx.put(&entity::Placement { id, firing: firing.id, piece, shelf: shelf_number, x_e4, y_e4, gone: false })?;
    effective.iter_mut().for_each(|stands| stands.remove(piece));
    effective[shelf].add(piece, x_e4, y_e4, radius);
    Ok(true)
}

/// How close pieces may stand where one asks for it.
fn at_most(firing: &entity::Firing) -> Room {
    if is_bisque(firing) { Room::Stacked } else { Room::Close }
}

/// Puts pieces that were never weighed on a shelf of a firing, each where there is room.
pub(crate) fn put_unweighed(
    tx: &mut Transaction<'_>,
    firing: &entity::Firing,
    pieces: &[Uuid],
    shelf: usize,
) -> Result<()> {
    let kiln: entity::Kiln = found(tx.conn(), firing.kiln)?;
    let mut stands = effective(tx.conn(), &kiln, &query::placements(tx.conn(), firing.id)?)?;
    if shelf >= stands.len() {
        return Err(StudioError::missing("shelf"));
    }
    for piece in pieces {
        if !put(tx, firing, &mut stands, *piece, shelf, at_most(firing))? {
            return Err(StudioError::refused("shelf", say::no_room()));
        }
    }
    Ok(())
}

/// The piece's place in this firing, if it has one.
///
/// # Errors
/// [`StudioError::Refused`] while it is in another firing that it has not come out of.
fn stands_in(conn: &Connection, firing: &entity::Firing, piece: Uuid) -> Result<Option<entity::Placement>> {
    Pot::find(conn, piece)?;
    let mut stands = None;
    for placed in query::placements_of_piece(conn, piece)? {
        if placed.firing == firing.id {
            stands = Some(placed);
            continue;
        }
        let other: entity::Firing = found(conn, placed.firing)?;
        if !is_out(conn, &placed, &other)? {
            let title = firing_title(conn, &other)?;
            return Err(StudioError::refused("shelf", say::in_another_load(title)));
        }
    }
    Ok(stands)
}

/// Whether a piece has come out of a firing that it was in: all that was in it has, or it was looked at.
pub(super) fn is_out(conn: &Connection, placed: &entity::Placement, firing: &entity::Firing) -> Result<bool> {
    match firing.state.parse() {
        Ok(FiringState::Loading) => Ok(false),
        Ok(FiringState::Fired) => is_looked_at(conn, placed),
        Ok(FiringState::Done) | Err(_) => Ok(true),
    }
}

fn open_firing(conn: &Connection, id: &str) -> Result<entity::Firing> {
    let firing = firing_of(conn, id)?;
    match code(&firing.state)? {
        FiringState::Done => Err(StudioError::refused("", say::is_done())),
        FiringState::Loading | FiringState::Fired => Ok(firing),
    }
}

fn placement(conn: &Connection, firing: Uuid, piece: Uuid) -> Result<entity::Placement> {
    let placed = query::placements(conn, firing)?.into_iter().find(|placed| placed.piece == piece);
    placed.ok_or_else(|| StudioError::missing("piece"))
}

fn before(firing: &entity::Firing) -> Vec<ChecklistItem> {
    let tick = |code: &str| ChecklistItem {
        code: code.to_owned(),
        text: say::checklist(code),
        done: is_checked(firing, code),
    };
    checklist(firing).iter().copied().map(tick).collect()
}

fn checklist(firing: &entity::Firing) -> &'static [&'static str] {
    if is_bisque(firing) { &BISQUE_CHECKLIST } else { &CHECKLIST }
}

fn cones(firing: &entity::Firing, state: Option<FiringState>) -> Option<ConesRow> {
    let set: Vec<&str> = firing.witnesses.iter().flat_map(|pairs| &pairs.0).map(|(cone, _)| cone.as_str()).collect();
    match state? {
        FiringState::Loading => Some(ConesRow {
            title: say::place_cones(),
            detail: if set.is_empty() { say::no_cones_yet() } else { set.join(", ") },
            editor: EditorKind::WitnessCones,
        }),
        FiringState::Fired => Some(ConesRow {
            title: say::read_cones(),
            detail: if set.is_empty() { say::read_without_cones() } else { set.join(", ") },
            editor: EditorKind::Firing,
        }),
        FiringState::Done => None,
    }
}

/// The forms of which several pieces wait, but not all that wait.
fn groups(conn: &Connection, waiting: &[WaitingRow]) -> Result<Vec<WaitingGroup>> {
    let mut groups: Vec<(String, usize, Vec<String>)> = Vec::new();
    for row in waiting {
        let Some(first) = row.pieces.first() else { continue };
        let Some(form) = Pot::load(conn, piece_id(first)?)?.form(conn)? else { continue };
        match groups.iter_mut().find(|(name, ..)| *name == form.name) {
            Some((_, rows, pieces)) => {
                *rows += 1;
                pieces.extend(row.pieces.iter().cloned());
            }
            None => groups.push((form.name, 1, row.pieces.clone())),
        }
    }
    groups.retain(|(_, rows, _)| (2..waiting.len()).contains(rows));
    groups.sort();
    Ok(groups
        .into_iter()
        .map(|(form, _, pieces)| WaitingGroup { title: say::all_of_form(pieces.len(), form), pieces })
        .collect())
}

fn is_checked(firing: &entity::Firing, code: &str) -> bool {
    firing.checked.as_deref().unwrap_or_default().split(',').any(|checked| checked == code)
}

fn lines(now: Now, firing: &entity::Firing, pieces: usize, style: &Style) -> Vec<Line> {
    let mut lines = Vec::new();
    let mut line = |label: String, value: String| lines.push(Line { label, value });
    if let Some(number) = firing.number {
        line(say::number(), number.to_string());
    }
    if firing.name.is_some() {
        line(say::name(), firing.name.clone().unwrap_or_default());
    }
    line(say::begun(), now.moment(firing.at));
    line(say::pieces(), pieces.to_string());
    line(say::cone(), say::cone_and_kind(&firing.cone_kind, &firing.cone));
    let bends_at = |rate| firing.cone.parse::<Cone>().ok()?.bends_at(firing.cone_kind.parse().ok()?, rate);
    if let (Some(slow), Some(fast)) = (bends_at(60.0), bends_at(150.0)) {
        line(say::bends_at(), say::bends_at_rates(degrees(slow, style), degrees(fast, style)));
    }
    if let Some(program) = &firing.program {
        line(say::program(), program.clone());
    }
    let set: Vec<&str> = firing.witnesses.iter().flat_map(|pairs| &pairs.0).map(|(cone, _)| cone.as_str()).collect();
    if !set.is_empty() {
        line(say::witness_cones(), set.join(", "));
    }
    if let Some(at) = firing.fired_at {
        line(say::fired(), now.moment(at));
    }
    if let Some(top) = firing.top_mc {
        line(say::top_temperature(), degrees(Celsius::from_millidegrees(top), style));
    }
    if let Some(minutes) = firing.minutes {
        line(say::it_took(), duration(minutes));
    }
    if let Some(note) = &firing.note {
        line(say::note(), note.clone());
    }
    lines
}

fn notes(
    firing: &entity::Firing,
    state: Option<FiringState>,
    before_it: &[entity::Firing],
    style: &Style,
) -> Vec<Note> {
    let mut notes = Vec::new();
    if state == Some(FiringState::Loading) {
        notes.push(Note::warning(say::kiln_caution()));
    }
    if state == Some(FiringState::Fired) {
        notes.push(Note::warning(say::hot_ware()));
    }
    let against_aim = firing.cone.parse().ok().and_then(|aimed| cone::against_aim(aimed, &witnesses(firing)));
    notes.extend(against_aim.map(witnessed).map(Note::plain));
    notes.extend(against_the_last(firing, before_it, style).map(Note::plain));
    notes
}

/// The witness cones as they were read; not those that are only set.
pub(super) fn witnesses(firing: &entity::Firing) -> Vec<Witness> {
    let pairs = firing.witnesses.iter().flat_map(|pairs| &pairs.0).filter(|(_, reading)| !reading.is_empty());
    pairs
        .filter_map(|(cone, reading)| Some(Witness { cone: cone.parse().ok()?, reading: reading.parse().ok()? }))
        .collect()
}

fn placed_piece(conn: &Connection, placed: &entity::Placement) -> Result<PlacedPiece> {
    let pot = Pot::load(conn, placed.piece)?;
    let finding = query::finding(conn, placed.piece, placed.firing)?;
    let place = sentence_case(&place_words(placed));
    Ok(PlacedPiece {
        piece: placed.piece.to_string(),
        title: pot.name(conn)?,
        detail: match finding.as_ref().map(in_a_line) {
            Some(found) if !found.is_empty() => say::place_and_found(place, found),
            _ => place,
        },
        looked_at: finding.is_some() || is_photographed(conn, placed)?,
    })
}

/// Whether anything was said of a piece after this firing, or a photograph taken.
pub(super) fn is_looked_at(conn: &Connection, placed: &entity::Placement) -> Result<bool> {
    Ok(query::finding(conn, placed.piece, placed.firing)?.is_some() || is_photographed(conn, placed)?)
}

fn is_photographed(conn: &Connection, placed: &entity::Placement) -> Result<bool> {
    Ok(query::photos(conn, placed.piece)?.iter().any(|photo| photo.firing == Some(placed.firing)))
}

/// The plan of the shelves with what stands on each, the lowest first.
fn effective(conn: &Connection, kiln: &entity::Kiln, placed: &[entity::Placement]) -> Result<Vec<Stands>> {
    (0..kiln.shelves.clamp(1, MOST_SHELVES)).map(|number| Stands::on(conn, kiln, placed, number)).collect()
}

/// Pieces of which one stands on the other, and those so close that they may melt together: of each the lowest shelf.
fn crowded(effective: &[Stands]) -> Vec<Note> {
    let crowded: Vec<(i64, (usize, usize))> =
        effective.iter().map(|stands| (stands.number + 1, stands.crowded())).collect();
    let overlap = crowded.iter().find(|(_, (_, overlapping))| *overlapping > 0);
    let close = crowded.iter().find(|(_, (close, overlapping))| close > overlapping);
    let overlap = overlap.map(|(shelf, (_, pairs))| Note::warning(say::overlapping(*pairs, *shelf)));
    let close =
        close.map(|(shelf, (close, overlapping))| Note::attention(say::crowded(close - overlapping, *shelf, AIR)));
    overlap.into_iter().chain(close).collect()
}

// ---- against earlier firings ----

/// Fired in the same kiln before this one, the newest first.
fn fired_before(conn: &Connection, firing: &entity::Firing) -> Result<Vec<entity::Firing>> {
    let mut before = Vec::new();
    for other in query::firings(conn, LOOKED_THROUGH)? {
        let is_fired = other.state.parse() != Ok(FiringState::Loading);
        if is_fired && other.id != firing.id && other.kiln == firing.kiln && when(&other) <= when(firing) {
            before.push(other);
        }
    }
    before.sort_by_key(|other| std::cmp::Reverse(when(other)));
    Ok(before)
}

fn earlier(conn: &Connection, now: Now, before_it: &[entity::Firing], style: &Style) -> Result<Vec<Row>> {
    let row = |other: &entity::Firing| -> Result<Row> {
        let placed = query::placements(conn, other.id)?;
        let faults = faults_counted(conn, &placed)?;
        let mut parts = vec![now.moment(when(other))];
        parts.extend(other.top_mc.map(|mc| degrees(Celsius::from_millidegrees(mc), style)));
        parts.extend(other.minutes.map(duration));
        for witness in witnesses(other) {
            parts.push(say::witness(witness.reading.code(), witness.cone.code()));
        }
        parts.push(kiln::pieces(placed.len()));
        parts.extend(faults);
        Ok(Row {
            id: other.id.to_string(),
            title: firing_title(conn, other)?,
            detail: parts.join(", "),
            chosen: false,
            outline: Vec::new(),
        })
    };
    before_it.iter().take(EARLIER).map(row).collect()
}

/// "12 °C hotter and 40 min longer than the firing to the same cone before it."
fn against_the_last(firing: &entity::Firing, before_it: &[entity::Firing], style: &Style) -> Option<String> {
    let last = before_it.iter().find(|other| other.cone == firing.cone && other.cone_kind == firing.cone_kind)?;
    let heat = firing.top_mc.zip(last.top_mc).map(|(top, last)| match (top - last) as f64 / 1e3 {
        more if more >= 0.5 => say::hotter(degrees(Celsius::new(more), style)),
        less if less <= -0.5 => say::cooler(degrees(Celsius::new(-less), style)),
        _ => say::as_hot(),
    });
    let time = firing.minutes.zip(last.minutes).map(|(took, last)| match took - last {
        more if more > 0 => say::longer(duration(more)),
        less if less < 0 => say::shorter(duration(-less)),
        _ => say::as_long(),
    });
    match (heat, time) {
        (Some(heat), Some(time)) => Some(say::against_the_last_both(&firing.cone, heat, time)),
        (Some(one), None) | (None, Some(one)) => Some(say::against_the_last(&firing.cone, one)),
        (None, None) => None,
    }
}

/// On how many of these pieces each fault was found, the most frequent first: "runs (3)".
pub(super) fn faults_counted(conn: &Connection, placed: &[entity::Placement]) -> Result<Vec<String>> {
    let mut counted: Vec<(Fault, usize)> = Fault::ALL.iter().map(|fault| (*fault, 0)).collect();
    for placed in placed {
        let Some(finding) = query::finding(conn, placed.piece, placed.firing)? else { continue };
        for (saved, _) in finding.faults.iter().flat_map(|faults| &faults.0) {
            counted.iter_mut().filter(|(known, _)| known.code() == saved).for_each(|(_, pieces)| *pieces += 1);
        }
    }
    counted.retain(|(_, pieces)| *pieces > 0);
    counted.sort_by_key(|(_, pieces)| std::cmp::Reverse(*pieces));
    Ok(counted.into_iter().map(|(fault, pieces)| came_out::fault_counted(fault.name(), pieces)).collect())
}

pub(super) fn degrees(temperature: Celsius, style: &Style) -> String {
    format!("{} °C", style.number(temperature.value(), 0))
}

pub(super) fn duration(minutes: i64) -> String {
    match (minutes / 60, minutes % 60) {
        (0, minutes) => format!("{minutes} min"),
        (hours, minutes) => format!("{hours} h {minutes:02} min"),
    }
}
