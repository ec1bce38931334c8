//! The other process of the store's tests: it is killed, runs out of room, shares a file, or may not write.
//!
//! `other_process keep STUDIO [COATS]` keeps coats, as many as told or until one cannot be kept, and says `kept ID` of
//! each once it is durable, and `ended WHY` of the one that could not be.
//! `other_process open FOLDER NAME...` opens each studio in the folder and says how that went.
#![allow(clippy::print_stdout, reason = "the tests listen to it")]

use std::env;
use std::path::Path;

use laydown::journal::RandomIds;
use laydown::store::Store;
use laydown_tests::{NOW, coat, furnish, keep};

fn main() {
    let words: Vec<String> = env::args().skip(1).collect();
    match words.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        ["keep", studio] => keep_coats(studio, i64::MAX),
        ["keep", studio, coats] => keep_coats(studio, coats.parse().unwrap()),
        ["open", folder, names @ ..] => {
            for name in names {
                println!("{name}: {:?}", Store::open(Path::new(folder).join(name), NOW, RandomIds).err());
            }
        }
        _ => panic!("usage: other_process keep STUDIO [COATS] | open FOLDER NAME..."),
    }
}

/// Standard output is flushed at the end of each line, so what was said before a kill was heard.
fn keep_coats(studio: &str, coats: i64) {
    let store = Store::open(studio, NOW, RandomIds).unwrap();
    let bench = furnish(&store);
    for number in 0..coats {
        let coat = coat(&bench, &mut RandomIds, number);
        match keep(&store, &coat) {
            Ok(_) => println!("kept {}", coat.id),
            Err(error) => {
                println!("ended {error:?}");
                return;
            }
        }
    }
}
