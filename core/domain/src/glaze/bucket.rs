//! What is in a bucket: how much, at which specific gravity, after all that was put in, taken off and dipped out.

use std::f64::consts::PI;

use super::slurry::SgReading;
use crate::coded::coded;
use crate::units::{Grams, Millilitres, Millimetres, PowderDensity, SpecificGravity};

coded! {
    /// What is written down of a bucket beside its checks.
    "entry" EntryKind {
        /// Water stirred in.
        Water = "water",
        /// Clear water taken off.
        WaterOff = "water_off",
        /// Dry powder stirred in.
        Powder = "powder",
        /// Something that thickens the flow.
        Flocculant = "flocculant",
        /// Something that thins the flow.
        Deflocculant = "deflocculant",
        /// Put through a sieve.
        Sieved = "sieved",
        /// Its level, read off.
        Level = "level",
        /// Weighed with the glaze in it.
        Weighed = "weighed",
        /// Anything else.
        Note = "note",
    }
}

/// How unsure the volume in a bucket is, as a share of it, where water is added by it. Common practice, no source.
const VOLUME_UNSURE: f64 = 0.1;

/// What is in a bucket.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contents {
    /// How much glaze; `None` where nobody has said.
    pub volume: Option<Millilitres>,
    /// Its specific gravity.
    pub sg: SgReading,
}

/// What was done to a bucket. One gram of water is taken as one millilitre.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// Its specific gravity was checked.
    Checked(SgReading),
    /// So much is in it, as read off its level.
    Holds(Millilitres),
    /// The glaze in it weighs so much.
    Weighs(Grams),
    /// Water was stirred in.
    Water(Millilitres),
    /// Clear water was taken off.
    WaterOff(Millilitres),
    /// Dry powder was stirred in.
    Powder(Grams),
    /// So much wet glaze left it on pots.
    Taken(Grams),
}

/// Why a level or an amount cannot be.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum BucketError {
    /// The level is above the rim.
    AboveRim {
        /// How deep the bucket is.
        depth: Millimetres,
    },
    /// More water is to be taken off than there is.
    MoreWaterThanThereIs {
        /// How much there is.
        water: Millilitres,
    },
}

impl Contents {
    /// What is in the bucket after a change.
    pub fn after(self, change: Change, powder: PowderDensity) -> Contents {
        match change {
            Change::Checked(sg) => Contents { sg, ..self },
            Change::Holds(volume) => Contents { volume: Some(volume), ..self },
            Change::Weighs(wet) => {
                Contents { volume: Some(Millilitres::new(wet.value() / self.sg.sg.value())), ..self }
            }
            Change::Taken(wet) => {
                let left = |volume: Millilitres| {
                    (volume - Millilitres::new(wet.value() / self.sg.sg.value())).max(Millilitres::ZERO)
                };
                Contents { volume: self.volume.map(left), ..self }
            }
            Change::Water(water) => self.with(Grams::new(water.value()), water),
            Change::WaterOff(water) => self.with(Grams::new(-water.value()), -water),
            Change::Powder(dry) => self.with(dry, Millilitres::new(dry.value() / powder.value())),
        }
    }

    /// With so much more mass in so much more volume. Without a volume, or where the sum cannot be, nobody knows the specific gravity
    /// until it is checked.
    fn with(self, mass: Grams, added: Millilitres) -> Contents {
        let unknown =
            SgReading { standard_uncertainty: self.sg.standard_uncertainty.max(SgReading::UNCHECKED), ..self.sg };
        let Some(volume) = self.volume.filter(|volume| volume.is_positive()) else {
            return Contents { sg: unknown, ..self };
        };
        let after = volume + added;
        let sum = (volume.value() * self.sg.sg.value() + mass.value()) / after.value();
        let Some(sg) = SpecificGravity::new(sum).ok().filter(|_| after.is_positive()) else {
            return Contents { volume: Some(after.max(Millilitres::ZERO)), sg: unknown };
        };
        let moved = (sum - self.sg.sg.value()).abs();
        // JCGM 100, 5.1.2: what is unsure is the reading before and the volume that it is of.
        let before = self.sg.standard_uncertainty.hypot(VOLUME_UNSURE * moved);
        let standard_uncertainty = (before * (volume / after)).min(SgReading::LARGEST);
        Contents { volume: Some(after), sg: SgReading { sg, standard_uncertainty } }
    }
}

/// What a bucket of this diameter holds up to a level, taken as a cylinder.
///
/// # Errors
/// [`BucketError::AboveRim`].
pub fn volume_at_level(
    diameter: Millimetres,
    depth: Option<Millimetres>,
    level: Millimetres,
) -> Result<Millilitres, BucketError> {
    match depth.filter(|depth| level > *depth) {
        Some(depth) => Err(BucketError::AboveRim { depth }),
        // Cubic millimetres to millilitres.
        None => Ok(Millilitres::new(PI / 4.0 * diameter.value().powi(2) * level.value() / 1_000.0)),
    }
}

/// Water that a bucket loses in a day in which its specific gravity rises by so much: `V · rise/(SG − 1)`, since what is dry in it
/// stays.
pub fn evaporation(volume: Millilitres, sg: SpecificGravity, rise_per_day: f64) -> Millilitres {
    volume * (rise_per_day / (sg.value() - 1.0))
}

/// How many pieces that take so much wet glaze each, until no more than `keep` is left to dip into. `None` where a figure cannot be.
pub fn pieces_left(volume: Millilitres, keep: Millilitres, sg: SpecificGravity, per_piece: Grams) -> Option<u32> {
    let wet = (volume - keep).max(Millilitres::ZERO).value() * sg.value();
    let pieces = (wet / per_piece.value()).floor();
    (per_piece.is_positive() && pieces.is_finite()).then_some(pieces.min(f64::from(u32::MAX)) as u32)
}

/// How much of a glaze is water: `V (1 − (SG − 1)/(ρ − 1))`.
pub fn water_in(volume: Millilitres, sg: SpecificGravity, powder: PowderDensity) -> Millilitres {
    (volume * (1.0 - (sg.value() - 1.0) / (powder.value() - 1.0))).max(Millilitres::ZERO)
}

/// Whether so much water can be taken off.
///
/// # Errors
/// [`BucketError::MoreWaterThanThereIs`].
pub fn can_take_off(
    water: Millilitres,
    volume: Millilitres,
    sg: SpecificGravity,
    powder: PowderDensity,
) -> Result<(), BucketError> {
    let there = water_in(volume, sg, powder);
    if water <= there { Ok(()) } else { Err(BucketError::MoreWaterThanThereIs { water: there }) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    fn sg(value: f64) -> SgReading {
        SgReading::checked(SpecificGravity::new(value).unwrap())
    }

    fn ml(value: f64) -> Millilitres {
        Millilitres::new(value)
    }

    #[test]
    fn a_bucket_follows_what_is_done_to_it() {
        let density = PowderDensity::default();
        let steps = [
            Change::Holds(ml(10_000.0)),
            Change::Checked(sg(1.5)),
            // 2,900 g of glaze on pots are 1,933 ml.
            Change::Taken(Grams::new(2_900.0)),
            Change::Water(ml(1_000.0)),
        ];
        let start = Contents { volume: None, sg: SgReading::unchecked() };
        let after = steps.into_iter().fold(start, |contents, step| contents.after(step, density));
        let before = 10_000.0 - 2_900.0 / 1.5;
        assert_relative_eq!(after.volume.unwrap().value(), before + 1_000.0);
        assert_relative_eq!(after.sg.sg.value(), (before * 1.5 + 1_000.0) / (before + 1_000.0));
        // Water makes the reading before count less, and the volume more.
        let moved = 1.5 - after.sg.sg.value();
        let expect = SgReading::CHECKED.hypot(0.1 * moved) * before / (before + 1_000.0);
        assert_relative_eq!(after.sg.standard_uncertainty, expect, max_relative = 1e-12);
        // Taking the same water off again leads back.
        let back = after.after(Change::WaterOff(ml(1_000.0)), density);
        assert_relative_eq!(back.sg.sg.value(), 1.5, max_relative = 1e-12);
        // Weighed, it is as much as it weighs.
        let weighed = back.after(Change::Weighs(Grams::new(7_500.0)), density);
        assert_relative_eq!(weighed.volume.unwrap().value(), 5_000.0, max_relative = 1e-12);
        let powder = back.after(Change::Powder(Grams::new(260.0)), density);
        assert_relative_eq!(powder.volume.unwrap().value(), before + 100.0);
        assert!(powder.sg.sg > back.sg.sg);
    }

    #[test]
    fn without_a_volume_what_was_added_makes_the_bucket_unsure() {
        let start = Contents { volume: None, sg: sg(1.5) };
        let after = start.after(Change::Water(ml(500.0)), PowderDensity::default());
        assert_eq!(after.sg.sg.value(), 1.5);
        assert_eq!(after.sg.standard_uncertainty, SgReading::UNCHECKED);
        assert_eq!(start.after(Change::Taken(Grams::new(20.0)), PowderDensity::default()), start);
    }

    #[test]
    fn more_than_there_is_leaves_nothing_and_no_number_that_cannot_be() {
        let start = Contents { volume: Some(ml(100.0)), sg: sg(1.5) };
        let dipped = start.after(Change::Taken(Grams::new(1_000.0)), PowderDensity::default());
        assert_eq!(dipped.volume, Some(Millilitres::ZERO));
        let off = start.after(Change::WaterOff(ml(500.0)), PowderDensity::default());
        assert_eq!((off.volume, off.sg.standard_uncertainty), (Some(Millilitres::ZERO), SgReading::UNCHECKED));
    }

    #[test]
    fn a_level_is_a_volume_up_to_the_rim() {
        let mm = Millimetres::new;
        // 30 cm across and 20 cm high: π/4 × 9 dm² × 2 dm.
        let volume = volume_at_level(mm(300.0), Some(mm(350.0)), mm(200.0)).unwrap();
        assert_relative_eq!(volume.value(), 14_137.166_941, max_relative = 1e-9);
        assert_eq!(
            volume_at_level(mm(300.0), Some(mm(350.0)), mm(351.0)),
            Err(BucketError::AboveRim { depth: mm(350.0) })
        );
        assert!(volume_at_level(mm(300.0), None, mm(900.0)).is_ok());
    }

    #[test]
    fn water_and_powder_fill_the_bucket() {
        let (volume, sg, density) = (ml(1_000.0), SpecificGravity::new(1.45).unwrap(), PowderDensity::default());
        let water = water_in(volume, sg, density);
        let powder = super::super::slurry::dry_per_litre(sg, density);
        assert_relative_eq!(water.value() + powder.value() / 2.6, 1_000.0, max_relative = 1e-12);
        assert_relative_eq!(water.value() + powder.value(), 1_450.0, max_relative = 1e-12);
        assert_eq!(can_take_off(ml(800.0), volume, sg, density), Err(BucketError::MoreWaterThanThereIs { water }));
        assert!(can_take_off(ml(700.0), volume, sg, density).is_ok());
    }

    #[test]
    fn evaporation_keeps_the_powder() {
        let (volume, sg) = (ml(10_000.0), SpecificGravity::new(1.45).unwrap());
        // A small rise: V₂ = V₁ (SG₁ − 1)/(SG₂ − 1).
        let lost = 10_000.0 - 10_000.0 * 0.45 / 0.4501;
        assert_relative_eq!(evaporation(volume, sg, 0.0001).value(), lost, max_relative = 1e-3);
    }

    #[test]
    fn pieces_are_counted_down_to_what_is_kept_to_dip() {
        let sg = SpecificGravity::new(1.5).unwrap();
        // 6,000 ml are 9,000 g.
        assert_eq!(pieces_left(ml(8_000.0), ml(2_000.0), sg, Grams::new(40.0)), Some(225));
        assert_eq!(pieces_left(ml(1_000.0), ml(2_000.0), sg, Grams::new(40.0)), Some(0));
        assert_eq!(pieces_left(ml(1_000.0), ml(0.0), sg, Grams::ZERO), None);
    }
}
