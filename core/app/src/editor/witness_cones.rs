//! The editor of a firing's witness cones: which are placed beside the ware. They are read in the editor of the firing.

use std::collections::BTreeSet;

use super::builder::{Ask, EditorBuilder, item};
use super::{EditContext, FieldKind, PendingWrite};
use crate::messages::{editor_firing as say, editor_witness_cones as cones};
use crate::{Note, Result, StudioError};
use laydown_domain::kiln::cone::{Cone, likely_meant};
use laydown_store::entity::{self, Pairs};

/// The codes of the answers.
const THREE: &str = "three";
const ONE: &str = "one";
const OTHERS: &str = "others";

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let firing = context.current::<entity::Firing>()?.ok_or_else(|| StudioError::missing("firing"))?;
    builder.title = say::witnesses();
    let saved: Vec<String> = firing.witnesses.iter().flat_map(|pairs| &pairs.0).map(|(cone, _)| cone.clone()).collect();
    let usual = Usual::of(&firing.cone);
    let shown = match &usual {
        Some(usual) => usual.answer(&saved),
        None if saved.is_empty() => "",
        None => OTHERS,
    };
    let mut items = Vec::new();
    if let Some(usual) = &usual {
        items.push(item(THREE, say::cones(usual.three.join(", ")), cones::three_detail()));
        items.push(item(ONE, say::cone(usual.one), cones::one_detail()));
    }
    items.push(item(OTHERS, cones::others(), ""));
    items.push(item("", say::no_witnesses(), ""));
    let ask = Ask::new("witnesses", say::witnesses()).help(say::witnesses_help());
    let answer = builder.choice(ask, Some(shown), FieldKind::Choice, items);
    let placed = match (answer.as_deref(), &usual) {
        (Some(THREE), Some(usual)) => Some(usual.three.iter().map(|cone| (*cone).to_owned()).collect()),
        (Some(ONE), Some(usual)) => Some(vec![usual.one.to_owned()]),
        (Some(OTHERS), _) => typed(builder, &firing, &saved),
        _ => Some(Vec::new()),
    };
    let Some(placed) = placed else { return Ok(None) };
    let sentence = if placed.is_empty() { cones::none_saved() } else { cones::saved(placed.join(", ")) };
    let before = firing.witnesses.clone().unwrap_or_default().0;
    let reading = |cone: &String| before.iter().find(|(known, _)| known == cone).map(|(_, reading)| reading.clone());
    let pairs: Vec<(String, String)> =
        placed.iter().map(|cone| (cone.clone(), reading(cone).unwrap_or_default())).collect();
    let witnesses =
        if placed == saved { firing.witnesses.clone() } else { Some(Pairs(pairs)).filter(|set| !set.0.is_empty()) };
    Ok(Some(PendingWrite::one(context, sentence, move |id| entity::Firing { id, witnesses, ..firing })))
}

/// The cones that are usually placed for a cone aimed at: that one, the one below and the one above.
pub(super) struct Usual {
    one: &'static str,
    three: Vec<&'static str>,
}

impl Usual {
    /// `None` for a cone that only a newer version knows.
    pub(super) fn of(aimed: &str) -> Option<Usual> {
        let aimed: Cone = aimed.parse().ok()?;
        Some(Usual { one: aimed.code(), three: around(aimed).map(Cone::code).collect() })
    }

    /// These in place of those that are usual `before`; `None` where others were placed.
    pub(super) fn instead_of(self, before: &Usual, placed: &[String]) -> Option<Vec<&'static str>> {
        match before.answer(placed) {
            THREE => Some(self.three),
            ONE => Some(vec![self.one]),
            _ => None,
        }
    }

    /// The code of the answer that these cones are.
    fn answer(&self, placed: &[String]) -> &'static str {
        match placed {
            [] => "",
            placed if placed == self.three => THREE,
            [one] if one == self.one => ONE,
            _ => OTHERS,
        }
    }
}

/// The cone below the one aimed at, that one, and the one above.
pub(super) fn around(aimed: Cone) -> impl Iterator<Item = Cone> {
    [aimed.cooler(), Some(aimed), aimed.hotter()].into_iter().flatten()
}

/// Cones as they are typed, "5, 6, 7"; `None` while they cannot be taken. Where they are far from the cone aimed at and a
/// leading zero explains it, the potter is asked which was meant.
fn typed(builder: &mut EditorBuilder<'_>, firing: &entity::Firing, saved: &[String]) -> Option<Vec<String>> {
    let shown = saved.join(", ");
    let text = builder.remark(Ask::new("cones", cones::which()).hint(cones::which_hint()), Some(&shown))?;
    let text = text.unwrap_or_default();
    if text == shown && !saved.is_empty() {
        return Some(saved.to_vec());
    }
    let mut read = Vec::new();
    for word in text.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty()) {
        match word.parse::<Cone>() {
            Ok(cone) => read.push(cone),
            Err(_) => {
                builder.field_error("cones", cones::no_such_cone(word));
                return None;
            }
        }
    }
    if read.is_empty() {
        builder.require("cones", cones::type_cones());
        return None;
    }
    let list = |cones: &[Cone]| cones.iter().map(|cone| cone.code()).collect::<Vec<_>>().join(", ");
    // The coolest first, each once.
    let codes = |cones: &[Cone]| {
        let cones: BTreeSet<Cone> = cones.iter().copied().collect();
        cones.into_iter().map(|cone| cone.code().to_owned()).collect::<Vec<_>>()
    };
    let meant = firing.cone.parse().ok().and_then(|aimed| likely_meant(aimed, &read));
    let Some(meant) = meant else { return Some(codes(&read)) };
    builder.result(Note::attention(cones::far_from_aim(list(&read), &firing.cone)));
    let items =
        vec![item("meant", cones::yes_meant(list(&meant)), ""), item("typed", cones::no_typed(list(&read)), "")];
    match builder.question(Ask::new("meant", cones::did_you_mean(list(&meant))), items)?.as_str() {
        "meant" => Some(codes(&meant)),
        _ => Some(codes(&read)),
    }
}
