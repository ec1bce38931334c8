//! Decoding a photograph upright, and making it small enough to look at quickly.

use std::io::Cursor;

use image::codecs::jpeg::JpegEncoder;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, Rgb, Rgb32FImage};

use super::PhotoError;
use crate::decode::{Undecodable, decode, opened, unpacked, upright};

/// The most pixels of a photograph.
const MOST_PIXELS: u64 = 50_000_000;
/// The fewest pixels of its shorter side.
const FEWEST: u32 = 240;
/// The most times that the longer side may be as long as the shorter: of a thinner strip too little is left when it is small.
const MOST_STRETCH: u32 = 8;
/// The longer side of the small picture, about: an outline is followed to a tenth of its pixels.
const LONGEST: u32 = 900;

/// Long over short side of the frames that cameras take.
const FRAMES: [f64; 2] = [4.0 / 3.0, 3.0 / 2.0];
/// Focal lengths for a full frame that are believed, mm.
const FOCALS: std::ops::RangeInclusive<f64> = 13.0..=200.0;

/// A small upright picture: linear enough for telling a pot from its ground, 0 to 255 in three colours.
pub(super) struct Picture {
    pub(super) width: usize,
    pub(super) height: usize,
    /// Red, green and blue of each pixel, row by row.
    pub(super) pixels: Vec<[f32; 3]>,
    /// Pixels of the photograph in one of these.
    pub(super) step: f64,
    /// Size of the upright photograph.
    pub(super) whole: (u32, u32),
    /// The lens's focal length in pixels of the photograph, where the camera noted it.
    pub(super) focal: Option<f64>,
}

impl Picture {
    pub(super) fn at(&self, x: usize, y: usize) -> [f32; 3] {
        self.pixels[y * self.width + x]
    }

    /// The colour at a place between pixels; `None` outside the picture.
    pub(super) fn between(&self, x: f64, y: f64) -> Option<[f32; 3]> {
        if !(x >= 0.0 && y >= 0.0 && x < self.width as f64 - 1.0 && y < self.height as f64 - 1.0) {
            return None;
        }
        let (column, row) = (x as usize, y as usize);
        let (across, down) = ((x - column as f64) as f32, (y - row as f64) as f32);
        let (upper, lower) = (
            [self.at(column, row), self.at(column + 1, row)],
            [self.at(column, row + 1), self.at(column + 1, row + 1)],
        );
        let mix = |pair: [[f32; 3]; 2], c: usize| pair[0][c] + across * (pair[1][c] - pair[0][c]);
        Some([0, 1, 2].map(|c| mix(upper, c) + down * (mix(lower, c) - mix(upper, c))))
    }
}

impl From<Undecodable> for PhotoError {
    fn from(error: Undecodable) -> PhotoError {
        match error {
            Undecodable::NoPicture => PhotoError::NoPicture,
            Undecodable::CutShort => PhotoError::CutShort,
            Undecodable::TooLarge => PhotoError::TooLarge,
        }
    }
}

/// Reads a JPEG or PNG, upright and small.
pub(super) fn read(bytes: &[u8]) -> Result<Picture, PhotoError> {
    let mut decoder = opened(bytes, MOST_PIXELS)?;
    let focal = focal(&mut decoder);
    let (picture, orientation) = unpacked(decoder)?;
    let (shorter, longer) = (picture.width().min(picture.height()), picture.width().max(picture.height()));
    if shorter < FEWEST || longer / shorter > MOST_STRETCH {
        return Err(PhotoError::TooSmall);
    }
    let step = longer.div_ceil(LONGEST).max(1);
    let mut small = DynamicImage::ImageRgb32F(shrink(&picture, step, orientation));
    let whole = upright(picture.width(), picture.height(), orientation);
    drop(picture);
    small.apply_orientation(orientation);
    let (width, height) = (small.width() as usize, small.height() as usize);
    let pixels: Vec<[f32; 3]> = small.into_rgb32f().pixels().map(|pixel| pixel.0).collect();
    let pixels = soften(&pixels, width, height);
    Ok(Picture { width, height, pixels, step: f64::from(step), whole, focal })
}

/// The focal length in pixels, from that for a full frame (36 x 24 mm) with the same diagonal. `None` where the camera noted
/// none, and where the picture is no whole frame of a camera, as one that was cropped.
///
/// Source: CIPA DC-008 (Exif 2.32), tag 0xA405 FocalLengthIn35mmFilm; diagonals: CIPA DCG-001.
fn focal(decoder: &mut impl ImageDecoder) -> Option<f64> {
    let (width, height) = decoder.dimensions();
    let raw = decoder.exif_metadata().ok()??;
    let exif = exif::Reader::new().read_raw(raw).ok()?;
    let number = |tag| exif.get_field(tag, exif::In::PRIMARY).and_then(|field| field.value.get_uint(0));
    let focal = f64::from(number(exif::Tag::FocalLengthIn35mmFilm)?);
    let is_whole = number(exif::Tag::PixelXDimension).is_none_or(|noted| noted == width || noted == height);
    let aspect = f64::from(width.max(height)) / f64::from(width.min(height));
    let is_frame = FRAMES.iter().any(|frame| (aspect / frame - 1.0).abs() < 0.01);
    let diagonal = f64::from(width).hypot(f64::from(height));
    (is_whole && is_frame && FOCALS.contains(&focal)).then(|| focal * diagonal / 36f64.hypot(24.0))
}

/// A smaller copy for showing: upright, without anything beside the picture.
///
/// # Errors
/// When it is no picture that can be read.
pub fn upright_preview(bytes: &[u8], longest: u32) -> Result<Vec<u8>, PhotoError> {
    let (picture, orientation) = decode(bytes, MOST_PIXELS)?;
    let is_large = picture.width().max(picture.height()) > longest;
    let mut small = if is_large { picture.thumbnail(longest, longest) } else { picture };
    small.apply_orientation(orientation);
    let mut preview = Cursor::new(Vec::new());
    let encoder = JpegEncoder::new_with_quality(&mut preview, 85);
    small.into_rgb8().write_with_encoder(encoder).map_err(|_| PhotoError::NoPicture)?;
    Ok(preview.into_inner())
}

/// The mean of each square of `step` by `step` pixels, before the picture is turned upright; what does not fill a square is
/// left off where the upright picture has its right and lower edge.
fn shrink(picture: &DynamicImage, step: u32, orientation: Orientation) -> Rgb32FImage {
    let (width, height) = (picture.width() / step, picture.height() / step);
    let (flips_x, flips_y) = flips(orientation);
    let left = if flips_x { picture.width() % step } else { 0 };
    let top = if flips_y { picture.height() % step } else { 0 };
    let share = 1.0 / (step * step) as f32;
    let mut small = Rgb32FImage::new(width, height);
    for (row, pixels) in small.enumerate_rows_mut() {
        // A band at a time: the whole picture in three colours would be a second one.
        let band = picture.crop_imm(left, top + row * step, width * step, step).into_rgb8();
        let mut sums = vec![[0u32; 3]; width as usize];
        for line in band.as_raw().chunks_exact((width * step) as usize * 3) {
            for (sum, square) in sums.iter_mut().zip(line.chunks_exact(3 * step as usize)) {
                for pixel in square.chunks_exact(3) {
                    for (sum, value) in sum.iter_mut().zip(pixel) {
                        *sum += u32::from(*value);
                    }
                }
            }
        }
        for ((_, _, pixel), sum) in pixels.zip(sums) {
            *pixel = Rgb(sum.map(|sum| sum as f32 * share));
        }
    }
    small
}

/// Whether the right and the lower edge of the upright picture are the left and the upper one of that in the file.
fn flips(orientation: Orientation) -> (bool, bool) {
    match orientation {
        Orientation::NoTransforms | Orientation::Rotate90FlipH => (false, false),
        Orientation::FlipHorizontal | Orientation::Rotate270 => (true, false),
        Orientation::FlipVertical | Orientation::Rotate90 => (false, true),
        Orientation::Rotate180 | Orientation::Rotate270FlipH => (true, true),
    }
}

/// Smoothed by 1 2 1 both ways, against the noise of a small lens.
fn soften(pixels: &[[f32; 3]], width: usize, height: usize) -> Vec<[f32; 3]> {
    let blend = |before: [f32; 3], here: [f32; 3], after: [f32; 3]| {
        [0, 1, 2].map(|colour| 0.25 * before[colour] + 0.5 * here[colour] + 0.25 * after[colour])
    };
    let mut across = Vec::with_capacity(pixels.len());
    for row in pixels.chunks_exact(width) {
        across.extend((0..width).map(|x| blend(row[x.saturating_sub(1)], row[x], row[(x + 1).min(width - 1)])));
    }
    let mut both = Vec::with_capacity(pixels.len());
    for y in 0..height {
        let (before, after) = (y.saturating_sub(1) * width, (y + 1).min(height - 1) * width);
        both.extend((0..width).map(|x| blend(across[before + x], across[y * width + x], across[after + x])));
    }
    both
}
