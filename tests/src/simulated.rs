//! Invented studios whose truth is known, and potters who glaze in them: to see how near a target comes, how wide its interval
//! is and whether the truth lies in it.
//!
//! The truth is made otherwise than any model takes it for. The thin end of a window is as sharp as a t distribution with four
//! degrees of freedom, the thick end as a normal one, each with a width of its own, so that neither is
//! the logistic one. It drifts in steps and jumps. Classes differ by a Laplace distribution, forms and clays by uniform ones. Each kiln
//! load looks a little thicker or thinner. Hands scatter by a gamma distribution. The specific gravity is pulled back to its
//! recipe, hydrometers are off, areas from capacities are wrong for a whole class. Some ratings and some weights are slips.

use fastrand::Rng;
use laydown_domain::coat::Solids;
use laydown_domain::coat::target::{Control, Evidence, Job, Sensitivity, target};
use laydown_domain::form::{AREA_FROM_CAPACITY, MEASURED_AREA, ShapeClass, Zone, ZoneKind};
use laydown_domain::glaze::sg_age::{aged, walk};
use laydown_domain::glaze::slurry::{SgReading, solids_fraction};
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::control_chart::individuals;
use laydown_domain::learning::cusum;
use laydown_domain::learning::pooled::{
    Assumptions, Chances, ControlPot, Fitted, GlazeEvidence, JudgedPot, Place, PooledJob, PooledVerdict, Start,
    proportions, verdict,
};
use laydown_domain::units::{Grams, Laydown, Millilitres, PowderDensity, SpecificGravity, SquareCentimetres};
use statrs::distribution::{ContinuousCDF, Normal};
use uuid::Uuid;

/// Days that a studio is watched.
const DAYS: usize = 2_000;
/// Forms of a studio. The first two are two sizes of one class.
const FORMS: usize = 5;
/// Pots in a kiln load.
const LOAD: usize = 8;
const CONTROL_FORM: usize = 0;
const JOB_FORM: usize = 1;

/// What is made in a studio, and what goes wrong.
#[derive(Debug, Clone, Copy)]
pub struct Habits {
    /// Whether all forms are sizes of one class of shape.
    pub one_class: bool,
    /// How far pots that are glazed by eye scatter: a studio's standard deviation lies between these.
    pub strays: (f64, f64),
    /// Share of weights with a slip of the pencil.
    pub weights: f64,
    /// Share of ratings that name a neighbour.
    pub ratings: f64,
}

/// A form as the potter knows it, and as it is.
#[derive(Debug, Clone, Copy)]
struct FormTruth {
    class: ShapeClass,
    capacity: f64,
    /// What the class has for its capacity.
    by_class: f64,
    measured: Option<f64>,
    area: f64,
    body: usize,
    /// What the right laydown is off the glaze's, in logarithms.
    off: f64,
}

/// An invented studio with one glaze.
pub struct Studio {
    random: Rng,
    ln_ideal: f64,
    below: f64,
    above: f64,
    thin_noise: f64,
    thick_noise: f64,
    load_noise: f64,
    hand: f64,
    step: f64,
    forms: Vec<FormTruth>,
    drift: Vec<f64>,
    sg: Vec<f64>,
    checks: Vec<(f64, SgReading)>,
    walk: f64,
    sensitivity: Sensitivity,
    starting: Laydown,
    habits: Habits,
    next_id: u128,
}

/// How near a target came.
#[derive(Debug, Clone, Copy)]
pub struct Miss {
    /// Logarithm of the target over the truth.
    pub error: f64,
    /// Half the width of its 95% interval, in logarithms.
    pub half_width: f64,
}

impl Miss {
    fn of(wet: Grams, interval: (Grams, Grams), truth: f64) -> Miss {
        Miss { error: (wet.value() / truth).ln(), half_width: (interval.1 / interval.0).ln() / 2.0 }
    }

    /// Whether the interval covers the truth.
    pub fn covers(&self) -> bool {
        self.error.abs() <= self.half_width
    }
}

/// One coat as the studio knows it.
#[derive(Debug, Clone, Copy)]
struct Coat {
    id: Uuid,
    form: usize,
    day: f64,
    wet: f64,
    solids: Solids,
    thickness: Thickness,
    is_right: bool,
    /// Whether it lies well inside what is right.
    is_good: bool,
}

fn normal(random: &mut Rng) -> f64 {
    let (u, v) = (1.0 - random.f64(), random.f64());
    (-2.0 * u.ln()).sqrt() * (std::f64::consts::TAU * v).cos()
}

fn between(random: &mut Rng, from: f64, to: f64) -> f64 {
    from + (to - from) * random.f64()
}

fn laplace(random: &mut Rng, sd: f64) -> f64 {
    let u = random.f64() - 0.5;
    -sd / 2f64.sqrt() * u.signum() * (1.0 - 2.0 * u.abs()).max(1e-12).ln()
}

/// Distribution function of t with four degrees of freedom, in closed form.
fn t4(t: f64) -> f64 {
    let q = 1.0 + t * t / 4.0;
    0.5 + 0.375 * t / q.sqrt() * (1.0 - t * t / (12.0 * q))
}

fn phi(z: f64) -> f64 {
    Normal::standard().cdf(z)
}

impl Studio {
    /// The studio of a number.
    pub fn new(seed: u64, habits: Habits) -> Studio {
        let mut random = Rng::with_seed(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ 0x1A7D);
        let r = &mut random;
        let ln_ideal = between(r, 3.5, 9.0).ln();
        let below = between(r, 0.09, 0.28);
        let above = below * between(r, 0.7, 1.35);
        let half = (below + above) / 2.0;
        let said = if r.f64() < 0.25 { between(r, 0.08, 0.30) } else { half };
        let sensitivity = match said {
            said if said < 0.13 => Sensitivity::High,
            said if said < 0.22 => Sensitivity::Medium,
            _ => Sensitivity::Low,
        };
        let classes = [ShapeClass::CylinderMug, ShapeClass::OpenBowl, ShapeClass::Jar, ShapeClass::Vase];
        let first = r.usize(0..classes.len());
        let of_class: Vec<(f64, f64, f64)> =
            classes.iter().map(|_| (between(r, 5.0, 8.0), laplace(r, 0.05), 0.075 * normal(r))).collect();
        let bodies = [0.0, if r.f64() < 0.4 { between(r, -0.10, 0.10) } else { 0.0 }];
        let forms = (0..FORMS).map(|form| {
            let class = if form < 2 || habits.one_class { first } else { r.usize(0..classes.len()) };
            let (factor, off, proportions) = of_class[class];
            let capacity = between(r, 150.0f64.ln(), 1_500.0f64.ln()).exp();
            let by_class = factor * capacity.powf(2.0 / 3.0);
            let area = by_class * (proportions + 0.022 * normal(r)).exp();
            let measured = (r.f64() < 0.3).then(|| area * (0.02 * normal(r)).exp());
            // Two sizes of one class are of one clay.
            let body = if form < 2 { 0 } else { r.usize(0..2) };
            let off = off + between(r, -0.035, 0.035) + bodies[body];
            FormTruth { class: classes[class], capacity, by_class, measured, area, body, off }
        });
        let forms: Vec<FormTruth> = forms.collect();
        let restless = between(r, 0.0, 2.0);
        let mut drift = vec![0.0];
        for day in 1..DAYS {
            let mut next = drift[day - 1];
            if day % 30 == 0 {
                next += restless * 0.008 * normal(r);
                if r.f64() < 0.05 {
                    next += if r.bool() { 0.05 } else { -0.05 };
                }
            }
            drift.push(next);
        }
        let (recipe, daily) = (between(r, 1.38, 1.52), 0.0035 * between(r, 0.4, 1.6));
        let mut sg = vec![recipe + 0.02 * normal(r)];
        for day in 1..DAYS {
            let before = sg[day - 1];
            sg.push(before + (recipe - before) * 0.02 + daily * normal(r));
        }
        let hydrometer = 0.003 * normal(r);
        let (mut checks, mut day) = (Vec::new(), 0usize);
        let seldom = r.usize(3..16);
        while day < DAYS {
            let read = ((sg[day] + hydrometer + 0.004 * normal(r)) * 200.0).round() / 200.0;
            checks.push((day as f64, SgReading::checked(SpecificGravity::new(read).unwrap())));
            day += r.usize(1..2 * seldom);
        }
        let starting = (5.5f64.ln() * 0.5 + ln_ideal * 0.5 + 0.15 * normal(r)).exp();
        Studio {
            ln_ideal,
            below,
            above,
            thin_noise: between(r, 0.015, 0.045),
            thick_noise: between(r, 0.02, 0.07),
            load_noise: between(r, 0.0, 0.03),
            hand: between(r, 0.035, 0.065),
            step: if r.f64() < 0.7 { 0.1 } else { 1.0 },
            walk: walk(&checks, &[]),
            sensitivity,
            starting: Laydown::new(starting),
            forms,
            drift,
            sg,
            checks,
            habits,
            next_id: 0,
            random,
        }
    }

    /// Chances of thin and thick at a logarithm of the true laydown over the glaze's own.
    fn ends(&self, x: f64) -> (f64, f64) {
        (t4((-self.below - x) / self.thin_noise), 1.0 - phi((self.above - x) / self.thick_noise))
    }

    /// The middle of what comes out right with a chance of 80%. (The highest chance is no measure: where thin and thick are far,
    /// the chance is the same to a thousandth over half the window.)
    fn best(&self) -> f64 {
        let right = |x: f64| {
            let (thin, thick) = self.ends(x);
            1.0 - thin - thick
        };
        let end = |mut inside: f64, mut outside: f64| {
            for _ in 0..40 {
                let between = (inside + outside) / 2.0;
                if right(between) >= 0.8 { inside = between } else { outside = between }
            }
            inside
        };
        let inside = (self.above - self.below) / 2.0;
        (end(inside, -1.0) + end(inside, 1.0)) / 2.0
    }

    /// The true share of dry glaze on a day.
    fn fraction(&self, day: usize) -> f64 {
        solids_fraction(SpecificGravity::new(self.sg[day]).unwrap(), PowderDensity::default()).unwrap().value()
    }

    /// The wet weight that is best in truth.
    fn truth(&self, form: usize, day: usize) -> f64 {
        let of = &self.forms[form];
        let ideal = (self.ln_ideal + of.off + self.drift[day] + self.best()).exp();
        ideal * of.area / 100.0 / self.fraction(day)
    }

    /// The bucket as the potter knows it.
    fn solids(&self, day: usize) -> Solids {
        let (at, reading) = self.checks.iter().rev().find(|(at, _)| *at <= day as f64).unwrap();
        let reading = aged(*reading, day as f64 - at, self.walk);
        Solids::of(reading, PowderDensity::default()).unwrap()
    }

    /// Glazes and fires a pot with so much aimed at; `load` is how much thicker its kiln load looks.
    fn glaze(&mut self, form: usize, day: usize, aim: f64, load: f64) -> Coat {
        // A gamma variable with mean 1 as a sum of exponential ones.
        let rounds = (1.0 / self.hand.powi(2)).round() as usize;
        let gamma = (0..rounds).map(|_| -(1.0 - self.random.f64()).ln()).sum::<f64>() / rounds as f64;
        let wet = aim * gamma;
        let of = self.forms[form];
        let laydown = wet * self.fraction(day) / of.area * 100.0;
        let x = laydown.ln() - self.ln_ideal - of.off - self.drift[day];
        let (thin, thick) = self.ends(x + load);
        let draw = self.random.f64();
        let found = match draw {
            draw if draw < thin => 0,
            draw if draw > 1.0 - thick => 2,
            _ => 1,
        };
        let off = x - self.best();
        let is_good = found == 1 && off > -0.6 * self.below && off < 0.6 * self.above;
        let seen = if self.random.f64() >= self.habits.ratings {
            found
        } else if found == 1 {
            if self.random.bool() { 0 } else { 2 }
        } else {
            1
        };
        let slip = if self.random.f64() < self.habits.weights {
            [10.0, 0.1, 2.0, 0.5, 1.4, 0.7][self.random.usize(0..6)]
        } else {
            1.0
        };
        self.next_id += 1;
        Coat {
            id: Uuid::from_u128(self.next_id),
            form,
            day: day as f64,
            wet: ((wet * slip / self.step).round() * self.step).max(self.step),
            solids: self.solids(day),
            thickness: Thickness::ALL[seen],
            is_right: found == 1,
            is_good,
        }
    }

    fn load(&mut self) -> f64 {
        self.load_noise * normal(&mut self.random)
    }

    /// A coat that came out right, where the potter aimed, on the first form.
    fn first_control(&mut self, bias: f64) -> Coat {
        let mut aim = bias;
        loop {
            let wet = self.truth(CONTROL_FORM, 0) * aim.exp();
            let load = self.load();
            let coat = self.glaze(CONTROL_FORM, 0, wet, load);
            if coat.thickness == Thickness::Right && coat.is_right {
                return coat;
            }
            aim *= 0.9;
        }
    }

    /// The area as the potter knows it, with its uncertainty, by the studio's own proportions where the app may use them.
    fn known_area(&self, form: usize, by_own_proportions: bool) -> (SquareCentimetres, f64) {
        let of = &self.forms[form];
        if let Some(measured) = of.measured {
            return (SquareCentimetres::new(measured), MEASURED_AREA);
        }
        let measured: Vec<_> = self
            .forms
            .iter()
            .filter(|other| by_own_proportions && other.class == of.class)
            .filter_map(|other| {
                Some((SquareCentimetres::new(other.measured?), MEASURED_AREA, SquareCentimetres::new(other.by_class)))
            })
            .collect();
        let own = proportions(&measured, AREA_FROM_CAPACITY);
        (SquareCentimetres::new(of.by_class * own.factor), own.relative_uncertainty)
    }

    fn place(&self, form: usize) -> Place {
        let of = &self.forms[form];
        Place {
            form: Uuid::from_u128(form as u128),
            zone: ZoneKind::Inside,
            class: of.class,
            area_relative_uncertainty: self.known_area(form, true).1,
            body: Some(Uuid::from_u128(of.body as u128)),
            cone: None,
        }
    }

    fn laydown(&self, coat: &Coat) -> Laydown {
        Laydown::of(coat.solids.dry(Grams::new(coat.wet)), self.known_area(coat.form, true).0)
    }

    fn net_uncertainty(&self) -> Grams {
        // Rounded twice, and repeatability of half a step, twice.
        Grams::new(self.step * (1.0f64 / 6.0 + 0.5).sqrt())
    }

    fn uncertainty(&self, coat: &Coat) -> f64 {
        coat.solids.relative_uncertainty.hypot(self.net_uncertainty().value() / coat.wet)
    }

    fn evidence(&self, pots: &[Coat], controls: &[Coat]) -> GlazeEvidence {
        let pots = pots.iter().map(|coat| JudgedPot {
            id: coat.id,
            place: self.place(coat.form),
            laydown: self.laydown(coat),
            relative_uncertainty: self.uncertainty(coat),
            thickness: coat.thickness,
            day: coat.day,
        });
        let controls = controls.iter().map(|coat| ControlPot {
            id: coat.id,
            place: self.place(coat.form),
            laydown: self.laydown(coat),
            relative_uncertainty: self.uncertainty(coat),
            day: coat.day,
        });
        GlazeEvidence {
            pots: pots.collect(),
            controls: controls.collect(),
            tiles: Vec::new(),
            starting: self.starting,
            sensitivity: self.sensitivity,
        }
    }

    fn job(&self, form: usize, day: usize) -> PooledJob {
        PooledJob { place: self.place(form), area: self.known_area(form, true).0, solids: self.solids(day) }
    }

    /// The target of the model.
    fn pooled(
        &self,
        form: usize,
        day: usize,
        evidence: &GlazeEvidence,
        assume: &Assumptions,
        start: Option<Start>,
    ) -> (Fitted, Grams, (Grams, Grams)) {
        let job = self.job(form, day);
        let fitted = Fitted::new(evidence, &job.place, day as f64, assume, start).expect("a fit");
        let target = fitted.target(&job, evidence).expect("a target");
        (fitted, target.wet, target.interval)
    }

    /// The target of the best evidence alone, as the app had it.
    fn best_evidence(&self, form: usize, day: usize, controls: &[Coat]) -> (Grams, (Grams, Grams)) {
        let of = &self.forms[form];
        let (area, relative_uncertainty) = self.known_area(form, false);
        let job = Job {
            form_name: form.to_string(),
            zone: Zone { kind: ZoneKind::Inside, area, relative_uncertainty },
            capacity: Some(Millilitres::new(of.capacity)),
            class: of.class,
            solids: self.solids(day),
            sensitivity: self.sensitivity,
        };
        let control = |coat: &Coat| {
            let theirs = &self.forms[coat.form];
            let (area, area_relative_uncertainty) = self.known_area(coat.form, false);
            Control {
                wet: Grams::new(coat.wet),
                solids: coat.solids,
                area,
                area_relative_uncertainty,
                class: theirs.class,
                capacity: Some(Millilitres::new(theirs.capacity)),
                form_name: coat.form.to_string(),
                same_form: coat.form == form,
                net_standard_uncertainty: Grams::new(self.step / 6f64.sqrt()),
            }
        };
        let evidence = Evidence {
            controls: controls.iter().rev().take(24).map(control).collect(),
            tiles: Vec::new(),
            starting: self.starting,
        };
        let target = target(&job, &evidence).expect("a target");
        (target.wet, target.interval)
    }
}

/// What came of one studio where nobody looked at the targets.
pub struct OpenLoop {
    /// By the model.
    pub pooled: Miss,
    /// By the best evidence alone.
    pub before: Miss,
}

/// One control piece of another size and `pots` judged pots, glazed as the potter saw fit.
pub fn open_loop(seed: u64, pots: usize, habits: Habits, assume: &Assumptions) -> OpenLoop {
    let mut studio = Studio::new(seed, habits);
    let (control, coats, day) = glazed_by_eye(&mut studio, pots);
    let truth = studio.truth(JOB_FORM, day);
    let evidence = studio.evidence(&coats, &[control]);
    let (_, wet, interval) = studio.pooled(JOB_FORM, day, &evidence, assume, None);
    let (before, before_interval) = studio.best_evidence(JOB_FORM, day, &[control]);
    OpenLoop { pooled: Miss::of(wet, interval, truth), before: Miss::of(before, before_interval, truth) }
}

/// A control piece and pots on every form but the job's, and the day after.
fn glazed_by_eye(studio: &mut Studio, pots: usize) -> (Coat, Vec<Coat>, usize) {
    let bias = 0.12 * normal(&mut studio.random);
    let (least, most) = studio.habits.strays;
    let strays = between(&mut studio.random, least, most);
    let control = studio.first_control(bias);
    let every = studio.random.usize(5..70);
    let (mut coats, mut day, mut load) = (Vec::new(), 3, 0.0);
    for pot in 0..pots {
        if pot % LOAD == 0 {
            day += studio.random.usize(every / 2 + 1..every + 2);
            load = studio.load();
        }
        let form = [0, 2, 3, 4][studio.random.usize(0..4)];
        // What the potter believes to be right drifts with nothing.
        let believed = studio.truth(form, 0) * studio.fraction(0) / studio.fraction(day);
        let aim = believed * (bias + strays * normal(&mut studio.random)).exp();
        let coat = studio.glaze(form, day, aim, load);
        coats.push(coat);
    }
    (control, coats, (day + 3).min(DAYS - 1))
}

/// How well each kiln load of an open loop is foretold by the loads before it: the mean logarithm of the chance that was given
/// to what came out. For choosing by cross-validation.
pub fn foretold(seed: u64, pots: usize, habits: Habits, assume: &Assumptions) -> f64 {
    let mut studio = Studio::new(seed, habits);
    let (control, coats, _) = glazed_by_eye(&mut studio, pots);
    let (mut sum, mut count) = (0.0, 0.0);
    for load in (LOAD..coats.len()).step_by(LOAD) {
        let evidence = studio.evidence(&coats[..load], &[control]);
        for coat in coats[load..].iter().take(LOAD) {
            let job = studio.job(coat.form, coat.day as usize);
            let fitted = Fitted::new(&evidence, &job.place, coat.day, assume, None).expect("a fit");
            let chances = fitted.chances(&job, Grams::new(coat.wet), studio.net_uncertainty()).expect("chances");
            let given = match coat.thickness {
                Thickness::Thin => chances.thin,
                Thickness::Right => chances.right,
                Thickness::Thick => chances.thick,
            };
            sum += (0.97 * given + 0.01).ln();
            count += 1.0;
        }
    }
    sum / count
}

/// How often a verdict was given, and how many of these coats were right.
#[derive(Debug, Clone, Copy, Default)]
pub struct Tally {
    /// Coats.
    pub coats: usize,
    /// Of these, right in truth.
    pub right: usize,
}

/// What came of one studio that was steered.
pub struct ClosedLoop {
    /// Of each kiln load but the first, the target for its first pot.
    pub loads: Vec<Miss>,
    /// The target for another size at the end.
    pub last: Miss,
    /// All pots, and how many came out right.
    pub pots: Tally,
    /// Those of the second half.
    pub later: Tally,
    /// Verdicts on the coats, in the order of [`PooledVerdict`]: within, probably within, short, over, cannot tell.
    pub verdicts: [Tally; 5],
}

/// Who steers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Steering {
    /// The model.
    Pooled,
    /// The best evidence alone, as the app had it.
    BestEvidence,
    /// Somebody who knows the truth: the best that can be.
    Truth,
}

/// Glazes `loads` kiln loads with every pot aimed at the target of its day. A pot that the potter likes becomes a control piece
/// in half of the cases.
pub fn closed_loop(seed: u64, loads: usize, habits: Habits, steering: Steering, assume: &Assumptions) -> ClosedLoop {
    let mut studio = Studio::new(seed, habits);
    let bias = 0.12 * normal(&mut studio.random);
    let first = studio.first_control(bias);
    let every = studio.random.usize(5..70);
    let (mut pots, mut controls) = (Vec::new(), vec![first]);
    let mut done = ClosedLoop {
        loads: Vec::new(),
        last: Miss { error: 0.0, half_width: 0.0 },
        pots: Tally::default(),
        later: Tally::default(),
        verdicts: [Tally::default(); 5],
    };
    let (mut day, mut start) = (3, None);
    for load in 0..loads {
        day += studio.random.usize(every / 2 + 1..every + 2);
        let looks = studio.load();
        let evidence = studio.evidence(&pots, &controls);
        let mut fired = Vec::new();
        for pot in 0..LOAD {
            let form = [0, 2, 3, 4][studio.random.usize(0..4)];
            let truth = studio.truth(form, day);
            let (aim, interval, fitted) = match steering {
                Steering::Truth => (truth, (Grams::new(truth), Grams::new(truth)), None),
                Steering::BestEvidence => {
                    let (wet, interval) = studio.best_evidence(form, day, &controls);
                    (wet.value(), interval, None)
                }
                Steering::Pooled => {
                    let (fitted, wet, interval) = studio.pooled(form, day, &evidence, assume, start);
                    start = Some(fitted.start());
                    (wet.value(), interval, Some(fitted))
                }
            };
            if pot == 0 && load > 0 {
                done.loads.push(Miss::of(Grams::new(aim), interval, truth));
            }
            let coat = studio.glaze(form, day, aim, looks);
            let count = |tally: &mut Tally| {
                tally.coats += 1;
                tally.right += usize::from(coat.is_right);
            };
            count(&mut done.pots);
            if load >= loads / 2 {
                count(&mut done.later);
            }
            if let Some(fitted) = fitted {
                let net = Grams::new(coat.wet);
                let chances = fitted.chances(&studio.job(form, day), net, studio.net_uncertainty());
                count(&mut done.verdicts[said(&chances.expect("chances"), studio.step)]);
            }
            fired.push(coat);
        }
        for coat in fired {
            if coat.is_good && studio.random.bool() {
                controls.push(coat);
            }
            pots.push(coat);
        }
    }
    let day = day + 3;
    let truth = studio.truth(JOB_FORM, day);
    done.last = match steering {
        Steering::Truth => Miss { error: 0.0, half_width: 0.0 },
        Steering::BestEvidence => {
            let (wet, interval) = studio.best_evidence(JOB_FORM, day, &controls);
            Miss::of(wet, interval, truth)
        }
        Steering::Pooled => {
            let evidence = studio.evidence(&pots, &controls);
            let (_, wet, interval) = studio.pooled(JOB_FORM, day, &evidence, assume, start);
            Miss::of(wet, interval, truth)
        }
    };
    done
}

fn said(chances: &Chances, step: f64) -> usize {
    match verdict(chances, step >= 1.0) {
        PooledVerdict::Within => 0,
        PooledVerdict::ProbablyWithin => 1,
        PooledVerdict::Short => 2,
        PooledVerdict::Over => 3,
        PooledVerdict::CannotTell => 4,
    }
}

/// Root of the mean square of the errors, mean half-width and share of truths covered.
pub fn summary(misses: &[Miss]) -> (f64, f64, f64) {
    let count = misses.len() as f64;
    let error = (misses.iter().map(|miss| miss.error.powi(2)).sum::<f64>() / count).sqrt();
    let half_width = misses.iter().map(|miss| miss.half_width).sum::<f64>() / count;
    let covered = misses.iter().filter(|miss| miss.covers()).count() as f64 / count;
    (error, half_width, covered)
}

/// What the standard deviation of a hand is known from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HandKnown {
    /// From nature: the noise is normal and its spread known, as in the tables of textbooks.
    Exactly,
    /// From so many coats before, by their moving ranges; the noise is a gamma variable's.
    From(usize),
}

/// After how many coats a hand that lays on `shift` more than its aim (as a fraction, with 5% from coat to coat) is first called
/// drifted; at most `most`.
pub fn coats_to_alarm(seed: u64, shift: f64, known: HandKnown, most: usize) -> usize {
    let mut random = Rng::with_seed(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ 0xC05);
    let hand = 0.05;
    let mut off = |shift: f64| match known {
        HandKnown::Exactly => hand * normal(&mut random) + shift,
        HandKnown::From(_) => {
            let gamma = (0..400).map(|_| -(1.0 - random.f64()).ln()).sum::<f64>() / 400.0;
            gamma.ln() + (1.0 + shift).ln()
        }
    };
    let sd = match known {
        HandKnown::Exactly => hand,
        HandKnown::From(coats) => {
            let before: Vec<f64> = (0..coats).map(|_| off(0.0)).collect();
            individuals(&before).expect("at least two coats").sd
        }
    };
    // In pieces, since most alarms come early.
    let mut values = Vec::new();
    while values.len() < most {
        values.extend((0..50).map(|_| off(shift) / sd));
        if let Some(alarm) = cusum::sums(&values).alarm {
            return (alarm.at + 1).min(most);
        }
    }
    most
}
