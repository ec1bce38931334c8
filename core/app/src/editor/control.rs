//! The editor of an amount known to be right: the potter's memory of a good pot, before any was weighed here.

use std::collections::BTreeSet;

use uuid::Uuid;

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, coded_item, item};
use super::notation::{MASS, SG};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::archive::{Archivable, in_use};
use crate::evidence::{parse_id, uncertainty_e5};
use crate::form_geometry::shape;
use crate::in_words::{StyleWords, thin_glaze};
use crate::messages::{editor as shared, editor_control as say};
use crate::{Result, StudioError};
use laydown_domain::coat::{MOST_LAYDOWN, Solids};
use laydown_domain::form::ZoneKind;
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::units::{Laydown, PowderDensity, SquareCentimetres};
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Control> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::archive();

    let Some(glaze) =
        choose::<entity::Glaze>(context, builder, Ask::new("glaze", shared::glaze()), saved.map(|known| known.glaze))?
    else {
        return Ok(None);
    };
    let Some(form) =
        choose::<entity::Form>(context, builder, Ask::new("form", shared::form()), saved.map(|known| known.form))?
    else {
        return Ok(None);
    };
    let shape = match form.thing.as_ref().map(|form| shape(context.conn, form)).transpose() {
        Err(StudioError::Refused { sentence, .. } | StudioError::Newer { sentence }) => {
            builder.result(Note::attention(sentence));
            None
        }
        shape => shape?,
    };
    let zones = shape.iter().flat_map(|shape| &shape.zones).map(|zone| zone.kind);
    let zones: BTreeSet<ZoneKind> = zones.collect();
    // Another form may not have the zone; the same one had it when this was written down.
    let saved_zone = saved.map(|known| (known.form == form.id, known.zone.as_str()));
    let saved_zone = saved_zone
        .filter(|(same_form, zone)| *same_form || zones.iter().any(|kind| kind.code() == *zone))
        .map(|(_, zone)| zone);
    let zones = zones.into_iter().chain(saved_zone.and_then(|zone| zone.parse().ok())).collect::<BTreeSet<ZoneKind>>();
    let zone = builder.choice(
        Ask::new("zone", say::zone()),
        saved_zone,
        FieldKind::Choice,
        zones.into_iter().map(|zone| coded_item(zone, "")).collect(),
    );
    let net = builder.quantity(
        Ask::new("net", say::net()).hint(style.mass.symbol()).help(say::net_help()),
        saved.map(|known| known.net_mg),
        MASS,
    );
    let sg = builder.quantity(
        Ask::new("specific_gravity", shared::dipped_at()).hint(style.number(EXAMPLE_SG, 2)),
        saved.map(|known| known.specific_gravity_e5),
        SG,
    );
    let (Some(zone), Some(net), Some(sg)) = (zone, net, sg) else { return Ok(None) };
    // What it was right for stays as it was then, until another zone, glaze or SG is chosen.
    let there = saved.filter(|known| known.form == form.id && known.zone == zone);
    let of_glaze = saved.filter(|known| known.glaze == glaze.id);
    let at_sg = saved.filter(|known| known.specific_gravity_e5 == sg.hundred_thousandths());
    let zone_area = || Some(shape.as_ref()?.zone(zone.parse().ok()?)?.area.square_millimetres());
    let area_mm2 = there.map(|known| known.area_mm2).or_else(zone_area);
    let powder_density_e3 = of_glaze
        .map(|known| known.powder_density_e3)
        .or_else(|| glaze.thing.as_ref().map(|glaze| glaze.powder_density_e3));
    let sg_uncertainty_e5 =
        at_sg.map_or_else(|| uncertainty_e5(SgReading::checked(sg)), |known| known.sg_uncertainty_e5);
    let (Some(area_mm2), Some(powder_density_e3)) = (area_mm2, powder_density_e3) else { return Ok(None) };
    let powder_density = PowderDensity::from_thousandths(powder_density_e3).unwrap_or_default();
    let solids = match Solids::of(SgReading::checked(sg), powder_density) {
        Ok(solids) => solids,
        Err(error) => {
            builder.field_error("specific_gravity", error);
            return Ok(None);
        }
    };
    if !net.is_positive() {
        builder.field_error("net", say::weighs_nothing());
        return Ok(None);
    }
    let laydown = Laydown::of(solids.dry(net), SquareCentimetres::from_square_millimetres(area_mm2));
    builder.result_if(thin_glaze(sg, style).map(Note::attention));
    if laydown > MOST_LAYDOWN {
        builder.field_error("net", say::too_much());
        return Ok(None);
    }
    builder.result(Note::plain(shared::laydown_is(style.laydown_with_unit(laydown))));
    let (form, glaze, begun) = (form.id, glaze.id, entity::Control { at: context.now.unix_ms, ..Default::default() });
    let control = move |id| entity::Control {
        id,
        form,
        glaze,
        zone,
        net_mg: net.milligrams(),
        specific_gravity_e5: sg.hundred_thousandths(),
        sg_uncertainty_e5,
        powder_density_e3,
        area_mm2,
        ..current.unwrap_or(begun)
    };
    Ok(Some(PendingWrite::one(context, say::in_use(), control)))
}

/// What was chosen among the things of one kind.
pub(super) struct Chosen<E> {
    /// Its id.
    pub(super) id: Uuid,
    /// The thing itself; `None` where it is not on this phone: it was chosen on another, and stays chosen.
    pub(super) thing: Option<E>,
}

/// A choice among the things of one kind that are in use; says what to do when there is none.
pub(super) fn choose<E: Archivable>(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    ask: Ask,
    saved: Option<Uuid>,
) -> Result<Option<Chosen<E>>> {
    let key = ask.key.clone();
    let things: Vec<E> = in_use(context.conn, saved)?;
    let items = things.iter().map(|thing| item(&thing.id().to_string(), thing.called(), "")).collect();
    let saved = saved.map(|id| id.to_string());
    let chosen = builder.choice_or(ask, saved.as_deref(), FieldKind::Choice, items, shared::not_on_this_phone());
    let Some(chosen) = chosen else {
        builder.field_error(&key, shared::add_first(E::KIND.name()));
        return Ok(None);
    };
    let id = parse_id(&chosen, E::WHAT)?;
    Ok(Some(Chosen { id, thing: things.into_iter().find(|thing| thing.id() == id) }))
}
