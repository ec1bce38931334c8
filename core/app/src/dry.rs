//! Pieces weighed again bone dry: from the rows of the store to what is calculated of them, and what that is in words.

use rusqlite::Connection;

use super::archive::in_use;
use super::contents::BucketHistory;
use super::evidence::{powder_density, scale_of, sg_as_of, sg_reading, usable};
use super::in_words::{StyleWords as _, with_doubt};
use super::messages::editor_dry_weight as say;
use super::{Note, Result, StudioError};
use laydown_domain::coat::Solids;
use laydown_domain::coat::dry::{Disagreement, DryGlaze, Suspect, WetCoat};
use laydown_domain::coat::scale::Scale;
use laydown_domain::units::{Grams, PowderDensity, Style};
use laydown_store::entity::{self, Coat, Entity};

/// The scale that a piece's coats were weighed on; one in use where that is not known here.
pub(super) fn scale_of_coats(conn: &Connection, coats: &[Coat]) -> Result<Scale> {
    let own = coats.first().map(|coat| entity::Scale::load(conn, coat.scale)).transpose()?.flatten();
    for row in own.into_iter().chain(in_use::<entity::Scale>(conn, None)?) {
        if let Some(scale) = usable(scale_of(&row))? {
            return Ok(scale);
        }
    }
    Err(StudioError::missing("scale"))
}

/// The coats by their wet weights and the SG of their buckets, as sure as the check was by then, with the powder's density of today.
pub(super) fn wet_coats(conn: &Connection, coats: &[Coat], scale: &Scale) -> Result<Vec<WetCoat>> {
    coats.iter().map(|coat| wet_coat(conn, coat, scale)).collect()
}

fn wet_coat(conn: &Connection, coat: &Coat, scale: &Scale) -> Result<WetCoat> {
    let stored = sg_reading(coat.specific_gravity_e5, coat.sg_uncertainty_e5)?;
    let (checked, at) = sg_as_of(conn, coat.bucket, Some(coat.at))?;
    let sg = match at {
        Some(at) if checked.sg == stored.sg => {
            BucketHistory::read(conn, coat.bucket)?.expected(checked, coat.at.saturating_sub(at))
        }
        _ => stored,
    };
    let glaze = entity::Glaze::load(conn, coat.glaze)?;
    let then = PowderDensity::from_thousandths(coat.powder_density_e3).unwrap_or_default();
    let powder = glaze.as_ref().map_or(then, powder_density);
    Ok(WetCoat {
        wet: Grams::from_milligrams(coat.net_mg),
        wet_standard_uncertainty: scale.net_standard_uncertainty(),
        sg,
        powder,
        solids: Solids::of(sg, powder)?,
    })
}

/// What could be wrong where the dry weight and the SG disagree, or that they agree.
pub(super) fn suspects(found: Option<&Disagreement>, wet: &[WetCoat], style: &Style, step: Grams) -> Vec<Note> {
    let Some(found) = found else { return vec![Note::plain(say::agree())] };
    let more = if found.ratio > 1.0 { "more" } else { "less" };
    let head = say::disagree(more, style.percent((found.ratio - 1.0).abs(), 0));
    let mass = |grams: &Grams| style.mass(*grams, step);
    let one = |suspect: &Suspect| match suspect {
        Suspect::SpecificGravity { would_be } => {
            let checked = wet.first().map(|coat| style.specific_gravity(coat.sg.sg)).unwrap_or_default();
            say::suspect_sg(more, style.specific_gravity(*would_be), checked)
        }
        Suspect::PowderDensity { would_be } => {
            let set = wet.first().map(|coat| style.number(coat.powder.value(), 2)).unwrap_or_default();
            say::suspect_powder(style.number(*would_be, 2), set)
        }
        Suspect::WaterInBisque { water } => say::suspect_wet_bisque(mass(water)),
        Suspect::GlazeLost { dry } => say::suspect_lost(mass(dry)),
        Suspect::NotDry { water } => say::suspect_not_dry(mass(water)),
    };
    std::iter::once(head).chain(found.suspects.iter().map(one)).map(Note::attention).collect()
}

/// "10.5 ±0.3 g dry", where the piece of a coat was weighed again bone dry.
pub(super) fn weighed_dry(coat: &Coat, style: &Style, step: Grams) -> Option<String> {
    let found = DryGlaze {
        dry: Grams::from_milligrams(coat.dry_mg?),
        standard_uncertainty: Grams::from_milligrams(coat.dry_uncertainty_mg?),
    };
    Some(say::weighed_dry(with_doubt(&found, style, step)))
}
