//! A firing on one sheet: every piece with its picture and what came out, and the faults counted. A shell paints it as a
//! picture or a page.

use super::load::faults_counted;
use super::plan::place_words;
use super::record::{in_a_line, photos};
use super::{Pot, firing_of, firing_title_and_day};
use crate::date_text::sentence_case;
use crate::evidence::style;
use crate::messages::{contact_sheet as say, kiln};
use crate::{Now, Result, Studio};
use laydown_store::query;

/// One piece on the sheet.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct ContactTile {
    /// The file of a small picture of it; empty where none was taken.
    pub photo: String,
    /// Its form and code.
    pub title: String,
    /// Its glazes.
    pub glazes: String,
    /// Where it stood, and what came out.
    pub detail: String,
}

/// A firing on one sheet.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct ContactSheetView {
    /// The cone, the kiln and the day.
    pub title: String,
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
    /// [`crate::StudioError::Missing`] when there is no such firing.
    pub fn contact_sheet(&self, now: Now, firing: &str) -> Result<ContactSheetView> {
        self.store.read(|conn| {
            let firing = firing_of(conn, firing)?;
            let placed = query::placements(conn, firing.id)?;
            let mut tiles = Vec::new();
            let mut liked = Vec::new();
            for placed in &placed {
                let pot = Pot::load(conn, placed.piece)?.in_firing(conn, &firing)?;
                let finding = query::finding(conn, placed.piece, firing.id)?;
                liked.extend(finding.as_ref().and_then(|finding| finding.liking));
                let said = finding.as_ref().map(in_a_line).unwrap_or_default();
                let photo = photos(conn, now, self.store.photos(), placed.piece, Some(firing.id))?.pop();
                tiles.push(ContactTile {
                    photo: photo.map(|photo| photo.preview).unwrap_or_default(),
                    title: pot.name(conn)?,
                    glazes: pot.glazes(conn)?,
                    detail: sentence_case([place_words(placed), said].join(", ").trim_end_matches(", ")),
                });
            }
            let mut summary = vec![kiln::pieces(tiles.len())];
            if !liked.is_empty() {
                let mean = liked.iter().sum::<i64>() as f64 / liked.len() as f64;
                summary.push(say::liked_on_average(style(conn)?.number(mean, 1)));
            }
            summary.extend(faults_counted(conn, &placed)?);
            Ok(ContactSheetView {
                title: firing_title_and_day(conn, now, &firing)?,
                summary: format!("{}.", summary.join(", ")),
                tiles,
            })
        })
    }
}
