//! One kept coat: its record, and the marks a potter puts on it afterwards.

use rusqlite::Connection;
use uuid::Uuid;

use super::archive::found;
use super::date_text::sentence_case;
use super::dry::weighed_dry;
use super::evidence::{parse_id, sg_in_words, step_of, style, verdict_kind};
use super::findings::thickness;
use super::in_words::{StyleWords, name_of, span};
use super::kiln::{FiringState, piece_name};
use super::messages::{coat as say, common};
use super::{CommandResult, Now, Result, Studio, StudioError};
use laydown_domain::coat::verdict::VerdictKind;
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::units::{Grams, Laydown, SquareCentimetres};
use laydown_store::entity::{self, Entity};
use laydown_store::query;

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
    /// The form, the code on the foot, and the zone.
    pub title: String,
    /// The record, line by line.
    pub lines: Vec<Line>,
    /// Whether it is a control piece.
    pub control: bool,
    /// What the button that turns it into a control piece, or back, says.
    pub control_label: String,
    /// What to ask before it is made a control piece; empty when it can simply be done.
    pub control_question: String,
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
            let coats = query::coats_of_piece(conn, coat.piece)?;
            let bucket: entity::Bucket = found(conn, coat.bucket)?;
            let glaze: entity::Glaze = found(conn, coat.glaze)?;
            let mut lines = Vec::new();
            let mut line = |label: String, value: String| lines.push(Line { label, value });
            line(say::saved(), now.moment(coat.at));
            line(say::wet_weight(), mass(coat.net_mg));
            if let (Some(bare), Some(glazed)) = (coat.bare_mg, coat.glazed_mg) {
                line(say::bare_glazed(), format!("{}, {}", mass(bare), mass(glazed)));
            }
            if let Some(added) = coat.added_mg {
                line(say::added(), mass(added));
            }
            if let Some(rubbed_off) = coat.rubbed_off_mg {
                line(say::rubbed_off(), mass(rubbed_off));
            }
            line(say::verdict(), sentence_case(&name_of::<VerdictKind>(&coat.verdict)));
            if coat.confirmed {
                line(say::reading(), say::confirmed());
            }
            // Both are what was said at the time: of a guess, all that was plausible.
            let aim_and_span =
                if coat.verdict == VerdictKind::Guess.code() { say::aim_and_guess } else { say::aim_and_span };
            line(
                say::target_then(),
                aim_and_span(mass(coat.aim_mg), span(&style, grams(coat.low_mg), grams(coat.high_mg), step)),
            );
            line(say::laydown(), style.laydown_with_unit(Laydown::from_milligrams_per_dm2(coat.laydown_mg_dm2)));
            if let Some(dry) = weighed_dry(&coat, &style, step) {
                line(say::weighed_dry(), dry);
            }
            if let Some(ms) = coat.dip_ms {
                line(say::dipped(), say::seconds(style.number(ms as f64 / 1e3, 1)));
            }
            line(say::glaze_bucket(), format!("{}, {}", glaze.name, bucket.name));
            line(say::sg(), sg_in_words(&style, coat.specific_gravity_e5));
            line(say::area(), style.area(SquareCentimetres::from_square_millimetres(coat.area_mm2)));
            if let Some(note) = &coat.note {
                line(say::note(), note.clone());
            }
            Ok(CoatView {
                id: id.to_owned(),
                piece: coat.piece.to_string(),
                title: common::form_and_zone(piece_name(conn, &coats)?, name_of::<ZoneKind>(&coat.zone)),
                lines,
                control_question: match standing(conn, &coat)? {
                    Standing::Doubtful(question) if !coat.control => question,
                    _ => String::new(),
                },
                control: coat.control,
                control_label: if coat.control { say::no_longer_control() } else { say::make_control() },
            })
        })
    }

    /// Marks the coat `id` as a control piece, or takes the mark off: targets rest on control pieces. What
    /// [`CoatView::control_question`] asks has been answered.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such coat; [`StudioError::Refused`] when it came out too thin or too thick.
    pub fn set_control(&self, now: Now, id: &str, control: bool) -> Result<CommandResult> {
        let coat_id = parse_id(id, "coat")?;
        let stored = self.command(now, |tx| {
            let coat = saved(tx.conn(), coat_id)?;
            if control && let Standing::Wrong(sentence) = standing(tx.conn(), &coat)? {
                return Err(StudioError::refused("", sentence));
            }
            tx.put(&entity::Coat { control, ..coat })?;
            Ok(())
        })?;
        let sentence = if control { say::control_marked() } else { say::control_unmarked() };
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
        Ok(CommandResult::new(id.to_owned(), say::removed(), stored.undo))
    }
}

/// What is known of a coat that is to be a control piece.
enum Standing {
    /// It came out of the kiln right.
    Right,
    /// Nobody knows yet: what to ask.
    Doubtful(String),
    /// It came out wrong: why it cannot be one.
    Wrong(String),
}

/// By what came out of the last firing after which this zone was judged; until then by its verdict.
fn standing(conn: &Connection, coat: &entity::Coat) -> Result<Standing> {
    let zone: Option<ZoneKind> = coat.zone.parse().ok();
    let (mut is_fired, mut came_out) = (false, None);
    for placement in query::placements_of_piece(conn, coat.piece)? {
        let firing = entity::Firing::load(conn, placement.firing)?;
        let Some(firing) = firing.filter(|firing| !firing.gone && firing.state != FiringState::Loading.code()) else {
            continue;
        };
        is_fired = true;
        let found = query::finding(conn, coat.piece, firing.id)?;
        came_out = found.and_then(|found| thickness(zone?, &found.inside, &found.outside)).or(came_out);
    }
    let verdict = verdict_kind(coat);
    let is_off = matches!(verdict, VerdictKind::Short | VerdictKind::Over);
    Ok(match came_out {
        Some(Thickness::Right) => Standing::Right,
        Some(thickness) => Standing::Wrong(say::control_came_out(thickness.code())),
        None if is_off => Standing::Doubtful(say::control_was_off(verdict.code())),
        None if is_fired => Standing::Doubtful(say::control_not_judged()),
        None => Standing::Doubtful(say::control_not_fired()),
    })
}

fn saved(conn: &Connection, id: Uuid) -> Result<entity::Coat> {
    entity::Coat::load(conn, id)?.ok_or_else(|| StudioError::missing("coat"))
}
