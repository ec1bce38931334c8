//! The findings in words and as charts.

use std::collections::BTreeSet;

use rusqlite::Connection;
use uuid::Uuid;

use super::chart::{
    AxisTick, Band, ChartSpot, ChartView, Dot, LegendEntry, Mark, Span, Stroke, banded, marked, number_axis, spread,
    stroked, upright,
};
use super::fired::Weighed;
use super::{Group, starting};
use crate::date_text::sentence_case;
use crate::evidence::{controls, tiles};
use crate::in_words::{Named, StyleWords};
use crate::lists::and;
use crate::messages::findings as say;
use crate::{Line, Result};
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::cone::Cone;
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::observation::{ENOUGH, FiredObservation};
use laydown_domain::learning::window::{SURE, Window, WindowEstimate};
use laydown_domain::units::{Laydown, Style};
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
        [one] => say::one_cone(one),
        many => say::cones_together(and(many)),
    };
    let zones: Vec<ZoneKind> = zones.into_iter().collect();
    let zone = match zones.as_slice() {
        [one] => one.name(),
        many => say::zones_together(many.iter().map(|zone| zone.code()).collect::<Vec<_>>().join("_")),
    };
    let mut parts = vec![cone, zone];
    let mut names = Vec::new();
    for body in &bodies {
        let body = body.map(|id| entity::Body::load(conn, id)).transpose()?.flatten();
        names.push(body.map_or_else(say::no_body, |body| body.name));
    }
    match names.as_slice() {
        [_] if bodies.contains(&None) => {}
        [one] => parts.push(one.clone()),
        many => parts.push(say::bodies_together(many.len())),
    }
    Ok(sentence_case(&parts.join(", ")))
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
    let (low, high) = (style.laydown_number(from), style.laydown_number(to));
    if low == high { style.laydown_with_unit(to) } else { say::range(low, style.laydown_with_unit(to)) }
}

/// Where a sentence stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Place {
    /// At the beginning of a line.
    Alone,
    /// Within a line, after a colon.
    AfterColon,
}

impl Place {
    const fn code(self) -> &'static str {
        match self {
            Place::Alone => "alone",
            Place::AfterColon => "after_colon",
        }
    }
}

/// What the pots say, in a sentence or two.
pub(super) fn sentence(
    observations: &[FiredObservation],
    estimate: &WindowEstimate,
    style: &Style,
    place: Place,
) -> String {
    let place = place.code();
    let all = observations.len();
    let laydown = |laydown: Laydown| style.laydown_with_unit(laydown);
    match estimate {
        WindowEstimate::TooFew => say::too_few(place, all, looks(observations), ENOUGH),
        WindowEstimate::NoneRight => {
            let none = say::none_right(place, all, between(observations, style), looks(observations));
            let next = match (how_many(observations, Thickness::Thin), how_many(observations, Thickness::Thick)) {
                (_, 0) => Some(say::try_more()),
                (0, _) => Some(say::try_less()),
                _ => None,
            };
            sentences([Some(none), next])
        }
        WindowEstimate::Mixed => say::mixed(place, between(observations, style), all),
        WindowEstimate::Window(Window { from: Some(from), to: Some(to), .. }) => {
            say::window(place, style.laydown_number(*from), laydown(*to), all)
        }
        WindowEstimate::Window(Window { from: Some(from), to: None, .. }) => {
            say::window_upwards(place, laydown(*from), all)
        }
        WindowEstimate::Window(Window { from: None, to: Some(to), .. }) => {
            say::window_downwards(place, laydown(*to), all)
        }
        WindowEstimate::Window(Window { from: None, to: None, .. }) => {
            let (right, range) = (how_many(observations, Thickness::Right), between(observations, style));
            if right == all { say::all_right(place, all, range) } else { say::most_right(all, right, range) }
        }
    }
}

/// "2 thin, 5 right", what there is none of left out.
fn looks(observations: &[FiredObservation]) -> String {
    let counts = Thickness::ALL.iter().map(|thickness| (thickness.code(), how_many(observations, *thickness)));
    let some = counts.filter(|(_, pots)| *pots > 0);
    some.map(|(thickness, pots)| say::looks(thickness, pots)).collect::<Vec<_>>().join(", ")
}

/// Some sentences, one after the other.
pub(super) fn sentences(sentences: impl IntoIterator<Item = Option<String>>) -> String {
    sentences.into_iter().flatten().collect::<Vec<_>>().join(" ")
}

/// Where the best lies, and how sure that is; empty where it is not known.
pub(super) fn sureness(window: &Window, style: &Style) -> String {
    window.best.map_or_else(String::new, |best| {
        let (low, high) = best.between;
        say::best_near(
            style.laydown_with_unit(best.laydown),
            style.laydown_number(low),
            style.laydown_number(high),
            (SURE * 100.0).round(),
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
        .map(|(thickness, mark, _)| marked(*mark, say::came_out(thickness.code())))
        .collect();
    legend.extend(bands.as_ref().map(|_| banded(say::the_window())));
    legend.extend(best.map(|best| stroked(Stroke::Best, say::best_amount(style.laydown_number(best)))));
    legend.push(stroked(Stroke::Aim, say::aimed_at_today(style.laydown_number(aim))));
    let of_each: Vec<String> = Thickness::ALL
        .iter()
        .filter_map(|thickness| {
            let these = that_came_out(observations, *thickness);
            let pots = these.clone().count();
            (pots > 0).then(|| say::looks_at(thickness.code(), pots, between(these, style)))
        })
        .collect();
    ChartView {
        title: scope.to_owned(),
        words: say::chart_words(scope, sentence, of_each.join("; "), style.laydown_with_unit(aim)),
        across_title: say::laydown_axis(style.unit_of_laydown()),
        across: number_axis(span, style),
        up: LANES
            .iter()
            .map(|(thickness, _, at)| AxisTick { at: *at, words: sentence_case(&thickness.name()) })
            .collect(),
        bands: bands.into_iter().collect(),
        lines,
        dots,
        legend,
    }
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
    /// What to say where it lies outside the window whose best this is; `None` for a starting value, which nobody made.
    pub(super) fn outside_the_window(&self, best: Laydown, style: &Style) -> Option<String> {
        let (zone, best) = (self.zone.code(), style.laydown_with_unit(best));
        let average = style.laydown_with_unit(self.laydown);
        match self.source {
            Source::Controls(_) => Some(say::controls_outside_window(zone, average, best)),
            Source::Tiles(_) => Some(say::tiles_outside_window(zone, average, best)),
            Source::Starting => None,
        }
    }

    pub(super) fn line(&self, style: &Style) -> Line {
        let laydown = style.laydown_with_unit(self.laydown);
        let value = match self.source {
            Source::Controls(pieces) => say::rests_on_controls(pieces, laydown),
            Source::Tiles(tiles) => say::rests_on_tiles(tiles, laydown),
            Source::Starting => say::rests_on_start(laydown),
        };
        Line { label: sentence_case(&self.zone.name()), value }
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
        let controls = controls(conn, glaze, zone, Uuid::nil())?;
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
