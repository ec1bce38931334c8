//! Why a studio could not be opened, read or kept, in a sentence that tells the potter what to do.

use std::io;

use rusqlite::ErrorCode;
use rusqlite::ffi;

use crate::journal::DeviceId;

/// What went wrong with the studio's file. [`StoreError::details`] is for a report.
#[derive(Debug, thiserror::Error)]
pub enum StoreError {
    /// The file is there, but it is something else.
    #[error("The studio's file was not made by laydown and was left unchanged. Move it elsewhere, then try again.")]
    NotAStudio,

    /// The file was written by a newer program.
    #[error("This studio was saved by a newer version and was left unchanged. Update laydown, then open it again.")]
    Newer {
        /// The schema version of the file.
        found: i64,
        /// The newest schema version this program knows.
        known: i64,
    },

    /// The file is ours but broken.
    #[error(
        "The studio's file is damaged and was left unchanged. Save what can be read: that makes a new file and keeps the damaged one."
    )]
    Damaged {
        /// What was found broken.
        details: String,
    },

    /// Another process holds the file.
    #[error("Another copy of laydown is busy with this studio. Close it, then try again. Nothing was lost.")]
    Busy,

    /// There is no room left to write.
    #[error(
        "The phone's storage is full. Nothing was lost, but this was not saved. Free some space, then save it again."
    )]
    Full,

    /// The system does not let the app read or write there.
    #[error("The phone does not let laydown write its file. Allow it in the phone's settings, then try again.")]
    NotAllowed,

    /// The folder the studio should lie in is not there.
    #[error("The folder for this studio is missing. Make it, then try again.")]
    NoFolder,

    /// The file was deleted or moved while it was open.
    #[error(
        "The studio's file was moved or deleted while laydown was open, and this was not saved. Put the file back, then open laydown again."
    )]
    Removed,

    /// The storage failed in another way.
    #[error("The phone's storage did not answer. Nothing was lost, but this was not done. Try again.")]
    Io {
        /// What the system said.
        details: String,
    },

    /// Two different events claim the same place in a device's sequence: a copied studio is in use on two phones.
    #[error(
        "Two phones have written under one name, as when a studio is copied from one to the other. What is here was left as it is. Set one of them up as a new device."
    )]
    Forked {
        /// The name both write under.
        device: DeviceId,
        /// The sequence number claimed twice.
        seq: i64,
    },

    /// An event that no phone can have made, or one that was asked for and is not there.
    #[error("This record cannot be used. Nothing was changed.")]
    BadEvent {
        /// What is wrong with it.
        details: String,
    },

    /// A mistake in the program, not in the studio.
    #[error("Something in laydown went wrong. Nothing was lost. Please report it.")]
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
