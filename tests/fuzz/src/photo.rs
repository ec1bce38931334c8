//! A photograph from anywhere: as it came, and a small good one with any metadata and any size in its header.

use std::fs;
use std::io::Cursor;
use std::sync::OnceLock;

use arbitrary::Arbitrary;
use image::{ImageFormat, Rgb, RgbImage};
use laydown_domain::form::silhouette::{trace, upright_preview};
use laydown_store::photos::{Photos, prepare_photo};

use crate::script::{self, Number};
use crate::{folder, is_sentence};

#[derive(Debug, Arbitrary)]
enum Change {
    /// As PNG.
    Png,
    /// The other byte order.
    BigEndian,
    /// One entry of a directory: tag, type, count, value or where it lies. TIFF 6.0, section 2, from memory.
    Entry {
        tag: Tag,
        kind: u8,
        count: Number,
        value: Number,
    },
    /// Where the next directory lies, then another directory.
    Next {
        at: Number,
    },
    /// How large the picture says that it is.
    Size {
        width: Number,
        height: Number,
    },
    /// One more part, with any length in its head.
    Part {
        kind: u8,
        length: u16,
        byte: u8,
    },
    Byte {
        at: u16,
        byte: u8,
    },
    Cut {
        to: u16,
    },
}

#[derive(Debug, Clone, Copy, Arbitrary)]
enum Tag {
    Orientation,
    Exif,
    Gps,
    Interoperability,
    Thumbnail,
    ThumbnailLength,
    MakerNote,
    Any(u16),
}

impl Tag {
    fn number(self) -> u16 {
        match self {
            Tag::Orientation => 0x0112,
            Tag::Exif => 0x8769,
            Tag::Gps => 0x8825,
            Tag::Interoperability => 0xA005,
            Tag::Thumbnail => 0x0201,
            Tag::ThumbnailLength => 0x0202,
            Tag::MakerNote => 0x927C,
            Tag::Any(number) => number,
        }
    }
}

/// A small picture, as JPEG and as PNG.
fn good() -> &'static [Vec<u8>; 2] {
    static GOOD: OnceLock<[Vec<u8>; 2]> = OnceLock::new();
    GOOD.get_or_init(|| {
        let picture = RgbImage::from_fn(48, 40, |x, y| {
            let is_pot = (14..34).contains(&x) && (8..36).contains(&y);
            if is_pot { Rgb([90, 40, 30]) } else { Rgb([230, 230, 225]) }
        });
        [ImageFormat::Jpeg, ImageFormat::Png].map(|format| {
            let mut bytes = Cursor::new(Vec::new());
            picture.write_to(&mut bytes, format).unwrap();
            bytes.into_inner()
        })
    })
}

pub fn seeds() -> Vec<Vec<u8>> {
    let [jpeg, png] = good().clone();
    vec![jpeg, png, changed(&[2; 40]), changed(&[0, 0, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2])]
}

/// A small picture with what a script says in front of it.
pub fn changed(input: &[u8]) -> Vec<u8> {
    let changes: Vec<Change> = script::of(input);
    let is_png = changes.iter().any(|change| matches!(change, Change::Png));
    let mut picture = good()[usize::from(is_png)].clone();
    let exif = exif(&changes);
    for change in &changes {
        match *change {
            Change::Size { width, height } => resize(&mut picture, is_png, width.value(), height.value()),
            Change::Part { kind, length, byte } => {
                let content = vec![byte; usize::from(length.min(300))];
                if is_png {
                    let name = [*b"eXIf", *b"zTXt", *b"iCCP", *b"iTXt", *b"PLTE"][usize::from(kind) % 5];
                    put_chunk(&mut picture, &name, &content);
                } else {
                    put_segment(&mut picture, 0xC0 | (kind & 0x3F), length, &content);
                }
            }
            _ => {}
        }
    }
    if is_png {
        put_chunk(&mut picture, b"eXIf", &exif);
    } else {
        let content = [b"Exif\0\0", exif.as_slice()].concat();
        put_segment(&mut picture, 0xE1, content.len() as u16 + 2, &content);
    }
    for change in &changes {
        match *change {
            Change::Byte { at, byte } => {
                let at = usize::from(at) % picture.len().max(1);
                picture.iter_mut().skip(at).take(1).for_each(|place| *place = byte);
            }
            Change::Cut { to } => picture.truncate(usize::from(to)),
            _ => {}
        }
    }
    picture
}

/// The directories of a script.
fn exif(changes: &[Change]) -> Vec<u8> {
    let is_big = changes.iter().any(|change| matches!(change, Change::BigEndian));
    let two = |number: u16| if is_big { number.to_be_bytes() } else { number.to_le_bytes() };
    let four = |number: i64| if is_big { (number as u32).to_be_bytes() } else { (number as u32).to_le_bytes() };
    let mut exif = if is_big { b"MM\0\x2A".to_vec() } else { b"II\x2A\0".to_vec() };
    exif.extend(four(8));
    let mut entries: Vec<u8> = Vec::new();
    let close = |exif: &mut Vec<u8>, entries: &mut Vec<u8>, next: i64| {
        exif.extend(two((entries.len() / 12) as u16));
        exif.append(entries);
        exif.extend(four(next));
    };
    for change in changes {
        match *change {
            Change::Entry { tag, kind, count, value } => {
                entries.extend(two(tag.number()));
                entries.extend(two(u16::from(kind % 14)));
                entries.extend(four(count.value()));
                entries.extend(four(value.value()));
            }
            Change::Next { at } => close(&mut exif, &mut entries, at.value()),
            _ => {}
        }
    }
    close(&mut exif, &mut entries, 0);
    exif
}

fn put_segment(jpeg: &mut Vec<u8>, marker: u8, length: u16, content: &[u8]) {
    let segment = [&[0xFF, marker], &length.to_be_bytes()[..], content].concat();
    jpeg.splice(2..2, segment);
}

/// Behind the header, with its sum.
fn put_chunk(png: &mut Vec<u8>, name: &[u8; 4], content: &[u8]) {
    const BEHIND_HEADER: usize = 33;
    let named = [name, content].concat();
    let chunk = [&(content.len() as u32).to_be_bytes(), named.as_slice(), &crc(&named).to_be_bytes()].concat();
    png.splice(BEHIND_HEADER..BEHIND_HEADER, chunk);
}

/// Says another size in the header, where there still is one in its place.
fn resize(picture: &mut [u8], is_png: bool, width: i64, height: i64) {
    if is_png {
        picture[16..20].copy_from_slice(&(width as u32).to_be_bytes());
        picture[20..24].copy_from_slice(&(height as u32).to_be_bytes());
        let sum = crc(&picture[12..29]);
        picture[29..33].copy_from_slice(&sum.to_be_bytes());
    } else if let Some(frame) = picture.windows(2).position(|bytes| bytes == [0xFF, 0xC0])
        && let Some(place) = picture.get_mut(frame + 5..frame + 9)
    {
        place[..2].copy_from_slice(&(height as u16).to_be_bytes());
        place[2..].copy_from_slice(&(width as u16).to_be_bytes());
    }
}

/// The sum of a PNG's chunk (ISO 15948, annex D, from memory).
fn crc(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| (sum >> 1) ^ if sum & 1 == 1 { 0xEDB8_8320 } else { 0 })
    })
}

pub fn read(bytes: &[u8]) {
    match prepare_photo(bytes) {
        Ok(developed) => {
            let folder = folder();
            let photos = Photos::of_studio(&folder.path().join("studio.laydown"));
            photos.put(&developed).unwrap();
            let saved = fs::read(photos.file(&developed.sha256)).unwrap();
            assert_eq!(prepare_photo(&saved).unwrap(), developed, "what is kept is kept again as it is");
        }
        Err(error) => is_sentence(error),
    }
    if let Err(error) = trace(bytes) {
        is_sentence(error);
    }
    if let Err(error) = upright_preview(bytes, 200) {
        is_sentence(error);
    }
}
