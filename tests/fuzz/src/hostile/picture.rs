//! Photographs: absurd sizes, pictures that unpack to far more than they take, scans and parts without end.

use std::io::Write;

use super::Maker;

pub(super) const MAKERS: &[Maker] = &[
    ("a flat PNG of sixty megapixels", |_| flat_png(7_700, 7_700, 0)),
    ("a flat PNG of sixteen bits", |_| png(5_400, 5_400, 16, 6, false, &[])),
    ("a flat interlaced PNG", |_| png(5_400, 5_400, 8, 6, true, &[])),
    ("a PNG one pixel wide", |_| png(1, 59_000_000, 8, 0, false, &[])),
    ("a PNG of one bit", |_| png(59_000_000, 1, 1, 0, false, &[])),
    ("as many dots as a PNG of this size may have", allowed_png),
    ("as many dots as a JPEG of this size may have", |most| {
        let side = allowed_side(most, 3);
        jpeg(0xC0, side, side, &scan_of(most - 2_000))
    }),
    ("as many dots and scans as a progressive JPEG of this size may have", |most| {
        let side = allowed_side(most, 9);
        let scans = scans(most, usize::from(side), 38);
        let filled = scans.len();
        jpeg(0xC2, side, side, &[scans, scan_of(most - 2_000 - filled)].concat())
    }),
    ("a PNG that says it is larger than it is", |_| {
        let mut png = flat_png(400, 300, 0);
        png[16..24].copy_from_slice(&[0x7F; 8]);
        png
    }),
    ("texts that unpack", |most| with_chunks(most, b"zTXt", &bomb(b"a\0\0", 900_000))),
    ("international texts that unpack", |most| with_chunks(most, b"iTXt", &bomb(b"a\0\x01\0\0\0", 900_000))),
    ("a colour profile that unpacks", |most| {
        png(400, 300, 8, 2, false, &chunk(b"iCCP", &bomb(b"a\0\0", most - 10_000)))
    }),
    ("small chunks", |most| with_chunks(most, b"abCd", b"")),
    ("frames of an animation", |most| with_chunks(most, b"fdAT", &[0; 30])),
    ("dots in pieces of nothing", |most| with_chunks(most, b"IDAT", b"")),
    ("a JPEG of absurd size", |_| jpeg(0xC0, 65_500, 65_500, &[])),
    ("a small JPEG of many pixels", |most| jpeg(0xC0, 7_700, 7_700, &scan_of(most / 2))),
    ("a progressive JPEG of many pixels", |most| jpeg(0xC2, 7_700, 7_700, &scans(most, 7_700, 100))),
    ("progressive scans without end", |most| jpeg(0xC2, 3_200, 3_200, &scans(most, 3_200, 100))),
    ("parts of a JPEG", |most| parts(most, b"\xFF\xE1\0\x02")),
    ("fill bytes", |most| parts(most, b"\xFF\xFF")),
    ("comments", |most| parts(most, b"\xFF\xFE\0\x04ab")),
    ("restarts", |most| [jpeg(0xC0, 3_000, 3_000, &b"\xFF\xD0".repeat(most / 2 - 400))].concat()),
    ("directories of EXIF that lead to themselves", exif_loop),
];

fn crc(bytes: &[u8]) -> u32 {
    let mut sum = flate2::Crc::new();
    sum.update(bytes);
    sum.sum()
}

fn chunk(kind: &[u8; 4], content: &[u8]) -> Vec<u8> {
    let named = [kind, content].concat();
    [&(content.len() as u32).to_be_bytes(), named.as_slice(), &crc(&named).to_be_bytes()].concat()
}

fn zlib(length: u64, first: u8) -> Vec<u8> {
    let mut packer = flate2::write::ZlibEncoder::new(Vec::new(), flate2::Compression::best());
    packer.write_all(&[first]).unwrap();
    let zeros = vec![0; 1 << 20];
    let mut left = length.saturating_sub(1);
    while left > 0 {
        let now = left.min(1 << 20);
        packer.write_all(&zeros[..now as usize]).unwrap();
        left -= now;
    }
    packer.finish().unwrap()
}

/// A PNG of one colour, with more chunks before its dots. ISO 15948, clause 11, from memory.
fn png(width: u32, height: u32, bits: u8, kind: u8, is_interlaced: bool, more: &[u8]) -> Vec<u8> {
    let channels = [1, 0, 3, 1, 2, 0, 4][usize::from(kind)];
    let row = (u64::from(width) * channels * u64::from(bits)).div_ceil(8) + 1;
    // An interlaced picture has some rows and bytes more.
    let length = if is_interlaced { row * u64::from(height) + 4 * u64::from(height) } else { row * u64::from(height) };
    let head = [&width.to_be_bytes()[..], &height.to_be_bytes(), &[bits, kind, 0, 0, u8::from(is_interlaced)]].concat();
    let parts = [
        b"\x89PNG\r\n\x1A\n".to_vec(),
        chunk(b"IHDR", &head),
        more.to_vec(),
        chunk(b"IDAT", &zlib(length, 0)),
        chunk(b"IEND", &[]),
    ];
    parts.concat()
}

/// The side of a square of so many bytes a dot, as large as the reader takes of a file of this size.
fn allowed_side(most: usize, bytes_a_dot: usize) -> u16 {
    (((38_000_000 + 23 * most).min(148_000_000) / bytes_a_dot) as f64).sqrt() as u16
}

/// What does not unpack lies behind what does.
fn allowed_png(most: usize) -> Vec<u8> {
    let side = u32::from(allowed_side(most, 3));
    let dots = zlib(u64::from(side * 3 + 1) * u64::from(side), 0);
    let pad = vec![0; most - 1_000 - dots.len()];
    let head = [&side.to_be_bytes()[..], &side.to_be_bytes(), &[8, 2, 0, 0, 0]].concat();
    let parts = [
        b"\x89PNG\r\n\x1A\n".to_vec(),
        chunk(b"IHDR", &head),
        chunk(b"IDAT", &[dots, pad].concat()),
        chunk(b"IEND", &[]),
    ];
    parts.concat()
}

/// Of one colour, and none the same as another of another number.
pub(super) fn flat_png(width: u32, height: u32, number: u8) -> Vec<u8> {
    png(width, height, 8, 2, false, &chunk(b"bKGD", &[0, number, 0, 0, 0, 0]))
}

fn with_chunks(most: usize, kind: &[u8; 4], content: &[u8]) -> Vec<u8> {
    let content = &content[..content.len().min(most / 2)];
    let one = chunk(kind, content);
    png(400, 300, 8, 2, false, &one.repeat((most - 5_000) / one.len()))
}

/// What begins so, then a thousand times as much as it takes, in at most so many bytes.
fn bomb(begin: &[u8], most: usize) -> Vec<u8> {
    let mut content = begin.to_vec();
    content.extend(zlib((most as u64 * 1_000).min(1 << 30), 0));
    content
}

fn segment(marker: u8, content: &[u8]) -> Vec<u8> {
    [&[0xFF, marker], &(content.len() as u16 + 2).to_be_bytes()[..], content].concat()
}

/// A JPEG of three colours with these scans. ITU T.81, annex B, from memory. Each table has one code of one bit: of the first,
/// no difference; of the second, a run of 16,384 and more blocks without values, or of one where it is no progressive one.
fn jpeg(frame: u8, width: u16, height: u16, scans: &[u8]) -> Vec<u8> {
    let head =
        [&[8][..], &height.to_be_bytes(), &width.to_be_bytes(), &[3, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0]].concat();
    let table = |class: u8, symbol: u8| segment(0xC4, &[&[class, 1][..], &[0; 15], &[symbol]].concat());
    let runs = if frame == 0xC2 { 0xE0 } else { 0 };
    let parts = [
        b"\xFF\xD8".to_vec(),
        segment(0xDB, &[&[0][..], &[1; 64]].concat()),
        segment(frame, &head),
        table(0x00, 0),
        table(0x10, runs),
        segment(0xDD, &[0, 1]),
        segment(0xDD, &[0, 0]),
        if frame == 0xC2 { Vec::new() } else { segment(0xDA, &[3, 1, 0, 2, 0, 3, 0, 0, 63, 0]) },
        scans.to_vec(),
        b"\xFF\xD9".to_vec(),
    ];
    parts.concat()
}

fn scan_of(length: usize) -> Vec<u8> {
    vec![0; length]
}

/// The first values of all blocks, then the others of one colour again and again.
fn scans(most: usize, side: usize, count: usize) -> Vec<u8> {
    let blocks = side.div_ceil(8).pow(2);
    let mut scans = [segment(0xDA, &[3, 1, 0, 2, 0, 3, 0, 0, 0, 0]), vec![0; blocks * 3 / 8 + 1]].concat();
    // A code of one bit and fourteen bits of length: two bytes and no more, so that the runs are those of one in sixteen bits.
    let runs = vec![0; (blocks / 16_384 + 2) * 2];
    let one = [segment(0xDA, &[1, 1, 0, 1, 63, 0]), runs].concat();
    for _ in 0..count {
        if scans.len() + one.len() + 2_000 < most {
            scans.extend(&one);
        }
    }
    scans
}

fn parts(most: usize, part: &[u8]) -> Vec<u8> {
    let mut jpeg = jpeg(0xC0, 400, 300, &scan_of(50 * 38));
    let many = part.repeat((most - jpeg.len()) / part.len());
    jpeg.splice(2..2, many);
    jpeg
}

fn exif_loop(_: usize) -> Vec<u8> {
    let entry = |tag: u16| [&tag.to_le_bytes()[..], &[4, 0, 1, 0, 0, 0, 8, 0, 0, 0]].concat();
    let entries: Vec<u8> = [0x8769, 0x8825, 0xA005].iter().flat_map(|tag| entry(*tag)).collect();
    let exif = [b"Exif\0\0II\x2A\0\x08\0\0\0\x03\0".as_slice(), &entries, &[8, 0, 0, 0]].concat();
    let mut jpeg = jpeg(0xC0, 400, 300, &scan_of(50 * 38));
    jpeg.splice(2..2, segment(0xE1, &exif));
    jpeg
}
