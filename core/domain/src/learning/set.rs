//! Which pieces of a shelf match best: those whose laydowns lie nearest together.

use super::spread::Spread;
use crate::units::Laydown;

/// Pieces that match.
#[derive(Debug, Clone, PartialEq)]
pub struct Matching {
    /// Their places in what was given, the one with the least glaze first.
    pub members: Vec<usize>,
    /// How alike their laydowns are, g per 100 cm².
    pub spread: Spread,
    /// The laydown of a further piece that is to match: their geometric mean.
    pub next: Laydown,
}

/// The `size` pieces whose laydowns differ least, by the standard deviation of their logarithms; of equally good ones those with
/// the least glaze. `None` for fewer than two, or where there are not as many with a laydown that can be.
///
/// Sorted by laydown, the best are neighbours: whoever lies between two members fits no worse than the one further out.
pub fn best(laydowns: &[Laydown], size: usize) -> Option<Matching> {
    let is_usable = |laydown: &Laydown| laydown.is_positive() && laydown.value().is_finite();
    let mut sorted: Vec<(usize, f64)> =
        laydowns.iter().enumerate().filter(|(_, laydown)| is_usable(laydown)).map(|(at, l)| (at, l.value())).collect();
    if size < 2 || sorted.len() < size {
        return None;
    }
    sorted.sort_by(|one, other| one.1.total_cmp(&other.1));
    let apart = |run: &&[(usize, f64)]| {
        let logs: Vec<f64> = run.iter().map(|(_, laydown)| laydown.ln()).collect();
        Spread::of(&logs).map_or(f64::INFINITY, |spread| spread.sd)
    };
    let run = sorted.windows(size).min_by(|one, other| apart(one).total_cmp(&apart(other)))?;
    let values: Vec<f64> = run.iter().map(|(_, laydown)| *laydown).collect();
    let mean_log = values.iter().map(|laydown| laydown.ln()).sum::<f64>() / size as f64;
    Some(Matching {
        members: run.iter().map(|(at, _)| *at).collect(),
        spread: Spread::of(&values)?,
        next: Laydown::new(mean_log.exp()),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(values: &[f64], size: usize) -> Option<Vec<usize>> {
        let laydowns: Vec<Laydown> = values.iter().map(|value| Laydown::new(*value)).collect();
        best(&laydowns, size).map(|found| found.members)
    }

    #[test]
    fn the_four_that_lie_nearest_together_match() {
        let shelf = [6.3, 5.0, 5.5, 5.58, 4.2, 5.52, 5.49];
        assert_eq!(of(&shelf, 4), Some(vec![6, 2, 5, 3]));
        assert_eq!(of(&shelf, 2), Some(vec![6, 2]));
        assert_eq!(of(&shelf, 7).map(|all| all.len()), Some(7));
        assert_eq!(of(&shelf, 8), None);
        // Not by grams but by parts: 0.2 is less of 8 than of 4.
        assert_eq!(of(&[4.0, 4.15, 8.0, 8.2], 2), Some(vec![2, 3]));
    }

    #[test]
    fn what_cannot_be_is_left_out() {
        assert_eq!(of(&[5.0, f64::NAN, 5.1, 0.0, f64::INFINITY], 2), Some(vec![0, 2]));
        assert_eq!(of(&[5.0, f64::NAN], 2), None);
        assert_eq!((of(&[], 4), of(&[5.0, 5.1], 1), of(&[5.0], 0)), (None, None, None));
    }

    #[test]
    fn a_further_piece_takes_what_the_set_has() {
        let found = best(&[Laydown::new(4.0), Laydown::new(9.0)], 2).unwrap();
        assert!((found.next.value() - 6.0).abs() < 1e-12, "{found:?}");
    }
}
