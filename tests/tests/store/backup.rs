//! Backups: whole, taken in anywhere and any number of times, and never believed before they were checked.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{Read, Write};
use std::path::{Path, PathBuf};

use laydown_app::in_words::Sentence;
use laydown_app::sample;
use laydown_app::{Now, Studio, StudioError};
use laydown_store::Store;
use laydown_store::backup::{BackupError, Contents, check_backup};
use sha2::{Digest, Sha256};
use tempfile::TempDir;
use zip::write::SimpleFileOptions;
use zip::{ZipArchive, ZipWriter};

/// The files of a backup by name.
type Files = BTreeMap<String, Vec<u8>>;

const NOW: Now = Now { unix_ms: 1_790_000_000_000, utc_offset_s: 0 };

/// A studio with the sample's month and two photographs, and its backup.
fn backed_up() -> (TempDir, Studio, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let studio = Studio::open(&folder.path().join("studio.laydown"), NOW).unwrap();
    sample::fill(&studio, NOW).unwrap();
    let piece = studio.find_pieces(NOW, &[], 0).unwrap().pieces[0].id.clone();
    for number in 0..2u8 {
        let picture = folder.path().join("picture.png");
        image::RgbImage::from_fn(40, 30, |x, y| image::Rgb([x as u8, y as u8, number])).save(&picture).unwrap();
        let saved = studio.save_photo(NOW, &piece, "", &picture).unwrap();
        if number == 1 {
            studio.undo(NOW, &saved.undo).unwrap();
        }
    }
    let file = folder.path().join("backup.zip");
    studio.back_up(&file).unwrap();
    (folder, studio, file)
}

fn empty(folder: &TempDir, name: &str) -> Studio {
    Studio::open(&folder.path().join(name), NOW).unwrap()
}

fn dump(studio: &Studio) -> String {
    let store: &Store = studio.store();
    store.dump().unwrap()
}

/// The files of a backup, changed by `change`, in a new one; the manifest is changed too if `change` says so.
fn altered(from: &Path, to: &Path, change: impl FnOnce(&mut Files)) {
    let mut zip = ZipArchive::new(File::open(from).unwrap()).unwrap();
    let mut files = BTreeMap::new();
    for at in 0..zip.len() {
        let mut file = zip.by_index(at).unwrap();
        let mut bytes = Vec::new();
        file.read_to_end(&mut bytes).unwrap();
        let name = file.name().unwrap().into_owned();
        files.insert(name, bytes);
    }
    change(&mut files);
    let mut zip = ZipWriter::new(File::create(to).unwrap());
    for (name, bytes) in files {
        zip.start_file(name, SimpleFileOptions::default()).unwrap();
        zip.write_all(&bytes).unwrap();
    }
    zip.finish().unwrap();
}

/// Changes the manifest as JSON.
fn manifest(files: &mut Files, change: impl FnOnce(&mut serde_json::Value)) {
    let mut value = serde_json::from_slice(&files["manifest.json"]).unwrap();
    change(&mut value);
    files.insert("manifest.json".to_owned(), serde_json::to_vec(&value).unwrap());
}

fn named(files: &Files, beginning: &str) -> String {
    files.keys().find(|name| name.starts_with(beginning)).unwrap().clone()
}

/// The names of the photographs that any app opens.
fn photographs(files: &Files) -> Vec<String> {
    let is_photograph = |name: &&String| name.starts_with("photos/") && !name.ends_with(".preview.jpg");
    files.keys().filter(is_photograph).cloned().collect()
}

#[test]
fn a_backup_of_an_earlier_version_brings_its_photographs() {
    let (folder, studio, file) = backed_up();
    let earlier = folder.path().join("earlier.zip");
    let mut endings = Vec::new();
    altered(&file, &earlier, |files| {
        for name in photographs(files) {
            let (stem, ending) = name.split_once('.').unwrap();
            endings.push(ending.to_owned());
            let (bytes, called) = (files.remove(&name).unwrap(), format!("{stem}.picture"));
            files.insert(called.clone(), bytes);
            manifest(files, |value| {
                let sums = value["sha256"].as_object_mut().unwrap();
                let sum = sums.remove(&name).unwrap();
                sums.insert(called, sum);
            });
        }
    });
    assert_eq!(endings, ["png", "png"], "as any app opens them");
    let other = empty(&folder, "other.laydown");
    let restored = other.store().restore(NOW.unix_ms, &earlier).unwrap();
    assert_eq!((restored.new.photos, dump(&other)), (2, dump(&studio)));
}

#[test]
fn a_backup_makes_the_same_studio_anywhere_and_twice_is_as_once() {
    let (folder, studio, file) = backed_up();
    let held = check_backup(&file).unwrap().contents;
    assert_eq!((held.photos, held.missing), (2, 0));
    let other = empty(&folder, "other.laydown");
    let taken = other.store().restore(NOW.unix_ms, &file).unwrap();
    assert_eq!((taken.held, taken.new.events, taken.new.photos), (held, held.events, 2));
    assert_eq!(dump(&other), dump(&studio));
    let again = other.store().restore(NOW.unix_ms, &file).unwrap();
    assert_eq!(again.new, Contents::default());
    assert_eq!(dump(&other), dump(&studio));
    // The photograph that was undone is there for whoever does that again.
    let photos = fs::read_dir(folder.path().join("other.photos"))
        .unwrap()
        .filter(|file| file.as_ref().unwrap().path().is_file());
    assert_eq!(photos.count(), 4, "two pictures and their previews");
    assert!(other.restore(NOW, &file).unwrap().starts_with("Nothing to restore. This phone already has"));
}

#[test]
fn two_studios_take_in_each_other_and_agree() {
    let (folder, one, of_one) = backed_up();
    let other = empty(&folder, "other.laydown");
    sample::fill(&other, NOW).unwrap();
    let of_other = folder.path().join("other.zip");
    other.back_up(&of_other).unwrap();
    one.restore(NOW, &of_other).unwrap();
    other.restore(NOW, &of_one).unwrap();
    assert_eq!(dump(&one), dump(&other));
    let before = dump(&one);
    one.store().rebuild().unwrap();
    assert_eq!(dump(&one), before, "the tables are the fold");
    for name in ["studio.photos", "other.photos"] {
        assert!(
            !folder.path().join(name).join("new").exists()
                || fs::read_dir(folder.path().join(name).join("new")).unwrap().next().is_none()
        );
    }
}

#[test]
fn whatever_was_changed_in_it_is_found_and_nothing_is_taken_in() {
    let (folder, _studio, file) = backed_up();
    let bad = folder.path().join("bad.zip");
    let other = empty(&folder, "other.laydown");
    let before = dump(&other);
    let bytes = fs::read(&file).unwrap();
    let mut refused = 0;
    for step in 0..120 {
        let at = bytes.len() * step / 120 + step % 7;
        let mut flipped = bytes.clone();
        flipped[at] ^= 1 << (step % 8);
        fs::write(&bad, &flipped).unwrap();
        match check_backup(&bad) {
            // A bit that says nothing, as in the time of a file.
            Ok(_) => continue,
            Err(BackupError::Damaged { .. } | BackupError::NotABackup | BackupError::Newer) => refused += 1,
            Err(other) => panic!("{at}: {other}"),
        }
        assert!(other.store().restore(NOW.unix_ms, &bad).is_err());
    }
    assert!(refused > 90, "{refused}");
    for length in [0, 1, 30, bytes.len() / 2, bytes.len() - 1] {
        fs::write(&bad, &bytes[..length]).unwrap();
        assert!(matches!(check_backup(&bad), Err(BackupError::NotABackup)), "{length}");
    }
    assert_eq!(dump(&other), before);
    assert!(
        !folder.path().join("other.photos").exists()
            || fs::read_dir(folder.path().join("other.photos/new")).is_ok_and(|mut files| files.next().is_none())
    );
}

#[test]
fn hostile_and_foreign_files_are_refused_by_name() {
    let (folder, _studio, file) = backed_up();
    let bad = folder.path().join("bad.zip");
    let other = empty(&folder, "other.laydown");
    let before = dump(&other);
    let refused = |what: &str, change: &dyn Fn(&mut Files)| {
        altered(&file, &bad, |files| change(files));
        let error = other.store().restore(NOW.unix_ms, &bad).expect_err(what);
        assert_eq!(dump(&other), before, "{what}");
        error
    };
    let sum = |bytes: &[u8]| Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect::<String>();

    let newer = refused("newer", &|files| manifest(files, |value| value["laydown_backup"] = 2.into()));
    assert!(matches!(newer, BackupError::Newer), "{newer}");
    let foreign = refused("foreign", &|files| drop(files.remove("manifest.json")));
    assert!(matches!(foreign, BackupError::NotABackup), "{foreign}");
    let missing = refused("a file less", &|files| drop(files.remove(&named(files, "journal/"))));
    assert!(matches!(missing, BackupError::Damaged { .. }), "{missing}");
    let fewer = refused("fewer than it says", &|files| {
        let name = named(files, "journal/");
        files.remove(&name);
        manifest(files, |value| drop(value["sha256"].as_object_mut().unwrap().remove(&name)));
    });
    assert!(matches!(fewer, BackupError::Damaged { .. }), "{fewer}");
    // A photograph whose name leads out of the folder.
    let way_out = refused("a way out", &|files| {
        let bytes = files[&named(files, "photos/")].clone();
        for ending in ["picture", "preview.jpg"] {
            files.insert(format!("photos/../../out.{ending}"), bytes.clone());
            manifest(files, |value| value["sha256"][format!("photos/../../out.{ending}")] = sum(&bytes).into());
        }
        manifest(files, |value| value["photos"] = 3.into());
    });
    assert!(matches!(&way_out, BackupError::Damaged { file } if file.contains("..")), "{way_out}");
    assert!(
        !folder.path().join("out.picture").exists() && !folder.path().parent().unwrap().join("out.picture").exists()
    );
    // A journal that grows when it is unpacked: 200 MB of nothing in 200 kB.
    let bomb = refused("a bomb", &|files| {
        let bytes = vec![b'\n'; 200 << 20];
        files.insert("journal/bomb.jsonl".to_owned(), bytes.clone());
        manifest(files, |value| value["sha256"]["journal/bomb.jsonl"] = sum(&bytes).into());
    });
    assert!(matches!(&bomb, BackupError::Damaged { file } if file == "journal/bomb.jsonl"), "{bomb}");
    // A name that no screen has room for.
    let long = refused("a long name", &|files| {
        let name = format!("journal/{}.jsonl", "a".repeat(40_000));
        manifest(files, |value| value["sha256"][&name] = "0".into());
    });
    let long = long.sentence();
    assert!(long.contains("aaaa…” has changed") && long.len() < 250, "{}", long.len());
    let letter = folder.path().join("letter.zip");
    fs::write(&letter, "This is a letter.").unwrap();
    assert!(matches!(other.restore(NOW, &letter), Err(StudioError::Refused { field, .. }) if field == "backup"));
    assert!(other.restore(NOW, Path::new("/nowhere/at/all.zip")).is_err());
    assert_eq!(dump(&other), before);

    // An event that no device can have made is named, and the rest comes in.
    altered(&file, &bad, |files| {
        let name = named(files, "journal/");
        let text = String::from_utf8(files[&name].clone()).unwrap().replacen("\"seq\":1,", "\"seq\":-1,", 1);
        manifest(files, |value| value["sha256"][&name] = sum(text.as_bytes()).into());
        files.insert(name, text.into_bytes());
    });
    let sentence = other.restore(NOW, &bad).unwrap();
    assert!(sentence.contains("Not added: 1 entry that laydown cannot have made (impossible numbers)"), "{sentence}");
    assert_ne!(dump(&other), before);
}

#[test]
fn a_backup_that_cannot_be_written_leaves_nothing() {
    let (folder, studio, file) = backed_up();
    let good = fs::read(&file).unwrap();
    assert!(studio.back_up(&folder.path().join("no/such/folder/backup.zip")).is_err());
    fs::create_dir(folder.path().join("taken.zip")).unwrap();
    assert!(studio.back_up(&folder.path().join("taken.zip")).is_err(), "a folder lies in its place");
    assert_eq!(fs::read(&file).unwrap(), good);
    assert!(
        fs::read_dir(folder.path()).unwrap().all(|file| !file
            .unwrap()
            .file_name()
            .to_string_lossy()
            .ends_with(".partial"))
    );
}

#[test]
fn the_user_is_reminded_once_a_month() {
    let (_folder, studio, file) = backed_up();
    let said = |days: i64| studio.setup(NOW.at(NOW.unix_ms + days * 86_400_000)).unwrap().backup;
    assert!(said(0).starts_with("Everything in one file"), "{}", said(0));
    assert!(said(40).starts_with("There is no backup yet"), "{}", said(40));
    let made = studio.backed_up(NOW, &file).unwrap();
    assert!(made.starts_with("Backup saved and verified: "), "{made}");
    assert!(said(0).starts_with("Last backup: "), "{}", said(0));
    assert!(said(31).starts_with("Last backup: "), "nothing came since, so that nothing can be lost: {}", said(31));
    let done = studio.recent_changes(NOW).unwrap().recent_changes.into_iter().find(|entry| !entry.is_undone).unwrap();
    studio.undo(NOW, &done.token).unwrap();
    assert!(said(31).starts_with("The last backup is 31 days old."), "{}", said(31));
}

/// The journal of a furnished studio as JSON lines.
fn journal() -> (TempDir, Studio, PathBuf) {
    let (folder, studio, _) = backed_up();
    let file = folder.path().join("journal.jsonl");
    studio.export("journal", &file).unwrap();
    (folder, studio, file)
}

#[test]
fn a_journal_of_json_lines_makes_the_same_tables_whatever_it_is_called() {
    let (folder, studio, file) = journal();
    let text = fs::read_to_string(&file).unwrap();
    let mut lines = text.lines();
    let head: serde_json::Value = serde_json::from_str(lines.next().unwrap()).unwrap();
    let events: Vec<serde_json::Value> = lines.map(|line| serde_json::from_str(line).unwrap()).collect();
    assert_eq!(head["events"].as_u64(), Some(events.len() as u64));
    assert!(events.iter().all(|event| event["kind"].is_string() && event["seq"].is_number()));

    let called_zip = folder.path().join("journal.zip");
    fs::rename(&file, &called_zip).unwrap();
    let other = empty(&folder, "other.laydown");
    let taken = other.store().restore(NOW.unix_ms, &called_zip).unwrap();
    assert_eq!((taken.held.events, taken.new.events, taken.new.photos), (events.len() as u64, events.len() as u64, 0));
    assert_eq!(dump(&other), dump(&studio));
    let again = other.store().restore(NOW.unix_ms, &called_zip).unwrap();
    assert_eq!(again.new, Contents::default());
    assert_eq!(dump(&other), dump(&studio));
    // What it did not bring, the backup does.
    let taken = other.store().restore(NOW.unix_ms, &folder.path().join("backup.zip")).unwrap();
    assert_eq!((taken.new.events, taken.new.photos), (0, 2));
}

#[test]
fn a_journal_that_was_changed_or_cut_off_is_refused_whole() {
    let (folder, _studio, file) = journal();
    let bytes = fs::read(&file).unwrap();
    let bad = folder.path().join("bad.jsonl");
    let other = empty(&folder, "other.laydown");
    let before = dump(&other);
    let refused = |changed: &[u8]| {
        fs::write(&bad, changed).unwrap();
        let error = other.store().restore(NOW.unix_ms, &bad).expect_err("it is refused");
        assert_eq!(dump(&other), before);
        error
    };
    for step in 0..200 {
        let mut flipped = bytes.clone();
        let at = bytes.len() * step / 200 + step % 5;
        flipped[at] ^= 1 << (step % 7);
        let error = refused(&flipped);
        assert!(
            matches!(error, BackupError::DamagedJournal | BackupError::NotABackup | BackupError::Newer),
            "{at}: {error}"
        );
    }
    let ends: Vec<usize> = bytes.iter().enumerate().filter(|(_, byte)| **byte == b'\n').map(|(at, _)| at + 1).collect();
    for length in [1, 19, ends[0], ends[1], ends[ends.len() / 2], ends[ends.len() - 2], bytes.len() - 1] {
        let error = refused(&bytes[..length]);
        assert!(matches!(error, BackupError::DamagedJournal | BackupError::NotABackup), "{length}: {error}");
    }
    let twice = [&bytes[..], &bytes[ends[0]..]].concat();
    assert!(matches!(refused(&twice), BackupError::DamagedJournal));

    let head = |head: &str| [head.as_bytes(), b"\n", &bytes[ends[0]..]].concat();
    let newer = refused(&head(r#"{"laydown_journal":2,"events":1,"sha256":""}"#));
    assert!(matches!(newer, BackupError::Newer), "{newer}");
    let claims = refused(&head(r#"{"laydown_journal":1,"events":18446744073709551615,"sha256":""}"#));
    assert!(matches!(claims, BackupError::DamagedJournal), "{claims}");
    let foreign = refused(b"{\"piece\":1}\n{\"piece\":2}\n");
    assert!(matches!(foreign, BackupError::NotABackup), "{foreign}");
    // A line that never ends is not read to its end.
    let endless = refused(&[&bytes[..ends[0]], &vec![b'['; 40 << 20]].concat());
    assert!(matches!(endless, BackupError::DamagedJournal), "{endless}");
}

#[test]
fn an_export_that_cannot_be_written_leaves_nothing() {
    let (folder, studio, _) = backed_up();
    for what in ["journal", "tables", "readings"] {
        assert!(studio.export(what, &folder.path().join("no/such/folder/file")).is_err(), "{what}");
        fs::create_dir_all(folder.path().join("taken")).unwrap();
        assert!(studio.export(what, &folder.path().join("taken")).is_err(), "{what}: a folder lies in its place");
        assert!(!folder.path().join("taken.partial").exists(), "{what}");
    }
}

#[test]
fn a_file_that_is_gone_or_cannot_be_opened_is_said_to_be_so() {
    let (folder, studio, _) = backed_up();
    let said = |answer: Result<String, StudioError>| match answer {
        Err(StudioError::Refused { sentence, .. }) => sentence,
        other => panic!("{other:?}"),
    };
    let gone = folder.path().join("gone.zip");
    assert_eq!(said(studio.restore(NOW, &gone)), "File not found. Choose it again.");
    assert_eq!(said(studio.backed_up(NOW, &gone)), "File not found. Choose it again.");
    assert!(said(studio.restore(NOW, folder.path())).starts_with("This file cannot be read."));
}

#[test]
fn a_photograph_that_is_no_picture_is_named_left_out_and_not_passed_on() {
    let (folder, _studio, file) = backed_up();
    let sum = |bytes: &[u8]| Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect::<String>();
    let letter = b"This is a letter.".to_vec();
    let picture_head = b"\x89PNG\r\n\x1A\n\0\0\0\rIHDR".to_vec();
    for (what, bytes, name) in [
        ("a letter under its own sum", letter.clone(), Some(sum(&letter))),
        ("a picture's beginning", picture_head.clone(), Some(sum(&picture_head))),
        ("a letter in a picture's place", letter, None),
    ] {
        let bad = folder.path().join("bad.zip");
        let mut refused = String::new();
        altered(&file, &bad, |files| {
            let old = photographs(files).swap_remove(0);
            refused = name.unwrap_or_else(|| old["photos/".len()..][..64].to_owned());
            if !old.contains(&refused) {
                files.remove(&old).unwrap();
                let preview = files.remove(&old.replace(".png", ".preview.jpg")).unwrap();
                files.insert(format!("photos/{refused}.preview.jpg"), preview);
                // The record of it names it, too.
                let journal = named(files, "journal/");
                let text = String::from_utf8(files[&journal].clone()).unwrap();
                files.insert(journal, text.replace(&old["photos/".len()..][..64], &refused).into_bytes());
            }
            files.insert(format!("photos/{refused}.png"), bytes);
            let sums = files.iter().filter(|(name, _)| *name != "manifest.json");
            let sums: serde_json::Value =
                sums.map(|(name, bytes)| (name.clone(), serde_json::Value::from(sum(bytes)))).collect();
            manifest(files, |value| value["sha256"] = sums);
        });
        let other = empty(&folder, &format!("{what}.laydown"));
        let said = other.restore(NOW, &bad).unwrap();
        assert!(said.contains("1 photo could not be read and was left out") && said.contains(&refused[..12]), "{said}");
        assert!(said.starts_with("Restored: "), "the rest came in: {said}");
        assert!(!other.store().photos().has(&refused), "{what}");
        // Nor is it passed on where an older laydown took it in.
        let folder_of_photos = folder.path().join(format!("{what}.photos"));
        fs::write(folder_of_photos.join(format!("{refused}.picture")), "This is a letter.").unwrap();
        fs::write(folder_of_photos.join(format!("{refused}.preview.jpg")), "This is a letter.").unwrap();
        let again = folder.path().join("again.zip");
        other.back_up(&again).unwrap();
        assert_eq!(check_backup(&again).unwrap().contents.missing, 1, "{what}");
        let again = ZipArchive::new(File::open(&again).unwrap()).unwrap();
        assert!(!again.file_names().any(|name| name.unwrap().contains(&refused)), "{what}");
    }
}
