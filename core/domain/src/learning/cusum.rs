//! Whether a series has drifted off its aim: the tabular cumulative sum on both sides.
//!
//! As in the NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3 (doi:10.18434/M32189). An alarm holds until it is answered:
//! after that the series begins anew.

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
}
