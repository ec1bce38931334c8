//! Following the pot's edge, and what is made of it.

use super::arcs;
use super::ground::Ground;
use super::mask::Mask;
use super::picture::Picture;
use super::upright::Upright;
use super::{Axis, EndArc, PhotoError, STEPS, Sureness, Trace};

/// The most that a phone is held aslant, radians (6 degrees).
const MOST_TILT: f64 = 0.105;
/// Least part of the steps whose middles lie on the axis; a handle takes the rest.
const LEAST_AGREEING: f64 = 0.25;
/// Least part of the picture's longer side that the piece takes up.
const LEAST_SIZE: f64 = 0.2;
/// A piece flatter than this, height over width, cannot be measured from the side at arm's length: one degree by which the
/// lens is not level then changes its area by more than 2%.
const FLATTEST: f64 = 0.36;
/// An edge is clear whose two sides differ by more than this, of 255, over all three colours.
pub(super) const CLEAR: f32 = 20.0;
/// Pixels to either side of an edge at which it is looked for again.
const ACROSS: f64 = 1.5;
const FAR: f64 = 4.0;
/// Part of the height above the ground in which shadows cling.
const FOOT: f64 = 0.15;
/// Two sides of an outline that is fair differ by at most this part of the width.
const FAIR_UNLIKE: f64 = 0.006;
/// Which part of the whole edge, and of that near the ground, may be unclear in an outline that is fair; beyond the last, no
/// piece stands out. Set on path-traced photographs of known pots (tests/photos/path_traced).
const FAIR_UNCLEAR: f64 = 0.04;
const FAIR_UNCLEAR_FOOT: f64 = 0.12;
const MOST_UNCLEAR: f64 = 0.3;
/// Steps over which a wall's lean is taken, how sharply it bends outwards at most (radians), and from which part of the
/// height: below, a foot joins it.
const BEND: usize = 5;
const MOST_BEND: f64 = 0.95;
const STACKED_FROM: f64 = 0.2;

pub(super) type Place = (f64, f64);

/// Finds the outline of the pot that `mask` covers.
pub(super) fn follow(picture: &Picture, ground: &Ground, mask: &Mask) -> Result<Trace, PhotoError> {
    let (edge, clear) = edge(picture, ground, mask);
    let longest = picture.width.max(picture.height) as f64;
    let span = |pick: fn(&Place) -> f64| {
        let (least, most) = edge.iter().map(pick).fold((f64::MAX, f64::MIN), |(a, b), at| (a.min(at), b.max(at)));
        most - least
    };
    if edge.len() < 100 || span(|place| place.0).max(span(|place| place.1)) < LEAST_SIZE * longest {
        return Err(PhotoError::TooFar);
    }
    let centre = (picture.width as f64 / 2.0 - 0.5, picture.height as f64 / 2.0 - 0.5);
    let upright = Upright::of(&edge, centre)?;
    if upright.tilt.abs() > MOST_TILT {
        return Err(PhotoError::TooTilted);
    }
    if upright.agreeing < LEAST_AGREEING {
        return Err(PhotoError::Lopsided);
    }
    if upright.height() < FLATTEST * upright.width() {
        return Err(PhotoError::TooFlat);
    }
    let (axis, tilt) = (upright.axis, upright.tilt);
    let upright = upright.standing_on_its_foot(|across, y| {
        let beside = |y: f64| {
            let (x, y) = turn((axis + across, y), centre, tilt);
            picture.between(x, y)
        };
        // A shadow's border is soft: much of its change lies farther off.
        let (near, far) = (apart(beside(y - ACROSS), beside(y + ACROSS)), apart(beside(y - FAR), beside(y + FAR)));
        near * near / near.max(far).max(CLEAR)
    });
    // How clear an edge is so far out to one side (-1 the left one) of the axis at a step.
    let clearness = |at: usize, side: f64, radius: f64| {
        let beside = |radius: f64| {
            let (x, y) = turn((upright.axis + side * radius, upright.level(at as f64)), centre, upright.tilt);
            picture.between(x, y)
        };
        apart(beside(radius - ACROSS), beside(radius + ACROSS))
    };
    let halves = upright.halves(clearness)?;
    if is_stacked(&halves.radii, upright.height() / STEPS as f64) {
        return Err(PhotoError::Stacked);
    }
    let low = upright.bottom - FOOT * upright.height();
    let is_low = |place: Place| turn(place, centre, -upright.tilt).1 > low;
    let unclear = part(&clear, |_| true);
    let unclear_foot = part(&clear, is_low);
    if unclear > MOST_UNCLEAR {
        return Err(PhotoError::Nothing);
    }
    // Never sure: in photographs by another renderer some of the outlines that nothing speaks against are off by over 6%.
    let is_fair = halves.unlike < FAIR_UNLIKE && unclear < FAIR_UNCLEAR && unclear_foot < FAIR_UNCLEAR_FOOT;
    let sure = if is_fair { Sureness::Fair } else { Sureness::Doubtful };
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
        unclear: (unclear * 1e3).round() / 1e3,
        foot_arc: upright.foot.map(|arc| whole(arc, picture.step)),
        focal: picture.focal,
        rim_arc: arcs::of_rim(&upright.turned(&edge, centre), &upright).map(|arc| whole(arc, picture.step)),
    })
}

/// How far two colours are apart, of 255 in each of the three; none outside the picture.
fn apart(one: Option<[f32; 3]>, other: Option<[f32; 3]>) -> f32 {
    let (Some(one), Some(other)) = (one, other) else { return 0.0 };
    (0..3).map(|c| (one[c] - other[c]).powi(2)).sum::<f32>().sqrt()
}

/// To a tenth of a pixel: it travels as text.
fn rounded((x, y): Place) -> Place {
    ((x * 10.0).round() / 10.0, (y * 10.0).round() / 10.0)
}

/// The place of `from` when the picture is turned about `centre` by `angle`.
pub(super) fn turn((x, y): Place, centre: Place, angle: f64) -> Place {
    let (sin, cos) = angle.sin_cos();
    let (x, y) = (x - centre.0, y - centre.1);
    (centre.0 + cos * x - sin * y, centre.1 + sin * x + cos * y)
}

/// Which part of the places that count is not clear.
fn part(clear: &[(Place, bool)], counts: impl Fn(Place) -> bool) -> f64 {
    let counted: Vec<bool> = clear.iter().filter(|(place, _)| counts(*place)).map(|(_, clear)| *clear).collect();
    counted.iter().filter(|clear| !**clear).count() as f64 / counted.len().max(1) as f64
}

/// Whether the wall bends outwards so sharply, above its foot, as only another piece on or in it does; `step` is the height
/// of one of the steps at which the radii are.
fn is_stacked(radii: &[f64], step: f64) -> bool {
    let lean = |from: usize, to: usize| ((radii[to] - radii[from]) / (step * (to - from) as f64)).atan();
    let (first, last) = ((STACKED_FROM * STEPS as f64) as usize, STEPS - STEPS / 20);
    (first..last - BEND - 1).any(|at| lean(at + 1, at + 1 + BEND) - lean(at - 1 - BEND, at - 1) > MOST_BEND)
}

/// The edge of the mask as one closed line, each place of it moved to where the picture is half ground and half pot; and
/// where the two clearly differ.
fn edge(picture: &Picture, ground: &Ground, mask: &Mask) -> (Vec<Place>, Vec<(Place, bool)>) {
    const REACH: usize = 4;
    let line = boundary(mask);
    let count = line.len();
    let normals: Vec<Normal<'_>> = (0..count)
        .filter_map(|at| {
            let (before, after) = (line[(at + count - REACH) % count], line[(at + REACH) % count]);
            let (dx, dy) = (after.0 - before.0, after.1 - before.1);
            let length = dx.hypot(dy);
            // The pot lies to the right of the line, as seen by one who walks along it.
            let out = (dy / length, -dx / length);
            (length > 0.0).then_some(Normal { picture, ground, at: line[at], out })
        })
        .collect();
    let clear = normals.iter().map(|normal| (normal.at, normal.is_clear())).collect();
    // Where the line lies, which way is out, and how far out the edge is.
    let moved: Vec<(Place, Place, f64)> =
        normals.iter().filter_map(|normal| Some((normal.at, normal.out, normal.edge()?))).collect();
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
    ((0..count).map(|at| (mean(at, |place| place.0), mean(at, |place| place.1))).collect(), clear)
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
    const SHADOW: f64 = 8.0;
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

    /// Whether pot and ground clearly differ on its two sides.
    fn is_clear(&self) -> bool {
        let (Some(inner), Some(outer)) = (self.colour(-Self::REACH), self.colour(Self::REACH)) else { return false };
        (0..3).map(|c| (inner[c] - outer[c]).powi(2)).sum::<f32>().sqrt() > CLEAR
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

/// An arc in pixels of the whole picture.
fn whole(arc: EndArc, step: f64) -> EndArc {
    let [sagitta, half, stray] = [arc.sagitta, arc.half, arc.stray].map(|value| (value * step * 100.0).round() / 100.0);
    EndArc { sagitta, half, stray }
}
