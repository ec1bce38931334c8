//! Readings that are probably a slip of the hand or the head: asked about before they count, never refused.

use super::scale::Scale;
use super::target::Target;
use super::verdict::{Reading, scale_can_show};
use crate::coat::Solids;
use crate::units::Grams;

/// How near a weight must come to look like one that a slip explains, as a natural logarithm. Common practice, no source.
const LOOKS_LIKE: f64 = 0.10;
/// How far outside the span a coat may still be a plain short or long dip. Common practice, no source.
const LIKELY: (f64, f64) = (0.8, 1.25);
/// How near the aim what was meant must come, as a natural logarithm: a factor of 1.4. Common practice, no source.
const MEANT: f64 = 0.34;
/// So many times outside the span a coat is asked about even where no slip explains it. Common practice, no source.
const FAR: f64 = 2.0;
/// How far bare pieces of one form are from their usual weight. Common practice, no source.
const BARE_SPREAD: f64 = 0.2;

/// What a reading far off its aim looks like.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Slip {
    /// A decimal mark in another place, or the two weights the other way round: this was meant.
    Meant(Reading),
    /// The piece was on the scale and the tare was not set.
    TareForgotten {
        /// What a bare piece of this form usually weighs.
        bare: Grams,
    },
    /// Twice the aim.
    Twice,
    /// A coat whose water has gone.
    DryAlready {
        /// What it would have weighed wet.
        wet: Grams,
    },
    /// Far off, and nothing explains it.
    FarOff,
}

/// What this reading looks like, if it is far off what is accepted or plausible (`span`). `usual_bare` is what a bare piece
/// of the form weighs, where that is known.
pub fn slip(
    reading: &Reading,
    target: &Target,
    span: (Grams, Grams),
    scale: &Scale,
    solids: &Solids,
    usual_bare: Option<Grams>,
) -> Option<Slip> {
    let net = reading.net();
    let is_likely = |net: Grams| net >= span.0 * LIKELY.0 && net <= span.1 * LIKELY.1;
    let is_near = |net: Grams, by: f64| net.is_positive() && (net / target.wet).ln().abs() <= by;
    let looks_like = |net: Grams| is_near(net, LOOKS_LIKE);
    if !is_likely(net) {
        let could_be =
            |meant: &Reading| is_likely(meant.net()) && is_near(meant.net(), MEANT) && can_be_shown(meant, scale);
        let meant = misplaced(reading).into_iter().find(could_be);
        if let Some(meant) = meant {
            return Some(Slip::Meant(meant));
        }
        let with_piece = |bare: &Grams| ((net - target.wet) / *bare - 1.0).abs() <= BARE_SPREAD;
        if let (Reading::Net(_), Some(bare)) = (reading, usual_bare.filter(with_piece)) {
            return Some(Slip::TareForgotten { bare });
        }
    }
    if !net.is_positive() {
        return None;
    }
    let as_wet = solids.wet(net);
    if net > target.high && looks_like(net / 2.0) {
        Some(Slip::Twice)
    } else if net < target.low && looks_like(as_wet) {
        Some(Slip::DryAlready { wet: as_wet })
    } else if net < span.0 / FAR || net > span.1 * FAR {
        Some(Slip::FarOff)
    } else {
        None
    }
}

/// What may have been meant: one weight with its decimal mark in another place, or both weights exchanged.
fn misplaced(reading: &Reading) -> Vec<Reading> {
    const PLACES: [f64; 4] = [0.1, 10.0, 0.01, 100.0];
    match *reading {
        Reading::Net(net) => PLACES.iter().map(|place| Reading::Net(net * *place)).collect(),
        Reading::TwoWeights { bare, glazed } => {
            let exchanged = [Reading::TwoWeights { bare: glazed, glazed: bare }];
            let glazed_moved = PLACES.iter().map(|place| Reading::TwoWeights { bare, glazed: glazed * *place });
            let bare_moved = PLACES.iter().map(|place| Reading::TwoWeights { bare: bare * *place, glazed });
            exchanged.into_iter().chain(glazed_moved).chain(bare_moved).collect()
        }
    }
}

fn can_be_shown(reading: &Reading, scale: &Scale) -> bool {
    let one = |weight: Grams| weight.is_positive() && weight <= scale.capacity && scale_can_show(weight, scale.step);
    match *reading {
        Reading::Net(net) => one(net),
        Reading::TwoWeights { bare, glazed } => one(bare) && one(glazed),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::coat::target::{Sensitivity, Source};
    use crate::glaze::slurry::SgReading;
    use crate::units::{Laydown, PowderDensity, SpecificGravity};
    use proptest::prelude::*;

    fn g(grams: f64) -> Grams {
        Grams::new(grams)
    }

    /// An aim of this weight, as sure as a control piece makes it or a first guess.
    fn aim(wet: f64, is_guess: bool) -> (Target, (Grams, Grams)) {
        let (tolerance, spread) = (Sensitivity::Medium.tolerance(), if is_guess { 1.866 } else { 1.12 });
        let target = Target {
            wet: g(wet),
            low: g(wet * (1.0 - tolerance)),
            high: g(wet * (1.0 + tolerance)),
            interval: (g(wet / spread), g(wet * spread)),
            dry: g(wet / 2.0),
            laydown: Laydown::new(5.5),
            source: if is_guess { Source::Starting } else { Source::ControlSameForm },
            pots: usize::from(!is_guess),
            tolerance,
        };
        let span = if is_guess { target.interval } else { (target.low, target.high) };
        (target, span)
    }

    /// At SG 1.50 a gram of glaze holds 0.542 g of powder.
    fn asked(reading: Reading, wet: f64, is_guess: bool, bare: Option<f64>) -> Option<Slip> {
        let (target, span) = aim(wet, is_guess);
        let scale = Scale::new(g(2_000.0), g(0.1), None, None).unwrap();
        let sg = SgReading::checked(SpecificGravity::new(1.50).unwrap());
        let solids = Solids::of(sg, PowderDensity::default()).unwrap();
        slip(&reading, &target, span, &scale, &solids, bare.map(g))
    }

    fn net(grams: f64) -> Reading {
        Reading::Net(g(grams))
    }

    fn is_meant(slip: Option<Slip>, expect: f64) -> bool {
        matches!(slip, Some(Slip::Meant(Reading::Net(meant))) if (meant - g(expect)).abs() < g(1e-9))
    }

    #[test]
    fn the_slips_of_a_glazing_day() {
        for is_guess in [false, true] {
            for typed in [195.0, 1.95, 1_950.0, 0.195] {
                assert!(is_meant(asked(net(typed), 19.5, is_guess, None), 19.5), "{typed}");
            }
            assert_eq!(asked(net(39.0), 19.5, is_guess, None), Some(Slip::Twice));
            let dry = asked(net(11.9), 21.8, is_guess, None);
            assert!(matches!(dry, Some(Slip::DryAlready { wet }) if (wet - g(22.0)).abs() < g(0.1)), "{dry:?}");
            // 312 g of mug and the coat, on a scale that was not tared.
            assert_eq!(asked(net(331.4), 19.5, is_guess, Some(305.0)), Some(Slip::TareForgotten { bare: g(305.0) }));
            assert_eq!(asked(net(331.4), 19.5, is_guess, None), Some(Slip::FarOff));
        }
        assert_eq!(asked(net(50.0), 19.5, false, None), Some(Slip::FarOff));
        assert_eq!(asked(net(7.0), 19.5, false, None), Some(Slip::FarOff));
        // 40 g would be plausible too, and no likelier than 4 g.
        assert_eq!(asked(net(4.0), 19.5, true, None), Some(Slip::FarOff));
    }

    #[test]
    fn a_slip_in_one_of_two_weights() {
        let two = |bare: f64, glazed: f64| Reading::TwoWeights { bare: g(bare), glazed: g(glazed) };
        let meant = |bare: f64, glazed: f64| {
            let Some(Slip::Meant(Reading::TwoWeights { bare, glazed })) = asked(two(bare, glazed), 19.5, false, None)
            else {
                panic!("{bare} {glazed}")
            };
            ((bare.value() * 10.0).round() / 10.0, (glazed.value() * 10.0).round() / 10.0)
        };
        assert_eq!(meant(312.5, 3_320.0), (312.5, 332.0));
        assert_eq!(meant(3_125.0, 332.0), (312.5, 332.0));
        assert_eq!(meant(332.0, 312.5), (312.5, 332.0));
        assert_eq!(asked(two(312.5, 332.0), 19.5, false, None), None);
    }

    #[test]
    fn a_short_or_long_dip_is_judged_and_not_asked_about() {
        for typed in [12.5, 15.0, 18.0, 19.5, 21.0, 25.0, 30.0] {
            assert_eq!(asked(net(typed), 19.5, false, Some(310.0)), None, "{typed}");
        }
        for nothing in [0.0, -3.0] {
            assert_eq!(asked(net(nothing), 19.5, false, None), None);
        }
    }

    proptest! {
        /// What lies in the accepted span is never asked about.
        #[test]
        fn nothing_right_is_asked_about(at in -0.06f64..0.06, wet in 2.0..400.0f64, bare in prop::option::of(1.0..900.0f64)) {
            let typed = (wet * (1.0 + at) * 10.0).round() / 10.0;
            prop_assume!((typed / wet - 1.0).abs() < 0.07);
            prop_assert_eq!(asked(net(typed), wet, false, bare), None);
        }
    }
}
