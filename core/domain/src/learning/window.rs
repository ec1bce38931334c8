//! The window of laydown in which a glaze comes out right, learned from pots that were weighed, fired and looked at.
//!
//! An ordered logistic model (proportional odds) on x = ln(laydown), written in what a potter would ask for: the middle m of
//! the window, its half-width h, and the steepness s with which thin turns to right and right to thick,
//!
//! `P(thin) = σ(s (m − h − x))`, `P(thick) = σ(s (x − m − h))`, `P(right)` the rest, `σ(z) = 1/(1 + e⁻ᶻ)`.
//!
//! It is fitted at the most probable m, ln h and ln s under a weak prior, without which a few pots that lie in order
//! would have no finite fit. The prior is about what any glaze does and not about this one's starting value, so that taking the
//! best over as starting value changes nothing of what was learned:
//!
//! | quantity | prior: normal with this median | and this standard deviation of its logarithm |
//! |---|---|---|
//! | middle | 5.5 g per 100 cm² | 0.6 (95%: 1.7 to 18) |
//! | half-width | 0.2, that is from 0.82 to 1.22 times the middle | 0.7 |
//! | steepness | 20: from 12% to 88% thick within a fifth of the laydown | 0.7 |
//!
//! Common practice, no source. How sure the middle is follows from the curvature there (Laplace's approximation).

use nalgebra::{Matrix3, Vector3};

use super::observation::ENOUGH;
use crate::coat::coverage::NORMAL_95;
use crate::coat::target::STARTING_LAYDOWN;
use crate::kiln::fault::Thickness;
use crate::units::Laydown;

/// The chance of coming out right that the window promises.
pub const SURE: f64 = 0.8;
/// So many pots must lie beyond an end of the window before it is named: one may be a slip of the eye. Common practice, no
/// source.
pub const BEYOND_AN_END: usize = 2;

const MIDDLE_SD: f64 = 0.6;
const HALF_WIDTH: f64 = 0.2;
const HALF_WIDTH_SD: f64 = 0.7;
const STEEPNESS: f64 = 20.0;
const STEEPNESS_SD: f64 = 0.7;

/// What pots of one glaze say about its amount.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WindowEstimate {
    /// Fewer than [`ENOUGH`] pots.
    TooFew,
    /// None came out right.
    NoneRight,
    /// Thin, right and thick lie mixed: nowhere is the chance of coming out right as high as [`SURE`].
    Mixed,
    /// A window, or as much of it as is known.
    Window(Window),
}

/// The laydowns at which the chance of coming out right is at least [`SURE`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    /// Its lower end; `None` while too few pots came out thin.
    pub from: Option<Laydown>,
    /// Its upper end; `None` while too few came out thick.
    pub to: Option<Laydown>,
    /// The best laydown; `None` unless both ends are known.
    pub best: Option<Best>,
}

/// The laydown with the highest chance of coming out right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Best {
    /// The laydown.
    pub laydown: Laydown,
    /// Where it most likely lies: 95%.
    pub between: (Laydown, Laydown),
}

/// What `observations`, each a laydown and how thick it came out, say. A laydown that is no positive number does not count.
pub fn estimate(observations: &[(Laydown, Thickness)]) -> WindowEstimate {
    let points: Vec<(f64, Thickness)> = observations
        .iter()
        .filter(|(laydown, _)| laydown.is_positive())
        .map(|(laydown, thickness)| (laydown.value().ln(), *thickness))
        .collect();
    let count = |thickness: Thickness| points.iter().filter(|(_, found)| *found == thickness).count();
    if points.len() < ENOUGH {
        return WindowEstimate::TooFew;
    }
    if count(Thickness::Right) == 0 {
        return WindowEstimate::NoneRight;
    }
    let ends = (count(Thickness::Thin) >= BEYOND_AN_END, count(Thickness::Thick) >= BEYOND_AN_END);
    if ends == (false, false) {
        return WindowEstimate::Window(Window { from: None, to: None, best: None });
    }
    let Some(fit) = Fit::of(&points) else { return WindowEstimate::Mixed };
    let Some(half_width_at) = fit.half_width_at(SURE) else { return WindowEstimate::Mixed };
    let laydown = |ln: f64| Laydown::new(ln.exp());
    let most_likely = NORMAL_95 * fit.middle_sd;
    WindowEstimate::Window(Window {
        from: ends.0.then(|| laydown(fit.middle - half_width_at)),
        to: ends.1.then(|| laydown(fit.middle + half_width_at)),
        best: (ends == (true, true)).then(|| Best {
            laydown: laydown(fit.middle),
            between: (laydown(fit.middle - most_likely), laydown(fit.middle + most_likely)),
        }),
    })
}

/// The fitted model.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fit {
    /// Logarithm of the laydown in the middle of the window, in ln(g per 100 cm²).
    pub middle: f64,
    /// Half the width of the window in logarithms: at its ends thin, or thick, is as likely as not.
    pub half_width: f64,
    /// How steeply the odds change with the logarithm of the laydown.
    pub steepness: f64,
    /// One standard uncertainty of the middle.
    pub middle_sd: f64,
}

impl Fit {
    /// The most probable model for points of ln(laydown) and how thick they came out; `None` when there is no finite one.
    ///
    /// Newton's method with damping in (m, ln w, ln s), where w = s h: the chance of coming out right then factors into
    /// `σ(w − d) σ(w + d) (1 − e⁻²ʷ)` with d = s (m − x), which stays exact where the plain difference of two σ cancels.
    pub fn of(points: &[(f64, Thickness)]) -> Option<Fit> {
        let right = points.iter().filter(|(_, thickness)| *thickness == Thickness::Right).map(|(x, _)| *x);
        let (sum, count) = right.fold((0.0, 0.0), |(sum, count), x| (sum + x, count + 1.0));
        let middle = if count > 0.0 { sum / count } else { prior_middle() };
        let mut at = Vector3::new(middle, (STEEPNESS * HALF_WIDTH).ln(), STEEPNESS.ln());
        let mut here = Posterior::at(&at, points);
        for _ in 0..MOST_STEPS {
            let step = here.uphill()?;
            if here.slope.dot(&step) < ARRIVED {
                let inverse = (-here.curvature).cholesky()?.inverse();
                let at = at + step;
                let (half_width, steepness) = ((at.y - at.z).exp(), at.z.exp());
                return Some(Fit { middle: at.x, half_width, steepness, middle_sd: inverse[(0, 0)].sqrt() });
            }
            let (next, there) = halvings(&at, &step)
                .map(|next| (next, Posterior::at(&next, points)))
                .find(|(_, there)| there.value > here.value)?;
            (at, here) = (next, there);
        }
        None
    }

    /// The chance of coming out right at ln(laydown) `x`.
    pub fn right(&self, x: f64) -> f64 {
        let (w, d) = (self.steepness * self.half_width, self.steepness * (self.middle - x));
        w.sinh() / (w.cosh() + d.cosh())
    }

    /// How far from the middle, in ln(laydown), that chance is still at least `chance`; `None` where it nowhere is.
    pub fn half_width_at(&self, chance: f64) -> Option<f64> {
        let w = self.steepness * self.half_width;
        // Divided by cosh w, so that a wide window does not overflow.
        let over_cosh = w.tanh() / chance - 1.0;
        if over_cosh <= 0.0 {
            return None;
        }
        // acosh(c cosh w) = ln(c cosh w + √(c² cosh² w − 1)), with cosh w = e^w (1 + e^−2w) / 2.
        let half = (1.0 + (-2.0 * w).exp()) / 2.0;
        let scaled = over_cosh * half;
        let inside = scaled.powi(2) - (-2.0 * w).exp();
        (inside >= 0.0)
            .then(|| (w + (scaled + inside.sqrt()).ln()) / self.steepness)
            .filter(|half_width_at| *half_width_at >= 0.0 && half_width_at.is_finite())
    }
}

const MOST_STEPS: usize = 200;
/// Twice the rise that one more step would bring: less cannot be told from rounding.
const ARRIVED: f64 = 1e-12;
const MOST_HALVINGS: i32 = 60;

fn prior_middle() -> f64 {
    STARTING_LAYDOWN.value().ln()
}

fn halvings<'a>(at: &'a Vector3<f64>, step: &'a Vector3<f64>) -> impl Iterator<Item = Vector3<f64>> + 'a {
    (0..MOST_HALVINGS).map(move |times| at + step * 0.5f64.powi(times))
}

/// Logarithm of the posterior at a place (m, ln w, ln s), with its first and second derivatives.
struct Posterior {
    value: f64,
    slope: Vector3<f64>,
    curvature: Matrix3<f64>,
}

impl Posterior {
    fn at(place: &Vector3<f64>, points: &[(f64, Thickness)]) -> Posterior {
        let (middle, w, s) = (place.x, place.y.exp(), place.z.exp());
        let mut sum = Posterior { value: 0.0, slope: Vector3::zeros(), curvature: Matrix3::zeros() };
        // ln m, ln h = ln w − ln s, ln s.
        sum.normal(Vector3::new(1.0, 0.0, 0.0), middle - prior_middle(), MIDDLE_SD);
        sum.normal(Vector3::new(0.0, 1.0, -1.0), place.y - place.z - HALF_WIDTH.ln(), HALF_WIDTH_SD);
        sum.normal(Vector3::new(0.0, 0.0, 1.0), place.z - STEEPNESS.ln(), STEEPNESS_SD);
        for (x, thickness) in points {
            let d = s * (middle - x);
            let of = Likelihood::of(*thickness, d, w);
            sum.value += of.value;
            // Derivatives of d: s by m, d by ln s; of w: w by ln w.
            sum.slope += Vector3::new(of.by_d * s, of.by_w * w, of.by_d * d);
            let middle_steepness = of.by_dd * s * d + of.by_d * s;
            let middle_width = of.by_dw * s * w;
            let width_steepness = of.by_dw * d * w;
            sum.curvature += Matrix3::new(
                of.by_dd * s * s,
                middle_width,
                middle_steepness,
                middle_width,
                of.by_ww * w * w + of.by_w * w,
                width_steepness,
                middle_steepness,
                width_steepness,
                of.by_dd * d * d + of.by_d * d,
            );
        }
        sum
    }

    /// Adds the logarithm of a normal density of `off`, which changes with the place as `by` says.
    fn normal(&mut self, by: Vector3<f64>, off: f64, sd: f64) {
        let variance = sd * sd;
        self.value -= off * off / (2.0 * variance);
        self.slope -= by * (off / variance);
        self.curvature -= by * by.transpose() / variance;
    }

    /// A step uphill: Newton's, damped as much as the curvature needs.
    fn uphill(&self) -> Option<Vector3<f64>> {
        let dampings = std::iter::once(0.0).chain((-3..12).map(|power| 10f64.powi(power)));
        dampings
            .map(|damping| Matrix3::identity() * damping - self.curvature)
            .find_map(|damped| damped.cholesky())
            .map(|factor| factor.solve(&self.slope))
    }
}

/// Logarithm of the chance of one pot, with its derivatives by d and w.
struct Likelihood {
    value: f64,
    by_d: f64,
    by_w: f64,
    by_dd: f64,
    by_dw: f64,
    by_ww: f64,
}

impl Likelihood {
    fn of(thickness: Thickness, d: f64, w: f64) -> Likelihood {
        match thickness {
            Thickness::Thin => Likelihood::beyond(d - w, 1.0),
            Thickness::Thick => Likelihood::beyond(-d - w, -1.0),
            Thickness::Right => {
                let (low, high) = (w - d, w + d);
                let (of_low, of_high) = (logistic(-low), logistic(-high));
                let (bent_low, bent_high) = (bend(low), bend(high));
                // Of ln(1 − e⁻²ʷ).
                let shrinks = 2.0 / (2.0 * w).exp_m1();
                Likelihood {
                    value: ln_logistic(low) + ln_logistic(high) + (-(-2.0 * w).exp_m1()).ln(),
                    by_d: of_high - of_low,
                    by_w: of_low + of_high + shrinks,
                    by_dd: -bent_low - bent_high,
                    by_dw: bent_low - bent_high,
                    by_ww: -bent_low - bent_high - shrinks * (shrinks + 2.0),
                }
            }
        }
    }

    /// Of ln σ(z), where z changes by `side` with d and by −1 with w.
    fn beyond(z: f64, side: f64) -> Likelihood {
        let (by_z, bent) = (logistic(-z), bend(z));
        Likelihood {
            value: ln_logistic(z),
            by_d: side * by_z,
            by_w: -by_z,
            by_dd: -bent,
            by_dw: side * bent,
            by_ww: -bent,
        }
    }
}

fn logistic(z: f64) -> f64 {
    1.0 / (1.0 + (-z).exp())
}

/// Without overflow at either end.
fn ln_logistic(z: f64) -> f64 {
    if z < 0.0 { z - z.exp().ln_1p() } else { -(-z).exp().ln_1p() }
}

/// σ(z) σ(−z), minus the second derivative of ln σ(z).
fn bend(z: f64) -> f64 {
    logistic(z) * logistic(-z)
}

#[cfg(test)]
mod tests;
