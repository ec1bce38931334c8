//! A backup from anywhere: as it came, and as a zip of any files whose sums in the manifest are right, with any number in its
//! own records changed.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{Cursor, Read, Write};
use std::path::Path;
use std::sync::OnceLock;

use arbitrary::Arbitrary;
use laydown_app::Studio;
use laydown_store::backup::{BackupError, check_backup};
use laydown_tests::{furnish, open, save_the_rest};
use serde_json::{Value, json};
use sha2::{Digest, Sha256};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipArchive, ZipWriter};

use crate::script::{self, Number};
use crate::{NOW, folder, is_sentence};

const MANIFEST: &str = "manifest.json";
/// The beginnings of a zip's records: a file, a file in the directory, the end, the large end and the way to it. From
/// PKWARE's APPNOTE 6.3.10, sections 4.3.7 to 4.3.16, from memory.
const RECORDS: [&[u8]; 5] = [b"PK\x03\x04", b"PK\x01\x02", b"PK\x05\x06", b"PK\x06\x06", b"PK\x06\x07"];

type Files = BTreeMap<String, Vec<u8>>;

#[derive(Debug, Arbitrary)]
enum Change {
    /// Another byte in a file.
    Byte {
        file: u8,
        at: u16,
        byte: u8,
    },
    /// A file of nothing but one byte, up to more than any may have.
    Fill {
        file: u8,
        power: u8,
        byte: u8,
    },
    /// A file that is one line of lists in lists, or beside each other.
    Nest {
        file: u8,
        thousands: u8,
        deep: bool,
    },
    Cut {
        file: u8,
        to: u16,
    },
    Remove {
        file: u8,
    },
    Rename {
        file: u8,
        name: Name,
    },
    Copy {
        file: u8,
        name: Name,
    },
    /// A file that the manifest does not know.
    Unsum {
        file: u8,
    },
    Manifest {
        field: u8,
        number: Number,
    },
    /// A number in a record of the zip.
    Record {
        record: u8,
        at: u8,
        width: u8,
        number: Number,
    },
    /// Another method of packing, signs of a link: what the directory says of a file.
    Directory {
        file: u8,
        at: u8,
        byte: u8,
    },
}

#[derive(Debug, Clone, Copy, Arbitrary)]
enum Name {
    Up,
    UpOnWindows,
    Root,
    RootOnWindows,
    Nothing,
    Nul,
    Long,
    Manifest,
    Journal(u8),
    Photo(u8),
    Table(u8),
    Folder,
}

impl Name {
    fn text(self) -> String {
        match self {
            Name::Up => "photos/../../up.picture".to_owned(),
            Name::UpOnWindows => "journal\\..\\..\\up.jsonl".to_owned(),
            Name::Root => "/up.jsonl".to_owned(),
            Name::RootOnWindows => "C:\\up.jsonl".to_owned(),
            Name::Nothing => String::new(),
            Name::Nul => "journal/a\0b.jsonl".to_owned(),
            Name::Long => format!("journal/{}.jsonl", "a".repeat(40_000)),
            Name::Manifest => "MANIFEST.JSON".to_owned(),
            Name::Journal(number) => format!("journal/{number}.jsonl"),
            Name::Photo(number) => format!("photos/{}.picture", format!("{number:02x}").repeat(32)),
            Name::Table(number) => format!("tables/{number}.csv"),
            Name::Folder => "photos/".to_owned(),
        }
    }
}

/// A small backup.
fn good() -> &'static [u8] {
    static GOOD: OnceLock<Vec<u8>> = OnceLock::new();
    GOOD.get_or_init(|| {
        let folder = folder();
        let path = folder.path().join("studio.laydown");
        let bench = {
            let store = open(&path, 1);
            let bench = furnish(&store);
            save_the_rest(&store, &bench);
            store.transact(laydown_tests::NOW, |tx| {
                let coat = laydown_tests::coat(&bench, &mut laydown_store::journal::SeededIds::new(5), 1);
                tx.put(&coat).map(|_| coat.piece)
            })
        };
        let piece = bench.unwrap().value.to_string();
        let studio = Studio::open(&path, NOW).unwrap();
        let picture = folder.path().join("picture.png");
        image::RgbImage::from_fn(16, 12, |x, y| image::Rgb([x as u8, y as u8, 7])).save(&picture).unwrap();
        studio.save_photo(NOW, &piece, "", &picture).unwrap();
        let file = folder.path().join("backup.zip");
        studio.back_up(&file).unwrap();
        fs::read(file).unwrap()
    })
}

pub fn seeds() -> Vec<Vec<u8>> {
    let mut stored = Files::new();
    stored
        .insert(MANIFEST.to_owned(), br#"{"laydown_backup":1,"events":0,"photos":0,"missing":0,"sha256":{}}"#.to_vec());
    vec![good().to_vec(), zipped(&stored), lines()]
}

/// The journal of a small studio as lines.
fn lines() -> Vec<u8> {
    let folder = folder();
    let store = open(&folder.path().join("studio.laydown"), 1);
    let bench = furnish(&store);
    save_the_rest(&store, &bench);
    let file = folder.path().join("journal.jsonl");
    store.write_journal(&file).unwrap();
    fs::read(file).unwrap()
}

fn files() -> Files {
    let mut zip = ZipArchive::new(Cursor::new(good())).unwrap();
    let mut files = Files::new();
    for number in 0..zip.len() {
        let mut file = zip.by_index(number).unwrap();
        let mut bytes = Vec::new();
        file.read_to_end(&mut bytes).unwrap();
        files.insert(file.name().unwrap().into_owned(), bytes);
    }
    files
}

fn zipped(files: &Files) -> Vec<u8> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, bytes) in files {
        let method = if bytes.len() > 1 << 16 { CompressionMethod::Deflated } else { CompressionMethod::Stored };
        // What this writer refuses to name cannot be in a file of its making.
        if zip.start_file(name, SimpleFileOptions::default().compression_method(method)).is_ok() {
            zip.write_all(bytes).unwrap();
        }
    }
    zip.finish().unwrap().into_inner()
}

/// A good backup, changed as a script says, with the right sums of what it then holds.
pub fn changed(input: &[u8]) -> Vec<u8> {
    let changes: Vec<Change> = script::of(input);
    let mut files = files();
    let mut manifest: Value = serde_json::from_slice(&files.remove(MANIFEST).unwrap()).unwrap();
    let mut unsummed = Vec::new();
    for change in &changes {
        let chosen = |file: u8| files.keys().nth(usize::from(file) % files.len().max(1)).cloned().unwrap_or_default();
        match *change {
            Change::Byte { file, at, byte } => {
                let name = chosen(file);
                if let Some(place) = files.get_mut(&name).and_then(|bytes| bytes.get_mut(usize::from(at))) {
                    *place = byte;
                }
            }
            Change::Fill { file, power, byte } => {
                files.insert(chosen(file), vec![byte; (1 << (power % 27)) + 1]);
            }
            Change::Nest { file, thousands, deep } => {
                let count = usize::from(thousands) * 1_000;
                let lists = if deep {
                    format!("{}{}", "[".repeat(count), "]".repeat(count))
                } else {
                    format!("[{}0]", "[],".repeat(count))
                };
                let line = format!(
                    r#"{{"device":"00000000-0000-7000-8000-000000000001","seq":1,"clock":117309440000000000,"entity":"00000000-0000-7000-8000-000000000002","kind":"glaze","body":{{"name":{lists}}}}}"#
                );
                files.insert(chosen(file), line.into_bytes());
            }
            Change::Cut { file, to } => {
                let name = chosen(file);
                files.entry(name).and_modify(|bytes| bytes.truncate(usize::from(to)));
            }
            Change::Remove { file } => {
                let name = chosen(file);
                files.remove(&name);
            }
            Change::Rename { file, name } => {
                let from = chosen(file);
                let bytes = files.remove(&from).unwrap_or_default();
                files.insert(name.text(), bytes);
            }
            Change::Copy { file, name } => {
                let bytes = files.get(&chosen(file)).cloned().unwrap_or_default();
                files.insert(name.text(), bytes);
            }
            Change::Unsum { file } => unsummed.push(chosen(file)),
            Change::Manifest { field, number } => {
                let field = ["laydown_backup", "events", "photos", "missing"][usize::from(field % 4)];
                manifest[field] = json!(number.value());
            }
            Change::Record { .. } | Change::Directory { .. } => {}
        }
    }
    let sums = files.iter().filter(|(name, _)| !unsummed.contains(name));
    manifest["sha256"] = sums.map(|(name, bytes)| (name.clone(), Value::from(sum(bytes)))).collect();
    files.insert(MANIFEST.to_owned(), serde_json::to_vec(&manifest).unwrap());
    let mut zip = zipped(&files);
    for change in &changes {
        match *change {
            Change::Record { record, at, width, number } => {
                let records = records(&zip, &RECORDS);
                let at = records[usize::from(record) % records.len()] + usize::from(at % 56);
                patch(&mut zip, at, &number.value().to_le_bytes()[..1 << (width % 4)]);
            }
            Change::Directory { file, at, byte } => {
                let entries = records(&zip, &RECORDS[1..2]);
                let entry = entries[usize::from(file) % entries.len()];
                patch(&mut zip, entry + 4 + usize::from(at % 42), &[byte]);
            }
            _ => {}
        }
    }
    zip
}

fn records(zip: &[u8], beginnings: &[&[u8]]) -> Vec<usize> {
    (0..zip.len()).filter(|at| beginnings.iter().any(|beginning| zip[*at..].starts_with(beginning))).collect()
}

fn patch(zip: &mut [u8], at: usize, bytes: &[u8]) {
    if let Some(place) = zip.get_mut(at..at + bytes.len()) {
        place.copy_from_slice(bytes);
    }
}

fn sum(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

pub fn read(bytes: &[u8]) {
    let folder = folder();
    let inner = folder.path().join("inner");
    fs::create_dir(&inner).unwrap();
    let file = inner.join("backup.zip");
    File::create(&file).unwrap().write_all(bytes).unwrap();
    let checked = check_backup(&file);
    let store = open(&inner.join("studio.laydown"), 1);
    let empty = store.dump().unwrap();
    match store.restore(NOW.unix_ms, &file) {
        Ok(taken) => {
            match checked {
                Ok(checked) => assert_eq!(checked.contents, taken.held),
                // A journal as lines is taken in too, and is no zip.
                Err(error) => assert!(matches!(error, BackupError::NotABackup), "{error}"),
            }
            let dump = store.dump().unwrap();
            // A photograph that no event names goes each time as it came.
            assert_eq!(store.restore(NOW.unix_ms, &file).unwrap().new.events, 0);
            assert_eq!(store.dump().unwrap(), dump, "twice is as once");
            store.rebuild().unwrap();
            assert_eq!(store.dump().unwrap(), dump, "tables are folds");
        }
        Err(error) => {
            if !matches!(error, BackupError::Store(_)) {
                assert_eq!(store.dump().unwrap(), empty, "nothing was taken in");
            }
            is_sentence(error);
        }
    }
    nothing_outside(folder.path());
}

/// Whatever a name in it was, nothing was written beside the studio's own folder.
fn nothing_outside(folder: &Path) {
    assert_eq!(fs::read_dir(folder).unwrap().count(), 1);
    assert!(!folder.parent().is_some_and(|above| above.join("up.picture").exists()));
    let known = ["backup.zip", "studio.laydown", "studio.laydown-wal", "studio.laydown-shm", "studio.photos"];
    for entry in fs::read_dir(folder.join("inner")).unwrap() {
        let name = entry.unwrap().file_name();
        assert!(known.iter().any(|known| name == *known), "{name:?}");
    }
}
