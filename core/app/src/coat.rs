//! One kept coat: its record, and the marks a potter puts on it afterwards.

use rusqlite::Connection;
use uuid::Uuid;

use super::archive::found;
use super::date_text::{sentence_case, word};
use super::evidence::{code, parse_id, sg_in_words, step_of, style, verdict_kind};
use super::{CommandResult, Now, Result, Studio, StudioError};
use laydown_domain::coat::target::span;
use laydown_domain::form::ZoneKind;
use laydown_domain::units::{Grams, Laydown, SquareCentimetres};
use laydown_store::entity::{self, Entity};

/// A line of a record: what it is and what it says.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct Line {
    /// What it is.
    pub label: String,
    /// What it says.
    pub value: String,
}

/// The record of one coat.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct CoatView {
    /// The coat's id.
    pub id: String,
    /// The id of the piece it is on.
    pub piece: String,
    /// The form and the zone.
    pub title: String,
    /// The record, line by line.
    pub lines: Vec<Line>,
    /// Whether it is a control piece.
    pub control: bool,
    /// What the button that turns it into a control piece, or back, says.
    pub control_label: String,
}

#[uniffi::export]
impl Studio {
    /// The record of the coat `id`.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such coat.
    pub fn coat(&self, now: Now, id: &str) -> Result<CoatView> {
        self.store.read(|conn| {
            let coat = saved(conn, parse_id(id, "coat")?)?;
            let style = style(conn)?;
            let step = step_of(conn, &coat)?;
            let grams = Grams::from_milligrams;
            let mass = |milligrams: i64| style.mass(grams(milligrams), step);
            let form: entity::Form = found(conn, coat.form)?;
            let bucket: entity::Bucket = found(conn, coat.bucket)?;
            let glaze: entity::Glaze = found(conn, coat.glaze)?;
            let zone: ZoneKind = code(&coat.zone)?;
            let mut lines = Vec::new();
            let mut line = |label: &str, value: String| lines.push(Line { label: label.to_owned(), value });
            line("Saved", now.moment(coat.at));
            line("Wet weight", mass(coat.net_mg));
            if let (Some(bare), Some(glazed)) = (coat.bare_mg, coat.glazed_mg) {
                line("Bare, glazed", format!("{}, {}", mass(bare), mass(glazed)));
            }
            line("Verdict", sentence_case(word(verdict_kind(&coat)?)));
            line(
                "Target then",
                format!(
                    "{}, accepted {}",
                    mass(coat.aim_mg),
                    span(&style, grams(coat.low_mg), grams(coat.high_mg), step)
                ),
            );
            line("Laydown", style.laydown(Laydown::from_milligrams_per_dm2(coat.laydown_mg_dm2)));
            line("Glaze, bucket", format!("{}, {}", glaze.name, bucket.name));
            line("SG", sg_in_words(&style, coat.specific_gravity_e5));
            line("Area", style.area(SquareCentimetres::from_square_millimetres(coat.area_mm2)));
            Ok(CoatView {
                id: id.to_owned(),
                piece: coat.piece.to_string(),
                title: format!("{}, {}", form.name, zone.name()),
                lines,
                control: coat.control,
                control_label: if coat.control { "No longer a control piece" } else { "Make this a control piece" }
                    .to_owned(),
            })
        })
    }

    /// Marks the coat `id` as a control piece, or takes the mark off: targets rest on control pieces.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such coat.
    pub fn set_control(&self, now: Now, id: &str, control: bool) -> Result<CommandResult> {
        let coat_id = parse_id(id, "coat")?;
        let stored = self.command(now, |tx| {
            tx.put(&entity::Coat { control, ..saved(tx.conn(), coat_id)? })?;
            Ok(())
        })?;
        let sentence = if control { "Now a control piece: targets use it." } else { "No longer a control piece." };
        Ok(CommandResult::new(id.to_owned(), sentence, stored.undo))
    }

    /// Takes the coat `id` out of the record. The journal keeps it, so that this can be undone too.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such coat.
    pub fn remove_coat(&self, now: Now, id: &str) -> Result<CommandResult> {
        let coat_id = parse_id(id, "coat")?;
        let stored = self.command(now, |tx| {
            let coat = saved(tx.conn(), coat_id)?;
            Ok(tx.retract_all(coat.id)?)
        })?;
        Ok(CommandResult::new(id.to_owned(), "Coat removed.", stored.undo))
    }
}

fn saved(conn: &Connection, id: Uuid) -> Result<entity::Coat> {
    entity::Coat::load(conn, id)?.ok_or_else(|| StudioError::missing("coat"))
}
