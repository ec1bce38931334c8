//! Opening a studio's file: what it is, is found out before anything is written to it.

use std::fs::{self, File};
use std::io::{ErrorKind, Read};
use std::path::{Path, PathBuf};
use std::time::Duration;

use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags};

use super::error::StoreError;
use super::recover;
use super::schema::{self, APPLICATION_ID, STEPS};

/// How long a command waits for another process to finish with the file.
const PATIENCE: Duration = Duration::from_secs(2);

/// Room for every statement of the store and of the screens, so that none is parsed twice.
const STATEMENTS: usize = 128;

/// The first bytes of every SQLite file, and where in its header the schema version and the application id lie.
/// Source: SQLite, "Database File Format", section 1.3, https://www.sqlite.org/fileformat2.html (from memory).
const MAGIC: &[u8; 16] = b"SQLite format 3\0";
const HEADER: usize = 100;
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
    let log_was_left = beside(path, "-wal").exists();
    let conn = connect(path, OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE)?;
    // Until its version is known even moving a log left beside it into the file, as SQLite does on closing, is too much.
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, log_was_left)?;
    newer(schema::version(&conn)?)?;
    if conn.is_readonly("main")? {
        return Err(StoreError::NotAllowed);
    }
    // Full also in the climb, which runs before the file is in WAL mode: so the file carries our mark from its first
    // commit on, and is never without it, even if the phone dies here.
    conn.pragma_update(None, "synchronous", "FULL")?;
    // Apple's fsync leaves what it writes in the drive's own memory; elsewhere this changes nothing.
    conn.pragma_update(None, "fullfsync", true)?;
    conn.pragma_update(None, "checkpoint_fullfsync", true)?;
    schema::climb(&conn, STEPS)?;
    let mode: String = conn.pragma_update_and_check(None, "journal_mode", "WAL", |row| row.get(0))?;
    if mode != "wal" {
        return Err(StoreError::Fault { details: format!("journal mode is {mode}") });
    }
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, false)?;
    Ok(conn)
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
    match File::open(path) {
        Err(error) if error.kind() == ErrorKind::NotFound => {
            // Made here, empty, because the system says better than SQLite why it cannot be.
            File::options().append(true).create(true).open(path)?;
            return Ok(false);
        }
        Err(error) => return Err(error.into()),
        Ok(file) if !file.metadata()?.is_file() => return Err(StoreError::NotAStudio),
        Ok(file) => file.take(HEADER as u64).read_to_end(&mut header)?,
    };
    // Blank with a rollback journal beside it: it was being made when the phone died, and SQLite takes that back.
    let blank = header.iter().all(|byte| *byte == 0);
    if header.is_empty() || (blank && beside(path, "-journal").exists()) {
        return Ok(false);
    }
    if !header.starts_with(MAGIC) {
        return Err(stranger(path)?);
    }
    let (Some(mark), Some(found)) = (number_at(&header, APPLICATION_ID_AT), number_at(&header, VERSION_AT)) else {
        return Err(StoreError::Damaged { details: "the file ends within its header".to_owned() });
    };
    if mark != APPLICATION_ID {
        return Err(stranger(path)?);
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
    let known = schema::known(STEPS);
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

pub(super) fn beside(path: &Path, suffix: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(suffix);
    PathBuf::from(name)
}
