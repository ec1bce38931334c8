//! Segments as files in a folder, by their names.

use std::fs;
use std::path::{Path, PathBuf};

use laydown_store::Store;
use laydown_store::journal::Event;
use laydown_store::journal::segment::{MOST_EVENTS, Name, pack, unpack};

use crate::NOW;

/// Writes the events of one device into `folder`, and answers with the bytes of all files.
pub fn write(folder: &Path, events: &[Event]) -> usize {
    let written = events.chunks(MOST_EVENTS).map(|lot| {
        let segment = pack(lot).unwrap();
        let file = folder.join(segment.name.to_string());
        fs::create_dir_all(file.parent().unwrap()).unwrap();
        fs::write(file, &segment.bytes).unwrap();
        segment.bytes.len()
    });
    written.sum()
}

/// Has `store` take in all that lies in `folder`, in order, and answers how many events were new.
pub fn restore(store: &Store, folder: &Path) -> usize {
    let files = within(folder).into_iter().flat_map(|device| within(&device));
    let new = files.map(|file| {
        let name: Name = file.strip_prefix(folder).unwrap().to_str().unwrap().parse().unwrap();
        store.merge(NOW, &unpack(&name, &fs::read(&file).unwrap()).unwrap()).unwrap().new
    });
    new.sum()
}

fn within(folder: &Path) -> Vec<PathBuf> {
    let mut found: Vec<PathBuf> = folder.read_dir().unwrap().map(|entry| entry.unwrap().path()).collect();
    found.sort();
    found
}
