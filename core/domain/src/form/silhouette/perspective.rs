//! From what a lens at arm's length sees to radii at heights.
//!
//! The rim that is nearer to the lens than the axis looks higher, a wide belly wider: each level circle of the pot is seen
//! as an ellipse, and the outline is what they all touch. That can be turned back place by place.

use super::{EndArc, KnownSize, PhotoError, Sureness, Trace, Traced};
use crate::form::curve;
use crate::form::profile::Point;
use crate::units::Millimetres;

/// Steps to either side through which the profile is smoothed.
const SMOOTH: usize = 3;
/// Discs to either side that are stretched with one that shows.
const SPREAD: f64 = 2.5;
/// Rounds of making the solid more like what is seen; after the first few it hardly changes.
const ROUNDS: usize = 12;
/// How far round, as a part of the radius before the axis, the circle of an end may still show the wall beside it.
const ARC: f64 = 0.2;
/// What a lens that points a degree up or down moves the end of a wall, as a part of its radius.
const LEVEL: f64 = 0.018;
/// How far out the outline runs over one step of height where it is no wall any more, and the part of the height at an end
/// in which that is looked for (its inverse).
const FLAT: f64 = 2.0;
const CORNER: usize = 10;
/// How high a foot is bevelled, as a part of the height.
const CHAMFER: f64 = 0.016;
/// How an end of the wall is made from what lies beside it.
struct End {
    /// Part of the height that is left out.
    margin: f64,
    /// Discs from which it goes on.
    from: usize,
    /// How steeply at most, radius over height.
    steepest: f64,
}
/// A foot is often rounded in or spread out, and stands sharp on the ground.
const FOOT: End = End { margin: 0.006, from: 5, steepest: 2.0 };
/// A lip is round.
const RIM: End = End { margin: 0.015, from: 9, steepest: 1.0 };
/// A solid whose outline is farther than this from what is seen, as a part of the widest, is not what is seen.
const MOST_OFF: f64 = 0.02;
/// How well somebody who aims at a piece holds a phone level, radians (5 degrees): one standard uncertainty, from memory.
const AIMED: f64 = 0.09;
/// What the depth of an arc is wrong by, as a part of the piece's height: one standard uncertainty.
const ARC_ERROR: f64 = 0.008;
/// The most that a lens looks down on a piece, radians (5 degrees): beyond, the line that is seen is not that of the wall.
const MOST_PITCH: f64 = 0.0873;
/// Least relative uncertainty of an area from a photograph: lens distortion, phone not quite level. Measured on rendered
/// photographs of known solids.
const LEAST: f64 = 0.02;
/// What an edge that is wholly unclear would add to the relative uncertainty of an area.
const UNCLEAR: f64 = 0.3;
/// The relative uncertainty up to which an area is among the best, and how much wider that of the others is than what is
/// known to add to it. Set on path-traced photographs of known pots (tests/photos/path_traced).
const BEST: f64 = 0.025;
const WIDER: f64 = 1.4;
/// How well a distance of an arm's length is known, as a fraction: for the uncertainty.
const CAMERA: f64 = 0.15;
/// How well a noted focal length is known: it is rounded to a whole mm, and a lens that is focused near sees a little less.
const NOTED: f64 = 0.05;
/// The fewest and the most points of a profile, the least steps between two, and how near their curve comes to the outline,
/// as a part of the widest radius.
const FEWEST_POINTS: usize = 8;
const MOST_POINTS: usize = 16;
const APART: usize = 3;
const NEAR: f64 = 0.004;
/// Sizes in mm that a pot has.
const SMALLEST: f64 = 10.0;
const LARGEST: f64 = 1_500.0;

/// The profile of a trace at a known size; `camera` in mm.
pub(super) fn profile(trace: &Trace, known: &KnownSize, camera: f64) -> Result<Traced, PhotoError> {
    if !(camera.is_finite() && camera > 50.0 && camera < 20_000.0) || trace.radii.len() < 20 {
        return Err(PhotoError::Size);
    }
    let lens = trace.focal.map_or(Lens::Distance(camera), Lens::Focal);
    let Solved { fine, pitch } = solve(trace, known, lens, 0.0)?;
    if pitch.angle.abs() > MOST_PITCH {
        return Err(PhotoError::FromAbove);
    }
    let height = fine.last().map_or(0.0, |point| point.height);
    let widest = fine.iter().fold(0.0f64, |widest, point| widest.max(point.radius));
    if !(height > SMALLEST && height < LARGEST && widest > SMALLEST / 2.0 && widest < LARGEST / 2.0) {
        return Err(PhotoError::Size);
    }
    let area = |line: &[Point]| crate::form::revolve::swept_area(line);
    let apart = |other: Solved| (area(&other.fine) / area(&fine) - 1.0).abs();
    // A rectangular distribution of the distance.
    let by_lens = apart(solve(trace, known, lens.at_its_limit(), 0.0)?) / 3f64.sqrt();
    let by_pitch = apart(solve(trace, known, lens, 1.0)?);
    // A mark is set to a pixel; a shadow before the foot makes the piece look higher.
    let (by_mark, by_foot) = match known {
        KnownSize::Length { from, to, .. } => (2.0 * 2f64.sqrt() / (to.0 - from.0).hypot(to.1 - from.1), 0.5),
        KnownSize::Height(_) => (0.0, 2.0),
        KnownSize::Width(_) => (0.0, 1.0),
    };
    let by_foot = by_foot * pitch.foot_excess;
    let relative_uncertainty = [by_lens, by_pitch, 2.0 * trace.unlike, by_mark, by_foot, UNCLEAR * trace.unclear]
        .into_iter()
        .fold(LEAST, f64::hypot);
    // Of 22 path-traced photographs that nothing speaks against 1 is wrong: no outline from a photograph is called sure before
    // that is under 1 in 100. Of the others 3 in 27 are.
    let is_best = trace.sure == Sureness::Fair && relative_uncertainty < BEST;
    let sure = if is_best { Sureness::Fair } else { Sureness::Doubtful };
    let relative_uncertainty = if is_best { relative_uncertainty } else { WIDER * relative_uncertainty };
    let millimetres = |points: &[Point]| {
        points.iter().map(|point| (Millimetres::new(point.height), Millimetres::new(point.radius))).collect()
    };
    Ok(Traced {
        points: millimetres(&few(&fine, widest)),
        fine: millimetres(&fine),
        pitch: pitch.angle,
        relative_uncertainty,
        sure,
    })
}

/// What is known of the lens.
#[derive(Debug, Clone, Copy)]
enum Lens {
    /// How far it is from the axis, mm.
    Distance(f64),
    /// Its focal length, pixels.
    Focal(f64),
}

impl Lens {
    /// How far it is from the axis, in pixels as long as they are there; `scale` is the length of one, mm. By a pinhole, a
    /// length at a distance is seen in so many pixels as the focal length has, over how often the length goes into the distance.
    fn away(self, scale: f64) -> f64 {
        match self {
            Lens::Distance(distance) => distance / scale,
            Lens::Focal(pixels) => pixels,
        }
    }

    /// As far away as it may be.
    fn at_its_limit(self) -> Lens {
        match self {
            Lens::Distance(distance) => Lens::Distance(distance * (1.0 + CAMERA)),
            Lens::Focal(pixels) => Lens::Focal(pixels * (1.0 + NOTED)),
        }
    }
}

/// The outline as seen, in pixels at the distance of the axis; heights are measured from the lens's level.
struct Seen {
    bottom: f64,
    top: f64,
    radii: Vec<f64>,
}

impl Seen {
    /// As it stands in the picture, whose middle the lens points at.
    fn new(trace: &Trace) -> Seen {
        let (foot, rim) = (trace.axis.foot, trace.axis.rim);
        let centre = (f64::from(trace.width) / 2.0, f64::from(trace.height) / 2.0);
        let length = (rim.0 - foot.0).hypot(rim.1 - foot.1);
        let up = ((rim.0 - foot.0) / length, (rim.1 - foot.1) / length);
        let along = |place: (f64, f64)| (place.0 - centre.0) * up.0 + (place.1 - centre.1) * up.1;
        Seen { bottom: along(foot), top: along(rim), radii: trace.radii.clone() }
    }

    /// As a lens that is not pointed `pitch` radians downwards would see it from the same place, `camera` pixels away.
    ///
    /// Source: pictures from one place differ by a homography; R. Hartley, A. Zisserman, Multiple View Geometry, 2nd ed.
    /// (2004), 8.4.
    fn levelled(&self, pitch: f64, camera: f64) -> Seen {
        let (sin, cos) = pitch.sin_cos();
        let ahead = |up: f64| camera * cos + up * sin;
        let level = |up: f64| camera * (up * cos - camera * sin) / ahead(up);
        let (bottom, top) = (level(self.bottom), level(self.top));
        let last = self.radii.len() - 1;
        let radii = (0..=last)
            .map(|at| {
                // Where this level was in the picture.
                let to = bottom + (top - bottom) * at as f64 / last as f64;
                let up = camera * (to * cos + camera * sin) / (camera * cos - to * sin);
                let step = ((up - self.bottom) / self.height() * last as f64).clamp(0.0, last as f64);
                let before = (step as usize).min(last - 1);
                let radius =
                    self.radii[before] + (step - before as f64) * (self.radii[before + 1] - self.radii[before]);
                radius * camera / ahead(up)
            })
            .collect();
        Seen { bottom, top, radii }
    }

    fn height(&self) -> f64 {
        self.top - self.bottom
    }

    /// Where the outline turns to foot or rim: the steps between which it is no flatter than a wall.
    fn corners(&self, radii: &[f64]) -> (usize, usize) {
        let last = radii.len() - 1;
        let step = self.height() / last as f64;
        let is_flat = |outer: usize, inner: usize| radii[inner] - radii[outer] > FLAT * step;
        let reach = last / CORNER;
        let low = (0..reach).rev().find(|&at| is_flat(at, at + 1)).map_or(0, |at| at + 1);
        let high = (0..reach).rev().find(|&at| is_flat(last - at, last - at - 1)).map_or(last, |at| last - at - 1);
        (low, high)
    }

    /// How much farther down than the foot's circle would be seen the outline goes on below its corners: what is left of a
    /// shadow. `shown` are the half widths that are expected.
    fn below_foot(&self, shown: &[Shown], bottom: f64) -> f64 {
        let expected: Vec<f64> = shown.iter().map(|shown| shown.half).collect();
        let depth = |radii: &[f64], bottom: f64| self.level(self.corners(radii).0) - bottom;
        let excess = depth(&self.radii, self.bottom) - depth(&expected, bottom);
        let radius = self.radii[self.radii.len() / 24];
        if excess > LEVEL * radius + CHAMFER * self.height() { excess } else { 0.0 }
    }

    fn level(&self, at: usize) -> f64 {
        self.bottom + self.height() * at as f64 / (self.radii.len() - 1) as f64
    }
}

/// How many radians downwards a lens points, and one standard uncertainty of it.
#[derive(Debug, Clone, Copy)]
struct Pitch {
    angle: f64,
    uncertainty: f64,
    /// How much deeper the foot's arc is than it should be from there, as a part of the height: a shadow before it.
    foot_excess: f64,
}

impl Pitch {
    /// From the arcs of foot and rim, and from the middle of the picture, at which somebody who holds a phone level aims;
    /// `camera` is the distance from lens to axis in pixels of the axis.
    ///
    /// A circle of radius r, whose plane lies z from the lens's level and whose centre is d away, is seen as an ellipse with the
    /// half axes `f r / sqrt(d² - r²)` and `f z r / (d² - r²)`; its near end lies at `f z / (d - r)`, its far end at
    /// `f z / (d + r)`. That follows from the pinhole. Where the lens's own level lies in the picture says how it was pointed.
    fn of(trace: &Trace, camera: f64) -> Pitch {
        let seen = Seen::new(trace);
        let radius = |arc: EndArc| arc.half * camera / camera.hypot(arc.half);
        let away = |arc: EndArc| arc.sagitta / arc.half * (camera * camera - radius(arc).powi(2)).sqrt();
        let error = |arc: EndArc| arc_error(arc, trace) * camera / arc.half;
        let near = |arc: EndArc| away(arc) * camera / (camera - radius(arc));
        let far = |arc: EndArc| away(arc) * camera / (camera + radius(arc));
        let aim = (0.0, AIMED * camera);
        let foot = trace.foot_arc.map(|arc| (seen.bottom + near(arc), error(arc)));
        // A rim looks the same from above and from below.
        let rims = trace.rim_arc.map_or(vec![None], |arc| {
            vec![Some((seen.top - near(arc), error(arc))), Some((seen.top + far(arc), error(arc)))]
        });
        let agreed =
            rims.into_iter().map(|rim| Agreed::of(&[Some(aim), foot, rim].into_iter().flatten().collect::<Vec<_>>()));
        // No lens lies below the table.
        let above = agreed.filter(|agreed| agreed.value > seen.bottom);
        let Agreed { value: level, uncertainty, .. } = above
            .min_by(|a, b| a.cost.total_cmp(&b.cost))
            .unwrap_or(Agreed { value: 0.0, uncertainty: aim.1, cost: 0.0 });
        let foot_excess = trace.foot_arc.map_or(0.0, |arc| {
            let expected = (level - seen.bottom) * (camera - radius(arc)) / camera * arc.half
                / (camera * camera - radius(arc).powi(2)).sqrt();
            (arc.sagitta - expected).abs() / seen.height()
        });
        Pitch { angle: (level / camera).atan(), uncertainty: uncertainty / camera, foot_excess }
    }
}

/// One standard uncertainty of an arc's depth, pixels: how far the edge strays, and what a bevelled foot, a round lip or a
/// shadow leaves.
fn arc_error(arc: EndArc, trace: &Trace) -> f64 {
    let height = (trace.axis.rim.0 - trace.axis.foot.0).hypot(trace.axis.rim.1 - trace.axis.foot.1);
    (2.0 * arc.stray).hypot(ARC_ERROR * height)
}

/// The value that most of some agree on, and one standard uncertainty of it.
#[derive(Default)]
struct Agreed {
    value: f64,
    uncertainty: f64,
    cost: f64,
}

impl Agreed {
    /// Of values with their uncertainties: what lies far from the others hardly counts, for a shadow or a bevel makes an arc
    /// wrong by any amount.
    ///
    /// Source: the least of the sum of ln(1 + (off / uncertainty)²), the Cauchy M-estimate; P. Huber, E. Ronchetti, Robust
    /// Statistics, 2nd ed. (2009), 4.8.
    fn of(known: &[(f64, f64)]) -> Agreed {
        let off = |at: f64, (value, error): (f64, f64)| ((value - at) / error).powi(2);
        let weight = |at: f64, one: (f64, f64)| 1.0 / (one.1 * one.1 * (1.0 + off(at, one)));
        let weights = |at: f64| known.iter().map(|one| weight(at, *one)).sum::<f64>();
        let better = |at: f64| known.iter().map(|one| weight(at, *one) * one.0).sum::<f64>() / weights(at);
        let settled = |one: &(f64, f64)| {
            let value = (0..20).fold(one.0, |at, _| better(at));
            let cost = known.iter().map(|one| off(value, *one).ln_1p()).sum();
            Agreed { value, uncertainty: weights(value).powf(-0.5), cost }
        };
        let all = known.iter().map(settled);
        all.min_by(|a, b| a.cost.total_cmp(&b.cost)).unwrap_or_default()
    }
}

/// A solid of revolution as a stack of discs at equal steps of height.
struct Solid {
    bottom: f64,
    top: f64,
    radii: Vec<f64>,
}

/// How a wall goes on beyond where it is known.
struct Onwards {
    radius: f64,
    slope: f64,
}

impl Onwards {
    fn at(&self, away: f64) -> f64 {
        (self.radius + self.slope * away).max(self.radius / 2.0)
    }
}

/// What of a solid is seen at one level: half the width, and which of its discs shows there.
struct Shown {
    half: f64,
    /// Counted in discs from the bottom.
    disc: f64,
}

impl Solid {
    /// As it would be if the lens were infinitely far away.
    fn as_seen(seen: &Seen) -> Solid {
        let last = seen.radii.len() - 1;
        let end = last / 24;
        let radii = (0..=last).map(|at| seen.radii[at.clamp(end, last - end)]).collect();
        Solid { bottom: seen.bottom, top: seen.top, radii }
    }

    fn last(&self) -> usize {
        self.radii.len() - 1
    }

    fn step(&self) -> f64 {
        (self.top - self.bottom) / self.last() as f64
    }

    fn height(&self, disc: usize) -> f64 {
        self.bottom + self.step() * disc as f64
    }

    /// Radius at a number of discs from the bottom.
    fn radius(&self, disc: f64) -> f64 {
        let before = (disc.max(0.0) as usize).min(self.last() - 1);
        let share = disc - before as f64;
        self.radii[before] + share * (self.radii[before + 1] - self.radii[before])
    }

    /// Half of what is seen at `level` from the distance `camera`: there a ray meets the disc at height h at
    /// `camera (1 - h / level)` before the axis, and sees half its chord there, larger by `level / h`.
    fn shown(&self, level: f64, camera: f64) -> Shown {
        const SAMPLES: usize = 24;
        let level = if level.abs() < 0.1 { 0.1f64.copysign(level) } else { level };
        let widest = self.radii.iter().fold(0.0f64, |widest, radius| widest.max(*radius));
        let disc_before = |before: f64| (level * (1.0 - before / camera) - self.bottom) / self.step();
        let last = self.last() as f64;
        let half = |before: f64| {
            let disc = disc_before(before);
            // A hair's breadth for what is rounded at the ends.
            if !(-1e-9..=last + 1e-9).contains(&disc) {
                return f64::MIN;
            }
            let radius = self.radius(disc.clamp(0.0, last));
            let square = radius * radius - before * before;
            if square <= 0.0 { square } else { square.sqrt() / (1.0 - before / camera) }
        };
        let before_disc = |height: f64| camera * (1.0 - height / level);
        let even = (0..=SAMPLES).map(|at| widest * (2.0 * at as f64 / SAMPLES as f64 - 1.0));
        let ends = [before_disc(self.bottom), before_disc(self.top)];
        let best = even.chain(ends).map(|before| (half(before), before)).max_by(|a, b| a.0.total_cmp(&b.0));
        let (mut most, mut before) = best.unwrap_or((0.0, 0.0));
        let mut reach = 2.0 * widest / SAMPLES as f64;
        for _ in 0..7 {
            for side in [before - reach, before - reach / 2.0, before + reach / 2.0, before + reach] {
                let here = half(side);
                if here > most {
                    (most, before) = (here, side);
                }
            }
            reach /= 2.5;
        }
        Shown { half: most.max(0.0), disc: disc_before(before).clamp(0.0, last) }
    }

    /// The lowest and the highest level that is seen.
    fn ends(&self, camera: f64) -> (f64, f64) {
        let discs = || self.radii.iter().enumerate().map(|(disc, radius)| (self.height(disc), *radius));
        let up = |(height, radius): (f64, f64)| height * camera / (camera - radius * height.signum());
        let down = |(height, radius): (f64, f64)| height * camera / (camera + radius * height.signum());
        (discs().map(down).fold(f64::MAX, f64::min), discs().map(up).fold(f64::MIN, f64::max))
    }

    /// Made more like what is seen: each disc is stretched as the outline is that shows it.
    fn refine(&mut self, seen: &Seen, camera: f64) {
        let (bottom, top) = self.ends(camera);
        let shown: Vec<Shown> = (0..seen.radii.len()).map(|at| self.shown(seen.level(at), camera)).collect();
        self.bottom += seen.bottom + seen.below_foot(&shown, bottom) - bottom;
        self.top += seen.top - top;
        let last = self.last();
        let mut sums = vec![(0.0, 0.0); last + 1];
        let (low, high) = self.between_arcs(seen, camera);
        for (at, shown) in shown.iter().enumerate() {
            let level = seen.level(at);
            if shown.half <= 0.0 || level < low || level > high {
                continue;
            }
            let ratio = seen.radii[at] / shown.half;
            let (from, to) = ((shown.disc - SPREAD).ceil().max(0.0) as usize, (shown.disc + SPREAD) as usize);
            for (disc, sum) in sums.iter_mut().enumerate().take(to + 1).skip(from) {
                let weight = 1.0 - (disc as f64 - shown.disc).abs() / (SPREAD + 1e-6);
                sum.0 += weight * ratio;
                sum.1 += weight;
            }
        }
        let known: Vec<(usize, f64)> =
            sums.iter().enumerate().filter(|(_, sum)| sum.1 > 0.0).map(|(disc, sum)| (disc, sum.0 / sum.1)).collect();
        let (Some(&(first_known, _)), Some(&(last_known, _))) = (known.first(), known.last()) else { return };
        for disc in first_known..=last_known {
            // Discs that never show go with their neighbours.
            let after = known.partition_point(|(known, _)| *known < disc);
            let (after, to) = known[after];
            let (before, from) =
                if after == disc { (disc, to) } else { known[known.partition_point(|(known, _)| *known < disc) - 1] };
            let share = if after == before { 0.0 } else { (disc - before) as f64 / (after - before) as f64 };
            self.radii[disc] *= from + (to - from) * share;
        }
        // The last discs go on as those before them do.
        let (first, last_known) = (self.line(first_known, 1.0, &FOOT), self.line(last_known, -1.0, &RIM));
        for disc in 0..first_known {
            self.radii[disc] = first.at(self.step() * (first_known - disc) as f64);
        }
        let from = known[known.len() - 1].0;
        for disc in from + 1..=last {
            self.radii[disc] = last_known.at(self.step() * (disc - from) as f64);
        }
    }

    /// The straight line in which the wall comes to the disc `near` from the `inwards` ones.
    fn line(&self, near: usize, inwards: f64, end: &End) -> Onwards {
        let disc = |at: usize| (near as f64 + inwards * at as f64).clamp(0.0, self.last() as f64) as usize;
        let count = end.from as f64;
        let middle = (count - 1.0) / 2.0;
        let mean = (0..end.from).map(|at| self.radii[disc(at)]).sum::<f64>() / count;
        let rise: f64 = (0..end.from).map(|at| (middle - at as f64) * self.radii[disc(at)]).sum();
        let squares: f64 = (0..end.from).map(|at| (at as f64 - middle).powi(2)).sum();
        let slope = (rise / squares / self.step()).clamp(-end.steepest, end.steepest);
        Onwards { radius: mean + slope * middle * self.step(), slope }
    }

    /// The levels between which the wall is seen; beyond them the circles of foot and rim curve away, and their width
    /// says more of the height than of the radius.
    fn between_arcs(&self, seen: &Seen, camera: f64) -> (f64, f64) {
        let inner = self.last() / 24;
        let edge = |height: f64, radius: f64, inwards: f64, end: &End| {
            let near = radius * (radius / camera + ARC).min(1.0);
            // Where the arc's near or far side is the one that ends the outline.
            let before = if (height > 0.0) == (inwards < 0.0) { near } else { -near };
            let arc = height * camera / (camera - before);
            let inset = height + inwards * (end.margin * (self.top - self.bottom) + LEVEL * radius);
            if inwards < 0.0 { arc.min(inset) } else { arc.max(inset) }
        };
        let (low, high) = seen.corners(&seen.radii);
        let (low, high) = (seen.level(low), seen.level(high));
        let foot = edge(self.bottom, self.radii[inner], 1.0, &FOOT);
        let rim = edge(self.top, self.radii[self.last() - inner], -1.0, &RIM);
        (foot.max(low), rim.min(high))
    }

    /// Its greatest radius, as the profile is given out.
    fn widest(&self) -> f64 {
        (0..=self.last()).map(|disc| smooth(&self.radii, disc)).fold(0.0, f64::max)
    }

    /// How far the outline of the solid is from what is seen, as a part of the widest: root mean square.
    fn off(&self, seen: &Seen, camera: f64) -> f64 {
        let end = seen.radii.len() / 20;
        let inner = end..seen.radii.len() - end;
        let widest = seen.radii.iter().fold(0.0f64, |widest, radius| widest.max(*radius));
        let count = inner.len() as f64;
        let squares = inner.map(|at| (self.shown(seen.level(at), camera).half - seen.radii[at]).powi(2));
        (squares.sum::<f64>() / count).sqrt() / widest
    }
}

/// The profile in mm, from the ground up, at equal steps of height; `lower` is added to how far the lens points downwards,
/// in its uncertainties.
fn solve(trace: &Trace, known: &KnownSize, lens: Lens, lower: f64) -> Result<Solved, PhotoError> {
    let in_picture = Seen::new(trace);
    let widest_seen = trace.radii.iter().fold(0.0f64, |widest, radius| widest.max(*radius));
    // The scale decides how near the lens is in pixels, and that a little of the shape: a few rounds settle both.
    let mut scale = match known {
        KnownSize::Height(height) => height.value() / in_picture.height(),
        KnownSize::Width(width) => width.value() / 2.0 / widest_seen,
        KnownSize::Length { length, from, to } => length.value() / (to.0 - from.0).hypot(to.1 - from.1),
    };
    let mut pitch = Pitch::of(trace, lens.away(scale));
    let mut seen = in_picture.levelled(pitch.angle, lens.away(scale));
    let mut solid = Solid::as_seen(&seen);
    for round in 0..ROUNDS {
        if !(scale.is_finite() && scale > 0.0 && widest_seen < lens.away(scale) * 0.6) {
            return Err(PhotoError::Size);
        }
        pitch = Pitch::of(trace, lens.away(scale));
        let before = std::mem::replace(
            &mut seen,
            in_picture.levelled(pitch.angle + lower * pitch.uncertainty, lens.away(scale)),
        );
        solid.bottom += seen.bottom - before.bottom;
        solid.top += seen.bottom - before.bottom;
        solid.refine(&seen, lens.away(scale));
        if round > 0 {
            scale = match known {
                KnownSize::Height(height) => height.value() / (solid.top - solid.bottom),
                KnownSize::Width(width) => width.value() / 2.0 / solid.widest(),
                KnownSize::Length { .. } => scale,
            };
        }
    }
    if solid.step().is_nan() || solid.step() <= 0.0 || solid.off(&seen, lens.away(scale)) > MOST_OFF {
        return Err(PhotoError::Lopsided);
    }
    let radii = (0..=solid.last()).map(|disc| smooth(&solid.radii, disc));
    let step = solid.step() * scale;
    let fine =
        radii.enumerate().map(|(disc, radius)| Point { height: step * disc as f64, radius: radius * scale }).collect();
    Ok(Solved { fine, pitch })
}

/// A profile, and how the lens was held.
struct Solved {
    fine: Vec<Point>,
    pitch: Pitch,
}

/// The value at a place by a parabola through its neighbours, against noise.
fn smooth(values: &[f64], at: usize) -> f64 {
    let last = values.len() - 1;
    let middle = at.clamp(SMOOTH, last - SMOOTH);
    let (mut zeroth, mut first, mut second, mut squares, mut fourths) = (0.0, 0.0, 0.0, 0.0, 0.0);
    let count = (2 * SMOOTH + 1) as f64;
    for (value, offset) in values[middle - SMOOTH..=middle + SMOOTH].iter().zip(0..) {
        let x = f64::from(offset) - SMOOTH as f64;
        zeroth += value;
        first += x * value;
        second += x * x * value;
        squares += x * x;
        fourths += x.powi(4);
    }
    let bend = (count * second - squares * zeroth) / (count * fourths - squares * squares);
    let x = at as f64 - middle as f64;
    (zeroth - bend * squares) / count + first / squares * x + bend * x * x
}

/// A few points whose smooth curve comes near the whole outline: where it is farthest off, another is taken.
fn few(fine: &[Point], widest: f64) -> Vec<Point> {
    let last = fine.len() - 1;
    let mut places: Vec<usize> = (0..FEWEST_POINTS).map(|at| last * at / (FEWEST_POINTS - 1)).collect();
    while places.len() < MOST_POINTS {
        let chosen: Vec<(Point, f64)> = places.iter().map(|place| (fine[*place], 0.0)).collect();
        let smooth: Vec<Point> = curve::smooth(&chosen).into_iter().map(|(point, _)| point).collect();
        let off = |at: usize| (radius_at(&smooth, fine[at].height) - fine[at].radius).abs();
        let free = (0..fine.len()).filter(|at| places.iter().all(|place| place.abs_diff(*at) >= APART));
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::revolve::{swept_area, swept_volume};
    use approx::assert_relative_eq;

    const CAMERA: f64 = 2_000.0;

    /// A belly with a foot and a neck, 400 pixels high, the lens level with a place on it.
    fn vase(level: f64) -> Solid {
        let last = 160;
        let radius = |share: f64| 70.0 + 60.0 * (share * std::f64::consts::PI).sin() - 25.0 * share;
        let radii = (0..=last).map(|at| radius(at as f64 / last as f64)).collect();
        Solid { bottom: -level * 400.0, top: (1.0 - level) * 400.0, radii }
    }

    fn line(solid: &Solid) -> Vec<Point> {
        (0..=solid.last()).map(|at| Point { height: solid.step() * at as f64, radius: solid.radii[at] }).collect()
    }

    #[test]
    fn a_cylinder_at_the_lens_s_level_looks_wider_by_its_nearness() {
        let cylinder = Solid { bottom: -100.0, top: 100.0, radii: vec![80.0; 161] };
        // Two tangents from the lens to a circle.
        let half = CAMERA * 80.0 / (CAMERA * CAMERA - 80.0f64.powi(2)).sqrt();
        assert_relative_eq!(cylinder.shown(0.0, CAMERA).half, half, max_relative = 1e-4);
        let (bottom, top) = cylinder.ends(CAMERA);
        assert_relative_eq!(top, 100.0 * CAMERA / (CAMERA - 80.0), max_relative = 1e-12);
        assert_relative_eq!(bottom, -top, max_relative = 1e-12);
    }

    #[test]
    fn what_a_known_solid_shows_leads_back_to_it() {
        for level in [0.1, 0.5, 0.9] {
            let known = vase(level);
            let (bottom, top) = known.ends(CAMERA);
            let mut seen = Seen { bottom, top, radii: vec![0.0; 161] };
            seen.radii = (0..161).map(|at| known.shown(seen.level(at), CAMERA).half).collect();
            let mut found = Solid::as_seen(&seen);
            for _ in 0..ROUNDS {
                found.refine(&seen, CAMERA);
            }
            assert_relative_eq!(swept_area(&line(&found)), swept_area(&line(&known)), max_relative = 0.005);
            assert_relative_eq!(swept_volume(&line(&found)), swept_volume(&line(&known)), max_relative = 0.005);
        }
    }

    #[test]
    fn what_a_lens_that_points_down_sees_is_put_level() {
        let pitch = 0.08f64;
        let (sin, cos) = pitch.sin_cos();
        // Where the pinhole shows a place so high above the lens, and how wide a half width of 80 is there.
        let shown = |up: f64| {
            let ahead = CAMERA * cos - up * sin;
            (CAMERA * (up * cos + CAMERA * sin) / ahead, 80.0 * CAMERA / ahead)
        };
        let (bottom, top) = (shown(-150.0).0, shown(250.0).0);
        let up_at = |shown: f64| CAMERA * (shown * cos - CAMERA * sin) / (CAMERA * cos + shown * sin);
        let radii = (0..=160).map(|at| shown(up_at(bottom + (top - bottom) * f64::from(at) / 160.0)).1).collect();
        let level = Seen { bottom, top, radii }.levelled(pitch, CAMERA);
        assert_relative_eq!(level.bottom, -150.0, epsilon = 1e-6);
        assert_relative_eq!(level.top, 250.0, epsilon = 1e-6);
        for radius in level.radii {
            assert_relative_eq!(radius, 80.0, max_relative = 1e-4);
        }
    }

    #[test]
    fn a_few_points_carry_the_whole_outline() {
        let whole = line(&vase(0.5));
        let points = few(&whole, 120.0);
        assert!((FEWEST_POINTS..=MOST_POINTS).contains(&points.len()), "{}", points.len());
        let chosen: Vec<(Point, f64)> = points.into_iter().map(|point| (point, 0.0)).collect();
        let smooth: Vec<Point> = curve::smooth(&chosen).into_iter().map(|(point, _)| point).collect();
        assert_relative_eq!(swept_area(&smooth), swept_area(&whole), max_relative = 0.003);
        assert_relative_eq!(swept_volume(&smooth), swept_volume(&whole), max_relative = 0.003);
    }
}
