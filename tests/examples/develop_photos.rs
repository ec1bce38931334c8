//! Develops the pictures that `tests/photos/pictures.py` wrote and puts them into a studio's folder; says as JSON on
//! standard output under which name each lies there, or why it was refused, as `PhotoError` names it.
//! `cargo run -p laydown-tests --example develop_photos -- FOLDER`
#![allow(clippy::print_stdout, reason = "it prints what became of the pictures")]

use std::path::{Path, PathBuf};

use laydown_store::photos::{Photos, prepare_photo};
use serde_json::{Map, Value, json};

fn main() {
    let folder = PathBuf::from(std::env::args().nth(1).expect("the folder of pictures"));
    let photos = Photos::of_studio(&folder.join("kept.laydown"));
    let all = |folder: &Path| files(folder).iter().map(|file| save(&photos, file)).collect::<Map<String, Value>>();
    println!("{}", json!({ "good": all(&folder), "bad": all(&folder.join("bad")) }));
}

fn files(folder: &Path) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()));
    let mut files: Vec<PathBuf> =
        entries.map(|entry| entry.expect("an entry").path()).filter(|path| path.is_file()).collect();
    files.sort();
    files
}

fn save(photos: &Photos, file: &Path) -> (String, Value) {
    let name = file.file_name().expect("a name").to_string_lossy().into_owned();
    let bytes = std::fs::read(file).unwrap_or_else(|error| panic!("{}: {error}", file.display()));
    let answer = match prepare_photo(&bytes) {
        Ok(photo) => {
            photos.put(&photo).unwrap_or_else(|error| panic!("{name}: {error}"));
            json!({
                "sha256": photo.sha256,
                "width": photo.width,
                "height": photo.height,
                "file": photos.file(&photo.sha256),
                "preview": photos.preview(&photo.sha256),
            })
        }
        Err(error) => json!({ "refused": error.to_string() }),
    };
    (name, answer)
}
