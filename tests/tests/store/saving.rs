//! What is kept comes back, the journal says what was done, and every command can be undone.

use laydown_store::entity::{Bucket, Coat, Entity, Form, Glaze, Preference};
use laydown_store::journal::{EventId, Ids, Kind, NoRules, SeededIds, fold};
use laydown_store::{StoreError, Undo, chosen, devices, events_after, events_of, query};
use serde_json::{Value, json};
use uuid::Uuid;

use laydown_tests::{NOW, coat, furnish, glaze_called, open, save, save_the_rest, studio};

fn body(value: Value) -> laydown_store::journal::Body {
    value.as_object().unwrap().clone()
}

#[test]
fn what_is_saved_comes_back_after_closing() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    save_the_rest(&store, &bench);
    let coats: Vec<Coat> = (0..60).map(|number| coat(&bench, &mut SeededIds::new(number as u64), number)).collect();
    for coat in &coats {
        save(&store, coat).unwrap();
    }
    let dump = store.dump().unwrap();
    let device = store.device();
    drop(store);

    let store = open(&folder.path().join("studio.laydown"), 99);
    assert_eq!(store.device(), device, "a device keeps its name");
    assert_eq!(store.dump().unwrap(), dump);
    store
        .read(|conn| {
            assert_eq!(Glaze::load(conn, bench.glaze.id)?, Some(bench.glaze.clone()));
            assert_eq!(Form::all(conn)?, vec![bench.form.clone()]);
            assert!(Preference::load(conn, device.0)?.is_some());
            assert_eq!(Coat::load(conn, Uuid::nil())?, None);
            assert_eq!(query::latest_coats(conn, 2)?, vec![coats[59].clone(), coats[58].clone()]);
            assert_eq!(query::tally(conn, NOW + 50 * 60_000, "within")?, (10, 10));
            assert_eq!(query::tally(conn, NOW + 50 * 60_000, "short")?, (10, 0));
            assert_eq!(query::coats_from_bucket(conn, bench.bucket.id, NOW + 50 * 60_000)?, 10);
            assert_eq!(query::coats_from_bucket(conn, bench.glaze.id, 0)?, 0);
            let controls = query::control_pieces(conn, bench.glaze.id, "inside", 9)?;
            let found: Vec<_> = controls.iter().map(|piece| (piece.at, piece.net_mg, piece.scale)).collect();
            let weighed = |coat: &Coat| (coat.at, coat.net_mg, Some(bench.scale.id));
            assert_eq!(found, [weighed(&coats[50]), weighed(&coats[0]), (NOW, 23_000, None)]);
            assert_eq!(query::control_pieces(conn, bench.glaze.id, "inside", 1)?, controls[..1]);
            assert_eq!(query::control_pieces(conn, bench.glaze.id, "outside", 9)?, []);
            assert_eq!(query::tiles(conn, bench.glaze.id, "right", 9)?.len(), 1);
            assert_eq!(query::latest_check(conn, bench.bucket.id)?.unwrap().flow_ms, Some(14_300));
            assert_eq!(query::checks(conn, bench.bucket.id, 9)?.last(), Some(&bench.check));
            Ok::<_, StoreError>(())
        })
        .unwrap();
}

#[test]
fn the_tables_can_be_made_again_from_the_journal() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    save_the_rest(&store, &bench);
    for number in 0..20 {
        let saved = save(&store, &coat(&bench, &mut SeededIds::new(number as u64), number)).unwrap();
        if number % 3 == 0 {
            store.undo(NOW, saved.undo).unwrap();
        }
    }
    let before = store.dump().unwrap();
    // Spoil the tables behind the store's back.
    rusqlite::Connection::open(folder.path().join("studio.laydown"))
        .unwrap()
        .execute_batch(
            "UPDATE coat SET net_mg = 1; DELETE FROM glaze; INSERT INTO scale (id, name, capacity_mg, step_mg, gone) \
             SELECT x'00', 'x', 1, 1, 0",
        )
        .unwrap();
    assert_ne!(store.dump().unwrap(), before);
    store.rebuild().unwrap();
    assert_eq!(store.dump().unwrap(), before);
    store.rebuild().unwrap();
    assert_eq!(store.dump().unwrap(), before);
}

#[test]
fn an_event_says_only_what_differs() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    let bucket = Bucket { name: "Red lid".into(), volume_ul: None, ..bench.bucket.clone() };
    let saved = store.transact(NOW + 1, |tx| tx.put(&bucket)).unwrap();
    assert_eq!(saved.changes.entities, vec![(Kind::of("bucket"), bucket.id)]);
    assert_eq!(saved.changes.events, vec![saved.value.unwrap()]);
    let events = store.read(|conn| events_of(conn, bucket.id)).unwrap();
    let said = events.iter().find(|event| Some(event.id()) == saved.value).unwrap();
    assert_eq!(said.body, body(json!({"name": "Red lid", "volume_ul": null})));
    assert_eq!(store.read(|conn| Bucket::load(conn, bucket.id)).unwrap(), Some(bucket.clone()));

    let again = store.transact(NOW + 2, |tx| tx.put(&bucket)).unwrap();
    assert_eq!(again.value, None);
    assert!(again.undo.is_empty());
    assert_eq!((again.changes.entities.len(), again.changes.events.len()), (0, 0));
}

#[test]
fn put_away_and_brought_back() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    let load = || store.read(|conn| Glaze::load(conn, bench.glaze.id)).unwrap().unwrap();
    store.transact(NOW, |tx| tx.put(&Glaze { gone: true, ..bench.glaze.clone() })).unwrap();
    assert!(load().gone);
    store.transact(NOW, |tx| tx.put(&bench.glaze)).unwrap();
    assert_eq!(load(), bench.glaze);
}

#[test]
fn undo_redo_and_undo_again() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    let empty = store.dump().unwrap();
    let mut ids = SeededIds::new(5);
    let (first, second) = (coat(&bench, &mut ids, 1), coat(&bench, &mut ids, 2));
    let saved = store
        .transact(NOW, |tx| {
            tx.put(&first)?;
            tx.put(&second)?;
            tx.put(&Glaze { name: "Summer ash".into(), ..bench.glaze.clone() })
        })
        .unwrap();
    let full = store.dump().unwrap();
    assert_ne!(full, empty);

    // A token outlives the process: it can be kept as JSON.
    let token: Undo = serde_json::from_value(serde_json::to_value(saved.undo).unwrap()).unwrap();
    let undone = store.undo(NOW + 1, token).unwrap();
    assert_eq!(store.dump().unwrap(), empty);
    assert_eq!(undone.changes.entities.len(), 3);
    let twice = store.undo(NOW + 1, token).unwrap();
    assert!(twice.undo.is_empty(), "a second tap on undo does nothing");

    let redone = store.undo(NOW + 2, undone.undo).unwrap();
    assert_eq!(store.dump().unwrap(), full);
    store.undo(NOW + 3, redone.undo).unwrap();
    assert_eq!(store.dump().unwrap(), empty);
    store.rebuild().unwrap();
    assert_eq!(store.dump().unwrap(), empty);
}

#[test]
fn undo_leaves_later_commands_alone() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    let renamed = store.transact(NOW, |tx| tx.put(&glaze_called(bench.glaze.id, "Summer ash"))).unwrap();
    let thicker = Glaze { starting_laydown_mg_dm2: 6_000, ..glaze_called(bench.glaze.id, "Summer ash") };
    store.transact(NOW + 1, |tx| tx.put(&thicker)).unwrap();
    store.undo(NOW + 2, renamed.undo).unwrap();
    let glaze = store.read(|conn| Glaze::load(conn, bench.glaze.id)).unwrap().unwrap();
    assert_eq!((glaze.name.as_str(), glaze.starting_laydown_mg_dm2), ("Winter ash", 6_000));
}

#[test]
fn one_event_can_be_taken_back_by_name() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    let renamed = store.transact(NOW, |tx| tx.put(&glaze_called(bench.glaze.id, "Summer ash"))).unwrap();
    store.transact(NOW, |tx| tx.retract(bench.glaze.id, renamed.value.unwrap())).unwrap();
    assert_eq!(store.read(|conn| Glaze::load(conn, bench.glaze.id)).unwrap(), Some(bench.glaze.clone()));
    let unknown = store.transact(NOW, |tx| tx.retract(bench.glaze.id, EventId { device: store.device(), seq: 99 }));
    assert!(matches!(unknown, Err(StoreError::BadEvent { .. })));
}

#[test]
fn a_command_that_fails_leaves_nothing_behind() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    let before = store.dump().unwrap();
    let saved = coat(&bench, &mut SeededIds::new(5), 1);
    let failed = store.transact(NOW, |tx| {
        tx.put(&saved)?;
        tx.choose("draft", Some("19.4"))?;
        assert!(Coat::load(tx.conn(), saved.id)?.is_some(), "a command sees its own writes");
        Err::<(), _>(StoreError::Busy)
    });
    assert!(matches!(failed, Err(StoreError::Busy)));
    assert_eq!(store.dump().unwrap(), before);
    assert_eq!(store.read(|conn| chosen(conn, "draft")).unwrap(), None);

    let panicked = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| {
        store.transact(NOW, |tx| -> Result<(), StoreError> {
            tx.put(&saved)?;
            panic!("a mistake in a command")
        })
    }));
    assert!(panicked.is_err());
    assert_eq!(store.dump().unwrap(), before);
    save(&store, &saved).unwrap();
}

#[test]
fn sequence_numbers_have_no_gaps_and_clocks_never_go_back() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    let path = folder.path().join("studio.laydown");
    for (number, now) in [(0, NOW), (1, NOW - 86_400_000), (2, -1), (3, NOW + 5)] {
        let coat = coat(&bench, &mut SeededIds::new(number as u64), number);
        store.transact(now, |tx| tx.put(&coat)).unwrap();
        let failed = store.transact(now, |tx| {
            tx.put(&Coat { note: Some("not kept".into()), ..coat.clone() })?;
            Err::<(), _>(StoreError::Busy)
        });
        assert!(failed.is_err());
    }
    let device = store.device();
    drop(store);
    let store = open(&path, 2);
    save(&store, &coat(&bench, &mut SeededIds::new(70), 4)).unwrap();
    let events = store.read(|conn| events_after(conn, device, 0)).unwrap();
    let seqs: Vec<i64> = events.iter().map(|event| event.seq).collect();
    assert_eq!(seqs, (1..=10).collect::<Vec<i64>>());
    assert!(events.windows(2).all(|pair| pair[0].clock < pair[1].clock));
    assert_eq!(store.read(devices).unwrap(), vec![(device, 10)]);
    assert_eq!(store.read(|conn| events_after(conn, device, 9)).unwrap().len(), 1);
}

#[test]
fn what_is_not_whole_or_not_known_is_saved_but_not_shown() {
    let (_folder, store) = studio();
    let mut ids = SeededIds::new(8);
    let (glaze, other) = (ids.next(NOW), ids.next(NOW));
    let append = |kind: &'static str, entity, said| {
        store.transact(NOW, |tx| tx.append(Kind::of(kind), entity, body(said))).map(|saved| saved.value)
    };
    let load = || store.read(|conn| Glaze::load(conn, glaze)).unwrap();
    append("glaze", glaze, json!({"name": "Rain", "sensitivity": "low"})).unwrap();
    assert_eq!(load(), None, "its density has not arrived yet");
    append("glaze", glaze, json!({"powder_density_e3": 2600, "starting_laydown_mg_dm2": 5000, "from_later": 1}))
        .unwrap();
    assert_eq!(load().unwrap().name, "Rain");
    append("glaze", glaze, json!({"name": 7})).unwrap();
    assert_eq!(load().unwrap().name, "Rain", "a number is no name");

    append("kiln_god", other, json!({"mood": "fair"})).unwrap();
    let mixed = append("glaze", other, json!({"name": "Rain"}));
    assert!(matches!(mixed, Err(StoreError::BadEvent { .. })), "an entity does not change its kind");
    assert_eq!(store.read(|conn| events_of(conn, other)).unwrap().len(), 1);

    // A field that only a newer laydown knows survives a correction made here.
    store.transact(NOW, |tx| tx.put(&glaze_called(glaze, "Rain"))).unwrap();
    let events = store.read(|conn| events_of(conn, glaze)).unwrap();
    let state = fold(&events, &Glaze::KIND, &NoRules).unwrap();
    assert_eq!(state.fields.get("from_later"), Some(&json!(1)));
}

#[test]
fn choices_are_remembered_and_forgotten_but_not_journalled() {
    let (folder, store) = studio();
    let look = |store: &laydown_store::Store| store.read(|conn| chosen(conn, "form")).unwrap();
    let saved = store.transact(NOW, |tx| tx.choose("form", Some("mug"))).unwrap();
    assert!(saved.undo.is_empty());
    store.transact(NOW, |tx| tx.choose("form", Some("bowl"))).unwrap();
    drop(store);
    let store = open(&folder.path().join("studio.laydown"), 2);
    assert_eq!(look(&store).as_deref(), Some("bowl"));
    assert_eq!(store.dump().unwrap(), "");
    store.transact(NOW, |tx| tx.choose("form", None)).unwrap();
    assert_eq!(look(&store), None);
}

#[test]
fn a_screen_reads_one_moment_while_another_writes() {
    let (_folder, store) = studio();
    let bench = furnish(&store);
    store
        .read(|conn| {
            assert_eq!(query::tally(conn, 0, "within")?.0, 0);
            save(&store, &coat(&bench, &mut SeededIds::new(5), 1))?;
            assert_eq!(query::tally(conn, 0, "within")?.0, 0);
            Ok::<_, StoreError>(())
        })
        .unwrap();
    assert_eq!(store.read(|conn| query::tally(conn, 0, "within")).unwrap(), (1, 1));
    let written = store.read(|conn| Ok::<_, StoreError>(conn.execute("DELETE FROM event", [])?));
    assert!(written.is_err(), "reading cannot write");
}

#[test]
fn what_is_saved_is_durable() {
    let (_folder, store) = studio();
    let pragma = |name: &'static str| {
        let saved = store.transact(NOW, |tx| {
            Ok::<_, StoreError>(tx.conn().query_row(&format!("SELECT * FROM pragma_{name}"), [], |row| {
                row.get::<_, rusqlite::types::Value>(0)
            })?)
        });
        saved.unwrap().value
    };
    assert_eq!(pragma("journal_mode"), rusqlite::types::Value::Text("wal".into()));
    assert_eq!(pragma("synchronous"), rusqlite::types::Value::Integer(2), "full");
}
