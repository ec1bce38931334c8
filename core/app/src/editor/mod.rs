//! An editor is one thing to fill in: a form, a glaze, a bucket's check. It is described here field by field,
//! so that a shell needs one screen for all of them and decides nothing itself.
//!
//! Each kind has a file with one function that lays out the fields, reads them and, when all are good,
//! says what to keep. The same function serves the view and the command, so the two cannot disagree.

mod bisque_lot;
mod body;
mod bucket;
mod bucket_entry;
mod builder;
mod check;
mod coat;
mod control;
mod control_coat;
mod drawing;
mod dry_weight;
mod firing;
mod form;
mod glaze;
mod kiln;
mod mix;
mod notation;
mod piece;
mod preference;
mod scale;
mod scale_test;
mod sync_location;
mod thin;
mod tile;
mod tile_ladder;
mod vessel;
mod witness_cones;

use rusqlite::Connection;
use serde::Serialize;
use uuid::Uuid;

use self::builder::EditorBuilder;
pub(super) use self::builder::{LONGEST_NAME, LONGEST_REMARK, item};
pub use self::drawing::{Drawing, Grip, Ink, Redrawn, Shape, Spot, Touch};
pub(super) use self::kiln::{LARGEST_SHELF, MOST_SHELVES, SMALLEST_SHELF};
use super::archive::{Archivable, found};
use super::draft::{self, Draft, made_by};
use super::evidence::{parse_id, style};
use super::{CommandResult, Note, Now, Result, Studio, StudioError};
use laydown_domain::units::Style;
use laydown_store::Transaction;
use laydown_store::entity::{self, Entity};

/// Which editor.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, uniffi::Enum)]
pub enum EditorKind {
    /// A form: a shape at a size.
    Form,
    /// A clay body: how it shrinks.
    Body,
    /// Ware of one bisque firing: how much water it drinks.
    BisqueLot,
    /// A kiln: its shelves.
    Kiln,
    /// A firing.
    Firing,
    /// The witness cones of a firing, before it.
    WitnessCones,
    /// A piece that was never weighed; the subject of a new one is the firing that it goes into.
    Piece,
    /// A glaze; a new one comes with its first bucket.
    Glaze,
    /// A bucket of a glaze; its subject is the glaze.
    Bucket,
    /// A check of a bucket's SG; its subject is the bucket.
    Check,
    /// What was done to a bucket, or seen of it; its subject is the bucket.
    BucketEntry,
    /// A mixing sheet, which makes a new bucket; its subject is the glaze. What is entered is remembered while it is open.
    Mix,
    /// Water to thin a bucket, or to take off; its subject is the bucket. Keeps what was done as an entry of the bucket.
    Thin,
    /// A vessel for checking SG.
    Vessel,
    /// A scale.
    Scale,
    /// A test of a scale.
    ScaleTest,
    /// A test tile.
    Tile,
    /// A ladder of test tiles from thin to thick, planned at once.
    TileLadder,
    /// A control piece: a coat weighed here, or an amount known to be right.
    Control,
    /// A saved coat, to correct it.
    Coat,
    /// A piece weighed again bone dry; without an id, one of those that wait for a firing.
    DryWeight,
    /// Units, sound and touch on this phone.
    Preference,
    /// The sync location. Its secrets are the shell's to keep.
    SyncLocation,
}

/// A field's key and what is entered in it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct Value {
    /// The field's key.
    pub key: String,
    /// What is entered: text as typed, an item's code, or "yes" and "no".
    pub text: String,
}

impl EditorKind {
    /// Whether something new is made with it.
    fn makes_something(self) -> bool {
        !matches!(
            self,
            EditorKind::Coat
                | EditorKind::DryWeight
                | EditorKind::WitnessCones
                | EditorKind::Preference
                | EditorKind::SyncLocation
        )
    }

    /// Its name in drafts.
    pub(super) fn code(self) -> &'static str {
        match self {
            EditorKind::Form => "form",
            EditorKind::Body => "body",
            EditorKind::BisqueLot => "bisque_lot",
            EditorKind::Kiln => "kiln",
            EditorKind::Firing => "firing",
            EditorKind::WitnessCones => "witness_cones",
            EditorKind::Piece => "piece",
            EditorKind::Glaze => "glaze",
            EditorKind::Bucket => "bucket",
            EditorKind::Check => "check",
            EditorKind::BucketEntry => "bucket_entry",
            EditorKind::Mix => "mix",
            EditorKind::Thin => "thin",
            EditorKind::Vessel => "vessel",
            EditorKind::Scale => "scale",
            EditorKind::ScaleTest => "scale_test",
            EditorKind::Tile => "tile",
            EditorKind::TileLadder => "tile_ladder",
            EditorKind::Control => "control",
            EditorKind::Coat => "coat",
            EditorKind::DryWeight => "dry_weight",
            EditorKind::Preference => "preference",
            EditorKind::SyncLocation => "sync_location",
        }
    }
}

/// An editor as it is being filled in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct EditorEntry {
    /// Which editor.
    pub kind: EditorKind,
    /// The entity being changed; empty for a new one.
    pub id: String,
    /// What the editor is about where it needs that: the glaze of a bucket, the bucket of a check; else empty.
    pub subject: String,
    /// What has been entered so far; a field not named here shows what is kept, or its usual value.
    pub values: Vec<Value>,
    /// The draft that [`EditorView::draft`] handed out, so that saving twice saves once; may be empty.
    #[uniffi(default = "")]
    pub draft: String,
}

/// How a field is filled in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, uniffi::Enum)]
pub enum FieldKind {
    /// Free text.
    Text,
    /// Free text of several lines.
    Lines,
    /// A line that counts letter by letter, such as an address: the keyboard adds no capital and corrects nothing.
    Exact,
    /// A secret: shown as dots, never filled in by the core, and kept by the shell where the platform keeps secrets, under
    /// the field's key, once the editor is kept. Left empty, the one that is kept there stays.
    Secret,
    /// A folder, chosen in the platform's own way: what stands in it has two lines, the folder's name and what the shell
    /// finds it again by.
    Folder,
    /// A number or quantity in people's notation; the shell shows digits.
    Number,
    /// One of the items.
    Choice,
    /// One of the items, each with an outline to pick by looking.
    Outline,
    /// Yes or no.
    Switch,
    /// A table of numbers: what stands in it has one line for each row, with tabs between the cells. The shell shows
    /// [`EditorField::columns`] over them and lets rows be added and taken away.
    Table,
    /// A photograph: what stands in it is the name of the file. The items are the ways to get one.
    Photo,
    /// A day: what stands in it is as ISO 8601 writes it, and its one item says it in words.
    Day,
}

/// A point of an outline: from 0 to 1 from the axis outwards, and from 0 to 1 upwards from the foot.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, uniffi::Record)]
pub struct Point {
    /// Distance from the axis.
    pub radius: f64,
    /// Height above the foot.
    pub height: f64,
}

/// One of the things to choose from in a field.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct Item {
    /// What to hand back.
    pub code: String,
    /// What it is called.
    pub name: String,
    /// One line about it; may be empty.
    pub detail: String,
    /// The right half of its outline, from the axis at the foot to the rim; empty where there is none.
    pub outline: Vec<Point>,
}

/// One field of an editor.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct EditorField {
    /// Its key.
    pub key: String,
    /// What it asks for.
    pub label: String,
    /// What stands in it.
    pub text: String,
    /// An example or a unit, shown while it is empty; may be empty.
    pub hint: String,
    /// What it is for, or what it means; may be empty.
    pub help: String,
    /// How it is filled in.
    pub kind: FieldKind,
    /// The things to choose from.
    pub items: Vec<Item>,
    /// What the columns of a table are called; empty for every other kind.
    pub columns: Vec<String>,
    /// What is wrong with what stands in it; empty when nothing is.
    pub refusal: String,
}

/// An editor as it is shown.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct EditorView {
    /// What the editor is called.
    pub title: String,
    /// Its fields, in order.
    pub fields: Vec<EditorField>,
    /// What is drawn of it, to look at and to take hold of; shown below the field [`Drawing::below`].
    pub drawing: Option<Drawing>,
    /// What follows from what is entered: areas, an SG, an amount of water.
    pub results: Vec<Note>,
    /// What the button that keeps it says; empty on an editor that only calculates.
    pub save_label: String,
    /// Whether keeping would be accepted.
    pub can_save: bool,
    /// What the button that removes it says; empty where nothing can be removed.
    pub remove_label: String,
    /// To be handed back in [`EditorEntry::draft`] from now on; empty where nothing new is made.
    pub draft: String,
}

/// Writes what an editor keeps.
type Write = Box<dyn FnOnce(&mut Transaction<'_>) -> Result<Uuid>>;

/// What a filled-in editor would keep.
struct PendingWrite {
    /// The sentence said afterwards.
    sentence: String,
    /// Writes it, and answers with the id of what was written.
    write: Write,
}

impl PendingWrite {
    /// Saves the entity that the editor changes, or a new one.
    fn one<E: Entity>(
        context: &EditContext<'_>,
        sentence: String,
        entity: impl FnOnce(Uuid) -> E + 'static,
    ) -> PendingWrite {
        PendingWrite::under(context.id.or(context.new_id), sentence, entity)
    }

    /// Saves an entity under `id`, or under a new id.
    fn under<E: Entity>(id: Option<Uuid>, sentence: String, entity: impl FnOnce(Uuid) -> E + 'static) -> PendingWrite {
        PendingWrite {
            sentence,
            write: Box::new(move |tx| {
                let entity = entity(id.unwrap_or_else(|| tx.new_id()));
                tx.put(&entity)?;
                Ok(entity.id())
            }),
        }
    }

    /// Says that `id` is saved, and writes nothing.
    fn nothing(id: Uuid, sentence: String) -> PendingWrite {
        PendingWrite { sentence, write: Box::new(move |_| Ok(id)) }
    }
}

/// What the fields are laid out from.
struct EditContext<'a> {
    conn: &'a Connection,
    now: Now,
    id: Option<Uuid>,
    /// Whether `id` was made by an earlier saving of the same entry.
    is_saved_again: bool,
    /// Under which id something new is saved; `None` for any.
    new_id: Option<Uuid>,
    subject: Option<Uuid>,
}

impl EditContext<'_> {
    /// The entity that the editor changes; `None` for a new one.
    fn current<E: Archivable>(&self) -> Result<Option<E>> {
        self.id.map(|id| found(self.conn, id)).transpose()
    }

    /// The coat weighed here that the editor of a control piece shows; `None` for an amount that was typed in.
    fn control_coat(&self) -> Result<Option<entity::Coat>> {
        Ok(self.id.map(|id| entity::Coat::load(self.conn, id)).transpose()?.flatten())
    }

    /// What the editor is about.
    fn subject<E: Archivable>(&self) -> Result<E> {
        found(self.conn, self.subject.ok_or_else(|| StudioError::missing(E::WHAT))?)
    }
}

/// Lays out the editor in `builder`; answers with what to keep once every field is good.
fn build(kind: EditorKind, context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let saving = match kind {
        EditorKind::Form => form::build(context, builder),
        EditorKind::Body => body::build(context, builder),
        EditorKind::BisqueLot => bisque_lot::build(context, builder),
        EditorKind::Kiln => kiln::build(context, builder),
        EditorKind::Firing => firing::build(context, builder),
        EditorKind::WitnessCones => witness_cones::build(context, builder),
        EditorKind::Piece => piece::build(context, builder),
        EditorKind::Glaze => glaze::build(context, builder),
        EditorKind::Bucket => bucket::build(context, builder),
        EditorKind::Check => check::build(context, builder),
        EditorKind::BucketEntry => bucket_entry::build(context, builder),
        EditorKind::Mix => mix::build(context, builder),
        EditorKind::Thin => thin::build(context, builder),
        EditorKind::Vessel => vessel::build(context, builder),
        EditorKind::Scale => scale::build(context, builder),
        EditorKind::ScaleTest => scale_test::build(context, builder),
        EditorKind::Tile => tile::build(context, builder),
        EditorKind::TileLadder => tile_ladder::build(context, builder),
        EditorKind::Control => match context.control_coat()? {
            Some(coat) => control_coat::build(context, builder, coat),
            None => control::build(context, builder),
        },
        EditorKind::Coat => coat::build(context, builder),
        EditorKind::DryWeight => dry_weight::build(context, builder),
        EditorKind::Preference => preference::build(context, builder),
        EditorKind::SyncLocation => sync_location::build(context, builder),
    };
    Ok(saving?.filter(|_| !builder.has_error()))
}

impl EditorEntry {
    fn ids(&self) -> Result<(Option<Uuid>, Option<Uuid>)> {
        let id = |text: &str| if text.is_empty() { Ok(None) } else { parse_id(text, "record").map(Some) };
        Ok((id(&self.id)?, id(&self.subject)?))
    }

    /// What has been entered, with what is remembered of a mixing sheet.
    fn all_values(&self, conn: &Connection, now: Now) -> Result<Vec<Value>> {
        let mut values = if self.kind == EditorKind::Mix { mix::begun(conn, now, self)? } else { Vec::new() };
        values.extend(self.values.iter().cloned());
        Ok(values)
    }

    fn view(&self, conn: &Connection, now: Now, style: &Style) -> Result<EditorView> {
        let (id, subject) = self.ids()?;
        let values = self.all_values(conn, now)?;
        let mut builder = EditorBuilder::new(style, &values);
        let context = EditContext { conn, now, id, is_saved_again: false, new_id: None, subject };
        let saving = build(self.kind, &context, &mut builder)?;
        let draft = match self.draft.as_str() {
            _ if id.is_some() || !self.kind.makes_something() => String::new(),
            "" => draft::hand_out(conn, now, self.kind.code())?.to_string(),
            draft => draft.to_owned(),
        };
        Ok(EditorView { draft, ..builder.into_view(saving.is_some(), id.is_some()) })
    }
}

#[uniffi::export]
impl Studio {
    /// The editor as it stands with what is entered in `entry`; that of a mixing sheet is remembered, so that what was ticked off
    /// survives a restart.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when what it is about is gone. What is wrong with a field is said beside the field.
    pub fn editor(&self, now: Now, entry: &EditorEntry) -> Result<EditorView> {
        if entry.kind == EditorKind::Mix && !entry.values.is_empty() {
            self.command(now, |tx| mix::remember(tx, now, entry))?;
        }
        self.store.read(|conn| entry.view(conn, now, &style(conn)?))
    }

    /// Saves the editor: what was touched and is not what is stored. With the draft of something that is saved already it
    /// changes that, and answers as it was answered then if there is nothing to change.
    ///
    /// # Errors
    /// [`StudioError::Refused`] with the first field that cannot be taken; then nothing is kept.
    pub fn save_record(&self, now: Now, entry: &EditorEntry) -> Result<CommandResult> {
        let (id, subject) = entry.ids()?;
        let draft = if id.is_some() { None } else { draft::named(&entry.draft)? };
        let stored = self.command(now, |tx| {
            let style = style(tx.conn())?;
            let values = entry.all_values(tx.conn(), now)?;
            let mut builder = EditorBuilder::new(&style, &values);
            let draft = draft.map(|draft| Draft::find(tx.conn(), draft, |_| Ok(true))).transpose()?;
            let (made, new_id, first) = match draft {
                Some(Draft::Saved(made)) => (Some(made), None, made_by(tx.conn(), made)?),
                Some(Draft::Open(new_id)) => (None, Some(new_id), None),
                None => (None, None, None),
            };
            let is_saved_again = made.is_some();
            let context = EditContext { conn: tx.conn(), now, id: id.or(made), is_saved_again, new_id, subject };
            let saving = build(entry.kind, &context, &mut builder)?;
            let Some(saving) = saving else { return Err(builder.first_error()) };
            Ok(((saving.write)(tx)?, saving.sentence, first))
        })?;
        let (id, sentence, first) = stored.value;
        let undo = first.filter(|_| stored.undo.is_empty()).unwrap_or(stored.undo);
        Ok(CommandResult::new(id.to_string(), sentence, undo))
    }
}
