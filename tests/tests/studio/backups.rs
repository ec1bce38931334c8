//! Backups that are made by themselves, and tables that go out for a spreadsheet and come back.

use std::fs;
use std::path::PathBuf;

use laydown_app::{BackupTrouble, EditorKind, Now, StudioError};
use proptest::prelude::*;

use super::{Bench, DAY_MS, NOW, net};

const HOUR_MS: i64 = 3_600_000;

fn after(ms: i64) -> Now {
    NOW.at(NOW.unix_ms + ms)
}

impl Bench {
    fn due(&self, ms: i64) -> Option<String> {
        self.studio.backup_due(after(ms), false).unwrap().map(|task| task.name)
    }

    /// Makes the backup that is due or asked for, and has it arrive as `file`; answers with what may go.
    fn back_up_there(&self, ms: i64, file: &str) -> Vec<String> {
        let task = self.studio.backup_due(after(ms), true).unwrap().unwrap();
        let copy = self.folder.path().join("copy.zip");
        self.studio.back_up(&copy).unwrap();
        self.studio.automatic_backup_done(after(ms), &task.place, file, &copy).unwrap()
    }

    fn save_one(&self, ms: i64, grams: &str) {
        self.studio.save(after(ms), net(grams)).unwrap();
    }

    fn notes(&self, ms: i64) -> Vec<String> {
        self.studio.backup(after(ms)).unwrap().notes.into_iter().map(|note| note.text).collect()
    }

    fn out(&self, what: &str) -> (PathBuf, String) {
        let file = self.folder.path().join(format!("{what}.csv"));
        self.studio.export(what, &file).unwrap();
        let text = fs::read_to_string(&file).unwrap();
        (file, text)
    }
}

#[test]
fn the_folder_of_the_backups_is_not_given_back_with_the_sync_place() {
    let bench = Bench::empty();
    let meet = || {
        bench.save(EditorKind::SyncLocation, "", &[("kind", "folder"), ("folder", "Shelf\ntree"), ("sealed", "no")]);
        bench.studio.forget_sync_location(NOW).unwrap()
    };
    assert_eq!(meet(), "tree", "nothing else needs it");
    bench.studio.set_backup_folder(NOW, "another tree", "Card").unwrap();
    assert_eq!(meet(), "tree");
    bench.studio.set_backup_folder(NOW, "tree", "Shelf").unwrap();
    assert_eq!(meet(), "");
    assert_eq!(bench.studio.forget_sync_location(NOW).unwrap(), "", "there is none any more");
}

#[test]
fn one_is_due_a_week_after_the_last_and_only_if_something_is_new() {
    let bench = Bench::set_up();
    assert_eq!(bench.due(0), None, "no folder is chosen");
    bench.studio.set_backup_folder(NOW, "tree", "Backups").unwrap();
    assert!(bench.due(0).is_some(), "the first one is made at once");
    bench.back_up_there(0, "one");
    bench.save_one(HOUR_MS, "19.4");
    assert_eq!(bench.due(6 * DAY_MS), None);
    assert!(bench.due(7 * DAY_MS).is_some());
    bench.back_up_there(7 * DAY_MS, "two");
    assert_eq!(bench.due(30 * DAY_MS), None, "nothing is new");
    bench.save_one(30 * DAY_MS, "19.6");
    assert!(bench.due(30 * DAY_MS).is_some());

    bench.studio.set_backup_schedule(NOW, "month").unwrap();
    assert_eq!(bench.due(30 * DAY_MS), None);
    assert!(bench.due(37 * DAY_MS).is_some());
    bench.studio.set_backup_schedule(NOW, "never").unwrap();
    assert_eq!(bench.due(400 * DAY_MS), None);
    // A clock that was years ahead when the last one was made does not put the next off by years.
    bench.studio.set_backup_schedule(NOW, "week").unwrap();
    bench.back_up_there(2_000 * DAY_MS, "ahead");
    bench.save_one(38 * DAY_MS, "19.8");
    assert!(bench.due(38 * DAY_MS).is_some());
}

#[test]
fn the_newest_five_of_its_own_stay_and_no_other_file_is_named() {
    let bench = Bench::set_up();
    bench.studio.set_backup_folder(NOW, "tree", "Backups").unwrap();
    for number in 1..=5 {
        assert_eq!(bench.back_up_there(number * DAY_MS, &number.to_string()), Vec::<String>::new());
    }
    assert_eq!(bench.back_up_there(6 * DAY_MS, "6"), ["1"]);
    // The first could not be removed: it is named again.
    assert_eq!(bench.back_up_there(7 * DAY_MS, "7"), ["1", "2"]);
    bench.studio.backups_removed(NOW, &["1".to_owned(), "2".to_owned(), "holiday.jpg".to_owned()]).unwrap();
    assert_eq!(bench.back_up_there(8 * DAY_MS, "8"), ["3"]);
    // A file that was written over is one file.
    assert_eq!(bench.back_up_there(9 * DAY_MS, "8"), ["3"]);
    bench.studio.backups_removed(NOW, &["3".to_owned()]).unwrap();

    // The same folder again, as when its permission was given anew: what is there is still its own.
    bench.studio.set_backup_folder(NOW, "tree", "Backups").unwrap();
    assert_eq!(bench.back_up_there(10 * DAY_MS, "10"), ["4"]);
    // Another folder: what lies in the one before is the potter's.
    bench.studio.set_backup_folder(NOW, "other", "Card").unwrap();
    assert!(bench.due(10 * DAY_MS).is_some(), "there is none in it yet");
    for number in 11..=15 {
        assert_eq!(bench.back_up_there(number * DAY_MS, &number.to_string()), Vec::<String>::new());
    }
    assert_eq!(bench.back_up_there(16 * DAY_MS, "16"), ["11"]);
    // One that arrives in a folder that was left meanwhile counts as made, and is never removed.
    let copy = bench.folder.path().join("copy.zip");
    let none = bench.studio.automatic_backup_done(after(17 * DAY_MS), "tree", "late", &copy).unwrap();
    assert_eq!(none, Vec::<String>::new());
    assert_eq!(bench.back_up_there(18 * DAY_MS, "18"), ["11", "12"]);
}

#[test]
fn what_went_wrong_is_said_until_one_is_made_and_counts_as_none() {
    let bench = Bench::set_up();
    bench.studio.set_backup_folder(NOW, "tree", "Backups").unwrap();
    bench.save_one(0, "19.4");
    for (trouble, says) in [
        (BackupTrouble::PlaceGone, "backup folder not found"),
        (BackupTrouble::NotAllowed, "may no longer write"),
        (BackupTrouble::PlaceFull, "the folder is full"),
        (BackupTrouble::PhoneFull, "this phone is full"),
        (BackupTrouble::NotMade, "something went wrong on this phone"),
        (BackupTrouble::NoAnswer, "did not respond"),
    ] {
        bench.studio.backup_failed(NOW, trouble).unwrap();
        let notes = bench.notes(0);
        assert!(notes.len() == 1 && notes[0].contains(says), "{notes:?}");
        assert_eq!(bench.studio.setup(NOW).unwrap().backup, notes[0]);
    }
    assert_eq!(bench.due(5 * HOUR_MS), None, "not at once again");
    assert!(bench.due(6 * HOUR_MS).is_some());
    assert!(bench.studio.backup_due(NOW, true).unwrap().is_some(), "unless the potter says so");
    assert!(bench.notes(40 * DAY_MS).iter().any(|note| note.starts_with("There is no backup yet")));

    // What did not arrive whole removes none of the older ones.
    let half = bench.folder.path().join("half.zip");
    bench.studio.back_up(&half).unwrap();
    let bytes = fs::read(&half).unwrap();
    fs::write(&half, &bytes[..bytes.len() / 2]).unwrap();
    let refused = bench.studio.automatic_backup_done(NOW, "tree", "half", &half).unwrap_err();
    assert!(matches!(refused, StudioError::Refused { .. }), "{refused:?}");
    assert!(bench.notes(0)[0].contains("does not match what laydown wrote"), "{:?}", bench.notes(0));
    assert_eq!(bench.studio.backup(NOW).unwrap().last, "No backup made on this phone yet.");
    let restore_first = |bench: &Bench| bench.studio.backup(NOW).unwrap().restore_first;
    assert!(restore_first(&Bench::empty()) && !restore_first(&bench), "only where there is no studio yet");

    bench.back_up_there(6 * HOUR_MS, "one");
    assert_eq!(bench.notes(6 * HOUR_MS), Vec::<String>::new());
    bench.studio.backup_failed(after(DAY_MS), BackupTrouble::PlaceGone).unwrap();
    bench.studio.set_backup_folder(after(DAY_MS), "other", "Card").unwrap();
    assert_eq!(bench.notes(DAY_MS), Vec::<String>::new(), "another folder, another chance");
    bench.studio.backup_failed(after(DAY_MS), BackupTrouble::PlaceGone).unwrap();
    bench.studio.set_backup_schedule(after(DAY_MS), "never").unwrap();
    assert_eq!(bench.notes(DAY_MS), Vec::<String>::new(), "who wants none is told of none");
    bench.studio.backup_failed(after(DAY_MS), BackupTrouble::PlaceGone).unwrap();
    assert_eq!(bench.notes(DAY_MS).len(), 1, "but of one that was asked for");
    assert!(bench.studio.set_backup_schedule(NOW, "hourly").is_err());
}

#[test]
fn readings_that_went_out_come_back_without_a_row_error_and_only_once() {
    let bench = Bench::set_up();
    for (number, grams) in ["19.4", "20.1", "22.7"].iter().enumerate() {
        bench.save_one(number as i64 * HOUR_MS, grams);
    }
    let (file, text) = bench.out("readings");
    assert!(text.starts_with("\u{feff}at,form,glaze,bucket,zone,wet_weight_g,"), "{text}");
    assert_eq!(text.matches("\r\n").count(), text.matches('\n').count());
    let here = bench.studio.import(after(DAY_MS), &file, &[]).unwrap();
    assert_eq!(here.found, "Nothing would be imported. 3 lines are here already.");
    assert!(here.row_errors.is_empty() && here.questions.is_empty(), "{here:?}");

    // In a studio that has the form and the scale, but none of the coats.
    let other = Bench::set_up();
    let view = other.studio.import(after(DAY_MS), &file, &[]).unwrap();
    assert_eq!((view.found.as_str(), view.row_errors.len()), ("3 readings would be imported.", 0));
    let not_known = view.columns.iter().filter(|column| column.text == "nothing").map(|column| column.label.as_str());
    assert_eq!(not_known.collect::<Vec<_>>(), ["laydown_g_per_dm2"], "it follows from the others");
    other.studio.import_spreadsheet(after(DAY_MS), &file, &[]).unwrap();
    let again = other.studio.import(after(DAY_MS), &file, &[]).unwrap();
    assert_eq!(again.found, "Nothing would be imported. 3 lines are here already.");
    assert_eq!(other.out("readings").1, text, "and goes out as it went out first");
}

#[test]
fn every_table_goes_out_by_itself_and_all_of_them_in_one_zip() {
    let bench = Bench::set_up();
    bench.save_one(0, "19.4");
    let view = bench.studio.backup(NOW).unwrap();
    let zip = bench.folder.path().join("tables.zip");
    bench.studio.export("tables", &zip).unwrap();
    let mut archive = zip::ZipArchive::new(fs::File::open(&zip).unwrap()).unwrap();
    let (all, one) = view.tables.split_last().unwrap();
    assert_eq!((all.what.as_str(), archive.len()), ("tables", one.len()));
    for table in one {
        let (_, text) = bench.out(&table.what);
        let name = format!("{}.csv", table.what);
        assert_eq!(std::io::read_to_string(archive.by_name(&name).unwrap()).unwrap(), text);
        let mut reader = csv::Reader::from_reader(text.trim_start_matches('\u{feff}').as_bytes());
        let width = reader.headers().unwrap().len();
        assert!(reader.records().all(|record| record.unwrap().len() == width), "{name}");
    }
    let forms = bench.out("forms").1;
    assert!(forms.contains("Small mug,") && forms.lines().count() == 2, "{forms}");
    assert!(bench.studio.export("../journal", &zip).is_err());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Whatever a potter calls a glaze, no spreadsheet runs it, and it is the same glaze when it comes back.
    #[test]
    fn no_name_becomes_a_formula(name in "[=+@'\\-a1 ;,\"é]{1,12}") {
        prop_assume!(!name.trim().is_empty());
        let bench = Bench::empty();
        bench.save(EditorKind::Form, "", &[("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")]);
        bench.save(EditorKind::Glaze, "", &[("name", &name), ("specific_gravity", "1.45")]);
        bench.save(EditorKind::Scale, "", &[("name", "Bench scale"), ("capacity", "2000"), ("step", "0.1")]);
        bench.save_one(0, "19.4");
        let (file, text) = bench.out("readings");
        let mut reader = csv::Reader::from_reader(text.trim_start_matches('\u{feff}').as_bytes());
        for record in reader.records() {
            for cell in record.unwrap().iter() {
                let is_number = cell.parse::<f64>().is_ok();
                prop_assert!(is_number || !cell.starts_with(['=', '+', '-', '@']), "{}", cell);
            }
        }
        let view = bench.studio.import(after(DAY_MS), &file, &[]).unwrap();
        prop_assert_eq!(view.found, "Nothing would be imported. 1 line is here already.");
    }
}

#[test]
fn a_copy_that_lacks_some_of_this_studio_is_no_backup_and_removes_nothing() {
    let bench = Bench::set_up();
    bench.studio.set_backup_folder(NOW, "tree", "Backups").unwrap();
    for number in 1..=5 {
        bench.back_up_there(number * DAY_MS, &number.to_string());
    }
    // Of another studio, which is empty, and of this one before it went on.
    let [others, before, now] = ["others.zip", "before.zip", "now.zip"].map(|name| bench.folder.path().join(name));
    Bench::empty().studio.back_up(&others).unwrap();
    bench.studio.back_up(&before).unwrap();
    bench.save_one(5 * DAY_MS, "19.4");
    bench.studio.back_up(&now).unwrap();
    for lacking in [&others, &before] {
        let refused = bench.studio.automatic_backup_done(after(6 * DAY_MS), "tree", "6", lacking).unwrap_err();
        assert!(refused.to_string().starts_with("This copy is missing some of what this studio has;"), "{refused}");
        assert!(
            bench.notes(6 * DAY_MS)[0].contains("does not match what laydown wrote"),
            "{:?}",
            bench.notes(6 * DAY_MS)
        );
        assert!(bench.studio.backed_up(after(6 * DAY_MS), lacking).is_err(), "nor by hand");
    }
    // What is kept while a backup is on its way does not make it worthless.
    bench.save_one(6 * DAY_MS, "19.6");
    assert_eq!(bench.studio.automatic_backup_done(after(6 * DAY_MS), "tree", "6", &now).unwrap(), ["1"]);
}

#[test]
fn a_backup_that_has_what_the_studio_lost_is_not_named_for_removal() {
    let bench = Bench::set_up();
    bench.studio.set_backup_folder(NOW, "tree", "Backups").unwrap();
    bench.back_up_there(DAY_MS, "1");
    // The folder's list outlives the studio that made the first: as after a recovery that lost entries.
    let list: String =
        bench.studio.store().read(|conn| laydown_store::chosen(conn, "backup_by_itself")).unwrap().unwrap();
    let poorer = Bench::set_up();
    poorer.studio.store().transact(NOW.unix_ms, |tx| tx.choose("backup_by_itself", Some(&list))).unwrap();
    for number in 2..=6 {
        assert_eq!(poorer.back_up_there(number * DAY_MS, &number.to_string()), Vec::<String>::new(), "{number}");
    }
    assert_eq!(poorer.back_up_there(7 * DAY_MS, "7"), ["2"], "one of its own may go, the one that has more may not");
}
