//! Test tiles: the laydown of a tile, what it would be on a pot, and whether the tile says anything about the pot.

use super::target::{Job, TileEvidence};
use super::{MOST_LAYDOWN, Solids};
use crate::coded::coded;
use crate::form::MEASURED_AREA;
use crate::units::{Grams, Laydown, SquareCentimetres};

/// A tile thinner than this share of the pots says little about them. Common practice, no source.
pub const THIN_SHARE: f64 = 0.7;

/// Relative standard uncertainty of a tile's dry weight. Common practice, no source.
const DRY_WEIGHING: f64 = 0.02;

coded! {
    /// How a test tile came out of the kiln.
    "tile result" TileResult {
        /// It was not fired yet.
        NotFired = "not_fired",
        /// Too thin.
        Thin = "thin",
        /// Right.
        Right = "right",
        /// Too thick.
        Thick = "thick",
    }
}

/// Why a tile gives no laydown.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum TileError {
    /// No area.
    NoArea,
    /// No weight.
    NoWeight,
    /// More than any tile holds.
    TooMuch,
}

/// Laydown of a tile from its wet weight, read at once.
///
/// # Errors
/// When area or weight is nothing, or the coat is more than a tile can hold.
pub fn tile(area: SquareCentimetres, wet: Grams, solids: &Solids) -> Result<TileEvidence, TileError> {
    evidence(area, solids.dry(wet), solids.relative_uncertainty)
}

/// Laydown of a tile from its dry weight.
///
/// # Errors
/// As [`tile`].
pub fn tile_from_dry(area: SquareCentimetres, dry: Grams) -> Result<TileEvidence, TileError> {
    evidence(area, dry, DRY_WEIGHING)
}

fn evidence(area: SquareCentimetres, dry: Grams, weighing: f64) -> Result<TileEvidence, TileError> {
    if !area.is_positive() {
        return Err(TileError::NoArea);
    }
    if !dry.is_positive() {
        return Err(TileError::NoWeight);
    }
    let laydown = Laydown::of(dry, area);
    if laydown > MOST_LAYDOWN {
        return Err(TileError::TooMuch);
    }
    Ok(TileEvidence { laydown, relative_uncertainty: weighing.hypot(MEASURED_AREA) })
}

/// What a coat as thick as the tile's weighs wet on the job's zone.
pub fn as_thick_as(tile: Laydown, job: &Job) -> Grams {
    job.solids.wet(tile.dry_on(job.zone.area))
}

/// Whether a tile says how thick pots should be: it was fired, came out right, and carries enough for that.
pub fn teaches(result: TileResult, tile: Laydown, pots: Laydown) -> bool {
    result == TileResult::Right && share_if_thin(tile, pots).is_none()
}

/// The thinnest and the thickest tile of a ladder, as shares of the aim. Common practice, no source.
pub const LADDER: (f64, f64) = (0.6, 1.4);

/// The most tiles of a ladder. Common practice, no source.
const MOST_RUNGS: usize = 100;

/// One tile of a ladder.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rung {
    /// Its share of the aim.
    pub share: f64,
    /// Its laydown.
    pub laydown: Laydown,
    /// What its coat weighs wet.
    pub wet: Grams,
}

/// A ladder of `count` tiles in equal steps from the thinnest to the thickest; an odd count has one on the aim itself. Each of a
/// glazed `area`. None for fewer than two, or more than any kiln takes.
pub fn ladder(aim: Laydown, area: SquareCentimetres, solids: &Solids, count: usize) -> Vec<Rung> {
    if !(2..=MOST_RUNGS).contains(&count) {
        return Vec::new();
    }
    let step = (LADDER.1 - LADDER.0) / (count - 1) as f64;
    let rung = |at: usize| {
        let share = LADDER.0 + step * at as f64;
        let laydown = Laydown::new(aim.value() * share);
        Rung { share, laydown, wet: solids.wet(laydown.dry_on(area)) }
    };
    (0..count).map(rung).collect()
}

/// What a tile carries of what the pots will, as a fraction, when that is too little to say much of them.
pub fn share_if_thin(tile: Laydown, pots: Laydown) -> Option<f64> {
    Some(tile / pots).filter(|share| *share < THIN_SHARE)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::glaze::slurry::SgReading;
    use crate::units::{PowderDensity, SpecificGravity};
    use approx::assert_relative_eq;

    fn solids(sg: f64) -> Solids {
        Solids::of(SgReading::checked(SpecificGravity::new(sg).unwrap()), PowderDensity::default()).unwrap()
    }

    #[test]
    fn a_small_tile_carries_three_to_four_grams_wet() {
        // common practice, no source: 3-4 g wet, 1.5-2.5 g dry; a tile of 35 cm² then lies in the plausible span.
        for (wet, sg) in [(3.0, 1.45), (4.0, 1.45), (3.0, 1.55), (4.0, 1.55)] {
            let dry = solids(sg).dry(Grams::new(wet)).value();
            assert!((1.5..=2.5).contains(&dry), "{wet} g at {sg}: {dry}");
            let read = tile(SquareCentimetres::new(35.0), Grams::new(wet), &solids(sg)).unwrap();
            assert!((3.0..=10.0).contains(&read.laydown.value()));
        }
    }

    #[test]
    fn wet_and_dry_agree() {
        let area = SquareCentimetres::new(35.0);
        let (wet, solids) = (Grams::new(3.6), solids(1.5));
        let (from_wet, from_dry) = (tile(area, wet, &solids).unwrap(), tile_from_dry(area, solids.dry(wet)).unwrap());
        assert_relative_eq!(from_wet.laydown.value(), from_dry.laydown.value(), max_relative = 1e-12);
    }

    #[test]
    fn a_thin_tile_is_pointed_out() {
        assert_eq!(share_if_thin(Laydown::new(4.0), Laydown::new(5.5)), None);
        assert_relative_eq!(share_if_thin(Laydown::new(3.3), Laydown::new(5.5)).unwrap(), 0.6, max_relative = 1e-12);
    }

    #[test]
    fn only_a_tile_that_came_out_right_and_is_thick_enough_teaches() {
        let pots = Laydown::new(5.5);
        let taught = TileResult::ALL.iter().filter(|result| teaches(**result, Laydown::new(5.0), pots));
        assert_eq!(taught.collect::<Vec<_>>(), [&TileResult::Right]);
        assert!(!teaches(TileResult::Right, Laydown::new(2.5), pots));
    }

    #[test]
    fn a_ladder_reaches_from_thin_to_thick_over_the_aim() {
        let (aim, area, solids) = (Laydown::new(5.5), SquareCentimetres::new(40.0), solids(1.45));
        let rungs = ladder(aim, area, &solids, 5);
        let shares: Vec<f64> = rungs.iter().map(|rung| (rung.share * 100.0).round()).collect();
        assert_eq!(shares, [60.0, 80.0, 100.0, 120.0, 140.0]);
        for rung in rungs {
            let read = tile(area, rung.wet, &solids).unwrap();
            assert_relative_eq!(read.laydown.value(), aim.value() * rung.share, max_relative = 1e-12);
        }
        assert!(ladder(aim, area, &solids, 1).is_empty());
    }

    #[test]
    fn impossible_tiles_are_refused() {
        let area = SquareCentimetres::new(35.0);
        assert_eq!(tile_from_dry(SquareCentimetres::ZERO, Grams::new(2.0)), Err(TileError::NoArea));
        assert_eq!(tile_from_dry(area, Grams::ZERO), Err(TileError::NoWeight));
        assert_eq!(tile_from_dry(area, Grams::new(f64::NAN)), Err(TileError::NoWeight));
        assert_eq!(tile_from_dry(area, Grams::new(20.0)), Err(TileError::TooMuch));
    }
}
