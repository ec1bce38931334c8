//! The studio as a shell sees it: one call per screen that returns ready words, one call per command.
//!
//! Each screen has a file of its own here, holding its view records and its commands.
//! Everything a potter reads is made here, in the potter's units; a shell only lays it out.
//! The time is passed in with every call, so that nothing below the shell looks at a clock.

mod archive;
mod archived;
mod backup;
mod bisque;
mod buckets;
mod coat;
mod contents;
mod date_text;
mod devices;
mod draft;
mod dry;
mod editor;
mod evidence;
mod findings;
mod folder;
mod form_geometry;
mod history;
mod http_client;
mod import;
pub mod in_words;
mod kiln;
mod lists;
mod local_settings;
mod meanwhile;
mod messages;
mod pooled;
pub mod sample;
mod setup;
mod sizes;
mod sync;
mod sync_now;
mod weigh;

use std::path::{Path, PathBuf};

use parking_lot::Mutex;

use evidence::{preference, style};
use in_words::Sentence;
use laydown_domain::UnknownCode;
use laydown_domain::coat::verdict::VerdictKind;
use laydown_domain::form::ZoneKind;
use laydown_domain::glaze::slurry::SlurryError;
use laydown_domain::units::UnitError;
use laydown_store::backup::{BackupError, VersionVector};
use laydown_store::entity;
use laydown_store::journal::{Ids, RandomIds};
use laydown_store::{Committed, Store, StoreError, Transaction, Undo, recover_here};
use messages::common as say;

pub use archived::{ArchivedRow, ArchivedSection, ArchivedView};
pub use backup::{BackupTask, BackupTrouble, BackupView, Export, Rhythm};
pub use buckets::{BucketRow, BucketView, BucketsView, NotebookRow};
pub use coat::{CoatView, Line};
pub use date_text::Now;
pub use devices::DevicesView;
pub use editor::{
    Drawing, EditorEntry, EditorField, EditorKind, EditorView, FieldKind, Grip, Ink, Item, Point, Redrawn, Shape, Spot,
    Touch, Value,
};
pub use findings::{
    AxisTick, Band, ChartLine, ChartSpot, ChartView, Dot, FindingsSection, FindingsView, GlazeFindingsView,
    LegendEntry, Mark, Stroke, WindowView,
};
pub use folder::{Folder, FolderEntry, FolderError, ProgressListener, Stop, folder_at};
pub use history::{HistoryEntry, HistoryView};
pub use http_client::{HttpAnswer, HttpCall, HttpClient, HttpHeader, HttpRequest, NetworkError};
pub use import::ImportView;
pub use kiln::{
    Assessment, AssessmentView, ChecklistItem, Choice, CompareLine, CompareView, ConesRow, ContactSheetView,
    ContactTile, FaultChip, Filter, FiringState, FiringView, FoundPiece, KilnView, PhotoView, PieceView, PiecesView,
    PlacedPiece, ShelfView, WaitingGroup, WaitingRow, ZoneQuestion, fault_sketch,
};
pub use meanwhile::{ClashAnswer, ClashView, MeanwhileView};
pub use pooled::{EvidenceRow, TargetChoice, TargetOption, WhyTargetView};
pub use setup::{CautionView, Section, SetupView};
pub use sizes::{SizeRow, SizesView};
pub use sync::{SyncConfig, SyncFailure, SyncLocation, SyncReport, SyncView};
pub use sync_now::{SyncProgress, SyncRequest, sync_now};
pub use weigh::{
    Field, FieldError, Gauge, MovedTarget, NextCoat, PieceGroup, PieceToGlaze, PiecesToGlazeView, Question, RecentCoat,
    SetupStep, Suggestion, TargetView, VerdictView, WeighEntry, WeighField, WeighMode, WeighView,
};

uniffi::setup_scaffolding!();

/// What a reading means.
#[uniffi::remote(Enum)]
pub enum VerdictKind {
    /// The whole of the reading's uncertainty lies inside the accepted span.
    Within,
    /// It lies wholly below.
    Short,
    /// It lies wholly above.
    Over,
    /// The scale cannot decide it.
    CannotTell,
    /// It may be right: the target is only a guess.
    Guess,
    /// Right by the odds, on a scale too coarse to be sure.
    ProbablyWithin,
}

/// A zone of a form.
#[uniffi::remote(Enum)]
pub enum ZoneKind {
    /// The inside.
    Inside,
    /// The outside, as far as it is glazed.
    Outside,
    /// Inside and outside in one coat.
    Whole,
}

// A path crosses as text.
uniffi::custom_type!(PathBuf, String, {
    remote,
    lower: |path| path.to_string_lossy().into_owned(),
    try_lift: |text| Ok(PathBuf::from(text)),
});

unsafe impl uniffi::LiftRef<UniFfiTag> for Path {
    type LiftType = PathBuf;
}

/// The stamp of this library. A shell whose generated code carries another one must not go on.
#[uniffi::export]
pub fn build_stamp() -> String {
    env!("LAYDOWN_BUILD_STAMP").to_owned()
}

/// Saves what can be read of a damaged studio into a new one in its place, and keeps the damaged file beside it; answers with
/// what to say. No studio may be open at `path`; `mark` is as for opening it.
///
/// # Errors
/// As [`Studio::recover_here`].
#[uniffi::export]
pub fn recover_studio(path: &Path, mark: &Path, now: Now) -> Result<String> {
    Studio::recover_here(path, mark, now)
}

/// What a row in a list shows: a title, a line under it, and whether it is the one in use.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct Row {
    /// The entity's id, to hand back in a command.
    pub id: String,
    /// The first line.
    pub title: String,
    /// The second, quieter line; may be empty.
    pub detail: String,
    /// Whether this is the one chosen now.
    pub chosen: bool,
    /// The right half of its outline, from the axis at the foot to the rim; empty for what has none.
    pub outline: Vec<Point>,
}

/// How loudly a note speaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, uniffi::Enum)]
pub enum Tone {
    /// Something worth knowing.
    Plain,
    /// Something to look at before going on.
    Attention,
    /// Something that can hurt a person or spoil the work.
    Warning,
}

/// A sentence beside the main thing on a screen.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct Note {
    /// How loudly it speaks; never told by colour alone.
    pub tone: Tone,
    /// The sentence.
    pub text: String,
}

impl Note {
    pub(crate) fn plain(text: impl Into<String>) -> Note {
        Note { tone: Tone::Plain, text: text.into() }
    }

    pub(crate) fn attention(text: impl Into<String>) -> Note {
        Note { tone: Tone::Attention, text: text.into() }
    }

    pub(crate) fn warning(text: impl Into<String>) -> Note {
        Note { tone: Tone::Warning, text: text.into() }
    }
}

/// The answer to a command: what was kept and how to take it back.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct CommandResult {
    /// The id of what was kept.
    pub id: String,
    /// What happened, in one short sentence.
    pub sentence: String,
    /// Hand this to [`Studio::undo`] to take the command back; empty where there is nothing to undo.
    pub undo: String,
    /// The coats that may follow on the same piece, each ready to weigh.
    pub next: Vec<NextCoat>,
}

impl CommandResult {
    fn new(id: String, sentence: impl Into<String>, undo: Undo) -> CommandResult {
        CommandResult { id, sentence: sentence.into(), undo: undo_token(undo), next: Vec::new() }
    }
}

/// What the shell hands back to undo: opaque to it. The fields of an [`Undo`] always serialise.
fn undo_token(undo: Undo) -> String {
    if undo.is_empty() {
        return String::new();
    }
    serde_json::to_string(&undo).unwrap_or_default()
}

/// What a shell itself acts on, beside what it shows.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct Preferences {
    /// Whether the verdict is spoken.
    pub speak: bool,
    /// Whether a key or a verdict is felt.
    pub tick: bool,
    /// The decimal mark on the keypad.
    pub decimal: String,
}

/// Why a call did not do what was asked. Each carries the sentence to show; nothing was changed or lost.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error, uniffi::Error)]
pub enum StudioError {
    /// What was entered cannot be taken; `field` names the field to go back to.
    #[error("{sentence}")]
    Refused {
        /// The key of the field, empty if it is about the whole entry.
        field: String,
        /// What is wrong and what to do.
        sentence: String,
    },
    /// Something named in the call is not in the studio any more.
    #[error("{sentence}")]
    Missing {
        /// What is gone and what to do.
        sentence: String,
    },
    /// Another process holds the studio's file.
    #[error("{sentence}")]
    Busy {
        /// What to do.
        sentence: String,
    },
    /// The storage is full or refuses to be written.
    #[error("{sentence}")]
    Full {
        /// What to do.
        sentence: String,
    },
    /// The file was made by a newer version.
    #[error("{sentence}")]
    Newer {
        /// What to do.
        sentence: String,
    },
    /// The file is not a studio.
    #[error("{sentence}")]
    NotAStudio {
        /// What to do.
        sentence: String,
    },
    /// The file is damaged.
    #[error("{sentence}")]
    Damaged {
        /// What to do.
        sentence: String,
    },
    /// The file could not be read or written for another reason.
    #[error("{sentence}")]
    Unreadable {
        /// What to do.
        sentence: String,
    },
    /// The place the sync location did not do what was asked of it.
    #[error("{sentence}")]
    Elsewhere {
        /// What to do.
        sentence: String,
    },
}

impl StudioError {
    pub(crate) fn refused(field: &str, sentence: impl Sentence) -> StudioError {
        StudioError::Refused { field: field.to_owned(), sentence: sentence.sentence() }
    }

    /// `what`: the code of what is gone in the message `missing`.
    pub(crate) fn missing(what: &str) -> StudioError {
        StudioError::Missing { sentence: say::missing(what) }
    }
}

impl From<StoreError> for StudioError {
    fn from(error: StoreError) -> StudioError {
        let sentence = error.sentence();
        match error {
            StoreError::Busy => StudioError::Busy { sentence },
            StoreError::Full => StudioError::Full { sentence },
            StoreError::Newer { .. } => StudioError::Newer { sentence },
            StoreError::NotAStudio => StudioError::NotAStudio { sentence },
            StoreError::Damaged { .. } => StudioError::Damaged { sentence },
            StoreError::BadEvent { .. } => StudioError::Refused { field: String::new(), sentence },
            StoreError::NotAllowed
            | StoreError::NoFolder
            | StoreError::Removed
            | StoreError::Io { .. }
            | StoreError::Forked { .. }
            | StoreError::Fault { .. } => StudioError::Unreadable { sentence },
        }
    }
}

impl From<SlurryError> for StudioError {
    fn from(error: SlurryError) -> StudioError {
        StudioError::refused("", error)
    }
}

impl From<BackupError> for StudioError {
    fn from(error: BackupError) -> StudioError {
        match error {
            BackupError::Store(error) => error.into(),
            error => StudioError::refused("backup", error),
        }
    }
}

impl From<UnknownCode> for StudioError {
    fn from(error: UnknownCode) -> StudioError {
        StudioError::Newer { sentence: error.sentence() }
    }
}

/// A quantity that was stored and cannot be: it came from elsewhere, and the file is sound.
impl From<UnitError> for StudioError {
    fn from(error: UnitError) -> StudioError {
        StudioError::refused("", error)
    }
}

impl Sentence for StudioError {
    fn sentence(&self) -> String {
        self.to_string()
    }
}

/// The result of every call.
pub type Result<T, E = StudioError> = std::result::Result<T, E>;

/// One studio: its file, open. Every call may come from any thread.
#[derive(uniffi::Object)]
pub struct Studio {
    store: Store,
    /// How far the backup goes that was written last, until the app is ended.
    last_backup_made: Mutex<Option<VersionVector>>,
    /// What fired pots say of the places that were weighed for.
    pooled: pooled::Cache,
}

#[uniffi::export]
impl Studio {
    /// Opens the studio kept in the file at `path`, making an empty one if there is none.
    /// `now` is only used to name this device in a new file.
    ///
    /// # Errors
    /// [`StudioError::NotAStudio`], [`StudioError::Newer`], [`StudioError::Damaged`], [`StudioError::Busy`],
    /// [`StudioError::Full`] or [`StudioError::Unreadable`]; the file is left as it was.
    #[uniffi::constructor]
    pub fn open(path: &Path, now: Now) -> Result<Studio> {
        Studio::open_with(path, now, RandomIds)
    }

    /// As [`Studio::open`], on the phone that `mark` belongs to: a small file in a folder that the phone's own backups leave
    /// out. A studio that came to another phone in such a backup is given a device of its own there, with the same
    /// preferences, so that two phones never write under one name.
    ///
    /// # Errors
    /// As [`Studio::open`].
    #[uniffi::constructor]
    pub fn open_here(path: &Path, mark: &Path, now: Now) -> Result<Studio> {
        let (store, before) = Store::open_here(path, mark, now.unix_ms, RandomIds)?;
        let studio = Studio { store, last_backup_made: Mutex::default(), pooled: pooled::Cache::default() };
        if let Some(before) = before {
            studio.prefer_as(now, before, |preferred| entity::Preference { phone: None, ..preferred })?;
        }
        Ok(studio)
    }

    /// Undoes the command that answered with `token`; the answer's own token does it again.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when the token is not one of this studio's, or all of that is undone already.
    pub fn undo(&self, now: Now, token: &str) -> Result<CommandResult> {
        let nothing = || StudioError::refused("", say::nothing_to_undo());
        let undo: Undo = serde_json::from_str(token).map_err(|_| nothing())?;
        let done = self.store.undo(now.unix_ms, undo)?;
        if done.undo.is_empty() {
            return Err(nothing());
        }
        // A coat is mostly undone to be weighed again, and its piece has its code on the foot.
        let next = self.store.read(|conn| weigh::weigh_undone_again(conn, undo))?;
        Ok(CommandResult { next, ..CommandResult::new(String::new(), say::undone(), done.undo) })
    }

    /// What the shell itself acts on: whether it speaks and ticks.
    ///
    /// # Errors
    /// As every read: [`StudioError::Unreadable`] or [`StudioError::Busy`].
    pub fn preferences(&self) -> Result<Preferences> {
        self.store.read(|conn| {
            let preference = preference(conn)?;
            let decimal = style(conn)?.decimal.mark().to_string();
            Ok(Preferences { speak: preference.speak, tick: preference.tick, decimal })
        })
    }
}

impl Studio {
    /// As [`Studio::open`], with the source of new ids given, so that the same commands make the same studio.
    ///
    /// # Errors
    /// As [`Studio::open`].
    pub fn open_with(path: &Path, now: Now, ids: impl Ids + 'static) -> Result<Studio> {
        let store = Store::open(path, now.unix_ms, ids)?;
        Ok(Studio { store, last_backup_made: Mutex::default(), pooled: pooled::Cache::default() })
    }

    /// Saves what can be read of a damaged studio into a new one in its place; the damaged file is kept beside it. The studio
    /// must not be open. Answers with what to say. `path` and `mark` are those of [`Studio::open_here`].
    ///
    /// # Errors
    /// [`StudioError::Full`] or [`StudioError::Unreadable`] when the new one cannot be written; the damaged one is then still in
    /// its place.
    pub fn recover_here(path: &Path, mark: &Path, now: Now) -> Result<String> {
        Ok(recover_here(path, mark, now.unix_ms, RandomIds)?.sentence())
    }

    /// The store below, for exports, rebuilds and tests.
    pub fn store(&self) -> &Store {
        &self.store
    }

    fn command<T>(&self, now: Now, act: impl FnOnce(&mut Transaction<'_>) -> Result<T>) -> Result<Committed<T>> {
        self.store.transact(now.unix_ms, act)
    }
}
