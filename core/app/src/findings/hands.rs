//! How alike the coats of each hand are: only where a studio writes down who glazed.

use super::FindingsSection;
use super::fired::Weighed;
use crate::Line;
use crate::in_words::StyleWords;
use crate::messages::findings as say;
use laydown_domain::learning::hand::{Hand, by_hand};
use laydown_domain::units::Style;

/// The hands of a glaze; `None` where no name was written down.
pub(super) fn section(coats: &[Weighed], style: &Style) -> Option<FindingsSection> {
    let named = coats.iter().filter(|coat| coat.aim_mg > 0);
    let named: Vec<(&str, f64)> =
        named.filter_map(|coat| Some((coat.hand.as_deref()?, coat.net_mg as f64 / coat.aim_mg as f64))).collect();
    let line = |hand: Hand| {
        let percent = style.percent(hand.mean_off.abs(), 0);
        let mean = match hand.mean_off {
            _ if percent == style.percent(0.0, 0) => say::hand_on(hand.coats),
            off if off > 0.0 => say::hand_over(hand.coats, percent),
            _ => say::hand_short(hand.coats, percent),
        };
        Line { label: hand.name, value: say::hand_spread(mean, style.percent(hand.spread, 1)) }
    };
    let lines: Vec<Line> = by_hand(&named).into_iter().map(line).collect();
    (!lines.is_empty()).then(|| FindingsSection {
        title: say::hands_title(),
        words: String::new(),
        lines,
        chart: None,
        answer: String::new(),
    })
}
