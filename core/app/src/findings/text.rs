//! The findings in words and as charts.

use std::collections::BTreeSet;

use rusqlite::Connection;
use uuid::Uuid;

use super::chart::{
    AxisTick, Band, ChartLine, ChartSpot, ChartView, Dot, LegendEntry, Mark, Span, Stroke, banded, laydown_axis, level,
    marked, spread, stroked, upright,
};
use super::fired::Weighed;
use super::{Group, starting};
use crate::date_text::{count, sentence_case};
use crate::evidence::{controls, tiles};
use crate::{Line, Now, Result};
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::cone::Cone;
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::control_chart::{Trend, WEIGHT, individuals, moving_average};
use laydown_domain::learning::fault::{Share, Side, shares};
use laydown_domain::learning::observation::{ENOUGH, FiredObservation};
use laydown_domain::learning::spread::Spread;
use laydown_domain::learning::window::{SURE, Window, WindowEstimate};
use laydown_domain::units::{Grams, Laydown, Style};
use laydown_store::entity::{self, Entity};

/// Which pots are spoken of: "Cone 6, inside". Says what was put together.
pub(super) fn scope(conn: &Connection, observations: &[FiredObservation]) -> Result<String> {
    let codes: BTreeSet<&str> = observations.iter().map(|observation| observation.cone.as_str()).collect();
    // Cones are in order of heat-work, which their names are not.
    let mut cones: Vec<&str> = codes.into_iter().collect();
    cones.sort_by_key(|code| code.parse::<Cone>().ok());
    let zones: BTreeSet<ZoneKind> = observations.iter().map(|observation| observation.zone).collect();
    let bodies: BTreeSet<_> = observations.iter().map(|observation| observation.body).collect();
    let cone = match cones.as_slice() {
        [one] => format!("cone {one}"),
        many => format!("cones {} together", listed(many)),
    };
    let zones: Vec<&str> = zones.iter().map(|zone| zone.name()).collect();
    let zone = match zones.as_slice() {
        [one] => (*one).to_owned(),
        many => format!("{} together", listed(many)),
    };
    let mut parts = vec![cone, zone];
    let mut names = Vec::new();
    for body in &bodies {
        let body = body.map(|id| entity::Body::load(conn, id)).transpose()?.flatten();
        names.push(body.map_or_else(|| "no body named".to_owned(), |body| body.name));
    }
    match names.as_slice() {
        [_] if bodies.contains(&None) => {}
        [one] => parts.push(one.clone()),
        many => parts.push(format!("{} bodies together", many.len())),
    }
    Ok(sentence_case(&parts.join(", ")))
}

/// "5 and 6", "5, 6 and 7".
fn listed(items: &[&str]) -> String {
    match items.split_last() {
        Some((last, [])) => (*last).to_owned(),
        Some((last, before)) => format!("{} and {last}", before.join(", ")),
        None => String::new(),
    }
}

fn that_came_out(
    observations: &[FiredObservation],
    thickness: Thickness,
) -> impl Iterator<Item = &FiredObservation> + Clone {
    observations.iter().filter(move |observation| observation.thickness == thickness)
}

fn how_many(observations: &[FiredObservation], thickness: Thickness) -> usize {
    that_came_out(observations, thickness).count()
}

fn pots(number: usize) -> String {
    count(number as i64, "pot", "pots")
}

/// The least and the most laydown among some pots.
fn ends<'a>(observations: impl IntoIterator<Item = &'a FiredObservation>) -> (Laydown, Laydown) {
    observations.into_iter().fold((Laydown::new(f64::MAX), Laydown::ZERO), |(least, most), observation| {
        (least.min(observation.laydown), most.max(observation.laydown))
    })
}

/// From the least to the most laydown among the pots, or the one if there is only one.
fn between<'a>(observations: impl IntoIterator<Item = &'a FiredObservation>, style: &Style) -> String {
    let (least, most) = ends(observations);
    range(least, most, style)
}

/// "5.1 to 6.4 g per 100 cm²".
fn range(from: Laydown, to: Laydown, style: &Style) -> String {
    let (low, high) = (style.laydown_number(from), style.laydown(to));
    if style.laydown(from) == high { high } else { format!("{low} to {high}") }
}

/// What the pots say, in a sentence or two.
pub(super) fn sentence(observations: &[FiredObservation], estimate: &WindowEstimate, style: &Style) -> String {
    let (thin, right, thick) = (
        how_many(observations, Thickness::Thin),
        how_many(observations, Thickness::Right),
        how_many(observations, Thickness::Thick),
    );
    let all = pots(observations.len());
    match estimate {
        WindowEstimate::TooFew => {
            let counts = counted(&[(thin, "thin"), (right, "right"), (thick, "thick")]);
            format!("Too few to say: {all} so far, {counts}. {ENOUGH} make a first finding.")
        }
        WindowEstimate::NoneRight => {
            let counts = counted(&[(thin, "thin"), (thick, "thick")]);
            let next = match (thin, thick) {
                (_, 0) => " Try more.",
                (0, _) => " Try less.",
                _ => "",
            };
            format!("None of {all} came out right, from {}: {counts}.{next}", between(observations, style))
        }
        WindowEstimate::Mixed => format!(
            "Results overlap, from {}, {all}. The amount alone does not decide here: check the bucket's SG, the firing and the place in the kiln.",
            between(observations, style)
        ),
        WindowEstimate::Window(Window { from: Some(from), to: Some(to), .. }) => format!(
            "Right between {} and {}, from {all}. Below it went thin, above it thick.",
            style.laydown_number(*from),
            style.laydown(*to)
        ),
        WindowEstimate::Window(Window { from: Some(from), to: None, .. }) => format!(
            "Right from {} up, from {all}. Below it went thin; how much is too much is not known yet.",
            style.laydown(*from)
        ),
        WindowEstimate::Window(Window { from: None, to: Some(to), .. }) => format!(
            "Right up to {}, from {all}. Above it went thick; how little is too little is not known yet.",
            style.laydown(*to)
        ),
        WindowEstimate::Window(Window { from: None, to: None, .. }) => {
            let came = if right == observations.len() {
                format!("All {right}")
            } else {
                format!("{right} of {}", observations.len())
            };
            format!(
                "{came} pots came out right, from {}. How much less or more would do is not known yet.",
                between(observations, style)
            )
        }
    }
}

/// "2 thin, 5 right", what there is none of left out.
fn counted(counts: &[(usize, &str)]) -> String {
    let some = counts.iter().filter(|(number, _)| *number > 0);
    some.map(|(number, word)| format!("{number} {word}")).collect::<Vec<_>>().join(", ")
}

/// Where the best lies, and how sure that is; empty where it is not known.
pub(super) fn sureness(window: &Window, style: &Style) -> String {
    window.best.map_or_else(String::new, |best| {
        let (low, high) = best.between;
        format!(
            "Best near {}, most likely between {} and {}. In the window at least {} of 100 pots should come out right.",
            style.laydown(best.laydown),
            style.laydown_number(low),
            style.laydown_number(high),
            (SURE * 100.0).round()
        )
    })
}

/// How the height of the chart of a window is shared, from the top.
const LANES: [(Thickness, Mark, f64); 3] = [
    (Thickness::Thick, Mark::Thick, 1.0 / 6.0),
    (Thickness::Right, Mark::Right, 0.5),
    (Thickness::Thin, Mark::Thin, 5.0 / 6.0),
];
/// How near two dots may lie, across and up.
const DOTS_APART: (f64, f64) = (0.035, 0.055);
/// Dots are moved up or down by so many steps at most.
const MOST_STEPS: i32 = 2;
/// An axis of laydowns shows at least so much, g per 100 cm².
const LEAST_SHOWN: f64 = 1.0;

/// Every pot by its laydown, in three rows: thick, right, thin.
pub(super) fn window_chart(
    scope: &str,
    sentence: &str,
    observations: &[FiredObservation],
    window: Option<&Window>,
    aim: Laydown,
    style: &Style,
) -> ChartView {
    let axis = |laydown: Laydown| style.in_laydown_units(laydown);
    let span = Span::of(
        observations.iter().map(|observation| axis(observation.laydown)).chain([axis(aim)]),
        axis(Laydown::new(LEAST_SHOWN)),
    );
    let mut dots = Vec::new();
    for (thickness, mark, lane) in LANES {
        let xs: Vec<f64> =
            that_came_out(observations, thickness).map(|observation| span.along(axis(observation.laydown))).collect();
        let moved = spread(&xs, DOTS_APART.0, MOST_STEPS);
        dots.extend(
            xs.iter()
                .zip(moved)
                .map(|(x, steps)| Dot { at: ChartSpot { x: *x, y: lane + f64::from(steps) * DOTS_APART.1 }, mark }),
        );
    }
    // An end that is not known is painted as far as pots came out right.
    let (least, most) = ends(that_came_out(observations, Thickness::Right));
    let end = |laydown: Option<Laydown>, open: Laydown| span.along(axis(laydown.unwrap_or(open)));
    let known = window.filter(|window| window.from.is_some() || window.to.is_some());
    let bands = known.map(|window| Band {
        from: ChartSpot { x: end(window.from, least), y: 0.0 },
        to: ChartSpot { x: end(window.to, most), y: 1.0 },
    });
    let best = window.and_then(|window| window.best).map(|best| best.laydown);
    let mut lines = vec![upright(Stroke::Aim, span.along(axis(aim)))];
    lines.extend(best.map(|best| upright(Stroke::Best, span.along(axis(best)))));
    let mut legend: Vec<LegendEntry> = LANES
        .iter()
        .filter(|(thickness, ..)| how_many(observations, *thickness) > 0)
        .map(|(thickness, mark, _)| marked(*mark, format!("Came out {}", thickness.name())))
        .collect();
    legend.extend(bands.as_ref().map(|_| banded("The window")));
    legend.extend(best.map(|best| stroked(Stroke::Best, format!("Best, {}", style.laydown_number(best)))));
    legend.push(stroked(Stroke::Aim, format!("Aimed at today, {}", style.laydown_number(aim))));
    let of_each: Vec<String> = [Thickness::Thin, Thickness::Right, Thickness::Thick]
        .into_iter()
        .filter_map(|thickness| {
            let these = that_came_out(observations, thickness);
            let number = these.clone().count();
            (number > 0).then(|| format!("{number} {} at {}", thickness.name(), between(these, style)))
        })
        .collect();
    ChartView {
        title: scope.to_owned(),
        words: format!("{scope}. {sentence} {}. Aimed at today: {}.", of_each.join("; "), style.laydown(aim)),
        across_title: format!("Laydown, {}", style.laydown_unit()),
        across: laydown_axis(span, style),
        up: LANES
            .iter()
            .map(|(thickness, _, at)| AxisTick { at: *at, words: sentence_case(thickness.name()) })
            .collect(),
        bands: bands.into_iter().collect(),
        lines,
        dots,
        legend,
    }
}

/// The faults, each with how many pots had it: on each side of the window where it has both ends.
pub(super) fn fault_lines(observations: &[FiredObservation], window: Option<&Window>) -> Vec<Line> {
    let of = |share: Share| format!("{} of {}", share.with, share.of);
    let line = |shares: &laydown_domain::learning::fault::Shares| {
        let mut value = match shares.by_side {
            Some([below, within, above]) => {
                format!("{} below the window, {} within, {} above.", of(below), of(within), of(above))
            }
            None => format!("{} pots.", of(shares.all)),
        };
        value += match shares.leans {
            Some(Side::Below) => " More often with less glaze.",
            Some(Side::Within) => " More often within than outside.",
            Some(Side::Above) => " More often with more glaze.",
            None => "",
        };
        Line { label: sentence_case(shares.fault.name()), value }
    };
    shares(observations, window).iter().map(line).collect()
}

/// What targets of one zone rest on today.
pub(super) struct Rest {
    pub(super) zone: ZoneKind,
    pub(super) laydown: Laydown,
    source: Source,
}

/// From the best down.
enum Source {
    Controls(usize),
    Tiles(usize),
    Starting,
}

impl Rest {
    pub(super) fn is_starting(&self) -> bool {
        matches!(self.source, Source::Starting)
    }

    pub(super) fn what(&self) -> &'static str {
        match self.source {
            Source::Controls(_) => "your control pieces",
            Source::Tiles(_) => "your test tiles",
            Source::Starting => "targets",
        }
    }

    pub(super) fn line(&self, style: &Style) -> Line {
        let laydown = style.laydown(self.laydown);
        let value = match self.source {
            Source::Controls(1) => format!("1 control piece, {laydown}"),
            Source::Controls(pieces) => format!("{pieces} control pieces, {laydown} on average"),
            Source::Tiles(1) => format!("1 test tile, {laydown}"),
            Source::Tiles(tiles) => format!("{tiles} test tiles, {laydown} on average"),
            Source::Starting => format!("No control piece and no tile yet: the starting value, {laydown}"),
        };
        Line { label: sentence_case(self.zone.name()), value }
    }
}

/// What targets rest on, for each zone on which the glaze was used.
pub(super) fn rests(
    conn: &Connection,
    glaze: &entity::Glaze,
    coats: &[Weighed],
    groups: &[Group],
) -> Result<Vec<Rest>> {
    let looked_at = groups.iter().flat_map(|group| &group.observations).map(|observation| observation.zone);
    let zones: BTreeSet<ZoneKind> = coats.iter().map(|coat| coat.zone).chain(looked_at).collect();
    let tiles = tiles(conn, glaze)?;
    let mean = |laydowns: &[f64]| {
        Laydown::new((laydowns.iter().map(|laydown| laydown.ln()).sum::<f64>() / laydowns.len() as f64).exp())
    };
    let rest = |zone: ZoneKind| -> Result<Rest> {
        // Whether they are of the form that is weighed next is all one here.
        let controls = controls(conn, glaze.id, zone, Uuid::nil())?;
        let laydowns = controls.iter().map(|known| Laydown::of(known.solids.dry(known.wet), known.area));
        let laydowns: Vec<f64> = laydowns.filter(|laydown| laydown.is_positive()).map(Laydown::value).collect();
        if !laydowns.is_empty() {
            return Ok(Rest { zone, laydown: mean(&laydowns), source: Source::Controls(laydowns.len()) });
        }
        let of_tiles: Vec<f64> =
            tiles.iter().filter(|tile| tile.laydown.is_positive()).map(|tile| tile.laydown.value()).collect();
        if !of_tiles.is_empty() {
            return Ok(Rest { zone, laydown: mean(&of_tiles), source: Source::Tiles(of_tiles.len()) });
        }
        Ok(Rest { zone, laydown: starting(glaze), source: Source::Starting })
    };
    zones.into_iter().map(rest).collect()
}

/// How many of the newest coats the chart of the aims shows.
const DRIFT_OVER: usize = 30;

/// Whether the newest coats keep to their aims; `None` for too few, or where all are alike.
pub(super) fn drift_chart(coats: &[Weighed], now: Now, style: &Style) -> Option<ChartView> {
    let mut newest: Vec<(i64, f64)> = coats
        .iter()
        .filter(|coat| coat.aim_mg > 0 && coat.net_mg > 0)
        .map(|coat| (coat.at, coat.net_mg as f64 / coat.aim_mg as f64))
        .take(DRIFT_OVER)
        .collect();
    newest.reverse();
    let ratios: Vec<f64> = newest.iter().map(|(_, ratio)| *ratio).collect();
    let chart = individuals(&ratios).filter(|chart| ratios.len() >= ENOUGH && chart.sd > 0.0)?;
    let average = moving_average(&ratios, 1.0, chart.sd, WEIGHT);
    let is_out = |ratio: f64| ratio < chart.limits.0 || ratio > chart.limits.1;
    let limits = [average.limits.0, average.limits.1];
    let span = Span::of(ratios.iter().copied().chain(limits).map(|ratio| ratio - 1.0), 0.1);
    let y = |ratio: f64| 1.0 - span.along(ratio - 1.0);
    let x = |at: usize| (at as f64 + 0.5) / ratios.len() as f64;
    let dots = ratios.iter().enumerate().map(|(at, ratio)| Dot {
        at: ChartSpot { x: x(at), y: y(*ratio) },
        mark: if is_out(*ratio) { Mark::Outlier } else { Mark::Coat },
    });
    let path = average.after.iter().enumerate().map(|(at, after)| ChartSpot { x: x(at), y: y(*after) });
    let outside = ratios.iter().filter(|ratio| is_out(**ratio)).count();
    let mut legend = vec![
        marked(Mark::Coat, "A coat"),
        stroked(Stroke::Average, "Moving average"),
        stroked(Stroke::Aim, "The aim"),
        banded("While the average lies here, coats keep to the aim"),
    ];
    if outside > 0 {
        legend.insert(1, marked(Mark::Outlier, "Far off the others"));
    }
    let ends = |at: usize| newest.get(at).map(|(at, _)| sentence_case(&now.days_ago(*at))).unwrap_or_default();
    let percent = |off: f64| match off {
        off if off.abs() < 5e-4 => "Aim".to_owned(),
        off if off > 0.0 => format!("+{}", style.percent(off, 0)),
        off => style.percent(off, 0),
    };
    Some(ChartView {
        title: "Coats against their aims".to_owned(),
        words: drift_words(&ratios, average.trend(), chart.centre, outside, style),
        across_title: format!("The last {} coats", ratios.len()),
        across: vec![
            AxisTick { at: x(0), words: ends(0) },
            AxisTick { at: x(ratios.len() - 1), words: ends(ratios.len() - 1) },
        ],
        up: span
            .round_numbers(5)
            .into_iter()
            .rev()
            .map(|off| AxisTick { at: y(1.0 + off), words: percent(off) })
            .collect(),
        bands: vec![Band {
            from: ChartSpot { x: 0.0, y: y(average.limits.1) },
            to: ChartSpot { x: 1.0, y: y(average.limits.0) },
        }],
        lines: vec![level(Stroke::Aim, y(1.0)), ChartLine { stroke: Stroke::Average, spots: path.collect() }],
        dots: dots.collect(),
        legend,
    })
}

fn drift_words(ratios: &[f64], trend: Trend, centre: f64, outside: usize, style: &Style) -> String {
    let off = centre - 1.0;
    let mean = match style.percent(off.abs(), 0).as_str() {
        "0%" => "on the aim on average".to_owned(),
        percent if off > 0.0 => format!("{percent} over the aim on average"),
        percent => format!("{percent} short of the aim on average"),
    };
    let so = match trend {
        Trend::Steady => "They keep to the aim.",
        Trend::High => "They have begun to run over: check the bucket's SG, and how long the pieces are dipped.",
        Trend::Low => "They have begun to run short: check the bucket's SG, and whether the bisque is damp.",
    };
    let out = match outside {
        0 => String::new(),
        1 => " One lies far off the others.".to_owned(),
        many => format!(" {many} lie far off the others."),
    };
    format!("The last {} coats lie {mean}. {so}{out}", ratios.len())
}

/// So many equal pieces make a set. Common practice, no source.
const LEAST_SET: usize = 3;

/// The newest run of equal pieces, glazed on one day.
pub(super) fn last_set(conn: &Connection, coats: &[Weighed], now: Now, style: &Style) -> Result<Option<Line>> {
    let day = |coat: &Weighed| now.days_since(coat.at);
    let runs = coats.chunk_by(|a, b| (a.form, a.zone) == (b.form, b.zone) && day(a) == day(b));
    let Some(run) = runs.into_iter().find(|run| run.len() >= LEAST_SET) else { return Ok(None) };
    let grams: Vec<f64> = run.iter().map(|coat| Grams::from_milligrams(coat.net_mg).value()).collect();
    let (Some(set), Some(first)) = (Spread::of(&grams), run.first()) else { return Ok(None) };
    let form = entity::Form::load(conn, first.form)?.map_or_else(|| "A form".to_owned(), |form| form.name);
    let step = Grams::new(0.1);
    Ok(Some(Line {
        label: format!("Last set: {form}, {}", first.zone.name()),
        value: format!(
            "{}, {}: {} wet on average, from {} to {}, spread {} of that.",
            count(set.pieces as i64, "piece", "pieces"),
            now.days_ago(first.at),
            style.mass(Grams::new(set.mean), step),
            style.mass_number(Grams::new(set.range.0), step),
            style.mass(Grams::new(set.range.1), step),
            style.percent(set.relative_spread(), 1)
        ),
    }))
}
