//! A smooth line through the points of a profile that never swings out beyond them.
//!
//! Radius and height are each a monotone cubic of the way walked along the points, so that overhangs and closed shapes
//! are no different from a bowl. Slopes after M. Steffen, "A simple method for monotonic interpolation in one
//! dimension", Astron. Astrophys. 239 (1990) 443-450: between two points the curve stays between them.

use super::profile::Point;

/// Pieces into which each stretch between two points is cut; the error of frusta falls with the square of it.
const PIECES: usize = 16;

/// A number along the way, through given places.
struct Cubic<'a> {
    way: &'a [f64],
    values: Vec<f64>,
    slopes: Vec<f64>,
}

impl<'a> Cubic<'a> {
    fn through(way: &'a [f64], values: Vec<f64>) -> Cubic<'a> {
        let rise = |at: usize| (values[at + 1] - values[at]) / (way[at + 1] - way[at]);
        let step = |at: usize| way[at + 1] - way[at];
        let last = values.len() - 1;
        let inner = |at: usize| {
            let (before, after) = (rise(at - 1), rise(at));
            let parabola = (before * step(at) + after * step(at - 1)) / (step(at - 1) + step(at));
            (before.signum() + after.signum()) * before.abs().min(after.abs()).min(0.5 * parabola.abs())
        };
        // At an end the parabola through three points, held back in the same way.
        let end = |near: f64, far: f64, first: f64, second: f64| {
            let parabola = near * (1.0 + first / (first + second)) - far * first / (first + second);
            if parabola * near <= 0.0 {
                0.0
            } else if parabola.abs() > 2.0 * near.abs() {
                2.0 * near
            } else {
                parabola
            }
        };
        let slopes = (0..=last)
            .map(|at| match at {
                _ if last < 2 => rise(0),
                0 => end(rise(0), rise(1), step(0), step(1)),
                _ if at == last => end(rise(last - 1), rise(last - 2), step(last - 1), step(last - 2)),
                _ => inner(at),
            })
            .collect();
        Cubic { way, values, slopes }
    }

    /// The value at a share of the stretch that begins at the point `at`. Hermite's form.
    fn at(&self, at: usize, share: f64) -> f64 {
        let length = self.way[at + 1] - self.way[at];
        let (square, cube) = (share * share, share * share * share);
        (2.0 * cube - 3.0 * square + 1.0) * self.values[at]
            + (cube - 2.0 * square + share) * length * self.slopes[at]
            + (3.0 * square - 2.0 * cube) * self.values[at + 1]
            + (cube - square) * length * self.slopes[at + 1]
    }
}

/// The smooth line through `points`, each with the thickness of the wall there; at least two points, no two neighbours
/// the same.
pub(super) fn smooth(points: &[(Point, f64)]) -> Vec<(Point, f64)> {
    let mut way = vec![0.0];
    for pair in points.windows(2) {
        let (a, b) = (pair[0].0, pair[1].0);
        way.push(way[way.len() - 1] + (b.height - a.height).hypot(b.radius - a.radius));
    }
    let cubic = |value: fn(&(Point, f64)) -> f64| Cubic::through(&way, points.iter().map(value).collect());
    let (height, radius, wall) = (cubic(|point| point.0.height), cubic(|point| point.0.radius), cubic(|point| point.1));
    let mut line = vec![points[0]];
    for at in 0..points.len() - 1 {
        for piece in 1..=PIECES {
            let share = piece as f64 / PIECES as f64;
            let point = Point { height: height.at(at, share), radius: radius.at(at, share) };
            line.push((point, wall.at(at, share)));
        }
    }
    line
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn the_curve_stays_between_its_points(steps in prop::collection::vec((0.1f64..40.0, -20.0f64..20.0), 2..14)) {
            let mut at = Point { height: 0.0, radius: 60.0 };
            let mut points = vec![(at, 4.0)];
            for (rise, run) in steps {
                at = Point { height: at.height + rise, radius: (at.radius + run).max(0.0) };
                points.push((at, 5.0));
            }
            let line = smooth(&points);
            for (stretch, pair) in points.windows(2).enumerate() {
                let (a, b) = (pair[0].0, pair[1].0);
                for (point, wall) in &line[stretch * PIECES..=(stretch + 1) * PIECES] {
                    let within = |value: f64, a: f64, b: f64| value >= a.min(b) - 1e-9 && value <= a.max(b) + 1e-9;
                    prop_assert!(within(point.radius, a.radius, b.radius) && within(point.height, a.height, b.height));
                    prop_assert!(within(*wall, 4.0, 5.0));
                }
            }
        }
    }
}
