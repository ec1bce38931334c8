//! The life of one piece, from its form to its firings, and finding a piece again by the code on its foot.

use super::look::{in_a_line, photos, record};
use super::{PhotoView, firing_title, form_name, piece_id, piece_name};
use crate::kiln::piece_code;
use crate::store::entity::{self, Entity};
use crate::store::query;
use crate::studio::facts::style;
use crate::studio::{Line, Now, Result, Row, Studio, StudioError};

/// How many pieces a search lists.
const MOST: u32 = 60;

/// A piece's page.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize)]
pub struct PieceView {
    /// Its id.
    pub piece: String,
    /// Its form and code.
    pub title: String,
    /// Its life, line by line: coats, firings, findings.
    pub lines: Vec<Line>,
    /// Its photographs, the oldest first.
    pub photos: Vec<PhotoView>,
}

/// Pieces that were looked for.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
pub struct PiecesView {
    /// The pieces, the newest first.
    pub pieces: Vec<Row>,
    /// What to say when there is none.
    pub empty: String,
}

impl Studio {
    /// A piece's page.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when nothing is known of it.
    pub fn piece(&self, now: Now, id: &str) -> Result<PieceView> {
        let piece = piece_id(id)?;
        self.store.read(|conn| {
            let coats = query::coats_of_piece(conn, piece)?;
            if coats.is_empty() {
                return Err(StudioError::missing("piece"));
            }
            let mut lines = record(conn, now, &coats, &style(conn)?)?;
            for placed in query::placements_of_piece(conn, piece)? {
                let Some(firing) = entity::Firing::load(conn, placed.firing)? else { continue };
                let found = query::finding(conn, piece, firing.id)?;
                let said = found.as_ref().map(in_a_line).transpose()?.filter(|said| !said.is_empty());
                lines.push(Line {
                    label: firing_title(conn, &firing)?,
                    value: format!(
                        "{}, shelf {}: {}",
                        now.moment(firing.fired_at.unwrap_or(firing.at)),
                        placed.shelf + 1,
                        said.unwrap_or_else(|| "not looked at yet".to_owned())
                    ),
                });
                if let Some(note) = found.and_then(|found| found.note) {
                    lines.push(Line { label: "Note".to_owned(), value: note });
                }
            }
            Ok(PieceView {
                piece: id.to_owned(),
                title: piece_name(conn, &coats)?,
                lines,
                photos: photos(conn, self.store.photos(), piece, None)?,
            })
        })
    }

    /// The piece with the code `text`; the pieces glazed last where it is empty.
    ///
    /// # Errors
    /// [`StudioError::Refused`] for a code that was misread.
    pub fn find_pieces(&self, now: Now, text: &str) -> Result<PiecesView> {
        let wanted = match text.trim() {
            "" => None,
            text => Some(piece_code::read(text).map_err(|error| StudioError::refused("code", error))?),
        };
        self.store.read(|conn| {
            let coats = match &wanted {
                Some(code) => match query::piece_of_code(conn, code)? {
                    Some(piece) => query::coats_of_piece(conn, piece)?.into_iter().take(1).collect(),
                    None => Vec::new(),
                },
                None => query::latest_coats(conn, MOST)?.into_iter().filter(|coat| coat.code.is_some()).collect(),
            };
            let row = |coat: &entity::Coat| -> Result<Row> {
                let code = coat.code.as_deref().unwrap_or_default();
                Ok(Row {
                    id: coat.piece.to_string(),
                    title: format!("{code} {}", form_name(conn, coat)?),
                    detail: now.moment(coat.at),
                    chosen: false,
                    outline: Vec::new(),
                })
            };
            Ok(PiecesView {
                pieces: coats.iter().map(row).collect::<Result<_>>()?,
                empty: match wanted {
                    Some(code) => format!("No piece here has the code {code}."),
                    None => "Pieces are listed here once they have a code.".to_owned(),
                },
            })
        })
    }
}
