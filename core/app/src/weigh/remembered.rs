//! What the Weigh screen remembers on this phone: the entry, and which bucket each zone was glazed from last, so that going back
//! to the insides brings their liner back.

use std::collections::BTreeMap;

use rusqlite::Connection;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{NextCoat, WeighEntry};
use crate::Result;
use crate::local_settings::{remember, remembered};
use laydown_store::Transaction;

const KEY: &str = "weigh";

/// What is remembered. Earlier versions remembered the entry alone.
#[derive(Debug, Default, Serialize, Deserialize)]
pub(super) struct Remembered {
    #[serde(flatten)]
    pub(super) entry: WeighEntry,
    /// The id of a zone's bucket, by the zone's code.
    #[serde(default)]
    zone_buckets: BTreeMap<String, String>,
}

impl Remembered {
    pub(super) fn load(conn: &Connection) -> Result<Remembered> {
        Ok(remembered(conn, KEY)?.unwrap_or_default())
    }

    pub(super) fn save(&self, tx: &mut Transaction<'_>) -> Result<()> {
        remember(tx, KEY, self)
    }

    /// The same with `entry` as the last one, and its bucket as that of its zone.
    pub(super) fn with(mut self, entry: &WeighEntry) -> Remembered {
        self.entry = self.in_its_bucket_unless_given(entry.clone());
        if let Some(zone) = self.entry.zone.filter(|_| !self.entry.bucket.is_empty()) {
            self.zone_buckets.insert(zone.code().to_owned(), self.entry.bucket.clone());
        }
        self
    }

    /// `entry` with the bucket of its zone; with its own where the zone has none yet.
    pub(super) fn in_its_bucket(&self, entry: WeighEntry) -> WeighEntry {
        let bucket = entry.zone.and_then(|zone| self.zone_buckets.get(zone.code())).unwrap_or(&entry.bucket).clone();
        WeighEntry { bucket, ..entry }
    }

    /// The same for what is offered next.
    pub(super) fn next_coats(&self, coats: Vec<NextCoat>) -> Vec<NextCoat> {
        coats.into_iter().map(|coat| NextCoat { entry: self.in_its_bucket(coat.entry), ..coat }).collect()
    }

    /// Where `entry` leaves the bucket open: that of its zone, or the last one.
    fn in_its_bucket_unless_given(&self, entry: WeighEntry) -> WeighEntry {
        if !entry.bucket.is_empty() {
            return entry;
        }
        self.in_its_bucket(WeighEntry { bucket: self.entry.bucket.clone(), ..entry })
    }
}

/// The buckets that were weighed from on this phone: the last one, then that of each zone.
pub(crate) fn weighed_from(conn: &Connection) -> Result<Vec<Uuid>> {
    let remembered = Remembered::load(conn)?;
    let ids = [&remembered.entry.bucket].into_iter().chain(remembered.zone_buckets.values());
    Ok(ids.filter_map(|id| id.parse().ok()).collect())
}

/// The bucket of `entry`; where it names a zone and no bucket, the one that this zone was glazed from last.
pub(super) fn bucket_of(conn: &Connection, entry: &WeighEntry) -> Result<String> {
    if !entry.bucket.is_empty() || entry.zone.is_none() {
        return Ok(entry.bucket.clone());
    }
    Ok(Remembered::load(conn)?.in_its_bucket_unless_given(entry.clone()).bucket)
}
