//! A sheet is one thing to fill in: a form, a glaze, a bucket's check. It is described here field by field,
//! so that a shell needs one screen for all of them and decides nothing itself.
//!
//! Each kind has a file with one function that lays out the fields, reads them and, when all are good,
//! says what to keep. The same function serves the view and the command, so the two cannot disagree.

mod body;
mod bucket;
mod check;
mod control;
mod control_coat;
mod draft;
mod drawing;
mod firing;
mod form;
mod glaze;
mod kiln;
mod meeting_place;
mod preference;
mod scale;
mod thin;
mod tile;
mod vessel;

use rusqlite::Connection;
use serde::Serialize;
use uuid::Uuid;

use self::draft::Draft;
pub(super) use self::draft::{LONGEST_NAME, LONGEST_REMARK, coded_item, item};
pub use self::drawing::{Drawing, Grip, Ink, Redrawn, Shape, Spot, Touch};
pub(super) use self::kiln::{LARGEST_SHELF, MOST_SHELVES, SMALLEST_SHELF};
use super::facts::{parse_id, style};
use super::rows::{Keepsake, found, in_use};
use super::{Kept, Note, Now, Result, Studio, StudioError};
use laydown_domain::units::Style;
use laydown_store::entity::{self, Entity};
use laydown_store::{Transaction, query};

/// Which sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, uniffi::Enum)]
pub enum SheetKind {
    /// A form: a shape at a size.
    Form,
    /// A clay body: how it shrinks.
    Body,
    /// A kiln: its shelves.
    Kiln,
    /// A firing.
    Firing,
    /// A glaze; a new one comes with its first bucket.
    Glaze,
    /// A bucket of a glaze; its subject is the glaze.
    Bucket,
    /// A check of a bucket's SG; its subject is the bucket.
    Check,
    /// Water to thin a bucket, or to take off; its subject is the bucket. Reckons only, keeps nothing.
    Thin,
    /// A vessel for checking SG.
    Vessel,
    /// A scale.
    Scale,
    /// A test tile.
    Tile,
    /// A control piece: a coat weighed here, or an amount known to be right.
    Control,
    /// Units, sound and touch on this phone.
    Preference,
    /// Where the phones of the studio meet. Its secrets are the shell's to keep.
    MeetingPlace,
}

/// A field's key and what is entered in it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct Value {
    /// The field's key.
    pub key: String,
    /// What is entered: text as typed, an item's code, or "yes" and "no".
    pub text: String,
}

/// A sheet as it is being filled in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct SheetEntry {
    /// Which sheet.
    pub kind: SheetKind,
    /// The entity being changed; empty for a new one.
    pub id: String,
    /// What the sheet is about where it needs that: the glaze of a bucket, the bucket of a check; else empty.
    pub subject: String,
    /// What has been entered so far; a field not named here shows what is kept, or its usual value.
    pub values: Vec<Value>,
}

/// How a field is filled in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, uniffi::Enum)]
pub enum FieldKind {
    /// Free text.
    Text,
    /// A line that counts letter by letter, such as an address: the keyboard adds no capital and corrects nothing.
    Exact,
    /// A secret: shown as dots, never filled in by the core, and kept by the shell where the platform keeps secrets, under
    /// the field's key, once the sheet is kept. Left empty, the one that is kept there stays.
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
    /// [`SheetField::columns`] over them and lets rows be added and taken away.
    Table,
    /// A photograph: what stands in it is the name of the file. The items are the ways to get one.
    Photo,
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

/// One field of a sheet.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct SheetField {
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

/// A sheet as it is shown.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct SheetView {
    /// What the sheet is called.
    pub title: String,
    /// Its fields, in order.
    pub fields: Vec<SheetField>,
    /// What is drawn of it, to look at and to take hold of; shown below the field [`Drawing::below`].
    pub drawing: Option<Drawing>,
    /// What follows from what is entered: areas, an SG, an amount of water.
    pub results: Vec<Note>,
    /// What the button that keeps it says; empty on a sheet that only reckons.
    pub keep_label: String,
    /// Whether keeping would be accepted.
    pub can_keep: bool,
    /// What the button that removes it says; empty where nothing can be removed.
    pub remove_label: String,
}

/// Writes what a sheet keeps.
type Write = Box<dyn FnOnce(&mut Transaction<'_>) -> Result<Uuid>>;

/// What a filled-in sheet would keep.
struct Keeping {
    /// The sentence said afterwards.
    sentence: String,
    /// Writes it, and answers with the id of what was written.
    write: Write,
}

impl Keeping {
    /// Keeps one entity under `id`, or under a new id.
    fn one<E: Entity>(id: Option<Uuid>, sentence: String, entity: impl FnOnce(Uuid) -> E + 'static) -> Keeping {
        Keeping {
            sentence,
            write: Box::new(move |tx| {
                let entity = entity(id.unwrap_or_else(|| tx.new_id()));
                tx.put(&entity)?;
                Ok(entity.id())
            }),
        }
    }
}

/// What the fields are laid out from.
struct Desk<'a> {
    conn: &'a Connection,
    now: Now,
    id: Option<Uuid>,
    subject: Option<Uuid>,
}

impl Desk<'_> {
    /// The entity that the sheet changes; `None` for a new one.
    fn current<E: Keepsake>(&self) -> Result<Option<E>> {
        self.id.map(|id| found(self.conn, id)).transpose()
    }

    /// The coat weighed here that the sheet of a control piece shows; `None` for an amount that was typed in.
    fn control_coat(&self) -> Result<Option<entity::Coat>> {
        Ok(self.id.map(|id| entity::Coat::load(self.conn, id)).transpose()?.flatten())
    }

    /// What the sheet is about.
    fn subject<E: Keepsake>(&self) -> Result<E> {
        found(self.conn, self.subject.ok_or_else(|| StudioError::missing(E::WHAT))?)
    }
}

/// Lays out the sheet in `draft`; answers with what to keep once every field is good.
fn lay(kind: SheetKind, desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let keeping = match kind {
        SheetKind::Form => form::lay(desk, draft),
        SheetKind::Body => body::lay(desk, draft),
        SheetKind::Kiln => kiln::lay(desk, draft),
        SheetKind::Firing => firing::lay(desk, draft),
        SheetKind::Glaze => glaze::lay(desk, draft),
        SheetKind::Bucket => bucket::lay(desk, draft),
        SheetKind::Check => check::lay(desk, draft),
        SheetKind::Thin => thin::lay(desk, draft),
        SheetKind::Vessel => vessel::lay(desk, draft),
        SheetKind::Scale => scale::lay(desk, draft),
        SheetKind::Tile => tile::lay(desk, draft),
        SheetKind::Control => match desk.control_coat()? {
            Some(coat) => control_coat::lay(desk, draft, coat),
            None => control::lay(desk, draft),
        },
        SheetKind::Preference => preference::lay(desk, draft),
        SheetKind::MeetingPlace => meeting_place::lay(desk, draft),
    };
    Ok(keeping?.filter(|_| !draft.is_refused()))
}

impl SheetEntry {
    fn ids(&self) -> Result<(Option<Uuid>, Option<Uuid>)> {
        let id = |text: &str| if text.is_empty() { Ok(None) } else { parse_id(text, "record").map(Some) };
        Ok((id(&self.id)?, id(&self.subject)?))
    }

    fn view(&self, conn: &Connection, now: Now, style: &Style) -> Result<SheetView> {
        let (id, subject) = self.ids()?;
        let mut draft = Draft::new(style, &self.values);
        let keeping = lay(self.kind, &Desk { conn, now, id, subject }, &mut draft)?;
        Ok(draft.into_view(keeping.is_some(), id.is_some()))
    }
}

#[uniffi::export]
impl Studio {
    /// The sheet as it stands with what is entered in `entry`.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when what it is about is gone. What is wrong with a field is said beside the field.
    pub fn sheet(&self, now: Now, entry: &SheetEntry) -> Result<SheetView> {
        self.store.read(|conn| entry.view(conn, now, &style(conn)?))
    }

    /// Keeps the sheet.
    ///
    /// # Errors
    /// [`StudioError::Refused`] with the first field that cannot be taken; then nothing is kept.
    pub fn keep_sheet(&self, now: Now, entry: &SheetEntry) -> Result<Kept> {
        let (id, subject) = entry.ids()?;
        let stored = self.command(now, |tx| {
            let style = style(tx.conn())?;
            let mut draft = Draft::new(&style, &entry.values);
            let keeping = lay(entry.kind, &Desk { conn: tx.conn(), now, id, subject }, &mut draft)?;
            let Some(keeping) = keeping else { return Err(draft.first_refusal()) };
            Ok(((keeping.write)(tx)?, keeping.sentence))
        })?;
        let (id, sentence) = stored.value;
        Ok(Kept::new(id.to_string(), sentence, stored.undo))
    }

    /// Removes the entity of the sheet `kind` from the lists. Coats that name it keep their record.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when it is not there, [`StudioError::Refused`] for a sheet that removes nothing.
    pub fn remove(&self, now: Now, kind: SheetKind, id: &str) -> Result<Kept> {
        let entity = parse_id(id, "record")?;
        let stored = self.command(now, |tx| {
            let name = match kind {
                SheetKind::Form => put_away::<entity::Form>(tx, entity)?,
                SheetKind::Body => put_away::<entity::Body>(tx, entity)?,
                SheetKind::Kiln => put_away::<entity::Kiln>(tx, entity)?,
                SheetKind::Firing => {
                    for placed in query::placements(tx.conn(), entity)? {
                        tx.put(&entity::Placement { gone: true, ..placed })?;
                    }
                    put_away::<entity::Firing>(tx, entity)?
                }
                SheetKind::Glaze => {
                    for bucket in in_use::<entity::Bucket>(tx.conn(), None)? {
                        if bucket.glaze == entity {
                            put_away::<entity::Bucket>(tx, bucket.id)?;
                        }
                    }
                    put_away::<entity::Glaze>(tx, entity)?
                }
                SheetKind::Bucket => put_away::<entity::Bucket>(tx, entity)?,
                SheetKind::Vessel => put_away::<entity::Vessel>(tx, entity)?,
                SheetKind::Scale => put_away::<entity::Scale>(tx, entity)?,
                SheetKind::Tile => put_away::<entity::Tile>(tx, entity)?,
                SheetKind::Control => match entity::Coat::load(tx.conn(), entity)? {
                    Some(coat) => {
                        tx.put(&entity::Coat { control: false, ..coat })?;
                        "The control piece".to_owned()
                    }
                    None => put_away::<entity::Control>(tx, entity)?,
                },
                SheetKind::Check | SheetKind::Thin | SheetKind::Preference | SheetKind::MeetingPlace => {
                    return Err(StudioError::refused("", "This cannot be removed."));
                }
            };
            Ok(format!("{name} is put away."))
        })?;
        Ok(Kept::new(id.to_owned(), stored.value, stored.undo))
    }
}

/// Puts one entity away; answers with what it is called.
fn put_away<E: Keepsake>(tx: &mut Transaction<'_>, id: Uuid) -> Result<String> {
    let entity: E = found(tx.conn(), id)?;
    let called = entity.called();
    tx.put(&entity.put_away())?;
    Ok(called)
}
