//! The life of one piece, from its form to its firings.

use super::plan::place_words;
use super::record::{PhotoView, in_a_line, photos, record};
use super::{Pot, firing_title, piece_id, was_fired, when};
use crate::archive::found;
use crate::date_text::sentence_case;
use crate::evidence::style;
use crate::messages::{editor_dry_weight as dry, piece as say};
use crate::{Line, Now, Result, Row, Studio};
use laydown_store::entity;
use laydown_store::query;

/// A piece's page.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PieceView {
    /// Its id.
    pub piece: String,
    /// Its form and code.
    pub title: String,
    /// Its coats as they were weighed, the oldest first.
    pub coats: Vec<Line>,
    /// Its firings and what came out of them, the oldest first; the id is the firing's.
    pub firings: Vec<Row>,
    /// What to say while it has been in none.
    pub unfired: String,
    /// Its photographs, the oldest first.
    pub photos: Vec<PhotoView>,
    /// What the button says that weighs it bone dry; empty where that says nothing any more.
    pub dry_label: String,
    /// Whether it was only put into a firing and never weighed, so that what it is called can be changed.
    pub is_unweighed: bool,
}

#[uniffi::export]
impl Studio {
    /// A piece's page.
    ///
    /// # Errors
    /// [`crate::StudioError::Missing`] when nothing is known of it.
    pub fn piece(&self, now: Now, id: &str) -> Result<PieceView> {
        let piece = piece_id(id)?;
        self.store.read(|conn| {
            let pot = Pot::find(conn, piece)?;
            let firing = |placed: entity::Placement| -> Result<Row> {
                let firing: entity::Firing = found(conn, placed.firing)?;
                let finding = query::finding(conn, piece, firing.id)?;
                let said = finding.as_ref().map(in_a_line).filter(|said| !said.is_empty());
                let mut parts = vec![format!("{}, {}", now.moment(when(&firing)), place_words(&placed))];
                parts.push(said.map_or_else(say::not_looked_at, |said| sentence_case(&said)));
                parts.extend(finding.and_then(|finding| finding.note));
                Ok(Row {
                    id: firing.id.to_string(),
                    title: firing_title(conn, &firing)?,
                    detail: parts.join(". "),
                    chosen: false,
                    outline: Vec::new(),
                })
            };
            let placed = query::placements_of_piece(conn, piece)?;
            Ok(PieceView {
                piece: id.to_owned(),
                title: pot.name(conn)?,
                coats: record(conn, now, &pot.coats, &style(conn)?)?,
                firings: placed.into_iter().map(firing).collect::<Result<_>>()?,
                unfired: say::unfired(),
                photos: photos(conn, now, self.store.photos(), piece, None)?,
                dry_label: if pot.is_unweighed() || was_fired(conn, piece)? { String::new() } else { dry::weigh_dry() },
                is_unweighed: pot.is_unweighed(),
            })
        })
    }
}
