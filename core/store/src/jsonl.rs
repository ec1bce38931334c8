//! The journal as JSON lines: one file that any program reads line by line, and that is taken in again.
//!
//! ```text
//! {"laydown_journal":1,"events":2,"sha256":"…"}
//! {"device":"…","seq":1,"clock":…,"entity":"…","kind":"glaze","body":{…}}
//! {"device":"…","seq":2,"clock":…,"entity":"…","kind":"coat","body":{…}}
//! ```
//!
//! The first line says what it is, how many events follow, and the SHA-256 of all that follows: a file that was cut off or
//! changed shows. The events are those of a backup, in the order of device and number. Photographs are not in it.

use std::fs::File;
use std::io::{BufRead, BufReader, BufWriter, Read, Seek, SeekFrom, Write};

use rusqlite::Connection;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

use super::backup::{BackupError, EVENTS_A_FILE, Summed, write_events};
use super::error::StoreError;
use super::photos::hex;
use super::transaction::{devices, next_events};
use crate::journal::{Event, estimated_bytes};

/// The version of this layout.
const LAYOUT: u32 = 1;
/// The first line has room for any number of events, which is known when all are written, as is the sum.
const HEAD: usize = 136;
/// What every journal begins with.
const BEGINS: &str = "{\"laydown_journal\":";
/// The longest line that is read: a form with all its points takes a twentieth of it.
const LONGEST_LINE: u64 = 1 << 20;
/// Events that are handed on at a time, unless they are large.
const BATCH: usize = 500;
/// Bytes that the events of a lot may need before it is handed on.
const HEAVY: usize = 8 << 20;
/// Bytes that one event may need: a form with all its points needs a hundredth of it.
const HEAVIEST: usize = 16 << 20;

#[derive(Serialize, Deserialize)]
struct Head {
    laydown_journal: u32,
    events: u64,
    sha256: String,
}

/// Writes all events, and answers how many there are.
pub(super) fn write(conn: &Connection, file: File) -> Result<u64, StoreError> {
    let mut to = BufWriter::new(file);
    to.write_all(&head(0, String::new())?)?;
    let mut summed = Summed { to: &mut to, sum: Sha256::new() };
    let mut written = 0;
    for (device, _) in devices(conn)? {
        let mut last = 0;
        while let events = next_events(conn, device, last, EVENTS_A_FILE)?
            && let Some(end) = events.last()
        {
            write_events(&mut summed, &events)?;
            written += events.len() as u64;
            last = end.seq;
        }
    }
    let sum = hex(summed.sum);
    let mut file = to.into_inner().map_err(|error| error.into_error())?;
    file.seek(SeekFrom::Start(0))?;
    file.write_all(&head(written, sum)?)?;
    file.sync_all()?;
    Ok(written)
}

/// The first line, of the same length whatever it says.
fn head(events: u64, sha256: String) -> Result<Vec<u8>, StoreError> {
    let head = serde_json::to_string(&Head { laydown_journal: LAYOUT, events, sha256 })
        .map_err(|error| StoreError::Fault { details: error.to_string() })?;
    Ok(format!("{head:<HEAD$}\n").into_bytes())
}

/// Whether a file begins as a journal does.
pub(super) fn is_journal(file: &mut File) -> Result<bool, BackupError> {
    let mut begins = Vec::new();
    file.take(BEGINS.len() as u64).read_to_end(&mut begins)?;
    Ok(begins == BEGINS.as_bytes())
}

/// Hands on the events of a journal in lots, and answers how many there are. Whether it is whole shows only at the end.
pub(super) fn read_lines(
    file: File,
    batch: impl FnMut(&[Event]) -> Result<(), BackupError>,
) -> Result<u64, BackupError> {
    let damaged = || BackupError::DamagedJournal;
    let mut from = BufReader::new(file);
    let mut line = Vec::new();
    let head: Head = match next(&mut from, &mut line) {
        Ok(true) => serde_json::from_slice(&line).map_err(|_| BackupError::NotABackup)?,
        _ => return Err(BackupError::NotABackup),
    };
    match head.laydown_journal {
        LAYOUT => {}
        newer if newer > LAYOUT => return Err(BackupError::Newer),
        _ => return Err(BackupError::NotABackup),
    }
    let mut summed = SummedRead { from, sum: Sha256::new() };
    let read = each_lot(&mut BufReader::new(&mut summed), &damaged, batch)?;
    if read == head.events && hex(summed.sum) == head.sha256 { Ok(read) } else { Err(damaged()) }
}

/// Hands on the events of JSON lines in lots, and answers how many there are. No more is held than one lot.
pub(super) fn each_lot(
    from: &mut impl BufRead,
    damaged: &dyn Fn() -> BackupError,
    mut batch: impl FnMut(&[Event]) -> Result<(), BackupError>,
) -> Result<u64, BackupError> {
    let mut line = Vec::new();
    let mut events = Vec::new();
    let (mut read, mut weight) = (0, 0);
    while next(from, &mut line).map_err(|_| damaged())? {
        let needed = estimated_bytes(&line);
        if needed > HEAVIEST {
            return Err(damaged());
        }
        events.push(serde_json::from_slice(&line).map_err(|_| damaged())?);
        read += 1;
        weight += needed;
        if events.len() == BATCH || weight > HEAVY {
            batch(&events)?;
            events.clear();
            weight = 0;
        }
    }
    batch(&events)?;
    Ok(read)
}

/// Sums what is read through it.
pub(super) struct SummedRead<R: Read> {
    pub(super) from: R,
    pub(super) sum: Sha256,
}

impl<R: Read> Read for SummedRead<R> {
    fn read(&mut self, into: &mut [u8]) -> std::io::Result<usize> {
        let read = self.from.read(into)?;
        self.sum.update(&into[..read]);
        Ok(read)
    }
}

/// The next line with its end; false where the file ends. A line that is too long, or does not end, is not what laydown wrote.
fn next(from: &mut impl BufRead, line: &mut Vec<u8>) -> std::io::Result<bool> {
    line.clear();
    from.take(LONGEST_LINE).read_until(b'\n', line)?;
    match line.last() {
        None => Ok(false),
        Some(b'\n') => Ok(true),
        Some(_) => Err(std::io::ErrorKind::UnexpectedEof.into()),
    }
}
