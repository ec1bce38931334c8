//! Finding pieces again: by the code on the foot, or by form, glaze, fault, firing, date and laydown.

use std::collections::BTreeSet;

use rusqlite::Connection;
use uuid::Uuid;

use super::{Pot, firing_title_and_day};
use crate::date_text::{DAY_MS, sentence_case};
use crate::editor::Value;
use crate::evidence::{code, parse_id, style};
use crate::in_words::{Named, StyleWords};
use crate::messages::find as say;
use crate::messages::kiln;
use crate::{Now, Result, Row, Studio, StudioError};
use laydown_domain::coded::coded;
use laydown_domain::kiln::fault::Fault;
use laydown_domain::kiln::piece_code;
use laydown_domain::units::{Laydown, Style};
use laydown_store::entity::{self, Entity};
use laydown_store::query::{self, CoatsLike};

/// How many pieces a search lists.
const MOST: usize = 60;
/// Among how many coats they are looked for: two coats a piece, and then some.
const MOST_COATS: u32 = 240;
/// Among how many findings a fault is looked for.
const MOST_FINDINGS: u32 = 2_000;
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

/// Pieces that were looked for.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PiecesView {
    /// What one can look by, beside the code.
    pub filters: Vec<Filter>,
    /// How many were found.
    pub found: String,
    /// The pieces, those glazed last first.
    pub pieces: Vec<Row>,
}

#[uniffi::export]
impl Studio {
    /// The pieces that fit all of `wanted`, of which each names a filter's key, or `code`, and what was chosen; those
    /// glazed last where nothing is wanted.
    ///
    /// # Errors
    /// [`StudioError::Refused`] for a code that was misread; [`StudioError::Missing`] for what is gone.
    pub fn find_pieces(&self, now: Now, wanted: &[Value]) -> Result<PiecesView> {
        let wanted = Wanted(wanted);
        self.store.read(|conn| {
            let style = style(conn)?;
            let pieces = found(conn, now, &wanted)?;
            let rows = pieces.iter().take(MOST).map(|piece| row(conn, now, *piece));
            Ok(PiecesView {
                filters: filters(conn, now, &wanted, &style)?,
                found: match (pieces.len(), wanted.text(CODE)) {
                    (0, "") => say::none_like_that(),
                    (0, _) => say::none_with_code(),
                    (more, _) if more > MOST => say::too_many(MOST),
                    (few, _) => kiln::pieces(few),
                },
                pieces: rows.collect::<Result<_>>()?,
            })
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

/// The pieces, those glazed last first; one more than are shown when there are more.
fn found(conn: &Connection, now: Now, wanted: &Wanted<'_>) -> Result<Vec<Uuid>> {
    let like = wanted.like(now)?;
    let mut narrowed: Option<BTreeSet<Uuid>> = None;
    let mut narrow = |pieces: BTreeSet<Uuid>| {
        narrowed = Some(match narrowed.take() {
            Some(before) => before.intersection(&pieces).copied().collect(),
            None => pieces,
        });
    };
    if !wanted.text(CODE).is_empty() {
        let code = piece_code::read(wanted.text(CODE)).map_err(|error| StudioError::refused(CODE, error))?;
        narrow(query::piece_of_code(conn, &code)?.into_iter().collect());
    }
    if !wanted.text(FAULT).is_empty() {
        let fault: Fault = code(wanted.text(FAULT))?;
        let findings = query::findings_of_fault(conn, fault.code(), MOST_FINDINGS)?;
        narrow(findings.into_iter().map(|finding| finding.piece).collect());
    }
    if let Some(firing) = wanted.id(FIRING)? {
        narrow(query::placements(conn, firing)?.into_iter().map(|placed| placed.piece).collect());
    }
    let mut pieces: Vec<Uuid> = Vec::new();
    match narrowed {
        Some(few) => {
            // The name of a piece begins with the time at which it was first weighed.
            for piece in few.into_iter().rev() {
                if pieces.len() <= MOST && query::coats_of_piece(conn, piece)?.iter().any(|coat| like.is(coat)) {
                    pieces.push(piece);
                }
            }
        }
        None => {
            let mut seen = BTreeSet::new();
            let coats = query::coats_like(conn, &like, MOST_COATS)?;
            pieces.extend(coats.into_iter().map(|coat| coat.piece).filter(|piece| seen.insert(*piece)).take(MOST + 1));
        }
    }
    Ok(pieces)
}

fn row(conn: &Connection, now: Now, piece: Uuid) -> Result<Row> {
    let pot = Pot::load(conn, piece)?;
    let when = pot.begun_at().map(|at| now.moment(at)).unwrap_or_default();
    Ok(Row {
        id: piece.to_string(),
        title: pot.name(conn)?,
        detail: format!("{}, {when}", pot.glazes(conn)?),
        chosen: false,
        outline: pot.outline(conn)?,
    })
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
    let filter = |key, label, any, rows| filter(key, label, any, rows, wanted.text(key));
    Ok(vec![
        filter(FORM, say::form(), say::any_form(), sorted(forms)),
        filter(GLAZE, say::glaze(), say::any_glaze(), sorted(glazes)),
        filter(FAULT, say::fault(), say::any_fault(), Fault::ALL.iter().map(fault).collect()),
        filter(FIRING, say::firing(), say::any_firing(), firings),
        filter(GLAZED, say::glazed(), say::any_time(), Glazed::ALL.iter().map(glazed).collect()),
        filter(LAYDOWN, say::laydown(), say::any_laydown(), bounds.collect()),
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
