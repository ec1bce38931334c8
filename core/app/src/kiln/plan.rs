//! The plan of a shelf, seen from above: where pieces stand, where there is room, and the drawing of it. Lengths are in
//! widths of the shelf; x goes from the left, y from the front.

use rusqlite::Connection;
use uuid::Uuid;

use super::{Pot, ShelfView};
use crate::Result;
use crate::editor::{Drawing, Grip, Ink, Shape, Spot};
use crate::editor::{LARGEST_SHELF, SMALLEST_SHELF};
use crate::messages::{firing, kiln};
use laydown_domain::form::{Form, ZoneKind};
use laydown_domain::units::Millimetres;
use laydown_store::entity;

/// Air left between two pieces, mm: glazes touch, melt together and never part. Common practice, no source.
pub(super) const AIR: f64 = 6.0;
/// Half the width of a usual mug, mm, for a form without a size.
const USUAL_RADIUS: f64 = 45.0;
/// Two pieces overlap where their circles do by more than this, mm: a drawn circle is no finer.
const DRAWN: f64 = 0.5;
/// The step in which a place is looked for, as a part of the shelf.
const SEARCH: usize = 60;
/// Places are kept in such parts of the shelf's width and depth.
const PARTS: f64 = 1e4;

/// The places on a shelf, by their codes in the message: from the front, each from the left.
const PLACES: [[&str; 3]; 3] =
    [["front_left", "front", "front_right"], ["left", "middle", "right"], ["back_left", "back", "back_right"]];

/// A shelf from above.
pub(super) struct Plan {
    round: bool,
    /// mm.
    across: f64,
    /// mm.
    deep: f64,
}

/// A piece on a shelf: who, where, how wide, in widths of the shelf.
pub(super) struct Stand {
    piece: Uuid,
    x: f64,
    y: f64,
    radius: f64,
}

/// How much room a piece needs on a shelf.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Room {
    /// [`AIR`] all around.
    Apart,
    /// As much as there is.
    Close,
    /// None: bare clay may stand on other ware.
    Stacked,
}

/// One shelf with what stands on it.
pub(super) struct Stands {
    plan: Plan,
    /// Counted from 0 at the bottom.
    pub(super) number: i64,
    pieces: Vec<Stand>,
}

impl Plan {
    pub(super) fn of(kiln: &entity::Kiln) -> Plan {
        // One that came from elsewhere may have any size; it is drawn as the nearest that a shelf has.
        let size = |um: i64| Millimetres::from_micrometres(um).max(SMALLEST_SHELF).min(LARGEST_SHELF).value();
        let across = size(kiln.across_um);
        let deep = kiln.deep_um.filter(|_| !kiln.round).map_or(across, size);
        Plan { round: kiln.round, across, deep }
    }

    /// Half of a piece's width at its widest, in widths of the shelf.
    pub(super) fn radius(&self, conn: &Connection, piece: Uuid) -> Result<f64> {
        let widest = Pot::load(conn, piece)?.shape(conn)?.and_then(|form| widest(&form));
        Ok(widest.unwrap_or(USUAL_RADIUS) / self.across)
    }

    fn tall(&self) -> f64 {
        self.deep / self.across
    }

    fn area(&self) -> f64 {
        if self.round { std::f64::consts::PI / 4.0 } else { self.tall() }
    }

    /// The place nearest to a spot of the drawing where a piece this wide is whole on the shelf, as it is kept; the middle of a
    /// shelf that it is too wide for.
    pub(super) fn at(&self, spot: Spot, radius: f64) -> (i64, i64) {
        let finite = |value: f64| if value.is_finite() { value } else { 0.5 };
        let (x, y) = (finite(spot.x), self.tall() - finite(spot.y));
        if !self.round {
            let within = |place: f64, size: f64| {
                if 2.0 * radius < size { place.clamp(radius, size - radius) } else { size / 2.0 }
            };
            return self.saved(within(x, 1.0), within(y, self.tall()));
        }
        let (from_x, from_y, most) = (x - 0.5, y - 0.5, (0.5 - radius).max(0.0));
        let away = from_x.hypot(from_y);
        let shrink = if away > most { most / away } else { 1.0 };
        self.saved(0.5 + from_x * shrink, 0.5 + from_y * shrink)
    }

    fn saved(&self, x: f64, y: f64) -> (i64, i64) {
        let part = |part: f64| (part * PARTS).round() as i64;
        (part(x), part(y / self.tall()))
    }

    fn has_room(&self, x: f64, y: f64, radius: f64) -> bool {
        if self.round {
            (x - 0.5).hypot(y - 0.5) + radius <= 0.5
        } else {
            x - radius >= 0.0 && x + radius <= 1.0 && y - radius >= 0.0 && y + radius <= self.tall()
        }
    }

    fn outline(&self, ink: Ink) -> Shape {
        if self.round {
            return Shape::circle(ink, Spot { x: 0.5, y: 0.5 }, 0.5);
        }
        let corners = [(0.0, 0.0), (1.0, 0.0), (1.0, self.tall()), (0.0, self.tall()), (0.0, 0.0)];
        Shape::of(ink, corners.map(|(x, y)| Spot { x, y }).to_vec())
    }
}

impl Stands {
    /// The pieces of a firing that stand on one shelf.
    pub(super) fn on(
        conn: &Connection,
        kiln: &entity::Kiln,
        placed: &[entity::Placement],
        number: i64,
    ) -> Result<Stands> {
        let mut stands = Stands { plan: Plan::of(kiln), number, pieces: Vec::new() };
        for placed in placed.iter().filter(|placed| placed.shelf == number) {
            let radius = stands.radius(conn, placed.piece)?;
            stands.add(placed.piece, placed.x_e4, placed.y_e4, radius);
        }
        Ok(stands)
    }

    /// One more piece, at a place as it is kept.
    pub(super) fn add(&mut self, piece: Uuid, x_e4: i64, y_e4: i64, radius: f64) {
        let (x, y) = (x_e4 as f64 / PARTS, y_e4 as f64 / PARTS * self.plan.tall());
        self.pieces.push(Stand { piece, x, y, radius });
    }

    /// The piece is not here any more.
    pub(super) fn remove(&mut self, piece: Uuid) {
        self.pieces.retain(|stand| stand.piece != piece);
    }

    pub(super) fn radius(&self, conn: &Connection, piece: Uuid) -> Result<f64> {
        self.plan.radius(conn, piece)
    }

    /// A place for one more piece, as it is kept: the first free one from the back left; where none is free, and pieces may
    /// stand close, the one with the most room around it. `None` when there is no such place, or pieces that cannot be stacked
    /// would cover more than the shelf.
    pub(super) fn place_for(&self, radius: f64, piece: Uuid, room: Room) -> Option<(i64, i64)> {
        let plan = &self.plan;
        let others: Vec<&Stand> = self.pieces.iter().filter(|stand| stand.piece != piece).collect();
        let circle = |radius: f64| std::f64::consts::PI * radius.powi(2);
        let covered: f64 = others.iter().map(|stand| circle(stand.radius)).sum();
        if room != Room::Stacked && !others.is_empty() && covered + circle(radius) > plan.area() {
            return None;
        }
        let rows = (SEARCH as f64 * plan.tall()) as usize;
        let step = |number: usize| number as f64 / SEARCH as f64;
        let places = (0..=rows).rev().flat_map(|row| (0..=SEARCH).map(move |column| (step(column), step(row))));
        // A piece wider than the shelf stands in its middle.
        let mut best = (f64::NEG_INFINITY, 0.5, plan.tall() / 2.0);
        for (x, y) in places.filter(|&(x, y)| plan.has_room(x, y, radius)) {
            let gap = |stand: &&Stand| (stand.x - x).hypot(stand.y - y) - stand.radius - radius;
            let around = others.iter().map(gap).fold(f64::INFINITY, f64::min);
            if around * plan.across >= AIR {
                return Some(plan.saved(x, y));
            }
            if around > best.0 {
                best = (around, x, y);
            }
        }
        (room != Room::Apart || others.is_empty()).then(|| plan.saved(best.1, best.2))
    }

    /// How many pairs of pieces stand closer than [`AIR`], and how many of them one on the other.
    pub(super) fn crowded(&self) -> (usize, usize) {
        let gaps: Vec<f64> = self.gaps().map(|(.., gap)| gap).collect();
        let closer = |than: f64| gaps.iter().filter(|gap| **gap < than - DRAWN).count();
        (closer(AIR), closer(0.0))
    }

    /// Each pair of pieces with the air between them, mm; below nothing where they overlap.
    fn gaps(&self) -> impl Iterator<Item = (&Stand, &Stand, f64)> {
        let pairs = self
            .pieces
            .iter()
            .enumerate()
            .flat_map(|(at, one)| self.pieces[..at].iter().map(move |other| (one, other)));
        pairs.map(|(one, other)| {
            let gap = (one.x - other.x).hypot(one.y - other.y) - one.radius - other.radius;
            (one, other, gap * self.plan.across)
        })
    }

    /// The shelf with its pieces: to be arranged, or, once it was fired, to be looked at.
    pub(super) fn shelf(&self, conn: &Connection, arranging: Arranging) -> Result<ShelfView> {
        let (plan, stands, number) = (&self.plan, &self.pieces, self.number);
        let overlapping: Vec<Uuid> = match arranging.may_touch {
            true => Vec::new(),
            false => self
                .gaps()
                .filter(|(.., gap)| *gap < -DRAWN)
                .flat_map(|(one, other, _)| [one.piece, other.piece])
                .collect(),
        };
        let mut grips = Vec::new();
        let mut covered = 0.0;
        for stand in stands {
            covered += std::f64::consts::PI * stand.radius.powi(2);
            let pot = Pot::load(conn, stand.piece)?;
            let at = Spot { x: stand.x, y: plan.tall() - stand.y };
            grips.push(Grip {
                movable: arranging.can_move,
                radius: stand.radius,
                label: pot.label(conn)?,
                warns: overlapping.contains(&stand.piece),
                ..Grip::point(stand.piece.to_string(), at, pot.name(conn)?, arranging.can_remove)
            });
        }
        let free = (100.0 * (1.0 - covered / plan.area())).clamp(0.0, 100.0);
        let free = format!("{free:.0}");
        Ok(ShelfView {
            number: u32::try_from(number).unwrap_or_default(),
            title: if arranging.can_move {
                firing::shelf_title(stands.len(), number + 1, free)
            } else {
                firing::shelf_title_fired(stands.len(), number + 1)
            },
            drawing: Drawing {
                below: String::new(),
                tall: plan.tall(),
                photo: String::new(),
                shapes: vec![plan.outline(Ink::Bisque), plan.outline(Ink::Line)],
                grips,
                words: if arranging.can_move { firing::shelf_help() } else { firing::shelf_as_fired() },
            },
        })
    }
}

/// What can be done on the plan of a shelf.
#[derive(Debug, Clone, Copy)]
pub(super) struct Arranging {
    /// Pieces can be dragged.
    pub(super) can_move: bool,
    /// Pieces can be taken off.
    pub(super) can_remove: bool,
    /// Bare clay may touch, and stand on other ware.
    pub(super) may_touch: bool,
}

/// Where a piece stood: "shelf 2, back left".
pub(super) fn place_words(placed: &entity::Placement) -> String {
    let third = |part: i64| (part as f64 / PARTS * 3.0).clamp(0.0, 2.0) as usize;
    let row = PLACES[third(placed.y_e4)];
    kiln::place(row[third(placed.x_e4)], placed.shelf.saturating_add(1))
}

fn widest(form: &Form) -> Option<f64> {
    form.widest().map(Millimetres::value).or_else(|| {
        let face = form.zone(ZoneKind::Whole)?.area.value() * 100.0;
        Some((face / std::f64::consts::PI).sqrt())
    })
}
