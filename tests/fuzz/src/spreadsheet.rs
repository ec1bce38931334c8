//! A potter's own spreadsheet: the dry run, the dry run with everything answered that is asked, and taking it in.

use std::fs;

use laydown_app::{EditorEntry, EditorKind, ImportView, Studio, Value};

use crate::{NOW, folder, is_sentence};

/// The sheets that the tests of the import read, and what laydown writes itself.
pub fn seeds() -> Vec<Vec<u8>> {
    let sheets = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/studio/sheets");
    let mut files: Vec<_> = fs::read_dir(sheets).unwrap().map(|entry| entry.unwrap().path()).collect();
    files.sort();
    let mut seeds: Vec<Vec<u8>> = files.into_iter().map(|file| fs::read(file).unwrap()).collect();
    seeds.push(b"sep=;\nDate;Form;Glaze;Zone;Wet g\n3/11/2026;Small mug;Ash white;inside;1.234,5\n".to_vec());
    let utf16 = "Date\tForm\tWeight\n2026-11-03\tSmall mug\t19.4\n".encode_utf16().flat_map(u16::to_le_bytes);
    seeds.push([0xFF, 0xFE].into_iter().chain(utf16).collect());
    seeds
}

pub fn read(bytes: &[u8]) {
    let folder = folder();
    let file = folder.path().join("sheet.csv");
    fs::write(&file, bytes).unwrap();
    let studio = Studio::open(&folder.path().join("studio.laydown"), NOW).unwrap();
    save(&studio, EditorKind::Form, &[("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")]);
    save(&studio, EditorKind::Glaze, &[("name", "Ash white")]);
    save(&studio, EditorKind::Scale, &[("name", "Bench scale"), ("capacity", "2000 g"), ("step", "0.1 g")]);
    let mut answers = Vec::new();
    // An answer can bring up the next question.
    for _ in 0..3 {
        match studio.import(NOW, &file, &answers) {
            Ok(view) => answers = answered(&view),
            Err(error) => return is_sentence(error),
        }
    }
    match studio.import_spreadsheet(NOW, &file, &answers) {
        Ok(saved) => {
            let dump = studio.store().dump().unwrap();
            studio.undo(NOW, &saved.undo).unwrap();
            assert_ne!(studio.store().dump().unwrap(), dump, "something was taken in");
        }
        Err(error) => is_sentence(error),
    }
}

/// What the view says the columns are, and the last of the items where something is asked.
fn answered(view: &ImportView) -> Vec<Value> {
    view.row_errors.iter().for_each(is_sentence);
    let value = |key: &String, text: &String| Value { key: key.clone(), text: text.clone() };
    let columns = view.columns.iter().map(|field| value(&field.key, &field.text));
    let questions = view.questions.iter().filter_map(|field| Some(value(&field.key, &field.items.last()?.code)));
    columns.chain(questions).collect()
}

fn save(studio: &Studio, kind: EditorKind, values: &[(&str, &str)]) {
    let values = values.iter().map(|(key, text)| Value { key: (*key).to_owned(), text: (*text).to_owned() }).collect();
    let entry = EditorEntry { kind, id: String::new(), subject: String::new(), values, draft: String::new() };
    studio.save_record(NOW, &entry).unwrap();
}
