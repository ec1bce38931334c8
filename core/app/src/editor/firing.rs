//! The editor of a firing: cone and program before it; witness cones, temperature and time after it.

use std::cmp::Ordering;

use super::builder::{Ask, EditorBuilder, bare, coded_item, item};
use super::control::choose;
use super::{EditContext, FieldKind, Item, PendingWrite};
use crate::evidence::code;
use crate::messages::editor_firing as say;
use crate::{FiringState, Result};
use laydown_domain::kiln::cone::{Cone, ConeKind, Reading};
use laydown_domain::units::{Celsius, parse};
use laydown_store::entity::{self, Pairs};

/// The cone that is offered first.
const USUAL_CONE: &str = "6";

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Firing> = context.current()?;
    let saved = current.as_ref();
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::delete();

    // After the firing one comes here for what is read then: it stands above what has long been chosen.
    let after = match saved {
        Some(firing) if code::<FiringState>(&firing.state)? != FiringState::Loading => {
            After::of(saved).build(builder, firing, firing.cone.parse()?)
        }
        _ => Some(After::of(saved)),
    };
    let kiln =
        choose::<entity::Kiln>(context, builder, Ask::new("kiln", say::kiln()), saved.map(|firing| firing.kiln))?;
    let Some(kiln) = kiln else { return Ok(None) };
    let cone = builder.choice(
        Ask::new("cone", say::cone_aimed_at()),
        Some(saved.map_or(USUAL_CONE, |firing| firing.cone.as_str())),
        FieldKind::Choice,
        usual_cones().map(|cone| item(cone.code(), say::cone(cone.code()), "")).collect(),
    );
    let kind = builder.choice(
        Ask::new("cone_kind", say::cone_kind()).help(say::cone_kind_help()),
        saved.map(|firing| firing.cone_kind.as_str()),
        FieldKind::Choice,
        ConeKind::ALL.iter().map(|kind| coded_item(*kind, "")).collect(),
    );
    let (Some(cone), Some(kind)) = (cone, kind) else { return Ok(None) };
    let set = match saved {
        Some(firing) if code::<FiringState>(&firing.state)? != FiringState::Loading => None,
        _ => Some(lay_witnesses(builder, saved, cone.parse()?)),
    };
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
    let sentence = say::saved(&firing.cone, &kiln.name);
    Ok(Some(PendingWrite::one(context.id, sentence, move |id| entity::Firing { id, ..firing })))
}

/// From cone 06 on: what glaze is fired to.
fn usual_cones() -> impl Iterator<Item = Cone> {
    Cone::all().skip_while(|cone| cone.code() != "06")
}

/// Asks which witness cones are set, and answers with them, none of them read yet.
fn lay_witnesses(builder: &mut EditorBuilder<'_>, saved: Option<&entity::Firing>, aimed: Cone) -> Option<Pairs> {
    let three: Vec<Cone> = around(aimed).collect();
    let saved = match saved.and_then(|firing| firing.witnesses.as_ref()).map_or(0, |pairs| pairs.0.len()) {
        0 => "",
        1 => "one",
        _ => "three",
    };
    let names = three.iter().map(|cone| cone.code()).collect::<Vec<_>>().join(", ");
    let answer = builder.choice(
        Ask::new("witnesses", say::witnesses()).help(say::witnesses_help()),
        Some(saved),
        FieldKind::Choice,
        vec![
            item("", say::no_witnesses(), ""),
            item("one", say::cone(aimed.code()), ""),
            item("three", say::cones(names), ""),
        ],
    );
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

    fn build(self, builder: &mut EditorBuilder<'_>, firing: &entity::Firing, aimed: Cone) -> Option<After> {
        let style = builder.style;
        let top = builder.optional(
            Ask::new("top", say::top()),
            firing.top_mc.map(|mc| bare(style, Celsius::from_millidegrees(mc).value())),
            parse::number,
        );
        let hours = builder.optional(
            Ask::new("hours", say::hours()).hint(style.number(8.5, 1)),
            firing.minutes.map(|minutes| bare(style, minutes as f64 / 60.0)),
            parse::number,
        );
        let mut read = Vec::new();
        for cone in around(aimed) {
            let (key, label) = match cone.cmp(&aimed) {
                Ordering::Less => ("witness_low", say::cone_below()),
                Ordering::Equal => ("witness", say::cone_at_aim()),
                Ordering::Greater => ("witness_high", say::cone_above()),
            };
            let set = self.witnesses.iter().flat_map(|pairs| &pairs.0).find(|(known, _)| known == cone.code());
            let ask = Ask::new(key, label).help(say::witness_help());
            let unread = item("", if set.is_some() { say::not_read_yet() } else { say::none_stood() }, "");
            let items = std::iter::once(unread).chain(Reading::ALL.iter().map(|reading| named(cone, *reading)));
            let answer =
                builder.choice(ask, set.map(|(_, reading)| reading.as_str()), FieldKind::Choice, items.collect());
            let answer = answer.filter(|reading| set.is_some() || !reading.is_empty());
            read.extend(answer.map(|reading| (cone.code().to_owned(), reading)));
        }
        let (top, hours) = (top?, hours?);
        if top.is_some_and(|top| !(500.0..=1_500.0).contains(&top)) {
            builder.field_error("top", say::top_impossible());
            return None;
        }
        if hours.is_some_and(|hours| !(0.2..=200.0).contains(&hours)) {
            builder.field_error("hours", say::hours_impossible());
            return None;
        }
        Some(After {
            top_mc: top.map(|top| Celsius::new(top).millidegrees()),
            minutes: hours.map(|hours| (hours * 60.0).round() as i64),
            witnesses: Some(Pairs(read)).filter(|read| !read.0.is_empty()),
        })
    }
}

fn named(cone: Cone, reading: Reading) -> Item {
    item(reading.code(), say::cone_reading(reading.code(), cone.code()), "")
}
