//! Why the devices could not be kept alike.

use std::error::Error;
use std::io;

use laydown_store::journal::segment::{SegmentError, Wrong};
use laydown_store::{RefusedEntries, StoreError};
use opendal::ErrorKind;

use crate::http_client::NetworkError;
use crate::transport::Refusal;

/// What went wrong; what this device has is untouched by any of them. Never holds a secret.
#[derive(Debug, thiserror::Error)]
#[error("{self:?}")]
pub enum RemoteError {
    /// The network brought no answer, or broke in the middle of it.
    Network(NetworkError),
    /// Plain `http` would take secrets and files through the open internet.
    NotEncrypted,
    /// The server does not know this name and password, or they may not do this.
    WrongPassword,
    /// Nothing of the kind is at that address.
    WrongAddress,
    /// The folder is not there any more.
    NoFolder,
    /// No room left.
    Full,
    /// The folder may not be written.
    NotAllowed,
    /// There are keys, and the passphrase opens none of them.
    WrongPassphrase {
        /// How many keys it did not open.
        keys: usize,
    },
    /// The files there are sealed, and no passphrase was given.
    NoPassphrase,
    /// Files there were not sealed with this passphrase. They count for nothing.
    StrangeFiles {
        /// How many.
        files: usize,
    },
    /// Files there are sealed, and this phone meets the others without a passphrase. They count for nothing.
    SealedFiles {
        /// How many.
        files: usize,
    },
    /// What was put there before is gone from there, or older files came back.
    OlderThanLastTime,
    /// Own files from before the place was sealed lie there still, for they cannot be removed.
    LeftUnsealed {
        /// How many.
        files: usize,
    },
    /// A file of the journal is not as it was written. It is skipped and asked for again next time.
    DamagedSegment(SegmentError),
    /// A file of the journal was written by a newer program. It is skipped and asked for again next time.
    Newer,
    /// A photograph is not as it was put there. It is skipped and asked for again next time.
    DamagedPhotograph {
        /// The file on the shelf.
        file: String,
    },
    /// Events of a device lie there, but not those that come before.
    Missing {
        /// The device that made them.
        device: String,
        /// The sequence number of the first that is missing.
        first: i64,
        /// The sequence number of the last that is missing.
        last: i64,
    },
    /// A file there is longer than any of its kind may be. It was not read.
    TooLong,
    /// The server sends on to another one, or in a circle. Nothing was sent there.
    Redirected,
    /// There are more files than a sync location may have, or a list of them that does not end.
    TooMany,
    /// An answer did not come in time.
    TooSlow,
    /// Entries that lie there whole and cannot be believed. They are left out and asked for again next time.
    Refused(RefusedEntries),
    /// The potter stopped it.
    Stopped,
    /// The place failed in another way.
    Failed {
        /// What is known of it, for a report.
        details: String,
    },
    /// This device's own studio could not be read or written, or contradicts what is there.
    Store(#[from] StoreError),
}

impl RemoteError {
    /// The technical side, for a report. Holds neither secrets nor entries of the potter's.
    pub fn details(&self) -> String {
        match self {
            RemoteError::Failed { details } | RemoteError::Network(NetworkError::Broken { details }) => details.clone(),
            RemoteError::Store(error) => error.details(),
            other => format!("{other:?}"),
        }
    }
}

impl From<opendal::Error> for RemoteError {
    /// Nothing of the error's own text is kept: it holds addresses and whatever a server chose to say.
    fn from(error: opendal::Error) -> RemoteError {
        if let Some(error) = causes(&error).find_map(|cause| cause.downcast_ref::<NetworkError>()) {
            return RemoteError::Network(error.clone());
        }
        let status = match causes(&error).find_map(|cause| cause.downcast_ref::<Refusal>()) {
            Some(Refusal::TooLong) => return RemoteError::TooLong,
            Some(Refusal::TooMany) => return RemoteError::TooMany,
            Some(Refusal::TooSlow) => return RemoteError::TooSlow,
            Some(Refusal::Redirected) => return RemoteError::Redirected,
            Some(garbled @ Refusal::Garbled) => return RemoteError::Failed { details: garbled.to_string() },
            Some(Refusal::Status(status)) => Some(*status),
            None => status_of(&error),
        };
        match (status, error.kind()) {
            (Some(401 | 403), _) => RemoteError::WrongPassword,
            (Some(507 | 413), _) => RemoteError::Full,
            (Some(404 | 405 | 409 | 301..=308), _) => RemoteError::WrongAddress,
            (Some(status), kind) => RemoteError::Failed { details: format!("{kind}, status {status}") },
            (None, ErrorKind::PermissionDenied) => RemoteError::NotAllowed,
            (None, ErrorKind::NotFound | ErrorKind::NotADirectory | ErrorKind::ConfigInvalid) => {
                RemoteError::WrongAddress
            }
            (None, kind) => of_cause(&error).unwrap_or_else(|| RemoteError::Failed { details: kind.to_string() }),
        }
    }
}

fn of_cause(error: &opendal::Error) -> Option<RemoteError> {
    causes(error).find_map(|cause| match cause.downcast_ref::<io::Error>()?.kind() {
        io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded | io::ErrorKind::FileTooLarge => {
            Some(RemoteError::Full)
        }
        io::ErrorKind::ReadOnlyFilesystem | io::ErrorKind::PermissionDenied => Some(RemoteError::NotAllowed),
        io::ErrorKind::NotFound | io::ErrorKind::NotADirectory => Some(RemoteError::WrongAddress),
        _ => None,
    })
}

/// The HTTP status, which OpenDAL tells only in its text.
fn status_of(error: &opendal::Error) -> Option<u16> {
    let text = error.to_string();
    let (_, after) = text.split_once("Parts { status: ")?;
    after.get(..3)?.parse().ok()
}

fn causes<'a>(error: &'a (dyn Error + 'static)) -> impl Iterator<Item = &'a (dyn Error + 'static)> {
    std::iter::successors(Some(error), |&error| -> Option<&'a (dyn Error + 'static)> {
        // An error within an io::Error is no source of it.
        let inner = error.downcast_ref::<io::Error>().and_then(io::Error::get_ref);
        inner.map(|inner| inner as &(dyn Error + 'static)).or_else(|| error.source())
    })
}

impl From<SegmentError> for RemoteError {
    fn from(error: SegmentError) -> RemoteError {
        if error.wrong == Wrong::Newer { RemoteError::Newer } else { RemoteError::DamagedSegment(error) }
    }
}

/// A segment that is damaged already on the outside.
pub(crate) fn damaged(name: &str, wrong: Wrong) -> RemoteError {
    RemoteError::DamagedSegment(SegmentError { name: name.to_owned(), wrong })
}
