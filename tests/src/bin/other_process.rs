//! The other process of the store's tests: it is killed, runs out of room, shares a file, or may not write.
//!
//! `other_process save STUDIO [COATS]` keeps coats, as many as told or until one cannot be kept, and says `saved ID` of
//! each once it is durable, and `ended WHY` of the one that could not be.
//! `other_process work STUDIO SEED COMMANDS` runs commands of every sort and says `told JSON` of each that came back.
//! `other_process photograph STUDIO PICTURES FIRST MOST` does the same with photographs, from the FIRST picture of the folder
//! PICTURES on and over again. `other_process perish STUDIO PICTURE` dies when the photograph lies in the folder and its
//! record is not kept yet.
//! `other_process open FOLDER NAME...` opens each studio in the folder and says how that went.
//! `other_process merge STUDIO SEGMENTS` takes in the segments that lie in that folder as their names say, and
//! `other_process undo STUDIO TOKEN` takes the command back whose token stands in the file TOKEN; `redo` does it again. `refuse`
//! takes in a file that cannot be used; `back up STUDIO FILE` makes a backup, `take in STUDIO FILE` takes one in. They say
//! `memory KILOBYTES`: the most they needed beside what a process has anyway, where Linux tells it.
#![allow(clippy::print_stdout, reason = "the tests listen to it")]

use std::fs;
use std::path::{Path, PathBuf};

use laydown_app::{Now, Studio};
use laydown_store::journal::{RandomIds, SeededIds};
use laydown_store::photos::prepare_photo;
use laydown_store::{Store, StoreError, Undo};
use laydown_tests::work::Worker;
use laydown_tests::{NOW, a_piece, coat, furnish, memory, save, segments};

fn main() {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match words.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        ["keep", studio] => save_coats(studio, i64::MAX),
        ["keep", studio, coats] => save_coats(studio, coats.parse().unwrap()),
        ["work", studio, seed, commands] => work(studio, seed.parse().unwrap(), commands.parse().unwrap()),
        ["photograph", studio, pictures, first, most] => {
            save_photos(Path::new(studio), Path::new(pictures), first.parse().unwrap(), most.parse().unwrap());
        }
        ["perish", studio, picture] => perish(Path::new(studio), Path::new(picture)),
        ["open", folder, names @ ..] => {
            for name in names {
                println!("{name}: {:?}", Store::open(Path::new(folder).join(name), NOW, RandomIds).err());
            }
        }
        ["merge", studio, folder] => {
            measured(|| _ = segments::restore(&Store::open(studio, NOW, RandomIds).unwrap(), Path::new(folder)))
        }
        ["undo", studio, token] => {
            measured(|| _ = Store::open(studio, NOW, RandomIds).unwrap().undo(NOW, token_in(token)).unwrap())
        }
        ["redo", studio, token] => measured(|| {
            _ = Store::open(studio, NOW, RandomIds).unwrap().transact(NOW, |tx| tx.redo(token_in(token))).unwrap()
        }),
        ["refuse", studio, file] => {
            measured(|| _ = Store::open(studio, NOW, RandomIds).unwrap().restore(NOW, Path::new(file)).unwrap_err())
        }
        ["back up", studio, file] => measured(|| {
            let now = Now { unix_ms: NOW, utc_offset_s: 0 };
            _ = Studio::open(Path::new(studio), now).unwrap().back_up(Path::new(file)).unwrap()
        }),
        ["take in", studio, file] => {
            measured(|| _ = Store::open(studio, NOW, RandomIds).unwrap().restore(NOW, Path::new(file)).unwrap())
        }
        _ => panic!("see the beginning of other_process.rs"),
    }
}

/// Standard output is flushed at the end of each line, so what was said before a kill was heard.
fn save_coats(studio: &str, coats: i64) {
    let store = Store::open(studio, NOW, RandomIds).unwrap();
    let bench = furnish(&store);
    for number in 0..coats {
        let coat = coat(&bench, &mut RandomIds, number);
        match save(&store, &coat) {
            Ok(_) => println!("kept {}", coat.id),
            Err(error) => {
                println!("ended {error:?}");
                return;
            }
        }
    }
}

fn work(studio: &str, seed: u64, commands: usize) {
    let store = Store::open(studio, NOW, SeededIds::new(seed)).unwrap();
    let mut worker = Worker::new(&store, seed);
    for _ in 0..commands {
        let told = worker.command(&store).unwrap();
        println!("told {}", serde_json::to_string(&told).unwrap());
    }
}

fn save_photos(studio: &Path, pictures: &Path, first: usize, most: usize) {
    let now = Now { unix_ms: NOW, utc_offset_s: 0 };
    let studio = Studio::open(studio, now).unwrap();
    let piece = a_piece(studio.store()).to_string();
    let mut files: Vec<PathBuf> = pictures.read_dir().unwrap().map(|entry| entry.unwrap().path()).collect();
    files.sort();
    for file in files.iter().cycle().skip(first).take(most) {
        match studio.save_photo(now, &piece, "", file) {
            Ok(saved) => println!("kept {}", saved.id),
            Err(error) => {
                println!("ended {error:?}");
                return;
            }
        }
    }
}

fn perish(studio: &Path, picture: &Path) {
    let store = Store::open(studio, NOW, RandomIds).unwrap();
    let photo = prepare_photo(&fs::read(picture).unwrap()).unwrap();
    let saved = store.transact(NOW, |_| -> Result<(), StoreError> {
        store.photos().put(&photo)?;
        std::process::abort()
    });
    println!("ended {saved:?}");
}

fn token_in(file: &str) -> Undo {
    serde_json::from_slice(&fs::read(file).unwrap()).unwrap()
}

fn measured(work: impl FnOnce()) {
    if let Some(kilobytes) = memory::needed(work) {
        println!("memory {kilobytes}");
    }
}
