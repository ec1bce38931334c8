//! What is used of a glaze, what its buckets still have, and what to mix.

use rusqlite::Connection;

use super::FindingsSection;
use super::fired::Weighed;
use crate::archive::in_use;
use crate::contents::BucketHistory;
use crate::date_text::DAY_MS;
use crate::evidence::bucket_today;
use crate::messages::findings as say;
use crate::{Line, Now, Result};
use laydown_domain::learning::consumption::{WEEKS, WeeklyUse, left, to_mix, weekly_use};
use laydown_domain::units::{Grams, Millilitres, Style};
use laydown_store::entity;

/// Buckets are said to a gram, and more coarsely nobody weighs powder.
const STEP: Grams = Grams::new(1.0);

/// What is used; `None` where nothing was, in the last weeks.
pub(super) fn section(
    conn: &Connection,
    now: Now,
    glaze: &entity::Glaze,
    coats: &[Weighed],
    style: &Style,
) -> Result<Option<FindingsSection>> {
    let days = |ms: i64| ms as f64 / DAY_MS as f64;
    let weighed: Vec<(f64, Grams)> =
        coats.iter().map(|coat| (days(coat.at), Grams::from_milligrams(coat.net_mg))).collect();
    let Some(used) = weekly_use(&weighed, days(now.unix_ms)) else { return Ok(None) };
    let mut lines =
        vec![Line { label: say::each_week(), value: say::weekly(used.coats, style.mass(used.per_week, STEP), WEEKS) }];
    for bucket in in_use::<entity::Bucket>(conn, None)?.into_iter().filter(|bucket| bucket.glaze == glaze.id) {
        lines.extend(bucket_line(conn, now, glaze, &bucket, &used, style)?);
    }
    Ok(Some(FindingsSection {
        title: say::use_title(),
        words: String::new(),
        lines,
        chart: None,
        answer: String::new(),
    }))
}

/// What a bucket has left, after coats, entries and levels; `None` where nobody has said how much was in it.
fn bucket_line(
    conn: &Connection,
    now: Now,
    glaze: &entity::Glaze,
    bucket: &entity::Bucket,
    used: &WeeklyUse,
    style: &Style,
) -> Result<Option<Line>> {
    let Some(volume) = BucketHistory::read(conn, bucket.id)?.contents(conn, bucket, glaze)?.volume else {
        return Ok(None);
    };
    let Some((sg, solids)) = bucket_today(conn, now, glaze, bucket.id)? else { return Ok(None) };
    let full = bucket.volume_ul.map_or(volume, Millilitres::from_microlitres).max(volume);
    let taken = Grams::new((full - volume).value() * sg.value());
    Ok(left(full, sg, taken, used.per_coat).map(|left| {
        let (powder, water) = to_mix(taken, &solids);
        let fill = (taken >= STEP).then(|| say::to_fill_up(style.mass(powder, STEP), style.mass(water, STEP)));
        let has = say::bucket_left(left.coats, style.mass(left.wet, STEP));
        Line {
            label: bucket.name.clone(),
            value: [Some(has), fill].into_iter().flatten().collect::<Vec<_>>().join(" "),
        }
    }))
}
