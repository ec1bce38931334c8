//! Flow cups: how long a cup of glaze takes to run out, and the viscosity that this means within the seconds a cup is made for.
//!
//! A glaze is not Newtonian, so its seconds mainly compare it with itself; the viscosity is that of an oil that takes as long.

use super::slurry::SgReading;
use crate::coded::coded;
use crate::units::Seconds;

/// A time longer or shorter than usual by this factor is no chance. Common practice, no source.
const FAR_OFF: f64 = 1.25;
/// A change of specific gravity under this is within what two careful checks differ by. Common practice, no source.
const SAME_SG: f64 = 0.01;

/// How a bucket flows against its own history at the same specific gravity.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FlowChange {
    /// Slower: it has gelled.
    Slower,
    /// Faster: it has settled, is warmer, or was deflocculated.
    Faster,
}

/// Whether two readings say the same: closer than two standard uncertainties of their difference, and than two careful checks.
pub fn is_same_sg(one: SgReading, other: SgReading) -> bool {
    let apart = (one.sg.value() - other.sg.value()).abs();
    apart < SAME_SG.max(2.0 * one.standard_uncertainty.hypot(other.standard_uncertainty))
}

/// Whether a bucket flows far otherwise than it did in `history`, by the same cup and at the same specific gravity; `None` where it
/// does not, or nothing is known.
pub fn flow_change(history: &[(SgReading, Seconds)], now: (SgReading, Seconds)) -> Option<FlowChange> {
    let mut usual: Vec<f64> = history
        .iter()
        .filter(|(sg, time)| is_same_sg(*sg, now.0) && time.is_positive())
        .map(|(_, time)| time.value())
        .collect();
    usual.sort_by(f64::total_cmp);
    let middle = usual.get(usual.len() / 2)?;
    match now.1.value() / middle {
        ratio if ratio > FAR_OFF => Some(FlowChange::Slower),
        ratio if ratio < 1.0 / FAR_OFF => Some(FlowChange::Faster),
        _ => None,
    }
}

coded! {
    /// A flow cup by its standard and size.
    "flow cup" FlowCup {
        /// Ford cup No. 1 (ASTM D1200).
        Ford1 = "ford_1",
        /// Ford cup No. 2.
        Ford2 = "ford_2",
        /// Ford cup No. 3.
        Ford3 = "ford_3",
        /// Ford cup No. 4.
        Ford4 = "ford_4",
        /// Ford cup No. 5.
        Ford5 = "ford_5",
        /// Zahn cup No. 1 (ASTM D4212).
        Zahn1 = "zahn_1",
        /// Zahn cup No. 2.
        Zahn2 = "zahn_2",
        /// Zahn cup No. 3.
        Zahn3 = "zahn_3",
        /// Zahn cup No. 4.
        Zahn4 = "zahn_4",
        /// Zahn cup No. 5.
        Zahn5 = "zahn_5",
        /// ISO 2431 cup, 3 mm.
        Iso3 = "iso_3",
        /// ISO 2431 cup, 4 mm.
        Iso4 = "iso_4",
        /// ISO 2431 cup, 5 mm.
        Iso5 = "iso_5",
        /// ISO 2431 cup, 6 mm.
        Iso6 = "iso_6",
    }
}

/// How seconds become a kinematic viscosity in mm²/s.
#[derive(Debug, Clone, Copy)]
enum Equation {
    /// `a (t − b)`.
    Line { a: f64, b: f64 },
    /// `a t − b/t`.
    Hyperbola { a: f64, b: f64 },
}

/// Seconds outside those that a cup is made for.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub struct OutsideCup {
    /// The cup.
    pub cup: FlowCup,
    /// The least seconds it is made for.
    pub from: f64,
    /// The most.
    pub to: f64,
    /// The cup of the same make that would do; `None` where none is finer or coarser.
    pub better: Option<FlowCup>,
}

impl FlowCup {
    /// Its equation and the seconds for which that holds. Ford: ASTM D1200-94(2005), times section 11.2, equations as reproduced;
    /// Zahn: ASTM D4212 as Cannon Instrument Co. reproduces it; ISO 2431: annex, from memory, agreeing with a maker's ranges.
    const fn parameters(self) -> (Equation, f64, f64) {
        const fn line(a: f64, b: f64, from: f64, to: f64) -> (Equation, f64, f64) {
            (Equation::Line { a, b }, from, to)
        }
        const fn iso(a: f64, b: f64) -> (Equation, f64, f64) {
            (Equation::Hyperbola { a, b }, 30.0, 100.0)
        }
        match self {
            FlowCup::Ford1 => line(0.49, 35.0, 55.0, 100.0),
            FlowCup::Ford2 => line(1.44, 18.0, 40.0, 100.0),
            FlowCup::Ford3 => line(2.31, 6.58, 20.0, 100.0),
            FlowCup::Ford4 => line(3.85, 4.49, 20.0, 100.0),
            FlowCup::Ford5 => line(12.1, 2.0, 20.0, 100.0),
            FlowCup::Zahn1 => line(1.1, 29.0, 35.0, 80.0),
            FlowCup::Zahn2 => line(3.5, 14.0, 20.0, 80.0),
            FlowCup::Zahn3 => line(11.7, 7.5, 20.0, 80.0),
            FlowCup::Zahn4 => line(14.8, 5.0, 20.0, 80.0),
            FlowCup::Zahn5 => line(23.0, 0.0, 20.0, 80.0),
            FlowCup::Iso3 => iso(0.443, 200.0),
            FlowCup::Iso4 => iso(1.37, 200.0),
            FlowCup::Iso5 => iso(3.28, 220.0),
            FlowCup::Iso6 => iso(6.9, 570.0),
        }
    }

    /// The least and the most seconds for which its equation holds.
    pub const fn valid_seconds(self) -> (f64, f64) {
        let (_, from, to) = self.parameters();
        (from, to)
    }

    /// Kinematic viscosity by the bare equation, mm²/s, also where it does not hold. For comparison with published figures; what a
    /// potter reads comes from [`FlowCup::viscosity`].
    pub fn by_equation(self, time: Seconds) -> f64 {
        let t = time.value();
        match self.parameters().0 {
            Equation::Line { a, b } => a * (t - b),
            Equation::Hyperbola { a, b } => a * t - b / t,
        }
    }

    /// Kinematic viscosity of an oil that takes this long, mm²/s.
    ///
    /// # Errors
    /// When the seconds are outside those that the cup is made for, with the cup that would do.
    pub fn viscosity(self, time: Seconds) -> Result<f64, OutsideCup> {
        let (from, to) = self.valid_seconds();
        if (from..=to).contains(&time.value()) {
            return Ok(self.by_equation(time));
        }
        Err(OutsideCup { cup: self, from, to, better: self.better_for(time) })
    }

    /// The cups of the same make, the finest first.
    fn family(self) -> &'static [FlowCup] {
        const CUPS: &[FlowCup] = FlowCup::ALL;
        let (from, to) = match self {
            FlowCup::Ford1 | FlowCup::Ford2 | FlowCup::Ford3 | FlowCup::Ford4 | FlowCup::Ford5 => (0, 5),
            FlowCup::Zahn1 | FlowCup::Zahn2 | FlowCup::Zahn3 | FlowCup::Zahn4 | FlowCup::Zahn5 => (5, 10),
            FlowCup::Iso3 | FlowCup::Iso4 | FlowCup::Iso5 | FlowCup::Iso6 => (10, 14),
        };
        &CUPS[from..to]
    }

    /// The nearest cup of the same make that what the equation says, roughly, lies within the seconds of.
    fn better_for(self, time: Seconds) -> Option<FlowCup> {
        let family = self.family();
        let own = family.iter().position(|cup| *cup == self)?;
        let rough = self.by_equation(time);
        let holds = |cup: &&FlowCup| {
            let (from, to) = cup.valid_seconds();
            (cup.by_equation(Seconds::new(from))..=cup.by_equation(Seconds::new(to))).contains(&rough)
        };
        // Where no cup holds it, or the equation says nothing there, the finest or the coarsest comes nearest.
        if time.value() < self.valid_seconds().0 {
            let finer = &family[..own];
            finer.iter().rev().find(holds).or(finer.first()).copied()
        } else {
            let coarser = &family[own + 1..];
            coarser.iter().find(holds).or(coarser.last()).copied()
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_viscosity_is_said_within_the_seconds_of_the_cup_only() {
        let s = Seconds::new;
        assert!(FlowCup::Ford4.viscosity(s(36.0)).is_ok());
        let fast = FlowCup::Ford4.viscosity(s(14.0)).unwrap_err();
        // 36.6 mm²/s: No. 3 would take 22 s, No. 2 43 s.
        assert_eq!((fast.from, fast.to, fast.better), (20.0, 100.0, Some(FlowCup::Ford3)));
        let slow = FlowCup::Ford4.viscosity(s(150.0)).unwrap_err();
        assert_eq!(slow.better, Some(FlowCup::Ford5));
        assert_eq!(FlowCup::Zahn5.viscosity(s(90.0)).unwrap_err().better, None);
        assert_eq!(FlowCup::Ford1.viscosity(s(46.0)).unwrap_err().better, None);
        assert_eq!(FlowCup::Iso6.viscosity(s(20.0)).unwrap_err().better, Some(FlowCup::Iso5));
    }

    #[test]
    fn each_cup_begins_where_the_finer_one_has_not_ended() {
        for family in [FlowCup::Ford1, FlowCup::Zahn1, FlowCup::Iso3].map(FlowCup::family) {
            for pair in family.windows(2) {
                let (_, to) = pair[0].valid_seconds();
                let (from, _) = pair[1].valid_seconds();
                let (most, least) = (pair[0].by_equation(Seconds::new(to)), pair[1].by_equation(Seconds::new(from)));
                assert!(least > 0.0 && most > least, "{pair:?}");
            }
        }
    }

    #[test]
    fn a_flow_far_off_its_history_at_the_same_sg_is_noticed() {
        let at = |sg: f64, time: f64| {
            (SgReading::checked(crate::units::SpecificGravity::new(sg).unwrap()), Seconds::new(time))
        };
        let history = [at(1.45, 30.0), at(1.448, 31.0), at(1.452, 32.0), at(1.6, 80.0)];
        assert_eq!(flow_change(&history, at(1.45, 44.0)), Some(FlowChange::Slower));
        assert_eq!(flow_change(&history, at(1.45, 20.0)), Some(FlowChange::Faster));
        assert_eq!(flow_change(&history, at(1.45, 36.0)), None);
        // Thicker by its SG: no gel.
        assert_eq!(flow_change(&history, at(1.52, 60.0)), None);
        assert_eq!(flow_change(&[], at(1.45, 60.0)), None);
    }
}
