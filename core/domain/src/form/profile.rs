//! A profile as a potter measures it, and the pot that it makes: cut through its axis, with what it holds, what its clay
//! takes up, and the area of each of its parts.

use super::{curve, revolve};
use crate::coded::coded;
use crate::units::{Grams, Millilitres, Millimetres, SquareCentimetres};

/// A point of a line: millimetres, or any one unit throughout.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// Height above the ground.
    pub height: f64,
    /// Distance from the axis.
    pub radius: f64,
}

/// A point on the outside, as measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProfilePoint {
    /// Height above the ground.
    pub height: Millimetres,
    /// Half of the width across.
    pub radius: Millimetres,
    /// Thickness of the wall here, where it is not the profile's.
    pub wall: Option<Millimetres>,
}

/// The ring of clay a pot stands on, with a recess inside it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FootRing {
    /// Width of the clay.
    pub width: Millimetres,
    /// Height of the ring, which is the depth of the recess.
    pub height: Millimetres,
}

/// A pot as measured: its outside from the ground up, and how thick it is.
#[derive(Debug, Clone, PartialEq)]
pub struct Profile {
    /// From the ground to the rim, in the order in which a finger follows the wall.
    pub points: Vec<ProfilePoint>,
    /// Thickness of the wall.
    pub wall: Millimetres,
    /// Thickness of the floor in the middle.
    pub floor: Millimetres,
    /// The foot ring; none for a flat bottom.
    pub foot: Option<FootRing>,
}

/// Where the glaze ends.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct GlazeLines {
    /// Height above the ground at which the glaze begins.
    pub bare_foot: Millimetres,
    /// Depth below the rim, outside, to which both glazes lie; nothing where they do not overlap.
    pub overlap: Millimetres,
}

coded! {
    /// A part of a form's surface.
    "part" Part {
        /// What stays bare: the foot, its ring and recess, up to the glaze line.
        Foot = "foot",
        /// From the glaze line to the overlap band or the rim.
        OutsideWall = "outside_wall",
        /// Below the rim, where both glazes lie.
        OverlapBand = "overlap_band",
        /// The lip itself.
        Rim = "rim",
        /// From the floor to the rim.
        InsideWall = "inside_wall",
        /// The floor.
        InsideFloor = "inside_floor",
    }
}

/// A part and how large it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PartArea {
    /// Which part.
    pub part: Part,
    /// Its area.
    pub area: SquareCentimetres,
}

/// Why a profile makes no pot; points are counted from 1.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum ProfileError {
    /// Fewer than three points.
    TooFew,
    /// More points than anyone measures.
    TooMany,
    /// A height or width that is no size of a pot.
    OutOfReach {
        /// The point.
        point: usize,
    },
    /// Two neighbours at one height.
    SameHeight {
        /// The upper of the two.
        point: usize,
    },
    /// The outside runs through itself.
    Crosses {
        /// The point before the crossing.
        point: usize,
    },
    /// No wall.
    NoWall,
    /// More wall than pot.
    WallTooThick {
        /// The point.
        point: usize,
    },
    /// No room above the floor.
    Floor,
    /// A ring wider than the foot.
    FootRing,
    /// No weight or density to compare with.
    NoWeight,
    /// The bare foot leaves nothing.
    NothingToGlaze,
}

/// More points than anyone measures.
pub const MOST_POINTS: usize = 60;
const FARTHEST_UP: f64 = 1_500.0;
const FARTHEST_OUT: f64 = 750.0;

/// Calipers and a ruler are read to about half a millimetre: how far the whole outline may lie in or out, one standard
/// uncertainty in mm. Common practice, no source.
const READING: f64 = 0.25;

/// A rim whose last stretch rises less than this share of its width may be a roll. Common practice, no source.
const LEVEL_RIM: f64 = 0.1;

/// No pot is as round and smooth as its drawing: least relative uncertainty of an area. Common practice, no source.
const LEAST: f64 = 0.01;

impl Profile {
    /// The pot, cut open.
    ///
    /// # Errors
    /// When the measures make no pot; the point is named.
    pub fn cut(&self) -> Result<Cut, ProfileError> {
        self.check()?;
        self.cut_along(&curve::smooth(&self.line()))
    }

    /// The same with straight lines from point to point: how far it is from the smooth one says how much the points
    /// leave open.
    fn cut_straight(&self) -> Result<Cut, ProfileError> {
        self.cut_along(&self.line())
    }

    /// The same shape made larger, walls and all.
    #[must_use]
    pub fn scaled(&self, factor: f64) -> Profile {
        Profile {
            points: self
                .points
                .iter()
                .map(|point| ProfilePoint {
                    height: point.height * factor,
                    radius: point.radius * factor,
                    wall: point.wall.map(|wall| wall * factor),
                })
                .collect(),
            wall: self.wall * factor,
            floor: self.floor * factor,
            foot: self.foot.map(|foot| FootRing { width: foot.width * factor, height: foot.height * factor }),
        }
    }

    /// Height of its highest point.
    pub fn height(&self) -> Millimetres {
        self.points.iter().fold(Millimetres::ZERO, |highest, point| highest.max(point.height))
    }

    fn line(&self) -> Vec<(Point, f64)> {
        let wall = |point: &ProfilePoint| point.wall.unwrap_or(self.wall).value();
        let point = |point: &ProfilePoint| Point { height: point.height.value(), radius: point.radius.value() };
        let mut line: Vec<(Point, f64)> = self.points.iter().map(|at| (point(at), wall(at))).collect();
        // A first point measured a little above the ground stands on a plain cylinder.
        if let Some(&(first, wall)) = line.first()
            && first.height > 0.0
        {
            line.insert(0, (Point { height: 0.0, ..first }, wall));
        }
        line
    }

    /// How much area the points leave open where the rim ends level or falling, mm²: one standard uncertainty. What is measured
    /// as a straight stretch may be half of a round roll, on either side of the wall.
    fn rolled_open(&self) -> f64 {
        let [.., before, last] = self.points.as_slice() else { return 0.0 };
        let (rise, run) = ((last.height - before.height).value(), (last.radius - before.radius).value());
        if rise > LEVEL_RIM * run.abs() {
            return 0.0;
        }
        let across = rise.hypot(run) + 2.0 * last.wall.unwrap_or(self.wall).value();
        let longer = (std::f64::consts::FRAC_PI_2 - 1.0) * across;
        let middle = (last.radius + before.radius).value() / 2.0;
        // A rectangular distribution from straight to round.
        2.0 * std::f64::consts::PI * middle * longer / 3f64.sqrt()
    }

    fn check(&self) -> Result<(), ProfileError> {
        if self.points.len() < 3 {
            return Err(ProfileError::TooFew);
        }
        if self.points.len() > MOST_POINTS {
            return Err(ProfileError::TooMany);
        }
        let is_length = |length: Millimetres, most: f64| (0.0..=most).contains(&length.value());
        for (at, point) in self.points.iter().enumerate() {
            let number = at + 1;
            if !(is_length(point.height, FARTHEST_UP) && is_length(point.radius, FARTHEST_OUT)) {
                return Err(ProfileError::OutOfReach { point: number });
            }
            if at > 0 && self.points[at - 1].height == point.height {
                return Err(ProfileError::SameHeight { point: number });
            }
            let wall = point.wall.unwrap_or(self.wall);
            if !(wall.is_positive() && is_length(wall, FARTHEST_OUT)) {
                return Err(ProfileError::NoWall);
            }
            if wall > point.radius {
                return Err(ProfileError::WallTooThick { point: number });
            }
        }
        let foot_height = self.foot.map_or(0.0, |foot| foot.height.value());
        if !(self.floor.is_positive() && foot_height >= 0.0 && self.floor.value() + foot_height < self.height().value())
        {
            return Err(ProfileError::Floor);
        }
        if self.foot.is_some_and(|foot| !(foot.width.is_positive() && foot.width <= self.points[0].radius)) {
            return Err(ProfileError::FootRing);
        }
        Ok(())
    }

    fn cut_along(&self, line: &[(Point, f64)]) -> Result<Cut, ProfileError> {
        let outside: Vec<Point> = line.iter().map(|(point, _)| *point).collect();
        if let Some(at) = revolve::first_crossing(&outside) {
            let measured = at * self.points.len() / outside.len();
            return Err(ProfileError::Crosses { point: measured + 1 });
        }
        let (Some(foot), Some(rim)) = (outside.first().copied(), outside.last().copied()) else {
            return Err(ProfileError::TooFew);
        };
        let recess = self.foot.map_or(0.0, |foot| foot.height.value());
        let level = recess + self.floor.value();
        let inside = inside(line, level).ok_or(ProfileError::Floor)?;
        let ring = self.foot.map(|ring| foot.radius - ring.width.value());
        let at = |height, radius| Point { height, radius };
        let underside = match ring {
            Some(inner) => vec![at(recess, 0.0), at(recess, inner), at(0.0, inner), at(0.0, foot.radius)],
            None => vec![at(0.0, 0.0), at(0.0, foot.radius)],
        };
        let brim = outside.iter().chain(&inside).fold(0.0f64, |highest, point| highest.max(point.height));
        Ok(Cut { outside, inside, underside, rim: rim.height, brim })
    }
}

/// The inside from the middle of the floor, at the height `level`, to the rim: the outside moved in by the wall, square
/// to the line.
fn inside(line: &[(Point, f64)], level: f64) -> Option<Vec<Point>> {
    let last = line.len() - 1;
    let moved = (0..=last).map(|at| {
        let (point, wall) = line[at];
        let (before, after) = (line[at.saturating_sub(1)].0, line[(at + 1).min(last)].0);
        let (rise, run) = (after.height - before.height, after.radius - before.radius);
        let length = rise.hypot(run).max(f64::MIN_POSITIVE);
        Point { height: point.height + wall * run / length, radius: (point.radius - wall * rise / length).max(0.0) }
    });
    // Walked from the rim down, so that what a bend of the wall ties into loops is cut off on the far side.
    let mut down: Vec<Point> = revolve::without_loops(&moved.rev().collect::<Vec<_>>());
    down.iter_mut().for_each(|point| point.height = -point.height);
    let (wall, _) = revolve::split(&down, -level);
    let mut up: Vec<Point> = wall.iter().rev().map(|point| Point { height: -point.height, ..*point }).collect();
    let lowest = *up.first()?;
    up.splice(0..0, [Point { height: level, radius: 0.0 }, Point { height: level, radius: lowest.radius }]);
    (up.last()?.height > level).then_some(up)
}

/// Half of a pot cut through its axis: fine lines, in millimetres.
#[derive(Debug, Clone, PartialEq)]
pub struct Cut {
    outside: Vec<Point>,
    inside: Vec<Point>,
    underside: Vec<Point>,
    rim: f64,
    brim: f64,
}

impl Cut {
    /// The outside, from the ground to the rim.
    pub fn outside(&self) -> &[Point] {
        &self.outside
    }

    /// The inside, from the middle of the floor to the rim.
    pub fn inside(&self) -> &[Point] {
        &self.inside
    }

    /// The underside, from its middle to the foot's outer edge.
    pub fn underside(&self) -> &[Point] {
        &self.underside
    }

    /// Its largest radius, mm.
    pub fn widest(&self) -> f64 {
        self.outside.iter().fold(0.0, |widest, point| point.radius.max(widest))
    }

    /// What it holds, filled to the brim: the highest point of its lip, where water begins to run over.
    pub fn capacity(&self) -> Millilitres {
        self.capacity_to(Millimetres::ZERO)
    }

    /// What it holds, filled to so far below the brim.
    pub fn capacity_to(&self, below_brim: Millimetres) -> Millilitres {
        let level = self.brim - below_brim.value();
        // What lies past the highest point of the inside, as on a rolled rim, holds nothing.
        let crown = self.inside.iter().map(|point| point.height).fold(f64::MIN, f64::max);
        let to_crown = self.inside.iter().position(|point| point.height >= crown).map_or(0, |at| at + 1);
        // A wall that leans in ends lower inside than outside: what lies between stands straight up to the brim.
        let upright = self.inside[..to_crown].last().map(|edge| Point { height: self.brim, ..*edge });
        let inside: Vec<Point> = self.inside[..to_crown].iter().copied().chain(upright).collect();
        millilitres(revolve::swept_volume_below(&inside, level).max(0.0))
    }

    /// Volume of the clay: what the outside, the underside and a straight lip enclose, without the inside.
    pub fn clay(&self) -> Millilitres {
        let lip: Vec<Point> = self.outside.last().into_iter().chain(self.inside.last()).copied().collect();
        let enclosed = [&self.outside, &self.underside, &lip].into_iter().map(|line| revolve::swept_volume(line));
        millilitres(enclosed.sum::<f64>() - revolve::swept_volume(&self.inside))
    }

    /// The area of every part, in the order of [`Part::ALL`].
    ///
    /// # Errors
    /// When the bare foot leaves nothing outside to glaze.
    pub fn parts(&self, lines: &GlazeLines) -> Result<Vec<PartArea>, ProfileError> {
        let (bare, glazed) = revolve::split(&self.outside, lines.bare_foot.value());
        if glazed.len() < 2 {
            return Err(ProfileError::NothingToGlaze);
        }
        let (band, wall) = self.overlap(&glazed, self.rim - lines.overlap.value());
        let lip = self.inside.last().zip(self.outside.last()).map_or(0.0, |(inner, outer)| {
            let width = (outer.height - inner.height).hypot(outer.radius - inner.radius);
            revolve::round_lip((outer.radius + inner.radius) / 2.0, width)
        });
        let floor = self.inside.len().min(2);
        Ok(Part::ALL
            .iter()
            .map(|&part| PartArea {
                part,
                area: square_centimetres(match part {
                    Part::Foot => revolve::swept_area(&bare) + revolve::swept_area(&self.underside),
                    Part::OutsideWall => wall,
                    Part::OverlapBand => band,
                    Part::Rim => lip,
                    Part::InsideWall => revolve::swept_area(&self.inside[floor - 1..]),
                    Part::InsideFloor => revolve::swept_area(&self.inside[..floor]),
                }),
            })
            .collect())
    }

    /// Areas of the glazed outside above and below a height: the band is what the wall passes last.
    fn overlap(&self, glazed: &[Point], height: f64) -> (f64, f64) {
        let from_rim: Vec<Point> = glazed.iter().rev().map(|point| Point { height: -point.height, ..*point }).collect();
        let (band, wall) = revolve::split(&from_rim, -height);
        (revolve::swept_area(&band), revolve::swept_area(&wall))
    }
}

/// How sure the area of a profile's part is: how far the points leave the curve open, how finely they were read, and
/// that no pot is quite round. With `traced`, the photograph's own uncertainty goes before the reading.
pub(super) fn relative_uncertainty(
    profile: &Profile,
    area: impl Fn(&Cut) -> f64,
    line: f64,
    traced: Option<f64>,
) -> Option<f64> {
    let smooth = area(&profile.cut().ok()?);
    let straight = area(&profile.cut_straight().ok()?);
    // A rectangular distribution between the two ways of joining the points.
    let open = (smooth - straight).abs() / smooth / 3f64.sqrt();
    let read = traced.unwrap_or(READING * 2.0 * std::f64::consts::PI * line / smooth);
    let rolled = profile.rolled_open() / smooth;
    // Of next to no area nothing is sure.
    Some(open.hypot(read).hypot(rolled).hypot(LEAST)).filter(|sure| smooth > 0.0 && sure.is_finite())
}

/// What a weighed bisque piece says against its profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeightCheck {
    /// The weighed piece over what the profile's clay would weigh.
    pub ratio: f64,
    /// The point, counted from 0, without which they agree; where there is one.
    pub suspect: Option<usize>,
}

/// Handles, trimming and porosity let a true profile be off by this much. Common practice, no source.
const WEIGHT_AGREES: f64 = 0.25;

/// A point is only suspected when the weight agrees this well without it.
const MENDED: f64 = 0.10;

impl WeightCheck {
    /// Whether the weight gives no reason to look again.
    pub fn agrees(&self) -> bool {
        (self.ratio - 1.0).abs() <= WEIGHT_AGREES
    }
}

/// Compares a weighed bisque piece with the clay of its profile, at `density` in g/ml.
///
/// # Errors
/// When the profile makes no pot, or weight or density is nothing.
pub fn weight_check(profile: &Profile, bisque: Grams, density: f64) -> Result<WeightCheck, ProfileError> {
    let ratio_of = |profile: &Profile| Ok(bisque.value() / (profile.cut()?.clay().value() * density));
    let ratio = ratio_of(profile)?;
    if !(ratio > 0.0 && ratio.is_finite()) {
        return Err(ProfileError::NoWeight);
    }
    let check = WeightCheck { ratio, suspect: None };
    if check.agrees() || profile.points.len() < 4 {
        return Ok(check);
    }
    let without = (0..profile.points.len()).filter_map(|at| {
        let mut fewer = profile.clone();
        fewer.points.remove(at);
        let off = (ratio_of(&fewer).ok()? - 1.0).abs();
        (off <= MENDED).then_some((at, off))
    });
    let suspect = without.min_by(|a, b| a.1.total_cmp(&b.1)).map(|(at, _)| at);
    Ok(WeightCheck { ratio, suspect })
}

/// Surface of a handle: its length times its girth.
pub fn tube(length: Millimetres, girth: Millimetres) -> SquareCentimetres {
    square_centimetres(length.value() * girth.value())
}

fn millilitres(cubic_millimetres: f64) -> Millilitres {
    Millilitres::new(cubic_millimetres / 1_000.0)
}

fn square_centimetres(square_millimetres: f64) -> SquareCentimetres {
    SquareCentimetres::new(square_millimetres / 100.0)
}

#[cfg(test)]
mod tests;
