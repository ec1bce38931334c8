//! Whether coats keep to their aims: a drift is said until the potter has answered it, with what changed near it.

use rusqlite::Connection;
use uuid::Uuid;

use super::FindingsSection;
use super::chart::{
    AxisTick, Band, ChartLine, ChartSpot, ChartView, Dot, Mark, Span, Stroke, banded, level, marked, stroked, upright,
};
use super::fired::Weighed;
use super::text::sentences;
use crate::date_text::sentence_case;
use crate::evidence::sg_in_words;
use crate::in_words::StyleWords;
use crate::lists::and;
use crate::messages::findings as say;
use crate::{Now, Result};
use laydown_domain::learning::control_chart::{Individuals, WEIGHT, individuals, moving_average};
use laydown_domain::learning::cusum::{Alarm, Drift, Side, drift, new_near};
use laydown_domain::learning::observation::ENOUGH;
use laydown_domain::units::Style;
use laydown_store::entity::{self, Entity};
use laydown_store::query;

/// How many of the newest coats a drift is looked for in, unless one was answered later.
const LOOKED_THROUGH: usize = 400;
/// How many of the newest coats the chart shows.
const SHOWN: usize = 30;
/// What came up within so many coats of where a drift began is said to be near it. Common practice, no source.
const NEAR: usize = 3;
/// How many checks of a bucket are looked through for one that is near.
const CHECKS: u32 = 60;

/// The coats that count, the oldest first, with what they say.
pub(super) struct Series<'a> {
    coats: Vec<&'a Weighed>,
    ratios: Vec<f64>,
    found: Drift,
}

impl<'a> Series<'a> {
    /// Of coats that come newest first; `None` while there are too few since the potter last answered a drift.
    pub(super) fn of(glaze: &entity::Glaze, coats: &'a [Weighed]) -> Option<Series<'a>> {
        let counts = |coat: &&Weighed| {
            coat.aim_mg > 0 && coat.net_mg > 0 && glaze.drift_answered_at.is_none_or(|answered| coat.at > answered)
        };
        let mut coats: Vec<&Weighed> = coats.iter().filter(counts).take(LOOKED_THROUGH).collect();
        coats.reverse();
        let ratios: Vec<f64> = coats.iter().map(|coat| coat.net_mg as f64 / coat.aim_mg as f64).collect();
        let found = drift(&ratios).filter(|_| ratios.len() >= ENOUGH)?;
        Some(Series { coats, ratios, found })
    }

    /// "Starting 3 days ago: 5 coats average 6% over the aim."; `None` while there is no drift.
    pub(super) fn alarm(&self, now: Now, style: &Style) -> Option<String> {
        let alarm = self.found.alarm?;
        let since = now.days_ago(self.coats.get(alarm.since)?.at);
        let coats = self.found.until + 1 - alarm.since;
        let percent = style.percent(self.found.mean_off.abs(), 0);
        let words = match alarm.side {
            Side::High => say::drift_over(coats, since, percent),
            Side::Low => say::drift_short(coats, since, percent),
        };
        Some(sentences([Some(words), self.found.is_over.then(say::drift_is_over)]))
    }

    /// What a potter reads of it; `None` where all coats are alike.
    pub(super) fn section(&self, conn: &Connection, now: Now, style: &Style) -> Result<Option<FindingsSection>> {
        let shown = &self.ratios[self.ratios.len().saturating_sub(SHOWN)..];
        let Some(chart) = individuals(shown).filter(|chart| chart.sd > 0.0) else { return Ok(None) };
        let words = match self.found.alarm {
            Some(alarm) => {
                let advice = match alarm.side {
                    Side::High => say::check_when_over(),
                    Side::Low => say::check_when_short(),
                };
                sentences([self.alarm(now, style), self.near(conn, &alarm, style)?, Some(advice)])
            }
            None => self.steady(shown, &chart, style),
        };
        let answer = if self.found.alarm.is_some() { say::drift_noted() } else { String::new() };
        let chart = self.chart(shown, &chart, &words, now, style);
        Ok(Some(FindingsSection { title: say::aims_title(), words, lines: Vec::new(), chart: Some(chart), answer }))
    }

    fn steady(&self, shown: &[f64], chart: &Individuals, style: &Style) -> String {
        let (coats, off) = (shown.len(), chart.centre - 1.0);
        let percent = style.percent(off.abs(), 0);
        let mean = match off {
            _ if percent == style.percent(0.0, 0) => say::aims_on(coats),
            off if off > 0.0 => say::aims_over(coats, percent),
            _ => say::aims_short(coats, percent),
        };
        let outside = shown.iter().filter(|ratio| is_out(**ratio, chart)).count();
        sentences([Some(mean), Some(say::aims_steady()), (outside > 0).then(|| say::aims_outside(outside))])
    }

    /// What was new near where the drift began: said as it is, since one beside the other is no cause.
    fn near(&self, conn: &Connection, alarm: &Alarm, style: &Style) -> Result<Option<String>> {
        if alarm.since == 0 {
            return Ok(None);
        }
        let mut new = Vec::new();
        for id in self.new_near(alarm, |coat| coat.bucket) {
            new.extend(entity::Bucket::load(conn, id)?.map(|bucket| say::near_bucket(&bucket.name)));
        }
        for id in self.new_near(alarm, |coat| coat.scale) {
            new.extend(entity::Scale::load(conn, id)?.map(|scale| say::near_scale(&scale.name)));
        }
        let bodies = self.coats.iter().map(|coat| Ok(entity::Form::load(conn, coat.form)?.and_then(|form| form.body)));
        for id in new_near(&bodies.collect::<Result<Vec<_>>>()?, alarm.since, NEAR).into_iter().flatten() {
            new.extend(entity::Body::load(conn, id)?.map(|body| say::near_body(&body.name)));
        }
        let hands: Vec<Option<&String>> = self.coats.iter().map(|coat| coat.hand.as_ref()).collect();
        new.extend(new_near(&hands, alarm.since, NEAR).into_iter().flatten().map(say::near_hand));
        let at = |place: usize| self.coats.get(place.min(self.coats.len() - 1)).map(|coat| coat.at);
        let (from, to) = (at(alarm.since.saturating_sub(NEAR)), at(alarm.since + NEAR));
        let bucket = self.coats.get(alarm.since).map(|coat| coat.bucket);
        if let (Some(from), Some(to), Some(bucket)) = (from, to, bucket) {
            let checks = query::checks(conn, bucket, CHECKS)?;
            let near = checks.iter().rev().filter(|check| (from..=to).contains(&check.at));
            new.extend(near.map(|check| say::near_check(sg_in_words(style, check.specific_gravity_e5))));
        }
        Ok(Some(if new.is_empty() { say::nothing_near() } else { say::near(and(&new)) }))
    }

    fn new_near(&self, alarm: &Alarm, of: impl Fn(&Weighed) -> Uuid) -> Vec<Uuid> {
        new_near(&self.coats.iter().map(|coat| of(coat)).collect::<Vec<_>>(), alarm.since, NEAR)
    }

    fn chart(&self, shown: &[f64], chart: &Individuals, words: &str, now: Now, style: &Style) -> ChartView {
        let before = self.ratios.len() - shown.len();
        let average = moving_average(shown, 1.0, chart.sd, WEIGHT);
        let limits = [average.limits.0, average.limits.1];
        let span = Span::of(shown.iter().copied().chain(limits).map(|ratio| ratio - 1.0), 0.1);
        let y = |ratio: f64| 1.0 - span.along(ratio - 1.0);
        let x = |at: usize| (at as f64 + 0.5) / shown.len() as f64;
        let dots = shown.iter().enumerate().map(|(at, ratio)| Dot {
            at: ChartSpot { x: x(at), y: y(*ratio) },
            mark: if is_out(*ratio, chart) { Mark::Outlier } else { Mark::Coat },
        });
        let path = average.after.iter().enumerate().map(|(at, after)| ChartSpot { x: x(at), y: y(*after) });
        let mut lines = vec![level(Stroke::Aim, y(1.0)), ChartLine { stroke: Stroke::Average, spots: path.collect() }];
        let mut legend = vec![
            marked(Mark::Coat, say::a_coat()),
            stroked(Stroke::Average, say::moving_average()),
            stroked(Stroke::Aim, say::the_aim()),
            banded(say::within_limits()),
        ];
        if shown.iter().any(|ratio| is_out(*ratio, chart)) {
            legend.insert(1, marked(Mark::Outlier, say::far_off()));
        }
        // Between the last coat before it and its first one.
        if let Some(since) =
            self.found.alarm.and_then(|alarm| alarm.since.checked_sub(before)).filter(|since| *since > 0)
        {
            lines.push(upright(Stroke::Edge, since as f64 / shown.len() as f64));
            legend.push(stroked(Stroke::Edge, say::drift_began()));
        }
        let when = |at: usize| self.coats.get(before + at).map(|coat| sentence_case(&now.days_ago(coat.at)));
        let percent = |off: f64| match off {
            off if off.abs() < 5e-4 => say::aim(),
            off if off > 0.0 => format!("+{}", style.percent(off, 0)),
            off => style.percent(off, 0),
        };
        let ends = [0, shown.len() - 1];
        let numbers = span.round_numbers(5).into_iter().rev();
        ChartView {
            title: say::aims_title(),
            words: words.to_owned(),
            across_title: say::aims_axis(shown.len()),
            across: ends.map(|at| AxisTick { at: x(at), words: when(at).unwrap_or_default() }).to_vec(),
            up: numbers.map(|off| AxisTick { at: y(1.0 + off), words: percent(off) }).collect(),
            bands: vec![Band {
                from: ChartSpot { x: 0.0, y: y(average.limits.1) },
                to: ChartSpot { x: 1.0, y: y(average.limits.0) },
            }],
            lines,
            dots: dots.collect(),
            legend,
        }
    }
}

fn is_out(ratio: f64, chart: &Individuals) -> bool {
    ratio < chart.limits.0 || ratio > chart.limits.1
}
