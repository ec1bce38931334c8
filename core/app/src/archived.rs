//! Archiving and removing things, what was archived, and the way back.

use rusqlite::Connection;
use uuid::Uuid;

use super::archive::{Archivable, found, in_use};
use super::buckets::entry_in_words;
use super::devices::{PhoneNames, called, names_of_devices};
use super::evidence::{parse_id, sg_in_words, style};
use super::kiln::{Pot, firing_title};
use super::messages::{archived as say, common};
use super::{CommandResult, EditorKind, Now, Result, Studio, StudioError};
use laydown_store::entity::{self, Entity};
use laydown_store::journal::{DeviceId, Event};
use laydown_store::{Transaction, events_of, history, query};

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
const KINDS: [EditorKind; 15] = [
    EditorKind::Form,
    EditorKind::Glaze,
    EditorKind::Bucket,
    EditorKind::Body,
    EditorKind::BisqueLot,
    EditorKind::Control,
    EditorKind::Tile,
    EditorKind::Firing,
    EditorKind::Piece,
    EditorKind::Scale,
    EditorKind::ScaleTest,
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
                let Some(archive) = Archive::of(kind) else { continue };
                let mut gone = Vec::new();
                for id in (archive.gone)(conn)? {
                    let (title, when) = ((archive.name)(conn, id)?, archived_by(conn, id)?);
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

    /// Takes something out of the lists, with what belongs to it: the buckets of a glaze, the load of a firing. Coats that name
    /// it keep their record.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when it is not there, [`StudioError::Refused`] for a kind that is never archived, and for a
    /// piece of which is known how it came out.
    pub fn remove(&self, now: Now, kind: EditorKind, id: &str) -> Result<CommandResult> {
        let entity = parse_id(id, "record")?;
        let archive = Archive::of(kind).ok_or_else(|| StudioError::refused("", say::cannot_be_removed()))?;
        let stored = self.command(now, |tx| (archive.put_away)(tx, entity))?;
        Ok(CommandResult::new(id.to_owned(), stored.value, stored.undo))
    }

    /// Brings back something that was archived or removed, with what went with it.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when it is not there, [`StudioError::Refused`] for a kind that is never archived.
    pub fn unarchive(&self, now: Now, kind: EditorKind, id: &str) -> Result<CommandResult> {
        let entity = parse_id(id, "record")?;
        let archive = Archive::of(kind).ok_or_else(|| StudioError::refused("", say::never_archived()))?;
        let stored = self.command(now, |tx| {
            let with = archived_by(tx.conn(), entity)?;
            (archive.bring_back)(tx, entity, with)?;
            (archive.name)(tx.conn(), entity)
        })?;
        Ok(CommandResult::new(id.to_owned(), say::is_back(stored.value), stored.undo))
    }
}

/// How things of one kind are archived and come back.
struct Archive {
    /// Those that are archived.
    gone: fn(&Connection) -> Result<Vec<Uuid>>,
    /// What one is called among them.
    name: fn(&Connection, Uuid) -> Result<String>,
    /// Archives one; answers with the sentence to say.
    put_away: fn(&mut Transaction<'_>, Uuid) -> Result<String>,
    /// Brings one back with what went in the same command.
    bring_back: fn(&mut Transaction<'_>, Uuid, Option<ArchivedBy>) -> Result<()>,
}

impl Archive {
    /// `None` for a kind that is never archived.
    fn of(kind: EditorKind) -> Option<Archive> {
        Some(match kind {
            EditorKind::Form => Archive::plain::<entity::Form>(),
            EditorKind::Body => Archive::plain::<entity::Body>(),
            EditorKind::BisqueLot => Archive::plain::<entity::BisqueLot>(),
            EditorKind::Tile => Archive::plain::<entity::Tile>(),
            EditorKind::Scale => Archive::plain::<entity::Scale>(),
            EditorKind::ScaleTest => Archive { name: scale_test_name, ..Archive::plain::<entity::ScaleTest>() },
            EditorKind::Kiln => Archive::plain::<entity::Kiln>(),
            EditorKind::Vessel => Archive::plain::<entity::Vessel>(),
            EditorKind::Glaze => {
                Archive { put_away: glaze_away, bring_back: glaze_back, ..Archive::plain::<entity::Glaze>() }
            }
            EditorKind::Bucket => {
                Archive { name: bucket_name, bring_back: bucket_back, ..Archive::plain::<entity::Bucket>() }
            }
            EditorKind::Firing => Archive {
                name: |conn, id| firing_title(conn, &found(conn, id)?),
                put_away: firing_away,
                bring_back: firing_back,
                ..Archive::plain::<entity::Firing>()
            },
            EditorKind::Piece => Archive {
                name: |conn, id| Pot::load(conn, id)?.name(conn),
                put_away: piece_away,
                bring_back: piece_back,
                ..Archive::plain::<entity::Piece>()
            },
            EditorKind::Control => {
                Archive { name: control_name, put_away: control_away, ..Archive::plain::<entity::Control>() }
            }
            EditorKind::Check => {
                Archive { name: check_name, put_away: noted_away::<entity::Check>, ..Archive::plain::<entity::Check>() }
            }
            EditorKind::BucketEntry => Archive {
                name: entry_name,
                put_away: noted_away::<entity::BucketEntry>,
                ..Archive::plain::<entity::BucketEntry>()
            },
            EditorKind::Mix
            | EditorKind::Thin
            | EditorKind::Coat
            | EditorKind::DryWeight
            | EditorKind::TileLadder
            | EditorKind::WitnessCones
            | EditorKind::Preference
            | EditorKind::SyncLocation => return None,
        })
    }

    /// Of things that go and come alone, under their own names.
    fn plain<E: Archivable>() -> Archive {
        Archive {
            gone: |conn| Ok(E::all(conn)?.into_iter().filter(Archivable::gone).map(|thing| thing.id()).collect()),
            name: |conn, id| Ok(found::<E>(conn, id)?.called()),
            put_away: |tx, id| Ok(say::is_archived(away::<E>(tx, id)?)),
            bring_back: |tx, id, _| back::<E>(tx, id),
        }
    }
}

/// Archives one thing; answers with what it is called.
fn away<E: Archivable>(tx: &mut Transaction<'_>, id: Uuid) -> Result<String> {
    let thing: E = found(tx.conn(), id)?;
    let called = thing.called();
    tx.put(&thing.archive())?;
    Ok(called)
}

fn back<E: Archivable>(tx: &mut Transaction<'_>, id: Uuid) -> Result<()> {
    let thing: E = found(tx.conn(), id)?;
    tx.put(&thing.unarchive())?;
    Ok(())
}

fn glaze_away(tx: &mut Transaction<'_>, id: Uuid) -> Result<String> {
    for bucket in in_use::<entity::Bucket>(tx.conn(), None)?.into_iter().filter(|bucket| bucket.glaze == id) {
        away::<entity::Bucket>(tx, bucket.id)?;
    }
    Ok(say::is_archived(away::<entity::Glaze>(tx, id)?))
}

fn glaze_back(tx: &mut Transaction<'_>, id: Uuid, with: Option<ArchivedBy>) -> Result<()> {
    back::<entity::Glaze>(tx, id)?;
    for bucket in entity::Bucket::all(tx.conn())? {
        if bucket.glaze == id && bucket.gone && archived_by(tx.conn(), bucket.id)? == with {
            back::<entity::Bucket>(tx, bucket.id)?;
        }
    }
    Ok(())
}

fn bucket_name(conn: &Connection, id: Uuid) -> Result<String> {
    let bucket: entity::Bucket = found(conn, id)?;
    Ok(say::bucket_of(found::<entity::Glaze>(conn, bucket.glaze)?.name, bucket.name))
}

/// A bucket is of no use without its glaze.
fn bucket_back(tx: &mut Transaction<'_>, id: Uuid, _: Option<ArchivedBy>) -> Result<()> {
    back::<entity::Bucket>(tx, id)?;
    let bucket: entity::Bucket = found(tx.conn(), id)?;
    back::<entity::Glaze>(tx, bucket.glaze)
}

fn firing_away(tx: &mut Transaction<'_>, id: Uuid) -> Result<String> {
    for placed in query::placements(tx.conn(), id)? {
        tx.put(&entity::Placement { gone: true, ..placed })?;
    }
    away::<entity::Firing>(tx, id)?;
    Ok(say::firing_removed())
}

fn firing_back(tx: &mut Transaction<'_>, id: Uuid, with: Option<ArchivedBy>) -> Result<()> {
    back::<entity::Firing>(tx, id)?;
    placed_back(tx, with, |placed| placed.firing == id)
}

fn piece_away(tx: &mut Transaction<'_>, id: Uuid) -> Result<String> {
    for placed in query::placements_of_piece(tx.conn(), id)? {
        if query::finding(tx.conn(), id, placed.firing)?.is_some() {
            return Err(StudioError::refused("", say::piece_was_fired()));
        }
        tx.put(&entity::Placement { gone: true, ..placed })?;
    }
    away::<entity::Piece>(tx, id)?;
    Ok(say::piece_removed())
}

fn piece_back(tx: &mut Transaction<'_>, id: Uuid, with: Option<ArchivedBy>) -> Result<()> {
    back::<entity::Piece>(tx, id)?;
    placed_back(tx, with, |placed| placed.piece == id)
}

/// Takes a line out of a bucket's notebook.
fn noted_away<E: Archivable>(tx: &mut Transaction<'_>, id: Uuid) -> Result<String> {
    away::<E>(tx, id)?;
    Ok(say::entry_removed())
}

fn check_name(conn: &Connection, id: Uuid) -> Result<String> {
    let check: entity::Check = found(conn, id)?;
    of_bucket(conn, check.bucket, common::sg(sg_in_words(&style(conn)?, check.specific_gravity_e5)))
}

fn entry_name(conn: &Connection, id: Uuid) -> Result<String> {
    let entry: entity::BucketEntry = found(conn, id)?;
    of_bucket(conn, entry.bucket, entry_in_words(&style(conn)?, &entry))
}

/// What was noted of a bucket, with the bucket's name.
fn of_bucket(conn: &Connection, bucket: Uuid, noted: String) -> Result<String> {
    Ok(say::bucket_of(found::<entity::Bucket>(conn, bucket)?.name, noted))
}

fn control_name(conn: &Connection, id: Uuid) -> Result<String> {
    let control: entity::Control = found(conn, id)?;
    let form: entity::Form = found(conn, control.form)?;
    Ok(say::control_of(form.name, found::<entity::Glaze>(conn, control.glaze)?.name))
}

fn scale_test_name(conn: &Connection, id: Uuid) -> Result<String> {
    let test: entity::ScaleTest = found(conn, id)?;
    Ok(found::<entity::Scale>(conn, test.scale)?.name)
}

/// A control piece that was weighed here stays a coat.
fn control_away(tx: &mut Transaction<'_>, id: Uuid) -> Result<String> {
    match entity::Coat::load(tx.conn(), id)? {
        Some(coat) => tx.put(&entity::Coat { control: false, ..coat })?,
        None => tx.put(&found::<entity::Control>(tx.conn(), id)?.archive())?,
    };
    Ok(say::control_archived())
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
