//! The things of the studio as lists show them: in use, or put away while the records that name them stay whole.

use rusqlite::Connection;
use uuid::Uuid;

use super::{Result, StudioError};
use laydown_store::entity::{Body, Bucket, Control, Entity, Firing, Form, Glaze, Kiln, Scale, Tile, Vessel};

/// Something that can be put away.
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
    Body "body" |body| body.name.clone();
    Kiln "kiln" |kiln| kiln.name.clone();
    Firing "firing" |_| "The firing".to_owned();
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
