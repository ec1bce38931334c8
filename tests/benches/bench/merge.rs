//! Taking in what another phone kept, beside a bare bulk insert of the same rows.

use std::path::Path;
use std::time::Duration;

use laydown_store::entity::{Coat, Entity};
use laydown_store::events_after;
use laydown_store::journal::{Clock, DeviceId, Event, Ids, SeededIds};
use rusqlite::{Connection, TransactionBehavior, params};

use laydown_tests::{NOW, coat, furnish, open, save};

use crate::{Goal, Times, row, timed, written};

const EVENTS: i64 = 100_000;
const RUNS: usize = 3;
const PAUSE: Duration = Duration::from_millis(3);
/// Merging may take so many times as long as the bare insert: 0.6 of its rate.
const GOAL: f64 = 1.0 / 0.6;

pub fn rows() {
    let folder = tempfile::tempdir().unwrap();
    let (events, coats) = foreign(folder.path());
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for run in 0..RUNS {
        let store = open(&folder.path().join(format!("merge-{run}")), 7);
        ours.push(timed(|| {
            let taken = store.merge(NOW, &events).unwrap().new;
            assert_eq!(taken, events.len());
        }));
        theirs.push(timed(|| insert_bare(&folder.path().join(format!("bare-{run}")), &events, &coats)));
    }
    let rate = |time: &Duration| events.len() as f64 / time.as_secs_f64();
    println!("  merging at {:.0} events a second; the bare insert at {:.0}", rate(&ours[1]), rate(&theirs[1]));
    row(&format!("merge {EVENTS} events of another phone"), ours, theirs, Goal::Times(GOAL));
    saving_meanwhile(folder.path(), &events);
}

/// What another phone kept, and its coats: at any moment, with weights as a hand gives them.
pub fn foreign(folder: &Path) -> (Vec<Event>, Vec<Coat>) {
    let store = open(&folder.join("other"), 1);
    let bench = furnish(&store);
    let mut ids = SeededIds::new(3);
    let mut rng = fastrand::Rng::with_seed(4);
    let coats = (0..EVENTS).map(|number| {
        let coat = coat(&bench, &mut ids, number);
        let (at, net_mg) = (coat.at + rng.i64(0..60_000), 19_000 + 100 * rng.i64(0..80));
        Coat { id: ids.next(at), piece: ids.next(at), at, net_mg, laydown_mg_dm2: net_mg * 235 / 1_000, ..coat }
    });
    let coats: Vec<Coat> = coats.collect();
    let saved = store.transact(NOW, |tx| coats.iter().try_for_each(|coat| tx.put(coat).map(|_| ())));
    saved.unwrap();
    let device: DeviceId = store.device();
    let mut events = store.read(|conn| events_after(conn, device, 0)).unwrap();
    // One transaction is quicker; each was kept when it was weighed.
    for event in &mut events {
        let at = event.body.get("at").and_then(|at| at.as_i64()).unwrap_or(NOW);
        event.clock = Clock::from_packed(at << 16).unwrap();
    }
    (events, coats)
}

/// The same rows and the keys, in one transaction, and nothing else.
pub fn insert_bare(path: &Path, events: &[Event], coats: &[Coat]) {
    let conn = Connection::open(path).unwrap();
    conn.execute_batch("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA temp_store = MEMORY").unwrap();
    let columns = Coat::FIELDS.join(", ");
    conn.execute_batch(&format!(
        "CREATE TABLE event (place INTEGER PRIMARY KEY, entity BLOB, clock INTEGER, kind TEXT, body TEXT);
         CREATE TABLE coat (id BLOB PRIMARY KEY, {columns}) WITHOUT ROWID;"
    ))
    .unwrap();
    let tx = rusqlite::Transaction::new_unchecked(&conn, TransactionBehavior::Immediate).unwrap();
    let mut insert = tx.prepare("INSERT INTO event VALUES (?1, ?2, ?3, ?4, ?5)").unwrap();
    for event in events {
        let body = serde_json::to_string(&event.body).unwrap();
        insert.execute(params![event.seq, event.entity, event.clock.packed(), event.kind.name(), body]).unwrap();
    }
    drop(insert);
    let mut insert = tx.prepare(Coat::UPSERT).unwrap();
    for coat in coats {
        insert.execute(coat.row().as_slice()).unwrap();
    }
    drop(insert);
    tx.commit().unwrap();
}

/// How long a Save takes while a merge goes on beside it.
fn saving_meanwhile(folder: &Path, events: &[Event]) {
    let store = open(&folder.join("meanwhile"), 7);
    let bench = furnish(&store);
    let mut ids = SeededIds::new(8);
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for number in 0..200 {
        let coat = coat(&bench, &mut ids, number);
        theirs.push(timed(|| save(&store, &coat).map(|_| ()).unwrap()));
    }
    std::thread::scope(|scope| {
        let merging = scope.spawn(|| store.merge(NOW, events).unwrap().new);
        for number in 200.. {
            if merging.is_finished() {
                break;
            }
            let coat = coat(&bench, &mut ids, number);
            ours.push(timed(|| save(&store, &coat).map(|_| ()).unwrap()));
            // A potter is not as fast; that the merge comes to its turn is part of the case.
            std::thread::sleep(PAUSE);
        }
    });
    let worst = Times::of(ours.clone()).at(99);
    println!("  keeps during a merge: {}, 99th percentile {}", ours.len(), written(worst));
    row("keep while 100000 events are merged", ours, theirs, Goal::Within(Duration::from_millis(50)));
}
