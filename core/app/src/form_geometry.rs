//! From a form's row to its geometry: the profile at the size that was measured, and the form at the size of its bisque,
//! onto which glaze is weighed.

use rusqlite::Connection;

use super::evidence::code;
use super::in_words::Sentence;
use super::messages::form_geometry as say;
use super::{Result, StudioError};
use laydown_domain::form::{
    FootRing, Form, FormError, GlazeLines, Known, Measured, OneMeasure, Own, Part, Profile, ProfilePoint, Shrinkage,
    Stage, WeightCheck, ZoneKind, tube, weight_check,
};
use laydown_domain::units::{Grams, Millilitres, Millimetres, SquareCentimetres, Style};
use laydown_store::entity::{self, Entity, Points};

/// Usual bulk density of bisque, g/ml. From memory: stoneware bodies fired to about 1000 °C.
pub(super) const USUAL_BISQUE_DENSITY: f64 = 1.85;

/// From this share of the inside on, a floor is said to pool. Common practice, no source.
const WIDE_FLOOR: f64 = 0.35;

/// The form at the size of its bisque.
pub(super) fn shape(conn: &Connection, form: &entity::Form) -> Result<Form> {
    try_shape(conn, form)?.map_err(|error| StudioError::refused("form", error.sentence()))
}

/// The same, for who can say beside which field the measures do not fit.
pub(super) fn try_shape(conn: &Connection, form: &entity::Form) -> Result<Result<Form, FormError>> {
    let area = |mm2: Option<i64>| mm2.map(SquareCentimetres::from_square_millimetres);
    let measured = match measured(form)? {
        Some(measured) => Some(measured.scaled(to_bisque(conn, form)?)),
        None => None,
    };
    let length = |um: Option<i64>| um.map(Millimetres::from_micrometres);
    let known = Known {
        own: Own {
            bare_foot: length(form.bare_foot_um),
            overlap: length(form.overlap_um),
            extra: handle(form) + area(form.extra_area_mm2).unwrap_or_default(),
        },
        capacity: form.capacity_ul.map(Millilitres::from_microlitres),
        one: one_measure(form),
        inside: area(form.inside_area_mm2),
        outside: area(form.outside_area_mm2),
        measured,
    };
    Ok(Form::new(code(&form.class)?, &known))
}

/// The one measure that a form is known by.
fn one_measure(form: &entity::Form) -> Option<OneMeasure> {
    let width = form.width_um.map(|um| OneMeasure::Width(Millimetres::from_micrometres(um)));
    let height = form.height_um.map(|um| OneMeasure::Height(Millimetres::from_micrometres(um)));
    let clay = form.clay_mg.map(|mg| OneMeasure::Clay(Grams::from_milligrams(mg)));
    width.or(height).or(clay)
}

/// The profile and what belongs to it at the size that was measured; `None` for a form known otherwise.
pub(super) fn measured(form: &entity::Form) -> Result<Option<Measured>> {
    let Some(points) = &form.profile else { return Ok(None) };
    let length = |um: Option<i64>| Millimetres::from_micrometres(um.unwrap_or_default());
    let foot = form.foot_width_um.zip(form.foot_height_um);
    let extra = SquareCentimetres::from_square_millimetres(form.extra_area_mm2.unwrap_or_default());
    Ok(Some(Measured {
        profile: Profile {
            points: profile_points(points)?,
            wall: length(form.wall_um),
            floor: length(form.floor_um),
            foot: foot.map(|(width, height)| FootRing { width: length(Some(width)), height: length(Some(height)) }),
        },
        lines: GlazeLines { bare_foot: length(form.bare_foot_um), overlap: length(form.overlap_um) },
        extra: handle(form) + extra,
        fill: form.fill_um.map(Millimetres::from_micrometres),
        traced: form.traced_e4.map(|e4| e4 as f64 / 1e4),
    }))
}

/// The surface of a form's handle; nothing where it has none.
pub(super) fn handle(form: &entity::Form) -> SquareCentimetres {
    let length = |um: Option<i64>| Millimetres::from_micrometres(um.unwrap_or_default());
    tube(length(form.handle_length_um), length(form.handle_girth_um))
}

/// The points as they are stored.
pub(super) fn profile_points(points: &Points) -> Result<Vec<ProfilePoint>> {
    let point = |numbers: &Vec<i64>| {
        let length = |um: &i64| Millimetres::from_micrometres(*um);
        match numbers.as_slice() {
            [height, radius] => Some(ProfilePoint { height: length(height), radius: length(radius), wall: None }),
            [height, radius, wall] => {
                Some(ProfilePoint { height: length(height), radius: length(radius), wall: Some(length(wall)) })
            }
            _ => None,
        }
    };
    let whole: Option<Vec<ProfilePoint>> = points.0.iter().map(point).collect();
    whole.ok_or_else(|| StudioError::Newer { sentence: say::newer_profile() })
}

/// How much larger the form was as bisque than at the stage it was measured.
fn to_bisque(conn: &Connection, form: &entity::Form) -> Result<f64> {
    let stage = form.stage.as_deref().map_or(Ok(Stage::Bisque), code::<Stage>)?;
    let body = form.body.map(|id| entity::Body::load(conn, id)).transpose()?.flatten();
    let Some(body) = body else { return Ok(1.0) };
    let fraction = |e4: i64| e4 as f64 / 1e4;
    let shrinkage = Shrinkage::new(fraction(body.to_bisque_e4), fraction(body.to_fired_e4))
        .map_err(|error| StudioError::refused("body", error.sentence()))?;
    Ok(shrinkage.factor(stage, Stage::Bisque))
}

/// What a weighed bisque piece says against the profile; `None` where they agree, or one of them is not known.
pub(super) fn bisque_check(conn: &Connection, form: &entity::Form) -> Result<Option<String>> {
    let (Some(measured), Some(mg)) = (measured(form)?, form.bisque_mg) else { return Ok(None) };
    let body = form.body.map(|id| entity::Body::load(conn, id)).transpose()?.flatten();
    let density =
        body.and_then(|body| body.bisque_density_mg_ml).map_or(USUAL_BISQUE_DENSITY, |mg_ml| mg_ml as f64 / 1e3);
    let profile = measured.profile.scaled(to_bisque(conn, form)?);
    let Ok(check) = weight_check(&profile, Grams::from_milligrams(mg), density) else { return Ok(None) };
    Ok(in_words(&check))
}

fn in_words(check: &WeightCheck) -> Option<String> {
    if check.agrees() {
        return None;
    }
    let weight = if check.ratio > 1.0 { "heavier" } else { "lighter" };
    let percent = format!("{:.0}", 100.0 * (check.ratio - 1.0).abs());
    Some(match check.suspect {
        Some(point) => say::weight_off_at_point(weight, percent, point + 1),
        None => say::weight_off(weight, percent),
    })
}

/// Where two glazes lie on each other, and where glaze gathers: said beside the form and beside the weighing.
pub(super) fn zone_cautions(shape: &Form, form: &entity::Form, zone: ZoneKind, style: &Style) -> Vec<String> {
    let mut cautions = Vec::new();
    if let Some(um) = form.overlap_um.filter(|um| *um > 0) {
        cautions.push(say::overlap(style.length(Millimetres::from_micrometres(um))));
    }
    let floor = shape.part(Part::InsideFloor).map_or(0.0, |floor| floor.area.value());
    let inside = floor + shape.part(Part::InsideWall).map_or(0.0, |wall| wall.area.value());
    if zone != ZoneKind::Outside && inside > 0.0 && floor / inside > WIDE_FLOOR {
        cautions.push(say::wide_floor());
    }
    cautions
}
