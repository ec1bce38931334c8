//! What this phone knows of the place for sure: what it has read there, or put there and read back. Kept on this phone alone.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use crate::encryption::SEALED;

/// The most keys that did not open which are remembered.
const MOST_SHUT: usize = 64;

/// A record of one place.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct Record {
    /// The file of the key that this phone seals with, in hexadecimal digits. Only the passphrase opens it.
    pub(crate) key: Option<String>,
    /// SHA-256 of keys' files that this passphrase does not open.
    shut: BTreeSet<String>,
    /// Which of the unknown phones' keys have their turn next.
    pub(crate) turn: usize,
    /// Segments that were read whole, with their bytes as they lie there.
    pub(crate) segments: BTreeMap<String, u64>,
    /// Photographs by their SHA-256: where one lies, with its bytes as it lies there.
    pub(crate) photographs: BTreeMap<String, (String, u64)>,
}

impl Record {
    /// What was remembered; empty where another version wrote it in a way that cannot be read, which costs reading once more.
    pub(crate) fn of(text: Option<String>) -> Record {
        text.and_then(|text| serde_json::from_str(&text).ok()).unwrap_or_default()
    }

    /// Whether this phone ever put or read a file there that was not sealed.
    pub(crate) fn met_open(&self) -> bool {
        let photographs = self.photographs.values().map(|(path, _)| path);
        self.segments.keys().chain(photographs).any(|path| !path.ends_with(SEALED))
    }

    pub(crate) fn is_shut(&self, sum: &str) -> bool {
        self.shut.contains(sum)
    }

    pub(crate) fn remember_shut(&mut self, sum: String) {
        if self.shut.len() >= MOST_SHUT {
            self.shut.clear();
        }
        self.shut.insert(sum);
    }

    /// Another passphrase is tried: what the one before did not open, this one may.
    pub(crate) fn forget_shut(&mut self) {
        self.shut.clear();
    }
}
