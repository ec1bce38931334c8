//! How alike pieces that are to match have come out.

/// A run of equal pieces.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// How many.
    pub pieces: usize,
    /// Their mean.
    pub mean: f64,
    /// Sample standard deviation.
    pub sd: f64,
    /// The least and the most.
    pub range: (f64, f64),
}

impl Spread {
    /// Of `values` of one kind; `None` for fewer than two. Two passes, so that large values with small differences keep
    /// them.
    pub fn of(values: &[f64]) -> Option<Spread> {
        if values.len() < 2 {
            return None;
        }
        let pieces = values.len() as f64;
        let near = values.iter().sum::<f64>() / pieces;
        // What rounding left of the mean of the differences mends the mean.
        let left = values.iter().map(|value| value - near).sum::<f64>() / pieces;
        let mean = near + left;
        let squares: f64 = values.iter().map(|value| (value - mean).powi(2)).sum();
        let (least, most) = values.iter().fold((f64::MAX, f64::MIN), |(l, m), value| (l.min(*value), m.max(*value)));
        Some(Spread { pieces: values.len(), mean, sd: (squares / (pieces - 1.0)).sqrt(), range: (least, most) })
    }

    /// Standard deviation as a fraction of the mean.
    pub fn relative_spread(&self) -> f64 {
        self.sd / self.mean
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    #[test]
    fn a_set_has_at_least_two_pieces() {
        assert_eq!(Spread::of(&[19.0]), None);
        let set = Spread::of(&[19.0, 20.0, 21.0]).unwrap();
        assert_eq!((set.pieces, set.mean, set.range), (3, 20.0, (19.0, 21.0)));
        assert_relative_eq!(set.relative_spread(), 0.05);
    }
}
