//! A damaged studio's file whose pages all lead to the same bytes. SQLite, "Database File Format", sections 1.5 and 1.6.

use super::Maker;

pub(super) const MAKERS: &[Maker] = &[
    ("cells that are all one row of the file's length", |most| pages(most, |_, _| LARGE)),
    ("cells that are all one row of the page's length", |most| pages(most, |_, _| 4_000)),
    ("rows of nothing but nulls", nulls),
    ("chains that end in themselves", |most| pages(most, |page, cells| LARGE - (page * cells) % 7)),
];

const PAGE: usize = 4_096;
const CELLS: usize = 1_000;
/// The most that the reader takes for the length of a row is the file's.
const LARGE: usize = usize::MAX;

/// Every page a leaf of a table whose cells are one cell; its row goes on in the second page, which leads to itself.
fn pages(most: usize, length: fn(usize, usize) -> usize) -> Vec<u8> {
    let count = most / PAGE;
    let mut file = vec![0; count * PAGE];
    file[..16].copy_from_slice(b"SQLite format 3\0");
    // The application's own mark is its own business: without it, only events tell that a file is a studio.
    file[PAGE..PAGE + 4].copy_from_slice(&2_u32.to_be_bytes());
    for number in 2..count {
        let page = &mut file[number * PAGE..][..PAGE];
        page[0] = 0x0D;
        page[3..5].copy_from_slice(&(CELLS as u16).to_be_bytes());
        let at = 8 + 2 * CELLS;
        for cell in 0..CELLS {
            page[8 + 2 * cell..][..2].copy_from_slice(&(at as u16).to_be_bytes());
        }
        let length = length(number, CELLS).min((count - 1) * PAGE - 7);
        let mut cell = varint(length as u64);
        cell.extend(varint(1 << 40 | number as u64));
        page[at..at + cell.len()].copy_from_slice(&cell);
        // Where the row goes on: wherever the reader looks for it.
        page[at + cell.len() + 100..].chunks_exact_mut(4).for_each(|place| place.copy_from_slice(&2_u32.to_be_bytes()));
        let local = local(length);
        if let Some(place) = page.get_mut(at + cell.len() + local..at + cell.len() + local + 4) {
            place.copy_from_slice(&2_u32.to_be_bytes());
        }
    }
    file
}

/// Rows as long as the file, of values that take no bytes.
fn nulls(most: usize) -> Vec<u8> {
    let mut file = pages(most, |_, _| LARGE);
    let count = file.len() / PAGE;
    let length = (count - 1) * PAGE - 7;
    for number in 2..count {
        let at = number * PAGE + 8 + 2 * CELLS + varint(length as u64).len() + varint(1 << 40 | number as u64).len();
        // The head of the row is all of it.
        let head = varint(length as u64);
        file[at..at + head.len()].copy_from_slice(&head);
    }
    file[PAGE + 4..2 * PAGE].fill(0);
    file
}

fn local(length: usize) -> usize {
    let (most, least) = (PAGE - 35, (PAGE - 12) * 32 / 255 - 23);
    if length <= most {
        return length;
    }
    let fitting = least + (length - least) % (PAGE - 4);
    if fitting <= most { fitting } else { least }
}

/// Seven bits a byte, the highest first.
fn varint(number: u64) -> Vec<u8> {
    let mut bytes = vec![(number & 0x7F) as u8];
    let mut left = number >> 7;
    while left > 0 {
        bytes.insert(0, (left & 0x7F) as u8 | 0x80);
        left >>= 7;
    }
    bytes
}
