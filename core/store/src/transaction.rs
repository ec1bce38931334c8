//! One command's worth of writing: events appended, what they touch refolded, all or nothing.

use std::borrow::Borrow;
use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet};

use rusqlite::{Connection, OptionalExtension, Row, Rows, params};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::domain::Domain;
use super::entity::{Body as Clay, Coat, Control, Entity, Finding, Firing, Form, Glaze, Scale, TABLES, Table, Tile};
use super::error::StoreError;
use super::ingest;
use super::packed::{self, StringDictionary, known_number};
use super::query::has_finding;
use crate::journal::{Body, Clock, DeviceId, Event, EventId, History, Ids, Kind, SEEN, fold};

/// Bits of an event's place that hold its sequence number; the device's number lies above.
pub(super) const SEQ_BITS: u32 = 40;

/// A query for events, in the columns that [`event_from_row`] reads.
macro_rules! select_events {
    ($which:literal) => {
        concat!(
            "SELECT d.id, e.place, e.clock, e.entity, e.kind, e.body \
             FROM event e JOIN device d ON d.number = e.place >> 40 ",
            $which
        )
    };
}

/// What a command changed, so that a screen can refresh just that.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Changes {
    /// The entities touched, each once, sorted.
    pub entities: Vec<(Kind, Uuid)>,
    /// The events added, in order.
    pub events: Vec<EventId>,
}

/// What takes a command back: the run of events it made on this device. Can be kept as JSON.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Undo {
    device: DeviceId,
    first: i64,
    last: i64,
}

impl Undo {
    /// The events of `device` from `first` to `last`.
    pub fn of(device: DeviceId, first: i64, last: i64) -> Undo {
        Undo { device, first, last }
    }

    /// Whether the command changed nothing, so that there is nothing to undo.
    pub fn is_empty(self) -> bool {
        self.first > self.last
    }

    /// The one event of the command; `None` where it made another number of them.
    pub fn only_event(self) -> Option<EventId> {
        (self.first == self.last).then_some(EventId { device: self.device, seq: self.first })
    }
}

/// A command being written. Made by [`Store::transact`](super::Store::transact), the only way to write.
pub struct Transaction<'a> {
    pub(super) conn: &'a Connection,
    ids: &'a mut dyn Ids,
    pub(super) strings: &'a mut StringDictionary,
    pub(super) now_ms: i64,
    pub(super) device: Device,
    pub(super) first_seq: i64,
    pub(super) next_seq: i64,
    pub(super) clock: Clock,
    touched: BTreeSet<(Kind, Uuid)>,
    evidence_changed: bool,
    pub(super) events: Vec<EventId>,
}

#[derive(Debug, Clone, Copy)]
pub(super) struct Device {
    pub(super) number: i64,
    pub(super) id: DeviceId,
}

impl<'a> Transaction<'a> {
    /// Reads where the journal stands. The write lock must be held already, so that no other process can take the same
    /// sequence numbers.
    pub(super) fn begin(
        conn: &'a Connection,
        ids: &'a mut dyn Ids,
        strings: &'a mut StringDictionary,
        now_ms: i64,
    ) -> Result<Self, StoreError> {
        let device = own_device(conn)?
            .ok_or_else(|| StoreError::Damaged { details: "the file does not say which device it is on".to_owned() })?;
        let next_seq = last_seq(conn, device.number)? + 1;
        let clock = last_clock(conn, now_ms)?;
        Ok(Transaction {
            conn,
            ids,
            strings,
            now_ms,
            device,
            first_seq: next_seq,
            next_seq,
            clock,
            touched: BTreeSet::new(),
            evidence_changed: false,
            events: Vec::new(),
        })
    }

    /// What was changed and how to take it back.
    pub(super) fn finish(self) -> (Changes, Undo) {
        let undo = Undo { device: self.device.id, first: self.first_seq, last: self.next_seq - 1 };
        (Changes { entities: self.touched.into_iter().collect(), events: self.events }, undo)
    }

    /// For reading; sees what this command has written so far.
    pub fn conn(&self) -> &Connection {
        self.conn
    }

    /// A name for something new.
    pub fn new_id(&mut self) -> Uuid {
        self.ids.next(self.now_ms)
    }

    /// Saves `entity` as given. The event says only what differs from what is known, so that two phones that change
    /// different fields both get their way; where nothing differs there is no event and `None` comes back.
    pub fn put<E: Entity>(&mut self, entity: &E) -> Result<Option<EventId>, StoreError> {
        let id = entity.id();
        let mut events = of_entity(self.conn, self.strings, id)?;
        of_one_kind(&E::KIND, &events)?;
        let state = fold(&events, &E::KIND, &Domain);
        let body = entity.difference(state.as_ref())?;
        if state.is_some() && body.is_empty() {
            return Ok(None);
        }
        let event = self.write(E::KIND, id, body, &events)?;
        let event_id = event.id();
        events.push(event);
        self.refolded(id, &events)?;
        Ok(Some(event_id))
    }

    /// Appends an event that sets the fields in `body` and leaves the others as they are.
    pub fn append(&mut self, kind: Kind, entity: Uuid, body: Body) -> Result<EventId, StoreError> {
        let mut events = of_entity(self.conn, self.strings, entity)?;
        of_one_kind(&kind, &events)?;
        let event = self.write(kind, entity, body, &events)?;
        let id = event.id();
        events.push(event);
        self.refolded(entity, &events)?;
        Ok(id)
    }

    /// Undoes one event of `entity`. Taking back a retraction does its target again.
    ///
    /// [`StoreError::BadEvent`] where `entity` has no such event.
    pub fn retract(&mut self, entity: Uuid, event: EventId) -> Result<EventId, StoreError> {
        let mut events = of_entity(self.conn, self.strings, entity)?;
        if !events.iter().any(|known| known.id() == event) {
            return Err(StoreError::BadEvent {
                details: format!("no event {} of {} to take back", event.seq, event.device.0),
            });
        }
        let retraction = self.write(Kind::RETRACT, entity, Event::retraction(event), &events)?;
        let id = retraction.id();
        events.push(retraction);
        self.refolded(entity, &events)?;
        Ok(id)
    }

    /// Undoes all of `entity`'s events that still stand: it is then as if it had never been.
    pub fn retract_all(&mut self, entity: Uuid) -> Result<(), StoreError> {
        let mut events = of_entity(self.conn, self.strings, entity)?;
        let effective = History::of(&events, &Domain).effective();
        let targets: Vec<EventId> = events
            .iter()
            .filter(|event| event.kind != Kind::RETRACT && effective.contains(&event.id()))
            .map(Event::id)
            .collect();
        for target in targets {
            let retraction = self.write(Kind::RETRACT, entity, Event::retraction(target), &events)?;
            events.push(retraction);
        }
        self.refolded(entity, &events)
    }

    /// Undoes the events of an earlier command that still stand. To do them again, undo this.
    ///
    /// [`StoreError::BadEvent`] where `undo` comes from another device or names events that are not here.
    pub fn undo(&mut self, undo: Undo) -> Result<(), StoreError> {
        for (entity, targets) in self.made_by(undo)? {
            let mut events = of_entity(self.conn, self.strings, entity)?;
            let effective = History::of(&events, &Domain).effective();
            for target in targets.into_iter().filter(|target| effective.contains(target)) {
                let retraction = self.write(Kind::RETRACT, entity, Event::retraction(target), &events)?;
                events.push(retraction);
            }
            self.refolded(entity, &events)?;
        }
        Ok(())
    }

    /// Does a command again that was undone, in whatever way: undoes what took it back.
    ///
    /// # Errors
    /// As [`Transaction::undo`].
    pub fn redo(&mut self, undo: Undo) -> Result<(), StoreError> {
        for (entity, targets) in self.made_by(undo)? {
            let mut events = of_entity(self.conn, self.strings, entity)?;
            let effective = History::of(&events, &Domain).effective();
            let takes_back = |event: &&Event| event.retracted().is_some_and(|target| targets.contains(&target));
            let retractions = events.iter().filter(|event| effective.contains(&event.id())).filter(takes_back);
            for retraction in retractions.map(Event::id).collect::<Vec<_>>() {
                let again = self.write(Kind::RETRACT, entity, Event::retraction(retraction), &events)?;
                events.push(again);
            }
            self.refolded(entity, &events)?;
        }
        Ok(())
    }

    /// The events of an earlier command, by what they are about. Without what they say: an import makes a hundred thousand.
    fn made_by(&self, undo: Undo) -> Result<BTreeMap<Uuid, Vec<EventId>>, StoreError> {
        let mut made: BTreeMap<Uuid, Vec<EventId>> = BTreeMap::new();
        if undo.is_empty() {
            return Ok(made);
        }
        if undo.device != self.device.id || undo.first < 1 || undo.last >= self.next_seq {
            return Err(StoreError::BadEvent { details: "no such command to take back".to_owned() });
        }
        let Device { number, id: device } = self.device;
        let mut select = self.conn.prepare_cached("SELECT entity, place FROM event WHERE place BETWEEN ?1 AND ?2")?;
        let mut rows = select.query([place(number, undo.first), place(number, undo.last)])?;
        while let Some(row) = rows.next()? {
            made.entry(row.get(0)?).or_default().push(EventId { device, seq: seq_at(row.get(1)?) });
        }
        Ok(made)
    }

    /// Remembers `value` under `name` on this phone alone, or forgets it. Not journalled: it cannot be undone.
    pub fn choose(&mut self, name: &str, value: Option<&str>) -> Result<(), StoreError> {
        match value {
            Some(value) => self
                .conn
                .prepare_cached(
                    "INSERT INTO chosen (name, value) VALUES (?1, ?2) \
                     ON CONFLICT DO UPDATE SET value = excluded.value WHERE value <> excluded.value",
                )?
                .execute([name, value])?,
            None => self.conn.prepare_cached("DELETE FROM chosen WHERE name = ?1")?.execute([name])?,
        };
        Ok(())
    }

    /// Appends an event of this device; `known` are the events of `entity` so far.
    fn write(&mut self, kind: Kind, entity: Uuid, body: Body, known: &[Event]) -> Result<Event, StoreError> {
        let is_first = self.next_seq == self.first_seq;
        self.clock = if is_first { self.clock.begin(self.now_ms) } else { self.clock.tick(self.now_ms) };
        let mut event = Event { device: self.device.id, seq: self.next_seq, clock: self.clock, entity, kind, body };
        // What the clocks do not say is said: which edits whoever retracts has seen, and that this comes after all that is here.
        if event.kind == Kind::RETRACT || known.iter().any(|known| known.order() > event.order()) {
            let of_others = known.iter().map(Event::id).filter(|known| known.device != event.device);
            event.body.insert(SEEN.to_owned(), Event::as_seen(of_others));
        }
        if let Some(why) = ingest::too_large(&event) {
            return Err(StoreError::BadEvent { details: format!("{why:?}") });
        }
        if event.seq >= 1 << SEQ_BITS {
            return Err(StoreError::Fault { details: "this device has made all the events it can".to_owned() });
        }
        if !insert(self.conn, self.strings, self.device.number, &event)? {
            return Err(StoreError::Damaged { details: format!("event {} was there already", event.seq) });
        }
        self.next_seq += 1;
        self.events.push(event.id());
        Ok(event)
    }

    pub(super) fn refolded<E: Borrow<Event>>(&mut self, entity: Uuid, events: &[E]) -> Result<(), StoreError> {
        refold(self.conn, self.strings, entity, events)?;
        if !self.evidence_changed && teaches(self.conn, events)? {
            self.evidence_changed = true;
            let next = evidence_stamp(self.conn)?.wrapping_add(1);
            self.choose(EVIDENCE, Some(&next.to_string()))?;
        }
        for event in events.iter().map(Borrow::borrow).filter(|event| event.kind != Kind::RETRACT) {
            self.touched.insert((event.kind.clone(), entity));
        }
        Ok(())
    }
}

/// Under what name the number of changes of the evidence is remembered.
const EVIDENCE: &str = "evidence";

/// A number that changes whenever something did that a target can rest on. What was calculated at one number holds while it
/// stays; this phone's own.
pub fn evidence_stamp(conn: &Connection) -> Result<i64, StoreError> {
    Ok(chosen(conn, EVIDENCE)?.and_then(|text| text.parse().ok()).unwrap_or_default())
}

/// Whether what these events of one thing make can change a target of another day. A coat that is new and on a piece that was
/// not fired yet cannot: glazing goes on without anything being calculated again.
fn teaches<E: Borrow<Event>>(conn: &Connection, events: &[E]) -> Result<bool, StoreError> {
    const TEACHING: [Kind; 8] =
        [Glaze::KIND, Form::KIND, Clay::KIND, Scale::KIND, Firing::KIND, Finding::KIND, Control::KIND, Tile::KIND];
    let events = || events.iter().map(Borrow::borrow);
    if events().any(|event| TEACHING.contains(&event.kind)) {
        return Ok(true);
    }
    let mut coats = events().filter(|event| event.kind == Coat::KIND);
    let Some(coat) = coats.next() else { return Ok(false) };
    let is_marked = coat.body.get("control").is_some_and(|control| control.as_bool() == Some(true));
    if is_marked || events().count() > 1 {
        return Ok(true);
    }
    let piece = coat.body.get("piece").and_then(|piece| piece.as_str()?.parse().ok());
    piece.map_or(Ok(false), |piece| has_finding(conn, piece))
}

/// Makes every fold again from the journal alone.
pub(super) fn rebuild(conn: &Connection) -> Result<(), StoreError> {
    for table in TABLES {
        conn.execute(&format!("DELETE FROM \"{}\"", table.kind.name()), [])?;
    }
    let mut select = conn.prepare(select_events!("ORDER BY e.entity"))?;
    let mut rows = select.query([])?;
    let mut events: Vec<Event> = Vec::new();
    let mut strings = StringDictionary::default();
    while let Some(row) = rows.next()? {
        let event = event_from_row(conn, &mut strings, row)?;
        if let Some(entity) = events.first().map(|first| first.entity).filter(|entity| *entity != event.entity) {
            refold(conn, &mut strings, entity, &events)?;
            events.clear();
        }
        events.push(event);
    }
    if let Some(entity) = events.first().map(|first| first.entity) {
        refold(conn, &mut strings, entity, &events)?;
    }
    Ok(())
}

/// The places of the events that are there and cannot be read.
pub(super) fn unreadable(conn: &Connection) -> Result<Vec<i64>, StoreError> {
    let mut select = conn.prepare(select_events!("ORDER BY e.place"))?;
    let mut rows = select.query([])?;
    let mut strings = StringDictionary::default();
    let mut places = Vec::new();
    while let Some(row) = rows.next()? {
        match event_from_row(conn, &mut strings, row) {
            Ok(_) => {}
            Err(StoreError::Damaged { .. }) => places.push(row.get(1)?),
            Err(error) => return Err(error),
        }
    }
    Ok(places)
}

/// All events of one entity, in no particular order.
pub fn events_of(conn: &Connection, entity: Uuid) -> Result<Vec<Event>, StoreError> {
    of_entity(conn, &mut StringDictionary::default(), entity)
}

pub(super) fn count_of_entity(conn: &Connection, entity: Uuid) -> Result<i64, StoreError> {
    let mut select = conn.prepare_cached("SELECT count(*) FROM event WHERE entity = ?1")?;
    Ok(select.query_row([entity], |row| row.get(0))?)
}

pub(super) fn of_entity(
    conn: &Connection,
    strings: &mut StringDictionary,
    entity: Uuid,
) -> Result<Vec<Event>, StoreError> {
    let mut select = conn.prepare_cached(select_events!("WHERE e.entity = ?1"))?;
    collect(conn, strings, select.query([entity])?)
}

/// All events of one kind, in no particular order: every event is looked at for it.
pub(super) fn events_of_kind(conn: &Connection, kind: &Kind) -> Result<Vec<Event>, StoreError> {
    let Some(number) = known_number(conn, kind.name())? else { return Ok(Vec::new()) };
    let mut select = conn.prepare(select_events!("WHERE e.kind = ?1"))?;
    collect(conn, &mut StringDictionary::default(), select.query([number])?)
}

/// The events of `device` after its `seq`, in the order it made them.
pub fn events_after(conn: &Connection, device: DeviceId, seq: i64) -> Result<Vec<Event>, StoreError> {
    events_in(conn, device, seq.saturating_add(1), i64::MAX)
}

/// The events of `device` from its `first` to its `last`, both included, in the order it made them.
pub fn events_in(conn: &Connection, device: DeviceId, first: i64, last: i64) -> Result<Vec<Event>, StoreError> {
    match number_of(conn, device)? {
        Some(number) => {
            between(conn, &mut StringDictionary::default(), number, first.max(1), last.min((1 << SEQ_BITS) - 1))
        }
        None => Ok(Vec::new()),
    }
}

pub(super) fn number_of(conn: &Connection, device: DeviceId) -> Result<Option<i64>, StoreError> {
    let mut select = conn.prepare_cached("SELECT number FROM device WHERE id = ?1")?;
    Ok(select.query_row([device.0], |row| row.get(0)).optional()?)
}

/// Every device that has made an event here, with the sequence number of its last.
pub fn devices(conn: &Connection) -> Result<Vec<(DeviceId, i64)>, StoreError> {
    let mut select = conn.prepare_cached("SELECT number, id FROM device ORDER BY id")?;
    let devices = select.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?.collect::<Result<Vec<_>, _>>()?;
    devices.into_iter().map(|(number, id)| Ok((DeviceId(id), last_seq(conn, number)?))).collect()
}

/// Every device, and the sequence number up to which its events are here from the first on. After a recovery, or what was taken
/// in by halves, later ones may be here too.
pub fn without_gaps(conn: &Connection) -> Result<Vec<(DeviceId, i64)>, StoreError> {
    devices(conn)?.into_iter().map(|(device, last)| Ok((device, last_without_gap(conn, device, last)?))).collect()
}

/// As many events as there are numbers: then none of them is missing. Else they are walked through, those that are here.
fn last_without_gap(conn: &Connection, device: DeviceId, last: i64) -> Result<i64, StoreError> {
    let Some(number) = number_of(conn, device)? else { return Ok(0) };
    let mut count = conn.prepare_cached("SELECT count(*) FROM event WHERE place BETWEEN ?1 AND ?2")?;
    let here: i64 = count.query_row([place(number, 1), place(number, last)], |row| row.get(0))?;
    if here == last {
        return Ok(last);
    }
    let mut select = conn.prepare_cached("SELECT place FROM event WHERE place BETWEEN ?1 AND ?2 ORDER BY place")?;
    let mut rows = select.query([place(number, 1), place(number, last)])?;
    let mut whole = 0;
    while let Some(row) = rows.next()? {
        if seq_at(row.get(0)?) != whole + 1 {
            break;
        }
        whole += 1;
    }
    Ok(whole)
}

/// At most `most` events of `device` after its `seq`, in the order it made them. To walk through a journal: from the last
/// event to the next that is there, whatever numbers lie between.
pub(super) fn next_events(conn: &Connection, device: DeviceId, seq: i64, most: i64) -> Result<Vec<Event>, StoreError> {
    let Some(number) = number_of(conn, device)? else { return Ok(Vec::new()) };
    let mut select =
        conn.prepare_cached(select_events!("WHERE e.place BETWEEN ?1 AND ?2 ORDER BY e.place LIMIT ?3"))?;
    let rows = select.query([place(number, seq + 1), place(number, (1 << SEQ_BITS) - 1), most])?;
    collect(conn, &mut StringDictionary::default(), rows)
}

/// What one command did, as the journal has it.
#[derive(Debug, Clone, PartialEq)]
pub struct Command {
    /// Its events from the first on, at most as many as were asked for.
    pub events: Vec<Event>,
    /// How many things they all write about.
    pub things: u32,
    /// What takes it back, on the phone that made it.
    pub undo: Undo,
}

/// The newest commands of every device at `now_ms` (unix ms), at most `limit` of each, the newest first and those dated far ahead
/// last; of a command at most `most` events are read.
pub fn latest_commands(conn: &Connection, now_ms: i64, limit: usize, most: i64) -> Result<Vec<Command>, StoreError> {
    let mut commands = Vec::new();
    for (device, last) in devices(conn)? {
        let Some(number) = number_of(conn, device)? else { continue };
        let mut last = Some(last).filter(|last| *last > 0);
        for _ in 0..limit {
            let Some(end) = last else { break };
            let before = last_before_command(conn, number, end)?;
            let first = before.unwrap_or(0) + 1;
            let mut events = next_events(conn, device, first - 1, most)?;
            events.retain(|event| event.seq <= end);
            let things = things_between(conn, number, first, end)?;
            commands.push(Command { events, things, undo: Undo::of(device, first, end) });
            last = before;
        }
    }
    commands.sort_by_key(|command| {
        let first = command.events.first();
        (first.is_some_and(|first| first.clock.is_ahead(now_ms)), Reverse(first.map(Event::order)))
    });
    Ok(commands)
}

/// The last event before the command that ended with the event `end`. They are walked through: a long command is rare.
fn last_before_command(conn: &Connection, number: i64, end: i64) -> Result<Option<i64>, StoreError> {
    let mut select =
        conn.prepare_cached("SELECT place, clock FROM event WHERE place BETWEEN ?1 AND ?2 ORDER BY place DESC")?;
    let mut rows = select.query([place(number, 1), place(number, end)])?;
    let mut later: Option<Clock> = None;
    while let Some(row) = rows.next()? {
        let here = clock(row.get(1)?)?;
        if later.is_some_and(|later| !later.goes_on_from(here)) {
            return Ok(Some(seq_at(row.get(0)?)));
        }
        later = Some(here);
    }
    Ok(None)
}

/// The last event of the command that made the event `first`: that one, or a later one that goes on with it.
fn last_of_command(conn: &Connection, number: i64, first: i64) -> Result<i64, StoreError> {
    let mut select =
        conn.prepare_cached("SELECT place, clock FROM event WHERE place BETWEEN ?1 AND ?2 ORDER BY place")?;
    let mut rows = select.query([place(number, first), place(number, (1 << SEQ_BITS) - 1)])?;
    let mut last = first;
    let mut before: Option<Clock> = None;
    while let Some(row) = rows.next()? {
        let here = clock(row.get(1)?)?;
        if before.is_some_and(|before| !here.goes_on_from(before)) {
            break;
        }
        last = seq_at(row.get(0)?);
        before = Some(here);
    }
    Ok(last)
}

/// What undoes the command that made `event`, on the phone that made it.
pub fn command_of(conn: &Connection, event: EventId) -> Result<Undo, StoreError> {
    let EventId { device, seq } = event;
    let Some(number) = number_of(conn, device)? else { return Ok(Undo::of(device, seq, seq)) };
    let before = last_before_command(conn, number, seq)?;
    Ok(Undo::of(device, before.unwrap_or(0) + 1, last_of_command(conn, number, seq)?))
}

/// How many things were written about, not counting what was only undone.
fn things_between(conn: &Connection, number: i64, first: i64, last: i64) -> Result<u32, StoreError> {
    let mut select = conn.prepare_cached(
        "SELECT count(DISTINCT entity) FROM event WHERE place BETWEEN ?1 AND ?2 \
         AND kind IS NOT (SELECT number FROM word WHERE text = ?3)",
    )?;
    let retract = Kind::RETRACT;
    Ok(select.query_row(params![place(number, first), place(number, last), retract.name()], |row| row.get(0))?)
}

/// Every device, how many events it has made, and the moment of its last; `None` where it has made none.
pub fn last_clocks(conn: &Connection) -> Result<Vec<(DeviceId, i64, Option<Clock>)>, StoreError> {
    let mut last = Vec::new();
    for (device, seq) in devices(conn)? {
        last.push((device, seq, events_in(conn, device, seq, seq)?.first().map(|event| event.clock)));
    }
    Ok(last)
}

/// What was last chosen under `name` on this phone.
pub fn chosen(conn: &Connection, name: &str) -> Result<Option<String>, StoreError> {
    let mut select = conn.prepare_cached("SELECT value FROM chosen WHERE name = ?1")?;
    Ok(select.query_row([name], |row| row.get(0)).optional()?)
}

/// This device, as the file names it.
pub fn this_device(conn: &Connection) -> Result<DeviceId, StoreError> {
    own_device(conn)?
        .map(|device| device.id)
        .ok_or_else(|| StoreError::Damaged { details: "the file does not say which device it is on".to_owned() })
}

/// What this device's next event will be called, unless another process makes one first.
pub fn next_event(conn: &Connection) -> Result<EventId, StoreError> {
    let device = this_device(conn)?;
    let last = number_of(conn, device)?.map_or(Ok(0), |number| last_seq(conn, number))?;
    Ok(EventId { device, seq: last + 1 })
}

/// This device, or `None` in a file so new that it has no name yet.
pub(super) fn own_device(conn: &Connection) -> Result<Option<Device>, StoreError> {
    let mut select = conn.prepare_cached("SELECT number, id FROM device WHERE own = 1")?;
    Ok(select.query_row([], |row| Ok(Device { number: row.get(0)?, id: DeviceId(row.get(1)?) })).optional()?)
}

/// Names this device in a new file, unless another process just did; gives its name.
pub(super) fn name_own_device(conn: &Connection, id: DeviceId) -> Result<DeviceId, StoreError> {
    if let Some(named) = own_device(conn)? {
        return Ok(named.id);
    }
    conn.execute("INSERT INTO device (id, own) VALUES (?1, 1)", [id.0])?;
    Ok(id)
}

/// Gives this device another name from now on; what was made under the old one stays its.
pub(super) fn rename_own_device(conn: &Connection, id: DeviceId) -> Result<(), StoreError> {
    let Some(own) = own_device(conn)? else {
        return Err(StoreError::Damaged { details: "the file does not say which device it is on".to_owned() });
    };
    if last_seq(conn, own.number)? == 0 {
        // Nobody ever heard of the old one.
        conn.execute("UPDATE device SET id = ?1 WHERE own = 1", [id.0])?;
    } else {
        conn.execute("UPDATE device SET own = 0 WHERE own = 1", [])?;
        conn.execute("INSERT INTO device (id, own) VALUES (?1, 1)", [id.0])?;
    }
    Ok(())
}

/// The short number of a device, given to it here if it is new.
pub(super) fn device_number(conn: &Connection, id: DeviceId) -> Result<i64, StoreError> {
    let mut select = conn.prepare_cached("SELECT number FROM device WHERE id = ?1")?;
    match select.query_row([id.0], |row| row.get(0)).optional()? {
        Some(number) => Ok(number),
        None => {
            conn.prepare_cached("INSERT INTO device (id) VALUES (?1)")?.execute([id.0])?;
            Ok(conn.last_insert_rowid())
        }
    }
}

/// The place of the event `seq` of the device `number`.
pub(super) fn place(number: i64, seq: i64) -> i64 {
    (number << SEQ_BITS) + seq
}

pub(super) fn seq_at(place: i64) -> i64 {
    place & ((1 << SEQ_BITS) - 1)
}

pub(super) fn last_seq(conn: &Connection, number: i64) -> Result<i64, StoreError> {
    let mut select = conn.prepare_cached("SELECT max(place) FROM event WHERE place >= ?1 AND place < ?2")?;
    let last: Option<i64> = select.query_row([place(number, 0), place(number + 1, 0)], |row| row.get(0))?;
    Ok(last.map_or(0, seq_at))
}

/// The latest moment of the last event of each device that is not ahead of `now_ms` (unix ms): a wrong clock is not followed.
fn last_clock(conn: &Connection, now_ms: i64) -> Result<Clock, StoreError> {
    let mut select = conn.prepare_cached(
        "SELECT (SELECT clock FROM event WHERE place >= number << 40 AND place < (number + 1) << 40 \
         ORDER BY place DESC LIMIT 1) AS last FROM device WHERE last IS NOT NULL",
    )?;
    let mut rows = select.query([])?;
    let mut latest = Clock::ZERO;
    while let Some(row) = rows.next()? {
        latest = latest.observe(clock(row.get(0)?)?, now_ms);
    }
    Ok(latest)
}

fn clock(packed: i64) -> Result<Clock, StoreError> {
    Clock::from_packed(packed)
        .ok_or_else(|| StoreError::Damaged { details: "an event has an impossible clock".to_owned() })
}

/// Adds an event; says whether its place was free.
pub(super) fn insert(
    conn: &Connection,
    strings: &mut StringDictionary,
    number: i64,
    event: &Event,
) -> Result<bool, StoreError> {
    let kind = strings.number(conn, event.kind.name())?;
    let body = packed::pack(conn, strings, event.entity, &event.body)?;
    let mut insert = conn.prepare_cached(
        "INSERT INTO event (place, entity, clock, kind, body) VALUES (?1, ?2, ?3, ?4, ?5) ON CONFLICT DO NOTHING",
    )?;
    let row = params![place(number, event.seq), event.entity, event.clock.packed(), kind, body];
    Ok(insert.execute(row)? == 1)
}

pub(super) fn between(
    conn: &Connection,
    strings: &mut StringDictionary,
    number: i64,
    first: i64,
    last: i64,
) -> Result<Vec<Event>, StoreError> {
    let mut select = conn.prepare_cached(select_events!("WHERE e.place BETWEEN ?1 AND ?2 ORDER BY e.place"))?;
    collect(conn, strings, select.query([place(number, first), place(number, last)])?)
}

fn collect(conn: &Connection, strings: &mut StringDictionary, mut rows: Rows<'_>) -> Result<Vec<Event>, StoreError> {
    let mut events = Vec::new();
    while let Some(row) = rows.next()? {
        events.push(event_from_row(conn, strings, row)?);
    }
    Ok(events)
}

fn event_from_row(conn: &Connection, strings: &mut StringDictionary, row: &Row<'_>) -> Result<Event, StoreError> {
    let entity = row.get(3)?;
    let packed = row.get_ref(5)?.as_blob().map_err(rusqlite::Error::from)?;
    Ok(Event {
        device: DeviceId(row.get(0)?),
        seq: seq_at(row.get(1)?),
        clock: clock(row.get(2)?)?,
        entity,
        kind: Kind::named(strings.text(conn, row.get(4)?)?.to_owned()),
        body: packed::unpack(conn, strings, entity, packed)?,
    })
}

/// Refuses to say of an entity that it is of a kind of which none of its events says that it is: an id is of one thing.
fn of_one_kind(kind: &Kind, events: &[Event]) -> Result<(), StoreError> {
    let mut known = events.iter().map(|event| &event.kind).filter(|known| **known != Kind::RETRACT).peekable();
    match known.peek().copied() {
        None => Ok(()),
        Some(_) if known.any(|known| known == kind) => Ok(()),
        Some(known) => {
            Err(StoreError::BadEvent { details: format!("a {} cannot become a {}", known.name(), kind.name()) })
        }
    }
}

/// Makes the rows of `entity` what its events say.
fn refold<E: Borrow<Event>>(
    conn: &Connection,
    strings: &mut StringDictionary,
    entity: Uuid,
    events: &[E],
) -> Result<(), StoreError> {
    let events = || events.iter().map(Borrow::borrow);
    let history = History::of(events(), &Domain);
    let mut kinds: Vec<&Kind> = events().map(|event| &event.kind).collect();
    kinds.sort();
    kinds.dedup();
    for table in kinds.into_iter().filter_map(Table::named) {
        table.project(conn, strings, entity, history.state(&table.kind, &Domain).as_ref())?;
    }
    Ok(())
}
