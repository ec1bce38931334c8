//! The Buckets screen: each bucket with its SG, how old that is, and what has been taken from it since.

use std::cmp::Reverse;
use std::collections::BTreeSet;

use rusqlite::Connection;
use uuid::Uuid;

use super::archive::{found, in_use};
use super::contents::{BucketHistory, is_changed_since, volume_at};
use super::date_text::sentence_case;
use super::evidence::{latest_sg, parse_id, powder_density, sg_in_words, style, usable};
use super::in_words::{StyleWords as _, caution_text, name_of};
use super::messages::{buckets as say, common};
use super::weigh::wet_per_piece;
use super::{EditorKind, Line, Note, Now, Result, Studio};
use laydown_domain::caution::{self, Place};
use laydown_domain::glaze::bucket::{EntryKind, evaporation, pieces_left};
use laydown_domain::glaze::flow_cup::FlowCup;
use laydown_domain::glaze::sg_age;
use laydown_domain::glaze::slurry::{SgReading, dry_per_litre, solids_fraction};
use laydown_domain::learning::consumption::KEPT_TO_DIP;
use laydown_domain::units::{Grams, Millilitres, Millimetres, Seconds, SpecificGravity, Style};
use laydown_store::entity;
use laydown_store::query::{self, coats_from_bucket};

/// After how many days a bucket's check is called old. Common practice, no source.
const CHECK_IS_OLD_DAYS: i64 = 7;
/// How many checks and entries of a bucket its page lists.
const NOTEBOOK: usize = 40;
/// How many forms it says pieces left for.
const FORMS: usize = 8;

/// One bucket in the list.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct BucketRow {
    /// The bucket's id.
    pub id: String,
    /// The glaze.
    pub glaze: String,
    /// The bucket's own name.
    pub name: String,
    /// Its last SG, or "SG not checked".
    pub sg: String,
    /// When that was, and how many coats were kept since.
    pub since: String,
    /// Whether the check is missing or old, or the bucket another since.
    pub attention: bool,
}

/// All that the Buckets screen shows.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct BucketsView {
    /// The buckets in use.
    pub buckets: Vec<BucketRow>,
    /// What to do while there is none.
    pub empty: String,
    /// Cautions that belong here.
    pub notes: Vec<Note>,
}

/// A check of a bucket, or what was done to it.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct NotebookRow {
    /// The editor that corrects it.
    pub kind: EditorKind,
    /// Its id.
    pub id: String,
    /// When it was.
    pub when: String,
    /// What it was, in a line.
    pub what: String,
    /// More about it: the flow cup's seconds, a note; may be empty.
    pub detail: String,
}

/// One bucket's page.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct BucketView {
    /// The bucket's id.
    pub id: String,
    /// The glaze's id, for adding another bucket of it.
    pub glaze_id: String,
    /// The glaze.
    pub glaze: String,
    /// The bucket's own name.
    pub name: String,
    /// Its last SG, large.
    pub sg: String,
    /// When that was and what has been taken since.
    pub since: String,
    /// What the SG means: powder, water, dry glaze in a litre.
    pub lines: Vec<Line>,
    /// Its checks and what was done to it, newest first.
    pub notebook: Vec<NotebookRow>,
    /// What else should be known.
    pub notes: Vec<Note>,
}

#[uniffi::export]
impl Studio {
    /// The Buckets screen.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn buckets(&self, now: Now) -> Result<BucketsView> {
        self.store.read(|conn| {
            let style = style(conn)?;
            let mut rows = Vec::new();
            for bucket in in_use::<entity::Bucket>(conn, None)? {
                let glaze: entity::Glaze = found(conn, bucket.glaze)?;
                rows.push(row(conn, now, &style, &bucket, glaze.name)?);
            }
            rows.sort_by(|a, b| (&a.glaze, &a.name).cmp(&(&b.glaze, &b.name)));
            Ok(BucketsView {
                buckets: rows,
                empty: say::no_bucket(),
                notes: caution::at(Place::Buckets).map(|caution| Note::warning(caution_text(caution))).collect(),
            })
        })
    }

    /// The page of the bucket `id`.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when there is no such bucket.
    pub fn bucket(&self, now: Now, id: &str) -> Result<BucketView> {
        let bucket_id = parse_id(id, "bucket")?;
        self.store.read(|conn| {
            let style = style(conn)?;
            let bucket: entity::Bucket = found(conn, bucket_id)?;
            let glaze: entity::Glaze = found(conn, bucket.glaze)?;
            let history = BucketHistory::read(conn, bucket_id)?;
            let page = Page { conn, now, style: &style, bucket: &bucket, glaze: &glaze, history: &history };
            let (lines, notes) = page.lines_and_notes()?;
            let row = row(conn, now, &style, &bucket, glaze.name.clone())?;
            Ok(BucketView {
                id: row.id,
                glaze_id: bucket.glaze.to_string(),
                glaze: row.glaze,
                name: row.name,
                sg: row.sg,
                since: row.since,
                lines,
                notebook: page.notebook(),
                notes,
            })
        })
    }
}

/// How a bucket stands now: the same in the list and on its page.
fn row(conn: &Connection, now: Now, style: &Style, bucket: &entity::Bucket, glaze: String) -> Result<BucketRow> {
    let (sg, checked_at) = latest_sg(conn, bucket.id)?;
    let coats = coats_from_bucket(conn, bucket.id, checked_at.unwrap_or(bucket.mixed_at))?;
    let is_changed = checked_at.map(|at| is_changed_since(conn, bucket.id, at)).transpose()?.unwrap_or(false);
    Ok(BucketRow {
        id: bucket.id.to_string(),
        glaze,
        name: bucket.name.clone(),
        sg: checked_at.map_or_else(say::sg_not_checked, |_| common::sg(style.specific_gravity(sg.sg))),
        since: since(now, checked_at, coats.into()),
        attention: is_changed || is_old(now, checked_at),
    })
}

pub(super) fn is_old(now: Now, checked_at: Option<i64>) -> bool {
    checked_at.is_none_or(|at| now.days_since(at) > CHECK_IS_OLD_DAYS)
}

fn since(now: Now, checked_at: Option<i64>, coats: i64) -> String {
    match checked_at {
        Some(at) => say::checked_and_coats(coats, now.days_ago(at)),
        None => say::coats_so_far(coats),
    }
}

/// What one bucket's page is made from.
struct Page<'a> {
    conn: &'a Connection,
    now: Now,
    style: &'a Style,
    bucket: &'a entity::Bucket,
    glaze: &'a entity::Glaze,
    history: &'a BucketHistory,
}

impl Page<'_> {
    /// What is in the bucket and for how long, and what to mind.
    fn lines_and_notes(&self) -> Result<(Vec<Line>, Vec<Note>)> {
        let (style, density) = (self.style, powder_density(self.glaze));
        let line = |label: String, value: String| Line { label, value };
        let (reading, checked_at) = latest_sg(self.conn, self.bucket.id)?;
        let contents = self.history.contents(self.conn, self.bucket, self.glaze)?;
        let mut notes = Vec::new();
        if is_old(self.now, checked_at) {
            notes.push(Note::attention(say::stir_and_check()));
        }
        let volume = contents.volume.map(|volume| line(say::volume(), style.volume(volume)));
        let Some(at) = checked_at else { return Ok((volume.into_iter().collect(), notes)) };
        let is_changed = self.history.is_changed_since(at);
        if is_changed {
            notes.push(Note::attention(say::changed_since()));
        }
        let today = self.history.sg_today(self.conn, self.now, reading, at)?;
        let Some(solids) = usable(solids_fraction(today.sg, density).map_err(Into::into))? else {
            return Ok((volume.into_iter().collect(), notes));
        };
        let dry = dry_per_litre(today.sg, density);
        let mut lines = vec![line(say::expected_sg(), spread(style, today))];
        let (walk, rise) = self.history.walk_and_rise();
        let due = sg_age::days_until_due(reading, walk, rise);
        let left = if is_changed { 0 } else { i64::from(due) - self.now.days_since(at) };
        lines.push(line(say::check_due(), if left > 0 { say::in_days(left) } else { say::now() }));
        lines.push(line(say::powder_by_weight(), style.percent(solids.value(), 0)));
        lines.push(line(say::dry_in_litre(), style.mass(dry, Grams::new(1.0))));
        lines.extend(volume);
        if let Some(volume) = contents.volume {
            lines.push(line(say::dry_in_bucket(), style.mass(dry * (volume.value() / 1000.0), Grams::new(1.0))));
            lines.extend(self.evaporation(volume, today.sg, rise.per_day)?);
            lines.extend(self.pieces_left(volume, today.sg)?);
        }
        Ok((lines, notes))
    }

    /// Water lost on each day on which the bucket was open: on which it was checked or glazed from.
    fn evaporation(&self, volume: Millilitres, sg: SpecificGravity, rise: f64) -> Result<Option<Line>> {
        let (Some(first), Some(last)) = (self.history.checks.last(), self.history.checks.first()) else {
            return Ok(None);
        };
        let days = self.now.at(last.at).days_since(first.at);
        if rise <= 0.0 || days < 1 {
            return Ok(None);
        }
        let coats = query::wet_from_bucket(self.conn, self.bucket.id, first.at, u32::MAX)?;
        let open = coats.iter().map(|(at, _)| *at).chain(self.history.checks.iter().map(|check| check.at));
        let open: BTreeSet<i64> =
            open.filter(|at| *at <= last.at).map(|at| self.now.at(last.at).days_since(at)).collect();
        // The first day is where the first check found it.
        let open_days = open.len().saturating_sub(1).max(1);
        let lost = evaporation(volume, sg, rise) * (days as f64 / open_days as f64);
        Ok(Some(Line { label: say::evaporation(), value: say::each_open_day(self.style.volume(lost)) }))
    }

    /// How many pieces of each form the bucket still takes, with enough left to dip into.
    fn pieces_left(&self, volume: Millilitres, sg: SpecificGravity) -> Result<Vec<Line>> {
        let mut forms = in_use::<entity::Form>(self.conn, None)?;
        forms.sort_by(|one, other| one.name.cmp(&other.name));
        let mut lines = Vec::new();
        for form in forms.into_iter().take(FORMS) {
            let Some(per_piece) = wet_per_piece(self.conn, self.style, &form, self.bucket.id)? else { continue };
            let keep = self.kept_to_dip(&form, volume);
            if let Some(pieces) = pieces_left(volume, keep, sg, per_piece) {
                lines.push(Line { label: form.name, value: say::pieces(pieces) });
            }
        }
        Ok(lines)
    }

    /// The volume below which a form cannot be dipped any more: its height in this bucket, else a share of what was mixed.
    fn kept_to_dip(&self, form: &entity::Form, volume: Millilitres) -> Millilitres {
        let heights = form.profile.iter().flat_map(|profile| &profile.0).filter_map(|point| point.first());
        let height = heights.max().map(|height| Millimetres::from_micrometres(*height));
        let by_height = height.and_then(|height| volume_at(self.bucket, height)?.ok());
        let mixed = self.bucket.volume_ul.map_or(volume, Millilitres::from_microlitres);
        by_height.unwrap_or(mixed * KEPT_TO_DIP)
    }

    /// Checks and entries in one order, the newest first.
    fn notebook(&self) -> Vec<NotebookRow> {
        let style = self.style;
        let checks = self.history.checks.iter().map(|check| {
            let flow = check.flow_ms.map(|ms| {
                let seconds = style.number(Seconds::from_milliseconds(ms).value(), 1);
                match check.cup.as_deref() {
                    Some(cup) => say::flow_in(seconds, name_of::<FlowCup>(cup)),
                    None => say::flow(seconds),
                }
            });
            let what = common::sg(sg_in_words(style, check.specific_gravity_e5));
            (check.at, EditorKind::Check, check.id, what, details([flow, check.note.clone()]))
        });
        let entries = self.history.entries.iter().map(|entry| {
            (entry.at, EditorKind::BucketEntry, entry.id, entry_in_words(style, entry), details([entry.note.clone()]))
        });
        let mut rows: Vec<_> = checks.chain(entries).collect();
        rows.sort_by_key(|(at, _, id, ..)| Reverse((*at, *id)));
        rows.truncate(NOTEBOOK);
        let row = |(at, kind, id, what, detail): (i64, EditorKind, Uuid, String, String)| NotebookRow {
            kind,
            id: id.to_string(),
            when: self.now.moment(at),
            what,
            detail,
        };
        rows.into_iter().map(row).collect()
    }
}

fn details<const N: usize>(parts: [Option<String>; N]) -> String {
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// "1.47 ± 0.02", at two standard uncertainties.
fn spread(style: &Style, reading: SgReading) -> String {
    let most = (2.0 * reading.standard_uncertainty).max(0.01);
    format!("{} ± {}", style.number(reading.sg.value(), 2), style.number(most, 2))
}

/// "Water added: 350 ml".
pub(super) fn entry_in_words(style: &Style, entry: &entity::BucketEntry) -> String {
    let what = sentence_case(&name_of::<EntryKind>(&entry.what));
    let amount = match entry.what.parse() {
        Ok(EntryKind::Water | EntryKind::WaterOff) => {
            entry.volume_ul.map(|volume| style.volume(Millilitres::from_microlitres(volume)))
        }
        Ok(EntryKind::Powder | EntryKind::Flocculant | EntryKind::Deflocculant | EntryKind::Weighed) => {
            entry.amount_mg.map(|amount| style.mass(Grams::from_milligrams(amount), Grams::new(0.1)))
        }
        Ok(EntryKind::Level) => entry.level_um.map(|level| style.length(Millimetres::from_micrometres(level))),
        Ok(EntryKind::Sieved | EntryKind::Note) | Err(_) => None,
    };
    match amount {
        Some(amount) => say::entry(what, amount),
        None => what,
    }
}
