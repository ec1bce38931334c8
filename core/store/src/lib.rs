//! The studio's file: the journal and the tables folded from it, in SQLite.
//!
//! The only way to write is [`Store::transact`]; the only way to read is [`Store::read`]. Durable: when a command
//! comes back, what it kept survives a pulled battery. One connection writes and one reads, so a screen never waits
//! for a write to reach the storage.

pub mod backup;
mod domain;
pub mod entity;
mod error;
mod ingest;
pub mod journal;
mod jsonl;
mod open;
mod packed;
mod page_scan;
pub mod photos;
pub mod query;
mod recover;
mod schema;
mod transaction;
mod whole_file;

use std::fmt::Write as _;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use parking_lot::Mutex;
use rusqlite::{Connection, TransactionBehavior};
use serde_json::Value;
use uuid::Uuid;

use journal::{DeviceId, Event, History, Ids, Kind, Rules, SEEN};

pub use entity::Entity;
pub use error::StoreError;
pub use ingest::{Ingested, Refusal, Refused, RefusedEntries};
use packed::StringDictionary;
use photos::Photos;
pub use recover::{Recovered, recover, recover_here};
pub use transaction::{
    Changes, Command, Transaction, Undo, chosen, command_of, devices, events_after, events_in, events_of,
    evidence_stamp, last_clocks, latest_commands, next_event, this_device, without_gaps,
};
pub use whole_file::whole_file;

/// Events that are taken in at a time: a Save waits for so many, some milliseconds.
const BATCH: usize = 500;

/// An open studio.
pub struct Store {
    writer: Mutex<Writer>,
    reader: Mutex<Connection>,
    device: Mutex<DeviceId>,
    device_marker: Option<PathBuf>,
    file: PathBuf,
    file_id: Option<(u64, u64)>,
    photos: Photos,
}

/// The words of a command that may still fail or panic: words that were new in it are then not in the file, and are forgotten.
struct WordsGuard<'a> {
    committed: bool,
    strings: &'a mut StringDictionary,
}

impl Drop for WordsGuard<'_> {
    fn drop(&mut self) {
        if !self.committed {
            self.strings.forget();
        }
    }
}

struct Writer {
    conn: Connection,
    ids: Box<dyn Ids>,
    strings: StringDictionary,
}

/// What a command gave back, what it changed, and how to take it back.
#[derive(Debug, Clone, PartialEq)]
pub struct Committed<T> {
    /// What the command itself gave back.
    pub value: T,
    /// What changed in the studio.
    pub changes: Changes,
    /// For [`Store::undo`].
    pub undo: Undo,
}

impl Store {
    /// Opens the studio in the file at `path`, making a new one where there is none. `now_ms` (unix ms) and `ids` name
    /// this device in a new file; `ids` goes on to name what is made later.
    ///
    /// A file that is something else, newer, damaged or not ours to write is refused and left as it was.
    pub fn open(path: impl AsRef<Path>, now_ms: i64, ids: impl Ids + 'static) -> Result<Store, StoreError> {
        let mut ids: Box<dyn Ids> = Box::new(ids);
        recover::finish(path.as_ref())?;
        let conn = open::writer(path.as_ref())?;
        let device = match transaction::own_device(&conn)? {
            Some(device) => device.id,
            None => {
                let tx = rusqlite::Transaction::new_unchecked(&conn, TransactionBehavior::Immediate)?;
                let device = transaction::name_own_device(&tx, DeviceId(ids.next(now_ms)))?;
                tx.commit()?;
                device
            }
        };
        let reader = open::reader(path.as_ref())?;
        let file = path.as_ref().to_owned();
        let photos = Photos::of_studio(&file);
        let store = Store {
            writer: Mutex::new(Writer { conn, ids, strings: StringDictionary::default() }),
            reader: Mutex::new(reader),
            device: Mutex::new(device),
            device_marker: None,
            file_id: file_id(&file)?,
            file,
            photos,
        };
        store.commit_staged_photos()?;
        Ok(store)
    }

    /// As [`Store::open`], on the phone that `device_marker` belongs to: a small file that the phone's own backups leave out. A studio
    /// that was copied to another phone comes without its mark, and gets a device of its own there, so that the two never
    /// write under one name; so does a new studio. Answers with the device it had before, if it was given a new one.
    pub fn open_here(
        path: impl AsRef<Path>,
        device_marker: &Path,
        now_ms: i64,
        ids: impl Ids + 'static,
    ) -> Result<(Store, Option<DeviceId>), StoreError> {
        let mut store = Store::open(path, now_ms, ids)?;
        store.device_marker = Some(device_marker.to_owned());
        if read_device_marker(device_marker)? == Some(store.device()) {
            return Ok((store, None));
        }
        let before = store.rename_own_device(now_ms)?;
        Ok((store, Some(before)))
    }

    /// Gives this device another name from now on, as where two phones have written under one, and answers with the one it had.
    /// What was made under that stays as it is.
    ///
    /// # Errors
    /// When the file, or the mark that [`Store::open_here`] was given, cannot be written.
    pub fn rename_own_device(&self, now_ms: i64) -> Result<DeviceId, StoreError> {
        let mut writer = self.writer.lock();
        let device = DeviceId(writer.ids.next(now_ms));
        let tx = rusqlite::Transaction::new_unchecked(&writer.conn, TransactionBehavior::Immediate)?;
        transaction::rename_own_device(&tx, device)?;
        self.same_file()?;
        tx.commit()?;
        let before = std::mem::replace(&mut *self.device.lock(), device);
        // After the name: dying in between costs no more than one more name.
        if let Some(device_marker) = &self.device_marker {
            whole_file(device_marker, device.0.to_string().as_bytes())?;
        }
        Ok(before)
    }

    /// This device.
    pub fn device(&self) -> DeviceId {
        *self.device.lock()
    }

    /// The photographs of this studio.
    pub fn photos(&self) -> &Photos {
        &self.photos
    }

    /// Goes through the staged files among the photographs, so that each has a record and each record its file.
    ///
    /// # Errors
    /// When the folder cannot be read or changed.
    pub fn commit_staged_photos(&self) -> Result<(), StoreError> {
        if !self.photos.has_staged() {
            return Ok(());
        }
        let writer = self.writer.lock();
        let tx = rusqlite::Transaction::new_unchecked(&writer.conn, TransactionBehavior::Immediate)?;
        self.photos.commit_staged(&tx)?;
        Ok(tx.commit()?)
    }

    /// Reads the studio as it stands at one moment: a write that comes between two queries of `look` is not seen.
    /// `look` must not call `read` again: it would wait for itself.
    pub fn read<T, E: From<StoreError>>(&self, look: impl FnOnce(&Connection) -> Result<T, E>) -> Result<T, E> {
        let conn = self.reader.lock();
        let snapshot = conn.unchecked_transaction().map_err(StoreError::from)?;
        look(&snapshot)
    }

    /// Runs one command, given at `now_ms` (unix ms): all that `work` writes is kept durably, or, where it fails,
    /// none of it. `work` writes through the transaction it is given; calling `transact` again it would wait for itself.
    pub fn transact<T, E: From<StoreError>>(
        &self,
        now_ms: i64,
        work: impl FnOnce(&mut Transaction<'_>) -> Result<T, E>,
    ) -> Result<Committed<T>, E> {
        let mut writer = self.writer.lock();
        let Writer { conn, ids, strings } = &mut *writer;
        let mut strings = WordsGuard { committed: false, strings };
        let saved = write(conn, ids.as_mut(), strings.strings, now_ms, || self.same_file(), work);
        strings.committed = saved.is_ok();
        saved
    }

    /// Whether the file that is open still lies where it was opened: what is written into one that was deleted is gone with it.
    fn same_file(&self) -> Result<(), StoreError> {
        if file_id(&self.file)? == self.file_id { Ok(()) } else { Err(StoreError::Removed) }
    }

    /// Takes in events made elsewhere, in any order, at `now_ms` (unix ms). They come in lots, so that a Save does not wait for them
    /// all. What cannot be believed is refused by name; the rest comes in.
    ///
    /// # Errors
    /// Only when the studio cannot be read or written; the lots before stay.
    pub fn merge(&self, now_ms: i64, events: &[Event]) -> Result<Ingested, StoreError> {
        let mut ingested = Ingested::default();
        self.merge_into(now_ms, events, &mut ingested)?;
        Ok(ingested)
    }

    /// As [`Store::merge`], adding to what came of events before: a device that was found forked stays so.
    fn merge_into(&self, now_ms: i64, events: &[Event], ingested: &mut Ingested) -> Result<(), StoreError> {
        for batch in events.chunks(BATCH) {
            let mut after = ingested.clone();
            self.transact(now_ms, |tx| tx.ingest_lot(batch, &mut after))?;
            *ingested = after;
        }
        Ok(())
    }

    /// Undoes a command. What comes back undoes the undoing, which does the command again.
    pub fn undo(&self, now_ms: i64, undo: Undo) -> Result<Committed<()>, StoreError> {
        self.transact(now_ms, |tx| tx.undo(undo))
    }

    /// Makes every table again from the journal. Changes nothing, unless a table was tampered with.
    pub fn rebuild(&self) -> Result<(), StoreError> {
        let writer = self.writer.lock();
        let tx = rusqlite::Transaction::new_unchecked(&writer.conn, TransactionBehavior::Immediate)?;
        transaction::rebuild(&tx)?;
        Ok(tx.commit()?)
    }

    /// Every row of every folded table as text, in one order: equal for equal studios. Words stand in it as their texts, since
    /// each file numbers them as they came.
    pub fn dump(&self) -> Result<String, StoreError> {
        self.read(|conn| {
            let mut text = String::new();
            for table in entity::TABLES {
                let fields = table.fields.iter().copied();
                let column = |(name, is_interned): (&str, &bool)| match is_interned {
                    true => format!("'{name}=' || (SELECT quote(text) FROM word WHERE number = \"{name}\")"),
                    false => format!("'{name}=' || quote(\"{name}\")"),
                };
                let columns: Vec<String> = fields.zip(table.is_interned.iter().skip(1)).map(column).collect();
                let sql = format!(
                    "SELECT '{kind} ' || hex(id) || ' ' || {row} FROM \"{kind}\" ORDER BY id",
                    kind = table.kind.name(),
                    row = columns.join(" || ' ' || ")
                );
                let mut select = conn.prepare(&sql)?;
                let mut rows = select.query([])?;
                while let Some(row) = rows.next()? {
                    let line: String = row.get(0)?;
                    writeln!(text, "{line}").map_err(|error| StoreError::Fault { details: error.to_string() })?;
                }
            }
            Ok(text)
        })
    }

    /// Reads the whole file and says whether every page of it is sound. Takes seconds on a large studio.
    pub fn check(&self) -> Result<(), StoreError> {
        self.read(|conn| {
            let found: String = conn.query_row("PRAGMA integrity_check(1)", [], |row| row.get(0))?;
            if found == "ok" { Ok(()) } else { Err(StoreError::Damaged { details: found }) }
        })
    }
}

fn write<T, E: From<StoreError>>(
    conn: &Connection,
    ids: &mut dyn Ids,
    strings: &mut StringDictionary,
    now_ms: i64,
    may_commit: impl FnOnce() -> Result<(), StoreError>,
    work: impl FnOnce(&mut Transaction<'_>) -> Result<T, E>,
) -> Result<Committed<T>, E> {
    let tx = rusqlite::Transaction::new_unchecked(conn, TransactionBehavior::Immediate).map_err(StoreError::from)?;
    let mut transaction = Transaction::begin(&tx, ids, strings, now_ms)?;
    let value = work(&mut transaction)?;
    let (changes, undo) = transaction.finish();
    may_commit()?;
    tx.commit().map_err(StoreError::from)?;
    Ok(Committed { value, changes, undo })
}

/// What was ever written about one entity, by the rules of the kinds that this version knows.
pub fn history(events: &[Event]) -> History<'_> {
    History::of(events, &domain::Domain)
}

/// Whether a thing of `kind` is there with this id; `None` for a kind that this version does not know.
pub fn is_shown(conn: &Connection, kind: &Kind, id: Uuid) -> Result<Option<bool>, StoreError> {
    let Some(table) = entity::Table::named(kind) else { return Ok(None) };
    let sql = format!("SELECT EXISTS (SELECT 1 FROM \"{}\" WHERE id = ?1)", table.kind.name());
    Ok(Some(conn.prepare_cached(&sql)?.query_row([id], |row| row.get(0))?))
}

/// What the events of one thing make of it; `None` where nothing stands.
///
/// # Errors
/// Only when the file cannot be read.
pub fn state_of(conn: &Connection, kind: &Kind, id: Uuid) -> Result<Option<journal::State>, StoreError> {
    Ok(journal::fold(&events_of(conn, id)?, kind, &domain::Domain))
}

/// The fields of an event whose values cannot be, so that the fold leaves them out.
pub fn left_out(event: &Event) -> impl Iterator<Item = &str> {
    let cannot_be =
        |(name, value): &(&String, &Value)| *name != SEEN && !domain::Domain.can_be(&event.kind, name, value);
    event.body.iter().filter(cannot_be).map(|(name, _)| name.as_str())
}

/// Which file lies at `path`; `None` where none does, and on systems that do not say.
fn file_id(path: &Path) -> Result<Option<(u64, u64)>, StoreError> {
    #[cfg(unix)]
    {
        use std::os::unix::fs::MetadataExt;
        match std::fs::metadata(path) {
            Ok(file) => Ok(Some((file.dev(), file.ino()))),
            Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
            Err(error) => Err(error.into()),
        }
    }
    #[cfg(not(unix))]
    Ok(path.exists().then_some((0, 0)))
}

/// The device that a mark names; `None` where there is no mark, or none that can be read.
fn read_device_marker(device_marker: &Path) -> Result<Option<DeviceId>, StoreError> {
    match std::fs::read_to_string(device_marker) {
        Ok(text) => Ok(text.trim().parse().ok().map(DeviceId)),
        Err(error) if matches!(error.kind(), ErrorKind::NotFound | ErrorKind::InvalidData) => Ok(None),
        Err(error) => Err(error.into()),
    }
}
