//! Takes in every sheet in a folder, each into a studio of its own: `import_sheets FOLDER`. Beside `NAME.csv` it leaves
//! `NAME.zip`, a backup to compare with, and prints how long each took. The sheets are made, and the backups read, by
//! `tests/import/write.py`.
#![allow(clippy::print_stdout, reason = "it prints what it did")]

use std::path::{Path, PathBuf};
use std::time::Instant;

use laydown_app::{EditorEntry, EditorKind, Now, Studio, Value};

const NOW: Now = Now { unix_ms: 1_790_000_000_000, utc_offset_s: 3_600 };

fn main() {
    let folder = PathBuf::from(std::env::args().nth(1).expect("a folder"));
    let mut sheets: Vec<PathBuf> = std::fs::read_dir(&folder)
        .expect("the folder")
        .map(|entry| entry.expect("a file").path())
        .filter(|path| path.extension().is_some_and(|extension| extension == "csv"))
        .collect();
    sheets.sort();
    for editor in sheets {
        restore(&editor);
    }
}

fn restore(editor: &Path) {
    let studio = Studio::open(&editor.with_extension("laydown"), NOW).expect("a studio");
    save(&studio, EditorKind::Form, &[("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")]);
    save(&studio, EditorKind::Form, &[("name", "Jug, “tall”"), ("class", "cylinder_mug"), ("capacity", "900 ml")]);
    save(&studio, EditorKind::Glaze, &[("name", "Ash white")]);
    save(&studio, EditorKind::Glaze, &[("name", "Céladon; pale")]);
    save(&studio, EditorKind::Scale, &[("name", "Bench scale"), ("capacity", "2000 g"), ("step", "0.1 g")]);
    let start = Instant::now();
    let view = studio.import(NOW, editor, &[]).expect("a view");
    let planned = start.elapsed();
    let start = Instant::now();
    let saved = studio
        .import_spreadsheet(NOW, editor, &[])
        .unwrap_or_else(|error| panic!("{}: {error}: {view:?}", editor.display()));
    let taken = start.elapsed();
    studio.back_up(&editor.with_extension("zip")).expect("a backup");
    let name = editor.file_name().expect("a name").to_string_lossy();
    println!("{name}: {} Planned in {planned:.1?}, taken in in {taken:.1?}. {:?}", saved.sentence, view.row_errors);
}

fn save(studio: &Studio, kind: EditorKind, values: &[(&str, &str)]) {
    let values = values.iter().map(|(key, text)| Value { key: (*key).to_owned(), text: (*text).to_owned() }).collect();
    let entry = EditorEntry { kind, id: String::new(), subject: String::new(), values, draft: String::new() };
    studio.save_record(NOW, &entry).expect("what a sheet needs");
}
