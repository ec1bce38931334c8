//! A piece with all that is known of it, whether it was weighed or only put into a firing.

use rusqlite::Connection;
use uuid::Uuid;

use super::{glazes, outline_of, piece_name, when};
use crate::editor::Point;
use crate::evidence::usable;
use crate::form_geometry::shape;
use crate::lists::outline;
use crate::messages::kiln as say;
use crate::{Result, StudioError};
use laydown_domain::form::Form;
use laydown_store::entity::{self, Entity};
use laydown_store::query::{self, CoatsLike};

/// A piece: its coats, or, where it was never weighed, what it was called when it went into a firing.
pub(crate) struct Pot {
    pub(crate) id: Uuid,
    /// As they were weighed, the oldest first.
    pub(crate) coats: Vec<entity::Coat>,
    /// Only where there is no coat.
    unweighed: Option<entity::Piece>,
}

impl Pot {
    /// The piece with this id; one of which nothing has arrived yet is called unknown.
    pub(crate) fn load(conn: &Connection, id: Uuid) -> Result<Pot> {
        let coats = query::coats_of_piece(conn, id)?;
        let unweighed = if coats.is_empty() { entity::Piece::load(conn, id)? } else { None };
        Ok(Pot { id, coats, unweighed })
    }

    /// The same, where something is known of it.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when nothing is.
    pub(crate) fn find(conn: &Connection, id: Uuid) -> Result<Pot> {
        let pot = Pot::load(conn, id)?;
        if pot.coats.is_empty() && pot.unweighed.as_ref().is_none_or(|piece| piece.gone) {
            return Err(StudioError::missing("piece"));
        }
        Ok(pot)
    }

    pub(super) fn weighed(id: Uuid, coats: Vec<entity::Coat>) -> Pot {
        Pot { id, coats, unweighed: None }
    }

    pub(super) fn unweighed(piece: entity::Piece) -> Pot {
        Pot { id: piece.id, coats: Vec::new(), unweighed: Some(piece) }
    }

    pub(super) fn is_unweighed(&self) -> bool {
        self.unweighed.is_some()
    }

    /// The code on its foot; empty where it has none.
    pub(crate) fn code(&self) -> &str {
        let of_piece = self.unweighed.as_ref().and_then(|piece| piece.code.as_deref());
        self.coats.iter().find_map(|coat| coat.code.as_deref()).or(of_piece).unwrap_or_default()
    }

    /// What it is called: its form or its own name, and its code if it has one.
    pub(crate) fn name(&self, conn: &Connection) -> Result<String> {
        let Some(piece) = &self.unweighed else { return piece_name(conn, &self.coats) };
        let name = match self.form(conn)? {
            Some(form) if piece.name.is_empty() => form.name,
            _ => piece.name.clone(),
        };
        Ok(match [name.as_str(), self.code()] {
            ["", ""] => say::unknown_piece(),
            ["", one] | [one, ""] => one.to_owned(),
            both => both.join(", "),
        })
    }

    /// A few letters for a small circle: its code, else the beginning of its name.
    pub(super) fn label(&self, conn: &Connection) -> Result<String> {
        if !self.code().is_empty() {
            return Ok(self.code().to_owned());
        }
        let name = self.name(conn)?;
        let word = name.split([' ', ',']).next().unwrap_or_default();
        match word.char_indices().nth(MOST_LETTERS) {
            Some((end, _)) => Ok(format!("{}…", &word[..end])),
            None => Ok(word.to_owned()),
        }
    }

    /// "Ash white inside, Iron red outside"; for one that was never weighed it says so.
    pub(crate) fn glazes(&self, conn: &Connection) -> Result<String> {
        if self.coats.is_empty() { Ok(say::never_weighed()) } else { glazes(conn, &self.coats) }
    }

    /// When it was first weighed or told of, unix ms.
    pub(super) fn begun_at(&self) -> Option<i64> {
        self.coats.first().map(|coat| coat.at).or(self.unweighed.as_ref().map(|piece| piece.at))
    }

    /// Whether it is one of those looked for: a coat of it is, or, where it was never weighed, its form and its day are and nothing
    /// else is asked.
    pub(super) fn is_like(&self, like: &CoatsLike) -> bool {
        let Some(piece) = &self.unweighed else { return self.coats.iter().any(|coat| like.is(coat)) };
        let any_laydown = like.laydown_mg_dm2 == (i64::MIN..=i64::MAX);
        let is_form = like.form.is_none() || like.form == piece.form;
        is_form && like.glaze.is_none() && any_laydown && like.at.contains(&piece.at) && !piece.gone
    }

    /// What a piece that was never weighed was called; empty for one that was.
    pub(crate) fn own_name(&self) -> &str {
        self.unweighed.as_ref().map_or("", |piece| &piece.name)
    }

    pub(crate) fn form_id(&self) -> Option<Uuid> {
        self.coats.first().map(|coat| coat.form).or(self.unweighed.as_ref().and_then(|piece| piece.form))
    }

    pub(super) fn form(&self, conn: &Connection) -> Result<Option<entity::Form>> {
        Ok(self.form_id().map(|form| entity::Form::load(conn, form)).transpose()?.flatten())
    }

    /// Its form as it can be calculated with; `None` where it has none.
    pub(super) fn shape(&self, conn: &Connection) -> Result<Option<Form>> {
        Ok(self.form(conn)?.map(|form| usable(shape(conn, &form))).transpose()?.flatten())
    }

    /// The outline of its form; empty where it has none.
    pub(super) fn outline(&self, conn: &Connection) -> Result<Vec<Point>> {
        if !self.coats.is_empty() {
            return outline_of(conn, &self.coats);
        }
        Ok(self.shape(conn)?.map(|shape| outline(&shape)).unwrap_or_default())
    }

    /// The piece as it was in one of its firings: without the coats that were put on after it for a later one.
    pub(crate) fn in_firing(mut self, conn: &Connection, firing: &entity::Firing) -> Result<Pot> {
        let placed = query::placements_of_piece(conn, self.id)?;
        if placed.last().is_some_and(|last| last.firing != firing.id) {
            self.coats.retain(|coat| coat.at <= when(firing));
        }
        Ok(self)
    }
}

/// Letters of a name that fit into a small circle.
const MOST_LETTERS: usize = 6;
