//! Scripts: inputs that say how a good file is to be changed, so that sums and lengths come out right again behind the change.

use arbitrary::{Arbitrary, Unstructured};
use fastrand::Rng;

/// The script that an input is: as many changes as can be made of it, which ends when its bytes do.
pub fn of<'a, Change: Arbitrary<'a>>(input: &'a [u8]) -> Vec<Change> {
    const MOST: usize = 24;
    let mut left = Unstructured::new(input);
    let mut changes = Vec::new();
    while !left.is_empty() && changes.len() < MOST {
        match left.arbitrary() {
            Ok(change) => changes.push(change),
            Err(_) => break,
        }
    }
    changes
}

/// Scripts to begin with: none, and some of no meaning.
pub fn seeds() -> Vec<Vec<u8>> {
    let some = (0..24u64).map(|seed| {
        let mut rng = Rng::with_seed(seed);
        (0..12 << (seed % 5)).map(|_| rng.u8(..)).collect()
    });
    std::iter::once(Vec::new()).chain(some).collect()
}

/// A number as hostile files have them: at the edges of what numbers can be, or any.
#[derive(Debug, Clone, Copy, Arbitrary)]
pub enum Number {
    Small(u8),
    Minus(u8),
    Power { exponent: u8, less: bool },
    Any(i64),
}

impl Number {
    pub fn value(self) -> i64 {
        match self {
            Number::Small(number) => i64::from(number),
            Number::Minus(number) => -i64::from(number),
            Number::Power { exponent, less } => (1_i64 << (exponent % 64)).wrapping_sub(i64::from(less)),
            Number::Any(number) => number,
        }
    }
}
