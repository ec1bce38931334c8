//! The arcs in which the circles of foot and rim are seen.

use nalgebra::{SMatrix, SVector};

use super::outline::{CLEAR, Place};
use super::upright::Upright;
use super::{EndArc, STEPS};

/// How far the edge of a rim strays at least, pixels.
const LEAST_STRAY: f64 = 0.7;
/// How far out along the arc of a rim it is followed, as a part of its half width: beyond, it turns into the wall.
const FOLLOWED: f64 = 0.75;
/// A foot's arc is looked for in so many columns on either side of the axis, so far apart as a part of its half width.
const COLUMNS: i32 = 10;
const APART: f64 = 0.065;
/// Pixels from one place of a column to the next at which its edges are looked at.
const TABLE_STEP: f64 = 0.125;
/// How far below and above the end of the edge it is looked for, as a part of the height, and how deep it is at most, as a part
/// of its half width.
const BELOW: f64 = 0.2;
const ABOVE: f64 = 0.14;
const DEEPEST: f64 = 0.8;
/// How sharp it is at least: against the sharpest, for an end, and for an arc that says how the lens was held.
const NEARLY: f64 = 0.75;
const SHARP: f64 = 0.3;
const SHARP_ARC: f64 = 0.5;

/// The flat arc in which the circle of an end is seen.
pub(super) struct Arc {
    /// Where it crosses the axis.
    pub(super) end: f64,
    /// Its slope there, down over across.
    pub(super) slope: f64,
    /// One standard uncertainty of the slope: how far the edge strays from the arc, over the arc's width.
    pub(super) error: f64,
}

/// A parabola through the edge at one end of the axis, within a part of the half width beside it. `None` where there is no
/// such end.
pub(super) fn at_end(line: &[Place], upright: &Upright, at: usize, part: f64) -> Option<Arc> {
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
    let (mut squares, mut count) = (0.0, 0.0);
    for (x, y) in line {
        let across = (x - upright.axis) / half;
        if across.abs() < 1.0 && (y - end).abs() < near {
            squares += (y - fit[0] - fit[1] * across - fit[2] * across * across).powi(2);
            count += 1.0;
        }
    }
    let stray = f64::sqrt(squares / count).max(LEAST_STRAY);
    Some(Arc { end: fit[0], slope: fit[1] / half, error: stray / half })
}

/// The half ellipse in which the circle of the rim is seen: how deep it is says from how high the lens looks. `None` where
/// there is no such end.
///
/// Source: a circle that is seen from an angle e above its plane is an ellipse whose axes are as sin e to 1; A. Criminisi,
/// I. Reid, A. Zisserman, Single View Metrology, IJCV 40 (2000), for measuring from one picture with a known height.
pub(super) fn of_rim(line: &[Place], upright: &Upright) -> Option<EndArc> {
    let step = upright.height() / STEPS as f64;
    // The arc ends where the wall begins. Of a wall that widens, each step farther in gives a wider arc that is deeper, so the
    // first step counts that lies beyond its own arc.
    (STEPS / 48..STEPS / 4).find_map(|inner| {
        let beyond = STEPS - inner;
        let half = (upright.axis - upright.left[beyond]).min(upright.right[beyond] - upright.axis);
        let near = inner as f64 * step + upright.height() / 48.0;
        let places: Vec<(f64, f64)> = line
            .iter()
            .map(|(x, y)| ((x - upright.axis) / half, y - upright.top))
            .filter(|(across, inside)| across.abs() < FOLLOWED && inside.abs() < near)
            .collect();
        let (fit, stray) = half_ellipse(&places)?;
        (fit[2].max(0.0) <= (inner - STEPS / 48) as f64 * step).then_some(EndArc { sagitta: fit[2], half, stray })
    })
}

/// Where a foot ends below, and its arc, where that is clear enough to say from how high it is seen.
pub(super) struct Foot {
    pub(super) end: f64,
    pub(super) arc: Option<EndArc>,
}

/// The foot as the picture shows it: of all half ellipses beside the axis that are nearly as sharp as the sharpest, the lowest.
/// A glaze line is one too, but higher; the border of a shadow is lower, but soft. `sharpness` says how sharp an edge is beside
/// the axis at a height.
pub(super) fn of_foot(upright: &Upright, sharpness: impl Fn(f64, f64) -> f32) -> Option<Foot> {
    let beyond = STEPS / 20;
    let half = (upright.axis - upright.left[beyond]).min(upright.right[beyond] - upright.axis);
    let (below, above) = ((BELOW * upright.height()) as i32, (ABOVE * upright.height()) as i32);
    let deepest = (DEEPEST * half) as i32;
    let columns: Vec<Column> = (-COLUMNS..=COLUMNS)
        .map(|column| {
            let across = APART * f64::from(column);
            let depth = 1.0 - (1.0 - across * across).sqrt();
            let highest = upright.bottom - f64::from(above) - f64::from(deepest) * depth - 1.0;
            let lowest = upright.bottom + f64::from(below) + 3.0;
            let count = ((lowest - highest) / TABLE_STEP) as usize + 2;
            let clear = (0..count).map(|at| sharpness(across * half, highest + TABLE_STEP * at as f64));
            Column { depth, highest, clear: clear.map(|sharp| sharp / (sharp + CLEAR)).collect() }
        })
        .collect();
    let score = |end: f64, sagitta: f64| {
        let clear = columns.iter().map(|column| column.clear_at(end - sagitta * column.depth));
        f64::from(clear.sum::<f32>()) / columns.len() as f64
    };
    let sharpest: Vec<Candidate> = (-below..=above)
        .filter_map(|up| {
            let end = upright.bottom - f64::from(up);
            let all =
                (-2..=deepest).map(f64::from).map(|sagitta| Candidate { end, sagitta, score: score(end, sagitta) });
            all.max_by(|a, b| a.score.total_cmp(&b.score))
        })
        .collect();
    let most = sharpest.iter().map(|one| one.score).fold(0.0, f64::max);
    let is_peak = |at: usize| {
        let near = at.saturating_sub(3)..(at + 4).min(sharpest.len());
        sharpest[near].iter().all(|near| near.score <= sharpest[at].score)
    };
    let at = (0..sharpest.len()).find(|at| sharpest[*at].score >= NEARLY * most && is_peak(*at))?;
    let Candidate { end, sagitta, score } = sharpest[at];
    let arc = (score > SHARP_ARC).then_some(EndArc { sagitta, half, stray: 0.5 });
    (score > SHARP).then_some(Foot { end, arc })
}

/// How clear the edges are down one column of the picture.
struct Column {
    /// How far up an arc whose depth is 1 has come here.
    depth: f64,
    highest: f64,
    /// 0 to 1, from the highest place down.
    clear: Vec<f32>,
}

impl Column {
    fn clear_at(&self, y: f64) -> f32 {
        let place = ((y - self.highest) / TABLE_STEP).clamp(0.0, (self.clear.len() - 2) as f64);
        let before = place as usize;
        let (here, next) = (self.clear[before], self.clear[before + 1]);
        here + (place - before as f64) as f32 * (next - here)
    }
}

/// An arc that a foot may have.
#[derive(Clone, Copy)]
struct Candidate {
    end: f64,
    sagitta: f64,
    score: f64,
}

/// The half ellipse through these places: how far inwards its middle is, its slope and its depth; and how far the places
/// stray from it (the median). Places are across in parts of the half width, and inwards from the end.
fn half_ellipse(places: &[(f64, f64)]) -> Option<(SVector<f64, 3>, f64)> {
    // At first what lies about the median counts: a bulge is no arc.
    let mut levels: Vec<f64> = places.iter().map(|place| place.1).collect();
    levels.sort_by(f64::total_cmp);
    let middle = *levels.get(levels.len() / 2)?;
    let mut weights: Vec<f64> = places.iter().map(|place| 1.0 / (1.0 + (place.1 - middle).abs())).collect();
    let mut fit = SVector::<f64, 3>::zeros();
    let mut usual = 0.0;
    for _ in 0..6 {
        let mut normal = SMatrix::<f64, 3, 3>::zeros();
        let mut sums = SVector::<f64, 3>::zeros();
        for (&(across, inside), weight) in places.iter().zip(&weights) {
            let place = SVector::from([1.0, across, 1.0 - (1.0 - across * across).sqrt()]);
            normal += *weight * place * place.transpose();
            sums += *weight * inside * place;
        }
        if normal[(0, 0)] < 12.0 {
            return None;
        }
        fit = normal.cholesky()?.solve(&sums);
        let off = |&(across, inside): &(f64, f64)| {
            inside - fit[0] - fit[1] * across - fit[2] * (1.0 - (1.0 - across * across).sqrt())
        };
        let mut strays: Vec<f64> = places.iter().map(|place| off(place).abs()).collect();
        weights = strays.iter().map(|stray| (1.0 - (stray / (4.0 * usual + 1.0)).powi(2)).max(0.0).powi(2)).collect();
        strays.sort_by(f64::total_cmp);
        usual = strays[strays.len() / 2];
    }
    Some((fit, usual))
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    #[test]
    fn a_half_ellipse_is_found_beside_a_bulge_in_its_middle() {
        let depth = |across: f64| 3.0 + 9.0 * (1.0 - (1.0 - across * across).sqrt());
        let places: Vec<(f64, f64)> = (-75..=75)
            .map(|at| f64::from(at) / 100.0)
            .map(|across| (across, depth(across) - if across.abs() < 0.15 { 7.0 } else { 0.0 }))
            .collect();
        let (fit, stray) = half_ellipse(&places).unwrap();
        assert_relative_eq!(fit[2], 9.0, epsilon = 0.5);
        assert_relative_eq!(fit[0], 3.0, epsilon = 0.3);
        assert!(stray < 0.3, "{stray}");
    }
}
