//! A broken file read page by page, without SQLite, which gives up a whole tree where one page of it cannot be read.
//!
//! The journal only grows, so a row of it is true wherever it is found: in the file, in the log beside it, in a page that
//! is no longer in use. Nothing is written, and what cannot be read is passed over.
//! Source: SQLite, "Database File Format", sections 1.6, 2 and 4, <https://www.sqlite.org/fileformat2.html> (from memory;
//! tested against SQLite itself).

use std::cell::Cell;
use std::collections::HashMap;
use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom};

/// Bytes of a page: what SQLite gives a new file unless told otherwise, and it is not.
pub(super) const PAGE: usize = 4096;

const LOG_HEADER: u64 = 32;
const FRAME_HEADER: usize = 24;
/// The first bytes of a log; the last bit says that its sums are of numbers with the highest byte first.
const LOG_MAGIC: u32 = 0x377f_0682;

/// The most values of a row of any table here; a null takes no bytes.
const MOST_VALUES: usize = 100;
/// So many times over the pages of a file may be read for rows that go on in them: what was removed may still be read, too.
const MOST_SHARED: u64 = 4;
/// The most bytes that the cells of a page may claim together. They do not share their bytes, but places of cells that rotted
/// may lie before those that did not.
const MOST_OF_PAGE: usize = 64 * PAGE;

const INDEX_INTERIOR: u8 = 0x02;
const INDEX_LEAF: u8 = 0x0A;
const TABLE_LEAF: u8 = 0x0D;

/// A value in a row.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Value {
    Null,
    Number(i64),
    Text(String),
    Blob(Vec<u8>),
    /// A fraction, or text that is none: the journal has neither.
    Other,
}

/// A row of a table, or an entry of an index, which has no number of its own.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Row {
    pub(super) number: Option<i64>,
    pub(super) values: Vec<Value>,
}

/// A file and the log beside it.
pub(super) struct Pages {
    file: File,
    pages: u32,
    log: Option<File>,
    /// The page and the place in the log of every sound frame, the oldest first.
    frames: Vec<(u32, u64)>,
    newest: HashMap<u32, u64>,
    /// Pages that may still be read for rows that go on in them.
    left: Cell<u64>,
}

impl Pages {
    pub(super) fn of(file: File, log: Option<File>) -> io::Result<Pages> {
        let pages = u32::try_from(file.metadata()?.len().div_ceil(PAGE as u64)).unwrap_or(u32::MAX);
        let frames = log.as_ref().map(frames).transpose()?.unwrap_or_default();
        let newest = frames.iter().copied().collect();
        Ok(Pages { file, pages, log, frames, newest, left: Cell::new(0) })
    }

    /// Gives `take` every row that can be read in the file, until it says that it has enough.
    pub(super) fn rows_in_file<E>(&self, take: impl FnMut(Row) -> Result<bool, E>) -> Result<(), E> {
        self.left.set(self.most_chained());
        self.rows((1..=self.pages).filter_map(|number| self.in_file(number)), take)
    }

    /// As [`Pages::rows_in_file`] for the log, the newest first.
    pub(super) fn rows_in_log<E>(&self, take: impl FnMut(Row) -> Result<bool, E>) -> Result<(), E> {
        self.left.set(self.most_chained());
        self.rows(self.frames.iter().rev().filter_map(|(_, at)| self.in_log(*at)), take)
    }

    fn rows<E>(
        &self,
        pages: impl Iterator<Item = Vec<u8>>,
        mut take: impl FnMut(Row) -> Result<bool, E>,
    ) -> Result<(), E> {
        for page in pages {
            for row in self.rows_of(&page) {
                if !take(row)? {
                    return Ok(());
                }
            }
        }
        Ok(())
    }

    fn rows_of(&self, page: &[u8]) -> Vec<Row> {
        let (header, is_table) = match page.first() {
            Some(&TABLE_LEAF) => (8, true),
            Some(&INDEX_LEAF) => (8, false),
            Some(&INDEX_INTERIOR) => (12, false),
            _ => return Vec::new(),
        };
        let cells = usize::from(u16_at(page, 3).unwrap_or(0)).min(PAGE / 4);
        let places = (0..cells).filter_map(|cell| u16_at(page, header + 2 * cell)).map(usize::from);
        // An index's upper pages have the number of a lower page before each entry.
        let skipped = if header == 12 { 4 } else { 0 };
        let mut taken = 0;
        let mut rows = Vec::new();
        for cell in places.filter_map(|at| page.get(at + skipped..)) {
            rows.extend(self.row(cell, is_table, &mut taken));
            if taken > MOST_OF_PAGE {
                break;
            }
        }
        rows
    }

    /// Each page belongs to one row, or to one that was removed and one after it.
    fn most_chained(&self) -> u64 {
        MOST_SHARED * (u64::from(self.pages) + self.frames.len() as u64)
    }

    /// A row; the bytes of it that lie in the cell are added to `taken`, whether or not they are a row.
    fn row(&self, cell: &[u8], is_table: bool, taken: &mut usize) -> Option<Row> {
        let mut left = cell;
        let length = usize::try_from(varint(&mut left)?).ok()?;
        let number = if is_table { Some(varint(&mut left)?) } else { None };
        let most = if is_table { PAGE - 35 } else { (PAGE - 12) * 64 / 255 - 23 };
        if length <= most {
            *taken += length;
            return Some(Row { number, values: values(left.get(..length)?)? });
        }
        let least = (PAGE - 12) * 32 / 255 - 23;
        let fitting = least + (length - least) % (PAGE - 4);
        let here = if fitting <= most { fitting } else { least };
        *taken += here;
        // No longer than the file: else it is no length.
        if length / PAGE > self.pages as usize + self.frames.len() {
            return None;
        }
        let mut payload = left.get(..here)?.to_vec();
        let mut next = u32_at(left, here)?;
        while payload.len() < length {
            self.left.set(self.left.get().checked_sub(1)?);
            let page = self.newest(next)?;
            next = u32_at(&page, 0)?;
            let rest = (length - payload.len()).min(PAGE - 4);
            payload.extend(page.get(4..4 + rest)?);
        }
        Some(Row { number, values: values(&payload)? })
    }

    fn newest(&self, number: u32) -> Option<Vec<u8>> {
        match self.newest.get(&number) {
            Some(at) => self.in_log(*at),
            None => self.in_file(number),
        }
    }

    fn in_log(&self, at: u64) -> Option<Vec<u8>> {
        read_at(self.log.as_ref()?, at)
    }

    fn in_file(&self, number: u32) -> Option<Vec<u8>> {
        read_at(&self.file, u64::from(number.checked_sub(1)?) * PAGE as u64)
    }
}

/// The page at `at`, or as much of it as the file has; `None` where the storage does not give it: it is what is lost.
fn read_at(mut file: &File, at: u64) -> Option<Vec<u8>> {
    let mut page = Vec::with_capacity(PAGE);
    file.seek(SeekFrom::Start(at)).ok()?;
    file.take(PAGE as u64).read_to_end(&mut page).ok()?;
    Some(page)
}

/// The frames of a log whose sums are right and that were committed. Each sum goes on from that of the frame before, as
/// written there, so that one bad frame does not take with it those after it.
fn frames(mut log: &File) -> io::Result<Vec<(u32, u64)>> {
    let mut header = Vec::new();
    log.seek(SeekFrom::Start(0))?;
    log.take(LOG_HEADER).read_to_end(&mut header)?;
    let magic = u32_at(&header, 0).unwrap_or_default();
    let number: fn([u8; 4]) -> u32 = if magic == LOG_MAGIC | 1 { u32::from_be_bytes } else { u32::from_le_bytes };
    let (mut frames, mut uncommitted) = (Vec::new(), Vec::new());
    let mut before = sums_at(&header, 24);
    let mut at = LOG_HEADER;
    let mut frame = Vec::with_capacity(FRAME_HEADER + PAGE);
    loop {
        frame.clear();
        log.seek(SeekFrom::Start(at))?;
        log.take((FRAME_HEADER + PAGE) as u64).read_to_end(&mut frame)?;
        let (Some(page), Some(pages_after)) = (u32_at(&frame, 0), u32_at(&frame, 4)) else { break };
        if frame.len() < FRAME_HEADER + PAGE {
            break;
        }
        let written = sums_at(&frame, 16);
        let sums = before.map(|before| sum(sum(before, &frame[..8], number), &frame[FRAME_HEADER..], number));
        if sums == written {
            uncommitted.push((page, at + FRAME_HEADER as u64));
        } else {
            uncommitted.clear();
        }
        if pages_after != 0 {
            frames.append(&mut uncommitted);
        }
        before = written;
        at += (FRAME_HEADER + PAGE) as u64;
    }
    Ok(frames)
}

fn sum(before: (u32, u32), bytes: &[u8], number: fn([u8; 4]) -> u32) -> (u32, u32) {
    let (pairs, _) = bytes.as_chunks::<8>();
    pairs.iter().fold(before, |(first, second), &[a, b, c, d, e, f, g, h]| {
        let first = first.wrapping_add(number([a, b, c, d])).wrapping_add(second);
        (first, second.wrapping_add(number([e, f, g, h])).wrapping_add(first))
    })
}

fn sums_at(bytes: &[u8], at: usize) -> Option<(u32, u32)> {
    Some((u32_at(bytes, at)?, u32_at(bytes, at + 4)?))
}

/// The values of a record: the kinds of all, then all of them.
fn values(record: &[u8]) -> Option<Vec<Value>> {
    let mut left = record;
    let header = usize::try_from(varint(&mut left)?).ok()?;
    let mut kinds = record.get(record.len() - left.len()..header)?;
    let mut left = record.get(header..)?;
    let mut values = Vec::new();
    while !kinds.is_empty() {
        if values.len() == MOST_VALUES {
            return None;
        }
        values.push(value(varint(&mut kinds)?, &mut left)?);
    }
    left.is_empty().then_some(values)
}

fn value(kind: i64, left: &mut &[u8]) -> Option<Value> {
    let mut take = |length: usize| {
        let (taken, rest) = left.split_at_checked(length)?;
        *left = rest;
        Some(taken)
    };
    Some(match kind {
        0 => Value::Null,
        1..=4 => Value::Number(big_endian(take(kind as usize)?)),
        5 => Value::Number(big_endian(take(6)?)),
        6 => Value::Number(big_endian(take(8)?)),
        7 => {
            take(8)?;
            Value::Other
        }
        8 | 9 => Value::Number(kind - 8),
        12.. => {
            let bytes = take(usize::try_from((kind - 12) / 2).ok()?)?.to_vec();
            match kind % 2 {
                0 => Value::Blob(bytes),
                _ => String::from_utf8(bytes).map_or(Value::Other, Value::Text),
            }
        }
        _ => return None,
    })
}

fn big_endian(bytes: &[u8]) -> i64 {
    let sign = if bytes.first().is_some_and(|byte| *byte >= 0x80) { -1 } else { 0 };
    bytes.iter().fold(sign, |number, byte| (number << 8) | i64::from(*byte))
}

/// Seven bits a byte, the highest first; a ninth byte counts whole.
fn varint(left: &mut &[u8]) -> Option<i64> {
    let mut number = 0_u64;
    for at in 0..9 {
        let (byte, rest) = left.split_first()?;
        *left = rest;
        if at == 8 {
            return Some(((number << 8) | u64::from(*byte)) as i64);
        }
        number = (number << 7) | u64::from(byte & 0x7F);
        if *byte < 0x80 {
            break;
        }
    }
    Some(number as i64)
}

fn u16_at(bytes: &[u8], at: usize) -> Option<u16> {
    bytes.get(at..)?.first_chunk().map(|bytes| u16::from_be_bytes(*bytes))
}

fn u32_at(bytes: &[u8], at: usize) -> Option<u32> {
    bytes.get(at..)?.first_chunk().map(|bytes| u32::from_be_bytes(*bytes))
}
