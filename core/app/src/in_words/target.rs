//! What a coat should weigh, in words.

use super::Sentence;
use super::units::StyleWords;
use crate::messages::{pooled, target as say, units};
use laydown_domain::coat::target::{Source, Target, TargetError, span_to_show};
use laydown_domain::coat::tile::TileError;
use laydown_domain::units::{Grams, Style};

/// A target as the potter reads it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TargetWords {
    /// The aim, for example "19.4 g".
    pub aim: String,
    /// The accepted span, for example "18.0 to 20.8 g".
    pub span: String,
    /// Where it comes from.
    pub source: String,
    /// How many pots it rests on.
    pub rests_on: String,
    /// How sure the aim is.
    pub sure: String,
}

/// A target in words, with as many figures as a scale of this `step` shows.
pub fn target(target: &Target, style: &Style, step: Grams) -> TargetWords {
    TargetWords {
        aim: style.mass(target.wet, step),
        span: span(style, target.low, target.high, step),
        source: source(target, style),
        rests_on: rests_on(target),
        sure: sureness(target, style, step),
    }
}

fn source(target: &Target, style: &Style) -> String {
    let pieces = target.pots.max(1);
    match &target.source {
        Source::ControlSameForm => say::from_control(pieces),
        Source::ControlOtherSizeByArea { form_name } => say::from_control_by_area(pieces, form_name),
        Source::ControlOtherSizeByCapacity { form_name } => say::from_control_by_capacity(pieces, form_name),
        Source::Tile => say::from_tiles(style.laydown_with_unit(target.laydown)),
        Source::Starting => say::from_start(style.laydown_with_unit(target.laydown)),
        Source::Sides => say::from_sides(),
        Source::Imported => say::from_import(),
        Source::Pooled { pots, controls: 0, .. } => pooled::from_pots(pooled::pots(*pots)),
        Source::Pooled { pots: 0, controls, .. } => pooled::from_pots(pooled::controls(*controls)),
        Source::Pooled { pots, controls, .. } => {
            pooled::from_pots_and_controls(pooled::pots(*pots), pooled::controls(*controls))
        }
        Source::Kept => pooled::from_kept(),
    }
}

fn rests_on(target: &Target) -> String {
    match (target.pots, &target.source) {
        (0, Source::Tile) => say::based_on_tiles(),
        (_, Source::Kept) => String::new(),
        (0, _) => say::based_on_nothing(),
        (pots, _) => say::based_on_pots(pots),
    }
}

fn sureness(target: &Target, style: &Style, step: Grams) -> String {
    if target.source == Source::Kept {
        return String::new();
    }
    let (low, high) = target.interval;
    let (low, high) = (style.mass_number(low, step), style.mass(high, step));
    if target.is_first_guess() { say::first_guess(low, high) } else { say::most_likely(low, high) }
}

/// The accepted span, for example "18.0 to 20.8 g", as [`span_to_show`] rounds it.
pub fn span(style: &Style, low: Grams, high: Grams, step: Grams) -> String {
    let (low, high, step) = span_to_show(low, high, step);
    units::span(style.mass_number(low, step), style.mass(high, step))
}

/// How likely a coat on the aim comes out right.
pub(crate) fn right_on_aim(chance: f64) -> String {
    pooled::right_on_aim(odds(chance))
}

/// What is accepted of a target that fired pots say.
pub(crate) fn accepted_by_chance() -> String {
    pooled::accepted()
}

/// What opens the page that says why a target is what it is.
pub(crate) fn why_target() -> String {
    pooled::why_button()
}

/// A chance in words: "about 9 in 10".
pub(super) fn odds(chance: f64) -> String {
    match (chance * 10.0).round() {
        tenths if tenths >= 10.0 => pooled::more_than_nine(),
        tenths if tenths >= 1.0 => pooled::about(tenths as i64),
        _ => pooled::less_than_one(),
    }
}

/// A warning of a tile that carries only this share of what the pots will.
pub(crate) fn thin_tile(share: f64, style: &Style) -> String {
    say::tile_is_thin(style.percent(share, 0))
}

impl Sentence for TargetError {
    fn sentence(&self) -> String {
        match self {
            TargetError::NoArea { form_name } => say::no_area(form_name),
            TargetError::UnusableControl { form_name } => say::unusable_control(form_name),
            TargetError::UnusableTile => say::unusable_tile(),
            TargetError::NothingToGoBy => say::nothing_to_go_by(),
            TargetError::NoNumber => say::no_number(),
        }
    }
}

impl Sentence for TileError {
    fn sentence(&self) -> String {
        match self {
            TileError::NoArea => say::tile_no_area(),
            TileError::NoWeight => say::tile_no_weight(),
            TileError::TooMuch => say::tile_too_much(),
        }
    }
}
