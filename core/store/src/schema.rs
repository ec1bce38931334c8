//! The tables and how they came to be: a list of steps, never edited once released, only added to.

use rusqlite::{Connection, TransactionBehavior};

use super::error::StoreError;
use super::transaction;

/// Says "a studio of laydown" in the header of the file (`PRAGMA application_id`): the letters `LAYD`.
pub(super) const APPLICATION_ID: i64 = i64::from_be_bytes(*b"\0\0\0\0LAYD");

/// The steps. The version of a file (`PRAGMA user_version`) is the number of steps it has taken.
pub(super) const MIGRATIONS: &[&str] = &[
    include_str!("schema/0001_journal_and_tables.sql"),
    include_str!("schema/0002_rules_and_astray.sql"),
    include_str!("schema/0003_results_and_confirmations.sql"),
    include_str!("schema/0004_targets_and_touch_ups.sql"),
    include_str!("schema/0005_drift_and_hands.sql"),
    include_str!("schema/0006_firings_and_pieces.sql"),
    include_str!("schema/0007_forms_by_one_measure.sql"),
    include_str!("schema/0008_dry_bisque_scales.sql"),
    include_str!("schema/0009_materials_and_bucket_entries.sql"),
];

/// Takes the steps that the file has not taken yet, all or none, and marks the file as ours.
///
/// Where a file with events in it climbs, its folds are made again afterwards, so a step may drop and create those
/// tables as it likes; only the journal has to be carried over.
pub(super) fn migrate(conn: &Connection, migrations: &[&str]) -> Result<(), StoreError> {
    if version(conn)? == known(migrations) {
        return Ok(());
    }
    let tx = rusqlite::Transaction::new_unchecked(conn, TransactionBehavior::Immediate)?;
    // Asked under the lock: another process may have climbed in between.
    let found = version(&tx)?;
    let taken = usize::try_from(found)
        .map_err(|_| StoreError::Damaged { details: format!("the schema version is {found}") })?;
    let Some(missing) = migrations.get(taken..) else {
        return Err(StoreError::Newer { found, known: known(migrations) });
    };
    if taken == 0 && !is_blank(&tx)? {
        return Err(StoreError::NotAStudio);
    }
    for step in missing {
        tx.execute_batch(step)?;
    }
    tx.pragma_update(None, "application_id", APPLICATION_ID)?;
    tx.pragma_update(None, "user_version", known(migrations))?;
    if taken > 0 {
        transaction::rebuild(&tx)?;
    }
    tx.commit()?;
    Ok(())
}

fn is_blank(conn: &Connection) -> Result<bool, StoreError> {
    Ok(conn.query_row("SELECT count(*) = 0 FROM sqlite_schema", [], |row| row.get(0))?)
}

/// The number of steps the file has taken.
pub(super) fn version(conn: &Connection) -> Result<i64, StoreError> {
    Ok(conn.pragma_query_value(None, "user_version", |row| row.get(0))?)
}

/// The number of steps this program knows.
pub(super) fn known(migrations: &[&str]) -> i64 {
    i64::try_from(migrations.len()).unwrap_or(i64::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Store;
    use crate::entity::TABLES;
    use crate::journal::{Ids, SeededIds};

    #[test]
    fn the_tables_have_the_fields_of_the_entities_in_order() {
        let conn = Connection::open_in_memory().unwrap();
        migrate(&conn, MIGRATIONS).unwrap();
        for table in TABLES {
            let sql = format!("SELECT name FROM pragma_table_info('{}') ORDER BY cid", table.kind.name());
            let mut select = conn.prepare(&sql).unwrap();
            let columns: Vec<String> = select.query_map([], |row| row.get(0)).unwrap().map(Result::unwrap).collect();
            let expected: Vec<&str> = ["id"].iter().chain(table.fields).copied().collect();
            assert_eq!(columns, expected, "{}", table.kind.name());
        }
    }

    #[test]
    fn a_climb_makes_the_folds_again_from_the_journal() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("studio");
        let store = Store::open(&path, 1, SeededIds::new(1)).unwrap();
        let mut ids = SeededIds::new(2);
        let body = serde_json::json!({"name": "Shelf scale", "capacity_mg": 5_000_000, "step_mg": 100});
        let body = body.as_object().unwrap().clone();
        store.transact(1, |tx| tx.append(crate::journal::Kind::of("scale"), ids.next(1), body)).unwrap();
        let before = store.dump().unwrap();
        drop(store);

        // A step that drops a table's rows by making it anew, as a step that changes a table would.
        let next = "CREATE TABLE scale_2 AS SELECT * FROM scale WHERE false; DROP TABLE scale; \
                    ALTER TABLE scale_2 RENAME TO scale;";
        let conn = Connection::open(&path).unwrap();
        migrate(&conn, &[MIGRATIONS, &[next]].concat()).unwrap();
        assert_eq!(version(&conn).unwrap(), known(MIGRATIONS) + 1);
        let name: String = conn.query_row("SELECT name FROM scale", [], |row| row.get(0)).unwrap();
        assert_eq!(name, "Shelf scale");
        assert!(before.contains("'Shelf scale'"));
    }

    #[test]
    fn a_step_that_fails_leaves_the_file_where_it_was() {
        let conn = Connection::open_in_memory().unwrap();
        migrate(&conn, MIGRATIONS).unwrap();
        let broken = [MIGRATIONS, &["CREATE TABLE extra (id INTEGER)", "CREATE TABLE extra (id INTEGER)"]].concat();
        assert!(migrate(&conn, &broken).is_err());
        assert_eq!(version(&conn).unwrap(), known(MIGRATIONS));
        let extra: i64 =
            conn.query_row("SELECT count(*) FROM sqlite_schema WHERE name = 'extra'", [], |row| row.get(0)).unwrap();
        assert_eq!(extra, 0);
    }

    #[test]
    fn a_strangers_tables_are_not_added_to() {
        let conn = Connection::open_in_memory().unwrap();
        conn.execute_batch("CREATE TABLE recipes (id INTEGER)").unwrap();
        assert!(matches!(migrate(&conn, MIGRATIONS), Err(StoreError::NotAStudio)));
    }
}
