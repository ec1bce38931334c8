//! Decoding pictures that somebody else made, within so much memory and time as their size allows.

use std::io::Cursor;

use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageError, ImageFormat, ImageReader, Limits};

/// The most memory that the pixels of a picture of over [`LARGE_FILE`] may take, bytes.
const MOST_MEMORY: u64 = 300 << 20;
/// Up to this size, bytes, a file may unpack to so much and no more: a camera writes at least a bit for each pixel of three
/// bytes, and a small file that unpacks to far more is made to fill the memory.
const LARGE_FILE: u64 = 10_000_000;
const MOST_MEMORY_OF_SMALL: u64 = 150_000_000;
const FREE_MEMORY: u64 = 40_000_000;
const MEMORY_PER_BYTE: u64 = 24;
/// The longest side, pixels: a JPEG's header has no room for more. Rows cost time even where they hold nothing.
const LONGEST_SIDE: u32 = 65_535;
/// The most parts of a JPEG and chunks of a PNG; cameras write some dozens, depth maps come in some hundreds.
const MOST_PARTS: usize = 10_000;
/// The most scans of a progressive JPEG: each goes over all pixels. Common writers make about ten.
const MOST_SCANS: usize = 40;

// Markers of a JPEG. Source: ITU T.81, table B.1.
const MARKER: u8 = 0xFF;
const PROGRESSIVE: u8 = 0xC2;
const FIRST_RESTART: u8 = 0xD0;
const START: u8 = 0xD8;
const END: u8 = 0xD9;
const SCAN: u8 = 0xDA;

/// Why a picture cannot be decoded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Undecodable {
    /// No JPEG or PNG, or one that nobody can read.
    NoPicture,
    /// It ends too early.
    CutShort,
    /// More pixels than allowed, or more memory than its size justifies.
    TooLarge,
}

/// A picture whose header says that it can be decoded; nothing of it is unpacked yet.
pub fn opened(bytes: &[u8], most_pixels: u64) -> Result<impl ImageDecoder, Undecodable> {
    let format = match image::guess_format(bytes) {
        Ok(format @ (ImageFormat::Jpeg | ImageFormat::Png)) => format,
        _ => return Err(Undecodable::NoPicture),
    };
    let most_memory = most_memory(bytes.len() as u64);
    let mut limits = Limits::no_limits();
    limits.max_alloc = Some(most_memory);
    let mut reader = ImageReader::with_format(Cursor::new(bytes), format);
    reader.limits(limits.clone());
    let mut decoder = reader.into_decoder().map_err(undecodable)?;
    let (width, height) = decoder.dimensions();
    let pixels = u64::from(width) * u64::from(height);
    if pixels > most_pixels || width.max(height) > LONGEST_SIDE {
        return Err(Undecodable::TooLarge);
    }
    let beside = match format {
        ImageFormat::Jpeg => jpeg(bytes)?.coefficients,
        _ if chunks_of_png(bytes).count() > MOST_PARTS => return Err(Undecodable::TooLarge),
        _ => 0,
    };
    if decoder.total_bytes().saturating_add(beside) > most_memory {
        return Err(Undecodable::TooLarge);
    }
    decoder.set_limits(limits).map_err(undecodable)?;
    Ok(decoder)
}

/// The picture as it lies in the file, and how it is to be turned: turning it makes a second one, so that it is made small
/// before.
pub fn decode(bytes: &[u8], most_pixels: u64) -> Result<(DynamicImage, Orientation), Undecodable> {
    unpacked(opened(bytes, most_pixels)?)
}

/// The same of a picture that was opened.
pub fn unpacked(mut decoder: impl ImageDecoder) -> Result<(DynamicImage, Orientation), Undecodable> {
    let orientation = decoder.orientation().map_err(undecodable)?;
    Ok((DynamicImage::from_decoder(decoder).map_err(undecodable)?, orientation))
}

/// Width and height of the upright picture, of those in the file.
pub fn upright(width: u32, height: u32, orientation: Orientation) -> (u32, u32) {
    use Orientation::{Rotate90, Rotate90FlipH, Rotate270, Rotate270FlipH};
    match orientation {
        Rotate90 | Rotate270 | Rotate90FlipH | Rotate270FlipH => (height, width),
        _ => (width, height),
    }
}

/// Where the picture in a JPEG ends; `None` where it was cut short. Phones lay further pictures and moving ones behind it,
/// each with its own metadata.
pub fn end_of_jpeg(bytes: &[u8]) -> Option<usize> {
    jpeg(bytes).ok().map(|jpeg| jpeg.end)
}

fn most_memory(bytes: u64) -> u64 {
    if bytes > LARGE_FILE { MOST_MEMORY } else { (FREE_MEMORY + MEMORY_PER_BYTE * bytes).min(MOST_MEMORY_OF_SMALL) }
}

/// What is known of a JPEG before any of it is unpacked.
struct JpegOutline {
    end: usize,
    /// Bytes that a progressive one takes beside its pixels.
    coefficients: u64,
}

fn jpeg(bytes: &[u8]) -> Result<JpegOutline, Undecodable> {
    let (mut at, mut parts, mut scans, mut coefficients) = (2, 0, 0, 0);
    loop {
        let part = next_part(bytes, at).ok_or(Undecodable::CutShort)?;
        if part.marker == END {
            return Ok(JpegOutline { end: part.end, coefficients });
        }
        at = part.end;
        // Within a scan, marks that stand alone are many.
        parts += usize::from(!part.contents.is_empty());
        scans += usize::from(part.marker == SCAN);
        if part.marker == PROGRESSIVE {
            coefficients = coefficients_of(part.contents).ok_or(Undecodable::CutShort)?.max(coefficients);
        }
        if parts > MOST_PARTS || coefficients > 0 && scans > MOST_SCANS {
            return Err(Undecodable::TooLarge);
        }
    }
}

struct JpegPart<'a> {
    marker: u8,
    contents: &'a [u8],
    end: usize,
}

/// The next part from here on, over what is between: the dots of a scan.
fn next_part(bytes: &[u8], from: usize) -> Option<JpegPart<'_>> {
    let mut at = from;
    loop {
        at += bytes.get(at..)?.iter().position(|byte| *byte == MARKER)?;
        at = match *bytes.get(at + 1)? {
            MARKER => at + 1,
            // A dot's own value, and the marks that stand alone.
            0x00 | 0x01 | FIRST_RESTART..=START => at + 2,
            END => return Some(JpegPart { marker: END, contents: &[], end: at + 2 }),
            marker => {
                let length = usize::from(u16::from_be_bytes([*bytes.get(at + 2)?, *bytes.get(at + 3)?]));
                let end = at + 2 + length;
                return Some(JpegPart { marker, contents: bytes.get(at + 2..end)?, end });
            }
        };
    }
}

/// Bytes of all coefficients of a frame: two for each pixel of each colour, as if none were stored coarser.
/// Its contents are a length (2), a precision (1), height and width (2 each) and the number of colours (1).
fn coefficients_of(frame: &[u8]) -> Option<u64> {
    let &[_, _, _, h1, h0, w1, w0, colours, ..] = frame else { return None };
    let blocks = |high, low| u64::from(u16::from_be_bytes([high, low])).div_ceil(8);
    Some(128 * blocks(h1, h0) * blocks(w1, w0) * u64::from(colours))
}

/// What a PNG begins with. Source for this and the chunks: ISO 15948, clause 5.
pub const PNG_SIGNATURE: &[u8; 8] = b"\x89PNG\r\n\x1A\n";

/// A chunk of a PNG: what it is, and all its bytes, with its length before and its sum behind it.
pub struct PngChunk<'a> {
    /// What kind of chunk it is.
    pub kind: [u8; 4],
    /// All its bytes.
    pub whole: &'a [u8],
}

/// The chunks of a PNG, to its end or to where it was cut short.
pub fn chunks_of_png(bytes: &[u8]) -> impl Iterator<Item = PngChunk<'_>> {
    let mut left = bytes.get(PNG_SIGNATURE.len()..).unwrap_or_default();
    std::iter::from_fn(move || {
        let &[a, b, c, d, k, i, n, e, ..] = left else { return None };
        let length = usize::try_from(u32::from_be_bytes([a, b, c, d])).ok()?.checked_add(12)?;
        let (whole, rest) = left.split_at_checked(length)?;
        let kind = [k, i, n, e];
        left = if kind == *b"IEND" { &[] } else { rest };
        Some(PngChunk { kind, whole })
    })
}

fn undecodable(error: ImageError) -> Undecodable {
    match error {
        ImageError::Limits(_) => Undecodable::TooLarge,
        ImageError::Unsupported(_) => Undecodable::NoPicture,
        _ => Undecodable::CutShort,
    }
}
