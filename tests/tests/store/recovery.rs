//! What can be read of a damaged studio is saved, nothing is invented, and the damaged file stays as it was.

use std::collections::HashMap;
use std::fs;
use std::path::{Path, PathBuf};

use fastrand::Rng;
use laydown_store::entity::{Entity, Preference};
use laydown_store::journal::{Event, EventId, SeededIds};
use laydown_store::{Recovered, Store, StoreError, recover, recover_here};
use laydown_tests::faulty::{Call, Fault, Faulty};
use laydown_tests::work::{Worker, all_events, sound};
use laydown_tests::{NOW, furnish, open, save_the_rest};
use rusqlite::Connection;
use rusqlite::ffi::SQLITE_FULL;
use tempfile::TempDir;

pub(super) const PAGE: usize = 4096;
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
    worked_by(5, commands, is_closed)
}

/// As [`worked`], by somebody else.
pub(super) fn worked_by(seed: u64, commands: usize, is_closed: bool) -> Worked {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio.laydown");
    let store = open(&path, seed);
    let mut worker = Worker::new(&store, seed);
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
    for (worked, what) in [(worked(150, true), "closed"), (worked(60, false), "killed")] {
        let most = worked.events.len() as u64;
        let mut losses = 0;
        for page in 0..worked.file.len() / PAGE {
            let mut file = worked.file.clone();
            let gone = &mut file[page * PAGE..(page + 1) * PAGE];
            if page % 2 == 0 {
                gone.fill(0)
            } else {
                Rng::with_seed(page as u64).fill(gone)
            }
            let (_folder, path) = laid(&file, worked.log.as_deref());
            let Recovered { saved, lost, .. } = recovered(&path, &worked.events);
            assert_eq!(saved + lost, most, "{what}, page {}", page + 1);
            losses += lost;
        }
        assert!(losses <= most, "what lies on one page is lost, and no more");
    }
}

/// The pages with events on them, counted from 1 as SQLite does, and how many lie on each.
fn pages_with_events(file: &[u8]) -> Vec<(usize, u32)> {
    let (_folder, path) = laid(file, None);
    let conn = Connection::open(path).unwrap();
    let mut pages =
        conn.prepare("SELECT pageno, ncell FROM dbstat WHERE name = 'event' AND pagetype = 'leaf'").unwrap();
    pages.query_map([], |row| Ok((row.get::<_, u32>(0)? as usize, row.get(1)?))).unwrap().map(Result::unwrap).collect()
}

#[test]
fn much_gone_at_once() {
    let worked = worked(300, true);
    let (length, most) = (worked.file.len(), worked.events.len() as u64);
    // The beginning, with every list and every root of a tree.
    let mut file = worked.file.clone();
    file[..16 * PAGE].fill(0);
    let (_folder, path) = laid(&file, None);
    let done = recovered(&path, &worked.events);
    assert!(done.saved + done.lost <= most);
    // Cut short anywhere, also within a page: every event that lies on a page that is left is saved.
    let pages = pages_with_events(&worked.file);
    let mut before = 0;
    for end in (1..10).map(|part| length * part / 10 + 1_234) {
        let (_folder, path) = laid(&worked.file[..end], None);
        let done = recovered(&path, &worked.events);
        let left: u32 = pages.iter().filter(|(page, _)| page * PAGE <= end).map(|(_, events)| events).sum();
        assert!(done.saved >= left.into(), "{} saved of {left} that are left in {end} of {length} bytes", done.saved);
        assert!(done.saved >= before && done.saved + done.lost <= most, "{done:?}");
        before = done.saved;
    }
    assert!(before > most / 2, "{before} of {most} from nine tenths of the file");
    // Random pages, ever more of them.
    for gone in [2, 5, 20, 60] {
        let mut rng = Rng::with_seed(gone);
        let mut file = worked.file.clone();
        for _ in 0..gone {
            let page = rng.usize(..length / PAGE);
            rng.fill(&mut file[page * PAGE..(page + 1) * PAGE]);
        }
        let (_folder, path) = laid(&file, None);
        let done = recovered(&path, &worked.events);
        assert!(done.saved + done.lost <= most);
    }
}

#[test]
fn a_log_that_is_damaged_too() {
    let worked = worked(200, false);
    let log = worked.log.as_deref().unwrap();
    let most = worked.events.len() as u64;
    let (_folder, path) = laid(&worked.file, Some(log));
    assert_eq!(recovered(&path, &worked.events).saved, most);
    for seed in 0..12 {
        let mut rng = Rng::with_seed(seed);
        let mut torn = log.to_vec();
        match seed % 3 {
            0 => torn.truncate(rng.usize(..log.len())),
            1 => torn[rng.usize(..log.len())] ^= 1 << rng.u8(..8),
            _ => {
                let at = rng.usize(..log.len() - PAGE);
                rng.fill(&mut torn[at..at + PAGE]);
            }
        }
        let (_folder, path) = laid(&worked.file, Some(&torn));
        let done = recovered(&path, &worked.events);
        assert!(done.saved + done.lost <= most, "{done:?}");
        if seed % 3 > 0 {
            assert!(done.saved > most * 9 / 10, "one bad frame takes none of the later ones with it: {done:?}");
        }
    }
}

#[test]
fn a_phone_that_dies_in_the_middle() {
    let worked = worked(200, false);
    let mut file = worked.file.clone();
    file[..PAGE].fill(0);
    let expected = {
        let (_folder, path) = laid(&file, worked.log.as_deref());
        recovered(&path, &worked.events)
    };
    let aside = |path: &Path| beside(path, ".damaged-2026-11-26");
    // While the new file was being written: the next attempt begins anew.
    let (_folder, path) = laid(&file, worked.log.as_deref());
    for end in [".recovering", ".recovering-journal", ".recovering-wal"] {
        fs::write(beside(&path, end), "half").unwrap();
    }
    let done = recovered(&path, &worked.events);
    assert_eq!((done.saved, done.lost), (expected.saved, expected.lost));
    let new = fs::read(&path).unwrap();
    // After it was decided, with the log moved or not, the file moved or not: opening ends it.
    for moved in 0..3 {
        let (folder, path) = laid(&file, worked.log.as_deref());
        fs::write(beside(&path, ".recovered studio.laydown.damaged-2026-11-26"), &new).unwrap();
        for end in ["-wal", ""].iter().take(moved) {
            fs::rename(beside(&path, end), beside(&aside(&path), end)).unwrap();
        }
        let store = sound(&path);
        assert!(
            all_events(&store).iter().filter(|event| worked.events.contains_key(&event.id())).count() as u64
                == done.saved
        );
        drop(store);
        assert_eq!(fs::read(aside(&path)).unwrap(), file);
        assert_eq!(fs::read(beside(&aside(&path), "-wal")).ok(), worked.log);
        assert_eq!(folder.path().read_dir().unwrap().count(), 3, "the studio, the damaged one and its log");
    }
}

#[test]
fn a_second_time_on_the_same_day() {
    let worked = worked(60, true);
    let (_folder, path) = laid(&worked.file, None);
    let names = [7, 8, 9].map(|seed| recover(&path, THAT_DAY, SeededIds::new(seed)).unwrap().set_aside);
    let ends = ["", "-2", "-3"].map(|end| beside(&path, &format!(".damaged-2026-11-26{end}")));
    assert_eq!(names, ends);
    assert_eq!(fs::read(&names[0]).unwrap(), worked.file);
}

#[test]
fn the_phone_saves_its_preferences() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio.laydown");
    let store = open(&path, 1);
    save_the_rest(&store, &furnish(&store));
    let before = store.read(|conn| Preference::load(conn, store.device().0)).unwrap().unwrap();
    drop(store);
    let mark = folder.path().join("mark");
    let done = recover_here(&path, &mark, THAT_DAY, SeededIds::new(7)).unwrap();
    let (store, renamed) = Store::open_here(&path, &mark, NOW, SeededIds::new(8)).unwrap();
    assert_eq!((store.device(), renamed), (done.device, None), "the new name is this phone's");
    let id = store.device().0;
    assert_ne!(id, before.id);
    assert_eq!(store.read(|conn| Preference::load(conn, id)).unwrap(), Some(Preference { id, ..before }));
}

#[test]
fn what_is_not_recovered() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio.laydown");
    let try_it = || recover(&path, THAT_DAY, SeededIds::new(7));
    assert!(matches!(try_it(), Err(StoreError::NoFolder)), "nothing is there");
    fs::write(&path, "Tenmoku: 18 g on the tall mug").unwrap();
    assert!(matches!(try_it(), Err(StoreError::NotAStudio)));
    fs::remove_file(&path).unwrap();
    Connection::open(&path)
        .unwrap()
        .execute_batch("CREATE TABLE notes (text TEXT); INSERT INTO notes VALUES ('x')")
        .unwrap();
    assert!(matches!(try_it(), Err(StoreError::NotAStudio)));
    fs::remove_file(&path).unwrap();
    furnish(&open(&path, 1));
    Connection::open(&path).unwrap().pragma_update(None, "user_version", 99).unwrap();
    assert!(matches!(try_it(), Err(StoreError::Newer { .. })));
    assert_eq!(folder.path().read_dir().unwrap().count(), 1, "nothing was put beside it");
}

#[test]
fn an_unreadable_beginning_is_damage_and_not_another_program() {
    let worked = worked(60, true);
    for (what, gone) in
        [("the first page", 0..PAGE), ("the magic", 0..1), ("the mark", 68..69), ("the size of a page", 16..17)]
    {
        let mut file = worked.file.clone();
        file[gone].fill(0xA5);
        let (_folder, path) = laid(&file, None);
        let refused = Store::open(&path, NOW, SeededIds::new(1)).err();
        assert!(matches!(refused, Some(StoreError::Damaged { .. })), "{what}: {refused:?}");
        assert_eq!(fs::read(&path).unwrap(), file);
        assert_eq!(recovered(&path, &worked.events).lost, 0, "{what}");
    }
}

#[test]
fn a_storage_that_fails_while_the_new_file_is_written() {
    let worked = worked(60, false);
    let mut file = worked.file.clone();
    file[..PAGE].fill(0);
    let mut failed = 0;
    for fault in [Fault::Fails(Call::Write, SQLITE_FULL), Fault::Tears, Fault::PowerGoes] {
        for spared in (0..).step_by(17) {
            let (folder, path) = laid(&file, worked.log.as_deref());
            let faulty = Faulty::storage(folder.path(), fault, spared, spared);
            let tried = recover(&path, THAT_DAY, SeededIds::new(7));
            if !faulty.end() {
                assert_eq!(tried.unwrap().saved, worked.events.len() as u64);
                break;
            }
            failed += 1;
            let error = tried.unwrap_err();
            assert!(matches!(error, StoreError::Full | StoreError::Io { .. }), "{error:?}");
            assert_eq!(fs::read(&path).unwrap(), file);
            assert_eq!(recovered(&path, &worked.events).saved, worked.events.len() as u64);
        }
    }
    assert!(failed > 5, "{failed}");
}
