//! How far a target can be trusted, whatever the scale says: what it rests on, and whether the bucket and the area that it
//! was calculated with were measured.

use super::target::{Job, Source, Target};
use crate::form::AREA_FROM_CAPACITY;
use crate::units::Grams;

/// What a target rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Basis {
    /// So many control pieces, of which so many were fired and judged right.
    Controls {
        /// Control pieces.
        pieces: usize,
        /// Those that came out of the kiln right.
        came_out_right: usize,
    },
    /// Test tiles, and no pot.
    Tiles,
    /// A usual start for a glaze.
    Start,
    /// Everything known of the glaze.
    Pooled {
        /// Judged pots.
        pots: usize,
        /// Control pieces.
        controls: usize,
    },
    /// An amount that the potter keeps.
    Kept,
}

/// Why a target is a guess.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weakness {
    /// It rests on nothing of this glaze, or on a piece so far from this one that it says little.
    FirstGuess,
    /// It rests on test tiles, and no pot.
    Tiles,
    /// The bucket's specific gravity was never checked.
    Bucket,
    /// The area it was calculated with was not measured.
    Area,
    /// It rests on fired pots that say too little yet.
    FewPots,
}

/// What is known of a target beside its figures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Trust {
    /// What it rests on.
    pub basis: Basis,
    /// Whether the bucket's specific gravity was ever checked.
    pub bucket_checked: bool,
    /// Whether the area was measured, or does not matter: a control piece of the same form has the same.
    pub area_measured: bool,
    /// Whether the aim itself is so unsure that it is called a guess.
    is_wide: bool,
}

impl Trust {
    /// What is known of this target. `came_out_right`: how many control pieces of the glaze and zone were fired and judged
    /// right. Of both sides together it says what their control pieces are worth: what each side rests on, [`Trust::and`]
    /// brings together.
    pub fn of(target: &Target, job: &Job, bucket_checked: bool, came_out_right: usize) -> Trust {
        let basis = match target.source {
            Source::Tile => Basis::Tiles,
            Source::Starting => Basis::Start,
            Source::Pooled { pots, controls, .. } => Basis::Pooled { pots, controls },
            Source::Kept => Basis::Kept,
            Source::ControlSameForm
            | Source::Sides
            | Source::ControlOtherSizeByArea { .. }
            | Source::ControlOtherSizeByCapacity { .. }
            | Source::Imported => {
                Basis::Controls { pieces: target.pots, came_out_right: came_out_right.min(target.pots) }
            }
        };
        let area_matters =
            matches!(target.source, Source::Tile | Source::Starting | Source::ControlOtherSizeByArea { .. });
        Trust {
            basis,
            bucket_checked,
            area_measured: !area_matters || job.zone.relative_uncertainty < AREA_FROM_CAPACITY,
            is_wide: match target.source {
                // The doubt of everything pooled is in its chances.
                Source::Pooled { is_sure, .. } => !is_sure,
                Source::Kept => false,
                _ => target.is_first_guess(),
            },
        }
    }

    /// What is known of the sum of this target and another: no more than of the weaker.
    pub fn and(self, other: Trust) -> Trust {
        if self.weakness().is_some() || other.weakness().is_none() { self } else { other }
    }

    /// Why the target is a guess, the weightiest reason first; `None` when it is trusted.
    pub fn weakness(&self) -> Option<Weakness> {
        match self.basis {
            Basis::Start => Some(Weakness::FirstGuess),
            Basis::Tiles => Some(Weakness::Tiles),
            Basis::Controls { .. } if self.is_wide => Some(Weakness::FirstGuess),
            Basis::Pooled { .. } if self.is_wide => Some(Weakness::FewPots),
            _ if !self.bucket_checked => Some(Weakness::Bucket),
            _ if !self.area_measured => Some(Weakness::Area),
            Basis::Controls { .. } | Basis::Pooled { .. } | Basis::Kept => None,
        }
    }

    /// The span that may be shown: what is accepted; for a guess what is plausible, where that reaches further.
    pub fn span(&self, target: &Target) -> (Grams, Grams) {
        match self.weakness() {
            None => (target.low, target.high),
            Some(_) => (target.low.min(target.interval.0), target.high.max(target.interval.1)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_guess_is_named_by_its_weakest_part() {
        let trust = |basis: Basis, bucket_checked, area_measured| Trust {
            basis,
            bucket_checked,
            area_measured,
            is_wide: false,
        };
        let controls = Basis::Controls { pieces: 2, came_out_right: 1 };
        assert_eq!(trust(controls, true, true).weakness(), None);
        assert_eq!(trust(controls, false, true).weakness(), Some(Weakness::Bucket));
        assert_eq!(trust(controls, true, false).weakness(), Some(Weakness::Area));
        assert_eq!(Trust { is_wide: true, ..trust(controls, true, true) }.weakness(), Some(Weakness::FirstGuess));
        let (known, start) = (trust(controls, true, true), trust(Basis::Start, true, true));
        assert_eq!((known.and(start), start.and(known), known.and(known)), (start, start, known));
        assert_eq!(trust(Basis::Tiles, true, true).weakness(), Some(Weakness::Tiles));
        assert_eq!(trust(Basis::Start, true, true).weakness(), Some(Weakness::FirstGuess));
    }
}
