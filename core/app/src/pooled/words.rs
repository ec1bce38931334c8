//! What the pooled model says beside its figure, in words.

use rusqlite::Connection;
use uuid::Uuid;

use crate::Result;
use crate::in_words::{Named, StyleWords};
use crate::kiln::piece_name;
use crate::messages::pooled as say;
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::pooled::{Group, Note, Piece};
use laydown_domain::units::Style;
use laydown_store::entity::{self, Entity};
use laydown_store::query;

/// "After 12 fired pots: 19.5 becomes 18.8 g."
pub(crate) fn moved(pots: usize, before: &str, after: &str) -> String {
    say::moved(say::pots(pots), before, after)
}

/// Where evidence disagrees, is odd, or says little, in sentences.
pub(crate) fn disagreements(conn: &Connection, notes: &[Note], style: &Style) -> Result<Vec<String>> {
    let said = notes.iter().map(|note| disagreement(conn, note, style));
    Ok(said.collect::<Result<Vec<_>>>()?.into_iter().flatten().collect())
}

fn disagreement(conn: &Connection, note: &Note, style: &Style) -> Result<Option<String>> {
    let apart = |ratio: f64| style.percent(ratio.max(1.0 / ratio) - 1.0, 0);
    Ok(match *note {
        Note::FewPots { .. } => None,
        Note::AllAlike(thickness) => Some(match thickness {
            Thickness::Right => say::all_right(),
            Thickness::Thin => say::all_thin(),
            Thickness::Thick => say::all_thick(),
        }),
        Note::RatingsInverted => Some(say::ratings_inverted()),
        Note::Mixed => Some(say::mixed()),
        Note::ControlsApart { less, more, ratio } => {
            Some(say::controls_apart(apart(ratio), control_name(conn, less)?, control_name(conn, more)?))
        }
        Note::TilesApart { ratio } if ratio > 1.0 => Some(say::tiles_above(apart(ratio))),
        Note::TilesApart { ratio } => Some(say::tiles_below(apart(ratio))),
        Note::StartingApart { ratio } if ratio > 1.0 => Some(say::start_above(apart(ratio))),
        Note::StartingApart { ratio } => Some(say::start_below(apart(ratio))),
        Note::Odd { piece: Piece::Pot(id) | Piece::Control(id), .. } => Some(say::odd(control_name(conn, id)?)),
        Note::Odd { .. } => None,
        Note::GroupsApart { less, more, ratio } => {
            let kind = match more {
                Group::Zone(_) => "zone",
                Group::Body(_) => "body",
                Group::Cone(_) => "cone",
            };
            Some(say::groups_apart(kind, group_name(conn, more)?, apart(ratio), group_name(conn, less)?))
        }
    })
}

/// The piece of a coat, or the form of an amount that was typed in.
pub(super) fn control_name(conn: &Connection, id: Uuid) -> Result<String> {
    if let Some(coat) = entity::Coat::load(conn, id)? {
        return piece_name(conn, &query::coats_of_piece(conn, coat.piece)?);
    }
    let typed = entity::Control::load(conn, id)?;
    let form = typed.map(|control| entity::Form::load(conn, control.form)).transpose()?.flatten();
    Ok(form.map_or_else(say::some_piece, |form| say::typed_amount(&form.name)))
}

fn group_name(conn: &Connection, group: Group) -> Result<String> {
    Ok(match group {
        Group::Zone(zone) => zone.name(),
        Group::Body(id) => entity::Body::load(conn, id)?.map_or_else(say::some_body, |body| body.name),
        Group::Cone(cone) => say::cone(cone.code()),
    })
}
