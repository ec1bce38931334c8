//! The studio's file, beside bare SQLite: keeping a coat durably, and opening a large studio up to the Weigh screen.
//!
//! The peer of keeping writes one event and one coat into two tables of a second file with the same pragmas: no fold,
//! no sequence, no index but the keys. The peer of opening reads the same rows with the same queries and no words.

use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

use laydown_app::{Now, Studio, WeighEntry, WeighView};
use laydown_store::entity::{Coat, Entity};
use laydown_store::journal::{Ids, SeededIds};
use laydown_store::{Store, StoreError, chosen, query};
use rusqlite::{Connection, TransactionBehavior, params};

use laydown_tests::{Bench, NOW, coat, furnish, open, save, save_the_rest};

use crate::{Goal, row, timed};

const SAVES: usize = 3_000;
const OPENINGS: usize = 40;
const DAY: i64 = 86_400_000;

/// Keeping, against the bare transaction.
const SAVE_GOAL: f64 = 1.5;
/// From a closed file to all that the Weigh screen shows.
const OPEN_GOAL: Duration = Duration::from_millis(5);

pub fn rows() {
    let folder = tempfile::tempdir().unwrap();
    saving(folder.path());
    weighing(folder.path());
    for coats in [1_000, 100_000, 1_000_000] {
        opening(folder.path(), coats);
    }
}

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

fn save_bare(conn: &Connection, number: i64, coat: &Coat, id: uuid::Uuid) {
    let tx = rusqlite::Transaction::new_unchecked(conn, TransactionBehavior::Immediate).unwrap();
    let body = serde_json::to_string(coat).unwrap();
    tx.prepare_cached("INSERT INTO event VALUES (?1, ?2, ?3, ?4, ?5, ?6)")
        .unwrap()
        .execute(params![number, coat.id, coat.at << 16, id, "coat", body])
        .unwrap();
    tx.prepare_cached(Coat::UPSERT).unwrap().execute(coat.row().as_slice()).unwrap();
    tx.commit().unwrap();
}

fn saving(folder: &Path) {
    let store = open(&folder.join("keep"), 1);
    let bench = furnish(&store);
    let conn = bare(&folder.join("keep-bare"));
    let mut ids = SeededIds::new(2);
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for number in 0..SAVES as i64 {
        let coat = coat(&bench, &mut ids, number);
        let id = ids.next(coat.at);
        ours.push(timed(|| save(&store, &coat).map(|_| ()).unwrap()));
        theirs.push(timed(|| save_bare(&conn, number, &coat, id)));
    }
    row("keep one coat in the store, durable", ours, theirs, Goal::Times(SAVE_GOAL));
}

/// The whole of Keep: target, verdict, event, coat and the choices for the next piece.
fn weighing(folder: &Path) {
    let now = Now { unix_ms: NOW, utc_offset_s: 0 };
    let studio = Studio::open(&folder.join("weigh"), now).unwrap();
    let bench = furnish(studio.store());
    let conn = bare(&folder.join("weigh-bare"));
    let mut ids = SeededIds::new(4);
    for number in 0..24 {
        save(studio.store(), &coat(&bench, &mut ids, number * 50)).unwrap();
    }
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for number in 0..SAVES as i64 {
        let coat = coat(&bench, &mut ids, 1_200 + number);
        let id = ids.next(coat.at);
        let entry = WeighEntry { net: format!("{:.1}", coat.net_mg as f64 / 1e3), ..WeighEntry::default() };
        ours.push(timed(|| _ = studio.save(now.at(coat.at), entry).unwrap()));
        theirs.push(timed(|| save_bare(&conn, number, &coat, id)));
    }
    row("keep one coat on the Weigh screen, durable", ours, theirs, Goal::Times(SAVE_GOAL));
}

/// Coats a minute apart, and what they rest on.
pub fn filled(path: &Path, coats: i64) -> Bench {
    let store = open(path, 1);
    let bench = furnish(&store);
    save_the_rest(&store, &bench);
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
    let now = Now { unix_ms: last, utc_offset_s: 0 };
    // Every fiftieth coat is a control piece, as is one of those that are kept beside them; a target rests on the newest.
    let pots = (coats / 50 + 1).min(24);
    let look = |conn: &Connection| {
        let latest = query::latest_coats(conn, 8)?;
        let controls = query::control_pieces(conn, bench.glaze.id, "inside", 24)?;
        let tiles = query::tiles(conn, bench.glaze.id, "right", 24)?;
        let check = query::latest_check(conn, bench.bucket.id)?;
        let (today, _) = query::tally(conn, last - 3_600_000, "within")?;
        let taken = query::coats_from_bucket(conn, bench.bucket.id, last - DAY)?;
        let form = chosen(conn, "form")?;
        assert_eq!(latest[0].at, last);
        assert_eq!((controls.len() as i64, tiles.len()), (pots, 1));
        assert_eq!((today, i64::from(taken)), (61, coats.min(1_441)));
        assert!(check.is_some() && form.is_some());
        Ok::<_, StoreError>(())
    };
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for _ in 0..OPENINGS {
        ours.push(timed(|| {
            Store::open(&path, NOW, SeededIds::new(1)).unwrap().read(look).unwrap();
        }));
        theirs.push(timed(|| look(&Connection::open(&path).unwrap()).unwrap()));
    }
    row(&format!("open {coats} coats, bare rows"), ours, theirs, Goal::Within(OPEN_GOAL));

    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for _ in 0..OPENINGS {
        ours.push(timed(|| seen(&Studio::open(&path, now).unwrap().weigh(now, None).unwrap(), pots)));
        theirs.push(timed(|| look(&Connection::open(&path).unwrap()).unwrap()));
    }
    row(&format!("open {coats} coats, the Weigh screen"), ours, theirs, Goal::Within(OPEN_GOAL));

    let studio = Studio::open(&path, now).unwrap();
    let conn = Connection::open(&path).unwrap();
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for _ in 0..OPENINGS {
        ours.push(timed(|| seen(&studio.weigh(now, None).unwrap(), pots)));
        theirs.push(timed(|| look(&conn).unwrap()));
    }
    row("  the Weigh screen again", ours, theirs, Goal::Within(OPEN_GOAL));
    drop((studio, conn));
    let bytes = fs::metadata(&path).unwrap().len();
    println!(
        "  {} bytes on disk per coat, journal and tables; filled at {:.0} coats a second",
        bytes / coats.unsigned_abs(),
        coats as f64 / filling.as_secs_f64()
    );
}

/// The view is whole: an aim from control pieces, and coats of today.
fn seen(view: &WeighView, pots: i64) {
    assert!(view.target.as_ref().is_some_and(|target| target.rests_on.contains(&format!("{pots} pots"))));
    assert_eq!(view.recent.len(), 8);
    assert!(view.tally.contains("coats today"), "{}", view.tally);
}
