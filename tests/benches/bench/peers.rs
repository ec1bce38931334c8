//! Merging beside the libraries that are made for it, and beside the bare insert: how fast, how small on the way, how much
//! memory.
//!
//! All get the same coats, of one form and one glaze, with weights and moments that vary; one device made them, and another
//! that has none takes them in whole. The clock runs from the bytes that came over the network until everything is merged.
//! Laydown's and the bare insert's are on the disk by then; yrs, loro and automerge hold them in memory, and would still have
//! to write them. The bare insert begins with rows in memory: the goal beside it is that of `merge`, where both do. Each merge
//! is a process of its own, so that what Linux says of its memory is of that merge alone: its peak, less what the process and
//! the bytes took before.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

use laydown_store::journal::Event;
use laydown_store::journal::segment::MOST_EVENTS;
use laydown_tests::{memory, open, segments};
use serde_json::{Value, json};

use crate::merge::{foreign, insert_bare};
use crate::timed;

/// The word that makes this program a child that merges: after it the studio to make and the segments.
pub const CHILD: &str = "merge-segments";

const LIBRARIES: [&str; 3] = ["yrs", "loro", "automerge"];
const RUNS: usize = 3;
/// As many as bytes and memory are looked at for.
const FEWER: usize = 20_000;
/// Packs best of the levels that are not much slower than it; segments are packed at the same one.
const LEVEL: i32 = 19;

const BYTES_GOAL: f64 = 70.0;
const MEMORY_GOAL: f64 = 40.0;

/// What is known of one way to merge; what was not measured or has no meaning is none.
#[derive(Default)]
struct Figures {
    rates: Vec<f64>,
    sent: Option<f64>,
    packed: Option<f64>,
    megabytes: Option<f64>,
}

impl Figures {
    fn rate(&self) -> f64 {
        let mut rates = self.rates.clone();
        rates.sort_by(f64::total_cmp);
        rates[rates.len() / 2]
    }

    fn print(&self, what: &str) {
        let rate = if self.rates.is_empty() { None } else { Some(self.rate()) };
        let cell =
            |figure: Option<f64>| figure.map_or_else(|| format!("{:>14}", "–"), |figure| format!("{figure:>14.0}"));
        println!("{what:<46}{}{}{}{}", cell(rate), cell(self.sent), cell(self.packed), cell(self.megabytes));
    }
}

pub fn rows() {
    let folder = tempfile::tempdir().unwrap();
    let (events, coats) = foreign(folder.path());
    // Bytes and memory are looked at for fewer: to pack all of theirs as small as can be takes minutes.
    let few = &events[..FEWER];
    let each = |bytes: usize| Some(bytes as f64 / FEWER as f64);
    let (mut ours, mut bare) = (Figures::default(), Figures::default());
    let mut theirs = LIBRARIES.map(|_| Figures::default());

    let (all, fewer) = (folder.path().join("all"), folder.path().join("fewer"));
    segments::write(&all, &events);
    ours.sent = each(segments::write(&fewer, few));
    let made = LIBRARIES.map(|library| [&events, few].map(|events| make(folder.path(), library, events)));
    for run in 0..RUNS {
        let merged = merge_ours(&folder.path().join(format!("ours-{run}")), &all, events.len());
        ours.rates.push(rate(&merged));
        for ((library, [all, _]), figures) in LIBRARIES.iter().zip(&made).zip(&mut theirs) {
            figures.rates.push(rate(&merge_theirs(library, all, events.len())));
        }
        let took = timed(|| insert_bare(&folder.path().join(format!("bare-peer-{run}")), &events, &coats));
        bare.rates.push(events.len() as f64 / took.as_secs_f64());
    }
    ours.megabytes = Some(megabytes(&merge_ours(&folder.path().join("ours-fewer"), &fewer, FEWER)));
    for ((library, [_, fewer]), figures) in LIBRARIES.iter().zip(&made).zip(&mut theirs) {
        let sent = fs::read(fewer).unwrap();
        (figures.sent, figures.packed) = (each(sent.len()), each(in_zstd(&sent)));
        figures.megabytes = Some(megabytes(&merge_theirs(library, fewer, FEWER)));
    }
    let lines = Figures {
        sent: each(json_lines(few).len()),
        packed: each(few.chunks(MOST_EVENTS).map(|lot| in_zstd(&json_lines(lot))).sum()),
        ..Figures::default()
    };

    println!(
        "{:<46}{:>14}{:>14}{:>14}{:>14}",
        "merging 100000 coats of another device", "a second", "B each sent", "B in zstd", "MB for 20000"
    );
    ours.print("laydown, from segments to the disk");
    bare.print("bare SQLite insert, from memory to the disk");
    for (library, figures) in LIBRARIES.iter().zip(&theirs) {
        figures.print(&format!("{library}, from an update to memory"));
    }
    lines.print("JSON lines");
    let met = |met: bool| if met { "met" } else { "MISSED" };
    let ahead = theirs[1..].iter().all(|figures| ours.rate() > figures.rate());
    println!("  faster than loro and automerge: {}", met(ahead));
    println!("  at most {BYTES_GOAL} B each on the way: {}", met(ours.sent <= Some(BYTES_GOAL)));
    println!("  at most {MEMORY_GOAL} MB for {FEWER}: {}", met(ours.megabytes <= Some(MEMORY_GOAL)));
}

/// What the child does: the segments of a folder, in order, into a new studio.
pub fn merge_segments(studio: &Path, folder: &Path) {
    let (mut records, mut took) = (0, Duration::ZERO);
    let needed = memory::needed(|| took = timed(|| records = segments::restore(&open(studio, 7), folder)));
    let memory = needed.expect("the peers are measured on Linux") * 1024;
    println!("{}", json!({"records": records, "seconds": took.as_secs_f64(), "memory": memory}));
}

fn json_lines(events: &[Event]) -> Vec<u8> {
    events
        .iter()
        .flat_map(|event| serde_json::to_string(event).unwrap().into_bytes().into_iter().chain([b'\n']))
        .collect()
}

fn in_zstd(bytes: &[u8]) -> usize {
    zstd::bulk::compress(bytes, LEVEL).unwrap().len()
}

fn peers() -> Command {
    let program = Path::new(env!("CARGO_MANIFEST_DIR")).join("../target/peers/release/laydown-peers");
    assert!(program.exists(), "the peers are not built: type make bench");
    Command::new(program)
}

/// What a library sends of these events, in a file.
fn make(folder: &Path, library: &str, events: &[Event]) -> PathBuf {
    let lines = folder.join(format!("{}.jsonl", events.len()));
    if !lines.exists() {
        fs::write(&lines, json_lines(events)).unwrap();
    }
    let sent = folder.join(format!("{library}-{}", events.len()));
    let made = peers().args([library, "make"]).args([&lines, &sent]).status().unwrap();
    assert!(made.success(), "{library}");
    sent
}

fn merge_theirs(library: &str, sent: &Path, records: usize) -> Value {
    answer(peers().args([library, "merge"]).arg(sent), records)
}

fn merge_ours(studio: &Path, segments: &Path, records: usize) -> Value {
    answer(Command::new(std::env::current_exe().unwrap()).arg(CHILD).args([studio, segments]), records)
}

fn answer(child: &mut Command, records: usize) -> Value {
    let output = child.output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let answer: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(answer["records"], records, "all of them");
    answer
}

fn rate(answer: &Value) -> f64 {
    answer["records"].as_f64().unwrap() / answer["seconds"].as_f64().unwrap()
}

fn megabytes(answer: &Value) -> f64 {
    answer["memory"].as_f64().unwrap() / 1e6
}
