//! A studio of each released schema still opens, whole, and becomes like a new one.

use laydown::store::entity::{Coat, Entity};
use laydown::store::{Store, StoreError};
use rusqlite::Connection;

use crate::fixture::{NOW, coat, furnish, keep, keep_the_rest, open, studio};
use laydown::journal::SeededIds;

/// Each released schema with a filled sample, as SQL. Never edited; a release that adds a step adds its own.
const RELEASED: &[(i64, &str)] = &[(1, include_str!("samples/create_v1.sql"))];

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
    }
}

/// The sample of the newest schema is what this code writes. After a new schema step it is written anew, once:
/// `LAYDOWN_WRITE_SAMPLE=1 cargo test -p laydown --test store the_newest_sample`.
#[test]
fn the_newest_sample_is_what_is_written_now() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    keep_the_rest(&store, &bench);
    for number in 0..3 {
        keep(&store, &coat(&bench, &mut SeededIds::new(number as u64), number)).unwrap();
    }
    let undone = keep(&store, &coat(&bench, &mut SeededIds::new(9), 9)).unwrap();
    store.undo(NOW, undone.undo).unwrap();
    drop(store);
    let path = folder.path().join("studio.laydown");
    let conn = Connection::open(&path).unwrap();
    let pragma = |name| conn.pragma_query_value(None, name, |row| row.get::<_, i64>(0)).unwrap();
    let (version, mark) = (pragma("user_version"), pragma("application_id"));
    let mut sql = format!("PRAGMA application_id = {mark};\nPRAGMA user_version = {version};\n");
    let mut tables = conn.prepare("SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY rowid").unwrap();
    let tables: Vec<(String, String)> =
        tables.query_map([], |row| Ok((row.get(0)?, row.get(1)?))).unwrap().map(Result::unwrap).collect();
    for (name, create) in &tables {
        sql += &format!("{create};\n");
        let mut columns = conn.prepare(&format!("SELECT name FROM pragma_table_info('{name}')")).unwrap();
        let columns: Vec<String> =
            columns.query_map([], |row| row.get::<_, String>(0)).unwrap().map(Result::unwrap).collect();
        if !create.starts_with("CREATE TABLE") {
            continue;
        }
        let values: Vec<String> = columns.iter().map(|column| format!("quote(\"{column}\")")).collect();
        let rows = format!("SELECT {} FROM \"{name}\" ORDER BY 1", values.join(" || ', ' || "));
        let mut rows = conn.prepare(&rows).unwrap();
        for row in rows.query_map([], |row| row.get::<_, String>(0)).unwrap() {
            sql += &format!("INSERT INTO \"{name}\" VALUES ({});\n", row.unwrap());
        }
    }
    let target = format!("{}/tests/store/samples/create_v{version}.sql", env!("CARGO_MANIFEST_DIR"));
    if std::env::var_os("LAYDOWN_WRITE_SAMPLE").is_some() {
        std::fs::write(&target, &sql).unwrap();
    }
    assert_eq!(std::fs::read_to_string(&target).unwrap(), sql);
}
