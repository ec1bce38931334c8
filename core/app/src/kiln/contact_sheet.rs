//! A firing on one sheet: every piece with its picture, its record and what came out, and the faults counted; or one piece by
//! itself, to be shown to others. A shell paints it as a picture or a page.

use rusqlite::Connection;

use super::load::{degrees, duration, faults_counted, witnesses};
use super::plan::place_words;
use super::record::{in_a_line, photos};
use super::{Pot, firing_of, firing_title, piece_id, when};
use crate::date_text::sentence_case;
use crate::evidence::{step_of, style};
use crate::in_words::{StyleWords, witnessed};
use crate::messages::{contact_sheet as say, kiln};
use crate::{Now, Result, Studio, StudioError};
use laydown_domain::kiln::cone;
use laydown_domain::units::{Celsius, Grams, Laydown, Style};
use laydown_store::entity::{self, Entity};
use laydown_store::photos::Photos;
use laydown_store::query;

/// One piece on the sheet.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct ContactTile {
    /// The file of a small picture of it; empty where none was taken.
    pub photo: String,
    /// Its form and code.
    pub title: String,
    /// Its coats, each with its weight and its laydown.
    pub coats: Vec<String>,
    /// Where it stood, and what came out.
    pub detail: String,
}

/// A firing on one sheet.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct ContactSheetView {
    /// The firing and its day, with the year.
    pub title: String,
    /// How it was fired: program, temperature and time, and what the witness cones say.
    pub firing: Vec<String>,
    /// How many pieces, how they were liked, and the faults counted.
    pub summary: String,
    /// The pieces, from the top shelf down.
    pub tiles: Vec<ContactTile>,
}

#[uniffi::export]
impl Studio {
    /// A firing on one sheet.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such firing.
    pub fn contact_sheet(&self, now: Now, firing: &str) -> Result<ContactSheetView> {
        self.store.read(|conn| {
            let firing = firing_of(conn, firing)?;
            let placed = query::placements(conn, firing.id)?;
            sheet(conn, now, self.store.photos(), &firing, &placed)
        })
    }

    /// One piece of a firing by itself, with its record.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such firing, or the piece was not in it.
    pub fn piece_sheet(&self, now: Now, firing: &str, piece: &str) -> Result<ContactSheetView> {
        let piece = piece_id(piece)?;
        self.store.read(|conn| {
            let firing = firing_of(conn, firing)?;
            let mut placed = query::placements(conn, firing.id)?;
            placed.retain(|placed| placed.piece == piece);
            if placed.is_empty() {
                return Err(StudioError::missing("piece"));
            }
            // There is nothing to sum up of one.
            let sheet = sheet(conn, now, self.store.photos(), &firing, &placed)?;
            Ok(ContactSheetView { summary: String::new(), ..sheet })
        })
    }
}

fn sheet(
    conn: &Connection,
    now: Now,
    files: &Photos,
    firing: &entity::Firing,
    placed: &[entity::Placement],
) -> Result<ContactSheetView> {
    let style = style(conn)?;
    let mut tiles = Vec::new();
    let mut liked = Vec::new();
    for placed in placed {
        let pot = Pot::load(conn, placed.piece)?.in_firing(conn, firing)?;
        let finding = query::finding(conn, placed.piece, firing.id)?;
        liked.extend(finding.as_ref().and_then(|finding| finding.liking));
        let said = finding.as_ref().map(in_a_line).unwrap_or_default();
        let note = finding.and_then(|finding| finding.note).unwrap_or_default();
        let photo = photos(conn, now, files, placed.piece, Some(firing.id))?.pop();
        let detail = [place_words(placed), said, note].into_iter().filter(|part| !part.is_empty());
        tiles.push(ContactTile {
            photo: photo.map(|photo| photo.preview).unwrap_or_default(),
            title: pot.name(conn)?,
            coats: coats(conn, &pot, &style)?,
            detail: sentence_case(&detail.collect::<Vec<_>>().join(", ")),
        });
    }
    let mut summary = vec![kiln::pieces(tiles.len())];
    if !liked.is_empty() {
        let mean = liked.iter().sum::<i64>() as f64 / liked.len() as f64;
        summary.push(say::liked_on_average(style.number(mean, 1)));
    }
    summary.extend(faults_counted(conn, placed)?);
    Ok(ContactSheetView {
        title: format!("{}, {}", firing_title(conn, firing)?, now.day(when(firing))),
        firing: how_fired(firing, &style),
        summary: format!("{}.", summary.join(", ")),
        tiles,
    })
}

/// Each coat with its weight and its laydown; for a piece that was never weighed, that it was not.
fn coats(conn: &Connection, pot: &Pot, style: &Style) -> Result<Vec<String>> {
    if pot.coats.is_empty() {
        return Ok(vec![sentence_case(&pot.glazes(conn)?)]);
    }
    let line = |coat: &entity::Coat| -> Result<String> {
        let name = match entity::Glaze::load(conn, coat.glaze)? {
            Some(glaze) => kiln::coat_label(&coat.zone, glaze.name),
            None => kiln::unknown_glaze_coat_label(&coat.zone),
        };
        let weight = style.mass(Grams::from_milligrams(coat.net_mg), step_of(conn, coat)?);
        Ok(say::coat(name, weight, style.laydown_with_unit(Laydown::from_milligrams_per_dm2(coat.laydown_mg_dm2))))
    };
    pot.coats.iter().map(line).collect()
}

/// "Program: 100 an hour to 600", "Top temperature 1222 °C, took 9 h 30 min", "Cone 6 soft: under target."
fn how_fired(firing: &entity::Firing, style: &Style) -> Vec<String> {
    let heat = firing.top_mc.map(|mc| say::top(degrees(Celsius::from_millidegrees(mc), style)));
    let time = firing.minutes.map(|minutes| say::took(duration(minutes)));
    let heat_and_time: Vec<String> = heat.into_iter().chain(time).collect();
    let cones = firing.cone.parse().ok().and_then(|aimed| cone::against_aim(aimed, &witnesses(firing))).map(witnessed);
    let lines = [firing.program.as_ref().map(say::program), Some(sentence_case(&heat_and_time.join(", "))), cones];
    lines.into_iter().flatten().filter(|line| !line.is_empty()).collect()
}
