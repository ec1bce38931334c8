//! Hostile files made on purpose, each as many bytes as it is told at most: bombs, lies and floods for every reader of bytes
//! from elsewhere. Random changes of good files do not find these.

mod archive;
mod picture;
mod segment;
mod spreadsheet;
mod studio;

use std::fs;
use std::sync::mpsc;
use std::thread;
use std::time::Duration;

use laydown_app::Studio;
use laydown_domain::form::silhouette::trace;
use laydown_store::backup::check_backup;
use laydown_store::journal::SeededIds;
use laydown_store::journal::segment::unpack;
use laydown_store::photos::prepare_photo;
use laydown_store::recover;
use laydown_tests::open;

use crate::{NOW, folder, is_sentence, memory, on_processor};

/// So many times as long as it may take a processor, it may take by the clock: others may have the processors meanwhile.
const PATIENCE: u32 = 20;

/// What one input may cost, by its size.
#[derive(Clone, Copy)]
pub struct Cost {
    /// The most bytes of the input.
    pub input: usize,
    /// The most bytes that reading it holds at once.
    pub memory: usize,
    /// The longest that it takes a processor.
    pub time: Duration,
}

/// The goals.
pub const COSTS: [Cost; 2] = [
    Cost { input: 1_000_000, memory: 100_000_000, time: Duration::from_secs(2) },
    Cost { input: 10_000_000, memory: 200_000_000, time: Duration::from_secs(10) },
];

/// One way to be hostile: its name, and what makes a file of at most so many bytes.
type Maker = (&'static str, fn(usize) -> Vec<u8>);

/// A reader, as the app calls it, and what is made for it.
#[derive(Clone, Copy)]
pub struct Reader {
    /// What it is called.
    pub name: &'static str,
    read: fn(&[u8]),
    makers: &'static [Maker],
}

/// All of them.
pub const READERS: [Reader; 8] = [
    Reader { name: "check a backup", read: check, makers: archive::MAKERS },
    Reader { name: "take in a backup", read: restore, makers: archive::MAKERS },
    Reader { name: "take in a journal", read: restore, makers: archive::JOURNALS },
    Reader { name: "segment", read: read_segment, makers: segment::MAKERS },
    Reader { name: "spreadsheet", read: import, makers: spreadsheet::MAKERS },
    Reader { name: "photograph", read: save_photo, makers: picture::MAKERS },
    Reader { name: "photograph of a form", read: trace_photo, makers: picture::MAKERS },
    Reader { name: "damaged studio", read: recover_studio, makers: studio::MAKERS },
];

impl Reader {
    /// The reader of this name.
    ///
    /// # Panics
    /// When there is none.
    pub fn named(name: &str) -> Reader {
        *READERS.iter().find(|reader| reader.name == name).unwrap_or_else(|| panic!("there is no reader {name}"))
    }

    /// Reads one of each kind, and answers with what was wrong.
    pub fn failures(&self, cost: Cost) -> Vec<String> {
        self.makers.iter().filter_map(|(maker, make)| self.failure(maker, make(cost.input), cost)).collect()
    }

    fn failure(&self, maker: &str, input: Vec<u8>, cost: Cost) -> Option<String> {
        let (name, read, size) = (self.name, self.read, input.len());
        let (done, wait) = mpsc::channel();
        thread::spawn(move || {
            let start = on_processor();
            let most = memory::most_during(|| read(&input));
            // Nobody waits any more when it took too long.
            let _ = done.send((most, on_processor() - start));
        });
        let said = match wait.recv_timeout(cost.time * PATIENCE) {
            Ok((memory, time)) => {
                let fits = size <= cost.input && memory <= cost.memory && time <= cost.time;
                let said = format!("{maker}: {size} bytes held {} MB and took {time:.2?}", memory / 1_000_000);
                eprintln!("{name}, {said}");
                return (!fits).then_some(said);
            }
            Err(mpsc::RecvTimeoutError::Timeout) => "does not end",
            Err(mpsc::RecvTimeoutError::Disconnected) => "panics",
        };
        eprintln!("{name}, {maker}: {said}");
        Some(format!("{maker}: {said}"))
    }
}

fn check(bytes: &[u8]) {
    let folder = folder();
    let file = folder.path().join("backup.zip");
    fs::write(&file, bytes).unwrap();
    if let Err(error) = check_backup(&file) {
        is_sentence(error);
    }
}

fn restore(bytes: &[u8]) {
    let folder = folder();
    let file = folder.path().join("backup.zip");
    fs::write(&file, bytes).unwrap();
    let studio = Studio::open(&folder.path().join("studio.laydown"), NOW).unwrap();
    match studio.restore(NOW, &file) {
        Ok(said) => is_sentence(said),
        Err(error) => is_sentence(error),
    }
}

fn read_segment(bytes: &[u8]) {
    if let Err(error) = unpack(&segment::NAME, bytes) {
        is_sentence(error);
    }
}

fn import(bytes: &[u8]) {
    let folder = folder();
    let file = folder.path().join("sheet.csv");
    fs::write(&file, bytes).unwrap();
    let studio = Studio::open(&folder.path().join("studio.laydown"), NOW).unwrap();
    match studio.import(NOW, &file, &[]) {
        Ok(view) => assert!(!view.columns.is_empty()),
        Err(error) => is_sentence(error),
    }
}

fn save_photo(bytes: &[u8]) {
    if let Err(error) = prepare_photo(bytes) {
        is_sentence(error);
    }
}

fn trace_photo(bytes: &[u8]) {
    if let Err(error) = trace(bytes) {
        is_sentence(error);
    }
}

fn recover_studio(bytes: &[u8]) {
    let folder = folder();
    let path = folder.path().join("studio.laydown");
    fs::write(&path, bytes).unwrap();
    match recover(&path, NOW.unix_ms, SeededIds::new(7)) {
        Ok(done) => {
            is_sentence(&done);
            drop(open(&path, 7));
        }
        Err(error) => is_sentence(error),
    }
}
