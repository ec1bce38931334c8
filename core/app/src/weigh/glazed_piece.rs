//! A piece that already has a coat, and coming back to it: by the code on its foot, or from the unfired pieces.

use rusqlite::Connection;
use uuid::Uuid;

use super::{NextCoat, WeighEntry, WeighMode, first_field};
use crate::date_text::{DAY_MS, HOUR_MS, sentence_case};
use crate::draft;
use crate::evidence::{parse_id, usable};
use crate::form_geometry::shape;
use crate::in_words::{self, Named, Sentence, StyleWords, name_of};
use crate::kiln::{glazes, outline_of, piece_name};
use crate::messages::weigh as say;
use crate::{Note, Now, Point, Result, Studio};
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::piece_code;
use laydown_domain::units::{Laydown, Style};
use laydown_store::entity::{self, Coat, Entity};
use laydown_store::{Undo, events_in, query};

/// How many pieces are listed to come back to: a good day's work.
const MOST: usize = 60;
/// Among how many coats they are looked for.
const MOST_COATS: u32 = 4 * MOST as u32;
/// So long after a coat its wall is taken to be wet. Common practice, no source.
const WET_MS: i64 = HOUR_MS;
/// So long after a coat its wall may still be damp. Common practice, no source.
const DAMP_MS: i64 = DAY_MS;

/// A piece that a coat goes onto, and that had one before.
pub(super) struct GlazedPiece {
    pub(super) id: Uuid,
    /// The code on its foot.
    pub(super) code: Option<String>,
    /// The coats on it, the oldest first; none where all of them are undone.
    coats: Vec<Coat>,
}

impl GlazedPiece {
    /// The piece that `entry` names, or the one whose only coat was saved with its draft and is undone.
    pub(super) fn of(conn: &Connection, entry: &WeighEntry) -> Result<Option<GlazedPiece>> {
        let named = if entry.piece.is_empty() { None } else { Some(parse_id(&entry.piece, "piece")?) };
        let undone = match draft::named(&entry.draft)? {
            Some(draft) => draft::undone(conn, draft)?.map(|id| query::coat_as_said(conn, id)).transpose()?.flatten(),
            None => None,
        };
        // Another form is another piece, and so is one that is named.
        let undone = undone.filter(|coat| match named {
            Some(piece) => coat.piece == piece,
            None => entry.form.parse() == Ok(coat.form),
        });
        let Some(id) = named.or(undone.as_ref().map(|coat| coat.piece)) else { return Ok(None) };
        let coats = query::coats_of_piece(conn, id)?;
        let mut code = coats.iter().find_map(|coat| coat.code.clone()).or(undone.and_then(|coat| coat.code));
        if let Some(given) = &code
            && query::piece_of_code(conn, given)?.is_some_and(|bearer| bearer != id)
        {
            code = None;
        }
        Ok(Some(GlazedPiece { id, code, coats }))
    }

    /// Whether there is no coat on it any more.
    pub(super) fn is_bare(&self) -> bool {
        self.coats.is_empty()
    }

    /// "Outside, K7Q2M": the code keeps a line of its own on a narrow button.
    pub(super) fn zone_title(&self, zone: ZoneKind) -> String {
        let zone = sentence_case(&zone.name());
        match &self.code {
            Some(code) => say::zone_of_piece(zone, code),
            None => say::zone_of_same_piece(zone),
        }
    }

    /// How many coats lie on this zone already, and how much they carry together; `None` for none.
    fn carried_on(&self, zone: ZoneKind) -> Option<(usize, Laydown)> {
        let lies_on = |coat: &&Coat| match coat.zone.parse() {
            Ok(ZoneKind::Whole) => true,
            Ok(kind) => kind == zone,
            Err(_) => false,
        };
        let on_it: Vec<&Coat> = self.coats.iter().filter(lies_on).collect();
        let sum = on_it.iter().fold(0i64, |sum, coat| sum.saturating_add(coat.laydown_mg_dm2));
        (!on_it.is_empty()).then(|| (on_it.len(), Laydown::from_milligrams_per_dm2(sum)))
    }

    /// What lies on this zone already, and what it comes to with a coat of this `laydown`.
    pub(super) fn sum_notes(&self, zone: ZoneKind, laydown: Option<Laydown>, style: &Style) -> Vec<Note> {
        let Some((coats, before)) = self.carried_on(zone) else { return Vec::new() };
        let mut notes = vec![Note::attention(say::already_carries(coats, style.laydown_with_unit(before)))];
        notes.extend(laydown.map(|laydown| {
            let sum = Laydown::new(before.value() + laydown.value());
            Note::plain(say::with_this_coat(style.laydown_with_unit(sum)))
        }));
        notes
    }

    /// When it was glazed last, and what that means for this coat.
    pub(super) fn notes(&self, now: Now) -> Vec<Note> {
        let Some(last) = self.coats.iter().max_by_key(|coat| coat.at) else { return Vec::new() };
        let (zone, ago) = (name_of::<ZoneKind>(&last.zone), now.ago(last.at));
        let piece = self.code.clone().unwrap_or_else(say::this_piece);
        // A clock that was wrong says nothing about the wall.
        match now.unix_ms.saturating_sub(last.at).abs() {
            passed if passed < WET_MS => {
                vec![Note::attention(say::wall_is_wet(piece, zone, ago)), Note::attention(in_words::when_to_read(1))]
            }
            passed if passed < DAMP_MS => vec![
                Note::attention(say::wall_may_be_damp(piece, zone, ago)),
                Note::attention(in_words::when_to_read(1)),
            ],
            _ => vec![Note::plain(say::glazed_before(piece, zone, ago))],
        }
    }
}

/// A piece to come back to.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PieceToGlaze {
    /// Its form and code.
    pub title: String,
    /// What is on it and since when: "Ash white inside, 1 h ago".
    pub detail: String,
    /// The right half of its outline; empty where there is none.
    pub outline: Vec<Point>,
    /// The entry to go on with.
    pub entry: WeighEntry,
}

/// Pieces under one heading.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PieceGroup {
    /// What they have in common.
    pub heading: String,
    /// The pieces, those glazed last first.
    pub pieces: Vec<PieceToGlaze>,
}

/// The pieces that another coat can go onto.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PiecesToGlazeView {
    /// The pieces, in groups; a group is never empty.
    pub groups: Vec<PieceGroup>,
    /// What to say where no piece is listed; else empty.
    pub nothing: String,
}

#[uniffi::export]
impl Studio {
    /// The pieces that the next coat can go onto, each with the entry to go on with; `entry` is what is chosen now. With the
    /// beginning of a `code` those unfired ones that have such a code, with a whole code the one that has it, fired or not.
    ///
    /// # Errors
    /// Only when the file cannot be read; what is wrong with the code is said inside the view.
    pub fn pieces_to_glaze(&self, now: Now, entry: &WeighEntry, code: &str) -> Result<PiecesToGlazeView> {
        self.store.read(|conn| {
            let list = List { conn, now, entry };
            let typed = piece_code::begun(code);
            if typed.is_empty() {
                return list.unfired(&typed);
            }
            match piece_code::read(code) {
                Ok(whole) => list.of_code(&whole),
                Err(error) => {
                    let begun = list.unfired(&typed)?;
                    // While one still types, only what cannot become a code is wrong.
                    let nothing = if begun.groups.is_empty() { error.sentence() } else { String::new() };
                    Ok(PiecesToGlazeView { nothing, ..begun })
                }
            }
        })
    }
}

/// The pieces in no firing with their coats, those glazed last first.
pub(crate) fn unfired_newest_first(conn: &Connection, now: Now) -> Result<Vec<(Uuid, Vec<Coat>)>> {
    let mut pieces: Vec<(Uuid, Vec<Coat>)> = Vec::new();
    let from = now.unix_ms.saturating_sub(query::LONGEST_ON_THE_SHELF_MS);
    for coat in query::latest_coats_waiting(conn, from, MOST_COATS)? {
        if pieces.len() < MOST && pieces.iter().all(|(piece, _)| *piece != coat.piece) {
            pieces.push((coat.piece, query::coats_of_piece(conn, coat.piece)?));
        }
    }
    Ok(pieces)
}

struct List<'a> {
    conn: &'a Connection,
    now: Now,
    entry: &'a WeighEntry,
}

impl List<'_> {
    /// The unfired pieces whose code begins with `code`, and the way back to a new piece.
    fn unfired(&self, code: &str) -> Result<PiecesToGlazeView> {
        let (mut insides, mut others) = (Vec::new(), Vec::new());
        for (_, coats) in &unfired_newest_first(self.conn, self.now)? {
            let begins = |coat: &Coat| coat.code.as_deref().unwrap_or_default().starts_with(code);
            if !code.is_empty() && !coats.iter().any(begins) {
                continue;
            }
            let waits = self.waits_for_outside(coats)?;
            if waits { &mut insides } else { &mut others }.extend(self.piece(coats)?);
        }
        let new = if code.is_empty() { self.new_piece() } else { Vec::new() };
        let groups = [(String::new(), new), (say::insides_waiting(), insides), (say::other_unfired(), others)];
        let groups = groups.into_iter().filter(|(_, pieces)| !pieces.is_empty());
        let groups: Vec<PieceGroup> = groups.map(|(heading, pieces)| PieceGroup { heading, pieces }).collect();
        let nothing = if groups.is_empty() { say::nothing_unfired() } else { String::new() };
        Ok(PiecesToGlazeView { groups, nothing })
    }

    /// The piece that bears this code, or bore it before its coats were undone.
    fn of_code(&self, code: &str) -> Result<PiecesToGlazeView> {
        let piece = match query::piece_of_code(self.conn, code)? {
            Some(piece) => self.piece(&query::coats_of_piece(self.conn, piece)?)?,
            None => match query::coat_once_coded(self.conn, code)? {
                Some(coat) => self.piece_of(&coat, code)?,
                None => None,
            },
        };
        Ok(match piece {
            Some(piece) => {
                let group = PieceGroup { heading: String::new(), pieces: vec![piece] };
                PiecesToGlazeView { groups: vec![group], nothing: String::new() }
            }
            None => PiecesToGlazeView { groups: Vec::new(), nothing: say::no_piece_with_code(code) },
        })
    }

    /// The piece of a coat that had this code once.
    fn piece_of(&self, coat: &Coat, code: &str) -> Result<Option<PieceToGlaze>> {
        let coats = query::coats_of_piece(self.conn, coat.piece)?;
        if !coats.is_empty() {
            return self.piece(&coats);
        }
        let zone = coat.zone.parse().ok();
        let form = entity::Form::load(self.conn, coat.form)?.map_or_else(say::some_form, |form| form.name);
        Ok(Some(PieceToGlaze {
            title: say::form_and_code(form, code),
            detail: say::its_coat_was_undone(),
            outline: outline_of(self.conn, std::slice::from_ref(coat))?,
            entry: WeighEntry { draft: coat.id.to_string(), ..self.next(coat, zone) },
        }))
    }

    fn piece(&self, coats: &[Coat]) -> Result<Option<PieceToGlaze>> {
        let Some(last) = coats.iter().max_by_key(|coat| coat.at) else { return Ok(None) };
        let zone = match zones(coats).as_slice() {
            ["inside"] => Some(ZoneKind::Outside),
            ["outside"] => Some(ZoneKind::Inside),
            _ => last.zone.parse().ok(),
        };
        Ok(Some(PieceToGlaze {
            title: piece_name(self.conn, coats)?,
            detail: say::glazes_and_ago(glazes(self.conn, coats)?, self.now.ago(last.at)),
            outline: outline_of(self.conn, coats)?,
            entry: self.next(last, zone),
        }))
    }

    /// The entry for a further coat on the piece of `coat`.
    fn next(&self, coat: &Coat, zone: Option<ZoneKind>) -> WeighEntry {
        WeighEntry {
            form: coat.form.to_string(),
            // That of the zone.
            bucket: String::new(),
            zone,
            piece: coat.piece.to_string(),
            ..self.entry.clone().cleared()
        }
    }

    /// The way back to a piece that has no coat yet; nothing where one is chosen.
    fn new_piece(&self) -> Vec<PieceToGlaze> {
        if self.entry.piece.is_empty() {
            return Vec::new();
        }
        vec![PieceToGlaze {
            title: say::new_piece(),
            detail: String::new(),
            outline: Vec::new(),
            entry: self.entry.clone().cleared(),
        }]
    }

    /// Whether only its inside is glazed and its form has an outside to glaze.
    fn waits_for_outside(&self, coats: &[Coat]) -> Result<bool> {
        let (["inside"], Some(first)) = (zones(coats).as_slice(), coats.first()) else { return Ok(false) };
        let Some(form) = entity::Form::load(self.conn, first.form)? else { return Ok(false) };
        Ok(usable(shape(self.conn, &form))?.is_some_and(|shape| shape.zone(ZoneKind::Outside).is_some()))
    }
}

/// The codes of the zones that are glazed, each once.
fn zones(coats: &[Coat]) -> Vec<&str> {
    let mut zones: Vec<&str> = coats.iter().map(|coat| coat.zone.as_str()).collect();
    zones.sort_unstable();
    zones.dedup();
    zones
}

/// The coat that `undone` undid, to weigh it again on the piece that it was on; nothing where that undid anything else.
pub(crate) fn weigh_undone_again(conn: &Connection, undone: Undo) -> Result<Vec<NextCoat>> {
    let Some(made) = undone.only_event() else { return Ok(Vec::new()) };
    let Some(event) = events_in(conn, made.device, made.seq, made.seq)?.pop() else { return Ok(Vec::new()) };
    if event.kind != Coat::KIND || Coat::load(conn, event.entity)?.is_some() {
        return Ok(Vec::new());
    }
    Ok(query::coat_as_said(conn, event.entity)?.map(again).into_iter().collect())
}

fn again(undone: Coat) -> NextCoat {
    let way = if undone.glazed_mg.is_some() { WeighMode::TwoWeights } else { WeighMode::Net };
    NextCoat {
        label: undone.code.map_or_else(say::weigh_again, say::weigh_code_again),
        entry: WeighEntry {
            form: undone.form.to_string(),
            bucket: undone.bucket.to_string(),
            zone: undone.zone.parse().ok(),
            scale: undone.scale.to_string(),
            way: Some(way),
            piece: undone.piece.to_string(),
            field: first_field(way),
            draft: undone.id.to_string(),
            ..WeighEntry::default()
        },
    }
}
