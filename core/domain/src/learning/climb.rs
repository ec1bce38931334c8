//! The highest place of a logarithm of a posterior, by Newton's method with damping.

use nalgebra::{DMatrix, DVector};

const MOST_STEPS: usize = 200;
/// Twice the rise that one more step would bring: less cannot be told from rounding.
const ARRIVED: f64 = 1e-12;
/// A step that brings so little and no longer rises is lost in the rounding of a sum over thousands of pots.
const LOST_IN_ROUNDING: f64 = 1e-7;
const MOST_HALVINGS: i32 = 60;

/// Logarithm of a posterior at one place, with its first and second derivatives.
pub(super) struct LogPosterior {
    pub(super) value: f64,
    pub(super) slope: DVector<f64>,
    pub(super) curvature: DMatrix<f64>,
}

/// Where it is highest, and the inverse of the curvature there with its sign turned: Laplace's approximation of the covariance.
pub(super) struct Top {
    pub(super) place: DVector<f64>,
    pub(super) covariance: DMatrix<f64>,
}

impl LogPosterior {
    /// The same everywhere.
    pub(super) fn flat(parameters: usize) -> LogPosterior {
        LogPosterior {
            value: 0.0,
            slope: DVector::zeros(parameters),
            curvature: DMatrix::zeros(parameters, parameters),
        }
    }

    /// Adds the logarithm of a normal density of `off`, which changes by so much with each parameter named in `by`.
    pub(super) fn normal(&mut self, by: &[(usize, f64)], off: f64, sd: f64) {
        let variance = sd * sd;
        self.value -= off * off / (2.0 * variance);
        for (row, factor) in by {
            self.slope[*row] -= factor * off / variance;
            for (column, other) in by {
                self.curvature[(*row, *column)] -= factor * other / variance;
            }
        }
    }

    /// A step uphill: Newton's, damped as much as the curvature needs.
    fn uphill(&self) -> Option<DVector<f64>> {
        let size = self.slope.len();
        let dampings = std::iter::once(0.0).chain((-3..12).map(|power| 10f64.powi(power)));
        dampings
            .map(|damping| DMatrix::identity(size, size) * damping - &self.curvature)
            .find_map(DMatrix::cholesky)
            .map(|factor| factor.solve(&self.slope))
    }
}

/// Climbs from `start`; `None` when there is no finite top.
pub(super) fn climb(start: DVector<f64>, posterior: impl Fn(&DVector<f64>) -> LogPosterior) -> Option<Top> {
    let mut place = start;
    let mut here = posterior(&place);
    for _ in 0..MOST_STEPS {
        let step = here.uphill()?;
        let gain = here.slope.dot(&step);
        let next = (gain >= ARRIVED).then(|| higher(&place, &step, here.value, &posterior));
        match next {
            Some(Some((next, there))) => (place, here) = (next, there),
            Some(None) if gain > LOST_IN_ROUNDING => return None,
            Some(None) => return top(place, here),
            None => return top(&place + step, here),
        }
    }
    None
}

fn top(place: DVector<f64>, at: LogPosterior) -> Option<Top> {
    let covariance = (-at.curvature).cholesky()?.inverse();
    Some(Top { place, covariance })
}

/// The first of ever shorter steps that leads higher.
fn higher(
    place: &DVector<f64>,
    step: &DVector<f64>,
    value: f64,
    posterior: impl Fn(&DVector<f64>) -> LogPosterior,
) -> Option<(DVector<f64>, LogPosterior)> {
    (0..MOST_HALVINGS)
        .map(|times| place + step * 0.5f64.powi(times))
        .map(|next| {
            let there = posterior(&next);
            (next, there)
        })
        .find(|(_, there)| there.value > value)
}
