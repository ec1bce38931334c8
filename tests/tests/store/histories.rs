//! Whole histories of a few phones with wrong clocks that edit, undo, redo and delete apart from each other and sync now and
//! then, with a hostile device among them. What each phone had seen when it wrote is noted here, apart from the journal, and
//! the outcome is held against that.
//!
//! `HISTORIES=2000` plays that many; the default is a short run.

use std::collections::{HashMap, HashSet};

use fastrand::Rng;
use laydown_store::entity::{Coat, Entity, Glaze};
use laydown_store::journal::{Clock, DeviceId, Event, EventId, History as Written, Ids, Kind, NoRules, SeededIds};
use laydown_store::{Committed, Store, StoreError, Undo};
use laydown_tests::work::all_events;
use laydown_tests::{Bench, NOW, coat, furnish, glaze_called, open};
use serde_json::{Value, json};
use tempfile::TempDir;
use uuid::Uuid;

const DAY: i64 = 86_400_000;

struct Phone {
    store: Store,
    /// How far its clock is wrong, ms.
    wrong_by: i64,
    done: Vec<Undo>,
}

struct History {
    rng: Rng,
    ids: SeededIds,
    now: i64,
    bench: Bench,
    phones: Vec<Phone>,
    hostile_seq: i64,
    /// What the phone that made an event had then.
    saw: HashMap<EventId, HashSet<EventId>>,
    _folder: TempDir,
}

impl History {
    fn new(seed: u64) -> History {
        let mut rng = Rng::with_seed(seed);
        let folder = tempfile::tempdir().unwrap();
        let wrong = [0, -2 * DAY, 2 * DAY, -DAY / 2, DAY / 2, -400 * DAY, 400 * DAY];
        let mut phones: Vec<Phone> = (0..rng.u64(2..=4))
            .map(|number| Phone {
                store: open(&folder.path().join(number.to_string()), 10 + number),
                wrong_by: wrong[rng.usize(..wrong.len())],
                done: Vec::new(),
            })
            .collect();
        phones[0].wrong_by = 0;
        let bench = furnish(&phones[0].store);
        let saw = all_events(&phones[0].store).iter().map(|event| (event.id(), HashSet::new())).collect();
        let ids = SeededIds::new(seed ^ 0x00C0_FFEE);
        History { rng, ids, now: NOW, bench, phones, hostile_seq: 0, saw, _folder: folder }
    }

    fn here(&self, at: usize) -> i64 {
        self.now + self.phones[at].wrong_by
    }

    /// Runs a command and notes what was known when each of its events was made.
    fn command(&mut self, at: usize, run: impl FnOnce(&Store, i64) -> Result<Committed<()>, StoreError>) {
        let now = self.here(at);
        let mut known: HashSet<EventId> = all_events(&self.phones[at].store).iter().map(Event::id).collect();
        let saved = run(&self.phones[at].store, now).unwrap();
        for event in saved.changes.events {
            self.saw.insert(event, known.clone());
            known.insert(event);
        }
        if !saved.undo.is_empty() {
            self.phones[at].done.push(saved.undo);
        }
    }

    fn step(&mut self, with_hostile: bool) {
        self.now += self.rng.i64(0..3 * 3_600_000);
        let at = self.rng.usize(..self.phones.len());
        let glazes = self.phones[at].store.read(Glaze::all).unwrap();
        let coats = self.phones[at].store.read(Coat::all).unwrap();
        match self.rng.u8(..24) {
            0..=2 => {
                let id = self.ids.next(self.here(at));
                let name = format!("glaze {}", self.rng.u8(..));
                self.command(at, |store, now| store.transact(now, |tx| tx.put(&glaze_called(id, &name)).map(|_| ())));
            }
            3..=8 if !glazes.is_empty() => self.edit_glaze(at, &glazes),
            9..=10 => {
                let first = coat(&self.bench, &mut self.ids, self.rng.i64(0..500));
                let made = Coat { at: self.here(at), ..first };
                self.command(at, |store, now| store.transact(now, |tx| tx.put(&made).map(|_| ())));
            }
            11 if !coats.is_empty() => {
                let before = &coats[self.rng.usize(..coats.len())];
                let (id, at_ms) = (self.ids.next(self.here(at)), self.here(at));
                let made = Coat { id, at: at_ms, zone: "outside".into(), ..before.clone() };
                self.command(at, |store, now| store.transact(now, |tx| tx.put(&made).map(|_| ())));
            }
            12 if !coats.is_empty() => {
                let before = &coats[self.rng.usize(..coats.len())];
                let made = Coat { note: Some(format!("note {}", self.rng.u8(..))), ..before.clone() };
                self.command(at, |store, now| store.transact(now, |tx| tx.put(&made).map(|_| ())));
            }
            13 if !coats.is_empty() => {
                let id = coats[self.rng.usize(..coats.len())].id;
                self.command(at, |store, now| store.transact(now, |tx| tx.retract_all(id)));
            }
            14..=17 if !self.phones[at].done.is_empty() => {
                let undo = self.phones[at].done[self.rng.usize(..self.phones[at].done.len())];
                let again = self.rng.bool();
                self.command(at, |store, now| {
                    store.transact(now, |tx| if again { tx.redo(undo) } else { tx.undo(undo) })
                });
            }
            18..=20 => {
                let from = self.rng.usize(..self.phones.len());
                self.hear(at, from);
            }
            21 if with_hostile => self.hostile(at),
            _ => {}
        }
    }

    fn edit_glaze(&mut self, at: usize, glazes: &[Glaze]) {
        let before = glazes[self.rng.usize(..glazes.len())].clone();
        let made = match self.rng.u8(..3) {
            0 => Glaze { name: format!("glaze {}", self.rng.u8(..)), ..before },
            1 => Glaze { starting_laydown_mg_dm2: self.rng.i64(1_000..9_000), ..before },
            _ => Glaze { gone: !before.gone, ..before },
        };
        self.command(at, |store, now| store.transact(now, |tx| tx.put(&made).map(|_| ())));
        let after = self.phones[at].store.read(|conn| Glaze::load(conn, made.id)).unwrap();
        assert_eq!(after, Some(made), "what was just entered here counts here");
    }

    /// All that the other has, or, in any order, some of it.
    fn hear(&mut self, at: usize, from: usize) {
        let mut heard = all_events(&self.phones[from].store);
        if self.rng.bool() {
            self.rng.shuffle(&mut heard);
            let some = self.rng.usize(..=heard.len());
            heard.truncate(some);
        }
        self.phones[at].store.merge(self.here(at), &heard).unwrap();
    }

    /// Events that no honest phone makes.
    fn hostile(&mut self, at: usize) {
        let known = all_events(&self.phones[at].store);
        let target = known[self.rng.usize(..known.len())].clone();
        self.hostile_seq += 1;
        let event = |seq, clock, entity, kind, body: Value| Event {
            device: DeviceId(Uuid::from_u128(u128::MAX)),
            seq,
            clock: Clock::from_packed(clock).unwrap(),
            entity,
            kind,
            body: body.as_object().unwrap().clone(),
        };
        let (seq, now) = (self.hostile_seq, Clock::ZERO.tick(self.here(at)).packed());
        let last = Clock::LATEST.packed();
        let glaze = Kind::of("glaze");
        let made = match self.rng.u8(..9) {
            0 => event(seq, 0, target.entity, Kind::of("form"), json!({"name": "Hijacked", "class": "bowl"})),
            1 => event(seq, last, target.entity, target.kind.clone(), json!({"name": "For ever", "gone": true})),
            2 => event(seq, 0, target.entity, Kind::RETRACT, json!({"device": target.device, "seq": target.seq})),
            3 => {
                event(seq, now, Uuid::from_u128(7), Kind::RETRACT, json!({"device": target.device, "seq": target.seq}))
            }
            4 => event(1 << 39, now, Uuid::from_u128(8), glaze, json!({"name": "Far away"})),
            5 => event(seq, now, target.entity, target.kind.clone(), json!({"name": "x".repeat(1 << 20)})),
            6 => event(seq, now, target.entity, target.kind.clone(), json!({"net_mg": i64::MIN, "at": i64::MAX})),
            7 => event(seq, now, target.entity, Kind::RETRACT, json!({"seen": {"x": []}, "device": 4})),
            _ => event(seq, now, target.entity, target.kind.clone(), json!({"gone": 7, "name": [[[]]], "zone": null})),
        };
        self.saw.insert(made.id(), HashSet::new());
        self.phones[at].store.merge(self.here(at), &[made]).unwrap();
    }

    /// Every phone's clock is set right, each goes on, and they sync until all have heard of all.
    fn end(&mut self) -> Vec<Event> {
        self.now += DAY;
        for at in 0..self.phones.len() {
            self.phones[at].wrong_by = 0;
            let made = coat(&self.bench, &mut self.ids, 600 + at as i64);
            self.command(at, |store, now| store.transact(now, |tx| tx.put(&made).map(|_| ())));
        }
        for _ in 0..3 {
            for at in 0..self.phones.len() {
                for from in 0..self.phones.len() {
                    let heard = all_events(&self.phones[from].store);
                    self.phones[at].store.merge(self.now, &heard).unwrap();
                }
            }
        }
        let dump = self.phones[0].store.dump().unwrap();
        for phone in &self.phones {
            assert_eq!(phone.store.dump().unwrap(), dump, "all phones show the same");
            phone.store.rebuild().unwrap();
            assert_eq!(phone.store.dump().unwrap(), dump, "tables are folds");
        }
        let events = all_events(&self.phones[0].store);
        let here: HashSet<EventId> = events.iter().map(Event::id).collect();
        for made in self.saw.keys().filter(|made| made.device.0 != Uuid::from_u128(u128::MAX)) {
            assert!(here.contains(made), "{made:?} is lost");
        }
        events
    }

    fn had_seen(&self, later: EventId, earlier: EventId) -> bool {
        self.saw[&later].contains(&earlier)
    }

    /// An edit of a thing that is gone was seen by whoever undid it: nothing of another phone is lost unseen.
    fn nothing_is_lost_unseen<E: Entity>(&self, events: &[Event]) {
        let store = &self.phones[0].store;
        let there: HashSet<Uuid> = store.read(E::all).unwrap().iter().map(E::id).collect();
        let is_effective = Written::of(events, &NoRules).effective();
        let stands = events.iter().filter(|event| event.kind == E::KIND && is_effective.contains(&event.id()));
        for event in
            stands.filter(|event| !there.contains(&event.entity) && event.device.0 != Uuid::from_u128(u128::MAX))
        {
            let mut undoings =
                events.iter().filter(|undoing| undoing.entity == event.entity && undoing.kind == Kind::RETRACT);
            assert!(
                undoings.any(|undoing| self.had_seen(undoing.id(), event.id())),
                "{:?} of {:?} is gone, and who undid it had not seen the edit",
                event.body,
                event.entity
            );
        }
    }

    /// The value of a field is never one that whoever set another value had seen.
    fn the_last_word_counts<E: Entity>(&self, events: &[Event]) {
        let is_effective = Written::of(events, &NoRules).effective();
        for thing in self.phones[0].store.read(E::all).unwrap() {
            let fields = serde_json::to_value(&thing).unwrap();
            for name in E::FIELDS {
                let value = fields.get(name).unwrap_or(&Value::Null);
                let setters = events
                    .iter()
                    .filter(|event| event.entity == thing.id() && event.kind == E::KIND && says(event, name));
                let setters: Vec<&Event> = setters.collect();
                let is_value = |event: &&&Event| {
                    let set = &event.body[*name];
                    set == value || (set == &json!(false) && value.is_null())
                };
                let is_overruled = |event: &&Event| {
                    setters
                        .iter()
                        .any(|later| is_effective.contains(&later.id()) && self.had_seen(later.id(), event.id()))
                };
                let unset = value.is_null() && setters.iter().all(|event| !is_effective.contains(&event.id()));
                assert!(
                    unset || setters.is_empty() || setters.iter().filter(is_value).any(|event| !is_overruled(event)),
                    "{name} is {value}, which a later edit had seen and replaced: {setters:#?}"
                );
            }
        }
    }
}

/// Whether an event gives the field a value; none that no field can have, as the hostile device says.
fn says(event: &Event, name: &str) -> bool {
    event.body.get(name).is_some_and(|value| match name {
        "gone" => value.is_boolean() || value.is_null(),
        "net_mg" | "at" => value.as_i64().is_some_and(|number| number != i64::MIN && number != i64::MAX),
        "name" | "zone" => value.is_string(),
        _ => true,
    })
}

fn play(seed: u64, with_hostile: bool) {
    let mut history = History::new(seed);
    for at in 1..history.phones.len() {
        let heard = all_events(&history.phones[0].store);
        history.phones[at].store.merge(history.here(at).max(NOW), &heard).unwrap();
    }
    for _ in 0..40 {
        history.step(with_hostile);
    }
    let events = history.end();
    history.nothing_is_lost_unseen::<Glaze>(&events);
    history.nothing_is_lost_unseen::<Coat>(&events);
    history.the_last_word_counts::<Glaze>(&events);
    history.the_last_word_counts::<Coat>(&events);
}

fn histories() -> u64 {
    std::env::var("HISTORIES").ok().and_then(|count| count.parse().ok()).unwrap_or(40)
}

/// Which of the histories fail, and the first of why.
fn failing(with_hostile: bool) -> (Vec<u64>, String) {
    let (mut failed, mut first) = (Vec::new(), String::new());
    for seed in 0..histories() {
        if let Err(why) = std::panic::catch_unwind(|| play(seed, with_hostile)) {
            let why = why.downcast_ref::<String>().cloned().unwrap_or_default();
            if failed.is_empty() {
                first = why;
            }
            failed.push(seed);
        }
    }
    (failed, first)
}

#[test]
fn no_phone_loses_what_another_said() {
    let (failed, first) = failing(false);
    assert!(failed.is_empty(), "{} of {} histories: {failed:?}: {first}", failed.len(), histories());
}

#[test]
fn no_hostile_device_takes_anything_from_the_others() {
    let (failed, first) = failing(true);
    assert!(failed.is_empty(), "{} of {} histories: {failed:?}: {first}", failed.len(), histories());
}
