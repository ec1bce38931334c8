//! What a coat should weigh today, where that figure comes from, and how sure it is.
//!
//! The uncertainty is a budget in the sense of the GUM (JCGM 100:2008), kept in logarithms because every step of the
//! calculation multiplies. Its parts:
//!
//! | part | one standard uncertainty |
//! |---|---|
//! | from pot to pot | sample standard deviation of ln(wet), pooled with an assumed 5% worth 8 degrees of freedom |
//! | scale | that of each control's net weight |
//! | specific gravity | control's side (the same bucket as a rule, so not averaged down) and today's |
//! | area | none for the same form; another form: see [`carry_over`] |
//! | tile | 10% from tile to pot, plus each tile's own |
//! | starting laydown | ln(10/3) / (2 × 1.96), the plausible span 3 to 10 g per 100 cm² taken as 95% |

use super::Solids;
use super::coverage::{NORMAL_95, student_t_95};
use crate::coded::coded;
use crate::form::{ShapeClass, Zone};
use crate::units::{Grams, Laydown, Millilitres, SquareCentimetres};

/// Spread of well-made coats from pot to pot. Common practice, no source.
const POT_TO_POT: f64 = 0.05;
/// What the assumed spread weighs: believed to within a quarter of itself, `ν = ½ (¼)⁻²` (JCGM 100:2008, G.4.2).
const POT_TO_POT_FREEDOM: f64 = 8.0;
/// How much a coat differs between classes of shape. Common practice, no source.
const OTHER_CLASS: f64 = 0.08;
/// How far one dip lies otherwise on one side than over all. Common practice, no source.
const SIDE_OF_DIP: f64 = 0.05;
/// From a test tile to a pot. Common practice, no source.
const TILE_TO_POT: f64 = 0.10;
/// Plausible laydowns, in grams per 100 cm²: common practice, no source.
const PLAUSIBLE: (f64, f64) = (3.0, 10.0);

/// Where a glaze starts before the studio knows better: 5.5 g per 100 cm². Common practice, no source.
pub const STARTING_LAYDOWN: Laydown = Laydown::new(5.5);

coded! {
    /// How much a glaze minds a thicker or thinner coat.
    "sensitivity" Sensitivity {
        /// Forgiving.
        Low = "low",
        /// As most.
        Medium = "medium",
        /// Runs, breaks or goes dry at little more or less.
        High = "high",
    }
}

impl Sensitivity {
    /// How far a coat may be out either way, as a fraction of the aim. Common practice, no source.
    pub const fn tolerance(self) -> f64 {
        match self {
            Self::Low => 0.15,
            Self::Medium => 0.07,
            Self::High => 0.04,
        }
    }
}

/// The coat to be put on now.
#[derive(Debug, Clone, PartialEq)]
pub struct Job {
    /// Name of the form.
    pub form_name: String,
    /// The zone to be glazed.
    pub zone: Zone,
    /// What the form holds, where known.
    pub capacity: Option<Millilitres>,
    /// Its class of shape.
    pub class: ShapeClass,
    /// The bucket as it stands today.
    pub solids: Solids,
    /// How much the glaze minds.
    pub sensitivity: Sensitivity,
}

/// A coat the potter knows to be right.
#[derive(Debug, Clone, PartialEq)]
pub struct Control {
    /// What it weighed wet.
    pub wet: Grams,
    /// The bucket as it stood then.
    pub solids: Solids,
    /// Glazed area of its zone.
    pub area: SquareCentimetres,
    /// One standard uncertainty of that area, as a fraction of it.
    pub area_relative_uncertainty: f64,
    /// Its class of shape.
    pub class: ShapeClass,
    /// What its form holds, where known.
    pub capacity: Option<Millilitres>,
    /// Name of its form.
    pub form_name: String,
    /// Whether its form is the job's form, at the same size.
    pub same_form: bool,
    /// One standard uncertainty of its net weight.
    pub net_standard_uncertainty: Grams,
}

impl Control {
    /// The same as evidence of one side: a dip over all lies about as thick inside as outside.
    #[must_use]
    pub fn of_one_side(self) -> Control {
        Control {
            area_relative_uncertainty: self.area_relative_uncertainty.hypot(SIDE_OF_DIP),
            same_form: false,
            // What the forms hold relates like zones.
            capacity: None,
            ..self
        }
    }
}

/// A test tile that came out right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TileEvidence {
    /// Its laydown.
    pub laydown: Laydown,
    /// One standard uncertainty of the laydown, as a fraction of it.
    pub relative_uncertainty: f64,
}

/// All that is known about how thick this glaze should lie.
#[derive(Debug, Clone, PartialEq)]
pub struct Evidence {
    /// Control pieces of this glaze and zone, on any form.
    pub controls: Vec<Control>,
    /// Test tiles of this glaze.
    pub tiles: Vec<TileEvidence>,
    /// The glaze's starting laydown.
    pub starting: Laydown,
}

/// Where a target comes from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Source {
    /// Control pieces of this very form.
    ControlSameForm,
    /// Control pieces of another form, through both areas.
    ControlOtherSizeByArea {
        /// The other form.
        form_name: String,
    },
    /// Control pieces of another form of this class, through both capacities.
    ControlOtherSizeByCapacity {
        /// The other form.
        form_name: String,
    },
    /// Test tiles.
    Tile,
    /// The glaze's starting laydown.
    Starting,
    /// The targets of the inside and the outside, for one dip over both.
    Sides,
    /// An aim that was told with the reading, as in a potter's own spreadsheet.
    Imported,
    /// Everything known of the glaze: [`crate::learning::pooled`].
    Pooled {
        /// Judged pots.
        pots: usize,
        /// Control pieces.
        controls: usize,
        /// Whether a coat on the aim is right with the chance that is asked for.
        is_sure: bool,
    },
    /// An amount that the potter keeps.
    Kept,
}

impl Source {
    /// The code that is stored; it never changes.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::ControlSameForm => "control",
            Self::ControlOtherSizeByArea { .. } => "control_by_area",
            Self::ControlOtherSizeByCapacity { .. } => "control_by_capacity",
            Self::Tile => "tile",
            Self::Starting => "starting",
            Self::Sides => "sides",
            Self::Imported => "told",
            Self::Pooled { .. } => "pooled",
            Self::Kept => "kept",
        }
    }
}

/// What the coat should weigh.
#[derive(Debug, Clone, PartialEq)]
pub struct Target {
    /// The aim on the scale.
    pub wet: Grams,
    /// Least that is right.
    pub low: Grams,
    /// Most that is right.
    pub high: Grams,
    /// 95% interval of the aim itself.
    pub interval: (Grams, Grams),
    /// Dry glaze in the aim.
    pub dry: Grams,
    /// Laydown of the aim.
    pub laydown: Laydown,
    /// Where it comes from.
    pub source: Source,
    /// Control pieces it rests on.
    pub pots: usize,
    /// How far the coat may be out either way, as a fraction of the aim.
    pub tolerance: f64,
}

/// Why there is no target.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum TargetError {
    /// The zone has no area.
    NoArea {
        /// The form.
        form_name: String,
    },
    /// A control piece whose figures cannot be.
    UnusableControl {
        /// The control's form.
        form_name: String,
    },
    /// A tile whose laydown cannot be.
    UnusableTile,
    /// The glaze has no starting laydown either.
    NothingToGoBy,
    /// The budget came out as no number.
    NoNumber,
}

/// How a coat on a control piece's form becomes one on the job's form.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CarryOver {
    /// Area of the job's zone over that of the control's.
    pub area_ratio: f64,
    /// One standard uncertainty of the ratio, as a fraction of it.
    pub relative_uncertainty: f64,
    /// Whether the ratio came from the two capacities.
    pub by_capacity: bool,
}

/// The ratio of areas from a control piece to the job. The same form: exactly 1. Otherwise the surer of two ways:
///
/// - by area, `A₂/A₁`: both areas' uncertainties, and 8% more for another class of shape;
/// - by capacity, for forms of one class, as [`ShapeClass::growth`] says: from 3% on, since the class's own factor cancels.
pub fn carry_over(control: &Control, job: &Job) -> CarryOver {
    if control.same_form {
        return CarryOver { area_ratio: 1.0, relative_uncertainty: 0.0, by_capacity: false };
    }
    let same_class = control.class == job.class;
    let areas = control.area_relative_uncertainty.hypot(job.zone.relative_uncertainty);
    let by_area = CarryOver {
        area_ratio: job.zone.area / control.area,
        relative_uncertainty: areas.hypot(if same_class { 0.0 } else { OTHER_CLASS }),
        by_capacity: false,
    };
    let capacities = control.capacity.zip(job.capacity).filter(|_| same_class);
    match capacities.and_then(|(theirs, ours)| job.class.growth(job.zone.kind, theirs, ours)) {
        Some(growth) if by_area.relative_uncertainty > growth.relative_uncertainty => {
            CarryOver { area_ratio: growth.ratio, relative_uncertainty: growth.relative_uncertainty, by_capacity: true }
        }
        _ => by_area,
    }
}

/// The target for a job from the best evidence there is: control pieces of the same form, else of the other form that
/// gives the surest figure, else test tiles, else the starting laydown.
///
/// # Errors
/// When the zone has no area, the evidence used is no evidence, or a figure is no number.
pub fn target(job: &Job, evidence: &Evidence) -> Result<Target, TargetError> {
    if !job.zone.area.is_positive() {
        return Err(TargetError::NoArea { form_name: job.form_name.clone() });
    }
    if !(job.zone.relative_uncertainty >= 0.0 && job.solids.relative_uncertainty >= 0.0) {
        return Err(TargetError::NoNumber);
    }
    let aim = match from_controls(job, &evidence.controls)? {
        Some(aim) => aim,
        None if !evidence.tiles.is_empty() => from_tiles(job, &evidence.tiles)?,
        None => from_starting(job, evidence.starting)?,
    };
    aim.into_target(job)
}

/// The target of one dip over inside and outside, from those of the two: both laydowns on what each covers, where the coats
/// do not overlap. `sides` are the targets and the areas of their zones. Their errors are taken to go together, which is the
/// careful side.
pub fn of_both_sides(job: &Job, sides: [(&Target, SquareCentimetres); 2]) -> Target {
    let [(inside, inside_area), (outside, outside_area)] = sides;
    // Where the coats overlap a dip covers the wall once.
    let once = job.zone.area / (inside_area + outside_area);
    let both = |grams: fn(&Target) -> Grams| (grams(inside) + grams(outside)) * once;
    let interval = (both(|target| target.interval.0), both(|target| target.interval.1));
    Target {
        pots: inside.pots + outside.pots,
        ..Target::within_tolerance(job, both(|target| target.wet), interval, Source::Sides)
    }
}

/// The target that a potter keeps, in wet grams of today's bucket: it is as sure as the potter.
pub fn kept(job: &Job, wet: Grams) -> Target {
    Target::within_tolerance(job, wet, (wet, wet), Source::Kept)
}

impl Target {
    /// So much wet glaze, with what the glaze tolerates to either side accepted; no pots.
    fn within_tolerance(job: &Job, wet: Grams, interval: (Grams, Grams), source: Source) -> Target {
        let (dry, tolerance) = (job.solids.dry(wet), job.sensitivity.tolerance());
        Target {
            wet,
            low: wet * (1.0 - tolerance),
            high: wet * (1.0 + tolerance),
            interval,
            dry,
            laydown: Laydown::of(dry, job.zone.area),
            source,
            pots: 0,
            tolerance,
        }
    }
}

/// An aim in logarithms of wet grams.
struct Aim {
    ln_wet: f64,
    standard_uncertainty: f64,
    coverage: f64,
    source: Source,
    pots: usize,
}

impl Aim {
    fn into_target(self, job: &Job) -> Result<Target, TargetError> {
        let wet = self.ln_wet.exp();
        let spread = (self.coverage * self.standard_uncertainty).exp();
        let tolerance = job.sensitivity.tolerance();
        let most = wet * spread.max(1.0 + tolerance);
        if !(wet > 0.0 && spread.is_finite() && most.is_finite()) {
            return Err(TargetError::NoNumber);
        }
        let wet = Grams::new(wet);
        let interval = (wet / spread, wet * spread);
        Ok(Target { pots: self.pots, ..Target::within_tolerance(job, wet, interval, self.source) })
    }
}

fn from_controls(job: &Job, controls: &[Control]) -> Result<Option<Aim>, TargetError> {
    let same: Vec<&Control> = controls.iter().filter(|control| control.same_form).collect();
    if !same.is_empty() {
        return from_one_form(job, &same, Source::ControlSameForm).map(Some);
    }
    let mut surest: Option<Aim> = None;
    for (at, first) in controls.iter().enumerate() {
        if controls[..at].iter().any(|earlier| earlier.form_name == first.form_name) {
            continue;
        }
        let of_form: Vec<&Control> = controls.iter().filter(|control| control.form_name == first.form_name).collect();
        let form_name = first.form_name.clone();
        let source = if carry_over(first, job).by_capacity {
            Source::ControlOtherSizeByCapacity { form_name }
        } else {
            Source::ControlOtherSizeByArea { form_name }
        };
        let aim = from_one_form(job, &of_form, source)?;
        if surest.as_ref().is_none_or(|best| aim.standard_uncertainty < best.standard_uncertainty) {
            surest = Some(aim);
        }
    }
    Ok(surest)
}

/// Mean of ln(wet) over the controls of one form, each carried over to the job.
fn from_one_form(job: &Job, controls: &[&Control], source: Source) -> Result<Aim, TargetError> {
    let pots = controls.len() as f64;
    let mut ln_wet = Vec::with_capacity(controls.len());
    let (mut area, mut solids, mut scale) = (0.0f64, 0.0, 0.0);
    for control in controls {
        let is_usable = control.wet.is_positive()
            && control.area.is_positive()
            && control.area_relative_uncertainty >= 0.0
            && control.net_standard_uncertainty >= Grams::ZERO;
        if !is_usable {
            return Err(TargetError::UnusableControl { form_name: control.form_name.clone() });
        }
        let carried = carry_over(control, job);
        let thinner = control.solids.fraction.value() / job.solids.fraction.value();
        ln_wet.push((control.wet.value() * carried.area_ratio * thinner).ln());
        area = area.max(carried.relative_uncertainty);
        solids += control.solids.relative_uncertainty / pots;
        scale += (control.net_standard_uncertainty / control.wet / pots).powi(2);
    }
    let mean = ln_wet.iter().sum::<f64>() / pots;
    let squares: f64 = ln_wet.iter().map(|value| (value - mean).powi(2)).sum();
    let freedom = POT_TO_POT_FREEDOM + pots - 1.0;
    let between_pots = (POT_TO_POT_FREEDOM * POT_TO_POT.powi(2) + squares) / freedom / pots;
    let variance = between_pots + scale + solids.powi(2) + job.solids.relative_uncertainty.powi(2) + area.powi(2);
    // Welch-Satterthwaite (JCGM 100:2008, G.4.1); only the spread between pots has finite degrees of freedom.
    let effective_freedom = freedom * (variance / between_pots).powi(2);
    let coverage = student_t_95(effective_freedom).ok_or(TargetError::NoNumber)?;
    Ok(Aim { ln_wet: mean, standard_uncertainty: variance.sqrt(), coverage, source, pots: controls.len() })
}

fn from_tiles(job: &Job, tiles: &[TileEvidence]) -> Result<Aim, TargetError> {
    let count = tiles.len() as f64;
    if tiles.iter().any(|tile| !tile.laydown.is_positive()) {
        return Err(TargetError::UnusableTile);
    }
    let mean = tiles.iter().map(|tile| tile.laydown.value().ln()).sum::<f64>() / count;
    let own = tiles.iter().map(|tile| (tile.relative_uncertainty / count).powi(2)).sum::<f64>().sqrt();
    Ok(from_laydown(job, mean, own.hypot(TILE_TO_POT), Source::Tile))
}

fn from_starting(job: &Job, starting: Laydown) -> Result<Aim, TargetError> {
    if !starting.is_positive() {
        return Err(TargetError::NothingToGoBy);
    }
    let plausible = (PLAUSIBLE.1 / PLAUSIBLE.0).ln() / (2.0 * NORMAL_95);
    Ok(from_laydown(job, starting.value().ln(), plausible, Source::Starting))
}

fn from_laydown(job: &Job, ln_laydown: f64, relative_uncertainty: f64, source: Source) -> Aim {
    let wet = job.solids.wet(Laydown::new(ln_laydown.exp()).dry_on(job.zone.area));
    let standard_uncertainty =
        relative_uncertainty.hypot(job.zone.relative_uncertainty).hypot(job.solids.relative_uncertainty);
    Aim { ln_wet: wet.value().ln(), standard_uncertainty, coverage: NORMAL_95, source, pots: 0 }
}

impl Target {
    /// Whether the aim is so unsure that it is called a guess.
    pub fn is_first_guess(&self) -> bool {
        self.interval.1 / self.wet - 1.0 > FIRST_GUESS
    }
}

/// An aim less sure than this is called a guess.
const FIRST_GUESS: f64 = 0.25;

/// A span is narrow on a scale when its half-width is less than so many steps.
const NARROW_IN_STEPS: f64 = 4.0;

/// The ends of the accepted span and the step to show them in. Where it is narrow on this scale, with a decimal more than
/// the scale shows (two where one leaves no span) and rounded inwards: rounded to the nearest step, 18.1 to 20.9 g would
/// name 18 and 21 g, which are not accepted.
pub fn span_to_show(low: Grams, high: Grams, step: Grams) -> (Grams, Grams, Grams) {
    if (high - low) / 2.0 >= step * NARROW_IN_STEPS {
        return (low, high, step);
    }
    let inwards = |fine: Grams| {
        // What is a whole number of these but for the last bits of a float stays where it is.
        (fine * (low / fine - 1e-6).ceil(), fine * (high / fine + 1e-6).floor())
    };
    let leaves_a_span = |fine: &Grams| inwards(*fine).0 < inwards(*fine).1;
    let fine = [step / 10.0, step / 100.0].into_iter().find(leaves_a_span).unwrap_or(step / 1_000.0);
    let (low, high) = inwards(fine);
    (low, high, fine)
}

#[cfg(test)]
mod tests;
