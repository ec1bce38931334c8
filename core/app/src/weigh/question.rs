//! A reading far off its aim is asked about before it counts: what may have been meant, each in one tap.

use rusqlite::Connection;

use super::context::WeighContext;
use super::{Field, Question, Suggestion, WeighEntry, WeighMode};
use crate::Result;
use crate::bisque::bare_pieces;
use crate::evidence::{scale_of, usable};
use crate::messages::weigh as say;
use laydown_domain::coat::slip::{Slip, slip};
use laydown_domain::coat::target::Target;
use laydown_domain::coat::verdict::{Reading, ReadingRefused, Verdict, judge};
use laydown_domain::units::Grams;
use laydown_store::entity;

/// What is asked about the reading; `None` when there is nothing to ask, or the potter has said that it is right.
pub(super) fn question(
    conn: &Connection,
    context: &WeighContext,
    reading: &Reading,
    target: &Target,
    judged: &std::result::Result<Verdict, ReadingRefused>,
) -> Result<Option<Question>> {
    if context.entry.is_confirmed() && judged.is_ok() {
        return Ok(None);
    }
    let span = context.trust(target).span(target);
    let usual_bare = if reading.net() > span.1 { usual_bare(conn, &context.form)? } else { None };
    let slip = slip(reading, target, span, &context.scale, &context.job.solids, usual_bare);
    let mass = |grams: Grams| context.mass(grams);
    let (net, aim) = (mass(reading.net()), mass(target.wet));
    let (text, mut choices, confirm) = match slip {
        Some(Slip::Meant(meant)) => {
            let (text, label) = match changed(reading, &meant) {
                Some(weight) => (say::did_you_mean(mass(weight)), mass(weight)),
                None => (say::wrong_way_round(), say::exchange()),
            };
            let choice = Suggestion { label, entry: with_reading(context, &meant) };
            (text, vec![choice], say::it_is_right())
        }
        Some(Slip::TareForgotten { bare }) => {
            let entry = WeighEntry {
                way: Some(WeighMode::TwoWeights),
                field: Field::Bare,
                net: String::new(),
                bare: String::new(),
                glazed: context.entry.net.clone(),
                ..context.entry.clone()
            };
            let choice = Suggestion { label: say::weigh_two(), entry };
            (say::tare_forgotten(net, mass(bare)), vec![choice], say::it_is_right())
        }
        // Why it cannot be is said better than that it is far off.
        Some(_) | None if judged.is_err() => return other_scale(conn, context, reading, target),
        Some(Slip::Twice) => (say::twice_the_aim(net, aim), Vec::new(), say::it_is_right()),
        Some(Slip::DryAlready { wet }) => (say::dry_already(net, mass(wet)), Vec::new(), say::it_is_wet()),
        Some(Slip::FarOff) => (say::far_off(net, aim), Vec::new(), say::it_is_right()),
        None => return Ok(None),
    };
    if judged.is_ok() {
        let entry = WeighEntry { confirmed: context.entry.typed(), ..context.entry.clone() };
        choices.push(Suggestion { label: confirm, entry });
    }
    Ok(Some(Question { text, choices }))
}

/// The one weight in which what was meant differs from what was read; `None` where both do.
fn changed(read: &Reading, meant: &Reading) -> Option<Grams> {
    match (*read, *meant) {
        (Reading::TwoWeights { bare, glazed }, Reading::TwoWeights { bare: bare_meant, glazed: glazed_meant }) => {
            match (bare == bare_meant, glazed == glazed_meant) {
                (true, false) => Some(glazed_meant),
                (false, true) => Some(bare_meant),
                _ => None,
            }
        }
        (_, Reading::Net(net)) => Some(net),
        (Reading::Net(_), Reading::TwoWeights { .. }) => None,
    }
}

/// The entry with this reading typed in.
fn with_reading(context: &WeighContext, reading: &Reading) -> WeighEntry {
    let typed = |grams: Grams| context.style.mass_number(grams, context.scale.step);
    let entry = context.entry.clone();
    match *reading {
        Reading::Net(net) => WeighEntry { net: typed(net), ..entry },
        Reading::TwoWeights { bare, glazed } => WeighEntry { bare: typed(bare), glazed: typed(glazed), ..entry },
    }
}

/// What a bare piece of the form weighs: as its form says, else the middle one of the latest that were weighed bare.
fn usual_bare(conn: &Connection, form: &entity::Form) -> Result<Option<Grams>> {
    if let Some(bisque) = form.bisque_mg {
        return Ok(Some(Grams::from_milligrams(bisque)));
    }
    let mut bare: Vec<i64> = bare_pieces(conn, form.id)?.into_iter().map(Grams::milligrams).collect();
    bare.sort_unstable();
    Ok(bare.get(bare.len() / 2).copied().map(Grams::from_milligrams))
}

/// Whether a reading that this scale cannot show was read off another one.
fn other_scale(
    conn: &Connection,
    context: &WeighContext,
    reading: &Reading,
    target: &Target,
) -> Result<Option<Question>> {
    let mut choices = Vec::new();
    for row in crate::archive::in_use::<entity::Scale>(conn, None)? {
        let Some(scale) = usable(scale_of(&row))?.filter(|_| row.id != context.scale_row.id) else { continue };
        if judge(reading, target, &scale, &context.job, None).is_ok() {
            let entry = WeighEntry { scale: row.id.to_string(), ..context.entry.clone() };
            choices.push(Suggestion { label: row.name, entry });
        }
    }
    let text = say::other_scale(&context.scale_row.name);
    Ok((!choices.is_empty()).then_some(Question { text, choices }))
}
