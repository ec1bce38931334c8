//! Makes the sample studio: `cargo run --example sample_studio -- FILE`. Leaves a file that is there alone.

use std::path::Path;
use std::process::ExitCode;

use laydown::studio::{Now, Studio};

fn main() -> ExitCode {
    let Some(path) = std::env::args().nth(1) else {
        eprintln!("Say where: sample_studio FILE");
        return ExitCode::FAILURE;
    };
    let path = Path::new(&path);
    if path.exists() {
        eprintln!("{} is there already; it is left as it is.", path.display());
        return ExitCode::SUCCESS;
    }
    let local = chrono::Local::now();
    let now = Now { unix_ms: local.timestamp_millis(), utc_offset_s: local.offset().local_minus_utc() };
    match Studio::open(path, now).and_then(|studio| laydown::sample::fill(&studio, now)) {
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
