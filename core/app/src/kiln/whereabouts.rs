//! Where on a piece a fault is: a place on its outline, kept as the side and the height, so that it means the same on a
//! form that is measured again.

use super::assessment::FaultChip;
use crate::editor::{Drawing, Grip, Ink, Point, Shape, Spot};
use crate::messages::came_out as say;
use laydown_domain::kiln::fault::Fault;

/// Room around the outline, as a part of its size.
const MARGIN: f64 = 0.08;
/// How far inside the wall the inner one is drawn, as a part of the form's size.
const WALL: f64 = 0.05;
/// Heights are kept in such parts of the form's height.
const PARTS: f64 = 1e3;

/// A place on a piece: `inside 120` or `outside 870`, the height in thousandths from the foot to the rim.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Whereabouts {
    inside: bool,
    height: f64,
}

impl Whereabouts {
    /// From the text it is kept as; `None` where no place was given.
    pub(super) fn read(text: &str) -> Option<Whereabouts> {
        let (side, height) = text.split_once(' ')?;
        let height: f64 = height.parse::<u16>().ok()?.into();
        Some(Whereabouts { inside: side == "inside", height: (height / PARTS).min(1.0) })
    }

    pub(super) fn text(self) -> String {
        let side = if self.inside { "inside" } else { "outside" };
        format!("{side} {:.0}", self.height * PARTS)
    }

    /// "at the rim", "high outside", "on the inside floor".
    pub(super) fn words(self) -> String {
        say::place(match (self.inside, self.height) {
            (_, height) if height > 0.9 => "rim",
            (true, height) if height < 0.15 => "floor",
            (false, height) if height < 0.12 => "foot",
            (true, height) if height < 0.4 => "low_inside",
            (false, height) if height < 0.4 => "low_outside",
            (true, height) if height < 0.65 => "halfway_inside",
            (false, height) if height < 0.65 => "halfway_outside",
            (true, _) => "high_inside",
            (false, _) => "high_outside",
        })
    }
}

/// A form's outline in a box, open on the left of its axis, as it stands on the right.
pub(super) struct Outline {
    /// From the axis at the foot to the rim, in parts of the box's width.
    points: Vec<Point>,
    tall: f64,
}

impl Outline {
    /// `None` for a form without an outline.
    pub(super) fn of(points: &[Point]) -> Option<Outline> {
        let height = points.iter().fold(0.0f64, |most, point| most.max(point.height));
        let width = points.iter().fold(0.0f64, |most, point| most.max(2.0 * point.radius));
        if !(height > 0.0 && width > 0.0) {
            return None;
        }
        // A tall form gets a box as wide as it is high: a finger needs room beside it.
        let scale = (1.0 - 2.0 * MARGIN) / width.max(height);
        let points = points.iter().map(|point| Point { radius: point.radius * scale, height: point.height * scale });
        Some(Outline { points: points.collect(), tall: (height * scale + 2.0 * MARGIN).max(0.35) })
    }

    fn height(&self) -> f64 {
        self.points.iter().fold(0.0, |most, point| point.height.max(most))
    }

    fn spot(&self, radius: f64, height: f64) -> Spot {
        Spot { x: 0.5 + radius, y: self.tall - MARGIN - height }
    }

    /// The place that a finger means, wherever in the box it taps.
    pub(super) fn at(&self, spot: Spot) -> Whereabouts {
        let finite = |value: f64| if value.is_finite() { value } else { 0.0 };
        let height = (self.tall - MARGIN - finite(spot.y)) / self.height();
        Whereabouts { inside: finite(spot.x) < 0.5, height: height.clamp(0.0, 1.0) }
    }

    fn spot_of(&self, place: Whereabouts) -> Spot {
        let height = place.height * self.height();
        let pairs = self.points.iter().zip(self.points.iter().skip(1));
        let radii = pairs.filter(|(a, b)| (a.height - height) * (b.height - height) <= 0.0).map(|(a, b)| {
            let along = if a.height == b.height { 1.0 } else { (height - a.height) / (b.height - a.height) };
            a.radius + along * (b.radius - a.radius)
        });
        let radius = radii.fold(0.0f64, f64::max);
        if place.inside { self.spot(-(radius - WALL).max(0.0), height.max(WALL)) } else { self.spot(radius, height) }
    }

    /// The outline with the faults that have a place, each a grip keyed by its code.
    pub(super) fn draw(&self, faults: &[(Fault, Option<Whereabouts>)]) -> Drawing {
        let half = |side: f64, from: f64, inset: f64| -> Vec<Spot> {
            let wall = self
                .points
                .iter()
                .map(|point| self.spot(side * (point.radius - inset).max(0.0), point.height.max(from)));
            wall.collect()
        };
        let rim = self.height();
        let to_axis = |mut spots: Vec<Spot>| {
            spots.push(self.spot(0.0, rim));
            spots
        };
        let inner: Vec<Spot> = half(-1.0, WALL, WALL).into_iter().rev().collect();
        let wall = [half(-1.0, 0.0, 0.0), inner.clone(), vec![self.spot(0.0, 0.0)]].concat();
        let shapes = vec![
            Shape::of(Ink::Glazed, to_axis(half(1.0, 0.0, 0.0))),
            Shape::of(Ink::Bisque, to_axis(half(-1.0, WALL, WALL))),
            Shape::of(Ink::Clay, wall.clone()),
            Shape::of(Ink::Line, wall),
            Shape::of(Ink::Line, half(1.0, 0.0, 0.0)),
            Shape::of(Ink::Guide, vec![self.spot(0.0, 0.0), self.spot(0.0, rim + MARGIN / 2.0)]),
        ];
        let placed = faults.iter().filter_map(|(fault, place)| place.map(|place| (*fault, place)));
        let grips: Vec<Grip> = placed
            .map(|(fault, place)| {
                let name = FaultChip::placed(fault, Some(place));
                Grip::point(fault.code().to_owned(), self.spot_of(place), name, true)
            })
            .collect();
        let asked = faults.last().map(|(fault, _)| say::where_is(fault.code()));
        Drawing {
            below: String::new(),
            tall: self.tall,
            photo: String::new(),
            shapes,
            grips,
            words: asked.into_iter().chain([say::tap_the_place()]).collect::<Vec<_>>().join(" "),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mug() -> Outline {
        let point = |radius: f64, height: f64| Point { radius, height };
        Outline::of(&[point(0.0, 0.0), point(0.4, 0.0), point(0.4, 1.0)]).unwrap()
    }

    #[test]
    fn a_place_is_saved_and_found_where_it_was_tapped() {
        let mug = mug();
        for (height, side) in [(0.05, 1.0), (0.5, 1.0), (0.97, 1.0), (0.5, -1.0)] {
            let tapped = Spot { x: 0.5 + side * 0.3, y: mug.tall - MARGIN - height * mug.height() };
            let place = mug.at(tapped);
            assert_eq!(place.inside, side < 0.0);
            let saved = Whereabouts::read(&place.text()).unwrap();
            assert!((saved.height - height).abs() < 1e-3, "{saved:?}");
            assert!((mug.spot_of(saved).y - tapped.y).abs() < 1e-3);
        }
    }

    #[test]
    fn places_have_words_and_nonsense_has_no_place() {
        let words = |text| Whereabouts::read(text).map(Whereabouts::words);
        assert_eq!(words("outside 20").as_deref(), Some("at the foot"));
        assert_eq!(words("inside 20").as_deref(), Some("on the inside floor"));
        assert_eq!(words("outside 960").as_deref(), Some("at the rim"));
        assert_eq!(words("inside 500").as_deref(), Some("halfway up inside"));
        assert_eq!((words(""), words("outside"), words("outside -3")), (None, None, None));
        let far = mug().at(Spot { x: f64::NAN, y: f64::NEG_INFINITY });
        assert!((0.0..=1.0).contains(&far.height));
    }

    #[test]
    fn a_form_without_an_outline_is_not_drawn() {
        assert!(Outline::of(&[]).is_none());
        assert!(Outline::of(&[Point { radius: 0.5, height: 0.0 }]).is_none());
    }
}
