//! Turning a line about the axis: areas and volumes as sums of frusta. Any unit of length, used throughout.

use super::profile::Point;

/// Area of the surface that the line through `points` sweeps about the axis.
pub fn swept_area(points: &[Point]) -> f64 {
    segments(points).map(|(a, b)| std::f64::consts::PI * (a.radius + b.radius) * distance(a, b)).sum()
}

/// Volume between the axis and the line through `points`; what a line that turns back downwards encloses is taken off.
pub fn swept_volume(points: &[Point]) -> f64 {
    segments(points).map(|(a, b)| frustum(a, b)).sum()
}

/// The same, of the part below `height`.
pub fn swept_volume_below(points: &[Point], height: f64) -> f64 {
    segments(points)
        .map(|(a, b)| match (a.height <= height, b.height <= height) {
            (true, true) => frustum(a, b),
            (true, false) => frustum(a, crossing(a, b, height)),
            (false, true) => frustum(crossing(a, b, height), b),
            (false, false) => 0.0,
        })
        .sum()
}

/// Length of the line through `points`.
pub fn length(points: &[Point]) -> f64 {
    segments(points).map(|(a, b)| distance(a, b)).sum()
}

/// Area of half of a ring with a round section, `width` thick, its middle at `radius`: a lip. By Pappus, the arc times
/// the way of its middle.
pub fn round_lip(radius: f64, width: f64) -> f64 {
    std::f64::consts::PI.powi(2) * radius * width
}

/// Where a line first comes to `height` or above, walked from its beginning: the part before and the part after.
/// A line that never does is all before.
pub fn split(points: &[Point], height: f64) -> (Vec<Point>, Vec<Point>) {
    let Some(at) = points.iter().position(|point| point.height >= height) else { return (points.to_vec(), Vec::new()) };
    let Some(before) = at.checked_sub(1).map(|before| points[before]) else { return (Vec::new(), points.to_vec()) };
    let cut = crossing(before, points[at], height);
    let mut low = points[..at].to_vec();
    low.push(cut);
    let mut high = vec![cut];
    high.extend_from_slice(&points[at..]);
    (low, high)
}

/// The line without the loops in which it crosses itself.
pub fn without_loops(points: &[Point]) -> Vec<Point> {
    let mut line: Vec<Point> = Vec::with_capacity(points.len());
    let mut at = 0;
    while at < points.len() {
        line.push(points[at]);
        let ahead = (at + 2..points.len().saturating_sub(1))
            .rev()
            .find_map(|far| Some((far, meeting(points[at], points[at + 1], points[far], points[far + 1])?)));
        match ahead {
            Some((far, meeting)) => {
                line.push(meeting);
                at = far + 1;
            }
            None => at += 1,
        }
    }
    line
}

/// The first piece of a line that a later piece crosses.
pub fn first_crossing(points: &[Point]) -> Option<usize> {
    (0..points.len().saturating_sub(3)).find(|&at| {
        (at + 2..points.len() - 1)
            .any(|far| meeting(points[at], points[at + 1], points[far], points[far + 1]).is_some())
    })
}

fn frustum(a: Point, b: Point) -> f64 {
    let squares = a.radius.powi(2) + a.radius * b.radius + b.radius.powi(2);
    std::f64::consts::PI / 3.0 * (b.height - a.height) * squares
}

fn distance(a: Point, b: Point) -> f64 {
    (b.height - a.height).hypot(b.radius - a.radius)
}

fn crossing(a: Point, b: Point, height: f64) -> Point {
    let share = if a.height == b.height { 0.0 } else { (height - a.height) / (b.height - a.height) };
    Point { height, radius: a.radius + share * (b.radius - a.radius) }
}

/// Where two pieces of line cross, ends left out.
fn meeting(a: Point, b: Point, c: Point, d: Point) -> Option<Point> {
    let (ab_r, ab_h) = (b.radius - a.radius, b.height - a.height);
    let (cd_r, cd_h) = (d.radius - c.radius, d.height - c.height);
    let (ac_r, ac_h) = (c.radius - a.radius, c.height - a.height);
    let turn = ab_r * cd_h - ab_h * cd_r;
    if turn == 0.0 {
        return None;
    }
    let (on_ab, on_cd) = ((ac_r * cd_h - ac_h * cd_r) / turn, (ac_r * ab_h - ac_h * ab_r) / turn);
    let inside = |share: f64| share > 0.0 && share < 1.0;
    (inside(on_ab) && inside(on_cd))
        .then_some(Point { height: a.height + on_ab * ab_h, radius: a.radius + on_ab * ab_r })
}

fn segments(points: &[Point]) -> impl Iterator<Item = (Point, Point)> {
    points.iter().copied().zip(points.iter().copied().skip(1))
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use std::f64::consts::PI;

    fn at(height: f64, radius: f64) -> Point {
        Point { height, radius }
    }

    fn arc(points: usize) -> Vec<Point> {
        // Lower half of a unit sphere.
        (0..=points)
            .map(|i| PI / 2.0 * i as f64 / points as f64)
            .map(|angle| at(1.0 - angle.cos(), angle.sin()))
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
        let floor = [at(0.0, 0.0), at(0.0, 3.0)];
        assert_relative_eq!(swept_area(&floor), 9.0 * PI);
        assert_relative_eq!(swept_volume(&floor), 0.0);
    }

    #[test]
    fn a_line_is_split_where_it_first_comes_so_high() {
        let cone = [at(0.0, 0.0), at(4.0, 2.0)];
        let (low, high) = split(&cone, 2.0);
        assert_eq!((low[1], high[0]), (at(2.0, 1.0), at(2.0, 1.0)));
        let whole = swept_volume(&cone);
        assert_relative_eq!(swept_volume(&high), whole * 7.0 / 8.0, max_relative = 1e-12);
        assert_relative_eq!(swept_volume_below(&cone, 2.0), whole / 8.0, max_relative = 1e-12);
        assert_eq!(split(&cone, 5.0), (cone.to_vec(), Vec::new()));
        assert_eq!(split(&cone, 0.0), (Vec::new(), cone.to_vec()));
    }

    #[test]
    fn loops_are_cut_out_and_found() {
        let looped = [at(0.0, 0.0), at(4.0, 4.0), at(4.0, 2.0), at(0.0, 6.0), at(8.0, 8.0)];
        assert_eq!(first_crossing(&looped), Some(0));
        let straight = without_loops(&looped);
        assert_eq!(straight, [at(0.0, 0.0), at(3.0, 3.0), at(0.0, 6.0), at(8.0, 8.0)]);
        assert_eq!(first_crossing(&straight), None);
    }
}
