//! How clay shrinks from the wheel to the shelf, so that a pot measured at one stage is known at the others.

use crate::coded::coded;

coded! {
    /// A stage in the life of a pot at which it can be measured.
    "stage" Stage {
        /// Bisque-fired: the stage at which glaze is weighed on.
        Bisque = "bisque",
        /// Just thrown.
        Thrown = "thrown",
        /// Glaze-fired.
        Fired = "fired",
    }
}

/// The most a clay shrinks, of the thrown size. From memory: fine porcelains come near 20%.
const MOST: f64 = 0.3;

/// Linear shrinkages, as fractions of the thrown size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shrinkage {
    to_bisque: f64,
    to_fired: f64,
}

/// Why two shrinkages cannot be of one clay.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub struct ShrinkageError;

impl Shrinkage {
    /// From thrown to bisque and from thrown to glaze-fired.
    ///
    /// Both are rounded to ten-thousandths, as they are stored.
    ///
    /// # Errors
    /// When one is no shrinkage, or the fired pot would be larger than its bisque.
    pub fn new(to_bisque: f64, to_fired: f64) -> Result<Shrinkage, ShrinkageError> {
        let (to_bisque, to_fired) = (as_stored(to_bisque), as_stored(to_fired));
        let fits = to_bisque >= 0.0 && to_fired >= to_bisque && to_fired < MOST;
        if fits { Ok(Shrinkage { to_bisque, to_fired }) } else { Err(ShrinkageError) }
    }

    /// From thrown to bisque and from thrown to glaze-fired, in whole ten-thousandths, as they are stored.
    pub fn ten_thousandths(self) -> (i64, i64) {
        ((self.to_bisque * 1e4).round() as i64, (self.to_fired * 1e4).round() as i64)
    }

    /// By what a length at the one stage is multiplied to be that of the other; areas by its square, volumes by its cube.
    pub fn factor(self, from: Stage, to: Stage) -> f64 {
        self.left(to) / self.left(from)
    }

    fn left(self, stage: Stage) -> f64 {
        match stage {
            Stage::Thrown => 1.0,
            Stage::Bisque => 1.0 - self.to_bisque,
            Stage::Fired => 1.0 - self.to_fired,
        }
    }
}

fn as_stored(shrinkage: f64) -> f64 {
    (shrinkage * 1e4).round() / 1e4
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use proptest::prelude::*;

    #[test]
    fn a_fired_pot_was_larger_as_bisque() {
        let clay = Shrinkage::new(0.06, 0.12).unwrap();
        assert_relative_eq!(clay.factor(Stage::Fired, Stage::Bisque), 0.94 / 0.88);
        assert_relative_eq!(clay.factor(Stage::Thrown, Stage::Fired), 0.88);
        assert_relative_eq!(clay.factor(Stage::Bisque, Stage::Bisque), 1.0);
    }

    #[test]
    fn what_no_clay_does_is_refused() {
        for (bisque, fired) in
            [(-0.01, 0.1), (0.1, 0.05), (0.0, 0.3), (0.0, 0.299_96), (f64::NAN, 0.1), (0.0, f64::NAN)]
        {
            assert!(Shrinkage::new(bisque, fired).is_err(), "{bisque} {fired}");
        }
    }

    proptest! {
        #[test]
        fn what_is_accepted_is_accepted_after_it_was_stored(bisque in 0.0..0.31f64, more in prop_oneof![0.0..0.000_2f64, 0.0..0.3f64]) {
            if let Ok(clay) = Shrinkage::new(bisque, bisque + more) {
                let (to_bisque, to_fired) = clay.ten_thousandths();
                prop_assert_eq!(Shrinkage::new(to_bisque as f64 / 1e4, to_fired as f64 / 1e4), Ok(clay));
            }
        }
    }
}
