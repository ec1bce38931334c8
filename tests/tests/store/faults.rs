//! The file under attack: killed between any two instructions, a storage that fails at any call, power that goes, and
//! bytes that rot. What was told kept is there afterwards, or the studio says that it is damaged; it is never wrong in silence.
#![cfg(unix)]

use std::io::{BufRead, BufReader};
use std::path::Path;
use std::time::{Duration, Instant};

use fastrand::Rng;
use laydown_tests::work::{Told, whole};

use crate::disasters::{OTHER_PROCESS, other};

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
