//! Turning a profile about its axis: areas and volumes as sums of frusta. Any unit of length, used throughout.

use super::profile::Point;

/// Area of the surface that the line through `points` sweeps about the axis.
pub fn swept_area(points: &[Point]) -> f64 {
    segments(points)
        .map(|(a, b)| std::f64::consts::PI * (a.radius + b.radius) * (b.height - a.height).hypot(b.radius - a.radius))
        .sum()
}

/// Volume between the axis and the line through `points`, which runs upwards.
pub fn swept_volume(points: &[Point]) -> f64 {
    segments(points)
        .map(|(a, b)| {
            let squares = a.radius.powi(2) + a.radius * b.radius + b.radius.powi(2);
            std::f64::consts::PI / 3.0 * (b.height - a.height) * squares
        })
        .sum()
}

/// The part of the line at or above `height`, cut where it crosses.
pub fn above(points: &[Point], height: f64) -> Vec<Point> {
    let mut kept = Vec::with_capacity(points.len() + 1);
    for (a, b) in segments(points) {
        if (a.height < height) != (b.height < height) {
            let share = (height - a.height) / (b.height - a.height);
            kept.push(Point { height, radius: a.radius + share * (b.radius - a.radius) });
        }
        if b.height >= height {
            kept.push(b);
        }
    }
    kept
}

fn segments(points: &[Point]) -> impl Iterator<Item = (Point, Point)> {
    points.iter().copied().zip(points.iter().copied().skip(1))
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use std::f64::consts::PI;

    fn arc(points: usize) -> Vec<Point> {
        // Lower half of a unit sphere.
        (0..=points)
            .map(|i| PI / 2.0 * i as f64 / points as f64)
            .map(|angle| Point { height: 1.0 - angle.cos(), radius: angle.sin() })
            .collect()
    }

    #[test]
    fn a_half_sphere_is_approached_with_the_square_of_the_points() {
        let error = |points: usize| (swept_area(&arc(points)) - 2.0 * PI).abs() / (2.0 * PI);
        assert!(error(8) < 0.01);
        assert_relative_eq!(error(8) / error(16), 4.0, max_relative = 0.05);
        assert_relative_eq!(swept_volume(&arc(400)), 2.0 / 3.0 * PI, max_relative = 1e-4);
    }

    #[test]
    fn a_floor_is_a_disc_and_holds_nothing() {
        let floor = [Point { height: 0.0, radius: 0.0 }, Point { height: 0.0, radius: 3.0 }];
        assert_relative_eq!(swept_area(&floor), 9.0 * PI);
        assert_relative_eq!(swept_volume(&floor), 0.0);
    }

    #[test]
    fn cutting_leaves_the_upper_part() {
        let cone = [Point { height: 0.0, radius: 0.0 }, Point { height: 4.0, radius: 2.0 }];
        let upper = above(&cone, 2.0);
        assert_eq!(upper, [Point { height: 2.0, radius: 1.0 }, Point { height: 4.0, radius: 2.0 }]);
        let whole = swept_volume(&cone);
        assert_relative_eq!(swept_volume(&upper), whole * 7.0 / 8.0, max_relative = 1e-12);
    }
}
