//! Looking at a fired piece: its record beside what came out, one tap each. Every tap is kept at once, so that a call or
//! an empty battery in between loses nothing.

use std::path::Path;

use rusqlite::Connection;
use serde::Serialize;

use super::compare::compare_id;
use super::load::is_looked_at;
use super::plan::place_words;
use super::record::{INSIDE, OUTSIDE, OVERLAP, PhotoView, earlier_firings, in_a_line, photos, record};
use super::whereabouts::{Outline, Whereabouts};
use super::{Pot, firing_of, is_bisque, piece_id};
use crate::archive::found;
use crate::date_text::sentence_case;
use crate::draft::made_by;
use crate::editor::{Drawing, Touch};
use crate::evidence::{code, parse_id, style, verdict_kind};
use crate::in_words::{Named, about, hint};
use crate::messages::assessment as say;
use crate::messages::coat;
use crate::{CommandResult, Line, Note, Now, Result, Studio, StudioError};
use laydown_domain::coat::verdict::VerdictKind;
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::fault::{Fault, SpeaksOf, Thickness};
use laydown_store::entity::{self, Entity, Pairs};
use laydown_store::photos::prepare_photo;
use laydown_store::query;

/// The most of a note.
const LONGEST_NOTE: usize = 400;
/// The most a piece can be liked.
const MOST_LIKED: u8 = 5;

/// One of the answers to a question.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct Choice {
    /// What to hand back.
    pub code: String,
    /// What it is called.
    pub name: String,
    /// Whether it is the answer.
    pub chosen: bool,
}

/// How thick the glaze looks on one zone.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct ZoneQuestion {
    /// The zone's key: `inside`, `outside` or `overlap`.
    pub zone: String,
    /// What is asked.
    pub label: String,
    /// Thin, right, thick.
    pub choices: Vec<Choice>,
}

/// A fault to tap on or off.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct FaultChip {
    /// Its code.
    pub code: String,
    /// Its name.
    pub name: String,
    /// Whether the piece has it.
    pub on: bool,
    /// What it is, in one line.
    pub about: String,
    /// Its name, where on the piece it is, what it is and what it often speaks of; to be said while it is on.
    pub hint: String,
}

impl FaultChip {
    fn of(fault: Fault, found: &[(Fault, Option<Whereabouts>)]) -> FaultChip {
        let here = found.iter().find(|(known, _)| *known == fault);
        FaultChip {
            code: fault.code().to_owned(),
            name: sentence_case(&fault.name()),
            on: here.is_some(),
            about: about(fault),
            hint: say::fault_and_hint(
                FaultChip::placed(fault, here.and_then(|(_, place)| *place)),
                about(fault),
                hint(fault),
            ),
        }
    }

    /// "Runs, at the foot".
    pub(super) fn placed(fault: Fault, place: Option<Whereabouts>) -> String {
        let name = sentence_case(&fault.name());
        match place {
            Some(place) => say::fault_and_place(name, place.words()),
            None => name,
        }
    }
}

/// A piece after its firing.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct AssessmentView {
    /// The firing's id.
    pub firing: String,
    /// The piece's id.
    pub piece: String,
    /// Its form and code.
    pub title: String,
    /// Which of how many.
    pub place: String,
    /// Its coats as they were weighed for this firing, and what came out of the firings before it.
    pub record: Vec<Line>,
    /// Its photographs from this firing.
    pub photos: Vec<PhotoView>,
    /// How thick the glaze looks.
    pub questions: Vec<ZoneQuestion>,
    /// The faults.
    pub faults: Vec<FaultChip>,
    /// The piece's outline with the faults that have a place; none while there is no fault.
    pub drawing: Option<Drawing>,
    /// How much the potter likes it, 1 to 5; 0 while not said.
    pub liking: u8,
    /// What the potter noted.
    pub note: String,
    /// Whether one of its coats is a control piece.
    pub control: bool,
    /// Whether it can be one: it was weighed and glazed.
    pub can_be_control: bool,
    /// What to hand to [`Studio::compare`] for this piece as it came out of this firing.
    pub compare: String,
    /// Whether it is to be fired again.
    pub again: bool,
    /// What to mind.
    pub notes: Vec<Note>,
    /// Previous piece; empty for the first.
    pub previous: String,
    /// The piece after; empty for the last.
    pub next: String,
}

/// What is said of a piece with one tap.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Enum)]
pub enum Assessment {
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
    /// Where on the piece a fault is, as the drawing was touched.
    Where {
        /// A tap places the fault that was put on last.
        touch: Touch,
    },
    /// How much it is liked, 1 to 5; the same again, or 0, takes it back.
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
    /// Whether it is to be fired again.
    Again {
        /// Whether it is.
        on: bool,
    },
}

#[uniffi::export]
impl Studio {
    /// A piece of a firing beside its record; the first one not yet looked at where `piece` is empty.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such firing or piece.
    pub fn assessment(&self, now: Now, firing: &str, piece: &str) -> Result<AssessmentView> {
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
            let pot = Pot::load(conn, piece)?.in_firing(conn, &firing_row)?;
            let coats = &pot.coats;
            let mut record = record(conn, now, coats, &style(conn)?)?;
            record.extend(earlier_firings(conn, now, piece, firing_row.id)?);
            let found = query::finding(conn, piece, firing_row.id)?;
            let faults = faults(found.as_ref());
            Ok(AssessmentView {
                firing: firing.to_owned(),
                piece: piece.to_string(),
                title: pot.name(conn)?,
                place: [say::position(placed.len(), at + 1), place_words(&placed[at])].join(", "),
                record,
                photos: photos(conn, now, self.store.photos(), piece, Some(firing_row.id))?,
                questions: if is_bisque(&firing_row) { Vec::new() } else { questions(coats, found.as_ref()) },
                drawing: match faults.is_empty() {
                    true => None,
                    false => Outline::of(&pot.outline(conn)?).map(|outline| outline.draw(&faults)),
                },
                faults: asked(&firing_row, &faults).map(|fault| FaultChip::of(fault, &faults)).collect(),
                liking: found
                    .as_ref()
                    .and_then(|found| found.liking)
                    .and_then(|stars| u8::try_from(stars).ok())
                    .unwrap_or(0),
                note: found.as_ref().and_then(|found| found.note.clone()).unwrap_or_default(),
                control: coats.iter().any(|coat| coat.control),
                can_be_control: !coats.is_empty(),
                compare: compare_id(piece, Some(firing_row.id)),
                again: found.as_ref().is_some_and(|found| found.again),
                notes: notes(coats, found.as_ref(), &faults),
                previous: neighbour(at.checked_sub(1)),
                next: neighbour(Some(at + 1)),
            })
        })
    }

    /// Saves what is said of a piece with one tap.
    ///
    /// # Errors
    /// [`StudioError::Refused`] for what cannot be said; [`StudioError::Missing`] for what is gone.
    pub fn assess(&self, now: Now, firing: &str, piece: &str, look: &Assessment) -> Result<CommandResult> {
        let stored = self.command(now, |tx| {
            let firing = firing_of(tx.conn(), firing)?.id;
            let piece = piece_id(piece)?;
            if let Assessment::Control { on } = look {
                for coat in query::coats_of_piece(tx.conn(), piece)? {
                    tx.put(&entity::Coat { control: *on, ..coat })?;
                }
                return Ok(if *on { coat::control_marked() } else { coat::control_unmarked() });
            }
            let found = match query::finding(tx.conn(), piece, firing)? {
                Some(found) => found,
                None => entity::Finding { id: tx.new_id(), firing, piece, ..entity::Finding::default() },
            };
            let outline = match look {
                Assessment::Where { .. } => Outline::of(&Pot::load(tx.conn(), piece)?.outline(tx.conn())?),
                _ => None,
            };
            let said = entity::Finding { at: now.unix_ms, ..said(found, look, outline.as_ref())? };
            tx.put(&said)?;
            let line = in_a_line(&said);
            Ok(if line.is_empty() { say::saved() } else { say::saved_found(line) })
        })?;
        Ok(CommandResult::new(piece.to_owned(), stored.value, stored.undo))
    }

    /// Saves a photograph of a piece: `file` is a JPEG or PNG as the camera left it, and is only read. `firing` may be
    /// empty. A photograph that the piece has from this firing already is not saved again: it is answered as before.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when it is no picture; [`StudioError::Missing`] when the piece or the firing is not there;
    /// [`StudioError::Full`] when there is no room. Then nothing is kept.
    pub fn save_photo(&self, now: Now, piece: &str, firing: &str, file: &Path) -> Result<CommandResult> {
        let piece = piece_id(piece)?;
        let firing = if firing.is_empty() { None } else { Some(parse_id(firing, "firing")?) };
        let bytes = std::fs::read(file).map_err(|_| StudioError::refused("photo", say::photo_unreadable()))?;
        let photo = prepare_photo(&bytes).map_err(|error| StudioError::refused("photo", error))?;
        let stored = self.command(now, |tx| {
            Pot::find(tx.conn(), piece)?;
            firing.map(|firing| found::<entity::Firing>(tx.conn(), firing)).transpose()?;
            let same = |known: &entity::Photo| known.sha256 == photo.sha256 && known.firing == firing;
            if let Some(known) = query::photos(tx.conn(), piece)?.into_iter().find(same) {
                return Ok((known.id, made_by(tx.conn(), known.id)?));
            }
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
            Ok((id, None))
        })?;
        let (id, first) = stored.value;
        Ok(CommandResult::new(id.to_string(), say::photo_saved(), first.unwrap_or(stored.undo)))
    }

    /// Takes a photograph off its piece; the file stays, so that this can be undone.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such photograph.
    pub fn remove_photo(&self, now: Now, id: &str) -> Result<CommandResult> {
        let photo_id = parse_id(id, "photograph")?;
        let stored = self.command(now, |tx| {
            let photo = entity::Photo::load(tx.conn(), photo_id)?.ok_or_else(|| StudioError::missing("photograph"))?;
            tx.put(&entity::Photo { gone: true, ..photo })?;
            Ok(())
        })?;
        Ok(CommandResult::new(id.to_owned(), say::photo_removed(), stored.undo))
    }
}

fn first_unseen(conn: &Connection, placed: &[entity::Placement]) -> Result<Option<usize>> {
    for (at, placed) in placed.iter().enumerate() {
        if !is_looked_at(conn, placed)? {
            return Ok(Some(at));
        }
    }
    Ok(if placed.is_empty() { None } else { Some(0) })
}

fn said(found: entity::Finding, look: &Assessment, outline: Option<&Outline>) -> Result<entity::Finding> {
    Ok(match look {
        Assessment::Thickness { zone, thickness } => {
            let thickness: Thickness = code(thickness)?;
            let turned =
                |before: &Option<String>| Some(thickness.code().to_owned()).filter(|now| before.as_ref() != Some(now));
            match zone.as_str() {
                INSIDE => entity::Finding { inside: turned(&found.inside), ..found },
                OUTSIDE => entity::Finding { outside: turned(&found.outside), ..found },
                OVERLAP => entity::Finding { overlap: turned(&found.overlap), ..found },
                _ => return Err(StudioError::missing("zone")),
            }
        }
        Assessment::Fault { fault, on } => {
            let fault: Fault = code(fault)?;
            let mut faults = saved_faults(&found);
            faults.retain(|(known, _)| known != fault.code());
            if *on {
                faults.push((fault.code().to_owned(), String::new()));
            }
            with_faults(found, faults)
        }
        Assessment::Where { touch } => {
            let Some(outline) = outline else {
                return Err(StudioError::refused("", say::no_outline()));
            };
            let mut faults = saved_faults(&found);
            let (place, fault) = match touch {
                Touch::Add { at } => (outline.at(*at).text(), faults.last_mut()),
                Touch::Move { grip, to } => {
                    (outline.at(*to).text(), faults.iter_mut().find(|(known, _)| known == grip))
                }
                Touch::Remove { grip } => (String::new(), faults.iter_mut().find(|(known, _)| known == grip)),
            };
            let Some(fault) = fault else {
                return Err(StudioError::refused("", say::fault_first()));
            };
            fault.1 = place;
            with_faults(found, faults)
        }
        Assessment::Liking { stars } if *stars > MOST_LIKED => {
            return Err(StudioError::refused("liking", say::liking_range()));
        }
        Assessment::Liking { stars } => {
            let stars = i64::from(*stars);
            entity::Finding { liking: Some(stars).filter(|stars| *stars > 0 && found.liking != Some(*stars)), ..found }
        }
        Assessment::Note { text } if text.chars().count() > LONGEST_NOTE => {
            return Err(StudioError::refused("note", say::note_too_long(LONGEST_NOTE)));
        }
        Assessment::Note { text } => {
            entity::Finding { note: Some(text.trim().to_owned()).filter(|text| !text.is_empty()), ..found }
        }
        Assessment::Again { on } => entity::Finding { again: *on, ..found },
        Assessment::Control { .. } => found,
    })
}

fn saved_faults(found: &entity::Finding) -> Vec<(String, String)> {
    found.faults.clone().unwrap_or_default().0
}

fn with_faults(found: entity::Finding, faults: Vec<(String, String)>) -> entity::Finding {
    entity::Finding { faults: Some(Pairs(faults)).filter(|faults| !faults.0.is_empty()), ..found }
}

/// The faults found, in the order in which they were tapped, with their places.
fn faults(found: Option<&entity::Finding>) -> Vec<(Fault, Option<Whereabouts>)> {
    let saved = found.and_then(|found| found.faults.as_ref()).into_iter().flat_map(|faults| &faults.0);
    saved.filter_map(|(fault, place)| Some((fault.parse().ok()?, Whereabouts::read(place)))).collect()
}

/// The faults that can be tapped: on bare clay those of the clay, and whatever was found.
fn asked(firing: &entity::Firing, found: &[(Fault, Option<Whereabouts>)]) -> impl Iterator<Item = Fault> {
    let bare = is_bisque(firing);
    let found: Vec<Fault> = found.iter().map(|(fault, _)| *fault).collect();
    Fault::ALL.iter().copied().filter(move |fault| !bare || fault.is_of_the_clay() || found.contains(fault))
}

/// One question for each zone that was glazed, and for the overlap where two coats may meet.
fn questions(coats: &[entity::Coat], found: Option<&entity::Finding>) -> Vec<ZoneQuestion> {
    let zones: Vec<ZoneKind> = coats.iter().filter_map(|coat| coat.zone.parse().ok()).collect();
    let has = |kind: ZoneKind| zones.contains(&kind) || zones.contains(&ZoneKind::Whole) || zones.is_empty();
    let both = has(ZoneKind::Inside) && has(ZoneKind::Outside);
    let asked = [
        (INSIDE, say::inside(), has(ZoneKind::Inside), found.and_then(|found| found.inside.as_deref())),
        (OUTSIDE, say::outside(), has(ZoneKind::Outside), found.and_then(|found| found.outside.as_deref())),
        (OVERLAP, say::overlap(), both && coats.len() > 1, found.and_then(|found| found.overlap.as_deref())),
    ];
    let question = |(zone, label, _, answer): (&str, String, bool, Option<&str>)| ZoneQuestion {
        zone: zone.to_owned(),
        label,
        choices: Thickness::ALL.iter().map(|thickness| choice(*thickness, answer)).collect(),
    };
    asked.into_iter().filter(|(.., asked, _)| *asked).map(question).collect()
}

fn choice(thickness: Thickness, answer: Option<&str>) -> Choice {
    let code = thickness.code();
    Choice { code: code.to_owned(), name: sentence_case(&thickness.name()), chosen: answer == Some(code) }
}

/// What the record says to what came out, and cautions that it calls for.
fn notes(
    coats: &[entity::Coat],
    found: Option<&entity::Finding>,
    faults: &[(Fault, Option<Whereabouts>)],
) -> Vec<Note> {
    let mut notes = Vec::new();
    if let Some(amount) = amount(found, faults) {
        let verdicts: Vec<VerdictKind> = coats.iter().map(verdict_kind).collect();
        notes.extend(against_the_record(amount, &verdicts).map(Note::plain));
    }
    let has = |fault: Fault| faults.iter().any(|(known, _)| *known == fault);
    if has(Fault::Shivering) || has(Fault::Dunting) {
        notes.push(Note::warning(say::sharp()));
    }
    if has(Fault::Crazing) || has(Fault::DelayedCrazing) {
        notes.push(Note::attention(say::crazed()));
    }
    notes
}

/// Whether what was found speaks of too much glaze or of too little; `None` where it speaks of neither, or of both.
fn amount(found: Option<&entity::Finding>, faults: &[(Fault, Option<Whereabouts>)]) -> Option<SpeaksOf> {
    let zones = found.into_iter().flat_map(|found| [&found.inside, &found.outside, &found.overlap]).flatten();
    let looks: Vec<Thickness> = zones.filter_map(|zone| zone.parse().ok()).collect();
    let speaks = |of: SpeaksOf| faults.iter().any(|(fault, _)| fault.speaks_of() == of);
    let much = looks.contains(&Thickness::Thick) || speaks(SpeaksOf::TooMuch);
    let little = looks.contains(&Thickness::Thin) || speaks(SpeaksOf::TooLittle);
    match (much, little) {
        (true, false) => Some(SpeaksOf::TooMuch),
        (false, true) => Some(SpeaksOf::TooLittle),
        _ => None,
    }
}

/// What came out beside what was weighed. Never more than a hint: one pot proves nothing.
fn against_the_record(amount: SpeaksOf, verdicts: &[VerdictKind]) -> Option<String> {
    let (over, short) = (verdicts.contains(&VerdictKind::Over), verdicts.contains(&VerdictKind::Short));
    let within = !verdicts.is_empty() && verdicts.iter().all(|verdict| *verdict == VerdictKind::Within);
    match amount {
        SpeaksOf::TooMuch if over => Some(say::thick_and_over()),
        SpeaksOf::TooMuch if short => Some(say::thick_but_short()),
        SpeaksOf::TooMuch if within => Some(say::thick_but_within()),
        SpeaksOf::TooLittle if short => Some(say::thin_and_short()),
        SpeaksOf::TooLittle if over => Some(say::thin_but_over()),
        SpeaksOf::TooLittle if within => Some(say::thin_but_within()),
        _ => None,
    }
}
