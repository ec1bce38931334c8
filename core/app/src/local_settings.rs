//! What this phone remembers for itself: a record under a name in the table `chosen`, as JSON.

use rusqlite::Connection;
use serde::Serialize;
use serde::de::DeserializeOwned;

use super::Result;
use laydown_store::{StoreError, Transaction, chosen};

/// Remembers `what` under `name`, in the place of what was remembered there.
pub(super) fn remember(tx: &mut Transaction<'_>, name: &str, what: &impl Serialize) -> Result<()> {
    let text = serde_json::to_string(what).map_err(|error| StoreError::Fault { details: error.to_string() })?;
    Ok(tx.choose(name, Some(&text))?)
}

/// What is remembered under `name`. What cannot be read of it was written by another version: it is only a convenience, and
/// counts as nothing.
pub(super) fn remembered<T: DeserializeOwned>(conn: &Connection, name: &str) -> Result<Option<T>> {
    Ok(read(conn, name)?.and_then(serde_json::Result::ok))
}

/// The same for what is relied on: what cannot be read is damaged.
pub(super) fn relied_on<T: DeserializeOwned>(conn: &Connection, name: &str) -> Result<Option<T>> {
    read(conn, name)?.transpose().map_err(|error| StoreError::Damaged { details: error.to_string() }.into())
}

fn read<T: DeserializeOwned>(conn: &Connection, name: &str) -> Result<Option<serde_json::Result<T>>> {
    Ok(chosen(conn, name)?.map(|text| serde_json::from_str(&text)))
}
