//! What faults and witness cones speak of, in words.

use crate::messages::faults as say;
use laydown_domain::kiln::cone::{AgainstAim, Witness};
use laydown_domain::kiln::fault::Fault;

/// A hint for next time; never more than "often". Common practice, no source.
pub(crate) fn hint(fault: Fault) -> String {
    match fault {
        Fault::Crawling | Fault::Beading => say::crawling(),
        Fault::RawCracking | Fault::Flaking => say::raw_cracking(),
        Fault::Running | Fault::Sagging => say::running(),
        Fault::Pooling => say::pooling(),
        Fault::Blistering => say::blistering(),
        Fault::Thin => say::thin(),
        Fault::Dry => say::dry(),
        Fault::BareSpot => say::bare_spot(),
        Fault::Crazing | Fault::DelayedCrazing => say::crazing(),
        Fault::Shivering => say::shivering(),
        Fault::Dunting => say::dunting(),
        Fault::Pinholing | Fault::Pitting => say::pinholing(),
        Fault::Bloating => say::bloating(),
        Fault::Overfired => say::overfired(),
        Fault::Underfired => say::underfired(),
        Fault::Stuck => say::stuck(),
        Fault::Warped => say::warped(),
        Fault::Cracked => say::cracked(),
        Fault::Plucked => say::plucked(),
        Fault::Matting | Fault::Scumming | Fault::Blushing => say::matting(),
        Fault::Speck => say::speck(),
        Fault::MetalMarking => say::metal_marking(),
    }
}

/// What it is, in one line.
pub(crate) fn about(fault: Fault) -> String {
    say::about(fault.code())
}

/// What the witness cones say against the cone aimed at: "Cone 6 soft: under target."
pub(crate) fn witnessed((telling, against): (Witness, AgainstAim)) -> String {
    let (cone, reading) = (telling.cone.code(), telling.reading.code());
    match against {
        AgainstAim::AsAimed => say::cone_as_aimed(cone, reading),
        AgainstAim::Near => say::cone_near_aim(cone, reading),
        AgainstAim::Over => say::cone_over_aim(cone, reading),
        AgainstAim::Under => say::cone_under_aim(cone, reading),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use laydown_domain::kiln::cone::{Cone, Reading};
    use laydown_domain::kiln::fault::SpeaksOf;

    #[test]
    fn hints_claim_no_more_than_often() {
        for fault in Fault::ALL {
            let hint = hint(*fault);
            assert!(!hint.contains("always") && !hint.contains("safe"), "{fault:?}");
            if fault.speaks_of() != SpeaksOf::SomethingElse {
                assert!(hint.contains("ften"), "{fault:?}: {hint}");
            }
        }
    }

    #[test]
    fn a_cone_is_said_with_its_reading() {
        let cone: Cone = "6".parse().unwrap();
        let soft = Witness { cone, reading: Reading::Soft };
        assert_eq!(witnessed((soft, AgainstAim::Under)), "Cone 6 soft: under target.");
    }
}
