//! Two pieces side by side: pictures and numbers.

use rusqlite::Connection;
use uuid::Uuid;

use super::load::is_looked_at;
use super::record::{in_a_line, photos};
use super::{Pot, firing_of, firing_title_and_day, piece_id};
use crate::date_text::sentence_case;
use crate::evidence::{sg_in_words, step_of, style};
use crate::in_words::{StyleWords, name_of};
use crate::messages::compare as say;
use crate::{Now, Result, Row, Studio};
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
    /// Names the left piece and the firing that it is seen after.
    pub left: String,
    /// Its form and code.
    pub left_title: String,
    /// The file of its latest photograph from that firing; empty where there is none.
    pub left_photo: String,
    /// The same of the right piece; empty while there is none to compare with.
    pub right: String,
    /// Its form and code, or that none is chosen.
    pub right_title: String,
    /// The file of its latest photograph from its firing; empty where there is none.
    pub right_photo: String,
    /// Line by line.
    pub lines: Vec<CompareLine>,
    /// What it can be compared with: itself after its other firings, control pieces of its glaze, then others of its form or glaze.
    pub others: Vec<Row>,
}

#[uniffi::export]
impl Studio {
    /// The piece `left` beside `right`; beside a control piece of its glaze, of its own form if there is one, where `right`
    /// is empty. Each names a piece, and may name the firing that it is seen after, as [`CompareView::left`] does; else that is
    /// the last one. Photograph, coats and what came out are all of that firing.
    ///
    /// # Errors
    /// [`crate::StudioError::Missing`] when one of them is gone.
    pub fn compare(&self, now: Now, left: &str, right: &str) -> Result<CompareView> {
        self.store.read(|conn| {
            let style = style(conn)?;
            let left = Side::of(conn, left)?;
            let others = others(conn, now, &left)?;
            let right = match right {
                "" => others.iter().find(|other| other.is_control).map(|other| other.side.clone()),
                right => Some(right.to_owned()),
            };
            let right = right.map(|side| Side::of(conn, &side)).transpose()?;
            let photo = |side: &Side| side.photo(conn, now, self.store.photos());
            let chosen = right.as_ref().map(Side::id).unwrap_or_default();
            let row = |other: Other| Row { chosen: other.side == chosen, id: other.side, ..other.row };
            Ok(CompareView {
                left: left.id(),
                left_title: left.pot.name(conn)?,
                left_photo: photo(&left)?,
                right: chosen.clone(),
                right_title: match &right {
                    Some(right) => right.pot.name(conn)?,
                    None => say::choose(),
                },
                right_photo: right.as_ref().map(photo).transpose()?.unwrap_or_default(),
                lines: lines(conn, now, &left, right.as_ref(), &style)?,
                others: others.into_iter().map(row).collect(),
            })
        })
    }
}

/// What names a piece as it came out of a firing; as it is, where there is none.
pub(super) fn compare_id(piece: Uuid, firing: Option<Uuid>) -> String {
    match firing {
        Some(firing) => format!("{piece} {firing}"),
        None => piece.to_string(),
    }
}

/// A piece as it came out of one firing, or as it waits for its first.
struct Side {
    pot: Pot,
    firing: Option<entity::Firing>,
}

impl Side {
    fn of(conn: &Connection, id: &str) -> Result<Side> {
        let (piece, firing) = id.split_once(' ').unwrap_or((id, ""));
        let pot = Pot::find(conn, piece_id(piece)?)?;
        let firing = match firing {
            "" => last_firing(conn, pot.id)?,
            firing => Some(firing_of(conn, firing)?),
        };
        let pot = match &firing {
            Some(firing) => pot.in_firing(conn, firing)?,
            None => pot,
        };
        Ok(Side { pot, firing })
    }

    fn id(&self) -> String {
        compare_id(self.pot.id, self.firing.as_ref().map(|firing| firing.id))
    }

    fn coat(&self, zone: ZoneKind) -> Option<&entity::Coat> {
        self.pot.coats.iter().rev().find(|coat| coat.zone == zone.code())
    }

    /// The file of the latest photograph of it after this firing, or before any; empty where there is none.
    fn photo(&self, conn: &Connection, now: Now, files: &Photos) -> Result<String> {
        let firing = self.firing.as_ref().map(|firing| firing.id);
        Ok(photos(conn, now, files, self.pot.id, firing)?.pop().map(|photo| photo.preview).unwrap_or_default())
    }

    /// The firing, and what came out of it.
    fn fired(&self, conn: &Connection, now: Now) -> Result<(Option<String>, Option<String>)> {
        let Some(firing) = &self.firing else { return Ok((None, None)) };
        let found = query::finding(conn, self.pot.id, firing.id)?.as_ref().map(in_a_line);
        let said = found.filter(|said| !said.is_empty()).map(|said| sentence_case(&said));
        Ok((Some(firing_title_and_day(conn, now, firing)?), said))
    }
}

/// The last firing that the piece was looked at after; the last that it was in where it never was.
fn last_firing(conn: &Connection, piece: Uuid) -> Result<Option<entity::Firing>> {
    let (mut last, mut looked_at) = (None, None);
    for placed in query::placements_of_piece(conn, piece)? {
        last = Some(placed.firing);
        if is_looked_at(conn, &placed)? {
            looked_at = last;
        }
    }
    Ok(looked_at.or(last).map(|firing| entity::Firing::load(conn, firing)).transpose()?.flatten())
}

/// A piece that can be compared with.
struct Other {
    side: String,
    is_control: bool,
    row: Row,
}

impl Other {
    fn new(
        conn: &Connection,
        now: Now,
        piece: Uuid,
        firing: Option<&entity::Firing>,
        is_control: bool,
    ) -> Result<Other> {
        let pot = Pot::load(conn, piece)?;
        let when = match firing {
            Some(firing) => firing_title_and_day(conn, now, firing)?,
            None => pot.begun_at().map(|at| now.moment(at)).unwrap_or_default(),
        };
        let mut detail = vec![pot.glazes(conn)?, when];
        detail.extend(is_control.then(say::control_piece));
        let (title, detail) = (pot.name(conn)?, detail.join(", "));
        let row = Row { id: String::new(), title, detail, chosen: false, outline: Vec::new() };
        Ok(Other { side: compare_id(piece, firing.map(|firing| firing.id)), is_control, row })
    }
}

/// The same piece after its other firings; control pieces of its glazes, those of its form first; then the latest of its form,
/// then of its glaze.
fn others(conn: &Connection, now: Now, left: &Side) -> Result<Vec<Other>> {
    let mut others: Vec<Other> = Vec::new();
    let shown = left.firing.as_ref().map(|firing| firing.id);
    for placed in query::placements_of_piece(conn, left.pot.id)?.into_iter().rev() {
        let Some(firing) = entity::Firing::load(conn, placed.firing)?.filter(|firing| Some(firing.id) != shown) else {
            continue;
        };
        others.push(Other::new(conn, now, left.pot.id, Some(&firing), false)?);
    }
    let Some(first) = left.pot.coats.first() else { return Ok(others) };
    let glazes: Vec<Uuid> = left.pot.coats.iter().map(|coat| coat.glaze).collect();
    let mut controls: Vec<entity::Coat> = query::latest_control_coats(conn, LOOKED_THROUGH)?;
    controls.retain(|coat| glazes.contains(&coat.glaze));
    controls.sort_by_key(|coat| coat.form != first.form);
    let like = |form, glaze| CoatsLike { at: i64::MIN..=i64::MAX, form, glaze, laydown_mg_dm2: i64::MIN..=i64::MAX };
    let of_form = query::coats_like(conn, &like(Some(first.form), None), LOOKED_THROUGH)?;
    let of_glaze = query::coats_like(conn, &like(None, Some(first.glaze)), LOOKED_THROUGH)?;
    let mut pieces: Vec<Uuid> = vec![left.pot.id];
    for coat in controls.iter().chain(&of_form).chain(&of_glaze) {
        if !pieces.contains(&coat.piece) && others.len() < OFFERED {
            pieces.push(coat.piece);
            let firing = last_firing(conn, coat.piece)?;
            others.push(Other::new(conn, now, coat.piece, firing.as_ref(), coat.control)?);
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
    // The firing first: it is what the photographs above show.
    let (left_firing, left_out) = left.fired(conn, now)?;
    let (right_firing, right_out) = right.map(|right| right.fired(conn, now)).transpose()?.unwrap_or_default();
    line(say::firing(), left_firing, right_firing);
    line(say::came_out(), left_out, right_out);
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
    Ok(lines)
}

fn none() -> String {
    "–".to_owned()
}
