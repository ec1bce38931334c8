//! Classes of shape, each with a profile of its usual proportions.

use std::sync::OnceLock;

use super::profile::{FootRing, GlazeLines, Profile, ProfilePoint};
use super::{AREA_FROM_CAPACITY, Form, Known, Measured, ZoneKind, outline};
use crate::coded::coded;
use crate::units::{Grams, Millilitres, Millimetres, SquareCentimetres};

coded! {
    /// A class of shape that scales as one.
    "shape" ShapeClass {
        /// Straight walls.
        CylinderMug = "cylinder_mug",
        /// A belly.
        RoundedMug = "rounded_mug",
        /// Wider than twice its depth.
        OpenBowl = "open_bowl",
        /// About as deep as half its width.
        DeepBowl = "deep_bowl",
        /// Flat with a rim.
        Plate = "plate",
        /// Closed, with a neck.
        Bottle = "bottle",
        /// Closed a little, with a wide mouth.
        Jar = "jar",
        /// Tall, drawn in below a flared rim.
        Vase = "vase",
        /// Round and closed, with a seat for a lid.
        Teapot = "teapot",
        /// Widening upwards, with a heavy rim.
        Planter = "planter",
        /// One flat face.
        Tile = "tile",
    }
}

/// Exponent between volume and area of similar bodies.
const SIMILAR: f64 = 2.0 / 3.0;
/// Exponent between what a pot holds and its area outside. Walls, foot and bare foot grow less than the pot: with walls that
/// stay as thick, the profiles below give 0.60 to 0.63; with walls that grow with the cube root of its size, 0.62 to 0.65.
const OUTSIDE: f64 = 0.62;
/// One standard uncertainty of that, half of the way from walls that stay to walls that grow with the pot.
const OUTSIDE_UNCERTAINTY: f64 = 0.03;
/// A plate's depth hardly grows with its width, in some sets not at all: then its area goes with what it holds (exponent 1).
/// Common practice, no source.
const SHALLOW_UNCERTAINTY: f64 = 0.15;
/// Relative standard uncertainty of a plate's area taken from what it holds: plates of one width differ in depth by a third.
/// Common practice, no source.
const SHALLOW_FROM_CAPACITY: f64 = 0.20;
/// How far two sizes of one class fail to be similar. Common practice, no source.
const SAME_CLASS: f64 = 0.03;

/// Relative standard uncertainty of an area taken from one width: pots of one width differ in height. Common practice, no source.
const FROM_WIDTH: f64 = 0.15;
/// The same of a plate, whose area is nearly that of a disc of its width: rims differ. Common practice, no source.
const SHALLOW_FROM_WIDTH: f64 = AREA_FROM_CAPACITY;
/// The same from a height, since pots of one height differ still more in width. Common practice, no source.
const FROM_HEIGHT: f64 = 0.25;
/// The same from the clay it was thrown of: hands differ in walls and in what they trim off. Common practice, no source.
const FROM_CLAY: f64 = 0.20;

/// One measure of a pot whose proportions are otherwise taken as usual for its class.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum OneMeasure {
    /// Width at the widest, of the bisque, without handle.
    Width(Millimetres),
    /// Height of the bisque.
    Height(Millimetres),
    /// The wet clay it is thrown of, before trimming and without handle.
    Clay(Grams),
}

/// How a zone grows from one size of a class to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Growth {
    /// The new area over the old one.
    pub ratio: f64,
    /// One standard uncertainty of the ratio, as a fraction of it.
    pub relative_uncertainty: f64,
}

/// A class's usual proportions.
#[derive(Debug, Clone, PartialEq)]
pub struct Usual {
    /// Its profile.
    pub profile: Profile,
    /// Where its glaze ends.
    pub lines: GlazeLines,
}

/// Height and radius of points on the outside, wall, floor, foot ring (width, height), bare foot: millimetres.
type Proportions = (&'static [(f64, f64)], f64, f64, Option<(f64, f64)>, f64);

impl ShapeClass {
    /// Whether it has no profile.
    pub const fn is_flat(self) -> bool {
        matches!(self, Self::Tile)
    }

    /// Its usual proportions, made to hold `capacity`, or at a usual size; a tile has none.
    pub fn usual(self, capacity: Option<Millilitres>) -> Option<Usual> {
        let mm = Millimetres::new;
        let (points, wall, floor, foot, bare_foot) = self.proportions()?;
        let point =
            |&(height, radius): &(f64, f64)| ProfilePoint { height: mm(height), radius: mm(radius), wall: None };
        let usual = Measured {
            profile: Profile {
                points: points.iter().map(point).collect(),
                wall: mm(wall),
                floor: mm(floor),
                foot: foot.map(|(width, height)| FootRing { width: mm(width), height: mm(height) }),
            },
            lines: GlazeLines { bare_foot: mm(bare_foot), overlap: Millimetres::ZERO },
            extra: SquareCentimetres::ZERO,
            fill: None,
            traced: None,
        };
        let factor = capacity.and_then(|capacity| Some((capacity / self.drawn()?.capacity).cbrt()));
        let Measured { profile, lines, .. } = usual.scaled(factor.unwrap_or(1.0));
        Some(Usual { profile, lines })
    }

    /// Half its width at the widest, made to hold `capacity` or at a usual size; `None` for what is flat.
    pub(super) fn widest(self, capacity: Option<Millilitres>) -> Option<Millimetres> {
        let usual = self.usual(capacity)?;
        Some(usual.profile.points.iter().fold(Millimetres::ZERO, |widest, point| widest.max(point.radius)))
    }

    /// Area of a zone when the class's profile is made to hold `capacity`, and one standard uncertainty as a fraction of
    /// it; `None` for what holds nothing.
    ///
    /// `k V^e` with k from the profile of the class: the further its size from the one drawn, the rougher.
    pub fn area(self, zone: ZoneKind, capacity: Millilitres) -> Option<(SquareCentimetres, f64)> {
        let drawn = self.drawn()?;
        let size = capacity / drawn.capacity;
        let inside = drawn.inside * size.powf(SIMILAR);
        let outside = drawn.outside * size.powf(self.outside_exponent());
        let area = match zone {
            ZoneKind::Inside => inside,
            ZoneKind::Outside => outside,
            ZoneKind::Whole => inside + outside,
        };
        let proportions = if self.is_shallow() { SHALLOW_FROM_CAPACITY } else { AREA_FROM_CAPACITY };
        Some((area, proportions.hypot(self.exponent_uncertainty(zone) * size.ln().abs())))
    }

    /// What a pot of this class with this one measure usually holds, and the relative standard uncertainty of areas that are
    /// taken from that; `None` for what holds nothing, and for the height of a plate, which says nothing of its width.
    pub(super) fn by_one_measure(self, measure: OneMeasure) -> Option<(Millilitres, f64)> {
        let drawn = self.drawn()?;
        let (size, relative_uncertainty) = match measure {
            OneMeasure::Width(width) => {
                (width / drawn.width, if self.is_shallow() { SHALLOW_FROM_WIDTH } else { FROM_WIDTH })
            }
            OneMeasure::Height(_) if self.is_shallow() => return None,
            OneMeasure::Height(height) => (height / drawn.height, FROM_HEIGHT),
            OneMeasure::Clay(clay) => ((clay / self.usual_clay()?).cbrt(), FROM_CLAY),
        };
        Some((drawn.capacity * size.powi(3), relative_uncertainty))
    }

    /// The wet clay that a pot of this class is thrown of, at the size that is drawn. Common practice, no source.
    const fn usual_clay(self) -> Option<Grams> {
        Some(Grams::new(match self {
            Self::CylinderMug => 400.0,
            Self::RoundedMug => 450.0,
            Self::OpenBowl => 850.0,
            Self::DeepBowl => 750.0,
            Self::Plate => 1_300.0,
            Self::Bottle => 950.0,
            Self::Jar => 1_000.0,
            Self::Vase => 1_400.0,
            Self::Teapot => 950.0,
            Self::Planter => 1_200.0,
            Self::Tile => return None,
        }))
    }

    /// How many times the area of a zone grows from one capacity to another of this class; `None` for what holds nothing.
    /// The class's own factor cancels: what is left is how far two sizes fail to be similar.
    pub fn growth(self, zone: ZoneKind, from: Millilitres, to: Millilitres) -> Option<Growth> {
        let (before, after) = (self.area(zone, from)?.0, self.area(zone, to)?.0);
        let apart = (to / from).ln().abs();
        Some(Growth {
            ratio: after / before,
            relative_uncertainty: SAME_CLASS.hypot(self.exponent_uncertainty(zone) * apart),
        })
    }

    /// Whether it is so shallow that its depth hardly grows with its width.
    const fn is_shallow(self) -> bool {
        matches!(self, Self::Plate)
    }

    const fn outside_exponent(self) -> f64 {
        if self.is_shallow() { SIMILAR } else { OUTSIDE }
    }

    /// One standard uncertainty of the exponent.
    const fn exponent_uncertainty(self, zone: ZoneKind) -> f64 {
        match zone {
            _ if self.is_shallow() => SHALLOW_UNCERTAINTY,
            ZoneKind::Inside => 0.0,
            ZoneKind::Outside | ZoneKind::Whole => OUTSIDE_UNCERTAINTY,
        }
    }

    /// Half of the silhouette, as [`Form::outline`] gives it.
    pub fn outline(self) -> Vec<(f64, f64)> {
        // A slab seen from its edge.
        let slab = || vec![(0.0, 0.0), (0.5, 0.0), (0.5, 0.08), (0.0, 0.08)];
        self.drawn().map_or_else(slab, |drawn| drawn.outline.clone())
    }

    /// What the class's profile comes to at its usual size, calculated once.
    fn drawn(self) -> Option<&'static Drawn> {
        static ALL: OnceLock<Vec<Option<Drawn>>> = OnceLock::new();
        let all = ALL.get_or_init(|| Self::ALL.iter().map(|class| Drawn::of(*class)).collect());
        all.get(Self::ALL.iter().position(|class| *class == self)?)?.as_ref()
    }

    /// Common practice, no source.
    const fn proportions(self) -> Option<Proportions> {
        Some(match self {
            Self::CylinderMug => {
                (&[(0.0, 36.5), (3.0, 39.0), (8.0, 40.0), (50.0, 40.0), (92.0, 40.0)], 4.0, 4.0, None, 8.0)
            }
            Self::RoundedMug => (
                &[
                    (0.0, 29.0),
                    (4.0, 35.0),
                    (18.0, 43.0),
                    (32.0, 47.0),
                    (46.0, 48.0),
                    (60.0, 46.0),
                    (74.0, 42.5),
                    (84.0, 41.0),
                    (90.0, 41.5),
                ],
                4.0,
                4.0,
                None,
                8.0,
            ),
            Self::OpenBowl => (
                &[
                    (0.0, 33.0),
                    (6.0, 32.5),
                    (11.0, 40.0),
                    (19.0, 58.5),
                    (31.5, 73.5),
                    (46.5, 84.5),
                    (61.0, 91.5),
                    (69.0, 94.5),
                ],
                5.0,
                5.0,
                Some((6.0, 6.0)),
                6.0,
            ),
            Self::DeepBowl => (
                &[
                    (0.0, 31.0),
                    (6.0, 30.0),
                    (12.5, 38.5),
                    (23.5, 52.5),
                    (39.0, 62.5),
                    (57.5, 69.0),
                    (76.0, 73.0),
                    (90.0, 75.0),
                ],
                5.0,
                5.0,
                Some((6.0, 6.0)),
                6.0,
            ),
            Self::Plate => (
                &[(0.0, 80.0), (5.0, 79.0), (8.5, 88.0), (14.5, 95.5), (17.5, 106.0), (22.0, 126.0)],
                6.0,
                6.0,
                Some((7.0, 5.0)),
                5.0,
            ),
            Self::Bottle => (
                &[
                    (0.0, 34.0),
                    (5.0, 42.0),
                    (25.0, 48.0),
                    (65.0, 50.0),
                    (106.0, 47.0),
                    (132.0, 37.5),
                    (148.0, 24.0),
                    (157.0, 17.5),
                    (170.0, 16.0),
                    (190.0, 16.0),
                    (199.0, 18.0),
                ],
                5.0,
                5.0,
                None,
                9.0,
            ),
            Self::Jar => (
                &[
                    (0.0, 44.0),
                    (5.0, 53.0),
                    (25.0, 60.0),
                    (65.0, 63.0),
                    (101.0, 58.5),
                    (117.0, 51.5),
                    (121.0, 50.0),
                    (127.0, 50.0),
                ],
                5.0,
                5.0,
                None,
                9.0,
            ),
            Self::Vase => (
                &[
                    (0.0, 32.0),
                    (6.0, 36.0),
                    (40.0, 52.0),
                    (90.0, 62.0),
                    (140.0, 56.0),
                    (180.0, 44.0),
                    (205.0, 40.0),
                    (220.0, 46.0),
                ],
                5.0,
                6.0,
                None,
                6.0,
            ),
            Self::Teapot => (
                &[
                    (0.0, 36.0),
                    (5.0, 44.0),
                    (25.0, 60.0),
                    (50.0, 67.0),
                    (75.0, 62.0),
                    (95.0, 46.0),
                    (104.0, 36.0),
                    (108.0, 35.0),
                ],
                4.0,
                4.0,
                None,
                6.0,
            ),
            Self::Planter => (
                &[(0.0, 48.0), (6.0, 52.0), (60.0, 60.0), (120.0, 68.0), (130.0, 71.0), (140.0, 71.5)],
                6.0,
                7.0,
                None,
                4.0,
            ),
            Self::Tile => return None,
        })
    }
}

/// A class's profile turned.
struct Drawn {
    width: Millimetres,
    height: Millimetres,
    capacity: Millilitres,
    inside: SquareCentimetres,
    outside: SquareCentimetres,
    outline: Vec<(f64, f64)>,
}

impl Drawn {
    fn of(class: ShapeClass) -> Option<Drawn> {
        let Usual { profile, lines } = class.usual(None)?;
        let outline = outline(&profile.cut().ok()?);
        let largest = |of: fn(&ProfilePoint) -> Millimetres| {
            profile.points.iter().map(of).fold(Millimetres::ZERO, Millimetres::max)
        };
        let (width, height) = (largest(|point| point.radius) * 2.0, largest(|point| point.height));
        let measured = Measured { profile, lines, extra: SquareCentimetres::ZERO, fill: None, traced: None };
        let form = Form::new(class, &Known { measured: Some(measured), ..Known::default() }).ok()?;
        let area = |kind| Some(form.zone(kind)?.area);
        Some(Drawn {
            width,
            height,
            capacity: form.profile_capacity?,
            inside: area(ZoneKind::Inside)?,
            outside: area(ZoneKind::Outside)?,
            outline,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_class_but_the_tile_is_a_pot() {
        for class in ShapeClass::ALL {
            assert_eq!(class.drawn().is_none(), class.is_flat(), "{class}");
        }
    }

    #[test]
    fn a_class_made_to_hold_so_much_holds_it() {
        for class in ShapeClass::ALL.iter().filter(|class| !class.is_flat()) {
            let usual = class.usual(Some(Millilitres::new(450.0))).unwrap();
            approx::assert_relative_eq!(usual.profile.cut().unwrap().capacity().value(), 450.0, max_relative = 1e-9);
        }
    }

    #[test]
    fn one_measure_of_the_form_that_is_drawn_gives_that_form() {
        for class in ShapeClass::ALL.iter().filter(|class| !class.is_flat()) {
            let drawn = class.drawn().unwrap();
            let measures = [
                OneMeasure::Width(drawn.width),
                OneMeasure::Height(drawn.height),
                OneMeasure::Clay(class.usual_clay().unwrap()),
            ];
            for measure in measures {
                let Some((capacity, _)) = class.by_one_measure(measure) else {
                    assert!(class.is_shallow() && matches!(measure, OneMeasure::Height(_)));
                    continue;
                };
                approx::assert_relative_eq!(capacity.value(), drawn.capacity.value(), max_relative = 1e-12);
            }
        }
    }

    #[test]
    fn a_plate_by_its_width_grows_as_a_disc() {
        let area = |width: f64| {
            let one = Some(OneMeasure::Width(Millimetres::new(width)));
            let plate = Form::new(ShapeClass::Plate, &Known { one, ..Known::default() }).unwrap();
            *plate.zone(ZoneKind::Inside).unwrap()
        };
        approx::assert_relative_eq!(area(270.0).area / area(180.0).area, 2.25, max_relative = 1e-9);
        // The disc that a plate covers, and its sloping rim a little more.
        let disc = std::f64::consts::PI * 13.5 * 13.5;
        assert!((1.0..1.12).contains(&(area(270.0).area.value() / disc)), "{:?}", area(270.0));
        assert_eq!(area(270.0).relative_uncertainty, SHALLOW_FROM_WIDTH);
    }

    /// The class's form `times` as wide and high, with walls, floor, foot and bare foot `walls` times as thick.
    fn made_larger(class: ShapeClass, times: f64, walls: f64) -> Form {
        let Usual { profile, lines } = class.usual(None).unwrap();
        let points = profile.points.iter();
        let profile = Profile {
            points: points
                .map(|at| ProfilePoint { height: at.height * times, radius: at.radius * times, wall: None })
                .collect(),
            wall: profile.wall * walls,
            floor: profile.floor * walls,
            foot: profile.foot.map(|ring| FootRing { width: ring.width * walls, height: ring.height * walls }),
        };
        let lines = GlazeLines { bare_foot: lines.bare_foot * walls, ..lines };
        let measured = Measured { profile, lines, extra: SquareCentimetres::ZERO, fill: None, traced: None };
        Form::new(class, &Known { measured: Some(measured), ..Known::default() }).unwrap()
    }

    #[test]
    fn the_exponents_are_those_of_walls_that_grow_less_than_the_pot() {
        let deep = ShapeClass::ALL.iter().filter(|class| !class.is_flat() && !class.is_shallow());
        let mut outside = Vec::new();
        for class in deep {
            for grows in [0.0, 1.0 / 3.0] {
                let (small, large) =
                    (made_larger(*class, 0.8, 0.8f64.powf(grows)), made_larger(*class, 1.26, 1.26f64.powf(grows)));
                let volumes = (large.capacity.unwrap() / small.capacity.unwrap()).ln();
                let exponent = |kind| (large.zone(kind).unwrap().area / small.zone(kind).unwrap().area).ln() / volumes;
                approx::assert_abs_diff_eq!(exponent(ZoneKind::Inside), SIMILAR, epsilon = 0.015);
                outside.push(exponent(ZoneKind::Outside));
            }
        }
        let mean = outside.iter().sum::<f64>() / outside.len() as f64;
        approx::assert_abs_diff_eq!(mean, OUTSIDE, epsilon = 0.01);
        assert!(outside.iter().all(|exponent| (exponent - OUTSIDE).abs() < OUTSIDE_UNCERTAINTY), "{outside:?}");
    }

    #[test]
    fn a_plate_holds_what_is_below_its_inner_lip() {
        // The inside ends 28 mm above the ground, 6 mm of clay above the outer edge at 22 mm: filled to that edge, as it once
        // was, this plate would hold 267 ml.
        let usual = ShapeClass::Plate.usual(None).unwrap();
        approx::assert_relative_eq!(usual.profile.cut().unwrap().capacity().value(), 498.0, max_relative = 0.01);
    }
}
