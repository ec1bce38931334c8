//! Which part of a picture is the pot: what strays from the ground is cut out so that the border of the cut is short and lies
//! on edges, and the shadow is taken off its foot.

use super::PhotoError;
use super::cut::{Grid, least_cut};
use super::ground::{Coarse, Colour, Ground, MOST_COST, MOST_FALL, border, less, median, middle};
use super::picture::Picture;

/// Which pixels of the small picture belong to the pot.
pub(super) struct Mask {
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) inside: Vec<bool>,
}

impl Mask {
    pub(super) fn at(&self, x: usize, y: usize) -> bool {
        self.inside[y * self.width + x]
    }
}

/// A ground that strays by more than this (of 255) from its own colours is not plain.
const BUSIEST: f32 = 16.0;
/// The mean of a picture that is too dark, of 255.
const DARK: f32 = 22.0;
/// The most that a hue counts for, and the part of a pot's half width in which its own colour is taken.
const MOST_OFF: f32 = 2.0;
const CORE: f32 = 0.35;
/// Part of a pot's height above the ground in which a shadow may cling to it.
const SHADOW_REACH: f32 = 0.35;
/// A change of this much (of 255) along the picture's edge is the border of something; a piece that is cut off has a few of
/// them, with its bands of glaze.
const JUMP: f32 = 16.0;
const MOST_JUMPS: usize = 16;
/// What comes as near to the picture's edge as this many places runs out of it.
const EDGE: usize = 4;
/// Least part of the picture that a pot takes up, and that anything does.
const LEAST_POT: f64 = 0.015;
const LEAST_THING: f64 = 0.000_8;
/// A second thing is one of at least this part of the pot; so many of them are a ground that is not plain.
const SECOND: f64 = 0.05;
const MANY: usize = 4;

/// The pixels of the one pot in the picture.
pub(super) fn pot(picture: &Picture) -> Result<(Ground, Mask), PhotoError> {
    let mean =
        picture.pixels.iter().map(|pixel| pixel.iter().sum::<f32>() / 3.0).sum::<f32>() / picture.pixels.len() as f32;
    if mean < DARK {
        return Err(PhotoError::TooDark);
    }
    let coarse = Coarse::of(picture);
    let edges = steepness(&coarse);
    let mut sorted = edges.clone();
    sorted.sort_by(f32::total_cmp);
    // Edges of the ground's own, of which most of the picture is.
    let grain = sorted[sorted.len() * 7 / 10].max(1.5);
    let first = Ground::learning(&coarse);
    if first.noise.light > BUSIEST || first.noise.colour > BUSIEST {
        return Err(if is_busy(picture) { PhotoError::Busy } else { PhotoError::CutOff });
    }
    let part = first.cut(&coarse, &edges, grain);
    let ground = first.beside(&coarse, &part);
    let part = ground.cut(&coarse, &edges, grain);
    let mut inside = largest(coarse.grid, &part).map_err(|error| match error {
        PhotoError::CutOff | PhotoError::Nothing if is_busy(picture) => PhotoError::Busy,
        error => error,
    })?;
    part_from_shadow(&coarse, &ground, &edges, grain, &mut inside);
    fill_rows(coarse.grid, &mut inside);
    let inside = without_whiskers(coarse.grid, &inside);
    let alone: Vec<f32> =
        part.iter().zip(&inside).map(|(part, inside)| if *inside { part.max(0.51) } else { part.min(0.49) }).collect();
    Ok((ground, enlarged(picture, &coarse, &alone)))
}

/// Takes the shadow off the foot. What was cut out is cut once more there: each place is nearer in hue to the pot at its
/// height, or to the ground in less light; where neither is known, the edges decide.
///
/// Source: a second cut within the first by what both sides look like is C. Rother, V. Kolmogorov, A. Blake, GrabCut, ACM
/// Trans. Graphics 23 (2004).
fn part_from_shadow(coarse: &Coarse, ground: &Ground, edges: &[f32], grain: f32, inside: &mut [bool]) {
    let Grid { width, height } = coarse.grid;
    let spans: Vec<(usize, usize, usize)> =
        (0..height).filter_map(|y| span(inside, width, y).map(|(first, last)| (y, first, last))).collect();
    let low = spans.len() - (SHADOW_REACH * spans.len() as f32) as usize;
    let (Some(upper), Some(lower)) = (spans.get(..low), spans.get(low..)) else { return };
    let Some(axis) = AxisLine::through(upper) else { return };
    let least = lower.iter().map(|(_, first, last)| last - first).min().unwrap_or(0) as f32 / 2.0;
    // The pot's own colour at each height.
    let core = |y: usize| {
        let (at, reach) = (axis.at(y), (CORE * least).max(1.0));
        let columns = (at - reach).max(0.0) as usize..((at + reach) as usize + 1).min(width);
        middle((y.saturating_sub(1)..(y + 2).min(height)).flat_map(|y| columns.clone().map(move |x| coarse.at(x, y))))
    };
    let first_low = spans[low].0;
    let cores: Vec<Colour> = (first_low..height).map(core).collect();
    let cost: Vec<f32> = (0..width * height)
        .map(|at| {
            let y = at / width;
            if !inside[at] {
                return MOST_COST;
            }
            if y < first_low {
                return -MOST_COST;
            }
            let (here, bare, pot) = (coarse.pixels[at], ground.bare[at], cores[y - first_low]);
            (ground.hue_off(bare, pot, here).min(MOST_OFF) - ground.as_shade(bare, here).min(MOST_OFF)).clamp(-1.0, 1.0)
        })
        .collect();
    let border: Vec<f32> = edges.iter().map(|edge| border(*edge, grain)).collect();
    let part = least_cut(coarse.grid, &cost, &border);
    for (inside, part) in inside.iter_mut().zip(part) {
        *inside &= part > 0.5;
    }
}

/// Fills what lies between the two sides of a row near the ground: a mirrored window there looks like no pot.
fn fill_rows(grid: Grid, inside: &mut [bool]) {
    let rows: Vec<usize> = (0..grid.height).filter(|y| span(inside, grid.width, *y).is_some()).collect();
    for &y in &rows[rows.len() - (SHADOW_REACH * rows.len() as f32) as usize..] {
        if let Some((first, last)) = span(inside, grid.width, y) {
            inside[y * grid.width + first..=y * grid.width + last].fill(true);
        }
    }
}

/// The largest of what is left when everything thinner than three places is taken off.
fn without_whiskers(grid: Grid, inside: &[bool]) -> Vec<bool> {
    let Grid { width, height } = grid;
    let around = |at: usize| {
        let (x, y) = (at % width, at / width);
        let near = |by: usize, to: usize| by.saturating_sub(1)..(by + 2).min(to);
        near(y, height).flat_map(move |y| near(x, width).map(move |x| y * width + x))
    };
    let thick: Vec<bool> = (0..inside.len()).map(|at| around(at).all(|near| inside[near])).collect();
    let parts = grid.components(|at| thick[at]);
    let Some(largest) = parts.largest() else { return vec![false; inside.len()] };
    (0..inside.len()).map(|at| inside[at] && around(at).any(|near| parts.has(largest, near))).collect()
}

/// Where the first and the last place of a row lie.
fn span(inside: &[bool], width: usize, y: usize) -> Option<(usize, usize)> {
    let row = &inside[y * width..(y + 1) * width];
    Some((row.iter().position(|is| *is)?, row.iter().rposition(|is| *is)?))
}

/// The axis of the pot on the grid, about.
struct AxisLine {
    at: f32,
    from: f32,
    slope: f32,
}

impl AxisLine {
    /// Through the middles of these rows, by the medians of their upper and their lower half.
    fn through(spans: &[(usize, usize, usize)]) -> Option<AxisLine> {
        let half = |spans: &[(usize, usize, usize)]| {
            let row = median(spans.iter().map(|(y, ..)| *y as f32).collect());
            (row, median(spans.iter().map(|(_, first, last)| (first + last) as f32 / 2.0).collect()))
        };
        let (upper, lower) = spans.split_at(spans.len() / 2);
        if upper.is_empty() {
            return None;
        }
        let ((high, above), (low, below)) = (half(upper), half(lower));
        let slope = ((below - above) / (low - high).max(1.0)).clamp(-MOST_FALL, MOST_FALL);
        Some(AxisLine { at: below, from: low, slope })
    }

    fn at(&self, y: usize) -> f32 {
        self.at + self.slope * (y as f32 - self.from)
    }
}

/// Whether the colours along the picture's edge change many times: a piece that is cut off has only a few such borders.
fn is_busy(picture: &Picture) -> bool {
    const STEP: usize = 4;
    let (width, height) = (picture.width, picture.height);
    let inset = (0.02 * width.min(height) as f64) as usize;
    let (right, low) = (width - 1 - inset, height - 1 - inset);
    let across = |y: usize| (inset..right).step_by(STEP).map(move |x| (x, y));
    let down = |x: usize| (inset..low).step_by(STEP).map(move |y| (x, y));
    let jumps = |places: Vec<(usize, usize)>| {
        let apart = |a: (usize, usize), b: (usize, usize)| {
            let (a, b) = (picture.at(a.0, a.1), picture.at(b.0, b.1));
            a.iter().zip(b).map(|(a, b)| (a - b).abs()).fold(0.0, f32::max)
        };
        places.windows(2).filter(|pair| apart(pair[0], pair[1]) > JUMP).count()
    };
    let sides = [across(inset).collect(), across(low).collect(), down(inset).collect(), down(right).collect()];
    let all: usize = sides.into_iter().map(jumps).sum();
    all > MOST_JUMPS
}

/// The mask of the small picture from how far each place of the grid belongs to the pot.
fn enlarged(picture: &Picture, coarse: &Coarse, part: &[f32]) -> Mask {
    let Grid { width, height } = coarse.grid;
    let step = coarse.step as f32;
    let between = |value: usize, size: usize| {
        let place = ((value as f32 + 0.5) / step - 0.5).clamp(0.0, (size - 1) as f32);
        let before = (place as usize).min(size - 2);
        (before, place - before as f32)
    };
    let inside = (0..picture.height)
        .flat_map(|y| (0..picture.width).map(move |x| (x, y)))
        .map(|(x, y)| {
            let ((column, across), (row, down)) = (between(x, width), between(y, height));
            let line = |row: usize| {
                let at = row * width + column;
                part[at] + across * (part[at + 1] - part[at])
            };
            line(row) + down * (line(row + 1) - line(row)) > 0.5
        })
        .collect();
    Mask { width: picture.width, height: picture.height, inside }
}

/// How steeply brightness or colour changes at each place of the grid, of 255 a place.
fn steepness(coarse: &Coarse) -> Vec<f32> {
    let Grid { width, height } = coarse.grid;
    let mut edges = vec![0.0; width * height];
    for y in 1..height - 1 {
        for x in 1..width - 1 {
            let across = less(coarse.at(x + 1, y), coarse.at(x - 1, y));
            let down = less(coarse.at(x, y + 1), coarse.at(x, y - 1));
            edges[y * width + x] = (0..3).map(|c| across[c].hypot(down[c]) / 2.0).fold(0.0, f32::max);
        }
    }
    edges
}

/// The largest thing that is not ground, with what it encloses.
fn largest(grid: Grid, part: &[f32]) -> Result<Vec<bool>, PhotoError> {
    let Grid { width, height } = grid;
    let things = grid.components(|at| part[at] > 0.5);
    let share_of = |size: usize| size as f64 / (width * height) as f64;
    let Some(pot) = things.largest() else { return Err(PhotoError::Nothing) };
    let (size, share) = (things.sizes[pot], share_of(things.sizes[pot]));
    let is_other = |thing: &usize| *thing != pot && share_of(things.sizes[*thing]) > LEAST_THING;
    let others: Vec<usize> = (0..things.sizes.len()).filter(is_other).map(|thing| things.sizes[thing]).collect();
    if share < LEAST_POT {
        return Err(if share < LEAST_THING { PhotoError::Nothing } else { PhotoError::TooFar });
    }
    let inside: Vec<bool> = (0..width * height).map(|at| things.has(pot, at)).collect();
    let is_near_edge = |at: usize| {
        let (x, y) = (at % width, at / width);
        x.min(y).min(width - 1 - x).min(height - 1 - y) < EDGE
    };
    let cut_off = inside.iter().enumerate().any(|(at, inside)| *inside && is_near_edge(at));
    if cut_off {
        return Err(PhotoError::CutOff);
    }
    if others.len() >= MANY {
        return Err(PhotoError::Busy);
    }
    if others.iter().any(|other| *other as f64 > SECOND * size as f64) {
        return Err(PhotoError::NotAlone);
    }
    // What cannot be reached from the edge is enclosed.
    let mut outside = vec![false; width * height];
    let mut waiting = vec![0];
    while let Some(at) = waiting.pop() {
        if outside[at] || inside[at] {
            continue;
        }
        outside[at] = true;
        waiting.extend(grid.neighbours(at));
    }
    Ok(outside.into_iter().map(|outside| !outside).collect())
}
