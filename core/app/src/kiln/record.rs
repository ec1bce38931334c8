//! A piece's record in words: its coats as they were weighed, what was found on it, its photographs.

use rusqlite::Connection;
use serde::Serialize;
use uuid::Uuid;

use super::firing_title_and_day;
use super::whereabouts::Whereabouts;
use crate::date_text::sentence_case;
use crate::dry::weighed_dry;
use crate::evidence::{sg_in_words, step_of};
use crate::in_words::{StyleWords, name_of};
use crate::messages::{came_out, common, kiln, piece};
use crate::{Line, Now, Result};
use laydown_domain::kiln::fault::Fault;
use laydown_domain::units::{Grams, Laydown, Style};
use laydown_store::entity::{self, Entity};
use laydown_store::photos::Photos;
use laydown_store::query;

/// The zones that are looked at after the firing.
pub(super) const INSIDE: &str = "inside";
pub(super) const OUTSIDE: &str = "outside";
pub(super) const OVERLAP: &str = "overlap";

/// A photograph that can be shown.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct PhotoView {
    /// Its id.
    pub id: String,
    /// The picture's file.
    pub file: String,
    /// A small upright copy of it.
    pub preview: String,
    /// The firing that it shows the piece after, or when it was taken where it belongs to none.
    pub caption: String,
}

/// What was found, in a line: "inside right, outside thick, running, liked 4".
pub(super) fn in_a_line(found: &entity::Finding) -> String {
    let mut parts = Vec::new();
    parts.extend(found.inside.as_ref().map(came_out::inside_looks));
    parts.extend(found.outside.as_ref().map(came_out::outside_looks));
    parts.extend(found.overlap.as_ref().map(came_out::overlap_looks));
    for (fault, place) in found.faults.iter().flat_map(|faults| &faults.0) {
        let name = name_of::<Fault>(fault);
        parts.push(match Whereabouts::read(place) {
            Some(place) => came_out::fault_at_place(name, place.words()),
            None => name,
        });
    }
    if found.again {
        parts.push(kiln::to_be_fired_again());
    }
    parts.extend(found.liking.map(came_out::liked));
    parts.join(", ")
}

/// The coats of a piece as they were weighed.
pub(super) fn record(conn: &Connection, now: Now, coats: &[entity::Coat], style: &Style) -> Result<Vec<Line>> {
    let mut lines = Vec::new();
    for coat in coats {
        let glaze = entity::Glaze::load(conn, coat.glaze)?;
        let step = step_of(conn, coat)?;
        let mass = |milligrams: i64| style.mass(Grams::from_milligrams(milligrams), step);
        lines.push(Line {
            label: match glaze {
                Some(glaze) => kiln::coat_label(&coat.zone, glaze.name),
                None => kiln::unknown_glaze_coat_label(&coat.zone),
            },
            value: [
                Some(kiln::weighed(&coat.verdict, mass(coat.net_mg), mass(coat.aim_mg))),
                Some(style.laydown_with_unit(Laydown::from_milligrams_per_dm2(coat.laydown_mg_dm2))),
                Some(common::sg(sg_in_words(style, coat.specific_gravity_e5))),
                weighed_dry(coat, style, step),
                Some(now.moment(coat.at)),
            ]
            .into_iter()
            .flatten()
            .collect::<Vec<_>>()
            .join(", "),
        });
    }
    Ok(lines)
}

/// The photographs of a piece, those of one firing only where `firing` names it. One whose file has not come to this
/// phone, as from a phone's own backup, is left out until it does.
pub(super) fn photos(
    conn: &Connection,
    now: Now,
    files: &Photos,
    of_piece: Uuid,
    firing: Option<Uuid>,
) -> Result<Vec<PhotoView>> {
    let all = query::photos(conn, of_piece)?;
    let of_firing = all.into_iter().filter(|photo| firing.is_none() || photo.firing == firing);
    let wanted = of_firing.filter(|photo| files.has(&photo.sha256));
    let view = |photo: entity::Photo| -> Result<PhotoView> {
        let firing = photo.firing.map(|firing| entity::Firing::load(conn, firing)).transpose()?.flatten();
        Ok(PhotoView {
            id: photo.id.to_string(),
            file: files.file(&photo.sha256).to_string_lossy().into_owned(),
            preview: files.preview(&photo.sha256).to_string_lossy().into_owned(),
            caption: match firing {
                Some(firing) => firing_title_and_day(conn, now, &firing)?,
                None => now.moment(photo.at),
            },
        })
    };
    wanted.map(view).collect()
}

/// What came out of the firings that a piece was in before this one: a line for each, the oldest first.
pub(super) fn earlier_firings(conn: &Connection, now: Now, of_piece: Uuid, firing: Uuid) -> Result<Vec<Line>> {
    let mut lines = Vec::new();
    for placed in query::placements_of_piece(conn, of_piece)? {
        if placed.firing == firing {
            break;
        }
        let Some(before) = entity::Firing::load(conn, placed.firing)? else { continue };
        let found =
            query::finding(conn, of_piece, placed.firing)?.as_ref().map(in_a_line).filter(|said| !said.is_empty());
        lines.push(Line {
            label: firing_title_and_day(conn, now, &before)?,
            value: found.map_or_else(piece::not_looked_at, |said| sentence_case(&said)),
        });
    }
    Ok(lines)
}
