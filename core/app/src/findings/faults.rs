//! Faults beside how much glaze the pots had: how often, and how sure that is. Never why.

use super::chart::{AxisTick, ChartLine, ChartSpot, ChartView, Dot, Mark, Stroke, marked, stroked};
use super::text::sentences;
use crate::Line;
use crate::date_text::sentence_case;
use crate::in_words::{Named, StyleWords};
use crate::messages::findings as say;
use laydown_domain::learning::fault::{Share, Shares, Side, shares};
use laydown_domain::learning::observation::FiredObservation;
use laydown_domain::learning::window::Window;
use laydown_domain::units::Style;

/// The faults of some pots.
pub(super) struct Faults(Vec<Shares>);

impl Faults {
    pub(super) fn of(observations: &[FiredObservation], window: Option<&Window>) -> Faults {
        Faults(shares(observations, window))
    }

    /// Each with how many pots had it: on each side of the window where it has both ends.
    pub(super) fn lines(&self) -> Vec<Line> {
        self.0.iter().map(|shares| Line { label: sentence_case(&shares.fault.name()), value: words(shares) }).collect()
    }

    /// The one that goes with the amount, or the most frequent one, drawn: how often on each side of the window, and between which
    /// shares that may lie with so few pots.
    pub(super) fn chart(&self, style: &Style) -> Option<ChartView> {
        let shown = self.0.iter().find(|shares| shares.leans.is_some()).or(self.0.first())?;
        let [below, within, above] = shown.by_side?;
        let rows = [
            (above, say::above_window(), 1.0 / 6.0),
            (within, say::within_window(), 0.5),
            (below, say::below_window(), 5.0 / 6.0),
        ];
        let (mut lines, mut dots) = (Vec::new(), Vec::new());
        for (share, _, y) in &rows {
            let Some((from, to)) = share.interval() else { continue };
            let spot = |x| ChartSpot { x, y: *y };
            lines.push(ChartLine { stroke: Stroke::Average, spots: vec![spot(from), spot(to)] });
            dots.push(Dot { at: spot(share.with as f64 / share.of as f64), mark: Mark::Coat });
        }
        let fault = sentence_case(&shown.fault.name());
        Some(ChartView {
            words: say::fault_chart_words(&fault, words(shown)),
            title: fault,
            across_title: say::share_of_pots(),
            across: [0.0, 0.25, 0.5, 0.75, 1.0].map(|at| AxisTick { at, words: style.percent(at, 0) }).to_vec(),
            up: rows.into_iter().map(|(_, words, at)| AxisTick { at, words }).collect(),
            bands: Vec::new(),
            lines,
            dots,
            legend: vec![marked(Mark::Coat, say::so_far()), stroked(Stroke::Average, say::may_be_share())],
        })
    }
}

fn words(shares: &Shares) -> String {
    let counts = match shares.by_side {
        Some([below, within, above]) => say::faults_by_side(share(above), share(within), share(below)),
        None => say::faults_of_all(shares.all.of, share(shares.all)),
    };
    let leans = shares.leans.map(|side| match side {
        Side::Below => say::more_with_less(),
        Side::Within => say::more_within(),
        Side::Above => say::more_with_more(),
    });
    sentences([leans, Some(counts)])
}

/// "5 of 6 (44 to 97%)".
fn share(share: Share) -> String {
    match share.interval() {
        Some((from, to)) => say::share(share.with, share.of, (from * 100.0).round(), (to * 100.0).round()),
        None => say::no_pot_there(),
    }
}
