//! What the weigh screen asks of the studio, each answered from an index: as fast in the thousandth week as in the first.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet};
use std::ops::RangeInclusive;

use rusqlite::{Connection, OptionalExtension, Params, Row, params};
use serde_json::Value;
use uuid::Uuid;

use super::entity::{
    BucketEntry, Check, Coat, Control, Entity, Finding, Firing, Pairs, Photo, Piece, Placement, ScaleTest, Tile, decode,
};
use super::error::StoreError;
use super::packed::StringDictionary;
use super::transaction::{events_of, events_of_kind};
use crate::journal::{Event, State};

/// The number of the word with a text, as it lies in the columns of [`Coat`] that are words.
macro_rules! number_of {
    ($text:literal) => {
        concat!("(SELECT number FROM word WHERE text = ", $text, ")")
    };
}

// Where whole rows are read, what follows `FROM`; else the whole question.
const LATEST_COATS: &str = "ORDER BY at DESC, id DESC LIMIT ?1";
const EACH_COAT: &str = "ORDER BY at, id";
const TALLY: &str =
    concat!("SELECT count(*), count(*) FILTER (WHERE verdict = ", number_of!("?2"), ") FROM coat WHERE at >= ?1");
const COATS_FROM_BUCKET: &str = concat!("SELECT count(*) FROM coat WHERE at >= ?2 AND bucket = ", number_of!("?1"));
/// From one form that has control coats to the next, by the numbers of their words.
const NEXT_CONTROL_FORM: &str = concat!(
    "SELECT min(form) FROM coat WHERE control AND glaze = ",
    number_of!("?1"),
    " AND zone = ",
    number_of!("?2"),
    " AND form > ?3"
);
const CONTROL_COATS: &str = concat!(
    "SELECT id, at, form, net_mg, area_mm2, specific_gravity_e5, sg_uncertainty_e5, scale, dry_mg, dry_uncertainty_mg \
     FROM coat WHERE control AND glaze = ",
    number_of!("?1"),
    " AND zone = ",
    number_of!("?2"),
    " AND form = ?3 ORDER BY at DESC, id DESC LIMIT ?4"
);
const CONTROLLED_PIECES: &str = concat!(
    "SELECT at, id, piece FROM coat WHERE control AND glaze = ",
    number_of!("?1"),
    " AND zone = ",
    number_of!("?2"),
    " AND form = ?3 ORDER BY at DESC, id DESC LIMIT ?4"
);
const CAME_OUT_RIGHT: &str = "SELECT 1 FROM finding WHERE piece = ?1 AND \
     (?2 = 'outside' OR inside IS 'right') AND (?2 = 'inside' OR outside IS 'right')";
const LATEST_CONTROL_COATS: &str = "INDEXED BY coat_control WHERE control ORDER BY at DESC, id DESC LIMIT ?1";
const CONTROLS: &str = "WHERE NOT gone AND glaze = ?1 AND zone = ?2 ORDER BY at DESC, id DESC";
const TILES_OUT: &str = "WHERE NOT gone AND glaze = ?1 AND came_out = ?2 ORDER BY at DESC, id DESC LIMIT ?3";
const TILES_NOT_ASKED: &str = "SELECT count(*) FROM tile WHERE NOT gone AND glaze = ?1 AND came_out IS NULL";
const PIECE_OF_CODE: &str = "SELECT piece FROM coat WHERE code = ?1 ORDER BY at DESC LIMIT 1";
const COATS_OF_PIECE: &str = "WHERE at BETWEEN ?2 AND ?3 AND piece = ?1";
const COATS_ASTRAY: &str = "WHERE piece = ?1 AND substr(hex(piece), 1, 12) NOT BETWEEN \
     printf('%012X', at - 17280000000) AND printf('%012X', at + 86400000)";
const COATS_WAITING: &str = "WHERE at >= ?1 AND NOT EXISTS \
     (SELECT 1 FROM placement WHERE NOT gone AND placement.piece = coat.piece) ORDER BY at, id LIMIT ?2";
const LATEST_COATS_WAITING: &str = "WHERE at >= ?1 AND NOT EXISTS \
     (SELECT 1 FROM placement WHERE NOT gone AND placement.piece = coat.piece) ORDER BY at DESC, id DESC LIMIT ?2";
const UNWEIGHED_WAITING: &str = "WHERE NOT gone AND at >= ?1 AND NOT EXISTS \
     (SELECT 1 FROM placement WHERE NOT placement.gone AND placement.piece = piece.id) ORDER BY at, id LIMIT ?2";
const UNWEIGHED: &str = "WHERE NOT gone ORDER BY at DESC, id DESC LIMIT ?1";
const LATEST_NUMBER: &str = "SELECT max(count(*), coalesce(max(number), 0)) FROM firing WHERE NOT gone";
const FIRINGS: &str = "WHERE NOT gone ORDER BY at DESC, id DESC LIMIT ?1";
const PLACEMENTS: &str = "WHERE NOT gone AND firing = ?1 ORDER BY shelf DESC, y_e4 DESC, x_e4, id";
const PLACEMENTS_OF_PIECE: &str = "JOIN firing ON firing.id = placement.firing \
     WHERE NOT placement.gone AND placement.piece = ?1 ORDER BY firing.at, placement.id";
const FINDINGS_AGAIN: &str = "WHERE again ORDER BY at, id LIMIT ?1";
const FINDINGS_RATED: &str = "WHERE liking = ?1 ORDER BY at DESC, id DESC LIMIT ?2";
const FINDINGS_ANSWERED: &str = "WHERE inside = ?1 OR outside = ?1 OR overlap = ?1 ORDER BY at DESC, id DESC LIMIT ?2";
const FINDINGS_NOTED: &str = "WHERE note IS NOT NULL ORDER BY at DESC, id DESC LIMIT ?1";
const COATS_NOTED: &str = "WHERE note IS NOT NULL ORDER BY at DESC, id DESC LIMIT ?1";
const PIECES_OF_CODES: &str = "SELECT DISTINCT piece FROM coat WHERE code >= ?1 AND code < ?2 LIMIT ?3";
const FINDINGS_OF_FAULT: &str = "WHERE faults IS NOT NULL AND EXISTS \
     (SELECT 1 FROM json_each(finding.faults) WHERE json_extract(value, '$[0]') = ?1) ORDER BY at DESC, id DESC LIMIT ?2";
const COATS_LIKE: &str = concat!(
    "WHERE at BETWEEN ?1 AND ?2 AND (?3 IS NULL OR form = ",
    number_of!("?3"),
    ") AND (?4 IS NULL OR glaze = ",
    number_of!("?4"),
    ") AND laydown_mg_dm2 BETWEEN ?5 AND ?6 ORDER BY at DESC, id DESC LIMIT ?7"
);
const COATS_AND_FINDINGS: &str = "SELECT coat.id, coat.piece, coat.form, coat.glaze, coat.zone, coat.at, coat.net_mg, coat.aim_mg, \
     coat.specific_gravity_e5, coat.sg_uncertainty_e5, coat.area_mm2, coat.scale, coat.bucket, coat.hand, \
     finding.firing, finding.inside, finding.outside, finding.faults, finding.left_out, \
     coat.dry_mg, coat.dry_uncertainty_mg, coat.dip_ms \
     FROM (SELECT id, piece, form, glaze, zone, at, net_mg, aim_mg, specific_gravity_e5, sg_uncertainty_e5, area_mm2, scale, bucket, \
     hand, dry_mg, dry_uncertainty_mg, dip_ms FROM coat \
     ORDER BY at DESC, id DESC LIMIT ?1) AS coat LEFT JOIN finding ON finding.piece = coat.piece";
const FINDING: &str = "WHERE piece = ?1 AND firing = ?2 ORDER BY id";
const PHOTOS: &str = "WHERE NOT gone AND piece = ?1 ORDER BY at, id";
const CHECK_AS_OF: &str = "WHERE NOT gone AND bucket = ?1 AND at <= ?2 ORDER BY at DESC, id DESC LIMIT 1";
const FIRST_CHECK: &str = "WHERE NOT gone AND bucket = ?1 ORDER BY at, id LIMIT 1";
const CHECKS: &str = "WHERE NOT gone AND bucket = ?1 ORDER BY at DESC, id DESC LIMIT ?2";
const ENTRIES: &str = "WHERE NOT gone AND bucket = ?1 AND at >= ?2 ORDER BY at DESC, id DESC LIMIT ?3";
const WET_FROM_BUCKET: &str =
    concat!("SELECT at, net_mg FROM coat WHERE at >= ?2 AND bucket = ", number_of!("?1"), " ORDER BY at LIMIT ?3");
const TIMED_COATS: &str =
    concat!("WHERE dip_ms IS NOT NULL AND bucket = ", number_of!("?1"), " ORDER BY at DESC, id DESC LIMIT ?2");
const SCALE_TESTS: &str = "WHERE scale = ?1 ORDER BY at DESC, id DESC LIMIT ?2";

const DAY_MS: i64 = 86_400_000;
/// A glazed piece waits for its firing, and for another coat, at most so long.
pub const LONGEST_ON_THE_SHELF_MS: i64 = 200 * DAY_MS;

/// The latest coats, newest first, at most `limit`.
pub fn latest_coats(conn: &Connection, limit: u32) -> Result<Vec<Coat>, StoreError> {
    Coat::select(conn, LATEST_COATS, [limit])
}

/// Hands every coat to `work`, the oldest first.
pub fn each_coat(conn: &Connection, work: impl FnMut(Coat) -> Result<(), StoreError>) -> Result<(), StoreError> {
    Coat::each(conn, EACH_COAT, [], work)
}

/// When the first coat was weighed, unix ms.
pub fn first_coat_at(conn: &Connection) -> Result<Option<i64>, StoreError> {
    Ok(conn.prepare_cached("SELECT min(at) FROM coat")?.query_row([], |row| row.get(0))?)
}

/// The piece that bears a code; the one weighed last where two phones gave out the same.
pub fn piece_of_code(conn: &Connection, code: &str) -> Result<Option<Uuid>, StoreError> {
    Ok(conn.prepare_cached(PIECE_OF_CODE)?.query_row([code], |row| row.get(0)).optional()?)
}

/// The coats of a piece in the order in which they were kept, whatever the phones' clocks said. They are looked for among those of
/// the weeks after the piece was named, which its name tells: an index for it would cost every Keep. Those that a wrong clock dated
/// elsewhere are in an index of their own.
pub fn coats_of_piece(conn: &Connection, piece: Uuid) -> Result<Vec<Coat>, StoreError> {
    let named = i64::try_from(piece.as_u128() >> 80).unwrap_or_default();
    let mut coats =
        Coat::select(conn, COATS_OF_PIECE, params![piece, named - DAY_MS, named + LONGEST_ON_THE_SHELF_MS])?;
    for astray in Coat::select(conn, COATS_ASTRAY, [piece])? {
        if coats.iter().all(|coat| coat.id != astray.id) {
            coats.push(astray);
        }
    }
    let saved = coats.iter().map(|coat| Ok((saved_at(conn, coat.id)?, coat.at, coat.id)));
    let saved: Vec<(i64, i64, Uuid)> = saved.collect::<Result<_, StoreError>>()?;
    let mut in_order: Vec<_> = saved.into_iter().zip(coats).collect();
    in_order.sort_by_key(|(saved, _)| *saved);
    Ok(in_order.into_iter().map(|(_, coat)| coat).collect())
}

/// The millisecond of the journal's clock at which something was first kept: what one command kept has the same.
fn saved_at(conn: &Connection, id: Uuid) -> Result<i64, StoreError> {
    let mut select = conn.prepare_cached("SELECT min(clock) FROM event WHERE entity = ?1")?;
    Ok(select.query_row([id], |row| row.get::<_, Option<i64>>(0))?.unwrap_or_default() >> 16)
}

/// Coats from `from_ms` (unix ms) on whose piece is in no firing that counts, oldest first.
pub fn coats_waiting(conn: &Connection, from_ms: i64, limit: u32) -> Result<Vec<Coat>, StoreError> {
    Coat::select(conn, COATS_WAITING, params![from_ms, limit])
}

/// The same coats, newest first.
pub fn latest_coats_waiting(conn: &Connection, from_ms: i64, limit: u32) -> Result<Vec<Coat>, StoreError> {
    Coat::select(conn, LATEST_COATS_WAITING, params![from_ms, limit])
}

/// The coat `id` as all that was ever said of it makes it, also one that is undone; `None` where there never was one.
pub fn coat_as_said(conn: &Connection, id: Uuid) -> Result<Option<Coat>, StoreError> {
    if let Some(coat) = Coat::load(conn, id)? {
        return Ok(Some(coat));
    }
    let mut events = events_of(conn, id)?;
    events.retain(|event| event.kind == Coat::KIND);
    events.sort_by_key(Event::order);
    let said = events.into_iter().flat_map(|event| event.body).filter(|(_, value)| !value.is_null());
    Ok(Coat::from_state(id, &State { kind: Coat::KIND, fields: said.collect() }))
}

/// The coat that was saved with a code last, also one that is undone or has another code by now: the code may still be on a
/// foot. It is looked for in the whole journal, so this is for a code that no piece bears.
pub fn coat_once_coded(conn: &Connection, code: &str) -> Result<Option<Coat>, StoreError> {
    let mut events = events_of_kind(conn, &Coat::KIND)?;
    events.retain(|event| event.body.get("code").and_then(Value::as_str) == Some(code));
    match events.iter().max_by_key(|event| event.order()) {
        Some(latest) => coat_as_said(conn, latest.entity),
        None => Ok(None),
    }
}

/// Pieces that were never weighed, from `from_ms` (unix ms) on, and are in no firing; oldest first, at most `limit`.
pub fn unweighed_waiting(conn: &Connection, from_ms: i64, limit: u32) -> Result<Vec<Piece>, StoreError> {
    Piece::select(conn, UNWEIGHED_WAITING, params![from_ms, limit])
}

/// Pieces that were never weighed, newest first, at most `limit`.
pub fn unweighed(conn: &Connection, limit: u32) -> Result<Vec<Piece>, StoreError> {
    Piece::select(conn, UNWEIGHED, [limit])
}

/// The highest number of a firing; how many there are where that is more, since old ones have no number.
pub fn latest_firing_number(conn: &Connection) -> Result<i64, StoreError> {
    Ok(conn.prepare_cached(LATEST_NUMBER)?.query_row([], |row| row.get(0))?)
}

/// Firings, newest first, at most `limit`.
pub fn firings(conn: &Connection, limit: u32) -> Result<Vec<Firing>, StoreError> {
    Firing::select(conn, FIRINGS, [limit])
}

/// Where the pieces of a firing stand, in the order in which a kiln is unloaded: from the top shelf down, from the back left.
pub fn placements(conn: &Connection, firing: Uuid) -> Result<Vec<Placement>, StoreError> {
    Placement::select(conn, PLACEMENTS, [firing])
}

/// The firings a piece was in, oldest first.
pub fn placements_of_piece(conn: &Connection, piece: Uuid) -> Result<Vec<Placement>, StoreError> {
    Placement::select(conn, PLACEMENTS_OF_PIECE, [piece])
}

/// What was found on pieces that are to be fired again, oldest first, at most `limit`.
pub fn findings_again(conn: &Connection, limit: u32) -> Result<Vec<Finding>, StoreError> {
    Finding::select(conn, FINDINGS_AGAIN, [limit])
}

/// What was found on pieces that are liked so much, newest first, at most `limit`.
pub fn findings_rated(conn: &Connection, stars: i64, limit: u32) -> Result<Vec<Finding>, StoreError> {
    Finding::select(conn, FINDINGS_RATED, params![stars, limit])
}

/// What was found on pieces that came out so in some zone, newest first, at most `limit`. `thickness` is a code.
pub fn findings_answered(conn: &Connection, thickness: &str, limit: u32) -> Result<Vec<Finding>, StoreError> {
    Finding::select(conn, FINDINGS_ANSWERED, params![thickness, limit])
}

/// The pieces with a note on what was found, or on a coat, each with the note; of each the newest, at most `limit`.
pub fn notes(conn: &Connection, limit: u32) -> Result<Vec<(Uuid, String)>, StoreError> {
    let found = Finding::select(conn, FINDINGS_NOTED, [limit])?.into_iter();
    let coats = Coat::select(conn, COATS_NOTED, [limit])?.into_iter();
    let found = found.map(|found| (found.piece, found.note));
    Ok(found
        .chain(coats.map(|coat| (coat.piece, coat.note)))
        .filter_map(|(piece, note)| Some((piece, note?)))
        .collect())
}

/// The weighed pieces whose code begins so, at most `limit`. A beginning is written as codes are.
pub fn pieces_of_codes(conn: &Connection, begun: &str, limit: u32) -> Result<Vec<Uuid>, StoreError> {
    // No code has a character after this one.
    let end = format!("{begun}\u{10ffff}");
    let mut select = conn.prepare_cached(PIECES_OF_CODES)?;
    let pieces = select.query_map(params![begun, end, limit], |row| row.get(0))?;
    Ok(pieces.collect::<Result<_, _>>()?)
}

/// What was found on pieces with this fault, newest first, at most `limit`.
pub fn findings_of_fault(conn: &Connection, fault: &str, limit: u32) -> Result<Vec<Finding>, StoreError> {
    Finding::select(conn, FINDINGS_OF_FAULT, params![fault, limit])
}

/// What coats are looked for by; what is `None` does not matter.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CoatsLike {
    /// Weighed then, unix ms, both ends included.
    pub at: RangeInclusive<i64>,
    /// The form.
    pub form: Option<Uuid>,
    /// The glaze.
    pub glaze: Option<Uuid>,
    /// The laydown, mg/dm2, both ends included.
    pub laydown_mg_dm2: RangeInclusive<i64>,
}

impl CoatsLike {
    /// Whether a coat is one of those looked for.
    pub fn is(&self, coat: &Coat) -> bool {
        self.at.contains(&coat.at)
            && self.form.is_none_or(|form| form == coat.form)
            && self.glaze.is_none_or(|glaze| glaze == coat.glaze)
            && self.laydown_mg_dm2.contains(&coat.laydown_mg_dm2)
    }
}

/// The coats that are as `like` says, newest first, at most `limit`.
pub fn coats_like(conn: &Connection, like: &CoatsLike, limit: u32) -> Result<Vec<Coat>, StoreError> {
    let (at, laydown) = (&like.at, &like.laydown_mg_dm2);
    let text = |id: Option<Uuid>| id.map(|id| id.to_string());
    let params =
        params![at.start(), at.end(), text(like.form), text(like.glaze), laydown.start(), laydown.end(), limit];
    Coat::select(conn, COATS_LIKE, params)
}

/// A coat with what came out of one firing on its piece: what a lesson needs of them, and no more.
#[derive(Debug, Clone, PartialEq)]
pub struct CoatAndFinding {
    /// The coat.
    pub coat: Uuid,
    /// The piece.
    pub piece: Uuid,
    /// Its form.
    pub form: Uuid,
    /// The glaze of the coat.
    pub glaze: Uuid,
    /// Code of its zone.
    pub zone: String,
    /// When it was weighed, unix ms.
    pub at: i64,
    /// Wet weight, mg.
    pub net_mg: i64,
    /// Wet weight aimed at, mg.
    pub aim_mg: i64,
    /// Specific gravity of the bucket then, hundred-thousandths.
    pub specific_gravity_e5: i64,
    /// Standard uncertainty of that, hundred-thousandths.
    pub sg_uncertainty_e5: i64,
    /// Area coated, mm2, as it was taken to be then.
    pub area_mm2: i64,
    /// The scale.
    pub scale: Uuid,
    /// The bucket.
    pub bucket: Uuid,
    /// Who glazed, where that is known.
    pub hand: Option<String>,
    /// The firing; `None` where the piece was not looked at, and all below with it.
    pub firing: Option<Uuid>,
    /// Code of how thick the glaze inside looks.
    pub inside: Option<String>,
    /// The same outside.
    pub outside: Option<String>,
    /// Faults, as in [`Finding::faults`].
    pub faults: Option<Pairs>,
    /// Whether it does not count for targets.
    pub left_out: bool,
    /// Its dry glaze, from the piece weighed again bone dry.
    pub dry: Option<WeighedDry>,
    /// How long it was dipped or poured over, ms.
    pub dip_ms: Option<i64>,
}

/// The dry glaze of a coat, from its piece weighed again bone dry.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WeighedDry {
    /// Its weight, mg.
    pub dry_mg: i64,
    /// One standard uncertainty of it, mg.
    pub uncertainty_mg: i64,
}

impl WeighedDry {
    /// From the columns of a coat; `None` where one is missing.
    pub fn of(dry_mg: Option<i64>, uncertainty_mg: Option<i64>) -> Option<WeighedDry> {
        Some(WeighedDry { dry_mg: dry_mg?, uncertainty_mg: uncertainty_mg? })
    }
}

/// The newest coats, at most `limit`, newest first, each once for every firing after which its piece was looked at, and once
/// where it was not. They are taken from all glazes together: an index by glaze would cost every Keep.
pub fn coats_and_findings(conn: &Connection, limit: u32) -> Result<Vec<CoatAndFinding>, StoreError> {
    let mut strings = StringDictionary::default();
    let mut select = conn.prepare_cached(COATS_AND_FINDINGS)?;
    let mut rows = select.query([limit])?;
    let mut found = Vec::new();
    while let Some(row) = rows.next()? {
        found.push(CoatAndFinding {
            coat: row.get(0)?,
            piece: row.get(1)?,
            form: decode(conn, &mut strings, row, 2)?,
            glaze: decode(conn, &mut strings, row, 3)?,
            zone: decode(conn, &mut strings, row, 4)?,
            at: row.get(5)?,
            net_mg: row.get(6)?,
            aim_mg: row.get(7)?,
            specific_gravity_e5: row.get(8)?,
            sg_uncertainty_e5: row.get(9)?,
            area_mm2: row.get(10)?,
            scale: decode(conn, &mut strings, row, 11)?,
            bucket: decode(conn, &mut strings, row, 12)?,
            hand: row.get(13)?,
            firing: row.get(14)?,
            inside: row.get(15)?,
            outside: row.get(16)?,
            faults: row.get(17)?,
            left_out: row.get::<_, Option<bool>>(18)?.unwrap_or_default(),
            dry: WeighedDry::of(row.get(19)?, row.get(20)?),
            dip_ms: row.get(21)?,
        });
    }
    Ok(found)
}

/// Whether any fired piece was ever looked at.
pub fn any_finding(conn: &Connection) -> Result<bool, StoreError> {
    Ok(conn.prepare_cached("SELECT EXISTS (SELECT 1 FROM finding)")?.query_row([], |row| row.get(0))?)
}

/// Whether a piece was looked at after a firing.
pub(super) fn has_finding(conn: &Connection, piece: Uuid) -> Result<bool, StoreError> {
    let mut select = conn.prepare_cached("SELECT EXISTS (SELECT 1 FROM finding WHERE piece = ?1)")?;
    Ok(select.query_row([piece], |row| row.get(0))?)
}

/// What came out of a firing on a piece.
pub fn finding(conn: &Connection, piece: Uuid, firing: Uuid) -> Result<Option<Finding>, StoreError> {
    Ok(Finding::select(conn, FINDING, params![piece, firing])?.pop())
}

/// The photographs of a piece, oldest first.
pub fn photos(conn: &Connection, piece: Uuid) -> Result<Vec<Photo>, StoreError> {
    Photo::select(conn, PHOTOS, [piece])
}

/// The names of all photographs of which the journal knows: one that was taken off or undone may come again.
pub fn photo_names(conn: &Connection) -> Result<BTreeSet<String>, StoreError> {
    let events = events_of_kind(conn, &Photo::KIND)?;
    let name = |event: &Event| event.body.get("sha256").and_then(Value::as_str).map(str::to_owned);
    Ok(events.iter().filter_map(name).collect())
}

/// How many coats were weighed from `from_ms` (unix ms) on, and how many of them with the verdict `verdict`.
pub fn tally(conn: &Connection, from_ms: i64, verdict: &str) -> Result<(i64, i64), StoreError> {
    let mut select = conn.prepare_cached(TALLY)?;
    Ok(select.query_row(params![from_ms, verdict], |row| Ok((row.get(0)?, row.get(1)?)))?)
}

/// How many coats were taken from `bucket` from `from_ms` (unix ms) on, as since its last check. They are counted among all
/// the coats of that time: an index for it would cost every Keep.
pub fn coats_from_bucket(conn: &Connection, bucket: Uuid, from_ms: i64) -> Result<u32, StoreError> {
    count(conn, COATS_FROM_BUCKET, params![bucket.to_string(), from_ms])
}

/// When each coat from `bucket` from `from_ms` (unix ms) on was weighed, and what it weighed wet, mg; oldest first, at most `limit`. As
/// [`coats_from_bucket`] it looks through all coats of that time.
pub fn wet_from_bucket(
    conn: &Connection,
    bucket: Uuid,
    from_ms: i64,
    limit: u32,
) -> Result<Vec<(i64, i64)>, StoreError> {
    let mut select = conn.prepare_cached(WET_FROM_BUCKET)?;
    let coats = select.query_map(params![bucket.to_string(), from_ms, limit], |row| Ok((row.get(0)?, row.get(1)?)))?;
    Ok(coats.collect::<Result<_, _>>()?)
}

/// What was done to `bucket` beside checks, from `from_ms` (unix ms) on, newest first, at most `limit`.
pub fn bucket_entries(
    conn: &Connection,
    bucket: Uuid,
    from_ms: i64,
    limit: u32,
) -> Result<Vec<BucketEntry>, StoreError> {
    BucketEntry::select(conn, ENTRIES, params![bucket, from_ms, limit])
}

/// A piece that came out right: what a target needs of it, and no more, since Save waits for it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ControlPiece {
    /// The coat, or what was typed in.
    pub id: Uuid,
    /// When it was weighed or typed in, unix ms.
    pub at: i64,
    /// Its form.
    pub form: Uuid,
    /// What the coat weighed wet, mg.
    pub net_mg: i64,
    /// Glazed area of its zone, mm2, as it was taken to be then.
    pub area_mm2: i64,
    /// Specific gravity of the bucket then, hundred-thousandths.
    pub specific_gravity_e5: i64,
    /// Standard uncertainty of that, hundred-thousandths.
    pub sg_uncertainty_e5: i64,
    /// The scale it was weighed on; `None` for an amount typed in.
    pub scale: Option<Uuid>,
    /// Its dry glaze, from the piece weighed again bone dry.
    pub dry: Option<WeighedDry>,
}

macro_rules! control_piece_of {
    ($entity:ty, $scale:expr, $dry:expr) => {
        impl From<&$entity> for ControlPiece {
            fn from(saved: &$entity) -> ControlPiece {
                let scale: fn(&$entity) -> Option<Uuid> = $scale;
                let dry: fn(&$entity) -> Option<WeighedDry> = $dry;
                ControlPiece {
                    id: saved.id,
                    at: saved.at,
                    form: saved.form,
                    net_mg: saved.net_mg,
                    area_mm2: saved.area_mm2,
                    specific_gravity_e5: saved.specific_gravity_e5,
                    sg_uncertainty_e5: saved.sg_uncertainty_e5,
                    scale: scale(saved),
                    dry: dry(saved),
                }
            }
        }
    };
}

control_piece_of!(Coat, |coat| Some(coat.scale), |coat| WeighedDry::of(coat.dry_mg, coat.dry_uncertainty_mg));
control_piece_of!(Control, |_| None, |_| None);

/// The control coats of every glaze and zone, newest first, at most `limit`. Control pieces are few:
/// a sort is cheap, a walk through all coats in their order is not.
pub fn latest_control_coats(conn: &Connection, limit: u32) -> Result<Vec<Coat>, StoreError> {
    Coat::select(conn, LATEST_CONTROL_COATS, [limit])
}

/// The control pieces of `glaze` in `zone`, coats and amounts typed in, newest first, of each form at most `limit`.
pub fn control_pieces(conn: &Connection, glaze: Uuid, zone: &str, limit: u32) -> Result<Vec<ControlPiece>, StoreError> {
    let mut pieces = Vec::new();
    let glaze_text = glaze.to_string();
    let mut select = conn.prepare_cached(CONTROL_COATS)?;
    let mut strings = StringDictionary::default();
    for form in control_forms(conn, &glaze_text, zone)? {
        let mut rows = select.query(params![glaze_text, zone, form, limit])?;
        while let Some(row) = rows.next()? {
            pieces.push(control_coat(conn, &mut strings, row)?);
        }
    }
    // What is typed in by hand is little.
    pieces.extend(Control::select(conn, CONTROLS, params![glaze, zone])?.iter().map(ControlPiece::from));
    pieces.sort_by_key(|piece| (Reverse(piece.at), piece.form));
    let mut of_form: BTreeMap<Uuid, u32> = BTreeMap::new();
    pieces.retain(|piece| {
        let count = of_form.entry(piece.form).or_default();
        *count += 1;
        *count <= limit
    });
    Ok(pieces)
}

/// How many of the newest `limit` control coats of `glaze` in `zone` are on pieces that came out of a firing right there.
pub fn controls_came_out_right(conn: &Connection, glaze: Uuid, zone: &str, limit: u32) -> Result<u32, StoreError> {
    let glaze = glaze.to_string();
    // The newest of all forms are among the newest of each, which lie in the index in their order.
    let mut newest: Vec<(i64, Uuid, Uuid)> = Vec::new();
    let mut select = conn.prepare_cached(CONTROLLED_PIECES)?;
    for form in control_forms(conn, &glaze, zone)? {
        let of_form = select.query_map(params![glaze, zone, form, limit], |row| <(i64, Uuid, Uuid)>::try_from(row))?;
        newest.extend(of_form.collect::<Result<Vec<_>, _>>()?);
    }
    newest.sort_unstable_by_key(|coat| Reverse(*coat));
    let pieces: BTreeSet<Uuid> = newest.into_iter().take(limit as usize).map(|(_, _, piece)| piece).collect();
    let mut came_out_right = conn.prepare_cached(CAME_OUT_RIGHT)?;
    let mut right = 0;
    for piece in pieces {
        right += u32::from(came_out_right.exists(params![piece, zone])?);
    }
    Ok(right)
}

/// The forms with control coats of a glaze in a zone, by the numbers of their words.
fn control_forms(conn: &Connection, glaze: &str, zone: &str) -> Result<Vec<i64>, StoreError> {
    let mut next = conn.prepare_cached(NEXT_CONTROL_FORM)?;
    let mut forms = Vec::new();
    let mut before = i64::MIN;
    while let Some(form) = next.query_row(params![glaze, zone, before], |row| row.get(0))? {
        forms.push(form);
        before = form;
    }
    Ok(forms)
}

fn control_coat(conn: &Connection, strings: &mut StringDictionary, row: &Row<'_>) -> Result<ControlPiece, StoreError> {
    Ok(ControlPiece {
        id: row.get(0)?,
        at: row.get(1)?,
        form: decode(conn, strings, row, 2)?,
        net_mg: row.get(3)?,
        area_mm2: row.get(4)?,
        specific_gravity_e5: row.get(5)?,
        sg_uncertainty_e5: row.get(6)?,
        scale: Some(decode(conn, strings, row, 7)?),
        dry: WeighedDry::of(row.get(8)?, row.get(9)?),
    })
}

/// The test tiles of `glaze` that came out of the kiln as the code `came_out` says, newest first, at most `limit`.
pub fn tiles(conn: &Connection, glaze: Uuid, came_out: &str, limit: u32) -> Result<Vec<Tile>, StoreError> {
    Tile::select(conn, TILES_OUT, params![glaze, came_out, limit])
}

/// How many test tiles of `glaze` are from a version that did not ask how they came out.
pub fn tiles_not_asked(conn: &Connection, glaze: Uuid) -> Result<u32, StoreError> {
    count(conn, TILES_NOT_ASKED, [glaze])
}

/// The last check of `bucket`.
pub fn latest_check(conn: &Connection, bucket: Uuid) -> Result<Option<Check>, StoreError> {
    Ok(checks(conn, bucket, 1)?.pop())
}

/// The last check of `bucket` until `at` (unix ms), or the first after it where there was none.
pub fn check_as_of(conn: &Connection, bucket: Uuid, at: i64) -> Result<Option<Check>, StoreError> {
    match Check::select(conn, CHECK_AS_OF, params![bucket, at])?.pop() {
        Some(check) => Ok(Some(check)),
        None => Ok(Check::select(conn, FIRST_CHECK, [bucket])?.pop()),
    }
}

/// The checks of `bucket`, newest first, at most `limit`.
pub fn checks(conn: &Connection, bucket: Uuid, limit: u32) -> Result<Vec<Check>, StoreError> {
    Check::select(conn, CHECKS, params![bucket, limit])
}

/// The coats from `bucket` of which it is known how long they were dipped or poured over, newest first, at most `limit`.
pub fn timed_coats(conn: &Connection, bucket: Uuid, limit: u32) -> Result<Vec<Coat>, StoreError> {
    Coat::select(conn, TIMED_COATS, params![bucket.to_string(), limit])
}

/// The tests of `scale`, newest first, at most `limit`.
pub fn scale_tests(conn: &Connection, scale: Uuid, limit: u32) -> Result<Vec<ScaleTest>, StoreError> {
    ScaleTest::select(conn, SCALE_TESTS, params![scale, limit])
}

fn count(conn: &Connection, sql: &str, params: impl Params) -> Result<u32, StoreError> {
    Ok(conn.prepare_cached(sql)?.query_row(params, |row| row.get(0))?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::schema::{MIGRATIONS, migrate};

    #[test]
    fn every_question_is_answered_from_an_index() {
        let conn = Connection::open_in_memory().unwrap();
        migrate(&conn, MIGRATIONS).unwrap();
        let coats = |which: &str| [Coat::SELECT, which].concat();
        let findings = |which: &str| [Finding::SELECT, which].concat();
        for (sql, step) in [
            (coats(LATEST_COATS), "SCAN coat USING INDEX coat_at"),
            (coats(EACH_COAT), "SCAN coat USING INDEX coat_at"),
            (TALLY.to_owned(), "SEARCH coat USING INDEX coat_at (at>?)"),
            (COATS_FROM_BUCKET.to_owned(), "SEARCH coat USING INDEX coat_at (at>?)"),
            (NEXT_CONTROL_FORM.to_owned(), "SEARCH coat USING INDEX coat_control (glaze=? AND zone=? AND form>?)"),
            (CONTROL_COATS.to_owned(), "SEARCH coat USING INDEX coat_control (glaze=? AND zone=? AND form=?)"),
            (CONTROLLED_PIECES.to_owned(), "SEARCH coat USING INDEX coat_control (glaze=? AND zone=? AND form=?)"),
            (CAME_OUT_RIGHT.to_owned(), "SEARCH finding USING INDEX finding_piece (piece=?)"),
            ([Control::SELECT, CONTROLS].concat(), "SEARCH control USING INDEX control_glaze (glaze=? AND zone=?)"),
            ([Tile::SELECT, TILES_OUT].concat(), "SEARCH tile USING INDEX tile_glaze (glaze=?)"),
            (TILES_NOT_ASKED.to_owned(), "SEARCH tile USING INDEX tile_glaze (glaze=?)"),
            ([Check::SELECT, CHECKS].concat(), "SEARCH check USING INDEX check_bucket (bucket=?)"),
            (coats(TIMED_COATS), "SEARCH coat USING INDEX coat_dip (bucket=?)"),
            ([ScaleTest::SELECT, SCALE_TESTS].concat(), "SEARCH scale_test USING INDEX scale_test_scale (scale=?)"),
            (WET_FROM_BUCKET.to_owned(), "SEARCH coat USING INDEX coat_at (at>?)"),
            (
                [BucketEntry::SELECT, ENTRIES].concat(),
                "SEARCH bucket_entry USING INDEX bucket_entry_bucket (bucket=? AND at>?)",
            ),
            (PIECE_OF_CODE.to_owned(), "SEARCH coat USING INDEX coat_code (code=?)"),
            (coats(COATS_OF_PIECE), "SEARCH coat USING INDEX coat_at (at>? AND at<?)"),
            (coats(COATS_ASTRAY), "SEARCH coat USING INDEX coat_astray (piece=?)"),
            ([Firing::SELECT, FIRINGS].concat(), "SCAN firing USING INDEX firing_at"),
            ([Piece::SELECT, UNWEIGHED].concat(), "SCAN piece USING INDEX piece_at"),
            (findings(FINDINGS_AGAIN), "SCAN finding USING INDEX finding_again"),
            (coats(COATS_LIKE), "SEARCH coat USING INDEX coat_at (at>? AND at<?)"),
            (findings(FINDING), "SEARCH finding USING INDEX finding_piece (piece=? AND firing=?)"),
        ] {
            let mut select = conn.prepare(&format!("EXPLAIN QUERY PLAN {sql}")).unwrap();
            let mut rows = select.raw_query();
            let mut plan = Vec::new();
            while let Some(row) = rows.next().unwrap() {
                plan.push(row.get::<_, String>(3).unwrap());
            }
            // A word that is asked for is looked up once.
            let is_of_a_word = |step: &String| {
                step.contains("SCALAR SUBQUERY") || step.starts_with("SEARCH word USING COVERING INDEX")
            };
            plan.retain(|step| !is_of_a_word(step));
            assert_eq!(plan, [step], "{sql}: one step, and no sorting");
        }
    }

    #[test]
    fn coats_are_met_with_their_findings_one_by_one() {
        let conn = Connection::open_in_memory().unwrap();
        migrate(&conn, MIGRATIONS).unwrap();
        let mut select = conn.prepare(&format!("EXPLAIN QUERY PLAN {COATS_AND_FINDINGS}")).unwrap();
        let plan: Vec<String> = select.query_map([5], |row| row.get(3)).unwrap().map(Result::unwrap).collect();
        for step in ["SCAN coat USING INDEX coat_at", "SEARCH finding USING INDEX finding_piece (piece=?) LEFT-JOIN"] {
            assert!(plan.iter().any(|found| found == step), "{step}: {plan:?}");
        }
        assert!(!plan.iter().any(|step| step.contains("B-TREE")), "no sorting: {plan:?}");
    }
}
