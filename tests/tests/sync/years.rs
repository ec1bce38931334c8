//! Years of syncs: how many files lie there in the end, and what a new phone asks for.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::sync::atomic::AtomicBool;

use laydown_store::journal::segment::MOST_EVENTS;
use laydown_store::journal::{Body, Clock, DeviceId, Event, Kind};
use laydown_store::{Ingested, StoreError};
use laydown_sync::{Journal, Options, Outcome, sync};
use uuid::Uuid;

use crate::broken::Memory;

const DAYS: i64 = 4 * 365;
const A_DAY: i64 = 10;

/// A journal without a studio around it, so that years take seconds.
struct Paper {
    device: DeviceId,
    events: RefCell<BTreeMap<DeviceId, Vec<Event>>>,
    remembered: RefCell<Option<String>>,
}

impl Paper {
    fn new(number: u128) -> Paper {
        let device = DeviceId(Uuid::from_u128(0x1970_0000_7000_8000_0000_0000_0000 + number));
        Paper { device, events: RefCell::default(), remembered: RefCell::default() }
    }

    fn write(&self, day: i64) {
        let mut events = self.events.borrow_mut();
        let own = events.entry(self.device).or_default();
        for number in 0..A_DAY {
            let clock = Clock::from_packed((1_790_000_000_000 + day * 86_400_000 + number * 60_000) << 16).unwrap();
            let net = 20_000 + day * 7 + number * 131;
            let body = Body::from_iter([("net_mg".to_owned(), net.into())]);
            let (seq, entity) = (own.len() as i64 + 1, Uuid::from_u128(u128::from(net.unsigned_abs()) << 64));
            own.push(Event { device: self.device, seq, clock, entity, kind: Kind::of("coat"), body });
        }
    }

    fn sync(&self, remote: &Memory) -> Outcome {
        sync(self, remote, &Options::default(), &AtomicBool::new(false), &mut |_| ()).unwrap()
    }
}

impl Journal for Paper {
    fn device(&self) -> DeviceId {
        self.device
    }

    fn version(&self) -> Result<BTreeMap<DeviceId, i64>, StoreError> {
        Ok(self.events.borrow().iter().map(|(device, events)| (*device, events.len() as i64)).collect())
    }

    fn events(&self, device: DeviceId, first: i64, last: i64) -> Result<Vec<Event>, StoreError> {
        let events = self.events.borrow();
        let of = events.get(&device).map_or(&[][..], Vec::as_slice);
        Ok(of.iter().filter(|event| (first..=last).contains(&event.seq)).cloned().collect())
    }

    fn ingest_events(&self, events: &[Event]) -> Result<Ingested, StoreError> {
        let mut all = self.events.borrow_mut();
        let mut new = 0;
        for event in events {
            let of = all.entry(event.device).or_default();
            if event.seq == of.len() as i64 + 1 {
                of.push(event.clone());
                new += 1;
            }
        }
        Ok(Ingested { new, ..Ingested::default() })
    }

    fn photographs(&self) -> Result<BTreeMap<String, Option<u64>>, StoreError> {
        Ok(BTreeMap::new())
    }

    fn photograph(&self, sha256: &str) -> Result<Vec<u8>, StoreError> {
        panic!("there is no {sha256}")
    }

    fn adopt(&self, _: &str, _: &[u8]) -> Result<bool, StoreError> {
        Ok(false)
    }

    fn remembered(&self) -> Result<Option<String>, StoreError> {
        Ok(self.remembered.borrow().clone())
    }

    fn remember(&self, text: &str) -> Result<(), StoreError> {
        *self.remembered.borrow_mut() = Some(text.to_owned());
        Ok(())
    }
}

#[test]
fn four_years_of_daily_meetings_leave_few_files() {
    let remote = Memory::default();
    let phones = [Paper::new(1), Paper::new(2)];
    for day in 0..DAYS {
        for phone in &phones {
            phone.write(day);
            phone.sync(&remote);
        }
    }
    // Each phone's full segments, and at most 17 that are not full.
    let full = (DAYS * A_DAY) as usize / MOST_EVENTS;
    let files = remote.paths("").len();
    assert!(files <= 2 * (full + 17), "{files} files");
    eprintln!("{files} files after {DAYS} days");

    remote.gets.set(0);
    let new = Paper::new(3);
    let came = new.sync(&remote);
    assert_eq!((came.events_in as i64, came.file_errors.len()), (DAYS * A_DAY * 2, 0));
    assert!(remote.gets.get() <= files, "{} reads", remote.gets.get());
}

#[test]
fn a_phone_ended_between_putting_and_removing_loses_nothing() {
    let remote = Memory::default();
    let phone = Paper::new(1);
    for day in 0..16 {
        phone.write(day);
        phone.sync(&remote);
    }
    let small = remote.files.borrow().clone();
    phone.write(16);
    phone.sync(&remote);
    assert!(remote.paths("").len() < small.len());
    // As if it had ended before anything was removed, or before it remembered what it had put.
    for forgets in [false, true] {
        remote.files.borrow_mut().extend(small.clone());
        if forgets {
            phone.remembered.take();
        }
        let new = Paper::new(2);
        let came = new.sync(&remote);
        assert_eq!((came.events_in as i64, came.file_errors.len()), (17 * A_DAY, 0));
        assert_eq!(phone.sync(&remote).file_errors.len(), 0);
        assert!(remote.paths("").len() < small.len(), "what is superseded goes the next time");
    }
}
