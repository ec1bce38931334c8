//! Looking at a fired piece: its record beside what came out, one tap each. Every tap is kept at once, so that a call or
//! an empty battery in between loses nothing.

use std::path::Path;

use rusqlite::Connection;
use serde::Serialize;
use uuid::Uuid;

use super::{firing_of, piece_id, piece_name};
use crate::coded::Coded;
use crate::form::ZoneKind;
use crate::kiln::fault::{Fault, Thickness};
use crate::store::entity::{self, Entity, Pairs};
use crate::store::photos::{Photos, develop};
use crate::store::query;
use crate::studio::facts::{code, parse_id, step_of, style, verdict_kind};
use crate::studio::words::{sentence_case, word};
use crate::studio::{Kept, Line, Note, Now, Result, Studio, StudioError};
use crate::units::{Grams, Laydown, SpecificGravity, Style};

/// The most of a note.
const LONGEST_NOTE: usize = 400;

/// A photograph that can be shown.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct PhotoView {
    /// Its id.
    pub id: String,
    /// The picture's file.
    pub file: String,
    /// A small upright copy of it.
    pub preview: String,
}

/// One of the answers to a question.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Choice {
    /// What to hand back.
    pub code: String,
    /// What it is called.
    pub name: String,
    /// Whether it is the answer.
    pub chosen: bool,
}

/// How thick the glaze looks on one zone.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ZoneQuestion {
    /// The zone's key: `inside`, `outside` or `overlap`.
    pub zone: String,
    /// What is asked.
    pub label: String,
    /// Thin, right, thick.
    pub choices: Vec<Choice>,
}

/// A fault to tap on or off.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct FaultChip {
    /// Its code.
    pub code: String,
    /// Its name.
    pub name: String,
    /// Whether the piece has it.
    pub on: bool,
    /// What it often speaks of.
    pub hint: String,
}

/// A piece after its firing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct LookView {
    /// The firing's id.
    pub firing: String,
    /// The piece's id.
    pub piece: String,
    /// Its form and code.
    pub title: String,
    /// Which of how many.
    pub place: String,
    /// Its coats as they were weighed.
    pub record: Vec<Line>,
    /// Its photographs from this firing.
    pub photos: Vec<PhotoView>,
    /// How thick the glaze looks.
    pub questions: Vec<ZoneQuestion>,
    /// The faults.
    pub faults: Vec<FaultChip>,
    /// How much the potter likes it, 1 to 5; 0 while not said.
    pub liking: u8,
    /// What the potter noted.
    pub note: String,
    /// Whether one of its coats is a control piece.
    pub control: bool,
    /// What to mind.
    pub notes: Vec<Note>,
    /// The piece before; empty for the first.
    pub previous: String,
    /// The piece after; empty for the last.
    pub next: String,
}

/// What is said of a piece with one tap.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub enum Look {
    /// How thick a zone looks; the same again takes it back.
    Thickness {
        /// The zone's key.
        zone: String,
        /// The code of the thickness.
        thickness: String,
    },
    /// A fault, on or off.
    Fault {
        /// Its code.
        fault: String,
        /// Whether the piece has it.
        on: bool,
    },
    /// How much it is liked, 1 to 5; 0 takes it back.
    Liking {
        /// So many.
        stars: u8,
    },
    /// A note.
    Note {
        /// The note; empty takes it away.
        text: String,
    },
    /// Whether it is a control piece.
    Control {
        /// Whether it is.
        on: bool,
    },
}

impl Studio {
    /// A piece of a firing beside its record; the first one not yet looked at where `piece` is empty.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such firing or piece.
    pub fn look_at(&self, now: Now, firing: &str, piece: &str) -> Result<LookView> {
        self.store.read(|conn| {
            let firing_row = firing_of(conn, firing)?;
            let placed = query::placements(conn, firing_row.id)?;
            let at = match piece {
                "" => first_unseen(conn, &placed)?,
                piece => {
                    let piece = piece_id(piece)?;
                    placed.iter().position(|placed| placed.piece == piece)
                }
            };
            let Some(at) = at else { return Err(StudioError::missing("piece")) };
            let neighbour = |at: Option<usize>| {
                at.and_then(|at| placed.get(at)).map(|placed| placed.piece.to_string()).unwrap_or_default()
            };
            let piece = placed[at].piece;
            let coats = query::coats_of_piece(conn, piece)?;
            let found = query::finding(conn, piece, firing_row.id)?;
            let style = style(conn)?;
            Ok(LookView {
                firing: firing.to_owned(),
                piece: piece.to_string(),
                title: piece_name(conn, &coats)?,
                place: format!("{} of {}, shelf {}", at + 1, placed.len(), placed[at].shelf + 1),
                record: record(conn, now, &coats, &style)?,
                photos: photos(conn, self.store.photos(), piece, Some(firing_row.id))?,
                questions: questions(&coats, found.as_ref())?,
                faults: faults(found.as_ref()),
                liking: found.as_ref().and_then(|found| found.liking).and_then(|stars| u8::try_from(stars).ok()).unwrap_or(0),
                note: found.as_ref().and_then(|found| found.note.clone()).unwrap_or_default(),
                control: coats.iter().any(|coat| coat.control),
                notes: warnings(found.as_ref()),
                previous: neighbour(at.checked_sub(1)),
                next: neighbour(Some(at + 1)),
            })
        })
    }

    /// Keeps what is said of a piece with one tap.
    ///
    /// # Errors
    /// [`StudioError::Refused`] for what cannot be said; [`StudioError::Missing`] for what is gone.
    pub fn look(&self, now: Now, firing: &str, piece: &str, look: &Look) -> Result<Kept> {
        let stored = self.command(now, |tx| {
            let firing = firing_of(tx.conn(), firing)?.id;
            let piece = piece_id(piece)?;
            if let Look::Control { on } = look {
                for coat in query::coats_of_piece(tx.conn(), piece)? {
                    tx.put(&entity::Coat { control: *on, ..coat })?;
                }
                return Ok(if *on { "Now a control piece: targets rest on it." } else { "No longer a control piece." });
            }
            let found = match query::finding(tx.conn(), piece, firing)? {
                Some(found) => found,
                None => entity::Finding { id: tx.new_id(), firing, piece, ..entity::Finding::default() },
            };
            tx.put(&entity::Finding { at: now.unix_ms, ..said(found, look)? })?;
            Ok("Kept.")
        })?;
        Ok(Kept::new(piece.to_owned(), stored.value, stored.undo))
    }

    /// Keeps a photograph of a piece: `file` is a JPEG or PNG as the camera left it, and is only read. `firing` may be
    /// empty.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when it is no picture; [`StudioError::Full`] when there is no room. Then nothing is kept.
    pub fn keep_photo(&self, now: Now, piece: &str, firing: &str, file: &Path) -> Result<Kept> {
        let piece = piece_id(piece)?;
        let firing = if firing.is_empty() { None } else { Some(parse_id(firing, "firing")?) };
        let unreadable = |_| StudioError::refused("photo", "This picture cannot be read. Take it again, or choose another.");
        let bytes = std::fs::read(file).map_err(unreadable)?;
        let photo = develop(&bytes).map_err(|error| StudioError::refused("photo", error))?;
        let stored = self.command(now, |tx| {
            // The file first, the record after it: a record never points to nothing.
            self.store.photos().put(&photo)?;
            let id = tx.new_id();
            tx.put(&entity::Photo {
                id,
                piece,
                firing,
                sha256: photo.sha256.clone(),
                at: now.unix_ms,
                width: i64::from(photo.width),
                height: i64::from(photo.height),
                gone: false,
            })?;
            Ok(id)
        })?;
        Ok(Kept::new(stored.value.to_string(), "Photograph kept.", stored.undo))
    }

    /// Takes a photograph off its piece; the file stays, so that this can be taken back.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such photograph.
    pub fn take_photo_off(&self, now: Now, id: &str) -> Result<Kept> {
        let photo_id = parse_id(id, "photograph")?;
        let stored = self.command(now, |tx| {
            let photo = entity::Photo::load(tx.conn(), photo_id)?.ok_or_else(|| StudioError::missing("photograph"))?;
            tx.put(&entity::Photo { gone: true, ..photo })?;
            Ok(())
        })?;
        Ok(Kept::new(id.to_owned(), "Photograph taken off.", stored.undo))
    }
}

fn first_unseen(conn: &Connection, placed: &[entity::Placement]) -> Result<Option<usize>> {
    for (at, placed) in placed.iter().enumerate() {
        if query::finding(conn, placed.piece, placed.firing)?.is_none() {
            return Ok(Some(at));
        }
    }
    Ok(if placed.is_empty() { None } else { Some(0) })
}

fn said(found: entity::Finding, look: &Look) -> Result<entity::Finding> {
    Ok(match look {
        Look::Thickness { zone, thickness } => {
            let thickness: Thickness = code(thickness)?;
            let turned = |before: &Option<String>| {
                Some(thickness.code().to_owned()).filter(|now| before.as_ref() != Some(now))
            };
            match zone.as_str() {
                INSIDE => entity::Finding { inside: turned(&found.inside), ..found },
                OUTSIDE => entity::Finding { outside: turned(&found.outside), ..found },
                OVERLAP => entity::Finding { overlap: turned(&found.overlap), ..found },
                _ => return Err(StudioError::missing("zone")),
            }
        }
        Look::Fault { fault, on } => {
            let fault: Fault = code(fault)?;
            let mut faults = found.faults.clone().unwrap_or_default().0;
            faults.retain(|(known, _)| known != fault.code());
            if *on {
                faults.push((fault.code().to_owned(), String::new()));
            }
            entity::Finding { faults: Some(Pairs(faults)).filter(|faults| !faults.0.is_empty()), ..found }
        }
        Look::Liking { stars } if *stars > 5 => {
            return Err(StudioError::refused("liking", "Liking goes from 1 to 5."));
        }
        Look::Liking { stars } => entity::Finding { liking: Some(i64::from(*stars)).filter(|stars| *stars > 0), ..found },
        Look::Note { text } if text.chars().count() > LONGEST_NOTE => {
            return Err(StudioError::refused("note", format!("Shorter, please: {LONGEST_NOTE} letters at most.")));
        }
        Look::Note { text } => {
            entity::Finding { note: Some(text.trim().to_owned()).filter(|text| !text.is_empty()), ..found }
        }
        Look::Control { .. } => found,
    })
}

const INSIDE: &str = "inside";
const OUTSIDE: &str = "outside";
const OVERLAP: &str = "overlap";

/// One question for each zone that was glazed, and for the overlap where two coats may meet.
fn questions(coats: &[entity::Coat], found: Option<&entity::Finding>) -> Result<Vec<ZoneQuestion>> {
    let zones = coats.iter().map(|coat| code::<ZoneKind>(&coat.zone)).collect::<Result<Vec<_>>>()?;
    let has = |kind: ZoneKind| zones.contains(&kind) || zones.contains(&ZoneKind::Whole) || zones.is_empty();
    let both = has(ZoneKind::Inside) && has(ZoneKind::Outside);
    let asked = [
        (INSIDE, "Inside", has(ZoneKind::Inside), found.and_then(|found| found.inside.as_deref())),
        (OUTSIDE, "Outside", has(ZoneKind::Outside), found.and_then(|found| found.outside.as_deref())),
        (OVERLAP, "Where the glazes meet", both && coats.len() > 1, found.and_then(|found| found.overlap.as_deref())),
    ];
    let question = |(zone, label, _, answer): (&str, &str, bool, Option<&str>)| ZoneQuestion {
        zone: zone.to_owned(),
        label: label.to_owned(),
        choices: Thickness::ALL.iter().map(|thickness| choice(thickness, answer)).collect(),
    };
    Ok(asked.into_iter().filter(|(.., asked, _)| *asked).map(question).collect())
}

fn choice(value: &impl Coded, answer: Option<&str>) -> Choice {
    Choice {
        code: value.code().to_owned(),
        name: sentence_case(value.name()),
        chosen: answer == Some(value.code()),
    }
}

fn faults(found: Option<&entity::Finding>) -> Vec<FaultChip> {
    let has = |fault: &Fault| {
        let known = found.and_then(|found| found.faults.as_ref());
        known.is_some_and(|faults| faults.0.iter().any(|(code, _)| code == fault.code()))
    };
    let chip = |fault: &Fault| FaultChip {
        code: fault.code().to_owned(),
        name: sentence_case(fault.name()),
        on: has(fault),
        hint: fault.hint().to_owned(),
    };
    Fault::ALL.iter().map(chip).collect()
}

/// Cautions that what was found calls for.
fn warnings(found: Option<&entity::Finding>) -> Vec<Note> {
    let has = |fault: Fault| {
        let known = found.and_then(|found| found.faults.as_ref());
        known.is_some_and(|faults| faults.0.iter().any(|(code, _)| code == fault.code()))
    };
    let mut notes = Vec::new();
    if has(Fault::Shivering) || has(Fault::Dunting) {
        notes.push(Note::warning("Edges and slivers are sharp: gloves and eye protection, and not for use at table."));
    }
    if has(Fault::Crazing) || has(Fault::DelayedCrazing) {
        notes.push(Note::attention(
            "Crazed ware can leak and break with boiling water. Whether it gives anything off into food only a laboratory test tells.",
        ));
    }
    notes
}

/// What was found, in a line: "inside right, outside thick, running, liked 4".
pub(super) fn in_a_line(found: &entity::Finding) -> Result<String> {
    let mut parts = Vec::new();
    for (zone, thickness) in [(INSIDE, &found.inside), (OUTSIDE, &found.outside), (OVERLAP, &found.overlap)] {
        if let Some(thickness) = thickness {
            parts.push(format!("{zone} {}", code::<Thickness>(thickness)?.name()));
        }
    }
    for (fault, _) in found.faults.iter().flat_map(|faults| &faults.0) {
        parts.push(code::<Fault>(fault)?.name().to_owned());
    }
    parts.extend(found.liking.map(|stars| format!("liked {stars}")));
    Ok(parts.join(", "))
}

/// The coats of a piece as they were weighed.
pub(super) fn record(conn: &Connection, now: Now, coats: &[entity::Coat], style: &Style) -> Result<Vec<Line>> {
    let mut lines = Vec::new();
    for coat in coats {
        let zone: ZoneKind = code(&coat.zone)?;
        let glaze = entity::Glaze::load(conn, coat.glaze)?.map_or_else(|| "A glaze".to_owned(), |glaze| glaze.name);
        let step = step_of(conn, coat)?;
        let mass = |milligrams: i64| style.mass(Grams::from_milligrams(milligrams), step);
        let sg = SpecificGravity::from_hundred_thousandths(coat.specific_gravity_e5)?;
        lines.push(Line {
            label: format!("{}, {glaze}", sentence_case(zone.name())),
            value: format!(
                "{}, {} (aim {}), {}, SG {}, {}",
                mass(coat.net_mg),
                word(verdict_kind(coat)?),
                mass(coat.aim_mg),
                style.laydown(Laydown::from_milligrams_per_dm2(coat.laydown_mg_dm2)),
                style.specific_gravity(sg),
                now.moment(coat.at)
            ),
        });
    }
    Ok(lines)
}

/// The photographs of a piece, those of one firing only where `firing` names it.
pub(super) fn photos(conn: &Connection, files: &Photos, piece: Uuid, firing: Option<Uuid>) -> Result<Vec<PhotoView>> {
    let all = query::photos(conn, piece)?;
    let wanted = all.into_iter().filter(|photo| firing.is_none() || photo.firing == firing);
    let view = |photo: entity::Photo| PhotoView {
        id: photo.id.to_string(),
        file: files.file(&photo.sha256).to_string_lossy().into_owned(),
        preview: files.preview(&photo.sha256).to_string_lossy().into_owned(),
    };
    Ok(wanted.map(view).collect())
}
