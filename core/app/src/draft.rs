//! Drafts: what is being entered has an id before it is saved, so that saving it twice saves it once.

use rusqlite::Connection;
use sha2::{Digest, Sha256};
use uuid::{Builder, Uuid};

use super::evidence::parse_id;
use super::{Now, Result};
use laydown_store::journal::Kind;
use laydown_store::{Undo, command_of, events_of, history, next_event};

/// What became of a draft.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Draft {
    /// It is saved, under this id.
    Saved(Uuid),
    /// It is to be saved under this id: nothing is yet, or what was is undone.
    Open(Uuid),
}

/// A draft's id for something that is begun `now`; `what` tells apart what may be begun in the same moment. It follows from
/// the moment, this device and the number of its next event, so that asking for it twice gives the same, and is as unlikely as a
/// random one to be that of anything else. The time in it is that of the moment, as in every id here (UUID version 7, RFC 9562).
pub(super) fn hand_out(conn: &Connection, now: Now, what: &str) -> Result<Uuid> {
    let next = next_event(conn)?;
    let seed =
        [next.device.0.as_bytes().as_slice(), &next.seq.to_be_bytes(), &now.unix_ms.to_be_bytes(), what.as_bytes()];
    Ok(dated(u64::try_from(now.unix_ms).unwrap_or_default(), &seed))
}

/// The draft that an entry names; `None` where it names none.
pub(super) fn named(text: &str) -> Result<Option<Uuid>> {
    if text.is_empty() { Ok(None) } else { parse_id(text, "record").map(Some) }
}

impl Draft {
    /// What became of the draft `id`. Where it was undone, or something else was saved with it (`is_same` says of what was),
    /// the next id in its line counts, which follows from it.
    pub(super) fn find(conn: &Connection, id: Uuid, is_same: impl Fn(Uuid) -> Result<bool>) -> Result<Draft> {
        let line = Line::of(conn, id)?;
        for (id, stands) in line.used {
            if stands && is_same(id)? {
                return Ok(Draft::Saved(id));
            }
        }
        Ok(Draft::Open(line.free))
    }
}

/// A draft and the ids that follow from it, each used once the one before it was.
struct Line {
    /// What was saved under, and whether that stands or is undone.
    used: Vec<(Uuid, bool)>,
    /// The first that nothing was saved under.
    free: Uuid,
}

impl Line {
    fn of(conn: &Connection, mut id: Uuid) -> Result<Line> {
        let mut used = Vec::new();
        loop {
            let events = events_of(conn, id)?;
            if events.is_empty() {
                return Ok(Line { used, free: id });
            }
            let effective = history(&events).effective();
            used.push((id, events.iter().any(|event| event.kind != Kind::RETRACT && effective.contains(&event.id()))));
            let (high, _) = id.as_u64_pair();
            id = dated(high >> 16, &[id.as_bytes()]);
        }
    }
}

/// Whether something that was saved with the draft `id` stands.
pub(super) fn is_saved(conn: &Connection, id: Uuid) -> Result<bool> {
    Ok(Line::of(conn, id)?.used.iter().any(|(_, stands)| *stands))
}

/// What was saved with the draft `id` last and is undone; `None` where that stands, or nothing was.
pub(super) fn undone(conn: &Connection, id: Uuid) -> Result<Option<Uuid>> {
    Ok(Line::of(conn, id)?.used.last().filter(|(_, stands)| !stands).map(|(id, _)| *id))
}

/// What undoes the command that made the thing `id`; `None` where it was made on another phone.
pub(super) fn made_by(conn: &Connection, id: Uuid) -> Result<Option<Undo>> {
    let own = next_event(conn)?.device;
    let first = events_of(conn, id)?.into_iter().filter(|event| event.kind != Kind::RETRACT).map(|event| event.id());
    let first = first.filter(|event| event.device == own).min_by_key(|event| event.seq);
    Ok(first.map(|event| command_of(conn, event)).transpose()?)
}

/// The piece that the coat `id` is put onto when it was saved on another by mistake. It follows from the coat, so that saying so
/// twice makes one piece.
pub(super) fn piece_split_off(id: Uuid) -> Uuid {
    let (high, _) = id.as_u64_pair();
    dated(high >> 16, &[id.as_bytes(), b"piece"])
}

/// An id of the time `ms` (unix) that follows from `seed`.
fn dated(ms: u64, seed: &[&[u8]]) -> Uuid {
    let mut hash = Sha256::new();
    seed.iter().for_each(|part| hash.update(part));
    let mut bytes = [0; 10];
    bytes.copy_from_slice(&hash.finalize()[..10]);
    Builder::from_unix_timestamp_millis(ms, &bytes).into_uuid()
}
