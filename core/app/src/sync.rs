//! The sync location: a place outside this phone, chosen on it, and what came of the last time they met.
//!
//! All of it is this phone's own and lies in the table `chosen`. What must stay secret is not here: the shell keeps it where
//! the platform keeps secrets. Nothing here touches the place itself; crate `laydown-sync` does.

use rusqlite::Connection;
use serde::{Deserialize, Serialize};

use super::backup::place_of_backups;
use super::devices::{called, names_of_devices};
use super::local_settings::{remember, remembered};
use super::messages::sync as say;
use super::{Note, Now, Result, Studio};
use laydown_store::backup::{VersionVector, version_vector};
use laydown_store::journal::DeviceId;
use laydown_store::{Transaction, devices, this_device};
use laydown_sync::SYNC_RECORD;

/// The place, as it is remembered.
const PLACE: &str = "meeting_place";
/// The last sync_history, as they are remembered.
const MEETINGS: &str = "sync_history";
/// More troubles than this are only counted.
const MOST_TROUBLES: usize = 5;

/// The sync location, as chosen on this phone. Holds no secret.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SyncConfig {
    /// Where it is.
    pub at: SyncLocation,
    /// Whether everything is sealed with a passphrase before it leaves the phone.
    pub sealed: bool,
    /// Whether photographs wait while every byte costs.
    pub photographs_wait: bool,
    /// Whether to go on, once, where what is sealed there cannot be opened: with a key of this phone's own.
    #[serde(default)]
    pub afresh: bool,
}

/// Where a sync location is.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum SyncLocation {
    /// A folder that the phone reaches by itself.
    Folder {
        /// What it is called.
        name: String,
        /// What the shell finds it again by.
        handle: String,
    },
    /// A folder of a WebDAV server.
    WebDav {
        /// Where the folder is.
        address: String,
        /// Who the server is to take this for.
        user: String,
    },
    /// A bucket of an S3-compatible server.
    S3 {
        /// Where the server is.
        address: String,
        /// Its region, as the server names it.
        region: String,
        /// The bucket.
        bucket: String,
        /// The folder in it; may be empty.
        folder: String,
        /// The key's id.
        key: String,
    },
}

/// What came of a sync, to be remembered.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct SyncReport {
    /// Entries that came and were new here.
    pub entries_in: usize,
    /// Entries put there.
    pub entries_out: usize,
    /// Photographs that came.
    pub photographs_in: usize,
    /// Photographs put there.
    pub photographs_out: usize,
    /// Photographs left for a network that costs nothing.
    pub photographs_waiting: usize,
    /// Photographs that an entry names and that are neither here nor there.
    pub photographs_missing: usize,
    /// Damaged files that were put there again.
    #[serde(alias = "put_again")]
    pub repaired: usize,
    /// What could not be used, a sentence each, and what is to be done.
    #[serde(alias = "troubles")]
    pub file_errors: Vec<String>,
}

impl SyncReport {
    /// What came and what went.
    pub fn sentence(&self) -> String {
        let came = both(self.entries_in, self.photographs_in);
        let went = both(self.entries_out, self.photographs_out);
        let moved = match (came, went) {
            (None, None) => say::nothing_new(),
            (Some(came), None) => say::came(came),
            (None, Some(went)) => say::went(went),
            (Some(came), Some(went)) => say::came_and_went(came, went),
        };
        if self.repaired > 0 { format!("{moved} {}", say::repaired(self.repaired)) } else { moved }
    }

    /// What is to be looked at, the worst of it if there is much.
    fn notes(&self) -> Vec<Note> {
        let mut notes: Vec<Note> = self.file_errors.iter().take(MOST_TROUBLES).map(Note::attention).collect();
        let more = self.file_errors.len().saturating_sub(MOST_TROUBLES);
        if more > 0 {
            notes.push(Note::attention(say::more_problems(more)));
        }
        if self.photographs_missing > 0 {
            notes.push(Note::attention(say::photos_missing(self.photographs_missing)));
        }
        notes
    }
}

/// "3 entries and 1 photo"; `None` for nothing.
fn both(entries: usize, photos: usize) -> Option<String> {
    match (entries, photos) {
        (0, 0) => None,
        (entries, 0) => Some(say::entries(entries)),
        (0, photos) => Some(say::photos(photos)),
        (entries, photos) => Some(say::both(say::entries(entries), say::photos(photos))),
    }
}

/// Why a sync came to nothing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SyncFailure {
    /// What happened, and what is to be done.
    pub sentence: String,
    /// Whether files there are sealed and could not be opened.
    pub locked: bool,
}

/// The last sync_history.
#[derive(Debug, Default, Serialize, Deserialize)]
struct SyncHistory {
    #[serde(alias = "agreed")]
    last_sync: Option<LastSync>,
    /// When it was last tried in vain since then, unix ms, and why.
    failed: Option<(i64, String)>,
    /// Whether that was because files there are sealed and could not be opened.
    #[serde(default)]
    locked: bool,
}

#[derive(Debug, Serialize, Deserialize)]
struct LastSync {
    /// Unix ms.
    at: i64,
    /// How many entries this phone had made by then.
    own: i64,
    #[serde(alias = "meeting")]
    report: SyncReport,
}

/// The sync location, as it is shown.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct SyncView {
    /// Sync location; or, while no place is chosen, what one is good for.
    pub place: String,
    /// Whether a place is chosen.
    pub chosen: bool,
    /// What the shell finds the chosen folder again by; empty where the place is no folder.
    pub folder: String,
    /// When they last agreed, and what came and went; empty while no place is chosen.
    pub last: String,
    /// What waits here; empty when nothing does.
    pub waits: String,
    /// What went wrong, and what is to be done.
    pub notes: Vec<Note>,
}

#[uniffi::export]
impl Studio {
    /// Forgets the place and what came of the sync_history there. What lies there stays there. Answers with the folder that nothing
    /// needs any more, so that the shell gives back its leave for it; empty where the place was none, or backups go there.
    ///
    /// # Errors
    /// When the file cannot be written.
    pub fn forget_sync_location(&self, now: Now) -> Result<String> {
        let stored = self.command(now, |tx| {
            let folder = sync_config(tx.conn())?.map(|place| place.folder().to_owned()).unwrap_or_default();
            tx.choose(PLACE, None)?;
            tx.choose(MEETINGS, None)?;
            tx.choose(SYNC_RECORD, None)?;
            Ok(if place_of_backups(tx.conn())?.as_deref() == Some(&*folder) { String::new() } else { folder })
        })?;
        Ok(stored.value)
    }
}

impl Studio {
    /// Sync location; `None` while no place is chosen on this one.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn sync_config(&self) -> Result<Option<SyncConfig>> {
        self.store.read(sync_config)
    }

    /// Remembers what came of a sync at `now`: an error where it came to nothing.
    ///
    /// # Errors
    /// When the file cannot be written.
    pub fn record_sync(&self, now: Now, came: std::result::Result<SyncReport, SyncFailure>) -> Result<()> {
        self.command(now, |tx| {
            let before = sync_history(tx.conn())?;
            let after = match came {
                Ok(sync) => {
                    let own = own_entries(tx.conn())?;
                    SyncHistory {
                        last_sync: Some(LastSync { at: now.unix_ms, own, report: sync }),
                        failed: None,
                        locked: false,
                    }
                }
                Err(SyncFailure { sentence, locked }) => {
                    SyncHistory { failed: Some((now.unix_ms, sentence)), locked, ..before }
                }
            };
            if let (None, Some(place)) = (&after.failed, sync_config(tx.conn())?.filter(|place| place.afresh)) {
                remember(tx, PLACE, &SyncConfig { afresh: false, ..place })?;
            }
            remember(tx, MEETINGS, &after)
        })?;
        Ok(())
    }

    /// How far each phone's entries are here.
    pub(super) fn before_sync(&self) -> Result<VersionVector> {
        self.store.read(|conn| Ok(version_vector(conn)?))
    }

    /// What a phone is called in a sentence: "this phone", "tablet by the sink", "another phone".
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn phone_called(&self, device: DeviceId) -> Result<String> {
        self.store.read(|conn| Ok(called(&names_of_devices(conn)?, device)))
    }
}

/// The place that was chosen; `None` also where another version wrote it in a way that cannot be read.
pub(super) fn sync_config(conn: &Connection) -> Result<Option<SyncConfig>> {
    remembered(conn, PLACE)
}

/// Whether the last meeting failed because files there are sealed and could not be opened.
pub(super) fn is_locked(conn: &Connection) -> Result<bool> {
    Ok(sync_history(conn)?.locked)
}

/// Chooses `place`. What came of the sync_history at another one says nothing any more.
pub(super) fn choose_sync_location(tx: &mut Transaction<'_>, place: &SyncConfig) -> Result<()> {
    if sync_config(tx.conn())?.is_none_or(|before| before.at != place.at) {
        tx.choose(MEETINGS, None)?;
        tx.choose(SYNC_RECORD, None)?;
    }
    remember(tx, PLACE, place)
}

/// The part of the page that says the sync location.
pub(super) fn view(conn: &Connection, now: Now) -> Result<SyncView> {
    let Some(place) = sync_config(conn)? else {
        return Ok(SyncView {
            place: say::none_chosen(),
            chosen: false,
            folder: String::new(),
            last: String::new(),
            waits: String::new(),
            notes: Vec::new(),
        });
    };
    let sync_history = sync_history(conn)?;
    let mut notes: Vec<Note> = Vec::new();
    if let Some((at, why)) = sync_history.failed {
        notes.push(Note::attention(say::tried(now.moment(at), why)));
    }
    let last_sync = sync_history.last_sync;
    let own = own_entries(conn)?;
    let waiting_entries = own - last_sync.as_ref().map_or(0, |last_sync| last_sync.own);
    let waiting_photographs = last_sync.as_ref().map_or(0, |last_sync| last_sync.report.photographs_waiting);
    let last = match last_sync {
        None => say::not_synced_yet(),
        Some(last_sync) => {
            notes.extend(last_sync.report.notes());
            say::last_sync(now.moment(last_sync.at), last_sync.report.sentence())
        }
    };
    Ok(SyncView {
        place: place.in_words(),
        chosen: true,
        folder: place.folder().to_owned(),
        last,
        waits: waits(waiting_entries, waiting_photographs),
        notes,
    })
}

impl SyncConfig {
    /// What the shell finds the folder again by; empty where the place is none.
    fn folder(&self) -> &str {
        match &self.at {
            SyncLocation::Folder { handle, .. } => handle,
            SyncLocation::WebDav { .. } | SyncLocation::S3 { .. } => "",
        }
    }

    /// "The phones sync in the folder “Studio”. Encrypted with a passphrase."
    fn in_words(&self) -> String {
        let at = match &self.at {
            SyncLocation::Folder { name, .. } => say::at_folder(name),
            SyncLocation::WebDav { address, user } => say::at_webdav(address, user),
            SyncLocation::S3 { address, bucket, folder, .. } if folder.is_empty() => say::at_bucket(bucket, address),
            SyncLocation::S3 { address, bucket, folder, .. } => say::at_bucket_folder(folder, bucket, address),
        };
        let encrypted = if self.sealed { say::encrypted() } else { say::not_encrypted() };
        format!("{at} {encrypted}")
    }
}

fn waits(entries: i64, photos: usize) -> String {
    let entries = (entries > 0).then(|| say::new_here(say::entries(entries)));
    let photos = (photos > 0).then(|| say::photos_wait(photos));
    [entries, photos].into_iter().flatten().collect::<Vec<_>>().join(" ")
}

/// How many entries this phone has made.
fn own_entries(conn: &Connection) -> Result<i64> {
    let own = this_device(conn)?;
    Ok(devices(conn)?.into_iter().find(|(device, _)| *device == own).map_or(0, |(_, last)| last))
}

fn sync_history(conn: &Connection) -> Result<SyncHistory> {
    Ok(remembered(conn, MEETINGS)?.unwrap_or_default())
}
