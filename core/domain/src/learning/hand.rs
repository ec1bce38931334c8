//! How near to its aims each hand glazes, and how alike its coats are.

use std::collections::BTreeMap;

use super::spread::Spread;

/// One hand.
#[derive(Debug, Clone, PartialEq)]
pub struct Hand {
    /// Whose.
    pub name: String,
    /// Its coats.
    pub coats: usize,
    /// How far they lie above their aims, as a fraction: the mean of logarithms.
    pub mean_off: f64,
    /// Standard deviation of the logarithms of what they weigh over their aims.
    pub spread: f64,
}

/// The hands of `coats` (who glazed, and weight over aim), the one with the most coats first. A hand with a single coat has no
/// spread and is left out, as is a coat that cannot be.
pub fn by_hand(coats: &[(&str, f64)]) -> Vec<Hand> {
    let mut logs: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
    for (name, ratio) in coats.iter().filter(|(_, ratio)| *ratio > 0.0 && ratio.is_finite()) {
        logs.entry(name).or_default().push(ratio.ln());
    }
    let hand = |(name, logs): (&str, Vec<f64>)| {
        let spread = Spread::of(&logs)?;
        Some(Hand { name: name.to_owned(), coats: spread.pieces, mean_off: spread.mean.exp_m1(), spread: spread.sd })
    };
    let mut hands: Vec<Hand> = logs.into_iter().filter_map(hand).collect();
    hands.sort_by_key(|hand| std::cmp::Reverse(hand.coats));
    hands
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_hand_has_its_own_mean_and_spread() {
        let coats =
            [("Ana", 1.05), ("Bo", 1.0), ("Ana", 1.05), ("Bo", 0.9), ("Ana", 1.05), ("Cy", 1.0), ("Bo", f64::NAN)];
        let hands = by_hand(&coats);
        let names: Vec<(&str, usize)> = hands.iter().map(|hand| (hand.name.as_str(), hand.coats)).collect();
        assert_eq!(names, [("Ana", 3), ("Bo", 2)]);
        assert!((hands[0].mean_off - 0.05).abs() < 1e-12 && hands[0].spread < 1e-12, "{hands:?}");
        // Half of ln 0.9, and its distance from both over the square root of one half.
        assert!((hands[1].spread - (1.0f64 / 0.9).ln() / 2f64.sqrt()).abs() < 1e-12, "{hands:?}");
        assert_eq!(by_hand(&[]), []);
    }
}
