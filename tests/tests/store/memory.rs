//! What is large is gone through bit by bit. Each time in a process of its own, so that what Linux says of its memory is of that
//! alone.
#![cfg(target_os = "linux")]

use std::fs::{self, File};
use std::io::{BufWriter, Write};
use std::path::Path;

use laydown_store::entity::{Coat, Entity};
use laydown_store::journal::SeededIds;
use laydown_store::{Committed, Store, StoreError, devices, events_after};
use serde_json::{Value, json};

use laydown_tests::{NOW, coat, furnish, open, segments};

use crate::disasters::{OTHER_PROCESS, other};

/// Phones are small: the most that any of this may take beside what a process has anyway.
const MOST_KILOBYTES: u64 = 40_000;

#[test]
fn merging_twenty_thousand_events_of_another_phone() {
    let folder = tempfile::tempdir().unwrap();
    let theirs = open(&folder.path().join("theirs"), 1);
    import(&theirs, 20_000);
    let events = theirs.read(|conn| events_after(conn, theirs.device(), 0)).unwrap();
    let folder_of_segments = folder.path().join("segments");
    segments::write(&folder_of_segments, &events);
    let path = folder.path().join("merged");
    stays_small("merge", &path, &folder_of_segments);
    let merged = open(&path, 7);
    assert!(merged.read(devices).unwrap().contains(&(theirs.device(), events.len() as i64)));
    assert!(merged.dump().unwrap() == theirs.dump().unwrap());
}

#[test]
fn taking_back_an_import_of_a_hundred_thousand_readings_and_doing_it_again() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio");
    let store = open(&path, 1);
    let undo = import(&store, 100_000).undo;
    drop(store);
    let token = folder.path().join("token");
    fs::write(&token, serde_json::to_vec(&undo).unwrap()).unwrap();
    let coats = || open(&path, 1).read(Coat::all).unwrap().len();
    stays_small("undo", &path, &token);
    assert_eq!(coats(), 0);
    stays_small("redo", &path, &token);
    assert_eq!(coats(), 100_000);
}

#[test]
fn a_journal_of_lines_that_would_become_ten_times_as_large() {
    let folder = tempfile::tempdir().unwrap();
    let store = open(&folder.path().join("theirs"), 1);
    furnish(&store);
    let journal = folder.path().join("journal.jsonl");
    store.write_journal(&journal).unwrap();
    let text = fs::read_to_string(&journal).unwrap();
    let (head, events) = text.split_once('\n').unwrap();
    let mut event: Value = serde_json::from_str(events.lines().next().unwrap()).unwrap();
    event["body"]["name"] = vec![json!([]); 300_000].into();
    let line = event.to_string();
    let mut file = BufWriter::new(File::create(&journal).unwrap());
    writeln!(file, "{head}").unwrap();
    (0..100).for_each(|_| writeln!(file, "{line}").unwrap());
    file.flush().unwrap();
    stays_small("refuse", &folder.path().join("studio"), &journal);
}

#[test]
fn backing_up_a_hundred_thousand_coats_and_taking_them_in() {
    let folder = tempfile::tempdir().unwrap();
    let (path, backup) = (folder.path().join("studio"), folder.path().join("backup.zip"));
    let store = open(&path, 1);
    import(&store, 100_000);
    stays_small("back up", &path, &backup);
    let restored = folder.path().join("restored");
    stays_small("take in", &restored, &backup);
    assert!(open(&restored, 7).dump().unwrap() == store.dump().unwrap());
}

/// Saves so many coats in one command.
fn import(store: &Store, coats: i64) -> Committed<()> {
    let bench = furnish(store);
    let mut ids = SeededIds::new(3);
    let saved = store.transact::<_, StoreError>(NOW, |tx| {
        (0..coats).try_for_each(|number| tx.put(&coat(&bench, &mut ids, number)).map(|_| ()))
    });
    saved.unwrap()
}

fn stays_small(what: &str, studio: &Path, file: &Path) {
    let output = other(Path::new(OTHER_PROCESS), "", what, studio).arg(file).output().unwrap();
    let said = String::from_utf8(output.stdout).unwrap();
    let taken: u64 = said.trim().strip_prefix("memory ").unwrap().parse().unwrap();
    assert!(taken < MOST_KILOBYTES, "{what}: {taken} kB");
}
