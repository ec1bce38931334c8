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
    include_str!("schema/0006_firings_and_pieces.sql"),
