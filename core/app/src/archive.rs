//! The things of the studio as lists show them: in use, or archived while the records that name them stay whole.

use rusqlite::Connection;
use uuid::Uuid;

use super::messages::common as say;
use super::{Result, StudioError};
use laydown_store::entity::{
    BisqueLot, Body, Bucket, BucketEntry, Check, Control, Entity, Firing, Form, Glaze, Kiln, Piece, Scale, ScaleTest,
    Tile, Vessel,
};

/// Something that can be archived.
pub(super) trait Archivable: Entity {
    /// Its code in the message that it is gone.
    const WHAT: &'static str;
    /// Whether it has been archived.
    fn gone(&self) -> bool;
    /// The same, archived.
    fn archive(self) -> Self;
    /// The same, in use again.
    fn unarchive(self) -> Self;
    /// What it is called by the potter.
    fn called(&self) -> String;
}

macro_rules! keepsakes {
    ($($entity:ident $what:literal $called:expr;)*) => {
        $(impl Archivable for $entity {
            const WHAT: &'static str = $what;
            fn gone(&self) -> bool {
                self.gone
            }
            fn archive(self) -> Self {
                $entity { gone: true, ..self }
            }
            fn unarchive(self) -> Self {
                $entity { gone: false, ..self }
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
    Firing "firing" |_| say::the_firing();
    Piece "piece" |piece| piece.name.clone();
    Glaze "glaze" |glaze| glaze.name.clone();
    Bucket "bucket" |bucket| bucket.name.clone();
    Vessel "vessel" |vessel| vessel.name.clone();
    Scale "scale" |scale| scale.name.clone();
    Tile "test_tile" |tile| tile.name.clone();
    Control "control_piece" |_| say::the_control_piece();
    ScaleTest "scale_test" |_| say::the_scale_test();
    BisqueLot "bisque_lot" |lot| lot.name.clone();
    Check "check" |_| say::the_check();
    BucketEntry "bucket_entry" |_| say::the_entry();
}

/// The one with this id, archived or not.
pub(super) fn found<E: Archivable>(conn: &Connection, id: Uuid) -> Result<E> {
    E::load(conn, id)?.ok_or_else(|| StudioError::missing(E::WHAT))
}

/// All that are in use, and the one named `saved` even if it has been archived since.
pub(super) fn in_use<E: Archivable>(conn: &Connection, saved: Option<Uuid>) -> Result<Vec<E>> {
    Ok(E::all(conn)?.into_iter().filter(|entity| !entity.gone() || saved == Some(entity.id())).collect())
}
