//! Two pieces side by side: pictures and numbers.

use rusqlite::Connection;
use uuid::Uuid;

use super::record::{in_a_line, photos};
use super::{firing_title_and_day, glazes, piece_id, piece_name};
use crate::date_text::sentence_case;
use crate::evidence::{sg_in_words, step_of, style};
use crate::in_words::{StyleWords, name_of};
use crate::messages::compare as say;
use crate::{Now, Result, Row, Studio, StudioError};
use laydown_domain::coat::verdict::VerdictKind;
use laydown_domain::form::ZoneKind;
use laydown_domain::units::{Grams, Laydown, Style};
use laydown_store::entity::{self, Entity};
use laydown_store::photos::Photos;
use laydown_store::query::{self, CoatsLike};

/// How many pieces are offered to compare with.
const OFFERED: usize = 30;
/// Among how many coats they are looked for.
const LOOKED_THROUGH: u32 = 120;

/// One thing that is compared.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct CompareLine {
    /// What it is.
    pub label: String,
    /// What it is on the left piece.
    pub left: String,
    /// What it is on the right one.
    pub right: String,
    /// Whether they differ.
    pub differs: bool,
}

/// Two pieces side by side.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct CompareView {
    /// The left piece's id.
    pub left: String,
    /// Its form and code.
    pub left_title: String,
    /// The file of its latest photograph; empty where there is none.
    pub left_photo: String,
    /// The right piece's id; empty while there is none to compare with.
    pub right: String,
    /// Its form and code, or that none is chosen.
    pub right_title: String,
    /// The file of its latest photograph; empty where there is none.
    pub right_photo: String,
    /// Line by line.
    pub lines: Vec<CompareLine>,
    /// What it can be compared with: control pieces of its glaze first, then others of its form or glaze.
    pub others: Vec<Row>,
}

#[uniffi::export]
impl Studio {
    /// The piece `left` beside `right`; beside a control piece of its glaze, of its own form if there is one, where `right`
    /// is empty.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when one of them is gone.
    pub fn compare(&self, now: Now, left: &str, right: &str) -> Result<CompareView> {
        self.store.read(|conn| {
            let style = style(conn)?;
            let left = Side::of(conn, piece_id(left)?)?;
            let others = others(conn, &left)?;
            let right = match right {
                "" => others.iter().find(|other| other.is_control).map(|other| other.piece),
                right => Some(piece_id(right)?),
            };
            let right = right.map(|piece| Side::of(conn, piece)).transpose()?;
            let photo = |side: &Side| latest_photo(conn, self.store.photos(), side.piece);
            Ok(CompareView {
                left: left.piece.to_string(),
                left_title: piece_name(conn, &left.coats)?,
                left_photo: photo(&left)?,
                right: right.as_ref().map(|right| right.piece.to_string()).unwrap_or_default(),
                right_title: match &right {
                    Some(right) => piece_name(conn, &right.coats)?,
                    None => say::choose(),
                },
                right_photo: right.as_ref().map(photo).transpose()?.unwrap_or_default(),
                lines: lines(conn, now, &left, right.as_ref(), &style)?,
                others: others.iter().map(|other| other.row(conn, now, right.as_ref())).collect::<Result<_>>()?,
            })
        })
    }
}

/// A piece with what is known of it.
struct Side {
    piece: Uuid,
    coats: Vec<entity::Coat>,
}

impl Side {
    fn of(conn: &Connection, piece: Uuid) -> Result<Side> {
        let coats = query::coats_of_piece(conn, piece)?;
        if coats.is_empty() { Err(StudioError::missing("piece")) } else { Ok(Side { piece, coats }) }
    }

    fn coat(&self, zone: ZoneKind) -> Option<&entity::Coat> {
        self.coats.iter().rev().find(|coat| coat.zone == zone.code())
    }
}

/// A piece that can be compared with.
struct Other {
    piece: Uuid,
    is_control: bool,
}

impl Other {
    fn row(&self, conn: &Connection, now: Now, right: Option<&Side>) -> Result<Row> {
        let coats = query::coats_of_piece(conn, self.piece)?;
        let when = coats.first().map(|coat| now.moment(coat.at)).unwrap_or_default();
        let mut detail = vec![glazes(conn, &coats)?, when];
        detail.extend(self.is_control.then(say::control_piece));
        Ok(Row {
            id: self.piece.to_string(),
            title: piece_name(conn, &coats)?,
            detail: detail.join(", "),
            chosen: right.is_some_and(|right| right.piece == self.piece),
            outline: Vec::new(),
        })
    }
}

/// Control pieces of its glazes, those of its form first; then the latest of its form, then of its glaze.
fn others(conn: &Connection, left: &Side) -> Result<Vec<Other>> {
    let Some(first) = left.coats.first() else { return Ok(Vec::new()) };
    let glazes: Vec<Uuid> = left.coats.iter().map(|coat| coat.glaze).collect();
    let mut controls: Vec<entity::Coat> = query::latest_control_coats(conn, LOOKED_THROUGH)?;
    controls.retain(|coat| glazes.contains(&coat.glaze));
    controls.sort_by_key(|coat| coat.form != first.form);
    let like = |form, glaze| CoatsLike { at: i64::MIN..=i64::MAX, form, glaze, laydown_mg_dm2: i64::MIN..=i64::MAX };
    let of_form = query::coats_like(conn, &like(Some(first.form), None), LOOKED_THROUGH)?;
    let of_glaze = query::coats_like(conn, &like(None, Some(first.glaze)), LOOKED_THROUGH)?;
    let mut others: Vec<Other> = Vec::new();
    for coat in controls.iter().chain(&of_form).chain(&of_glaze) {
        if coat.piece != left.piece && others.iter().all(|other| other.piece != coat.piece) && others.len() < OFFERED {
            others.push(Other { piece: coat.piece, is_control: coat.control });
        }
    }
    Ok(others)
}

fn lines(conn: &Connection, now: Now, left: &Side, right: Option<&Side>, style: &Style) -> Result<Vec<CompareLine>> {
    let mut lines = Vec::new();
    let mut line = |label: String, left: Option<String>, right: Option<String>| {
        if left.is_some() || right.is_some() {
            let (left, right) = (left.unwrap_or_else(none), right.unwrap_or_else(none));
            lines.push(CompareLine { label, differs: left != right, left, right });
        }
    };
    for zone in ZoneKind::ALL {
        let code = zone.code();
        let coats = (left.coat(*zone), right.and_then(|right| right.coat(*zone)));
        let mut both = |label: String, of: &dyn Fn(&entity::Coat) -> Result<String>| -> Result<()> {
            line(label, coats.0.map(of).transpose()?, coats.1.map(of).transpose()?);
            Ok(())
        };
        both(say::glaze(code), &|coat| {
            Ok(entity::Glaze::load(conn, coat.glaze)?.map(|glaze| glaze.name).unwrap_or_else(none))
        })?;
        both(say::wet_weight(code), &|coat| Ok(style.mass(Grams::from_milligrams(coat.net_mg), step_of(conn, coat)?)))?;
        both(say::laydown(code), &|coat| {
            Ok(style.laydown_with_unit(Laydown::from_milligrams_per_dm2(coat.laydown_mg_dm2)))
        })?;
        both(say::reading(code), &|coat| Ok(sentence_case(&name_of::<VerdictKind>(&coat.verdict))))?;
        both(say::sg(code), &|coat| Ok(sg_in_words(style, coat.specific_gravity_e5)))?;
        both(say::glazed(code), &|coat| Ok(now.moment(coat.at)))?;
    }
    let fired = |side: &Side| fired(conn, now, side);
    let (left, right) = (fired(left)?, right.map(fired).transpose()?.unwrap_or_default());
    for at in 0..left.len().max(right.len()) {
        let (left, right) = (left.get(at).cloned(), right.get(at).cloned());
        let part = |side: &Option<(String, String)>, first: bool| {
            side.clone().map(|(firing, said)| if first { firing } else { said })
        };
        line(say::firing(), part(&left, true), part(&right, true));
        line(say::came_out(), part(&left, false), part(&right, false));
    }
    Ok(lines)
}

fn none() -> String {
    "–".to_owned()
}

/// The firings of a piece, and what came out.
fn fired(conn: &Connection, now: Now, side: &Side) -> Result<Vec<(String, String)>> {
    let mut fired = Vec::new();
    for placed in query::placements_of_piece(conn, side.piece)? {
        let Some(firing) = entity::Firing::load(conn, placed.firing)? else { continue };
        let found = query::finding(conn, side.piece, firing.id)?.as_ref().map(in_a_line);
        let title = firing_title_and_day(conn, now, &firing)?;
        fired.push((title, found.filter(|said| !said.is_empty()).map_or_else(none, |said| sentence_case(&said))));
    }
    Ok(fired)
}

fn latest_photo(conn: &Connection, files: &Photos, piece: Uuid) -> Result<String> {
    Ok(photos(conn, files, piece, None)?.pop().map(|photo| photo.preview).unwrap_or_default())
}
