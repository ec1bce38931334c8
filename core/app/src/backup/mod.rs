//! The Backup page: everything into one file that can lie elsewhere, and such a file taken in again; by itself, too, and for
//! other programs.

mod by_itself;
mod tables;

use std::path::Path;

use rusqlite::Connection;
use serde::{Deserialize, Serialize};

use self::tables::TABLES;
use super::local_settings::{relied_on, remember};
use super::messages::backup as say;
use super::{Note, Now, Result, Row, Studio, StudioError};
use crate::in_words::refusals;
use laydown_store::backup::{BackupError, Checked, Contents, VersionVector, check_backup, covers, version_vector};
use laydown_store::entity::{self, Entity};
use laydown_store::query;

pub(super) use by_itself::place_of_backups;
pub use by_itself::{BackupTask, BackupTrouble, Rhythm};
pub(super) use tables::as_it_was;

/// Under this name it is remembered when this phone last made a backup, and what was in it.
const BACKED_UP: &str = "backed_up";
/// After so many days without one the potter is reminded.
const REMIND_AFTER_DAYS: i64 = 30;
/// What is asked for to have all tables in one file, and to have the journal.
const ALL_TABLES: &str = "tables";
const JOURNAL: &str = "journal";

/// The Backup page.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct BackupView {
    /// What a backup is for, and what it holds.
    pub intro: String,
    /// When this phone last made one.
    pub last: String,
    /// The name to offer for a new one.
    pub name: String,
    /// What to mind.
    pub notes: Vec<Note>,
    /// How often one is made automatically, to choose from; the id is for [`Studio::set_backup_schedule`].
    pub every: Vec<Row>,
    /// What is done by itself, or what to do so that something is.
    pub by_itself: String,
    /// What the folder is called into which that is done; empty while none is chosen.
    pub place: String,
    /// Tables that can be written for a spreadsheet, the one wanted most first.
    pub tables: Vec<Export>,
    /// The journal, for other programs.
    pub journal: Export,
    /// Whether restoring comes first on the page, since there is no studio here yet.
    pub restore_first: bool,
}

/// Something that can be written for other programs.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct Export {
    /// To hand to [`Studio::export`].
    pub what: String,
    /// What it is called.
    pub title: String,
    /// What is in it.
    pub detail: String,
    /// The name to offer for the file.
    pub name: String,
    /// Its media type.
    pub media_type: String,
}

/// A backup that was made and found whole.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
struct Done {
    /// When, unix ms.
    at: i64,
    /// How far its journal goes.
    #[serde(alias = "reach")]
    version_vector: VersionVector,
    /// Photographs whose files were not here.
    missing: u64,
}

impl Done {
    fn new(now: Now, checked: Checked) -> Done {
        Done { at: now.unix_ms, version_vector: checked.version_vector, missing: checked.contents.missing }
    }
}

#[uniffi::export]
impl Studio {
    /// The Backup page.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn backup(&self, now: Now) -> Result<BackupView> {
        self.store.read(|conn| {
            let last = last_backup(conn)?;
            let by_itself = by_itself::shown(conn, now)?;
            let reminder = reminder(conn, now)?.map(Note::attention);
            Ok(BackupView {
                intro: say::intro(),
                last: match last {
                    Some(last) => say::last_backup(now.moment(last.at)),
                    None => say::none_yet(),
                },
                name: format!("laydown-{}.zip", now.stamp(DAY)),
                notes: by_itself.trouble.into_iter().chain(reminder).collect(),
                every: by_itself.every,
                by_itself: by_itself.sentence,
                place: by_itself.place,
                tables: tables(now),
                journal: Export {
                    what: JOURNAL.to_owned(),
                    title: say::journal(),
                    detail: say::journal_detail(),
                    name: format!("laydown-journal-{}.jsonl", now.stamp(DAY)),
                    media_type: "application/x-ndjson".to_owned(),
                },
                restore_first: entity::Form::all(conn)?.is_empty() && entity::Glaze::all(conn)?.is_empty(),
            })
        })
    }

    /// Writes everything into one file at `into`, and reads it again to be sure. Answers with what to say.
    ///
    /// # Errors
    /// [`StudioError::Full`] or [`StudioError::Unreadable`] when it cannot be written; then it is not there.
    pub fn back_up(&self, into: &Path) -> Result<String> {
        let tables: Vec<_> = TABLES.iter().map(tables::TableKind::writer).collect();
        let before = self.store.read(version_vector)?;
        self.store.back_up(into, &tables)?;
        let checked = check_backup(into)?;
        if !covers(&checked.version_vector, &before) {
            return Err(BackupError::Behind.into());
        }
        let sentence = in_words(checked.contents);
        *self.last_backup_made.lock() = Some(checked.version_vector);
        Ok(sentence)
    }

    /// Reads the backup that has arrived where it is to lie, `copy`, and remembers that there is one. Answers with what to
    /// say.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when it did not arrive whole.
    pub fn backed_up(&self, now: Now, copy: &Path) -> Result<String> {
        let checked = self.arrived(copy)?;
        let sentence = say::saved_and_verified(in_words(checked.contents));
        self.command(now, |tx| remember(tx, BACKED_UP, &Done::new(now, checked)))?;
        Ok(sentence)
    }

    /// Takes a backup in, or a journal of JSON lines: what is here already stays as it is, what is new is added. Answers with
    /// what to say.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when it is neither, not there, damaged or newer. Nothing is taken in then, or the sentence says what
    /// was.
    pub fn restore(&self, now: Now, from: &Path) -> Result<String> {
        let report = self.store.restore(now.unix_ms, from)?;
        let mut sentences: Vec<String> = photos_left_out(&report.photos_refused).into_iter().collect();
        sentences.extend(refusals(&report.refused));
        if report.new != Contents::default() {
            sentences.insert(0, say::restored(in_words(report.new), in_words(report.held)));
        } else if sentences.is_empty() {
            sentences.push(say::all_here_already(in_words(report.held)));
        } else {
            sentences.insert(0, say::nothing_new());
        }
        Ok(sentences.join(" "))
    }

    /// Writes `what` ([`Export::what`]) for other programs into a file at `into`. Answers with what to say once it lies where
    /// it is wanted.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when there is no such thing to write; [`StudioError::Full`] or [`StudioError::Unreadable`] when
    /// it cannot be written: then it is not there.
    pub fn export(&self, what: &str, into: &Path) -> Result<String> {
        if what == JOURNAL {
            let entries = self.store.write_journal(into)?;
            return Ok(say::journal_written(entries));
        }
        if what == ALL_TABLES {
            let all: Vec<_> = TABLES.iter().map(tables::TableKind::writer).collect();
            self.store.write_tables(into, &all)?;
            return Ok(say::tables_written(TABLES.len()));
        }
        let table = TABLES.iter().find(|table| table.name == what);
        let table = table.ok_or_else(|| StudioError::refused("what", say::table_not_listed()))?;
        self.store.write_table(into, table.writer())?;
        Ok(say::table_written(say::table(table.name)))
    }
}

impl Studio {
    /// Reads a backup of this studio that has arrived where it is to lie: it counts only if it goes as far as the one that was
    /// made last, or, where the app was ended since, as the studio goes now.
    fn arrived(&self, copy: &Path) -> Result<Checked, StudioError> {
        let checked = check_backup(copy)?;
        let made = self.last_backup_made.lock().clone();
        let needed = made.map_or_else(|| self.store.read(version_vector), Ok)?;
        if covers(&checked.version_vector, &needed) { Ok(checked) } else { Err(BackupError::Behind.into()) }
    }
}

/// How a day stands in the name of a file, so that names are in the order of days.
const DAY: &str = "%Y-%m-%d";

fn tables(now: Now) -> Vec<Export> {
    let day = now.stamp(DAY);
    let one = TABLES.iter().map(|table| Export {
        what: table.name.to_owned(),
        title: say::table(table.name),
        detail: say::table_detail(table.name),
        name: format!("laydown-{}-{day}.csv", table.name),
        media_type: "text/csv".to_owned(),
    });
    let all = Export {
        what: ALL_TABLES.to_owned(),
        title: say::all_tables(),
        detail: say::all_tables_detail(),
        name: format!("laydown-tables-{day}.zip"),
        media_type: "application/zip".to_owned(),
    };
    one.chain([all]).collect()
}

/// What the Studio screen says of backups: the reminder, or when the last one was.
pub(super) fn in_a_line(conn: &Connection, now: Now) -> Result<String> {
    let to_mind = match by_itself::trouble(conn, now)? {
        Some(trouble) => Some(trouble),
        None => reminder(conn, now)?,
    };
    Ok(match (to_mind, last_backup(conn)?) {
        (Some(sentence), _) => sentence,
        (None, Some(last)) => say::last_backup_line(now.moment(last.at)),
        (None, None) => say::none_yet_line(),
    })
}

/// What to say while there has been no backup for long, and there is something to lose.
fn reminder(conn: &Connection, now: Now) -> Result<Option<String>> {
    let Some(first) = query::first_coat_at(conn)? else { return Ok(None) };
    Ok(match last_backup(conn)? {
        Some(last) if now.days_since(last.at) > REMIND_AFTER_DAYS && version_vector(conn)? != last.version_vector => {
            Some(say::too_long_ago(now.days_since(last.at)))
        }
        None if now.days_since(first) > REMIND_AFTER_DAYS => Some(say::never()),
        _ => None,
    })
}

fn last_backup(conn: &Connection) -> Result<Option<Done>> {
    relied_on(conn, BACKED_UP)
}

/// What a backup holds, to stand by itself in a sentence.
fn in_words(contents: Contents) -> String {
    let held = match contents.photos {
        0 => say::entries(contents.events),
        photos => say::entries_and_photos(contents.events, photos),
    };
    if contents.missing > 0 { say::with_missing_photos(contents.missing, held) } else { held }
}

/// What to say of photographs that cannot be read. Their names are long and all alike: how they begin tells them apart.
fn photos_left_out(refused: &[String]) -> Option<String> {
    const NAMED: usize = 3;
    const LETTERS: usize = 12;
    let more = refused.len().checked_sub(1)?;
    let name = |name: &String| say::photo_name(name.get(..LETTERS).unwrap_or(name));
    let names: Vec<String> = refused.iter().take(NAMED).map(name).collect();
    let ellipsis = if more < NAMED { "" } else { ", …" };
    Some(say::photos_left_out(refused.len(), names.join(", ") + ellipsis))
}
