//! What can be read of a damaged studio is saved, nothing is invented, and the damaged file stays as it was.

use std::collections::HashMap;
use std::fs;
use std::path::{Path, PathBuf};

use fastrand::Rng;
use laydown::journal::{Event, EventId, SeededIds};
use laydown::store::{Recovered, Store, StoreError, recover};
use laydown_tests::work::{Worker, all_events, sound};
use laydown_tests::{NOW, keep_the_rest, open};
use tempfile::TempDir;

const PAGE: usize = 4096;
/// 26 November 2026, in the morning, unix ms.
const THAT_DAY: i64 = 1_795_683_600_000;

/// A studio that somebody worked in: the bytes of its file, of its log, and its events.
pub(super) struct Worked {
    pub(super) file: Vec<u8>,
    pub(super) log: Option<Vec<u8>>,
    pub(super) events: HashMap<EventId, Event>,
}

/// After so many commands; closed, or as a phone leaves it that is killed.
pub(super) fn worked(commands: usize, is_closed: bool) -> Worked {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio.laydown");
    let store = open(&path, 5);
    let mut worker = Worker::new(&store, 5);
    for _ in 0..commands {
        worker.command(&store).unwrap();
    }
    let events = all_events(&store).into_iter().map(|event| (event.id(), event)).collect();
    if is_closed {
        drop(store);
        return Worked { file: fs::read(&path).unwrap(), log: None, events };
    }
    let log = fs::read(folder.path().join("studio.laydown-wal")).unwrap();
    Worked { file: fs::read(&path).unwrap(), log: Some(log), events }
}

/// Lays a file and its log into a folder of their own.
pub(super) fn laid(file: &[u8], log: Option<&[u8]>) -> (TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio.laydown");
    fs::write(&path, file).unwrap();
    if let Some(log) = log {
        fs::write(beside(&path, "-wal"), log).unwrap();
    }
    (folder, path)
}

pub(super) fn beside(path: &Path, end: &str) -> PathBuf {
    PathBuf::from(format!("{}{end}", path.display()))
}

/// Recovers the file at `path`; everything saved was there before, the new studio is sound and works on.
pub(super) fn recovered(path: &Path, were: &HashMap<EventId, Event>) -> Recovered {
    let [file, log] = ["", "-wal"].map(|end| fs::read(beside(path, end)).ok());
    let done = recover(path, THAT_DAY, SeededIds::new(77)).unwrap();
    assert_eq!(["", "-wal"].map(|end| fs::read(beside(&done.set_aside, end)).ok()), [file, log], "left as it was");
    let store = sound(path);
    let events = all_events(&store);
    let new: Vec<&Event> = events.iter().filter(|event| event.device == store.device()).collect();
    assert!(new.iter().all(|event| event.kind.name() == "preference"), "a new device, which has said nothing else");
    assert!(!were.keys().any(|id| id.device == store.device()));
    assert_eq!((events.len() - new.len()) as u64, done.saved);
    for event in events.iter().filter(|event| event.device != store.device()) {
        assert_eq!(were.get(&event.id()), Some(event));
    }
    Worker::new(&store, 8).command(&store).unwrap();
    done
}

#[test]
fn a_page_gone_anywhere() {
    for (worked, what) in [(worked(300, true), "closed"), (worked(120, false), "killed")] {
        let most = worked.events.len() as u64;
        let (mut losses, mut losing) = (0, 0);
        for page in 0..worked.file.len() / PAGE {
            let mut file = worked.file.clone();
            let gone = &mut file[page * PAGE..(page + 1) * PAGE];
            if page % 2 == 0 { gone.fill(0) } else { Rng::with_seed(page as u64).fill(gone) }
            let (_folder, path) = laid(&file, worked.log.as_deref());
            let Recovered { saved, lost, .. } = recovered(&path, &worked.events);
            assert_eq!(saved + lost, most, "{what}, page {}", page + 1);
            losses += lost;
            losing += u64::from(lost > 0);
        }
        println!("{what}: {most} events on {} pages; {losing} of them cost {losses} when lost", worked.file.len() / PAGE);
        assert!(losses < most * 3, "what lies on one page is lost, and no more");
    }
}
