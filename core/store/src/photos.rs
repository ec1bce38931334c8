//! Photographs: files beside the studio's file, each named by the SHA-256 of what is in it.
//!
//! A file is whole and on the disk before the record that names it is kept, so no record points to nothing. Until then it
//! lies in a folder of staged files, which is gone through when the studio is opened: what has a record moves on, what has
//! none, as when the phone died in between, is swept away. Both happen within the writer's transaction, so that two
//! processes do not sweep each other's staged files.

use std::fs::{self, File};
use std::io::{self, Cursor};
use std::path::{Path, PathBuf};

use image::ImageDecoder;
use image::codecs::jpeg::JpegEncoder;
use img_parts::jpeg::{Jpeg, markers};
use img_parts::png::PngChunk;
use img_parts::{Bytes, ImageEXIF};
use rusqlite::Connection;
use sha2::{Digest, Sha256};

use super::error::StoreError;
use super::open::folder_of;
use super::query::photo_names;
use super::whole_file::{PARTIAL, whole_file};
use laydown_domain::decode::{PNG_SIGNATURE, Undecodable, chunks_of_png, decode, end_of_jpeg, opened, upright};

/// The longer side of a preview, pixels.
const PREVIEW: u32 = 720;
/// The most bytes a photograph may have.
pub(super) const MOST_BYTES: usize = 64 << 20;
/// The most pixels a photograph may have.
const MOST_PIXELS: u64 = 60_000_000;
/// The fewest parts that the picture of a JPEG is made of.
const FEWEST_SEGMENTS: usize = 3;
/// The chunks of a PNG that are kept: what its pixels and their colours need. The orientation is written anew.
const SAVED_CHUNKS: [&[u8; 4]; 12] =
    [b"IHDR", b"PLTE", b"IDAT", b"IEND", b"tRNS", b"gAMA", b"cHRM", b"sRGB", b"iCCP", b"sBIT", b"bKGD", b"pHYs"];

/// Why a photograph was not kept.
#[derive(Debug, thiserror::Error)]
#[error("{self:?}")]
pub enum PhotoError {
    /// Nothing in the file.
    Empty,
    /// A picture of a kind that only some phones can read.
    Heic,
    /// Not a JPEG or PNG, or cut short.
    NoPicture,
    /// Larger than any phone takes.
    TooLarge,
    /// It could not be written.
    #[error(transparent)]
    Store(#[from] StoreError),
}

impl From<io::Error> for PhotoError {
    fn from(error: io::Error) -> PhotoError {
        PhotoError::Store(error.into())
    }
}

impl From<Undecodable> for PhotoError {
    fn from(error: Undecodable) -> PhotoError {
        match error {
            Undecodable::NoPicture | Undecodable::CutShort => PhotoError::NoPicture,
            Undecodable::TooLarge => PhotoError::TooLarge,
        }
    }
}

/// A photograph ready to be put into the folder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PreparedPhoto {
    /// SHA-256 of the file, in hexadecimal.
    pub sha256: String,
    /// Width of the upright picture, pixels.
    pub width: u32,
    /// Height of the upright picture, pixels.
    pub height: u32,
    plain: Vec<u8>,
    preview: Vec<u8>,
}

/// Makes of a picture what is kept: the picture itself as it was taken, without what its metadata say of the place and
/// the phone, and a small upright preview.
///
/// # Errors
/// When it is no picture or too large.
pub fn prepare_photo(bytes: &[u8]) -> Result<PreparedPhoto, PhotoError> {
    let orientation = header(bytes)?.orientation().map_err(|_| PhotoError::NoPicture)?;
    let plain = without_metadata(bytes, orientation.to_exif())?;
    let sha256 = sha256_of(&plain);
    // From what is kept and not from what came: that it can be read again is then known.
    ready(sha256, plain)
}

/// A photograph that another device kept, as it is.
///
/// # Errors
/// [`PhotoError::NoPicture`] when its SHA-256 is not `sha256`, else as [`prepare_photo`].
pub fn verified(sha256: &str, bytes: Vec<u8>) -> Result<PreparedPhoto, PhotoError> {
    header(&bytes)?;
    if sha256_of(&bytes) != sha256 {
        return Err(PhotoError::NoPicture);
    }
    ready(sha256.to_owned(), bytes)
}

/// Pixels of a photograph, as its header says.
pub(super) fn pixels(bytes: &[u8]) -> Result<u64, PhotoError> {
    let (width, height) = header(bytes)?.dimensions();
    Ok(u64::from(width) * u64::from(height))
}

/// Whether a file is the photograph of this name, as far as its sum and its header tell.
pub(super) fn seems_whole(sha256: &str, bytes: &[u8]) -> bool {
    header(bytes).is_ok() && sha256_of(bytes) == sha256
}

fn ready(sha256: String, plain: Vec<u8>) -> Result<PreparedPhoto, PhotoError> {
    let (picture, orientation) = decode(&plain, MOST_PIXELS)?;
    let is_large = picture.width().max(picture.height()) > PREVIEW;
    let (width, height) = upright(picture.width(), picture.height(), orientation);
    let mut small = if is_large { picture.thumbnail(PREVIEW, PREVIEW) } else { picture };
    small.apply_orientation(orientation);
    let mut preview = Cursor::new(Vec::new());
    let encoder = JpegEncoder::new_with_quality(&mut preview, 82);
    small.into_rgb8().write_with_encoder(encoder).map_err(|_| PhotoError::NoPicture)?;
    Ok(PreparedPhoto { sha256, width, height, plain, preview: preview.into_inner() })
}

/// The SHA-256 of some bytes, in hexadecimal.
pub fn sha256_of(bytes: &[u8]) -> String {
    hex(Sha256::new_with_prefix(bytes))
}

/// A sum that has been taken, in hexadecimal.
pub(super) fn hex(sum: Sha256) -> String {
    sum.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Whether a text can be the name of a photograph, so that no other path is ever made of it.
pub(super) fn is_name(sha256: &str) -> bool {
    sha256.len() == 64 && sha256.bytes().all(|byte| byte.is_ascii_digit() || (b'a'..=b'f').contains(&byte))
}

/// The folder of photographs of one studio.
#[derive(Debug, Clone)]
pub struct Photos {
    folder: PathBuf,
}

impl Photos {
    /// The folder that belongs to the studio's file at `studio`; it is made when the first photograph comes.
    pub fn of_studio(studio: &Path) -> Photos {
        Photos { folder: studio.with_extension("photos") }
    }

    /// Where the photograph of this name lies.
    pub fn file(&self, sha256: &str) -> PathBuf {
        self.find(&format!("{sha256}.{PICTURE}"))
    }

    /// Where its preview lies: upright, small.
    pub fn preview(&self, sha256: &str) -> PathBuf {
        self.find(&format!("{sha256}.{PREVIEW_ENDING}"))
    }

    /// Puts a photograph among the staged files; when this returns it is on the disk. To be called within the transaction
    /// that keeps its record.
    ///
    /// # Errors
    /// When it cannot be written; what was written of it is swept when the studio is next opened.
    pub fn put(&self, photo: &PreparedPhoto) -> Result<(), StoreError> {
        self.adopt(&photo.sha256, &photo.plain, &photo.preview)
    }

    /// As [`Photos::put`], for one that was developed elsewhere; `sha256` is that of `picture`.
    pub(super) fn adopt(&self, sha256: &str, picture: &[u8], preview: &[u8]) -> Result<(), StoreError> {
        make_folder(&self.staging(), &mut |within| File::open(within)?.sync_all())?;
        for (ending, bytes) in [(PREVIEW_ENDING, preview), (PICTURE, picture)] {
            let name = format!("{sha256}.{ending}");
            if !self.find(&name).exists() {
                whole_file(&self.staging().join(name), bytes)?;
            }
        }
        Ok(())
    }

    /// Whether the photograph of this name and its preview are here.
    pub fn has(&self, sha256: &str) -> bool {
        self.file(sha256).exists() && self.preview(sha256).exists()
    }

    /// Goes through the staged files: what a record names moves on, the rest is removed. To be called within a writer's
    /// transaction, or right after the commit that kept the record. Answers with how many were removed.
    ///
    /// # Errors
    /// When the folder cannot be read or changed.
    pub(super) fn commit_staged(&self, conn: &Connection) -> Result<usize, StoreError> {
        let entries = match fs::read_dir(self.staging()) {
            Ok(entries) => entries,
            Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(0),
            Err(error) => return Err(error.into()),
        };
        let mut swept = 0;
        for entry in entries {
            let entry = entry?;
            let name = entry.file_name().to_string_lossy().into_owned();
            let sha256 = name.split('.').next().unwrap_or_default();
            if !name.ends_with(PARTIAL) && is_named(conn, sha256)? {
                fs::rename(entry.path(), self.folder.join(&name))?;
            } else {
                fs::remove_file(entry.path())?;
                swept += 1;
            }
        }
        Ok(swept)
    }

    pub(super) fn has_staged(&self) -> bool {
        fs::read_dir(self.staging()).is_ok_and(|mut entries| entries.next().is_some())
    }

    fn staging(&self) -> PathBuf {
        self.folder.join("new")
    }

    fn find(&self, name: &str) -> PathBuf {
        let settled = self.folder.join(name);
        if settled.exists() { settled } else { self.staging().join(name) }
    }
}

pub(super) const PICTURE: &str = "picture";
pub(super) const PREVIEW_ENDING: &str = "preview.jpg";

/// Whether an event names it, retracted or not: what was undone may be done again.
fn is_named(conn: &Connection, sha256: &str) -> Result<bool, StoreError> {
    let in_use = "SELECT EXISTS (SELECT 1 FROM photo WHERE sha256 = ?1)";
    if conn.prepare_cached(in_use)?.query_row([sha256], |row| row.get(0))? {
        return Ok(true);
    }
    // Rare: the journal is only searched for a file that no record shows.
    Ok(photo_names(conn)?.contains(sha256))
}

/// A picture whose header says that it can be kept; nothing of it is unpacked yet.
fn header(bytes: &[u8]) -> Result<impl ImageDecoder, PhotoError> {
    match bytes {
        [] => Err(PhotoError::Empty),
        _ if bytes.len() > MOST_BYTES => Err(PhotoError::TooLarge),
        _ if is_heif(bytes) => Err(PhotoError::Heic),
        _ => Ok(opened(bytes, MOST_PIXELS)?),
    }
}

/// Whether a file begins as one of the HEIF family does: a box of the type `ftyp` with one of its brands (ISO/IEC 23008-12,
/// from memory).
fn is_heif(bytes: &[u8]) -> bool {
    const BRANDS: [&[u8]; 6] = [b"heic", b"heix", b"hevc", b"heim", b"mif1", b"avif"];
    bytes.get(4..8) == Some(b"ftyp") && bytes.get(8..12).is_some_and(|brand| BRANDS.contains(&brand))
}

/// The same picture, bit for bit, with nothing beside it but which way is up.
fn without_metadata(bytes: &[u8], orientation: u8) -> Result<Vec<u8>, PhotoError> {
    let is_jpeg = bytes.starts_with(&[markers::P, markers::SOI]);
    let length = if is_jpeg { end_of_jpeg(bytes).ok_or(PhotoError::NoPicture)? } else { bytes.len() };
    let bytes = Bytes::copy_from_slice(&bytes[..length]);
    let mut plain = Vec::new();
    if is_jpeg {
        let mut jpeg = Jpeg::from_bytes(bytes).map_err(|_| PhotoError::NoPicture)?;
        // What the picture is made of and no more: among the rest is what nobody has a use for and the writer cannot write.
        jpeg.segments_mut().retain(|part| match part.marker() {
            // The same marker also holds a small picture.
            markers::APP0 => part.contents().starts_with(b"JFIF\0"),
            // Colours; the same marker also lists further pictures in the file.
            markers::APP2 => part.contents().starts_with(b"ICC_PROFILE\0"),
            markers::SOF0..=markers::SOF15 | markers::SOS | markers::DQT | markers::DRI | markers::APP14 => true,
            _ => false,
        });
        // Tables, frame and scan at least; the writer counts on some.
        if jpeg.segments().len() < FEWEST_SEGMENTS {
            return Err(PhotoError::NoPicture);
        }
        jpeg.set_exif(Some(Bytes::from(way_up(orientation))));
        jpeg.encoder().write_to(&mut plain)?;
    } else {
        plain.extend(PNG_SIGNATURE);
        for chunk in chunks_of_png(&bytes).filter(|chunk| SAVED_CHUNKS.contains(&&chunk.kind)) {
            plain.extend(chunk.whole);
            if chunk.kind == *b"IHDR" {
                // Before the dots: behind them is allowed too, but not every reader looks there.
                PngChunk::new(*b"eXIf", Bytes::from(way_up(orientation))).encoder().write_to(&mut plain)?;
            }
        }
    }
    Ok(plain)
}

/// The least EXIF there is: one directory with one entry, the orientation (tag 0x0112, a short).
fn way_up(orientation: u8) -> Vec<u8> {
    let mut exif = b"II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0".to_vec();
    exif.extend_from_slice(&[orientation, 0, 0, 0]);
    exif.extend_from_slice(&[0; 4]);
    exif
}

/// Makes a folder, and those that it lies in. `sync` writes a folder's list of names to the disk, so that a new folder is
/// still there when the power goes.
fn make_folder(folder: &Path, sync: &mut impl FnMut(&Path) -> io::Result<()>) -> io::Result<()> {
    if folder.is_dir() {
        return Ok(());
    }
    let within = folder_of(folder);
    make_folder(within, sync)?;
    match fs::create_dir(folder) {
        // Another process may have made it meanwhile.
        Err(error) if error.kind() != io::ErrorKind::AlreadyExists => Err(error),
        _ => sync(within),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_new_folder_is_written_into_the_list_of_the_one_it_lies_in() {
        let root = tempfile::tempdir().unwrap();
        let (outer, inner) = (root.path().join("studio.photos"), root.path().join("studio.photos/new"));
        let mut synced = Vec::new();
        let mut sync = |folder: &Path| {
            synced.push((folder.to_owned(), outer.is_dir(), inner.is_dir()));
            Ok(())
        };
        make_folder(&inner, &mut sync).unwrap();
        make_folder(&inner, &mut sync).unwrap();
        // Each once, when the folder in it was there, and nothing for those that were there before.
        assert_eq!(synced, [(root.path().to_owned(), true, false), (outer.clone(), true, true)]);
    }
}
