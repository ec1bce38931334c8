//! The mixing sheet: what to weigh of each material and how much water for a wanted batch, ticked off as it is weighed. Saving
//! it makes a new bucket.

use rusqlite::Connection;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder, item};
use super::notation::{MASS, SG, VOLUME};
use super::{EditContext, EditorEntry, FieldKind, Note, PendingWrite, Value};
use crate::archive::in_use;
use crate::date_text::DAY_MS;
use crate::draft;
use crate::evidence::{bucket_in_use, finest_step, hazards, latest_sg, powder_density, recipe};
use crate::in_words::{StyleWords as _, caution_text, hurts, thin_glaze};
use crate::local_settings::{remember as remember_under, remembered};
use crate::messages::{editor as shared, editor_mix as say};
use crate::{Now, Result};
use laydown_domain::caution::Caution;
use laydown_domain::glaze::material::Hazard;
use laydown_domain::glaze::recipe::{Batch, on_scale, rounding_that_matters};
use laydown_domain::units::{Grams, SpecificGravity, Style};
use laydown_store::{Transaction, entity};

const BY_POWDER: &str = "powder";
const BY_VOLUME: &str = "volume";

/// A sheet that was left so long ago is begun anew.
const FORGOTTEN_AFTER_DAYS: i64 = 7;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    if let Some(made) = context.current::<entity::Bucket>()? {
        // A sheet is saved once: it is another bucket's after that.
        return Ok(Some(PendingWrite::nothing(made.id, shared::is_saved(made.name))));
    }
    let glaze: entity::Glaze = context.subject()?;
    let style = builder.style;
    builder.title = say::title(&glaze.name);
    builder.save_label = say::save();

    let by = builder.choice(
        Ask::new("by", say::by()),
        None,
        FieldKind::Choice,
        vec![item(BY_POWDER, say::by_powder(), say::by_powder_detail()), item(BY_VOLUME, say::by_volume(), "")],
    );
    let is_by_volume = by.as_deref() == Some(BY_VOLUME);
    let (mut base, mut volume) = (None, None);
    if is_by_volume {
        volume = builder.quantity(Ask::new("volume", say::volume()).hint(style.volume.symbol()), None, VOLUME);
    } else {
        base = builder.quantity(Ask::new("powder", say::powder()).hint(style.mass.symbol()), None, MASS);
    }
    let sg = builder.quantity(
        Ask::new("specific_gravity", say::sg()).hint(style.number(EXAMPLE_SG, 2)),
        Some(wanted_sg(context.conn, &glaze)?),
        SG,
    );
    let scale = scale(context.conn, builder)?;
    let name = builder.text(Ask::new("name", shared::name()), Some(&say::lot_of(context.now.day(context.now.unix_ms))));
    let Some(sg) = sg else { return Ok(None) };
    let density = powder_density(&glaze);
    let recipe = recipe(&glaze);
    let powder_per_base = recipe.as_ref().map_or(1.0, |recipe| recipe.powder_per_base());
    let (batch, field) = match (base, volume) {
        (Some(base), _) => (Batch::of_powder(base * powder_per_base, sg, density), "powder"),
        (None, Some(volume)) => (Batch::of_volume(volume, sg, density), "volume"),
        (None, None) => return Ok(None),
    };
    let batch = match batch {
        Ok(batch) => batch,
        Err(error) => {
            builder.field_error(field, error);
            return Ok(None);
        }
    };
    let mut weights: Vec<(String, Grams)> = match &recipe {
        Some(recipe) => {
            let names = recipe.materials().iter().map(|material| material.name.clone());
            names.zip(recipe.weights(batch.powder / powder_per_base)).collect()
        }
        None => vec![(glaze.name.clone(), batch.powder)],
    };
    weights.push((say::water(), batch.water));
    tick_off(builder, &weights, &scale);
    notes(builder, &glaze, &batch, sg);
    let Some(name) = name else { return Ok(None) };
    let (sentence, at, new_id) = (shared::is_saved(&name), context.now.unix_ms, context.new_id);
    let (begun, glaze, volume_ul) = (under(glaze.id), glaze.id, batch.volume.microlitres());
    Ok(Some(PendingWrite {
        sentence,
        write: Box::new(move |tx| {
            let id = new_id.unwrap_or_else(|| tx.new_id());
            let volume_ul = Some(volume_ul);
            tx.put(&entity::Bucket { id, glaze, name, volume_ul, mixed_at: at, ..entity::Bucket::default() })?;
            tx.choose(&begun, None)?;
            Ok(id)
        }),
    }))
}

/// The SG to mix to: at which the glaze is used, else that of its newest bucket, else the usual one; in hundred-thousandths.
fn wanted_sg(conn: &Connection, glaze: &entity::Glaze) -> Result<i64> {
    if let Some(working) = glaze.working_sg_e5 {
        return Ok(working);
    }
    let newest = bucket_in_use(conn, glaze.id)?.map(|bucket| latest_sg(conn, bucket.id)).transpose()?;
    Ok(newest.map_or(SpecificGravity::USUAL, |(reading, _)| reading.sg).hundred_thousandths())
}

/// What the powders are weighed on.
struct OnScale {
    step: Grams,
    capacity: Option<Grams>,
}

/// The scale: one of those in use, the finest unless another is chosen. Without any, what shows a gram.
fn scale(conn: &Connection, builder: &mut EditorBuilder<'_>) -> Result<OnScale> {
    let style = builder.style;
    let mut scales = in_use::<entity::Scale>(conn, None)?;
    scales.sort_by_key(|scale| scale.step_mg);
    let step = |scale: &entity::Scale| Grams::from_milligrams(scale.step_mg);
    let items =
        scales.iter().map(|scale| item(&scale.id.to_string(), &scale.name, style.mass(step(scale), step(scale))));
    let items: Vec<_> = items.collect();
    if items.is_empty() {
        return Ok(OnScale { step: finest_step(conn)?, capacity: None });
    }
    let chosen = builder.choice(Ask::new("scale", say::scale()), None, FieldKind::Choice, items);
    let chosen = scales.iter().find(|scale| chosen.as_deref() == Some(scale.id.to_string().as_str()));
    Ok(OnScale {
        step: chosen.map_or(Grams::new(1.0), step),
        capacity: chosen.map(|scale| Grams::from_milligrams(scale.capacity_mg)),
    })
}

/// A switch for each weight, and what rounding to the scale's step does to it.
fn tick_off(builder: &mut EditorBuilder<'_>, weights: &[(String, Grams)], scale: &OnScale) {
    let style = builder.style;
    let mut weighed = 0;
    let mut doubts = Vec::new();
    for (at, (name, exact)) in weights.iter().enumerate() {
        let shown = on_scale(*exact, scale.step);
        let words = style.mass(shown, scale.step);
        // The weight is part of the key: what was ticked off at another weight is not weighed at this one.
        let key = format!("weighed_{at}_{}", shown.milligrams());
        weighed += usize::from(builder.switch(Ask::new(key, say::weigh(name, &words)), false));
        if let Some(off) = rounding_that_matters(*exact, scale.step).filter(|_| exact.is_positive()) {
            doubts.push(say::rounded(name, words, style.mass(*exact, finer(scale.step)), style.percent(off, 0)));
        } else if scale.capacity.is_some_and(|capacity| shown > capacity) {
            doubts.push(say::over_capacity(name, words));
        }
    }
    if weighed > 0 {
        builder.result(Note::plain(say::weighed(weighed, weights.len())));
    }
    doubts.into_iter().for_each(|doubt| builder.result(Note::attention(doubt)));
}

/// A step at which it shows what rounding took away.
fn finer(step: Grams) -> Grams {
    step / 100.0
}

/// What comes of the batch, and what to mind.
fn notes(builder: &mut EditorBuilder<'_>, glaze: &entity::Glaze, batch: &Batch, sg: SpecificGravity) {
    let style: &Style = builder.style;
    let gram = Grams::new(1.0);
    let volume = style.volume(batch.volume);
    builder.result(Note::plain(say::makes(volume, style.specific_gravity(sg), style.mass(batch.powder, gram))));
    builder.result_if(thin_glaze(sg, style).map(Note::attention));
    builder.result(Note::plain(say::by_weight()));
    let found = hazards(glaze);
    found.iter().for_each(|hazard| builder.result(Note::warning(hurts(*hazard))));
    builder.result(Note::warning(caution_text(Caution::Dust)));
    if found.iter().any(|hazard| *hazard != Hazard::Silica) {
        builder.result(Note::warning(caution_text(Caution::Materials)));
    }
}

/// What is remembered of a sheet.
#[derive(Serialize, Deserialize)]
struct Begun {
    /// When something was entered last, unix ms.
    at: i64,
    /// What is entered.
    values: Vec<(String, String)>,
}

/// Under what name the sheet of a glaze is remembered.
fn under(glaze: Uuid) -> String {
    format!("mix {glaze}")
}

/// What was entered in the sheet of this glaze, on this phone, before it was closed.
pub(super) fn begun(conn: &Connection, now: Now, entry: &EditorEntry) -> Result<Vec<Value>> {
    let Some(glaze) = entry.ids()?.1 else { return Ok(Vec::new()) };
    let begun = remembered::<Begun>(conn, &under(glaze))?;
    let begun = begun.filter(|begun| now.unix_ms.saturating_sub(begun.at) < FORGOTTEN_AFTER_DAYS * DAY_MS);
    let values = begun.into_iter().flat_map(|begun| begun.values);
    Ok(values.map(|(key, text)| Value { key, text }).collect())
}

/// Remembers what is entered. What comes after the sheet was saved is too late, and is not remembered.
pub(super) fn remember(tx: &mut Transaction<'_>, now: Now, entry: &EditorEntry) -> Result<()> {
    let draft = draft::named(&entry.draft)?;
    if draft.map(|draft| draft::is_saved(tx.conn(), draft)).transpose()?.unwrap_or(false) {
        return Ok(());
    }
    let Some(glaze) = entry.ids()?.1 else { return Ok(()) };
    let mut values: Vec<(String, String)> = Vec::new();
    for Value { key, text } in entry.all_values(tx.conn(), now)? {
        values.retain(|(known, _)| *known != key);
        values.push((key, text));
    }
    remember_under(tx, &under(glaze), &Begun { at: now.unix_ms, values })
}
