//! Why the devices could not be kept alike, in a sentence that tells the potter what to do.

use std::error::Error;
use std::io;

use laydown_store::StoreError;
use laydown_store::journal::segment::{SegmentError, Wrong};
use opendal::ErrorKind;

use crate::http_client::NetworkError;
use crate::transport::Refusal;

/// What went wrong. `Display` is for the potter; what this device has is untouched by any of them. Never holds a secret.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum RemoteError {
    /// The network brought no answer, or broke in the middle of it.
    #[error("{}", network_sentence(.0))]
    Network(NetworkError),
    /// Plain `http` would take secrets and files through the open internet.
    #[error("Over http:// anyone on the internet could read your password and files. Use https:// for this server.")]
    NotEncrypted,
    /// The server does not know this name and password, or they may not do this.
    #[error("The server does not accept what it was given: name and password, or key and secret. Type them again.")]
    WrongPassword,
    /// Nothing of the kind is at that address.
    #[error("Nothing found at this address. Check it letter by letter.")]
    WrongAddress,
    /// The folder is not there any more.
    #[error("Folder not found, or its app does not answer. Your data is safe on this phone. Choose the folder again.")]
    NoFolder,
    /// No room left.
    #[error("The sync location is full. Free some space there, or choose another location.")]
    Full,
    /// The folder may not be written.
    #[error("laydown may not write in that folder. Allow it, or choose another one.")]
    NotAllowed,
    /// There are keys, and the passphrase opens none of them.
    #[error("This is not the passphrase of the files there. {}: type it again, or choose to start afresh there.", keys_that_stay_shut(*keys))]
    WrongPassphrase {
        /// How many keys it did not open.
        keys: usize,
    },
    /// The files there are sealed, and no passphrase was given.
    #[error("The files there are encrypted. Type their passphrase.")]
    NoPassphrase,
    /// Files there were not sealed with this passphrase. They count for nothing.
    #[error(
        "{} not encrypted with your passphrase, and left out. If another phone of yours put them there, type the same passphrase on it.",
        files_are(*files)
    )]
    StrangeFiles {
        /// How many.
        files: usize,
    },
    /// Files there are sealed, and this phone meets the others without a passphrase. They count for nothing.
    #[error("{} encrypted, and left out. If your phones use a passphrase, type it here too.", files_are(*files))]
    SealedFiles {
        /// How many.
        files: usize,
    },
    /// What was put there before is gone from there, or older files came back.
    #[error(
        "The sync location shows older data than last time. Your data is safe on this phone, and what it has was put there again."
    )]
    OlderThanLastTime,
    /// Own files from before the place was sealed lie there still, for they cannot be removed.
    #[error("{} there from before, not encrypted. Remove those whose names do not end in “.age”.", files_lie(*files))]
    LeftUnsealed {
        /// How many.
        files: usize,
    },
    /// A file of the journal is not as it was written. It is skipped and asked for again next time.
    #[error("{0} It was left out. On the phone that wrote it, choose “Check the files there”.")]
    DamagedSegment(SegmentError),
    /// A file of the journal was written by a newer program. It is skipped and asked for again next time.
    #[error("Another phone has a newer version. Update laydown here, then choose “Sync now” again.")]
    Newer,
    /// A photograph is not as it was put there. It is skipped and asked for again next time.
    #[error(
        "The photograph “{file}” is damaged there. It was left out. On the phone that took it, choose “Check the files there”."
    )]
    DamagedPhotograph {
        /// The file on the shelf.
        file: String,
    },
    /// Events of a device lie there, but not those that come before.
    #[error(
        "Entries {first} to {last} of the phone {device} are missing there. Choose “Sync now” on that phone, then here again."
    )]
    Missing {
        /// The device that made them.
        device: String,
        /// The sequence number of the first that is missing.
        first: i64,
        /// The sequence number of the last that is missing.
        last: i64,
    },
    /// A file there is longer than any of its kind may be. It was not read.
    #[error("A file there is too long. It was left out, and nothing is lost.")]
    TooLong,
    /// The server sends on to another one, or in a circle. Nothing was sent there.
    #[error(
        "The server sends laydown to another server, and laydown sent nothing there. Type the address the files have now."
    )]
    Redirected,
    /// There are more files than a sync location may have, or a list of them that does not end.
    #[error("There are more files there than laydown reads. Your data is safe on this phone: choose another place.")]
    TooMany,
    /// An answer did not come in time.
    #[error("The server answers too slowly. What arrived is saved: try again on a better network.")]
    TooSlow,
    /// Entries that lie there whole and cannot be believed. They are left out and asked for again next time.
    #[error("{0}")]
    Refused(String),
    /// The potter stopped it.
    #[error("{STOPPED}")]
    Stopped,
    /// The place failed in another way.
    #[error("The sync location did not respond as expected. Nothing is lost: try again later.")]
    Failed {
        /// What is known of it, for a report.
        details: String,
    },
    /// This device's own studio could not be read or written, or contradicts what is there.
    #[error(transparent)]
    Store(#[from] StoreError),
}

/// What is said of a network that brought no answer, or not all of one.
fn network_sentence(error: &NetworkError) -> &'static str {
    match error {
        NetworkError::NoNetwork => "This phone has no network. Nothing is lost: sync again when it is connected.",
        NetworkError::UnknownHost => {
            "No server has this name. Nothing is lost: check the address, and that the phone is connected."
        }
        NetworkError::Refused => "No answer. Nothing is lost: check that the server is on, then sync again.",
        NetworkError::TimedOut => "The server did not answer in time. Nothing is lost: sync again on a better network.",
        NetworkError::CertificateDate => {
            "The server’s certificate is out of date, or this phone’s clock is wrong. Nothing was sent: check date and time here, then ask who runs the server."
        }
        NetworkError::CertificateHost => {
            "The certificate belongs to another server, so nothing was sent. Check the address; on a network with a sign-in page, sign in first."
        }
        NetworkError::Certificate => {
            "This phone does not trust the server’s certificate, so nothing was sent. Check the address, or install the certificate of your own server on this phone."
        }
        NetworkError::Broken { .. } => "The connection broke. What arrived is saved: sync again.",
        NetworkError::Stopped => STOPPED,
    }
}

const STOPPED: &str = "Stopped. Finished files stay; the rest follows next time.";

/// "The key of 1 phone does not open".
fn keys_that_stay_shut(keys: usize) -> String {
    if keys == 1 {
        "The key of 1 phone does not open".to_owned()
    } else {
        format!("The keys of {keys} phones do not open")
    }
}

fn files_are(files: usize) -> String {
    if files == 1 { "1 file there is".to_owned() } else { format!("{files} files there are") }
}

fn files_lie(files: usize) -> String {
    if files == 1 { "1 file of this phone is".to_owned() } else { format!("{files} files of this phone are") }
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
