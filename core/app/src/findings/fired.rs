//! What is known of fired pots, glaze by glaze: their looks for the lesson, and the coats in their order for the drift.

use std::collections::{BTreeMap, BTreeSet};

use rusqlite::Connection;
use uuid::Uuid;

use crate::Result;
use crate::evidence::{Pieces, WeighedCoat};
use laydown_domain::form::ZoneKind;
use laydown_domain::kiln::fault::{Fault, Thickness};
use laydown_domain::learning::observation::FiredObservation;
use laydown_domain::units::Laydown;
use laydown_domain::visible::visible;
use laydown_store::entity::{self, Entity};
use laydown_store::query::{self, CoatAndFinding, ControlPiece};

/// Among how many of the newest coats a lesson is looked for, those of all glazes together: as a studio's clay, water and
/// hands change, what is older says less.
pub(super) const NEWEST: u32 = 4_000;

/// The most pots of one glaze that a lesson rests on: the newest, which are as many as a chart can show apart.
pub(super) const MOST_LOOKS: usize = 400;

/// One coat as it was weighed.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Weighed {
    pub(super) form: Uuid,
    pub(super) zone: ZoneKind,
    pub(super) bucket: Uuid,
    pub(super) scale: Uuid,
    /// Who glazed, where that is known.
    pub(super) hand: Option<String>,
    /// Unix ms.
    pub(super) at: i64,
    pub(super) net_mg: i64,
    pub(super) aim_mg: i64,
}

/// All that is known of one glaze.
#[derive(Debug, Clone, Default)]
pub(super) struct OfGlaze {
    /// Its coats, newest first.
    pub(super) coats: Vec<Weighed>,
    /// Those of them that were fired and looked at, newest first, at most [`MOST_LOOKS`].
    pub(super) observations: Vec<FiredObservation>,
    /// How many of these count for targets.
    pub(super) counted: usize,
}

/// The newest coats of the studio, by glaze.
pub(super) struct Fired {
    /// By the glaze's id.
    pub(super) glazes: BTreeMap<Uuid, OfGlaze>,
    /// Whether there are older coats that were not looked through.
    pub(super) is_cut: bool,
    pieces: Vec<Vec<CoatAndFinding>>,
    firings: BTreeMap<Uuid, entity::Firing>,
}

impl Fired {
    pub(super) fn read(conn: &Connection) -> Result<Fired> {
        let rows = query::coats_and_findings(conn, NEWEST)?;
        let mut glazes: BTreeMap<Uuid, OfGlaze> = BTreeMap::new();
        let (mut before, mut count) = (None, 0);
        for row in &rows {
            // A coat comes once for each firing of its piece, one after the other.
            if before.replace(row.coat) != Some(row.coat) {
                count += 1;
                let weighed = |zone| Weighed {
                    form: row.form,
                    zone,
                    bucket: row.bucket,
                    scale: row.scale,
                    hand: row.hand.as_deref().map(|hand| visible(hand).into_owned()),
                    at: row.at,
                    net_mg: row.net_mg,
                    aim_mg: row.aim_mg,
                };
                glazes.entry(row.glaze).or_default().coats.extend(row.zone.parse().ok().map(weighed));
            }
        }
        let pieces = by_piece(rows);
        let mut known = Known {
            bodies: entity::Form::all(conn)?.into_iter().map(|form| (form.id, form.body)).collect(),
            glazes: entity::Glaze::all(conn)?.into_iter().map(|glaze| (glaze.id, glaze)).collect(),
            pieces: Pieces::new(conn),
        };
        let firings = firings(conn, &pieces)?;
        for rows in &pieces {
            for (glaze, observation, left_out) in observations(rows, &firings, &mut known)? {
                let of_glaze = glazes.entry(glaze).or_default();
                if of_glaze.observations.len() < MOST_LOOKS {
                    of_glaze.observations.push(observation);
                    of_glaze.counted += usize::from(!left_out);
                }
            }
        }
        Ok(Fired { glazes, is_cut: count >= NEWEST as usize, pieces, firings })
    }

    /// As [`judged_coats`], of what was read already.
    pub(super) fn judged(&self, glaze: Uuid) -> Vec<JudgedCoats> {
        judged_of(glaze, &self.pieces, &self.firings)
    }
}

/// What one piece says of its glazes, and whether that does not count for targets.
fn observations(
    rows: &[CoatAndFinding],
    firings: &BTreeMap<Uuid, entity::Firing>,
    known: &mut Known<'_>,
) -> Result<Vec<(Uuid, FiredObservation, bool)>> {
    let mut observations = Vec::new();
    for judged in judged(rows, firings) {
        let Some(laydown) = known.laydown(judged.zone, &judged.coats)? else { continue };
        let observation = FiredObservation {
            laydown,
            thickness: judged.thickness,
            zone: judged.zone,
            cone: judged.firing.cone.clone(),
            body: known.bodies.get(&judged.found.form).copied().flatten(),
            faults: faults(judged.zone, judged.found),
        };
        observations.push((judged.found.glaze, observation, judged.found.left_out));
    }
    Ok(observations)
}

/// The coats of one glaze in one zone of a piece, and how they came out.
struct Judged<'a> {
    coats: Vec<&'a CoatAndFinding>,
    /// The first of them, with what was found.
    found: &'a CoatAndFinding,
    firing: &'a entity::Firing,
    zone: ZoneKind,
    thickness: Thickness,
}

/// What was judged on one piece. Its first firing counts, since a later one has changed more than the amount, and only coats
/// that were on it by then. Coats of one glaze in one zone count as one; a zone with two glazes says nothing of either.
fn judged<'a>(rows: &'a [CoatAndFinding], firings: &'a BTreeMap<Uuid, entity::Firing>) -> Vec<Judged<'a>> {
    let fired = rows.iter().filter_map(|row| firings.get(&row.firing?));
    let Some(firing) = fired.min_by_key(|firing| (firing.at, firing.id)) else { return Vec::new() };
    let by_then = firing.fired_at.unwrap_or(i64::MAX);
    let mut zones: BTreeMap<&str, Vec<&CoatAndFinding>> = BTreeMap::new();
    for coat in rows.iter().filter(|row| row.firing == Some(firing.id) && row.at <= by_then) {
        zones.entry(coat.zone.as_str()).or_default().push(coat);
    }
    let is_one_dip_and_more = zones.contains_key(ZoneKind::Whole.code()) && zones.len() > 1;
    let judged = zones.into_iter().filter_map(|(zone, coats)| {
        let (zone, found) = (zone.parse::<ZoneKind>().ok()?, *coats.first()?);
        let is_mixed = is_one_dip_and_more || coats.iter().any(|other| other.glaze != found.glaze);
        let thickness = thickness(zone, &found.inside, &found.outside).filter(|_| !is_mixed)?;
        Some(Judged { coats, found, firing, zone, thickness })
    });
    judged.collect()
}

/// The coats of one glaze in one zone of a piece, and how they came out of its first firing.
pub(crate) struct JudgedCoats {
    pub(crate) piece: Uuid,
    pub(crate) firing: Uuid,
    pub(crate) cone: String,
    pub(crate) zone: ZoneKind,
    pub(crate) thickness: Thickness,
    pub(crate) coats: Vec<ControlPiece>,
    /// Whether they do not count for targets.
    pub(crate) left_out: bool,
}

/// The judged coats of one glaze, the newest first, among the newest coats of the studio.
pub(crate) fn judged_coats(conn: &Connection, glaze: Uuid) -> Result<Vec<JudgedCoats>> {
    let pieces = by_piece(query::coats_and_findings(conn, NEWEST)?);
    let firings = firings(conn, &pieces)?;
    Ok(judged_of(glaze, &pieces, &firings))
}

fn judged_of(
    glaze: Uuid,
    pieces: &[Vec<CoatAndFinding>],
    firings: &BTreeMap<Uuid, entity::Firing>,
) -> Vec<JudgedCoats> {
    let of_glaze = |judged: &Judged<'_>| judged.found.glaze == glaze;
    let judged = pieces.iter().flat_map(|rows| judged(rows, firings)).filter(of_glaze);
    judged
        .map(|judged| JudgedCoats {
            piece: judged.found.piece,
            firing: judged.firing.id,
            cone: judged.firing.cone.clone(),
            zone: judged.zone,
            thickness: judged.thickness,
            coats: judged.coats.iter().map(|coat| weighed(coat)).collect(),
            left_out: judged.found.left_out,
        })
        .collect()
}

fn weighed(coat: &CoatAndFinding) -> ControlPiece {
    ControlPiece {
        id: coat.coat,
        at: coat.at,
        form: coat.form,
        net_mg: coat.net_mg,
        area_mm2: coat.area_mm2,
        specific_gravity_e5: coat.specific_gravity_e5,
        sg_uncertainty_e5: coat.sg_uncertainty_e5,
        scale: Some(coat.scale),
        dry: coat.dry,
    }
}

/// The rows of each piece together, in the order of their newest.
fn by_piece(rows: Vec<CoatAndFinding>) -> Vec<Vec<CoatAndFinding>> {
    let mut pieces: Vec<Vec<CoatAndFinding>> = Vec::new();
    let mut places: BTreeMap<Uuid, usize> = BTreeMap::new();
    for row in rows {
        let place = *places.entry(row.piece).or_insert(pieces.len());
        match pieces.get_mut(place) {
            Some(rows) => rows.push(row),
            None => pieces.push(vec![row]),
        }
    }
    pieces
}

/// The firings that pieces were looked at after.
fn firings(conn: &Connection, pieces: &[Vec<CoatAndFinding>]) -> Result<BTreeMap<Uuid, entity::Firing>> {
    let named: BTreeSet<Uuid> = pieces.iter().flatten().filter_map(|row| row.firing).collect();
    let mut firings = BTreeMap::new();
    for id in named {
        firings.extend(entity::Firing::load(conn, id)?.filter(|firing| !firing.gone).map(|firing| (id, firing)));
    }
    Ok(firings)
}

/// What is known today of the forms and glazes of earlier coats.
struct Known<'a> {
    bodies: BTreeMap<Uuid, Option<Uuid>>,
    glazes: BTreeMap<Uuid, entity::Glaze>,
    pieces: Pieces<'a>,
}

impl Known<'_> {
    /// The laydown of all these coats of one glaze in one zone; `None` where a figure cannot be.
    fn laydown(&mut self, zone: ZoneKind, coats: &[&CoatAndFinding]) -> Result<Option<Laydown>> {
        let mut sum = Laydown::ZERO;
        for coat in coats {
            let Some(glaze) = self.glazes.get(&coat.glaze) else { return Ok(None) };
            let weighed = WeighedCoat {
                form: coat.form,
                net_mg: coat.net_mg,
                specific_gravity_e5: coat.specific_gravity_e5,
                sg_uncertainty_e5: coat.sg_uncertainty_e5,
                area_mm2: coat.area_mm2,
                scale: coat.scale,
                dry: coat.dry,
            };
            let Some(laydown) = self.pieces.laydown(&weighed, glaze, zone)? else { return Ok(None) };
            sum = sum + laydown;
        }
        Ok(Some(sum))
    }
}

/// How thick a zone looks; `None` where it was not said, or where one coat over all came out otherwise inside than outside: then
/// it was laid unevenly, and the amount says nothing.
pub(crate) fn thickness(zone: ZoneKind, inside: &Option<String>, outside: &Option<String>) -> Option<Thickness> {
    let said = match (zone, inside, outside) {
        (ZoneKind::Inside, inside, _) => inside,
        (ZoneKind::Outside, _, outside) => outside,
        (ZoneKind::Whole, Some(inside), Some(outside)) if inside != outside => &None,
        (ZoneKind::Whole, inside @ Some(_), _) => inside,
        (ZoneKind::Whole, None, outside) => outside,
    };
    said.as_deref()?.parse().ok()
}

/// The faults of a piece that are not on another zone.
fn faults(zone: ZoneKind, found: &CoatAndFinding) -> Vec<Fault> {
    let other = match zone {
        ZoneKind::Inside => Some(ZoneKind::Outside.code()),
        ZoneKind::Outside => Some(ZoneKind::Inside.code()),
        ZoneKind::Whole => None,
    };
    let here = |place: &str| other.is_none_or(|other| !place.starts_with(other));
    let found = found.faults.iter().flat_map(|faults| &faults.0);
    found.filter(|(_, place)| here(place)).filter_map(|(fault, _)| fault.parse().ok()).collect()
}
