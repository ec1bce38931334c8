//! What was archived or removed, and the way back.

use rusqlite::Connection;
use uuid::Uuid;

use super::archive::{Archivable, found};
use super::buckets::entry_in_words;
use super::devices::{PhoneNames, called, names_of_devices};
use super::evidence::{parse_id, sg_in_words, style};
use super::kiln::{Pot, firing_title};
use super::messages::{archived as say, common};
use super::{CommandResult, EditorKind, Now, Result, Studio, StudioError};
use laydown_store::entity::{self, Entity};
use laydown_store::journal::{DeviceId, Event};
use laydown_store::{Transaction, events_of, history};

/// Something that was archived.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct ArchivedRow {
    /// What it is, to hand back.
    pub kind: EditorKind,
    /// Its id.
    pub id: String,
    /// What it is called.
    pub title: String,
    /// When it was archived, and on which phone.
    pub detail: String,
}

/// Archived things of one kind.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct ArchivedSection {
    /// What they are.
    pub title: String,
    /// The things, those archived last first; never empty.
    pub rows: Vec<ArchivedRow>,
}

/// All that was archived.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct ArchivedView {
    /// The things, kind by kind.
    pub sections: Vec<ArchivedSection>,
    /// What to say where there is none; else empty.
    pub nothing: String,
}

/// The kinds that can be archived, as they are listed.
const KINDS: [EditorKind; 13] = [
    EditorKind::Form,
    EditorKind::Glaze,
    EditorKind::Bucket,
    EditorKind::Body,
    EditorKind::Control,
    EditorKind::Tile,
    EditorKind::Firing,
    EditorKind::Piece,
    EditorKind::Scale,
    EditorKind::Kiln,
    EditorKind::Vessel,
    EditorKind::Check,
    EditorKind::BucketEntry,
];

#[uniffi::export]
impl Studio {
    /// What was archived or removed, on whichever phone.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn archived(&self, now: Now) -> Result<ArchivedView> {
        self.store.read(|conn| {
            let names = names_of_devices(conn)?;
            let mut sections = Vec::new();
            for kind in KINDS {
                let mut gone = Vec::new();
                for (id, title) in gone_of(conn, kind)? {
                    let when = archived_by(conn, id)?;
                    gone.push((when.map_or(0, |when| when.at), row(now, &names, kind, id, title, when)));
                }
                gone.sort_by_key(|(at, _)| std::cmp::Reverse(*at));
                let rows: Vec<ArchivedRow> = gone.into_iter().map(|(_, row)| row).collect();
                if !rows.is_empty() {
                    sections.push(ArchivedSection { title: say::section(kind.code()), rows });
                }
            }
            let nothing = if sections.is_empty() { say::nothing() } else { String::new() };
            Ok(ArchivedView { sections, nothing })
        })
    }

    /// Brings back something that was archived or removed, with what went with it: the buckets of a glaze, the load of a firing.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when it is not there, [`StudioError::Refused`] for a kind that is never archived.
    pub fn unarchive(&self, now: Now, kind: EditorKind, id: &str) -> Result<CommandResult> {
        let entity = parse_id(id, "record")?;
        let stored = self.command(now, |tx| {
            let with = archived_by(tx.conn(), entity)?;
            match kind {
                EditorKind::Form => back::<entity::Form>(tx, entity)?,
                EditorKind::Body => back::<entity::Body>(tx, entity)?,
                EditorKind::Control => back::<entity::Control>(tx, entity)?,
                EditorKind::Tile => back::<entity::Tile>(tx, entity)?,
                EditorKind::Scale => back::<entity::Scale>(tx, entity)?,
                EditorKind::Kiln => back::<entity::Kiln>(tx, entity)?,
                EditorKind::Vessel => back::<entity::Vessel>(tx, entity)?,
                EditorKind::Glaze => {
                    back::<entity::Glaze>(tx, entity)?;
                    for bucket in entity::Bucket::all(tx.conn())? {
                        if bucket.glaze == entity && bucket.gone && archived_by(tx.conn(), bucket.id)? == with {
                            back::<entity::Bucket>(tx, bucket.id)?;
                        }
                    }
                }
                EditorKind::Bucket => {
                    back::<entity::Bucket>(tx, entity)?;
                    // A bucket is of no use without its glaze.
                    let bucket: entity::Bucket = found(tx.conn(), entity)?;
                    back::<entity::Glaze>(tx, bucket.glaze)?;
                }
                EditorKind::Firing => {
                    back::<entity::Firing>(tx, entity)?;
                    placed_back(tx, with, |placed| placed.firing == entity)?;
                }
                EditorKind::Piece => {
                    back::<entity::Piece>(tx, entity)?;
                    placed_back(tx, with, |placed| placed.piece == entity)?;
                }
                EditorKind::Check => back::<entity::Check>(tx, entity)?,
                EditorKind::BucketEntry => back::<entity::BucketEntry>(tx, entity)?,
                EditorKind::Mix
                | EditorKind::Thin
                | EditorKind::Coat
                | EditorKind::WitnessCones
                | EditorKind::Preference
                | EditorKind::SyncLocation => return Err(StudioError::refused("", say::never_archived())),
            }
            name_of(tx.conn(), kind, entity)
        })?;
        Ok(CommandResult::new(id.to_owned(), say::is_back(stored.value), stored.undo))
    }
}

/// The command by which something was archived: which device, and the millisecond of its clock, in which it did nothing else.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct ArchivedBy {
    device: DeviceId,
    at: i64,
}

fn archived_by(conn: &Connection, id: Uuid) -> Result<Option<ArchivedBy>> {
    let events = events_of(conn, id)?;
    let effective = history(&events).effective();
    let archives = |event: &&Event| {
        effective.contains(&event.id()) && event.body.get("gone").is_some_and(|gone| gone.as_bool() == Some(true))
    };
    let last = events.iter().filter(archives).max_by_key(|event| event.order());
    Ok(last.map(|event| ArchivedBy { device: event.device, at: event.clock.millis() }))
}

fn row(
    now: Now,
    names: &PhoneNames,
    kind: EditorKind,
    id: Uuid,
    title: String,
    when: Option<ArchivedBy>,
) -> ArchivedRow {
    let detail =
        when.map(|when| say::archived_when(now.moment(when.at), called(names, when.device))).unwrap_or_default();
    ArchivedRow { kind, id: id.to_string(), title, detail }
}

/// The archived things of one kind with what they are called.
fn gone_of(conn: &Connection, kind: EditorKind) -> Result<Vec<(Uuid, String)>> {
    let ids = match kind {
        EditorKind::Form => gone::<entity::Form>(conn)?,
        EditorKind::Body => gone::<entity::Body>(conn)?,
        EditorKind::Control => gone::<entity::Control>(conn)?,
        EditorKind::Tile => gone::<entity::Tile>(conn)?,
        EditorKind::Scale => gone::<entity::Scale>(conn)?,
        EditorKind::Kiln => gone::<entity::Kiln>(conn)?,
        EditorKind::Vessel => gone::<entity::Vessel>(conn)?,
        EditorKind::Glaze => gone::<entity::Glaze>(conn)?,
        EditorKind::Bucket => gone::<entity::Bucket>(conn)?,
        EditorKind::Firing => gone::<entity::Firing>(conn)?,
        EditorKind::Piece => gone::<entity::Piece>(conn)?,
        EditorKind::Check => gone::<entity::Check>(conn)?,
        EditorKind::BucketEntry => gone::<entity::BucketEntry>(conn)?,
        EditorKind::Mix
        | EditorKind::Thin
        | EditorKind::Coat
        | EditorKind::WitnessCones
        | EditorKind::Preference
        | EditorKind::SyncLocation => Vec::new(),
    };
    ids.into_iter().map(|id| Ok((id, name_of(conn, kind, id)?))).collect()
}

fn gone<E: Archivable>(conn: &Connection) -> Result<Vec<Uuid>> {
    Ok(E::all(conn)?.into_iter().filter(Archivable::gone).map(|thing| thing.id()).collect())
}

fn name_of(conn: &Connection, kind: EditorKind, id: Uuid) -> Result<String> {
    Ok(match kind {
        EditorKind::Form => found::<entity::Form>(conn, id)?.called(),
        EditorKind::Body => found::<entity::Body>(conn, id)?.called(),
        EditorKind::Tile => found::<entity::Tile>(conn, id)?.called(),
        EditorKind::Scale => found::<entity::Scale>(conn, id)?.called(),
        EditorKind::Kiln => found::<entity::Kiln>(conn, id)?.called(),
        EditorKind::Vessel => found::<entity::Vessel>(conn, id)?.called(),
        EditorKind::Glaze => found::<entity::Glaze>(conn, id)?.called(),
        EditorKind::Bucket => {
            let bucket: entity::Bucket = found(conn, id)?;
            say::bucket_of(found::<entity::Glaze>(conn, bucket.glaze)?.name, bucket.name)
        }
        EditorKind::Firing => firing_title(conn, &found(conn, id)?)?,
        EditorKind::Piece => Pot::load(conn, id)?.name(conn)?,
        EditorKind::Control => {
            let control: entity::Control = found(conn, id)?;
            let form: entity::Form = found(conn, control.form)?;
            say::control_of(form.name, found::<entity::Glaze>(conn, control.glaze)?.name)
        }
        EditorKind::Check => {
            let check: entity::Check = found(conn, id)?;
            of_bucket(conn, check.bucket, common::sg(sg_in_words(&style(conn)?, check.specific_gravity_e5)))?
        }
        EditorKind::BucketEntry => {
            let entry: entity::BucketEntry = found(conn, id)?;
            of_bucket(conn, entry.bucket, entry_in_words(&style(conn)?, &entry))?
        }
        EditorKind::Mix
        | EditorKind::Thin
        | EditorKind::Coat
        | EditorKind::WitnessCones
        | EditorKind::Preference
        | EditorKind::SyncLocation => String::new(),
    })
}

/// What was noted of a bucket, with the bucket's name.
fn of_bucket(conn: &Connection, bucket: Uuid, noted: String) -> Result<String> {
    Ok(say::bucket_of(found::<entity::Bucket>(conn, bucket)?.name, noted))
}

fn back<E: Archivable>(tx: &mut Transaction<'_>, id: Uuid) -> Result<()> {
    let thing: E = found(tx.conn(), id)?;
    tx.put(&thing.unarchive())?;
    Ok(())
}

/// The places that were given up in the same command.
fn placed_back(
    tx: &mut Transaction<'_>,
    with: Option<ArchivedBy>,
    is_of: impl Fn(&entity::Placement) -> bool,
) -> Result<()> {
    for placed in entity::Placement::all(tx.conn())?.into_iter().filter(|placed| placed.gone && is_of(placed)) {
        if archived_by(tx.conn(), placed.id)? == with {
            tx.put(&entity::Placement { gone: false, ..placed })?;
        }
    }
    Ok(())
}
