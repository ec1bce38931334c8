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

use nalgebra::DVector;

use super::climb::{LogPosterior, climb};
use super::observation::ENOUGH;
use super::ordered::{Likelihood, half_width_at};
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
    /// Newton's method with damping in (m, ln w, ln s), where w = s h.
    pub fn of(points: &[(f64, Thickness)]) -> Option<Fit> {
        let right = points.iter().filter(|(_, thickness)| *thickness == Thickness::Right).map(|(x, _)| *x);
        let (sum, count) = right.fold((0.0, 0.0), |(sum, count), x| (sum + x, count + 1.0));
        let middle = if count > 0.0 { sum / count } else { prior_middle() };
        let start = DVector::from_column_slice(&[middle, (STEEPNESS * HALF_WIDTH).ln(), STEEPNESS.ln()]);
        let top = climb(start, |place| posterior(place, points))?;
        let (half_width, steepness) = ((top.place[1] - top.place[2]).exp(), top.place[2].exp());
        Some(Fit { middle: top.place[0], half_width, steepness, middle_sd: top.covariance[(0, 0)].sqrt() })
    }

    /// The chance of coming out right at ln(laydown) `x`.
    pub fn right(&self, x: f64) -> f64 {
        let (w, d) = (self.steepness * self.half_width, self.steepness * (self.middle - x));
        w.sinh() / (w.cosh() + d.cosh())
    }

    /// How far from the middle, in ln(laydown), that chance is still at least `chance`; `None` where it nowhere is.
    pub fn half_width_at(&self, chance: f64) -> Option<f64> {
        half_width_at(chance, self.half_width, self.steepness)
    }
}

fn prior_middle() -> f64 {
    STARTING_LAYDOWN.value().ln()
}

/// Logarithm of the posterior at a place (m, ln w, ln s).
fn posterior(place: &DVector<f64>, points: &[(f64, Thickness)]) -> LogPosterior {
    let (middle, ln_w, ln_s) = (place[0], place[1], place[2]);
    let (w, s) = (ln_w.exp(), ln_s.exp());
    let mut sum = LogPosterior::flat(3);
    // ln m, ln h = ln w − ln s, ln s.
    sum.normal(&[(0, 1.0)], middle - prior_middle(), MIDDLE_SD);
    sum.normal(&[(1, 1.0), (2, -1.0)], ln_w - ln_s - HALF_WIDTH.ln(), HALF_WIDTH_SD);
    sum.normal(&[(2, 1.0)], ln_s - STEEPNESS.ln(), STEEPNESS_SD);
    for (x, thickness) in points {
        let d = s * (middle - x);
        let of = Likelihood::of(*thickness, d, w);
        sum.value += of.value;
        // Derivatives of d: s by m, d by ln s; of w: w by ln w.
        let slope = [of.by_d * s, of.by_w * w, of.by_d * d];
        let middle_steepness = of.by_dd * s * d + of.by_d * s;
        let middle_width = of.by_dw * s * w;
        let width_steepness = of.by_dw * d * w;
        let curvature = [
            [of.by_dd * s * s, middle_width, middle_steepness],
            [middle_width, of.by_ww * w * w + of.by_w * w, width_steepness],
            [middle_steepness, width_steepness, of.by_dd * d * d + of.by_d * d],
        ];
        for (row, bent) in curvature.iter().enumerate() {
            sum.slope[row] += slope[row];
            for (column, bent) in bent.iter().enumerate() {
                sum.curvature[(row, column)] += bent;
            }
        }
    }
    sum
}

#[cfg(test)]
mod tests;
