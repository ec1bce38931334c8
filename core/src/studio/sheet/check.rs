//! The sheet of a bucket's check: SG from any vessel, from a known volume, or as read off a hydrometer.

use uuid::Uuid;

use super::draft::{Ask, Draft, item};
use super::{Desk, FieldKind, Item, Keeping, Note};
use crate::glaze::{SgReading, SlurryError, sg_by_vessel, sg_by_volume, solids_fraction};
use crate::store::entity;
use crate::studio::Result;
use crate::studio::facts::latest_sg;
use crate::units::{Celsius, Grams, Millilitres, PowderDensity, Seconds, SpecificGravity, parse};

/// A change of SG under this is within what two careful checks differ by. Common practice, no source.
const SAME_SG: f64 = 0.01;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let bucket: entity::Bucket = desk.subject()?;
    let glaze: entity::Glaze = found(desk.conn, bucket.glaze)?;
    let style = draft.style;
    draft.title = format!("Check {}, {}", glaze.name, bucket.name);
    draft.keep_label = "Keep this check".to_owned();

    let vessels: Vec<(Uuid, entity::Vessel)> = entity::Vessel::all(desk.conn)?.into_iter().filter(|(_, vessel)| !vessel.gone).collect();
    let mut ways = vec![item("typed", "SG or hydrometer", "1.45, 40 Bé or 90 Tw"), item("volume", "A measured volume", "A cup or syringe with a mark")];
    if !vessels.is_empty() {
        ways.insert(0, item("vessel", "My vessel", "Weighed once with water, then with glaze"));
    }
    let way = draft.choice(
        Ask::new("way", "Checked with").help("Stir well first, down to the bottom; let the froth settle."),
        last_way(desk, bucket.id)?.as_deref(),
        FieldKind::Choice,
        ways,
    );
    let mass = |key, label| Ask::new(key, label).hint(style.mass.symbol());
    let mut vessel_id = None;
    let mut full = None;
    let found: Option<Result<SpecificGravity, (&str, SlurryError)>> = match way.as_deref() {
        Some("vessel") => {
            let items = vessels.iter().map(|(id, vessel)| vessel_item(*id, vessel)).collect();
            let chosen = draft.choice(Ask::new("vessel", "Vessel"), None, FieldKind::Choice, items);
            let weight = draft.quantity(mass("full", "Full of glaze, to the same line"), None, parse::mass);
            let vessel = vessels.iter().find(|(id, _)| chosen.as_deref() == Some(id.to_string().as_str()));
            vessel.zip(weight).map(|((id, vessel), weight)| {
                vessel_id = Some(*id);
                full = Some(weight);
                sg_by_vessel(
                    Grams::from_milligrams(vessel.empty_mg),
                    Grams::from_milligrams(vessel.with_water_mg),
                    Celsius::from_millidegrees(vessel.water_temperature_mc),
                    weight,
                )
                .map_err(|error| ("full", error))
            })
        }
        Some("volume") => {
            let empty = draft.quantity(mass("empty", "Empty").help("0 if you tared the scale on it."), Some("0".to_owned()), parse::mass_or_zero);
            let weight = draft.quantity(mass("full", "With glaze"), None, parse::mass);
            let volume = draft.quantity(Ask::new("volume", "Volume of the glaze").hint(style.volume.symbol()), None, parse::volume);
            match (empty, weight, volume) {
                (Some(empty), Some(weight), Some(volume)) => {
                    full = Some(weight);
                    Some(sg_by_volume(empty, weight, volume).map_err(|error| ("full", error)))
                }
                _ => None,
            }
        }
        _ => draft.quantity(Ask::new("typed", "SG").hint("1.45").help("Also 1450 g/l, 40 Bé or 90 Tw."), None, parse::specific_gravity).map(Ok),
    };
    let flow = draft.optional(
        Ask::new("flow", "Flow cup, seconds, if you use one").help("Not a viscosity: only to compare this bucket with itself."),
        None,
        parse::seconds,
    );
    let sg = match found {
        None => return Ok(None),
        Some(Ok(sg)) => sg,
        Some(Err((field, error))) => {
            draft.refuse(match field { "full" => "full", _ => "typed" }, error);
            return Ok(None);
        }
    };
    let solids = solids_fraction(sg, PowderDensity::from_thousandths(glaze.powder_density_e3)?);
    draft.result(Note::plain(format!("SG {}, {} powder by weight.", style.specific_gravity(sg), style.percent(solids.value()))));
    change_notes(desk, draft, bucket.id, sg, flow.flatten())?;
    let Some(flow) = flow else { return Ok(None) };
    let check = move |id| entity::Check {
        id,
        how: way.unwrap_or_default(),
        vessel: vessel_id,
        full_mg: full.map(Grams::milligrams),
        flow_ms: flow.map(Seconds::milliseconds),
        ..entity::Check::typed(bucket.id, desk.now.unix_ms, SgReading::checked(sg))
    };
    let sentence = format!("{} checked: SG {}.", bucket.name, style.specific_gravity(sg));
    Ok(Some(Keeping::one(None, sentence, check)))
}

/// What changed since the last check, and what not to do about it by habit.
fn change_notes(desk: &Desk<'_>, draft: &mut Draft<'_>, bucket: Uuid, sg: SpecificGravity, flow: Option<Seconds>) -> Result<()> {
    let style = draft.style;
    let (before, Some(at)) = latest_sg(desk.conn, bucket)? else { return Ok(()) };
    let change = sg.value() - before.sg.value();
    let when = desk.now.days_ago(at);
    draft.result(Note::plain(if change.abs() < SAME_SG {
        format!("As before: SG was {} {when}.", style.specific_gravity(before.sg))
    } else if change > 0.0 {
        format!("Thicker than {when}, when SG was {}. Targets follow; thin it only if it coats badly.", style.specific_gravity(before.sg))
    } else {
        format!("Thinner than {when}, when SG was {}. Was it stirred down to the bottom?", style.specific_gravity(before.sg))
    }));
    let slower = entity::Check::latest(desk.conn, bucket)?
        .and_then(|(_, check)| check.flow_ms)
        .zip(flow)
        .is_some_and(|(before, now)| now.value() > 1.25 * Seconds::from_milliseconds(before).value());
    if slower && change.abs() < SAME_SG {
        draft.result(Note::attention(
            "Same SG but it flows slower: it has gelled. Stir hard and check again before adding any water; water would only thin the coat.",
        ));
    }
    Ok(())
}

fn last_way(desk: &Desk<'_>, bucket: Uuid) -> Result<Option<String>> {
    Ok(entity::Check::latest(desk.conn, bucket)?.map(|(_, check)| check.how))
}

fn vessel_item(id: Uuid, vessel: &entity::Vessel) -> Item {
    item(&id.to_string(), &vessel.name, "")
}
