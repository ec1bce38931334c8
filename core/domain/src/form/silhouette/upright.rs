//! The pot's edge set upright: the axis about which its two sides agree, and the handle that only one of them has.

use super::arcs;
use super::outline::{CLEAR, Place, turn};
use super::{EndArc, PhotoError, STEPS, Side};

/// How far aslant a piece is looked for, radians, and in what steps; the true angle is then found between them.
const SEARCH: f64 = 0.33;
const SEARCH_STEP: f64 = 0.005;
/// How near the middles of two sides lie to the axis, as a part of the width: while searching, and once it is found.
const NEAR: f64 = 0.006;
const NEARER: f64 = 0.003;
/// Two sides that differ by this part of the width over a stretch differ by a handle; its roots go on until they differ
/// by the smaller part.
const HANDLE: f64 = 0.02;
const ROOT: f64 = 0.006;
/// A handle is at least this part of the height.
const LEAST_HANDLE: f64 = 0.05;
/// It stands out at least by this part of the width.
const OUT: f64 = 0.05;
/// Part of the height above the ground in which what one side has more than the other is a remainder of the shadow.
const SHADOW: f64 = 0.15;
/// Room about a handle that is left to the other side too, as a part of the height: where it joins the wall softly.
const ROOM: f64 = 0.015;
/// Two sides of one pot differ by at most this part of the width, the handle left out.
const MOST_UNLIKE: f64 = 0.02;
/// Part of the height at each end where foot and rim are seen as ellipses, which say little about the axis.
const END: f64 = 0.06;
/// A piece flatter than this, height over width, is set upright by the line of its rim.
const FLAT: f64 = 0.5;
/// Part of the half width that is taken for the arc of an end: about its middle, and for the line of a whole rim.
const APEX: f64 = 0.5;
const RIM: f64 = 0.85;
/// A rim with this slope speaks against the angle as much as half of the middles.
const ASLANT: f64 = 0.04;
/// Where two sides differ, a radius is looked for again in steps of so many pixels, at most so many of them, so far beyond both.
const FINE: f64 = 0.5;
const MOST_CANDIDATES: f64 = 160.0;
const BEYOND: f64 = 2.0;
/// What a wall that leans outwards by 45 degrees costs there.
const STIFF: f64 = 0.1;
/// Each step is the mean of this many rows.
const ROWS: usize = 5;

/// The edge turned so that the axis stands upright.
///
/// The middles of left and right lie on the axis wherever there is no handle. So the angle is sought at which most of them
/// lie on one upright line, and then the line through those is made more exact.
fn stand_up(edge: &[Place], centre: Place) -> Result<Upright, PhotoError> {
    let count = (SEARCH / SEARCH_STEP) as i32;
    let angles = (-count..=count).map(|step| f64::from(step) * SEARCH_STEP);
    // Every third place is enough for that.
    let sparse: Vec<Place> = edge.iter().copied().step_by(3).collect();
    let candidates = angles.filter_map(|angle| {
        let upright = Upright::new(&sparse, centre, angle, 1)?;
        // The rim lies square to the axis, which tells a wrong angle where a handle hides most of the middles.
        let rim = arcs::at_end(&upright.turned(&sparse, centre), &upright, STEPS, APEX);
        // A narrow rim, or one that a handle touches, says little.
        let aslant = rim.map_or(1.0, |rim| rim.slope / ASLANT.hypot(rim.error));
        Some((upright.agreeing / (1.0 + aslant * aslant), angle))
    });
    let (_, mut tilt) = candidates.max_by(|a, b| a.0.total_cmp(&b.0)).ok_or(PhotoError::Lopsided)?;
    for round in 0..6 {
        let upright = Upright::new(edge, centre, tilt, ROWS).ok_or(PhotoError::Lopsided)?;
        let near = if round < 3 { NEAR } else { NEARER } * upright.width();
        tilt -= upright.axis_slope(2.0 * near).atan();
    }
    Upright::new(edge, centre, tilt, ROWS).ok_or(PhotoError::Lopsided)
}

/// The same for a piece much wider than it is high: there the line of the rim tells more than the middles do. `None` for
/// other pieces.
fn lie_flat(edge: &[Place], centre: Place) -> Option<Upright> {
    let n = edge.len() as f64;
    let (x, y) = edge.iter().fold((0.0, 0.0), |(sx, sy), (x, y)| (sx + x / n, sy + y / n));
    let (mut xx, mut xy, mut yy) = (0.0, 0.0, 0.0);
    for place in edge {
        let (across, down) = (place.0 - x, place.1 - y);
        (xx, xy, yy) = (xx + across * across, xy + across * down, yy + down * down);
    }
    // The direction in which the edge is spread most.
    let mut tilt = 0.5 * (2.0 * xy).atan2(xx - yy);
    if tilt.abs() > SEARCH {
        return None;
    }
    let mut upright = Upright::new(edge, centre, tilt, ROWS)?;
    if upright.height() > FLAT * upright.width() {
        return None;
    }
    for _ in 0..4 {
        tilt += arcs::at_end(&upright.turned(edge, centre), &upright, STEPS, RIM)?.slope.atan();
        upright = Upright::new(edge, centre, tilt, ROWS)?;
    }
    Some(upright)
}

/// The edge with the axis upright: its left and right side at equal steps from the foot to the rim.
pub(super) struct Upright {
    pub(super) tilt: f64,
    pub(super) top: f64,
    pub(super) bottom: f64,
    pub(super) axis: f64,
    /// The arc of its foot, where the picture shows one.
    pub(super) foot: Option<EndArc>,
    /// The part of the steps whose middles lie on the axis, those near foot and rim counting double.
    pub(super) agreeing: f64,
    pub(super) left: Vec<f64>,
    pub(super) right: Vec<f64>,
}

/// Half widths without the handle.
pub(super) struct Halves {
    pub(super) radii: Vec<f64>,
    pub(super) handle: Option<Side>,
    /// How far the two sides differ beside the handle, as a part of the width.
    pub(super) unlike: f64,
}

impl Upright {
    /// Set upright.
    pub(super) fn of(edge: &[Place], centre: Place) -> Result<Upright, PhotoError> {
        lie_flat(edge, centre).map_or_else(|| stand_up(edge, centre), Ok)
    }

    /// `rows` are laid through each step.
    fn new(edge: &[Place], centre: Place, tilt: f64, rows: usize) -> Option<Upright> {
        let turned: Vec<Place> = edge.iter().map(|place| turn(*place, centre, -tilt)).collect();
        let heights = turned.iter().map(|(_, y)| *y);
        let (top, bottom) = heights.fold((f64::MAX, f64::MIN), |(top, bottom), y| (top.min(y), bottom.max(y)));
        let (left, right) = sides(&turned, top, bottom, rows)?;
        let mut upright = Upright { tilt, top, bottom, axis: 0.0, foot: None, agreeing: 0.0, left, right };
        upright.seek_axis();
        if rows > 1 {
            // The ends are seen as flat arcs: through many places of them one end is known better than by the outermost.
            let (rim, foot) = (arcs::at_end(&turned, &upright, STEPS, APEX), arcs::at_end(&turned, &upright, 0, APEX));
            upright.top = rim.map_or(top, |arc| arc.end);
            upright.bottom = foot.map_or(bottom, |arc| arc.end);
            (upright.left, upright.right) = sides(&turned, upright.top, upright.bottom, rows)?;
            upright.seek_axis();
        }
        Some(upright)
    }

    /// The edge as it lies when this stands upright.
    pub(super) fn turned(&self, edge: &[Place], centre: Place) -> Vec<Place> {
        edge.iter().map(|place| turn(*place, centre, -self.tilt)).collect()
    }

    pub(super) fn height(&self) -> f64 {
        self.bottom - self.top
    }

    /// Where a step lies in the picture.
    pub(super) fn level(&self, at: f64) -> f64 {
        self.bottom - self.height() * at / STEPS as f64
    }

    /// The width at the widest, by the side that has no handle.
    pub(super) fn width(&self) -> f64 {
        let sides = self.left.iter().zip(&self.right);
        2.0 * sides.map(|(left, right)| (self.axis - left).min(right - self.axis)).fold(0.0, f64::max)
    }

    /// Steps that say something about the axis, each with the middle of its two sides.
    fn middles(&self) -> impl Iterator<Item = (usize, f64)> {
        let end = (END * STEPS as f64) as usize;
        (end..=STEPS - end).map(|at| (at, f64::midpoint(self.left[at], self.right[at])))
    }

    /// The upright line on which most middles lie.
    fn seek_axis(&mut self) {
        let sides = self.left.iter().zip(&self.right);
        let near = NEAR * sides.map(|(left, right)| right - left).fold(0.0, f64::max);
        // A handle hides the middle of the height rather than its ends.
        let weight = |at: usize| 1.0 + (2.0 * at as f64 / STEPS as f64 - 1.0).abs();
        let mut middles: Vec<(f64, f64)> = self.middles().map(|(at, middle)| (middle, weight(at))).collect();
        middles.sort_by(|a, b| a.0.total_cmp(&b.0));
        let whole: f64 = middles.iter().map(|(_, weight)| weight).sum();
        let (mut from, mut sum, mut most) = (0, 0.0, 0.0);
        for to in 0..middles.len() {
            sum += middles[to].1;
            while middles[to].0 - middles[from].0 > 2.0 * near {
                sum -= middles[from].1;
                from += 1;
            }
            if sum > most {
                most = sum;
                let within = &middles[from..=to];
                self.axis = within.iter().map(|(middle, weight)| middle * weight).sum::<f64>() / sum;
            }
        }
        self.agreeing = most / whole;
    }

    /// Slope, across over down, of the line through the middles within `near` of the axis.
    fn axis_slope(&self, near: f64) -> f64 {
        let mut line = (self.axis, 0.0);
        for _ in 0..4 {
            let (mut n, mut sx, mut sy, mut sxx, mut sxy) = (0.0, 0.0, 0.0, 0.0, 0.0);
            for (at, middle) in self.middles() {
                let down = self.level(at as f64) - f64::midpoint(self.top, self.bottom);
                let off = (middle - line.0 - line.1 * down) / near;
                // Tukey's weight: what lies farther off than `near` does not count.
                let weight = (1.0 - off * off).max(0.0).powi(2);
                n += weight;
                sx += weight * down;
                sy += weight * middle;
                sxx += weight * down * down;
                sxy += weight * down * middle;
            }
            let determinant = n * sxx - sx * sx;
            if determinant <= 0.0 {
                break;
            }
            let slope = (n * sxy - sx * sy) / determinant;
            line = ((sy - slope * sx) / n, slope);
        }
        line.1
    }

    /// With its foot at the lowest arc of one that the picture shows; as it is where none is clear. `sharpness` says how sharp
    /// an edge is beside the axis at a height.
    pub(super) fn standing_on_its_foot(self, sharpness: impl Fn(f64, f64) -> f32) -> Upright {
        let Some(found) = arcs::of_foot(&self, sharpness) else { return self };
        let step = (found.end - self.top) / STEPS as f64;
        let moved = |side: &[f64]| -> Vec<f64> {
            let place = |at: usize| (self.bottom - found.end + step * at as f64) / self.height() * STEPS as f64;
            (0..=STEPS).map(|at| between(side, place(at))).collect()
        };
        let (left, right) = (moved(&self.left), moved(&self.right));
        Upright { bottom: found.end, foot: found.arc, left, right, ..self }
    }

    /// Where the two sides differ, one was led astray: by a shadow, or by a dark part of the wall that looks like one. There the
    /// radius counts at which both sides have an edge; `clearness` says how clear one is.
    pub(super) fn halves(&self, clearness: impl Fn(usize, f64, f64) -> f32) -> Result<Halves, PhotoError> {
        let width = self.width();
        let pairs: Vec<(f64, f64)> =
            self.left.iter().zip(&self.right).map(|(left, right)| (self.axis - left, right - self.axis)).collect();
        let (handle, over) = handle(&pairs, width)?;
        let agrees = |(left, right): (f64, f64)| (left - right).abs() <= ROOT * width;
        let candidates = |at: usize| match (over[at], handle, pairs[at]) {
            (true, Some(Side::Left), (_, right)) => Candidate::alone(right),
            (true, Some(Side::Right), (left, _)) => Candidate::alone(left),
            (_, _, pair) if agrees(pair) => Candidate::alone(f64::midpoint(pair.0, pair.1)),
            (_, _, pair) => Candidate::between(pair, |radius, side| clearness(at, side, radius)),
        };
        let candidates: Vec<Vec<Candidate>> = (0..pairs.len()).map(candidates).collect();
        let radii = smoothest(&candidates, self.height() / STEPS as f64);
        let (end, shadow) = ((END * STEPS as f64) as usize, (SHADOW * STEPS as f64) as usize);
        let is_clear = |at: usize, side: f64| clearness(at, side, radii[at]) > CLEAR;
        let is_settled = |at: usize| !agrees(pairs[at]) && (at < shadow || is_clear(at, -1.0) && is_clear(at, 1.0));
        let unlike = |at: usize| (pairs[at].0 - pairs[at].1).abs() / width;
        let mut apart: Vec<f64> = (end..=STEPS - end).filter(|at| !over[*at] && !is_settled(*at)).map(unlike).collect();
        apart.sort_by(f64::total_cmp);
        let unlike = apart.get(apart.len() * 9 / 10).copied().ok_or(PhotoError::Lopsided)?;
        if unlike > MOST_UNLIKE || radii.iter().any(|radius| *radius <= 0.0) {
            return Err(PhotoError::Lopsided);
        }
        Ok(Halves { radii, handle, unlike })
    }
}

/// The side that stands out like a handle, and at which steps; `pairs` are the half widths to the left and to the right.
fn handle(pairs: &[(f64, f64)], width: f64) -> Result<(Option<Side>, Vec<bool>), PhotoError> {
    let out = |sign: f64| -> Vec<f64> { pairs.iter().map(|(left, right)| sign * (left - right) / width).collect() };
    let (on_left, on_right) = (stretches(&out(1.0)), stretches(&out(-1.0)));
    match (on_left.contains(&true), on_right.contains(&true)) {
        (true, true) => Err(PhotoError::Lopsided),
        (true, false) => Ok((Some(Side::Left), on_left)),
        (false, true) => Ok((Some(Side::Right), on_right)),
        (false, false) => Ok((None, on_left)),
    }
}

/// A half width that a step may have, and what speaks against it.
struct Candidate {
    radius: f64,
    cost: f64,
}

impl Candidate {
    /// The only one.
    fn alone(radius: f64) -> Vec<Candidate> {
        vec![Candidate { radius, cost: 0.0 }]
    }

    /// All that lie between two sides and a little beyond; unclear edges speak against one. The sides are -1 and 1.
    fn between((left, right): (f64, f64), clearness: impl Fn(f64, f64) -> f32) -> Vec<Candidate> {
        let (from, to) = (left.min(right) - BEYOND, left.max(right) + BEYOND);
        let step = FINE.max((to - from) / MOST_CANDIDATES);
        let unclear = |radius: f64, side: f64| f64::from(CLEAR / (CLEAR + clearness(radius, side)));
        (0..=((to - from) / step) as usize)
            .map(|at| from + step * at as f64)
            .map(|radius| Candidate { radius, cost: unclear(radius, -1.0) + unclear(radius, 1.0) })
            .collect()
    }
}

/// The wall through one candidate of each step that costs least, its bends counted; `step` is the height of one.
///
/// Source: A. Viterbi, Error Bounds for Convolutional Codes, IEEE Trans. Inf. Theory 13 (1967).
fn smoothest(candidates: &[Vec<Candidate>], step: f64) -> Vec<f64> {
    let mut costs: Vec<f64> = candidates.first().map_or(Vec::new(), |first| first.iter().map(|one| one.cost).collect());
    let mut ways: Vec<Vec<usize>> = Vec::new();
    for pair in candidates.windows(2) {
        let (before, here) = (&pair[0], &pair[1]);
        let best = |one: &Candidate| {
            let lean = |from: usize| (one.radius - before[from].radius) / step;
            let all = (0..before.len()).map(|from| (costs[from] + STIFF * lean(from).powi(2), from));
            all.min_by(|a, b| a.0.total_cmp(&b.0)).unwrap_or((0.0, 0))
        };
        let found: Vec<(f64, usize)> = here.iter().map(best).collect();
        costs = found.iter().zip(here).map(|((cost, _), one)| cost + one.cost).collect();
        ways.push(found.into_iter().map(|(_, from)| from).collect());
    }
    let Some(mut at) = (0..costs.len()).min_by(|a, b| costs[*a].total_cmp(&costs[*b])) else { return Vec::new() };
    let mut radii = vec![candidates[candidates.len() - 1][at].radius];
    for (way, before) in ways.iter().zip(candidates).rev() {
        at = way[at];
        radii.push(before[at].radius);
    }
    radii.reverse();
    radii
}

/// The value at a place between steps; that of the last one beyond an end.
fn between(side: &[f64], place: f64) -> f64 {
    let place = place.clamp(0.0, STEPS as f64);
    let before = (place as usize).min(STEPS - 1);
    side[before] + (place - before as f64) * (side[before + 1] - side[before])
}

/// Left and right side of a closed line at equal steps from the bottom to the top, each the mean of some rows.
fn sides(line: &[Place], top: f64, bottom: f64, rows: usize) -> Option<(Vec<f64>, Vec<f64>)> {
    let fine = STEPS * rows;
    let step = (bottom - top) / fine as f64;
    if step <= 0.0 {
        return None;
    }
    // At the very end a row would only touch the line.
    let inset = 0.8 / step;
    let (mut left, mut right) = (vec![f64::MAX; fine + 1], vec![f64::MIN; fine + 1]);
    for (at, &(to_x, to_y)) in line.iter().enumerate() {
        let (from_x, from_y) = line[(at + line.len() - 1) % line.len()];
        let (one, other) = ((bottom - from_y) / step, (bottom - to_y) / step);
        let (low, high) = (one.min(other).ceil().max(0.0) as usize, one.max(other).floor().min(fine as f64));
        if high < 0.0 {
            continue;
        }
        for row in low..=high as usize {
            let share = if one == other { 0.5 } else { (row as f64 - one) / (other - one) };
            let x = from_x + share * (to_x - from_x);
            left[row] = left[row].min(x);
            right[row] = right[row].max(x);
        }
    }
    let (first, last) = (inset.ceil() as usize, (fine as f64 - inset).floor().max(0.0) as usize);
    if first >= last || (first..=last).any(|row| left[row] > right[row]) {
        return None;
    }
    let reach = rows / 2;
    let mean = |side: &[f64], at: usize| {
        // The same reach to both sides, so that a slope does not move the mean.
        let row = (at * rows).clamp(first, last);
        let reach = reach.min(row - first).min(last - row);
        let within = &side[row - reach..=row + reach];
        within.iter().sum::<f64>() / within.len() as f64
    };
    Some(((0..=STEPS).map(|at| mean(&left, at)).collect(), (0..=STEPS).map(|at| mean(&right, at)).collect()))
}

/// The runs in which one side stands out like a handle, to the roots and a little beyond.
fn stretches(out: &[f64]) -> Vec<bool> {
    let least = (LEAST_HANDLE * STEPS as f64) as usize;
    let room = (ROOM * STEPS as f64).ceil() as usize;
    let mut saved = vec![false; out.len()];
    let mut at = 0;
    while at < out.len() {
        let end = (at..out.len()).find(|&place| out[place] <= HANDLE).unwrap_or(out.len());
        let most = out[at..end].iter().copied().fold(0.0, f64::max);
        // What stands out at the ground alone is a shadow, and at the rim alone the arc in which it is seen.
        let is_wall = end as f64 > SHADOW * STEPS as f64 && (at as f64) < (1.0 - END) * STEPS as f64;
        if end - at >= least && most > OUT && is_wall {
            let from = (0..at).rev().find(|&place| out[place] < ROOT).map_or(0, |place| place + 1);
            let to = (end..out.len()).find(|&place| out[place] < ROOT).unwrap_or(out.len());
            saved[from.saturating_sub(room)..(to + room).min(out.len())].fill(true);
        }
        at = end + 1;
    }
    saved
}
