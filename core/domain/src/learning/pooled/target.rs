//! What the model says of one job: how much, how sure, from what, and how likely a given coat is to come out right.

use nalgebra::{DVector, Vector3};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::fit::{EFFECTS, Fitted, MIDDLE};
use super::note::{Note, notes};
use super::{GlazeEvidence, Outlook, Place};
use crate::coat::Solids;
use crate::coat::scale::Scale;
use crate::kiln::fault::Thickness;
use crate::units::{Grams, Laydown, SquareCentimetres};

/// A coat is called within when it is right with at least this chance, everything that is not known considered.
pub const SURE: f64 = super::super::window::SURE;
/// A coat is called short or over when that is more likely than not.
const MORE_LIKELY_THAN_NOT: f64 = 0.5;

/// A coat to be put on now.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PooledJob {
    /// Where; the same place that the model was fitted for.
    pub place: Place,
    /// The zone's glazed area.
    pub area: SquareCentimetres,
    /// The bucket as it stands today, with its uncertainty by the age of its last check.
    pub solids: Solids,
}

/// A piece of evidence.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Piece {
    /// A judged coat.
    Pot(Uuid),
    /// A control piece.
    Control(Uuid),
    /// A test tile.
    Tile(Uuid),
    /// The starting laydown.
    Starting,
    /// What is taken for granted of any glaze, class and form.
    Assumptions,
}

/// What a piece of evidence does to the target.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weight {
    /// Which.
    pub piece: Piece,
    /// Its share in what is known of the target; all of them add up to 1.
    pub share: f64,
    /// About what the target's logarithm would change by without it. Fit again without it for the exact figure.
    pub without: f64,
}

/// What the coat should weigh.
#[derive(Debug, Clone, PartialEq)]
pub struct PooledTarget {
    /// The aim on the scale.
    pub wet: Grams,
    /// Its laydown, on the area as it is known.
    pub laydown: Laydown,
    /// 95% interval of the aim itself.
    pub interval: (Grams, Grams),
    /// What comes out right with a chance of at least [`SURE`] if the model is right; `None` where nothing does.
    pub window: Option<(Grams, Grams)>,
    /// What comes out right with that chance with every doubt considered: of the target, of the bucket and of the area. `None`
    /// while not even the aim does.
    pub sure: Option<(Grams, Grams)>,
    /// Judged pots that count.
    pub pots: usize,
    /// Control pieces that count.
    pub controls: usize,
    /// What each piece of evidence weighs, the heaviest first.
    pub weights: Vec<Weight>,
    /// What a potter should know beside the figure.
    pub notes: Vec<Note>,
}

/// How much to put on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Aim {
    /// On the scale.
    pub wet: Grams,
    /// 95% interval of it.
    pub interval: (Grams, Grams),
}

/// How a coat may come out; they add up to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Chances {
    /// Too little.
    pub thin: f64,
    /// As it should be.
    pub right: f64,
    /// Too much.
    pub thick: f64,
}

/// What is said about a coat.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PooledVerdict {
    /// Right, with a chance of at least [`SURE`].
    Within,
    /// The same, but the scale is so coarse that the next step of it would not be.
    ProbablyWithin,
    /// More likely than not too thin.
    Short,
    /// More likely than not too thick.
    Over,
    /// None of these.
    CannotTell,
}

/// One standard uncertainty of a net weight on this scale; a repeatability that nobody has tested counts as half a step.
pub fn reading_standard_uncertainty(scale: &Scale) -> Grams {
    tested(scale).net_standard_uncertainty()
}

/// The scale with the repeatability that it is taken to have.
pub(super) fn tested(scale: &Scale) -> Scale {
    Scale { repeatability: Some(scale.repeatability.unwrap_or(scale.step / 2.0)), ..*scale }
}

/// What is said about a coat with these chances. `is_coarse`: the reading with its own half-width is not all inside the window.
pub fn verdict(chances: &Chances, is_coarse: bool) -> PooledVerdict {
    match chances {
        Chances { right, .. } if *right >= SURE && is_coarse => PooledVerdict::ProbablyWithin,
        Chances { right, .. } if *right >= SURE => PooledVerdict::Within,
        Chances { thin, .. } if *thin > MORE_LIKELY_THAN_NOT => PooledVerdict::Short,
        Chances { thick, .. } if *thick > MORE_LIKELY_THAN_NOT => PooledVerdict::Over,
        _ => PooledVerdict::CannotTell,
    }
}

impl Fitted {
    /// What the fit says of the place it was fitted for: what the evidence leaves open, widened, and how far the job's form may
    /// differ from all others.
    pub fn outlook(&self) -> Outlook {
        let along = self.job_direction();
        let variance = along.dot(&(&self.covariance * &along)) * self.assume.inflation.powi(2) + self.design.job_left;
        Outlook {
            middle: along.dot(&self.at),
            middle_sd: variance.sqrt(),
            ln_half_width: self.half_width().ln(),
            ln_half_width_sd: self.ln_half_width_sd(),
            ln_steepness: self.steepness().ln(),
        }
    }

    /// Logarithm of the right laydown for the job that the model was fitted for, and one standard uncertainty of it.
    pub fn middle(&self) -> (f64, f64) {
        self.outlook().middle()
    }

    /// As [`Outlook::aim`], without all that a target says beside it: for a curve of grams over the sizes of a class, fitted
    /// once for a form that has no pots yet.
    pub fn aim(&self, job: &PooledJob) -> Option<Aim> {
        self.outlook().aim(job.area, &job.solids)
    }

    /// The target for a job at the place that the model was fitted for; `None` where a figure of it cannot be.
    pub fn target(&self, job: &PooledJob, evidence: &GlazeEvidence) -> Option<PooledTarget> {
        let outlook = self.outlook();
        let Aim { wet, interval } = outlook.aim(job.area, &job.solids)?;
        Some(PooledTarget {
            wet,
            laydown: Laydown::new(outlook.middle().0.exp()),
            interval,
            window: outlook.window(wet),
            sure: outlook.sure(&job.solids, wet, Grams::ZERO),
            pots: self.pots(),
            controls: self.controls(),
            weights: self.weights(),
            notes: self.notes(evidence),
        })
    }

    /// Judged pots that count.
    pub fn pots(&self) -> usize {
        self.items.iter().filter(|item| matches!(item.piece, Piece::Pot(_))).count()
    }

    /// Control pieces that count.
    pub fn controls(&self) -> usize {
        self.items.iter().filter(|item| matches!(item.piece, Piece::Control(_))).count()
    }

    /// What a potter should know beside the figure.
    pub fn notes(&self, evidence: &GlazeEvidence) -> Vec<Note> {
        notes(self, evidence)
    }

    /// As [`Outlook::chances`].
    pub fn chances(&self, job: &PooledJob, net: Grams, standard_uncertainty: Grams) -> Option<Chances> {
        self.outlook().chances(job.area, &job.solids, net, standard_uncertainty)
    }

    /// The direction in which the job's middle changes with the parameters.
    fn job_direction(&self) -> DVector<f64> {
        let mut along = DVector::zeros(self.at.len());
        along[MIDDLE] = 1.0;
        for (effect, size) in &self.design.job_sizes {
            along[EFFECTS + effect] = *size;
        }
        along
    }

    /// What each piece of evidence weighs. The information about all parameters is a sum of what each piece brings; seen
    /// along the direction in which the target changes, it falls into shares. What the pieces bring below nothing, as a slip
    /// does, counts as nothing.
    pub fn weights(&self) -> Vec<Weight> {
        let seen = &self.covariance * self.job_direction();
        let weigh = |piece, slope: f64, curvature: f64| Weight { piece, share: (-curvature).max(0.0), without: -slope };
        let mut weights = Vec::with_capacity(self.items.len() + self.tile_ids.len() + 2);
        for item in &self.items {
            let local = self.local(item, self.middle_at(&self.at, item.place), &self.at);
            let mut along = Vector3::zeros();
            for (parameter, to, size) in self.along(item.place) {
                along[to] += seen[parameter] * size;
            }
            let curvature = along.dot(&(local.curvature * along));
            weights.push(weigh(item.piece, local.slope.dot(&along) * item.weight, curvature * item.weight));
        }
        if let Some(tiles) = self.tiles {
            let (_, slope, curvature) = tiles.log_likelihood(self.at[MIDDLE], self.assume.lapse);
            let each = seen[MIDDLE] / self.tile_ids.len() as f64;
            let of_each = |id: &Uuid| weigh(Piece::Tile(*id), slope * each, curvature * each * seen[MIDDLE]);
            weights.extend(self.tile_ids.iter().map(of_each));
        }
        let precision = self.assume.starting_sd.powi(-2);
        let starting_slope = (self.starting - self.at[MIDDLE]) * precision * seen[MIDDLE];
        weights.push(weigh(Piece::Starting, starting_slope, -precision * seen[MIDDLE].powi(2)));
        // Everything at the top balances: what is left is the priors of the others.
        let slope = -weights.iter().map(|weight| -weight.without).sum::<f64>();
        let others = [0.0, self.assume.half_width_sd.powi(-2), self.assume.steepness_sd.powi(-2)];
        let curvature: f64 =
            seen.iter().enumerate().map(|(at, seen)| others.get(at).copied().unwrap_or(1.0) * seen * seen).sum();
        weights.push(weigh(Piece::Assumptions, slope, -curvature - self.design.job_left));
        let all: f64 = weights.iter().map(|weight| weight.share).sum();
        for weight in &mut weights {
            weight.share /= all;
        }
        weights.sort_by(|one, other| other.share.total_cmp(&one.share).then(one.piece.cmp(&other.piece)));
        weights
    }

    /// How many judged pots came out so.
    pub(super) fn count(&self, thickness: Thickness) -> usize {
        let is_so = |piece: &Piece, found| matches!(piece, Piece::Pot(_)) && found == thickness;
        self.items.iter().filter(|item| is_so(&item.piece, item.thickness)).count()
    }
}
