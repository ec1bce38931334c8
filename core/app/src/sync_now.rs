//! A sync as the studio's page has it: the place that was chosen there, one round, and what came of it in words.

use std::sync::Arc;
use std::sync::atomic::AtomicBool;

use laydown_store::journal::DeviceId;
use laydown_sync::http_client::HttpClient;
use laydown_sync::{
    Connection, Options, Outcome, Progress, RemoteConfig, RemoteError, RemoteStore, RetryPolicy, Secret, sync,
};

use crate::in_words::{Sentence, remote_error};
use crate::messages::sync as say;
use crate::{Now, Studio, StudioError, SyncConfig, SyncFailure, SyncLocation, SyncReport, Value};

/// How a sync is to go.
pub struct SyncRequest<'a> {
    /// What the shell keeps secret, by the keys of the sheet's fields.
    pub secrets: &'a [Value],
    /// Whether every byte costs on the network that the phone is on.
    pub metered: bool,
    /// Whether everything that this phone ever put there is read again.
    pub check: bool,
    /// The folder, where the place is one.
    pub folder: Option<&'a dyn RemoteStore>,
    /// The way to the server, where the place is one.
    pub client: Option<Arc<dyn HttpClient>>,
    /// Set from another thread to stop it.
    pub stop: Arc<AtomicBool>,
}

/// How far a sync is.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct SyncProgress {
    /// In words.
    pub sentence: String,
    /// From 0 to 1; goes back where more becomes known on the way.
    pub fraction: f64,
}

impl From<Progress> for SyncProgress {
    fn from(progress: Progress) -> SyncProgress {
        let Progress { done, of, .. } = progress;
        SyncProgress { sentence: say::progress(done, of), fraction: done as f64 / of.max(1) as f64 }
    }
}

/// Saves `studio` alike with what lies in its sync location, once, and remembers what came of it at `now`. Answers with that
/// in one sentence.
///
/// # Errors
/// [`StudioError::Refused`] where a field of the place's sheet is to be filled in again, and names it; what this phone's own
/// studio says where that cannot be read or written; [`StudioError::Elsewhere`] for all else.
pub fn sync_now(
    studio: &Studio,
    now: Now,
    how: &SyncRequest<'_>,
    listener: &mut dyn FnMut(SyncProgress),
) -> Result<String, StudioError> {
    let Some(place) = studio.sync_config()? else {
        let sentence = say::choose_first();
        return Err(StudioError::Refused { field: String::new(), sentence });
    };
    let before = studio.before_sync()?;
    match round(studio, &place, how, listener) {
        Ok(outcome) => {
            let report = report(studio, outcome)?;
            let sentence = report.sentence();
            studio.notice_meanwhile(now, &before)?;
            studio.record_sync(now, Ok(report))?;
            Ok(sentence)
        }
        Err(error) => {
            let locked = matches!(error, RemoteError::WrongPassphrase { .. } | RemoteError::NoPassphrase);
            let sentence = said(studio, &error)?;
            studio.record_sync(now, Err(SyncFailure { sentence: sentence.clone(), locked }))?;
            Err(to_studio(error, sentence))
        }
    }
}

fn round(
    studio: &Studio,
    place: &SyncConfig,
    how: &SyncRequest<'_>,
    listener: &mut dyn FnMut(SyncProgress),
) -> Result<Outcome, RemoteError> {
    let passphrase =
        if place.sealed { Some(secret(how, "passphrase").ok_or(RemoteError::NoPassphrase)?) } else { None };
    let options =
        Options { passphrase, metered: how.metered && place.photographs_wait, check: how.check, afresh: place.afresh };
    let server = server(place, how)?;
    let remote: &dyn RemoteStore = match (&server, how.folder) {
        (Some(server), _) => server,
        (None, Some(folder)) => folder,
        (None, None) => return Err(RemoteError::NoFolder),
    };
    sync(studio.store(), remote, &options, &how.stop, &mut |progress| listener(progress.into()))
}

/// The way to the server; `None` where the place is a folder.
fn server(place: &SyncConfig, how: &SyncRequest<'_>) -> Result<Option<Connection>, RemoteError> {
    let place = match place.at.clone() {
        SyncLocation::Folder { .. } => return Ok(None),
        SyncLocation::WebDav { address, user } => {
            let password = secret(how, "password").ok_or(RemoteError::WrongPassword)?;
            RemoteConfig::WebDav { address, user, password }
        }
        SyncLocation::S3 { address, region, bucket, folder, key } => {
            let secret = secret(how, "secret").ok_or(RemoteError::WrongPassword)?;
            RemoteConfig::S3 { address, region, bucket, folder, key, secret }
        }
    };
    let connection = Connection::open(&place, how.client.clone(), RetryPolicy::default())?;
    Ok(Some(connection.until(Arc::clone(&how.stop))))
}

fn secret(how: &SyncRequest<'_>, key: &str) -> Option<Secret> {
    let found = how.secrets.iter().find(|value| value.key == key && !value.text.is_empty());
    found.map(|value| Secret::from(value.text.clone()))
}

/// What came of a round, as the studio remembers it.
fn report(studio: &Studio, outcome: Outcome) -> Result<SyncReport, StudioError> {
    let mut file_errors = Vec::new();
    for trouble in &outcome.file_errors {
        let trouble = said(studio, trouble)?;
        if !file_errors.contains(&trouble) {
            file_errors.push(trouble);
        }
    }
    Ok(SyncReport {
        entries_in: outcome.events_in,
        entries_out: outcome.events_out,
        photographs_in: outcome.photographs_in,
        photographs_out: outcome.photographs_out,
        photographs_waiting: outcome.photographs_waiting,
        photographs_missing: outcome.photographs_missing,
        repaired: outcome.repaired,
        file_errors,
    })
}

/// What is said of an error, with the phone's name where it is about one.
fn said(studio: &Studio, error: &RemoteError) -> Result<String, StudioError> {
    let phone = match error {
        RemoteError::Missing { device, .. } => device.parse().ok(),
        _ => None,
    };
    match phone {
        Some(device) => Ok(remote_error(error, &studio.phone_called(DeviceId(device))?)),
        None => Ok(error.sentence()),
    }
}

fn to_studio(error: RemoteError, sentence: String) -> StudioError {
    let refused = |field: &str| StudioError::Refused { field: field.to_owned(), sentence: sentence.clone() };
    match error {
        RemoteError::WrongPassword => refused("password"),
        RemoteError::WrongPassphrase { .. } | RemoteError::NoPassphrase => refused("passphrase"),
        RemoteError::WrongAddress | RemoteError::Redirected | RemoteError::NotEncrypted => refused("address"),
        RemoteError::Store(error) => error.into(),
        _ => StudioError::Elsewhere { sentence },
    }
}
