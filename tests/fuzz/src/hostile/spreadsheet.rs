//! Spreadsheets: cells, columns and lines without end, and as much to complain of as can be.

use std::fmt::Write;

use super::Maker;

pub(super) const MAKERS: &[Maker] = &[
    ("one enormous cell", |most| [HEAD, "a".repeat(most - HEAD.len()).as_bytes()].concat()),
    ("columns without end", |most| ",".repeat(most).into_bytes()),
    ("filled columns without end", |most| "a;".repeat(most / 2).into_bytes()),
    ("a quotation mark that is never closed", |most| {
        [HEAD, b"\"".as_slice(), &b"a,\n".repeat((most - 99) / 3)].concat()
    }),
    ("nothing but quotation marks", |most| "\"".repeat(most).into_bytes()),
    ("nothing but line ends", |most| [HEAD, &vec![b'\n'; most - HEAD.len()]].concat()),
    ("short lines", |most| [HEAD, &b"1\n".repeat((most - HEAD.len()) / 2)].concat()),
    ("lines of sixty columns", |most| {
        "a,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,\n".repeat(most / 61).into_bytes()
    }),
    ("every line another glaze and form", different),
    ("every line wrong in each cell", |most| lines(most, |_| "32/13/99,?,?,?,?\n".to_owned())),
    ("every line the same", |most| lines(most, |_| "2026-11-03,Mug,Ash,inside,19.4\n".to_owned())),
    ("not in UTF-8", |most| [HEAD, &b"\x80\xFF,\xFE\n".repeat((most - HEAD.len()) / 5)].concat()),
];

const HEAD: &[u8] = b"Date,Form,Glaze,Zone,Wet g\n";

fn lines(most: usize, line: fn(usize) -> String) -> Vec<u8> {
    let mut spreadsheet = String::from_utf8(HEAD.to_vec()).unwrap();
    for number in 0..100_000 {
        let line = line(number);
        if spreadsheet.len() + line.len() > most {
            break;
        }
        write!(spreadsheet, "{line}").unwrap();
    }
    spreadsheet.into_bytes()
}

fn different(most: usize) -> Vec<u8> {
    lines(most, |number| {
        let (month, day) = (number % 12 + 1, number % 28 + 1);
        format!("2026-{month:02}-{day:02},Mug {number},Ash {number},inside {number},{}.4\n", number % 500)
    })
}
