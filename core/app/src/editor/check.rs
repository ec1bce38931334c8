//! The editor of a bucket's check: SG from any vessel, from a known volume, or as read off a hydrometer.

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, coded_item, item};
use super::notation::{MASS, SG, TIME, VOLUME};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::archive::{found, in_use};
use crate::contents::BucketHistory;
use crate::evidence::{check, finest_step, powder_density, sg_in_words, sg_of, usable};
use crate::in_words::{Sentence as _, StyleWords as _, thin_glaze};
use crate::messages::editor_check as say;
use crate::{Now, Result};
use laydown_domain::glaze::flow_cup::{FlowChange, FlowCup, flow_change};
use laydown_domain::glaze::slurry::{SgReading, SlurryError, solids_fraction};
use laydown_domain::units::{Celsius, Grams, Seconds, SpecificGravity};
use laydown_store::entity;
use laydown_store::query::latest_check;

/// A change of SG under this is within what two careful checks differ by. Common practice, no source.
const SAME_SG: f64 = 0.01;
/// A cup that is none of those with a known equation, such as one that a potter made.
const OTHER_CUP: &str = "other";
/// How a check is made by a figure that was typed.
const TYPED: &str = "typed";

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Check> = context.current()?;
    let bucket: entity::Bucket = match &current {
        Some(check) => found(context.conn, check.bucket)?,
        None => context.subject()?,
    };
    let glaze: entity::Glaze = found(context.conn, bucket.glaze)?;
    let style = builder.style;
    builder.title = say::title(&glaze.name, &bucket.name);
    builder.save_label = say::save();
    builder.remove_label = say::remove();
    if let Some(check) = current {
        let sentence = say::checked(&bucket.name, sg_in_words(style, check.specific_gravity_e5));
        if context.is_saved_again {
            return Ok(Some(PendingWrite::nothing(check.id, sentence)));
        }
        return correct(context, builder, &bucket, check);
    }

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
    let (flow, cup) = flow_fields(builder, None, before.as_ref().and_then(|check| check.cup.as_deref()));
    let note = builder.remark(Ask::new("note", say::note()), None);
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
        change_note(context.now, builder, &before, sg)?;
    }
    flow_notes(context, builder, &bucket, reading, flow.flatten(), cup.as_deref())?;
    let (Some(flow), Some(note)) = (flow, note) else { return Ok(None) };
    let (bucket_id, at) = (bucket.id, context.now.unix_ms);
    let check = move |id| entity::Check {
        vessel: vessel_id,
        full_mg: full.map(Grams::milligrams),
        flow_ms: flow.map(Seconds::milliseconds),
        cup: cup.filter(|_| flow.is_some()),
        note,
        ..check(id, bucket_id, at, reading, &way.unwrap_or_default())
    };
    let sentence = say::checked(&bucket.name, style.specific_gravity(sg));
    Ok(Some(PendingWrite::one(context, sentence, check)))
}

/// The fields of a saved check, to correct it: what it found, and not how.
fn correct(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    bucket: &entity::Bucket,
    saved: entity::Check,
) -> Result<Option<PendingWrite>> {
    let style = builder.style;
    let sg = builder.quantity(Ask::new(TYPED, say::sg()).help(say::sg_help()), Some(saved.specific_gravity_e5), SG);
    let (flow, cup) = flow_fields(builder, Some(&saved), None);
    let note = builder.remark(Ask::new("note", say::note()), saved.note.as_deref());
    let (Some(sg), Some(flow), Some(note)) = (sg, flow, note) else { return Ok(None) };
    let sentence = say::checked(&bucket.name, style.specific_gravity(sg));
    let found = if sg.hundred_thousandths() == saved.specific_gravity_e5 {
        saved
    } else {
        // It is as sure as any figure that is typed.
        let typed = check(saved.id, saved.bucket, saved.at, SgReading::checked(sg), TYPED);
        entity::Check { temperature_mc: saved.temperature_mc, ..typed }
    };
    Ok(Some(PendingWrite::one(context, sentence, move |_| entity::Check {
        flow_ms: flow.map(Seconds::milliseconds),
        cup,
        note,
        ..found
    })))
}

/// The flow cup's seconds and which cup it was; of a new check likely the one `before`.
fn flow_fields(
    builder: &mut EditorBuilder<'_>,
    saved: Option<&entity::Check>,
    before: Option<&str>,
) -> (Option<Option<Seconds>>, Option<String>) {
    let ask = Ask::new("flow", say::flow()).help(say::flow_help());
    let flow = builder.optional(ask, saved.and_then(|check| check.flow_ms), TIME);
    let cup_saved = saved.and_then(|check| check.cup.as_deref());
    if !matches!(flow, Some(Some(_))) {
        return (flow, cup_saved.map(str::to_owned));
    }
    let mut items = vec![item(OTHER_CUP, say::other_cup(), say::other_cup_detail())];
    items.extend(FlowCup::ALL.iter().map(|cup| coded_item(*cup, "")));
    let shown = cup_saved.or(before).unwrap_or(OTHER_CUP);
    let cup = builder.choice(Ask::new("cup", say::cup()), Some(shown), FieldKind::Choice, items);
    (flow, cup.filter(|cup| cup != OTHER_CUP))
}

/// What the seconds mean: the viscosity inside the cup's range, and whether the bucket flows otherwise than it used to at this SG.
fn flow_notes(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    bucket: &entity::Bucket,
    reading: SgReading,
    flow: Option<Seconds>,
    cup: Option<&str>,
) -> Result<()> {
    let Some(flow) = flow else { return Ok(()) };
    let style = builder.style;
    if let Some(known) = cup.and_then(|code| code.parse::<FlowCup>().ok()) {
        builder.result(match known.viscosity(flow) {
            Ok(viscosity) => Note::plain(say::viscosity(style.number(viscosity, 0))),
            Err(outside) => Note::attention(outside.sentence()),
        });
    }
    let earlier = BucketHistory::read(context.conn, bucket.id)?.checks.into_iter();
    let by_this_cup = earlier.filter(|check| check.cup.as_deref() == cup);
    let history: Vec<_> = by_this_cup
        .filter_map(|check| Some((sg_of(&check).ok()?, Seconds::from_milliseconds(check.flow_ms?))))
        .collect();
    builder.result_if(flow_change(&history, (reading, flow)).map(|change| {
        Note::attention(match change {
            FlowChange::Slower => say::gelled(),
            FlowChange::Faster => say::settled(),
        })
    }));
    Ok(())
}

/// What changed since the last check, and what not to do about it by habit.
fn change_note(now: Now, builder: &mut EditorBuilder<'_>, before: &entity::Check, sg: SpecificGravity) -> Result<()> {
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
    Ok(())
}
