//! The editor of a firing: cone and program before it; witness cones, temperature and time after it.

use std::cmp::Ordering;

use super::builder::{Ask, EditorBuilder, coded_item, item};
use super::control::choose;
use super::notation::{HOURS, TOP_TEMPERATURE};
use super::{EditContext, FieldKind, Item, PendingWrite};
use crate::messages::{editor as shared, editor_firing as say};
use crate::{FiringState, Result};
use laydown_domain::kiln::cone::{Cone, ConeKind, Reading};
use laydown_domain::units::Celsius;
use laydown_store::entity::{self, Pairs};

/// The cone that is offered first.
const USUAL_CONE: &str = "6";

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Firing> = context.current()?;
    let saved = current.as_ref();
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::delete();

    // After the firing one comes here for what is read then: it stands above what has long been chosen.
    let fired = saved.filter(|firing| firing.state != FiringState::Loading.code());
    let after = match fired {
        Some(firing) => After::build(builder, firing),
        None => Some(After::of(saved)),
    };
    let kiln =
        choose::<entity::Kiln>(context, builder, Ask::new("kiln", say::kiln()), saved.map(|firing| firing.kiln))?;
    let Some(kiln) = kiln else { return Ok(None) };
    let saved_cone = saved.map_or(USUAL_CONE, |firing| firing.cone.as_str());
    let others = saved_cone.parse().ok().filter(|cone| !usual_cones().any(|usual| usual == *cone));
    let cone = builder.choice(
        Ask::new("cone", say::cone_aimed_at()),
        Some(saved_cone),
        FieldKind::Choice,
        usual_cones().chain(others).map(|cone| item(cone.code(), say::cone(cone.code()), "")).collect(),
    );
    let kind = builder.choice(
        Ask::new("cone_kind", say::cone_kind()).help(say::cone_kind_help()),
        saved.map(|firing| firing.cone_kind.as_str()),
        FieldKind::Choice,
        ConeKind::ALL.iter().map(|kind| coded_item(*kind, "")).collect(),
    );
    let (Some(cone), Some(kind)) = (cone, kind) else { return Ok(None) };
    let set = if fired.is_some() { None } else { Some(lay_witnesses(builder, saved, &cone)) };
    let program = builder.remark(
        Ask::new("program", say::program()).hint(say::program_hint()),
        saved.and_then(|firing| firing.program.as_deref()),
    );
    let note = builder.remark(Ask::new("note", say::note()), saved.and_then(|firing| firing.note.as_deref()));
    let (Some(program), Some(note), Some(after)) = (program, note, after) else { return Ok(None) };
    let firing = entity::Firing {
        kiln: kiln.id,
        cone,
        cone_kind: kind,
        program,
        note,
        top_mc: after.top_mc,
        minutes: after.minutes,
        witnesses: set.unwrap_or(after.witnesses),
        ..current.unwrap_or_else(|| entity::Firing {
            at: context.now.unix_ms,
            state: FiringState::Loading.code().to_owned(),
            ..entity::Firing::default()
        })
    };
    let kiln = kiln.thing.map_or_else(shared::not_on_this_phone, |kiln| kiln.name);
    let sentence = say::saved(&firing.cone, kiln);
    Ok(Some(PendingWrite::one(context, sentence, move |id| entity::Firing { id, ..firing })))
}

/// From cone 06 on: what glaze is fired to.
fn usual_cones() -> impl Iterator<Item = Cone> {
    Cone::all().skip_while(|cone| cone.code() != "06")
}

/// Asks which witness cones are set, and answers with them, none of them read yet. Those that are set stay until another answer
/// is given, or another cone is aimed at.
fn lay_witnesses(builder: &mut EditorBuilder<'_>, saved: Option<&entity::Firing>, cone: &str) -> Option<Pairs> {
    let set = saved.and_then(|firing| firing.witnesses.clone());
    let Ok(aimed) = cone.parse::<Cone>() else { return set };
    let three: Vec<Cone> = around(aimed).collect();
    let shown = match set.as_ref().map_or(0, |pairs| pairs.0.len()) {
        0 => "",
        1 => "one",
        _ => "three",
    };
    let names = three.iter().map(|cone| cone.code()).collect::<Vec<_>>().join(", ");
    let answer = builder.choice(
        Ask::new("witnesses", say::witnesses()).help(say::witnesses_help()),
        Some(shown),
        FieldKind::Choice,
        vec![
            item("", say::no_witnesses(), ""),
            item("one", say::cone(aimed.code()), ""),
            item("three", say::cones(names), ""),
        ],
    );
    if saved.is_some_and(|firing| firing.cone == cone) && answer.as_deref() == Some(shown) {
        return set;
    }
    let cones = match answer.as_deref() {
        Some("one") => vec![aimed],
        Some("three") => three,
        _ => return None,
    };
    Some(Pairs(cones.into_iter().map(|cone| (cone.code().to_owned(), String::new())).collect()))
}

/// The cone below the one aimed at, that one, and the one above.
fn around(aimed: Cone) -> impl Iterator<Item = Cone> {
    [aimed.cooler(), Some(aimed), aimed.hotter()].into_iter().flatten()
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
        // A cone that this version does not know has no neighbours here: what was read of it stays.
        for (aimed, cone) in
            firing.cone.parse().ok().into_iter().flat_map(|aimed| around(aimed).map(move |it| (aimed, it)))
        {
            let (key, label) = match cone.cmp(&aimed) {
                Ordering::Less => ("witness_low", say::cone_below()),
                Ordering::Equal => ("witness", say::cone_at_aim()),
                Ordering::Greater => ("witness_high", say::cone_above()),
            };
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
