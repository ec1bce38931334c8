//! A segment of another device's journal: as it came, and with lines of any kind under a sum that is right.

use laydown_store::journal::segment::{Name, Segment, pack, unpack};
use laydown_store::journal::{DeviceId, Event};
use laydown_tests::work::{Worker, all_events};
use laydown_tests::{open, studio};
use sha2::{Digest, Sha256};
use uuid::Uuid;

use crate::{folder, is_sentence};

const DEVICE: DeviceId = DeviceId(Uuid::from_u128(0x0198_2f6e_0000_7000_8000_0000_0000_0001));
const EVENTS: i64 = 40;
const NAME: Name = Name { device: DEVICE, first: 1, last: EVENTS };

/// Some events of somebody at work, all said to be of one device.
fn events() -> Vec<Event> {
    let (_folder, store) = studio();
    let mut worker = Worker::new(&store, 3);
    for _ in 0..60 {
        worker.command(&store).unwrap();
    }
    let events = all_events(&store).into_iter().zip(1..=EVENTS);
    events.map(|(event, seq)| Event { device: DEVICE, seq, ..event }).collect()
}

pub fn packed() -> Vec<Vec<u8>> {
    vec![pack(&events()).unwrap().bytes]
}

/// The lines of a segment but the last, whole and in part.
pub fn lines() -> Vec<Vec<u8>> {
    let text = zstd::decode_all(packed()[0].as_slice()).unwrap();
    let end = text[..text.len() - 1].iter().rposition(|byte| *byte == b'\n').unwrap() + 1;
    let few: Vec<u8> = text.split_inclusive(|byte| *byte == b'\n').take(6).flatten().copied().collect();
    vec![text[..end].to_vec(), few]
}

/// Lines under their sum, as a segment.
pub fn pack_lines(lines: &[u8]) -> Vec<u8> {
    let sum: String = Sha256::digest(lines).iter().map(|byte| format!("{byte:02x}")).collect();
    let text = [lines, format!("{{\"sha256\":\"{sum}\"}}\n").as_bytes()].concat();
    zstd::bulk::compress(&text, 1).unwrap()
}

pub fn read(bytes: &[u8]) {
    match unpack(&NAME, bytes) {
        Ok(events) => {
            assert_eq!(events.len() as i64, EVENTS);
            match pack(&events) {
                Ok(Segment { name, bytes }) => {
                    assert_eq!(unpack(&name, &bytes).unwrap(), events[..(name.last) as usize])
                }
                Err(error) => is_sentence(error),
            }
            let folder = folder();
            let store = open(&folder.path().join("studio.laydown"), 1);
            if let Err(error) = store.merge(laydown_tests::NOW, &events) {
                is_sentence(error);
            }
            let dump = store.dump().unwrap();
            store.rebuild().unwrap();
            assert_eq!(store.dump().unwrap(), dump, "tables are folds");
        }
        Err(error) => is_sentence(error),
    }
}
