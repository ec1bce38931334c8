//! Which of a sheet's readings are in the studio already.

use std::collections::{HashMap, HashSet};

use rusqlite::Connection;
use uuid::Uuid;

use super::read::{Read, Reading};
use crate::Result;
use laydown_domain::form::ZoneKind;
use laydown_store::query;

/// An hour: what summer time shifts a clock that does not say how far it is from UTC.
const HOUR_S: i64 = 3_600;

/// By what a reading is known again: moment to the second, form, zone, glaze, wet weight.
pub(super) type Key = (i64, usize, ZoneKind, usize, i64);

impl Reading {
    pub(super) fn key(&self, shift_s: i64) -> Key {
        (self.at.div_euclid(1_000) + shift_s, self.form, self.zone, self.glaze, self.net_mg)
    }

    /// Without knowing where the clock was, an hour more or less is the same moment in summer and in winter.
    pub(super) fn shifts(&self) -> &'static [i64] {
        if self.is_exact { &[0] } else { &[0, HOUR_S, -HOUR_S] }
    }
}

/// What of a sheet is in the studio already.
#[derive(Default)]
pub(super) struct Here {
    /// The pieces of the coats that are like a reading.
    coats: HashMap<Key, Vec<Uuid>>,
    /// The pieces that bear a code, with their forms and the zones that are coated.
    pub(super) codes: HashMap<String, Borne>,
}

/// A piece that bears a code.
#[derive(Debug, Clone)]
pub(super) struct Borne {
    pub(super) piece: Uuid,
    pub(super) form: usize,
    pub(super) zones: Vec<ZoneKind>,
}

impl Here {
    /// Looks through the studio once for what the readings are like.
    pub(super) fn find(conn: &Connection, read: &Read) -> Result<Here> {
        let wanted: HashSet<Key> =
            read.readings.iter().flat_map(|reading| reading.shifts().iter().map(|shift| reading.key(*shift))).collect();
        let mut here = Here::default();
        if wanted.is_empty() {
            return Ok(here);
        }
        let forms: HashMap<Uuid, usize> =
            read.ground.forms.iter().zip(0..).map(|(form, place)| (form.row.id, place)).collect();
        let glazes: HashMap<Uuid, usize> = read
            .ground
            .glazes
            .iter()
            .zip(0..)
            .filter(|(glaze, _)| !glaze.made)
            .map(|(glaze, place)| (glaze.row.id, place))
            .collect();
        query::each_coat(conn, |coat| {
            let (Some(form), Some(glaze)) = (forms.get(&coat.form), glazes.get(&coat.glaze)) else { return Ok(()) };
            let Ok(zone) = coat.zone.parse() else { return Ok(()) };
            let key = (coat.at.div_euclid(1_000), *form, zone, *glaze, coat.net_mg);
            if wanted.contains(&key) {
                here.coats.entry(key).or_default().push(coat.piece);
            }
            Ok(())
        })?;
        for code_of_piece in read.readings.iter().filter_map(|reading| reading.code.as_ref()) {
            if here.codes.contains_key(code_of_piece) {
                continue;
            }
            let Some(piece) = query::piece_of_code(conn, code_of_piece)? else { continue };
            let coats = query::coats_of_piece(conn, piece)?;
            let Some(form) = coats.first().and_then(|coat| forms.get(&coat.form)) else { continue };
            let zones = coats.iter().filter_map(|coat| coat.zone.parse().ok()).collect();
            here.codes.insert(code_of_piece.clone(), Borne { piece, form: *form, zones });
        }
        Ok(here)
    }

    /// Takes one coat that is like the reading, so that two lines never stand for one coat; answers with its piece.
    pub(super) fn take(&mut self, key: &Key) -> Option<Uuid> {
        self.coats.get_mut(key)?.pop()
    }
}
