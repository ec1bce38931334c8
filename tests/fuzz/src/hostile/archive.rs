//! Backups and journals: bombs, members that share their bytes, lies about sizes, floods of names.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use serde_json::json;
use sha2::{Digest, Sha256};

use super::{Maker, picture};

pub(super) const MAKERS: &[Maker] = &[
    ("a table that unpacks to a thousand times its size", one_bomb),
    ("many tables of the same bytes", overlapping),
    ("journals of one line again and again", repeated_events),
    ("journals of lists in lists", |most| wide_events(most, "[[]", ",[]", "]")),
    ("journals of depth", |most| wide_events(most, "", "[", "")),
    ("one event with an enormous text", enormous_text),
    ("a manifest of names", manifest_of_names),
    ("members of no bytes", many_members),
    ("ends of a directory", many_ends),
    ("photographs that unpack", photographs),
    ("sizes that lie", lying_sizes),
    ("names twice, upwards, absolute, of control characters", bad_names),
];

pub(super) const JOURNALS: &[Maker] = &[
    ("small events about one thing", |most| journal(most, &event(1, "{}"))),
    ("events of lists", |most| journal(most, &event(1, &format!(r#"{{"name":[{}0]}}"#, "[],".repeat(300_000))))),
    ("events of depth", |most| journal(most, &event(1, &format!(r#"{{"name":{}}}"#, "[".repeat(100_000))))),
    ("a long text", |most| journal(most, &event(1, &format!(r#"{{"name":"{}"}}"#, "\\u0001".repeat(150_000))))),
    ("a line that does not end", |most| journal(most, &"[".repeat(most))),
    ("lines of nothing", |most| journal(most, "\n")),
    ("one phone about one thing", |most| merging(most, |at| told(1, at, 1, "glaze", r#"{"name":"a"}"#))),
    ("256 phones about one thing", |most| {
        merging(most, |at| told(at % 256, at / 256 + 1, 1, "glaze", r#"{"name":"a"}"#))
    }),
    ("a thing each", |most| merging(most, |at| told(1, at, at, "glaze", r#"{"name":"a"}"#))),
    ("a phone each", |most| merging(most, |at| told(at, 1, at, "glaze", "{}"))),
    ("a kind each", |most| merging(most, |at| told(1, at, at, &format!("kind{at}"), "{}"))),
    ("a text each", |most| merging(most, |at| told(1, at, at, "glaze", &format!(r#"{{"f{at}":"t{at}"}}"#)))),
    ("numbers far apart", |most| merging(most, |at| told(1, at << 20, at, "glaze", r#"{"name":"a"}"#))),
    ("retractions of retractions", |most| merging(most, retractions)),
];

const MANIFEST: &str = "manifest.json";

/// A member of a zip, with what its headers say. PKWARE's APPNOTE 6.3.10, sections 4.3.7 and 4.3.12, from memory.
struct Member {
    name: Vec<u8>,
    is_deflated: bool,
    packed: Vec<u8>,
    /// What it claims to unpack to, before its bytes and in the directory.
    local_size: u32,
    size: u32,
    packed_size: Option<u32>,
    crc: u32,
    /// Lies where the member of this number does.
    same_as: Option<usize>,
}

impl Member {
    fn stored(name: &str, bytes: &[u8]) -> Member {
        let size = bytes.len() as u32;
        Member {
            name: name.as_bytes().to_vec(),
            is_deflated: false,
            packed: bytes.to_vec(),
            local_size: size,
            size,
            packed_size: None,
            crc: crc(bytes),
            same_as: None,
        }
    }

    fn deflated(name: &str, bytes: &[u8]) -> Member {
        Member { is_deflated: true, packed: deflate(bytes), ..Member::stored(name, bytes) }.with_size(bytes.len())
    }

    fn with_size(self, size: usize) -> Member {
        Member { local_size: size as u32, size: size as u32, ..self }
    }

    fn head(&self, size: u32) -> Vec<u8> {
        let packed = self.packed_size.unwrap_or(self.packed.len() as u32);
        let mut head = vec![20, 0, 0, 0, if self.is_deflated { 8 } else { 0 }, 0, 0, 0, 0x21, 0];
        [self.crc, packed, size].iter().for_each(|number| head.extend(number.to_le_bytes()));
        head.extend((self.name.len() as u16).to_le_bytes());
        head.extend([0, 0]);
        head
    }
}

fn zipped(members: &[Member]) -> Vec<u8> {
    let mut zip = Vec::new();
    let mut places = Vec::new();
    for member in members {
        let here = zip.len() as u32;
        places.push(member.same_as.map_or(here, |other| places[other]));
        if member.same_as.is_none() {
            zip.extend(b"PK\x03\x04");
            zip.extend(member.head(member.local_size));
            zip.extend(&member.name);
            zip.extend(&member.packed);
        }
    }
    let directory = zip.len() as u32;
    for (member, place) in members.iter().zip(&places) {
        zip.extend(b"PK\x01\x02\x14\0");
        zip.extend(member.head(member.size));
        zip.extend([0; 10]);
        zip.extend(place.to_le_bytes());
        zip.extend(&member.name);
    }
    let length = zip.len() as u32 - directory;
    zip.extend(end(members.len(), length, directory));
    zip
}

fn end(count: usize, length: u32, directory: u32) -> Vec<u8> {
    let count = (count.min(0xFFFF) as u16).to_le_bytes();
    [b"PK\x05\x06\0\0\0\0".as_slice(), &count, &count, &length.to_le_bytes(), &directory.to_le_bytes(), &[0, 0]]
        .concat()
}

/// The most members that a directory without large numbers can have.
const MOST_MEMBERS: usize = 0xFFFE;

fn deflate(bytes: &[u8]) -> Vec<u8> {
    use std::io::Write;
    let mut packer = flate2::write::DeflateEncoder::new(Vec::new(), flate2::Compression::best());
    packer.write_all(bytes).unwrap();
    packer.finish().unwrap()
}

/// A stream that unpacks to a thousand times its size, of so many bytes, which is never made.
fn endless(length: usize) -> Vec<u8> {
    let mut packer = flate2::Compress::new(flate2::Compression::best(), false);
    let zeros = vec![b'0'; 1 << 20];
    let mut piece = || {
        let mut piece = Vec::with_capacity(1 << 16);
        packer.compress_vec(&zeros, &mut piece, flate2::FlushCompress::Full).unwrap();
        piece
    };
    let (mut stream, again) = (piece(), piece());
    while stream.len() + again.len() < length {
        stream.extend(&again);
    }
    stream
}

fn crc(bytes: &[u8]) -> u32 {
    let mut sum = flate2::Crc::new();
    sum.update(bytes);
    sum.sum()
}

fn sum(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

fn manifest(events: usize, photos: usize, sums: &BTreeMap<String, String>) -> Member {
    let text =
        json!({"laydown_backup": 1, "events": events, "photos": photos, "missing": 0, "sha256": sums}).to_string();
    Member::deflated(MANIFEST, text.as_bytes())
}

/// Members with their manifest, whose sums are right.
fn backup(events: usize, photos: usize, files: &[(String, Vec<u8>)], pack: fn(&str, &[u8]) -> Member) -> Vec<u8> {
    let sums = files.iter().map(|(name, bytes)| (name.clone(), sum(bytes))).collect();
    let files = files.iter().map(|(name, bytes)| pack(name, bytes));
    zipped(&files.chain([manifest(events, photos, &sums)]).collect::<Vec<_>>())
}

fn event(seq: usize, body: &str) -> String {
    format!(
        r#"{{"device":"00000000-0000-7000-8000-000000000001","seq":{seq},"clock":117309440000000000,"entity":"00000000-0000-7000-8000-000000000002","kind":"glaze","body":{body}}}"#
    )
}

fn one_bomb(most: usize) -> Vec<u8> {
    let bomb =
        Member { is_deflated: true, packed: endless(most - 2_000), ..Member::stored("tables/readings.csv", b"") };
    let sums = BTreeMap::from([("tables/readings.csv".to_owned(), "0".repeat(64))]);
    zipped(&[bomb.with_size(u32::MAX as usize - 1), manifest(0, 0, &sums)])
}

/// Each is right and unpacks to 64 MB; all lie in the same place.
fn overlapping(most: usize) -> Vec<u8> {
    let text = vec![b'0'; 64 << 20];
    let bomb = Member::deflated("tables/00000.csv", &text);
    let count = ((most - 80_000) / 150).min(MOST_MEMBERS - 1);
    let names: Vec<String> = (0..count).map(|number| format!("tables/{number:05}.csv")).collect();
    let sum = sum(&text);
    let sums = names.iter().map(|name| (name.clone(), sum.clone())).collect();
    let again = names[1..].iter().map(|name| Member {
        name: name.clone().into_bytes(),
        is_deflated: true,
        packed: Vec::new(),
        local_size: bomb.local_size,
        size: bomb.size,
        packed_size: Some(bomb.packed.len() as u32),
        crc: bomb.crc,
        same_as: Some(1),
    });
    let again: Vec<Member> = again.collect();
    let mut members = vec![manifest(0, 0, &sums), bomb];
    members.extend(again);
    zipped(&members)
}

fn repeated_events(most: usize) -> Vec<u8> {
    let mut lines = String::new();
    (1..=50_000).for_each(|seq| writeln!(lines, "{}", event(seq, r#"{"name":"a"}"#)).unwrap());
    let packed = deflate(lines.as_bytes()).len() + 200;
    let count = ((most - 3_000) / packed).clamp(1, 40);
    let files: Vec<(String, Vec<u8>)> =
        (0..count).map(|number| (format!("journal/{number}.jsonl"), lines.clone().into_bytes())).collect();
    backup(50_000 * count, 0, &files, Member::deflated)
}

/// Events whose one field is made of these pieces, as large as a file of the journal may be, and as many files as fit.
fn wide_events(most: usize, begin: &str, again: &str, end: &str) -> Vec<u8> {
    let field = format!("{begin}{}{end}", again.repeat(300_000));
    let line = event(1, &format!(r#"{{"name":{field}}}"#)) + "\n";
    let lines = line.repeat((60 << 20) / line.len());
    let count = (most / 2 / deflate(lines.as_bytes()).len()).clamp(1, 3);
    let files: Vec<(String, Vec<u8>)> =
        (0..count).map(|number| (format!("journal/{number}.jsonl"), lines.clone().into_bytes())).collect();
    backup(1, 0, &files, Member::deflated)
}

fn enormous_text(most: usize) -> Vec<u8> {
    let line = event(1, &format!(r#"{{"name":"{}"}}"#, "a".repeat((60 << 20).min(most * 60)))) + "\n";
    backup(1, 0, &[("journal/1.jsonl".to_owned(), line.into_bytes())], Member::deflated)
}

fn manifest_of_names(most: usize) -> Vec<u8> {
    let mut text = r#"{"laydown_backup":1,"events":0,"photos":0,"missing":0,"sha256":{"":"""#.to_owned();
    let mut number = 0;
    while text.len() < (60 << 20).min(most * 5) {
        write!(text, r#","{number:x}":"""#).unwrap();
        number += 1;
    }
    text.push_str("}}");
    zipped(&[Member::deflated(MANIFEST, text.as_bytes())])
}

fn many_members(most: usize) -> Vec<u8> {
    let first = Member::stored("0", b"");
    let count = (most / 53).min(MOST_MEMBERS - 2);
    let others = (1..count).map(|number| Member { same_as: Some(0), ..Member::stored(&format!("{number:x}"), b"") });
    let mut members = vec![first];
    members.extend(others);
    members.push(manifest(0, 0, &BTreeMap::new()));
    zipped(&members)
}

/// Directories that begin alike and are each wrong at their last entry.
fn many_ends(most: usize) -> Vec<u8> {
    let first = Member::stored("0", b"");
    let count = (most / 2 / 53).min(MOST_MEMBERS - 2);
    let others = (1..count).map(|number| Member { same_as: Some(0), ..Member::stored(&format!("{number:x}"), b"") });
    let mut zip = zipped(&[first].into_iter().chain(others).collect::<Vec<_>>());
    let directory = 31;
    let length = zip.len() as u32 - 22 - directory;
    let wrong = end(MOST_MEMBERS, length, directory);
    while zip.len() + wrong.len() < most {
        zip.extend(&wrong);
    }
    zip
}

fn photographs(most: usize) -> Vec<u8> {
    let mut files = Vec::new();
    let mut size = 3_000;
    for number in 0.. {
        let picture = picture::flat_png(4_000, 3_000, number as u8);
        // Once in the manifest and twice in the zip.
        size += picture.len() + 1_000;
        if size > most || number == 256 {
            break;
        }
        let name = sum(&picture);
        files.push((format!("photos/{name}.picture"), picture));
        files.push((format!("photos/{name}.preview.jpg"), b"no picture".to_vec()));
    }
    backup(0, files.len() / 2, &files, Member::stored)
}

fn lying_sizes(_: usize) -> Vec<u8> {
    let text = b"{}".repeat(5_000);
    let says = |size: u32, local_size: u32, packed_size: Option<u32>, name: &str| Member {
        size,
        local_size,
        packed_size,
        ..Member::deflated(name, &text)
    };
    let members = [
        says(1, 1, None, "tables/1.csv"),
        says(u32::MAX, 1, None, "tables/2.csv"),
        says(1, u32::MAX, None, "tables/3.csv"),
        says(10_000, 10_000, Some(u32::MAX), "tables/4.csv"),
        says(u32::MAX, u32::MAX, Some(u32::MAX), "tables/5.csv"),
        says(10_000, 10_000, Some(3), "tables/6.csv"),
    ];
    let sums = (1..=6).map(|number| (format!("tables/{number}.csv"), sum(&text))).collect();
    zipped(&members.into_iter().chain([manifest(0, 0, &sums)]).collect::<Vec<_>>())
}

fn bad_names(_: usize) -> Vec<u8> {
    let names = [
        "photos/../../up.picture",
        "/up.jsonl",
        "C:\\up.jsonl",
        "journal\\..\\up.jsonl",
        "journal/a\0b.jsonl",
        "journal/\u{1b}[2J.jsonl",
        "tables/1.csv",
        "tables/1.csv",
        "",
        "photos/",
        "MANIFEST.JSON",
        "manifest.json",
    ];
    let sums = names.iter().map(|name| ((*name).to_owned(), sum(b"a"))).collect();
    let members = names.iter().map(|name| Member::stored(name, b"a"));
    zipped(&members.chain([manifest(0, 0, &sums)]).collect::<Vec<_>>())
}

/// A journal that says of itself what it holds: one line as often as it fits.
fn journal(most: usize, line: &str) -> Vec<u8> {
    let count = ((most - HEAD) / (line.len() + 1)).max(1);
    let mut lines = format!("{line}\n").repeat(count);
    lines.truncate(most - HEAD);
    summed(&lines)
}

/// A journal whose sum is right, of as many of these events as fit.
fn merging(most: usize, event: impl Fn(usize) -> String) -> Vec<u8> {
    let mut lines = String::new();
    for number in 1.. {
        let line = event(number);
        if lines.len() + line.len() + 1 + HEAD > most {
            break;
        }
        lines.push_str(&line);
        lines.push('\n');
    }
    summed(&lines)
}

/// Bytes of a journal's first line.
const HEAD: usize = 137;

fn summed(lines: &str) -> Vec<u8> {
    let head =
        format!(r#"{{"laydown_journal":1,"events":{},"sha256":"{}"}}"#, lines.lines().count(), sum(lines.as_bytes()));
    format!("{head:<136}\n{lines}").into_bytes()
}

fn told(device: usize, seq: usize, entity: usize, kind: &str, body: &str) -> String {
    let clock = 117_309_440_000_000_000 + seq;
    format!(
        r#"{{"device":"00000000-0000-7000-8000-{device:012x}","seq":{seq},"clock":{clock},"entity":"00000000-0000-7000-9000-{entity:012x}","kind":"{kind}","body":{body}}}"#
    )
}

/// Each undoes the one before it, so that all hang together.
fn retractions(number: usize) -> String {
    let before = number.saturating_sub(1).max(1);
    told(1, number, 1, "retract", &format!(r#"{{"device":"00000000-0000-7000-8000-000000000001","seq":{before}}}"#))
}
