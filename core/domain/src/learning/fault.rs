//! How often each fault came with too little glaze, within the window, or with too much. Counts, and never causes.

use statrs::distribution::{DiscreteCDF, Hypergeometric};

use super::observation::FiredObservation;
use super::window::Window;
use crate::coat::coverage::NORMAL_95;
use crate::kiln::fault::Fault;

/// So many of how many pots.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Share {
    /// Pots with the fault.
    pub with: usize,
    /// All pots there.
    pub of: usize,
}

impl Share {
    /// 95% interval of the share, from 0 to 1; `None` of no pots.
    ///
    /// Wilson's score interval (E. B. Wilson, "Probable inference, the law of succession, and statistical inference", 1927), which
    /// holds for few pots too (Brown, Cai & DasGupta, "Interval estimation for a binomial proportion", 2001; both from memory).
    pub fn interval(&self) -> Option<(f64, f64)> {
        if self.of == 0 {
            return None;
        }
        let (of, share) = (self.of as f64, self.with as f64 / self.of as f64);
        let z2 = NORMAL_95 * NORMAL_95;
        let middle = (share + z2 / (2.0 * of)) / (1.0 + z2 / of);
        let half = NORMAL_95 * (share * (1.0 - share) / of + z2 / (4.0 * of * of)).sqrt() / (1.0 + z2 / of);
        Some(((middle - half).max(0.0), (middle + half).min(1.0)))
    }
}

/// A fault among the pots of a glaze.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Shares {
    /// The fault.
    pub fault: Fault,
    /// Among all pots.
    pub all: Share,
    /// Below, within and above the window, where it has both ends.
    pub by_side: Option<[Share; 3]>,
    /// The side on which it is more frequent than on the rest, beyond what chance makes of so few.
    pub leans: Option<Side>,
}

/// Where a pot lies from the window.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Less glaze than the window.
    Below,
    /// As much as the window.
    Within,
    /// More.
    Above,
}

const SIDES: [Side; 3] = [Side::Below, Side::Within, Side::Above];

/// A difference as large as this or larger comes by chance at most this often. Common practice.
const BY_CHANCE: f64 = 0.05;

/// The faults of `observations`, the most frequent first.
pub fn shares(observations: &[FiredObservation], window: Option<&Window>) -> Vec<Shares> {
    let ends = window.and_then(|window| window.from.zip(window.to));
    let mut shares: Vec<Shares> = Fault::ALL
        .iter()
        .map(|fault| {
            let share = |counts: &dyn Fn(&FiredObservation) -> bool| {
                let there = observations.iter().filter(|observation| counts(observation));
                there.fold(Share::default(), |share, observation| Share {
                    with: share.with + usize::from(observation.faults.contains(fault)),
                    of: share.of + 1,
                })
            };
            let all = share(&|_| true);
            let by_side = ends.map(|(from, to)| {
                [
                    share(&|observation| observation.laydown < from),
                    share(&|observation| observation.laydown >= from && observation.laydown <= to),
                    share(&|observation| observation.laydown > to),
                ]
            });
            let leans = by_side.and_then(|sides| {
                SIDES.into_iter().zip(sides).find(|(_, here)| is_more_frequent(*here, all)).map(|(side, _)| side)
            });
            Shares { fault: *fault, all, by_side, leans }
        })
        .filter(|shares| shares.all.with > 0)
        .collect();
    shares.sort_by_key(|shares| std::cmp::Reverse(shares.all.with));
    shares
}

/// Fisher's exact test, on one side: whether so many of those with the fault would rarely fall `here` by chance, on any of
/// three sides.
fn is_more_frequent(here: Share, all: Share) -> bool {
    let drawn = Hypergeometric::new(all.of as u64, all.with as u64, here.of as u64);
    here.with > 0 && drawn.is_ok_and(|drawn| drawn.sf(here.with as u64 - 1) * SIDES.len() as f64 <= BY_CHANCE)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::ZoneKind;
    use crate::kiln::fault::Thickness;
    use crate::units::Laydown;

    fn observation(laydown: f64, faults: &[Fault]) -> FiredObservation {
        FiredObservation {
            laydown: Laydown::new(laydown),
            thickness: Thickness::Right,
            zone: ZoneKind::Inside,
            cone: "6".to_owned(),
            body: None,
            faults: faults.to_vec(),
        }
    }

    const WINDOW: Window = Window { from: Some(Laydown::new(5.0)), to: Some(Laydown::new(6.0)), best: None };

    #[test]
    fn a_fault_is_counted_on_each_side_of_the_window() {
        let mut observations: Vec<FiredObservation> = (0..10).map(|_| observation(5.5, &[])).collect();
        observations.extend((0..4).map(|_| observation(4.5, &[])));
        observations.extend((0..5).map(|_| observation(6.5, &[Fault::Running])));
        observations.push(observation(6.6, &[]));
        observations.push(observation(5.0, &[Fault::Speck]));
        let shares = shares(&observations, Some(&WINDOW));
        assert_eq!(shares.iter().map(|shares| shares.fault).collect::<Vec<_>>(), [Fault::Running, Fault::Speck]);
        let share = |with, of| Share { with, of };
        assert_eq!(shares[0].by_side, Some([share(0, 4), share(0, 11), share(5, 6)]));
        assert_eq!((shares[0].all, shares[0].leans), (share(5, 21), Some(Side::Above)));
        // One speck says nothing.
        assert_eq!((shares[1].by_side.unwrap()[1], shares[1].leans), (share(1, 11), None));
    }

    #[test]
    fn without_a_window_there_are_only_counts() {
        let observations = [observation(4.0, &[Fault::Crazing]), observation(7.0, &[])];
        let shares = shares(&observations, None);
        assert_eq!((shares[0].all, shares[0].by_side, shares[0].leans), (Share { with: 1, of: 2 }, None, None));
    }

    /// `statsmodels.stats.proportion.proportion_confint(with, of, method="wilson")` of statsmodels 0.15; `make oracle` compares more.
    #[test]
    fn a_share_of_few_pots_is_wide() {
        for (with, of, low, high) in
            [(5, 6, 0.436_497_2, 0.969_946_6), (0, 11, 0.0, 0.258_833_0), (8, 10, 0.490_162_5, 0.943_317_8)]
        {
            let (from, to) = Share { with, of }.interval().unwrap();
            assert!((from - low).abs() < 1e-6 && (to - high).abs() < 1e-6, "{with} of {of}: {from} {to}");
        }
        assert_eq!(Share::default().interval(), None);
    }

    /// R's help page of fisher.test, the tea tasting (Agresti, Categorical Data Analysis, 1990): 3 of 4 guessed right among 8,
    /// p = 0.2429 on one side. From memory.
    #[test]
    fn the_lady_tasting_tea() {
        let guessed = Hypergeometric::new(8, 4, 4).unwrap();
        assert!((guessed.sf(2) - 0.2429).abs() < 5e-5);
        assert!(!is_more_frequent(Share { with: 3, of: 4 }, Share { with: 4, of: 8 }));
        assert!(is_more_frequent(Share { with: 4, of: 4 }, Share { with: 4, of: 20 }));
    }
}
