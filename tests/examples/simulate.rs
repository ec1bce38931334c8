//! Targets in invented studios whose truth is known: error, half-width and coverage beside what the best evidence alone gives.
//! `simulate` reports, on seeds that nobody looked at while constants were chosen; `simulate choose` shows what they were chosen
//! by, on other seeds.
#![allow(clippy::print_stdout, reason = "it prints the figures")]

use laydown_domain::learning::pooled::Assumptions;
use laydown_tests::simulated::{
    ClosedLoop, Habits, HandKnown, Miss, OpenLoop, Steering, Tally, closed_loop, coats_to_alarm, foretold, open_loop,
    summary,
};

const OPEN: u64 = 500;
const CLOSED: u64 = 200;
const POTS: usize = 40;
const LOADS: usize = 6;
const CHOOSE: u64 = 0;
/// So many of them are cross-validated.
const CHOOSE_BY: u64 = 200;
const REPORT: u64 = 2_000_000;
/// One rating in fifty names a neighbour.
/// The scatter is that of the studios in `tests/oracle/windows.py`.
const USUAL: Habits = Habits { one_class: false, strays: (0.05, 0.30), weights: 0.0, ratings: 0.02 };
const SIZES: Habits = Habits { one_class: true, ..USUAL };
const TYPOS: Habits = Habits { weights: 0.03, ..USUAL };

fn main() {
    let word = std::env::args().nth(1);
    let assume = Assumptions::default();
    match word.as_deref() {
        Some("choose") => choose(),
        Some("look") => report(CHOOSE, &assume),
        _ => {
            report(REPORT, &assume);
            drift(REPORT);
        }
    }
}

fn line(what: &str, misses: &[Miss]) {
    let (error, half_width, covered) = summary(misses);
    let mean = misses.iter().map(|miss| miss.error.abs()).sum::<f64>() / misses.len() as f64;
    println!(
        "{what:<54} error {:5.1}% (mean {:4.1}%)  half-width ±{:5.1}%  covers {:5.1}%",
        error * 100.0,
        mean * 100.0,
        half_width * 100.0,
        covered * 100.0
    );
}

fn open(from: u64, pots: usize, habits: Habits, assume: &Assumptions) -> Vec<OpenLoop> {
    (from..from + OPEN).map(|seed| open_loop(seed, pots, habits, assume)).collect()
}

fn report(from: u64, assume: &Assumptions) {
    for (what, habits, pots) in [
        ("control alone", USUAL, 0),
        ("8 pots", USUAL, 8),
        ("40 pots, all classes", USUAL, POTS),
        ("40 pots, all classes, 3% typos", TYPOS, POTS),
        ("40 pots, sizes of a class", SIZES, POTS),
        ("40 pots, sizes of a class, 3% typos", Habits { weights: 0.03, ..SIZES }, POTS),
        ("40 pots, all classes, steady hands", Habits { strays: (0.04, 0.16), ..USUAL }, POTS),
        ("200 pots, all classes", USUAL, 200),
    ] {
        let done = open(from, pots, habits, assume);
        let pooled: Vec<Miss> = done.iter().map(|done| done.pooled).collect();
        let before: Vec<Miss> = done.iter().map(|done| done.before).collect();
        line(&format!("open, {what}: pooled"), &pooled);
        line(&format!("open, {what}: before"), &before);
    }
    for (what, habits) in [("", USUAL), (", sizes of a class", SIZES), (", 3% typos", TYPOS)] {
        for (who, steering) in
            [("pooled", Steering::Pooled), ("before", Steering::BestEvidence), ("truth", Steering::Truth)]
        {
            let run = |seed| closed_loop(seed, LOADS, habits, steering, assume);
            let done: Vec<ClosedLoop> = (from..from + CLOSED).map(run).collect();
            let share = |of: fn(&ClosedLoop) -> Tally| {
                let tallies = || done.iter().map(of);
                let (right, coats) = (
                    tallies().map(|tally| tally.right).sum::<usize>(),
                    tallies().map(|tally| tally.coats).sum::<usize>(),
                );
                100.0 * right as f64 / coats as f64
            };
            if steering != Steering::Truth {
                let loads: Vec<Miss> = done.iter().flat_map(|done| done.loads.iter().copied()).collect();
                line(&format!("closed{what}, while it steers: {who}"), &loads);
                let last: Vec<Miss> = done.iter().map(|done| done.last).collect();
                line(&format!("closed{what}, other size in the end: {who}"), &last);
            }
            println!(
                "closed{what}, pots right: {who}  {:.1}%, second half {:.1}%",
                share(|done| done.pots),
                share(|done| done.later)
            );
            if steering == Steering::Pooled {
                for (at, name) in ["within", "probably within", "short", "over", "cannot tell"].iter().enumerate() {
                    let tallies = || done.iter().map(|done| done.verdicts[at]);
                    let (right, coats) = (
                        tallies().map(|tally| tally.right).sum::<usize>(),
                        tallies().map(|tally| tally.coats).sum::<usize>(),
                    );
                    println!(
                        "  said {name:<16} of {coats:5} coats, right {:.1}%",
                        100.0 * right as f64 / coats.max(1) as f64
                    );
                }
            }
        }
    }
}

/// How soon a drift of 5% is seen by a hand that scatters by 5%, and how often one is seen that is none.
fn drift(from: u64) {
    const RUNS: u64 = 4_000;
    const LONG: usize = 20_000;
    for (what, known) in [
        ("known and normal", HandKnown::Exactly),
        ("from 20 coats before", HandKnown::From(20)),
        ("from 60 coats before", HandKnown::From(60)),
    ] {
        let mut seen: Vec<usize> = (from..from + RUNS).map(|seed| coats_to_alarm(seed, 0.05, known, LONG)).collect();
        seen.sort_unstable();
        let quiet = (from..from + RUNS / 4).map(|seed| coats_to_alarm(seed, 0.0, known, 100)).filter(|at| *at < 100);
        let alarmed = quiet.count() as f64 / (RUNS / 4) as f64;
        println!(
            "drift, spread {what}: 5% seen after {} coats (median), 90% of them within {}; without any, alarms in 100 coats: {:.2}",
            seen[seen.len() / 2],
            seen[seen.len() * 9 / 10],
            // Alarms come at a rate, so that some of a hundred coats would have more than one.
            -(1.0 - alarmed).ln()
        );
    }
}

/// Cross-validation: each kiln load foretold from those before it, with one assumption changed at a time.
fn choose() {
    let usual = Assumptions::default();
    let half_life = [120.0, 250.0, 500.0, 1_000.0, 1e9]
        .map(|half_life| (format!("half-life {half_life} days"), Assumptions { half_life, ..usual }));
    let steepness = [14.0, 20.0, 28.0, 40.0]
        .map(|steepness| (format!("steepness {steepness}"), Assumptions { steepness, ..usual }));
    let lapse = [0.01, 0.03, 0.06].map(|lapse| (format!("lapse {lapse}"), Assumptions { lapse, ..usual }));
    let width = [0.3, 0.5, 0.8]
        .map(|half_width_sd| (format!("half-width known to {half_width_sd}"), Assumptions { half_width_sd, ..usual }));
    for (what, assume) in half_life.into_iter().chain(steepness).chain(lapse).chain(width) {
        let mean = (0..CHOOSE_BY).map(|seed| foretold(seed, 56, TYPOS, &assume)).sum::<f64>() / CHOOSE_BY as f64;
        let done: Vec<Miss> = open(CHOOSE, POTS, TYPOS, &assume).iter().map(|done| done.pooled).collect();
        line(&format!("{what}, mean log chance {mean:.5}"), &done);
    }
}
