//! From the bytes of a file to a table of cells: what they are written in, what parts them, which line names the columns.
//!
//! Nothing here is trusted: the size is looked at before the file is opened, and a sheet has at most so many lines and
//! columns as a studio could fill.

use std::fs::File;
use std::io::{ErrorKind, Read};
use std::path::Path;

use super::cells;
use crate::backup::as_it_was;
use crate::in_words::Sentence;
use crate::messages::import as say;
use laydown_domain::visible::cleaned;

/// The largest file that is read: twenty times what ten years of readings take.
const MOST_BYTES: u64 = 20_000_000;
/// The most lines: twenty-seven years of ten readings a day.
pub(super) const MOST_LINES: usize = 100_000;
/// The most columns.
const MOST_COLUMNS: usize = 60;
/// The most marks in one line that could part cells, whichever does: each empty cell takes memory, too.
const MOST_PARTS: usize = 100_000;
/// The most letters of one cell; more is a quotation mark that was never closed.
const LONGEST_CELL: usize = 2_000;
/// Lines that are looked at to find out what parts the cells.
const SAMPLE: usize = 20;

/// What bytes 0x80 to 0x9F are in Windows-1252; the rest is as in Latin-1. The five that it leaves open stay what they
/// are in Latin-1, as browsers read them (WHATWG Encoding Standard, index windows-1252).
const WINDOWS_1252: [char; 32] = [
    '€', '\u{81}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{8d}', 'Ž', '\u{8f}', '\u{90}', '‘', '’',
    '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{9d}', 'ž', 'Ÿ',
];

/// Why a file is no sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum TableError {
    Unreadable { details: String },
    Gone,
    NoFile,
    TooLarge,
    Empty,
    Workbook,
    NoText,
    Columns { columns: usize },
    Lines,
    OpenQuote { line: u64 },
    NoLines,
}

impl Sentence for TableError {
    fn sentence(&self) -> String {
        match self {
            TableError::Unreadable { details } => say::unreadable(details),
            TableError::Gone => say::gone(),
            TableError::NoFile => say::no_file(),
            TableError::TooLarge => say::too_large(),
            TableError::Empty => say::empty(),
            TableError::Workbook => say::workbook(),
            TableError::NoText => say::no_text(),
            TableError::Columns { columns } => say::too_many_columns(*columns, MOST_COLUMNS),
            TableError::Lines => say::too_many_lines(MOST_LINES),
            TableError::OpenQuote { line } => say::open_quote(line),
            TableError::NoLines => say::no_lines(),
        }
    }
}

/// A line of the sheet: where it begins in the file, counted from 1, and its cells.
pub(super) struct Row {
    pub(super) line: u64,
    cells: csv::StringRecord,
}

impl Row {
    /// The cell in this column, without the spaces around it; empty where the line has none.
    pub(super) fn cell(&self, column: usize) -> &str {
        self.cells.get(column).unwrap_or_default().trim()
    }

    /// Whether something stands in a cell beyond the columns.
    pub(super) fn is_longer_than(&self, columns: usize) -> bool {
        self.cells.iter().skip(columns).any(|cell| !cell.trim().is_empty())
    }

    fn filled(&self) -> usize {
        self.cells.iter().filter(|cell| !cell.trim().is_empty()).count()
    }
}

/// A sheet as it stands in the file.
pub(super) struct Table {
    /// What each column is called.
    pub(super) headers: Vec<String>,
    /// The lines below the headers; empty ones are not among them.
    pub(super) rows: Vec<Row>,
    /// How the file was read where that was not as usual.
    pub(super) note: Option<String>,
}

impl Table {
    /// Reads the file, but no more of it than a sheet may have.
    pub(super) fn open(path: &Path) -> Result<Table, TableError> {
        let unreadable = |error: std::io::Error| match error.kind() {
            ErrorKind::NotFound => TableError::Gone,
            other => TableError::Unreadable { details: other.to_string() },
        };
        let about = std::fs::metadata(path).map_err(unreadable)?;
        if !about.is_file() {
            return Err(TableError::NoFile);
        }
        if about.len() > MOST_BYTES {
            return Err(TableError::TooLarge);
        }
        let mut bytes = Vec::new();
        // It may grow while it is read.
        File::open(path).map_err(unreadable)?.take(MOST_BYTES + 1).read_to_end(&mut bytes).map_err(unreadable)?;
        if bytes.len() as u64 > MOST_BYTES {
            return Err(TableError::TooLarge);
        }
        Table::read(&bytes)
    }

    pub(super) fn read(bytes: &[u8]) -> Result<Table, TableError> {
        let (text, note) = text(bytes)?;
        // Whatever ends a line, it is one to count.
        let text = text.replace("\r\n", "\n").replace('\r', "\n");
        let parts = |line: &str| line.bytes().filter(|byte| byte.is_ascii_punctuation() || *byte == b'\t').count();
        if let Some(most) = text.lines().map(parts).find(|parts| *parts > MOST_PARTS) {
            return Err(TableError::Columns { columns: most + 1 });
        }
        let (separator, begin) = separator(&text);
        let mut rows = rows(&text[begin..], separator)?;
        for row in &mut rows {
            row.line += text[..begin].matches('\n').count() as u64;
        }
        let width = rows.iter().map(|row| row.cells.len()).max().unwrap_or_default();
        // A title over the table, alone in its line, is no header.
        let titles = rows.iter().take_while(|row| width > 1 && row.filled() == 1).count();
        rows.drain(..if titles < rows.len() { titles } else { 0 });
        let Some(first) = rows.first() else { return Err(TableError::Empty) };
        let has_header = !first.cells.iter().any(|cell| looks_like_a_value(cell.trim()));
        let columns = first.cells.len();
        let headers = (0..columns).map(|column| match first.cell(column) {
            name if has_header && !name.is_empty() => name.to_owned(),
            _ => say::column_number(column + 1),
        });
        let headers = headers.collect();
        if has_header {
            rows.remove(0);
        }
        if rows.is_empty() {
            return Err(TableError::NoLines);
        }
        Ok(Table { headers, rows, note })
    }
}

/// The cells as they were typed: without the mark that laydown's own tables put before what a spreadsheet would take for a
/// formula, and without what cannot be seen.
fn as_typed(cells: csv::StringRecord) -> csv::StringRecord {
    let is_plain = |cell: &str| cell.bytes().all(|byte| (b' '..=b'~').contains(&byte)) && !cell.contains('\'');
    if cells.iter().all(is_plain) {
        return cells;
    }
    cells.iter().map(|cell| cleaned(as_it_was(cell.trim()))).collect()
}

/// A number or a date, which is never what a column is called.
fn looks_like_a_value(cell: &str) -> bool {
    cell.starts_with(|c: char| c.is_ascii_digit())
        && (cell.bytes().all(|byte| byte.is_ascii_digit() || b".,".contains(&byte)) || cells::is_date(cell))
}

fn text(bytes: &[u8]) -> Result<(String, Option<String>), TableError> {
    if bytes.starts_with(b"PK\x03\x04") || bytes.starts_with(&[0xd0, 0xcf, 0x11, 0xe0]) {
        return Err(TableError::Workbook);
    }
    let utf16 = |from: fn([u8; 2]) -> u16| {
        let units = bytes[2..].chunks_exact(2).map(|pair| from([pair[0], pair[1]]));
        char::decode_utf16(units).collect::<Result<String, _>>().map_err(|_| TableError::NoText)
    };
    let (text, note) = match bytes {
        [0xef, 0xbb, 0xbf, rest @ ..] => (String::from_utf8(rest.to_vec()).map_err(|_| TableError::NoText)?, None),
        [0xff, 0xfe, ..] => (utf16(u16::from_le_bytes)?, None),
        [0xfe, 0xff, ..] => (utf16(u16::from_be_bytes)?, None),
        _ => match std::str::from_utf8(bytes) {
            Ok(text) => (text.to_owned(), None),
            Err(_) => (bytes.iter().copied().map(windows_1252).collect(), Some(say::read_as_windows())),
        },
    };
    if text.chars().any(|c| c.is_ascii_control() && !matches!(c, '\t' | '\n' | '\r' | '\u{b}' | '\u{c}')) {
        return Err(TableError::NoText);
    }
    if text.trim().is_empty() {
        return Err(TableError::Empty);
    }
    Ok((text, note))
}

fn windows_1252(byte: u8) -> char {
    match byte {
        0x80..=0x9f => WINDOWS_1252[usize::from(byte - 0x80)],
        _ => char::from(byte),
    }
}

/// What parts the cells, and where the table begins: after a line that says `sep=;`, which some programs write.
fn separator(text: &str) -> (u8, usize) {
    let first = text.lines().next().unwrap_or_default();
    if let Some(&[separator]) = first.strip_prefix("sep=").map(str::as_bytes)
        && separator.is_ascii_punctuation() | (separator == b'\t')
    {
        return (separator, (first.len() + text[first.len()..].find('\n').map_or(0, |end| end + 1)).min(text.len()));
    }
    // The one that parts the header into most columns, if the lines below have as many.
    let score = |separator: &u8| {
        let reader = reader(text, *separator);
        let mut widths: Vec<usize> =
            reader.into_records().take(SAMPLE).map_while(Result::ok).map(|record| record.len()).collect();
        let first = widths.first().copied().unwrap_or_default();
        widths.sort_unstable();
        let middle = widths.get(widths.len() / 2).copied().unwrap_or_default();
        let alike = widths.iter().filter(|width| **width == middle).count();
        (first.min(middle), middle, alike)
    };
    // Among equals the last one wins.
    (b"\t;,".iter().copied().max_by_key(score).unwrap_or(b','), 0)
}

fn reader(text: &str, separator: u8) -> csv::Reader<&[u8]> {
    csv::ReaderBuilder::new().delimiter(separator).has_headers(false).flexible(true).from_reader(text.as_bytes())
}

fn rows(text: &str, separator: u8) -> Result<Vec<Row>, TableError> {
    let mut reader = reader(text, separator);
    let mut rows: Vec<Row> = Vec::new();
    loop {
        let mut cells = csv::StringRecord::new();
        match reader.read_record(&mut cells) {
            Ok(true) => {}
            Ok(false) => break,
            Err(error) => return Err(TableError::Unreadable { details: error.to_string() }),
        }
        let (begin, mut line) = cells.position().map_or((0, 1), |position| (position.byte() as usize, position.line()));
        // The reader begins a line where the one before ended: before the empty lines between them.
        let rest = text.get(begin..).unwrap_or_default();
        let blank = rest.len() - rest.trim_start_matches('\n').len();
        line += rest[..blank].matches('\n').count() as u64;
        let end = reader.position().byte() as usize;
        let raw = text.get(begin + blank..end).unwrap_or_default();
        let runs_on = raw.trim_end().contains('\n') && raw.matches('"').count() % 2 == 1;
        if runs_on || cells.iter().any(|cell| cell.len() > LONGEST_CELL) {
            return Err(TableError::OpenQuote { line });
        }
        if cells.len() > MOST_COLUMNS {
            let columns =
                (1..).zip(cells.iter()).filter(|(_, cell)| !cell.trim().is_empty()).map(|(n, _)| n).last().unwrap_or(0);
            if columns > MOST_COLUMNS {
                return Err(TableError::Columns { columns });
            }
            cells.truncate(MOST_COLUMNS);
        }
        let row = Row { line, cells: as_typed(cells) };
        if row.filled() == 0 {
            continue;
        }
        // One more for the headers.
        if rows.len() > MOST_LINES {
            return Err(TableError::Lines);
        }
        rows.push(row);
    }
    Ok(rows)
}
