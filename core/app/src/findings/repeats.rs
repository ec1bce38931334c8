//! How well the scales repeat that a glaze is weighed on, test by test.

use std::collections::BTreeSet;

use rusqlite::Connection;
use uuid::Uuid;

use super::FindingsSection;
use super::chart::{AxisTick, ChartLine, ChartSpot, ChartView, Dot, Mark, Span, Stroke, level, marked, stroked};
use super::fired::Weighed;
use crate::evidence::{scale_of, usable};
use crate::messages::findings as say;
use crate::{Now, Result};
use laydown_domain::learning::repeatability::Repeatability;
use laydown_domain::units::{Grams, Style};
use laydown_store::entity::{self, Entity as _};
use laydown_store::query;

/// The most tests that a chart shows: the newest.
const SHOWN: u32 = 30;

/// A section for each scale in the glaze's coats that was tested twice or more.
pub(super) fn sections(conn: &Connection, now: Now, coats: &[Weighed], style: &Style) -> Result<Vec<FindingsSection>> {
    let scales: BTreeSet<Uuid> = coats.iter().map(|coat| coat.scale).collect();
    let mut sections = Vec::new();
    for id in scales {
        let Some(row) = entity::Scale::load(conn, id)?.filter(|scale| !scale.gone) else { continue };
        let Some(scale) = usable(scale_of(&row))? else { continue };
        let mut tests = Vec::new();
        for test in query::scale_tests(conn, id, SHOWN)?.into_iter().filter(|test| !test.gone) {
            let readings = test.readings.iter().flat_map(|all| &all.0).copied().map(Grams::from_milligrams);
            let found = Repeatability::of(&readings.collect::<Vec<_>>(), &scale).ok();
            tests.extend(found.map(|found| (test.at, found)));
        }
        tests.reverse();
        sections.extend(section(&tests, &row.name, scale.step, now, style));
    }
    Ok(sections)
}

/// Of tests that come oldest first.
fn section(
    tests: &[(i64, Repeatability)],
    name: &str,
    step: Grams,
    now: Now,
    style: &Style,
) -> Option<FindingsSection> {
    let [before @ .., (_, latest)] = tests else { return None };
    let (_, previous) = before.last()?;
    let fine = |grams: Grams| style.mass(grams, step / 10.0);
    // Two intervals that do not meet differ by more than chance.
    let words = if latest.between.0 > previous.between.1 {
        say::repeats_worse_now(fine(latest.standard_deviation), fine(previous.standard_deviation))
    } else if latest.between.1 < previous.between.0 {
        say::repeats_better_now(fine(latest.standard_deviation), fine(previous.standard_deviation))
    } else {
        say::repeats_as_before(fine(latest.standard_deviation))
    };
    let title = say::repeats_title(name);
    let grams = |grams: Grams| grams.value() / style.mass.grams();
    let most = tests.iter().map(|(_, found)| grams(found.between.1)).fold(grams(step), f64::max);
    let span = Span::of([0.0, most], grams(step));
    let y = |value: f64| 1.0 - span.along(value);
    let x = |at: usize| (at as f64 + 0.5) / tests.len() as f64;
    let spot = |at: usize, value: Grams| ChartSpot { x: x(at), y: y(grams(value)) };
    let reaches = tests.iter().enumerate().map(|(at, (_, found))| ChartLine {
        stroke: Stroke::Edge,
        spots: vec![spot(at, found.between.1), spot(at, found.between.0)],
    });
    let ends = [0, tests.len() - 1];
    let chart = ChartView {
        title: title.clone(),
        words: words.clone(),
        across_title: say::tests_axis(),
        across: ends.map(|at| AxisTick { at: x(at), words: now.day(tests[at].0) }).to_vec(),
        up: span
            .round_numbers(4)
            .into_iter()
            .filter(|value| *value >= 0.0)
            .rev()
            .map(|value| AxisTick { at: y(value), words: fine(Grams::new(value * style.mass.grams())) })
            .collect(),
        bands: Vec::new(),
        lines: reaches.chain([level(Stroke::Aim, y(grams(step)))]).collect(),
        dots: tests
            .iter()
            .enumerate()
            .map(|(at, (_, found))| Dot { at: spot(at, found.standard_deviation), mark: Mark::Coat })
            .collect(),
        legend: vec![
            marked(Mark::Coat, say::a_test()),
            stroked(Stroke::Edge, say::test_reaches()),
            stroked(Stroke::Aim, say::the_step()),
        ],
    };
    Some(FindingsSection { title, words, lines: Vec::new(), chart: Some(chart), answer: String::new() })
}
