//! Why a studio could not be opened, read or kept.

use std::io;

use rusqlite::ErrorCode;
use rusqlite::ffi;

use crate::journal::DeviceId;

/// What went wrong with the studio's file. [`StoreError::details`] is for a report.
#[derive(Debug, thiserror::Error)]
#[error("{self:?}")]
pub enum StoreError {
    /// The file is there, but it is something else.
    NotAStudio,

    /// The file was written by a newer program.
    Newer {
        /// The schema version of the file.
        found: i64,
        /// The newest schema version this program knows.
        known: i64,
    },

    /// The file is ours but broken.
    Damaged {
        /// What was found broken.
        details: String,
    },

    /// Another process holds the file.
    Busy,

    /// There is no room left to write.
    Full,

    /// The system does not let the app read or write there.
    NotAllowed,

    /// The folder the studio should lie in is not there.
    NoFolder,

    /// The file was deleted or moved while it was open.
    Removed,

    /// The storage failed in another way.
    Io {
        /// What the system said.
        details: String,
    },

    /// Two different events claim the same place in a device's sequence: a copied studio is in use on two phones.
    Forked {
        /// The name both write under.
        device: DeviceId,
        /// The sequence number claimed twice.
        seq: i64,
    },

    /// An event that no phone can have made, or one that was asked for and is not there.
    BadEvent {
        /// What is wrong with it.
        details: String,
    },

    /// A mistake in the program, not in the studio.
    Fault {
        /// What went wrong.
        details: String,
    },
}

impl StoreError {
    /// The technical side, for a report. Holds no entry of the potter's.
    pub fn details(&self) -> String {
        match self {
            StoreError::Newer { found, known } => format!("schema version {found}, known up to {known}"),
            StoreError::Damaged { details }
            | StoreError::Io { details }
            | StoreError::BadEvent { details }
            | StoreError::Fault { details } => details.clone(),
            StoreError::Forked { device, seq } => format!("device {} made event {seq} twice", device.0),
            StoreError::NotAStudio
            | StoreError::Busy
            | StoreError::Full
            | StoreError::NotAllowed
            | StoreError::NoFolder
            | StoreError::Removed => format!("{self:?}"),
        }
    }
}

impl From<rusqlite::Error> for StoreError {
    fn from(error: rusqlite::Error) -> Self {
        let details = error.to_string();
        match error {
            rusqlite::Error::SqliteFailure(failure, _) => of_sqlite(failure, details),
            // STRICT tables hold what the code put there: anything else was changed from outside.
            rusqlite::Error::FromSqlConversionFailure(..)
            | rusqlite::Error::IntegralValueOutOfRange(..)
            | rusqlite::Error::Utf8Error(..)
            | rusqlite::Error::InvalidColumnType(..) => StoreError::Damaged { details },
            _ => StoreError::Fault { details },
        }
    }
}

fn of_sqlite(failure: ffi::Error, details: String) -> StoreError {
    match failure.code {
        ErrorCode::NotADatabase => StoreError::NotAStudio,
        ErrorCode::DatabaseCorrupt => StoreError::Damaged { details },
        ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked | ErrorCode::FileLockingProtocolFailed => StoreError::Busy,
        ErrorCode::DiskFull => StoreError::Full,
        // A quota or a limit on the size of files reaches SQLite as a failed write, not as a full disk.
        ErrorCode::SystemIoFailure
            if matches!(failure.extended_code, ffi::SQLITE_IOERR_WRITE | ffi::SQLITE_IOERR_SHMSIZE) =>
        {
            StoreError::Full
        }
        // The studio itself was opened before SQLite saw it: what it cannot open is the log it makes beside it.
        ErrorCode::ReadOnly | ErrorCode::PermissionDenied | ErrorCode::CannotOpen => StoreError::NotAllowed,
        ErrorCode::SystemIoFailure => StoreError::Io { details },
        _ => StoreError::Fault { details },
    }
}

impl From<io::Error> for StoreError {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::PermissionDenied | io::ErrorKind::ReadOnlyFilesystem => StoreError::NotAllowed,
            io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded | io::ErrorKind::FileTooLarge => StoreError::Full,
            io::ErrorKind::NotFound | io::ErrorKind::NotADirectory => StoreError::NoFolder,
            _ => StoreError::Io { details: error.to_string() },
        }
    }
}
