//! Takes in every sheet in a folder, each into a studio of its own: `import_sheets FOLDER`. Beside `NAME.csv` it leaves
//! `NAME.zip`, a backup to compare with, and prints how long each took. The sheets are made, and the backups read, by
//! `tests/import/write.py`.
#![allow(clippy::print_stdout, reason = "it prints what it did")]

use std::path::{Path, PathBuf};
use std::time::Instant;

use laydown_app::{Now, SheetEntry, SheetKind, Studio, Value};

const NOW: Now = Now { unix_ms: 1_790_000_000_000, utc_offset_s: 3_600 };

fn main() {
    let folder = PathBuf::from(std::env::args().nth(1).expect("a folder"));
    let mut sheets: Vec<PathBuf> = std::fs::read_dir(&folder)
        .expect("the folder")
        .map(|entry| entry.expect("a file").path())
        .filter(|path| path.extension().is_some_and(|extension| extension == "csv"))
        .collect();
    sheets.sort();
    for sheet in sheets {
        take_in(&sheet);
    }
}

fn take_in(sheet: &Path) {
    let studio = Studio::open(&sheet.with_extension("laydown"), NOW).expect("a studio");
    keep(&studio, SheetKind::Form, &[("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")]);
    keep(&studio, SheetKind::Form, &[("name", "Jug, “tall”"), ("class", "cylinder_mug"), ("capacity", "900 ml")]);
    keep(&studio, SheetKind::Glaze, &[("name", "Ash white")]);
    keep(&studio, SheetKind::Glaze, &[("name", "Céladon; pale")]);
    keep(&studio, SheetKind::Scale, &[("name", "Bench scale"), ("capacity", "2000 g"), ("step", "0.1 g")]);
    let start = Instant::now();
    let view = studio.import(NOW, sheet, &[]).expect("a view");
    let planned = start.elapsed();
    let start = Instant::now();
    let kept =
        studio.take_in_sheet(NOW, sheet, &[]).unwrap_or_else(|error| panic!("{}: {error}: {view:?}", sheet.display()));
    let taken = start.elapsed();
    studio.back_up(&sheet.with_extension("zip")).expect("a backup");
    let name = sheet.file_name().expect("a name").to_string_lossy();
    println!("{name}: {} Planned in {planned:.1?}, taken in in {taken:.1?}. {:?}", kept.sentence, view.complaints);
}

fn keep(studio: &Studio, kind: SheetKind, values: &[(&str, &str)]) {
    let values = values.iter().map(|(key, text)| Value { key: (*key).to_owned(), text: (*text).to_owned() }).collect();
    let entry = SheetEntry { kind, id: String::new(), subject: String::new(), values };
    studio.keep_sheet(NOW, &entry).expect("what a sheet needs");
}
