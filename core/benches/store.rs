//! How long the store takes, each beside bare SQLite in the same run: `cargo bench -p laydown --bench store`.
//!
//! Keeping one coat durably (goal: at most 1.5 times a bare transaction into two tables), and opening a large studio
//! up to what the weigh screen shows (goal: at most 5 ms, flat from 100,000 coats to a million). A plain program and
//! not criterion, since a durable write is one wait for the storage, and both sides must take turns to be comparable.
#![allow(clippy::unwrap_used, clippy::print_stdout)]

use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

use laydown::journal::{Ids, SeededIds};
use laydown::store::entity::{Coat, Entity};
use laydown::store::{Store, StoreError, chosen, query};
use laydown::studio::{Now, Studio};
use rusqlite::{Connection, TransactionBehavior, params};

#[allow(dead_code)]
#[path = "../tests/store/fixture.rs"]
mod fixture;

use fixture::{Bench, NOW, coat, furnish, keep, keep_the_rest, open};

const KEEPS: usize = 3_000;
const OPENINGS: usize = 40;
const DAY: i64 = 86_400_000;

fn main() {
    let folder = tempfile::tempdir().unwrap();
    println!("median and 95th percentile, ms\n");
    println!("{:<44}{:>9}{:>9}{:>9}{:>9}{:>8}", "", "laydown", "p95", "bare", "p95", "ratio");
    keeping(folder.path());
    for coats in [100_000, 1_000_000] {
        opening(folder.path(), coats);
    }
}

/// Sorted times of one side.
struct Times(Vec<Duration>);

impl Times {
    fn of(mut times: Vec<Duration>) -> Times {
        times.sort();
        Times(times)
    }

    fn at(&self, percent: usize) -> f64 {
        self.0[(self.0.len() - 1) * percent / 100].as_secs_f64() * 1e3
    }
}

fn row(what: &str, ours: Vec<Duration>, bare: Vec<Duration>) {
    let (ours, bare) = (Times::of(ours), Times::of(bare));
    let ratio = ours.at(50) / bare.at(50);
    println!("{what:<44}{:>9.3}{:>9.3}{:>9.3}{:>9.3}{ratio:>8.2}", ours.at(50), ours.at(95), bare.at(50), bare.at(95));
}

fn timed(work: impl FnOnce()) -> Duration {
    let start = Instant::now();
    work();
    start.elapsed()
}

/// A second file with an event and a coat table, written with the same pragmas and nothing else: no fold, no
/// sequence, no index but the keys.
fn bare(path: &Path) -> Connection {
    let conn = Connection::open(path).unwrap();
    conn.execute_batch("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA temp_store = MEMORY").unwrap();
    let columns = Coat::FIELDS.join(", ");
    conn.execute_batch(&format!(
        "CREATE TABLE event (place INTEGER PRIMARY KEY, entity BLOB, clock INTEGER, id BLOB, kind TEXT, body TEXT);
         CREATE TABLE coat (id BLOB PRIMARY KEY, {columns}) WITHOUT ROWID;"
    ))
    .unwrap();
    conn
}

fn keep_bare(conn: &Connection, number: i64, coat: &Coat, id: uuid::Uuid) {
    let tx = rusqlite::Transaction::new_unchecked(conn, TransactionBehavior::Immediate).unwrap();
    let body = serde_json::to_string(coat).unwrap();
    tx.prepare_cached("INSERT INTO event VALUES (?1, ?2, ?3, ?4, ?5, ?6)")
        .unwrap()
        .execute(params![number, coat.id, coat.at << 16, id, "coat", body])
        .unwrap();
    tx.prepare_cached(Coat::UPSERT).unwrap().execute(coat.row().as_slice()).unwrap();
    tx.commit().unwrap();
}

fn keeping(folder: &Path) {
    let store = open(&folder.join("keep"), 1);
    let bench = furnish(&store);
    let conn = bare(&folder.join("keep-bare"));
    let mut ids = SeededIds::new(2);
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for number in 0..KEEPS as i64 {
        let coat = coat(&bench, &mut ids, number);
        let id = ids.next(coat.at);
        ours.push(timed(|| keep(&store, &coat).map(|_| ()).unwrap()));
        theirs.push(timed(|| keep_bare(&conn, number, &coat, id)));
    }
    row("keep one coat, durable", ours, theirs);
}

fn filled(path: &Path, coats: i64) -> Bench {
    let store = open(path, 1);
    let bench = furnish(&store);
    keep_the_rest(&store, &bench);
    store.transact(NOW, |tx| tx.choose("form", Some("breakfast mug"))).unwrap();
    let mut ids = SeededIds::new(3);
    for first in (0..coats).step_by(1_000) {
        let lot = store.transact(NOW, |tx| {
            for number in first..coats.min(first + 1_000) {
                tx.put(&coat(&bench, &mut ids, number))?;
            }
            Ok::<_, StoreError>(())
        });
        lot.unwrap();
    }
    bench
}

fn opening(folder: &Path, coats: i64) {
    let path = folder.join(format!("studio-{coats}"));
    let (start, bench) = (Instant::now(), filled(&path, coats));
    let filling = start.elapsed();
    let last = NOW + (coats - 1) * 60_000;
    let look = |conn: &Connection| {
        let latest = query::latest_coat(conn)?;
        let controls = query::control_coats(conn, bench.glaze.id, "inside", 50)?;
        let known = query::controls(conn, bench.glaze.id, "inside", 50)?;
        let tiles = query::tiles(conn, bench.glaze.id, 50)?;
        let check = query::latest_check(conn, bench.bucket.id)?;
        let today = query::coats_between(conn, last - DAY, last)?;
        let taken = query::coats_from_bucket(conn, bench.bucket.id, last - DAY)?;
        let form = chosen(conn, "form")?;
        assert_eq!(latest.map(|coat| coat.at), Some(last));
        assert_eq!((controls.len(), known.len(), tiles.len()), (50, 1, 1));
        assert_eq!((today, taken), (1_440, 1_441));
        assert!(check.is_some() && form.is_some());
        Ok::<_, StoreError>(())
    };
    let (mut ours, mut theirs, mut again) = (Vec::new(), Vec::new(), Vec::new());
    for _ in 0..OPENINGS {
        ours.push(timed(|| {
            Store::open(&path, NOW, SeededIds::new(1)).unwrap().read(look).unwrap();
        }));
        theirs.push(timed(|| look(&Connection::open(&path).unwrap()).unwrap()));
    }
    row(&format!("open {coats} coats and read the weigh screen"), ours, theirs);

    let now = Now { unix_ms: last, utc_offset_s: 0 };
    let (mut screen, mut theirs) = (Vec::new(), Vec::new());
    for _ in 0..OPENINGS {
        screen.push(timed(|| {
            let view = Studio::open(&path, now).unwrap().weigh(now, None).unwrap();
            assert!(view.target.is_some() && !view.recent.is_empty());
        }));
        theirs.push(timed(|| look(&Connection::open(&path).unwrap()).unwrap()));
    }
    row("  open it and make the whole Weigh view", screen, theirs);

    let store = open(&path, 1);
    let conn = Connection::open(&path).unwrap();
    let mut warm = Vec::new();
    for _ in 0..OPENINGS {
        again.push(timed(|| store.read(look).unwrap()));
        warm.push(timed(|| look(&conn).unwrap()));
    }
    row("  read it again", again, warm);
    drop((store, conn));
    let bytes = fs::metadata(&path).unwrap().len();
    println!(
        "  {} bytes on disk per coat, journal and tables; filled at {:.0} coats a second",
        bytes / coats.unsigned_abs(),
        coats as f64 / filling.as_secs_f64()
    );
}
