//! Killed processes, full disks, torn logs and two writers: what was acknowledged is there afterwards.
#![cfg(unix)]

use std::collections::HashSet;
use std::fs;
use std::io::{BufRead, BufReader, Write};
use std::os::unix::fs::PermissionsExt;
use std::os::unix::process::CommandExt;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use laydown::journal::{RandomIds, SeededIds};
use laydown::store::entity::{Coat, Entity};
use laydown::store::{Store, StoreError, devices, events_after};
use uuid::Uuid;

use crate::fixture::{NOW, coat, furnish, keep, open, studio};

/// Tells a child process which studio to write to, and how many coats to keep.
const STUDIO: &str = "LAYDOWN_TEST_STUDIO";
const COATS: &str = "LAYDOWN_TEST_COATS";

/// This test program again, to run `test` alone as another process. `shell` runs first, in the same process.
fn child(program: &Path, shell: &str, test: &str, studio: &Path, coats: i64) -> Command {
    let mut command = Command::new("sh");
    command
        .args(["-c", &format!("{shell} exec \"$0\" \"$@\"")])
        .arg(program)
        .args(["--exact", test, "--nocapture"])
        .env(STUDIO, studio)
        .env(COATS, coats.to_string())
        .stdout(Stdio::piped())
        .stderr(Stdio::null());
    command
}

fn this_program() -> PathBuf {
    std::env::current_exe().unwrap()
}

fn keeper(shell: &str, studio: &Path, coats: i64) -> Child {
    child(&this_program(), shell, "disasters::child_keeps_coats", studio, coats).spawn().unwrap()
}

/// The ids of the coats that a child said were kept, and how it said it ended, if it did.
fn told(child: &mut Child) -> (Vec<Uuid>, Option<String>) {
    let (mut kept, mut ended) = (Vec::new(), None);
    for line in BufReader::new(child.stdout.take().unwrap()).lines() {
        let line = line.unwrap();
        match line.split_once(' ') {
            Some(("kept", id)) => kept.push(id.parse().unwrap()),
            Some(("ended", how)) => ended = Some(how.to_owned()),
            _ => {}
        }
    }
    (kept, ended)
}

/// The studio that another test gave this process to work on, if one did.
fn studio_given() -> Option<PathBuf> {
    std::env::var_os(STUDIO).map(PathBuf::from)
}

/// The other process of the tests below. Run for itself, it keeps three coats in a studio of its own.
#[test]
fn child_keeps_coats() {
    let Some(path) = studio_given() else {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("studio.laydown");
        keep_and_tell(&path, 3);
        assert_eq!(whole(&path, &[]).read(Coat::all).unwrap().len(), 3);
        return;
    };
    keep_and_tell(&path, std::env::var(COATS).unwrap().parse().unwrap());
}

fn keep_and_tell(path: &Path, coats: i64) {
    let store = Store::open(path, NOW, RandomIds).unwrap();
    let bench = furnish(&store);
    let mut out = std::io::stdout();
    for number in 0..coats {
        let coat = coat(&bench, &mut RandomIds, number);
        match keep(&store, &coat) {
            Ok(_) => writeln!(out, "\nkept {}", coat.id).unwrap(),
            Err(error) => {
                writeln!(out, "\nended {error:?}").unwrap();
                return;
            }
        }
        out.flush().unwrap();
    }
}

/// The other process of the test of permissions. Run for itself, it finds no folder to open a studio in.
#[test]
fn child_is_not_allowed() {
    let Some(path) = studio_given() else {
        let folder = tempfile::tempdir().unwrap();
        let error = Store::open(folder.path().join("nowhere/studio"), NOW, RandomIds).err().unwrap();
        assert!(matches!(error, StoreError::NoFolder), "{error:?}");
        return;
    };
    for name in ["no entry/studio", "no writing/new", "no writing/studio", "no writing/beside", "no reading"] {
        let error = Store::open(path.join(name), NOW, RandomIds).err();
        println!("\n{name}: {error:?}");
    }
}

/// Everything in `kept` is there, the file is sound, and the tables are what the journal says.
fn whole(path: &Path, kept: &[Uuid]) -> Store {
    let store = open(path, 42);
    store.check().unwrap();
    let there: HashSet<Uuid> = store.read(Coat::all).unwrap().into_iter().map(|coat| coat.id).collect();
    let lost: Vec<&Uuid> = kept.iter().filter(|id| !there.contains(id)).collect();
    assert!(lost.is_empty(), "{} of {} acknowledged coats are lost", lost.len(), kept.len());
    let dump = store.dump().unwrap();
    store.rebuild().unwrap();
    assert_eq!(store.dump().unwrap(), dump);
    store
}

#[test]
fn killed_at_any_moment_nothing_acknowledged_is_lost() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio");
    let mut kept = Vec::new();
    for round in 0..12u64 {
        let mut child = keeper("", &path, i64::MAX);
        // The earliest kills come while the file is being made; later ones anywhere within a keep or a checkpoint.
        std::thread::sleep(Duration::from_millis(5 + round * round * 4));
        child.kill().unwrap();
        let (now_kept, ended) = told(&mut child);
        child.wait().unwrap();
        assert_eq!(ended, None);
        kept.extend(now_kept);
        whole(&path, &kept);
    }
    assert!(kept.len() > 100, "only {} coats were kept: the kills tested nothing", kept.len());
}

#[test]
fn a_log_torn_anywhere_loses_only_what_came_last() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    let path = folder.path().join("studio.laydown");
    let mut kept = Vec::new();
    for number in 0..6 {
        let coat = coat(&bench, &mut SeededIds::new(number as u64), number);
        keep(&store, &coat).unwrap();
        kept.push(coat.id);
    }
    let (main, log) = (fs::read(&path).unwrap(), fs::read(folder.path().join("studio.laydown-wal")).unwrap());
    let torn = folder.path().join("torn");
    let mut most = 0;
    for length in (0..=log.len()).step_by(1_913).chain([log.len()]) {
        fs::create_dir(&torn).unwrap();
        fs::write(torn.join("studio"), &main).unwrap();
        fs::write(torn.join("studio-wal"), &log[..length]).unwrap();
        let store = whole(&torn.join("studio"), &[]);
        let coats: Vec<Uuid> = store.read(Coat::all).unwrap().iter().map(|coat| coat.id).collect();
        assert_eq!(coats, kept[..coats.len()], "what is there is a beginning of what was done");
        assert!(coats.len() >= most, "a longer log holds no less");
        most = coats.len();
        fs::remove_dir_all(&torn).unwrap();
    }
    assert_eq!(most, kept.len());
}

#[test]
fn a_disk_that_is_really_full() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio");
    // No file of the child may grow past 4096 blocks of 512 or 1024 bytes; the signal for it is ignored, so the write fails.
    let mut child = keeper("trap '' XFSZ; ulimit -f 4096;", &path, i64::MAX);
    let (kept, ended) = told(&mut child);
    assert!(child.wait().unwrap().success());
    assert_eq!(ended.as_deref(), Some("Full"));
    assert!(kept.len() > 20, "{}", kept.len());
    let store = whole(&path, &kept);
    // With room again, the same reading is kept.
    let bench = furnish(&store);
    keep(&store, &coat(&bench, &mut RandomIds, 1)).unwrap();
}

#[test]
fn a_full_disk_loses_nothing_and_the_next_keep_works_once_there_is_room() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    let pages = |most: i64| {
        let set = store.transact(NOW, |tx| {
            Ok::<i64, StoreError>(
                tx.conn().query_row(&format!("PRAGMA max_page_count = {most}"), [], |row| row.get(0))?,
            )
        });
        set.unwrap()
    };
    pages(60);
    let mut kept = Vec::new();
    let full = loop {
        let coat = coat(&bench, &mut SeededIds::new(kept.len() as u64), kept.len() as i64);
        let before = store.dump().unwrap();
        match keep(&store, &coat) {
            Ok(_) => kept.push(coat.id),
            Err(error) => {
                assert_eq!(store.dump().unwrap(), before);
                break (error, coat);
            }
        }
    };
    assert!(matches!(full.0, StoreError::Full), "{:?}", full.0);
    assert!(full.0.to_string().starts_with("The phone's storage is full. Nothing was lost"));
    pages(1_000_000);
    keep(&store, &full.1).unwrap();
    kept.push(full.1.id);
    drop(store);
    whole(&folder.path().join("studio.laydown"), &kept);
}

#[test]
fn two_processes_on_one_file() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio");
    // Both find no file, and both make it.
    let mut children = [keeper("", &path, 150), keeper("", &path, 150)];
    let mut kept = Vec::new();
    for child in &mut children {
        let (now_kept, ended) = told(child);
        assert!(child.wait().unwrap().success());
        assert_eq!(ended, None);
        assert_eq!(now_kept.len(), 150);
        kept.extend(now_kept);
    }
    let store = whole(&path, &kept);
    let known = store.read(devices).unwrap();
    assert_eq!(known.len(), 1, "one file is one device: {known:?}");
    let events = store.read(|conn| events_after(conn, store.device(), 0)).unwrap();
    assert!(events.iter().map(|event| event.seq).eq(1..=310), "310 events, none lost, no number twice");
    assert!(events.windows(2).all(|pair| pair[0].clock < pair[1].clock));
}

#[test]
fn places_the_system_does_not_let_us_write() {
    let folder = tempfile::tempdir().unwrap();
    let allow = |path: &Path, mode| fs::set_permissions(path, fs::Permissions::from_mode(mode)).unwrap();
    allow(folder.path(), 0o755);
    for name in ["no entry", "no writing"] {
        fs::create_dir(folder.path().join(name)).unwrap();
    }
    let sealed = folder.path().join("no writing/studio");
    furnish(&open(&sealed, 1));
    fs::copy(&sealed, folder.path().join("no reading")).unwrap();
    fs::copy(&sealed, folder.path().join("no writing/beside")).unwrap();
    let before = fs::read(&sealed).unwrap();
    // Root may do anything, so the child runs as nobody, from a place where nobody can reach the program.
    let program = folder.path().join("program");
    fs::copy(this_program(), &program).unwrap();
    allow(&program, 0o755);
    allow(&sealed, 0o444);
    allow(&folder.path().join("no writing/beside"), 0o666);
    allow(&folder.path().join("no reading"), 0o000);
    allow(&folder.path().join("no entry"), 0o000);
    allow(&folder.path().join("no writing"), 0o555);
    let mut command = child(&program, "", "disasters::child_is_not_allowed", folder.path(), 0);
    if fs::metadata("/proc/self").is_ok_and(|own| std::os::unix::fs::MetadataExt::uid(&own) == 0) {
        command.uid(65_534).gid(65_534);
    }
    let output = command.output().unwrap();
    allow(&folder.path().join("no entry"), 0o755);
    allow(&folder.path().join("no writing"), 0o755);
    let said = String::from_utf8(output.stdout).unwrap();
    let said: Vec<&str> = said.lines().filter(|line| line.starts_with("no ")).collect();
    let expected = ["no entry/studio", "no writing/new", "no writing/studio", "no writing/beside", "no reading"];
    assert_eq!(said, expected.map(|name| format!("{name}: Some(NotAllowed)")));
    assert!(fs::read(&sealed).unwrap() == before);
}
