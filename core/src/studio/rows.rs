//! The rows a screen needs beyond one by its id: each by an index, never by a scan of what grows with the years.

use rusqlite::{Connection, Params};
use uuid::Uuid;

use super::{Result, StudioError};
use crate::form::ZoneKind;
use crate::store::StoreError;
use crate::store::entity::{Bucket, Check, Coat, Control, Entity, Form, Glaze, Scale, Tile, Vessel};

/// Something that can be put away: it leaves the lists while the records that name it stay whole.
pub(super) trait Keepsake: Entity {
    /// What it is called in a sentence.
    const WHAT: &'static str;
    /// Whether it has been put away.
    fn gone(&self) -> bool;
    /// The same, put away.
    fn put_away(self) -> Self;
    /// What it is called by the potter.
    fn called(&self) -> String;
}

macro_rules! keepsakes {
    ($($entity:ident $what:literal $called:expr;)*) => {
        $(impl Keepsake for $entity {
            const WHAT: &'static str = $what;
            fn gone(&self) -> bool {
                self.gone
            }
            fn put_away(self) -> Self {
                $entity { gone: true, ..self }
            }
            fn called(&self) -> String {
                let called: fn(&$entity) -> String = $called;
                called(self)
            }
        })*
    };
}

keepsakes! {
    Form "form" |form| form.name.clone();
    Glaze "glaze" |glaze| glaze.name.clone();
    Bucket "bucket" |bucket| bucket.name.clone();
    Vessel "vessel" |vessel| vessel.name.clone();
    Scale "scale" |scale| scale.name.clone();
    Tile "test tile" |tile| tile.name.clone();
    Control "control piece" |_| "The control piece".to_owned();
}

/// The one with this id, put away or not.
pub(super) fn found<E: Keepsake>(conn: &Connection, id: Uuid) -> Result<E> {
    E::load(conn, id)?.ok_or_else(|| StudioError::missing(E::WHAT))
}

/// All that are in use, and the one named `kept` even if it has been put away since.
pub(super) fn in_use<E: Keepsake>(conn: &Connection, kept: Option<Uuid>) -> Result<Vec<E>> {
    Ok(E::all(conn)?.into_iter().filter(|entity| !entity.gone() || kept == Some(entity.id())).collect())
}

/// The coats kept last, newest first.
pub(super) fn latest_coats(conn: &Connection, most: i64) -> Result<Vec<Coat>> {
    rows(conn, "SELECT * FROM coat ORDER BY at DESC, id DESC LIMIT ?1", [most])
}

/// The coats marked as control pieces for this glaze and zone, newest first.
pub(super) fn control_coats(conn: &Connection, glaze: Uuid, zone: ZoneKind, most: i64) -> Result<Vec<Coat>> {
    rows(
        conn,
        "SELECT * FROM coat WHERE control AND glaze = ?1 AND zone = ?2 ORDER BY at DESC, id DESC LIMIT ?3",
        (glaze, zone.code(), most),
    )
}

/// The amounts known to be right for this glaze and zone, newest first.
pub(super) fn known_controls(conn: &Connection, glaze: Uuid, zone: ZoneKind) -> Result<Vec<Control>> {
    rows(
        conn,
        "SELECT * FROM control WHERE glaze = ?1 AND zone = ?2 AND NOT gone ORDER BY at DESC, id DESC",
        (glaze, zone.code()),
    )
}

/// The test tiles of this glaze that are in use, newest first.
pub(super) fn tiles_of(conn: &Connection, glaze: Uuid) -> Result<Vec<Tile>> {
    rows(conn, "SELECT * FROM tile WHERE glaze = ?1 AND NOT gone ORDER BY at DESC, id DESC", [glaze])
}

/// The checks of this bucket, newest first.
pub(super) fn checks_of(conn: &Connection, bucket: Uuid, most: i64) -> Result<Vec<Check>> {
    rows(conn, "SELECT * FROM \"check\" WHERE bucket = ?1 ORDER BY at DESC, id DESC LIMIT ?2", (bucket, most))
}

/// How many coats have been taken from the bucket, since the moment `since` if there is one.
pub(super) fn coats_since(conn: &Connection, bucket: Uuid, since: Option<i64>) -> Result<i64> {
    let mut select = conn.prepare_cached("SELECT count(*) FROM coat WHERE bucket = ?1 AND at >= ?2").map_err(StoreError::from)?;
    Ok(select.query_row((bucket, since.unwrap_or(i64::MIN)), |row| row.get(0)).map_err(StoreError::from)?)
}

/// How many coats were kept from the moment `since` on, and how many of them with the verdict `verdict`.
pub(super) fn tally(conn: &Connection, since: i64, verdict: &str) -> Result<(i64, i64)> {
    let mut select = conn
        .prepare_cached("SELECT count(*), count(*) FILTER (WHERE verdict = ?2) FROM coat WHERE at >= ?1")
        .map_err(StoreError::from)?;
    Ok(select.query_row((since, verdict), |row| Ok((row.get(0)?, row.get(1)?))).map_err(StoreError::from)?)
}

fn rows<E: Entity>(conn: &Connection, sql: &str, params: impl Params) -> Result<Vec<E>> {
    let mut select = conn.prepare_cached(sql).map_err(StoreError::from)?;
    let rows = select.query_map(params, E::from_row).map_err(StoreError::from)?;
    Ok(rows.collect::<Result<Vec<E>, _>>().map_err(StoreError::from)?)
}
