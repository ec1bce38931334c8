//! Inputs made of others: as a fuzzer changes them, but the same ones each time and without looking at what they reach.

use fastrand::Rng;

/// Numbers at which lengths and counts go wrong.
const EDGES: [u64; 8] = [0, 1, 0x7F, 0xFF, 0x7FFF, 0xFFFF, 0x7FFF_FFFF, u64::MAX];

/// An endless row of inputs.
pub struct Swarm {
    rng: Rng,
    seeds: Vec<Vec<u8>>,
}

impl Swarm {
    /// The inputs that follow from these seeds.
    pub fn of(seeds: Vec<Vec<u8>>, number: u64) -> Swarm {
        Swarm { rng: Rng::with_seed(number), seeds }
    }

    fn change(&mut self, input: &mut Vec<u8>) {
        let rng = &mut self.rng;
        let at = rng.usize(..=input.len());
        let end = (at + rng.usize(..=16)).min(input.len());
        match rng.u8(..8) {
            0 if at < input.len() => input[at] ^= 1 << rng.u8(..8),
            1 if at < input.len() => input[at] = rng.u8(..),
            2 => {
                let bytes = EDGES[rng.usize(..EDGES.len())].to_le_bytes();
                let width = (1 << rng.u8(..4)).min(input.len() - at);
                input[at..at + width].copy_from_slice(&bytes[..width]);
                if rng.bool() {
                    input[at..at + width].reverse();
                }
            }
            3 => drop(input.drain(at..end)),
            4 => {
                let again: Vec<u8> = input[at..end].repeat(1 + rng.usize(..4));
                input.splice(at..at, again);
            }
            5 => {
                let new: Vec<u8> = (0..rng.usize(..8)).map(|_| rng.u8(..)).collect();
                input.splice(at..at, new);
            }
            6 => {
                let other = &self.seeds[rng.usize(..self.seeds.len())];
                let from = rng.usize(..=other.len());
                let to = (from + rng.usize(..=64)).min(other.len());
                input.splice(at..end, other[from..to].iter().copied());
            }
            _ => input.truncate(at.max(input.len() / 2)),
        }
    }
}

impl Iterator for Swarm {
    type Item = Vec<u8>;

    fn next(&mut self) -> Option<Vec<u8>> {
        let mut input = self.seeds[self.rng.usize(..self.seeds.len())].clone();
        for _ in 0..=self.rng.u8(..6) {
            self.change(&mut input);
        }
        Some(input)
    }
}
