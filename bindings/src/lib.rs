//! The facade: one object, one call per screen for its view, one per command. Nothing is reckoned here.

mod meeting;
mod records;

use std::path::{Path, PathBuf};
use std::sync::Arc;

use laydown::studio;
pub use laydown::studio::StudioError;
use laydown_remote::How;

use crate::meeting::Reached;
pub use crate::meeting::{Folder, FolderEntry, FolderError, SoFar, Stop, Watch, folder_at};
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
    /// The place where the phones meet did not do what was asked of it.
    Elsewhere { sentence: String },
}

type Result<T> = std::result::Result<T, StudioError>;

/// The stamp of this library. A shell whose generated code carries another one must not go on.
#[uniffi::export]
pub fn build_stamp() -> String {
    env!("LAYDOWN_BUILD_STAMP").to_owned()
}

/// Saves what can be read of a damaged studio into a new one in its place, and keeps the damaged file beside it; answers with
/// what to say. No studio may be open at `path`; `mark` is as for opening it.
#[uniffi::export]
pub fn recover_studio(path: &str, mark: &str, now: Now) -> Result<String> {
    studio::Studio::recover_here(Path::new(path), Path::new(mark), now)
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

    /// As `open`, on the phone that the file `mark` belongs to, which lies where the phone's own backups leave it out: a
    /// studio that came from another phone is given a device of its own.
    #[uniffi::constructor]
    pub fn open_here(path: &str, mark: &str, now: Now) -> Result<Arc<Studio>> {
        Ok(Arc::new(Studio(studio::Studio::open_here(Path::new(path), Path::new(mark), now)?)))
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

    /// Does again what was taken back: the command with this token, as a doing gives it.
    pub fn redo(&self, now: Now, token: &str) -> Result<Kept> {
        self.0.redo(now, token)
    }

    /// What was done lately, on all phones.
    pub fn doings(&self, now: Now) -> Result<HistoryView> {
        self.0.doings(now)
    }

    /// All that was ever said of one thing.
    pub fn history(&self, now: Now, id: &str) -> Result<HistoryView> {
        self.0.history(now, id)
    }

    /// The phones that have written here.
    pub fn devices(&self, now: Now) -> Result<DevicesView> {
        self.0.devices(now)
    }

    /// Keeps this studio alike with what lies where its phones meet, once; answers with what came and what went. Takes as long
    /// as it takes: call it on a thread that nobody waits for. `secrets` is all that the shell keeps secret, by the fields'
    /// keys; `metered` says that every byte costs here, `check` has all that this phone put there read again, and `folder` is
    /// the folder where the place is one. What came of it stands in the view of the phones, also where this answers with an
    /// error.
    #[allow(
        clippy::too_many_arguments,
        reason = "a record would hold secrets, and show them wherever records are shown"
    )]
    pub fn agree(
        &self,
        now: Now,
        secrets: Vec<Value>,
        metered: bool,
        check: bool,
        folder: Option<Arc<dyn Folder>>,
        watch: Arc<dyn Watch>,
        stop: Arc<Stop>,
    ) -> Result<String> {
        let folder = folder.map(Reached);
        let folder = folder.as_ref().map(|folder| folder as &dyn laydown_remote::Shelf);
        let how = How { secrets: &secrets, metered, check, folder, stop: Arc::clone(&stop.0) };
        laydown_remote::agree(&self.0, now, &how, &mut |so_far| watch.so_far(so_far))
    }

    /// Forgets where the phones meet. What lies there stays there; the shell forgets its secrets, and gives back its leave for
    /// the folder that this answers with, if it needed one.
    pub fn forget_meeting_place(&self, now: Now) -> Result<String> {
        self.0.forget_meeting_place(now)
    }

    /// Sets this phone up as a new one, as where two phones have written under one name. Answers with what to say.
    pub fn set_up_as_new_phone(&self, now: Now) -> Result<String> {
        self.0.set_up_as_new_phone(now)
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

    /// The Backup page.
    pub fn backup(&self, now: Now) -> Result<BackupView> {
        self.0.backup(now)
    }

    /// Writes everything into one file and reads it again; answers with what it holds.
    pub fn back_up(&self, into: &str) -> Result<String> {
        self.0.back_up(Path::new(into))
    }

    /// Reads the backup that has arrived where it is to lie, and remembers that there is one; answers with what to say.
    pub fn backed_up(&self, now: Now, copy: &str) -> Result<String> {
        self.0.backed_up(now, Path::new(copy))
    }

    /// Chooses how often a backup is made by itself: the id of a row of `BackupView.every`.
    pub fn back_up_every(&self, now: Now, every: &str) -> Result<()> {
        self.0.back_up_every(now, every)
    }

    /// Chooses the folder for backups made by themselves: `place` names it to the phone's system, `called` to the potter.
    pub fn keep_backups_in(&self, now: Now, place: &str, called: &str) -> Result<()> {
        self.0.keep_backups_in(now, place, called)
    }

    /// The backup to make now by itself; none where there is none to make. With `asked`, the potter wants one now.
    pub fn backup_due(&self, now: Now, asked: bool) -> Result<Option<BackupTask>> {
        self.0.backup_due(now, asked)
    }

    /// Reads the backup that has arrived in the folder `place` as `file`, from where it was copied to `copy`; answers with the
    /// older ones of its own that may now be removed.
    pub fn backed_up_by_itself(&self, now: Now, place: &str, file: &str, copy: &str) -> Result<Vec<String>> {
        self.0.backed_up_by_itself(now, place, file, Path::new(copy))
    }

    /// Remembers that these backups are not in the folder any more.
    pub fn backups_removed(&self, now: Now, files: Vec<String>) -> Result<()> {
        self.0.backups_removed(now, &files)
    }

    /// Remembers that a backup was not made by itself, and why.
    pub fn backup_failed(&self, now: Now, trouble: BackupTrouble) -> Result<()> {
        self.0.backup_failed(now, trouble)
    }

    /// Writes a table or the journal, as `Export.what` says, into a file; answers with what to say once it lies where it is
    /// wanted.
    pub fn export(&self, what: &str, into: &str) -> Result<String> {
        self.0.export(what, Path::new(into))
    }

    /// Takes a backup or a journal in; answers with what to say.
    pub fn take_in(&self, now: Now, from: &str) -> Result<String> {
        self.0.take_in(now, Path::new(from))
    }

    /// What taking in a potter's own spreadsheet, a CSV file, would do; `chosen` says what its columns hold.
    pub fn import(&self, now: Now, file: &str, chosen: Vec<Value>) -> Result<ImportView> {
        self.0.import(now, Path::new(file), &chosen)
    }

    /// Takes the spreadsheet in, as the view said.
    pub fn take_in_sheet(&self, now: Now, file: &str, chosen: Vec<Value>) -> Result<Kept> {
        self.0.take_in_sheet(now, Path::new(file), &chosen)
    }

    /// The Kiln screen.
    pub fn kiln(&self, now: Now) -> Result<KilnView> {
        self.0.kiln(now)
    }

    /// A firing's page.
    pub fn firing(&self, now: Now, id: &str) -> Result<FiringView> {
        self.0.firing(now, id)
    }

    /// Puts pieces on a shelf, each where there is room.
    pub fn load(&self, now: Now, firing: &str, pieces: Vec<String>, shelf: u32) -> Result<Kept> {
        self.0.load(now, firing, &pieces, shelf)
    }

    /// Puts all that waits into a firing, as far as there is room.
    pub fn load_all(&self, now: Now, firing: &str) -> Result<Kept> {
        self.0.load_all(now, firing)
    }

    /// Moves a piece on its shelf, as its grip was dragged.
    pub fn place(&self, now: Now, firing: &str, piece: &str, to: Spot) -> Result<Kept> {
        self.0.place(now, firing, piece, to)
    }

    /// Takes a piece out of a firing.
    pub fn take_out(&self, now: Now, firing: &str, piece: &str) -> Result<Kept> {
        self.0.take_out(now, firing, piece)
    }

    /// Ticks off, or on again, something to look at before the firing.
    pub fn tick_before(&self, now: Now, firing: &str, what: &str, done: bool) -> Result<Kept> {
        self.0.tick_before(now, firing, what, done)
    }

    /// Takes a firing on to its next state; one that is done is opened again.
    pub fn advance(&self, now: Now, firing: &str) -> Result<Kept> {
        self.0.advance(now, firing)
    }

    /// A piece of a firing beside its record; the first one not yet looked at where `piece` is empty.
    pub fn look_at(&self, now: Now, firing: &str, piece: &str) -> Result<LookView> {
        self.0.look_at(now, firing, piece)
    }

    /// Keeps what is said of a piece with one tap.
    pub fn look(&self, now: Now, firing: &str, piece: &str, look: Look) -> Result<Kept> {
        self.0.look(now, firing, piece, &look)
    }

    /// Keeps a photograph of a piece: `file` is a JPEG or PNG as the camera left it; `firing` may be empty.
    pub fn keep_photo(&self, now: Now, piece: &str, firing: &str, file: &str) -> Result<Kept> {
        self.0.keep_photo(now, piece, firing, Path::new(file))
    }

    /// Takes a photograph off its piece.
    pub fn take_photo_off(&self, now: Now, id: &str) -> Result<Kept> {
        self.0.take_photo_off(now, id)
    }

    /// A piece's page.
    pub fn piece(&self, now: Now, id: &str) -> Result<PieceView> {
        self.0.piece(now, id)
    }

    /// The pieces that fit all that is wanted: a filter's key, or `code`, with what was chosen.
    pub fn find_pieces(&self, now: Now, wanted: Vec<Value>) -> Result<PiecesView> {
        self.0.find_pieces(now, &wanted)
    }

    /// Two pieces side by side; a control piece on the right where `right` is empty.
    pub fn compare(&self, now: Now, left: &str, right: &str) -> Result<CompareView> {
        self.0.compare(now, left, right)
    }

    /// A firing on one sheet, to be painted as a picture or a page.
    pub fn contact_sheet(&self, now: Now, firing: &str) -> Result<ContactSheetView> {
        self.0.contact_sheet(now, firing)
    }

    /// Writes painted pages, JPEG files of A4's shape, into one PDF.
    pub fn write_pdf(&self, title: &str, pages: Vec<String>, into: &str) -> Result<()> {
        let pages: Vec<PathBuf> = pages.into_iter().map(PathBuf::from).collect();
        self.0.write_pdf(title, &pages, Path::new(into))
    }

    /// Every form's amount, going by the known one with the id `known`, or by the newest if it is empty.
    pub fn sizes(&self, now: Now, known: &str) -> Result<SizesView> {
        self.0.sizes(now, known)
    }

    /// The Findings screen.
    pub fn findings(&self) -> Result<FindingsView> {
        self.0.findings()
    }

    /// What fired pots say of one glaze.
    pub fn glaze_findings(&self, now: Now, id: &str) -> Result<GlazeFindingsView> {
        self.0.glaze_findings(now, id)
    }

    /// Takes the best laydown, as a glaze's findings name it, as its starting value.
    pub fn take_best(&self, now: Now, id: &str, best: &str) -> Result<Kept> {
        self.0.take_best(now, id, best)
    }

    /// Whether this phone speaks and ticks.
    pub fn preferences(&self) -> Result<Preferences> {
        self.0.preferences()
    }
}
