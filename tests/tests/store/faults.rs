//! The file under attack: killed between any two instructions, a storage that fails at any call, power that goes, and
//! bytes that rot. What was told kept is there afterwards, or the studio says that it is damaged; it is never wrong in silence.
#![cfg(unix)]

use std::collections::{BTreeMap, HashMap};
use std::fs;
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::time::{Duration, Instant};

use fastrand::Rng;
use laydown_store::journal::{Event, EventId, SeededIds};
use laydown_store::{Store, StoreError, devices, events_after};
use laydown_tests::faulty::{Call, Fault, Faulty};
use laydown_tests::work::{Told, Worker, all_events, sound, whole};
use laydown_tests::{NOW, open};
use rusqlite::{Connection, ffi};

use crate::disasters::{OTHER_PROCESS, other};
use crate::recovery::{PAGE, Worked, beside, laid, recovered, worked, worked_by};

/// Commands in one run of the child: more than it gets to before it is killed.
const COMMANDS: &str = "2000";

#[test]
fn killed_anywhere_in_two_thousand_commands() {
    let folder = tempfile::tempdir().unwrap();
    let mut rng = Rng::with_seed(6);
    let (mut rounds, mut commands) = (0_u64, 0);
    let started = Instant::now();
    let mut path = folder.path().join("studio");
    let mut told = Told::default();
    while rounds < 24 || (commands < 2_000 && started.elapsed() < Duration::from_secs(60)) {
        if rounds % 8 == 0 {
            // A new studio now and then, so that it is also killed while the file is being made.
            path = folder.path().join(format!("studio {rounds}"));
            told = Told::default();
        }
        let mut command = other(Path::new(OTHER_PROCESS), "", "work", &path);
        let mut child = command.args([&rounds.to_string(), COMMANDS]).spawn().unwrap();
        std::thread::sleep(Duration::from_micros(rng.u64(3_000..400_000)));
        child.kill().unwrap();
        for line in BufReader::new(child.stdout.take().unwrap()).lines() {
            // A line that was cut by the kill was not told.
            let line = line.unwrap();
            if let Some(Ok(now)) = line.strip_prefix("told ").map(serde_json::from_str) {
                told.and(now);
                commands += 1;
            }
        }
        child.wait().unwrap();
        whole(&path, &told);
        rounds += 1;
    }
    assert!(commands >= 2_000, "only {commands} commands came back in {rounds} rounds: the kills tested little");
}

/// How a day went on a storage that failed.
struct Day {
    told: Told,
    /// What was said where something was not done.
    errors: Vec<StoreError>,
    has_failed: bool,
}

/// Work on a studio at `path` whose storage fails after so many calls. After the power went nobody goes on; after another
/// fault everybody does.
fn day(path: &Path, fault: Fault, spared: u64) -> Day {
    let store = open(path, spared);
    let mut worker = Worker::new(&store, spared);
    let mut told = Told { events: all_events(&store), ..Told::default() };
    drop(store);
    let mut errors = Vec::new();
    let faulty = Faulty::storage(path.parent().unwrap(), fault, spared, spared);
    let power = matches!(fault, Fault::PowerGoes | Fault::PowerGoesAfterLies);
    let opened = Store::open(path, NOW, SeededIds::new(spared)).or_else(|error| {
        errors.push(error);
        Store::open(path, NOW, SeededIds::new(spared))
    });
    match opened {
        Err(error) => errors.push(error),
        Ok(store) => {
            // So that the log is also moved into the file, often.
            let often = store.transact(NOW, |tx| {
                Ok::<_, StoreError>(tx.conn().pragma_update_and_check(None, "wal_autocheckpoint", 20, |_| Ok(()))?)
            });
            errors.extend(often.err());
            for _ in 0..40 {
                match worker.command(&store) {
                    Ok(now) => told.and(now),
                    Err(error) => errors.push(error),
                }
                if power && !errors.is_empty() {
                    break;
                }
            }
        }
    }
    Day { told, errors, has_failed: faulty.end() }
}

/// How often the storage failed in ever later calls, until it was not called often enough to fail.
fn every_call(fault: Fault, mut step: impl FnMut(&Path, &Day)) -> u64 {
    let mut times = 0;
    let mut spared = 0;
    loop {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("studio.laydown");
        let day = day(&path, fault, spared);
        if !day.has_failed {
            return times;
        }
        times += 1;
        step(&path, &day);
        spared += 1 + spared / 6;
    }
}

#[test]
fn a_storage_that_fails_once_at_any_call() {
    let faults = [
        Fault::Fails(Call::Write, ffi::SQLITE_IOERR_WRITE),
        Fault::Fails(Call::Write, ffi::SQLITE_FULL),
        Fault::Fails(Call::Sync, ffi::SQLITE_IOERR_FSYNC),
        Fault::Fails(Call::Truncate, ffi::SQLITE_IOERR_TRUNCATE),
        Fault::Fails(Call::Open, ffi::SQLITE_CANTOPEN),
        Fault::Fails(Call::Delete, ffi::SQLITE_IOERR_DELETE),
        Fault::Fails(Call::Read, ffi::SQLITE_IOERR_READ),
        Fault::Fails(Call::Share, ffi::SQLITE_IOERR_SHMMAP),
        Fault::Tears,
    ];
    for fault in faults {
        let mut not_done = 0;
        let times = every_call(fault, |path, day| {
            not_done += day.errors.len();
            let said = |error: &StoreError| {
                matches!(error, StoreError::Full | StoreError::Io { .. } | StoreError::NotAllowed | StoreError::Busy)
            };
            assert!(day.errors.len() <= 1 && day.errors.iter().all(said), "{fault:?}: {:?}", day.errors);
            let events = whole(path, &day.told);
            // Where only writing fails: a reading that fails after the keeping leaves what was kept.
            if !matches!(fault, Fault::Fails(Call::Open | Call::Read | Call::Share, _)) {
                assert_eq!(events.len(), day.told.events.len(), "{fault:?}: what failed left nothing behind");
            }
        });
        assert!(times > 0, "{fault:?} never happened");
        // Cutting or removing a log that was moved into the file can wait; so can the moving.
        let can_wait = matches!(fault, Fault::Fails(Call::Truncate | Call::Delete, _));
        assert!(can_wait || not_done > 0, "{fault:?}: never told");
    }
}

#[test]
fn the_power_goes_at_any_write() {
    let mut last = 0;
    let times = every_call(Fault::PowerGoes, |path, day| {
        let events = whole(path, &day.told);
        // The command that was under way is there whole or not at all: `whole` has looked.
        let more: Vec<&Event> = events.iter().filter(|event| !day.told.events.contains(event)).collect();
        last += u64::from(!more.is_empty());
        let devices: Vec<_> = more.iter().map(|event| event.device).collect();
        assert!(devices.windows(2).all(|pair| pair[0] == pair[1]), "of one command");
    });
    assert!(times > 20 && last > 0 && last < times, "{last} of {times} times the command under way was there");
}

/// That the tests above can see a loss.
#[test]
fn a_drive_that_lies_is_found_out() {
    let mut found_out = 0;
    let times = every_call(Fault::PowerGoesAfterLies, |path, day| {
        let there = Store::open(path, NOW, SeededIds::new(1)).and_then(|store| {
            store.check()?;
            Ok(day.told.events.iter().all(|told| all_events(&store).contains(told)))
        });
        found_out += u64::from(!matches!(there, Ok(true)));
    });
    assert!(found_out > times / 2, "{found_out} of {times}");
}

/// What came of opening a file that was damaged, and of reading everything in it.
#[derive(Debug, PartialEq, Eq, PartialOrd, Ord, Clone, Copy)]
enum Outcome {
    /// Refused as damaged, and left as it was.
    Refused,
    /// Opened, and told as damaged when what is damaged was read.
    ToldWhenRead,
    /// Everything is there.
    AllThere,
    /// Something else is read than was kept; `Store::check` tells.
    OnlyCheckTells,
    /// Something else is read than was kept, in a file whose structure is sound: a letter or a figure of an entry changed.
    NothingTells,
}

fn outcome(path: &Path, were: &HashMap<EventId, Event>, dump: &str) -> Outcome {
    let parts = || ["", "-wal"].map(|end| fs::read(beside(path, end)).ok());
    let before = parts();
    let damaged = |error: &StoreError| assert!(matches!(error, StoreError::Damaged { .. }), "{error:?}");
    let store = match Store::open(path, NOW, SeededIds::new(42)) {
        Ok(store) => store,
        Err(error) => {
            damaged(&error);
            assert!(parts() == before, "left as it was");
            return Outcome::Refused;
        }
    };
    let read = store.read(all_of).and_then(|events| Ok((events, store.dump()?)));
    match read {
        Err(error) => {
            damaged(&error);
            Outcome::ToldWhenRead
        }
        Ok((events, now)) if events == *were && now == dump => Outcome::AllThere,
        Ok(_) if store.check().is_err() => Outcome::OnlyCheckTells,
        Ok(_) => Outcome::NothingTells,
    }
}

fn all_of(conn: &Connection) -> Result<HashMap<EventId, Event>, StoreError> {
    let mut events = HashMap::new();
    for (device, _) in devices(conn)? {
        events.extend(events_after(conn, device, 0)?.into_iter().map(|event| (event.id(), event)));
    }
    Ok(events)
}

#[test]
fn bytes_that_rot() {
    let mut flips: BTreeMap<Outcome, usize> = BTreeMap::new();
    for is_closed in [true, false] {
        let worked = worked(if is_closed { 150 } else { 60 }, is_closed);
        let (_folder, path) = laid(&worked.file, worked.log.as_deref());
        let dump = sound(&path).dump().unwrap();
        let mut rng = Rng::with_seed(11);
        let attack = |file: &[u8]| {
            let (_folder, path) = laid(file, worked.log.as_deref());
            outcome(&path, &worked.events, &dump)
        };
        for page in 0..worked.file.len() / PAGE {
            let mut zeroed = worked.file.clone();
            zeroed[page * PAGE..(page + 1) * PAGE].fill(0);
            assert!(attack(&zeroed) <= Outcome::AllThere, "page {} zeroed", page + 1);
            let cut = &worked.file[..page * PAGE + rng.usize(100..PAGE)];
            assert!(attack(cut) <= Outcome::AllThere, "cut after {} bytes", cut.len());
            for _ in 0..2 {
                let mut flipped = worked.file.clone();
                // The beginning of a page, with its header and what leads to the rest, more often than by chance.
                let at = page * PAGE + if rng.bool() { rng.usize(..PAGE) } else { rng.usize(..64) };
                flipped[at] ^= 1 << rng.u8(..8);
                *flips.entry(attack(&flipped)).or_default() += 1;
            }
        }
    }
    // SQLite keeps no sums of its pages: a figure that rotted is a figure. Nothing but that is silent.
    let of = |outcome| flips.get(&outcome).copied().unwrap_or_default();
    let all: usize = flips.values().sum();
    assert!(of(Outcome::AllThere) > 0 && of(Outcome::Refused) + of(Outcome::ToldWhenRead) > 0, "{flips:?}");
    assert!(of(Outcome::OnlyCheckTells) + of(Outcome::NothingTells) < all / 4, "{flips:?}");
}

#[test]
fn a_log_that_is_not_of_this_file() {
    let (killed, closed) = (worked(60, false), {
        let worked = worked(60, false);
        let (_folder, path) = laid(&worked.file, worked.log.as_deref());
        sound(&path);
        Worked { file: fs::read(&path).unwrap(), log: None, ..worked }
    });
    let dump = {
        let (_folder, path) = laid(&closed.file, None);
        sound(&path).dump().unwrap()
    };
    let attack = |file: &Worked, log: &[u8]| {
        let (_folder, path) = laid(&file.file, Some(log));
        let found = outcome(&path, &closed.events, &dump);
        // Whatever lies beside it, what is recovered is what this studio knew.
        let (_folder, path) = laid(&file.file, Some(log));
        assert_eq!(recovered(&path, &closed.events).saved, closed.events.len() as u64);
        found
    };
    let log_of = |worked: &Worked| worked.log.clone().unwrap();
    // Another studio's, shorter and longer; this studio's own of an earlier day.
    for commands in [3, 60, 150] {
        assert_eq!(attack(&closed, &log_of(&worked_by(6, commands, false))), Outcome::Refused, "{commands}");
    }
    assert_eq!(attack(&closed, &log_of(&worked(20, false))), Outcome::Refused);
    // Its own, whole; none; and what is no log, which SQLite passes over.
    assert_eq!(attack(&closed, &log_of(&killed)), Outcome::AllThere);
    assert_eq!(attack(&closed, &[]), Outcome::AllThere);
    let mut rng = Rng::with_seed(3);
    for _ in 0..10 {
        let mut garbage = vec![0; rng.usize(..200_000)];
        rng.fill(&mut garbage);
        assert_eq!(attack(&closed, &garbage), Outcome::AllThere);
    }
}
