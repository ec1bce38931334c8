//! Where a bucket's specific gravity is, some days after its last check, and how sure that is: water evaporates, and beside that it
//! walks at random as glaze settles, is used and is topped up.

use super::slurry::SgReading;
use crate::units::SpecificGravity;

/// One standard deviation of the walk after a day, in specific gravity; after t days it is √t times that. Common practice, no
/// source.
pub const USUAL_WALK: f64 = 0.004;

/// How many days between checks the usual walk weighs against the bucket's own.
const USUAL_DAYS: f64 = 28.0;
/// A jump counts at most as so many standard deviations: somebody has mixed or thinned on purpose.
const LARGEST_JUMP: f64 = 3.0;
/// The least share of the usual walk.
const LEAST: f64 = 0.25;

/// How fast water is usually lost: one standard deviation of the rise in specific gravity in a day, about a mean of nothing. Common
/// practice, no source: half a litre from ten in a month is 0.001 a day.
const USUAL_RISE: f64 = 0.001;
/// A rise is carried on for so many days at most. Common practice, no source.
const LONGEST_RISE: f64 = 60.0;

/// What happened between two checks that follow each other with nothing put in or taken off between them.
struct Gap {
    days: f64,
    change: f64,
    /// Variance of the change that is the checks' own.
    own: f64,
}

/// The gaps between checks (the day of each, in any order); `changed`: days on which water or powder was added or taken off.
fn gaps(checks: &[(f64, SgReading)], changed: &[f64]) -> Vec<Gap> {
    let mut checks: Vec<&(f64, SgReading)> = checks.iter().filter(|(day, _)| day.is_finite()).collect();
    checks.sort_by(|one, other| one.0.total_cmp(&other.0));
    let is_left_alone = |pair: &&[&(f64, SgReading)]| !changed.iter().any(|day| (pair[0].0..pair[1].0).contains(day));
    checks
        .windows(2)
        .filter(is_left_alone)
        .map(|pair| {
            let ((before, first), (after, second)) = (pair[0], pair[1]);
            Gap {
                days: after - before,
                change: second.sg.value() - first.sg.value(),
                own: first.standard_uncertainty.powi(2) + second.standard_uncertainty.powi(2),
            }
        })
        .collect()
}

/// How far this bucket's specific gravity walks in a day, from its own checks and what is usual. `checks` and `changed`: days, as
/// of [`rise`].
pub fn walk(checks: &[(f64, SgReading)], changed: &[f64]) -> f64 {
    let usual = USUAL_WALK * USUAL_WALK;
    let (mut squares, mut days) = (usual * USUAL_DAYS, USUAL_DAYS);
    for gap in gaps(checks, changed) {
        squares += (gap.change.powi(2) - gap.own).min(LARGEST_JUMP.powi(2) * usual * gap.days);
        days += gap.days;
    }
    (squares / days).max(usual * LEAST * LEAST).sqrt()
}

/// How fast a bucket's specific gravity rises by itself, in a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rise {
    /// The rise; never below nothing, since water does not come by itself.
    pub per_day: f64,
    /// One standard uncertainty of it.
    pub standard_uncertainty: f64,
}

/// The rise from a bucket's own checks (the day of each, in any order), drawn towards nothing where they are few: the posterior
/// mean of a normal rate with a normal prior. `changed`: the days on which water or powder was added or taken off; what lies
/// between two checks around one of them says nothing.
pub fn rise(checks: &[(f64, SgReading)], changed: &[f64]) -> Rise {
    let (mut precision, mut sum) = (USUAL_RISE.powi(-2), 0.0);
    for gap in gaps(checks, changed).iter().filter(|gap| gap.days > 0.0) {
        // A jump on purpose counts as far as the walk reaches.
        let most = LARGEST_JUMP * USUAL_WALK * gap.days.sqrt();
        let variance = gap.own + USUAL_WALK.powi(2) * gap.days;
        precision += gap.days.powi(2) / variance;
        sum += gap.days * gap.change.clamp(-most, most) / variance;
    }
    Rise { per_day: (sum / precision).max(0.0), standard_uncertainty: precision.recip().sqrt() }
}

/// A check as it is to be expected `days` later: risen, and as sure as it still is.
pub fn projected(reading: SgReading, days: f64, walk: f64, rise: Rise) -> SgReading {
    let rising = days.clamp(0.0, LONGEST_RISE);
    let sg = SpecificGravity::new(reading.sg.value() + rise.per_day * rising).unwrap_or(reading.sg);
    let standard_uncertainty = reading.standard_uncertainty.hypot(rise.standard_uncertainty * rising);
    let most = reading.standard_uncertainty.max(SgReading::UNCHECKED);
    let aged = aged(SgReading { sg, standard_uncertainty }, days, walk);
    SgReading { standard_uncertainty: aged.standard_uncertainty.min(most), ..aged }
}

/// After how many days a check is so unsure that a new one is due: one standard uncertainty of `reading`, as [`projected`], passes
/// [`CHECK_IS_DUE`]. Nothing where it is so at once.
pub fn days_until_due(reading: SgReading, walk: f64, rise: Rise) -> u32 {
    let is_due = |days: &u32| projected(reading, f64::from(*days), walk, rise).standard_uncertainty > CHECK_IS_DUE;
    (0..MOST_DAYS).find(is_due).unwrap_or(MOST_DAYS)
}

/// One standard uncertainty in specific gravity at which a bucket is to be checked again: 3% of the glaze in it at 1.45. Common
/// practice, no source.
pub const CHECK_IS_DUE: f64 = 0.0125;
const MOST_DAYS: u32 = 365;

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
        assert_relative_eq!(walk(&[], &[]), USUAL_WALK);
        let every_week = |step: f64| -> Vec<(f64, SgReading)> {
            (0..30).map(|week| (f64::from(week) * 7.0, check(1.45 + if week % 2 == 0 { 0.0 } else { step }))).collect()
        };
        let (still, restless) = (walk(&every_week(0.0), &[]), walk(&every_week(0.03), &[]));
        assert!((USUAL_WALK * LEAST..USUAL_WALK / 2.0).contains(&still), "{still}");
        assert!(restless > USUAL_WALK * 2.0, "{restless}");
        // Thinned once on purpose.
        let mut thinned = every_week(0.01);
        for (_, reading) in &mut thinned[15..] {
            reading.sg = SpecificGravity::new(reading.sg.value() - 0.15).unwrap();
        }
        assert!(walk(&thinned, &[]) < walk(&every_week(0.01), &[]) * 1.3);
        // What was written down says nothing of the walk.
        let noted = walk(&thinned, &[14.5 * 7.0]);
        assert!(noted < walk(&thinned, &[]), "{noted}");
    }

    #[test]
    fn a_bucket_that_dries_is_projected_thicker() {
        let drying: Vec<(f64, SgReading)> =
            (0..8).map(|at| (f64::from(at) * 4.0, check(1.45 + 0.008 * f64::from(at)))).collect();
        let found = rise(&drying, &[]);
        // Seven gaps of 4 days, each 0.008 ± √(2 × 0.005² + 4 × 0.004²), against 0 ± 0.001 a day: about half of what was seen.
        assert_relative_eq!(found.per_day, 0.000_991_150, max_relative = 1e-6);
        let last = drying[7].1;
        let after = projected(last, 5.0, walk(&drying, &[]), found);
        assert_relative_eq!(after.sg.value(), last.sg.value() + 5.0 * found.per_day, max_relative = 1e-12);
        assert!(after.standard_uncertainty > last.standard_uncertainty);
        assert_eq!(projected(last, 0.0, USUAL_WALK, found), last);
        // Water comes in by hand only, and what was written down is no evaporation.
        let thinning: Vec<(f64, SgReading)> =
            (0..8).map(|at| (f64::from(at) * 4.0, check(1.5 - 0.008 * f64::from(at)))).collect();
        assert_eq!(rise(&thinning, &[]).per_day, 0.0);
        let all_noted: Vec<f64> = (0..8).map(|at| f64::from(at) * 4.0 + 1.0).collect();
        assert_eq!(rise(&drying, &all_noted), rise(&[], &[]));
        assert_eq!(rise(&[], &[]), Rise { per_day: 0.0, standard_uncertainty: USUAL_RISE });
    }

    #[test]
    fn a_check_is_due_sooner_where_a_bucket_walks_further() {
        let at_once = check(1.45);
        let usual = days_until_due(at_once, USUAL_WALK, rise(&[], &[]));
        let restless = days_until_due(at_once, USUAL_WALK * 2.0, rise(&[], &[]));
        // √(0.005² + 0.004² t + 0.001² t²) passes 0.0125 after 5.97 days, with 0.008² after 1.99.
        assert_eq!((usual, restless), (6, 2));
        assert_eq!(days_until_due(SgReading { standard_uncertainty: 0.02, ..at_once }, USUAL_WALK, rise(&[], &[])), 0);
    }
}
