//! How long to dip or pour for the aim: a hint from coats of the same bucket, zone and bisque whose seconds were noted.

use rusqlite::Connection;

use super::context::WeighContext;
use crate::bisque::lot_of;
use crate::evidence::{Pieces, WeighedCoat};
use crate::messages::weigh as say;
use crate::{Note, Now, Result};
use laydown_domain::coat::target::Target;
use laydown_domain::learning::dip_time::{Dip, DipLaw};
use laydown_domain::units::Seconds;
use laydown_store::query;

/// The most dips that a hint rests on: the newest of the bucket.
const MOST: u32 = 60;

/// About how long to dip; `None` while too few seconds are noted, or they say too little.
pub(super) fn hint(conn: &Connection, now: Now, context: &WeighContext, target: &Target) -> Result<Option<Note>> {
    let law = DipLaw::of(&dips(conn, now, context)?);
    let Some((law, hint)) = law.and_then(|law| Some((law, law.hint(target.laydown)?))) else { return Ok(None) };
    let Some(to) = hint.to.filter(|_| hint.from > Seconds::ZERO) else { return Ok(None) };
    let seconds = |time: Seconds| context.style.number(time.value(), if to < Seconds::new(10.0) { 1 } else { 0 });
    Ok(Some(Note::plain(say::dip_hint(law.dips, seconds(hint.time), seconds(hint.from), seconds(to)))))
}

/// The dips of this bucket on this zone and this bisque. One that was touched up says nothing of its seconds.
fn dips(conn: &Connection, now: Now, context: &WeighContext) -> Result<Vec<Dip>> {
    let mut dips = Vec::new();
    let timed = query::timed_coats(conn, context.bucket.id, MOST)?;
    if timed.is_empty() {
        return Ok(dips);
    }
    let lot = lot_of(conn, context.form.body, now.unix_ms)?.map(|lot| lot.id);
    let mut pieces = Pieces::new(conn);
    for coat in timed {
        let is_plain = coat.added_mg.is_none() && coat.rubbed_off_mg.is_none();
        let body = pieces.body(coat.form)?;
        let is_same_bisque = body == context.form.body && lot_of(conn, body, coat.at)?.map(|lot| lot.id) == lot;
        if coat.zone != context.zone().code() || !is_plain || !is_same_bisque {
            continue;
        }
        let laydown = pieces.laydown(&WeighedCoat::from(&coat), &context.glaze, context.zone())?;
        let time = coat.dip_ms.map(Seconds::from_milliseconds);
        dips.extend(time.zip(laydown).map(|(time, laydown)| Dip { time, laydown }));
    }
    Ok(dips)
}
