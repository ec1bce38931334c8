//! Whether a series has drifted off its aim: the tabular cumulative sum on both sides.
//!
//! As in the NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3 (doi:10.18434/M32189). An alarm holds until it is answered:
//! after that the series begins anew.

use super::control_chart::{EXACT_RANGE_OF_TWO, individuals};

/// What a value may be off, in standard deviations, before it adds to the sum: half the drift that is to be seen.
pub const ALLOWANCE: f64 = 0.5;
/// The sum that is an alarm, in standard deviations.
pub const ALARM_AT: f64 = 4.5;

/// To which side a series drifted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Above its aim.
    High,
    /// Below it.
    Low,
}

/// A drift that was seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Alarm {
    /// To which side.
    pub side: Side,
    /// The first value of the drift, as far as the sum tells: the first after it was last nothing.
    pub since: usize,
    /// The value at which it was seen.
    pub at: usize,
}

/// The two sums after each value.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Sums {
    /// Above the aim.
    pub high: Vec<f64>,
    /// Below it.
    pub low: Vec<f64>,
    /// The first alarm. It holds, whatever comes later.
    pub alarm: Option<Alarm>,
}

/// The sums of `off`: how far each value lies above its aim, in standard deviations, since the last alarm was answered. One that
/// is no number changes nothing.
pub fn sums(off: &[f64]) -> Sums {
    let mut sums = Sums::default();
    let mut now = [(Side::High, 0.0f64, 0usize), (Side::Low, 0.0, 0)];
    for (at, value) in off.iter().enumerate() {
        for (side, sum, since) in &mut now {
            let beyond = match side {
                Side::High => value - ALLOWANCE,
                Side::Low => -value - ALLOWANCE,
            };
            if beyond.is_finite() {
                *sum = (*sum + beyond).max(0.0);
            }
            if *sum <= 0.0 {
                *since = at + 1;
            } else if *sum > ALARM_AT && sums.alarm.is_none() {
                sums.alarm = Some(Alarm { side: *side, since: *since, at });
            }
        }
        sums.high.push(now[0].1);
        sums.low.push(now[1].1);
    }
    sums
}

/// A hand that strays less than this from coat to coat, in logarithms, is taken to stray so much: a drift that is smaller still
/// matters to no glaze. Common practice, no source.
pub const LEAST_SD: f64 = 0.02;

/// Whether coats keep to their aims.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drift {
    /// How far single coats stray, in logarithms: by the mean moving range, with d₂ exact.
    pub sd: f64,
    /// What was seen.
    pub alarm: Option<Alarm>,
    /// The last coat of the drift: the one with the highest sum before that is nothing again.
    pub until: usize,
    /// Whether its sum has been nothing since: coats are back on the aim.
    pub is_over: bool,
    /// How far the coats of the drift lie above the aim, as a fraction of it; all of them while there is none.
    pub mean_off: f64,
}

/// What `ratios` say, each a coat's weight over its aim, in their order since the last alarm was answered. One that cannot be
/// changes nothing. `None` for fewer than two.
pub fn drift(ratios: &[f64]) -> Option<Drift> {
    let off: Vec<f64> = ratios.iter().map(|ratio| if *ratio > 0.0 { ratio.ln() } else { f64::NAN }).collect();
    let usable: Vec<f64> = off.iter().copied().filter(|off| off.is_finite()).collect();
    let sd = (individuals(&usable)?.mean_range / EXACT_RANGE_OF_TWO).max(LEAST_SD);
    let sums = sums(&off.iter().map(|off| off / sd).collect::<Vec<_>>());
    let (mut until, mut is_over) = (off.len() - 1, false);
    if let Some(alarm) = sums.alarm {
        let sum = if alarm.side == Side::High { &sums.high } else { &sums.low };
        let of_it = sum.iter().enumerate().skip(alarm.at).take_while(|(_, sum)| **sum > 0.0);
        until = of_it.max_by(|one, other| one.1.total_cmp(other.1)).map_or(alarm.at, |(at, _)| at);
        is_over = sum.iter().skip(alarm.at).any(|sum| *sum <= 0.0);
    }
    let since = sums.alarm.map_or(0, |alarm| alarm.since);
    let of_it: Vec<f64> = off.iter().take(until + 1).skip(since).copied().filter(|off| off.is_finite()).collect();
    let mean = of_it.iter().sum::<f64>() / of_it.len() as f64;
    Some(Drift { sd, alarm: sums.alarm, until, is_over, mean_off: mean.exp_m1() })
}

/// What of `labels`, one a value, came up for the first time within `reach` values of the one at `since`, in its order. What
/// the series began with is not new.
pub fn new_near<T: PartialEq + Clone>(labels: &[T], since: usize, reach: usize) -> Vec<T> {
    let mut new: Vec<T> = Vec::new();
    for (at, label) in labels.iter().enumerate().take(since + reach + 1).skip(since.saturating_sub(reach).max(1)) {
        if !labels[..at].contains(label) && !new.contains(label) {
            new.push(label.clone());
        }
    }
    new
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_drift_is_seen_and_where_it_began() {
        let noise = [0.4, -0.6, 0.2, -0.3, 0.5, -0.4];
        let off: Vec<f64> = (0..30).map(|at| noise[at % 6] + if at < 12 { 0.0 } else { 1.5 }).collect();
        let found = sums(&off).alarm.unwrap();
        assert_eq!((found.side, found.since), (Side::High, 12));
        assert!(found.at <= 18, "{found:?}");
        let turned: Vec<f64> = off.iter().map(|value| -value).collect();
        assert_eq!(sums(&turned).alarm, Some(Alarm { side: Side::Low, ..found }));
        assert_eq!(sums(&off[..12]).alarm, None);
    }

    #[test]
    fn an_alarm_holds_although_the_series_comes_back() {
        let mut off = vec![2.0; 5];
        off.extend([-0.2; 40]);
        let found = sums(&off);
        assert_eq!(found.alarm, Some(Alarm { side: Side::High, since: 0, at: 3 }));
        assert_eq!(found.high.last(), Some(&0.0));
    }

    #[test]
    fn what_is_no_number_changes_nothing() {
        let with = sums(&[2.0, f64::NAN, 2.0, f64::INFINITY, 2.0, 2.0]);
        assert_eq!(with.alarm.map(|alarm| alarm.at), Some(5));
        assert_eq!(sums(&[]), Sums::default());
    }

    #[test]
    fn coats_that_run_over_are_seen_with_their_mean() {
        let noise = [0.01, -0.02, 0.02, -0.01, 0.03, -0.03];
        let ratio = |at: usize| f64::exp(noise[at % 6] + if at < 12 { 0.0 } else { 0.06 });
        let ratios: Vec<f64> = (0..24).map(ratio).collect();
        let found = drift(&ratios).unwrap();
        let alarm = found.alarm.unwrap();
        assert_eq!((alarm.side, alarm.since), (Side::High, 12));
        assert!((found.mean_off - 0.06f64.exp_m1()).abs() < 0.005, "{found:?}");
        assert_eq!(drift(&ratios[..12]).unwrap().alarm, None);
        // One that cannot be is no end of the series, and two alike are no perfect hand.
        let odd: Vec<f64> = ratios.iter().copied().chain([f64::NAN, 0.0, -1.0]).collect();
        assert_eq!(drift(&odd).map(|odd| (odd.alarm, odd.sd, odd.is_over)), Some((found.alarm, found.sd, false)));
        // Coats that came back to the aim are none of the drift's.
        let back: Vec<f64> = ratios.iter().copied().chain((0..60).map(|at| f64::exp(noise[at % 6]))).collect();
        let ended = drift(&back).unwrap();
        assert!((20..26).contains(&ended.until) && ended.is_over && !found.is_over, "{ended:?} {found:?}");
        assert!((ended.mean_off - found.mean_off).abs() < 0.005, "{ended:?} {found:?}");
        assert_eq!(drift(&[1.0, 1.0]).map(|drift| drift.sd), Some(LEAST_SD));
        assert_eq!((drift(&[1.0]), drift(&[]), drift(&[0.0, 0.0])), (None, None, None));
    }

    #[test]
    fn what_is_new_near_a_drift_is_named_once() {
        let buckets = ["old", "old", "old", "new", "new", "old", "new", "later"];
        assert_eq!(new_near(&buckets, 4, 2), ["new"]);
        assert_eq!(new_near(&buckets, 6, 2), ["later"]);
        assert_eq!(new_near(&buckets, 0, 2), [""; 0]);
        assert_eq!(new_near(&buckets, 40, 2), [""; 0]);
    }
}
