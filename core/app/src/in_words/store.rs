//! Why a studio, a photograph, a backup or a journal could not be read or kept, in words.

use super::Sentence;
use crate::messages::store as say;
use laydown_domain::truncate::truncate;
use laydown_store::backup::BackupError;
use laydown_store::journal::segment::{SegmentError, Wrong};
use laydown_store::photos::PhotoError;
use laydown_store::{Ingested, Recovered, Refusal, RefusedEntries, StoreError};

/// The most letters of the name of a damaged file that are repeated in a sentence: a backup may call its files anything.
const LONGEST_NAME: usize = 100;

impl Sentence for StoreError {
    fn sentence(&self) -> String {
        match self {
            StoreError::NotAStudio => say::not_a_studio(),
            StoreError::Newer { .. } => say::newer(),
            StoreError::Damaged { .. } => say::damaged(),
            StoreError::Busy => say::busy(),
            StoreError::Full => say::full(),
            StoreError::NotAllowed => say::not_allowed(),
            StoreError::NoFolder => say::no_folder(),
            StoreError::Removed => say::removed(),
            StoreError::Io { .. } => say::io(),
            StoreError::Forked { .. } => say::forked(),
            StoreError::BadEvent { .. } => say::bad_event(),
            StoreError::Fault { .. } => say::fault(),
        }
    }
}

impl Sentence for PhotoError {
    fn sentence(&self) -> String {
        match self {
            PhotoError::Empty => say::photo_empty(),
            PhotoError::Heic => say::photo_heic(),
            PhotoError::NoPicture => say::photo_no_picture(),
            PhotoError::TooLarge => say::photo_too_large(),
            PhotoError::Store(error) => error.sentence(),
        }
    }
}

impl Sentence for BackupError {
    fn sentence(&self) -> String {
        match self {
            BackupError::NotABackup => say::not_a_backup(),
            BackupError::Gone => say::backup_gone(),
            BackupError::Unreadable => say::backup_unreadable(),
            BackupError::Newer => say::backup_newer(),
            BackupError::Damaged { file } => say::backup_damaged(truncate(file, LONGEST_NAME)),
            BackupError::Behind => say::backup_behind(),
            BackupError::DamagedJournal => say::journal_damaged(),
            BackupError::Partly { events, why } => say::backup_partly(*events, why.sentence()),
            BackupError::Store(error) => error.sentence(),
        }
    }
}

impl Sentence for RefusedEntries {
    fn sentence(&self) -> String {
        match *self {
            RefusedEntries::Of { count, why } => match why {
                Refusal::Forked => say::refused_forked(count),
                Refusal::TooLarge => say::refused(count, "too_large"),
                Refusal::TooMany => say::refused(count, "too_many"),
                Refusal::TooManyDevices => say::refused(count, "too_many_devices"),
                Refusal::NoSuchNumber => say::refused(count, "no_such_number"),
            },
            RefusedEntries::OfOthers { count } => say::refused_of_others(count),
        }
    }
}

/// What was not taken in, a sentence each.
pub(crate) fn refusals(ingested: &Ingested) -> Vec<String> {
    ingested.refusals().iter().map(RefusedEntries::sentence).collect()
}

impl Sentence for Recovered {
    fn sentence(&self) -> String {
        match (self.saved, self.lost) {
            (0, 0) => say::recovered_nothing(),
            (saved, 0) => say::recovered_all(saved),
            (saved, lost) => say::recovered_some(saved, saved + lost),
        }
    }
}

impl Sentence for SegmentError {
    fn sentence(&self) -> String {
        let name = &self.name;
        match self.wrong {
            Wrong::Name => say::segment_name(name),
            Wrong::Cut => say::segment_cut(name),
            Wrong::Packing => say::segment_packing(name),
            Wrong::Sum => say::segment_sum(name),
            Wrong::Foreign => say::segment_foreign(name),
            Wrong::Newer => say::segment_newer(name),
            Wrong::Device => say::segment_device(name),
            Wrong::Gap => say::segment_gap(name),
            Wrong::Line(line) => say::segment_line(name, line),
            Wrong::TooLarge => say::segment_too_large(name),
        }
    }
}

#[cfg(test)]
mod tests {
    use std::path::PathBuf;

    use laydown_store::journal::DeviceId;
    use uuid::Uuid;

    use super::*;

    #[test]
    fn a_recovery_says_what_was_saved() {
        let said = |saved, lost| {
            Recovered { saved, lost, set_aside: PathBuf::new(), device: DeviceId(Uuid::nil()) }.sentence()
        };
        assert_eq!(
            said(1204, 6),
            "1204 of 1210 entries were saved, and the damaged file was kept beside the new one. If you have a backup, restore it now: it may bring back the rest."
        );
        assert_eq!(said(1204, 0), "All 1204 known entries were saved. The damaged file was kept beside the new one.");
        assert!(said(0, 0).starts_with("No entry could be read."));
    }
}
