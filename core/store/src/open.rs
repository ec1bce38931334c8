//! Opening a studio's file: what it is, is found out before anything is written to it.

use std::fs::{self, File};
use std::io::{ErrorKind, Read};
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::time::Duration;

use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags};
use uuid::Uuid;

use super::error::StoreError;
use super::page_scan::PAGE;
use super::recover;
use super::schema::{self, APPLICATION_ID, MIGRATIONS};

/// How long a command waits for another process to finish with the file.
const PATIENCE: Duration = Duration::from_secs(2);

/// Room for every statement of the store and of the screens, so that none is parsed twice.
const STATEMENTS: usize = 128;

/// The first bytes of every SQLite file, and where in its header the versions of its format, the schema version and the
/// application id lie.
/// Source: SQLite, "Database File Format", section 1.3, https://www.sqlite.org/fileformat2.html (from memory).
const MAGIC: &[u8; 16] = b"SQLite format 3\0";
const HEADER: usize = 100;
const FORMATS_AT: Range<usize> = 18..20;
const VERSION_AT: usize = 60;
const APPLICATION_ID_AT: usize = 68;

/// Opens the file for writing, making it where there is none, and brings it up to the newest schema.
pub(super) fn writer(path: &Path) -> Result<Connection, StoreError> {
    let is_marked = refuse_what_is_not_ours(path)?;
    ready(path).map_err(|error| match error {
        // What carries our mark and is no database to SQLite was one.
        StoreError::NotAStudio if is_marked => {
            StoreError::Damaged { details: "SQLite does not know the file".to_owned() }
        }
        error => error,
    })
}

fn ready(path: &Path) -> Result<Connection, StoreError> {
    let log_was_left = sibling_path(path, "-wal").exists();
    let conn = connect(path, OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE)?;
    // Until its version is known even moving a log left beside it into the file, as SQLite does on closing, is too much.
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, log_was_left)?;
    newer(schema::version(&conn)?)?;
    if log_was_left {
        refuse_another_log(path, &conn)?;
    }
    if conn.is_readonly("main")? {
        return Err(StoreError::NotAllowed);
    }
    // Full also in the climb, which runs before the file is in WAL mode: so the file carries our mark from its first
    // commit on, and is never without it, even if the phone dies here.
    conn.pragma_update(None, "synchronous", "FULL")?;
    // Apple's fsync leaves what it writes in the drive's own memory; elsewhere this changes nothing.
    conn.pragma_update(None, "fullfsync", true)?;
    conn.pragma_update(None, "checkpoint_fullfsync", true)?;
    schema::migrate(&conn, MIGRATIONS)?;
    let mode: String = conn.pragma_update_and_check(None, "journal_mode", "WAL", |row| row.get(0))?;
    if mode != "wal" {
        return Err(StoreError::Fault { details: format!("journal mode is {mode}") });
    }
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, false)?;
    Ok(conn)
}

/// Refuses a log that is not of this file, as when the two were copied at different times: SQLite believes any. What is in
/// the file by itself must still be there with the log, since the journal only grows.
fn refuse_another_log(path: &Path, conn: &Connection) -> Result<(), StoreError> {
    let Some(name) = path.to_str() else { return Ok(()) };
    let name = name.replace('%', "%25").replace('?', "%3f").replace('#', "%23");
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_URI | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let alone = Connection::open_with_flags(format!("file:{name}?immutable=1"), flags).and_then(|alone| lasts(&alone));
    // By itself it need not be readable, when the phone died while the log was being moved into it.
    let Ok(alone) = alone else { return Ok(()) };
    for last in alone {
        let is_there: bool = conn.query_row(
            "SELECT count(*) FROM event JOIN device ON number = place >> 40 \
             WHERE id = ?1 AND place = ?2 AND entity = ?3 AND clock = ?4",
            last,
            |row| row.get(0),
        )?;
        if !is_there {
            return Err(StoreError::Damaged { details: "the log beside the file is not of this file".to_owned() });
        }
    }
    Ok(())
}

/// The last event of every device: device, place, entity and clock.
fn lasts(conn: &Connection) -> rusqlite::Result<Vec<(Uuid, i64, Uuid, i64)>> {
    conn.prepare(
        "SELECT id, place, entity, clock FROM device JOIN event ON place = (SELECT max(place) FROM event \
         WHERE place >= number << 40 AND place < (number + 1) << 40)",
    )?
    .query_map([], |row| row.try_into())?
    .collect()
}

/// Opens the file a second time, for reading beside the writer.
pub(super) fn reader(path: &Path) -> Result<Connection, StoreError> {
    let conn = connect(path, OpenFlags::SQLITE_OPEN_READ_WRITE)?;
    conn.pragma_update(None, "query_only", true)?;
    Ok(conn)
}

fn connect(path: &Path, flags: OpenFlags) -> Result<Connection, StoreError> {
    let conn = Connection::open_with_flags(path, flags | OpenFlags::SQLITE_OPEN_NO_MUTEX)?;
    conn.busy_timeout(PATIENCE)?;
    conn.set_prepared_statement_cache_capacity(STATEMENTS);
    // Plans do not depend on what is bound: else SQLite plans every statement with `LIMIT ?` anew each time it is used.
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_ENABLE_QPSG, true)?;
    // A phone has no folder for temporary files that SQLite knows of.
    conn.pragma_update(None, "temp_store", "MEMORY")?;
    Ok(conn)
}

/// Looks at the file without SQLite, which would take some strangers for its own and write to them. Says whether the file
/// carries our mark; a new one does not yet.
pub(super) fn refuse_what_is_not_ours(path: &Path) -> Result<bool, StoreError> {
    if !fs::metadata(folder_of(path))?.is_dir() {
        return Err(StoreError::NoFolder);
    }
    let mut header = Vec::with_capacity(HEADER);
    let length;
    match File::open(path) {
        Err(error) if error.kind() == ErrorKind::NotFound => {
            // Made here, empty, because the system says better than SQLite why it cannot be.
            File::options().append(true).create(true).open(path)?;
            return Ok(false);
        }
        Err(error) => return Err(error.into()),
        Ok(file) if !file.metadata()?.is_file() => return Err(StoreError::NotAStudio),
        Ok(file) => {
            length = file.metadata()?.len();
            file.take(HEADER as u64).read_to_end(&mut header)?
        }
    };
    // Blank with a rollback journal beside it: it was being made when the phone died, and SQLite takes that back.
    let blank = header.iter().all(|byte| *byte == 0);
    if header.is_empty() || (blank && sibling_path(path, "-journal").exists()) {
        return Ok(false);
    }
    if !header.starts_with(MAGIC) {
        return Err(stranger(path)?);
    }
    let (Some(device_marker), Some(found)) = (number_at(&header, APPLICATION_ID_AT), number_at(&header, VERSION_AT))
    else {
        return Err(StoreError::Damaged { details: "the file ends within its header".to_owned() });
    };
    if device_marker != APPLICATION_ID {
        return Err(stranger(path)?);
    }
    // With another number here SQLite believes that a newer one wrote the file, and only reads it.
    if !header[FORMATS_AT].iter().all(|format| matches!(format, 1 | 2)) {
        return Err(StoreError::Damaged { details: "the file's header has an impossible format".to_owned() });
    }
    // SQLite takes the rest of a page that was cut for zeros. A log or a journal writes it again.
    if length % PAGE as u64 != 0 && !sibling_path(path, "-wal").exists() && !sibling_path(path, "-journal").exists() {
        return Err(StoreError::Damaged { details: "the file ends within a page".to_owned() });
    }
    newer(found).map(|()| true)
}

/// What to say of a file without our mark: damaged, if it has lost it.
fn stranger(path: &Path) -> Result<StoreError, StoreError> {
    if recover::holds_events(path)? {
        Ok(StoreError::Damaged { details: "the file's first page is damaged".to_owned() })
    } else {
        Ok(StoreError::NotAStudio)
    }
}

/// Refuses the schema version of a newer program.
fn newer(found: i64) -> Result<(), StoreError> {
    let known = schema::known(MIGRATIONS);
    if found > known { Err(StoreError::Newer { found, known }) } else { Ok(()) }
}

fn number_at(header: &[u8], at: usize) -> Option<i64> {
    let (bytes, _) = header.get(at..)?.split_first_chunk()?;
    Some(i64::from(i32::from_be_bytes(*bytes)))
}

/// The folder that the file at `path` lies in.
pub(super) fn folder_of(path: &Path) -> &Path {
    path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."))
}

pub(super) fn sibling_path(path: &Path, suffix: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(suffix);
    PathBuf::from(name)
}
