//! Forms: a shape at a size, made again and again, with the area of each zone that takes glaze.
//!
//! A form's zones come from areas the potter measured or, failing that, from its capacity and the profile of its class.

pub mod profile;
pub mod revolve;
mod shape_class;

use crate::coded::coded;
use crate::units::{Millilitres, SquareCentimetres};

pub use shape_class::ShapeClass;

/// Relative standard uncertainty of an area the potter measured. Common practice, no source.
pub const MEASURED_AREA: f64 = 0.02;

/// Relative standard uncertainty of an area taken from the capacity and the class: makers' proportions differ.
/// Common practice, no source.
pub const AREA_FROM_CAPACITY: f64 = 0.08;

const SMALLEST_CAPACITY: Millilitres = Millilitres::new(5.0);
const LARGEST_CAPACITY: Millilitres = Millilitres::new(100_000.0);
const SMALLEST_AREA: SquareCentimetres = SquareCentimetres::new(1.0);
const LARGEST_AREA: SquareCentimetres = SquareCentimetres::new(50_000.0);

coded! {
    /// A part of a form that takes one coat.
    "zone" ZoneKind {
        /// All of the inside up to the rim.
        Inside = "inside" "inside",
        /// All of the outside from the waterline up to the rim.
        Outside = "outside" "outside",
        /// Inside and outside in one dip.
        Whole = "whole" "inside and outside",
    }
}

/// A zone of one form.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Zone {
    /// Which part.
    pub kind: ZoneKind,
    /// Its glazed area.
    pub area: SquareCentimetres,
    /// One standard uncertainty of the area, as a fraction of it.
    pub relative_uncertainty: f64,
}

/// A shape at a size.
#[derive(Debug, Clone, PartialEq)]
pub struct Form {
    /// Its class of shape.
    pub class: ShapeClass,
    /// What it holds, filled to the rim.
    pub capacity: Option<Millilitres>,
    /// Its zones, each kind at most once.
    pub zones: Vec<Zone>,
}

/// Why a form cannot be. The display is the sentence the potter reads.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum FormError {
    /// Neither capacity nor any area.
    #[error("Say what the form holds when filled to the rim, or how large its glazed surface is.")]
    NoSize,
    /// A capacity outside what potters make.
    #[error("A form holds between 5 ml and 100 litres, and {} ml is outside that. Check the figure and the unit.", .capacity.value())]
    Capacity {
        /// The capacity met.
        capacity: Millilitres,
    },
    /// An area outside what potters make.
    #[error("A glazed surface is between 1 cm² and 5 m², and {} cm² is outside that. Check the figure and the unit.", .area.value())]
    Area {
        /// The area met.
        area: SquareCentimetres,
    },
    /// A flat thing has no capacity.
    #[error("A tile holds nothing. Give the area of its glazed face.")]
    HoldsNothing,
}

impl Form {
    /// From what it holds: each zone's area is `k V^(2/3)`, with k from the profile of the class.
    ///
    /// # Errors
    /// When the capacity is outside 5 ml to 100 l, or the class holds nothing.
    pub fn by_capacity(class: ShapeClass, capacity: Millilitres) -> Result<Self, FormError> {
        Self::new(class, Some(capacity), None, None)
    }

    /// From measured areas of the inside, the outside or both.
    ///
    /// # Errors
    /// When neither is given, or one is outside 1 cm² to 5 m².
    pub fn by_area(
        class: ShapeClass,
        inside: Option<SquareCentimetres>,
        outside: Option<SquareCentimetres>,
    ) -> Result<Self, FormError> {
        Self::new(class, None, inside, outside)
    }

    /// From all that is known: a measured area goes before one taken from the capacity.
    ///
    /// # Errors
    /// As [`Form::by_capacity`] and [`Form::by_area`].
    pub fn new(
        class: ShapeClass,
        capacity: Option<Millilitres>,
        inside: Option<SquareCentimetres>,
        outside: Option<SquareCentimetres>,
    ) -> Result<Self, FormError> {
        if let Some(capacity) = capacity
            && !(capacity >= SMALLEST_CAPACITY && capacity <= LARGEST_CAPACITY)
        {
            return Err(FormError::Capacity { capacity });
        }
        for area in [inside, outside].into_iter().flatten() {
            if !(area >= SMALLEST_AREA && area <= LARGEST_AREA) {
                return Err(FormError::Area { area });
            }
        }
        let zone = |kind, measured: Option<SquareCentimetres>| {
            let known = measured.map(|area| (area, MEASURED_AREA));
            let (area, relative_uncertainty) = known.or_else(|| {
                let profile = class.profile()?;
                Some((profile.area_for_capacity(kind, capacity?), AREA_FROM_CAPACITY))
            })?;
            Some(Zone { kind, area, relative_uncertainty })
        };
        let sides: Vec<Zone> =
            [zone(ZoneKind::Inside, inside), zone(ZoneKind::Outside, outside)].into_iter().flatten().collect();
        let zones = match sides.as_slice() {
            [] if capacity.is_some() => return Err(FormError::HoldsNothing),
            [] => return Err(FormError::NoSize),
            [face] if class.profile().is_none() => vec![Zone { kind: ZoneKind::Whole, ..*face }],
            [_] => sides,
            _ if class.profile().is_none() => vec![together(&sides)],
            _ => [sides.as_slice(), &[together(&sides)]].concat(),
        };
        Ok(Self { class, capacity, zones })
    }

    /// The zone of this kind, where the form has it.
    pub fn zone(&self, kind: ZoneKind) -> Option<&Zone> {
        self.zones.iter().find(|zone| zone.kind == kind)
    }

    /// Half of the silhouette as (radius, height) from the foot's centre up to the rim, scaled so that the larger of
    /// its whole width and its height is 1; for drawing.
    pub fn outline(&self) -> Vec<(f64, f64)> {
        self.class.outline()
    }
}

/// Several zones glazed in one dip. Their errors are taken to go together, which is the careful side.
fn together(zones: &[Zone]) -> Zone {
    let area: f64 = zones.iter().map(|zone| zone.area.value()).sum();
    let error: f64 = zones.iter().map(|zone| zone.area.value() * zone.relative_uncertainty).sum();
    Zone { kind: ZoneKind::Whole, area: SquareCentimetres::new(area), relative_uncertainty: error / area }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    fn ml(value: f64) -> Millilitres {
        Millilitres::new(value)
    }

    fn cm2(value: f64) -> SquareCentimetres {
        SquareCentimetres::new(value)
    }

    #[test]
    fn similar_forms_scale_with_the_two_thirds_power() {
        for class in ShapeClass::ALL.iter().copied().filter(|class| class.profile().is_some()) {
            let (small, large) =
                (Form::by_capacity(class, ml(250.0)).unwrap(), Form::by_capacity(class, ml(450.0)).unwrap());
            for kind in ZoneKind::ALL {
                let ratio = large.zone(*kind).unwrap().area / small.zone(*kind).unwrap().area;
                assert_relative_eq!(ratio, 1.479_727_2, epsilon = 1e-6);
            }
        }
    }

    #[test]
    fn a_mug_has_plausible_areas() {
        // From memory: a straight 250 ml mug 65 mm wide and 75 mm deep has about 187 cm² inside.
        let mug = Form::by_capacity(ShapeClass::CylinderMug, ml(250.0)).unwrap();
        assert_relative_eq!(mug.zone(ZoneKind::Inside).unwrap().area.value(), 187.0, max_relative = 0.05);
        let (inside, outside, whole) = (
            mug.zone(ZoneKind::Inside).unwrap().area,
            mug.zone(ZoneKind::Outside).unwrap().area,
            mug.zone(ZoneKind::Whole).unwrap().area,
        );
        assert_relative_eq!((inside + outside).value(), whole.value(), max_relative = 1e-12);
        assert!(outside > inside * 0.8 && outside < inside * 1.3);
    }

    #[test]
    fn measured_areas_go_before_capacity() {
        let form = Form::new(ShapeClass::Jar, Some(ml(600.0)), Some(cm2(320.0)), None).unwrap();
        let inside = form.zone(ZoneKind::Inside).unwrap();
        assert_eq!((inside.area, inside.relative_uncertainty), (cm2(320.0), MEASURED_AREA));
        assert_eq!(form.zone(ZoneKind::Outside).unwrap().relative_uncertainty, AREA_FROM_CAPACITY);
        let whole = form.zone(ZoneKind::Whole).unwrap().relative_uncertainty;
        assert!(whole > MEASURED_AREA && whole < AREA_FROM_CAPACITY);
        let only_inside = Form::by_area(ShapeClass::Jar, Some(cm2(320.0)), None).unwrap();
        assert_eq!(only_inside.zone(ZoneKind::Outside), None);
        assert_eq!(only_inside.zone(ZoneKind::Whole), None);
    }

    #[test]
    fn a_tile_has_one_face() {
        let tile = Form::by_area(ShapeClass::Tile, Some(cm2(30.0)), None).unwrap();
        assert_eq!(tile.zones.len(), 1);
        assert_eq!(tile.zone(ZoneKind::Whole).unwrap().area, cm2(30.0));
        assert_eq!(Form::by_capacity(ShapeClass::Tile, ml(30.0)), Err(FormError::HoldsNothing));
    }

    #[test]
    fn sizes_nobody_makes_are_refused() {
        for capacity in [0.0, -250.0, 4.9, 100_001.0, f64::NAN, f64::INFINITY] {
            let refused = Form::by_capacity(ShapeClass::CylinderMug, ml(capacity));
            assert!(matches!(refused, Err(FormError::Capacity { .. })), "{capacity}");
        }
        for area in [0.0, -1.0, 50_001.0, f64::NAN] {
            let refused = Form::by_area(ShapeClass::CylinderMug, Some(cm2(area)), None);
            assert!(matches!(refused, Err(FormError::Area { .. })), "{area}");
        }
        assert_eq!(Form::by_area(ShapeClass::CylinderMug, None, None), Err(FormError::NoSize));
    }

    #[test]
    fn outlines_fit_the_unit_square() {
        for class in ShapeClass::ALL {
            let outline = class.outline();
            let width = outline.iter().fold(0.0f64, |widest, point| widest.max(2.0 * point.0));
            let height = outline.iter().fold(0.0f64, |highest, point| highest.max(point.1));
            assert_relative_eq!(width.max(height), 1.0, max_relative = 1e-12);
            assert!(outline.iter().all(|point| point.0 >= 0.0 && point.1 >= -1e-12), "{class}");
            assert_eq!(outline.first(), Some(&(0.0, 0.0)), "{class}");
        }
    }
}
