//! The Buckets screen: each bucket with its SG, how old that is, and what has been taken from it since.

use crate::in_words::StyleWords as _;
use rusqlite::Connection;
use uuid::Uuid;

use super::archive::{found, in_use};
use super::evidence::{latest_sg, parse_id, powder_density, sg_in_words, style, usable};
use super::in_words::caution_text;
use super::messages::{buckets as say, common};
use super::{Line, Note, Now, Result, Studio};
use laydown_domain::caution::{self, Place};
use laydown_domain::glaze::slurry::{dry_per_litre, solids_fraction};
use laydown_domain::units::{Grams, Millilitres, Seconds, SpecificGravity, Style};
use laydown_store::entity;
use laydown_store::query::{checks, coats_from_bucket};

/// After how many days a bucket's check is called old. Common practice, no source.
const CHECK_IS_OLD_DAYS: i64 = 7;
/// How many of a bucket's checks its page lists.
const CHECKS: u32 = 20;

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
    /// Whether the check is missing or old.
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

/// One check of a bucket.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct CheckRow {
    /// When it was.
    pub when: String,
    /// What it said.
    pub sg: String,
    /// Flow cup seconds if there were any.
    pub flow: String,
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
    /// Its checks, newest first.
    pub checks: Vec<CheckRow>,
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
            let lines = match latest_sg(conn, bucket_id)? {
                (sg, Some(_)) => usable(composition(&style, sg.sg, &glaze, &bucket))?.unwrap_or_default(),
                (_, None) => Vec::new(),
            };
            let row = row(conn, now, &style, &bucket, glaze.name)?;
            let mut notes = Vec::new();
            if row.attention {
                notes.push(Note::attention(say::stir_and_check()));
            }
            Ok(BucketView {
                id: row.id,
                glaze_id: bucket.glaze.to_string(),
                glaze: row.glaze,
                name: row.name,
                sg: row.sg,
                since: row.since,
                lines,
                checks: check_rows(conn, now, &style, bucket_id)?,
                notes,
            })
        })
    }
}

/// How a bucket stands now: the same in the list and on its page.
fn row(conn: &Connection, now: Now, style: &Style, bucket: &entity::Bucket, glaze: String) -> Result<BucketRow> {
    let (sg, checked_at) = latest_sg(conn, bucket.id)?;
    let coats = coats_from_bucket(conn, bucket.id, checked_at.unwrap_or(bucket.mixed_at))?;
    Ok(BucketRow {
        id: bucket.id.to_string(),
        glaze,
        name: bucket.name.clone(),
        sg: checked_at.map_or_else(say::sg_not_checked, |_| common::sg(style.specific_gravity(sg.sg))),
        since: since(now, checked_at, coats.into()),
        attention: is_old(now, checked_at),
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

fn composition(
    style: &Style,
    sg: SpecificGravity,
    glaze: &entity::Glaze,
    bucket: &entity::Bucket,
) -> Result<Vec<Line>> {
    let density = powder_density(glaze);
    let line = |label: String, value: String| Line { label, value };
    let dry = dry_per_litre(sg, density);
    let mut lines = vec![
        line(say::powder_by_weight(), style.percent(solids_fraction(sg, density)?.value(), 0)),
        line(say::dry_in_litre(), style.mass(dry, Grams::new(1.0))),
    ];
    if let Some(volume) = bucket.volume_ul.map(Millilitres::from_microlitres) {
        lines.push(line(say::dry_in_bucket(), style.mass(dry * (volume.value() / 1000.0), Grams::new(1.0))));
    }
    Ok(lines)
}

fn check_rows(conn: &Connection, now: Now, style: &Style, bucket: Uuid) -> Result<Vec<CheckRow>> {
    let mut rows = Vec::new();
    for check in checks(conn, bucket, CHECKS)? {
        rows.push(CheckRow {
            when: now.moment(check.at),
            sg: common::sg(sg_in_words(style, check.specific_gravity_e5)),
            flow: check
                .flow_ms
                .map_or_else(String::new, |ms| say::flow(style.number(Seconds::from_milliseconds(ms).value(), 1))),
        });
    }
    Ok(rows)
}
