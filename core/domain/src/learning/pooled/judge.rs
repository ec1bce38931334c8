//! The pooled model at the scale: its target as Weigh shows it, and a reading judged by its chance of coming out right.

use super::Outlook;
use super::target::{PooledVerdict, reading_standard_uncertainty, tested, verdict};
use crate::coat::scale::Scale;
use crate::coat::target::{Control, Job, Source, Target};
use crate::coat::verdict::{NOISE, Reading, ReadingRefused, Verdict, VerdictKind, whole_steps};
use crate::coat::{self};
use crate::units::{Grams, Laydown};

/// How many pieces a target rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct RestsOn {
    /// Judged pots.
    pub pots: usize,
    /// Control pieces.
    pub controls: usize,
}

/// The target of a job weighed on `scale`. What is accepted is what comes out right with a chance of at least
/// [`super::SURE`], every doubt considered, that of this scale too; as if the scale were perfect where it is too coarse for
/// that, and all that is plausible while not even the aim is that likely. `None` where a figure cannot be.
pub fn target_for(outlook: &Outlook, job: &Job, scale: &Scale, rests_on: RestsOn) -> Option<Target> {
    let aim = outlook.aim(job.zone.area, &job.solids)?;
    let sure = |reading: Grams| outlook.sure(&job.solids, aim.wet, reading);
    let span = sure(reading_standard_uncertainty(scale)).or_else(|| sure(Grams::ZERO));
    let (low, high) = span.unwrap_or(aim.interval);
    let dry = job.solids.dry(aim.wet);
    Some(Target {
        wet: aim.wet,
        low,
        high,
        interval: aim.interval,
        dry,
        laydown: Laydown::of(dry, job.zone.area),
        source: Source::Pooled { pots: rests_on.pots, controls: rests_on.controls, is_sure: span.is_some() },
        pots: rests_on.pots + rests_on.controls,
        tolerance: span.map_or(job.sensitivity.tolerance(), |(_, high)| high / aim.wet - 1.0),
    })
}

/// Judges a reading against the target of [`target_for`] by its chance of coming out right.
///
/// # Errors
/// As [`coat::verdict::judge`].
pub fn judge(
    reading: &Reading,
    target: &Target,
    outlook: &Outlook,
    scale: &Scale,
    job: &Job,
    control: Option<&Control>,
) -> Result<Verdict, ReadingRefused> {
    let scale = tested(scale);
    let judged = coat::verdict::judge(reading, target, &scale, job, control)?;
    let net = judged.net;
    let uncertainty = reading_standard_uncertainty(&scale);
    let Some(chances) = outlook.chances(job.zone.area, &job.solids, net, uncertainty) else {
        return Ok(Verdict { kind: VerdictKind::CannotTell, ..judged });
    };
    let span = outlook.sure(&job.solids, target.wet, uncertainty);
    let is_coarse = !outlook
        .sure(&job.solids, target.wet, Grams::ZERO)
        .is_some_and(|(low, high)| net - judged.half_width >= low - NOISE && net + judged.half_width <= high + NOISE);
    let kind = match verdict(&chances, is_coarse) {
        PooledVerdict::Within => VerdictKind::Within,
        PooledVerdict::ProbablyWithin => VerdictKind::ProbablyWithin,
        PooledVerdict::Short => VerdictKind::Short,
        PooledVerdict::Over => VerdictKind::Over,
        PooledVerdict::CannotTell => VerdictKind::CannotTell,
    };
    let corrections = span.and_then(|(low, high)| {
        let low = scale.minimum.map_or(low, |minimum| minimum.max(low));
        whole_steps(low - net, high.min(scale.capacity - reading.bare()) - net, scale.step)
    });
    let to_within = match (kind, corrections) {
        (VerdictKind::Within | VerdictKind::ProbablyWithin, _) => Grams::ZERO,
        (_, None) => judged.to_aim,
        (_, Some((least, _))) if least > Grams::ZERO => least,
        (_, Some((_, most))) => most,
    };
    let (low, high) = span.unwrap_or((judged.low, judged.high));
    let too_coarse = corrections.is_none();
    Ok(Verdict { kind, to_within, too_coarse, low, high, right: Some(chances.right), ..judged })
}

/// The chance that a coat of `net` grams comes out right, everything considered; `None` where a figure cannot be.
pub fn chance_right(outlook: &Outlook, job: &Job, scale: &Scale, net: Grams) -> Option<f64> {
    outlook.chances(job.zone.area, &job.solids, net, reading_standard_uncertainty(scale)).map(|chances| chances.right)
}
