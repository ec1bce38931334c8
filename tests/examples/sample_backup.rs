//! Writes a backup of the sample studio and what can be written apart from it: `sample_backup FOLDER`, which is made. Read
//! again by `tests/backup/read.py`.

use std::path::PathBuf;

use laydown_app::sample;
use laydown_app::{Now, Studio};

fn main() {
    let folder = PathBuf::from(std::env::args().nth(1).expect("a folder"));
    std::fs::create_dir_all(&folder).expect("the folder");
    let now = Now { unix_ms: 1_790_000_000_000, utc_offset_s: 3_600 };
    let studio = Studio::open(&folder.join("studio.laydown"), now).expect("a studio");
    sample::fill(&studio, now).expect("the sample");
    let piece = studio.find_pieces(now, &[], 0).expect("pieces").pieces[0].id.clone();
    let picture = folder.join("picture.png");
    image::RgbImage::from_fn(60, 40, |x, y| image::Rgb([x as u8, y as u8, 90])).save(&picture).expect("a picture");
    studio.save_photo(now, &piece, "", &picture).expect("a photograph");
    studio.back_up(&folder.join("backup.zip")).expect("a backup");
    for (what, name) in [("journal", "journal.jsonl"), ("tables", "tables.zip"), ("readings", "readings.csv")] {
        studio.export(what, &folder.join(name)).expect("a file for other programs");
    }
}
