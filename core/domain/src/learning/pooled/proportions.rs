//! A studio's own proportions of a class of shape: what its measured forms have of the area that their capacities would give.

use crate::units::SquareCentimetres;

/// How far two sizes of one class fail to be similar, one standard deviation of each. Common practice, no source.
const OWN: f64 = 0.022;

/// By what an area from a capacity is to be multiplied, for forms of one class and zone.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Proportions {
    /// The factor.
    pub factor: f64,
    /// One standard uncertainty of an area from a capacity times this factor, as a fraction of it.
    pub relative_uncertainty: f64,
}

/// From the forms of one class whose zone was measured: the measured area with its relative standard uncertainty, and what the
/// class has for its capacity. Without any the class's own areas stand, with the uncertainty `of_class` that they have.
pub fn proportions(measured: &[(SquareCentimetres, f64, SquareCentimetres)], of_class: f64) -> Proportions {
    let shared = (of_class * of_class - OWN * OWN).max(0.0);
    let (mut precision, mut sum) = (if shared > 0.0 { 1.0 / shared } else { f64::INFINITY }, 0.0);
    for (area, uncertainty, by_class) in measured {
        let is_usable = area.is_positive() && by_class.is_positive() && *uncertainty >= 0.0;
        let ratio = *area / *by_class;
        if is_usable && ratio.is_finite() && ratio > 0.0 {
            let weight = 1.0 / (uncertainty * uncertainty + OWN * OWN);
            precision += weight;
            sum += weight * ratio.ln();
        }
    }
    Proportions { factor: (sum / precision).exp(), relative_uncertainty: (1.0 / precision).sqrt().hypot(OWN) }
}
