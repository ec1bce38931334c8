//! A studio of each released schema still opens, whole, and becomes like a new one.

use laydown_app::{Now, Studio};
use laydown_store::entity::{Coat, Entity};
use laydown_store::{Store, StoreError};
use rusqlite::Connection;

use laydown_tests::{NOW, newest_sample, open, studio};

/// Each released schema with a filled sample, as SQL. Never edited; a release that adds a step adds its own, which
/// `examples/released_schema.rs` writes.
const RELEASED: &[(i64, &str)] = &[
    (1, include_str!("samples/create_v1.sql")),
    (2, include_str!("samples/create_v2.sql")),
    (3, include_str!("samples/create_v3.sql")),
    (4, include_str!("samples/create_v4.sql")),
    (5, include_str!("samples/create_v5.sql")),
    (6, include_str!("samples/create_v6.sql")),
    (7, include_str!("samples/create_v7.sql")),
    (8, include_str!("samples/create_v8.sql")),
    (9, include_str!("samples/create_v9.sql")),
];

fn schema(store: &Store) -> Vec<String> {
    let rows = store.read(|conn| {
        let mut select = conn.prepare("SELECT type || ' ' || name || ' ' || coalesce(sql, '') FROM sqlite_schema")?;
        let rows = select.query_map([], |row| row.get::<_, String>(0))?.collect::<Result<Vec<_>, _>>()?;
        Ok::<_, StoreError>(rows)
    });
    let mut rows: Vec<String> =
        rows.unwrap().iter().map(|sql| sql.split_whitespace().collect::<Vec<_>>().join(" ")).collect();
    rows.sort();
    rows
}

#[test]
fn every_released_studio_climbs_to_a_new_one() {
    let (_folder, fresh) = studio();
    let newest =
        fresh.read(|conn| Ok::<i64, StoreError>(conn.pragma_query_value(None, "user_version", |row| row.get(0))?));
    assert_eq!(RELEASED.last().map(|(version, _)| *version), newest.ok(), "each released schema has its sample");
    for (version, sql) in RELEASED {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("studio");
        let made = Connection::open(&path).unwrap();
        made.execute_batch(sql).unwrap();
        let found: i64 = made.pragma_query_value(None, "user_version", |row| row.get(0)).unwrap();
        assert_eq!(found, *version);
        drop(made);

        let store = open(&path, 2);
        assert_eq!(schema(&store), schema(&fresh));
        let coats = store.read(Coat::all).unwrap();
        assert_eq!(coats.iter().map(|coat| coat.net_mg).collect::<Vec<_>>(), [22_000, 23_919, 22_838]);
        let dump = store.dump().unwrap();
        store.rebuild().unwrap();
        assert_eq!(store.dump().unwrap(), dump);
        store.check().unwrap();
        drop(store);

        let now = Now { unix_ms: NOW, utc_offset_s: 0 };
        let weigh = Studio::open(&path, now).unwrap().weigh(now, None).unwrap();
        assert_eq!(weigh.recent.len(), 3);
        assert!(weigh.target.unwrap().source.contains("control piece"));
    }
}

#[test]
fn the_newest_sample_is_what_is_written_now() {
    let (version, sql) = RELEASED.last().unwrap();
    assert!(newest_sample() == *sql, "write sample {version} anew, or add one: see examples/released_schema.rs");
}
