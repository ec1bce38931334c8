//! The facade: one object, one call per screen for its view, one per command. Nothing is reckoned here.

mod records;

use std::path::Path;
use std::sync::Arc;

use laydown::studio;
pub use laydown::studio::StudioError;

use crate::records::*;

uniffi::setup_scaffolding!();

/// Why a call did not do what was asked. Each carries the sentence to show; nothing was changed or lost.
#[uniffi::remote(Error)]
pub enum StudioError {
    /// What was entered cannot be taken; `field` names the field to go back to.
    Refused { field: String, sentence: String },
    /// Something named in the call is not in the studio any more.
    Missing { sentence: String },
    /// Another process holds the studio's file.
    Busy { sentence: String },
    /// The storage is full or refuses to be written.
    Full { sentence: String },
    /// The file was made by a newer version.
    Newer { sentence: String },
    /// The file is not a studio.
    NotAStudio { sentence: String },
    /// The file is damaged.
    Damaged { sentence: String },
    /// The file could not be read or written for another reason.
    Unreadable { sentence: String },
}

type Result<T> = std::result::Result<T, StudioError>;

/// The stamp of this library. A shell whose generated code carries another one must not go on.
#[uniffi::export]
pub fn build_stamp() -> String {
    env!("LAYDOWN_BUILD_STAMP").to_owned()
}

/// One studio, open. Every call may come from any thread.
#[derive(uniffi::Object)]
pub struct Studio(studio::Studio);

#[uniffi::export]
impl Studio {
    /// Opens the studio kept in the file at `path`, making an empty one if there is none.
    /// `now` only names this device in a new file.
    #[uniffi::constructor]
    pub fn open(path: &str, now: Now) -> Result<Arc<Studio>> {
        Ok(Arc::new(Studio(studio::Studio::open(Path::new(path), now)?)))
    }

    /// The Weigh screen for `entry`, or for what was remembered if there is none.
    pub fn weigh(&self, now: Now, entry: Option<WeighEntry>) -> Result<WeighView> {
        self.0.weigh(now, entry)
    }

    /// Remembers what is chosen and half typed, for the next start.
    pub fn remember(&self, now: Now, entry: WeighEntry) -> Result<()> {
        self.0.remember(now, &entry)
    }

    /// Keeps the coat that `entry` describes; when this returns, it survives a pulled battery.
    pub fn keep(&self, now: Now, entry: WeighEntry) -> Result<Kept> {
        self.0.keep(now, entry)
    }

    /// The record of one coat.
    pub fn coat(&self, now: Now, id: &str) -> Result<CoatView> {
        self.0.coat(now, id)
    }

    /// Marks a coat as a control piece, or takes the mark off.
    pub fn set_control(&self, now: Now, id: &str, control: bool) -> Result<Kept> {
        self.0.set_control(now, id, control)
    }

    /// Takes a coat out of the record.
    pub fn take_back_coat(&self, now: Now, id: &str) -> Result<Kept> {
        self.0.take_back_coat(now, id)
    }

    /// Takes back the command that answered with `token`; the answer's own token does it again.
    pub fn undo(&self, now: Now, token: &str) -> Result<Kept> {
        self.0.undo(now, token)
    }

    /// The Buckets screen.
    pub fn buckets(&self, now: Now) -> Result<BucketsView> {
        self.0.buckets(now)
    }

    /// One bucket's page.
    pub fn bucket(&self, now: Now, id: &str) -> Result<BucketView> {
        self.0.bucket(now, id)
    }

    /// The Studio screen.
    pub fn house(&self, now: Now) -> Result<HouseView> {
        self.0.house(now)
    }

    /// A sheet as it stands with what is entered.
    pub fn sheet(&self, now: Now, entry: SheetEntry) -> Result<SheetView> {
        self.0.sheet(now, &entry)
    }

    /// Keeps a sheet.
    pub fn keep_sheet(&self, now: Now, entry: SheetEntry) -> Result<Kept> {
        self.0.keep_sheet(now, &entry)
    }

    /// Puts away what a sheet of this kind shows.
    pub fn remove(&self, now: Now, kind: SheetKind, id: &str) -> Result<Kept> {
        self.0.remove(now, kind, id)
    }

    /// A sheet after a finger has touched its drawing.
    pub fn touch(&self, now: Now, entry: SheetEntry, touch: Touch) -> Result<Redrawn> {
        self.0.touch(now, &entry, &touch)
    }

    /// A sheet after a photograph was put into its field: `file` is the path of a JPEG or PNG, which is only read.
    pub fn photograph(&self, now: Now, entry: SheetEntry, file: &str) -> Result<Redrawn> {
        self.0.photograph(now, &entry, Path::new(file))
    }

    /// Every form's amount, going by the known one with the id `known`, or by the newest if it is empty.
    pub fn sizes(&self, now: Now, known: &str) -> Result<SizesView> {
        self.0.sizes(now, known)
    }

    /// Whether this phone speaks and ticks.
    pub fn preferences(&self) -> Result<Preferences> {
        self.0.preferences()
    }
}
