//! Decoding a photograph upright, and making it small enough to look at quickly.

use std::io::Cursor;

use image::codecs::jpeg::JpegEncoder;
use image::{DynamicImage, ImageDecoder, ImageError, ImageFormat, ImageReader, Limits};

use super::PhotoError;

/// The most pixels of a photograph.
const MOST_PIXELS: u64 = 50_000_000;
/// The most memory that decoding takes: eight bytes for each of those pixels.
const MOST_MEMORY: u64 = 8 * MOST_PIXELS;
/// The fewest pixels of its shorter side.
const FEWEST: u32 = 240;
/// The most times that the longer side may be as long as the shorter: of a thinner strip too little is left when it is small.
const MOST_STRETCH: u32 = 8;
/// The longer side of the small picture, about: an outline is followed to a tenth of its pixels.
const LONGEST: u32 = 900;

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

/// Reads a JPEG or PNG, upright and small.
pub(super) fn read(bytes: &[u8]) -> Result<Picture, PhotoError> {
    let picture = decode(bytes)?;
    let whole = (picture.width(), picture.height());
    let (shorter, longer) = (whole.0.min(whole.1), whole.0.max(whole.1));
    if shorter < FEWEST || longer / shorter > MOST_STRETCH {
        return Err(PhotoError::TooSmall);
    }
    let step = longer.div_ceil(LONGEST).max(1);
    let (pixels, width, height) = shrink(&picture.into_rgb8(), step as usize);
    let pixels = soften(&pixels, width, height);
    Ok(Picture { width, height, pixels, step: f64::from(step), whole })
}

/// A smaller copy for showing: upright, without anything beside the picture.
///
/// # Errors
/// When it is no picture that can be read.
pub fn upright_preview(bytes: &[u8], longest: u32) -> Result<Vec<u8>, PhotoError> {
    let picture = decode(bytes)?;
    let small =
        if picture.width().max(picture.height()) > longest { picture.thumbnail(longest, longest) } else { picture };
    let mut preview = Cursor::new(Vec::new());
    let encoder = JpegEncoder::new_with_quality(&mut preview, 85);
    small.into_rgb8().write_with_encoder(encoder).map_err(|_| PhotoError::NoPicture)?;
    Ok(preview.into_inner())
}

fn decode(bytes: &[u8]) -> Result<DynamicImage, PhotoError> {
    let format = match image::guess_format(bytes) {
        Ok(format @ (ImageFormat::Jpeg | ImageFormat::Png)) => format,
        _ => return Err(PhotoError::NoPicture),
    };
    let mut decoder = ImageReader::with_format(Cursor::new(bytes), format).into_decoder().map_err(unreadable)?;
    if format == ImageFormat::Jpeg && !has_end(bytes) {
        return Err(PhotoError::CutShort);
    }
    let (width, height) = decoder.dimensions();
    // From the header alone, before any memory is taken.
    if u64::from(width) * u64::from(height) > MOST_PIXELS {
        return Err(PhotoError::TooLarge);
    }
    let mut limits = Limits::no_limits();
    limits.max_alloc = Some(MOST_MEMORY);
    decoder.set_limits(limits).map_err(|_| PhotoError::TooLarge)?;
    let orientation = decoder.orientation().map_err(unreadable)?;
    let mut picture = DynamicImage::from_decoder(decoder).map_err(unreadable)?;
    picture.apply_orientation(orientation);
    Ok(picture)
}

/// Whether the picture of a JPEG file comes to its end marker: the decoder fills up what is missing with grey. The markers
/// of a small preview lie before the scan that this begins at; a camera may add more files behind the end.
fn has_end(jpeg: &[u8]) -> bool {
    const START_OF_SCAN: u8 = 0xDA;
    let mut at = 2;
    // Segments: a marker of two bytes, then a length that counts itself.
    while let Some(&[0xFF, marker, high, low]) = jpeg.get(at..at + 4) {
        at += 2 + usize::from(u16::from_be_bytes([high, low]));
        if marker == START_OF_SCAN {
            return jpeg.get(at..).is_some_and(|scan| scan.windows(2).any(|pair| pair == [0xFF, 0xD9]));
        }
    }
    false
}

fn unreadable(error: ImageError) -> PhotoError {
    match error {
        ImageError::Limits(_) => PhotoError::TooLarge,
        ImageError::Unsupported(_) => PhotoError::NoPicture,
        _ => PhotoError::CutShort,
    }
}

/// The mean of each square of `step` by `step` pixels; what does not fill a square at the right and lower edge is left off.
fn shrink(picture: &image::RgbImage, step: usize) -> (Vec<[f32; 3]>, usize, usize) {
    let (width, height) = (picture.width() as usize / step, picture.height() as usize / step);
    let row_bytes = picture.width() as usize * 3;
    let share = 1.0 / (step * step) as f32;
    let mut pixels = Vec::with_capacity(width * height);
    let mut sums = vec![[0u32; 3]; width];
    for rows in picture.as_raw().chunks_exact(row_bytes * step).take(height) {
        sums.fill([0; 3]);
        for row in rows.chunks_exact(row_bytes) {
            for (sum, square) in sums.iter_mut().zip(row.chunks_exact(3 * step)) {
                for pixel in square.chunks_exact(3) {
                    for (sum, value) in sum.iter_mut().zip(pixel) {
                        *sum += u32::from(*value);
                    }
                }
            }
        }
        pixels.extend(sums.iter().map(|sum| sum.map(|sum| sum as f32 * share)));
    }
    (pixels, width, height)
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
