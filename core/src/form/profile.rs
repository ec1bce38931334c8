//! A profile: the inside of a pot from the centre of its floor to the rim, its wall, and the foot left bare.
//!
//! Lengths are in one unit of the profile's own; a form of another size is the same profile made larger.

use super::{ZoneKind, revolve};
use crate::units::{Millilitres, SquareCentimetres};

/// A point of a profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// Height above the inside floor.
    pub height: f64,
    /// Distance from the axis.
    pub radius: f64,
}

/// Half of a pot cut through its axis.
#[derive(Debug, Clone, PartialEq)]
pub struct Profile {
    inside: Vec<Point>,
    wall: f64,
    bare_foot: f64,
}

impl Profile {
    /// `inside` are (height, radius) from the centre of the floor to the rim, `wall` the thickness everywhere, and
    /// `bare_foot` the height left without glaze above the ground.
    pub fn new(inside: &[(f64, f64)], wall: f64, bare_foot: f64) -> Self {
        let inside = inside.iter().map(|&(height, radius)| Point { height, radius }).collect();
        Self { inside, wall, bare_foot }
    }

    /// The inside line, from the centre of the floor to the rim.
    pub fn inside(&self) -> &[Point] {
        &self.inside
    }

    /// The outside line, from the centre of the foot to the rim: the inside moved out by the wall, square to the line.
    pub fn outside(&self) -> Vec<Point> {
        let last = self.inside.len().saturating_sub(1);
        self.inside
            .iter()
            .enumerate()
            .map(|(at, point)| {
                let (before, after) = (self.inside[at.saturating_sub(1)], self.inside[(at + 1).min(last)]);
                // On the axis the surface is level; elsewhere the neighbours give its direction.
                let (rise, run) = if point.radius == 0.0 {
                    (0.0, 1.0)
                } else {
                    (after.height - before.height, after.radius - before.radius)
                };
                let length = rise.hypot(run);
                Point {
                    height: point.height - self.wall * run / length,
                    radius: point.radius + self.wall * rise / length,
                }
            })
            .collect()
    }

    /// What it holds to the rim, in its own unit cubed.
    pub fn capacity(&self) -> f64 {
        revolve::swept_volume(&self.inside)
    }

    /// Area of a zone, in its own unit squared. The rim's edge is left out, handles are not part of a profile.
    pub fn area(&self, zone: ZoneKind) -> f64 {
        match zone {
            ZoneKind::Inside => revolve::swept_area(&self.inside),
            ZoneKind::Outside => {
                let outside = self.outside();
                let ground = outside.iter().fold(f64::INFINITY, |lowest, point| lowest.min(point.height));
                revolve::swept_area(&revolve::above(&outside, ground + self.bare_foot))
            }
            ZoneKind::Whole => self.area(ZoneKind::Inside) + self.area(ZoneKind::Outside),
        }
    }

    /// `k` in `area = k V^(2/3)`: the same for every size of one shape.
    pub fn area_factor(&self, zone: ZoneKind) -> f64 {
        self.area(zone) / self.capacity().powf(2.0 / 3.0)
    }

    /// Area of a zone when the pot is made to hold `capacity`.
    pub fn area_for_capacity(&self, zone: ZoneKind, capacity: Millilitres) -> SquareCentimetres {
        SquareCentimetres::new(self.area_factor(zone) * capacity.value().powf(2.0 / 3.0))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use std::f64::consts::PI;

    #[test]
    fn a_plain_cylinder_has_the_area_of_one() {
        let tumbler = Profile::new(&[(0.0, 0.0), (0.0, 3.0), (8.0, 3.0)], 0.4, 0.0);
        assert_relative_eq!(tumbler.capacity(), PI * 72.0, max_relative = 1e-12);
        assert_relative_eq!(tumbler.area(ZoneKind::Inside), PI * 57.0, max_relative = 1e-12);
        let rim = tumbler.outside()[2];
        assert_relative_eq!(rim.radius, 3.4, max_relative = 1e-12);
    }

    #[test]
    fn a_bare_foot_takes_area_from_the_outside_only() {
        let shape = [(0.0, 0.0), (0.0, 3.0), (8.0, 3.0)];
        let (dipped, footed) = (Profile::new(&shape, 0.4, 0.1), Profile::new(&shape, 0.4, 1.0));
        assert!(footed.area(ZoneKind::Outside) < dipped.area(ZoneKind::Outside));
        assert_relative_eq!(footed.area(ZoneKind::Inside), dipped.area(ZoneKind::Inside));
    }
}
