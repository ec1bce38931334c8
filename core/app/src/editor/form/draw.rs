//! The drawing of a form: cut open on the left of its axis, as it stands on the right, with the points and the glaze
//! lines to take hold of. Lengths are in millimetres at the size that was measured.

use super::points::FINEST;
use crate::editor::{Drawing, Grip, Ink, Shape, Spot};
use crate::messages::editor_form as say;
use laydown_domain::form::profile::Point;
use laydown_domain::form::{Cut, GlazeLines, ProfilePoint, revolve};
use laydown_domain::units::{Millimetres, Style};

/// Room around the form, as a part of its size.
const MARGIN: f64 = 1.15;
/// As near to the edge as a point may come before the frame grows.
const EDGE: f64 = 1.03;
/// The tallest and the flattest box, in widths of it.
const TALLEST: f64 = 1.2;
const FLATTEST: f64 = 0.5;

/// The key of the grip of a point begins so; its number follows, counted from 0.
pub(super) const POINT: &str = "point.";
/// The keys of the grips of the lines, which are also those of their fields.
pub(super) const BARE_FOOT: &str = "bare_foot";
pub(super) const OVERLAP: &str = "overlap";
pub(super) const FILL: &str = "fill";

/// How much of the world is in the box: half its width and its height, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Frame {
    half_width: f64,
    height: f64,
}

impl Frame {
    /// Room for `points`. The frame `before` stays as long as they fit into it, and never shrinks: one that changed under
    /// the finger would drag the point along.
    pub(super) fn around(points: &[ProfilePoint], before: Option<Frame>) -> Frame {
        let widest = points.iter().fold(1.0f64, |most, point| most.max(point.radius.value()));
        let highest = points.iter().fold(1.0f64, |most, point| most.max(point.height.value()));
        if let Some(before) = before
            && widest * EDGE <= before.half_width
            && highest * EDGE <= before.height
        {
            return before;
        }
        let (half_width, height) = (widest * MARGIN, highest * MARGIN);
        let needed = Frame {
            half_width: half_width.max(height / 2.0 / TALLEST),
            height: height.max(half_width * 2.0 * FLATTEST),
        };
        before.map_or(needed, |before| Frame {
            half_width: needed.half_width.max(before.half_width),
            height: needed.height.max(before.height),
        })
    }

    /// From the text that travels with what is entered; `None` for what is no frame.
    pub(super) fn read(text: &str) -> Option<Frame> {
        let (half_width, height) = text.split_once(' ')?;
        let (half_width, height): (f64, f64) = (half_width.parse().ok()?, height.parse().ok()?);
        let is_size = |mm: f64| mm.is_finite() && mm > 0.0 && mm < 10_000.0;
        (is_size(half_width) && is_size(height)).then_some(Frame { half_width, height })
    }

    pub(super) fn text(self) -> String {
        format!("{} {}", self.half_width, self.height)
    }

    fn tall(self) -> f64 {
        (self.height / 2.0 / self.half_width).clamp(FLATTEST, TALLEST)
    }

    /// Millimetres in a width of the box.
    fn scale(self) -> f64 {
        (2.0 * self.half_width).max(self.height / self.tall())
    }

    /// Height of the ground above the box's lower edge, mm: half of the room that is left.
    fn ground(self) -> f64 {
        (self.tall() * self.scale() - self.height / MARGIN) / 2.0
    }

    /// Where a point lies; `side` is 1 on the right of the axis and -1 on the left.
    fn spot(self, radius: f64, height: f64, side: f64) -> Spot {
        Spot { x: 0.5 + side * radius / self.scale(), y: self.tall() - (height + self.ground()) / self.scale() }
    }

    /// The radius and height that lie at a spot, to the half millimetre.
    pub(super) fn at(self, spot: Spot) -> (Millimetres, Millimetres) {
        let snap = |mm: f64| Millimetres::new(((mm / FINEST).round() * FINEST).max(0.0));
        let radius = (spot.x - 0.5).abs() * self.scale();
        let height = (self.tall() - spot.y) * self.scale() - self.ground();
        (snap(radius), snap(height))
    }

    /// Where in the walking order a new point at `spot` belongs: behind the point of this index. `None` when the spot
    /// lies too far from the wall to mean it.
    pub(super) fn place_for(self, points: &[ProfilePoint], spot: Spot) -> Option<usize> {
        let near = self.scale() / 8.0;
        let (radius, height) = self.at(spot);
        let distance = |a: &ProfilePoint, b: &ProfilePoint| to_line(radius.value(), height.value(), a, b);
        let pairs = points.iter().zip(points.iter().skip(1)).enumerate();
        let (place, off) = pairs.map(|(at, (a, b))| (at, distance(a, b))).min_by(|a, b| a.1.total_cmp(&b.1))?;
        (off < near).then_some(place)
    }
}

/// Distance from a place to the straight line between two points.
fn to_line(radius: f64, height: f64, a: &ProfilePoint, b: &ProfilePoint) -> f64 {
    let (run, rise) = ((b.radius - a.radius).value(), (b.height - a.height).value());
    let (from_r, from_h) = (radius - a.radius.value(), height - a.height.value());
    let length = run.hypot(rise).max(f64::MIN_POSITIVE);
    let along = ((from_r * run + from_h * rise) / length / length).clamp(0.0, 1.0);
    (from_r - along * run).hypot(from_h - along * rise)
}

/// What the drawing is made from.
pub(super) struct Sketch<'a> {
    pub(super) points: &'a [ProfilePoint],
    pub(super) frame: Frame,
    pub(super) lines: &'a GlazeLines,
    pub(super) fill: Option<Millimetres>,
    pub(super) style: &'a Style,
}

impl Sketch<'_> {
    /// The form as `cut`, or only its points joined where it cannot be cut.
    pub(super) fn draw(&self, below: &str, cut: Option<&Cut>) -> Drawing {
        let frame = self.frame;
        let mut shapes = cut.map_or_else(|| self.joined(), |cut| self.shapes(cut));
        let top = self.height() + frame.ground() / 2.0;
        shapes
            .push(Shape::of(Ink::Guide, vec![frame.spot(0.0, -frame.ground() / 2.0, 1.0), frame.spot(0.0, top, 1.0)]));
        let ground = frame.half_width;
        shapes.push(Shape::of(Ink::Guide, vec![frame.spot(ground, 0.0, -1.0), frame.spot(ground, 0.0, 1.0)]));
        Drawing {
            below: below.to_owned(),
            tall: frame.tall(),
            photo: String::new(),
            shapes,
            grips: self.grips(cut),
            words: say::drawing(
                self.style.length(Millimetres::new(self.height())),
                self.style.length(Millimetres::new(2.0 * self.widest())),
            ),
        }
    }

    fn height(&self) -> f64 {
        self.points.iter().fold(0.0f64, |most, point| most.max(point.height.value()))
    }

    fn widest(&self) -> f64 {
        self.points.iter().fold(0.0f64, |most, point| most.max(point.radius.value()))
    }

    fn joined(&self) -> Vec<Shape> {
        let line = |side: f64| {
            let spots =
                self.points.iter().map(|point| self.frame.spot(point.radius.value(), point.height.value(), side));
            Shape::of(Ink::Line, spots.collect())
        };
        vec![line(-1.0), line(1.0)]
    }

    fn shapes(&self, cut: &Cut) -> Vec<Shape> {
        let spots = |points: &[Point], side: f64| -> Vec<Spot> {
            points.iter().map(|point| self.frame.spot(point.radius, point.height, side)).collect()
        };
        // The cut: up the outside, over the rim, down the inside to the axis, and back along the underside.
        let wall = [
            spots(cut.outside(), -1.0),
            spots(cut.inside(), -1.0).into_iter().rev().collect(),
            spots(cut.underside(), -1.0),
        ]
        .concat();
        let rim = self.height();
        let band = |ink, from: f64, to: f64| Shape::of(ink, self.half(&between(cut.outside(), from, to)));
        let glazed_to = rim - self.lines.overlap.value();
        let mut shapes = vec![
            Shape::of(Ink::Bisque, self.half(cut.outside())),
            band(Ink::Glazed, self.lines.bare_foot.value(), glazed_to),
            Shape::of(Ink::Clay, wall.clone()),
            Shape::of(Ink::Line, wall),
            Shape::of(Ink::Line, spots(cut.outside(), 1.0)),
        ];
        if self.lines.overlap.value() > 0.0 {
            shapes.insert(2, band(Ink::Overlap, glazed_to, rim));
        }
        shapes
    }

    /// The right half between a line and the axis.
    fn half(&self, points: &[Point]) -> Vec<Spot> {
        let (Some(first), Some(last)) = (points.first(), points.last()) else { return Vec::new() };
        let ends =
            [(0.0, last.height), (0.0, first.height)].map(|(radius, height)| self.frame.spot(radius, height, 1.0));
        points.iter().map(|point| self.frame.spot(point.radius, point.height, 1.0)).chain(ends).collect()
    }

    fn grips(&self, cut: Option<&Cut>) -> Vec<Grip> {
        let length = |mm: Millimetres| self.style.length(mm);
        let mut grips: Vec<Grip> = Vec::new();
        if let Some(cut) = cut {
            let rim = Millimetres::new(self.height());
            let mut line = |key: &str, height: Millimetres, side: f64, within: &[Point], name: String| {
                let radius = radius_at(within, height.value()).unwrap_or_else(|| self.widest());
                let ends = [0.0, radius].map(|radius| self.frame.spot(radius, height.value(), side));
                let at = self.frame.spot(radius / 2.0, height.value(), side);
                grips.push(Grip { line: ends.to_vec(), ..Grip::point(key.to_owned(), at, name, false) });
            };
            let foot = self.lines.bare_foot;
            line(BARE_FOOT, foot, 1.0, cut.outside(), say::bare_foot_line(length(foot)));
            let overlap = self.lines.overlap;
            let name = if overlap.value() > 0.0 { say::overlap_line(length(overlap)) } else { say::no_overlap_line() };
            line(OVERLAP, rim - overlap, 1.0, cut.outside(), name);
            if let Some(fill) = self.fill {
                line(FILL, rim - fill, -1.0, cut.inside(), say::fill_line(length(fill)));
            }
        }
        grips.extend(self.points.iter().enumerate().map(|(at, point)| {
            let place = self.frame.spot(point.radius.value(), point.height.value(), 1.0);
            let name = say::point(at + 1, length(point.height), length(point.radius * 2.0));
            Grip::point(format!("{POINT}{at}"), place, name, self.points.len() > 3)
        }));
        grips
    }
}

/// The part of a line between two heights, cut where it crosses them.
fn between(points: &[Point], from: f64, to: f64) -> Vec<Point> {
    let (_, above) = revolve::split(points, from);
    let (within, _) = revolve::split(&above, to);
    within
}

/// The widest radius that a line has at a height.
fn radius_at(points: &[Point], height: f64) -> Option<f64> {
    let pairs = points.iter().zip(points.iter().skip(1));
    let crossing = pairs.filter(|(a, b)| (a.height - height) * (b.height - height) <= 0.0);
    crossing.map(|(a, b)| a.radius.max(b.radius)).max_by(f64::total_cmp)
}
