//! The plan of a shelf, seen from above: where pieces stand, where there is room, and the drawing of it. Lengths are in
//! widths of the shelf; x goes from the left, y from the front.

use rusqlite::Connection;
use uuid::Uuid;

use super::{ShelfView, piece_name};
use crate::Result;
use crate::editor::{Drawing, Grip, Ink, Shape, Spot};
use crate::editor::{LARGEST_SHELF, SMALLEST_SHELF};
use crate::evidence::usable;
use crate::form_geometry::shape;
use crate::messages::{firing, kiln};
use laydown_domain::form::{Form, ZoneKind};
use laydown_domain::units::Millimetres;
use laydown_store::entity::{self, Entity};
use laydown_store::query;

/// Air left between two pieces, mm: glazes touch, melt together and never part. Common practice, no source.
pub(super) const AIR: f64 = 6.0;
/// Half the width of a usual mug, mm, for a form without a size.
const USUAL_RADIUS: f64 = 45.0;
/// Corners by which a circle is drawn.
const CORNERS: usize = 72;
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

    fn tall(&self) -> f64 {
        self.deep / self.across
    }

    fn area(&self) -> f64 {
        if self.round { std::f64::consts::PI / 4.0 } else { self.tall() }
    }

    /// The place on the shelf nearest to a spot of the drawing, as it is kept.
    pub(super) fn at(&self, spot: Spot) -> (i64, i64) {
        let finite = |value: f64| if value.is_finite() { value } else { 0.5 };
        let (x, y) = (finite(spot.x), self.tall() - finite(spot.y));
        if !self.round {
            return self.saved(x.clamp(0.0, 1.0), y.clamp(0.0, self.tall()));
        }
        let (from_x, from_y) = (x - 0.5, y - 0.5);
        let shrink = (0.5 / from_x.hypot(from_y).max(0.5)).min(1.0);
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

    fn outline(&self) -> Vec<Spot> {
        if self.round {
            circle(0.5, 0.5, 0.5)
        } else {
            let corners = [(0.0, 0.0), (1.0, 0.0), (1.0, self.tall()), (0.0, self.tall())];
            corners.map(|(x, y)| Spot { x, y }).to_vec()
        }
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

    /// Half of a piece's width at its widest, in widths of the shelf.
    pub(super) fn radius(&self, conn: &Connection, piece: Uuid) -> Result<f64> {
        let coats = query::coats_of_piece(conn, piece)?;
        let form = coats.first().map(|coat| entity::Form::load(conn, coat.form)).transpose()?.flatten();
        let widest = form.map(|form| usable(shape(conn, &form))).transpose()?.flatten().and_then(|form| widest(&form));
        Ok(widest.unwrap_or(USUAL_RADIUS) / self.plan.across)
    }

    /// A place for one more piece, as it is kept: the first free one from the back left; where none is free, and pieces may
    /// stand close, the one with the most room around it. `None` when there is no such place, or the pieces would cover more
    /// than the shelf.
    pub(super) fn place_for(&self, radius: f64, piece: Uuid, close: bool) -> Option<(i64, i64)> {
        let plan = &self.plan;
        let others: Vec<&Stand> = self.pieces.iter().filter(|stand| stand.piece != piece).collect();
        let circle = |radius: f64| std::f64::consts::PI * radius.powi(2);
        let covered: f64 = others.iter().map(|stand| circle(stand.radius)).sum();
        if !others.is_empty() && covered + circle(radius) > plan.area() {
            return None;
        }
        let rows = (SEARCH as f64 * plan.tall()) as usize;
        let step = |number: usize| number as f64 / SEARCH as f64;
        let places = (0..=rows).rev().flat_map(|row| (0..=SEARCH).map(move |column| (step(column), step(row))));
        // A piece wider than the shelf stands in its middle.
        let mut best = (f64::NEG_INFINITY, 0.5, plan.tall() / 2.0);
        for (x, y) in places.filter(|&(x, y)| plan.has_room(x, y, radius)) {
            let gap = |stand: &&Stand| (stand.x - x).hypot(stand.y - y) - stand.radius - radius;
            let room = others.iter().map(gap).fold(f64::INFINITY, f64::min);
            if room * plan.across >= AIR {
                return Some(plan.saved(x, y));
            }
            if room > best.0 {
                best = (room, x, y);
            }
        }
        (close || others.is_empty()).then(|| plan.saved(best.1, best.2))
    }

    /// How many pairs of pieces stand closer than [`AIR`].
    pub(super) fn crowded(&self) -> usize {
        let (plan, stands) = (&self.plan, &self.pieces);
        let close = |one: &Stand, other: &Stand| {
            ((one.x - other.x).hypot(one.y - other.y) - one.radius - other.radius) * plan.across < AIR - 0.5
        };
        let pairs = stands.iter().enumerate().flat_map(|(at, one)| stands[..at].iter().map(move |other| (one, other)));
        pairs.filter(|(one, other)| close(one, other)).count()
    }

    /// The shelf with its pieces.
    pub(super) fn shelf(&self, conn: &Connection) -> Result<ShelfView> {
        let (plan, stands, number) = (&self.plan, &self.pieces, self.number);
        let mut shapes = vec![Shape { ink: Ink::Bisque, spots: plan.outline() }];
        let mut grips = Vec::new();
        let mut covered = 0.0;
        for stand in stands {
            covered += std::f64::consts::PI * stand.radius.powi(2);
            let at = Spot { x: stand.x, y: plan.tall() - stand.y };
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
        let free = (100.0 * (1.0 - covered / plan.area())).clamp(0.0, 100.0);
        Ok(ShelfView {
            number: u32::try_from(number).unwrap_or_default(),
            title: firing::shelf_title(stands.len(), number + 1, format!("{free:.0}")),
            drawing: Drawing {
                below: String::new(),
                tall: plan.tall(),
                photo: String::new(),
                shapes,
                grips,
                words: firing::shelf_help(),
            },
        })
    }
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

fn circle(x: f64, y: f64, radius: f64) -> Vec<Spot> {
    let turn = |corner: usize| std::f64::consts::TAU * corner as f64 / CORNERS as f64;
    (0..CORNERS).map(|corner| Spot { x: x + radius * turn(corner).cos(), y: y + radius * turn(corner).sin() }).collect()
}

fn closed(mut spots: Vec<Spot>) -> Vec<Spot> {
    spots.extend(spots.first().copied());
    spots
}
