//! The editor of a scale's test: one load put on ten times, and a known weight. What it finds is what Weigh counts with from then on.

use super::builder::{Ask, EditorBuilder};
use super::control::choose;
use super::notation::MASS;
use super::{EditContext, Note, PendingWrite};
use crate::Result;
use crate::evidence::{scale_of, usable};
use crate::in_words::{Sentence as _, good_from, known_weight, repeatability_refused, repeats, repeats_as_its_step};
use crate::messages::{editor as shared, editor_scale_test as say};
use laydown_domain::coat::scale::Scale;
use laydown_domain::learning::repeatability::{KnownWeightCheck, LOADS, Repeatability};
use laydown_domain::units::{Grams, Style, parse};
use laydown_store::entity::{self, Weights};

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::ScaleTest> = context.current()?;
    let saved = current.as_ref();
    let style = builder.style;
    builder.title = if saved.is_some() { say::title() } else { say::new() };
    builder.remove_label = say::archive();

    let ask = Ask::new("scale", say::scale());
    let Some(chosen) = choose::<entity::Scale>(context, builder, ask, saved.map(|test| test.scale))? else {
        return Ok(None);
    };
    let before = saved.and_then(|test| test.readings.clone());
    let stored: Vec<i64> = before.iter().flat_map(|readings| readings.0.iter().copied()).collect();
    let shown = if saved.is_some() { shown(&stored, style) } else { "\n".repeat(LOADS - 1) };
    let ask = Ask::new("readings", say::readings()).help(say::readings_help());
    let typed = builder.table(ask, &shown, vec![say::shown_column(style.mass.symbol())]);
    let readings = if typed == shown && saved.is_some() { Ok(stored) } else { read(&typed, &stored, style) };
    let mass = |key, label: String| Ask::new(key, label).hint(style.mass.symbol());
    let known = builder.optional(
        mass("known", say::known()).help(say::known_help()),
        saved.and_then(|test| test.known_mg),
        MASS,
    );
    let shown_of_known =
        builder.optional(mass("shown", say::known_shown()), saved.and_then(|test| test.shown_mg), MASS);

    let readings = match readings {
        Ok(readings) => readings,
        Err(sentence) => {
            builder.field_error("readings", sentence);
            return Ok(None);
        }
    };
    let (Some(known), Some(shown_of_known)) = (known, shown_of_known) else { return Ok(None) };
    if known.is_some() != shown_of_known.is_some() {
        builder.require(if known.is_some() { "shown" } else { "known" }, say::both_weights());
        return Ok(None);
    }
    if readings.is_empty() && known.is_none() {
        builder.require("readings", say::weigh_something());
        return Ok(None);
    }
    let row = chosen.thing.clone();
    let scale = row.as_ref().map(|row| usable(scale_of(row))).transpose()?.flatten();
    let mut found = None;
    if let Some(scale) = &scale {
        if !readings.is_empty() {
            let grams: Vec<Grams> = readings.iter().copied().map(Grams::from_milligrams).collect();
            match Repeatability::of(&grams, scale) {
                Ok(repeatability) => found = Some(repeatability),
                Err(error) => {
                    builder.field_error("readings", repeatability_refused(&error, style, scale.step));
                    return Ok(None);
                }
            }
        }
        let class = row.as_ref().and_then(|row| row.accuracy_class.as_deref()?.parse().ok());
        results(
            builder,
            scale,
            found,
            known.zip(shown_of_known).map(|(known, shown)| {
                KnownWeightCheck::of(
                    known,
                    shown,
                    &Scale { repeatability: found.map(|found| found.standard_deviation), ..*scale },
                    class,
                )
            }),
        );
    }
    let at = saved.map_or(context.now.unix_ms, |test| test.at);
    let is_new_figure = before.as_ref().map(|readings| &readings.0) != Some(&readings);
    let repeatability_mg = found.filter(|_| is_new_figure).map(|found| found.standard_deviation.milligrams());
    let test = entity::ScaleTest {
        scale: chosen.id,
        at,
        readings: (!readings.is_empty()).then_some(Weights(readings)),
        known_mg: known.map(Grams::milligrams),
        shown_mg: shown_of_known.map(Grams::milligrams),
        ..current.unwrap_or_default()
    };
    let name = row.as_ref().map_or_else(shared::not_on_this_phone, |row| row.name.clone());
    let id = context.id.or(context.new_id);
    Ok(Some(PendingWrite {
        sentence: if repeatability_mg.is_some() { say::saved_and_used(name) } else { say::saved(name) },
        write: Box::new(move |tx| {
            let id = id.unwrap_or_else(|| tx.new_id());
            tx.put(&entity::ScaleTest { id, ..test })?;
            if let (Some(row), Some(_)) = (row, repeatability_mg) {
                tx.put(&entity::Scale { repeatability_mg, ..row })?;
            }
            Ok(id)
        }),
    }))
}

/// What the test says.
fn results(
    builder: &mut EditorBuilder<'_>,
    scale: &Scale,
    found: Option<Repeatability>,
    known: Option<KnownWeightCheck>,
) {
    let style = *builder.style;
    if let Some(found) = found {
        let tested = Scale { repeatability: Some(found.standard_deviation), ..*scale };
        builder.result(Note::plain(repeats(&found, scale.step, &style)));
        builder.result(repeats_as_its_step(&found, scale.step));
        builder.result(Note::plain(good_from(&tested, &style)));
    }
    builder.result_if(known.map(|check| known_weight(&check, scale.step, &style)));
}

/// The readings as they stand in the table.
fn shown(readings: &[i64], style: &Style) -> String {
    readings.iter().map(|reading| (MASS.show)(*reading, style)).collect::<Vec<_>>().join("\n")
}

/// The readings of the table, mg: a row that shows a stored one is that, an empty one is none.
fn read(text: &str, stored: &[i64], style: &Style) -> std::result::Result<Vec<i64>, String> {
    let rows = text.lines().map(str::trim).enumerate().filter(|(_, row)| !row.is_empty());
    rows.map(|(at, row)| {
        let same = stored.iter().copied().find(|reading| (MASS.show)(*reading, style) == row);
        let typed = || parse::mass(row, style).map(Grams::milligrams);
        same.map_or_else(typed, Ok).map_err(|error| say::row_refused(at + 1, error.sentence()))
    })
    .collect()
}
