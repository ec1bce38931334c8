//! The ordered logistic model of one pot: `P(thin) = σ(d − w)`, `P(thick) = σ(−d − w)`, `P(right)` the rest, where `d` is how
//! far the middle of the window lies above the pot and `w` half its width, both times the steepness; `σ(z) = 1/(1 + e⁻ᶻ)`.
//!
//! The chance of coming out right factors into `σ(w − d) σ(w + d) (1 − e⁻²ʷ)`, which stays exact where the plain difference of
//! two σ cancels.

use crate::kiln::fault::Thickness;

/// Logarithm of the chance of one pot, with its derivatives by d and w.
pub(super) struct Likelihood {
    pub(super) value: f64,
    pub(super) by_d: f64,
    pub(super) by_w: f64,
    pub(super) by_dd: f64,
    pub(super) by_dw: f64,
    pub(super) by_ww: f64,
}

impl Likelihood {
    pub(super) fn of(thickness: Thickness, d: f64, w: f64) -> Likelihood {
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

/// How far from the middle the chance of coming out right is still at least `chance`, for a window of this half-width and
/// steepness; `None` where it nowhere is.
pub(super) fn half_width_at(chance: f64, half_width: f64, steepness: f64) -> Option<f64> {
    let w = steepness * half_width;
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
        .then(|| (w + (scaled + inside.sqrt()).ln()) / steepness)
        .filter(|half_width_at| *half_width_at >= 0.0 && half_width_at.is_finite())
}

/// σ(z).
pub(super) fn logistic(z: f64) -> f64 {
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
