//! What sizes take in which a glaze was not fired yet, by everything known of it: one fit for each class of shape and zone.

use std::collections::{BTreeMap, BTreeSet};

use rusqlite::Connection;
use uuid::Uuid;

use super::day_of_week;
use super::evidence::{Known, known};
use crate::archive::in_use;
use crate::evidence::usable;
use crate::form_geometry::shape;
use crate::{Now, Result};
use laydown_domain::coat::Solids;
use laydown_domain::form::{AREA_FROM_CAPACITY, Form, ShapeClass, Zone, ZoneKind};
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::observation::ENOUGH;
use laydown_domain::learning::pooled::{Aim, Assumptions, Fitted, Outlook, Place, proportions};
use laydown_domain::learning::size::Sizes;
use laydown_domain::units::{Grams, Laydown, Millilitres};
use laydown_store::entity;

/// The most classes and zones that are fitted, and the most new sizes of each: a page waits for them.
const MOST_SHAPES: usize = 3;
const MOST_NEW: usize = 4;

/// A class of shape in one zone on which pots of a glaze were fired.
pub(crate) struct ShapeSizes {
    pub(crate) sizes: Sizes,
    pub(crate) outlook: Outlook,
    pub(crate) pots: Vec<PotOfSize>,
    pub(crate) new: Vec<NewSize>,
}

/// A judged pot by what it holds.
pub(crate) struct PotOfSize {
    pub(crate) capacity: Millilitres,
    pub(crate) thickness: Thickness,
    /// Its coat, had it been put on today.
    pub(crate) wet: Grams,
}

/// A form of the class on which the glaze was not fired yet.
pub(crate) struct NewSize {
    pub(crate) name: String,
    pub(crate) capacity: Millilitres,
    /// The same as on Weigh.
    pub(crate) aim: Aim,
}

/// A form in use with its geometry.
struct Shaped {
    row: entity::Form,
    form: Form,
}

impl Shaped {
    fn place(&self, zone: &Zone) -> Place {
        Place {
            form: self.row.id,
            zone: zone.kind,
            class: self.form.class,
            area_relative_uncertainty: zone.relative_uncertainty,
            body: self.row.body,
            cone: None,
        }
    }
}

/// The shapes of a glaze, those with the most pots first; none while too few pots were judged. `solids`: its bucket today.
pub(crate) fn shapes(conn: &Connection, now: Now, known: &Known, solids: &Solids) -> Result<Vec<ShapeSizes>> {
    if known.evidence.pots.len() < ENOUGH {
        return Ok(Vec::new());
    }
    let mut forms = BTreeMap::new();
    for row in in_use::<entity::Form>(conn, None)? {
        if let Some(form) = usable(shape(conn, &row))? {
            forms.insert(row.id, Shaped { row, form });
        }
    }
    let mut counts: BTreeMap<(ShapeClass, ZoneKind), usize> = BTreeMap::new();
    for pot in known.evidence.pots.iter().filter(|pot| forms.contains_key(&pot.place.form)) {
        *counts.entry((pot.place.class, pot.place.zone)).or_default() += 1;
    }
    let mut most: Vec<_> = counts.into_iter().collect();
    most.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
    let shapes = most.into_iter().take(MOST_SHAPES);
    Ok(shapes.filter_map(|((class, zone), _)| sizes_of(class, zone, now, known, solids, &forms)).collect())
}

/// How thick the glaze is right where most of its pots were judged, on no form in particular; `None` while they are too few.
pub(crate) fn laydown(conn: &Connection, now: Now, glaze: &entity::Glaze) -> Result<Option<Laydown>> {
    let known = known(conn, glaze)?;
    if known.evidence.pots.len() < ENOUGH {
        return Ok(None);
    }
    let mut counts: BTreeMap<(ShapeClass, ZoneKind), (usize, Place)> = BTreeMap::new();
    for pot in &known.evidence.pots {
        counts.entry((pot.place.class, pot.place.zone)).or_insert((0, pot.place)).0 += 1;
    }
    let Some((_, place)) = counts.into_values().max_by_key(|(count, _)| *count) else { return Ok(None) };
    let any = Place { form: Uuid::nil(), cone: None, ..place };
    let fitted = Fitted::new(&known.evidence, &any, day_of_week(now), &Assumptions::default(), None);
    Ok(fitted.map(|fitted| Laydown::new(fitted.middle().0.exp())))
}

fn sizes_of(
    class: ShapeClass,
    zone: ZoneKind,
    now: Now,
    known: &Known,
    solids: &Solids,
    forms: &BTreeMap<Uuid, Shaped>,
) -> Option<ShapeSizes> {
    let of_class: Vec<(&Shaped, &Zone, Millilitres)> = forms
        .values()
        .filter(|shaped| shaped.form.class == class)
        .filter_map(|shaped| Some((shaped, shaped.form.zone(zone)?, shaped.form.capacity_to_grow_by()?)))
        .collect();
    // Measured areas say what the studio's own proportions are.
    let measured = of_class.iter().filter(|(_, zone, _)| zone.relative_uncertainty < AREA_FROM_CAPACITY);
    let by_class = measured
        .filter_map(|(_, zone, holds)| Some((zone.area, zone.relative_uncertainty, class.area(zone.kind, *holds)?.0)));
    let proportions = proportions(&by_class.collect::<Vec<_>>(), AREA_FROM_CAPACITY);
    let judged = || known.evidence.pots.iter().filter(|pot| pot.place.zone == zone);
    let glazed: BTreeSet<Uuid> = judged().map(|pot| pot.place.form).collect();
    let holds = |form: Uuid| of_class.iter().find(|(shaped, ..)| shaped.row.id == form);
    let pots: Vec<PotOfSize> = judged()
        .filter_map(|pot| {
            let (_, zone, capacity) = holds(pot.place.form)?;
            let wet = solids.wet(pot.laydown.dry_on(zone.area));
            Some(PotOfSize { capacity: *capacity, thickness: pot.thickness, wet })
        })
        .collect();
    let outlook = |place: &Place| {
        let fitted = Fitted::new(&known.evidence, place, day_of_week(now), &Assumptions::default(), None);
        fitted.map(|fitted| fitted.outlook())
    };
    // A size that is not there yet will be of the clay of the newest pots.
    let newest = judged().max_by(|one, other| one.day.total_cmp(&other.day)).filter(|pot| pot.place.class == class);
    let of_any = Place {
        form: Uuid::nil(),
        zone,
        class,
        area_relative_uncertainty: proportions.relative_uncertainty,
        body: newest.and_then(|pot| pot.place.body),
        cone: None,
    };
    let new = of_class.iter().filter(|(shaped, ..)| !glazed.contains(&shaped.row.id)).take(MOST_NEW);
    let new = new.filter_map(|(shaped, zone, capacity)| {
        let aim = outlook(&shaped.place(zone))?.aim(zone.area, solids)?;
        Some(NewSize { name: shaped.row.name.clone(), capacity: *capacity, aim })
    });
    let mut new: Vec<NewSize> = new.collect();
    new.sort_by(|one, other| one.capacity.value().total_cmp(&other.capacity.value()));
    let sizes =
        Sizes { class, zone, proportions, known: glazed.iter().filter_map(|form| Some(holds(*form)?.2)).collect() };
    let is_curve = !pots.is_empty() && class.area(zone, Millilitres::new(100.0)).is_some();
    is_curve.then(|| Some(ShapeSizes { outlook: outlook(&of_any)?, sizes, pots, new })).flatten()
}
