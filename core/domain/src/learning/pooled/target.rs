//! What the model says of one job: how much, how sure, from what, and how likely a given coat is to come out right.

use nalgebra::{DVector, Vector3};
use uuid::Uuid;

use super::fit::{EFFECTS, Fitted, MIDDLE, is_share};
use super::note::{Note, notes};
use super::{GlazeEvidence, Place};
use crate::coat::Solids;
use crate::coat::coverage::NORMAL_95;
use crate::coat::scale::Scale;
use crate::kiln::fault::Thickness;
use crate::learning::ordered;
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
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
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
    Scale { repeatability: Some(scale.repeatability.unwrap_or(scale.step / 2.0)), ..*scale }.net_standard_uncertainty()
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
    /// Logarithm of the right laydown for the job that the model was fitted for, and one standard uncertainty of it: what the
    /// evidence leaves open, widened, and how far the job's form may differ from all others.
    pub fn middle(&self) -> (f64, f64) {
        let along = self.job_direction();
        let variance = along.dot(&(&self.covariance * &along)) * self.assume.inflation.powi(2) + self.design.job_left;
        (along.dot(&self.at), variance.sqrt())
    }

    /// The aim for a job at the place that the model was fitted for, without all that a target says beside it: for a curve of
    /// grams over the sizes of a class, fitted once for a form that has no pots yet. `None` where a figure cannot be.
    pub fn aim(&self, job: &PooledJob) -> Option<Aim> {
        if !(job.area.is_positive() && is_share(job.solids.relative_uncertainty)) {
            return None;
        }
        let (middle, middle_sd) = self.middle();
        let half_width = NORMAL_95 * middle_sd.hypot(job.solids.relative_uncertainty);
        let wet = |x: f64| job.solids.wet(Laydown::new(x.exp()).dry_on(job.area));
        let aim = Aim { wet: wet(middle), interval: (wet(middle - half_width), wet(middle + half_width)) };
        let is_usable = aim.wet.is_positive() && aim.interval.0.is_positive() && aim.interval.1.value().is_finite();
        is_usable.then_some(aim)
    }

    /// The target for a job at the place that the model was fitted for; `None` where a figure of it cannot be.
    pub fn target(&self, job: &PooledJob, evidence: &GlazeEvidence) -> Option<PooledTarget> {
        let Aim { wet, interval } = self.aim(job)?;
        let (middle, middle_sd) = self.middle();
        let around = |half: f64| (wet * (-half).exp(), wet * half.exp());
        let window = ordered::half_width_at(SURE, self.half_width(), self.steepness());
        Some(PooledTarget {
            wet,
            laydown: Laydown::new(middle.exp()),
            interval,
            window: window.map(around),
            sure: self.sure_half_width(middle_sd.hypot(job.solids.relative_uncertainty)).map(around),
            pots: self.items.iter().filter(|item| matches!(item.piece, Piece::Pot(_))).count(),
            controls: self.items.iter().filter(|item| matches!(item.piece, Piece::Control(_))).count(),
            weights: self.weights(),
            notes: notes(self, evidence),
        })
    }

    /// How a coat of `net` grams on the job may come out, everything that is not known considered: the reading (one standard
    /// uncertainty), the bucket, the area, the target and the width of the window. `None` where a figure cannot be.
    pub fn chances(&self, job: &PooledJob, net: Grams, standard_uncertainty: Grams) -> Option<Chances> {
        let laydown = Laydown::of(job.solids.dry(net), job.area);
        let reading = standard_uncertainty / net;
        let is_coat = net.is_positive() && laydown.is_positive() && laydown.value().is_finite();
        if !(is_coat && is_share(reading) && is_share(job.solids.relative_uncertainty)) {
            return None;
        }
        let (middle, middle_sd) = self.middle();
        let sd = middle_sd.hypot(job.solids.relative_uncertainty).hypot(reading);
        Some(self.chances_at(laydown.value().ln() - middle, sd))
    }

    /// The chances so far above the aim, in logarithms, with one standard uncertainty of that distance.
    fn chances_at(&self, above: f64, sd: f64) -> Chances {
        let (mut thin, mut thick, mut all) = (0.0, 0.0, 0.0);
        for (width_off, width_weight) in THREE_POINTS {
            let half_width = (self.at[1] + width_off * self.ln_half_width_sd()).exp();
            let s = self.steepness();
            for step in -STEPS..=STEPS {
                let off = f64::from(step) * MOST_OFF / f64::from(STEPS);
                let weight = width_weight * (-off * off / 2.0).exp();
                let d = -s * (above + off * sd);
                thin += weight * ordered::logistic(d - s * half_width);
                thick += weight * ordered::logistic(-d - s * half_width);
                all += weight;
            }
        }
        let (thin, thick) = (thin / all, thick / all);
        Chances { thin, right: (1.0 - thin - thick).max(0.0), thick }
    }

    /// How far from the aim a coat is still right with a chance of at least [`SURE`].
    fn sure_half_width(&self, sd: f64) -> Option<f64> {
        let is_sure = |above: f64| self.chances_at(above, sd).right >= SURE;
        // Nothing wider is a window.
        let (mut from, mut to) = (0.0, 4.0 * self.half_width());
        if !is_sure(from) {
            return None;
        }
        for _ in 0..HALVINGS {
            let between = (from + to) / 2.0;
            if is_sure(between) { from = between } else { to = between }
        }
        Some(from)
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
    fn weights(&self) -> Vec<Weight> {
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

/// Nodes and weights of Gauss and Hermite for three points, for a standard normal variable (Abramowitz & Stegun, 25.4.46).
const THREE_POINTS: [(f64, f64); 3] =
    [(-1.732_050_807_568_877_2, 1.0 / 6.0), (0.0, 2.0 / 3.0), (1.732_050_807_568_877_2, 1.0 / 6.0)];
/// The trapezoidal rule over a normal density reaches so many standard deviations out, in so many steps to each side; its
/// error is far below a thousandth.
const MOST_OFF: f64 = 4.5;
const STEPS: i32 = 45;
/// Halvings until the end of a window is known to far less than a milligram.
const HALVINGS: usize = 24;
