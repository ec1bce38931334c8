//! One firing: what to look at before, which piece stands where, and how far it has come.

use rusqlite::Connection;
use uuid::Uuid;

use super::{FiringState, firing_of, firing_title, piece_id, piece_name, waiting};
use crate::form::{Form, ZoneKind};
use crate::kiln::cone::{self, Cone, ConeKind, Witness};
use crate::store::entity::{self, Entity};
use crate::store::query;
use crate::studio::facts::{code, style};
use crate::studio::rows::found;
use crate::studio::shapes::shape;
use crate::studio::sheet::{Drawing, Grip, Ink, Shape, Spot};
use crate::studio::words::{count, sentence_case};
use crate::studio::{Kept, Line, Note, Now, Result, Studio, StudioError, WaitingRow};
use crate::units::{Celsius, Millimetres, Style};

/// Air left between two pieces, mm: glazes touch, melt together and never part. Common practice, no source.
const AIR: f64 = 6.0;
/// Corners by which a circle is drawn.
const CORNERS: usize = 36;
/// The step in which a free place is looked for, as a part of the shelf.
const SEARCH: usize = 60;

/// What is looked at before the kiln: codes and sentences. Common practice, no source.
const BEFORE: &[(&str, &str)] = &[
    ("dust", "Dust wiped off with a damp sponge: blown or swept, it goes into the lungs."),
    ("foot", "Glaze cleared from the foot, and a little up the wall."),
    ("rim", "Rims and edges felt: what is sharp now will cut later."),
    ("knocks", "Knocks and chips touched up, and noted."),
    ("cracks", "No cracks in the dry coat: rub them over, they crawl."),
    ("overlap", "Where two glazes meet, not too thick, and room below to run."),
];

/// Something to look at before the firing.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize)]
pub struct Tick {
    /// What to hand back.
    pub code: String,
    /// What to look at.
    pub text: String,
    /// Whether it was.
    pub done: bool,
}

/// A piece in a firing.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize)]
pub struct PlacedPiece {
    /// The piece's id.
    pub piece: String,
    /// Its form and code.
    pub title: String,
    /// The shelf, and what was found on it.
    pub detail: String,
    /// Whether it has been looked at after the firing.
    pub looked_at: bool,
}

/// One shelf, seen from above.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
pub struct ShelfView {
    /// Its number, from 0 at the bottom.
    pub number: u32,
    /// What it is called, and how full it is.
    pub title: String,
    /// The shelf with its pieces; each piece is a grip, keyed by its id.
    pub drawing: Drawing,
}

/// One firing as its page shows it.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
pub struct FiringView {
    /// Its id.
    pub id: String,
    /// The cone aimed at and the kiln.
    pub title: String,
    /// Its record.
    pub lines: Vec<Line>,
    /// How far it has come.
    pub state: String,
    /// Whether pieces can still be put in and moved.
    pub is_loading: bool,
    /// What to look at before; empty once it is fired.
    pub before: Vec<Tick>,
    /// The shelves, the lowest first.
    pub shelves: Vec<ShelfView>,
    /// The pieces that could be put in.
    pub waiting: Vec<WaitingRow>,
    /// The pieces in it.
    pub pieces: Vec<PlacedPiece>,
    /// What to mind.
    pub notes: Vec<Note>,
    /// What the button to the next state says; empty when there is none.
    pub next: String,
}

impl Studio {
    /// A firing's page.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such firing.
    pub fn firing(&self, now: Now, id: &str) -> Result<FiringView> {
        self.store.read(|conn| {
            let firing = firing_of(conn, id)?;
            let kiln: entity::Kiln = found(conn, firing.kiln)?;
            let state: FiringState = code(&firing.state)?;
            let is_loading = state == FiringState::Loading;
            let placed = query::placements(conn, firing.id)?;
            let style = style(conn)?;
            Ok(FiringView {
                id: id.to_owned(),
                title: firing_title(conn, &firing)?,
                lines: lines(now, &firing, placed.len(), &style)?,
                state: sentence_case(state.name()),
                is_loading,
                before: if is_loading { before(&firing) } else { Vec::new() },
                shelves: shelves(conn, &kiln, &placed)?,
                waiting: if is_loading { waiting(conn, now)? } else { Vec::new() },
                pieces: placed.iter().map(|placed| placed_piece(conn, placed)).collect::<Result<_>>()?,
                notes: notes(&firing, state)?,
                next: match state {
                    FiringState::Loading => "It is fired",
                    FiringState::Fired => "Done with this firing",
                    FiringState::Done => "",
                }
                .to_owned(),
            })
        })
    }

    /// Puts pieces on a shelf, each where there is room.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when there is no room or the firing is over; [`StudioError::Missing`] for what is gone.
    pub fn load(&self, now: Now, firing: &str, pieces: &[String], shelf: u32) -> Result<Kept> {
        let stored = self.command(now, |tx| {
            let firing = open_firing(tx.conn(), firing)?;
            let kiln: entity::Kiln = found(tx.conn(), firing.kiln)?;
            for piece in pieces {
                let piece = piece_id(piece)?;
                let stands = on_shelf(tx.conn(), &kiln, &query::placements(tx.conn(), firing.id)?, i64::from(shelf))?;
                let radius = radius_of(tx.conn(), piece)?;
                let (x, y) = free_place(&kiln, &stands, radius).ok_or_else(|| {
                    StudioError::refused("shelf", "There is no room left on this shelf. Take another, or move what is on it.")
                })?;
                let placement = entity::Placement {
                    id: tx.new_id(),
                    firing: firing.id,
                    piece,
                    shelf: i64::from(shelf),
                    x_e4: e4(x),
                    y_e4: e4(y),
                    gone: false,
                };
                tx.put(&placement)?;
            }
            Ok(())
        })?;
        let sentence = format!("{} on shelf {}.", count(pieces.len() as i64, "piece", "pieces"), shelf + 1);
        Ok(Kept::new(firing.to_owned(), sentence, stored.undo))
    }

    /// Moves a piece on its shelf, as its grip was dragged to `to`.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when the firing is over; [`StudioError::Missing`] for what is gone.
    pub fn place(&self, now: Now, firing: &str, piece: &str, to: Spot) -> Result<Kept> {
        let stored = self.command(now, |tx| {
            let firing = open_firing(tx.conn(), firing)?;
            let kiln: entity::Kiln = found(tx.conn(), firing.kiln)?;
            let placed = placement(tx.conn(), firing.id, piece_id(piece)?)?;
            let plan = Plan::of(&kiln);
            let (x, y) = plan.within(to.x, plan.tall() - to.y);
            tx.put(&entity::Placement { x_e4: e4(x), y_e4: e4(y / plan.tall()), ..placed })?;
            Ok(())
        })?;
        Ok(Kept::new(piece.to_owned(), "Moved.", stored.undo))
    }

    /// Takes a piece out of a firing that is being loaded.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when the firing is over; [`StudioError::Missing`] for what is gone.
    pub fn take_out(&self, now: Now, firing: &str, piece: &str) -> Result<Kept> {
        let stored = self.command(now, |tx| {
            let firing = open_firing(tx.conn(), firing)?;
            let placed = placement(tx.conn(), firing.id, piece_id(piece)?)?;
            tx.put(&entity::Placement { gone: true, ..placed })?;
            Ok(())
        })?;
        Ok(Kept::new(piece.to_owned(), "Taken out again.", stored.undo))
    }

    /// Ticks off, or on again, something to look at before the firing.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such firing.
    pub fn tick_before(&self, now: Now, firing: &str, what: &str, done: bool) -> Result<Kept> {
        let stored = self.command(now, |tx| {
            let firing = firing_of(tx.conn(), firing)?;
            let ticked = |code: &str| if code == what { done } else { is_checked(&firing, code) };
            let codes: Vec<&str> = BEFORE.iter().map(|(code, _)| *code).filter(|code| ticked(code)).collect();
            tx.put(&entity::Firing { checked: Some(codes.join(",")).filter(|codes| !codes.is_empty()), ..firing })?;
            Ok(())
        })?;
        Ok(Kept::new(firing.to_owned(), "Noted.", stored.undo))
    }

    /// Takes a firing on to its next state.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when there is none; [`StudioError::Missing`] when there is no such firing.
    pub fn advance(&self, now: Now, firing: &str) -> Result<Kept> {
        let stored = self.command(now, |tx| {
            let firing = firing_of(tx.conn(), firing)?;
            let next = match code::<FiringState>(&firing.state)? {
                FiringState::Loading => FiringState::Fired,
                FiringState::Fired => FiringState::Done,
                FiringState::Done => return Err(StudioError::refused("", "This firing is done.")),
            };
            let fired_at = firing.fired_at.or(Some(now.unix_ms));
            tx.put(&entity::Firing { state: next.code().to_owned(), fired_at, ..firing })?;
            Ok(next)
        })?;
        let sentence = match stored.value {
            FiringState::Fired => "Fired. Let it cool before you open it; then look at the pieces one by one.",
            _ => "Done with this firing.",
        };
        Ok(Kept::new(firing.to_owned(), sentence, stored.undo))
    }
}

fn open_firing(conn: &Connection, id: &str) -> Result<entity::Firing> {
    let firing = firing_of(conn, id)?;
    match code(&firing.state)? {
        FiringState::Loading => Ok(firing),
        _ => Err(StudioError::refused("", "This firing is over. Begin a new one: a piece may be fired again.")),
    }
}

fn placement(conn: &Connection, firing: Uuid, piece: Uuid) -> Result<entity::Placement> {
    let placed = query::placements(conn, firing)?.into_iter().find(|placed| placed.piece == piece);
    placed.ok_or_else(|| StudioError::missing("piece"))
}

fn before(firing: &entity::Firing) -> Vec<Tick> {
    let tick = |(code, text): &(&str, &str)| Tick {
        code: (*code).to_owned(),
        text: (*text).to_owned(),
        done: is_checked(firing, code),
    };
    BEFORE.iter().map(tick).collect()
}

fn is_checked(firing: &entity::Firing, code: &str) -> bool {
    firing.checked.as_deref().unwrap_or_default().split(',').any(|checked| checked == code)
}

fn lines(now: Now, firing: &entity::Firing, pieces: usize, style: &Style) -> Result<Vec<Line>> {
    let mut lines = Vec::new();
    let mut line = |label: &str, value: String| lines.push(Line { label: label.to_owned(), value });
    let kind: ConeKind = code(&firing.cone_kind)?;
    line("Begun", now.moment(firing.at));
    line("Pieces", pieces.to_string());
    line("Cone", format!("{}, {}", firing.cone, kind.name()));
    let aimed: Cone = firing.cone.parse()?;
    if let (Some(slow), Some(fast)) = (aimed.bends_at(kind, 60.0), aimed.bends_at(kind, 150.0)) {
        line("Bends at", format!("{:.0} °C at 60 °C an hour, {:.0} °C at 150 °C an hour", slow.value(), fast.value()));
    }
    if let Some(program) = &firing.program {
        line("Program", program.clone());
    }
    if let Some(at) = firing.fired_at {
        line("Fired", now.moment(at));
    }
    if let Some(top) = firing.top_mc {
        line("Top temperature", format!("{} °C", style.number(Celsius::from_millidegrees(top).value(), 0)));
    }
    if let Some(minutes) = firing.minutes {
        line("It took", format!("{} h {:02} min", minutes / 60, minutes % 60));
    }
    if let Some(note) = &firing.note {
        line("Note", note.clone());
    }
    Ok(lines)
}

fn notes(firing: &entity::Firing, state: FiringState) -> Result<Vec<Note>> {
    let mut notes = Vec::new();
    if state == FiringState::Loading {
        notes.push(Note::warning(
            "Kiln wiring, gas and venting belong to licensed people. Air the room, keep what burns away, and follow the maker's manual.",
        ));
    }
    if state == FiringState::Fired {
        notes.push(Note::warning("Hot ware burns and cracks in a draught: unload when it can be held in a bare hand."));
    }
    let read: Vec<Witness> = witnesses(firing)?;
    notes.extend(cone::verdict(firing.cone.parse()?, &read).map(Note::plain));
    Ok(notes)
}

/// The witness cones as they were read.
fn witnesses(firing: &entity::Firing) -> Result<Vec<Witness>> {
    let pairs = firing.witnesses.iter().flat_map(|pairs| &pairs.0);
    pairs.map(|(cone, reading)| Ok(Witness { cone: cone.parse()?, reading: code(reading)? })).collect()
}

fn placed_piece(conn: &Connection, placed: &entity::Placement) -> Result<PlacedPiece> {
    let coats = query::coats_of_piece(conn, placed.piece)?;
    let finding = query::finding(conn, placed.piece, placed.firing)?;
    let shelf = format!("Shelf {}", placed.shelf + 1);
    Ok(PlacedPiece {
        piece: placed.piece.to_string(),
        title: piece_name(conn, &coats)?,
        detail: match finding.as_ref().map(super::look::in_a_line).transpose()? {
            Some(found) if !found.is_empty() => format!("{shelf}: {found}"),
            _ => shelf,
        },
        looked_at: finding.is_some(),
    })
}

// ---- the plan of a shelf ----

/// A shelf from above, in parts of its width: x from the left, y from the front.
struct Plan {
    round: bool,
    across: f64,
    deep: f64,
}

impl Plan {
    fn of(kiln: &entity::Kiln) -> Plan {
        let across = Millimetres::from_micrometres(kiln.across_um).value().max(1.0);
        let deep = kiln.deep_um.filter(|_| !kiln.round).map_or(across, |um| Millimetres::from_micrometres(um).value());
        Plan { round: kiln.round, across, deep }
    }

    fn tall(&self) -> f64 {
        self.deep / self.across
    }

    /// The nearest place on the shelf.
    fn within(&self, x: f64, y: f64) -> (f64, f64) {
        let finite = |value: f64| if value.is_finite() { value } else { 0.5 };
        let (x, y) = (finite(x), finite(y));
        if !self.round {
            return (x.clamp(0.0, 1.0), y.clamp(0.0, self.tall()));
        }
        let (from_x, from_y) = (x - 0.5, y - 0.5);
        let shrink = (0.5 / from_x.hypot(from_y).max(0.5)).min(1.0);
        (0.5 + from_x * shrink, 0.5 + from_y * shrink)
    }

    fn has_room(&self, x: f64, y: f64, radius: f64) -> bool {
        if self.round {
            (x - 0.5).hypot(y - 0.5) + radius <= 0.5
        } else {
            x - radius >= 0.0 && x + radius <= 1.0 && y - radius >= 0.0 && y + radius <= self.tall()
        }
    }

    fn outline(&self) -> Vec<Spot> {
        if self.round {
            circle(0.5, 0.5, 0.5)
        } else {
            let corners = [(0.0, 0.0), (1.0, 0.0), (1.0, self.tall()), (0.0, self.tall())];
            corners.map(|(x, y)| Spot { x, y }).to_vec()
        }
    }

    fn area(&self) -> f64 {
        if self.round { std::f64::consts::PI / 4.0 } else { self.tall() }
    }
}

/// A piece on a shelf: who, where, how wide, in parts of the shelf's width.
struct Stand {
    piece: Uuid,
    x: f64,
    y: f64,
    radius: f64,
}

fn on_shelf(
    conn: &Connection,
    kiln: &entity::Kiln,
    placed: &[entity::Placement],
    shelf: i64,
) -> Result<Vec<Stand>> {
    let plan = Plan::of(kiln);
    let here = placed.iter().filter(|placed| placed.shelf == shelf);
    here.map(|placed| {
        let (x, y) = (placed.x_e4 as f64 / 1e4, placed.y_e4 as f64 / 1e4 * plan.tall());
        Ok(Stand { piece: placed.piece, x, y, radius: radius_of(conn, placed.piece)? / plan.across })
    })
    .collect()
}

/// The first free place, from the back left, for a piece of this radius in mm.
fn free_place(kiln: &entity::Kiln, stands: &[Stand], radius: f64) -> Option<(f64, f64)> {
    let plan = Plan::of(kiln);
    let radius = radius / plan.across;
    let air = AIR / plan.across;
    let rows = (SEARCH as f64 * plan.tall()) as usize;
    let places = (0..=rows).rev().flat_map(|row| (0..=SEARCH).map(move |column| (column, row)));
    let mut places = places.map(|(column, row)| (column as f64 / SEARCH as f64, row as f64 / SEARCH as f64));
    let (x, y) = places.find(|&(x, y)| {
        plan.has_room(x, y, radius)
            && stands.iter().all(|stand| (stand.x - x).hypot(stand.y - y) >= stand.radius + radius + air)
    })?;
    Some((x, y / plan.tall()))
}

/// Half of a piece's width at its widest, mm; that of a usual mug where its form has no size.
fn radius_of(conn: &Connection, piece: Uuid) -> Result<f64> {
    const USUAL: f64 = 45.0;
    let coats = query::coats_of_piece(conn, piece)?;
    let Some(form) = coats.first().map(|coat| entity::Form::load(conn, coat.form)).transpose()?.flatten() else {
        return Ok(USUAL);
    };
    Ok(widest(&shape(conn, &form)?).unwrap_or(USUAL))
}

fn widest(form: &Form) -> Option<f64> {
    form.widest().map(Millimetres::value).or_else(|| {
        let face = form.zone(ZoneKind::Whole)?.area.value() * 100.0;
        Some((face / std::f64::consts::PI).sqrt())
    })
}

fn shelves(conn: &Connection, kiln: &entity::Kiln, placed: &[entity::Placement]) -> Result<Vec<ShelfView>> {
    (0..kiln.shelves.clamp(1, 30)).map(|number| shelf(conn, kiln, placed, number)).collect()
}

fn shelf(conn: &Connection, kiln: &entity::Kiln, placed: &[entity::Placement], number: i64) -> Result<ShelfView> {
    let plan = Plan::of(kiln);
    let stands = on_shelf(conn, kiln, placed, number)?;
    let spot = |x: f64, y: f64| Spot { x, y: plan.tall() - y };
    let mut shapes = vec![Shape { ink: Ink::Bisque, spots: plan.outline() }];
    let mut grips = Vec::new();
    let mut covered = 0.0;
    for stand in &stands {
        covered += std::f64::consts::PI * stand.radius.powi(2);
        let at = spot(stand.x, stand.y);
        shapes.push(Shape { ink: Ink::Glazed, spots: circle(at.x, at.y, stand.radius) });
        shapes.push(Shape { ink: Ink::Line, spots: closed(circle(at.x, at.y, stand.radius)) });
        grips.push(Grip {
            key: stand.piece.to_string(),
            at,
            line: Vec::new(),
            name: piece_name(conn, &query::coats_of_piece(conn, stand.piece)?)?,
            removable: true,
        });
    }
    shapes.push(Shape { ink: Ink::Line, spots: closed(plan.outline()) });
    let title = format!("Shelf {}: {}", number + 1, count(stands.len() as i64, "piece", "pieces"));
    Ok(ShelfView {
        number: u32::try_from(number).unwrap_or_default(),
        title: format!("{title}, {:.0} % covered", 100.0 * covered / plan.area()),
        drawing: Drawing {
            below: String::new(),
            tall: plan.tall(),
            photo: String::new(),
            shapes,
            grips,
            words: format!("{title}, seen from above, the front at the bottom."),
        },
    })
}

fn circle(x: f64, y: f64, radius: f64) -> Vec<Spot> {
    let turn = |corner: usize| std::f64::consts::TAU * corner as f64 / CORNERS as f64;
    (0..CORNERS).map(|corner| Spot { x: x + radius * turn(corner).cos(), y: y + radius * turn(corner).sin() }).collect()
}

fn closed(mut spots: Vec<Spot>) -> Vec<Spot> {
    spots.extend(spots.first().copied());
    spots
}

fn e4(part: f64) -> i64 {
    (part * 1e4).round() as i64
}
