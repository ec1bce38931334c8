//! Forms: a shape at a size, made again and again, with the area of each zone that takes glaze.
//!
//! A form's zones come from areas the potter measured, from a profile, or failing both from its capacity and the profile
//! of its class: best first.

mod curve;
pub mod profile;
pub mod revolve;
mod shape_class;
mod shrinkage;
pub mod silhouette;

use crate::coded::coded;
use crate::units::{Millilitres, Millimetres, SquareCentimetres};

pub use profile::{
    Cut, FootRing, GlazeLines, MOST_POINTS, Part, PartArea, Profile, ProfileError, ProfilePoint, WeightCheck, tube,
    weight_check,
};
pub use shape_class::{Growth, OneMeasure, ShapeClass, Usual};
pub use shrinkage::{Shrinkage, ShrinkageError, Stage};

/// Relative standard uncertainty of an area the potter measured. Common practice, no source.
pub const MEASURED_AREA: f64 = 0.02;

/// Relative standard uncertainty of an area taken from the capacity and the class: makers' proportions differ.
/// Common practice, no source.
pub const AREA_FROM_CAPACITY: f64 = 0.08;

/// Relative standard uncertainty of a handle's area from its length and girth. Common practice, no source.
const MEASURED_HANDLE: f64 = 0.10;

const SMALLEST_CAPACITY: Millilitres = Millilitres::new(5.0);
const LARGEST_CAPACITY: Millilitres = Millilitres::new(100_000.0);
const SMALLEST_AREA: SquareCentimetres = SquareCentimetres::new(1.0);
const LARGEST_AREA: SquareCentimetres = SquareCentimetres::new(50_000.0);

coded! {
    /// A part of a form that takes one coat.
    "zone" ZoneKind {
        /// All of the inside up to the rim.
        Inside = "inside",
        /// All of the outside from the waterline up to the rim.
        Outside = "outside",
        /// Inside and outside in one dip.
        Whole = "whole",
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

/// A pot as measured or traced, at the size of its bisque.
#[derive(Debug, Clone, PartialEq)]
pub struct Measured {
    /// Its profile.
    pub profile: Profile,
    /// Where its glaze ends.
    pub lines: GlazeLines,
    /// What else takes glaze outside: handle, knob, spout.
    pub extra: SquareCentimetres,
    /// Depth below the rim to which it is filled in use.
    pub fill: Option<Millimetres>,
    /// Relative standard uncertainty of its areas from a photograph; none for a profile taken with calipers.
    pub traced: Option<f64>,
}

impl Measured {
    /// The same at another size: lengths times `factor`, areas times its square.
    #[must_use]
    pub fn scaled(&self, factor: f64) -> Measured {
        Measured {
            profile: self.profile.scaled(factor),
            lines: GlazeLines { bare_foot: self.lines.bare_foot * factor, overlap: self.lines.overlap * factor },
            extra: self.extra * (factor * factor),
            fill: self.fill.map(|fill| fill * factor),
            traced: self.traced,
        }
    }
}

/// What is known of a form's size, the best first.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Known {
    /// Glazed area inside, as measured.
    pub inside: Option<SquareCentimetres>,
    /// Glazed area outside, as measured.
    pub outside: Option<SquareCentimetres>,
    /// Its profile.
    pub measured: Option<Measured>,
    /// What it holds, filled to the rim.
    pub capacity: Option<Millilitres>,
    /// Its one measure, where it is known by no more.
    pub one: Option<OneMeasure>,
    /// What is known of its glaze lines and its handle where it is known by its class and what it holds or one measure.
    pub own: Own,
}

/// Where a form that is known by its class and its size differs from the usual one of its class.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Own {
    /// Height above the ground at which the glaze begins; as usual for its class where it is not given.
    pub bare_foot: Option<Millimetres>,
    /// Depth below the rim, outside, to which both glazes lie.
    pub overlap: Option<Millimetres>,
    /// What else takes glaze outside: handle, knob, spout.
    pub extra: SquareCentimetres,
}

impl Own {
    fn is_usual(&self) -> bool {
        *self == Own::default()
    }
}

/// A shape at a size.
#[derive(Debug, Clone, PartialEq)]
pub struct Form {
    /// Its class of shape.
    pub class: ShapeClass,
    /// What it holds, filled to the rim: as measured, else by its profile.
    pub capacity: Option<Millilitres>,
    /// Whether its areas go with what it holds: not with lines of its own or a handle, which do not grow with the pot.
    pub grows_as_its_class: bool,
    /// What it holds by its profile.
    pub profile_capacity: Option<Millilitres>,
    /// What it holds by its profile as it is filled in use.
    pub capacity_in_use: Option<Millilitres>,
    /// Its zones, each kind at most once.
    pub zones: Vec<Zone>,
    /// The parts of its surface, where its profile is known.
    pub parts: Vec<PartArea>,
    outline: Vec<(f64, f64)>,
    widest: Option<Millimetres>,
}

/// Why a form cannot be.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum FormError {
    /// Neither capacity nor any area.
    NoSize,
    /// A capacity outside what potters make.
    Capacity {
        /// The capacity met.
        capacity: Millilitres,
    },
    /// An area outside what potters make.
    Area {
        /// The area met.
        area: SquareCentimetres,
    },
    /// One measure with which a pot of its class would hold so much as no pot does.
    OneMeasure {
        /// What it would hold.
        capacity: Millilitres,
    },
    /// A flat thing has no capacity.
    HoldsNothing,
    /// A plate's height says nothing of its size.
    HeightOfPlate,
    /// A profile that makes no pot.
    #[error(transparent)]
    Profile(#[from] ProfileError),
}

impl Form {
    /// From what it holds, as [`ShapeClass::area`] says.
    ///
    /// # Errors
    /// When the capacity is outside 5 ml to 100 l, or the class holds nothing.
    pub fn by_capacity(class: ShapeClass, capacity: Millilitres) -> Result<Self, FormError> {
        Self::new(class, &Known { capacity: Some(capacity), ..Known::default() })
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
        Self::new(class, &Known { inside, outside, ..Known::default() })
    }

    /// From all that is known, the best first: a measured area goes before a profile, a profile before a capacity.
    ///
    /// # Errors
    /// When nothing is known, a figure is outside what potters make, or the profile makes no pot.
    pub fn new(class: ShapeClass, known: &Known) -> Result<Self, FormError> {
        known.check()?;
        let turned = known.measured.as_ref().map(Turned::new).transpose()?;
        let of_class = if turned.is_none() { OfClass::new(class, known)? } else { None };
        let by_class = |kind| of_class.as_ref().map(|of_class| of_class.zone(kind));
        let zone = |kind, measured: Option<SquareCentimetres>| {
            let found = measured.map(|area| (area, MEASURED_AREA));
            let found = found.or_else(|| turned.as_ref().map(|turned| turned.zone(kind)));
            let (area, relative_uncertainty) = found.or_else(|| by_class(kind))?;
            Some(Zone { kind, area, relative_uncertainty })
        };
        let sides: Vec<Zone> = [zone(ZoneKind::Inside, known.inside), zone(ZoneKind::Outside, known.outside)]
            .into_iter()
            .flatten()
            .collect();
        let is_flat = class.is_flat() && turned.is_none();
        let zones = match sides.as_slice() {
            [] if known.capacity.is_some() || known.one.is_some() => return Err(FormError::HoldsNothing),
            [] => return Err(FormError::NoSize),
            [face] if is_flat => vec![Zone { kind: ZoneKind::Whole, ..*face }],
            [_] => sides,
            _ if is_flat => vec![together(&sides)],
            _ => {
                let twice = turned.as_ref().map(Turned::coated_twice);
                let twice = twice.or(of_class.as_ref().map(|of_class| of_class.coated_twice));
                let twice = twice.unwrap_or(SquareCentimetres::ZERO);
                let whole = together(&sides);
                [sides.as_slice(), &[Zone { area: whole.area - twice, ..whole }]].concat()
            }
        };
        let profile_capacity = turned.as_ref().map(|turned| turned.cut.capacity());
        Ok(Self {
            class,
            capacity: known.capacity.or(profile_capacity),
            grows_as_its_class: turned.is_some() || known.own.is_usual(),
            profile_capacity,
            widest: match (&turned, &of_class) {
                (Some(turned), _) => Some(Millimetres::new(turned.cut.widest())),
                (None, Some(of_class)) => class.widest(Some(of_class.capacity)),
                (None, None) => class.widest(None),
            },
            capacity_in_use: turned.as_ref().and_then(Turned::in_use),
            zones,
            outline: turned.as_ref().map_or_else(|| class.outline(), |turned| outline(&turned.cut)),
            parts: turned.map(|turned| turned.parts).unwrap_or_default(),
        })
    }

    /// Its width at the widest, halved: of its profile, or of the class's made to hold as much. `None` for what is flat.
    pub fn widest(&self) -> Option<Millimetres> {
        self.widest
    }

    /// How far the measured capacity lies from what the profile holds, as a fraction of that; `None` unless both are
    /// known and the profile holds something.
    pub fn capacity_disagreement(&self) -> Option<f64> {
        let (measured, turned) = (self.capacity?, self.profile_capacity?);
        Some(measured / turned - 1.0).filter(|off| off.is_finite())
    }

    /// One part of its surface, where its profile is known.
    pub fn part(&self, part: Part) -> Option<&PartArea> {
        self.parts.iter().find(|found| found.part == part)
    }

    /// What it holds, where its areas go with that.
    pub fn capacity_to_grow_by(&self) -> Option<Millilitres> {
        self.capacity.filter(|_| self.grows_as_its_class)
    }

    /// The zone of this kind, where the form has it.
    pub fn zone(&self, kind: ZoneKind) -> Option<&Zone> {
        self.zones.iter().find(|zone| zone.kind == kind)
    }

    /// Half of the silhouette as (radius, height) from the foot's centre up to the rim, scaled so that the larger of
    /// its whole width and its height is 1; for drawing.
    pub fn outline(&self) -> Vec<(f64, f64)> {
        self.outline.clone()
    }
}

impl Known {
    fn check(&self) -> Result<(), FormError> {
        if let Some(capacity) = self.capacity
            && !(capacity >= SMALLEST_CAPACITY && capacity <= LARGEST_CAPACITY)
        {
            return Err(FormError::Capacity { capacity });
        }
        for area in [self.inside, self.outside].into_iter().flatten() {
            if !(area >= SMALLEST_AREA && area <= LARGEST_AREA) {
                return Err(FormError::Area { area });
            }
        }
        Ok(())
    }
}

/// A form as its class has it at its size, with its own glaze lines and handle.
struct OfClass {
    /// What it holds, or would hold with usual proportions.
    capacity: Millilitres,
    inside: (SquareCentimetres, f64),
    outside: (SquareCentimetres, f64),
    coated_twice: SquareCentimetres,
}

impl OfClass {
    /// `None` where its size is not known, or its class holds nothing.
    fn new(class: ShapeClass, known: &Known) -> Result<Option<OfClass>, FormError> {
        let Some((capacity, one)) = sized(class, known)? else { return Ok(None) };
        let (Some(inside), Some(outside)) =
            (class.area(ZoneKind::Inside, capacity), class.area(ZoneKind::Outside, capacity))
        else {
            return Ok(None);
        };
        let as_sure = |(area, relative_uncertainty)| (area, one.unwrap_or(relative_uncertainty));
        let (inside, outside) = (as_sure(inside), as_sure(outside));
        let mut of_class = OfClass { capacity, inside, outside, coated_twice: SquareCentimetres::ZERO };
        let Some(Usual { profile, lines }) = class.usual(Some(capacity)).filter(|_| !known.own.is_usual()) else {
            return Ok(Some(of_class));
        };
        // The class says how large a zone is; the profile, what part of that is glazed with other lines.
        let measured = |lines| Measured {
            profile: profile.clone(),
            lines,
            extra: SquareCentimetres::ZERO,
            fill: None,
            traced: None,
        };
        let own = GlazeLines {
            bare_foot: known.own.bare_foot.unwrap_or(lines.bare_foot),
            overlap: known.own.overlap.unwrap_or(lines.overlap),
        };
        let (usual, own) = (measured(lines), measured(own));
        let (usual, own) = (Turned::new(&usual)?, Turned::new(&own)?);
        for (kind, zone) in [(ZoneKind::Inside, &mut of_class.inside), (ZoneKind::Outside, &mut of_class.outside)] {
            zone.0 = zone.0 * (own.area(kind) / usual.area(kind));
        }
        let (wall, uncertainty) = of_class.outside;
        let area = wall + known.own.extra;
        let error = (wall.value() * uncertainty).hypot(known.own.extra.value() * MEASURED_HANDLE);
        of_class.outside = (area, error / area.value());
        of_class.coated_twice = own.coated_twice();
        Ok(Some(of_class))
    }

    fn zone(&self, kind: ZoneKind) -> (SquareCentimetres, f64) {
        if kind == ZoneKind::Inside { self.inside } else { self.outside }
    }
}

/// What a form of a class holds, as measured or, with the uncertainty of areas that are taken from that, by one measure.
fn sized(class: ShapeClass, known: &Known) -> Result<Option<(Millilitres, Option<f64>)>, FormError> {
    if let Some(capacity) = known.capacity {
        return Ok(Some((capacity, None)));
    }
    let Some(measure) = known.one.filter(|_| !class.is_flat()) else { return Ok(None) };
    let (capacity, relative_uncertainty) = class.by_one_measure(measure).ok_or(FormError::HeightOfPlate)?;
    if !(SMALLEST_CAPACITY..=LARGEST_CAPACITY).contains(&capacity) {
        return Err(FormError::OneMeasure { capacity });
    }
    Ok(Some((capacity, Some(relative_uncertainty))))
}

/// A measured form with its profile cut open.
struct Turned<'a> {
    measured: &'a Measured,
    cut: Cut,
    parts: Vec<PartArea>,
}

impl<'a> Turned<'a> {
    fn new(measured: &'a Measured) -> Result<Self, FormError> {
        let cut = measured.profile.cut()?;
        let parts = cut.parts(&measured.lines)?;
        Ok(Self { measured, cut, parts })
    }

    /// Area of a zone and how sure it is. Where the glazes overlap, the inside one runs over the lip and down the band.
    fn zone(&self, kind: ZoneKind) -> (SquareCentimetres, f64) {
        let (parts, line) = match kind {
            ZoneKind::Inside => (self.parts_of(kind), self.cut.inside()),
            ZoneKind::Outside | ZoneKind::Whole => (self.parts_of(kind), self.cut.outside()),
        };
        let area = self.area(kind);
        let of_cut =
            |cut: &Cut| cut.parts(&self.measured.lines).map_or(0.0, |found| sum(&found, parts).value() * 100.0);
        let relative =
            profile::relative_uncertainty(&self.measured.profile, of_cut, revolve::length(line), self.measured.traced);
        (area, relative.unwrap_or(AREA_FROM_CAPACITY))
    }

    fn area(&self, kind: ZoneKind) -> SquareCentimetres {
        let extra = if kind == ZoneKind::Outside { self.measured.extra } else { SquareCentimetres::ZERO };
        sum(&self.parts, self.parts_of(kind)) + extra
    }

    fn parts_of(&self, kind: ZoneKind) -> &'static [Part] {
        match kind {
            ZoneKind::Inside if self.overlaps() => INSIDE_OVER_THE_LIP,
            ZoneKind::Inside => INSIDE,
            ZoneKind::Outside | ZoneKind::Whole => OUTSIDE,
        }
    }

    fn in_use(&self) -> Option<Millilitres> {
        self.measured.fill.map(|fill| self.cut.capacity_to(fill))
    }

    fn overlaps(&self) -> bool {
        self.measured.lines.overlap > Millimetres::ZERO
    }

    /// What both the inside and the outside coat cover, and a single dip only once.
    fn coated_twice(&self) -> SquareCentimetres {
        if self.overlaps() { sum(&self.parts, &[Part::Rim, Part::OverlapBand]) } else { SquareCentimetres::ZERO }
    }
}

const INSIDE: &[Part] = &[Part::InsideFloor, Part::InsideWall];
const INSIDE_OVER_THE_LIP: &[Part] = &[Part::InsideFloor, Part::InsideWall, Part::Rim, Part::OverlapBand];
const OUTSIDE: &[Part] = &[Part::OutsideWall, Part::OverlapBand, Part::Rim];

fn sum(parts: &[PartArea], wanted: &[Part]) -> SquareCentimetres {
    let found = parts.iter().filter(|found| wanted.contains(&found.part));
    found.fold(SquareCentimetres::ZERO, |sum, found| sum + found.area)
}

/// Half of the silhouette of a pot, as [`Form::outline`] gives it.
fn outline(cut: &Cut) -> Vec<(f64, f64)> {
    let outside = cut.outside();
    let height = outside.iter().fold(0.0f64, |highest, point| highest.max(point.height));
    let width = outside.iter().fold(0.0f64, |widest, point| widest.max(2.0 * point.radius));
    let size = height.max(width);
    let foot = std::iter::once((0.0, 0.0));
    foot.chain(outside.iter().map(|point| (point.radius / size, point.height / size))).collect()
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
    fn the_inside_scales_with_the_two_thirds_power_and_the_outside_with_less() {
        for class in ShapeClass::ALL.iter().copied().filter(|class| !class.is_flat()) {
            let (small, large) =
                (Form::by_capacity(class, ml(250.0)).unwrap(), Form::by_capacity(class, ml(450.0)).unwrap());
            let ratio = |kind| large.zone(kind).unwrap().area / small.zone(kind).unwrap().area;
            assert_relative_eq!(ratio(ZoneKind::Inside), 1.479_727_2, epsilon = 1e-6);
            let outside = if class == ShapeClass::Plate { 1.479_727_2 } else { 1.8f64.powf(0.62) };
            assert_relative_eq!(ratio(ZoneKind::Outside), outside, epsilon = 1e-6);
            assert!(ratio(ZoneKind::Whole) <= ratio(ZoneKind::Inside) + 1e-9, "{class}");
        }
    }

    #[test]
    fn the_further_from_the_usual_size_the_rougher_the_outside() {
        let sure = |class, capacity, kind| {
            Form::by_capacity(class, ml(capacity)).unwrap().zone(kind).unwrap().relative_uncertainty
        };
        let mug = ShapeClass::CylinderMug;
        assert_relative_eq!(sure(mug, 3_000.0, ZoneKind::Inside), AREA_FROM_CAPACITY);
        assert!(sure(mug, 3_000.0, ZoneKind::Outside) > sure(mug, 400.0, ZoneKind::Outside));
        assert!(sure(ShapeClass::Plate, 500.0, ZoneKind::Inside) >= 0.2);
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
        let known = Known { capacity: Some(ml(600.0)), inside: Some(cm2(320.0)), ..Known::default() };
        let form = Form::new(ShapeClass::Jar, &known).unwrap();
        let inside = form.zone(ZoneKind::Inside).unwrap();
        assert_eq!((inside.area, inside.relative_uncertainty), (cm2(320.0), MEASURED_AREA));
        let outside = form.zone(ZoneKind::Outside).unwrap().relative_uncertainty;
        assert!((AREA_FROM_CAPACITY..AREA_FROM_CAPACITY + 0.01).contains(&outside));
        let whole = form.zone(ZoneKind::Whole).unwrap().relative_uncertainty;
        assert!(whole > MEASURED_AREA && whole < AREA_FROM_CAPACITY);
        let only_inside = Form::by_area(ShapeClass::Jar, Some(cm2(320.0)), None).unwrap();
        assert_eq!(only_inside.zone(ZoneKind::Outside), None);
        assert_eq!(only_inside.zone(ZoneKind::Whole), None);
    }

    #[test]
    fn a_form_by_capacity_has_its_own_foot_lip_and_handle() {
        let mm = Millimetres::new;
        let mug = |own| {
            let known = Known { capacity: Some(ml(350.0)), own, ..Known::default() };
            let form = Form::new(ShapeClass::CylinderMug, &known).unwrap();
            let area = |kind| form.zone(kind).unwrap().area.value();
            ([area(ZoneKind::Inside), area(ZoneKind::Outside), area(ZoneKind::Whole)], form.grows_as_its_class)
        };
        let ([inside, outside, whole], grows) = mug(Own::default());
        assert!(grows);
        // A handle 12 cm long and 5 cm around has 60 cm2, and does not grow with the pot.
        let handle = tube(mm(120.0), mm(50.0));
        let ([with_inside, with_handle, with_whole], grows) = mug(Own { extra: handle, ..Own::default() });
        assert_eq!((with_inside, grows), (inside, false));
        assert_relative_eq!(with_handle, outside + 60.0, max_relative = 1e-12);
        assert_relative_eq!(with_whole, whole + 60.0, max_relative = 1e-12);
        // This mug is 77 mm wide at its straight wall, as its class is drawn for 350 ml: each millimetre of wax leaves a band bare.
        let radius = ShapeClass::CylinderMug.usual(Some(ml(350.0))).unwrap().profile.points[3].radius.value();
        let [(_, low), (_, high)] = [20.0, 30.0].map(|foot| {
            let ([inside_then, outside, _], _) = mug(Own { bare_foot: Some(mm(foot)), ..Own::default() });
            (inside_then, outside)
        });
        assert_relative_eq!(low - high, std::f64::consts::TAU * radius * 10.0 / 100.0, max_relative = 0.05);
        assert!(high < outside);
        // Where the liner runs over the lip, the lip and the band belong to both coats, and to one dip once.
        let ([liner, outside_then, dip], _) = mug(Own { overlap: Some(mm(10.0)), ..Own::default() });
        assert!(liner > inside + 20.0, "{liner} {inside}");
        assert_relative_eq!(outside_then, outside, max_relative = 1e-9);
        assert_relative_eq!(dip, whole, max_relative = 0.03);
        let foot = Known { capacity: Some(ml(350.0)), ..Known::default() };
        let foot = Known { own: Own { bare_foot: Some(mm(900.0)), ..Own::default() }, ..foot };
        assert!(Form::new(ShapeClass::CylinderMug, &foot).is_err());
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
