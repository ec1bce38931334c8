//! Writes the seeds of every target into a folder of its own, and prints their names: `seeds FOLDER`.
#![allow(clippy::print_stdout, reason = "it prints the names")]

use std::fs;
use std::path::Path;

fn main() {
    let folder = std::env::args().nth(1).expect("a folder");
    for target in laydown_fuzz::TARGETS {
        let folder = Path::new(&folder).join(target.name);
        fs::create_dir_all(&folder).expect("a folder");
        for (seed, number) in (target.seeds)().into_iter().zip(0..) {
            fs::write(folder.join(format!("seed-{number:02}")), seed).expect("a seed");
        }
        println!("{}", target.name);
    }
}
