//! The most probable parameters, and how sure they are.

use nalgebra::{DMatrix, DVector, Matrix3, Vector3};
use std::collections::BTreeMap;
use std::f64::consts::{PI, TAU};
use uuid::Uuid;

use super::design::Design;
use super::{Assumptions, GlazeEvidence, Piece, Place};
use crate::coat::target::STARTING_LAYDOWN;
use crate::kiln::fault::Thickness;
use crate::learning::climb::{LogPosterior, climb};
use crate::learning::ordered::Likelihood;
use crate::units::Laydown;

/// Evidence that weighs less than this is too old to count.
const TOO_OLD: f64 = 1e-3;
/// A control piece is right within so much of the usual half-width.
const CONTROL_SHARE: f64 = 0.5;
/// Control pieces on one place count at most as so many: they were aimed at one target, so that more of them bound no better.
/// Chosen by simulation: without this, intervals are too narrow where many steered pots are saved as control pieces.
const MOST_CONTROLS: f64 = 2.0;
/// Logarithm of the density of tiles that are a slip: anywhere from 1 to 25 g per 100 cm².
const LN_TILE_SLIP: f64 = -1.169;
/// Where middle, ln half-width and ln steepness stand among the parameters; effects follow.
pub(super) const MIDDLE: usize = 0;
const HALF_WIDTH: usize = 1;
const STEEPNESS: usize = 2;
pub(super) const EFFECTS: usize = 3;

/// A judged pot or a control piece, as the likelihood needs it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Item {
    pub(super) piece: Piece,
    pub(super) place: usize,
    /// Logarithm of its laydown.
    pub(super) x: f64,
    /// Variance of that.
    pub(super) variance: f64,
    /// What it counts for its age.
    pub(super) weight: f64,
    pub(super) thickness: Thickness,
}

/// What the tiles say together.
#[derive(Debug, Clone, Copy)]
pub(super) struct Tiles {
    /// Logarithm of the median laydown.
    pub(super) x: f64,
    /// One standard deviation of the middle of the window from it.
    pub(super) sd: f64,
}

/// Where to begin: what was found before one more pot came.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Start {
    /// Logarithm of the middle of the window.
    pub middle: f64,
    /// Logarithm of its half-width.
    pub ln_half_width: f64,
    /// Logarithm of the steepness.
    pub ln_steepness: f64,
}

/// The fitted model of one glaze, for jobs of one place.
#[derive(Debug, Clone)]
pub struct Fitted {
    pub(super) assume: Assumptions,
    pub(super) design: Design,
    pub(super) items: Vec<Item>,
    pub(super) tiles: Option<Tiles>,
    pub(super) tile_ids: Vec<Uuid>,
    pub(super) starting: f64,
    prior_half_width: f64,
    pub(super) at: DVector<f64>,
    pub(super) covariance: DMatrix<f64>,
}

/// How the likelihood of one piece changes with its own middle, ln half-width and ln steepness.
pub(super) struct Local {
    pub(super) value: f64,
    pub(super) slope: Vector3<f64>,
    pub(super) curvature: Matrix3<f64>,
    /// The chance that it is no slip.
    pub(super) meant: f64,
}

impl Fitted {
    /// Fits the model for a job at `job` on `day`; `start` from an earlier fit saves time and changes nothing else. `None` when
    /// the job's figures cannot be or no finite fit is found.
    pub fn new(
        evidence: &GlazeEvidence,
        job: &Place,
        day: f64,
        assume: &Assumptions,
        start: Option<Start>,
    ) -> Option<Fitted> {
        if !(is_share(job.area_relative_uncertainty) && day.is_finite()) {
            return None;
        }
        let (places, items) = items(evidence, day, assume);
        let mut pieces = vec![0; places.len()];
        for item in &items {
            pieces[item.place] += 1;
        }
        let starting = if is_laydown(evidence.starting) { evidence.starting } else { STARTING_LAYDOWN };
        let (tiles, tile_ids) = tiles(evidence, assume);
        let mut fitted = Fitted {
            assume: *assume,
            design: Design::new(places, &pieces, job, assume),
            items,
            tiles,
            tile_ids,
            starting: starting.value().ln(),
            prior_half_width: assume.half_width_of(evidence.sensitivity).ln(),
            at: DVector::zeros(0),
            covariance: DMatrix::zeros(0, 0),
        };
        for item in &mut fitted.items {
            item.variance += fitted.design.left[item.place];
        }
        let start = fitted.best_start(start);
        let top = climb(start, |at| fitted.log_posterior(at))?;
        (fitted.at, fitted.covariance) = (top.place, top.covariance);
        (fitted.at.iter().chain(fitted.covariance.iter()).all(|value| value.is_finite())).then_some(fitted)
    }

    /// What to start from once there is one more pot.
    pub fn start(&self) -> Start {
        Start { middle: self.at[MIDDLE], ln_half_width: self.at[HALF_WIDTH], ln_steepness: self.at[STEEPNESS] }
    }

    /// Half the width of the window in logarithms: at its ends thin, or thick, is as likely as not.
    pub fn half_width(&self) -> f64 {
        self.at[HALF_WIDTH].exp()
    }

    /// How steeply the odds change with the logarithm of the laydown.
    pub fn steepness(&self) -> f64 {
        self.at[STEEPNESS].exp()
    }

    /// The most probable parameters (middle, ln half-width, ln steepness, effects as multiples of their sizes) and their
    /// covariance by rows, not widened.
    pub fn parameters(&self) -> (Vec<f64>, Vec<f64>) {
        (self.at.iter().copied().collect(), self.covariance.transpose().iter().copied().collect())
    }

    /// One standard uncertainty of the logarithm of the half-width.
    pub(super) fn ln_half_width_sd(&self) -> f64 {
        self.covariance[(HALF_WIDTH, HALF_WIDTH)].sqrt()
    }

    /// The middle of the window at a place of the evidence.
    pub(super) fn middle_at(&self, at: &DVector<f64>, place: usize) -> f64 {
        at[MIDDLE] + self.design.sizes[place].iter().map(|(effect, size)| at[EFFECTS + effect] * size).sum::<f64>()
    }

    /// The most probable of some places to start from: a posterior with slips can have more than one top.
    fn best_start(&self, known: Option<Start>) -> DVector<f64> {
        let right = median(self.items.iter().filter(|item| item.thickness == Thickness::Right).map(|item| item.x));
        let ends = [Thickness::Thin, Thickness::Thick]
            .map(|thickness| median(self.items.iter().filter(|item| item.thickness == thickness).map(|item| item.x)));
        let between = match ends {
            [Some(thin), Some(thick)] => Some((thin + thick) / 2.0),
            [Some(thin), None] => Some(thin + self.prior_half_width.exp()),
            [None, Some(thick)] => Some(thick - self.prior_half_width.exp()),
            [None, None] => None,
        };
        let usual = |middle: f64| Start {
            middle,
            ln_half_width: self.prior_half_width,
            ln_steepness: self.assume.steepness.ln(),
        };
        let cold = [Some(self.starting), right, between, self.tiles.map(|tiles| tiles.x)];
        let starts = known.into_iter().chain(cold.into_iter().flatten().map(usual));
        let places = starts.map(|start| {
            let mut at = DVector::zeros(EFFECTS + self.design.count);
            at[MIDDLE] = start.middle;
            at[HALF_WIDTH] = start.ln_half_width;
            at[STEEPNESS] = start.ln_steepness;
            let value = self.log_posterior(&at).value;
            (at, value)
        });
        let best = places.reduce(|best, other| if other.1 > best.1 { other } else { best });
        best.map_or_else(|| DVector::zeros(EFFECTS + self.design.count), |(at, _)| at)
    }

    /// Logarithm of the posterior, with its derivatives by all parameters.
    pub(super) fn log_posterior(&self, at: &DVector<f64>) -> LogPosterior {
        let mut sum = LogPosterior::flat(at.len());
        let assume = &self.assume;
        sum.normal(&[(MIDDLE, 1.0)], at[MIDDLE] - self.starting, assume.starting_sd);
        sum.normal(&[(HALF_WIDTH, 1.0)], at[HALF_WIDTH] - self.prior_half_width, assume.half_width_sd);
        sum.normal(&[(STEEPNESS, 1.0)], at[STEEPNESS] - assume.steepness.ln(), assume.steepness_sd);
        for effect in EFFECTS..at.len() {
            sum.normal(&[(effect, 1.0)], at[effect], 1.0);
        }
        if let Some(tiles) = self.tiles {
            let (value, slope, curvature) = tiles.log_likelihood(at[MIDDLE], assume.lapse);
            sum.value += value;
            sum.slope[MIDDLE] += slope;
            sum.curvature[(MIDDLE, MIDDLE)] += curvature;
        }
        // Pots of one place change alike with its effects: they are added up before.
        let middles: Vec<f64> = (0..self.design.places.len()).map(|place| self.middle_at(at, place)).collect();
        let mut blocks = vec![(Vector3::zeros(), Matrix3::zeros()); middles.len()];
        for item in &self.items {
            let local = self.local(item, middles[item.place], at);
            sum.value += local.value * item.weight;
            let (slope, curvature) = &mut blocks[item.place];
            *slope += local.slope * item.weight;
            *curvature += local.curvature * item.weight;
        }
        for (place, (slope, curvature)) in blocks.iter().enumerate() {
            let along = self.along(place);
            for (row, from, size) in &along {
                sum.slope[*row] += slope[*from] * size;
                for (column, to, other) in &along {
                    sum.curvature[(*row, *column)] += curvature[(*from, *to)] * size * other;
                }
            }
        }
        sum
    }

    /// The parameters that a place's pieces change with: which, by which of the three local ones, and by how much.
    pub(super) fn along(&self, place: usize) -> Vec<(usize, usize, f64)> {
        let effects = self.design.sizes[place].iter().map(|(effect, size)| (EFFECTS + effect, MIDDLE, *size));
        [(MIDDLE, MIDDLE, 1.0), (HALF_WIDTH, HALF_WIDTH, 1.0), (STEEPNESS, STEEPNESS, 1.0)]
            .into_iter()
            .chain(effects)
            .collect()
    }

    /// Logarithm of the chance of what a piece showed.
    pub(super) fn local(&self, item: &Item, middle: f64, at: &DVector<f64>) -> Local {
        // A control piece was chosen because it is right: that says where the window lies, and nothing of how wide or steep it is.
        let (ln_half_width, ln_steepness, moves) = match item.piece {
            Piece::Control(_) => (self.prior_half_width + CONTROL_SHARE.ln(), self.assume.steepness.ln(), 0.0),
            _ => (at[HALF_WIDTH], at[STEEPNESS], 1.0),
        };
        let steepness = ln_steepness.exp();
        // How the flattened steepness changes with the logarithm of the plain one.
        let flat = 1.0 / (1.0 + PI / 8.0 * steepness * steepness * item.variance);
        let s = steepness * flat.sqrt();
        let flat_by = -2.0 * flat * (1.0 - flat);
        let d = s * (middle - item.x);
        let w = s * ln_half_width.exp();
        let of = Likelihood::of(item.thickness, d, w);
        // Derivatives of (d, w) by (middle, ln h, ln s).
        let by_d = Vector3::new(s, 0.0, flat * d * moves);
        let by_w = Vector3::new(0.0, w, flat * w) * moves;
        let twice = flat_by + flat * flat;
        let bent_d = Matrix3::new(0.0, 0.0, flat * s, 0.0, 0.0, 0.0, flat * s, 0.0, twice * d) * moves;
        let bent_w = Matrix3::new(0.0, 0.0, 0.0, 0.0, w, flat * w, 0.0, flat * w, twice * w) * moves;
        let slope = by_d * of.by_d + by_w * of.by_w;
        let mixed = by_d * by_w.transpose();
        let curvature = by_d * by_d.transpose() * of.by_dd
            + by_w * by_w.transpose() * of.by_ww
            + (mixed + mixed.transpose()) * of.by_dw
            + bent_d * of.by_d
            + bent_w * of.by_w;
        // A slip shows each of the three alike.
        let lapse = self.assume.lapse;
        let chance = (1.0 - lapse) * of.value.exp();
        let any = chance + lapse / 3.0;
        let (value, meant) = if lapse > 0.0 { (any.ln(), chance / any) } else { (of.value, 1.0) };
        Local {
            value,
            slope: slope * meant,
            curvature: curvature * meant + slope * slope.transpose() * (meant * (1.0 - meant)),
            meant,
        }
    }
}

impl Tiles {
    /// Logarithm of the chance of the tiles, and its first and second derivative by the middle.
    pub(super) fn log_likelihood(&self, middle: f64, lapse: f64) -> (f64, f64, f64) {
        let off = (middle - self.x) / self.sd;
        let ln_normal = -off * off / 2.0 - self.sd.ln() - TAU.ln() / 2.0;
        let (meant, slip) = ((1.0 - lapse) * ln_normal.exp(), lapse * LN_TILE_SLIP.exp());
        if lapse <= 0.0 {
            return (ln_normal, -off / self.sd, -1.0 / self.sd.powi(2));
        }
        let share = meant / (meant + slip);
        let slope = -off / self.sd;
        let curvature = -share / self.sd.powi(2) + share * (1.0 - share) * slope * slope;
        ((meant + slip).ln(), share * slope, curvature)
    }
}

/// The pieces that count, and the places they lie at.
fn items(evidence: &GlazeEvidence, day: f64, assume: &Assumptions) -> (Vec<Place>, Vec<Item>) {
    let judged: BTreeMap<Uuid, Thickness> = evidence.pots.iter().map(|pot| (pot.id, pot.thickness)).collect();
    let is_right = |id: &Uuid| judged.get(id).is_none_or(|thickness| *thickness == Thickness::Right);
    let controls: Vec<_> = evidence.controls.iter().filter(|control| is_right(&control.id)).collect();
    let saved: std::collections::BTreeSet<Uuid> = controls.iter().map(|control| control.id).collect();
    let pots = evidence
        .pots
        .iter()
        .filter(|pot| !saved.contains(&pot.id))
        .map(|pot| (Piece::Pot(pot.id), pot.place, pot.laydown, pot.relative_uncertainty, pot.day, pot.thickness));
    let controls = controls.iter().map(|control| {
        let (right, uncertainty) = (Thickness::Right, control.relative_uncertainty);
        (Piece::Control(control.id), control.place, control.laydown, uncertainty, control.day, right)
    });
    let mut places: Vec<Place> = Vec::new();
    let mut items: Vec<Item> = Vec::new();
    for (piece, place, laydown, uncertainty, on, thickness) in pots.chain(controls) {
        let weight = 0.5f64.powf((day - on).max(0.0) / assume.half_life);
        let is_usable = is_laydown(laydown) && is_share(uncertainty) && is_share(place.area_relative_uncertainty);
        if !(is_usable && on.is_finite() && weight >= TOO_OLD) {
            continue;
        }
        let known = places.iter().position(|known| *known == place);
        let place = known.unwrap_or_else(|| {
            places.push(place);
            places.len() - 1
        });
        let (x, variance) = (laydown.value().ln(), uncertainty * uncertainty);
        items.push(Item { piece, place, x, variance, weight, thickness });
    }
    let mut saved_at = vec![0.0; places.len()];
    let is_control = |item: &Item| matches!(item.piece, Piece::Control(_));
    for item in items.iter().filter(|item| is_control(item)) {
        saved_at[item.place] += 1.0;
    }
    for item in items.iter_mut().filter(|item| is_control(item)) {
        item.weight *= (MOST_CONTROLS / saved_at[item.place]).min(1.0);
    }
    (places, items)
}

/// What the tiles say together: their median, so that one slip among three moves little.
fn tiles(evidence: &GlazeEvidence, assume: &Assumptions) -> (Option<Tiles>, Vec<Uuid>) {
    let usable: Vec<_> =
        evidence.tiles.iter().filter(|tile| is_laydown(tile.laydown) && is_share(tile.relative_uncertainty)).collect();
    let count = usable.len() as f64;
    let squares: f64 =
        usable.iter().map(|tile| tile.relative_uncertainty.powi(2) + assume.tile_to_tile.powi(2)).sum::<f64>() / count;
    // A median of many is less sure than a mean, by √(π/2).
    let of_median = if usable.len() > 2 { PI / 2.0 } else { 1.0 };
    let together = median(usable.iter().map(|tile| tile.laydown.value().ln()))
        .map(|x| Tiles { x, sd: (squares * of_median / count).sqrt().hypot(assume.tile_to_pot) });
    (together, usable.iter().map(|tile| tile.id).collect())
}

/// The middle one, or between the middle two.
fn median(values: impl Iterator<Item = f64>) -> Option<f64> {
    let mut values: Vec<f64> = values.collect();
    values.sort_by(f64::total_cmp);
    let upper = values.get(values.len() / 2)?;
    let lower = values.get((values.len().max(1) - 1) / 2)?;
    Some((lower + upper) / 2.0)
}

/// A laydown that a logarithm can be taken of without losing its figures.
fn is_laydown(laydown: Laydown) -> bool {
    (1e-6..1e6).contains(&laydown.value())
}

/// An uncertainty that says something.
pub(super) fn is_share(uncertainty: f64) -> bool {
    (0.0..10.0).contains(&uncertainty)
}
