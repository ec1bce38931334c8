//! A backup: one zip with everything, which laydown takes in again and anyone can read.
//!
//! ```text
//! README.txt                       what this is and how to read it
//! journal/DEVICE/000000000001.jsonl  the events of one device, from that number on, one JSON object a line
//! photos/SHA256.jpg or .png        photographs as they were taken, without their place; `.picture` in older backups
//! photos/SHA256.preview.jpg        small upright copies
//! tables/NAME.csv                  what the journal amounts to, for a spreadsheet; not taken in again
//! manifest.json                    the SHA-256 of every file above, and how many events and photographs there are
//! ```
//!
//! Taking one in is merging: events and photographs that are here already change nothing, in whatever order they come. Every
//! file is checked against the manifest before any of it is used. Files are only ever asked for by the names above, so a
//! name that leads elsewhere leads nowhere; and no more is read of one than it may hold, whatever it claims.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{self, BufRead, BufReader, BufWriter, Read, Write};
use std::path::Path;

use rusqlite::Connection;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use zip::write::{SimpleFileOptions, ZipWriter};
use zip::{CompressionMethod, ZipArchive};

use super::error::StoreError;
use super::jsonl::{self, SummedRead, each_lot, read_lines};
use super::photos::{
    MOST_BYTES, PICTURE, PREVIEW_ENDING, PreparedPhoto, hex, is_name, pixels, seems_whole, sha256_of, verified,
};
use super::transaction::{devices, next_events};
use super::whole_file::write_whole_file;
use super::{Ingested, Store, open, query};
use crate::journal::{DeviceId, Event};

/// Events in one file of the journal.
pub(super) const EVENTS_A_FILE: i64 = 5_000;
/// The most files in a backup.
const MOST_FILES: usize = 1_000_000;
/// The most bytes of the manifest: so many, and so many more for each file in the zip.
const FREE_MANIFEST: u64 = 64 << 10;
const MANIFEST_PER_FILE: u64 = 512;
/// The most values in the manifest beside those of its files.
const FREE_VALUES: usize = 8;
/// The most bytes that a backup unpacks to: so many, and so many more for each of its own. Ids do not pack, and every line
/// has one, so that what laydown writes unpacks to ten times its size and can never unpack to forty times.
const FREE_BYTES: u64 = 16 << 20;
const BYTES_PER_BYTE: u64 = 80;
/// As above, the most events, each of which takes at least the 16 bytes of an id.
const FREE_EVENTS: u64 = 5_000;
const BYTES_PER_EVENT: u64 = 16;
/// As above, the most pixels of all photographs. A camera writes at least a third of a bit for each.
const FREE_PIXELS: u64 = 60_000_000;
const PIXELS_PER_BYTE: u64 = 30;
/// The version of this layout.
const LAYOUT: u32 = 1;
const MANIFEST: &str = "manifest.json";

const README: &str = "\
This is a backup of a laydown studio: how much glaze went on which piece, and what came out of the kiln.

laydown restores it: Studio, Backup, Restore a backup. Nothing is added twice.

Without laydown:
- tables/*.csv open in any spreadsheet: UTF-8 with a byte order mark, commas between the cells. Numbers have a point,
  times are UTC, units stand in the headers. Where your spreadsheet writes numbers with a comma, do not open a table with
  a double click: import it as text, with the comma between the cells and the point in the numbers. A cell that it would
  take for a formula has an apostrophe before it.
- photos are as they were taken, beside a small .preview.jpg of each. The name is the SHA-256 of the file.
- journal/DEVICE/*.jsonl is the truth that the tables were made from, one event a line, in JSON:
  device is a UUID, seq counts that device's events from 1, clock is milliseconds since 1970 UTC times 65536 plus a
  counter, entity is the UUID of the thing it is about, kind says what sort of thing, and body holds the fields it sets.
  Put the events of all devices into the order of clock, device, seq; for each entity, later fields replace earlier ones.
  Whatever the clocks say, an event follows the earlier ones of its device, the one it retracts, and those that it has seen:
  its body may give the last seq of each other device under \"seen\".
  An event of the kind \"retract\" undoes the event whose device and seq its body names. Where that one made a thing whole, the
  retraction does not count while an edit stands that it had not seen. Quantities are whole numbers; the unit ends the
  field's name: mg, ul, um, mm2, mc (thousandths of a degree C), e3 to e5 (thousandths to hundred-thousandths).
- manifest.json has the SHA-256 of every file.
";

/// What a backup holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Contents {
    /// Events of all devices.
    pub events: u64,
    /// Photographs.
    pub photos: u64,
    /// Photographs of which there is a record, and no file where it was made.
    pub missing: u64,
}

/// What came of taking one in.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct RestoreReport {
    /// What it held.
    pub held: Contents,
    /// What of that was new here.
    pub new: Contents,
    /// What of it was not believed.
    pub refused: Ingested,
    /// Photographs that are no pictures, or not those that they are called after, by their names. They were left out.
    pub photos_refused: Vec<String>,
}

/// The number of the last event of each device.
pub type VersionVector = BTreeMap<DeviceId, i64>;

/// A backup that was read through and found whole.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Checked {
    /// What it holds.
    pub contents: Contents,
    /// How far its journal goes.
    pub version_vector: VersionVector,
}

/// Why a backup cannot be used. Nothing was taken in.
#[derive(Debug, thiserror::Error)]
#[error("{self:?}")]
pub enum BackupError {
    /// Another kind of file.
    NotABackup,
    /// There is no such file.
    Gone,
    /// The system does not let it be read.
    Unreadable,
    /// Made by a newer program.
    Newer,
    /// Something in it is not what it was.
    Damaged {
        /// The file within it.
        file: String,
    },
    /// A backup of this studio was read back and lacks some of what the studio has.
    Behind,
    /// A journal of JSON lines is not what it was.
    DamagedJournal,
    /// It broke off on the way.
    Partly {
        /// Events that were added before.
        events: usize,
        /// What it stopped at.
        why: Box<BackupError>,
    },
    /// It could not be read or written.
    #[error(transparent)]
    Store(#[from] StoreError),
}

impl BackupError {
    /// The same error, saying what was added before it.
    fn after(self, ingested: &Ingested) -> BackupError {
        match ingested.new {
            0 => self,
            events => BackupError::Partly { events, why: Box::new(self) },
        }
    }
}

impl From<io::Error> for BackupError {
    fn from(error: io::Error) -> BackupError {
        BackupError::Store(error.into())
    }
}

/// A table for a spreadsheet: its name, and what writes it as CSV.
pub type TableWriter<'a> = (&'a str, &'a dyn Fn(&Connection, &mut dyn Write) -> Result<(), StoreError>);

#[derive(Serialize, Deserialize)]
struct Manifest {
    laydown_backup: u32,
    #[serde(flatten)]
    contents: Contents,
    sha256: BTreeMap<String, String>,
}

impl Store {
    /// Writes everything into one file at `into`, which is there whole or not at all.
    ///
    /// # Errors
    /// When it cannot be written.
    pub fn back_up(&self, into: &Path, tables: &[TableWriter<'_>]) -> Result<Contents, StoreError> {
        self.write_whole(into, |conn, file| self.write_backup(conn, file, tables))
    }

    /// Writes one table as CSV to `into`.
    ///
    /// # Errors
    /// When it cannot be written; then it is not there.
    pub fn write_table(&self, into: &Path, (_, write): TableWriter<'_>) -> Result<(), StoreError> {
        self.write_whole(into, |conn, file| {
            let mut file = BufWriter::new(file);
            write(conn, &mut file)?;
            finished(file)
        })
    }

    /// Writes tables as CSV into one zip at `into`.
    ///
    /// # Errors
    /// When it cannot be written; then it is not there.
    pub fn write_tables(&self, into: &Path, tables: &[TableWriter<'_>]) -> Result<(), StoreError> {
        self.write_whole(into, |conn, file| {
            let mut zip = Packing::new(file);
            for (name, write) in tables {
                zip.put(&format!("{name}.csv"), |file| write(conn, file))?;
            }
            zip.close()
        })
    }

    /// Writes the journal of all devices as JSON lines to `into`, and answers how many events there are.
    ///
    /// # Errors
    /// When it cannot be written; then it is not there.
    pub fn write_journal(&self, into: &Path) -> Result<u64, StoreError> {
        self.write_whole(into, jsonl::write)
    }

    /// A file that is there whole or not at all, made of the studio of one moment.
    fn write_whole<T>(
        &self,
        into: &Path,
        write: impl FnOnce(&Connection, File) -> Result<T, StoreError>,
    ) -> Result<T, StoreError> {
        // A reader of its own: it takes long, and the scale does not wait.
        let conn = open::reader(&self.file)?;
        let conn = conn.unchecked_transaction()?;
        write_whole_file(into, |file| write(&conn, file))
    }

    fn write_backup(&self, conn: &Connection, file: File, tables: &[TableWriter<'_>]) -> Result<Contents, StoreError> {
        let mut zip = Packing::new(file);
        let mut contents = Contents::default();
        zip.put("README.txt", |file| Ok(file.write_all(README.as_bytes())?))?;
        for (device, _) in devices(conn)? {
            let mut last = 0;
            while let events = next_events(conn, device, last, EVENTS_A_FILE)?
                && let (Some(first), Some(end)) = (events.first(), events.last())
            {
                let name = format!("journal/{}/{:012}.jsonl", device.0, first.seq);
                zip.put(&name, |file| write_events(file, &events))?;
                contents.events += events.len() as u64;
                last = end.seq;
            }
        }
        for sha256 in query::photo_names(conn)? {
            // One that rotted here, or never was a picture, is not passed on.
            let picture = if self.photos.has(&sha256) { Some(fs::read(self.photos.file(&sha256))?) } else { None };
            let Some(picture) = picture.filter(|picture| seems_whole(&sha256, picture)) else {
                contents.missing += 1;
                continue;
            };
            zip.store(&photo(&sha256, image_ending(&picture)), &picture)?;
            zip.store(&photo(&sha256, PREVIEW_ENDING), &fs::read(self.photos.preview(&sha256))?)?;
            contents.photos += 1;
        }
        for (name, write) in tables {
            zip.put(&format!("tables/{name}.csv"), |file| write(conn, file))?;
        }
        zip.finish(contents)?;
        Ok(contents)
    }

    /// Takes a backup in, or a journal as [`Store::write_journal`] writes it, given at `now_ms` (unix ms); which it is shows
    /// in the file and not in its name. Nothing of it where it is damaged: it is read through before.
    ///
    /// # Errors
    /// When it is no backup, damaged or newer, contradicts what is here, or cannot be kept.
    pub fn restore(&self, now_ms: i64, from: &Path) -> Result<RestoreReport, BackupError> {
        if jsonl::is_journal(&mut open_file(from)?)? {
            self.restore_lines(now_ms, from)
        } else {
            self.restore_zip(now_ms, from)
        }
    }

    fn restore_lines(&self, now_ms: i64, from: &Path) -> Result<RestoreReport, BackupError> {
        let events = read_lines(open_file(from)?, |_| Ok(()))?;
        let mut refused = Ingested::default();
        let read = read_lines(open_file(from)?, |events| Ok(self.merge_into(now_ms, events, &mut refused)?));
        read.map_err(|error| error.after(&refused))?;
        let of = |events| Contents { events, ..Contents::default() };
        Ok(RestoreReport { held: of(events), new: of(refused.new as u64), refused, photos_refused: Vec::new() })
    }

    fn restore_zip(&self, now_ms: i64, from: &Path) -> Result<RestoreReport, BackupError> {
        let mut zip = Unpacking::open(from)?;
        let held = zip.check()?.contents;
        let mut new = Contents::default();
        let mut photos_refused = Vec::new();
        zip.allow();
        // The files first, the records after them: a record never points to nothing.
        for (sha256, file) in zip.photos() {
            if self.photos.has(&sha256) {
                continue;
            }
            match zip.photograph(&sha256, &file)? {
                Some(photo) => {
                    self.photos.put(&photo)?;
                    new.photos += 1;
                }
                None => photos_refused.push(sha256),
            }
        }
        let mut refused = Ingested::default();
        let taken_in = zip.journal_names().into_iter().try_for_each(|name| {
            zip.events(&name, |events| Ok(self.merge_into(now_ms, events, &mut refused)?)).map(drop)
        });
        // Also after an error, so that no photograph stays behind whose record did not come.
        self.commit_staged_photos()?;
        taken_in.map_err(|error| error.after(&refused))?;
        new.events = refused.new as u64;
        Ok(RestoreReport { held, new, refused, photos_refused })
    }
}

/// Reads a whole backup and says whether every file in it is as it was written, and what it holds.
///
/// # Errors
/// When it is no backup, damaged or newer.
pub fn check_backup(file: &Path) -> Result<Checked, BackupError> {
    Unpacking::open(file)?.check()
}

/// How far the journal goes here.
///
/// # Errors
/// Only when the file cannot be read.
pub fn version_vector(conn: &Connection) -> Result<VersionVector, StoreError> {
    Ok(devices(conn)?.into_iter().filter(|(_, last)| *last > 0).collect())
}

/// Whether what goes so far goes at least as far as `other`.
pub fn covers(version_vector: &VersionVector, other: &VersionVector) -> bool {
    other.iter().all(|(device, last)| version_vector.get(device).is_some_and(|reached| reached >= last))
}

fn open_file(path: &Path) -> Result<File, BackupError> {
    let file = File::open(path).and_then(|file| Ok((file.metadata()?.is_file(), file)));
    match file {
        Ok((true, file)) => Ok(file),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Err(BackupError::Gone),
        Ok((false, _)) | Err(_) => Err(BackupError::Unreadable),
    }
}

/// Everything is on the disk.
fn finished(file: BufWriter<File>) -> Result<(), StoreError> {
    Ok(file.into_inner().map_err(|error| error.into_error())?.sync_all()?)
}

/// What a photograph's name ends in; the last did in older backups.
const IMAGE_ENDINGS: [&str; 3] = ["jpg", "png", PICTURE];

/// What the name of a JPEG or PNG ends in, so that any app opens it.
fn image_ending(picture: &[u8]) -> &'static str {
    let [jpg, png, _] = IMAGE_ENDINGS;
    if picture.starts_with(b"\x89PNG") { png } else { jpg }
}

fn photo(sha256: &str, ending: &str) -> String {
    format!("photos/{sha256}.{ending}")
}

pub(super) fn write_events(file: &mut dyn Write, events: &[Event]) -> Result<(), StoreError> {
    for event in events {
        let line = serde_json::to_string(event).map_err(|error| StoreError::Fault { details: error.to_string() })?;
        writeln!(file, "{line}")?;
    }
    Ok(())
}

/// A backup being written, with the sums of what has gone into it.
struct Packing {
    zip: ZipWriter<BufWriter<File>>,
    sha256: BTreeMap<String, String>,
}

impl Packing {
    fn new(file: File) -> Packing {
        Packing { zip: ZipWriter::new(BufWriter::new(file)), sha256: BTreeMap::new() }
    }

    /// A file that is worth making smaller.
    fn put(
        &mut self,
        name: &str,
        write: impl FnOnce(&mut dyn Write) -> Result<(), StoreError>,
    ) -> Result<(), StoreError> {
        let options = SimpleFileOptions::default().compression_method(CompressionMethod::Deflated).large_file(true);
        self.zip.start_file(name, options).map_err(of_zip)?;
        let mut summed = Summed { to: &mut self.zip, sum: Sha256::new() };
        write(&mut summed)?;
        let sum = hex(summed.sum);
        self.sha256.insert(name.to_owned(), sum);
        Ok(())
    }

    /// A file that is small already.
    fn store(&mut self, name: &str, bytes: &[u8]) -> Result<(), StoreError> {
        let options = SimpleFileOptions::default().compression_method(CompressionMethod::Stored);
        self.zip.start_file(name, options).map_err(of_zip)?;
        self.zip.write_all(bytes)?;
        self.sha256.insert(name.to_owned(), sha256_of(bytes));
        Ok(())
    }

    fn finish(mut self, contents: Contents) -> Result<(), StoreError> {
        let manifest = Manifest { laydown_backup: LAYOUT, contents, sha256: std::mem::take(&mut self.sha256) };
        let text =
            serde_json::to_vec_pretty(&manifest).map_err(|error| StoreError::Fault { details: error.to_string() })?;
        self.zip.start_file(MANIFEST, SimpleFileOptions::default()).map_err(of_zip)?;
        self.zip.write_all(&text)?;
        self.close()
    }

    fn close(self) -> Result<(), StoreError> {
        finished(self.zip.finish().map_err(of_zip)?)
    }
}

/// Sums what goes through it.
pub(super) struct Summed<'a, W: Write> {
    pub(super) to: &'a mut W,
    pub(super) sum: Sha256,
}

impl<W: Write> Write for Summed<'_, W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let written = self.to.write(bytes)?;
        self.sum.update(&bytes[..written]);
        Ok(written)
    }

    fn flush(&mut self) -> io::Result<()> {
        self.to.flush()
    }
}

/// A backup being read. Nothing it says is believed before it has been checked.
struct Unpacking {
    zip: ZipArchive<BufReader<File>>,
    manifest: Manifest,
    /// Bytes of the file.
    size: u64,
    left: Left,
}

/// What may still come out of a backup before it is too much for its size.
#[derive(Default)]
struct Left {
    bytes: u64,
    events: u64,
    pixels: u64,
}

impl Unpacking {
    fn open(file: &Path) -> Result<Unpacking, BackupError> {
        let file = open_file(file)?;
        let size = file.metadata()?.len();
        let mut zip = ZipArchive::new(BufReader::new(file)).map_err(|_| BackupError::NotABackup)?;
        // Where files share their bytes, a small zip unpacks to any size.
        let is_plain = zip.len() <= MOST_FILES
            && !zip.has_duplicate_names()
            && zip.has_overlapping_entries().is_ok_and(|overlaps| !overlaps);
        if !is_plain {
            return Err(BackupError::NotABackup);
        }
        let manifest = Manifest { laydown_backup: 0, contents: Contents::default(), sha256: BTreeMap::new() };
        let mut unpacking = Unpacking { zip, manifest, size, left: Left::default() };
        unpacking.allow();
        unpacking.manifest = unpacking.read_manifest().map_err(|_| BackupError::NotABackup)?;
        match unpacking.manifest.laydown_backup {
            LAYOUT => Ok(unpacking),
            newer if newer > LAYOUT => Err(BackupError::Newer),
            _ => Err(BackupError::NotABackup),
        }
    }

    /// Everything may come out once more.
    fn allow(&mut self) {
        self.left = Left {
            bytes: FREE_BYTES + BYTES_PER_BYTE * self.size,
            events: FREE_EVENTS + self.size / BYTES_PER_EVENT,
            pixels: FREE_PIXELS + PIXELS_PER_BYTE * self.size,
        };
    }

    fn read_manifest(&mut self) -> Result<Manifest, BackupError> {
        let files = self.zip.len();
        let text = self.read(MANIFEST, FREE_MANIFEST + MANIFEST_PER_FILE * files as u64)?;
        // No more values than there are files, before any is made.
        if text.iter().filter(|byte| **byte == b':').count() > files + FREE_VALUES {
            return Err(BackupError::NotABackup);
        }
        serde_json::from_slice(&text).map_err(|_| BackupError::NotABackup)
    }

    /// Lets `work` read one file, then compares the manifest's sum if it has one.
    fn unpack<T>(
        &mut self,
        name: &str,
        work: impl FnOnce(&mut dyn BufRead, &mut Left) -> Result<T, BackupError>,
    ) -> Result<T, BackupError> {
        let damaged = || BackupError::Damaged { file: name.to_owned() };
        let file = self.zip.by_name(name).map_err(|_| damaged())?;
        let most = self.left.bytes;
        // One byte more than there may be shows that there are too many, whatever the file claims.
        let mut file = SummedRead { from: file.take(most + 1), sum: Sha256::new() };
        let mut buffered = BufReader::new(&mut file);
        let done = work(&mut buffered, &mut self.left)?;
        io::copy(&mut buffered, &mut io::sink()).map_err(|_| damaged())?;
        let unpacked = most + 1 - file.from.limit();
        self.left.bytes = most.checked_sub(unpacked).ok_or_else(damaged)?;
        match self.manifest.sha256.get(name) {
            Some(sum) if *sum != hex(file.sum) => Err(damaged()),
            _ => Ok(done),
        }
    }

    /// One file, whole.
    fn read(&mut self, name: &str, most: u64) -> Result<Vec<u8>, BackupError> {
        let damaged = || BackupError::Damaged { file: name.to_owned() };
        self.unpack(name, |file, _| {
            let mut bytes = Vec::new();
            file.take(most + 1).read_to_end(&mut bytes).map_err(|_| damaged())?;
            if bytes.len() as u64 > most { Err(damaged()) } else { Ok(bytes) }
        })
    }

    /// The events of one file of the journal, in lots. Whether they are as they were written shows after the last.
    fn events(
        &mut self,
        name: &str,
        mut batch: impl FnMut(&[Event]) -> Result<(), BackupError>,
    ) -> Result<u64, BackupError> {
        let damaged = || BackupError::Damaged { file: name.to_owned() };
        self.unpack(name, |mut file, left| {
            each_lot(&mut file, &damaged, |events| {
                left.events = left.events.checked_sub(events.len() as u64).ok_or_else(damaged)?;
                batch(events)
            })
        })
    }

    /// The photograph of this name from its file; `None` where it is no picture, or another. Its preview is made here again,
    /// since nobody vouches for the one in the zip.
    fn photograph(&mut self, sha256: &str, file: &str) -> Result<Option<PreparedPhoto>, BackupError> {
        let picture = self.read(file, MOST_BYTES as u64)?;
        let Some(left) = pixels(&picture).ok().and_then(|pixels| self.left.pixels.checked_sub(pixels)) else {
            return Ok(None);
        };
        self.left.pixels = left;
        Ok(verified(sha256, picture).ok())
    }

    /// Reads everything once.
    fn check(&mut self) -> Result<Checked, BackupError> {
        self.allow();
        let names: Vec<String> = self.manifest.sha256.keys().cloned().collect();
        let mut events = 0;
        let mut version_vector = VersionVector::new();
        for name in names {
            if name.starts_with("journal/") {
                events += self.events(&name, |events| {
                    for event in events {
                        let last = version_vector.entry(event.device).or_default();
                        *last = event.seq.max(*last);
                    }
                    Ok(())
                })?;
                continue;
            }
            if let Some(sha256) = photo_name(&name)
                && !is_name(sha256)
            {
                return Err(BackupError::Damaged { file: name });
            }
            // It passes by: nothing of it is held.
            self.unpack(&name, |_, _| Ok(()))?;
        }
        let contents = Contents { events, photos: self.photos().len() as u64, ..self.manifest.contents };
        if contents == self.manifest.contents {
            Ok(Checked { contents, version_vector })
        } else {
            Err(BackupError::Damaged { file: MANIFEST.to_owned() })
        }
    }

    fn journal_names(&self) -> Vec<String> {
        self.manifest.sha256.keys().filter(|name| name.starts_with("journal/")).cloned().collect()
    }

    /// The photographs by their names, each with its file.
    fn photos(&self) -> BTreeMap<String, String> {
        let named = |file: &String| photo_name(file).map(|name| (name.to_owned(), file.clone()));
        self.manifest.sha256.keys().filter_map(named).collect()
    }
}

/// The photograph that a file in a backup is, if it is one.
fn photo_name(file: &str) -> Option<&str> {
    let name = file.strip_prefix("photos/").filter(|name| !name.ends_with(&format!(".{PREVIEW_ENDING}")))?;
    IMAGE_ENDINGS.iter().find_map(|ending| name.strip_suffix(ending)?.strip_suffix('.'))
}

fn of_zip(error: zip::result::ZipError) -> StoreError {
    match error {
        zip::result::ZipError::Io(error) => error.into(),
        other => StoreError::Fault { details: other.to_string() },
    }
}
