//! "Why this target?": each piece of evidence with its weight in the answer, and what the answer would be without it.

use rusqlite::Connection;
use serde::Serialize;
use uuid::Uuid;

use super::evidence::KnownPot;
use super::words::{control_name, disagreements};
use super::{Fit, fitted};
use crate::date_text::sentence_case;
use crate::in_words::{Named, StyleWords};
use crate::messages::pooled as say;
use crate::{Note, Now, Result};
use laydown_domain::coat::target::Job;
use laydown_domain::learning::observation::ENOUGH;
use laydown_domain::learning::pooled::{Piece, Weight};
use laydown_domain::units::{Grams, Style};
use laydown_store::entity::{self, Entity};
use laydown_store::photos::Photos;
use laydown_store::query;

/// The most pieces that are listed, the heaviest first.
const MOST_ROWS: usize = 60;

/// One piece of evidence.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct EvidenceRow {
    /// What it is: a piece by its form and code, a test tile, the starting value.
    pub title: String,
    /// When, how much, how it came out, and what the target would be without it.
    pub detail: String,
    /// Its weight in the answer, in words; empty where it does not count.
    pub weight: String,
    /// The same from 0 to 1, for a bar.
    pub share: f64,
    /// The file of a small picture of the piece; empty where none was taken.
    pub photo: String,
    /// The piece that it opens; empty where there is none.
    pub piece: String,
    /// The firing after which it was judged; empty where it was not.
    pub firing: String,
    /// What the button says that leaves it out or counts it again; empty where neither can be.
    pub toggle: String,
    /// Whether it counts.
    pub counts: bool,
}

/// Why a target is what it is.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct WhyTargetView {
    /// "Why 18.8 g?"
    pub title: String,
    /// What it rests on, in sentences.
    pub answer: Vec<String>,
    /// What disagrees, is odd, or says little.
    pub notes: Vec<Note>,
    /// The evidence, the heaviest first; what does not count comes last.
    pub rows: Vec<EvidenceRow>,
}

/// The rows of a target in use, or of what is known while there is too little for one.
pub(crate) fn why(
    conn: &Connection,
    photos: &Photos,
    now: Now,
    glaze: &entity::Glaze,
    form: &entity::Form,
    job: &Job,
    (style, step): (&Style, Grams),
) -> Result<(Vec<String>, Vec<Note>, Vec<EvidenceRow>)> {
    let fit = match fitted(conn, now, glaze, form, job)? {
        Ok(fit) => fit,
        Err(known) => {
            let rows = known.left_out.iter().map(|pot| left_out(conn, now, pot, style));
            let mut rows = rows.collect::<Result<Vec<_>>>()?;
            for row in &mut rows {
                row.photo = photo(conn, photos, row)?;
            }
            return Ok((vec![say::too_few_pots(known.evidence.pots.len(), ENOUGH)], Vec::new(), rows));
        }
    };
    let aim = fit.fitted.outlook().aim(job.zone.area, &job.solids);
    let mut rows = Vec::new();
    for weight in fit.fitted.weights().into_iter().take(MOST_ROWS) {
        let without = aim.map(|aim| style.mass(aim.wet * weight.without.exp(), step));
        rows.push(row(conn, now, &fit, &weight, without, style)?);
    }
    for pot in &fit.known.left_out {
        rows.push(left_out(conn, now, pot, style)?);
    }
    for row in &mut rows {
        row.photo = photo(conn, photos, row)?;
    }
    let notes = disagreements(conn, &fit.fitted.notes(&fit.known.evidence), style)?;
    Ok((vec![say::weights_add_up()], notes.into_iter().map(Note::attention).collect(), rows))
}

/// The target by everything known, fitted anew: to say what leaving a piece out changed.
pub(crate) fn wet(
    conn: &Connection,
    now: Now,
    glaze: &entity::Glaze,
    form: &entity::Form,
    job: &Job,
) -> Result<Option<Grams>> {
    let fit = fitted(conn, now, glaze, form, job)?.ok();
    Ok(fit.and_then(|fit| fit.fitted.outlook().aim(job.zone.area, &job.solids)).map(|aim| aim.wet))
}

/// The latest small picture of the piece, of the firing after which it was judged where there is one.
fn photo(conn: &Connection, files: &Photos, row: &EvidenceRow) -> Result<String> {
    let Ok(piece) = row.piece.parse::<Uuid>() else { return Ok(String::new()) };
    let firing = row.firing.parse::<Uuid>().ok();
    // A file may not have come to this phone yet.
    let mut taken = query::photos(conn, piece)?;
    taken.retain(|photo| files.has(&photo.sha256));
    let best = taken.iter().rfind(|photo| photo.firing == firing).or(taken.last());
    Ok(best.map(|photo| files.preview(&photo.sha256).to_string_lossy().into_owned()).unwrap_or_default())
}

fn row(
    conn: &Connection,
    now: Now,
    fit: &Fit,
    weight: &Weight,
    without: Option<String>,
    style: &Style,
) -> Result<EvidenceRow> {
    let plain = |title: String, facts: String| EvidenceRow {
        title,
        detail: facts,
        weight: style.percent(weight.share, 0),
        share: weight.share.clamp(0.0, 1.0),
        photo: String::new(),
        piece: String::new(),
        firing: String::new(),
        toggle: String::new(),
        counts: true,
    };
    let facts = |facts: String| match &without {
        Some(without) => say::facts_and_without(facts, without),
        None => facts,
    };
    Ok(match weight.piece {
        Piece::Pot(id) => match fit.known.pots.get(&id) {
            Some(pot) => EvidenceRow {
                piece: pot.piece.to_string(),
                firing: pot.firing.to_string(),
                toggle: say::leave_out(),
                ..plain(pot_title(conn, pot)?, facts(pot_facts(conn, now, pot, style)?))
            },
            None => plain(control_name(conn, id)?, String::new()),
        },
        Piece::Control(id) => {
            let coat = entity::Coat::load(conn, id)?;
            let title = say::control_piece(control_name(conn, id)?);
            let known = fit.known.controls.get(&id);
            let said = known.map(|(piece, _)| {
                let net = mass(conn, piece.scale, piece.net_mg, style)?;
                Ok::<_, crate::StudioError>(say::when_and_weight(now.moment(piece.at), net))
            });
            EvidenceRow {
                piece: coat.map(|coat| coat.piece.to_string()).unwrap_or_default(),
                ..plain(title, facts(said.transpose()?.unwrap_or_default()))
            }
        }
        Piece::Tile(id) => {
            let tile = entity::Tile::load(conn, id)?;
            plain(tile.map_or_else(say::some_piece, |tile| say::test_tile(&tile.name)), facts(String::new()))
        }
        Piece::Starting => {
            let start = style.laydown_with_unit(fit.known.evidence.starting);
            plain(say::starting_value(), facts(say::starts_with(start)))
        }
        Piece::Assumptions => plain(say::usual(), say::usual_help()),
    })
}

/// A judged coat that does not count.
fn left_out(conn: &Connection, now: Now, pot: &KnownPot, style: &Style) -> Result<EvidenceRow> {
    Ok(EvidenceRow {
        title: pot_title(conn, pot)?,
        detail: say::does_not_count(pot_facts(conn, now, pot, style)?),
        weight: String::new(),
        share: 0.0,
        photo: String::new(),
        piece: pot.piece.to_string(),
        firing: pot.firing.to_string(),
        toggle: say::count_again(),
        counts: false,
    })
}

fn pot_title(conn: &Connection, pot: &KnownPot) -> Result<String> {
    let name = crate::kiln::piece_name(conn, &query::coats_of_piece(conn, pot.piece)?)?;
    Ok(say::piece_and_zone(name, pot.zone.name()))
}

/// "5 November: 19.4 g, thick."
fn pot_facts(conn: &Connection, now: Now, pot: &KnownPot, style: &Style) -> Result<String> {
    let net = mass(conn, pot.scale, pot.net_mg, style)?;
    Ok(sentence_case(&say::when_weight_and_look(now.moment(pot.at), net, pot.thickness.name())))
}

/// A weight as its scale showed it.
fn mass(conn: &Connection, scale: Option<Uuid>, mg: i64, style: &Style) -> Result<String> {
    let scale = scale.map(|id| entity::Scale::load(conn, id)).transpose()?.flatten();
    let step = scale.map_or(Grams::new(0.1), |scale| Grams::from_milligrams(scale.step_mg));
    Ok(style.mass(Grams::from_milligrams(mg), step))
}
