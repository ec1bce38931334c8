//! Hostile bytes for everything that reads bytes from elsewhere: whatever they are, they are read or refused with a sentence,
//! within so much memory and time, and nothing panics.
//!
//! Each [`Target`] is one reader. Where sums stand before it, its bytes are a script by which a good file is changed and
//! summed again, so that what lies behind the sums is reached too. `tests/short.rs` runs them all for some seconds, the same
//! way each time; `libfuzzer` lets libFuzzer look for new ways, for as long as it is told.

mod backup;
mod database;
mod events;
pub mod hostile;
mod memory;
mod numbers;
mod photo;
mod script;
mod segment;
mod spreadsheet;
mod swarm;

use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;

use laydown_app::Now;
use laydown_app::in_words::Sentence;
use tempfile::TempDir;

pub use swarm::Swarm;

/// The longest that one input may take a processor. An optimised build takes a fraction of it.
const LONGEST: Duration = Duration::from_secs(8);
/// When the invented things happen.
const NOW: Now = Now { unix_ms: laydown_tests::NOW, utc_offset_s: 3_600 };

/// One reader of foreign bytes.
#[derive(Clone, Copy)]
pub struct Target {
    /// What it is called, as its folder in the corpus is.
    pub name: &'static str,
    /// Inputs to begin with.
    pub seeds: fn() -> Vec<Vec<u8>>,
    /// What is read, made of an input.
    make: fn(&[u8]) -> Vec<u8>,
    read: fn(&[u8]),
    /// The most megabytes it may hold at once.
    most_megabytes: usize,
}

/// All of them.
pub const TARGETS: [Target; 11] = [
    Target { name: "segment", seeds: segment::packed, make: as_it_is, read: segment::read, most_megabytes: 80 },
    Target {
        name: "lines",
        seeds: segment::lines,
        make: segment::pack_lines,
        read: segment::read,
        most_megabytes: 200,
    },
    Target {
        name: "spreadsheet",
        seeds: spreadsheet::seeds,
        make: as_it_is,
        read: spreadsheet::read,
        most_megabytes: 60,
    },
    Target { name: "backup", seeds: backup::seeds, make: as_it_is, read: backup::read, most_megabytes: 80 },
    Target { name: "archive", seeds: script::seeds, make: backup::changed, read: backup::read, most_megabytes: 200 },
    Target { name: "photo", seeds: photo::seeds, make: as_it_is, read: photo::read, most_megabytes: 400 },
    Target { name: "metadata", seeds: script::seeds, make: photo::changed, read: photo::read, most_megabytes: 400 },
    Target { name: "numbers", seeds: numbers::seeds, make: as_it_is, read: numbers::read, most_megabytes: 1 },
    Target { name: "body", seeds: database::bodies, make: as_it_is, read: database::read_body, most_megabytes: 2 },
    Target { name: "events", seeds: script::seeds, make: events::changed, read: events::read, most_megabytes: 40 },
    Target {
        name: "pages",
        seeds: script::seeds,
        make: database::changed,
        read: database::read_pages,
        most_megabytes: 40,
    },
];

impl Target {
    /// The target of this name.
    ///
    /// # Panics
    /// When there is none.
    pub fn named(name: &str) -> Target {
        *TARGETS.iter().find(|target| target.name == name).unwrap_or_else(|| panic!("there is no target {name}"))
    }

    /// Reads what is made of this input, and answers with how many bytes it held at once.
    ///
    /// # Panics
    /// When anything about it is not as it should be.
    pub fn run(&self, input: &[u8]) -> usize {
        let made = (self.make)(input);
        let start = on_processor();
        let most = memory::most_during(|| (self.read)(&made));
        let took = on_processor() - start;
        assert!(most <= self.most_megabytes << 20, "{}: held {} MB at once", self.name, most >> 20);
        assert!(took <= LONGEST, "{}: took {took:.1?}", self.name);
        most
    }

    /// Inputs that once found something, by the name of their file.
    pub fn corpus(&self) -> Vec<(String, Vec<u8>)> {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("corpus").join(self.name);
        let mut files: Vec<PathBuf> = match fs::read_dir(&folder) {
            Ok(entries) => entries.map(|entry| entry.unwrap().path()).collect(),
            Err(_) => Vec::new(),
        };
        files.sort();
        files.into_iter().map(|file| (file.display().to_string(), fs::read(&file).unwrap())).collect()
    }
}

/// How long this thread has been on a processor, whatever else the machine does meanwhile. Linux alone tells; elsewhere no time
/// passes.
fn on_processor() -> Duration {
    let told = fs::read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
    told.split_ascii_whitespace().next().and_then(|ns| ns.parse().ok()).map_or(Duration::ZERO, Duration::from_nanos)
}

fn as_it_is(input: &[u8]) -> Vec<u8> {
    input.to_vec()
}

/// What is refused is refused in a sentence: one that begins and ends as sentences do and fits onto a screen.
fn is_sentence(error: impl Sentence) {
    let text = error.sentence();
    // Many begin with the number or the word that is wrong.
    let begins =
        text.starts_with(|first: char| first.is_uppercase() || first.is_ascii_digit() || "“-−".contains(first));
    let shown: String = text.chars().take(400).collect();
    assert!(begins && text.ends_with(['.', '?']) && shown == text, "no sentence: {shown:?}");
}

/// A folder for the files of one target: in memory where the system has such a place, since there are many of them.
fn folder() -> TempDir {
    let in_memory = Path::new("/dev/shm");
    if in_memory.is_dir() { tempfile::tempdir_in(in_memory).unwrap() } else { tempfile::tempdir().unwrap() }
}
