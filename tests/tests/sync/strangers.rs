//! Whoever can write the sync location can be absent, and no more.

use std::io::Write;

use laydown_sync::{Options, Outcome, RemoteError, Secret};

use crate::broken::{Memory, sealed};
use crate::studio::{Device, all_agree};

/// Sorts before every phone's name.
const STRANGER: &str = "00000000-0000-7000-8000-000000000000";
const PASSPHRASE: &str = "slip and sieve";

/// What `key.age` holds where somebody sealed a key of their own with another passphrase.
fn strange_key(work: u8) -> Vec<u8> {
    let mut recipient = age::scrypt::Recipient::new(Secret::from("anything else".to_owned()));
    recipient.set_work_factor(work);
    let encryptor = age::Encryptor::with_recipients(std::iter::once(&recipient as &dyn age::Recipient)).unwrap();
    let mut file = Vec::new();
    let mut writer = encryptor.wrap_output(&mut file).unwrap();
    writer.write_all(b"no key at all").unwrap();
    writer.finish().unwrap();
    file
}

impl Memory {
    fn lay(&self, path: String, bytes: Vec<u8>) {
        self.files.borrow_mut().insert(path, bytes);
    }

    /// What a phone would put there unsealed, under its own name.
    fn forge(&self, number: u64) -> Device {
        let (forger, elsewhere) = (Device::new(number), Memory::default());
        forger.sync(&elsewhere).unwrap();
        self.files.borrow_mut().extend(elsewhere.files.take());
        forger
    }
}

fn knows(device: &Device, other: &Device) -> bool {
    device.holds().events.contains_key(&other.store.device())
}

fn strange_files(outcome: &Outcome) -> usize {
    let counts = outcome.file_errors.iter().map(|trouble| match trouble {
        RemoteError::StrangeFiles { files } => *files,
        other => panic!("{other:?}"),
    });
    counts.sum()
}

#[test]
fn a_strangers_key_locks_nobody_out() {
    let remote = Memory::default();
    let (mut a, b) = (Device::new(1), Device::new(2));
    a.weigh(3);
    remote.lay(format!("devices/{STRANGER}/key.age"), strange_key(10));
    a.sync_so(&remote, &Options { afresh: true, ..sealed(PASSPHRASE) }).unwrap();
    // B comes new, and finds the stranger's key first.
    let outcome = b.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
    assert!(knows(&b, &a));
    assert_eq!(strange_files(&outcome), 1);
}

#[test]
fn a_crowd_of_keys_is_neither_fetched_nor_stretched() {
    let remote = Memory::default();
    let (a, b) = (Device::new(1), Device::new(2));
    all_agree(&[&a, &b], &remote, &sealed(PASSPHRASE));
    let key = strange_key(2);
    for number in 0..5_000 {
        remote.lay(format!("devices/00000000-0000-7000-8000-{number:012x}/key.age"), key.clone());
    }
    remote.gets.set(0);
    a.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
    assert!(remote.gets.get() < 20, "{} reads", remote.gets.get());
}

#[test]
fn a_mistyped_passphrase_founds_no_second_secret_unless_that_is_wished() {
    let remote = Memory::default();
    let (mut a, b) = (Device::new(1), Device::new(2));
    a.weigh(3);
    a.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
    let before = remote.files.borrow().clone();
    let refused = b.sync_so(&remote, &sealed("slip or sieve")).unwrap_err();
    assert!(matches!(refused, RemoteError::WrongPassphrase { keys: 1 }), "{refused:?}");
    assert!(*remote.files.borrow() == before, "nothing was put there");
    b.sync_so(&remote, &Options { afresh: true, ..sealed("slip or sieve") }).unwrap();
    assert!(!knows(&b, &a));
    // From then on it is its own.
    b.sync_so(&remote, &sealed("slip or sieve")).unwrap();
    // A's own key is remembered: what B did does not keep it from anything.
    assert!(strange_files(&a.sync_so(&remote, &sealed(PASSPHRASE)).unwrap()) > 0);
}

#[test]
fn with_a_passphrase_unsealed_files_count_for_nothing() {
    let remote = Memory::default();
    let (mut a, b) = (Device::new(1), Device::new(2));
    a.weigh(3);
    a.photograph(1);
    a.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
    let forger = remote.forge(9);
    let outcome = b.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
    assert!(knows(&b, &a) && !knows(&b, &forger));
    assert_eq!(strange_files(&outcome), 1);
}

#[test]
fn sealed_files_that_lie_elsewhere_or_under_another_name_are_refused() {
    let remote = Memory::default();
    let (mut a, mut b) = (Device::new(1), Device::new(2));
    a.weigh(3);
    b.weigh(3);
    all_agree(&[&a, &b], &remote, &sealed(PASSPHRASE));
    let of = |device: &Device| remote.paths(&format!("/journal/{}/", device.store.device().0)).remove(0);
    let (of_a, of_b) = (of(&a), of(&b));
    let file = remote.files.borrow()[&of_a].clone();
    // A's file under B's name, in a stranger's folder, and claiming more than it holds.
    remote.lay(of_b, file.clone());
    remote.lay(of_a.replacen(&a.store.device().0.to_string(), STRANGER, 1), file.clone());
    remote.lay(of_a.replace("000000000001-", "000000000002-"), file);
    let c = Device::new(3);
    let outcome = c.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
    assert!(knows(&c, &a) && !knows(&c, &b));
    let [RemoteError::DamagedSegment(_), RemoteError::StrangeFiles { files: 2 }] = &outcome.file_errors[..] else {
        panic!("{:?}", outcome.file_errors)
    };
}

#[test]
fn absurd_names_and_counts_cost_a_bounded_number_of_reads() {
    let remote = Memory::default();
    let (mut a, mut b) = (Device::new(1), Device::new(2));
    a.weigh(3);
    all_agree(&[&a, &b], &remote, &sealed(PASSPHRASE));
    b.weigh(3);
    let of = [a.store.device().0.to_string(), b.store.device().0.to_string(), STRANGER.to_owned()];
    for number in 0..3_000 {
        for (writer, device) in of.iter().zip(of.iter().cycle().skip(1)) {
            for ending in ["", ".age", ".0123456789abcdef0123456789abcdef.age"] {
                let name = format!("{:012}-{:012}.jsonl.zst{ending}", 1 + number, 3_000 + number);
                remote.lay(format!("devices/{writer}/journal/{device}/{name}"), vec![0; 9]);
            }
        }
        let lone = format!("devices/{STRANGER}/journal/00000000-0000-7000-8000-{number:012x}");
        remote.lay(format!("{lone}/000000000001-999999999999.jsonl.zst.age"), vec![0; 9]);
    }
    remote.gets.set(0);
    b.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
    let reads = remote.gets.get();
    assert!(reads < 200, "{reads} reads");
    a.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
    let shown = |device: &Device| device.holds().coats.len();
    assert_eq!((shown(&a), shown(&b)), (6, 6));
}

#[test]
fn whoever_claims_to_have_everything_stops_nobody_from_publishing() {
    for options in [Options::default(), sealed(PASSPHRASE)] {
        let remote = Memory::default();
        let (mut a, b) = (Device::new(1), Device::new(2));
        a.weigh(3);
        all_agree(&[&a, &b], &remote, &options);
        let (me, mine) = (a.store.device().0, format!("/journal/{}/", a.store.device().0));
        let ending = if options.passphrase.is_some() { ".age" } else { "" };
        // All of A's is gone, and a stranger says that it has it, also in A's own folder.
        remote.files.borrow_mut().retain(|path, _| !path.contains(&mine));
        for writer in [STRANGER.to_owned(), me.to_string()] {
            for name in ["000000000001-999999999999", "000000000001-000000005000"] {
                remote.lay(format!("devices/{writer}{mine}{name}.jsonl.zst{ending}"), vec![7; 4_000]);
            }
        }
        // A is lost: B has its events and brings them; and A, where it is not lost, does so itself.
        b.sync_so(&remote, &options).unwrap();
        let c = Device::new(3);
        c.sync_so(&remote, &options).unwrap();
        assert!(c.holds().coats.len() == 3, "B put nothing of A's");
        remote.files.borrow_mut().retain(|path, _| !path.contains(&format!("devices/{}", b.store.device().0)));
        a.weigh(1);
        a.sync_so(&remote, &options).unwrap();
        let d = Device::new(4);
        d.sync_so(&remote, &options).unwrap();
        assert_eq!(d.holds().coats.len(), 4);
    }
}

#[test]
fn a_photograph_counts_as_there_only_once_it_was_read() {
    let remote = Memory::default();
    let (mut a, b) = (Device::new(1), Device::new(2));
    a.photograph(1);
    let photo = a.holds().photos[0].sha256.clone();
    let size = std::fs::metadata(a.store.photos().file(&photo)).unwrap().len();
    remote.lay(format!("devices/{STRANGER}/photos/{photo}.picture"), vec![7; usize::try_from(size).unwrap()]);
    assert_eq!(a.sync(&remote).unwrap().photographs_out, 1);
    b.sync(&remote).unwrap();
    assert_eq!(b.holds().pictures, a.holds().pictures);
}

#[test]
fn older_data_and_removed_files_are_noticed_and_put_back() {
    for options in [Options::default(), sealed(PASSPHRASE)] {
        let remote = Memory::default();
        let (mut a, mut b) = (Device::new(1), Device::new(2));
        a.weigh(3);
        b.weigh(3);
        all_agree(&[&a, &b], &remote, &options);
        let older = remote.files.borrow().clone();
        a.weigh(2);
        b.photograph(1);
        all_agree(&[&a, &b], &remote, &options);
        *remote.files.borrow_mut() = older;
        let outcome = b.sync_so(&remote, &options).unwrap();
        assert!(matches!(outcome.file_errors[..], [RemoteError::OlderThanLastTime]), "{:?}", outcome.file_errors);
        // Said once, and mended: also what A had put there.
        let c = Device::new(3);
        all_agree(&[&b, &c], &remote, &options);
        assert_eq!(c.holds().coats.len(), 8);
        // Removed as a whole.
        remote.files.borrow_mut().clear();
        let outcome = b.sync_so(&remote, &options).unwrap();
        assert!(matches!(outcome.file_errors[..], [RemoteError::OlderThanLastTime]), "{:?}", outcome.file_errors);
    }
}

#[test]
fn sealing_later_seals_what_lies_there_and_removes_what_is_open() {
    for removes in [true, false] {
        let remote = Memory { saves_all: !removes, ..Memory::default() };
        let (mut a, mut b) = (Device::new(1), Device::new(2));
        a.weigh(3);
        a.photograph(1);
        b.weigh(3);
        all_agree(&[&a, &b], &remote, &Options::default());
        let a_says = a.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
        let b_says = b.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
        let open = remote.paths("").iter().filter(|path| !path.ends_with(".age")).count();
        assert_eq!(open, if removes { 0 } else { 3 });
        let left = |outcome: &Outcome| {
            outcome.file_errors.iter().any(|trouble| matches!(trouble, RemoteError::LeftUnsealed { .. }))
        };
        assert_eq!((left(&a_says), left(&b_says)), (!removes, !removes));
        let c = Device::new(3);
        c.sync_so(&remote, &sealed(PASSPHRASE)).unwrap();
        assert_eq!((c.holds().coats.len(), c.holds().pictures), (6, a.holds().pictures));
    }
}

#[test]
fn a_sealed_file_stops_no_phone_that_met_the_others_unsealed() {
    let remote = Memory::default();
    let (mut a, b) = (Device::new(1), Device::new(2));
    all_agree(&[&a, &b], &remote, &Options::default());
    remote.lay(format!("devices/{STRANGER}/key.age"), strange_key(2));
    remote.lay(format!("devices/{STRANGER}/photos/{}.picture.age", "0".repeat(64)), vec![0; 300]);
    a.weigh(1);
    let outcome = a.sync(&remote).unwrap();
    assert!(matches!(outcome.file_errors[..], [RemoteError::SealedFiles { files: 1 }]), "{:?}", outcome.file_errors);
    b.sync(&remote).unwrap();
    assert_eq!(b.holds().coats.len(), 1);
}
