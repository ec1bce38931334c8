//! The sheet of an amount known to be right: the potter's memory of a good pot, before any was weighed here.

use uuid::Uuid;

use super::draft::{Ask, Draft, item};
use super::{Desk, FieldKind, Keeping, Note};
use crate::form::{Form, ZoneKind};
use crate::glaze::{SgReading, solids_fraction};
use crate::store::entity;
use crate::studio::facts::{code, parse_id, shape};
use crate::studio::{Result, StudioError};
use crate::units::{Grams, Laydown, PowderDensity, SpecificGravity, parse};

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let current: Option<entity::Control> = desk.current()?;
    let kept = current.as_ref();
    let style = draft.style;
    draft.title = kept.map_or("An amount known to be right", |_| "Control piece").to_owned();
    draft.remove_label = "Put this control piece away";

    let Some((glaze_id, glaze)) = glaze_choice(desk, draft, kept.map(|known| known.glaze))? else { return Ok(None) };
    let Some((form_id, form)) = form_choice(desk, draft, kept.map(|known| known.form))? else { return Ok(None) };
    let zones: Vec<ZoneKind> = form.zones.iter().map(|zone| zone.kind).collect();
    let zone = draft.choice(
        Ask::new("zone", "Where"),
        kept.map(|known| known.zone.as_str()),
        FieldKind::Choice,
        zones.iter().map(|zone| item(zone.code(), zone.name(), "")).collect(),
    );
    let net = draft.quantity(
        Ask::new("net", "Wet weight of a good coat").hint(style.mass.symbol()).help("What the scale gained, read at once."),
        kept.map(|known| style.mass_text(Grams::from_milligrams(known.net_mg))),
        parse::mass,
    );
    let sg = draft.quantity(
        Ask::new("specific_gravity", "SG it was dipped at").hint("1.45"),
        kept.map(|known| SpecificGravity::from_hundred_thousandths(known.specific_gravity_e5)).transpose()?.map(|sg| style.specific_gravity(sg)),
        parse::specific_gravity,
    );
    let (Some(zone), Some(net), Some(sg)) = (zone, net, sg) else { return Ok(None) };
    let Some(area) = form.zone(code(&zone)?).map(|zone| zone.area) else { return Ok(None) };
    let density = PowderDensity::from_thousandths(glaze.powder_density_e3)?;
    let laydown = Laydown::of(net * solids_fraction(sg, density).value(), area);
    if let Err(error) = laydown.plausible() {
        draft.refuse("net", error);
        return Ok(None);
    }
    draft.result(Note::plain(format!("Laydown {}.", style.laydown(laydown))));
    let known = move |id| entity::Control {
        id,
        form: form_id,
        glaze: glaze_id,
        zone,
        net_mg: net.milligrams(),
        specific_gravity_e5: sg.hundred_thousandths(),
        sg_uncertainty_e5: SgReading::checked(sg).uncertainty_hundred_thousandths(),
        powder_density_e3: glaze.powder_density_e3,
        area_mm2: area.square_millimetres(),
        at: kept.map_or(desk.now.unix_ms, |known| known.at),
        gone: false,
    };
    Ok(Some(Keeping::one(desk.id, "Kept: targets rest on it now.".to_owned(), known)))
}

/// A choice among the studio's glazes; says what to do when there is none.
pub(super) fn glaze_choice(desk: &Desk<'_>, draft: &mut Draft<'_>, kept: Option<Uuid>) -> Result<Option<(Uuid, entity::Glaze)>> {
    let glazes: Vec<_> = entity::Glaze::all(desk.conn)?.into_iter().filter(|(id, glaze)| !glaze.gone || kept == Some(*id)).collect();
    let items = glazes.iter().map(|(id, glaze)| item(&id.to_string(), &glaze.name, "")).collect();
    match draft.choice(Ask::new("glaze", "Glaze"), kept.map(|id| id.to_string()).as_deref(), FieldKind::Choice, items) {
        None => {
            draft.refuse("glaze", "Add a glaze first.");
            Ok(None)
        }
        Some(chosen) => {
            let id = parse_id(&chosen, "glaze")?;
            let glaze = entity::Glaze::load(desk.conn, id)?.ok_or_else(|| StudioError::missing("glaze"))?;
            Ok(Some((id, glaze)))
        }
    }
}

fn form_choice(desk: &Desk<'_>, draft: &mut Draft<'_>, kept: Option<Uuid>) -> Result<Option<(Uuid, Form)>> {
    let forms: Vec<_> = entity::Form::all(desk.conn)?.into_iter().filter(|(id, form)| !form.gone || kept == Some(*id)).collect();
    let items = forms.iter().map(|(id, form)| item(&id.to_string(), &form.name, "")).collect();
    match draft.choice(Ask::new("form", "Form"), kept.map(|id| id.to_string()).as_deref(), FieldKind::Choice, items) {
        None => {
            draft.refuse("form", "Add a form first.");
            Ok(None)
        }
        Some(chosen) => {
            let id = parse_id(&chosen, "form")?;
            let form = entity::Form::load(desk.conn, id)?.ok_or_else(|| StudioError::missing("form"))?;
            Ok(Some((id, shape(&form)?)))
        }
    }
}
