//! What a fit says of one place, without its evidence: five figures, enough to weigh by and small enough to remember.

use serde::{Deserialize, Serialize};

use super::fit::is_share;
use super::target::{Aim, Chances, SURE};
use crate::coat::Solids;
use crate::coat::coverage::NORMAL_95;
use crate::learning::ordered;
use crate::units::{Grams, Laydown, SquareCentimetres};

/// What a fit says of the place it was fitted for.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Outlook {
    /// Logarithm of the right laydown, in grams per 100 cm².
    pub(super) middle: f64,
    /// One standard uncertainty of that.
    pub(super) middle_sd: f64,
    /// Logarithm of half the width of the window.
    pub(super) ln_half_width: f64,
    /// One standard uncertainty of that.
    pub(super) ln_half_width_sd: f64,
    /// Logarithm of how steeply the odds change.
    pub(super) ln_steepness: f64,
}

impl Outlook {
    /// Logarithm of the right laydown, in grams per 100 cm², and one standard uncertainty of it.
    pub fn middle(&self) -> (f64, f64) {
        (self.middle, self.middle_sd)
    }

    /// The aim on `area` at this place, for the bucket as it stands today; `None` where a figure cannot be.
    pub fn aim(&self, area: SquareCentimetres, solids: &Solids) -> Option<Aim> {
        let finite = [self.middle, self.middle_sd, self.ln_half_width, self.ln_half_width_sd, self.ln_steepness];
        if !(area.is_positive() && is_share(solids.relative_uncertainty))
            || finite.iter().any(|figure| !figure.is_finite())
        {
            return None;
        }
        let half_width = NORMAL_95 * self.middle_sd.hypot(solids.relative_uncertainty);
        let wet = |x: f64| solids.wet(Laydown::new(x.exp()).dry_on(area));
        let aim =
            Aim { wet: wet(self.middle), interval: (wet(self.middle - half_width), wet(self.middle + half_width)) };
        let is_usable = aim.wet.is_positive() && aim.interval.0.is_positive() && aim.interval.1.value().is_finite();
        is_usable.then_some(aim)
    }

    /// What comes out right with a chance of at least [`SURE`] if the model is right; `None` where nothing does.
    pub fn window(&self, wet: Grams) -> Option<(Grams, Grams)> {
        ordered::half_width_at(SURE, self.ln_half_width.exp(), self.ln_steepness.exp()).map(|half| around(wet, half))
    }

    /// What comes out right with that chance with every doubt considered: of the target `wet`, of the bucket, and of a reading
    /// with this standard uncertainty. `None` while not even the aim does.
    pub fn sure(&self, solids: &Solids, wet: Grams, reading: Grams) -> Option<(Grams, Grams)> {
        let known = self.middle_sd.hypot(solids.relative_uncertainty);
        let is_sure = |above: f64| {
            let sd = known.hypot(reading / (wet * above.exp()));
            sd.is_finite() && self.chances_at(above, sd).right >= SURE
        };
        if !is_sure(0.0) {
            return None;
        }
        // Nothing wider is a window.
        let most = 4.0 * self.ln_half_width.exp();
        let end = |side: f64| {
            let (mut from, mut to) = (0.0, most);
            for _ in 0..HALVINGS {
                let between = (from + to) / 2.0;
                if is_sure(side * between) { from = between } else { to = between }
            }
            wet * (side * from).exp()
        };
        Some((end(-1.0), end(1.0)))
    }

    /// How a coat of `net` grams on `area` may come out, everything that is not known considered: the reading (one standard
    /// uncertainty), the bucket, the area, the target and the width of the window. `None` where a figure cannot be.
    pub fn chances(
        &self,
        area: SquareCentimetres,
        solids: &Solids,
        net: Grams,
        standard_uncertainty: Grams,
    ) -> Option<Chances> {
        let laydown = Laydown::of(solids.dry(net), area);
        let reading = standard_uncertainty / net;
        let is_coat = net.is_positive() && laydown.is_positive() && laydown.value().is_finite();
        if !(is_coat && is_share(reading) && is_share(solids.relative_uncertainty)) {
            return None;
        }
        let sd = self.middle_sd.hypot(solids.relative_uncertainty).hypot(reading);
        Some(self.chances_at(laydown.value().ln() - self.middle, sd))
    }

    /// The chances so far above the aim, in logarithms, with one standard uncertainty of that distance.
    fn chances_at(&self, above: f64, sd: f64) -> Chances {
        let (mut thin, mut thick, mut all) = (0.0, 0.0, 0.0);
        let s = self.ln_steepness.exp();
        // The trapezoidal rule errs by `exp(−2π d / h)` where the nearest pole is d off the axis (Trefethen & Weideman, "The
        // exponentially convergent trapezoidal rule", 2014; from memory), here d = π / (s sd): 10⁻⁶ at this step.
        let steps = (MOST_OFF * s * sd / FINE).ceil().clamp(FEWEST_STEPS, MOST_STEPS) as i32;
        for (width_off, width_weight) in THREE_POINTS {
            let half_width = (self.ln_half_width + width_off * self.ln_half_width_sd).exp();
            for step in -steps..=steps {
                let off = f64::from(step) * MOST_OFF / f64::from(steps);
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
}

/// As far below as above, in logarithms.
fn around(wet: Grams, half: f64) -> (Grams, Grams) {
    (wet * (-half).exp(), wet * half.exp())
}

/// Nodes and weights of Gauss and Hermite for three points, for a standard normal variable (Abramowitz & Stegun, 25.4.46).
const THREE_POINTS: [(f64, f64); 3] =
    [(-1.732_050_807_568_877_2, 1.0 / 6.0), (0.0, 2.0 / 3.0), (1.732_050_807_568_877_2, 1.0 / 6.0)];
/// The trapezoidal rule over a normal density reaches so many standard deviations out, in so many steps to each side: more where
/// the odds change steeply.
const MOST_OFF: f64 = 4.5;
const FINE: f64 = 1.4;
const FEWEST_STEPS: f64 = 8.0;
const MOST_STEPS: f64 = 45.0;
/// Halvings until the end of a window is known to a ten-thousandth, far finer than a scale shows.
const HALVINGS: usize = 14;
