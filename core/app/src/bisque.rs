//! The studio's bisque: what its lots drink, and what a bare piece of a form usually weighs.

use rusqlite::Connection;
use uuid::Uuid;

use super::Result;
use super::archive::in_use;
use laydown_domain::bisque::{SoakedPiece, UsualBare};
use laydown_domain::units::Grams;
use laydown_store::{entity, query};

/// Among how many of the latest coats bare weights of a form are looked for.
const LATEST: u32 = 60;

/// What a lot drinks, as a fraction of its dry weight; `None` where its figures cannot be.
pub(super) fn absorption(lot: &entity::BisqueLot) -> Option<f64> {
    let piece = SoakedPiece {
        dry: Grams::from_milligrams(lot.bone_dry_mg),
        soaked: Grams::from_milligrams(lot.soaked_mg),
        suspended: None,
    };
    piece.absorption(1.0, Grams::ZERO).ok().map(|found| found.fraction)
}

/// What the lots drank that are of the same body, filled in the same way and fired before `at` (unix ms), the newest first; without
/// the lot `of`.
pub(super) fn earlier_absorptions(
    conn: &Connection,
    of: Option<Uuid>,
    body: Option<Uuid>,
    soaking: &str,
    at: i64,
) -> Result<Vec<f64>> {
    let mut lots: Vec<entity::BisqueLot> = in_use(conn, None)?;
    lots.retain(|lot| Some(lot.id) != of && lot.body == body && lot.soaking == soaking && lot.at <= at);
    lots.sort_by_key(|lot| std::cmp::Reverse(lot.at));
    Ok(lots.iter().filter_map(absorption).collect())
}

/// The lot that ware of `body` glazed at `at` (unix ms) was fired in: the newest of that body by then.
pub(super) fn lot_of(conn: &Connection, body: Option<Uuid>, at: i64) -> Result<Option<entity::BisqueLot>> {
    let Some(body) = body else { return Ok(None) };
    let lots = in_use::<entity::BisqueLot>(conn, None)?.into_iter();
    Ok(lots.filter(|lot| lot.body == Some(body) && lot.at <= at).max_by_key(|lot| lot.at))
}

/// The latest pieces of a form that were weighed bare, before their first coat.
pub(super) fn bare_pieces(conn: &Connection, form: Uuid) -> Result<Vec<Grams>> {
    let mut pieces: Vec<(Uuid, i64)> = Vec::new();
    for coat in query::latest_coats(conn, LATEST)?.into_iter().filter(|coat| coat.form == form) {
        let Some(bare) = coat.bare_mg else { continue };
        match pieces.iter_mut().find(|(piece, _)| *piece == coat.piece) {
            // A later coat was weighed with the earlier one on the piece.
            Some((_, least)) => *least = bare.min(*least),
            None => pieces.push((coat.piece, bare)),
        }
    }
    Ok(pieces.into_iter().map(|(_, bare)| Grams::from_milligrams(bare)).collect())
}

/// What a dry, bare piece of a form usually weighs: by those weighed here, else as its form says.
pub(super) fn usual_bare(conn: &Connection, form: &entity::Form) -> Result<Option<UsualBare>> {
    let said = form.bisque_mg.map(Grams::from_milligrams).map(UsualBare::said);
    Ok(UsualBare::of(&bare_pieces(conn, form.id)?).or(said))
}
