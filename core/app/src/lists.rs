//! The things of the studio as rows of a list, to choose from or to look through.

use rusqlite::Connection;

use super::archive::{found, in_use};
use super::evidence::{latest_sg, usable};
use super::form_geometry::shape;
use super::in_words::Named;
use super::messages::lists as say;
use super::{Now, Point, Result, Row};
use laydown_domain::form::{Form, ZoneKind};
use laydown_domain::units::{Grams, Style};
use laydown_store::entity;

pub(super) fn forms(conn: &Connection, style: &Style, chosen: &str) -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    for form in in_use::<entity::Form>(conn, chosen.parse().ok())? {
        let id = form.id.to_string();
        let shape = usable(shape(conn, &form))?;
        rows.push(Row {
            chosen: id == chosen,
            id,
            detail: shape.as_ref().map_or_else(say::size_impossible, |shape| form_detail(shape, style)),
            title: form.name,
            outline: shape.as_ref().map(outline).unwrap_or_default(),
        });
    }
    Ok(by_name(rows))
}

pub(super) fn buckets(conn: &Connection, now: Now, style: &Style, chosen: &str) -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    for bucket in in_use::<entity::Bucket>(conn, chosen.parse().ok())? {
        let glaze: entity::Glaze = found(conn, bucket.glaze)?;
        let (sg, checked_at) = latest_sg(conn, bucket.id)?;
        let detail = match checked_at {
            Some(at) => say::bucket_checked(&bucket.name, style.specific_gravity(sg.sg), now.days_ago(at)),
            None => say::bucket_not_checked(&bucket.name),
        };
        let id = bucket.id.to_string();
        rows.push(Row { chosen: id == chosen, id, title: glaze.name, detail, outline: Vec::new() });
    }
    Ok(by_name(rows))
}

pub(super) fn scales(conn: &Connection, style: &Style, chosen: &str) -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    for scale in in_use::<entity::Scale>(conn, chosen.parse().ok())? {
        let id = scale.id.to_string();
        let detail = scale_detail(&scale, style);
        rows.push(Row { chosen: id == chosen, id, detail, title: scale.name, outline: Vec::new() });
    }
    Ok(by_name(rows))
}

/// What a list row says of a form.
pub(super) fn form_detail(shape: &Form, style: &Style) -> String {
    let mut parts = vec![shape.class.name()];
    parts.extend(shape.capacity.map(|capacity| style.volume(capacity)));
    if let Some(inside) = shape.zone(ZoneKind::Inside) {
        parts.push(say::inside_area(style.area(inside.area)));
    }
    parts.join(", ")
}

/// "5", "5 and 6", "5, 6 and 7".
pub(super) fn and(items: &[impl AsRef<str>]) -> String {
    match items {
        [] => String::new(),
        [one] => one.as_ref().to_owned(),
        [before @ .., last] => {
            let before: Vec<&str> = before.iter().map(AsRef::as_ref).collect();
            say::and(before.join(", "), last.as_ref())
        }
    }
}

/// A form's outline for a list.
pub(super) fn outline(shape: &Form) -> Vec<Point> {
    points(shape.outline())
}

/// An outline of radii and heights as a shell draws it.
pub(super) fn points(outline: Vec<(f64, f64)>) -> Vec<Point> {
    outline.into_iter().map(|(radius, height)| Point { radius, height }).collect()
}

/// Lists are in the order of their words, where a potter looks for them.
pub(super) fn by_name(mut rows: Vec<Row>) -> Vec<Row> {
    rows.sort_by(|a, b| (&a.title, &a.detail).cmp(&(&b.title, &b.detail)));
    rows
}

/// What a list row says of a scale.
pub(super) fn scale_detail(scale: &entity::Scale, style: &Style) -> String {
    let step = Grams::from_milligrams(scale.step_mg);
    // Nobody says "2000.0 g": the capacity is shown to a whole gram, unless the step is coarser.
    let capacity = style.mass(Grams::from_milligrams(scale.capacity_mg), step.max(Grams::new(1.0)));
    say::scale(capacity, style.mass(step, step))
}
