//! The editor of a bucket's check: SG from any vessel, from a known volume, or as read off a hydrometer.

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, item};
use super::notation::{MASS, SG, TIME, VOLUME};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::archive::{found, in_use};
use crate::evidence::{check, finest_step, powder_density, sg_of, usable};
use crate::in_words::StyleWords as _;
use crate::in_words::thin_glaze;
use crate::messages::editor_check as say;
use crate::{Now, Result};
use laydown_domain::glaze::slurry::{SgReading, SlurryError, solids_fraction};
use laydown_domain::units::{Celsius, Grams, Seconds, SpecificGravity};
use laydown_store::entity;
use laydown_store::query::latest_check;

/// A change of SG under this is within what two careful checks differ by. Common practice, no source.
const SAME_SG: f64 = 0.01;
/// A flow time longer than before by this factor is slower and not chance. Common practice, no source.
const SLOWER: f64 = 1.25;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let bucket: entity::Bucket = context.subject()?;
    let glaze: entity::Glaze = found(context.conn, bucket.glaze)?;
    let style = builder.style;
    builder.title = say::title(&glaze.name, &bucket.name);
    builder.save_label = say::save();

    let vessels: Vec<entity::Vessel> = in_use(context.conn, None)?;
    let step = finest_step(context.conn)?;
    let before = latest_check(context.conn, bucket.id)?;
    let mut ways = vec![
        item("typed", say::typed_way(), say::typed_way_detail(style.number(EXAMPLE_SG, 2))),
        item("volume", say::volume_way(), say::volume_way_detail()),
    ];
    if !vessels.is_empty() {
        ways.insert(0, item("vessel", say::vessel_way(), say::vessel_way_detail()));
    }
    // The next check is likely made as the last one; one that was made in a way that is not offered says nothing of it.
    let way_before = before.as_ref().map(|check| check.how.clone());
    let way_before = way_before.filter(|how| ways.iter().any(|way| way.code == *how));
    let way = builder.choice(
        Ask::new("way", say::way()).help(say::way_help()),
        way_before.as_deref(),
        FieldKind::Choice,
        ways,
    );
    let mass = |key, label: String| Ask::new(key, label).hint(style.mass.symbol());
    let mut vessel_id = None;
    let mut full = None;
    let found: Option<Result<SgReading, SlurryError>> = match way.as_deref() {
        Some("vessel") => {
            let items = vessels.iter().map(|vessel| item(&vessel.id.to_string(), &vessel.name, "")).collect();
            let chosen = builder.choice(Ask::new("vessel", say::vessel()), None, FieldKind::Choice, items);
            let weight = builder.quantity(mass("full", say::vessel_full()).help(say::vessel_full_help()), None, MASS);
            let vessel = vessels.iter().find(|vessel| chosen.as_deref() == Some(vessel.id.to_string().as_str()));
            vessel.zip(weight).map(|(vessel, weight)| {
                vessel_id = Some(vessel.id);
                full = Some(weight);
                SgReading::by_vessel(
                    Grams::from_milligrams(vessel.empty_mg),
                    Grams::from_milligrams(vessel.with_water_mg),
                    Celsius::from_millidegrees(vessel.water_temperature_mc),
                    weight,
                    step,
                )
            })
        }
        Some("volume") => {
            let empty = builder.quantity(mass("empty", say::empty()).help(say::empty_help()), Some(0), MASS);
            let weight = builder.quantity(mass("full", say::with_glaze()), None, MASS);
            let volume =
                builder.quantity(Ask::new("volume", say::glaze_volume()).hint(style.volume.symbol()), None, VOLUME);
            match (empty, weight, volume) {
                (Some(empty), Some(weight), Some(volume)) => {
                    full = Some(weight);
                    Some(SgReading::by_volume(empty, weight, volume, step))
                }
                _ => None,
            }
        }
        _ => builder
            .quantity(Ask::new("typed", say::sg()).hint(style.number(EXAMPLE_SG, 2)).help(say::sg_help()), None, SG)
            .map(|sg| Ok(SgReading::checked(sg))),
    };
    let flow = builder.optional(Ask::new("flow", say::flow()).help(say::flow_help()), None, TIME);
    let density = powder_density(&glaze);
    let found = found.map(|reading| reading.and_then(|reading| Ok((reading, solids_fraction(reading.sg, density)?))));
    let (reading, solids) = match found {
        None => return Ok(None),
        Some(Ok(found)) => found,
        Some(Err(error)) => {
            builder.field_error(if way.as_deref() == Some("typed") { "typed" } else { "full" }, error);
            return Ok(None);
        }
    };
    let sg = reading.sg;
    builder.result_if(thin_glaze(sg, style).map(Note::attention));
    builder.result(Note::plain(say::sg_and_powder(style.specific_gravity(sg), style.percent(solids.value(), 0))));
    if let Some(before) = before {
        change_notes(context.now, builder, &before, sg, flow.flatten())?;
    }
    let Some(flow) = flow else { return Ok(None) };
    let (bucket_id, at) = (bucket.id, context.now.unix_ms);
    let check = move |id| entity::Check {
        vessel: vessel_id,
        full_mg: full.map(Grams::milligrams),
        flow_ms: flow.map(Seconds::milliseconds),
        ..check(id, bucket_id, at, reading, &way.unwrap_or_default())
    };
    let sentence = say::checked(&bucket.name, style.specific_gravity(sg));
    // A check is never edited: one with an id was saved already.
    Ok(Some(match context.id {
        Some(id) => PendingWrite::nothing(id, sentence),
        None => PendingWrite::one(context, sentence, check),
    }))
}

/// What changed since the last check, and what not to do about it by habit.
fn change_notes(
    now: Now,
    builder: &mut EditorBuilder<'_>,
    before: &entity::Check,
    sg: SpecificGravity,
    flow: Option<Seconds>,
) -> Result<()> {
    let style = builder.style;
    let Some(sg_before) = usable(sg_of(before))?.map(|reading| reading.sg) else { return Ok(()) };
    let change = sg.value() - sg_before.value();
    let when = now.days_ago(before.at);
    let sg_then = style.specific_gravity(sg_before);
    builder.result(Note::plain(if change.abs() < SAME_SG {
        say::as_before(sg_then, when)
    } else if change > 0.0 {
        say::thicker(sg_then, when)
    } else {
        say::thinner(sg_then, when)
    }));
    let slower = before
        .flow_ms
        .zip(flow)
        .is_some_and(|(before, now)| now.value() > SLOWER * Seconds::from_milliseconds(before).value());
    if slower && change.abs() < SAME_SG {
        builder.result(Note::attention(say::gelled()));
    }
    Ok(())
}
