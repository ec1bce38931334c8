//! Whether a reading of the scale is right, and what to do about it.
//!
//! Decisions keep a guard band as wide as the reading's 95% half-width U (JCGM 106, ISO 14253-1): a coat is within only
//! when all of reading ± U lies in the accepted span, short or over only when all of it lies outside, and otherwise this
//! scale cannot tell. Where the target is a guess, nothing is called within: see [`Verdict::on_a_guess`].

use super::MOST_LAYDOWN;
use super::scale::Scale;
use super::target::{Control, Job, Target, carry_over};
use super::trust::{Trust, Weakness};
use crate::coded::coded;
use crate::units::{Grams, Laydown};

/// Grams closer than this are equal; sums of decimal fractions are not exact.
pub(crate) const NOISE: Grams = Grams::new(1e-6);

/// What the scale showed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reading {
    /// The coat alone, the scale having been tared with the bare piece.
    Net(Grams),
    /// Previous piece and after.
    TwoWeights {
        /// The bare piece, just before the coat.
        bare: Grams,
        /// The piece with its coat.
        glazed: Grams,
    },
}

impl Reading {
    /// The coat's weight as it was read; below nothing where the weights cannot be.
    pub fn net(&self) -> Grams {
        match *self {
            Reading::Net(net) => net,
            Reading::TwoWeights { bare, glazed } => glazed - bare,
        }
    }

    /// What lies on the scale beside the coat.
    pub(crate) fn bare(&self) -> Grams {
        match *self {
            Reading::Net(_) => Grams::ZERO,
            Reading::TwoWeights { bare, .. } => bare,
        }
    }
}

coded! {
    /// What the scale says about a coat.
    "verdict" VerdictKind {
        /// Right.
        Within = "within",
        /// Too little.
        Short = "short",
        /// Too much.
        Over = "over",
        /// Too near the edge, or the scale too coarse.
        CannotTell = "cannot_tell",
        /// It may be right: the target is only a guess.
        Guess = "guess",
        /// Right by the odds, on a scale too coarse to be sure.
        ProbablyWithin = "probably_within",
    }
}

impl VerdictKind {
    /// What a wet weight is against the `span` that is accepted, with the 95% `half_width` of the weight. Where the span is all
    /// that is plausible of a guess, nothing in it is within.
    pub fn of(net: Grams, half_width: Grams, span: (Grams, Grams), is_guess: bool) -> VerdictKind {
        let (low, high) = span;
        if net + half_width < low - NOISE {
            VerdictKind::Short
        } else if net - half_width > high + NOISE {
            VerdictKind::Over
        } else if is_guess {
            VerdictKind::Guess
        } else if net >= low + half_width - NOISE && net <= high - half_width + NOISE {
            VerdictKind::Within
        } else {
            VerdictKind::CannotTell
        }
    }
}

/// A reading judged.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Verdict {
    /// What the scale says.
    pub kind: VerdictKind,
    /// Wet weight of the coat.
    pub net: Grams,
    /// 95% half-width of the wet weight.
    pub half_width: Grams,
    /// To the aim: above nothing, add so much; below, take so much off.
    pub to_aim: Grams,
    /// To the nearest weight that this scale can show and would call within, in whole steps; nothing when it is. As
    /// `to_aim` when the scale is too coarse to show any such weight. On a guess, to the nearest weight near the aim.
    pub to_within: Grams,
    /// Dry glaze in the coat.
    pub dry: Grams,
    /// Laydown of the coat.
    pub laydown: Laydown,
    /// What the same coat would weigh wet on the control piece, in the bucket it was dipped in.
    pub on_control: Option<Grams>,
    /// Whether the scale is too coarse to show any weight it would call within.
    pub too_coarse: bool,
    /// Least that is right, or on a guess may be.
    pub low: Grams,
    /// Most that is right, or on a guess may be.
    pub high: Grams,
    /// The scale's step.
    pub step: Grams,
    /// Why the target is a guess, where it is one.
    pub weakness: Option<Weakness>,
    /// The chance that the coat comes out right, everything considered; `None` where no fired pots say.
    pub right: Option<f64>,
}

/// Why a reading is not judged.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum ReadingRefused {
    /// Infinite or undefined.
    NoNumber,
    /// A bare piece that weighs nothing.
    NoBare,
    /// The glazed piece weighs less than the bare one.
    GlazedUnderBare {
        /// The bare piece.
        bare: Grams,
        /// The glazed piece.
        glazed: Grams,
        /// The scale's step.
        step: Grams,
    },
    /// Below nothing after tare.
    Negative,
    /// No gain.
    Nothing,
    /// More than the scale weighs.
    OverCapacity {
        /// The weight.
        weight: Grams,
        /// The most the scale weighs.
        capacity: Grams,
        /// The scale's step.
        step: Grams,
    },
    /// Less than the scale should be asked to weigh.
    UnderMinimum {
        /// The coat.
        net: Grams,
        /// The least.
        minimum: Grams,
        /// The scale's step.
        step: Grams,
    },
    /// Finer than the scale can show.
    FinerThanStep {
        /// The weight.
        weight: Grams,
        /// The scale's step.
        step: Grams,
    },
    /// More than the zone can hold.
    MoreThanPieceHolds {
        /// The coat.
        net: Grams,
        /// The most the zone could hold in this bucket's glaze.
        most: Grams,
        /// The scale's step.
        step: Grams,
    },
}

/// Judges a reading against its target on this scale. `control` is the piece the potter compares with.
///
/// # Errors
/// When the reading cannot be one of this coat on this scale.
pub fn judge(
    reading: &Reading,
    target: &Target,
    scale: &Scale,
    job: &Job,
    control: Option<&Control>,
) -> Result<Verdict, ReadingRefused> {
    let net = net_weight(reading, scale)?;
    let step = scale.step;
    if let Some(minimum) = scale.minimum
        && net < minimum - NOISE
    {
        return Err(ReadingRefused::UnderMinimum { net, minimum, step });
    }
    let dry = job.solids.dry(net);
    let laydown = Laydown::of(dry, job.zone.area);
    if laydown > MOST_LAYDOWN {
        let most = job.solids.wet(MOST_LAYDOWN.dry_on(job.zone.area));
        return Err(ReadingRefused::MoreThanPieceHolds { net, most, step });
    }

    let half_width = scale.net_half_width();
    let (low, high) = (target.low, target.high);
    let (surely_from, surely_to) = (low + half_width, high - half_width);
    // What is to be shown must be a weight that this scale takes.
    let least = scale.minimum.map_or(surely_from, |minimum| surely_from.max(minimum));
    let corrections = whole_steps(least - net, surely_to.min(scale.capacity - reading.bare()) - net, step);
    let kind = VerdictKind::of(net, half_width, (low, high), false);
    let to_aim = target.wet - net;
    let to_within = match (kind, corrections) {
        (VerdictKind::Within, _) => Grams::ZERO,
        (_, None) => to_aim,
        (_, Some((least, most))) => {
            if net < surely_from {
                least
            } else {
                most
            }
        }
    };
    let on_control = control.map(|control| {
        let on_its_area = dry / carry_over(control, job).area_ratio;
        control.solids.wet(on_its_area)
    });
    Ok(Verdict {
        kind,
        net,
        half_width,
        to_aim,
        to_within,
        dry,
        laydown,
        on_control,
        too_coarse: corrections.is_none(),
        low,
        high,
        step,
        weakness: None,
        right: None,
    })
}

impl Verdict {
    /// The same reading against a target that is a guess; as it is where the target is trusted. The span is then all that
    /// is plausible: only what lies wholly outside it is short or over, and nothing is within.
    pub fn on_a_guess(self, target: &Target, trust: &Trust) -> Verdict {
        let Some(weakness) = trust.weakness() else { return self };
        let (low, high) = trust.span(target);
        let kind = VerdictKind::of(self.net, self.half_width, (low, high), true);
        // Half a step either way always holds a weight that the scale can show.
        let near = (target.wet * target.tolerance).max(self.step / 2.0);
        let to_within = match whole_steps(self.to_aim - near, self.to_aim + near, self.step) {
            Some((least, most)) if least > Grams::ZERO || most < Grams::ZERO => {
                if least > Grams::ZERO {
                    least
                } else {
                    most
                }
            }
            _ => Grams::ZERO,
        };
        Verdict { kind, low, high, to_within, too_coarse: false, weakness: Some(weakness), ..self }
    }
}

fn net_weight(reading: &Reading, scale: &Scale) -> Result<Grams, ReadingRefused> {
    let step = scale.step;
    let shown = |weight: Grams| {
        if !weight.value().is_finite() {
            Err(ReadingRefused::NoNumber)
        } else if weight > scale.capacity + NOISE {
            Err(ReadingRefused::OverCapacity { weight, capacity: scale.capacity, step })
        } else if !scale_can_show(weight, step) {
            Err(ReadingRefused::FinerThanStep { weight, step })
        } else {
            Ok(weight)
        }
    };
    match *reading {
        Reading::Net(net) => match shown(net)? {
            net if net < -NOISE => Err(ReadingRefused::Negative),
            net if net <= NOISE => Err(ReadingRefused::Nothing),
            net => Ok(net),
        },
        Reading::TwoWeights { bare, glazed } => {
            let (bare, glazed) = (shown(bare)?, shown(glazed)?);
            if bare <= NOISE {
                Err(ReadingRefused::NoBare)
            } else if glazed < bare - NOISE {
                Err(ReadingRefused::GlazedUnderBare { bare, glazed, step })
            } else if glazed <= bare + NOISE {
                Err(ReadingRefused::Nothing)
            } else {
                Ok(glazed - bare)
            }
        }
    }
}

/// The least and the most whole steps between two weights, if there are any.
pub(crate) fn whole_steps(from: Grams, to: Grams, step: Grams) -> Option<(Grams, Grams)> {
    let (least, most) = (((from - NOISE) / step).ceil(), ((to + NOISE) / step).floor());
    (least <= most).then(|| (step * least, step * most))
}

/// Whether the display can show this weight. Only for steps of 1, 2 or 5 in a decimal place of a gram: the step of a
/// scale that reads in ounces is known only rounded to milligrams, and multiples of it drift.
pub(super) fn scale_can_show(weight: Grams, step: Grams) -> bool {
    let place = 10f64.powf(step.value().log10().floor());
    let leading = step.value() / place;
    let is_decimal = [1.0, 2.0, 5.0, 10.0].iter().any(|figure| (leading - figure).abs() < 1e-6);
    let steps = weight / step;
    !is_decimal || (steps - steps.round()).abs() < 1e-4
}

#[cfg(test)]
mod tests;
