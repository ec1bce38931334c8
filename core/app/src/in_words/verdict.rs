//! What a reading of the scale means, and whether the scale can decide, in words.

use super::Sentence;
use super::target::{odds, span};
use super::units::{StyleWords, decimal_mark};
use crate::messages::{pooled, verdict as say};
use laydown_domain::coat::scale::{Deciding, LabelDoubt, Scale, ScaleAdvice, ScaleError};
use laydown_domain::coat::target::Target;
use laydown_domain::coat::trust::{Basis, Trust, Weakness};
use laydown_domain::coat::verdict::{ReadingRefused, Verdict, VerdictKind};
use laydown_domain::units::{Grams, MassUnit, Style};

/// A verdict as the potter reads and hears it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct VerdictWords {
    /// One or two words, read at arm's length: "SHORT".
    pub headline: String,
    /// What to do: "Add 3.1 g".
    pub act: String,
    /// A sentence more.
    pub detail: String,
    /// The whole for the ear.
    pub spoken: String,
    /// How sure the reading is.
    pub certainty: String,
    /// Dry weight and laydown: "9.8 g dry, 5.2 g per 100 cm²".
    pub carries: String,
    /// What the same coat would be on the control piece.
    pub on_control: Option<String>,
}

/// A verdict in words.
pub fn verdict(verdict: &Verdict, style: &Style) -> VerdictWords {
    VerdictWords {
        headline: headline(verdict),
        act: act(verdict, style),
        detail: detail(verdict, style),
        spoken: spoken(verdict, style),
        certainty: certainty(verdict, style),
        carries: say::carries(style.mass(verdict.dry, verdict.step), style.laydown_with_unit(verdict.laydown)),
        on_control: verdict.on_control.map(|wet| say::on_control(style.mass(wet, verdict.step))),
    }
}

/// How likely the coat comes out right, and how sure the reading is.
fn certainty(verdict: &Verdict, style: &Style) -> String {
    let reading = say::certainty(style.mass(verdict.half_width, verdict.step / 10.0));
    match verdict.right {
        Some(right) => [pooled::comes_out_right(odds(right)), reading].join(" "),
        None => reading,
    }
}

fn headline(verdict: &Verdict) -> String {
    match verdict.kind {
        VerdictKind::Within => say::headline_within(),
        VerdictKind::Short => say::headline_short(),
        VerdictKind::Over => say::headline_over(),
        VerdictKind::CannotTell => say::headline_cannot_tell(),
        VerdictKind::ProbablyWithin => pooled::headline_probably(),
        VerdictKind::Guess if verdict.to_within > Grams::ZERO => say::headline_under(because(verdict)),
        VerdictKind::Guess if verdict.to_within < Grams::ZERO => say::headline_above(because(verdict)),
        VerdictKind::Guess => say::headline_near(because(verdict)),
    }
}

/// The code by which the messages of a guess are told apart.
fn because(verdict: &Verdict) -> &'static str {
    match verdict.weakness {
        Some(Weakness::FirstGuess) | None => "guess",
        Some(Weakness::Tiles) => "tiles",
        Some(Weakness::Bucket) => "bucket",
        Some(Weakness::Area) => "area",
        Some(Weakness::FewPots) => "pots",
    }
}

fn act(verdict: &Verdict, style: &Style) -> String {
    let written = |grams: Grams| style.mass(grams.abs(), verdict.step);
    match verdict.kind {
        VerdictKind::Within | VerdictKind::ProbablyWithin => say::save_it(),
        VerdictKind::Short if verdict.too_coarse => say::add_and_use_finer_scale(),
        VerdictKind::Over if verdict.too_coarse => say::take_off_and_use_finer_scale(),
        // The least that helps comes first; the way to the aim stands beside it.
        VerdictKind::Short => say::add(written(verdict.to_within)),
        VerdictKind::Over => say::take_off(written(verdict.to_within)),
        VerdictKind::CannotTell if verdict.too_coarse => say::use_finer_scale(),
        VerdictKind::CannotTell if verdict.to_within > Grams::ZERO => say::add_to_be_sure(written(verdict.to_within)),
        VerdictKind::CannotTell => say::take_off_to_be_sure(written(verdict.to_within)),
        VerdictKind::Guess if verdict.to_within > Grams::ZERO => say::add_or_save(written(verdict.to_within)),
        VerdictKind::Guess if verdict.to_within < Grams::ZERO => say::take_off_or_save(written(verdict.to_within)),
        VerdictKind::Guess => say::save_it(),
    }
}

fn detail(verdict: &Verdict, style: &Style) -> String {
    let written = |grams: Grams| style.mass(grams.abs(), verdict.step);
    let span = span(style, verdict.low, verdict.high, verdict.step);
    let step = style.mass(verdict.step, verdict.step);
    let is_on_the_aim = verdict.to_aim.abs() < verdict.step / 2.0;
    match verdict.kind {
        _ if verdict.weakness.is_some() && is_on_the_aim => say::guess_on_the_aim(span),
        _ if verdict.weakness.is_some() && verdict.to_aim > Grams::ZERO => {
            say::guess_under_the_aim(written(verdict.to_aim), span)
        }
        _ if verdict.weakness.is_some() => say::guess_over_the_aim(written(verdict.to_aim), span),
        VerdictKind::Within if is_on_the_aim => say::on_the_aim(),
        VerdictKind::Within if verdict.to_aim > Grams::ZERO => say::under_the_aim(written(verdict.to_aim), span),
        VerdictKind::Within => say::over_the_aim(written(verdict.to_aim), span),
        VerdictKind::ProbablyWithin => pooled::probably(span, step),
        VerdictKind::Short | VerdictKind::Over if verdict.too_coarse => say::target_too_coarse(span),
        VerdictKind::Short => say::target_add(span, written(verdict.to_aim)),
        VerdictKind::Over => say::target_take_off(span, written(verdict.to_aim)),
        VerdictKind::CannotTell if verdict.too_coarse => say::scale_too_coarse(step, span),
        VerdictKind::CannotTell if verdict.right.is_some() => pooled::not_sure(span),
        VerdictKind::CannotTell | VerdictKind::Guess => say::too_near_the_edge(span, step),
    }
}

/// For the ear: whole words, and the decimal mark that voices of this language read right.
fn spoken(verdict: &Verdict, style: &Style) -> String {
    let style = Style { decimal: decimal_mark(), ..*style };
    let said = |grams: Grams| {
        let number = style.mass_number(grams.abs(), verdict.step);
        let form = if number == "1" { "single" } else { "several" };
        match style.mass {
            MassUnit::Gram => say::spoken_grams(form, number),
            MassUnit::Ounce => say::spoken_ounces(form, number),
        }
    };
    match verdict.kind {
        VerdictKind::Within => say::spoken_within(),
        VerdictKind::ProbablyWithin => pooled::spoken_probably(),
        VerdictKind::Short if verdict.too_coarse => say::spoken_short_too_coarse(),
        VerdictKind::Over if verdict.too_coarse => say::spoken_over_too_coarse(),
        VerdictKind::Short => say::spoken_short(said(verdict.to_within)),
        VerdictKind::Over => say::spoken_over(said(verdict.to_within)),
        VerdictKind::CannotTell if verdict.too_coarse => say::spoken_too_coarse(),
        VerdictKind::CannotTell if verdict.to_within > Grams::ZERO => {
            say::spoken_add_to_be_sure(said(verdict.to_within))
        }
        VerdictKind::CannotTell => say::spoken_take_off_to_be_sure(said(verdict.to_within)),
        VerdictKind::Guess if verdict.to_within > Grams::ZERO => {
            say::spoken_under(because(verdict), said(verdict.to_within))
        }
        VerdictKind::Guess if verdict.to_within < Grams::ZERO => {
            say::spoken_above(because(verdict), said(verdict.to_within))
        }
        VerdictKind::Guess => say::spoken_near(because(verdict)),
    }
}

/// What a target rests on, in a line. `checked`: how long ago the bucket was checked.
pub(crate) fn rests(trust: &Trust, checked: Option<String>) -> String {
    let basis = match trust.basis {
        Basis::Controls { pieces, came_out_right: 0 } => say::rests_on_controls(pieces.max(1)),
        Basis::Controls { came_out_right, .. } => say::rests_on_fired(came_out_right),
        Basis::Tiles => say::rests_on_tiles(),
        Basis::Start => say::rests_on_start(),
        Basis::Pooled { pots, controls: 0 } => pooled::rests_on(pooled::pots(pots)),
        Basis::Pooled { pots, controls } => pooled::rests_on_both(pooled::pots(pots), pooled::controls(controls)),
        Basis::Kept => pooled::from_kept(),
    };
    let bucket = checked.map_or_else(say::sg_not_checked, say::sg_checked);
    let area = if trust.area_measured { String::new() } else { say::area_not_measured() };
    [basis, bucket, area].into_iter().filter(|sentence| !sentence.is_empty()).collect::<Vec<_>>().join(" ")
}

/// Why a reading is not judged, in the potter's units.
pub fn reading_refused(refused: &ReadingRefused, style: &Style) -> String {
    match *refused {
        ReadingRefused::NoNumber => say::no_number(),
        ReadingRefused::NoBare => say::no_bare(),
        ReadingRefused::GlazedUnderBare { bare, glazed, step } => {
            say::glazed_under_bare(style.mass(glazed, step), style.mass(bare, step))
        }
        ReadingRefused::Negative => say::negative(),
        ReadingRefused::Nothing => say::nothing(),
        ReadingRefused::OverCapacity { weight, capacity, step } => {
            say::over_capacity(style.mass(weight, step), style.mass(capacity, step))
        }
        ReadingRefused::UnderMinimum { net, minimum, step } => {
            say::under_minimum(style.mass(net, step), style.mass(minimum, step))
        }
        ReadingRefused::FinerThanStep { weight, step } => {
            say::finer_than_step(style.mass(step, step), style.mass(weight, step / 10.0))
        }
        ReadingRefused::MoreThanPieceHolds { net, most, step } => {
            say::more_than_piece_holds(style.mass(net, step), style.mass(most, step))
        }
    }
}

/// When a reading must be taken on a piece that has had `coats_before` coats since it was last bone dry.
pub(crate) fn when_to_read(coats_before: usize) -> String {
    if coats_before == 0 { say::read_at_once() } else { say::weigh_again_first() }
}

/// Whether this scale can decide about a coat.
pub(crate) fn scale_advice(
    scale: &Scale,
    advice: ScaleAdvice,
    deciding: &Deciding,
    target: &Target,
    style: &Style,
) -> String {
    let step = style.mass(scale.step, scale.step);
    match advice {
        ScaleAdvice::Decides => say::scale_decides(step),
        ScaleAdvice::DecidesOnlyJust => say::scale_decides_only_just(step),
        ScaleAdvice::TooCoarse => {
            let total = |pieces: u32| style.mass(target.wet * f64::from(pieces), scale.step);
            let remedy = match (deciding.together, deciding.step) {
                (Some(pieces), Some(fine)) => {
                    say::weigh_together_or_finer(pieces.to_string(), total(pieces), style.mass(fine, fine))
                }
                (Some(pieces), None) => say::weigh_together(pieces.to_string(), total(pieces)),
                (None, Some(fine)) => say::weigh_finer(style.mass(fine, fine)),
                (None, None) => say::use_finer_scale(),
            };
            [say::scale_is_too_coarse(step), remedy].join(" ")
        }
        ScaleAdvice::OverCapacity => say::scale_is_too_small(style.mass(scale.capacity, scale.step)),
    }
}

/// A doubt when step and capacity hardly go together, so that a slip of a zero shows.
pub(crate) fn scale_doubt(scale: &Scale, style: &Style) -> Option<String> {
    let (capacity, step) = (style.mass(scale.capacity, scale.step), style.mass(scale.step, scale.step));
    scale.doubt_about_label().map(|doubt| match doubt {
        LabelDoubt::LaboratoryBalance => say::laboratory_balance(capacity, step),
        LabelDoubt::VeryFewSteps => say::very_few_steps(capacity, step),
    })
}

impl Sentence for ScaleError {
    fn sentence(&self) -> String {
        match self {
            ScaleError::NoStep => say::no_step(),
            ScaleError::NoCapacity => say::no_capacity(),
            ScaleError::Minimum => say::minimum(),
            ScaleError::Repeatability => say::repeatability(),
        }
    }
}
