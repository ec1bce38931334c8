//! How long to dip: the layer that a porous wall draws out of a slurry grows with the square root of the time, `laydown = k √t`
//! (Deeley, Adcock: slip casting; the same law for a dip). A hint, and never the target: seconds are counted by mouth.

use crate::coat::coverage::student_t_95;
use crate::units::{Laydown, Seconds};

/// The fewest dips that say anything. Common practice, no source.
pub const FEWEST_DIPS: usize = 4;

/// The shortest and the longest dip or pour, in seconds: what is shorter or longer is mistyped. Common practice, no source.
const DIP: (f64, f64) = (0.5, 600.0);

/// Whether a piece can have been in the glaze, or poured over, for so long.
pub fn is_dip(time: Seconds) -> bool {
    (DIP.0..=DIP.1).contains(&time.value())
}

/// One dip: how long, and what it took up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dip {
    /// How long it was in the glaze, or poured over.
    pub time: Seconds,
    /// What it took up.
    pub laydown: Laydown,
}

/// The law of one bucket on one bisque: least squares through the origin on √t.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DipLaw {
    /// Laydown after one second, g per 100 cm².
    pub k: f64,
    /// One standard uncertainty of it.
    pub standard_uncertainty: f64,
    /// How far one dip lies off the law, g per 100 cm².
    pub residual: f64,
    /// The sum of the seconds.
    seconds: f64,
    /// How many dips.
    pub dips: usize,
}

/// About how long to dip.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DipHint {
    /// The time at which the law meets the aim.
    pub time: Seconds,
    /// From this time on a single dip could take up the aim, 95 times in 100.
    pub from: Seconds,
    /// Until this time; `None` where the dips say no end.
    pub to: Option<Seconds>,
}

impl DipLaw {
    /// The law of these dips; `None` where they are too few, or a figure cannot be.
    pub fn of(dips: &[Dip]) -> Option<DipLaw> {
        let is_usable = |dip: &Dip| dip.time.is_positive() && dip.laydown.is_positive();
        if dips.len() < FEWEST_DIPS || !dips.iter().all(is_usable) {
            return None;
        }
        let (root, laid) = (|dip: &Dip| dip.time.value().sqrt(), |dip: &Dip| dip.laydown.value());
        let seconds: f64 = dips.iter().map(|dip| dip.time.value()).sum();
        let k = dips.iter().map(|dip| root(dip) * laid(dip)).sum::<f64>() / seconds;
        let squares: f64 = dips.iter().map(|dip| (laid(dip) - k * root(dip)).powi(2)).sum();
        let residual = (squares / (dips.len() - 1) as f64).sqrt();
        if !(k.is_finite() && residual.is_finite()) {
            return None;
        }
        Some(DipLaw { k, standard_uncertainty: residual / seconds.sqrt(), residual, seconds, dips: dips.len() })
    }

    /// About how long to dip for `aim`: the times at which it lies in the 95% prediction interval of a single dip, the roots of
    /// `(aim − k x)² = t² s² (1 + x²/Σt)` in `x = √time` (Fieller).
    pub fn hint(&self, aim: Laydown) -> Option<DipHint> {
        let reach = student_t_95((self.dips - 1) as f64)? * self.residual;
        let (aim, reach2) = (aim.value(), reach * reach);
        let (a, b, c) = (self.k * self.k - reach2 / self.seconds, self.k * aim, aim * aim - reach2);
        let root = (b * b - a * c).max(0.0).sqrt();
        let time = |x: f64| Seconds::new(x * x);
        // A dip that may take up the aim at once begins at nothing.
        let from = if c <= 0.0 { Seconds::ZERO } else { time(c / (b + root)) };
        let to = (a > 0.0).then(|| time((b + root) / a)).filter(|to| to.value().is_finite());
        let hint = DipHint { time: time(aim / self.k), from, to };
        (hint.time.is_positive() && hint.from.value().is_finite()).then_some(hint)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn dips(of: &[(f64, f64)]) -> Vec<Dip> {
        of.iter().map(|(time, laid)| Dip { time: Seconds::new(*time), laydown: Laydown::new(*laid) }).collect()
    }

    #[test]
    fn the_law_of_a_days_dips() {
        let law = DipLaw::of(&dips(&[(2.0, 3.7), (3.0, 4.9), (4.0, 5.3), (5.0, 6.2), (4.0, 5.6)])).unwrap();
        let hint = law.hint(Laydown::new(5.5)).unwrap();
        assert!((hint.time.value() - 4.0).abs() < 0.2, "{hint:?}");
        let to = hint.to.unwrap();
        assert!(
            hint.from > Seconds::new(2.5) && hint.from < hint.time && to > hint.time && to < Seconds::new(6.0),
            "{hint:?}"
        );
    }

    #[test]
    fn too_few_or_impossible_dips_say_nothing() {
        assert_eq!(DipLaw::of(&dips(&[(2.0, 3.7), (3.0, 4.9), (4.0, 5.3)])), None);
        for odd in [(0.0, 5.0), (-1.0, 5.0), (f64::NAN, 5.0), (3.0, 0.0), (3.0, f64::INFINITY)] {
            assert_eq!(DipLaw::of(&dips(&[(2.0, 3.7), (3.0, 4.9), (4.0, 5.3), odd])), None, "{odd:?}");
        }
    }

    #[test]
    fn dips_that_scatter_widely_have_no_end() {
        let law = DipLaw::of(&dips(&[(2.0, 9.0), (3.0, 1.0), (4.0, 8.0), (5.0, 2.0)])).unwrap();
        let hint = law.hint(Laydown::new(5.5)).unwrap();
        assert!(hint.from == Seconds::ZERO && hint.to.is_none(), "{hint:?}");
    }

    proptest! {
        /// At both ends of the hint the aim lies on the edge of what a single dip takes up.
        #[test]
        fn the_ends_are_where_the_aim_leaves_the_interval(k in 1.0..5.0f64, off in prop::collection::vec(-0.1..0.1f64, 6..20), aim in 3.0..9.0f64) {
            let of: Vec<(f64, f64)> = off.iter().enumerate().map(|(at, off)| {
                let time = 1.0 + (at % 6) as f64;
                (time, k * time.sqrt() * (1.0 + off))
            }).collect();
            let law = DipLaw::of(&dips(&of)).unwrap();
            let hint = law.hint(Laydown::new(aim)).unwrap();
            let reach = student_t_95((of.len() - 1) as f64).unwrap() * law.residual;
            let seconds: f64 = of.iter().map(|(time, _)| time).sum();
            for end in [Some(hint.from).filter(|from| *from > Seconds::ZERO), hint.to].into_iter().flatten() {
                let x = end.value().sqrt();
                let off = (aim - law.k * x).abs() - reach * (1.0 + end.value() / seconds).sqrt();
                prop_assert!(off.abs() < 1e-6 * aim.max(law.k * x), "{off}");
            }
            prop_assert!(hint.from <= hint.time && hint.to.is_none_or(|to| hint.time <= to));
        }
    }
}
