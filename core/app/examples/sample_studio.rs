//! Makes the sample studio: `cargo run --example sample_studio -- FILE MARK`. Leaves a file that is there alone. MARK is the file
//! that tells a phone its own studio from a copied one: what is in the sample was then done on that phone.

use std::path::Path;
use std::process::ExitCode;

use laydown_app::{Now, Studio};

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let [path, mark] = arguments.as_slice() else {
        eprintln!("Say where: sample_studio FILE MARK");
        return ExitCode::FAILURE;
    };
    let (path, mark) = (Path::new(path), Path::new(mark));
    if path.exists() {
        eprintln!("{} is there already; it is left as it is.", path.display());
        return ExitCode::SUCCESS;
    }
    let local = chrono::Local::now();
    let now = Now { unix_ms: local.timestamp_millis(), utc_offset_s: local.offset().local_minus_utc() };
    match Studio::open_here(path, mark, now).and_then(|studio| laydown_app::sample::fill(&studio, now)) {
        Ok(coats) => {
            eprintln!("A sample studio with {coats} coats is in {}.", path.display());
            ExitCode::SUCCESS
        }
        Err(error) => {
            eprintln!("{error}");
            ExitCode::FAILURE
        }
    }
}
