//! The same coats in other libraries that merge what several devices wrote: made by one replica, sent, and merged by another.
//!
//! `laydown-peers LIBRARY make EVENTS SENT` reads events, one JSON object a line, keeps each as a map of its fields, and writes
//! what another replica needs to have them too. `laydown-peers LIBRARY merge SENT` does what that replica does, and says
//! how long it took and how much memory, as JSON. Two commands, so that the memory is that of the merge alone.
#![allow(clippy::print_stdout, reason = "it answers on the standard output")]

mod libraries;

use std::error::Error;
use std::fs;
use std::time::Instant;

use serde_json::{Map, Value, json};

use libraries::Library;

/// A coat: its id and its fields.
pub(crate) type Record = (String, Map<String, Value>);
pub(crate) type Result<T> = std::result::Result<T, Box<dyn Error>>;

fn main() -> Result<()> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match arguments.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        [library, "make", events, sent] => {
            let library = Library::named(library)?;
            Ok(fs::write(sent, library.make(&records(&fs::read_to_string(events)?)?)?)?)
        }
        [library, "merge", sent] => {
            let library = Library::named(library)?;
            let sent = fs::read(sent)?;
            let before = kilobytes("VmRSS")?;
            let start = Instant::now();
            let merged = library.merge(&sent)?;
            let seconds = start.elapsed().as_secs_f64();
            let memory = (kilobytes("VmHWM")? - before) * 1024;
            // That they are all there is looked at afterwards: reading them makes some libraries take more memory.
            println!("{}", json!({"records": merged.records(), "seconds": seconds, "memory": memory}));
            Ok(())
        }
        _ => Err("laydown-peers LIBRARY make EVENTS SENT | laydown-peers LIBRARY merge SENT".into()),
    }
}

fn records(lines: &str) -> Result<Vec<Record>> {
    let record = |line: &str| {
        let event: Value = serde_json::from_str(line)?;
        let entity = event["entity"].as_str().ok_or("an event without an entity")?;
        let body = event["body"].as_object().ok_or("an event without a body")?;
        Ok((entity.to_owned(), body.clone()))
    };
    lines.lines().map(record).collect()
}

/// One of the sizes that Linux tells of this process.
fn kilobytes(name: &str) -> Result<u64> {
    let status = fs::read_to_string("/proc/self/status")?;
    let line = status.lines().find(|line| line.starts_with(name)).ok_or("Linux alone tells how much memory is used")?;
    Ok(line.split_ascii_whitespace().nth(1).ok_or("a size without a number")?.parse()?)
}
