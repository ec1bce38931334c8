//! The editor of a piece weighed again bone dry: the glaze powder in its coats by itself, beside what the bucket's SG says.

use uuid::Uuid;

use super::builder::{Ask, EditorBuilder, item};
use super::notation::MASS;
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::date_text::sentence_case;
use crate::dry::{scale_of_coats, suspects, wet_coats};
use crate::in_words::{StyleWords as _, dry_refused, name_of, with_doubt};
use crate::kiln::{Pot, glazes, piece_name, was_fired};
use crate::messages::{editor_dry_weight as say, weigh};
use crate::weigh::unfired_newest_first;
use crate::{Result, StudioError};
use laydown_domain::coat::dry::{DryGlaze, WetCoat, disagreement, together};
use laydown_domain::form::ZoneKind;
use laydown_domain::units::{Grams, Laydown, SquareCentimetres};
use laydown_store::entity::Coat;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    builder.title = say::title();
    let Some(pot) = piece(context, builder)? else { return Ok(None) };
    let Some(first) = pot.coats.first().cloned() else { return Err(StudioError::missing("piece")) };
    let scale = scale_of_coats(context.conn, &pot.coats)?;
    let style = builder.style;
    let mass = |key, label: String| Ask::new(key, label).hint(style.mass.symbol());

    // What the scale showed before the first coat needs no asking.
    let is_read = first.glazed_mg.is_some();
    let bare = match first.bare_mg.filter(|_| is_read).map(Grams::from_milligrams) {
        Some(bare) => {
            builder.result(Note::plain(say::bare_was(style.mass(bare, scale.step))));
            Some(bare)
        }
        None => builder.quantity(mass("bare", weigh::bare()).help(say::bare_help()), first.bare_mg, MASS),
    };
    let dry_saved: Option<i64> = pot.coats.iter().map(|coat| coat.dry_mg).sum();
    let shown = first.bare_mg.zip(dry_saved).map(|(bare, dry)| bare + dry);
    let bone_dry = builder.optional(mass("bone_dry", say::bone_dry()).help(say::bone_dry_help()), shown, MASS);
    let (Some(bare), Some(bone_dry)) = (bare, bone_dry) else { return Ok(None) };

    let is_untouched = first.bare_mg == Some(bare.milligrams()) && shown == bone_dry.map(Grams::milligrams);
    let Some(bone_dry) = bone_dry else {
        if shown.is_none() {
            builder.require("bone_dry", say::weigh_it());
            return Ok(None);
        }
        let coats = pot.coats.into_iter().map(|coat| Coat { dry_mg: None, dry_uncertainty_mg: None, ..coat }).collect();
        return Ok(Some(write(pot.id, say::removed(), coats)));
    };
    if !is_untouched && was_fired(context.conn, pot.id)? {
        builder.field_error("bone_dry", say::was_fired());
        return Ok(None);
    }
    let wet = match wet_coats(context.conn, &pot.coats, &scale) {
        // What came from elsewhere may have figures that cannot be.
        Err(StudioError::Refused { sentence, .. }) => {
            builder.field_error("bone_dry", sentence);
            return Ok(None);
        }
        wet => wet?,
    };
    let split = DryGlaze::of_piece(bare, bone_dry, &scale).and_then(|weighed| Ok((weighed, weighed.split(&wet)?)));
    let (weighed, split) = match split {
        Ok(found) => found,
        Err(error) => {
            builder.field_error("bone_dry", dry_refused(&error, style, scale.step));
            return Ok(None);
        }
    };
    results(builder, &pot.coats, &wet, weighed, &split, scale.step);
    let found = disagreement(weighed, bare, &wet);
    for note in suspects(found.as_ref(), &wet, style, scale.step) {
        builder.result(note);
    }
    if is_untouched {
        return Ok(Some(PendingWrite::nothing(pot.id, say::saved())));
    }
    let mut coats: Vec<Coat> = pot.coats.iter().zip(&split).map(|(coat, dry)| with_dry(coat, dry)).collect();
    // Shares rounded to milligrams need not sum to what was weighed.
    let left = weighed.dry.milligrams() - coats.iter().filter_map(|coat| coat.dry_mg).sum::<i64>();
    if let Some(coat) = coats.first_mut() {
        coat.dry_mg = coat.dry_mg.map(|dry| dry + left);
        coat.bare_mg = Some(bare.milligrams());
    }
    Ok(Some(write(pot.id, say::saved(), coats)))
}

fn with_dry(coat: &Coat, dry: &DryGlaze) -> Coat {
    Coat {
        dry_mg: Some(dry.dry.milligrams()),
        dry_uncertainty_mg: Some(dry.standard_uncertainty.milligrams()),
        ..coat.clone()
    }
}

fn write(piece: Uuid, sentence: String, coats: Vec<Coat>) -> PendingWrite {
    PendingWrite {
        sentence,
        write: Box::new(move |tx| {
            for coat in &coats {
                tx.put(coat)?;
            }
            Ok(piece)
        }),
    }
}

/// The piece whose page this is about, or one of the unfired pieces with a coat.
fn piece(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<Pot>> {
    if let Some(id) = context.id {
        let pot = Pot::find(context.conn, id)?;
        builder.title = say::title_of(pot.name(context.conn)?);
        return Ok(Some(pot));
    }
    let mut items = Vec::new();
    for (piece, coats) in unfired_newest_first(context.conn, context.now)? {
        let name = piece_name(context.conn, &coats)?;
        items.push(item(&piece.to_string(), name, glazes(context.conn, &coats)?));
    }
    if items.is_empty() {
        builder.result(Note::plain(weigh::nothing_unfired()));
        return Ok(None);
    }
    let chosen = builder.choice(Ask::new("piece", say::piece()), None, FieldKind::Choice, items);
    let chosen = chosen.and_then(|id| id.parse().ok());
    chosen.map(|id| Pot::find(context.conn, id)).transpose()
}

/// What the weight says, beside what the SG says.
fn results(
    builder: &mut EditorBuilder<'_>,
    coats: &[Coat],
    wet: &[WetCoat],
    weighed: DryGlaze,
    split: &[DryGlaze],
    step: Grams,
) {
    let style = *builder.style;
    let with_doubt = |found: &DryGlaze| with_doubt(found, &style, step);
    let by_sg = together(&wet.iter().map(WetCoat::dry).collect::<Vec<_>>());
    builder.result(Note::plain(say::dry_and_by_sg(with_doubt(&weighed), with_doubt(&by_sg))));
    if coats.len() > 1 {
        builder.result(Note::plain(say::of_all_coats(coats.len())));
    }
    for (coat, dry) in coats.iter().zip(split) {
        let area = SquareCentimetres::from_square_millimetres(coat.area_mm2);
        if !area.is_positive() {
            continue;
        }
        let laydown = style.laydown_with_unit(Laydown::of(dry.dry, area));
        let zone = sentence_case(&name_of::<ZoneKind>(&coat.zone));
        builder.result(Note::plain(say::of_one_coat(zone, with_doubt(dry), laydown)));
    }
}
