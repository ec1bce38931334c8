//! A studio that is copied from one phone to another, as the phones' own backups do it.

use std::fs;
use std::path::{Path, PathBuf};

use laydown_app::{EditorEntry, EditorKind, Now, Studio, Value};
use tempfile::TempDir;

const NOW: Now = Now { unix_ms: 1_790_000_000_000, utc_offset_s: 0 };

/// A phone: a folder for the studio, and one that is left out when it is copied.
struct Phone(TempDir);

impl Phone {
    fn new() -> Phone {
        Phone(tempfile::tempdir().unwrap())
    }

    fn studio(&self) -> PathBuf {
        self.0.path().join("studio.laydown")
    }

    fn mark(&self) -> PathBuf {
        self.0.path().join("this_phone")
    }

    fn open(&self) -> Studio {
        Studio::open_here(&self.studio(), &self.mark(), NOW).unwrap()
    }

    /// What the phone's own backup brings to another phone.
    fn copied(&self) -> Phone {
        let other = Phone::new();
        for ending in ["laydown", "laydown-wal"] {
            let from = self.studio().with_extension(ending);
            if from.exists() {
                fs::copy(&from, other.studio().with_extension(ending)).unwrap();
            }
        }
        other
    }
}

fn glaze(studio: &Studio, name: &str) {
    let values = vec![Value { key: "name".into(), text: name.into() }];
    let entry = EditorEntry {
        kind: EditorKind::Glaze,
        id: String::new(),
        subject: String::new(),
        values,
        draft: String::new(),
    };
    studio.save_record(NOW, &entry).unwrap();
}

fn prefer_ounces(studio: &Studio) {
    let values =
        vec![Value { key: "mass".into(), text: "ounce".into() }, Value { key: "speak".into(), text: "no".into() }];
    let entry = EditorEntry {
        kind: EditorKind::Preference,
        id: String::new(),
        subject: String::new(),
        values,
        draft: String::new(),
    };
    studio.save_record(NOW, &entry).unwrap();
}

#[test]
fn a_phone_saves_its_name_and_a_copy_gets_one_of_its_own() {
    let phone = Phone::new();
    let device = {
        let studio = phone.open();
        glaze(&studio, "Ash white");
        prefer_ounces(&studio);
        studio.store().device()
    };
    assert_eq!(phone.open().store().device(), device, "opened again on the same phone");
    let copy = phone.copied();
    let named = copy.open().store().device();
    assert_ne!(named, device);
    assert_eq!(copy.open().store().device(), named, "and keeps that");
    assert!(!copy.open().preferences().unwrap().speak, "what was preferred goes with it");
    assert_eq!(phone.open().store().device(), device);
}

#[test]
fn a_studio_that_was_copied_before_anything_was_saved_has_two_names_too() {
    let phone = Phone::new();
    let device = phone.open().store().device();
    let copy = phone.copied();
    assert_ne!(copy.open().store().device(), device);
    assert_eq!(phone.open().store().device(), device);
}

#[test]
fn both_go_on_and_agree_when_they_meet() {
    let phone = Phone::new();
    glaze(&phone.open(), "Ash white");
    let copy = phone.copied();
    let (one, other) = (phone.open(), copy.open());
    glaze(&one, "Iron red");
    glaze(&other, "Winter blue");
    let zip = |phone: &Phone| phone.0.path().join("backup.zip");
    one.back_up(&zip(&phone)).unwrap();
    other.back_up(&zip(&copy)).unwrap();
    one.restore(NOW, &zip(&copy)).unwrap();
    other.restore(NOW, &zip(&phone)).unwrap();
    assert_eq!(one.store().dump().unwrap(), other.store().dump().unwrap());
    assert_eq!(one.buckets(NOW).unwrap().buckets.len(), 3);
}

#[test]
fn an_unreadable_mark_is_as_none_and_a_place_that_is_missing_is_said() {
    let phone = Phone::new();
    let device = {
        let studio = phone.open();
        glaze(&studio, "Ash white");
        studio.store().device()
    };
    fs::write(phone.mark(), [0xff, 0xfe, 0x00]).unwrap();
    assert_ne!(phone.open().store().device(), device);
    assert!(Studio::open_here(&phone.studio(), Path::new("/nowhere/at/all/mark"), NOW).is_err());
}
