//! Following the pot's edge: the axis about which its two sides agree, the handle that only one of them has.

use nalgebra::{SMatrix, SVector};

use super::background::{Ground, Mask};
use super::picture::Picture;
use super::{Axis, PhotoError, STEPS, Side, Sureness, Trace};

/// The most that a phone is held aslant, radians (6 degrees).
const MOST_TILT: f64 = 0.105;
/// How far aslant a piece is looked for, radians, and in what steps; the true angle is then found between them.
const SEARCH: f64 = 0.33;
const SEARCH_STEP: f64 = 0.005;
/// How near the middles of two sides lie to the axis, as a part of the width: while searching, and once it is found.
const NEAR: f64 = 0.006;
const NEARER: f64 = 0.003;
/// Least part of the steps whose middles lie on the axis; a handle takes the rest.
const LEAST_AGREEING: f64 = 0.25;
/// Least part of the picture's longer side that the piece takes up.
const LEAST_SIZE: f64 = 0.2;
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
/// A piece flatter than this, height over width, cannot be measured from the side at arm's length: one degree by which the
/// lens is not level then changes its area by more than 2%.
const FLATTEST: f64 = 0.36;
/// Part of the height at each end where foot and rim are seen as ellipses, which say little about the axis.
const END: f64 = 0.06;
/// A piece flatter than this, height over width, is set upright by the line of its rim.
const FLAT: f64 = 0.5;
/// Part of the half width that is taken for the arc of an end: about its middle, and for the line of a whole rim.
const APEX: f64 = 0.5;
const RIM: f64 = 0.85;
/// A rim with this slope speaks against the angle as much as half of the middles.
const ASLANT: f64 = 0.04;
/// Each step is the mean of this many rows.
const ROWS: usize = 5;

pub(super) type Place = (f64, f64);

/// Finds the outline of the pot that `mask` covers.
pub(super) fn follow(picture: &Picture, ground: &Ground, mask: &Mask) -> Result<Trace, PhotoError> {
    let edge = edge(picture, ground, mask);
    let longest = picture.width.max(picture.height) as f64;
    let span = |pick: fn(&Place) -> f64| {
        let (least, most) = edge.iter().map(pick).fold((f64::MAX, f64::MIN), |(a, b), at| (a.min(at), b.max(at)));
        most - least
    };
    if edge.len() < 100 || span(|place| place.0).max(span(|place| place.1)) < LEAST_SIZE * longest {
        return Err(PhotoError::TooFar);
    }
    let centre = (picture.width as f64 / 2.0 - 0.5, picture.height as f64 / 2.0 - 0.5);
    let upright = stand_up(&edge, centre)?;
    if upright.tilt.abs() > MOST_TILT {
        return Err(PhotoError::TooTilted);
    }
    if upright.agreeing < LEAST_AGREEING {
        return Err(PhotoError::Lopsided);
    }
    if upright.height() < FLATTEST * upright.width() {
        return Err(PhotoError::TooFlat);
    }
    let halves = upright.halves()?;
    // Never sure: that two sides agree says nothing of a shadow on both, or of a lens that looks down. Of 30 outlines whose sides
    // agreed so well, in photographs by another renderer (a path tracer, pots of known shape), 12 were off by over 6%.
    let sure = if halves.unlike < 0.006 { Sureness::Fair } else { Sureness::Doubtful };
    let pixels = |(x, y): Place| rounded(((x + 0.5) * picture.step, (y + 0.5) * picture.step));
    let back = |x: f64, y: f64| pixels(turn((x, y), centre, upright.tilt));
    let side = |sign: f64| -> Vec<Place> {
        let shown = (0..=STEPS).step_by(4);
        shown.map(|at| back(upright.axis + sign * halves.radii[at], upright.level(at as f64))).collect()
    };
    Ok(Trace {
        width: picture.whole.0,
        height: picture.whole.1,
        axis: Axis { foot: back(upright.axis, upright.bottom), rim: back(upright.axis, upright.top) },
        left: side(-1.0),
        right: side(1.0),
        radii: halves.radii.iter().map(|radius| (radius * picture.step * 100.0).round() / 100.0).collect(),
        handle: halves.handle,
        unlike: halves.unlike,
        sure,
    })
}

/// To a tenth of a pixel: it travels as text.
fn rounded((x, y): Place) -> Place {
    ((x * 10.0).round() / 10.0, (y * 10.0).round() / 10.0)
}

/// The place of `from` when the picture is turned about `centre` by `angle`.
fn turn((x, y): Place, centre: Place, angle: f64) -> Place {
    let (sin, cos) = angle.sin_cos();
    let (x, y) = (x - centre.0, y - centre.1);
    (centre.0 + cos * x - sin * y, centre.1 + sin * x + cos * y)
}

/// The edge of the mask as one closed line, each place of it moved to where the picture is half ground and half pot.
fn edge(picture: &Picture, ground: &Ground, mask: &Mask) -> Vec<Place> {
    const REACH: usize = 4;
    let line = boundary(mask);
    let count = line.len();
    // Where the line lies, which way is out, and how far out the edge is.
    let moved: Vec<(Place, Place, f64)> = (0..count)
        .filter_map(|at| {
            let (before, after) = (line[(at + count - REACH) % count], line[(at + REACH) % count]);
            let (dx, dy) = (after.0 - before.0, after.1 - before.1);
            let length = dx.hypot(dy);
            // The pot lies to the right of the line, as seen by one who walks along it.
            let out = (dy / length, -dx / length);
            let along = Normal { picture, ground, at: line[at], out };
            (length > 0.0).then(|| along.edge()).flatten().map(|far| (line[at], out, far))
        })
        .collect();
    let count = moved.len();
    let about = |at: usize, reach: usize| (0..=2 * reach).map(move |near| (at + count + near - reach) % count);
    // A single place that found another edge than its neighbours is brought back among them.
    let refined: Vec<Place> = (0..count)
        .map(|at| {
            let mut far: Vec<f64> = about(at, REACH.min(count / 2)).map(|near| moved[near].2).collect();
            far.sort_by(f64::total_cmp);
            let (place, out, own) = moved[at];
            let usual = far[far.len() / 2];
            let far = if (own - usual).abs() > 0.7 { usual } else { own };
            (place.0 + out.0 * far, place.1 + out.1 * far)
        })
        .collect();
    // The mean of three neighbours: the edge of a pot has no finer detail, the noise has.
    let mean = |at: usize, pick: fn(Place) -> f64| about(at, 1).map(|near| pick(refined[near])).sum::<f64>() / 3.0;
    (0..count).map(|at| (mean(at, |place| place.0), mean(at, |place| place.1))).collect()
}

/// The outer edge of the mask, walked along the cracks between pixels with the pot to the right: a place for each crack.
fn boundary(mask: &Mask) -> Vec<Place> {
    let Some(first) = mask.inside.iter().position(|inside| *inside) else { return Vec::new() };
    let covered = |x: i64, y: i64| {
        x >= 0 && y >= 0 && x < mask.width as i64 && y < mask.height as i64 && mask.at(x as usize, y as usize)
    };
    // A corner (x, y) is the upper left one of the pixel (x, y); the walk sets out along that pixel's upper side.
    let start = ((first % mask.width) as i64, (first / mask.width) as i64);
    let (mut corner, mut heading) = (start, (1i64, 0i64));
    let mut line = Vec::new();
    loop {
        line.push((corner.0 as f64 + heading.0 as f64 / 2.0 - 0.5, corner.1 as f64 + heading.1 as f64 / 2.0 - 0.5));
        corner = (corner.0 + heading.0, corner.1 + heading.1);
        // The two pixels ahead, to the left and to the right of the way.
        let ahead = |turned: (i64, i64)| {
            let x = corner.0 + (heading.0 + turned.0 - 1).div_euclid(2);
            let y = corner.1 + (heading.1 + turned.1 - 1).div_euclid(2);
            covered(x, y)
        };
        let (to_left, to_right) = ((heading.1, -heading.0), (-heading.1, heading.0));
        heading = match (ahead(to_left), ahead(to_right)) {
            (_, false) => to_right,
            (false, true) => heading,
            (true, true) => to_left,
        };
        if (corner == start && heading == (1, 0)) || line.len() > 4 * mask.inside.len() {
            return line;
        }
    }
}

/// The line through a place of the edge, square to it.
struct Normal<'a> {
    picture: &'a Picture,
    ground: &'a Ground,
    at: Place,
    /// Towards the ground, one pixel long.
    out: Place,
}

impl Normal<'_> {
    /// Pixels to either side in which the edge is sought.
    const REACH: f64 = 4.0;
    /// Pixels inwards in which it is sought where a shadow clings to the pot.
    const SHADOW: f64 = 24.0;
    /// Pixels from one sample to the next.
    const STEP: f64 = 0.5;

    fn place(&self, far: f64) -> Place {
        (self.at.0 + self.out.0 * far, self.at.1 + self.out.1 * far)
    }

    fn colour(&self, far: f64) -> Option<[f32; 3]> {
        let (x, y) = self.place(far);
        self.picture.between(x, y)
    }

    fn is_shade(&self, far: f64) -> bool {
        self.colour(far).is_some_and(|colour| self.ground.is_shade(self.place(far), colour))
    }

    /// How far out the edge is, in pixels. `None` where ground and pot cannot be told apart.
    fn edge(&self) -> Option<f64> {
        if self.is_shade(1.5) || self.is_shade(-3.0) { self.steepest() } else { self.half_way() }
    }

    /// Where the picture is half ground and half pot.
    fn half_way(&self) -> Option<f64> {
        let (inner, outer) = (self.colour(-Self::REACH)?, self.colour(Self::REACH)?);
        let difference = [0, 1, 2].map(|c| inner[c] - outer[c]);
        let size: f32 = difference.iter().map(|d| d * d).sum();
        if size < 25.0 {
            return None;
        }
        let share = |colour: [f32; 3]| (0..3).map(|c| (colour[c] - outer[c]) * difference[c]).sum::<f32>() / size;
        // From outside inwards: the first crossing of one half is the edge.
        let steps = (2.0 * Self::REACH / Self::STEP) as i32;
        let mut before = 0.0;
        for step in 1..=steps {
            let far = Self::REACH - f64::from(step) * Self::STEP;
            let here = share(self.colour(far)?);
            if here >= 0.5 && before < 0.5 {
                return Some(far + f64::from((here - 0.5) / (here - before)) * Self::STEP);
            }
            before = here;
        }
        None
    }

    /// The steepest place on the way inwards through what may be shadow: its own edge is soft, that of the pot is not.
    fn steepest(&self) -> Option<f64> {
        let steepness = |far: f64| -> Option<f32> {
            let (inner, outer) = (self.colour(far - 1.0)?, self.colour(far + 1.0)?);
            Some((0..3).map(|c| (inner[c] - outer[c]).powi(2)).sum::<f32>().sqrt())
        };
        let mut best: Option<(f32, f64)> = None;
        let mut last = -Self::REACH;
        let mut far = Self::REACH - 1.0;
        while far >= last {
            let here = steepness(far)?;
            if best.is_none_or(|(most, _)| here > most) {
                best = Some((here, far));
            }
            // As long as it may be shadow, the pot may begin farther in.
            if self.is_shade(far) {
                last = last.min(far - 2.0).max(-Self::SHADOW);
            }
            far -= Self::STEP;
        }
        let (most, far) = best.filter(|(most, _)| *most > 5.0)?;
        // The top of a parabola through it and its neighbours.
        let (inner, outer) = (steepness(far - Self::STEP)?, steepness(far + Self::STEP)?);
        let bend = f64::from(inner - 2.0 * most + outer);
        let shift = if bend < 0.0 { 0.5 * f64::from(inner - outer) / bend } else { 0.0 };
        Some(far + shift.clamp(-1.0, 1.0) * Self::STEP)
    }
}

/// The edge turned so that the axis stands upright.
///
/// The middles of left and right lie on the axis wherever there is no handle. So the angle is sought at which most of them
/// lie on one upright line, and then the line through those is made more exact.
fn stand_up(edge: &[Place], centre: Place) -> Result<Upright, PhotoError> {
    if let Some(upright) = lie_flat(edge, centre) {
        return Ok(upright);
    }
    let count = (SEARCH / SEARCH_STEP) as i32;
    let angles = (-count..=count).map(|step| f64::from(step) * SEARCH_STEP);
    // Every third place is enough for that.
    let sparse: Vec<Place> = edge.iter().copied().step_by(3).collect();
    let candidates = angles.filter_map(|angle| {
        let upright = Upright::new(&sparse, centre, angle, 1)?;
        // The rim lies square to the axis, which tells a wrong angle where a handle hides most of the middles.
        let aslant = arc(&upright.turned(&sparse, centre), &upright, STEPS, APEX)?.slope / ASLANT;
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
        tilt += arc(&upright.turned(edge, centre), &upright, STEPS, RIM)?.slope.atan();
        upright = Upright::new(edge, centre, tilt, ROWS)?;
    }
    Some(upright)
}

/// The edge with the axis upright: its left and right side at equal steps from the foot to the rim.
struct Upright {
    tilt: f64,
    top: f64,
    bottom: f64,
    axis: f64,
    /// The part of the steps whose middles lie on the axis, those near foot and rim counting double.
    agreeing: f64,
    left: Vec<f64>,
    right: Vec<f64>,
}

/// Half widths without the handle.
struct Halves {
    radii: Vec<f64>,
    handle: Option<Side>,
    /// How far the two sides differ beside the handle, as a part of the width.
    unlike: f64,
}

impl Upright {
    /// `rows` are laid through each step.
    fn new(edge: &[Place], centre: Place, tilt: f64, rows: usize) -> Option<Upright> {
        let turned: Vec<Place> = edge.iter().map(|place| turn(*place, centre, -tilt)).collect();
        let heights = turned.iter().map(|(_, y)| *y);
        let (top, bottom) = heights.fold((f64::MAX, f64::MIN), |(top, bottom), y| (top.min(y), bottom.max(y)));
        let (left, right) = sides(&turned, top, bottom, rows)?;
        let mut upright = Upright { tilt, top, bottom, axis: 0.0, agreeing: 0.0, left, right };
        upright.seek_axis();
        if rows > 1 {
            // The ends are seen as flat arcs: through many places of them one end is known better than by the outermost.
            let (rim, foot) = (arc(&turned, &upright, STEPS, APEX), arc(&turned, &upright, 0, APEX));
            upright.top = rim.map_or(top, |arc| arc.end);
            upright.bottom = foot.map_or(bottom, |arc| arc.end);
            (upright.left, upright.right) = sides(&turned, upright.top, upright.bottom, rows)?;
            upright.seek_axis();
        }
        Some(upright)
    }

    /// The edge as it lies when this stands upright.
    fn turned(&self, edge: &[Place], centre: Place) -> Vec<Place> {
        edge.iter().map(|place| turn(*place, centre, -self.tilt)).collect()
    }

    fn height(&self) -> f64 {
        self.bottom - self.top
    }

    /// Where a step lies in the picture.
    fn level(&self, at: f64) -> f64 {
        self.bottom - self.height() * at / STEPS as f64
    }

    /// The width at the widest, by the side that has no handle.
    fn width(&self) -> f64 {
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

    fn halves(&self) -> Result<Halves, PhotoError> {
        let width = self.width();
        let pairs: Vec<(f64, f64)> =
            self.left.iter().zip(&self.right).map(|(left, right)| (self.axis - left, right - self.axis)).collect();
        let handle_on = |side: Side| {
            let out: Vec<f64> = pairs
                .iter()
                .map(|(left, right)| if side == Side::Left { left - right } else { right - left })
                .map(|out| out / width)
                .collect();
            stretches(&out)
        };
        let (on_left, on_right) = (handle_on(Side::Left), handle_on(Side::Right));
        let reach = |over: &[bool]| over.iter().filter(|over| **over).count();
        let (handle, over) = match (reach(&on_left), reach(&on_right)) {
            (0, 0) => (None, vec![false; pairs.len()]),
            (_, 0) => (Some(Side::Left), on_left),
            (0, _) => (Some(Side::Right), on_right),
            _ => return Err(PhotoError::Lopsided),
        };
        let mut apart: Vec<f64> = Vec::new();
        let (end, shadow) = ((END * STEPS as f64) as usize, (SHADOW * STEPS as f64) as usize);
        let radii: Vec<f64> = pairs
            .iter()
            .zip(&over)
            .enumerate()
            .map(|(at, (&(left, right), over))| match (over, handle) {
                (true, Some(Side::Left)) => right,
                (true, Some(Side::Right)) => left,
                _ if at < shadow && (left - right).abs() > ROOT * width => left.min(right),
                _ => {
                    if at >= end && at <= STEPS - end {
                        apart.push((left - right).abs() / width);
                    }
                    f64::midpoint(left, right)
                }
            })
            .collect();
        apart.sort_by(f64::total_cmp);
        let unlike = apart.get(apart.len() * 9 / 10).copied().ok_or(PhotoError::Lopsided)?;
        if unlike > MOST_UNLIKE || radii.iter().any(|radius| *radius <= 0.0) {
            return Err(PhotoError::Lopsided);
        }
        Ok(Halves { radii, handle, unlike })
    }
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

/// The flat arc in which the circle of an end is seen.
struct Arc {
    /// Where it crosses the axis.
    end: f64,
    /// Its slope there, down over across.
    slope: f64,
}

/// A parabola through the edge at one end of the axis, within a part of the half width beside it. `None` where there is no
/// such end.
fn arc(line: &[Place], upright: &Upright, at: usize, part: f64) -> Option<Arc> {
    let (inner, end) = if at == 0 { (STEPS / 32, upright.bottom) } else { (STEPS - STEPS / 32, upright.top) };
    let half = (upright.axis - upright.left[inner]).min(upright.right[inner] - upright.axis) * part;
    let near = 0.25 * upright.height();
    let mut normal = SMatrix::<f64, 3, 3>::zeros();
    let mut sums = SVector::<f64, 3>::zeros();
    for (x, y) in line {
        let across = (x - upright.axis) / half;
        if across.abs() < 1.0 && (y - end).abs() < near {
            let place = SVector::from([1.0, across, across * across]);
            normal += place * place.transpose();
            sums += place * *y;
        }
    }
    if normal[(0, 0)] < 8.0 {
        return None;
    }
    let fit = normal.cholesky()?.solve(&sums);
    Some(Arc { end: fit[0], slope: fit[1] / half })
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
        // What stands out at the ground alone is a shadow.
        if end - at >= least && most > OUT && end as f64 > SHADOW * STEPS as f64 {
            let from = (0..at).rev().find(|&place| out[place] < ROOT).map_or(0, |place| place + 1);
            let to = (end..out.len()).find(|&place| out[place] < ROOT).unwrap_or(out.len());
            saved[from.saturating_sub(room)..(to + room).min(out.len())].fill(true);
        }
        at = end + 1;
    }
    saved
}
