//! The editor of a firing: cone and program first, as they were the last time; witness cones, temperature and time after it.

use std::collections::BTreeSet;

use rusqlite::Connection;

use super::builder::{Ask, EditorBuilder, coded_item, item};
use super::control::choose;
use super::notation::{COUNT, HOURS, TOP_TEMPERATURE};
use super::witness_cones::{Usual, around};
use super::{EditContext, FieldKind, Item, PendingWrite};
use crate::kiln::{BISQUE, is_bisque, when};
use crate::messages::{editor as shared, editor_firing as say};
use crate::{FiringState, Result};
use laydown_domain::kiln::cone::{Cone, ConeKind, Reading};
use laydown_domain::units::Celsius;
use laydown_store::entity::{self, Entity, Pairs};
use laydown_store::query;

/// The cone that is offered first.
const USUAL_CONE: &str = "6";
/// The same for bare clay.
const USUAL_BISQUE_CONE: &str = "06";
/// The code of glazed ware, which a firing is of unless it says otherwise.
const GLAZED: &str = "glazed";
/// The highest number of a firing.
const MOST_FIRINGS: f64 = 999_999.0;
/// Among how many of the newest firings the last one alike is looked for.
const LOOKED_THROUGH: u32 = 60;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Firing> = context.current()?;
    let saved = current.as_ref();
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.save_label = if saved.is_some() { shared::save() } else { say::begin() };
    builder.remove_label = say::delete();

    // After the firing one comes here for what is read then: it stands above what has long been chosen.
    let fired = saved.filter(|firing| firing.state != FiringState::Loading.code());
    let after = match fired {
        Some(firing) => After::build(builder, firing),
        None => Some(After::of(saved)),
    };
    let fires = builder.choice_asked_later(
        Ask::new("fires", say::fires()),
        saved.map(|firing| firing.fires.as_deref()),
        GLAZED,
        vec![item(GLAZED, say::glazed_ware(), ""), item(BISQUE, say::bisque(), say::bisque_detail())],
    );
    let bare = fires.as_deref() == Some(BISQUE);
    let last = if saved.is_some() { None } else { last_like(context.conn, bare)? };
    // What was chosen the last time comes first.
    let like = saved.or(last.as_ref());
    let usual_cone = if bare { USUAL_BISQUE_CONE } else { USUAL_CONE };
    let saved_cone = like.map_or(usual_cone, |firing| firing.cone.as_str());
    let others = saved_cone.parse().ok().filter(|cone| !usual_cones(bare).any(|usual| usual == *cone));
    let cone = builder.choice(
        Ask::new("cone", say::cone_aimed_at()),
        Some(saved_cone),
        FieldKind::Choice,
        usual_cones(bare).chain(others).map(|cone| item(cone.code(), say::cone(cone.code()), "")).collect(),
    );
    let program = builder.remark(
        Ask::new("program", say::program()).hint(say::program_hint()),
        like.and_then(|firing| firing.program.as_deref()),
    );
    let kiln = choose::<entity::Kiln>(context, builder, Ask::new("kiln", say::kiln()), like.map(|firing| firing.kiln))?;
    let kind = builder.choice(
        Ask::new("cone_kind", say::cone_kind()).help(say::cone_kind_help()),
        like.map(|firing| firing.cone_kind.as_str()),
        FieldKind::Choice,
        ConeKind::ALL.iter().map(|kind| coded_item(*kind, "")).collect(),
    );
    let (Some(kiln), Some(cone), Some(kind)) = (kiln, cone, kind) else { return Ok(None) };
    let dated = saved.map_or(context.now.unix_ms, when);
    let day =
        builder.day(Ask::new("date", if fired.is_some() { say::fired_on() } else { say::date() }), dated, context.now);
    let next = query::latest_firing_number(context.conn)? + 1;
    let number =
        builder.optional(Ask::new("number", say::number()), saved.map_or(Some(next), |firing| firing.number), COUNT);
    let name = builder.name_or_none(
        Ask::new("name", shared::name()).hint(say::name_hint()),
        saved.and_then(|firing| firing.name.as_deref()),
    );
    let note = builder.remark(Ask::new("note", say::note()), saved.and_then(|firing| firing.note.as_deref()));
    let (Some(day), Some(number), Some(name)) = (day, number, name) else { return Ok(None) };
    let (Some(program), Some(note), Some(after)) = (program, note, after) else { return Ok(None) };
    let is_new_number = number.map(|number| number as i64) != saved.and_then(|firing| firing.number);
    if number.is_some_and(|number| is_new_number && !(0.0..=MOST_FIRINGS).contains(&number) || number.fract() != 0.0) {
        builder.field_error("number", say::number_impossible());
        return Ok(None);
    }
    let witnesses = match saved {
        Some(firing) if fired.is_none() && firing.cone != cone => following(firing, &cone),
        _ => after.witnesses,
    };
    let begun = || entity::Firing {
        at: context.now.unix_ms,
        state: FiringState::Loading.code().to_owned(),
        ..entity::Firing::default()
    };
    let mut firing = entity::Firing {
        kiln: kiln.id,
        cone,
        cone_kind: kind,
        program,
        note,
        top_mc: after.top_mc,
        minutes: after.minutes,
        witnesses,
        number: number.map(|number| number as i64),
        name,
        fires,
        ..saved.cloned().unwrap_or_else(begun)
    };
    // The day that is shown is that of the firing, or while there was none, that of its beginning.
    match firing.fired_at {
        Some(_) => firing.fired_at = Some(day),
        None => firing.at = day,
    }
    let kiln = kiln.thing.map_or_else(shared::not_on_this_phone, |kiln| kiln.name);
    let sentence = say::saved(&firing.cone, kiln);
    Ok(Some(PendingWrite::one(context, sentence, move |id| entity::Firing { id, ..firing })))
}

/// The newest firing of glazed ware, or of bare clay.
fn last_like(conn: &Connection, bare: bool) -> Result<Option<entity::Firing>> {
    let firings = query::firings(conn, LOOKED_THROUGH)?;
    let like = firings.into_iter().find(|firing| is_bisque(firing) == bare);
    // A kiln that was archived since is not offered again.
    Ok(match like {
        Some(firing) if entity::Kiln::load(conn, firing.kiln)?.is_some_and(|kiln| !kiln.gone) => Some(firing),
        _ => None,
    })
}

/// From cone 06 on: what glaze is fired to. Bisque: to cone 1 and cooler; mostly to 06 and 04. Common practice, no source.
fn usual_cones(bare: bool) -> Box<dyn Iterator<Item = Cone>> {
    if bare {
        Box::new(Cone::all().skip_while(|cone| cone.code() != "018").take_while(|cone| cone.code() != "2"))
    } else {
        Box::new(Cone::all().skip_while(|cone| cone.code() != "06"))
    }
}

/// The witness cones where another cone is aimed at: the usual ones follow it, others stay, and so do those that were read.
fn following(firing: &entity::Firing, cone: &str) -> Option<Pairs> {
    let set = firing.witnesses.as_ref()?;
    let placed: Vec<String> = set.0.iter().map(|(cone, _)| cone.clone()).collect();
    let is_read = set.0.iter().any(|(_, reading)| !reading.is_empty());
    let moved = Usual::of(&firing.cone).zip(Usual::of(cone)).and_then(|(before, now)| now.instead_of(&before, &placed));
    match moved {
        Some(moved) if !is_read => {
            Some(Pairs(moved.into_iter().map(|cone| (cone.to_owned(), String::new())).collect()))
        }
        _ => Some(set.clone()),
    }
}

/// What is known after the firing.
struct After {
    top_mc: Option<i64>,
    minutes: Option<i64>,
    witnesses: Option<Pairs>,
}

impl After {
    fn of(saved: Option<&entity::Firing>) -> After {
        After {
            top_mc: saved.and_then(|firing| firing.top_mc),
            minutes: saved.and_then(|firing| firing.minutes),
            witnesses: saved.and_then(|firing| firing.witnesses.clone()),
        }
    }

    fn build(builder: &mut EditorBuilder<'_>, firing: &entity::Firing) -> Option<After> {
        let style = builder.style;
        let top = builder.optional(Ask::new("top", say::top()), firing.top_mc, TOP_TEMPERATURE);
        let minutes =
            builder.optional(Ask::new("hours", say::hours()).hint(style.number(8.5, 1)), firing.minutes, HOURS);
        let mut witnesses = firing.witnesses.clone();
        for (key, label, cone) in asked(firing) {
            let set = firing.witnesses.iter().flat_map(|pairs| &pairs.0).find(|(known, _)| known == cone.code());
            let ask = Ask::new(key, label).help(say::witness_help());
            let unread = item("", if set.is_some() { say::not_read_yet() } else { say::none_stood() }, "");
            let items = std::iter::once(unread).chain(Reading::ALL.iter().map(|reading| named(cone, *reading)));
            let before = set.map_or("", |(_, reading)| reading.as_str());
            let answer = builder.choice(ask, Some(before), FieldKind::Choice, items.collect());
            if let Some(answer) = answer.filter(|answer| answer != before) {
                read(&mut witnesses.get_or_insert_default().0, cone, answer);
            }
        }
        let (top, minutes) = (top?, minutes?);
        if top.is_some_and(|top| !(500.0..=1_500.0).contains(&top.value())) {
            builder.field_error("top", say::top_impossible());
            return None;
        }
        // From a fifth of an hour to 200 hours.
        if minutes.is_some_and(|minutes| !(12..=12_000).contains(&minutes)) {
            builder.field_error("hours", say::hours_impossible());
            return None;
        }
        Some(After { top_mc: top.map(Celsius::millidegrees), minutes, witnesses })
    }
}

/// The cones that are asked about after the firing: those around the one aimed at, and whatever else was placed; each with the key
/// of its field. A cone that this version does not know has no neighbours here: what was read of it stays.
fn asked(firing: &entity::Firing) -> Vec<(&'static str, String, Cone)> {
    let aimed: Option<Cone> = firing.cone.parse().ok();
    let placed = firing.witnesses.iter().flat_map(|pairs| &pairs.0).filter_map(|(cone, _)| cone.parse().ok());
    let cones: BTreeSet<Cone> = placed.chain(aimed.into_iter().flat_map(around)).collect();
    let field = |cone: Cone| match aimed {
        Some(aimed) if cone == aimed => ("witness", say::cone_at_aim(), cone),
        Some(aimed) if Some(cone) == aimed.cooler() => ("witness_low", say::cone_below(), cone),
        Some(aimed) if Some(cone) == aimed.hotter() => ("witness_high", say::cone_above(), cone),
        _ => (cone.code(), say::witness_cone(cone.code()), cone),
    };
    cones.into_iter().map(field).collect()
}

/// Notes what a witness cone shows; one that was not set stands where it belongs, the coolest first.
fn read(witnesses: &mut Vec<(String, String)>, cone: Cone, reading: String) {
    if let Some((_, before)) = witnesses.iter_mut().find(|(known, _)| known == cone.code()) {
        *before = reading;
        return;
    }
    let is_hotter = |(known, _): &(String, String)| known.parse().is_ok_and(|known: Cone| known > cone);
    let place = witnesses.iter().position(is_hotter).unwrap_or(witnesses.len());
    witnesses.insert(place, (cone.code().to_owned(), reading));
}

fn named(cone: Cone, reading: Reading) -> Item {
    item(reading.code(), say::cone_reading(reading.code(), cone.code()), "")
}
