//! The editor that calculates what brings a bucket to another SG. Once it is done, it writes that down as an entry of the bucket; a
//! check afterwards says whether it was right.

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, item};
use super::notation::{MASS, SG, VOLUME};
use super::{EditContext, FieldKind, Item, Note, PendingWrite};
use crate::Result;
use crate::archive::found;
use crate::contents::BucketHistory;
use crate::evidence::{MOST_CONTROLS, latest_sg, powder_density, sg_of, usable};
use crate::in_words::thin_glaze;
use crate::messages::{editor_bucket_entry as entry, editor_thin as say};
use laydown_domain::form::ZoneKind;
use laydown_domain::glaze::bucket::{EntryKind, can_take_off};
use laydown_domain::glaze::flow_cup::is_same_sg;
use laydown_domain::glaze::slurry::{SgReading, Thinning, thin};
use laydown_domain::units::{Grams, Millilitres, SpecificGravity};
use laydown_store::{entity, query};

const TYPED: &str = "typed";
/// So many kept checks are offered to go back to.
const CHECKS: usize = 3;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let made: Option<entity::BucketEntry> = context.current()?;
    let bucket: entity::Bucket = match &made {
        Some(entry) => found(context.conn, entry.bucket)?,
        None => context.subject()?,
    };
    let glaze: entity::Glaze = found(context.conn, bucket.glaze)?;
    let style = builder.style;
    builder.title = say::title(&glaze.name, &bucket.name);
    builder.save_label = say::done();
    if let Some(made) = made {
        // It was done once: the bucket is another by now.
        return Ok(Some(PendingWrite::nothing(made.id, entry::saved(&bucket.name))));
    }
    let density = powder_density(&glaze);
    let history = BucketHistory::read(context.conn, bucket.id)?;
    let contents = history.contents(context.conn, &bucket, &glaze)?;
    let (reading, checked_at) = latest_sg(context.conn, bucket.id)?;
    let today = checked_at.map(|at| history.sg_today(context.conn, context.now, reading, at)).transpose()?;
    let from = builder.quantity(
        Ask::new("from", say::from()).hint(style.number(EXAMPLE_SG, 2)),
        today.map(|today| today.sg.hundred_thousandths()),
        SG,
    );
    let to = wanted(context, builder, &glaze, &history, today)?;
    let volume = builder.quantity(
        Ask::new("volume", say::volume()).hint(style.volume.symbol()),
        contents.volume.filter(|volume| volume.is_positive()).map(Millilitres::microlitres),
        VOLUME,
    );
    let (Some(from), Some(to), Some(volume)) = (from, to, volume) else { return Ok(None) };
    let thinning = match thin(volume, from, to, density) {
        Ok(thinning) => thinning,
        Err(error) => {
            builder.field_error("to", error);
            return Ok(None);
        }
    };
    for sg in [from, to] {
        builder.result_if(thin_glaze(sg, style).map(Note::attention));
    }
    let water = |builder: &mut EditorBuilder<'_>, kind: EntryKind, water: Millilitres| {
        let ask = Ask::new("done", say::done_water()).hint(builder.style.volume.symbol()).help(say::done_help());
        let done = builder.quantity(ask, Some(Millilitres::new(water.value().round()).microlitres()), VOLUME)?;
        Some((kind, Some(done), None))
    };
    let done = match thinning {
        Thinning::Nothing => {
            builder.result(Note::plain(say::there_already()));
            return Ok(None);
        }
        Thinning::AddWater(amount) => {
            builder.result(Note::plain(say::add_water(style.volume(amount))));
            builder.result(Note::plain(say::add_in_parts()));
            water(builder, EntryKind::Water, amount)
        }
        Thinning::TakeOffWater { water: amount, or_add_powder } => {
            let powder = style.mass(or_add_powder, Grams::new(1.0));
            builder.result(Note::plain(say::take_off_water(style.volume(amount))));
            builder.result(Note::plain(say::or_add_powder(&powder)));
            builder.result(Note::warning(say::dust()));
            let items = vec![
                item(EntryKind::WaterOff.code(), say::by_water(), style.volume(amount)),
                item(EntryKind::Powder.code(), say::by_powder(), powder),
            ];
            let by = builder.choice(Ask::new("by", say::by()), None, FieldKind::Choice, items);
            if by.as_deref() == Some(EntryKind::Powder.code()) {
                let ask = Ask::new("done_powder", say::done_powder()).hint(style.mass.symbol()).help(say::done_help());
                let done = builder.quantity(ask, Some(Grams::new(or_add_powder.value().round()).milligrams()), MASS);
                done.map(|done| (EntryKind::Powder, None, Some(done)))
            } else {
                water(builder, EntryKind::WaterOff, amount)
            }
        }
    };
    let Some((kind, water, powder)) = done else { return Ok(None) };
    if kind == EntryKind::WaterOff
        && let Err(error) = can_take_off(water.unwrap_or_default(), volume, from, density)
    {
        builder.field_error("done", error);
        return Ok(None);
    }
    let (at, sentence) = (context.now.unix_ms, entry::saved(&bucket.name));
    Ok(Some(PendingWrite::one(context, sentence, move |id| entity::BucketEntry {
        id,
        bucket: bucket.id,
        at,
        what: kind.code().to_owned(),
        volume_ul: water.map(Millilitres::microlitres),
        amount_mg: powder.map(Grams::milligrams),
        ..entity::BucketEntry::default()
    })))
}

/// The SG that is wanted: the glaze's own, that of the newest control piece, that of a kept check, or one that is typed.
fn wanted(
    context: &EditContext<'_>,
    builder: &mut EditorBuilder<'_>,
    glaze: &entity::Glaze,
    history: &BucketHistory,
    today: Option<SgReading>,
) -> Result<Option<SpecificGravity>> {
    let style = builder.style;
    let mut goals: Vec<(Item, SpecificGravity)> = Vec::new();
    let mut goal = |code: String, name: String, sg: SpecificGravity| {
        goals.push((item(&code, name, style.specific_gravity(sg)), sg));
    };
    if let Some(sg) = glaze.working_sg_e5.and_then(|sg| SpecificGravity::from_hundred_thousandths(sg).ok()) {
        goal("working".to_owned(), say::to_working(), sg);
    }
    if let Some(sg) = control_sg(context, glaze)? {
        goal("control".to_owned(), say::to_control(), sg);
    }
    let mut kept = Vec::from_iter(today);
    for check in &history.checks {
        let Some(reading) = usable(sg_of(check))? else { continue };
        // Of checks that say the same the newest is enough, and none that says what it is today.
        if kept.len() <= CHECKS && !kept.iter().any(|other| is_same_sg(*other, reading)) {
            kept.push(reading);
            goal(check.id.to_string(), say::to_check(context.now.moment(check.at)), reading.sg);
        }
    }
    let mut items: Vec<Item> = goals.iter().map(|(item, _)| item.clone()).collect();
    items.push(item(TYPED, say::to_typed(), ""));
    // An SG that is entered is the one that is wanted.
    let usual = if builder.entered_value("to").is_some() || items.len() == 1 { TYPED } else { items[0].code.as_str() };
    let usual = usual.to_owned();
    let chosen = if items.len() == 1 {
        Some(usual)
    } else {
        builder.choice(Ask::new("goal", say::goal()), Some(&usual), FieldKind::Choice, items)
    };
    match goals.into_iter().find(|(item, _)| chosen.as_deref() == Some(item.code.as_str())) {
        Some((_, sg)) => Ok(Some(sg)),
        None => Ok(builder.quantity(Ask::new("to", say::to()).hint(style.number(1.42, 2)), None, SG)),
    }
}

/// The SG at which the newest control piece of the glaze was dipped.
fn control_sg(context: &EditContext<'_>, glaze: &entity::Glaze) -> Result<Option<SpecificGravity>> {
    let mut newest: Option<(i64, i64)> = None;
    for zone in ZoneKind::ALL {
        for piece in query::control_pieces(context.conn, glaze.id, zone.code(), MOST_CONTROLS)? {
            newest = newest.max(Some((piece.at, piece.specific_gravity_e5)));
        }
    }
    Ok(newest.and_then(|(_, sg)| SpecificGravity::from_hundred_thousandths(sg).ok()))
}
