//! How many standard uncertainties a 95% interval reaches out.

use statrs::distribution::{ContinuousCDF, StudentsT};

/// 97.5% point of the normal distribution.
pub const NORMAL_95: f64 = 1.959_963_984_540_054;

/// From so many degrees of freedom on, the quantile is taken from the normal distribution: the library's search loses its
/// way above some millions and does not end above 1e7.
const NEARLY_NORMAL: f64 = 1e4;

/// 97.5% point of Student's t distribution, for a 95% interval with `freedom` degrees of freedom; `None` for fewer than
/// one.
///
/// Above 1e4 degrees of freedom it is the normal quantile z with the first term of its series, `z + (z³ + z)/(4ν)`
/// (Abramowitz & Stegun, 26.7.5); what is left out is under 3e-8. Below, the error is under 1e-9.
pub fn student_t_95(freedom: f64) -> Option<f64> {
    if freedom.is_nan() || freedom < 1.0 {
        return None;
    }
    if freedom > NEARLY_NORMAL {
        return Some(NORMAL_95 + (NORMAL_95.powi(3) + NORMAL_95) / (4.0 * freedom));
    }
    Some(StudentsT::new(0.0, 1.0, freedom).ok()?.inverse_cdf(0.975))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// `scipy.stats.t.ppf(0.975, ν)` of SciPy 1.17.1.
    #[test]
    fn scipy_has_the_same_quantiles() {
        let expected = [
            (1.0, 12.706204736174694, 1e-9),
            (2.0, 4.302652729749462, 1e-9),
            (2.5, 3.5746548420036817, 1e-9),
            (5.0, 2.5705818356363146, 1e-9),
            (30.0, 2.0422724563012378, 1e-9),
            (1000.0, 1.9623390808264083, 1e-9),
            (9999.0, 1.960201263621357, 1e-9),
            (1e5, 1.9599877075346095, 1e-9),
            (1e7, 1.959964221767205, 1e-9),
        ];
        for (freedom, quantile, error) in expected {
            let found = student_t_95(freedom).unwrap();
            assert!((found - quantile).abs() < error, "{freedom}: {found}");
        }
    }

    #[test]
    fn the_two_ways_meet() {
        let (below, above) = (student_t_95(NEARLY_NORMAL).unwrap(), student_t_95(NEARLY_NORMAL * 1.000_001).unwrap());
        assert!((below - above).abs() < 3e-8, "{below} {above}");
    }

    #[test]
    fn more_degrees_of_freedom_reach_less_far() {
        let quantiles: Vec<f64> =
            (0..=600).filter_map(|step| student_t_95(10f64.powf(f64::from(step) / 60.0))).collect();
        assert_eq!(quantiles.len(), 601);
        assert!(quantiles.windows(2).all(|pair| pair[1] < pair[0] && pair[1] > NORMAL_95));
    }

    #[test]
    fn no_freedom_has_no_quantile_and_endless_freedom_has_the_normal_one() {
        for freedom in [0.0, 0.999, -1.0, f64::NAN, f64::NEG_INFINITY] {
            assert_eq!(student_t_95(freedom), None, "{freedom}");
        }
        for freedom in [f64::MAX, f64::INFINITY] {
            assert_eq!(student_t_95(freedom), Some(NORMAL_95), "{freedom}");
        }
    }
}
