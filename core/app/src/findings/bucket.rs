//! How the bucket of a glaze that is in use went: its SG, its flow and its volume over time, as words and charts.

use rusqlite::Connection;

use super::FindingsSection;
use super::chart::{
    AxisTick, ChartLine, ChartSpot, ChartView, Dot, LegendEntry, Mark, Span, Stroke, level, marked, number_axis,
    stroked,
};
use crate::contents::BucketHistory;
use crate::date_text::DAY_MS;
use crate::evidence::{bucket_in_use, sg_of};
use crate::in_words::name_of;
use crate::messages::findings as say;
use crate::{Now, Result};
use laydown_domain::glaze::flow_cup::FlowCup;
use laydown_domain::units::{SpecificGravity, Style};
use laydown_store::entity;

/// Fewer points than this make no chart.
const FEWEST: usize = 3;
/// The least span of the axis: a change that nobody can measure is not made large.
const LEAST_SG: f64 = 0.04;
const LEAST_SECONDS: f64 = 4.0;
const LEAST_LITRES: f64 = 1.0;

/// SG, flow and volume of the bucket in use, each where it was seen often enough.
pub(super) fn sections(
    conn: &Connection,
    now: Now,
    glaze: &entity::Glaze,
    style: &Style,
) -> Result<Vec<FindingsSection>> {
    let Some(bucket) = bucket_in_use(conn, glaze.id)? else { return Ok(Vec::new()) };
    let history = BucketHistory::read(conn, bucket.id)?;
    Ok([
        sg(now, glaze, &bucket, &history, style),
        flow(now, &bucket, &history, style),
        volume(now, &bucket, &history, style),
    ]
    .into_iter()
    .flatten()
    .collect())
}

/// Moments (unix ms) with what was seen then, oldest first.
type Seen = Vec<(i64, f64)>;

fn sg(
    now: Now,
    glaze: &entity::Glaze,
    bucket: &entity::Bucket,
    history: &BucketHistory,
    style: &Style,
) -> Option<FindingsSection> {
    let seen: Seen =
        history.checks.iter().rev().filter_map(|check| Some((check.at, sg_of(check).ok()?.sg.value()))).collect();
    let ((first_at, first), (_, last)) = ends(&seen)?;
    let working = glaze.working_sg_e5.and_then(|sg| SpecificGravity::from_hundred_thousandths(sg).ok());
    let number = |sg: f64| style.number(sg, 2);
    let words = match last - first {
        change if change.abs() < 0.01 => say::sg_steady(seen.len(), number(last)),
        change if change > 0.0 => say::sg_rose(number(first), now.day(first_at), number(last)),
        _ => say::sg_fell(number(first), now.day(first_at), number(last)),
    };
    let aim = working.map(|working| (working.value(), say::working_sg(style.specific_gravity(working))));
    Some(section(now, say::sg_title(&bucket.name), words, &seen, LEAST_SG, aim, style))
}

/// By the cup that was used last, since seconds of two cups compare with nothing.
fn flow(now: Now, bucket: &entity::Bucket, history: &BucketHistory, style: &Style) -> Option<FindingsSection> {
    let timed = || history.checks.iter().filter_map(|check| Some((check, check.flow_ms?)));
    let cup = timed().next()?.0.cup.as_deref();
    let seen: Seen = timed()
        .filter(|(check, _)| check.cup.as_deref() == cup)
        .map(|(check, ms)| (check.at, ms as f64 / 1e3))
        .collect();
    let seen: Seen = seen.into_iter().rev().collect();
    let ((first_at, first), (_, last)) = ends(&seen)?;
    let by = cup.map_or_else(say::any_cup, name_of::<FlowCup>);
    let words = say::flow_went(style.number(first, 0), now.day(first_at), style.number(last, 0), by);
    Some(section(now, say::flow_title(&bucket.name), words, &seen, LEAST_SECONDS, None, style))
}

/// By the levels that were read off.
fn volume(now: Now, bucket: &entity::Bucket, history: &BucketHistory, style: &Style) -> Option<FindingsSection> {
    let seen: Seen =
        history.levels(bucket).into_iter().rev().map(|(at, volume)| (at, volume.value() / 1_000.0)).collect();
    let ((first_at, first), (_, last)) = ends(&seen)?;
    let litres = |litres: f64| style.number(litres, 1);
    let words = say::volume_went(litres(first), now.day(first_at), litres(last));
    Some(section(now, say::volume_title(&bucket.name), words, &seen, LEAST_LITRES, None, style))
}

/// The first and the last, where there are enough for a chart.
fn ends(seen: &Seen) -> Option<((i64, f64), (i64, f64))> {
    Some((*seen.first()?, *seen.last()?)).filter(|_| seen.len() >= FEWEST)
}

/// A chart of what was seen over time, with its words; `aim`: a value to hold it against, and what it is called.
fn section(
    now: Now,
    title: String,
    words: String,
    seen: &Seen,
    least: f64,
    aim: Option<(f64, String)>,
    style: &Style,
) -> FindingsSection {
    let days = |at: i64| at as f64 / DAY_MS as f64;
    let across = Span::of(seen.iter().map(|(at, _)| days(*at)), 1.0);
    let up = Span::of(seen.iter().map(|(_, value)| *value).chain(aim.as_ref().map(|(value, _)| *value)), least);
    let spot = |(at, value): &(i64, f64)| ChartSpot { x: across.along(days(*at)), y: 1.0 - up.along(*value) };
    let mut lines = vec![ChartLine { stroke: Stroke::Average, spots: seen.iter().map(spot).collect() }];
    let mut legend: Vec<LegendEntry> = vec![marked(Mark::Coat, say::one_check())];
    if let Some((value, called)) = aim {
        lines.push(level(Stroke::Aim, 1.0 - up.along(value)));
        legend.push(stroked(Stroke::Aim, called));
    }
    let ends = [seen.first(), seen.last()].into_iter().flatten();
    let chart = ChartView {
        title: title.clone(),
        words: words.clone(),
        across_title: say::over_time(),
        across: ends.map(|(at, _)| AxisTick { at: across.along(days(*at)), words: now.day(*at) }).collect(),
        up: number_axis(up, style).into_iter().rev().map(|tick| AxisTick { at: 1.0 - tick.at, ..tick }).collect(),
        bands: Vec::new(),
        lines,
        dots: seen.iter().map(|seen| Dot { at: spot(seen), mark: Mark::Coat }).collect(),
        legend,
    };
    FindingsSection { title, words, lines: Vec::new(), chart: Some(chart), answer: String::new() }
}
