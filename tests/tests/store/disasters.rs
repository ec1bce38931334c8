//! Killed processes, full disks, torn logs and two writers: what was acknowledged is there afterwards.
#![cfg(unix)]

use std::collections::HashSet;
use std::fs;
use std::io::{BufRead, BufReader};
use std::os::unix::fs::PermissionsExt;
use std::os::unix::process::CommandExt;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use laydown_app::in_words::Sentence;
use laydown_store::entity::{Coat, Entity};
use laydown_store::journal::{RandomIds, SeededIds};
use laydown_store::{Store, StoreError, devices, events_after};
use uuid::Uuid;

use laydown_tests::{NOW, coat, furnish, open, save, studio};

/// The program that does to a studio what another process would: `src/bin/other_process.rs`.
pub(super) const OTHER_PROCESS: &str = env!("CARGO_BIN_EXE_other_process");

/// The other process from the file `program`, told what to do and where; `shell` runs first, in the same process.
pub(super) fn other(program: &Path, shell: &str, what: &str, studio: &Path) -> Command {
    let mut command = Command::new("sh");
    command
        .args(["-c", &format!("{shell} exec \"$0\" \"$@\"")])
        .arg(program)
        .arg(what)
        .arg(studio)
        .stdout(Stdio::piped())
        .stderr(Stdio::null());
    command
}

/// Another process that keeps `coats` coats, or as many as it can.
fn keeper(shell: &str, studio: &Path, coats: Option<i64>) -> Child {
    let mut command = other(Path::new(OTHER_PROCESS), shell, "keep", studio);
    command.args(coats.map(|coats| coats.to_string())).spawn().unwrap()
}

/// The ids of the coats that a child said were kept, and how it said it ended, if it did.
pub(super) fn told(child: &mut Child) -> (Vec<Uuid>, Option<String>) {
    let (mut saved, mut ended) = (Vec::new(), None);
    for line in BufReader::new(child.stdout.take().unwrap()).lines() {
        let line = line.unwrap();
        match line.split_once(' ') {
            Some(("kept", id)) => saved.push(id.parse().unwrap()),
            Some(("ended", how)) => ended = Some(how.to_owned()),
            _ => {}
        }
    }
    (saved, ended)
}

/// Everything in `saved` is there, the file is sound, and the tables are what the journal says.
pub(super) fn whole(path: &Path, saved: &[Uuid]) -> Store {
    let store = open(path, 42);
    store.check().unwrap();
    let there: HashSet<Uuid> = store.read(Coat::all).unwrap().into_iter().map(|coat| coat.id).collect();
    let lost: Vec<&Uuid> = saved.iter().filter(|id| !there.contains(id)).collect();
    assert!(lost.is_empty(), "{} of {} acknowledged coats are lost", lost.len(), saved.len());
    let dump = store.dump().unwrap();
    store.rebuild().unwrap();
    assert_eq!(store.dump().unwrap(), dump);
    store
}

#[test]
fn killed_at_any_moment_nothing_acknowledged_is_lost() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio");
    let mut saved = Vec::new();
    for round in 0..12u64 {
        let mut child = keeper("", &path, None);
        // The earliest kills come while the file is being made; later ones anywhere within a keep or a checkpoint.
        std::thread::sleep(Duration::from_millis(5 + round * round * 4));
        child.kill().unwrap();
        let (now_saved, ended) = told(&mut child);
        child.wait().unwrap();
        assert_eq!(ended, None);
        saved.extend(now_saved);
        whole(&path, &saved);
    }
    assert!(saved.len() > 100, "only {} coats were kept: the kills tested nothing", saved.len());
}

#[test]
fn a_log_torn_anywhere_loses_only_what_came_last() {
    let (folder, store) = studio();
    let bench = furnish(&store);
    let path = folder.path().join("studio.laydown");
    let mut saved = Vec::new();
    for number in 0..6 {
        let coat = coat(&bench, &mut SeededIds::new(number as u64), number);
        save(&store, &coat).unwrap();
        saved.push(coat.id);
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
        assert_eq!(coats, saved[..coats.len()], "what is there is a beginning of what was done");
        assert!(coats.len() >= most, "a longer log holds no less");
        most = coats.len();
        fs::remove_dir_all(&torn).unwrap();
    }
    assert_eq!(most, saved.len());
}

#[test]
fn a_disk_that_is_really_full() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio");
    // No file of the child may grow past 4096 blocks of 512 or 1024 bytes; the signal for it is ignored, so the write fails.
    let mut child = keeper("trap '' XFSZ; ulimit -f 4096;", &path, None);
    let (saved, ended) = told(&mut child);
    assert!(child.wait().unwrap().success());
    assert_eq!(ended.as_deref(), Some("Full"));
    assert!(saved.len() > 20, "{}", saved.len());
    let store = whole(&path, &saved);
    // With room again, the same reading is kept.
    let bench = furnish(&store);
    save(&store, &coat(&bench, &mut RandomIds, 1)).unwrap();
}

#[test]
fn a_full_disk_loses_nothing_and_the_next_save_works_once_there_is_room() {
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
    let mut saved = Vec::new();
    let full = loop {
        let coat = coat(&bench, &mut SeededIds::new(saved.len() as u64), saved.len() as i64);
        let before = store.dump().unwrap();
        match save(&store, &coat) {
            Ok(_) => saved.push(coat.id),
            Err(error) => {
                assert_eq!(store.dump().unwrap(), before);
                break (error, coat);
            }
        }
    };
    assert!(matches!(full.0, StoreError::Full), "{:?}", full.0);
    assert!(full.0.sentence().starts_with("The phone is full, so this was not saved"));
    pages(1_000_000);
    save(&store, &full.1).unwrap();
    saved.push(full.1.id);
    drop(store);
    whole(&folder.path().join("studio.laydown"), &saved);
}

#[test]
fn two_processes_on_one_file() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("studio");
    // Both find no file, and both make it.
    let mut children = [keeper("", &path, Some(150)), keeper("", &path, Some(150))];
    let mut saved = Vec::new();
    for child in &mut children {
        let (now_saved, ended) = told(child);
        assert!(child.wait().unwrap().success());
        assert_eq!(ended, None);
        assert_eq!(now_saved.len(), 150);
        saved.extend(now_saved);
    }
    let store = whole(&path, &saved);
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
    fs::copy(OTHER_PROCESS, &program).unwrap();
    allow(&program, 0o755);
    allow(&sealed, 0o444);
    allow(&folder.path().join("no writing/beside"), 0o666);
    allow(&folder.path().join("no reading"), 0o000);
    allow(&folder.path().join("no entry"), 0o000);
    allow(&folder.path().join("no writing"), 0o555);
    let names = ["no entry/studio", "no writing/new", "no writing/studio", "no writing/beside", "no reading"];
    let mut command = other(&program, "", "open", folder.path());
    command.args(names);
    if fs::metadata("/proc/self").is_ok_and(|own| std::os::unix::fs::MetadataExt::uid(&own) == 0) {
        command.uid(65_534).gid(65_534);
    }
    let output = command.output().unwrap();
    allow(&folder.path().join("no entry"), 0o755);
    allow(&folder.path().join("no writing"), 0o755);
    let said = String::from_utf8(output.stdout).unwrap();
    let said: Vec<&str> = said.lines().collect();
    assert_eq!(said, names.map(|name| format!("{name}: Some(NotAllowed)")));
    assert!(fs::read(&sealed).unwrap() == before);
}
