//! A studio's own file whose bytes are not what they were: one body of an event, and whole pages.

use std::cell::OnceCell;
use std::fs;
use std::path::Path;
use std::sync::OnceLock;

use arbitrary::Arbitrary;
use laydown_store::journal::SeededIds;
use laydown_store::{Store, StoreError, events_in, recover};
use laydown_tests::work::{Worker, all_events, sound};
use laydown_tests::{NOW, open};
use rusqlite::Connection;
use tempfile::TempDir;

use crate::script::{self, Number};
use crate::{folder, is_sentence};

const PAGE: usize = 4096;

#[derive(Debug, Arbitrary)]
enum Change {
    Byte {
        page: u8,
        at: u16,
        byte: u8,
    },
    /// A number in what a page says of itself: its kind, its cells, where they begin.
    Head {
        page: u8,
        at: u8,
        wide: bool,
        number: Number,
    },
    /// Where a cell lies.
    Cell {
        page: u8,
        cell: u8,
        number: Number,
    },
    /// What the file says of itself.
    File {
        at: u8,
        width: u8,
        number: Number,
    },
    Zero {
        page: u8,
    },
    Copy {
        from: u8,
        to: u8,
    },
    Cut {
        page: u8,
        at: u16,
    },
}

/// The file of a studio that somebody worked in.
fn good() -> &'static [u8] {
    static GOOD: OnceLock<Vec<u8>> = OnceLock::new();
    GOOD.get_or_init(|| {
        let folder = folder();
        let path = folder.path().join("studio.laydown");
        let store = open(&path, 5);
        let mut worker = Worker::new(&store, 5);
        for _ in 0..80 {
            worker.command(&store).unwrap();
        }
        drop(store);
        fs::read(path).unwrap()
    })
}

pub fn bodies() -> Vec<Vec<u8>> {
    let folder = folder();
    let path = folder.path().join("studio.laydown");
    fs::write(&path, good()).unwrap();
    let conn = Connection::open(path).unwrap();
    let mut select = conn.prepare("SELECT DISTINCT body FROM event ORDER BY length(body) LIMIT 40").unwrap();
    select.query_map([], |row| row.get(0)).unwrap().map(Result::unwrap).collect()
}

/// One body in place of another, read.
pub fn read_body(bytes: &[u8]) {
    thread_local! {
        static OPENED: OnceCell<(TempDir, Store, Connection)> = const { OnceCell::new() };
    }
    OPENED.with(|opened| {
        let (_, store, conn) = opened.get_or_init(|| {
            let folder = folder();
            let path = folder.path().join("studio.laydown");
            fs::write(&path, good()).unwrap();
            let store = open(&path, 5);
            let conn = Connection::open(path).unwrap();
            conn.execute_batch("PRAGMA synchronous = OFF").unwrap();
            (folder, store, conn)
        });
        conn.prepare_cached("UPDATE event SET body = ?1 WHERE place = (SELECT max(place) FROM event)")
            .unwrap()
            .execute([bytes])
            .unwrap();
        let read = store.read(|conn| {
            let devices = laydown_store::devices(conn)?;
            devices.into_iter().try_for_each(|(device, last)| events_in(conn, device, last, last).map(|_| ()))
        });
        if let Err(error) = read {
            assert!(matches!(error, StoreError::Damaged { .. }), "{error:?}");
        }
    });
}

/// A good file, changed as a script says.
pub fn changed(input: &[u8]) -> Vec<u8> {
    let mut file = good().to_vec();
    for change in script::of::<Change>(input) {
        let pages = file.len() / PAGE;
        if pages == 0 {
            break;
        }
        let page = |number: u8| (usize::from(number) % pages) * PAGE;
        // The first page begins with what the file says of itself.
        let head = |number: u8| page(number) + if page(number) == 0 { 100 } else { 0 };
        match change {
            Change::Byte { page: number, at, byte } => file[page(number) + usize::from(at) % PAGE] = byte,
            Change::Head { page, at, wide, number } => {
                put(&mut file, head(page) + usize::from(at % 12), number, if wide { 4 } else { 2 });
            }
            Change::Cell { page, cell, number } => put(&mut file, head(page) + 8 + 2 * usize::from(cell), number, 2),
            Change::File { at, width, number } => put(&mut file, usize::from(at % 100), number, 1 << (width % 3)),
            Change::Zero { page: number } => file[page(number)..][..PAGE].fill(0),
            Change::Copy { from, to } => file.copy_within(page(from)..page(from) + PAGE, page(to)),
            Change::Cut { page: number, at } => file.truncate(page(number) + usize::from(at) % PAGE),
        }
    }
    file
}

fn put(file: &mut [u8], at: usize, number: Number, width: usize) {
    if let Some(place) = file.get_mut(at..at + width) {
        place.copy_from_slice(&number.value().to_be_bytes()[8 - width..]);
    }
}

/// What can be read of it is read, or refused with a sentence; then it is recovered.
pub fn read_pages(bytes: &[u8]) {
    let folder = folder();
    let path = folder.path().join("studio.laydown");
    fs::write(&path, bytes).unwrap();
    look(&path);
    // Opening may have made a log of a file that it did not know was damaged.
    for end in ["", "-wal", "-shm"] {
        let _ = fs::remove_file(folder.path().join(format!("studio.laydown{end}")));
    }
    fs::write(&path, bytes).unwrap();
    match recover(&path, NOW, SeededIds::new(7)) {
        Ok(done) => {
            assert!(fs::read(&done.set_aside).unwrap() == bytes, "set aside as it was");
            is_sentence(&done);
            let store = sound(&path);
            assert_eq!(
                all_events(&store).iter().filter(|event| event.device != store.device()).count() as u64,
                done.saved
            );
        }
        Err(error) => {
            is_sentence(error);
            assert!(fs::read(&path).unwrap() == bytes, "left as it was");
        }
    }
}

fn look(path: &Path) {
    let looked = Store::open(path, NOW, SeededIds::new(42)).and_then(|store| {
        store.check()?;
        store.dump()?;
        store.rebuild()
    });
    if let Err(error) = looked {
        is_sentence(error);
    }
}
