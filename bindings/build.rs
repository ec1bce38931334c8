//! Stamps the library with a hash of the facade's own source: uniffi's checksums do not cover records,
//! so the shells compare this stamp with the one their generated code was made with.

use std::{env, error::Error, fs, path::Path};

use sha2::{Digest, Sha256};

fn main() -> Result<(), Box<dyn Error>> {
    let folder = Path::new(&env::var("CARGO_MANIFEST_DIR")?).join("src");
    let mut files =
        fs::read_dir(&folder)?.map(|entry| Ok(entry?.path())).collect::<Result<Vec<_>, std::io::Error>>()?;
    files.sort();
    let mut hash = Sha256::new();
    for file in files {
        hash.update(fs::read(file)?);
    }
    let stamp: String = hash.finalize().iter().take(8).map(|byte| format!("{byte:02x}")).collect();
    println!("cargo::rustc-env=LAYDOWN_BUILD_STAMP={stamp}");
    println!("cargo::rerun-if-changed=src");
    Ok(())
}
