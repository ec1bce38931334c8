//! The sheet of a form: by shape and capacity, or by areas measured otherwise.

use super::draft::{Ask, Draft, area_text, coded_item, item, volume_text};
use super::{Desk, FieldKind, Item, Keeping, Note, Point};
use crate::form::{Form, FormError, ShapeClass, ZoneKind};
use crate::store::entity;
use crate::studio::Result;
use crate::studio::facts::code;
use crate::studio::words::sentence_case;
use crate::units::{Millilitres, SquareCentimetres, parse};

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let current: Option<entity::Form> = desk.current()?;
    let kept = current.as_ref();
    let style = draft.style;
    draft.title = kept.map_or("New form", |_| "Form").to_owned();
    draft.remove_label = "Put this form away";

    let name = draft.text(Ask::new("name", "Name").hint("Breakfast mug"), kept.map(|form| form.name.as_str()));
    let shapes = ShapeClass::ALL.iter().map(|class| shape_item(*class)).collect();
    let class = draft.choice(
        Ask::new("class", "Shape").help("The outline nearest to yours: the area is reckoned from it."),
        kept.map(|form| form.class.as_str()),
        FieldKind::Outline,
        shapes,
    );
    let by_area = kept.is_some_and(|form| form.inside_area_mm2.is_some() || form.outside_area_mm2.is_some());
    let way = draft.choice(
        Ask::new("way", "Known by"),
        Some(if by_area { "area" } else { "capacity" }),
        FieldKind::Choice,
        vec![
            item("capacity", "Capacity", "Fill the bisque piece to the rim and weigh or measure the water."),
            item("area", "Areas", "If you have measured or reckoned the glazed areas yourself."),
        ],
    );
    let capacity_kept = kept.and_then(|form| form.capacity_ul).map(|ul| volume_text(style, ul));

    let (capacity, inside, outside) = if way.as_deref() == Some("area") {
        let ask = |key, label| Ask::new(key, label).hint(style.area.symbol());
        let inside = draft.optional(
            ask("inside_area", "Area inside"),
            kept.and_then(|form| form.inside_area_mm2).map(|mm2| area_text(style, mm2)),
            parse::area,
        );
        let outside = draft.optional(
            ask("outside_area", "Area outside, as far as it is glazed"),
            kept.and_then(|form| form.outside_area_mm2).map(|mm2| area_text(style, mm2)),
            parse::area,
        );
        let capacity = draft.optional(
            Ask::new("capacity", "Capacity, if known").hint(style.volume.symbol()),
            capacity_kept,
            parse::volume,
        );
        (capacity, inside, outside)
    } else {
        let ask = Ask::new("capacity", "Capacity to the rim")
            .hint(style.volume.symbol())
            .help("Of the bisque piece, not of the fired one.");
        (draft.quantity(ask, capacity_kept, parse::volume).map(Some), Some(None), Some(None))
    };

    let (Some(class), Some(capacity), Some(inside), Some(outside)) = (class, capacity, inside, outside) else {
        return Ok(None);
    };
    let shape_class = code(&class)?;
    let shape = match Form::new(shape_class, capacity, inside, outside) {
        Ok(shape) => shape,
        Err(error) => {
            draft.refuse(field_of(&error, way.as_deref() == Some("area")), error);
            return Ok(None);
        }
    };
    for zone in &shape.zones {
        if zone.kind != ZoneKind::Whole || shape.zones.len() == 1 {
            draft.result(Note::plain(format!("{}: {}", sentence_case(zone.kind.name()), style.area(zone.area))));
        }
    }
    let Some(name) = name else { return Ok(None) };
    let sentence = format!("{name} is kept.");
    let form = move |id| entity::Form {
        id,
        name,
        class,
        capacity_ul: capacity.map(Millilitres::microlitres),
        inside_area_mm2: inside.map(SquareCentimetres::square_millimetres),
        outside_area_mm2: outside.map(SquareCentimetres::square_millimetres),
        gone: false,
    };
    Ok(Some(Keeping::one(desk.id, sentence, form)))
}

/// The field to go back to.
fn field_of(error: &FormError, by_area: bool) -> &'static str {
    match error {
        FormError::Capacity { .. } => "capacity",
        FormError::Area { .. } => "inside_area",
        _ if by_area => "inside_area",
        _ => "capacity",
    }
}

fn shape_item(class: ShapeClass) -> Item {
    Item {
        outline: class.outline().into_iter().map(|(radius, height)| Point { radius, height }).collect(),
        ..coded_item(&class, "")
    }
}
