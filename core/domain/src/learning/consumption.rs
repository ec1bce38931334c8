//! How much of a glaze is used, what is left in a bucket, and what to mix.

use crate::coat::Solids;
use crate::units::{Grams, Millilitres, SpecificGravity};

/// Use is counted over so many weeks. Common practice, no source.
pub const WEEKS: f64 = 8.0;
/// So much of what was mixed has to stay in the bucket to dip into. Common practice, no source.
pub const KEPT_TO_DIP: f64 = 1.0 / 3.0;
const DAYS: f64 = 7.0;

/// What is used of a glaze.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeeklyUse {
    /// Wet glaze a week.
    pub per_week: Grams,
    /// Wet glaze on the middle one of the coats.
    pub per_coat: Grams,
    /// How many coats that is from.
    pub coats: usize,
}

/// The use over the last [`WEEKS`], or since the first coat where that is later, but never over less than a week. `coats`: when
/// each was weighed, in days, and what it weighed. `None` where there were none, or a figure cannot be.
pub fn weekly_use(coats: &[(f64, Grams)], today: f64) -> Option<WeeklyUse> {
    let usable = coats.iter().filter(|(day, wet)| day.is_finite() && *day <= today && wet.is_positive());
    let recent: Vec<&(f64, Grams)> = usable.filter(|(day, _)| today - day <= WEEKS * DAYS).collect();
    let first = recent.iter().map(|(day, _)| *day).fold(today, f64::min);
    let is_whole = coats.iter().any(|(day, _)| today - day > WEEKS * DAYS);
    let weeks = if is_whole { WEEKS } else { ((today - first) / DAYS).max(1.0) };
    let mut weights: Vec<f64> = recent.iter().map(|(_, wet)| wet.value()).collect();
    weights.sort_by(f64::total_cmp);
    let all: f64 = weights.iter().sum();
    let middle = weights.get(weights.len() / 2)?;
    (all / weeks).is_finite().then(|| WeeklyUse {
        per_week: Grams::new(all / weeks),
        per_coat: Grams::new(*middle),
        coats: weights.len(),
    })
}

/// What a bucket still has.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Left {
    /// Wet glaze in it.
    pub wet: Grams,
    /// The same as a share of what was mixed.
    pub share: f64,
    /// So many coats until only [`KEPT_TO_DIP`] is left.
    pub coats: u32,
}

/// What is left of `mixed` at `sg` once `taken` grams are on pots and a coat takes `per_coat`. What dried or was spilled is not
/// known. `None` where a figure cannot be.
pub fn left(mixed: Millilitres, sg: SpecificGravity, taken: Grams, per_coat: Grams) -> Option<Left> {
    // A millilitre of water is taken as a gram.
    let full = mixed.value() * sg.value();
    let is_usable = full.is_finite() && full > 0.0 && taken.value() >= 0.0 && per_coat.is_positive();
    let wet = (full - taken.value()).max(0.0);
    let coats = ((wet - full * KEPT_TO_DIP).max(0.0) / per_coat.value()).floor();
    (is_usable && coats.is_finite()).then(|| Left {
        wet: Grams::new(wet),
        share: wet / full,
        coats: coats.min(f64::from(u32::MAX)) as u32,
    })
}

/// What makes so much wet glaze: powder and water, by weight.
pub fn to_mix(wet: Grams, solids: &Solids) -> (Grams, Grams) {
    let powder = solids.dry(wet);
    (powder, wet - powder)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::glaze::slurry::SgReading;
    use crate::units::PowderDensity;
    use approx::assert_relative_eq;

    fn coats(days: &[f64]) -> Vec<(f64, Grams)> {
        days.iter().map(|day| (*day, Grams::new(20.0))).collect()
    }

    #[test]
    fn use_is_counted_over_eight_weeks_at_most() {
        // Three a week for ten weeks.
        let days: Vec<f64> = (0..30).map(|at| f64::from(at) * 7.0 / 3.0).collect();
        let found = weekly_use(&coats(&days), 70.0).unwrap();
        assert_relative_eq!(found.per_week.value(), 60.0, max_relative = 0.05);
        assert_eq!(found.per_coat, Grams::new(20.0));
        // Since the first coat where that is later, but a single day is no week.
        assert_relative_eq!(weekly_use(&coats(&[0.0, 7.0, 14.0]), 14.0).unwrap().per_week.value(), 30.0);
        assert_relative_eq!(weekly_use(&coats(&[14.0, 14.0, 14.0]), 14.0).unwrap().per_week.value(), 60.0);
        assert_eq!(weekly_use(&coats(&[0.0]), 100.0), None, "none in eight weeks");
        assert_eq!(weekly_use(&[], 1.0), None);
    }

    #[test]
    fn a_bucket_gives_coats_until_a_third_is_left() {
        let sg = SpecificGravity::new(1.45).unwrap();
        let found = left(Millilitres::new(5_000.0), sg, Grams::new(1_450.0), Grams::new(20.0)).unwrap();
        assert_relative_eq!(found.wet.value(), 5_800.0);
        assert_relative_eq!(found.share, 0.8);
        // 5,800 g less a third of 7,250 g.
        assert_eq!(found.coats, 169);
        let empty = left(Millilitres::new(1_000.0), sg, Grams::new(2_000.0), Grams::new(20.0)).unwrap();
        assert_eq!((empty.wet, empty.coats), (Grams::ZERO, 0));
        assert_eq!(left(Millilitres::ZERO, sg, Grams::ZERO, Grams::new(20.0)), None);
        assert_eq!(left(Millilitres::new(1_000.0), sg, Grams::ZERO, Grams::ZERO), None);
    }

    /// Equal weights of powder and water make a specific gravity of 1.444 at a density of 2.6 (Brongniart).
    #[test]
    fn what_to_mix_has_the_buckets_specific_gravity() {
        let density = PowderDensity::default();
        let solids =
            Solids::of(SgReading::new(SpecificGravity::new(2.6 / 1.8).unwrap(), 0.0).unwrap(), density).unwrap();
        let (powder, water) = to_mix(Grams::new(1_000.0), &solids);
        assert_relative_eq!(powder.value(), 500.0, max_relative = 1e-4);
        assert_relative_eq!(water.value(), 500.0, max_relative = 1e-4);
    }
}
