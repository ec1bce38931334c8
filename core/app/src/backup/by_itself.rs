//! Backups that are made by themselves: how often, where, which of them are kept, and what went wrong with the last.
//!
//! The shell reaches the folder, since only the phone's system can; everything else is decided here. What is chosen belongs
//! to this phone alone. A run goes so: [`Studio::backup_due`]; [`Studio::back_up`] into a file of the app's own; the shell
//! puts it into the folder and reads it from there; [`Studio::automatic_backup_done`] looks at what was read, and says which
//! older ones may now go; [`Studio::backups_removed`]. Where a step fails: [`Studio::backup_failed`].

use std::collections::BTreeMap;
use std::path::Path;

use rusqlite::Connection;
use serde::{Deserialize, Serialize};

use super::{BACKED_UP, Done};
use crate::local_settings::{relied_on, remember};
use crate::messages::backup as say;
use crate::{Note, Now, Result, Row, Studio, StudioError};
use laydown_domain::coded::coded;
use laydown_store::backup::{VersionVector, covers, version_vector};
use laydown_store::{Store, Transaction, query};

/// Under this name it is remembered what was chosen and done.
const BY_ITSELF: &str = "backup_by_itself";
/// So many of its own backups stay in the folder.
const SAVED: usize = 5;
/// After a failure it is not tried again before so long: making a backup takes the phone's strength.
const TRY_AGAIN_MS: i64 = 6 * 3_600_000;

coded! {
    /// How often a backup is made automatically.
    "rhythm" Rhythm {
        /// Seven days after the last.
        Week = "week",
        /// Thirty days after the last.
        Month = "month",
        /// Not at all.
        Never = "never",
    }
}

impl Rhythm {
    fn days(self) -> Option<i64> {
        match self {
            Rhythm::Week => Some(7),
            Rhythm::Month => Some(30),
            Rhythm::Never => None,
        }
    }
}

coded! {
    /// Why a backup was not made automatically.
    #[derive(uniffi::Enum)]
    "backup_trouble" BackupTrouble {
        /// The folder is not there.
        PlaceGone = "place_gone",
        /// The phone's system no longer lets the app write there.
        NotAllowed = "not_allowed",
        /// No room in the folder.
        PlaceFull = "place_full",
        /// No room on the phone itself.
        PhoneFull = "phone_full",
        /// It could not be made for another reason than room.
        NotMade = "not_made",
        /// What lies in the folder is not what laydown wrote.
        NotWhole = "not_whole",
        /// Any other failure of the folder.
        NoAnswer = "no_answer",
    }
}

/// A backup that is to be made now.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct BackupTask {
    /// The folder, as it was given.
    pub place: String,
    /// The name for the file.
    pub name: String,
}

/// A folder, as the phone's system names it, and as the potter knows it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
struct Place {
    key: String,
    called: String,
}

/// What is remembered.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
struct ByItself {
    every: Option<Rhythm>,
    place: Option<Place>,
    /// The backups it has made in this place and that are not removed yet, the oldest first.
    files: Vec<String>,
    /// How far each of them goes.
    reaches: BTreeMap<String, VersionVector>,
    /// The last of them.
    last: Option<Done>,
    /// What went wrong since, and when, unix ms.
    trouble: Option<(BackupTrouble, i64)>,
}

impl ByItself {
    fn load(conn: &Connection) -> Result<ByItself> {
        Ok(relied_on(conn, BY_ITSELF)?.unwrap_or_default())
    }

    fn save(&self, tx: &mut Transaction<'_>) -> Result<()> {
        remember(tx, BY_ITSELF, self)
    }

    /// A backup that was made now.
    fn add(&mut self, file: &str, done: Done) {
        // Of those made before it was noted no more is known than how far the last of them goes.
        if let Some(last) = &self.last {
            for before in &self.files {
                self.reaches.entry(before.clone()).or_insert_with(|| last.version_vector.clone());
            }
        }
        self.files.retain(|before| before != file);
        self.files.push(file.to_owned());
        self.reaches.retain(|name, _| self.files.contains(name));
        self.reaches.insert(file.to_owned(), done.version_vector.clone());
        self.last = Some(done);
        self.trouble = None;
    }

    /// The backups that may go: those beyond the newest few which have nothing that the newest lacks.
    fn removable(&self) -> Vec<String> {
        let Some(last) = &self.last else { return Vec::new() };
        let too_many = self.files.len().saturating_sub(SAVED);
        let is_covered = |file: &&String| {
            self.reaches.get(*file).is_some_and(|version_vector| covers(&last.version_vector, version_vector))
        };
        self.files[..too_many].iter().filter(is_covered).cloned().collect()
    }

    fn every(&self) -> Rhythm {
        self.every.unwrap_or(Rhythm::Week)
    }

    /// Whether it is time. A clock that was set back must not put it off, so that a last one in the future counts as none.
    fn is_time(&self, now: Now) -> bool {
        let Some(days) = self.every().days() else { return false };
        let waits = self.trouble.is_some_and(|(_, at)| (0..TRY_AGAIN_MS).contains(&(now.unix_ms - at)));
        let is_fresh = self.last.as_ref().is_some_and(|last| (0..days).contains(&now.days_since(last.at)));
        !waits && !is_fresh
    }

    /// Whether anything came since the last one: entries, or the files of photographs that were missing then.
    fn has_news(&self, store: &Store, conn: &Connection) -> Result<bool> {
        let Some(last) = &self.last else { return Ok(true) };
        Ok(version_vector(conn)? != last.version_vector || last.missing > 0 && missing(store, conn)? != last.missing)
    }
}

/// Photographs of which there is a record here, and no file.
fn missing(store: &Store, conn: &Connection) -> Result<u64> {
    let names = query::photo_names(conn)?;
    Ok(names.iter().filter(|sha256| !store.photos().has(sha256)).count() as u64)
}

#[uniffi::export]
impl Studio {
    /// Chooses how often a backup is made automatically: the id of a row of [`super::BackupView::every`].
    ///
    /// # Errors
    /// [`StudioError::Refused`] for another text.
    pub fn set_backup_schedule(&self, now: Now, every: &str) -> Result<()> {
        let every = every.parse().map_err(|_| StudioError::refused("every", say::rhythm_not_listed()))?;
        self.by_itself(now, |known| Ok(ByItself { every: Some(every), trouble: None, ..known }))
    }

    /// Chooses the folder: `place` names it to the phone's system, `called` to the potter. Backups in another folder chosen
    /// before are the potter's from then on, and are never removed.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when no folder is named.
    pub fn set_backup_folder(&self, now: Now, place: &str, called: &str) -> Result<()> {
        if place.is_empty() {
            return Err(StudioError::refused("place", say::no_folder()));
        }
        let place = Place { key: place.to_owned(), called: called.to_owned() };
        self.by_itself(now, |known| {
            let is_the_same = known.place.as_ref().is_some_and(|before| before.key == place.key);
            // The same folder again, as after the permission was withdrawn: what lies there is still its own.
            let before = if is_the_same { known } else { ByItself { every: known.every, ..ByItself::default() } };
            Ok(ByItself { place: Some(place), trouble: None, ..before })
        })
    }

    /// The backup to make now by itself; `None` where there is none to make. With `asked`, the potter wants one now, whatever
    /// the day, and whether or not there is something new.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when one is asked for and no folder is chosen.
    pub fn backup_due(&self, now: Now, asked: bool) -> Result<Option<BackupTask>> {
        self.store.read(|conn| {
            let known = ByItself::load(conn)?;
            let is_due = asked || known.is_time(now) && known.has_news(&self.store, conn)?;
            match known.place {
                Some(place) if is_due => Ok(Some(BackupTask {
                    place: place.key,
                    name: format!("laydown-{}.zip", now.stamp("%Y-%m-%d-%H%M")),
                })),
                None if asked => Err(StudioError::refused("place", say::folder_first())),
                _ => Ok(None),
            }
        })
    }

    /// Reads the backup that has arrived in the folder: `copy` is what was read from there, `place` the task's folder, `file`
    /// what the phone's system calls the file there. Answers with the older ones of its own that may now be removed.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when it did not arrive whole, which is remembered as [`BackupTrouble::NotWhole`]; no older one
    /// may be removed then.
    pub fn automatic_backup_done(&self, now: Now, place: &str, file: &str, copy: &Path) -> Result<Vec<String>> {
        let checked = match self.arrived(copy) {
            Ok(checked) => checked,
            Err(error) => {
                self.backup_failed(now, BackupTrouble::NotWhole)?;
                return Err(error);
            }
        };
        let stored = self.command(now, |tx| {
            let done = Done::new(now, checked);
            remember(tx, BACKED_UP, &done)?;
            let mut known = ByItself::load(tx.conn())?;
            // Another folder was chosen meanwhile: this one is the potter's.
            if known.place.as_ref().is_none_or(|chosen| chosen.key != place) {
                return Ok(Vec::new());
            }
            known.add(file, done);
            known.save(tx)?;
            Ok(known.removable())
        })?;
        Ok(stored.value)
    }

    /// Remembers that these backups are not in the folder any more. What could not be removed is named again next time.
    ///
    /// # Errors
    /// As every command.
    pub fn backups_removed(&self, now: Now, files: &[String]) -> Result<()> {
        self.by_itself(now, |mut known| {
            known.files.retain(|file| !files.contains(file));
            Ok(known)
        })
    }

    /// Remembers that a backup was not made automatically: it is said on the Backup page until one is, or another folder is
    /// chosen. It counts as not backed up.
    ///
    /// # Errors
    /// As every command.
    pub fn backup_failed(&self, now: Now, trouble: BackupTrouble) -> Result<()> {
        self.by_itself(now, |known| Ok(ByItself { trouble: Some((trouble, now.unix_ms)), ..known }))
    }
}

impl Studio {
    fn by_itself(&self, now: Now, change: impl FnOnce(ByItself) -> Result<ByItself>) -> Result<()> {
        self.command(now, |tx| change(ByItself::load(tx.conn())?)?.save(tx))?;
        Ok(())
    }
}

/// What the Backup page shows of it.
pub(super) struct Shown {
    /// How often, to choose from.
    pub(super) every: Vec<Row>,
    /// What is done, or what to do so that something is.
    pub(super) sentence: String,
    /// The folder's name; empty while none is chosen.
    pub(super) place: String,
    /// What went wrong.
    pub(super) trouble: Option<Note>,
}

pub(super) fn shown(conn: &Connection, now: Now) -> Result<Shown> {
    let known = ByItself::load(conn)?;
    let every = Rhythm::ALL.iter().map(|rhythm| Row {
        id: rhythm.code().to_owned(),
        title: say::rhythm(rhythm.code()),
        detail: String::new(),
        chosen: *rhythm == known.every(),
        outline: Vec::new(),
    });
    let sentence = match (&known.place, known.every()) {
        (_, Rhythm::Never) => say::off(),
        (None, _) => say::choose_folder(),
        (Some(_), rhythm) => {
            let automatic = say::automatic(rhythm.code(), SAVED);
            match &known.last {
                Some(last) => say::automatic_and_last(automatic, now.moment(last.at)),
                None => automatic,
            }
        }
    };
    Ok(Shown {
        every: every.collect(),
        sentence,
        place: known.place.as_ref().map(|place| place.called.clone()).unwrap_or_default(),
        trouble: in_words(&known, now).map(Note::attention),
    })
}

/// The folder that backups go to by themselves, as the shell names it.
pub(crate) fn place_of_backups(conn: &Connection) -> Result<Option<String>> {
    Ok(ByItself::load(conn)?.place.map(|place| place.key))
}

/// What went wrong with the last one, for as long as it matters.
pub(super) fn trouble(conn: &Connection, now: Now) -> Result<Option<String>> {
    Ok(in_words(&ByItself::load(conn)?, now))
}

fn in_words(known: &ByItself, now: Now) -> Option<String> {
    let (trouble, at) = known.trouble?;
    Some(say::not_made(trouble.code(), now.moment(at)))
}
