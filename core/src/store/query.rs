//! What the weigh screen asks of the studio, each answered from an index: as fast in the thousandth week as in the first.

use rusqlite::{Connection, OptionalExtension, params};
use uuid::Uuid;

use super::entity::{Check, Coat, Control, Entity, Tile};
use super::error::StoreError;

/// The coat weighed last.
pub fn latest_coat(conn: &Connection) -> Result<Option<Coat>, StoreError> {
    let mut select = conn.prepare_cached("SELECT * FROM coat ORDER BY at DESC, id DESC LIMIT 1")?;
    Ok(select.query_row([], Coat::from_row).optional()?)
}

/// The latest coats, newest first, at most `limit`.
pub fn latest_coats(conn: &Connection, limit: u32) -> Result<Vec<Coat>, StoreError> {
    let mut select = conn.prepare_cached("SELECT * FROM coat ORDER BY at DESC, id DESC LIMIT ?1")?;
    let coats = select.query_map([limit], Coat::from_row)?.collect::<Result<_, _>>()?;
    Ok(coats)
}

/// How many coats were weighed from `from_ms` on and before `until_ms` (unix ms).
pub fn coats_between(conn: &Connection, from_ms: i64, until_ms: i64) -> Result<u32, StoreError> {
    let mut select = conn.prepare_cached("SELECT count(*) FROM coat WHERE at >= ?1 AND at < ?2")?;
    Ok(select.query_row([from_ms, until_ms], |row| row.get(0))?)
}

/// How many coats were weighed from `from_ms` (unix ms) on, and how many of them with the verdict `verdict`.
pub fn tally(conn: &Connection, from_ms: i64, verdict: &str) -> Result<(i64, i64), StoreError> {
    let mut select =
        conn.prepare_cached("SELECT count(*), count(*) FILTER (WHERE verdict = ?2) FROM coat WHERE at >= ?1")?;
    Ok(select.query_row(params![from_ms, verdict], |row| Ok((row.get(0)?, row.get(1)?)))?)
}

/// How many coats were taken from `bucket` from `from_ms` (unix ms) on, as since its last check.
pub fn coats_from_bucket(conn: &Connection, bucket: Uuid, from_ms: i64) -> Result<u32, StoreError> {
    let mut select = conn.prepare_cached("SELECT count(*) FROM coat WHERE bucket = ?1 AND at >= ?2")?;
    Ok(select.query_row(params![bucket, from_ms], |row| row.get(0))?)
}

/// The control coats of `glaze` in `zone`, newest first, at most `limit`.
pub fn control_coats(conn: &Connection, glaze: Uuid, zone: &str, limit: u32) -> Result<Vec<Coat>, StoreError> {
    let mut select = conn.prepare_cached(
        "SELECT * FROM coat WHERE control AND glaze = ?1 AND zone = ?2 ORDER BY at DESC, id DESC LIMIT ?3",
    )?;
    let coats = select.query_map(params![glaze, zone, limit], Coat::from_row)?.collect::<Result<_, _>>()?;
    Ok(coats)
}

/// The amounts known to be right for `glaze` in `zone`, newest first, at most `limit`.
pub fn controls(conn: &Connection, glaze: Uuid, zone: &str, limit: u32) -> Result<Vec<Control>, StoreError> {
    let mut select = conn.prepare_cached(
        "SELECT * FROM control WHERE NOT gone AND glaze = ?1 AND zone = ?2 ORDER BY at DESC, id DESC LIMIT ?3",
    )?;
    let controls = select.query_map(params![glaze, zone, limit], Control::from_row)?.collect::<Result<_, _>>()?;
    Ok(controls)
}

/// The test tiles of `glaze`, newest first, at most `limit`.
pub fn tiles(conn: &Connection, glaze: Uuid, limit: u32) -> Result<Vec<Tile>, StoreError> {
    let mut select =
        conn.prepare_cached("SELECT * FROM tile WHERE NOT gone AND glaze = ?1 ORDER BY at DESC, id DESC LIMIT ?2")?;
    let tiles = select.query_map(params![glaze, limit], Tile::from_row)?.collect::<Result<_, _>>()?;
    Ok(tiles)
}

/// The last check of `bucket`.
pub fn latest_check(conn: &Connection, bucket: Uuid) -> Result<Option<Check>, StoreError> {
    let mut select =
        conn.prepare_cached("SELECT * FROM \"check\" WHERE bucket = ?1 ORDER BY at DESC, id DESC LIMIT 1")?;
    Ok(select.query_row([bucket], Check::from_row).optional()?)
}

/// The checks of `bucket`, newest first, at most `limit`.
pub fn checks(conn: &Connection, bucket: Uuid, limit: u32) -> Result<Vec<Check>, StoreError> {
    let mut select =
        conn.prepare_cached("SELECT * FROM \"check\" WHERE bucket = ?1 ORDER BY at DESC, id DESC LIMIT ?2")?;
    let checks = select.query_map(params![bucket, limit], Check::from_row)?.collect::<Result<_, _>>()?;
    Ok(checks)
}
