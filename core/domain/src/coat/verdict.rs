//! Whether a reading of the scale is right, and what to do about it.
//!
//! Decisions keep a guard band as wide as the reading's 95% half-width U (JCGM 106, ISO 14253-1): a coat is within only
//! when all of reading ± U lies in the accepted span, short or over only when all of it lies outside, and otherwise this
//! scale cannot tell.

use super::MOST_LAYDOWN;
use super::scale::Scale;
use super::target::{Control, Job, Target, carry_over, span};
use crate::coded::coded;
use crate::units::{DecimalMark, Grams, Laydown, MassUnit, Style};

/// Grams closer than this are equal; sums of decimal fractions are not exact.
const NOISE: Grams = Grams::new(1e-6);

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

coded! {
    /// What the scale says about a coat.
    "verdict" VerdictKind {
        /// Right.
        Within = "within" "within",
        /// Too little.
        Short = "short" "short",
        /// Too much.
        Over = "over" "over",
        /// Too near the edge, or the scale too coarse.
        CannotTell = "cannot_tell" "cannot tell",
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
    /// `to_aim` when the scale is too coarse to show any such weight.
    pub to_within: Grams,
    /// Dry glaze in the coat.
    pub dry: Grams,
    /// Laydown of the coat.
    pub laydown: Laydown,
    /// What the same coat would weigh wet on the control piece, in the bucket it was dipped in.
    pub on_control: Option<Grams>,
    /// Whether the scale is too coarse to show any weight it would call within.
    pub too_coarse: bool,
    /// Least that is right.
    pub low: Grams,
    /// Most that is right.
    pub high: Grams,
    /// The scale's step.
    pub step: Grams,
}

/// Why a reading is not judged. The display is the sentence the potter reads, in grams; see also
/// [`ReadingRefused::in_words`].
#[derive(Debug, Clone, Copy, PartialEq)]
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

impl ReadingRefused {
    /// The sentence in the potter's units.
    pub fn in_words(&self, style: &Style) -> String {
        match *self {
            Self::NoNumber => "That is no weight. Type what the scale shows.".to_owned(),
            Self::NoBare => "The bare piece must weigh something. Weigh it before glazing.".to_owned(),
            Self::GlazedUnderBare { bare, glazed, step } => format!(
                "It weighs less glazed ({}) than bare ({}). Check that both are of this piece, and the right way round.",
                style.mass(glazed, step),
                style.mass(bare, step)
            ),
            Self::Negative => {
                "The weight is below zero. Tare with the bare piece on the scale, then weigh again.".to_owned()
            }
            Self::Nothing => "The scale shows no glaze. Weigh the piece after the coat.".to_owned(),
            Self::OverCapacity { weight, capacity, step } => format!(
                "{} is more than this scale weighs ({}). Use a larger scale, or choose the scale you used.",
                style.mass(weight, step),
                style.mass(capacity, step)
            ),
            Self::UnderMinimum { net, minimum, step } => format!(
                "{} is less than this scale should weigh ({}). Use a finer scale.",
                style.mass(net, step),
                style.mass(minimum, step)
            ),
            Self::FinerThanStep { weight, step } => format!(
                "This scale reads in {} steps and cannot show {}. Type what it shows, or choose the scale you used.",
                style.mass(step, step),
                style.mass(weight, step / 10.0)
            ),
            Self::MoreThanPieceHolds { net, most, step } => format!(
                "{} is more glaze than this piece can hold (about {} at most). Was the scale tared with the bare piece?",
                style.mass(net, step),
                style.mass(most, step)
            ),
        }
    }
}

impl std::fmt::Display for ReadingRefused {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.in_words(&Style::default()))
    }
}

impl std::error::Error for ReadingRefused {}

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
    let corrections = whole_steps(surely_from - net, surely_to - net, step);
    let kind = if net + half_width < low - NOISE {
        VerdictKind::Short
    } else if net - half_width > high + NOISE {
        VerdictKind::Over
    } else if net >= surely_from - NOISE && net <= surely_to + NOISE {
        VerdictKind::Within
    } else {
        VerdictKind::CannotTell
    };
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
    })
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
fn whole_steps(from: Grams, to: Grams, step: Grams) -> Option<(Grams, Grams)> {
    let (least, most) = (((from - NOISE) / step).ceil(), ((to + NOISE) / step).floor());
    (least <= most).then(|| (step * least, step * most))
}

/// Whether the display can show this weight. Only for steps of 1, 2 or 5 in a decimal place of a gram: the step of a
/// scale that reads in ounces is known only rounded to milligrams, and multiples of it drift.
fn scale_can_show(weight: Grams, step: Grams) -> bool {
    let place = 10f64.powf(step.value().log10().floor());
    let leading = step.value() / place;
    let is_decimal = [1.0, 2.0, 5.0, 10.0].iter().any(|figure| (leading - figure).abs() < 1e-6);
    let steps = weight / step;
    !is_decimal || (steps - steps.round()).abs() < 1e-4
}

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

impl Verdict {
    /// In words.
    pub fn in_words(&self, style: &Style) -> VerdictWords {
        let certainty = format!("Accurate to ±{}.", style.mass(self.half_width, self.step / 10.0));
        let carries = format!("{} dry, {}", style.mass(self.dry, self.step), style.laydown(self.laydown));
        let on_control = self
            .on_control
            .map(|wet| format!("On your control piece this coat would weigh {}.", style.mass(wet, self.step)));
        VerdictWords {
            headline: self.kind.name().to_uppercase(),
            act: self.act(style),
            detail: self.detail(style),
            spoken: self.spoken(style),
            certainty,
            carries,
            on_control,
        }
    }

    fn act(&self, style: &Style) -> String {
        let written = |grams: Grams| style.mass(grams.abs(), self.step);
        match self.kind {
            VerdictKind::Within => "Save it".to_owned(),
            VerdictKind::Short => format!("Add {}", written(self.to_aim)),
            VerdictKind::Over => format!("Take off {}", written(self.to_aim)),
            VerdictKind::CannotTell if self.too_coarse => "Use a finer scale".to_owned(),
            VerdictKind::CannotTell if self.to_within > Grams::ZERO => {
                format!("Add {} to be sure", written(self.to_within))
            }
            VerdictKind::CannotTell => format!("Take off {} to be sure", written(self.to_within)),
        }
    }

    fn detail(&self, style: &Style) -> String {
        let written = |grams: Grams| style.mass(grams.abs(), self.step);
        let span = span(style, self.low, self.high, self.step);
        match self.kind {
            VerdictKind::Within if self.to_aim.abs() < self.step / 2.0 => "Right on the aim.".to_owned(),
            VerdictKind::Within if self.to_aim > Grams::ZERO => {
                format!("{} under the aim, inside {span}.", written(self.to_aim))
            }
            VerdictKind::Within => format!("{} over the aim, inside {span}.", written(self.to_aim)),
            VerdictKind::Short | VerdictKind::Over if self.too_coarse => {
                format!("Target {span}. This scale is too coarse to be certain.")
            }
            VerdictKind::Short => format!("Target {span}. Add {}.", written(self.to_within)),
            VerdictKind::Over => {
                format!("Target {span}. Sponge, scrape or wash off {}.", written(self.to_within))
            }
            VerdictKind::CannotTell if self.too_coarse => format!(
                "Too coarse: this scale reads in {} steps, and the target is {span}.",
                style.mass(self.step, self.step)
            ),
            VerdictKind::CannotTell => format!(
                "Too near the edge of {span} for a scale that reads in {} steps.",
                style.mass(self.step, self.step)
            ),
        }
    }

    /// For the ear: whole words, and a point in numbers, which every English voice reads right.
    fn spoken(&self, style: &Style) -> String {
        let style = Style { decimal: DecimalMark::Point, ..*style };
        let said = |grams: Grams| {
            let unit = match style.mass {
                MassUnit::Gram => "grams",
                MassUnit::Ounce => "ounces",
            };
            let number = style.mass_number(grams.abs(), self.step);
            if number == "1" { format!("1 {}", unit.trim_end_matches('s')) } else { format!("{number} {unit}") }
        };
        match self.kind {
            VerdictKind::Within => "Within. Save it.".to_owned(),
            VerdictKind::Short => format!("Short. Add {}.", said(self.to_aim)),
            VerdictKind::Over => format!("Over. Take off {}.", said(self.to_aim)),
            VerdictKind::CannotTell if self.too_coarse => "Cannot tell. This scale is too coarse.".to_owned(),
            VerdictKind::CannotTell if self.to_within > Grams::ZERO => {
                format!("Cannot tell. Add {} to be sure.", said(self.to_within))
            }
            VerdictKind::CannotTell => format!("Cannot tell. Take off {} to be sure.", said(self.to_within)),
        }
    }
}

#[cfg(test)]
mod tests;
