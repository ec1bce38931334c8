//! What a size takes in which nothing was glazed yet: the curve of grams over what a form holds, for one class of shape and zone.
//!
//! A size's area follows from what it holds, as [`ShapeClass::area`] has it, times the studio's own proportions; how much glaze
//! belongs on it from all pots of the glaze, as [`super::pooled`] has it for a form of that class without pots. The further a
//! size lies from the sizes that are known, the less sure.

use super::pooled::{Aim, Outlook, Proportions};
use crate::coat::Solids;
use crate::form::{ShapeClass, ZoneKind};
use crate::units::{Millilitres, SquareCentimetres};

/// One size on the curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Size {
    /// What it holds.
    pub capacity: Millilitres,
    /// The zone's area.
    pub area: SquareCentimetres,
    /// What it takes.
    pub aim: Aim,
}

/// Sizes of one class and zone.
#[derive(Debug, Clone, PartialEq)]
pub struct Sizes {
    /// The class.
    pub class: ShapeClass,
    /// The zone.
    pub zone: ZoneKind,
    /// The studio's own proportions of it.
    pub proportions: Proportions,
    /// What its forms hold on which pots were glazed.
    pub known: Vec<Millilitres>,
}

impl Sizes {
    /// What a form that holds `capacity` takes; `outlook` is for a form of this class whose area is as uncertain as
    /// [`Proportions::relative_uncertainty`] says. `None` for what holds nothing, or where a figure cannot be.
    pub fn at(&self, capacity: Millilitres, outlook: &Outlook, solids: &Solids) -> Option<Size> {
        let of_class = |capacity| self.class.area(self.zone, capacity).filter(|_| capacity.is_positive());
        let area = of_class(capacity)?.0 * self.proportions.factor;
        let growth =
            |from: Millilitres| self.class.growth(self.zone, from, capacity).map(|growth| growth.relative_uncertainty);
        // How far two sizes of one class fail to be similar is in the outlook; how they grow apart is not.
        let similar = growth(capacity)?;
        let nearest = self.known.iter().filter(|known| known.is_positive()).filter_map(|known| growth(*known));
        let apart = nearest.reduce(f64::min).map_or(0.0, |apart| (apart * apart - similar * similar).max(0.0).sqrt());
        let unsure = Solids { relative_uncertainty: solids.relative_uncertainty.hypot(apart), ..*solids };
        Some(Size { capacity, area, aim: outlook.aim(area, &unsure)? })
    }

    /// The curve from `from` to `to` in equal parts; empty where a figure cannot be.
    pub fn curve(
        &self,
        from: Millilitres,
        to: Millilitres,
        parts: usize,
        outlook: &Outlook,
        solids: &Solids,
    ) -> Vec<Size> {
        let at = |part: usize| from + (to - from) * (part as f64 / parts.max(1) as f64);
        let sizes: Option<Vec<Size>> = (0..=parts).map(|part| self.at(at(part), outlook, solids)).collect();
        sizes.unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::coat::target::{STARTING_LAYDOWN, Sensitivity};
    use crate::glaze::slurry::SgReading;
    use crate::learning::pooled::{Assumptions, Fitted, GlazeEvidence, Place, proportions};
    use crate::units::{PowderDensity, SpecificGravity};
    use approx::assert_relative_eq;
    use uuid::Uuid;

    fn outlook(class: ShapeClass) -> Outlook {
        let evidence = GlazeEvidence {
            pots: Vec::new(),
            controls: Vec::new(),
            tiles: Vec::new(),
            starting: STARTING_LAYDOWN,
            sensitivity: Sensitivity::Medium,
        };
        let place = Place {
            form: Uuid::nil(),
            zone: ZoneKind::Outside,
            class,
            area_relative_uncertainty: 0.08,
            body: None,
            cone: None,
        };
        Fitted::new(&evidence, &place, 0.0, &Assumptions::default(), None).unwrap().outlook()
    }

    fn solids() -> Solids {
        let sg = SgReading::new(SpecificGravity::new(1.45).unwrap(), 0.005).unwrap();
        Solids::of(sg, PowderDensity::default()).unwrap()
    }

    #[test]
    fn larger_takes_more_and_further_off_is_less_sure() {
        let class = ShapeClass::RoundedMug;
        let sizes = Sizes {
            class,
            zone: ZoneKind::Outside,
            proportions: proportions(&[], 0.08),
            known: vec![Millilitres::new(250.0), Millilitres::new(300.0)],
        };
        let curve = sizes.curve(Millilitres::new(250.0), Millilitres::new(2_500.0), 9, &outlook(class), &solids());
        assert_eq!(curve.len(), 10);
        let wide = |size: &Size| (size.aim.interval.1 / size.aim.interval.0).ln();
        assert!(curve.is_sorted_by(|one, other| one.aim.wet < other.aim.wet && wide(one) <= wide(other) + 1e-12));
        assert!(wide(&curve[9]) > wide(&curve[0]) + 0.01, "{curve:?}");
        // Domain's rule: outsides of a class grow with what they hold to 0.62.
        assert_relative_eq!(curve[9].aim.wet / curve[0].aim.wet, 10f64.powf(0.62), max_relative = 1e-9);
    }

    #[test]
    fn own_proportions_scale_the_curve_and_nothing_holds_nothing() {
        let class = ShapeClass::CylinderMug;
        let own = Proportions { factor: 1.2, relative_uncertainty: 0.03 };
        let of = |proportions| Sizes { class, zone: ZoneKind::Inside, proportions, known: Vec::new() };
        let at = |sizes: &Sizes, ml: f64| sizes.at(Millilitres::new(ml), &outlook(class), &solids());
        let (plain, scaled) = (at(&of(proportions(&[], 0.08)), 250.0).unwrap(), at(&of(own), 250.0).unwrap());
        assert_relative_eq!(scaled.aim.wet / plain.aim.wet, 1.2, max_relative = 1e-9);
        assert_eq!((at(&of(own), 0.0), at(&of(own), -3.0), at(&of(own), f64::NAN)), (None, None, None));
        let tile = Sizes { class: ShapeClass::Tile, ..of(own) };
        assert_eq!(at(&tile, 250.0), None);
        assert_eq!(tile.curve(Millilitres::new(1.0), Millilitres::new(2.0), 4, &outlook(class), &solids()), []);
    }
}
