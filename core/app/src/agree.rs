//! A meeting as the studio's page has it: the place that was chosen there, one round, and what came of it in words.

use std::sync::Arc;
use std::sync::atomic::AtomicBool;

use laydown_store::journal::DeviceId;
use laydown_sync::{Connection, Options, Outcome, Patience, Place, Progress, RemoteError, Secret, Shelf, sync};

use crate::{Meeting, MeetingAt, MeetingFailure, MeetingPlace, Now, Studio, StudioError, Value};

/// How a meeting is to go.
pub struct How<'a> {
    /// What the shell keeps secret, by the keys of the sheet's fields.
    pub secrets: &'a [Value],
    /// Whether every byte costs on the network that the phone is on.
    pub metered: bool,
    /// Whether everything that this phone ever put there is read again.
    pub check: bool,
    /// The folder, where the place is one.
    pub folder: Option<&'a dyn Shelf>,
    /// Set from another thread to stop it.
    pub stop: Arc<AtomicBool>,
}

/// How far a meeting is.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct SoFar {
    /// In words.
    pub sentence: String,
    /// From 0 to 1; goes back where more becomes known on the way.
    pub fraction: f64,
}

impl From<Progress> for SoFar {
    fn from(progress: Progress) -> SoFar {
        let Progress { done, of, .. } = progress;
        SoFar { sentence: format!("{done} of {of} files"), fraction: done as f64 / of.max(1) as f64 }
    }
}

/// Keeps `studio` alike with what lies in its meeting place, once, and remembers what came of it at `now`. Answers with that
/// in one sentence.
///
/// # Errors
/// [`StudioError::Refused`] where a field of the place's sheet is to be filled in again, and names it; what this phone's own
/// studio says where that cannot be read or written; [`StudioError::Elsewhere`] for all else.
pub fn agree(studio: &Studio, now: Now, how: &How<'_>, watch: &mut dyn FnMut(SoFar)) -> Result<String, StudioError> {
    let Some(place) = studio.meeting_place()? else {
        let sentence = "No place is chosen yet where the phones meet. Choose one.".to_owned();
        return Err(StudioError::Refused { field: String::new(), sentence });
    };
    match round(studio, &place, how, watch) {
        Ok(outcome) => {
            let meeting = meeting(studio, outcome)?;
            let sentence = meeting.to_string();
            studio.met(now, Ok(meeting))?;
            Ok(sentence)
        }
        Err(error) => {
            let locked = matches!(error, RemoteError::WrongPassphrase { .. } | RemoteError::NoPassphrase);
            studio.met(now, Err(MeetingFailure { sentence: said(studio, &error)?, locked }))?;
            Err(to_studio(error))
        }
    }
}

fn round(
    studio: &Studio,
    place: &MeetingPlace,
    how: &How<'_>,
    watch: &mut dyn FnMut(SoFar),
) -> Result<Outcome, RemoteError> {
    let passphrase =
        if place.sealed { Some(secret(how, "passphrase").ok_or(RemoteError::NoPassphrase)?) } else { None };
    let options =
        Options { passphrase, metered: how.metered && place.photographs_wait, check: how.check, afresh: place.afresh };
    let server = server(place, how)?;
    let shelf: &dyn Shelf = match (&server, how.folder) {
        (Some(server), _) => server,
        (None, Some(folder)) => folder,
        (None, None) => return Err(RemoteError::NoFolder),
    };
    sync(studio.store(), shelf, &options, &how.stop, &mut |progress| watch(progress.into()))
}

/// The way to the server; `None` where the place is a folder.
fn server(place: &MeetingPlace, how: &How<'_>) -> Result<Option<Connection>, RemoteError> {
    let place = match place.at.clone() {
        MeetingAt::Folder { .. } => return Ok(None),
        MeetingAt::WebDav { address, user } => {
            let password = secret(how, "password").ok_or(RemoteError::WrongPassword)?;
            Place::WebDav { address, user, password }
        }
        MeetingAt::S3 { address, region, bucket, folder, key } => {
            let secret = secret(how, "secret").ok_or(RemoteError::WrongPassword)?;
            Place::S3 { address, region, bucket, folder, key, secret }
        }
    };
    let connection = Connection::open(&place, None, Patience::default())?;
    Ok(Some(connection.until(Arc::clone(&how.stop))))
}

fn secret(how: &How<'_>, key: &str) -> Option<Secret> {
    let found = how.secrets.iter().find(|value| value.key == key && !value.text.is_empty());
    found.map(|value| Secret::from(value.text.clone()))
}

/// What came of a round, as the studio remembers it.
fn meeting(studio: &Studio, outcome: Outcome) -> Result<Meeting, StudioError> {
    let mut troubles = Vec::new();
    for trouble in &outcome.troubles {
        let trouble = said(studio, trouble)?;
        if !troubles.contains(&trouble) {
            troubles.push(trouble);
        }
    }
    Ok(Meeting {
        entries_in: outcome.events_in,
        entries_out: outcome.events_out,
        photographs_in: outcome.photographs_in,
        photographs_out: outcome.photographs_out,
        photographs_waiting: outcome.photographs_waiting,
        photographs_missing: outcome.photographs_missing,
        put_again: outcome.put_again,
        troubles,
    })
}

/// What is said of an error, with the phone's name where it is about one.
fn said(studio: &Studio, error: &RemoteError) -> Result<String, StudioError> {
    let RemoteError::Missing { device, first, last } = error else { return Ok(error.to_string()) };
    let phone = match device.parse() {
        Ok(device) => studio.phone_called(DeviceId(device))?,
        Err(_) => "another phone".to_owned(),
    };
    let entries = if first == last {
        format!("Entry {first} of {phone} is")
    } else {
        format!("Entries {first} to {last} of {phone} are")
    };
    Ok(format!("{entries} missing there. Choose “Agree now” on that phone, then here again."))
}

fn to_studio(error: RemoteError) -> StudioError {
    let sentence = error.to_string();
    let refused = |field: &str| StudioError::Refused { field: field.to_owned(), sentence: sentence.clone() };
    match error {
        RemoteError::WrongPassword => refused("password"),
        RemoteError::WrongPassphrase { .. } | RemoteError::NoPassphrase => refused("passphrase"),
        RemoteError::WrongAddress | RemoteError::Redirected => refused("address"),
        RemoteError::Store(error) => error.into(),
        _ => StudioError::Elsewhere { sentence },
    }
}
