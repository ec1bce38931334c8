//! From the rows of the store to the quantities that the pure modules reckon with.

use rusqlite::Connection;
use uuid::Uuid;

use super::rows::{checks_of, control_coats, known_controls, tiles_of};
use super::{Result, StudioError};
use crate::coat::{Control, Scale, Sensitivity, Solids, TileEvidence, VerdictKind};
use crate::form::{Form, ShapeClass, ZoneKind};
use crate::glaze::SgReading;
use crate::store::{device, entity};
use crate::units::{
    AreaUnit, DecimalMark, Grams, Laydown, MassUnit, Millilitres, PowderDensity, SpecificGravity, SquareCentimetres,
    Style, VolumeUnit,
};

/// The most control pieces a target rests on: the newest ones, so that a target follows the studio's hand.
const MOST_CONTROLS: i64 = 24;
/// Relative standard uncertainty of an area that was typed in or reckoned, for a control piece of another form.
/// Common practice, no source.
const AREA_UNCERTAINTY: f64 = 0.03;
/// Relative standard uncertainty of a laydown taken from a test tile: edges and an open hand. Common practice, no source.
const TILE_UNCERTAINTY: f64 = 0.10;

/// An id as the shell hands it back.
pub(super) fn parse_id(text: &str, what: &str) -> Result<Uuid> {
    text.parse().map_err(|_| StudioError::missing(what))
}

/// Parses a code kept in a row; a code this version does not know came from a newer one.
pub(super) fn code<T: std::str::FromStr>(text: &str) -> Result<T> {
    text.parse().map_err(|_| StudioError::Newer {
        sentence: format!("A record here uses “{text}”, which this version does not know. Update Laydown on this phone."),
    })
}

/// This device's preferences, or the defaults.
pub(super) fn preference(conn: &Connection) -> Result<entity::Preference> {
    Ok(entity::Preference::load(conn, device(conn)?.into())?.unwrap_or_default())
}

/// The units and the decimal mark the potter wants to read.
pub(super) fn style(conn: &Connection) -> Result<Style> {
    let preference = preference(conn)?;
    Ok(Style {
        mass: code::<MassUnit>(&preference.mass)?,
        volume: code::<VolumeUnit>(&preference.volume)?,
        area: code::<AreaUnit>(&preference.area)?,
        decimal: code::<DecimalMark>(&preference.decimal)?,
    })
}

/// The form's class, capacity and zones.
pub(super) fn shape(form: &entity::Form) -> Result<Form> {
    let class: ShapeClass = code(&form.class)?;
    let area = |mm2: Option<i64>| mm2.map(SquareCentimetres::from_square_millimetres);
    let shape = match form.capacity_ul {
        Some(capacity) if form.inside_area_mm2.is_none() && form.outside_area_mm2.is_none() => {
            Form::by_capacity(class, Millilitres::from_microlitres(capacity))
        }
        capacity => Form::by_area(class, area(form.inside_area_mm2), area(form.outside_area_mm2))
            .map(|shape| Form { capacity: capacity.map(Millilitres::from_microlitres), ..shape }),
    };
    shape.map_err(|error| StudioError::refused("form", error))
}

/// The scale as the verdict needs it.
pub(super) fn scale_of(scale: &entity::Scale) -> Result<Scale> {
    Scale::new(
        Grams::from_milligrams(scale.capacity_mg),
        Grams::from_milligrams(scale.step_mg),
        scale.minimum_mg.map(Grams::from_milligrams),
        scale.repeatability_mg.map(Grams::from_milligrams),
    )
    .map_err(|error| StudioError::refused("scale", error))
}

/// The bucket's last SG and when it was read; an assumed one and `None` if it never was.
pub(super) fn latest_sg(conn: &Connection, bucket: Uuid) -> Result<(SgReading, Option<i64>)> {
    match checks_of(conn, bucket, 1)?.first() {
        None => Ok((SgReading::ASSUMED, None)),
        Some(check) => Ok((sg_reading(check.specific_gravity_e5, check.standard_uncertainty_e5)?, Some(check.at))),
    }
}

/// An SG and its uncertainty from their scaled integers.
pub(super) fn sg_reading(hundred_thousandths: i64, uncertainty: i64) -> Result<SgReading> {
    Ok(SgReading {
        sg: SpecificGravity::from_hundred_thousandths(hundred_thousandths)?,
        standard_uncertainty: uncertainty as f64 / 1e5,
    })
}

/// The glaze's sensitivity.
pub(super) fn sensitivity(glaze: &entity::Glaze) -> Result<Sensitivity> {
    code(&glaze.sensitivity)
}

/// The verdict kept with a coat.
pub(super) fn verdict_kind(coat: &entity::Coat) -> Result<VerdictKind> {
    code(&coat.verdict)
}

/// The control pieces of this glaze and zone, the newest first: coats weighed here and amounts typed in.
pub(super) fn controls(conn: &Connection, glaze: Uuid, zone: ZoneKind, form: Uuid) -> Result<Vec<Control>> {
    let mut dated = Vec::new();
    for coat in control_coats(conn, glaze, zone, MOST_CONTROLS)? {
        let standard_uncertainty = match entity::Scale::load(conn, coat.scale)? {
            Some(scale) => scale_of(&scale)?.net_standard_uncertainty(),
            None => Grams::new(0.0),
        };
        let weighed = Weighed {
            form: coat.form,
            net: coat.net_mg,
            area: coat.area_mm2,
            sg: sg_reading(coat.specific_gravity_e5, coat.sg_uncertainty_e5)?,
            powder_density: coat.powder_density_e3,
            standard_uncertainty,
        };
        dated.extend(weighed.control(conn, form)?.map(|control| (coat.at, control)));
    }
    for known in known_controls(conn, glaze, zone)? {
        let weighed = Weighed {
            form: known.form,
            net: known.net_mg,
            area: known.area_mm2,
            sg: sg_reading(known.specific_gravity_e5, known.sg_uncertainty_e5)?,
            powder_density: known.powder_density_e3,
            standard_uncertainty: Grams::new(0.0),
        };
        dated.extend(weighed.control(conn, form)?.map(|control| (known.at, control)));
    }
    dated.sort_by_key(|(at, _)| std::cmp::Reverse(*at));
    Ok(dated.into_iter().map(|(_, control)| control).collect())
}

/// What makes a piece a control piece, as it lies in a row.
struct Weighed {
    form: Uuid,
    net: i64,
    area: i64,
    sg: SgReading,
    powder_density: i64,
    standard_uncertainty: Grams,
}

impl Weighed {
    fn control(self, conn: &Connection, form: Uuid) -> Result<Option<Control>> {
        let Some(of) = entity::Form::load(conn, self.form)? else { return Ok(None) };
        Ok(Some(Control {
            wet: Grams::from_milligrams(self.net),
            solids: Solids::of(self.sg, PowderDensity::from_thousandths(self.powder_density)?),
            area: SquareCentimetres::from_square_millimetres(self.area),
            area_relative_uncertainty: AREA_UNCERTAINTY,
            class: code(&of.class)?,
            capacity: of.capacity.map(Millilitres::from_microlitres),
            form_name: of.name,
            same_form: self.form == form,
            standard_uncertainty: self.standard_uncertainty,
        }))
    }
}

/// The glaze's test tiles.
pub(super) fn tiles(conn: &Connection, glaze: Uuid, powder_density: PowderDensity) -> Result<Vec<TileEvidence>> {
    let mut evidence = Vec::new();
    for tile in tiles_of(conn, glaze)? {
        if let Some(laydown) = tile_laydown(&tile, powder_density)? {
            evidence.push(TileEvidence { laydown, relative_uncertainty: TILE_UNCERTAINTY });
        }
    }
    Ok(evidence)
}

/// A tile's laydown, from its dry weight if there is one, else from its wet weight and SG.
pub(super) fn tile_laydown(tile: &entity::Tile, powder_density: PowderDensity) -> Result<Option<Laydown>> {
    let area = SquareCentimetres::from_square_millimetres(tile.area_mm2);
    let laydown = match (tile.dry_mg, tile.net_mg, tile.specific_gravity_e5) {
        (Some(dry), ..) => crate::coat::tile::laydown_from_dry(area, Grams::from_milligrams(dry)),
        (None, Some(net), Some(sg)) => {
            let sg = SgReading { sg: SpecificGravity::from_hundred_thousandths(sg)?, ..SgReading::ASSUMED };
            crate::coat::tile::laydown_from_wet(area, Grams::from_milligrams(net), &Solids::of(sg, powder_density))
        }
        _ => return Ok(None),
    };
    laydown.map(Some).map_err(|error| StudioError::refused("tile", error))
}
