//! A shelf in memory, where every file can be cut, flipped or taken away.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::sync::atomic::{AtomicBool, Ordering};

use laydown_app::in_words::Sentence;
use laydown_store::entity::Coat;
use laydown_store::journal::Event;
use laydown_store::{Entity as _, StoreError, events_after, without_gaps};
use laydown_sync::http_client::NetworkError;
use laydown_sync::{Entry, Options, RemoteError, RemoteStore, Secret, sync};
use laydown_tests::{NOW, open};
use proptest::prelude::*;

use crate::studio::{Device, all_agree};

#[derive(Default)]
pub struct Memory {
    pub files: RefCell<BTreeMap<String, Vec<u8>>>,
    /// Files put before the next one is cut off half-way.
    pub cut_after: Cell<Option<usize>>,
    /// Nothing can be removed there.
    pub saves_all: bool,
    pub gets: Cell<usize>,
    pub puts: RefCell<Vec<String>>,
}

impl RemoteStore for Memory {
    fn get(&self, path: &str, most: u64) -> Result<Option<Vec<u8>>, RemoteError> {
        self.gets.set(self.gets.get() + 1);
        let file = self.files.borrow().get(path).cloned();
        if file.as_ref().is_some_and(|file| file.len() as u64 > most) { Err(RemoteError::TooLong) } else { Ok(file) }
    }

    fn put(&self, path: &str, mut bytes: Vec<u8>) -> Result<(), RemoteError> {
        self.puts.borrow_mut().push(path.to_owned());
        let cut = self.cut_after.get();
        self.cut_after.set(cut.map(|left| left.wrapping_sub(1)));
        if cut == Some(0) {
            bytes.truncate(bytes.len() / 2);
            self.files.borrow_mut().insert(path.to_owned(), bytes);
            self.cut_after.set(None);
            return Err(RemoteError::Network(NetworkError::NoNetwork));
        }
        self.files.borrow_mut().insert(path.to_owned(), bytes);
        Ok(())
    }

    fn remove(&self, path: &str) -> Result<bool, RemoteError> {
        Ok(!self.saves_all && self.files.borrow_mut().remove(path).is_some())
    }

    fn list(&self) -> Result<Vec<Entry>, RemoteError> {
        let files = self.files.borrow();
        Ok(files.iter().map(|(path, bytes)| Entry { path: path.clone(), size: bytes.len() as u64 }).collect())
    }
}

impl Memory {
    pub fn paths(&self, part: &str) -> Vec<String> {
        self.files.borrow().keys().filter(|path| path.contains(part)).cloned().collect()
    }

    fn damage(&self, path: &str) {
        let mut files = self.files.borrow_mut();
        let bytes = files.get_mut(path).unwrap();
        let middle = bytes.len() / 2;
        bytes[middle] ^= 0x10;
    }
}

pub fn check() -> Options {
    Options { check: true, ..Options::default() }
}

pub fn sealed(passphrase: &str) -> Options {
    Options { passphrase: Some(Secret::from(passphrase.to_owned())), ..Options::default() }
}

/// What was there is gone, and is said to be.
fn older(outcome: &laydown_sync::Outcome) {
    assert!(matches!(outcome.file_errors[..], [RemoteError::OlderThanLastTime]), "{:?}", outcome.file_errors);
}

fn sentence(error: &RemoteError) -> String {
    error.sentence()
}

#[test]
fn three_devices_agree_and_each_writes_below_its_own_name() {
    let remote = Memory::default();
    let mut devices = [Device::new(1), Device::new(2), Device::new(3)];
    for (device, number) in devices.iter_mut().zip(0..) {
        device.weigh(20);
        device.photograph(number);
        device.sync(&remote).unwrap();
        let own = format!("devices/{}/", device.store.device().0);
        assert!(remote.puts.borrow_mut().drain(..).all(|path| path.starts_with(&own)));
    }
    all_agree(&devices.each_ref(), &remote, &Options::default());
    // Each photograph once, whoever has it by now.
    assert_eq!(remote.paths("/photos/").len(), 3);
    assert_eq!(devices[2].holds().photos.len(), 3);

    remote.puts.borrow_mut().clear();
    devices[0].weigh(1);
    assert_eq!(devices[0].sync(&remote).unwrap().events_out, 1);
    assert_eq!(remote.puts.borrow().len(), 1, "one new segment, no other file touched");
    all_agree(&devices.each_ref(), &remote, &Options::default());
}

#[test]
fn a_cut_upload_is_put_again_and_never_taken_for_whole() {
    // The journal, then each of the photographs.
    for cut in 0..4 {
        let remote = Memory::default();
        let (mut a, b) = (Device::new(1), Device::new(2));
        a.weigh(30);
        (0..3).for_each(|number| a.photograph(number));
        remote.cut_after.set(Some(cut));
        assert!(matches!(a.sync(&remote), Err(RemoteError::Network(NetworkError::NoNetwork))));
        let seen = b.sync(&remote).unwrap();
        assert_eq!(seen.file_errors.len(), 1, "{cut}: {:?}", seen.file_errors);
        assert_eq!(b.coats(), if cut == 0 { 0 } else { 30 });
        assert_eq!(seen.photographs_in, cut.saturating_sub(1));
        let again = a.sync(&remote).unwrap();
        assert_eq!(again.repaired, usize::from(cut == 0));
        all_agree(&[&a, &b], &remote, &Options::default());
    }
}

impl Device {
    fn coats(&self) -> usize {
        self.store.read(|conn| Ok::<_, StoreError>(Coat::all(conn)?.len())).unwrap()
    }
}

#[test]
fn what_is_damaged_is_named_skipped_and_mended_by_its_writer() {
    let remote = Memory::default();
    let (mut a, mut b, mut c) = (Device::new(1), Device::new(2), Device::new(3));
    for _ in 0..3 {
        a.weigh(5);
        a.sync(&remote).unwrap();
    }
    b.weigh(5);
    b.sync(&remote).unwrap();
    let of_a = remote.paths(&format!("/journal/{}/", a.store.device().0));
    assert_eq!(of_a.len(), 3);
    remote.damage(&of_a[1]);

    c.weigh(1);
    let outcome = c.sync(&remote).unwrap();
    // A's first segment and all of B's are here; A's second is named, and the third waits for it.
    assert_eq!(c.coats(), 5 + 5 + 1);
    let [trouble] = &outcome.file_errors[..] else { panic!("{:?}", outcome.file_errors) };
    let name = of_a[1].rsplit_once('/').unwrap().1;
    assert!(sentence(trouble).contains(name), "{trouble}");
    assert_eq!(c.sync(&remote).unwrap().file_errors.len(), 1, "asked for again");

    assert_eq!(a.sync_so(&remote, &check()).unwrap().repaired, 1);
    all_agree(&[&a, &b, &c], &remote, &Options::default());

    remote.files.borrow_mut().remove(&of_a[1]);
    let d = Device::new(4);
    let outcome = d.sync(&remote).unwrap();
    assert!(
        matches!(outcome.file_errors[..], [RemoteError::Missing { first: 11, last: 15, .. }]),
        "{:?}",
        outcome.file_errors
    );
    older(&a.sync(&remote).unwrap());
    all_agree(&[&a, &b, &c], &remote, &Options::default());
    all_agree(&[&a, &d], &remote, &Options::default());
}

#[test]
fn a_damaged_photograph_is_named_and_mended() {
    let remote = Memory::default();
    let (mut a, b) = (Device::new(1), Device::new(2));
    a.photograph(1);
    a.photograph(2);
    a.sync(&remote).unwrap();
    let photos = remote.paths("/photos/");
    remote.damage(&photos[0]);
    let outcome = b.sync(&remote).unwrap();
    assert_eq!(outcome.photographs_in, 1);
    assert!(matches!(&outcome.file_errors[..], [RemoteError::DamagedPhotograph { file }] if *file == photos[0]));
    assert_eq!(a.sync_so(&remote, &check()).unwrap().repaired, 1);
    all_agree(&[&a, &b], &remote, &Options::default());
}

#[test]
fn a_place_that_lost_everything_is_filled_again() {
    let remote = Memory::default();
    let (mut a, mut b) = (Device::new(1), Device::new(2));
    a.weigh(10);
    b.weigh(10);
    b.photograph(1);
    all_agree(&[&a, &b], &remote, &Options::default());
    remote.files.borrow_mut().clear();
    // B is lost too: A has its events, and brings them.
    let c = Device::new(3);
    older(&a.sync(&remote).unwrap());
    all_agree(&[&a, &c], &remote, &Options::default());
    assert_eq!(c.coats(), 20);
    assert_eq!(c.holds().photos.len(), 1);
    // B was not lost after all. Whatever others brought, its own events it puts there itself.
    assert!(b.sync(&remote).unwrap().events_out >= 10);
    all_agree(&[&a, &b, &c], &remote, &Options::default());
}

#[test]
fn an_older_copy_of_a_studio_gets_its_own_events_back() {
    let remote = Memory::default();
    let mut a = Device::new(1);
    a.weigh(5);
    a.sync(&remote).unwrap();
    let fresh = tempfile::tempdir().unwrap();
    // The same device, before it had done anything.
    let older = open(&fresh.path().join("studio.laydown"), 1);
    assert_eq!(older.device(), a.store.device());
    let outcome = sync(&older, &remote, &Options::default(), &AtomicBool::new(false), &mut |_| ()).unwrap();
    assert_eq!(outcome.events_in, a.holds().events[&older.device()].len());
    assert_eq!(outcome.events_out, 0);
}

#[test]
fn a_studio_saved_with_gaps_gets_back_what_it_lost() {
    let remote = Memory::default();
    let (mut a, mut saved) = (Device::new(1), Device::new(2));
    a.weigh(20);
    a.sync(&remote).unwrap();
    // As after a recovery: of another device's events some in the middle, and the last ones, could not be read.
    let events = a.store.read(|conn| events_after(conn, a.store.device(), 0)).unwrap();
    let last = events.len() as i64;
    let left = |event: &&Event| event.seq != 7 && event.seq != 8 && event.seq < last - 1;
    let left: Vec<Event> = events.iter().filter(left).cloned().collect();
    saved.store.merge(NOW, &left).unwrap();
    assert_eq!(
        saved.store.read(without_gaps).unwrap().into_iter().find(|(device, _)| *device == a.store.device()),
        Some((a.store.device(), 6))
    );
    saved.weigh(3);
    let outcome = saved.sync(&remote).unwrap();
    assert_eq!((outcome.events_in, outcome.file_errors.len()), (events.len() - left.len(), 0));
    assert!(a.sync(&remote).unwrap().events_in > 0);
    all_agree(&[&a, &saved], &remote, &Options::default());
}

#[test]
fn two_that_write_under_one_name_are_told() {
    let remote = Memory::default();
    let (mut a, mut copy, other) = (Device::new(1), Device::new(1), Device::new(3));
    a.weigh(3);
    copy.weigh(2);
    copy.photograph(1);
    copy.weigh(4);
    a.sync(&remote).unwrap();
    let before = remote.paths("/journal/");
    let forked = |outcome: laydown_sync::Outcome| {
        let [RemoteError::Store(StoreError::Forked { device, .. })] = outcome.file_errors[..] else {
            panic!("{:?}", outcome.file_errors)
        };
        assert_eq!(device, a.store.device());
    };
    forked(copy.sync(&remote).unwrap());
    assert_eq!(remote.paths("/journal/"), before, "nothing of the other's was put there");
    // What was put there first stays, and others have it.
    other.sync(&remote).unwrap();
    assert_eq!(other.coats(), 3);
    assert_eq!((a.coats(), copy.coats()), (3, 6));
}

#[test]
fn photographs_wait_on_a_metered_network() {
    let remote = Memory::default();
    let (mut a, b) = (Device::new(1), Device::new(2));
    a.weigh(3);
    a.photograph(1);
    let metered = Options { metered: true, ..Options::default() };
    let outcome = a.sync_so(&remote, &metered).unwrap();
    assert_eq!((outcome.photographs_out, outcome.photographs_waiting), (0, 1));
    assert!(remote.paths("/photos/").is_empty());
    let outcome = b.sync_so(&remote, &metered).unwrap();
    assert_eq!(outcome.photographs_missing, 1);
    assert_eq!(b.coats(), 3);
    a.sync(&remote).unwrap();
    assert_eq!(b.sync_so(&remote, &metered).unwrap().photographs_waiting, 1);
    all_agree(&[&a, &b], &remote, &Options::default());
}

#[test]
fn stopping_saves_what_was_done() {
    let remote = Memory::default();
    let (mut a, b) = (Device::new(1), Device::new(2));
    a.weigh(3);
    (0..4).for_each(|number| a.photograph(number));
    a.sync(&remote).unwrap();
    let stop = AtomicBool::new(false);
    let mut seen = Vec::new();
    let stopped = sync(&b.store, &remote, &Options::default(), &stop, &mut |progress| {
        seen.push(progress);
        stop.store(progress.done == 3, Ordering::Relaxed);
    });
    assert!(matches!(stopped, Err(RemoteError::Stopped)));
    assert!(seen.windows(2).all(|two| two[0].done < two[1].done && two[0].bytes <= two[1].bytes));
    assert!(seen.iter().all(|progress| progress.done <= progress.of));
    let here = b.store.read(laydown_store::query::photo_names).unwrap();
    assert_eq!(here.iter().filter(|name| b.store.photos().has(name)).count(), 1);
    let gets = remote.gets.get();
    assert_eq!(b.sync(&remote).unwrap().photographs_in, 3);
    // The journal is not fetched again, and what B put there it has read back.
    assert_eq!(remote.gets.get() - gets, 3);
    all_agree(&[&a, &b], &remote, &Options::default());
}

#[test]
fn sealed_files_tell_nothing_and_open_with_the_passphrase() {
    let remote = Memory::default();
    let (mut a, mut b) = (Device::new(1), Device::new(2));
    a.weigh(10);
    a.photograph(1);
    b.weigh(10);
    let right = sealed("slip and sieve");
    a.sync_so(&remote, &right).unwrap();

    let before = remote.files.borrow().clone();
    assert!(matches!(b.sync_so(&remote, &sealed("slip or sieve")), Err(RemoteError::WrongPassphrase { .. })));
    assert!(matches!(b.sync(&remote), Err(RemoteError::NoPassphrase)));
    assert!(*remote.files.borrow() == before, "nothing was put there");

    all_agree(&[&a, &b], &remote, &right);
    let sha256 = &a.holds().photos[0].sha256;
    assert!(remote.files.borrow().iter().all(|(path, bytes)| path.ends_with(".age")
        && !path.contains(sha256.as_str())
        && bytes.starts_with(b"age-encryption.org/v1\n")));
    let keys = remote.paths("/key.age");
    assert_eq!(keys.len(), 2);
    assert_eq!(
        remote.files.borrow()[&keys[0]],
        remote.files.borrow()[&keys[1]],
        "the second took over the first's key"
    );

    for path in remote.paths("/journal/") {
        remote.damage(&path);
    }
    assert!(a.sync_so(&remote, &Options { check: true, ..right.clone() }).unwrap().repaired > 0);
    assert!(b.sync_so(&remote, &Options { check: true, ..right.clone() }).unwrap().repaired > 0);
    let c = Device::new(3);
    all_agree(&[&a, &b, &c], &remote, &right);
}

#[test]
fn two_that_come_at_once_each_have_a_key_and_read_each_other() {
    let (one, two) = (Memory::default(), Memory::default());
    let (mut a, mut b) = (Device::new(1), Device::new(2));
    a.photograph(1);
    b.photograph(2);
    let right = sealed("slip and sieve");
    a.sync_so(&one, &right).unwrap();
    b.sync_so(&two, &right).unwrap();
    one.files.borrow_mut().extend(two.files.take());
    all_agree(&[&a, &b], &one, &right);
    assert_eq!(one.paths("/photos/").len(), 2);
}

#[test]
fn files_of_other_names_are_left_alone() {
    let remote = Memory::default();
    for path in ["devices/notes.txt", "devices/x/key.age", "devices/../../etc/journal/a.jsonl.zst", "holiday.jpg"] {
        remote.files.borrow_mut().insert(path.to_owned(), b"nothing of ours".to_vec());
    }
    let (mut a, b) = (Device::new(1), Device::new(2));
    a.weigh(2);
    all_agree(&[&a, &b], &remote, &Options::default());
    assert_eq!(remote.files.borrow()["holiday.jpg"], b"nothing of ours");
}

#[test]
fn no_secret_is_shown() {
    let secret = "slip and sieve";
    let options = sealed(secret);
    let place = laydown_sync::RemoteConfig::WebDav {
        address: "https://example.org/".to_owned(),
        user: "potter".to_owned(),
        password: Secret::from(secret.to_owned()),
    };
    let shown = format!("{options:?} {place:?}");
    assert!(!shown.contains(secret), "{shown}");
    assert!(shown.contains("potter"));
}

/// What happens to three devices and the place between them.
#[derive(Debug, Clone)]
enum Happening {
    Weigh(usize),
    Photograph(usize),
    Sync(usize),
    /// A round that is cut off while it puts its so manieth file.
    Cut(usize, usize),
    /// All is gone there.
    Lost,
}

fn happening() -> impl Strategy<Value = Happening> {
    prop_oneof![
        4 => (0..3usize).prop_map(Happening::Weigh),
        2 => (0..3usize).prop_map(Happening::Photograph),
        4 => (0..3usize).prop_map(Happening::Sync),
        3 => (0..3usize, 0..4usize).prop_map(|(device, after)| Happening::Cut(device, after)),
        1 => Just(Happening::Lost),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    #[test]
    fn whatever_happens_all_agree_in_the_end(happenings in prop::collection::vec(happening(), 1..16)) {
        let remote = Memory::default();
        let mut devices = [Device::new(1), Device::new(2), Device::new(3)];
        for (happening, number) in happenings.into_iter().zip(0..) {
            match happening {
                Happening::Weigh(device) => devices[device].weigh(3),
                Happening::Photograph(device) => devices[device].photograph(number),
                Happening::Sync(device) => drop(devices[device].sync(&remote).unwrap()),
                Happening::Cut(device, after) => {
                    remote.cut_after.set(Some(after));
                    let cut = devices[device].sync(&remote);
                    prop_assert_eq!(cut.is_err(), remote.cut_after.get().is_none());
                    remote.cut_after.set(None);
                }
                Happening::Lost => remote.files.borrow_mut().clear(),
            }
        }
        // What was cut off is mended when its writer has its turn.
        for device in &devices {
            device.sync(&remote).unwrap();
        }
        all_agree(&devices.each_ref(), &remote, &Options::default());
    }
}
