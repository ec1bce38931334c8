//! Two things are made before the crate is compiled: the build stamp, and a function for each message in `i18n`.

#![allow(clippy::print_stdout, reason = "what is printed here tells cargo what to do")]

mod messages;
mod stamp;

use std::error::Error;
use std::path::Path;
use std::{env, fs};

fn main() -> Result<(), Box<dyn Error>> {
    let root = env::var("CARGO_MANIFEST_DIR")?;
    let root = Path::new(&root);
    println!("cargo::rustc-env=LAYDOWN_BUILD_STAMP={}", stamp::stamp(&root.join("src"))?);
    println!("cargo::rerun-if-changed=src");
    let written = Path::new(&env::var("OUT_DIR")?).join("messages.rs");
    fs::write(written, messages::functions(&root.join("i18n"))?)?;
    println!("cargo::rerun-if-changed=i18n");
    println!("cargo::rerun-if-changed=build");
    Ok(())
}
