//! What is in a bucket today: followed from its checks, from what was written down of it, and from the coats out of it.

use rusqlite::Connection;
use uuid::Uuid;

use super::archive::found;
use super::date_text::DAY_MS;
use super::evidence::{powder_density, sg_of};
use super::{Now, Result};
use laydown_domain::glaze::bucket::{BucketError, Change, Contents, EntryKind, volume_at_level};
use laydown_domain::glaze::sg_age::{self, Rise};
use laydown_domain::glaze::slurry::{SgReading, SlurryError};
use laydown_domain::units::{Grams, Millilitres, Millimetres};
use laydown_store::{entity, query};

/// So many checks of a bucket say how far its SG walks and how fast it rises: the newest, as the studio and the weather change.
const CHECKS: u32 = 30;
/// So many entries of a bucket are followed.
const ENTRIES: u32 = 500;
/// No bucket gives more coats than this before somebody looks into it: 2,000 of 20 g are 40 kg.
const COATS: u32 = 2_000;

/// What is known of a bucket, newest first.
pub(super) struct BucketHistory {
    bucket: Uuid,
    pub(super) checks: Vec<entity::Check>,
    pub(super) entries: Vec<entity::BucketEntry>,
}

impl BucketHistory {
    /// Of the bucket `id`.
    pub(super) fn read(conn: &Connection, id: Uuid) -> Result<BucketHistory> {
        let checks = query::checks(conn, id, CHECKS)?;
        Ok(BucketHistory { bucket: id, checks, entries: query::bucket_entries(conn, id, i64::MIN, ENTRIES)? })
    }

    /// How far its SG walks in a day, and how fast it rises.
    pub(super) fn walk_and_rise(&self) -> (f64, Rise) {
        let checks: Vec<_> =
            self.checks.iter().filter_map(|check| Some((days(check.at), sg_of(check).ok()?))).collect();
        let changed: Vec<f64> = self.changes_of_sg().map(|entry| days(entry.at)).collect();
        (sg_age::walk(&checks, &changed), sg_age::rise(&checks, &changed))
    }

    /// What a check of `at` (unix ms) found, as it is to be expected `now`: after water and powder that were written down since, risen
    /// as this bucket rises, and as sure as it still is.
    pub(super) fn sg_today(&self, conn: &Connection, now: Now, reading: SgReading, at: i64) -> Result<SgReading> {
        let mut reading = reading;
        if self.is_changed_since(at) {
            let bucket: entity::Bucket = found(conn, self.bucket)?;
            reading = self.contents(conn, &bucket, &found(conn, bucket.glaze)?)?.sg;
        }
        Ok(self.expected(reading, now.unix_ms.saturating_sub(at)))
    }

    /// What was found so many milliseconds before, as it is to be expected where nothing was written down since.
    pub(super) fn expected(&self, reading: SgReading, ms: i64) -> SgReading {
        let (walk, rise) = self.walk_and_rise();
        sg_age::projected(reading, days(ms), walk, rise)
    }

    /// The volumes that its levels say, with the moment of each (unix ms), newest first.
    pub(super) fn levels(&self, bucket: &entity::Bucket) -> Vec<(i64, Millilitres)> {
        let volume = |entry: &entity::BucketEntry| match change(entry, bucket) {
            Some(Change::Holds(volume)) => Some((entry.at, volume)),
            _ => None,
        };
        self.entries.iter().filter_map(volume).collect()
    }

    /// The entries that changed its SG.
    fn changes_of_sg(&self) -> impl Iterator<Item = &entity::BucketEntry> {
        self.entries.iter().filter(|entry| changes_sg(entry))
    }

    /// Whether water or powder went in or out after `at` (unix ms).
    pub(super) fn is_changed_since(&self, at: i64) -> bool {
        self.changes_of_sg().any(|entry| entry.at > at)
    }

    /// What is in the bucket, as it was last seen and after all that was written down since. Its SG is no surer for being older: see
    /// [`BucketHistory::sg_today`].
    pub(super) fn contents(
        &self,
        conn: &Connection,
        bucket: &entity::Bucket,
        glaze: &entity::Glaze,
    ) -> Result<Contents> {
        let mixed =
            bucket.volume_ul.map(|volume| (bucket.mixed_at, Change::Holds(Millilitres::from_microlitres(volume))));
        let mut changes: Vec<(i64, Change)> = mixed.into_iter().collect();
        changes.extend(self.checks.iter().filter_map(|check| Some((check.at, Change::Checked(sg_of(check).ok()?)))));
        changes.extend(self.entries.iter().filter_map(|entry| Some((entry.at, change(entry, bucket)?))));
        let is_volume = |change: &Change| matches!(change, Change::Holds(_) | Change::Weighs(_));
        let seen = changes.iter().filter(|(_, change)| is_volume(change)).map(|(at, _)| *at).max();
        // Coats from before the volume was seen last, or of a bucket of no known volume, change nothing.
        if let Some(seen) = seen {
            let coats = query::wet_from_bucket(conn, bucket.id, seen, COATS)?;
            changes.extend(coats.into_iter().map(|(at, net)| (at, Change::Taken(Grams::from_milligrams(net)))));
        }
        changes.sort_by_key(|(at, _)| *at);
        let start = Contents { volume: None, sg: SgReading::unchecked() };
        let density = powder_density(glaze);
        Ok(changes.into_iter().fold(start, |contents, (_, change)| contents.after(change, density)))
    }
}

fn changes_sg(entry: &entity::BucketEntry) -> bool {
    matches!(entry.what.parse(), Ok(EntryKind::Water | EntryKind::WaterOff | EntryKind::Powder))
}

/// Whether water or powder went into the bucket `id`, or out of it, after `at` (unix ms).
pub(super) fn is_changed_since(conn: &Connection, id: Uuid, at: i64) -> Result<bool> {
    Ok(query::bucket_entries(conn, id, at.saturating_add(1), ENTRIES)?.iter().any(changes_sg))
}

/// What an entry changed; `None` of what changes neither volume nor SG, or cannot be.
fn change(entry: &entity::BucketEntry, bucket: &entity::Bucket) -> Option<Change> {
    let volume = || entry.volume_ul.map(Millilitres::from_microlitres);
    match entry.what.parse().ok()? {
        EntryKind::Water => volume().map(Change::Water),
        EntryKind::WaterOff => volume().map(Change::WaterOff),
        EntryKind::Powder => entry.amount_mg.map(Grams::from_milligrams).map(Change::Powder),
        EntryKind::Level => {
            let level = Millimetres::from_micrometres(entry.level_um?);
            volume_at(bucket, level)?.ok().map(Change::Holds)
        }
        EntryKind::Weighed => glaze_in(bucket, Grams::from_milligrams(entry.amount_mg?))?.ok().map(Change::Weighs),
        EntryKind::Flocculant | EntryKind::Deflocculant | EntryKind::Sieved | EntryKind::Note => None,
    }
}

/// What a bucket holds up to a level; `None` where nobody has measured the bucket.
pub(super) fn volume_at(bucket: &entity::Bucket, level: Millimetres) -> Option<Result<Millilitres, BucketError>> {
    let diameter = bucket.diameter_um.map(Millimetres::from_micrometres)?;
    Some(volume_at_level(diameter, bucket.depth_um.map(Millimetres::from_micrometres), level))
}

/// The glaze in a bucket of which both together weigh so much; `None` where nobody has weighed the bucket empty.
pub(super) fn glaze_in(bucket: &entity::Bucket, full: Grams) -> Option<Result<Grams, SlurryError>> {
    let glaze = full - bucket.empty_mg.map(Grams::from_milligrams)?;
    Some(if glaze.is_positive() { Ok(glaze) } else { Err(SlurryError::EmptyVessel) })
}

fn days(ms: i64) -> f64 {
    ms as f64 / DAY_MS as f64
}
