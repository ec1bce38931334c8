//! From what a lens at arm's length sees to radii at heights.
//!
//! The rim that is nearer to the lens than the axis looks higher, a wide belly wider: each level circle of the pot is seen
//! as an ellipse, and the outline is what they all touch. That can be turned back place by place.

use super::{KnownSize, PhotoError, Trace, Traced};
use crate::form::curve;
use crate::form::profile::Point;
use crate::units::Millimetres;

/// Steps to either side through which the outline is smoothed.
const SMOOTH: usize = 4;
/// Least relative uncertainty of an area from a photograph: lens distortion, phone not quite level. Measured on rendered
/// photographs of known solids.
const LEAST: f64 = 0.012;
/// How well a distance of an arm's length is known, as a fraction: for the uncertainty.
const CAMERA: f64 = 0.15;
/// The most points of a profile, and how near their curve comes to the outline, as a part of the widest radius.
const MOST_POINTS: usize = 16;
const NEAR: f64 = 0.004;
/// Sizes in mm that a pot has.
const SMALLEST: f64 = 10.0;
const LARGEST: f64 = 1_500.0;

/// The profile of a trace at a known size; `camera` in mm.
pub(super) fn profile(trace: &Trace, known: &KnownSize, camera: f64) -> Result<Traced, PhotoError> {
    if !(camera.is_finite() && camera > 50.0 && camera < 20_000.0) || trace.radii.len() < 20 {
        return Err(PhotoError::Size);
    }
    let fine = solve(trace, known, camera)?;
    let height = fine.last().map_or(0.0, |point| point.height);
    let widest = fine.iter().fold(0.0f64, |widest, point| widest.max(point.radius));
    if !(height > SMALLEST && height < LARGEST && widest > SMALLEST / 2.0 && widest < LARGEST / 2.0) {
        return Err(PhotoError::Size);
    }
    let area = |line: &[Point]| crate::form::revolve::swept_area(line);
    let other = solve(trace, known, camera * (1.0 + CAMERA))?;
    // A rectangular distribution of the distance.
    let by_distance = (area(&other) / area(&fine) - 1.0).abs() / 3f64.sqrt();
    let millimetres = |points: &[Point]| {
        points.iter().map(|point| (Millimetres::new(point.height), Millimetres::new(point.radius))).collect()
    };
    Ok(Traced {
        points: millimetres(&few(&fine, widest)),
        fine: millimetres(&fine),
        relative_uncertainty: LEAST.hypot(by_distance).hypot(2.0 * trace.unlike),
    })
}

/// The outline as seen, in pixels at the distance of the axis; heights are measured from the lens's level.
struct Seen {
    bottom: f64,
    top: f64,
    radii: Vec<f64>,
}

impl Seen {
    fn new(trace: &Trace) -> Seen {
        let (foot, rim) = (trace.axis.foot, trace.axis.rim);
        let centre = (f64::from(trace.width) / 2.0, f64::from(trace.height) / 2.0);
        let length = (rim.0 - foot.0).hypot(rim.1 - foot.1);
        let up = ((rim.0 - foot.0) / length, (rim.1 - foot.1) / length);
        let along = |place: (f64, f64)| (place.0 - centre.0) * up.0 + (place.1 - centre.1) * up.1;
        Seen { bottom: along(foot), top: along(rim), radii: trace.radii.clone() }
    }

    fn step(&self) -> f64 {
        (self.top - self.bottom) / (self.radii.len() - 1) as f64
    }

    fn height(&self, at: usize) -> f64 {
        self.bottom + self.step() * at as f64
    }

    /// Half width and its slope at a step: a parabola laid through the steps about it, against noise.
    fn smooth(&self, at: usize) -> (f64, f64) {
        let last = self.radii.len() - 1;
        let reach = SMOOTH.min(at).min(last - at).max(1);
        let middle = at.clamp(reach, last - reach);
        let (mut zeroth, mut first, mut second) = (0.0, 0.0, 0.0);
        let (mut squares, mut fourths) = (0.0, 0.0);
        let count = (2 * reach + 1) as f64;
        for offset in 0..=2 * reach {
            let x = offset as f64 - reach as f64;
            let value = self.radii[middle + offset - reach];
            zeroth += value;
            first += x * value;
            second += x * x * value;
            squares += x * x;
            fourths += x.powi(4);
        }
        let bend = (count * second - squares * zeroth) / (count * fourths - squares * squares);
        let level = (zeroth - bend * squares) / count;
        let slope = first / squares;
        let x = at as f64 - middle as f64;
        (level + slope * x + bend * x * x, (slope + 2.0 * bend * x) / self.step())
    }

    /// How many steps at an end belong to the ellipse in which its circle is seen.
    fn end_steps(&self, is_top: bool, camera: f64) -> usize {
        let last = self.radii.len() - 1;
        let inner = last / 12;
        let (end, radius) =
            if is_top { (self.top, self.radii[last - inner]) } else { (self.bottom, self.radii[inner]) };
        let level = end_height(end, radius, camera, is_top);
        let side = level * camera / (camera - radius * radius / camera);
        let steps = ((end - side).abs() / self.step()).ceil() as usize + 2;
        steps.min(last / 4)
    }
}

/// The profile in mm, from the ground up, at equal steps of height.
fn solve(trace: &Trace, known: &KnownSize, camera: f64) -> Result<Vec<Point>, PhotoError> {
    let seen = Seen::new(trace);
    let widest_seen = trace.radii.iter().fold(0.0f64, |widest, radius| widest.max(*radius));
    // The scale decides how near the lens is in pixels, and that a little of the shape: a few rounds settle both.
    let mut scale = match known {
        KnownSize::Height(height) => height.value() / (seen.top - seen.bottom),
        KnownSize::Width(width) => width.value() / 2.0 / widest_seen,
        KnownSize::Length { length, from, to } => length.value() / (to.0 - from.0).hypot(to.1 - from.1),
    };
    let mut line = Vec::new();
    for _ in 0..5 {
        if !(scale.is_finite() && scale > 0.0 && widest_seen * scale < camera * 0.6) {
            return Err(PhotoError::Size);
        }
        line = turned(&seen, camera / scale)?;
        scale = match known {
            KnownSize::Height(height) => height.value() / line.last().map_or(0.0, |point: &Point| point.height),
            KnownSize::Width(width) => {
                width.value() / 2.0 / line.iter().fold(0.0f64, |widest, point| widest.max(point.radius))
            }
            KnownSize::Length { .. } => scale,
        };
    }
    Ok(line.iter().map(|point| Point { height: point.height * scale, radius: point.radius * scale }).collect())
}

/// The profile that is seen so from the distance `camera`, everything in pixels.
///
/// A plane through the lens that touches the outline touches the pot along the same ray. Since the pot is round, the plane
/// stands square to the radius at that place: with the outline at (R, v) and its slope R', the plane's normal is
/// (D, −D R', R − v R'), and place and plane together give radius and height.
fn turned(seen: &Seen, camera: f64) -> Result<Vec<Point>, PhotoError> {
    let last = seen.radii.len() - 1;
    let (low, high) = (seen.end_steps(false, camera), last - seen.end_steps(true, camera));
    let mut line: Vec<Point> = Vec::with_capacity(seen.radii.len());
    for at in low..=high {
        let (radius, slope) = seen.smooth(at);
        if radius <= 0.0 {
            return Err(PhotoError::Size);
        }
        let height = seen.height(at);
        let away = radius - height * slope;
        let across = camera.hypot(away);
        let true_radius = camera * across / (away + camera * camera / radius);
        let true_height = height * true_radius * camera / (across * radius);
        // A touch of noise may turn two places about.
        if line.last().is_none_or(|before| true_height > before.height) {
            line.push(Point { height: true_height, radius: true_radius });
        }
    }
    if line.len() < 10 {
        return Err(PhotoError::Size);
    }
    let (foot, rim) = (onwards(&line, seen, camera, false), onwards(&line, seen, camera, true));
    line.retain(|point| point.height > foot.height && point.height < rim.height);
    line.insert(0, foot);
    line.push(rim);
    let span = rim.height - foot.height;
    let level = |at: usize| span * at as f64 / last as f64;
    Ok((0..=last).map(|at| Point { height: level(at), radius: radius_at(&line, foot.height + level(at)) }).collect())
}

/// The end of a profile: its height by where its circle's edge is seen, its radius going on from the places beside it.
fn onwards(line: &[Point], seen: &Seen, camera: f64, is_top: bool) -> Point {
    let (near, far) =
        if is_top { (line[line.len() - 1], line[line.len() - 5]) } else { (line[0], line[4]) };
    let slope = (near.radius - far.radius) / (near.height - far.height);
    let end = if is_top { seen.top } else { seen.bottom };
    let mut radius = near.radius;
    let mut height = near.height;
    for _ in 0..3 {
        height = end_height(end, radius, camera, is_top);
        // No pot goes on outwards or inwards by more than it is high there.
        radius = near.radius + slope.clamp(-1.5, 1.5) * (height - near.height);
    }
    Point { height, radius: radius.max(near.radius * 0.5) }
}

/// True height of an end of the pot that is seen at `height`: the near edge of its circle is seen where it is beyond the
/// lens's level on its own side, the far edge otherwise.
fn end_height(height: f64, radius: f64, camera: f64, is_top: bool) -> f64 {
    let near = (height > 0.0) == is_top;
    height * if near { camera - radius } else { camera + radius } / camera
}

/// A few points whose smooth curve comes near the whole outline: where it is farthest off, another is taken.
fn few(fine: &[Point], widest: f64) -> Vec<Point> {
    let mut places = vec![0, fine.len() / 2, fine.len() - 1];
    while places.len() < MOST_POINTS {
        let chosen: Vec<(Point, f64)> = places.iter().map(|place| (fine[*place], 0.0)).collect();
        let smooth: Vec<Point> = curve::smooth(&chosen).into_iter().map(|(point, _)| point).collect();
        let off = |at: usize| (radius_at(&smooth, fine[at].height) - fine[at].radius).abs();
        let free = (0..fine.len()).filter(|at| !places.contains(at));
        let Some(worst) = free.max_by(|a, b| off(*a).total_cmp(&off(*b))) else { break };
        if off(worst) < NEAR * widest {
            break;
        }
        places.push(worst);
        places.sort_unstable();
    }
    places.into_iter().map(|place| fine[place]).collect()
}

fn radius_at(line: &[Point], height: f64) -> f64 {
    let after = line.partition_point(|point| point.height < height).clamp(1, line.len() - 1);
    let (before, after) = (line[after - 1], line[after]);
    let rise = after.height - before.height;
    let share = if rise > 0.0 { ((height - before.height) / rise).clamp(0.0, 1.0) } else { 0.0 };
    before.radius + share * (after.radius - before.radius)
}
