//! What the ground behind and under a pot looks like: its colours are carried inwards from the picture's border, along the line
//! between wall and table.

use nalgebra::{SMatrix, SVector};

use super::cut::{Grid, least_cut};
use super::picture::Picture;

/// The longer side of the grid on which the cut is sought, about.
const LONGEST: usize = 220;
/// Part of the grid's sides, from each edge, in which the ground is learnt.
const STRIP: f32 = 0.05;
/// Reach over which the colours of the upper and the lower edge are smoothed, as a part of the width.
const SMOOTH: f32 = 0.08;
/// The most that the ground differs along the upper or the lower edge otherwise than from side to side, of 255.
const MOST_MEND: f32 = 30.0;
/// Least difference (of 255) that tells a pot from its ground: in brightness, and in colour alone.
const LEAST_LIGHT: f32 = 10.0;
const LEAST_COLOUR: f32 = 6.0;
/// How many times what the ground strays tells another thing.
const SIGMAS: f32 = 3.0;
/// The darkest that any shadow is, against the ground beside it; lighter than the other, a place is in no shadow.
const DARKEST: f32 = 0.12;
const LIT: f32 = 0.94;
/// The darkest that a soft shadow on the ground is, and what part of another thing it may count for at most.
const SHADOW_DEPTH: f32 = 0.35;
const SHADOW_COST: f32 = 0.7;
/// How much the hue of a shadow differs from that of its ground, of 255, in no light at all.
const TINT: f32 = 25.0;
/// How steep a shadow is at most, in edges of the ground's own.
const SOFT: f32 = 3.0;
/// A place is in no shadow that is brighter than its ground by more than this part.
const BRIGHTER: f32 = 0.1;
/// What a place counts for at most, either way.
pub(super) const MOST_COST: f32 = 2.0;
/// The most that the line between wall and table falls, rows a column, and the least that the colour changes at it, of 255.
pub(super) const MOST_FALL: f32 = 0.14;
const LEAST_STEP: f32 = 5.0;
/// What a unit of border costs on plain ground, and least on an edge.
const BORDER: f32 = 3.0;
const LEAST_BORDER: f32 = 0.12;

pub(super) type Colour = [f32; 3];

fn dot(a: Colour, b: Colour) -> f32 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn mix(a: Colour, b: Colour, share: f32) -> Colour {
    [0, 1, 2].map(|c| a[c] + share * (b[c] - a[c]))
}

pub(super) fn less(a: Colour, b: Colour) -> Colour {
    [0, 1, 2].map(|c| a[c] - b[c])
}

/// How far a pixel is from a colour: along that colour, which light and shadow do, and across it, which only another colour
/// does; of 255.
#[derive(Clone, Copy, Default)]
pub(super) struct Stray {
    pub(super) light: f32,
    pub(super) colour: f32,
}

impl Stray {
    fn of(bare: Colour, here: Colour) -> Stray {
        let length = dot(bare, bare).sqrt().max(1.0);
        let off = less(here, bare);
        let light = dot(off, bare) / length;
        let across = [0, 1, 2].map(|c| off[c] - light * bare[c] / length);
        Stray { light, colour: dot(across, across).sqrt() }
    }
}

/// The picture on a coarse grid.
pub(super) struct Coarse {
    pub(super) grid: Grid,
    pub(super) step: usize,
    pub(super) pixels: Vec<Colour>,
}

impl Coarse {
    pub(super) fn of(picture: &Picture) -> Coarse {
        let step = picture.width.max(picture.height).div_ceil(LONGEST).max(1);
        let grid = Grid { width: picture.width / step, height: picture.height / step };
        let share = 1.0 / (step * step) as f32;
        let mean = |x: usize, y: usize| {
            let mut sum = [0.0; 3];
            for row in y * step..(y + 1) * step {
                for pixel in &picture.pixels[row * picture.width + x * step..][..step] {
                    sum = [0, 1, 2].map(|c| sum[c] + pixel[c]);
                }
            }
            sum.map(|sum| sum * share)
        };
        let pixels =
            (0..grid.height).flat_map(|y| (0..grid.width).map(move |x| (x, y))).map(|(x, y)| mean(x, y)).collect();
        Coarse { grid, step, pixels }
    }

    pub(super) fn at(&self, x: usize, y: usize) -> Colour {
        self.pixels[y * self.grid.width + x]
    }
}

/// The colour of the ground at each place of the grid, and how far it strays from it.
#[derive(Clone)]
pub(super) struct Ground {
    grid: Grid,
    step: usize,
    pub(super) bare: Vec<Colour>,
    pub(super) noise: Stray,
    /// Where it was learnt anew, and how far it strays there.
    adapted: Vec<bool>,
    near: Stray,
}

impl Ground {
    /// Carried inwards from the picture's four edges: from left to right along the line between wall and table, and mended
    /// by what the upper and the lower edge are otherwise.
    ///
    /// Source: a surface between four curves is S. Coons, Surfaces for Computer-Aided Design of Space Forms, MIT (1967).
    pub(super) fn learning(coarse: &Coarse) -> Ground {
        let Grid { width, height } = coarse.grid;
        let strip = |size: usize| ((size as f32 * STRIP) as usize).max(3);
        let (wide, tall) = (strip(width), strip(height));
        let side = |from: usize| -> Vec<Colour> {
            let row = |y: usize| middle((from..from + wide).map(|x| coarse.at(x, y)));
            (0..height).map(row).collect()
        };
        let (left, right) = (side(1), side(width - wide - 1));
        let fall = fall(&left, &right, width);
        let along = |x: f32, y: f32| {
            let last = (height - 1) as f32;
            let row = |row: f32| row.round().clamp(1.0, last - 1.0) as usize;
            let (at, most) = (x / (width - 1) as f32, (width - 1) as f32);
            mix(left[row(y - fall * x)], right[row(y + fall * (most - x))], at)
        };
        let reach = ((SMOOTH * width as f32) as usize).max(2);
        let mended = |from: usize| -> Vec<Colour> {
            let column = |x: usize| middle((from..from + tall).map(|y| coarse.at(x, y)));
            let seen: Vec<Colour> = (0..width).map(column).collect();
            let mends: Vec<Colour> = (0..width)
                .map(|x| {
                    let near = &seen[x.saturating_sub(reach)..(x + reach + 1).min(width)];
                    less(middle(near.iter().copied()), along(x as f32, (from + tall / 2) as f32))
                })
                .collect();
            // A piece that runs out of the picture is no ground, and light that falls off to the sides is.
            let usual = parabola(&mends);
            let is_ground = |mend: Colour, usual: Colour| dot(less(mend, usual), less(mend, usual)).sqrt() < MOST_MEND;
            let kept = mends.into_iter().zip(usual);
            kept.map(|(mend, usual)| if is_ground(mend, usual) { mend } else { usual }).collect()
        };
        let (above, below) = (mended(1), mended(height - tall - 1));
        let bare: Vec<Colour> = (0..height)
            .flat_map(|y| (0..width).map(move |x| (x, y)))
            .map(|(x, y)| {
                let down = y as f32 / (height - 1) as f32;
                let (row, mend) = (along(x as f32, y as f32), mix(above[x], below[x], down));
                [0, 1, 2].map(|c| (row[c] + mend[c]).clamp(2.0, 255.0))
            })
            .collect();
        let adapted = vec![false; bare.len()];
        let unknown = Stray::default();
        let mut ground = Ground { grid: coarse.grid, step: coarse.step, bare, noise: unknown, adapted, near: unknown };
        let is_strip = |x: usize, y: usize| x < wide || x >= width - wide || y < tall || y >= height - tall;
        ground.measure(coarse, is_strip);
        ground
    }

    /// How far these places stray from it: the median times 1.48.
    fn measure(&mut self, coarse: &Coarse, counts: impl Fn(usize, usize) -> bool) {
        let Grid { width, height } = self.grid;
        let strays: Vec<Stray> = (0..height)
            .flat_map(|y| (0..width).map(move |x| (x, y)))
            .filter(|&(x, y)| counts(x, y))
            .map(|(x, y)| self.stray(coarse, x, y))
            .collect();
        self.noise = spread(&strays);
    }

    /// Learnt anew beside what was cut out, and beside what may be missing above and below it: along each row, from the
    /// ground to its left to that to its right.
    pub(super) fn beside(&self, coarse: &Coarse, part: &[f32]) -> Ground {
        const REACH: usize = 6;
        const ROOM: usize = 3;
        let Grid { width, height } = self.grid;
        let span = |y: usize| -> Option<(usize, usize)> {
            let row = &part[y * width..(y + 1) * width];
            Some((row.iter().position(|part| *part > 0.5)?, row.iter().rposition(|part| *part > 0.5)?))
        };
        let spans: Vec<(usize, (usize, usize))> = (0..height).filter_map(|y| Some((y, span(y)?))).collect();
        let (Some(&(top, _)), Some(&(bottom, _))) = (spans.first(), spans.last()) else { return self.clone() };
        let more = (bottom - top) / 4;
        let mut ground = self.clone();
        let mut strays = Vec::new();
        for y in top.saturating_sub(more).max(1)..(bottom + more + 1).min(height - 1) {
            let nearest = spans[spans.partition_point(|(row, _)| *row < y).min(spans.len() - 1)];
            let (first, last) = nearest.1;
            let (from, to) = (first.saturating_sub(ROOM), (last + ROOM).min(width - 1));
            let off = |x: usize| less(coarse.at(x, y), self.bare[y * width + x]);
            // What the ground is there otherwise than was thought.
            let mut change = |places: std::ops::Range<usize>| -> Option<Colour> {
                let plain: Vec<usize> =
                    places.filter(|&x| self.unlikeness(y * width + x, self.stray(coarse, x, y)) < 1.0).collect();
                if plain.len() < REACH / 2 {
                    return None;
                }
                let change = middle(plain.iter().map(|&x| off(x)));
                strays.extend(plain.iter().map(|&x| {
                    let bare = self.bare[y * width + x];
                    Stray::of([0, 1, 2].map(|c| bare[c] + change[c]), coarse.at(x, y))
                }));
                Some(change)
            };
            let before = change(from.saturating_sub(REACH)..from);
            let after = change(to + 1..(to + 1 + REACH).min(width));
            let (Some(before), Some(after)) = (before.or(after), after.or(before)) else { continue };
            for x in from..=to {
                let at = (x - from) as f32 / (to - from).max(1) as f32;
                let change = mix(before, after, at);
                ground.adapted[y * width + x] = true;
                ground.bare[y * width + x] =
                    [0, 1, 2].map(|c| (self.bare[y * width + x][c] + change[c]).clamp(2.0, 255.0));
            }
        }
        ground.near = spread(&strays);
        ground
    }

    fn stray(&self, coarse: &Coarse, x: usize, y: usize) -> Stray {
        Stray::of(self.bare[y * self.grid.width + x], coarse.at(x, y))
    }

    /// In parts of what tells a pot from its ground: 1 or more is another thing.
    fn unlikeness(&self, at: usize, stray: Stray) -> f32 {
        let noise = if self.adapted[at] { self.near } else { self.noise };
        let light = stray.light / LEAST_LIGHT.max(SIGMAS * noise.light);
        light.hypot(stray.colour / LEAST_COLOUR.max(SIGMAS * noise.colour))
    }

    /// Its colour at a place of the small picture.
    fn colour(&self, (x, y): (f64, f64)) -> Colour {
        let at = |value: f64, size: usize| ((value.max(0.0) as usize) / self.step).min(size - 1);
        self.bare[at(y, self.grid.height) * self.grid.width + at(x, self.grid.width)]
    }

    /// Whether this colour at this place may be a shadow.
    pub(super) fn is_shade(&self, place: (f64, f64), here: Colour) -> bool {
        self.shade(self.colour(place), here, DARKEST..LIT)
    }

    /// Whether a colour is that of the ground in less light: as bright as `depth` says, and of the same hue but for the
    /// tint of a room that alone lights a shadow.
    ///
    /// Source: brightness and chromaticity apart, as T. Horprasert, D. Harwood, L. Davis, A Statistical Approach for Real-time
    /// Robust Background Subtraction and Shadow Detection, ICCV Frame-Rate Workshop (1999).
    fn shade(&self, bare: Colour, here: Colour, depth: std::ops::Range<f32>) -> bool {
        let light = dot(here, bare) / dot(bare, bare);
        let off = [0, 1, 2].map(|c| here[c] / light.max(0.05) - bare[c]);
        let tint = LEAST_COLOUR.max(SIGMAS * self.noise.colour) + TINT * (1.0 - light).max(0.0);
        depth.contains(&light) && dot(off, off).sqrt() <= tint
    }

    /// How far a colour is from that of the ground in less light: 1 or more is another.
    pub(super) fn as_shade(&self, bare: Colour, here: Colour) -> f32 {
        let light = dot(here, bare) / dot(bare, bare);
        self.hue_off(bare, bare, here) + ((light - 1.0) / BRIGHTER).max(0.0)
    }

    /// How far the hue of a colour is from another's: 1 or more is another; at the brightness of the ground `bare`.
    pub(super) fn hue_off(&self, bare: Colour, other: Colour, here: Colour) -> f32 {
        let light = dot(here, other) / dot(other, other).max(1.0);
        let scale = (dot(bare, bare) / dot(other, other).max(1.0)).sqrt();
        let off = [0, 1, 2].map(|c| (here[c] / light.max(0.05) - other[c]) * scale);
        let darkness = (1.0 - dot(here, bare) / dot(bare, bare)).clamp(0.0, 1.0);
        dot(off, off).sqrt() / (LEAST_COLOUR.max(SIGMAS * self.noise.colour) + TINT * darkness)
    }

    /// Which places are reached from the picture's edge over bare ground and soft shadows, with some room beside each.
    fn open(&self, coarse: &Coarse, edges: &[f32], soft: f32) -> Vec<bool> {
        let Grid { width, height } = self.grid;
        let passable: Vec<bool> = (0..width * height)
            .map(|at| {
                let (x, y) = (at % width, at / width);
                self.unlikeness(at, self.stray(coarse, x, y)) < 1.0
                    || (edges[at] < soft && self.shade(self.bare[at], coarse.at(x, y), SHADOW_DEPTH..1.05))
            })
            .collect();
        let wide = |at: usize| {
            let (x, y) = (at % width, at / width);
            let near = |by: usize, to: usize| by.saturating_sub(1)..(by + 2).min(to);
            near(y, height)
                .flat_map(|y| near(x, width).map(move |x| (x, y)))
                .filter(|&(x, y)| !passable[y * width + x])
                .count()
                <= 1
        };
        let mut open = vec![false; width * height];
        let border = (0..width * height)
            .filter(|at| at % width == 0 || at % width == width - 1 || *at < width || at / width == height - 1);
        let mut waiting: Vec<usize> = border.collect();
        while let Some(at) = waiting.pop() {
            if open[at] || !wide(at) {
                continue;
            }
            open[at] = true;
            waiting.extend(self.grid.neighbours(at));
        }
        open
    }

    /// What is not ground: how far each place belongs to it.
    pub(super) fn cut(&self, coarse: &Coarse, edges: &[f32], grain: f32) -> Vec<f32> {
        let Grid { width, height } = self.grid;
        let open = self.open(coarse, edges, (SOFT * grain).max(4.0));
        let cost: Vec<f32> = (0..height)
            .flat_map(|y| (0..width).map(move |x| (x, y)))
            .map(|(x, y)| {
                let at = y * width + x;
                if x == 0 || y == 0 || x + 1 == width || y + 1 == height {
                    return MOST_COST;
                }
                let unlike = self.unlikeness(at, self.stray(coarse, x, y));
                let unlike = if open[at] { unlike.min(SHADOW_COST) } else { unlike };
                (1.0 - unlike * unlike).clamp(-MOST_COST, 1.0)
            })
            .collect();
        let border: Vec<f32> = edges.iter().map(|edge| border(*edge, grain)).collect();
        least_cut(self.grid, &cost, &border)
    }
}

/// The parabola through most of these, at each of them: what lies far from it hardly counts.
fn parabola(colours: &[Colour]) -> Vec<Colour> {
    let last = (colours.len() - 1).max(1) as f32;
    let place = |at: usize| {
        let x = 2.0 * at as f32 / last - 1.0;
        SVector::from([1.0, x, x * x])
    };
    let usual = middle(colours.iter().copied());
    let mut fit = vec![usual; colours.len()];
    for _ in 0..8 {
        let mut normal = SMatrix::<f32, 3, 3>::zeros();
        let mut sums = [SVector::<f32, 3>::zeros(); 3];
        for (at, (colour, fit)) in colours.iter().zip(&fit).enumerate() {
            let off = less(*colour, *fit);
            let weight = 1.0 / (1.0 + dot(off, off) / (MOST_MEND * MOST_MEND / 9.0));
            normal += weight * place(at) * place(at).transpose();
            for (sum, value) in sums.iter_mut().zip(colour) {
                *sum += weight * *value * place(at);
            }
        }
        let Some(solver) = normal.cholesky() else { return fit };
        let factors = sums.map(|sum| solver.solve(&sum));
        fit = (0..colours.len()).map(|at| factors.map(|factors| factors.dot(&place(at)))).collect();
    }
    fit
}

/// How far these stray: the median times 1.48.
fn spread(strays: &[Stray]) -> Stray {
    let usual = |pick: fn(&Stray) -> f32| 1.48 * median(strays.iter().map(pick).collect());
    Stray { light: usual(|stray| stray.light.abs()), colour: usual(|stray| stray.colour) }
}

/// How many rows the line between wall and table falls in each column: where the colours of both sides change alike and
/// most. 0 where there is no such line.
fn fall(left: &[Colour], right: &[Colour], width: usize) -> f32 {
    let reach = (left.len() / 50).max(2);
    let steps = |rows: &[Colour]| -> Vec<Colour> {
        (0..rows.len())
            .map(|y| {
                if y < reach + 1 || y + reach + 1 >= rows.len() {
                    return [0.0; 3];
                }
                less(middle(rows[y + 1..=y + reach].iter().copied()), middle(rows[y - reach..y].iter().copied()))
            })
            .collect()
    };
    let (left, right) = (steps(left), steps(right));
    let most_apart = (MOST_FALL * width as f32) as usize;
    let size = |step: Colour| dot(step, step).sqrt();
    let mut best = (LEAST_STEP, 0.0);
    for (y, &one) in left.iter().enumerate().filter(|(_, step)| size(**step) > LEAST_STEP) {
        for (other_y, &other) in right.iter().enumerate().take(y + most_apart).skip(y.saturating_sub(most_apart)) {
            let both = size(one).min(size(other)) + 0.1 * size(one).max(size(other));
            if dot(one, other) > 0.7 * size(one) * size(other) && both > best.0 {
                best = (both, (other_y as f32 - y as f32) / (width - 1) as f32);
            }
        }
    }
    best.1
}

/// What a unit of border costs over an edge.
pub(super) fn border(edge: f32, grain: f32) -> f32 {
    BORDER * (LEAST_BORDER + (1.0 - LEAST_BORDER) * (-(edge / (4.0 * grain)).powi(2)).exp())
}

/// The median of each of the three colours.
pub(super) fn middle(colours: impl Iterator<Item = Colour>) -> Colour {
    let all: Vec<Colour> = colours.collect();
    [0, 1, 2].map(|c| median(all.iter().map(|colour| colour[c]).collect()))
}

pub(super) fn median(mut values: Vec<f32>) -> f32 {
    values.sort_by(f32::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(0.0)
}
