//! A seeded run of commands, for the tests that break a studio in the middle of one.

use std::collections::{BTreeMap, HashMap, HashSet};
use std::path::Path;

use fastrand::Rng;
use laydown_store::entity::{Coat, Entity};
use laydown_store::journal::{Clock, DeviceId, Event, EventId, Ids, Kind, SeededIds};
use laydown_store::{Changes, Committed, Store, StoreError, Undo, chosen, devices, events_after, events_of};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use crate::{Bench, NOW, coat, furnish, glaze_called};

/// What a command that came back had kept.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
pub struct Told {
    /// The events it made or took in.
    pub events: Vec<Event>,
    /// What it chose, by name. The values of a name only grow.
    pub chosen: BTreeMap<String, i64>,
}

impl Told {
    /// Adds what a later command had kept.
    pub fn and(&mut self, later: Told) {
        self.events.extend(later.events);
        self.chosen.extend(later.chosen);
    }
}

/// Somebody at work in a studio: every command follows from the seed and from what was kept before.
pub struct Worker {
    rng: Rng,
    ids: SeededIds,
    bench: Bench,
    coats: Vec<Coat>,
    undos: Vec<Undo>,
    elsewhere: DeviceId,
    from_elsewhere: i64,
    commands: i64,
}

impl Worker {
    /// Comes in, furnishes the bench, and remembers nothing of others' work in `store`.
    pub fn new(store: &Store, seed: u64) -> Worker {
        let mut ids = SeededIds::new(seed ^ 0x00C0_FFEE);
        let elsewhere = DeviceId(ids.next(NOW));
        Worker {
            rng: Rng::with_seed(seed),
            ids,
            bench: furnish(store),
            coats: Vec::new(),
            undos: Vec::new(),
            elsewhere,
            from_elsewhere: 0,
            commands: 0,
        }
    }

    /// Runs the next command. Two coats of one piece are always kept together, so half a command shows.
    pub fn command(&mut self, store: &Store) -> Result<Told, StoreError> {
        self.commands += 1;
        match self.rng.u8(..20) {
            0..=8 => self.save(store),
            9..=12 => self.edit(store),
            13..=14 => self.undo(store),
            15 => self.retract(store),
            16..=17 => self.merge(store),
            _ => self.choose(store),
        }
    }

    fn save(&mut self, store: &Store) -> Result<Told, StoreError> {
        let inside = coat(&self.bench, &mut self.ids, self.commands);
        let note = Some("runs at the foot; ".repeat(self.rng.usize(..40)));
        let outside = Coat { id: self.ids.next(NOW), zone: "outside".into(), note, ..inside.clone() };
        let saved = store.transact(NOW + self.commands, |tx| {
            tx.put(&inside)?;
            tx.put(&outside).map(|_| ())
        })?;
        self.coats.extend([inside, outside]);
        self.told(store, saved)
    }

    fn edit(&mut self, store: &Store) -> Result<Told, StoreError> {
        if self.coats.is_empty() {
            return self.save(store);
        }
        let which = self.rng.usize(..self.coats.len());
        let edited = Coat { net_mg: self.rng.i64(20_000..26_000), ..self.coats[which].clone() };
        let saved = store.transact(NOW + self.commands, |tx| tx.put(&edited).map(|_| ()))?;
        self.coats[which] = edited;
        self.told(store, saved)
    }

    fn undo(&mut self, store: &Store) -> Result<Told, StoreError> {
        if self.undos.is_empty() {
            return self.save(store);
        }
        let which = self.rng.usize(..self.undos.len());
        let saved = store.undo(NOW + self.commands, self.undos[which])?;
        self.undos.swap_remove(which);
        self.told(store, saved)
    }

    fn retract(&mut self, store: &Store) -> Result<Told, StoreError> {
        if self.coats.is_empty() {
            return self.save(store);
        }
        let coat = self.coats[self.rng.usize(..self.coats.len())].id;
        let events = store.read(|conn| events_of(conn, coat))?;
        let event = events[self.rng.usize(..events.len())].id();
        let saved = store.transact(NOW + self.commands, |tx| tx.retract(coat, event).map(|_| ()))?;
        self.told(store, saved)
    }

    /// Takes in glazes mixed on another phone, and new names for some of them.
    fn merge(&mut self, store: &Store) -> Result<Told, StoreError> {
        let mut events = Vec::new();
        let mut clock = Clock::ZERO.tick(NOW + self.commands);
        for seq in self.from_elsewhere + 1..=self.from_elsewhere + self.rng.i64(1..30) {
            let glaze = glaze_called(self.ids.next(NOW), &format!("Line blend {seq}"));
            clock = clock.tick(NOW);
            events.push(Event {
                device: self.elsewhere,
                seq,
                clock,
                entity: glaze.id,
                kind: Kind::of("glaze"),
                body: glaze.difference(None)?,
            });
        }
        let ingested = store.merge(NOW + self.commands, &events)?;
        assert_eq!(ingested.new, events.len());
        self.from_elsewhere += ingested.new as i64;
        Ok(Told { events, ..Told::default() })
    }

    fn choose(&mut self, store: &Store) -> Result<Told, StoreError> {
        let name = format!("last choice {} of {}", self.rng.u8(..3), self.elsewhere.0);
        store.transact(NOW, |tx| tx.choose(&name, Some(&self.commands.to_string())))?;
        Ok(Told { chosen: BTreeMap::from([(name, self.commands)]), ..Told::default() })
    }

    fn told(&mut self, store: &Store, saved: Committed<()>) -> Result<Told, StoreError> {
        let Committed { changes: Changes { events: ids, .. }, undo, .. } = saved;
        self.undos.push(undo);
        let Some(first) = ids.first() else { return Ok(Told::default()) };
        let events = store.read(|conn| events_after(conn, first.device, first.seq - 1))?;
        assert!(events.iter().map(Event::id).eq(ids), "what was made is there");
        Ok(Told { events, ..Told::default() })
    }
}

/// Every event of a studio.
pub fn all_events(store: &Store) -> Vec<Event> {
    let events = store.read(|conn| {
        let mut events = Vec::new();
        for (device, _) in devices(conn)? {
            events.extend(events_after(conn, device, 0)?);
        }
        Ok::<_, StoreError>(events)
    });
    events.unwrap()
}

/// Opens the studio at `path`, asserts that every page of it is sound and that its tables are what the journal says.
pub fn sound(path: &Path) -> Store {
    let store = Store::open(path, NOW, SeededIds::new(42)).unwrap();
    store.check().unwrap();
    let dump = store.dump().unwrap();
    store.rebuild().unwrap();
    assert_eq!(store.dump().unwrap(), dump);
    store
}

/// The studio at `path` is sound, holds everything in `told`, and no command by half; gives all events that are there.
pub fn whole(path: &Path, told: &Told) -> Vec<Event> {
    let store = sound(path);
    let events = all_events(&store);
    let there: HashMap<EventId, &Event> = events.iter().map(|event| (event.id(), event)).collect();
    let lost = told.events.iter().filter(|event| there.get(&event.id()) != Some(event)).count();
    assert_eq!(lost, 0, "of {} events that were told kept, {lost} are lost", told.events.len());
    for (name, value) in &told.chosen {
        let there = store.read(|conn| chosen(conn, name)).unwrap().and_then(|text| text.parse::<i64>().ok());
        assert!(there >= Some(*value), "{name}: told {value}, there is {there:?}");
    }
    let mut pieces: HashMap<&str, HashSet<Uuid>> = HashMap::new();
    for event in events.iter().filter(|event| event.kind == Coat::KIND) {
        if let Some(piece) = event.body.get("piece").and_then(|piece| piece.as_str()) {
            pieces.entry(piece).or_default().insert(event.entity);
        }
    }
    assert!(pieces.values().all(|coats| coats.len() == 2), "a command was kept by half");
    events
}
