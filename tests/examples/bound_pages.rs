//! Binds JPEG pages into a PDF: `bound_pages INTO PAGE...`. Read again by `tests/photos/pdf.py`.

use std::path::{Path, PathBuf};

use laydown_app::{Now, Studio};

fn main() {
    let mut arguments = std::env::args().skip(1);
    let into = arguments.next().expect("a file to write");
    let pages: Vec<PathBuf> = arguments.map(PathBuf::from).collect();
    let now = Now { unix_ms: 1_790_000_000_000, utc_offset_s: 3_600 };
    let studio = Studio::open(&Path::new(&into).with_extension("laydown"), now).expect("a studio");
    studio.write_pdf("Cone 6, Garden kiln – Öfen", &pages, Path::new(&into)).expect("a document");
}
