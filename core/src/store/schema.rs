//! The tables and how they came to be: a list of steps, never edited once released, only added to.

use rusqlite::{Connection, TransactionBehavior};

use super::error::StoreError;
use super::transaction;

/// Says "a studio of laydown" in the header of the file (`PRAGMA application_id`): the letters `LAYD`.
pub(super) const APPLICATION_ID: i64 = i64::from_be_bytes(*b"\0\0\0\0LAYD");

/// The steps. The version of a file (`PRAGMA user_version`) is the number of steps it has taken.
pub(super) const STEPS: &[&str] = &[include_str!("schema/0001_journal_and_tables.sql")];

/// Takes the steps that the file has not taken yet, all or none, and marks the file as ours.
///
/// Where a file with events in it climbs, its folds are made again afterwards, so a step may drop and create those
/// tables as it likes; only the journal has to be carried over.
pub(super) fn climb(conn: &Connection, steps: &[&str]) -> Result<(), StoreError> {
    if version(conn)? == known(steps) {
        return Ok(());
    }
    let tx = rusqlite::Transaction::new_unchecked(conn, TransactionBehavior::Immediate)?;
    // Asked again under the lock: another process may have climbed in between.
    let found = version(&tx)?;
    let missing = usize::try_from(found).ok().and_then(|taken| steps.get(taken..));
    let Some(missing) = missing else { return Err(StoreError::Newer { found, known: known(steps) }) };
    for step in missing {
        tx.execute_batch(step)?;
    }
    tx.pragma_update(None, "application_id", APPLICATION_ID)?;
    tx.pragma_update(None, "user_version", known(steps))?;
    if found > 0 {
        transaction::rebuild(&tx)?;
    }
    tx.commit()?;
    Ok(())
}

/// The number of steps the file has taken.
pub(super) fn version(conn: &Connection) -> Result<i64, StoreError> {
    Ok(conn.pragma_query_value(None, "user_version", |row| row.get(0))?)
}

/// The number of steps this program knows.
pub(super) fn known(steps: &[&str]) -> i64 {
    i64::try_from(steps.len()).unwrap_or(i64::MAX)
}
