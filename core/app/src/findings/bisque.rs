//! What the bisque drank that a glaze went onto, lot by lot: it moves how much a dip takes up.

use std::collections::BTreeSet;

use rusqlite::Connection;
use uuid::Uuid;

use super::FindingsSection;
use super::chart::{AxisTick, Band, ChartLine, ChartSpot, ChartView, Dot, Mark, Span, Stroke, banded, marked, stroked};
use super::fired::Weighed;
use crate::archive::in_use;
use crate::bisque::absorption;
use crate::in_words::{StyleWords as _, trend_of_lots};
use crate::messages::findings as say;
use crate::{Now, Result};
use laydown_domain::bisque::{USUAL_ABSORPTION, trend};
use laydown_domain::units::Style;
use laydown_store::entity::{self, Entity as _};

/// The most lots that a chart shows: the newest.
const SHOWN: usize = 30;

/// A section for each body on which the glaze was put and of which two lots or more were soaked alike.
pub(super) fn sections(conn: &Connection, now: Now, coats: &[Weighed], style: &Style) -> Result<Vec<FindingsSection>> {
    let forms: BTreeSet<Uuid> = coats.iter().map(|coat| coat.form).collect();
    let mut bodies = BTreeSet::new();
    for form in forms {
        bodies.extend(entity::Form::load(conn, form)?.and_then(|form| form.body));
    }
    let mut sections = Vec::new();
    for body in bodies {
        let Some(body) = entity::Body::load(conn, body)? else { continue };
        sections.extend(section(&of_body(conn, body.id)?, &body.name, now, style));
    }
    Ok(sections)
}

/// The lots of a body, the oldest first, with what each drank; those soaked as the newest was.
fn of_body(conn: &Connection, body: Uuid) -> Result<Vec<(i64, f64)>> {
    let mut lots: Vec<entity::BisqueLot> = in_use(conn, None)?;
    lots.retain(|lot| lot.body == Some(body));
    lots.sort_by_key(|lot| (lot.at, lot.id));
    let soaking = lots.last().map(|lot| lot.soaking.clone());
    let alike = lots.iter().filter(|lot| Some(&lot.soaking) == soaking.as_ref());
    Ok(alike.filter_map(|lot| Some((lot.at, absorption(lot)?))).collect())
}

fn section(lots: &[(i64, f64)], body: &str, now: Now, style: &Style) -> Option<FindingsSection> {
    let shown = &lots[lots.len().saturating_sub(SHOWN)..];
    let [before @ .., (_, latest)] = shown else { return None };
    if before.is_empty() {
        return None;
    }
    let earlier: Vec<f64> = before.iter().rev().map(|(_, drank)| *drank).collect();
    let stands = trend_of_lots(trend(*latest, &earlier), style).map(|note| note.text);
    let newest = say::newest_lot(style.percent(*latest, 1));
    let words = [Some(newest), stands].into_iter().flatten().collect::<Vec<_>>().join(" ");
    let title = say::bisque_title(body);
    let span = Span::of(shown.iter().map(|(_, drank)| *drank).chain([USUAL_ABSORPTION.0, USUAL_ABSORPTION.1]), 0.02);
    let y = |drank: f64| 1.0 - span.along(drank);
    let x = |at: usize| (at as f64 + 0.5) / shown.len() as f64;
    let spots: Vec<ChartSpot> =
        shown.iter().enumerate().map(|(at, (_, drank))| ChartSpot { x: x(at), y: y(*drank) }).collect();
    let ends = [0, shown.len() - 1];
    let chart = ChartView {
        title: title.clone(),
        words: words.clone(),
        across_title: say::lots_axis(),
        across: ends.map(|at| AxisTick { at: x(at), words: now.day(shown[at].0) }).to_vec(),
        up: span
            .round_numbers(5)
            .into_iter()
            .rev()
            .map(|drank| AxisTick { at: y(drank), words: style.percent(drank, 0) })
            .collect(),
        bands: vec![Band {
            from: ChartSpot { x: 0.0, y: y(USUAL_ABSORPTION.1) },
            to: ChartSpot { x: 1.0, y: y(USUAL_ABSORPTION.0) },
        }],
        dots: spots.iter().map(|at| Dot { at: *at, mark: Mark::Coat }).collect(),
        lines: vec![ChartLine { stroke: Stroke::Average, spots }],
        legend: vec![
            marked(Mark::Coat, say::a_lot()),
            stroked(Stroke::Average, say::in_their_order()),
            banded(say::usual_bisque()),
        ],
    };
    Some(FindingsSection { title, words, lines: Vec::new(), chart: Some(chart), answer: String::new() })
}
