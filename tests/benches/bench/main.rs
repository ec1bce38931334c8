//! How long the main job takes, each figure beside a peer of the same run: `make bench`.
//!
//! A plain program and not a bench harness: a durable write is one wait for the storage, so both sides must take turns
//! to be comparable, and all figures belong into one table.
#![allow(clippy::print_stdout, reason = "it prints a table")]

mod backup;
mod findings;
mod form;
mod judge;
mod merge;
mod peers;
mod photo;
mod photographs;
mod store;

use std::path::Path;
use std::time::{Duration, Instant};

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    if let [what, studio, segments] = &arguments[..]
        && what == peers::CHILD
    {
        return peers::merge_segments(Path::new(studio), Path::new(segments));
    }
    println!(
        "{:<46}{:>11}{:>11}{:>11}{:>11}{:>7}  goal",
        "median and 95th percentile", "laydown", "p95", "peer", "p95", "ratio"
    );
    let named = |name: &str| arguments.iter().any(|argument| argument == name);
    let is_part_named = PARTS.iter().any(|(name, _)| named(name));
    PARTS.iter().filter(|(name, _)| !is_part_named || named(name)).for_each(|(_, rows)| rows());
}

/// The parts, which can be asked for by name: `cargo bench -p laydown-tests --bench bench -- merge`.
const PARTS: [(&str, fn()); 9] = [
    ("judge", judge::rows),
    ("form", form::rows),
    ("photo", photo::rows),
    ("store", store::rows),
    ("merge", merge::rows),
    ("backup", backup::rows),
    ("photographs", photographs::rows),
    ("findings", findings::rows),
    ("peers", peers::rows),
];

/// What a figure should be.
enum Goal {
    /// At most so long.
    Within(Duration),
    /// At most so many times its peer.
    Times(f64),
    /// Only of interest.
    None,
}

/// Sorted times of one side.
struct Times(Vec<Duration>);

impl Times {
    fn of(mut times: Vec<Duration>) -> Times {
        times.sort();
        Times(times)
    }

    fn at(&self, percent: usize) -> Duration {
        self.0[(self.0.len() - 1) * percent / 100]
    }
}

fn row(what: &str, ours: Vec<Duration>, peer: Vec<Duration>, goal: Goal) {
    let (ours, peer) = (Times::of(ours), Times::of(peer));
    let ratio = ours.at(50).as_secs_f64() / peer.at(50).as_secs_f64();
    let met = |met: bool| if met { "met" } else { "MISSED" };
    let goal = match goal {
        Goal::Within(most) => format!("{}: {}", written(most), met(ours.at(50) <= most)),
        Goal::Times(most) => format!("{most:.1} × peer: {}", met(ratio <= most)),
        Goal::None => String::new(),
    };
    let times = [ours.at(50), ours.at(95), peer.at(50), peer.at(95)].map(|time| format!("{:>11}", written(time)));
    println!("{what:<46}{}{ratio:>7.2}  {goal}", times.concat());
}

fn written(time: Duration) -> String {
    match time.as_secs_f64() * 1e6 {
        us if us < 1.0 => format!("{:.0} ns", us * 1e3),
        us if us < 100.0 => format!("{us:.2} µs"),
        us => format!("{:.3} ms", us / 1e3),
    }
}

fn timed(work: impl FnOnce()) -> Duration {
    let start = Instant::now();
    work();
    start.elapsed()
}
