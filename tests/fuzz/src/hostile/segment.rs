//! Segments: zstd that unpacks to far more, and lines that mean far more than they take.

use laydown_store::journal::DeviceId;
use laydown_store::journal::segment::Name;
use serde_json::json;
use uuid::Uuid;

use super::Maker;
use crate::segment::pack_lines;

pub(super) const NAME: Name =
    Name { device: DeviceId(Uuid::from_u128(0x0198_2f6e_0000_7000_8000_0000_0000_0001)), first: 1, last: 5_000 };

pub(super) const MAKERS: &[Maker] = &[
    ("a frame of spaces", |_| zstd::bulk::compress(&vec![b' '; 200 << 20], 19).unwrap()),
    ("many frames", |most| zstd::bulk::compress(b" ", 1).unwrap().repeat(most / 20)),
    ("frames to be skipped", |most| [b"\x50\x2A\x4D\x18\0\0\0\0".repeat(most / 8 - 8), text(b"{}\n")].concat()),
    ("a frame that wants to look back far", far_back),
    ("definitions of many fields", definitions),
    ("definitions of few fields", |most| lines(&many_definitions(most))),
    ("events of lists", |_| lines(&rows(&["a"], &format!("[{}0]", "[],".repeat(200_000)), 60))),
    ("events of long texts", |_| lines(&rows(&["a"], &format!("\"{}\"", "\\u0001".repeat(1_000_000)), 9))),
    ("fields as before", as_before),
];

/// No text of a segment was ever longer.
const MOST_TEXT: usize = (64 << 20) - 2_000;

fn text(text: &[u8]) -> Vec<u8> {
    zstd::bulk::compress(text, 1).unwrap()
}

fn lines(more: &str) -> Vec<u8> {
    let head = json!({"file": "laydown segment", "layout": 1, "device": NAME.device, "first": 1, "events": 5_000, "reading": ""});
    pack_lines(format!("{head}\n{more}").as_bytes())
}

fn far_back(most: usize) -> Vec<u8> {
    let mut packer = zstd::bulk::Compressor::new(1).unwrap();
    packer.window_log(27).unwrap();
    packer.include_contentsize(false).unwrap();
    packer.compress(&vec![b' '; most * 16]).unwrap()
}

fn define(row: usize, fields: &str, as_before: &str) -> String {
    format!(r#"{{"row":{row},"kind":"coat","fields":[{fields}],"moments":[],"ids":[],"as_before":[{as_before}]}}"#)
        + "\n"
}

fn definitions(_: usize) -> Vec<u8> {
    let one = define(0, &format!("{}\"\"", "\"\",".repeat(1_000_000)), "");
    let many = (0..MOST_TEXT / one.len()).map(|row| one.replacen("0", &row.to_string(), 1));
    lines(&many.collect::<String>())
}

fn many_definitions(most: usize) -> String {
    let count = (most / 2).min(MOST_TEXT / 100);
    (0..count).map(|row| define(row, "\"\"", "")).collect()
}

fn rows(fields: &[&str], value: &str, count: usize) -> String {
    let define = define(0, &format!("\"{}\"", fields.join("\",\"")), "");
    let entity = Uuid::nil();
    format!("{define}{}", format!("[0,1,\"{entity}\",{value}]\n").repeat(count))
}

/// Each row has again what the first has, as often as its definition says.
fn as_before(_: usize) -> Vec<u8> {
    let (first, again) = (define(0, "\"a\"", ""), define(1, "", &format!("{}\"a\"", "\"a\",".repeat(100_000))));
    let entity = Uuid::nil();
    let row = format!("[1,1,\"{entity}\"]\n").repeat(4_999);
    lines(&format!("{first}{again}[0,1,\"{entity}\",\"{}\"]\n{row}", "x".repeat(10_000)))
}
