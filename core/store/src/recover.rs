//! What can still be read of a damaged studio, saved into a new one in its place.
//!
//! The damaged file is only read. When the new one is whole and on the disk beside it, under [`WAITING`], the exchange is
//! decided: the damaged file and its log are set aside, the new one takes their place, and a phone that dies in between
//! goes on with that when the studio is next opened. Until then everything is as it was.
//!
//! The new studio is a new device. Other phones may have seen events of the old one that are lost here, so no number after
//! the highest that can still be read is sure to be free; they give back what they have when phones next exchange.

use std::ffi::OsString;
use std::fs::{self, File};
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

use chrono::DateTime;
use rusqlite::{Connection, OptionalExtension, TransactionBehavior, params};
use uuid::Uuid;

use super::entity::{Entity, Preference};
use super::error::StoreError;
use super::open::{folder_of, refuse_what_is_not_ours, sibling_path};
use super::packed::StringDictionary;
use super::page_scan::{Pages, Row, Value};
use super::schema::{self, MIGRATIONS};
use super::transaction::{SEQ_BITS, Transaction, name_own_device, rebuild, seq_at, unreadable};
use super::whole_file::whole_file;
use crate::journal::{DeviceId, Ids};

/// Ends the name of the new file until it is whole.
const UNFINISHED: &str = ".recovering";
/// Ends the name of the new file, before the name of what is to be set aside, once it is whole.
const WAITING: &str = ".recovered";
/// The main file last: while it is there, it is the damaged one.
const PARTS: [&str; 4] = ["-wal", "-shm", "-journal", ""];
/// No phone has heard of so many others: a number from here on is the place of an event.
const MOST_DEVICES: i64 = 1 << 20;

/// How a recovery went.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Recovered {
    /// Events that were read and are in the new studio.
    pub saved: u64,
    /// Events that must have been there, since later ones were or an index still names them, and could not be read.
    pub lost: u64,
    /// Where the damaged file now lies, as it was.
    pub set_aside: PathBuf,
    /// The device that the new studio is on.
    pub device: DeviceId,
}

/// Sets the damaged studio at `path` aside and puts a new one in its place, with every event that can still be read, as a new
/// device named by `ids` at `now_ms` (unix ms). The photographs stay where they are. What was half typed and last chosen is
/// not carried over. The studio must not be open.
///
/// # Errors
/// [`StoreError::NotAStudio`] where neither the file's mark nor any event can be read, [`StoreError::Newer`] where the file is of a
/// newer program, or when the new file cannot be written. The damaged file is then as it was.
pub fn recover(path: impl AsRef<Path>, now_ms: i64, mut ids: impl Ids) -> Result<Recovered, StoreError> {
    let path = path.as_ref();
    finish(path)?;
    let (file, with_log) = (Pages::of(File::open(path)?, None)?, with_log(path)?);
    match refuse_what_is_not_ours(path) {
        Ok(_) | Err(StoreError::Damaged { .. }) => {}
        Err(error) => return Err(error),
    }
    let unfinished = sibling_path(path, UNFINISHED);
    for part in PARTS {
        remove(&sibling_path(&unfinished, part))?;
    }
    let (device, (saved, lost)) = build(&unfinished, &file, with_log.as_ref(), now_ms, &mut ids)?;
    File::options().write(true).open(&unfinished)?.sync_all()?;
    let aside = free_name(path, now_ms)?;
    fs::rename(&unfinished, waiting(path, &aside))?;
    sync_folder(path)?;
    finish(path)?;
    Ok(Recovered { saved, lost, set_aside: folder_of(path).join(aside), device })
}

/// As [`recover`], on the phone that `device_marker` belongs to, as [`Store::open_here`](super::Store::open_here) reads it: the studio is
/// then opened there under the name it was given here.
///
/// # Errors
/// As [`recover`], or when the mark cannot be written: opening then gives the studio one more name.
pub fn recover_here(
    path: impl AsRef<Path>,
    device_marker: &Path,
    now_ms: i64,
    ids: impl Ids,
) -> Result<Recovered, StoreError> {
    let recovered = recover(path, now_ms, ids)?;
    whole_file(device_marker, recovered.device.0.to_string().as_bytes())?;
    Ok(recovered)
}

/// Whether an event can be read from the file at `path` or its log: then it is a studio, whatever its header says.
pub(super) fn holds_events(path: &Path) -> Result<bool, StoreError> {
    let mut found = false;
    let mut look = |row| {
        found |= matches!(SalvagedRow::of(&row), Some(SalvagedRow::Event { .. }));
        Ok::<_, StoreError>(!found)
    };
    Pages::of(File::open(path)?, None)?.rows_in_file(&mut look)?;
    if let Some(log) = with_log(path)? {
        log.rows_in_log(&mut look)?;
    }
    Ok(found)
}

/// Ends an exchange that was decided and not done, as when the phone died in it.
pub(super) fn finish(path: &Path) -> Result<(), StoreError> {
    let Some((new, aside)) = decided(path)? else { return Ok(()) };
    for part in PARTS {
        match fs::rename(sibling_path(path, part), sibling_path(&folder_of(path).join(&aside), part)) {
            Err(error) if error.kind() != ErrorKind::NotFound => return Err(error.into()),
            _ => {}
        }
    }
    // The order must also be that on the disk: a log is never left beside the new file.
    sync_folder(path)?;
    fs::rename(new, path)?;
    Ok(sync_folder(path)?)
}

/// The new file that waits to take the place of `path`, and the name to set the damaged one aside under.
fn decided(path: &Path) -> Result<Option<(PathBuf, OsString)>, StoreError> {
    let Some(start) = path.file_name().and_then(|name| name.to_str()).map(|name| format!("{name}{WAITING} ")) else {
        return Ok(None);
    };
    for entry in fs::read_dir(folder_of(path))? {
        let entry = entry?;
        if let Some(aside) = entry.file_name().to_str().and_then(|name| name.strip_prefix(&start)) {
            return Ok(Some((entry.path(), aside.into())));
        }
    }
    Ok(None)
}

fn waiting(path: &Path, aside: &str) -> PathBuf {
    sibling_path(path, &format!("{WAITING} {aside}"))
}

/// A name that no file beside `path` has, with the day.
fn free_name(path: &Path, now_ms: i64) -> Result<String, StoreError> {
    let name = path.file_name().and_then(|name| name.to_str()).ok_or(StoreError::NotAStudio)?;
    let day = DateTime::from_timestamp_millis(now_ms).unwrap_or_default().format("%Y-%m-%d");
    let mut aside = format!("{name}.damaged-{day}");
    let mut number = 2;
    while folder_of(path).join(&aside).try_exists()? {
        aside = format!("{name}.damaged-{day}-{number}");
        number += 1;
    }
    Ok(aside)
}

/// The file with the log beside it, if there is one.
fn with_log(path: &Path) -> Result<Option<Pages>, StoreError> {
    match File::open(sibling_path(path, "-wal")) {
        Ok(log) => Ok(Some(Pages::of(File::open(path)?, Some(log))?)),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
        Err(error) => Err(error.into()),
    }
}

fn remove(path: &Path) -> io::Result<()> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}

fn sync_folder(path: &Path) -> io::Result<()> {
    File::open(folder_of(path))?.sync_all()
}

/// Makes the new file at `path` from what can be read, and says which device it is on, how many events it holds and how many
/// are lost.
fn build(
    path: &Path,
    file: &Pages,
    with_log: Option<&Pages>,
    now_ms: i64,
    ids: &mut dyn Ids,
) -> Result<(DeviceId, (u64, u64)), StoreError> {
    let conn = Connection::open(path)?;
    // Nothing counts before all is done: the file is then put on the disk as a whole, and made anew if it never is.
    conn.pragma_update(None, "synchronous", "OFF")?;
    conn.pragma_update(None, "journal_mode", "MEMORY")?;
    conn.pragma_update(None, "temp_store", "MEMORY")?;
    schema::migrate(&conn, MIGRATIONS)?;
    let tx = rusqlite::Transaction::new_unchecked(&conn, TransactionBehavior::Immediate)?;
    tx.execute("CREATE TEMP TABLE indexed (place INTEGER PRIMARY KEY, entity BLOB NOT NULL)", [])?;
    let mut own = None;
    file.rows_in_file(|row| copy(&tx, &row, &mut own))?;
    if let Some(log) = with_log
        && is_of_this_file(&tx, log)?
    {
        let mut newest = None;
        log.rows_in_log(|row| copy(&tx, &row, &mut newest))?;
        own = newest.or(own);
    }
    drop_what_cannot_be_true(&tx)?;
    let counted = count(&tx)?;
    let device = name_own_device(&tx, DeviceId(ids.next(now_ms)))?;
    rebuild(&tx)?;
    if let Some(preferred) = own.map_or(Ok(None), |own| Preference::load(&tx, own))? {
        let mut strings = StringDictionary::default();
        Transaction::begin(&tx, ids, &mut strings, now_ms)?.put(&Preference { id: device.0, ..preferred })?;
    }
    tx.execute("DROP TABLE indexed", [])?;
    tx.commit()?;
    conn.close().map_err(|(_, error)| error)?;
    Ok((device, counted))
}

/// Copies a row of the journal as it is, or what its index says into the table `indexed`, and notes in `own` the device that
/// the damaged file was on. The first that claims a place or a number has it.
fn copy(tx: &Connection, row: &Row, own: &mut Option<Uuid>) -> Result<bool, StoreError> {
    match SalvagedRow::of(row) {
        Some(SalvagedRow::Device { number, id, is_own }) => {
            *own = own.or(is_own.then_some(id));
            tx.prepare_cached("INSERT OR IGNORE INTO device (number, id) VALUES (?1, ?2)")?
                .execute(params![number, id])?;
        }
        Some(SalvagedRow::Word { number, text }) => {
            tx.prepare_cached("INSERT OR IGNORE INTO word (number, text) VALUES (?1, ?2)")?
                .execute(params![number, text])?;
        }
        Some(SalvagedRow::Event { place, entity, clock, kind, body }) => {
            tx.prepare_cached(
                "INSERT OR IGNORE INTO event (place, entity, clock, kind, body) VALUES (?1, ?2, ?3, ?4, ?5)",
            )?
            .execute(params![place, entity, clock, kind, body])?;
        }
        Some(SalvagedRow::Indexed { place, entity }) => {
            tx.prepare_cached("INSERT OR IGNORE INTO indexed (place, entity) VALUES (?1, ?2)")?
                .execute(params![place, entity])?;
        }
        None => {}
    }
    Ok(true)
}

/// Whether a log says the same as what was copied from the file: another studio's has other words under the same numbers.
fn is_of_this_file(tx: &Connection, log: &Pages) -> Result<bool, StoreError> {
    let (mut same, mut other) = (0_u64, 0_u64);
    log.rows_in_log(|row| {
        let agrees: Option<bool> = match SalvagedRow::of(&row) {
            Some(SalvagedRow::Word { number, text }) => tx
                .prepare_cached("SELECT text = ?2 FROM word WHERE number = ?1")?
                .query_row(params![number, text], |row| row.get(0))
                .optional()?,
            Some(SalvagedRow::Event { place, entity, clock, .. }) => tx
                .prepare_cached("SELECT entity = ?2 AND clock = ?3 FROM event WHERE place = ?1")?
                .query_row(params![place, entity, clock], |row| row.get(0))
                .optional()?,
            _ => None,
        };
        match agrees {
            Some(true) => same += 1,
            Some(false) => other += 1,
            None => {}
        }
        Ok::<_, StoreError>(true)
    })?;
    Ok(other == 0 || same > other)
}

/// Drops the events that cannot be unpacked, whose phone is not known, or of which the index says something else.
fn drop_what_cannot_be_true(tx: &Connection) -> Result<(), StoreError> {
    tx.execute("DELETE FROM event WHERE place >> 40 NOT IN (SELECT number FROM device)", [])?;
    tx.execute(
        "DELETE FROM event WHERE place IN \
         (SELECT e.place FROM event e JOIN indexed i ON i.place = e.place WHERE i.entity <> e.entity)",
        [],
    )?;
    // Under a number that the index does not know, while one that it knows of the same thing is missing: the number rotted.
    tx.execute(
        "DELETE FROM event WHERE place NOT IN (SELECT place FROM indexed) AND entity IN \
         (SELECT entity FROM indexed WHERE place NOT IN (SELECT place FROM event))",
        [],
    )?;
    let mut delete = tx.prepare("DELETE FROM event WHERE place = ?1")?;
    for place in unreadable(tx)? {
        delete.execute([place])?;
    }
    Ok(())
}

/// How many events there are, and how many are missing before the last of each phone or named by the index alone.
fn count(tx: &Connection) -> Result<(u64, u64), StoreError> {
    let saved: i64 = tx.query_row("SELECT count(*) FROM event", [], |row| row.get(0))?;
    let gaps: i64 = tx.query_row(
        "SELECT coalesce(sum(last - made), 0) FROM \
         (SELECT max(place & ((1 << 40) - 1)) AS last, count(*) AS made FROM event GROUP BY place >> 40)",
        [],
        |row| row.get(0),
    )?;
    let after: i64 = tx.query_row(
        "SELECT count(*) FROM indexed i WHERE place > \
         coalesce((SELECT max(e.place) FROM event e WHERE e.place >> 40 = i.place >> 40), 0)",
        [],
        |row| row.get(0),
    )?;
    Ok((saved.unsigned_abs(), gaps.unsigned_abs() + after.unsigned_abs()))
}

/// What a row of the damaged file can be, told by its shape alone: which table its page belongs to may be lost.
enum SalvagedRow<'a> {
    Device { number: i64, id: Uuid, is_own: bool },
    Word { number: i64, text: &'a str },
    Event { place: i64, entity: Uuid, clock: i64, kind: i64, body: &'a [u8] },
    Indexed { place: i64, entity: Uuid },
}

impl SalvagedRow<'_> {
    fn of(row: &Row) -> Option<SalvagedRow<'_>> {
        use Value::{Blob, Null, Number, Text};
        let is_device = |number: i64| (1..MOST_DEVICES).contains(&number);
        let is_place = |place: i64| is_device(place >> SEQ_BITS) && seq_at(place) > 0;
        match (row.number, row.values.as_slice()) {
            (Some(place), [Null, Blob(entity), Number(clock), Number(kind), Blob(body)]) if is_place(place) => {
                let entity = Uuid::from_slice(entity).ok()?;
                Some(SalvagedRow::Event { place, entity, clock: *clock, kind: *kind, body })
            }
            (Some(number), [Null, Blob(id), Number(own)]) if is_device(number) => {
                Some(SalvagedRow::Device { number, id: Uuid::from_slice(id).ok()?, is_own: *own == 1 })
            }
            // Devices and words are in their tables and once more in an index.
            (None, [Blob(id), Number(number)]) if is_device(*number) => {
                Some(SalvagedRow::Device { number: *number, id: Uuid::from_slice(id).ok()?, is_own: false })
            }
            (Some(number), [Null, Text(text)]) if number > 0 => Some(SalvagedRow::Word { number, text }),
            (None, [Text(text), Number(number)]) if *number > 0 => Some(SalvagedRow::Word { number: *number, text }),
            (None, [Blob(entity), Number(place)]) if is_place(*place) => {
                Some(SalvagedRow::Indexed { place: *place, entity: Uuid::from_slice(entity).ok()? })
            }
            _ => None,
        }
    }
}
