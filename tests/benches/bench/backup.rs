//! A backup of a studio of a million coats: everything into one zip, and read again.
//!
//! The peer writes the same journal, as JSON lines in a file, into a zip as it is: no database, no tables, no sums, and it
//! does not read it again.

use std::fs::{self, File};
use std::io;
use std::path::Path;
use std::time::Duration;

use laydown_app::{Now, Studio};
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

use laydown_tests::NOW;

use crate::{Goal, row, store, timed};

const COATS: i64 = 1_000_000;
const GOAL: Duration = Duration::from_secs(60);

pub fn rows() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio");
    store::filled(&path, COATS);
    let studio = Studio::open(&path, Now { unix_ms: NOW, utc_offset_s: 0 }).unwrap();
    let (backup, journal, plain) =
        (folder.path().join("backup.zip"), folder.path().join("journal.jsonl"), folder.path().join("plain.zip"));
    let ours = timed(|| assert!(studio.back_up(&backup).unwrap().starts_with("1000")));
    studio.store().write_journal(&journal).unwrap();
    let peer = timed(|| zipped(&journal, &plain));
    row(&format!("back up {COATS} coats and read it again"), vec![ours], vec![peer], Goal::Within(GOAL));
    let [journal, backup, plain] = [journal, backup, plain].map(|file| fs::metadata(file).unwrap().len() / 1_000_000);
    println!("  {backup} MB, with the tables; peer {plain} MB, of {journal} MB of JSON lines");
}

fn zipped(journal: &Path, into: &Path) {
    let mut zip = ZipWriter::new(File::create(into).unwrap());
    zip.start_file("journal.jsonl", SimpleFileOptions::default().large_file(true)).unwrap();
    io::copy(&mut File::open(journal).unwrap(), &mut zip).unwrap();
    zip.finish().unwrap().sync_all().unwrap();
}
