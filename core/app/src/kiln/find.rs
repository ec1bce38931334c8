//! Finding pieces again: by the beginning of the code on the foot, by words of a note, or by form, glaze, what came out, firing,
//! date and laydown.

use std::collections::BTreeSet;

use rusqlite::Connection;
use uuid::Uuid;

use super::record::{in_a_line, photos};
use super::{Pot, firing_title_and_day};
use crate::date_text::{DAY_MS, sentence_case};
use crate::editor::{Point, Value};
use crate::evidence::{code, parse_id, style};
use crate::in_words::{Named, StyleWords};
use crate::messages::find as say;
use crate::messages::kiln;
use crate::{Now, Result, Row, Studio, StudioError};
use laydown_domain::coded::coded;
use laydown_domain::kiln::fault::{Fault, Thickness};
use laydown_domain::kiln::piece_code::{self, CodeError};
use laydown_domain::units::{Laydown, Style};
use laydown_store::entity::{self, Entity};
use laydown_store::query::{self, CoatsLike};

/// How many pieces are listed at first, and how many more each time.
const PAGE: usize = 60;
/// The most that are ever listed.
const MOST: usize = 100_000;
/// Coats that are read for each piece that is listed: two, and then some.
const COATS_A_PIECE: usize = 4;
/// Among how many findings, notes and codes is looked.
const MOST_FINDINGS: u32 = 100_000;
/// How many firings are offered.
const FIRINGS: u32 = 60;

/// The keys of what one looks by.
const CODE: &str = "code";
const FORM: &str = "form";
const GLAZE: &str = "glaze";
const FAULT: &str = "fault";
const FIRING: &str = "firing";
const GLAZED: &str = "glazed";
const LAYDOWN: &str = "laydown";
const NOTE: &str = "note";
const LIKING: &str = "liking";
const ANSWER: &str = "answer";
const CONTROL: &str = "control";

coded! {
    /// When a piece was glazed.
    "time" Glazed {
        /// In the last 30 days.
        Month = "month",
        /// In the last 365 days.
        Year = "year",
        /// Before that.
        Before = "before",
    }
}

/// Bounds of the laydowns to look by, g/dm2: what is plausible in steps that a scale can tell apart. Common practice, no
/// source.
const LAYDOWNS: [f64; 8] = [0.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 10.0];

/// One thing to look by.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct Filter {
    /// Its key, to hand back with the id of a row.
    pub key: String,
    /// What it is called.
    pub label: String,
    /// What is chosen: "Any form", "Breakfast mug".
    pub chosen: String,
    /// What can be chosen; the first, with an empty id, is any.
    pub rows: Vec<Row>,
}

/// A piece that was found.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct FoundPiece {
    /// Its id.
    pub id: String,
    /// Its form and code.
    pub title: String,
    /// Its glazes, when it was glazed, and what came out of its last firing.
    pub detail: String,
    /// The file of a small picture of it; empty where none was taken.
    pub photo: String,
    /// The right half of its outline, to stand for the picture; empty where there is none.
    pub outline: Vec<Point>,
}

/// Pieces that were looked for.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PiecesView {
    /// What one can look by, beside the code and the words of a note.
    pub filters: Vec<Filter>,
    /// How many were found.
    pub found: String,
    /// The pieces, those glazed last first.
    pub pieces: Vec<FoundPiece>,
    /// How many to ask for to see more; 0 where all are listed.
    pub more: u32,
}

#[uniffi::export]
impl Studio {
    /// The pieces that fit all of `wanted`, of which each names a filter's key, `code` (its beginning will do) or `note` (words of
    /// a note), and what was chosen; those glazed last where nothing is wanted. At most `limit` are listed, 0 for the first few:
    /// [`PiecesView::more`] says how many to ask for next.
    ///
    /// # Errors
    /// [`StudioError::Refused`] for what can be no code's beginning; [`StudioError::Missing`] for what is gone.
    pub fn find_pieces(&self, now: Now, wanted: &[Value], limit: u32) -> Result<PiecesView> {
        let wanted = Wanted(wanted);
        let limit = (limit as usize).clamp(PAGE, MOST);
        self.store.read(|conn| {
            let style = style(conn)?;
            let pieces = found(conn, now, &wanted, limit)?;
            let rows = pieces.iter().take(limit).map(|piece| self.found_piece(conn, now, *piece));
            let is_more = pieces.len() > limit;
            Ok(PiecesView {
                filters: filters(conn, now, &wanted, &style)?,
                found: match (pieces.len(), wanted.text(CODE)) {
                    (0, "") => say::none_like_that(),
                    (0, _) => say::none_with_code(),
                    _ if is_more => say::first_of_more(limit),
                    (few, _) => kiln::pieces(few),
                },
                pieces: rows.collect::<Result<_>>()?,
                more: if is_more { u32::try_from(limit + PAGE).unwrap_or_default() } else { 0 },
            })
        })
    }
}

impl Studio {
    fn found_piece(&self, conn: &Connection, now: Now, piece: Uuid) -> Result<FoundPiece> {
        let pot = Pot::load(conn, piece)?;
        let mut detail = vec![pot.glazes(conn)?];
        detail.extend(pot.begun_at().map(|at| now.moment(at)));
        if let Some(last) = query::placements_of_piece(conn, piece)?.pop() {
            let found = query::finding(conn, piece, last.firing)?.as_ref().map(in_a_line);
            detail.extend(found.filter(|said| !said.is_empty()));
        }
        Ok(FoundPiece {
            id: piece.to_string(),
            title: pot.name(conn)?,
            detail: detail.join(", "),
            photo: photos(conn, now, self.store.photos(), piece, None)?
                .pop()
                .map(|photo| photo.preview)
                .unwrap_or_default(),
            outline: pot.outline(conn)?,
        })
    }
}

struct Wanted<'a>(&'a [Value]);

impl Wanted<'_> {
    fn text(&self, key: &str) -> &str {
        self.0.iter().rev().find(|value| value.key == key).map_or("", |value| value.text.trim())
    }

    fn id(&self, key: &str) -> Result<Option<Uuid>> {
        match self.text(key) {
            "" => Ok(None),
            text => parse_id(text, key).map(Some),
        }
    }

    fn like(&self, now: Now) -> Result<CoatsLike> {
        let at = match self.text(GLAZED) {
            "" => i64::MIN..=i64::MAX,
            text => match code::<Glazed>(text)? {
                Glazed::Month => now.unix_ms - 30 * DAY_MS..=i64::MAX,
                Glazed::Year => now.unix_ms - 365 * DAY_MS..=i64::MAX,
                Glazed::Before => i64::MIN..=now.unix_ms - 365 * DAY_MS,
            },
        };
        let laydown_mg_dm2 = match self.text(LAYDOWN) {
            "" => i64::MIN..=i64::MAX,
            text => {
                let number: usize = text.parse().map_err(|_| StudioError::missing(LAYDOWN))?;
                let bound = |number: usize| LAYDOWNS.get(number).map(|g| Laydown::new(*g).milligrams_per_dm2());
                let from = bound(number).ok_or_else(|| StudioError::missing(LAYDOWN))?;
                from..=bound(number + 1).map_or(i64::MAX, |to| to - 1)
            }
        };
        Ok(CoatsLike { at, form: self.id(FORM)?, glaze: self.id(GLAZE)?, laydown_mg_dm2 })
    }
}

/// The pieces, those glazed last first; one more than `limit` when there are more.
fn found(conn: &Connection, now: Now, wanted: &Wanted<'_>, limit: usize) -> Result<Vec<Uuid>> {
    let like = wanted.like(now)?;
    let mut narrowed: Option<BTreeSet<Uuid>> = None;
    let mut narrow = |pieces: BTreeSet<Uuid>| {
        narrowed = Some(match narrowed.take() {
            Some(before) => before.intersection(&pieces).copied().collect(),
            None => pieces,
        });
    };
    if !wanted.text(CODE).is_empty() {
        narrow(of_code(conn, wanted.text(CODE))?);
    }
    if !wanted.text(NOTE).is_empty() {
        let words = wanted.text(NOTE).to_lowercase();
        let notes = query::notes(conn, MOST_FINDINGS)?.into_iter();
        narrow(notes.filter(|(_, note)| note.to_lowercase().contains(&words)).map(|(piece, _)| piece).collect());
    }
    let of = |findings: Vec<entity::Finding>| findings.into_iter().map(|finding| finding.piece).collect();
    if !wanted.text(FAULT).is_empty() {
        let fault: Fault = code(wanted.text(FAULT))?;
        narrow(of(query::findings_of_fault(conn, fault.code(), MOST_FINDINGS)?));
    }
    if !wanted.text(LIKING).is_empty() {
        let stars = wanted.text(LIKING).parse().map_err(|_| StudioError::missing(LIKING))?;
        narrow(of(query::findings_rated(conn, stars, MOST_FINDINGS)?));
    }
    if !wanted.text(ANSWER).is_empty() {
        let answer: Thickness = code(wanted.text(ANSWER))?;
        narrow(of(query::findings_answered(conn, answer.code(), MOST_FINDINGS)?));
    }
    if !wanted.text(CONTROL).is_empty() {
        narrow(query::latest_control_coats(conn, MOST_FINDINGS)?.into_iter().map(|coat| coat.piece).collect());
    }
    if let Some(firing) = wanted.id(FIRING)? {
        narrow(query::placements(conn, firing)?.into_iter().map(|placed| placed.piece).collect());
    }
    let candidates = match narrowed {
        Some(few) => few,
        None => {
            let coats = query::coats_like(conn, &like, u32::try_from(limit * COATS_A_PIECE).unwrap_or(u32::MAX))?;
            let unweighed = query::unweighed(conn, u32::try_from(limit + 1).unwrap_or(u32::MAX))?;
            coats.into_iter().map(|coat| coat.piece).chain(unweighed.into_iter().map(|piece| piece.id)).collect()
        }
    };
    let mut pieces: Vec<Uuid> = Vec::new();
    // The id of a piece begins with the time at which it was first weighed.
    for piece in candidates.into_iter().rev() {
        if pieces.len() > limit {
            break;
        }
        if Pot::load(conn, piece)?.is_like(&like) {
            pieces.push(piece);
        }
    }
    Ok(pieces)
}

/// The pieces whose code begins with what was typed, weighed or not.
fn of_code(conn: &Connection, typed: &str) -> Result<BTreeSet<Uuid>> {
    let begun = piece_code::begun(typed);
    let weighed = query::pieces_of_codes(conn, &begun, MOST_FINDINGS)?;
    let unweighed = query::unweighed(conn, MOST_FINDINGS)?.into_iter();
    let unweighed = unweighed.filter(|piece| piece.code.as_deref().is_some_and(|code| code.starts_with(&begun)));
    let found: BTreeSet<Uuid> = weighed.into_iter().chain(unweighed.map(|piece| piece.id)).collect();
    // Only where nothing begins so, and nothing could, it was misread.
    match piece_code::read(typed) {
        Err(error) if found.is_empty() && error != CodeError::Length => Err(StudioError::refused(CODE, error)),
        _ => Ok(found),
    }
}

fn filters(conn: &Connection, now: Now, wanted: &Wanted<'_>, style: &Style) -> Result<Vec<Filter>> {
    let forms = entity::Form::all(conn)?.into_iter().map(|form| (form.id.to_string(), form.name)).collect();
    let glazes = entity::Glaze::all(conn)?.into_iter().map(|glaze| (glaze.id.to_string(), glaze.name)).collect();
    let mut firings = Vec::new();
    for firing in query::firings(conn, FIRINGS)? {
        firings.push((firing.id.to_string(), firing_title_and_day(conn, now, &firing)?));
    }
    let bounds = LAYDOWNS.iter().enumerate().map(|(number, from)| (number.to_string(), band(number, *from, style)));
    let fault = |fault: &Fault| (fault.code().to_owned(), sentence_case(&fault.name()));
    let glazed = |when: &Glazed| (when.code().to_owned(), say::glazed_when(when.code()));
    let answer = |answer: &Thickness| (answer.code().to_owned(), say::answer(answer.code()));
    let stars = (1..=5).rev().map(|stars| (stars.to_string(), say::stars(stars)));
    let control = vec![("yes".to_owned(), say::only_control())];
    let filter = |key, label, any, rows| filter(key, label, any, rows, wanted.text(key));
    Ok(vec![
        filter(FORM, say::form(), say::any_form(), sorted(forms)),
        filter(GLAZE, say::glaze(), say::any_glaze(), sorted(glazes)),
        filter(ANSWER, say::came_out(), say::any_answer(), Thickness::ALL.iter().map(answer).collect()),
        filter(LIKING, say::liking(), say::any_liking(), stars.collect()),
        filter(FAULT, say::fault(), say::any_fault(), Fault::ALL.iter().map(fault).collect()),
        filter(FIRING, say::firing(), say::any_firing(), firings),
        filter(GLAZED, say::glazed(), say::any_time(), Glazed::ALL.iter().map(glazed).collect()),
        filter(LAYDOWN, say::laydown(), say::any_laydown(), bounds.collect()),
        filter(CONTROL, say::control(), say::any_control(), control),
    ])
}

fn filter(key: &str, label: String, any: String, items: Vec<(String, String)>, wanted: &str) -> Filter {
    let rows: Vec<Row> = std::iter::once((String::new(), any.clone()))
        .chain(items)
        .map(|(id, title)| Row { chosen: id == wanted, id, title, detail: String::new(), outline: Vec::new() })
        .collect();
    let chosen = rows.iter().find(|row| row.chosen).map_or(any, |row| row.title.clone());
    Filter { key: key.to_owned(), label, chosen, rows }
}

fn sorted(mut items: Vec<(String, String)>) -> Vec<(String, String)> {
    items.sort_by(|a, b| a.1.cmp(&b.1));
    items
}

/// "5.0 to 6.0 g per 100 cm²".
fn band(number: usize, from: f64, style: &Style) -> String {
    let to = LAYDOWNS.get(number + 1).map(|to| style.laydown_with_unit(Laydown::new(*to)));
    match (number, to) {
        (0, Some(to)) => say::laydown_under(to),
        (_, Some(to)) => say::laydown_between(style.laydown_number(Laydown::new(from)), to),
        (_, None) => say::laydown_from(style.laydown_with_unit(Laydown::new(from))),
    }
}
