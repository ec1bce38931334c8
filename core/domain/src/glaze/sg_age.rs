//! How sure a bucket's specific gravity still is, some days after its last check: it walks at random as water evaporates and
//! glaze settles, is used and is topped up.

use super::slurry::SgReading;

/// One standard deviation of the walk after a day, in specific gravity; after t days it is √t times that. Common practice, no
/// source.
pub const USUAL_WALK: f64 = 0.004;

/// How many days between checks the usual walk weighs against the bucket's own.
const USUAL_DAYS: f64 = 28.0;
/// A jump counts at most as so many standard deviations: somebody has mixed or thinned on purpose.
const LARGEST_JUMP: f64 = 3.0;
/// The least share of the usual walk.
const LEAST: f64 = 0.25;

/// How far this bucket's specific gravity walks in a day, from its own checks (the day of each, in any order) and what is usual.
pub fn walk(checks: &[(f64, SgReading)]) -> f64 {
    let mut checks: Vec<&(f64, SgReading)> = checks.iter().filter(|(day, _)| day.is_finite()).collect();
    checks.sort_by(|one, other| one.0.total_cmp(&other.0));
    let usual = USUAL_WALK * USUAL_WALK;
    let (mut squares, mut days) = (usual * USUAL_DAYS, USUAL_DAYS);
    for pair in checks.windows(2) {
        let ((before, first), (after, second)) = (pair[0], pair[1]);
        let gap = after - before;
        let jump = (second.sg.value() - first.sg.value()).powi(2);
        let own = first.standard_uncertainty.powi(2) + second.standard_uncertainty.powi(2);
        squares += (jump - own).min(LARGEST_JUMP.powi(2) * usual * gap);
        days += gap;
    }
    (squares / days).max(usual * LEAST * LEAST).sqrt()
}

/// A check as it counts `days` later, for a bucket with this [`walk`]. Never less sure than an unchecked one, unless it was so
/// at once.
pub fn aged(reading: SgReading, days: f64, walk: f64) -> SgReading {
    let most = reading.standard_uncertainty.max(SgReading::UNCHECKED);
    let walked = reading.standard_uncertainty.hypot(walk * days.max(0.0).sqrt());
    SgReading { standard_uncertainty: walked.min(most), ..reading }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::SpecificGravity;
    use approx::assert_relative_eq;

    fn check(sg: f64) -> SgReading {
        SgReading::checked(SpecificGravity::new(sg).unwrap())
    }

    #[test]
    fn a_check_fades_until_it_is_as_good_as_none() {
        let at_once = check(1.45);
        assert_eq!(aged(at_once, 0.0, USUAL_WALK), at_once);
        assert_eq!(aged(at_once, -3.0, USUAL_WALK), at_once);
        // √(0.005² + 25 × 0.004²)
        assert_relative_eq!(aged(at_once, 25.0, USUAL_WALK).standard_uncertainty, 0.020_615_528, max_relative = 1e-8);
        assert_relative_eq!(aged(at_once, 1e6, USUAL_WALK).standard_uncertainty, SgReading::UNCHECKED);
        let rough = SgReading { standard_uncertainty: 0.1, ..at_once };
        assert_eq!(aged(rough, 1e6, USUAL_WALK), rough);
    }

    #[test]
    fn a_bucket_says_by_its_own_checks_how_far_it_walks() {
        assert_relative_eq!(walk(&[]), USUAL_WALK);
        let every_week = |step: f64| -> Vec<(f64, SgReading)> {
            (0..30).map(|week| (f64::from(week) * 7.0, check(1.45 + if week % 2 == 0 { 0.0 } else { step }))).collect()
        };
        let (still, restless) = (walk(&every_week(0.0)), walk(&every_week(0.03)));
        assert!((USUAL_WALK * LEAST..USUAL_WALK / 2.0).contains(&still), "{still}");
        assert!(restless > USUAL_WALK * 2.0, "{restless}");
        // Thinned once on purpose.
        let mut thinned = every_week(0.01);
        for (_, reading) in &mut thinned[15..] {
            reading.sg = SpecificGravity::new(reading.sg.value() - 0.15).unwrap();
        }
        assert!(walk(&thinned) < walk(&every_week(0.01)) * 1.3);
    }
}
