//! Targets from everything known of a glaze: [`laydown_domain::learning::pooled`] over what the store has.
//!
//! Fitting reads all fired pots of a glaze, which takes longer than Weigh may. What a fit says of a place is small: it is
//! remembered until something changed that a target can rest on ([`evidence_stamp`]), and for the place weighed last also across
//! starts of the app.

mod choice;
mod evidence;
mod size;
mod why;
mod words;

use std::collections::BTreeMap;

use parking_lot::Mutex;
use rusqlite::Connection;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::date_text::DAY_MS;
use super::local_settings::{remember, remembered};
use super::{Now, Result};
use laydown_domain::coat::target::Job;
use laydown_domain::form::ZoneKind;
use laydown_domain::learning::observation::ENOUGH;
use laydown_domain::learning::pooled::{Assumptions, Fitted, Note, Outlook, Place, RestsOn};
use laydown_store::{Transaction, entity, evidence_stamp};

pub(crate) use choice::{Chosen, chosen, options, with_choice};
pub use choice::{TargetChoice, TargetOption};
use evidence::known;
pub(crate) use evidence::{Known, known_by};
pub(crate) use size::{ShapeSizes, laydown, shapes};
pub use why::{EvidenceRow, WhyTargetView};
pub(crate) use why::{wet, why};
pub(crate) use words::{disagreements, moved};

/// Evidence fades slowly: a fit holds for so long, so that a week's figures do not change from one day to the next.
const HOLDS_MS: i64 = 7 * DAY_MS;
/// The most places that are remembered while the app runs.
const MOST_PLACES: usize = 256;
/// Under what name the place weighed last is remembered.
const LAST: &str = "pooled";

/// What is known of one place once enough pots of the glaze were fired and judged.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Learned {
    pub(crate) outlook: Outlook,
    pub(crate) pots: usize,
    pub(crate) controls: usize,
    pub(crate) notes: Vec<Note>,
}

impl Learned {
    pub(crate) fn rests_on(&self) -> RestsOn {
        RestsOn { pots: self.pots, controls: self.controls }
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
struct Key {
    glaze: Uuid,
    form: Uuid,
    zone: ZoneKind,
}

/// What was learned of a place, and until when that holds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct Remembered {
    key: Key,
    stamp: i64,
    week: i64,
    learned: Option<Learned>,
}

/// What was learned, by place.
#[derive(Debug, Default)]
pub(crate) struct Cache {
    places: Mutex<BTreeMap<Key, Remembered>>,
    last: Mutex<Option<Key>>,
}

impl Cache {
    /// What all evidence says of `glaze` where `job` is to be done on `form`; `None` while fewer than [`ENOUGH`] coats of the
    /// glaze were fired and judged: with fewer, one odd pot would move targets by more than their tolerance.
    pub(crate) fn learned(
        &self,
        conn: &Connection,
        now: Now,
        glaze: &entity::Glaze,
        form: &entity::Form,
        job: &Job,
    ) -> Result<Option<Learned>> {
        *self.last.lock() = Some(Key { glaze: glaze.id, form: form.id, zone: job.zone.kind });
        self.at(conn, now, glaze, form, job)
    }

    /// The same where nothing is weighed.
    pub(crate) fn at(
        &self,
        conn: &Connection,
        now: Now,
        glaze: &entity::Glaze,
        form: &entity::Form,
        job: &Job,
    ) -> Result<Option<Learned>> {
        let key = Key { glaze: glaze.id, form: form.id, zone: job.zone.kind };
        let (stamp, week) = (evidence_stamp(conn)?, now.unix_ms.div_euclid(HOLDS_MS));
        let holds = |known: &Remembered| known.key == key && known.stamp == stamp && known.week == week;
        if let Some(known) = self.places.lock().get(&key).filter(|known| holds(known)) {
            return Ok(known.learned.clone());
        }
        let before = remembered::<Remembered>(conn, LAST)?.filter(|known| holds(known));
        let known = match before {
            Some(known) => known,
            None => {
                let learned = fitted(conn, now, glaze, form, job)?.ok().map(|fit| fit.learned());
                Remembered { key, stamp, week, learned }
            }
        };
        let learned = known.learned.clone();
        let mut places = self.places.lock();
        if places.len() >= MOST_PLACES {
            places.clear();
        }
        places.insert(key, known);
        Ok(learned)
    }

    /// Remembers what is known of the place weighed last for the next start.
    pub(crate) fn save(&self, tx: &mut Transaction<'_>) -> Result<()> {
        let last = *self.last.lock();
        let known = last.and_then(|key| self.places.lock().get(&key).cloned());
        known.map_or(Ok(()), |known| remember(tx, LAST, &known))
    }
}

/// A fit with the evidence it rests on.
struct Fit {
    known: Known,
    fitted: Fitted,
}

impl Fit {
    fn learned(&self) -> Learned {
        Learned {
            outlook: self.fitted.outlook(),
            pots: self.fitted.pots(),
            controls: self.fitted.controls(),
            notes: self.fitted.notes(&self.known.evidence),
        }
    }
}

/// What all evidence of a glaze says of a job; the evidence alone where it is too little, or a figure cannot be.
fn fitted(
    conn: &Connection,
    now: Now,
    glaze: &entity::Glaze,
    form: &entity::Form,
    job: &Job,
) -> Result<std::result::Result<Fit, Known>> {
    let known = known(conn, glaze)?;
    if known.evidence.pots.len() < ENOUGH {
        return Ok(Err(known));
    }
    let fitted = Fitted::new(&known.evidence, &place(form, job), day_of_week(now), &Assumptions::default(), None);
    Ok(match fitted {
        Some(fitted) => Ok(Fit { known, fitted }),
        None => Err(known),
    })
}

/// Where a coat is to lie. At which cone it will be fired is not known on Weigh.
fn place(form: &entity::Form, job: &Job) -> Place {
    Place {
        form: form.id,
        zone: job.zone.kind,
        class: job.class,
        area_relative_uncertainty: job.zone.relative_uncertainty,
        body: form.body,
        cone: None,
    }
}

/// The day that this week's fits are made for, in days since 1970.
fn day_of_week(now: Now) -> f64 {
    days(now.unix_ms.div_euclid(HOLDS_MS) * HOLDS_MS + HOLDS_MS)
}

fn days(unix_ms: i64) -> f64 {
    unix_ms as f64 / DAY_MS as f64
}
