//! What is asked of this device's studio, and how a [`Store`] answers it.

use std::collections::{BTreeMap, BTreeSet};
use std::time::{SystemTime, UNIX_EPOCH};

use laydown_store::journal::{DeviceId, Event};
use laydown_store::photos::verified;
use laydown_store::{Ingested, Store, StoreError, chosen, events_in, query, without_gaps};

/// Under this name a phone remembers what it knows of its sync location. It holds for one place only.
pub const SYNC_RECORD: &str = "sync_record";

/// A studio that can be kept alike with others.
pub trait Journal {
    /// This device.
    fn device(&self) -> DeviceId;

    /// How far each device's events are here: the sequence number of the last, from the first on without a gap.
    ///
    /// # Errors
    /// When the studio cannot be read.
    fn version(&self) -> Result<BTreeMap<DeviceId, i64>, StoreError>;

    /// The events of `device` from `first` to `last`, both included, in order.
    ///
    /// # Errors
    /// When the studio cannot be read.
    fn events(&self, device: DeviceId, first: i64, last: i64) -> Result<Vec<Event>, StoreError>;

    /// Takes events in, and says how many were new and which were refused.
    ///
    /// # Errors
    /// When they cannot be kept.
    fn ingest_events(&self, events: &[Event]) -> Result<Ingested, StoreError>;

    /// The photographs that records name, and the bytes of each whose file is here.
    ///
    /// # Errors
    /// When the studio cannot be read.
    fn photographs(&self) -> Result<BTreeMap<String, Option<u64>>, StoreError>;

    /// The file of a photograph that is here.
    ///
    /// # Errors
    /// When it cannot be read.
    fn photograph(&self, sha256: &str) -> Result<Vec<u8>, StoreError>;

    /// Saves the file of a photograph; says whether it is that photograph.
    ///
    /// # Errors
    /// When it cannot be kept.
    fn adopt(&self, sha256: &str, picture: &[u8]) -> Result<bool, StoreError>;

    /// What [`Journal::remember`] was given last; `None` where that was never, or for another place.
    ///
    /// # Errors
    /// When the studio cannot be read.
    fn remembered(&self) -> Result<Option<String>, StoreError>;

    /// Remembers what this device knows of the place, on this device alone.
    ///
    /// # Errors
    /// When it cannot be written.
    fn remember(&self, text: &str) -> Result<(), StoreError>;
}

impl Journal for Store {
    fn device(&self) -> DeviceId {
        Store::device(self)
    }

    fn version(&self) -> Result<BTreeMap<DeviceId, i64>, StoreError> {
        self.read(|conn| Ok(without_gaps(conn)?.into_iter().collect()))
    }

    fn events(&self, device: DeviceId, first: i64, last: i64) -> Result<Vec<Event>, StoreError> {
        self.read(|conn| events_in(conn, device, first, last))
    }

    fn ingest_events(&self, events: &[Event]) -> Result<Ingested, StoreError> {
        self.merge(now_ms(), events)
    }

    fn photographs(&self) -> Result<BTreeMap<String, Option<u64>>, StoreError> {
        let names: BTreeSet<String> = self.read(query::photo_names)?;
        let sized = names.into_iter().map(|name| {
            let here = self.photos().has(&name);
            let size = here.then(|| std::fs::metadata(self.photos().file(&name)).map(|file| file.len())).transpose()?;
            Ok((name, size))
        });
        sized.collect()
    }

    fn photograph(&self, sha256: &str) -> Result<Vec<u8>, StoreError> {
        Ok(std::fs::read(self.photos().file(sha256))?)
    }

    /// The preview is made here again: it is quicker than fetching it, and only a picture that can be read is kept.
    fn adopt(&self, sha256: &str, picture: &[u8]) -> Result<bool, StoreError> {
        let Ok(photo) = verified(sha256, picture.to_vec()) else { return Ok(false) };
        self.photos().put(&photo)?;
        self.commit_staged_photos()?;
        Ok(true)
    }

    fn remembered(&self) -> Result<Option<String>, StoreError> {
        self.read(|conn| chosen(conn, SYNC_RECORD))
    }

    fn remember(&self, text: &str) -> Result<(), StoreError> {
        self.transact(now_ms(), |tx| tx.choose(SYNC_RECORD, Some(text)))?;
        Ok(())
    }
}

/// Unix time, ms. It only dates the taking in; events bring their own clock.
fn now_ms() -> i64 {
    let since = SystemTime::now().duration_since(UNIX_EPOCH).unwrap_or_default();
    i64::try_from(since.as_millis()).unwrap_or(i64::MAX)
}
