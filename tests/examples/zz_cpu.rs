//! Temporary.
use laydown::journal::{Event, Ids, SeededIds};
use laydown::store::entity::{Coat, Entity};
use laydown::store::{StoreError, events_after, query};
use laydown_tests::{NOW, coat, furnish, open};
use rusqlite::{Connection, TransactionBehavior, params};
use std::path::Path;
fn cpu() -> f64 {
    std::fs::read_to_string("/proc/thread-self/schedstat").unwrap().split(' ').next().unwrap().parse::<f64>().unwrap()
        / 1e9
}
fn insert_bare(path: &Path, events: &[Event], coats: &[Coat]) {
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
fn main() {
    let folder = tempfile::tempdir().unwrap();
    let store = open(&folder.path().join("other"), 1);
    let bench = furnish(&store);
    let mut ids = SeededIds::new(3);
    let coats: Vec<Coat> = (0..100_000).map(|number| coat(&bench, &mut ids, number)).collect();
    store
        .transact(NOW, |tx| coats.iter().try_for_each(|coat| tx.put(coat).map(|_| ())))
        .map_err(|e: StoreError| e)
        .unwrap();
    let events = store.read(|conn| events_after(conn, store.device(), 0)).unwrap();
    for run in 0..4 {
        let t = cpu();
        let ours = open(&folder.path().join(format!("merge-{run}")), 7);
        ours.merge(NOW, &events).unwrap();
        let a = cpu() - t;
        let t = cpu();
        insert_bare(&folder.path().join(format!("bare-{run}")), &events, &coats);
        let b = cpu() - t;
        let t = cpu();
        ours.rebuild().unwrap();
        let c = cpu() - t;
        let t = cpu();
        for _ in 0..2000 {
            ours.read(|conn| query::control_pieces(conn, bench.glaze.id, "inside", 24)).unwrap();
        }
        let d = (cpu() - t) / 2000.0;
        let t = cpu();
        for _ in 0..2000 {
            ours.read(|conn| query::latest_coats(conn, 8)).unwrap();
        }
        let e = (cpu() - t) / 2000.0;
        let t = cpu();
        let mut n = 0;
        ours.read(|conn| {
            query::each_coat(conn, |c| {
                n += c.net_mg;
                Ok(())
            })
        })
        .unwrap();
        let f = cpu() - t;
        let new: Vec<Coat> = (0..3000).map(|number| coat(&bench, &mut ids, 100_000 + number)).collect();
        let t = cpu();
        for c in &new {
            ours.transact(c.at, |tx| tx.put(c).map(|_| ())).map_err(|e: StoreError| e).unwrap();
        }
        let g = (cpu() - t) / 3000.0;
        println!(
            "merge {a:.2} bare {b:.2} ratio {:.2} rebuild {c:.2} control_pieces {:.1} us latest {:.1} us each {f:.2} s keep {:.1} us",
            a / b,
            d * 1e6,
            e * 1e6,
            g * 1e6
        );
    }
}
