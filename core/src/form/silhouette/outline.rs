//! Following the pot's two edges: the axis about which they agree best, the handle that only one of them has.

use super::ground::Mask;
use super::picture::Picture;
use super::{Axis, PhotoError, Side, Sureness, Trace};

/// Steps along the axis at which the half width is taken.
const STEPS: usize = 160;
/// The most that a phone is held aslant, radians (6 degrees).
const MOST_TILT: f64 = 0.105;
/// Least part of the picture's height that the piece takes up.
const LEAST_HEIGHT: f64 = 0.2;
/// Two sides that differ by this part of the width over a stretch differ by a handle.
const HANDLE: f64 = 0.02;
/// A handle is at least this part of the height.
const LEAST_HANDLE: f64 = 0.06;
/// Room about a handle that is left to the other side too, as a part of the height: where it joins the wall.
const ROOT: f64 = 0.03;
/// Two sides of one pot differ by at most this part of the width, the handle left out.
const MOST_UNLIKE: f64 = 0.035;
/// A piece flatter than this, height over width, is seen too much from the edge.
const FLATTEST: f64 = 0.3;

type Place = (f64, f64);

/// Finds the outline of the pot that `mask` covers.
pub(super) fn follow(picture: &Picture, mask: &Mask) -> Result<Trace, PhotoError> {
    let edge = edge(picture, mask);
    let (top, bottom) = edge.iter().fold((f64::MAX, f64::MIN), |(top, bottom), (_, y)| (top.min(*y), bottom.max(*y)));
    if (bottom - top) < LEAST_HEIGHT * picture.height as f64 {
        return Err(PhotoError::TooFar);
    }
    let centre = (picture.width as f64 / 2.0, picture.height as f64 / 2.0);
    let tilt = tilt(&edge, centre)?;
    let upright = Upright::new(&edge, centre, tilt).ok_or(PhotoError::Lopsided)?;
    if upright.height() < FLATTEST * upright.width() {
        return Err(PhotoError::TooFlat);
    }
    let (radii, handle, unlike) = upright.halves()?;
    let sure = match unlike {
        unlike if unlike < 0.008 => Sureness::Sure,
        unlike if unlike < 0.018 => Sureness::Fair,
        _ => Sureness::Doubtful,
    };
    let pixels = |(x, y): Place| ((x + 0.5) * picture.step, (y + 0.5) * picture.step);
    let back = |x: f64, y: f64| pixels(turn((x, y), centre, tilt));
    let height_at = |at: usize| upright.bottom - upright.height() * at as f64 / STEPS as f64;
    let side = |sign: f64| -> Vec<Place> {
        let shown = (0..=STEPS).step_by(4);
        shown.map(|at| rounded(back(upright.axis + sign * radii[at], height_at(at)))).collect()
    };
    Ok(Trace {
        width: picture.whole.0,
        height: picture.whole.1,
        axis: Axis {
            foot: rounded(back(upright.axis, upright.bottom)),
            rim: rounded(back(upright.axis, upright.top)),
        },
        left: side(-1.0),
        right: side(1.0),
        radii: radii.iter().map(|radius| (radius * picture.step * 100.0).round() / 100.0).collect(),
        handle,
        unlike,
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

/// Places along the edge of the mask, each moved to where the picture changes most between ground and pot.
fn edge(picture: &Picture, mask: &Mask) -> Vec<Place> {
    let mut places = Vec::new();
    for y in 2..mask.height - 2 {
        for x in 2..mask.width - 2 {
            if !mask.at(x, y) {
                continue;
            }
            if !mask.at(x - 1, y) {
                places.extend(half_way(picture, (x, y), (-1, 0)));
            }
            if !mask.at(x + 1, y) {
                places.extend(half_way(picture, (x, y), (1, 0)));
            }
            if !mask.at(x, y - 1) {
                places.extend(half_way(picture, (x, y), (0, -1)));
            }
            if !mask.at(x, y + 1) {
                places.extend(half_way(picture, (x, y), (0, 1)));
            }
        }
    }
    places
}

/// Where, on the line that leaves the pot at `at` towards `out`, the picture is half ground and half pot. `None` where
/// it cannot be told, as where the ground is as dark as the pot.
fn half_way(picture: &Picture, at: (usize, usize), out: (isize, isize)) -> Option<Place> {
    const REACH: isize = 5;
    let place = |step: isize| {
        let x = at.0.checked_add_signed(out.0 * step)?;
        let y = at.1.checked_add_signed(out.1 * step)?;
        (x < picture.width && y < picture.height).then_some((x, y))
    };
    let colour = |step: isize| place(step).map(|(x, y)| picture.at(x, y));
    let (inner, outer) = (colour(-REACH)?, colour(REACH)?);
    let difference = [0, 1, 2].map(|c| inner[c] - outer[c]);
    let size: f32 = difference.iter().map(|d| d * d).sum();
    if size < 25.0 {
        return None;
    }
    let share = |colour: [f32; 3]| (0..3).map(|c| (colour[c] - outer[c]) * difference[c]).sum::<f32>() / size;
    // From outside inwards: the first crossing of one half is the edge.
    for step in (-REACH..REACH).rev() {
        let (near, far) = (share(colour(step)?), share(colour(step + 1)?));
        if near >= 0.5 && far < 0.5 {
            let along = step as f64 + f64::from((near - 0.5) / (near - far));
            return Some((at.0 as f64 + out.0 as f64 * along, at.1 as f64 + out.1 as f64 * along));
        }
    }
    None
}

/// By how much the picture must be turned so that the two sides agree best.
fn tilt(edge: &[Place], centre: Place) -> Result<f64, PhotoError> {
    let unlike = |angle: f64| Upright::new(edge, centre, angle).map_or(f64::MAX, |upright| upright.spread());
    let search = |around: f64, reach: f64, steps: i32| {
        let angles = (-steps..=steps).map(|step| around + reach * f64::from(step) / f64::from(steps));
        angles.map(|angle| (unlike(angle), angle)).min_by(|a, b| a.0.total_cmp(&b.0)).map_or(around, |best| best.1)
    };
    let coarse = search(0.0, 2.0 * MOST_TILT, 24);
    let fine = search(search(coarse, 0.012, 6), 0.002, 5);
    if fine.abs() > MOST_TILT { Err(PhotoError::TooTilted) } else { Ok(fine) }
}

/// The edge with the axis upright: its left and right side at equal steps from the foot to the rim.
struct Upright {
    top: f64,
    bottom: f64,
    axis: f64,
    left: Vec<f64>,
    right: Vec<f64>,
}

impl Upright {
    fn new(edge: &[Place], centre: Place, tilt: f64) -> Option<Upright> {
        let turned: Vec<Place> = edge.iter().map(|place| turn(*place, centre, -tilt)).collect();
        let (top, bottom) = ends(&turned)?;
        let rows = (bottom - top).ceil() as usize + 1;
        let (mut left, mut right) = (vec![f64::MAX; rows], vec![f64::MIN; rows]);
        for (x, y) in &turned {
            let row = (y - top).round();
            if row < 0.0 || row as usize >= rows {
                continue;
            }
            left[row as usize] = left[row as usize].min(*x);
            right[row as usize] = right[row as usize].max(*x);
        }
        let left = at_steps(&left.iter().map(|x| Some(*x).filter(|x| *x < f64::MAX)).collect::<Vec<_>>())?;
        let right = at_steps(&right.iter().map(|x| Some(*x).filter(|x| *x > f64::MIN)).collect::<Vec<_>>())?;
        let mut upright = Upright { top, bottom, axis: 0.0, left, right };
        upright.axis = median(upright.middles());
        Some(upright)
    }

    fn height(&self) -> f64 {
        self.bottom - self.top
    }

    fn width(&self) -> f64 {
        2.0 * self.left.iter().zip(&self.right).map(|(left, right)| (self.axis - left).min(right - self.axis)).fold(0.0, f64::max)
    }

    fn middles(&self) -> Vec<f64> {
        // The ends are curved by the perspective of foot and rim, and say little about the axis.
        let inner = STEPS / 16..=STEPS - STEPS / 16;
        inner.map(|at| (self.left[at] + self.right[at]) / 2.0).collect()
    }

    /// How far the middles of left and right stray from one axis: the median, so that a handle does not count.
    fn spread(&self) -> f64 {
        median(self.middles().into_iter().map(|middle| (middle - self.axis).abs()).collect())
    }

    /// Half widths without the handle, its side, and how far the two sides differ elsewhere as a part of the width.
    fn halves(&self) -> Result<(Vec<f64>, Option<Side>, f64), PhotoError> {
        let width = self.width();
        let pairs: Vec<(f64, f64)> =
            self.left.iter().zip(&self.right).map(|(left, right)| (self.axis - left, right - self.axis)).collect();
        let differs = |side: Side| {
            let out = |(left, right): (f64, f64)| if side == Side::Left { left - right } else { right - left };
            let over: Vec<bool> = pairs.iter().map(|pair| out(*pair) > HANDLE * width + 1.0).collect();
            stretches(&over, (LEAST_HANDLE * STEPS as f64) as usize)
        };
        let (on_left, on_right) = (differs(Side::Left), differs(Side::Right));
        let reach = |over: &[bool]| over.iter().filter(|over| **over).count();
        let handle = match (reach(&on_left), reach(&on_right)) {
            (0, 0) => None,
            (left, right) if left > 3 * right => Some(Side::Left),
            (left, right) if right > 3 * left => Some(Side::Right),
            _ => return Err(PhotoError::Lopsided),
        };
        let over = match handle {
            Some(Side::Left) => widened(&on_left),
            Some(Side::Right) => widened(&on_right),
            None => vec![false; pairs.len()],
        };
        let mut apart: Vec<f64> = Vec::new();
        let radii: Vec<f64> = pairs
            .iter()
            .zip(&over)
            .map(|(&(left, right), over)| match (over, handle) {
                (true, Some(Side::Left)) => right,
                (true, Some(Side::Right)) => left,
                _ => {
                    apart.push((left - right).abs() / width);
                    f64::midpoint(left, right)
                }
            })
            .collect();
        if apart.len() * 4 < pairs.len() {
            return Err(PhotoError::Lopsided);
        }
        apart.sort_by(f64::total_cmp);
        // The ends of the outline are left out of it, as they are of the axis.
        let unlike = apart[apart.len() * 85 / 100];
        if unlike > MOST_UNLIKE {
            return Err(PhotoError::Lopsided);
        }
        Ok((radii, handle, unlike))
    }
}

/// Top and bottom of the edge, each as the middle of its outermost places, so that one stray place does not move it.
fn ends(places: &[Place]) -> Option<(f64, f64)> {
    let mut heights: Vec<f64> = places.iter().map(|(_, y)| *y).collect();
    if heights.len() < 50 {
        return None;
    }
    heights.sort_by(f64::total_cmp);
    Some((heights[2], heights[heights.len() - 3]))
}

/// A side by rows, with gaps, at equal steps from the foot (the last row) to the rim (the first).
fn at_steps(rows: &[Option<f64>]) -> Option<Vec<f64>> {
    let known: Vec<(f64, f64)> =
        rows.iter().enumerate().filter_map(|(row, x)| Some((row as f64, (*x)?))).collect();
    if known.len() * 4 < rows.len() * 3 {
        return None;
    }
    let last = rows.len() as f64 - 1.0;
    let value = |row: f64| {
        let after = known.partition_point(|(known, _)| *known < row).clamp(1, known.len() - 1);
        let ((before, from), (after, to)) = (known[after - 1], known[after]);
        let share = ((row - before) / (after - before)).clamp(0.0, 1.0);
        from + share * (to - from)
    };
    // The mean over the rows that a step stands for.
    let half = (last / STEPS as f64 / 2.0).max(0.5);
    let mean = |row: f64| {
        let parts = [-0.8, -0.4, 0.0, 0.4, 0.8].map(|part| value((row + part * half).clamp(0.0, last)));
        parts.iter().sum::<f64>() / 5.0
    };
    Some((0..=STEPS).map(|at| mean(last * (1.0 - at as f64 / STEPS as f64))).collect())
}

/// Only the runs of at least so many.
fn stretches(over: &[bool], least: usize) -> Vec<bool> {
    let mut kept = vec![false; over.len()];
    let mut at = 0;
    while at < over.len() {
        let end = (at..over.len()).find(|&place| !over[place]).unwrap_or(over.len());
        if end - at >= least {
            kept[at..end].fill(true);
        }
        at = end + 1;
    }
    kept
}

/// The same with some room on both sides.
fn widened(over: &[bool]) -> Vec<bool> {
    let room = (ROOT * over.len() as f64) as usize;
    (0..over.len()).map(|at| over[at.saturating_sub(room)..(at + room + 1).min(over.len())].contains(&true)).collect()
}

fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(f64::MAX)
}
