//! Whether a series keeps to its aim: an individuals chart with moving ranges, and an exponentially weighted moving average.
//!
//! As in the NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2 and 6.3.2.4 (doi:10.18434/M32189).

use std::f64::consts::FRAC_2_SQRT_PI;

/// Mean of the range of two draws over their standard deviation, d₂ for n = 2, as the Handbook's table rounds it: the chart's
/// limits are the Handbook's.
pub const RANGE_OF_TWO: f64 = 1.128;
/// The same exactly, 2/√π, as SAS has it. What is calculated further with uses this one; they differ by 0.03%.
pub const EXACT_RANGE_OF_TWO: f64 = FRAC_2_SQRT_PI;
/// Upper limit of the range of two over its mean, D₄ for n = 2.
const MOST_RANGE_OF_TWO: f64 = 3.267;
/// Limits lie so many standard deviations out.
const LIMITS: f64 = 3.0;
/// What the newest value weighs in the moving average.
pub const WEIGHT: f64 = 0.3;

/// An individuals chart: single values and the ranges from each to the next.
#[derive(Debug, Clone, PartialEq)]
pub struct Individuals {
    /// Mean of the values.
    pub centre: f64,
    /// Standard deviation from one value to the next, by the mean moving range.
    pub sd: f64,
    /// Mean of the moving ranges.
    pub mean_range: f64,
    /// The limits of single values.
    pub limits: (f64, f64),
    /// The most that two neighbours should differ by.
    pub most_range: f64,
}

/// The individuals chart of `values` in the order in which they came; `None` for fewer than two.
pub fn individuals(values: &[f64]) -> Option<Individuals> {
    if values.len() < 2 {
        return None;
    }
    let centre = values.iter().sum::<f64>() / values.len() as f64;
    let ranges = values.windows(2).map(|pair| (pair[1] - pair[0]).abs());
    let mean_range = ranges.sum::<f64>() / (values.len() - 1) as f64;
    let sd = mean_range / RANGE_OF_TWO;
    let limits = (centre - LIMITS * sd, centre + LIMITS * sd);
    Some(Individuals { centre, sd, mean_range, limits, most_range: MOST_RANGE_OF_TWO * mean_range })
}

/// An exponentially weighted moving average beside its aim.
#[derive(Debug, Clone, PartialEq)]
pub struct MovingAverage {
    /// The average after each value.
    pub after: Vec<f64>,
    /// Where it lies while the values keep to the aim.
    pub limits: (f64, f64),
}

/// The moving average of `values`, which have this `aim` and standard deviation `sd`; the newest of them weighs `weight`, above
/// 0 and up to 1. It starts at the aim.
pub fn moving_average(values: &[f64], aim: f64, sd: f64, weight: f64) -> MovingAverage {
    let after = values.iter().scan(aim, |average, value| {
        *average += weight * (value - *average);
        Some(*average)
    });
    let half_width_at = LIMITS * sd * (weight / (2.0 - weight)).sqrt();
    MovingAverage { after: after.collect(), limits: (aim - half_width_at, aim + half_width_at) }
}

/// Where a series has come to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Trend {
    /// The moving average is within its limits.
    Steady,
    /// It lies above them.
    High,
    /// It lies below them.
    Low,
}

impl MovingAverage {
    /// Where the newest average lies.
    pub fn trend(&self) -> Trend {
        match self.after.last() {
            Some(newest) if *newest > self.limits.1 => Trend::High,
            Some(newest) if *newest < self.limits.0 => Trend::Low,
            _ => Trend::Steady,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_value_makes_no_chart() {
        assert_eq!(individuals(&[]), None);
        assert_eq!(individuals(&[1.0]), None);
    }

    #[test]
    fn a_step_away_from_the_aim_is_seen_and_noise_is_not() {
        let noise = [0.02, -0.03, 0.01, -0.01, 0.03, -0.02, 0.0, 0.01, -0.02, 0.02];
        let chart = |shift: f64| {
            let values: Vec<f64> = noise.iter().chain(&noise).map(|off| 1.0 + off).collect();
            let shifted: Vec<f64> =
                values.iter().enumerate().map(|(at, value)| if at < 10 { *value } else { value + shift }).collect();
            let sd = individuals(&shifted).unwrap().sd;
            moving_average(&shifted, 1.0, sd, WEIGHT).trend()
        };
        assert_eq!(chart(0.0), Trend::Steady);
        assert_eq!(chart(0.06), Trend::High);
        assert_eq!(chart(-0.06), Trend::Low);
    }
}
