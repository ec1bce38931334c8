//! Events that no honest phone makes, and phones whose clocks are wrong: what of it is believed, and what it can do.

use std::sync::mpsc;
use std::time::Duration;

use laydown_app::in_words::Sentence;
use laydown_store::entity::{Coat, Entity, Form, Glaze};
use laydown_store::journal::{Clock, DeviceId, Event, Kind, SeededIds};
use laydown_store::{Refusal, Store, StoreError, latest_commands, without_gaps};
use laydown_tests::work::all_events;
use laydown_tests::{Bench, NOW, coat, furnish, glaze_called, open, save, studio};
use serde_json::{Value, json};
use uuid::Uuid;

const DAY: i64 = 86_400_000;
const HOSTILE: DeviceId = DeviceId(Uuid::from_u128(u128::MAX));

fn event(seq: i64, at: i64, entity: Uuid, kind: &'static str, body: Value) -> Event {
    let clock = Clock::from_packed(at << 16).unwrap();
    Event { device: HOSTILE, seq, clock, entity, kind: Kind::of(kind), body: body.as_object().unwrap().clone() }
}

fn why(store: &Store, events: &[Event]) -> Vec<(Refusal, u64)> {
    let ingested = store.merge(NOW, events).unwrap();
    ingested.refused.iter().map(|refused| (refused.why, refused.count)).collect()
}

fn glaze(store: &Store, bench: &Bench) -> Glaze {
    store.read(|conn| Glaze::load(conn, bench.glaze.id)).unwrap().unwrap()
}

fn rename(store: &Store, bench: &Bench, name: &str) {
    let named = Glaze { name: name.to_owned(), ..glaze(store, bench) };
    store.transact(NOW, |tx| tx.put(&named)).unwrap();
    assert_eq!(glaze(store, bench).name, name, "what was just entered counts");
}

/// Runs `work`, which must end; wide, since the machine may be busy.
fn ends(work: impl FnOnce() + Send + 'static) {
    let (done, wait) = mpsc::channel();
    let worker = std::thread::spawn(move || {
        work();
        done.send(()).unwrap();
    });
    assert!(wait.recv_timeout(Duration::from_secs(60)).is_ok() || worker.is_finished(), "it does not end");
    worker.join().unwrap();
}

#[test]
fn phones_whose_clocks_are_wrong_by_years_take_in_all_and_agree() {
    let (folder, right) = (tempfile::tempdir().unwrap(), studio());
    let bench = furnish(&right.1);
    let wrong: Vec<(Store, i64)> = [-20_000_i64, -2, 2, 30_000]
        .iter()
        .map(|days| (open(&folder.path().join(days.to_string()), 100 + days.unsigned_abs()), NOW + days * DAY))
        .collect();
    let mut heard = all_events(&right.1);
    // Each hears what those before it said and says something new: the last one's word counts.
    for (store, now) in &wrong {
        assert_eq!(store.merge(*now, &heard).unwrap().refused, []);
        let named = Glaze { name: now.to_string(), ..glaze(store, &bench) };
        store.transact(*now, |tx| tx.put(&named)).unwrap();
        assert_eq!(glaze(store, &bench).name, now.to_string());
        heard = all_events(store);
    }
    right.1.merge(NOW, &heard).unwrap();
    assert_eq!(glaze(&right.1, &bench).name, (NOW + 30_000 * DAY).to_string());
    rename(&right.1, &bench, "Rain");
    for (store, now) in &wrong {
        store.merge(*now, &all_events(&right.1)).unwrap();
        assert_eq!(store.dump().unwrap(), right.1.dump().unwrap());
    }
}

#[test]
fn a_clock_of_the_year_2200_wins_no_longer_than_until_the_next_edit_and_moves_no_clock_here() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    let last = Clock::LATEST.millis();
    let for_ever = event(1, last, bench.glaze.id, "glaze", json!({"name": "For ever", "gone": true}));
    store.merge(last, &[for_ever]).unwrap();
    rename(&store, &bench, "Rain");
    rename(&store, &bench, "Hail");
    let ours = all_events(&store).into_iter().filter(|event| event.device == store.device());
    assert!(ours.clone().all(|event| event.clock.millis() <= NOW + DAY), "this phone's clock does not follow");
    // A phone that hears all of it sees the same.
    let other = open(&folder.path().join("other"), 7);
    other.merge(last, &all_events(&store)).unwrap();
    assert_eq!(other.dump().unwrap(), store.dump().unwrap());
}

#[test]
fn one_undo_undoes_one_command_whatever_clocks_are_in_the_journal() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    let last = Clock::LATEST.millis();
    store.merge(last, &[event(1, last, bench.glaze.id, "glaze", json!({"name": "For ever"}))]).unwrap();
    for number in 0..4 {
        save(&store, &Coat { at: NOW, ..coat(&bench, &mut SeededIds::new(number), 1) }).unwrap();
    }
    let commands = store.read(|conn| latest_commands(conn, NOW, 10, 50)).unwrap();
    let newest = commands.iter().find(|command| command.events[0].device == store.device()).unwrap();
    store.undo(NOW, newest.undo).unwrap();
    assert_eq!(store.read(Coat::all).unwrap().len(), 3);
    let coats = store.read(Coat::all).unwrap();
    // Nor does one retraction take more than the one event that it names, of the entity that it is about.
    let of_coat = all_events(&store).into_iter().find(|event| event.entity == coats[0].id).unwrap();
    let elsewhere = json!({"device": of_coat.device, "seq": of_coat.seq});
    store.merge(NOW, &[event(2, NOW, coats[1].id, "retract", elsewhere)]).unwrap();
    assert_eq!(store.read(Coat::all).unwrap().len(), 3);
}

#[test]
fn no_event_hides_a_thing_by_its_kind_its_clock_or_a_value_that_cannot_be() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    save(&store, &coat(&bench, &mut SeededIds::new(1), 1)).unwrap();
    let saved = store.read(Coat::all).unwrap().remove(0);
    let hostile = [
        event(1, 0, bench.glaze.id, "form", json!({"name": "Hijacked"})),
        event(2, NOW, bench.glaze.id, "glaze", json!({"name": 7, "powder_density_e3": -4, "sensitivity": null})),
        event(
            3,
            NOW,
            saved.id,
            "coat",
            json!({"net_mg": i64::MIN, "specific_gravity_e5": 1, "at": i64::MAX, "form": "x"}),
        ),
    ];
    assert_eq!(why(&store, &hostile), []);
    assert_eq!(glaze(&store, &bench), bench.glaze);
    assert_eq!(store.read(Coat::all).unwrap(), [saved]);
    assert_eq!(store.read(Form::all).unwrap().len(), 1);
    rename(&store, &bench, "Rain");
}

#[test]
fn what_is_too_much_is_refused_and_the_rest_comes_in() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    let id = bench.glaze.id;
    let mut deep = json!(1);
    for _ in 0..100 {
        deep = json!([deep]);
    }
    let too_large = [
        event(1, NOW, id, "glaze", json!({"name": "x".repeat(20_000)})),
        event(2, NOW, id, "glaze", json!({"later": vec!["y".repeat(10_000); 20]})),
        event(3, NOW, id, "glaze", json!({"z".repeat(100): 1})),
        event(4, NOW, id, "glaze", json!({"later": vec![1; 200_000]})),
        event(5, NOW, id, "glaze", json!({"later": deep})),
        Event { kind: Kind::named("k".repeat(100)), ..event(6, NOW, id, "glaze", json!({})) },
    ];
    assert_eq!(why(&store, &too_large), [(Refusal::TooLarge, 6)]);
    let many: Vec<Event> =
        (10..2_110).map(|seq| event(seq, NOW, id, "glaze", json!({"name": seq.to_string()}))).collect();
    assert_eq!(why(&store, &many), [(Refusal::TooMany, 100)]);
    rename(&store, &bench, "Rain");
    let crowd: Vec<Event> = (0..400)
        .map(|device| Event {
            device: DeviceId(Uuid::from_u128(device)),
            ..event(1, NOW, id, "glaze", json!({"gone": false}))
        })
        .collect();
    let ingested = store.merge(NOW, &crowd).unwrap();
    assert_eq!(ingested.new, 254, "with this phone and the hostile one, 256");
    assert_eq!(ingested.refused.iter().map(|refused| refused.count).sum::<u64>() + ingested.more_refused, 146);
    assert!(ingested.refusals().len() < 4, "{:?}", ingested.refusals());
    assert_eq!(glaze(&store, &bench).name, "Rain");
}

#[test]
fn numbers_that_lie_far_apart_save_nobody_waiting() {
    ends(|| {
        let (folder, store) = studio();
        let bench = furnish(&store);
        let far = |number: i64| event(number << 20, NOW, bench.glaze.id, "glaze", json!({"name": "Far"}));
        let climbing: Vec<Event> = (1..1_000).map(far).collect();
        assert_eq!(why(&store, &climbing), []);
        assert_eq!(
            why(&store, &[event(1 << 39, NOW, bench.glaze.id, "glaze", json!({}))]),
            [(Refusal::NoSuchNumber, 1)]
        );
        let whole = store.read(without_gaps).unwrap();
        assert!(whole.contains(&(HOSTILE, 0)), "{whole:?}");
        let (zip, lines) = (folder.path().join("backup.zip"), folder.path().join("journal.jsonl"));
        store.back_up(&zip, &[]).unwrap();
        store.write_journal(&lines).unwrap();
        for file in [zip, lines] {
            let other = open(&folder.path().join("other").with_extension(file.extension().unwrap()), 9);
            other.restore(NOW, &file).unwrap();
            assert_eq!(other.dump().unwrap(), store.dump().unwrap());
        }
        store.read(|conn| latest_commands(conn, NOW, 200, 50)).unwrap();
    });
}

#[test]
fn a_retraction_by_a_phone_that_runs_behind_counts() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    let made = all_events(&store).into_iter().find(|event| event.entity == bench.glaze.id).unwrap();
    let undo = event(1, 0, bench.glaze.id, "retract", json!({"device": made.device, "seq": made.seq, "seen": {}}));
    store.merge(NOW, &[undo]).unwrap();
    assert_eq!(store.read(Glaze::all).unwrap(), []);
    store.transact(NOW, |tx| tx.put(&glaze_called(bench.glaze.id, "Made anew"))).unwrap();
    assert_eq!(glaze(&store, &bench).name, "Made anew");
}

#[test]
fn a_panic_in_a_command_leaves_nothing_behind() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    let first = Coat { source: "a_new_word".to_owned(), ..coat(&bench, &mut SeededIds::new(1), 1) };
    let panicked = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| {
        store.transact(NOW, |tx| {
            tx.put(&first)?;
            if tx.conn().is_autocommit() { Ok::<(), StoreError>(()) } else { panic!("in the middle of a command") }
        })
    }));
    assert!(panicked.is_err());
    assert_eq!(store.read(Coat::all).unwrap(), []);
    save(&store, &first).unwrap();
    assert_eq!(store.read(Coat::all).unwrap(), [first]);
    assert_eq!(all_events(&store).len(), 6);
}

#[test]
fn nothing_is_saved_into_a_file_that_was_deleted_or_replaced() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    let path = folder.path().join("studio.laydown");
    let elsewhere = folder.path().join("moved.laydown");
    std::fs::rename(&path, &elsewhere).unwrap();
    let saved = save(&store, &coat(&bench, &mut SeededIds::new(1), 1));
    assert!(matches!(saved, Err(StoreError::Removed)), "{saved:?}");
    std::fs::copy(&elsewhere, &path).unwrap();
    let saved = save(&store, &coat(&bench, &mut SeededIds::new(1), 1));
    assert!(matches!(saved, Err(StoreError::Removed)), "{saved:?}");
    std::fs::rename(&elsewhere, &path).unwrap();
    save(&store, &coat(&bench, &mut SeededIds::new(1), 1)).unwrap();
}

#[test]
fn a_file_that_is_added_by_half_says_how_much() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    for number in 0..1_500 {
        let made = coat(&bench, &mut SeededIds::new(number), number as i64);
        store.transact(made.at, |tx| tx.put(&Coat { note: Some("long ".repeat(60)), ..made })).unwrap();
    }
    let lines = folder.path().join("journal.jsonl");
    let zip = folder.path().join("backup.zip");
    store.write_journal(&lines).unwrap();
    store.back_up(&zip, &[]).unwrap();
    for (number, file) in [lines, zip].iter().enumerate() {
        let other = open(&folder.path().join(format!("other {number}")), 9);
        // As on a phone with little room left.
        let full = |pages: i64| {
            let set = |tx: &mut laydown_store::Transaction<'_>| {
                Ok::<_, StoreError>(tx.conn().pragma_update(None, "max_page_count", pages)?)
            };
            other.transact(NOW, set).unwrap();
        };
        full(220);
        let error = other.restore(NOW, file).unwrap_err();
        let there = all_events(&other).len();
        assert!(there > 0, "a part of it fits: {error}");
        assert!(error.sentence().starts_with(&format!("{there} entries of this file were added")), "{error}");
        full(1 << 30);
        other.restore(NOW, file).unwrap();
        assert_eq!(other.dump().unwrap(), store.dump().unwrap());
    }
}
