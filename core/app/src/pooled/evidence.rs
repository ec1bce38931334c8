//! All that a studio knows of a glaze, from the rows of the store.

use std::collections::BTreeMap;

use rusqlite::Connection;
use uuid::Uuid;

use super::days;
use crate::Result;
use crate::evidence::{MOST_CONTROLS, Pieces, sensitivity, teaching_tile};
use crate::findings::{JudgedCoats, judged_coats};
use laydown_domain::coat::target::Control;
use laydown_domain::coat::tile::TileResult;
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::pooled::{ControlPot, GlazeEvidence, JudgedPot, Place, RightTile};
use laydown_domain::units::Laydown;
use laydown_store::query::ControlPiece;
use laydown_store::{entity, query};

/// The most judged coats of a glaze that a fit rests on, the newest: what is older says little more.
const MOST_POTS: usize = 400;

/// The evidence of a glaze, and where each piece of it comes from.
pub(crate) struct Known {
    pub(crate) evidence: GlazeEvidence,
    /// By the coat.
    pub(crate) pots: BTreeMap<Uuid, KnownPot>,
    /// By the coat, or by what was typed in.
    pub(crate) controls: BTreeMap<Uuid, (ControlPiece, ZoneKind)>,
    /// Judged coats that the potter does not want counted.
    pub(crate) left_out: Vec<KnownPot>,
}

/// A judged coat as a potter knows it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct KnownPot {
    pub(crate) piece: Uuid,
    pub(crate) firing: Uuid,
    pub(crate) zone: ZoneKind,
    pub(crate) thickness: Thickness,
    pub(crate) at: i64,
    pub(crate) net_mg: i64,
    pub(crate) scale: Option<Uuid>,
}

/// What the store has of `glaze`. Figures that cannot be are left out, as everywhere.
pub(crate) fn known(conn: &Connection, glaze: &entity::Glaze) -> Result<Known> {
    let judged = if query::any_finding(conn)? { judged_coats(conn, glaze.id)? } else { Vec::new() };
    known_by(conn, glaze, judged)
}

/// The same with its judged coats, the newest first, where they were read already.
pub(crate) fn known_by(conn: &Connection, glaze: &entity::Glaze, judged: Vec<JudgedCoats>) -> Result<Known> {
    let mut pieces = Pieces::new(conn);
    let mut known = Known {
        evidence: GlazeEvidence {
            pots: Vec::new(),
            controls: Vec::new(),
            tiles: tiles(conn, glaze)?,
            starting: Laydown::from_milligrams_per_dm2(glaze.starting_laydown_mg_dm2),
            sensitivity: sensitivity(glaze),
        },
        pots: BTreeMap::new(),
        controls: BTreeMap::new(),
        left_out: Vec::new(),
    };
    for coats in judged.into_iter().take(MOST_POTS) {
        let Some(first) = coats.coats.first() else { continue };
        let pot = KnownPot {
            piece: coats.piece,
            firing: coats.firing,
            zone: coats.zone,
            thickness: coats.thickness,
            at: first.at,
            net_mg: coats.coats.iter().map(|coat| coat.net_mg).sum(),
            scale: first.scale,
        };
        if coats.left_out {
            known.left_out.push(pot);
        } else if let Some(judged) = judged_pot(&mut pieces, &coats, glaze)? {
            known.pots.insert(judged.id, pot);
            known.evidence.pots.push(judged);
        }
    }
    for zone in ZoneKind::ALL {
        for piece in query::control_pieces(conn, glaze.id, zone.code(), MOST_CONTROLS)? {
            let Some(control) = pieces.control(&piece, glaze, *zone, Uuid::nil())? else { continue };
            known.evidence.controls.push(ControlPot {
                id: piece.id,
                place: place(&mut pieces, piece.form, *zone, &control, None)?,
                laydown: laydown(&control),
                relative_uncertainty: relative_uncertainty(&control),
                day: days(piece.at),
            });
            known.controls.insert(piece.id, (piece, *zone));
        }
    }
    Ok(known)
}

/// The coats of one glaze on one zone as one; `None` where a figure cannot be.
fn judged_pot(pieces: &mut Pieces<'_>, coats: &JudgedCoats, glaze: &entity::Glaze) -> Result<Option<JudgedPot>> {
    let (mut sum, mut uncertainty, mut at) = (Laydown::ZERO, 0.0f64, None);
    for coat in &coats.coats {
        let Some(control) = pieces.control(coat, glaze, coats.zone, Uuid::nil())? else { return Ok(None) };
        sum = sum + laydown(&control);
        uncertainty = uncertainty.max(relative_uncertainty(&control));
        let lies = place(pieces, coat.form, coats.zone, &control, coats.cone.parse().ok())?;
        at = at.or(Some((coat.id, lies, coat.at)));
    }
    Ok(at.map(|(id, place, at)| JudgedPot {
        id,
        place,
        laydown: sum,
        relative_uncertainty: uncertainty,
        thickness: coats.thickness,
        day: days(at),
    }))
}

fn place(
    pieces: &mut Pieces<'_>,
    form: Uuid,
    zone: ZoneKind,
    control: &Control,
    cone: Option<laydown_domain::kiln::cone::Cone>,
) -> Result<Place> {
    Ok(Place {
        form,
        zone,
        class: control.class,
        area_relative_uncertainty: control.area_relative_uncertainty,
        body: pieces.body(form)?,
        cone,
    })
}

fn laydown(control: &Control) -> Laydown {
    Laydown::of(control.solids.dry(control.wet), control.area)
}

/// That of the dry weight, without the area.
fn relative_uncertainty(control: &Control) -> f64 {
    control.solids.relative_uncertainty.hypot(control.net_standard_uncertainty / control.wet)
}

fn tiles(conn: &Connection, glaze: &entity::Glaze) -> Result<Vec<RightTile>> {
    let mut tiles = Vec::new();
    for tile in query::tiles(conn, glaze.id, TileResult::Right.code(), MOST_CONTROLS)? {
        tiles.extend(teaching_tile(&tile, glaze)?.map(|found| RightTile {
            id: tile.id,
            laydown: found.laydown,
            relative_uncertainty: found.relative_uncertainty,
        }));
    }
    Ok(tiles)
}
