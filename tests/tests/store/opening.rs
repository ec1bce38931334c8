//! What is at the path decides how opening goes; what is refused is left as it was, byte for byte.

use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::path::{Path, PathBuf};

use laydown_app::in_words::Sentence;
use laydown_store::journal::SeededIds;
use laydown_store::{Store, StoreError};
use rusqlite::Connection;

use laydown_tests::{NOW, coat, furnish, open, save, studio};

fn try_open(path: &Path) -> Result<Store, StoreError> {
    Store::open(path, NOW, SeededIds::new(3))
}

/// Opening `path` fails, leaves every file in its folder as it was, and says so to the potter.
fn refused(path: &Path) -> StoreError {
    let before = contents(path.parent().unwrap());
    let error = try_open(path).err().expect("refused");
    assert_eq!(contents(path.parent().unwrap()), before, "{error:?}");
    let sentence = error.sentence();
    assert!(sentence.ends_with('.') && !sentence.contains("SQL"), "{sentence}");
    error
}

/// The files of a folder with a digest of what is in each.
fn contents(folder: &Path) -> Vec<(PathBuf, u64)> {
    let mut files: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.is_file())
        .map(|path| (path.clone(), digest(&fs::read(path).unwrap())))
        .collect();
    files.sort();
    files
}

fn digest(bytes: &[u8]) -> u64 {
    let mut hasher = DefaultHasher::new();
    bytes.hash(&mut hasher);
    hasher.finish()
}

/// A studio of one morning, closed; its folder and file.
fn closed() -> (tempfile::TempDir, PathBuf) {
    let (folder, store) = studio();
    let bench = furnish(&store);
    for number in 0..200 {
        save(&store, &coat(&bench, &mut SeededIds::new(number as u64), number)).unwrap();
    }
    let path = folder.path().join("studio.laydown");
    (folder, path)
}

#[test]
fn a_file_that_is_no_database() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("notes.txt");
    for text in ["x", "Tenmoku: 18 g on the tall mug", &"long ".repeat(5_000)] {
        fs::write(&path, text).unwrap();
        assert!(matches!(refused(&path), StoreError::NotAStudio));
    }
}

#[test]
fn a_database_of_another_program() {
    let folder = tempfile::tempdir().unwrap();
    for (name, sql) in [
        ("plain", "CREATE TABLE contacts (id INTEGER)"),
        ("marked", "PRAGMA application_id = 7; CREATE TABLE contacts (id INTEGER)"),
        ("versioned", "PRAGMA user_version = 1; CREATE TABLE contacts (id INTEGER)"),
        ("wal", "PRAGMA journal_mode = WAL; CREATE TABLE contacts (id INTEGER)"),
    ] {
        let path = folder.path().join(name);
        Connection::open(&path).unwrap().execute_batch(sql).unwrap();
        assert!(matches!(refused(&path), StoreError::NotAStudio), "{name}");
    }
}

#[test]
fn a_newer_studio() {
    let (_folder, path) = closed();
    Connection::open(&path).unwrap().pragma_update(None, "user_version", 999).unwrap();
    assert!(matches!(refused(&path), StoreError::Newer { found: 999, .. }));
}

#[test]
fn a_newer_studio_whose_climb_is_still_in_the_log() {
    let (folder, path) = closed();
    let copy = folder.path().join("newer");
    fs::create_dir(&copy).unwrap();
    let newer = Connection::open(&path).unwrap();
    let ours: i32 = newer.pragma_query_value(None, "user_version", |row| row.get(0)).unwrap();
    newer.pragma_update(None, "user_version", ours + 1).unwrap();
    for suffix in ["", "-wal"] {
        fs::copy(format!("{}{suffix}", path.display()), copy.join(format!("studio{suffix}"))).unwrap();
    }
    assert_ne!(fs::metadata(copy.join("studio-wal")).unwrap().len(), 0);
    let version = &fs::read(copy.join("studio")).unwrap()[60..64];
    assert_eq!(version, ours.to_be_bytes(), "the climb is not in the main file yet");
    let files = || ["studio", "studio-wal"].map(|name| digest(&fs::read(copy.join(name)).unwrap()));
    let before = files();
    let refused = try_open(&copy.join("studio"));
    assert!(
        matches!(refused, Err(StoreError::Newer { found, known }) if (found, known) == (i64::from(ours) + 1, ours.into()))
    );
    assert_eq!(files(), before);
}

#[test]
fn damaged_studios() {
    let (folder, path) = closed();
    let whole = fs::read(&path).unwrap();
    let broken = folder.path().join("broken");
    fs::create_dir(&broken).unwrap();
    let path = broken.join("studio");
    let mut version = whole.clone();
    version[60..64].copy_from_slice(&(-1i32).to_be_bytes());
    let mut page_one = whole.clone();
    page_one[100..4096].fill(0x5a);
    for (name, bytes) in [
        ("cut within the header", &whole[..60]),
        ("cut within the first page", &whole[..1000]),
        ("cut to half", &whole[..whole.len() / 2]),
        ("an impossible version", &version),
        ("the list of tables overwritten", &page_one),
    ] {
        fs::write(&path, bytes).unwrap();
        let error = refused(&path);
        assert!(matches!(error, StoreError::Damaged { .. }), "{name}: {error:?}");
    }
}

#[test]
fn damage_deep_in_the_file_is_told_when_it_is_met() {
    let (_folder, path) = closed();
    let mut bytes = fs::read(&path).unwrap();
    let pages = bytes.len() / 4096;
    bytes[4096 * (pages / 2)..].fill(0x5a);
    fs::write(&path, &bytes).unwrap();
    let told = try_open(&path).and_then(|store| {
        store.check()?;
        store.dump()
    });
    assert!(matches!(told, Err(StoreError::Damaged { .. })), "{told:?}");
    assert_eq!(digest(&fs::read(&path).unwrap()), digest(&bytes));
}

#[test]
fn a_sound_studio_passes_the_check() {
    let (_folder, path) = closed();
    open(&path, 3).check().unwrap();
}

#[test]
fn an_empty_file_becomes_a_studio() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio");
    fs::write(&path, "").unwrap();
    furnish(&open(&path, 1));
    assert!(!open(&path, 1).dump().unwrap().is_empty());
}

#[test]
fn folders_and_missing_folders() {
    let folder = tempfile::tempdir().unwrap();
    // In a folder of this test's own: others come and go where temporary folders lie.
    fs::create_dir(folder.path().join("studio")).unwrap();
    assert!(matches!(refused(&folder.path().join("studio")), StoreError::NotAStudio));
    assert!(matches!(try_open(&folder.path().join("gone/studio")), Err(StoreError::NoFolder)));
    fs::write(folder.path().join("file"), "x").unwrap();
    assert!(matches!(try_open(&folder.path().join("file/studio")), Err(StoreError::NoFolder)));
}

#[test]
fn a_studio_held_by_another_copy() {
    let (_folder, path) = closed();
    let store = open(&path, 1);
    let other = Connection::open(&path).unwrap();
    other.execute_batch("BEGIN IMMEDIATE").unwrap();
    let held = store.transact(NOW, |tx| tx.choose("draft", Some("19.4")));
    assert!(matches!(held, Err(StoreError::Busy)), "{held:?}");
    store.dump().expect("reading goes on");
    other.execute_batch("COMMIT").unwrap();
    store.transact(NOW, |tx| tx.choose("draft", Some("19.4"))).unwrap();
    drop((store, other));

    let alone = Connection::open(&path).unwrap();
    alone.execute_batch("PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; DELETE FROM chosen; COMMIT").unwrap();
    assert!(matches!(try_open(&path), Err(StoreError::Busy)));
}
