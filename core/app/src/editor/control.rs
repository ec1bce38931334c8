//! The editor of an amount known to be right: the potter's memory of a good pot, before any was weighed here.

use uuid::Uuid;

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, coded_item, item, mass_text};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::Result;
use crate::archive::{Archivable, in_use};
use crate::evidence::{code, powder_density, uncertainty_e5};
use crate::form_geometry::shape;
use crate::in_words::{StyleWords, thin_glaze};
use crate::messages::{editor as shared, editor_control as say};
use laydown_domain::coat::{MOST_LAYDOWN, Solids};
use laydown_domain::form::ZoneKind;
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::units::{Laydown, SpecificGravity, parse};
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
    let shape = shape(context.conn, &form)?;
    let zones: Vec<ZoneKind> = shape.zones.iter().map(|zone| zone.kind).collect();
    let zone = builder.choice(
        Ask::new("zone", say::zone()),
        saved.map(|known| known.zone.as_str()),
        FieldKind::Choice,
        zones.into_iter().map(|zone| coded_item(zone, "")).collect(),
    );
    let net = builder.quantity(
        Ask::new("net", say::net()).hint(style.mass.symbol()).help(say::net_help()),
        saved.map(|known| mass_text(style, known.net_mg)),
        parse::mass,
    );
    let sg = builder.quantity(
        Ask::new("specific_gravity", shared::dipped_at()).hint(style.number(EXAMPLE_SG, 2)),
        saved
            .map(|known| SpecificGravity::from_hundred_thousandths(known.specific_gravity_e5))
            .and_then(|sg| sg.ok())
            .map(|sg| style.specific_gravity(sg)),
        parse::specific_gravity,
    );
    let (Some(zone), Some(net), Some(sg)) = (zone, net, sg) else { return Ok(None) };
    let Some(area) = shape.zone(code(&zone)?).map(|zone| zone.area) else { return Ok(None) };
    let solids = match Solids::of(SgReading::checked(sg), powder_density(&glaze)) {
        Ok(solids) => solids,
        Err(error) => {
            builder.field_error("specific_gravity", error);
            return Ok(None);
        }
    };
    let laydown = Laydown::of(solids.dry(net), area);
    if !net.is_positive() {
        builder.field_error("net", say::weighs_nothing());
        return Ok(None);
    }
    builder.result_if(thin_glaze(sg, style).map(Note::attention));
    if laydown > MOST_LAYDOWN {
        builder.field_error("net", say::too_much());
        return Ok(None);
    }
    builder.result(Note::plain(shared::laydown_is(style.laydown_with_unit(laydown))));
    let (form_id, glaze_id, powder_density_e3) = (form.id, glaze.id, glaze.powder_density_e3);
    let at = saved.map_or(context.now.unix_ms, |known| known.at);
    let known = move |id| entity::Control {
        id,
        form: form_id,
        glaze: glaze_id,
        zone,
        net_mg: net.milligrams(),
        specific_gravity_e5: sg.hundred_thousandths(),
        sg_uncertainty_e5: uncertainty_e5(SgReading::checked(sg)),
        powder_density_e3,
        area_mm2: area.square_millimetres(),
        at,
        gone: false,
    };
    Ok(Some(PendingWrite::one(context.id, say::in_use(), known)))
}

/// A choice among the things of one kind that are in use; says what to do when there is none.
pub(super) fn choose<E: Archivable>(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    ask: Ask,
    saved: Option<Uuid>,
) -> Result<Option<E>> {
    let key = ask.key;
    let mut things: Vec<E> = in_use(context.conn, saved)?;
    let items = things.iter().map(|thing| item(&thing.id().to_string(), &thing.called(), "")).collect();
    let Some(chosen) = builder.choice(ask, saved.map(|id| id.to_string()).as_deref(), FieldKind::Choice, items) else {
        builder.field_error(key, shared::add_first(E::KIND.name()));
        return Ok(None);
    };
    let place = things.iter().position(|thing| thing.id().to_string() == chosen);
    Ok(place.map(|place| things.swap_remove(place)))
}
