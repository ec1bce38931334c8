//! Telling the pot from a plain ground that is lit unevenly, and from the shadow it casts.

use nalgebra::{SMatrix, SVector};

use super::PhotoError;
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

/// Part of the picture's width and height, from each edge, that is taken for ground when its colour is learnt.
const BORDER: f64 = 0.07;
/// A ground whose colour strays by more than this (of 255) from a smooth surface is not plain.
const BUSIEST: f32 = 9.0;
/// Least difference (of 255) that tells a pot from its ground.
const LEAST_CONTRAST: f32 = 12.0;
/// The mean of a picture that is too dark, of 255.
const DARK: f32 = 22.0;
/// How near a shadow is to a shade of the ground's own colour, of 255.
const SHADOW_OFF: f32 = 4.0;
/// A shadow that clings to a pot is at most this part of it, and no higher than this part of its height.
const SHADOW_PART: f64 = 0.1;
const SHADOW_REACH: f64 = 0.45;
/// How steep a shadow may be, as a part of what is an edge on the ground.
const SOFT: f32 = 0.5;
/// Part of a shadow's border to the pot that is clear.
const CLEAR: f64 = 0.8;
/// The darkest that any shadow is, against the ground beside it.
const DARKEST: f32 = 0.12;
/// Lighter than this, a place on the ground is in no shadow.
const LIT: f32 = 0.94;
/// An edge within a shadow is not steeper than this part of that between pot and ground.
const PEEL_EDGE: f32 = 0.5;
/// The darkest that a shadow on a plain ground is, against the ground beside it.
const SHADOW_DEPTH: f32 = 0.3;
/// A change of this much (of 255) along the picture's edge is the border of something; a piece that is cut off has a few of
/// them, with its bands of glaze.
const JUMP: f32 = 16.0;
const MOST_JUMPS: usize = 16;
/// Least part of the picture that a pot takes up, and that anything does.
const LEAST_POT: f64 = 0.015;
const LEAST_THING: f64 = 0.000_5;
/// A second thing is one of at least this part of the pot.
const SECOND: f64 = 0.05;

/// Colour of the ground as a surface of the second degree over the picture: light falls off smoothly.
pub(super) struct Ground {
    factors: [SVector<f32, 6>; 3],
    width: f32,
    height: f32,
    /// Spread of the ground about it, of 255.
    noise: f32,
    /// How far the ground's pixels are from any shade of its own colour, of 255: the median.
    tint: f32,
}

impl Ground {
    fn at(&self, x: usize, y: usize) -> [f32; 3] {
        let place = self.place(x, y);
        [0, 1, 2].map(|colour| self.factors[colour].dot(&place).clamp(1.0, 255.0))
    }

    fn place(&self, x: usize, y: usize) -> SVector<f32, 6> {
        let (x, y) = (2.0 * x as f32 / self.width - 1.0, 2.0 * y as f32 / self.height - 1.0);
        SVector::from([1.0, x, y, x * x, x * y, y * y])
    }

    /// From the border of the picture, leaving out what strays far, such as a shadow that reaches it.
    fn learning(picture: &Picture) -> Result<Ground, PhotoError> {
        let (width, height) = (picture.width, picture.height);
        let rim = |size: usize| ((size as f64 * BORDER) as usize).max(4);
        let (rim_x, rim_y) = (rim(width), rim(height));
        let places: Vec<(usize, usize)> = (0..height)
            .step_by(2)
            .flat_map(|y| (0..width).step_by(2).map(move |x| (x, y)))
            .filter(|&(x, y)| x < rim_x || x >= width - rim_x || y < rim_y || y >= height - rim_y)
            .collect();
        let mut ground = Ground {
            factors: [SVector::zeros(); 3],
            width: width as f32,
            height: height as f32,
            noise: f32::INFINITY,
            tint: 0.0,
        };
        let mut saved = places.clone();
        for _ in 0..4 {
            ground.fit(picture, &saved)?;
            ground.noise = (1.48 * median(saved.iter().map(|&(x, y)| ground.stray(picture, x, y)).collect())).max(0.7);
            let limit = (4.0 * ground.noise).max(4.0);
            saved = places.iter().copied().filter(|&(x, y)| ground.stray(picture, x, y) <= limit).collect();
            if saved.len() * 2 < places.len() {
                return Err(reaches_edge(picture));
            }
        }
        if ground.noise > BUSIEST || saved.len() * 4 < places.len() * 3 {
            return Err(reaches_edge(picture));
        }
        ground.tint = median(saved.iter().map(|&(x, y)| ground.shade(picture, x, y).off).collect());
        Ok(ground)
    }

    fn fit(&mut self, picture: &Picture, places: &[(usize, usize)]) -> Result<(), PhotoError> {
        let mut normal = SMatrix::<f32, 6, 6>::zeros();
        let mut right = [SVector::<f32, 6>::zeros(); 3];
        for &(x, y) in places {
            let place = self.place(x, y);
            normal += place * place.transpose();
            for (sum, value) in right.iter_mut().zip(picture.at(x, y)) {
                *sum += place * value;
            }
        }
        let solver = normal.cholesky().ok_or(PhotoError::Busy)?;
        self.factors = right.map(|sum| solver.solve(&sum));
        Ok(())
    }

    /// Whether this colour at this place may be a shadow.
    pub(super) fn is_shade(&self, (x, y): (f64, f64), here: [f32; 3]) -> bool {
        Shade::new(self.at(x.max(0.0) as usize, y.max(0.0) as usize), here).is_shade(self)
    }

    fn shade(&self, picture: &Picture, x: usize, y: usize) -> Shade {
        Shade::new(self.at(x, y), picture.at(x, y))
    }

    /// How far a pixel is from the ground: the largest of its three colours.
    fn stray(&self, picture: &Picture, x: usize, y: usize) -> f32 {
        let (ground, here) = (self.at(x, y), picture.at(x, y));
        ground.iter().zip(here).map(|(ground, here)| (here - ground).abs()).fold(0.0, f32::max)
    }
}

/// A pixel beside the ground it might cover.
struct Shade {
    /// Its brightness as a part of the ground's.
    light: f32,
    /// How far it is from any shade of the ground's colour, of 255.
    off: f32,
}

impl Shade {
    fn new(bare: [f32; 3], here: [f32; 3]) -> Shade {
        let dot = |a: [f32; 3], b: [f32; 3]| a.iter().zip(b).map(|(a, b)| a * b).sum::<f32>();
        let light = dot(here, bare) / dot(bare, bare);
        let off = [0, 1, 2].map(|colour| here[colour] - light * bare[colour]);
        Shade { light, off: dot(off, off).sqrt() }
    }

    /// In a shadow, however deep, or the same colour as if it were.
    fn is_shade(&self, ground: &Ground) -> bool {
        (DARKEST..LIT).contains(&self.light) && self.off <= SHADOW_OFF.max(3.5 * ground.tint)
    }

    /// The ground's own colour, only darker.
    fn is_shadow(&self, ground: &Ground) -> bool {
        (SHADOW_DEPTH..1.02).contains(&self.light) && self.off <= SHADOW_OFF.max(3.5 * ground.tint)
    }
}

/// The pixels of the one pot in the picture.
pub(super) fn pot(picture: &Picture) -> Result<(Ground, Mask), PhotoError> {
    let mean =
        picture.pixels.iter().map(|pixel| pixel.iter().sum::<f32>() / 3.0).sum::<f32>() / picture.pixels.len() as f32;
    if mean < DARK {
        return Err(PhotoError::TooDark);
    }
    let ground = Ground::learning(picture)?;
    let edges = steepness(picture);
    let steep = edge_level(picture, &ground, &edges)?;
    let near = LEAST_CONTRAST.max(5.0 * ground.noise);
    let soft = |at: usize, x: usize, y: usize| {
        edges[at] < steep
            && (ground.stray(picture, x, y) <= near
                || (edges[at] < SOFT * steep && ground.shade(picture, x, y).is_shadow(&ground)))
    };
    let mut outside = vec![false; picture.pixels.len()];
    flood(picture, &mut outside, soft);
    let mut mask = Mask { width: picture.width, height: picture.height, inside: largest(picture, &outside)? };
    peel(picture, &ground, &edges, &mut mask);
    Ok((ground, mask))
}

/// What it means that more than ground lies along the picture's edge: the piece itself crosses it a few times, a ground
/// that is not plain many times.
fn reaches_edge(picture: &Picture) -> PhotoError {
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
    if all > MOST_JUMPS { PhotoError::Busy } else { PhotoError::CutOff }
}

/// How steeply brightness or colour changes at each pixel, of 255 a pixel.
fn steepness(picture: &Picture) -> Vec<f32> {
    let (width, height) = (picture.width, picture.height);
    let mut edges = vec![0.0; width * height];
    for y in 1..height - 1 {
        for x in 1..width - 1 {
            let (left, right) = (picture.at(x - 1, y), picture.at(x + 1, y));
            let (above, below) = (picture.at(x, y - 1), picture.at(x, y + 1));
            edges[y * width + x] = (0..3)
                .map(|colour| (right[colour] - left[colour]).hypot(below[colour] - above[colour]) / 2.0)
                .fold(0.0, f32::max);
        }
    }
    edges
}

/// What counts as an edge: a quarter of the steepest edges between ground and pot, and well above the noise.
fn edge_level(picture: &Picture, ground: &Ground, edges: &[f32]) -> Result<f32, PhotoError> {
    let mut far: Vec<f32> = Vec::new();
    for y in (0..picture.height).step_by(2) {
        for x in (0..picture.width).step_by(2) {
            if ground.stray(picture, x, y) > LEAST_CONTRAST.max(5.0 * ground.noise) {
                far.push(edges[y * picture.width + x]);
            }
        }
    }
    let least = (LEAST_THING * (picture.width * picture.height) as f64 / 4.0) as usize;
    if far.len() < least {
        return Err(PhotoError::Nothing);
    }
    far.sort_by(f32::total_cmp);
    let steepest = far[far.len() * 97 / 100];
    Ok((0.3 * steepest).max(2.5 * ground.noise).clamp(3.0, 14.0))
}

/// Takes the darkest part of a shadow, which has an edge of its own, off the foot of a pot whose colour no shadow has.
fn peel(picture: &Picture, ground: &Ground, edges: &[f32], mask: &mut Mask) {
    let is_shadow = |x: usize, y: usize| ground.shade(picture, x, y).is_shadow(ground);
    let beyond: Vec<bool> = mask.inside.iter().map(|inside| !inside).collect();
    let rows = (mask.inside.iter().position(|is| *is), mask.inside.iter().rposition(|is| *is));
    let (Some(first), Some(last)) = rows else { return };
    let (top, bottom) = (first / picture.width, last / picture.width);
    let low = top + ((1.0 - SHADOW_REACH) * (bottom - top) as f64) as usize;
    let steep = PEEL_EDGE * rim_edge(edges, mask, top, low);
    let mut outside = vec![false; beyond.len()];
    flood(picture, &mut outside, |at, x, y| beyond[at] || (y > low && edges[at] < steep && is_shadow(x, y)));
    let peeled: Vec<bool> = outside.iter().zip(&beyond).map(|(now, before)| *now && !before).collect();
    let (whole, taken) = (beyond.iter().filter(|beyond| !**beyond).count(), peeled.iter().filter(|is| **is).count());
    // More than that, or without an edge to end at, is a pot whose own colour is a shade of the ground's.
    if taken as f64 > SHADOW_PART * whole as f64
        || !ends_at_edge(mask, edges, &peeled, steep, |x, y| ground.shade(picture, x, y).is_shade(ground))
    {
        return;
    }
    for (inside, peeled) in mask.inside.iter_mut().zip(peeled) {
        *inside &= !peeled;
    }
    let outside: Vec<bool> = mask.inside.iter().map(|inside| !inside).collect();
    if let Ok(inside) = largest(picture, &outside) {
        mask.inside = inside;
    }
}

/// Whether a shadow ends, against the rest of the pot, at an edge or at a colour that no shadow has.
fn ends_at_edge(
    mask: &Mask,
    edges: &[f32],
    peeled: &[bool],
    steep: f32,
    is_shade: impl Fn(usize, usize) -> bool,
) -> bool {
    let (mut all, mut clear) = (0u32, 0u32);
    for at in (mask.width..peeled.len()).filter(|at| peeled[*at]) {
        // Upwards lies the pot.
        let inner = at - mask.width;
        if mask.inside[inner] && !peeled[inner] {
            all += 1;
            let beyond = inner.saturating_sub(2 * mask.width);
            let is_clear = edges[inner] >= steep || !is_shade(beyond % mask.width, beyond / mask.width);
            clear += u32::from(is_clear);
        }
    }
    f64::from(clear) >= CLEAR * f64::from(all)
}

/// How steep the edge of a pot is where no shadow lies: the median of the steepest within reach of the mask's edge.
fn rim_edge(edges: &[f32], mask: &Mask, top: usize, low: usize) -> f32 {
    const REACH: usize = 4;
    let mut steepest = Vec::new();
    for y in top..low {
        let row = &mask.inside[y * mask.width..(y + 1) * mask.width];
        for end in [row.iter().position(|is| *is), row.iter().rposition(|is| *is)].into_iter().flatten() {
            let from = y * mask.width + end.saturating_sub(REACH);
            let to = y * mask.width + (end + REACH + 1).min(mask.width);
            steepest.push(edges[from..to].iter().copied().fold(0.0, f32::max));
        }
    }
    median(steepest)
}

/// Marks what can be reached from the picture's edge, and from what is marked, over places that can be passed.
fn flood(picture: &Picture, outside: &mut [bool], passable: impl Fn(usize, usize, usize) -> bool) {
    let (width, height) = (picture.width, picture.height);
    outside.fill(false);
    let mut waiting: Vec<(usize, usize)> = Vec::new();
    for x in 0..width {
        waiting.extend([(x, 0), (x, height - 1)]);
    }
    for y in 0..height {
        waiting.extend([(0, y), (width - 1, y)]);
    }
    while let Some((x, y)) = waiting.pop() {
        if outside[y * width + x] || !passable(y * width + x, x, y) {
            continue;
        }
        outside[y * width + x] = true;
        if x > 0 {
            waiting.push((x - 1, y));
        }
        if x + 1 < width {
            waiting.push((x + 1, y));
        }
        if y > 0 {
            waiting.push((x, y - 1));
        }
        if y + 1 < height {
            waiting.push((x, y + 1));
        }
    }
}

/// The largest thing that is not ground, with what it encloses.
fn largest(picture: &Picture, outside: &[bool]) -> Result<Vec<bool>, PhotoError> {
    let (width, height) = (picture.width, picture.height);
    let mut label = vec![0u32; width * height];
    let mut sizes = vec![0usize];
    for start in 0..width * height {
        if outside[start] || label[start] != 0 {
            continue;
        }
        let name = sizes.len() as u32;
        let mut size = 0;
        let mut waiting = vec![start];
        while let Some(at) = waiting.pop() {
            if outside[at] || label[at] != 0 {
                continue;
            }
            label[at] = name;
            size += 1;
            let (x, y) = (at % width, at / width);
            if x > 0 {
                waiting.push(at - 1);
            }
            if x + 1 < width {
                waiting.push(at + 1);
            }
            if y > 0 {
                waiting.push(at - width);
            }
            if y + 1 < height {
                waiting.push(at + width);
            }
        }
        sizes.push(size);
    }
    let (name, size) = sizes.iter().copied().enumerate().max_by_key(|(_, size)| *size).unwrap_or_default();
    let part = size as f64 / (width * height) as f64;
    if part < LEAST_POT {
        return Err(if part < LEAST_THING { PhotoError::Nothing } else { PhotoError::TooFar });
    }
    let inside: Vec<bool> = label.iter().map(|label| *label as usize == name).collect();
    let touches = |x: usize, y: usize| inside[y * width + x];
    let cut_off = (0..width).any(|x| touches(x, 1) || touches(x, height - 2))
        || (0..height).any(|y| touches(1, y) || touches(width - 2, y));
    if cut_off {
        return Err(reaches_edge(picture));
    }
    let second = sizes.iter().enumerate().filter(|(other, _)| *other != name).map(|(_, size)| *size).max().unwrap_or(0);
    if second as f64 > SECOND * size as f64 {
        return Err(PhotoError::NotAlone);
    }
    Ok(inside)
}

fn median(mut values: Vec<f32>) -> f32 {
    values.sort_by(f32::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(f32::INFINITY)
}
