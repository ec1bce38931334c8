//! Taking in what was made elsewhere. A file, a backup and a sync all go through here, and here alone is decided what is believed.
//!
//! An event is judged by itself and by what its own device has made, hardly ever by what came before it here, so that honest phones
//! take in the same. What is refused is named, and the rest comes in; since its number is then missing, it is asked for again.
//!
//! No event is refused for its date. Of two phones neither can know whose clock is wrong: one that was set back to 1970 would shut
//! itself off from all others. Instead a date gives no power: what has seen an event comes after it whatever the clocks say
//! ([`crate::journal::fold`]), and a clock that is far ahead is not followed ([`Clock::observe`]).

use std::collections::BTreeMap;

use rusqlite::params;
use serde_json::Value;
use uuid::Uuid;

use super::error::StoreError;
use super::transaction::{
    SEQ_BITS, Transaction, between, count_of_entity, device_number, insert, last_seq, number_of, of_entity, place,
};
use crate::journal::{Clock, DeviceId, Event};

/// The most bytes that an event may say, as JSON: a form with all its points takes a fortieth.
const MOST_BODY: usize = 128 << 10;
/// The most bytes of one text in it.
const MOST_TEXT: usize = 16 << 10;
/// The most bytes of the name of a kind or a field.
const MOST_NAME: usize = 64;
/// How deep lists and objects may lie in each other.
const MOST_DEPTH: usize = 16;
/// The most events of one device about one thing. Each edit of the thing reads them all.
const MOST_ABOUT_ONE: i64 = 2_000;
/// The most devices that a studio has heard of.
const MOST_DEVICES: i64 = 256;
/// How far the number of an event may be after the last of its device that is here.
const MOST_JUMP: i64 = 1 << 20;
/// What was refused is told of so many devices and reasons; of more only how many events there were.
const MOST_TOLD: usize = 32;

/// Why an event is not taken in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Refusal {
    /// More bytes than any event has, or a text or a name that is too long.
    TooLarge,
    /// Too many of one device about one thing.
    TooMany,
    /// A number or a clock that no device gives, or a number far after all others of its device.
    NoSuchNumber,
    /// Of one device more than a studio can have.
    TooManyDevices,
    /// Another event is here under the same number of the same device. What is new of that device is left out with it.
    Forked,
}

/// Events of one device that were not taken in, for one reason.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refused {
    /// Whose.
    pub device: DeviceId,
    /// Why.
    pub why: Refusal,
    /// How many.
    pub count: u64,
    /// The lowest number among them.
    pub first: i64,
}

/// Events that were not taken in, whosever they are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RefusedEntries {
    /// So many of one device, for one reason.
    Of {
        /// How many.
        count: u64,
        /// Why.
        why: Refusal,
    },
    /// So many of further devices, for any reason.
    OfOthers {
        /// How many.
        count: u64,
    },
}

/// What came of events that were to be taken in.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Ingested {
    /// How many were new here.
    pub new: usize,
    /// What was not taken in, by device and reason.
    pub refused: Vec<Refused>,
    /// Refused beyond those, of further devices.
    pub more_refused: u64,
}

impl Ingested {
    fn refuse(&mut self, event: &Event, why: Refusal) {
        let is_full = self.refused.len() == MOST_TOLD;
        let known = self.refused.iter_mut().find(|refused| refused.device == event.device && refused.why == why);
        match known {
            Some(known) => {
                known.count += 1;
                known.first = known.first.min(event.seq);
            }
            None if is_full => self.more_refused += 1,
            None => self.refused.push(Refused { device: event.device, why, count: 1, first: event.seq }),
        }
    }

    /// The device and the number at which two wrote under one name, if any did.
    pub fn forked(&self) -> Option<(DeviceId, i64)> {
        let forked = self.refused.iter().find(|refused| refused.why == Refusal::Forked)?;
        Some((forked.device, forked.first))
    }

    fn is_forked(&self, device: DeviceId) -> bool {
        self.refused.iter().any(|refused| refused.device == device && refused.why == Refusal::Forked)
    }

    /// What was refused, for each reason once.
    pub fn refusals(&self) -> Vec<RefusedEntries> {
        let mut refusals: Vec<RefusedEntries> = Vec::new();
        for refused in self.refused.iter().map(|refused| RefusedEntries::Of { count: refused.count, why: refused.why })
        {
            if !refusals.contains(&refused) {
                refusals.push(refused);
            }
        }
        if self.more_refused > 0 {
            refusals.push(RefusedEntries::OfOthers { count: self.more_refused });
        }
        refusals
    }
}

/// What is known of a device while its events are taken in.
struct Known {
    number: Option<i64>,
    last: i64,
}

impl Transaction<'_> {
    /// Takes in events made elsewhere, in any order. Those already here change nothing; what cannot be believed is refused by name
    /// and the rest comes in. A command that takes events in does so before it writes any, so that undoing it undoes its own alone.
    ///
    /// # Errors
    /// Only when the studio cannot be read or written.
    pub fn ingest(&mut self, events: &[Event]) -> Result<Ingested, StoreError> {
        let mut ingested = Ingested::default();
        self.ingest_lot(events, &mut ingested)?;
        Ok(ingested)
    }

    /// As [`Transaction::ingest`], for a part of what there is to take in.
    pub(super) fn ingest_lot(&mut self, events: &[Event], ingested: &mut Ingested) -> Result<(), StoreError> {
        if self.next_seq > self.first_seq {
            return Err(StoreError::Fault { details: "events are taken in by a command of their own".to_owned() });
        }
        let mut known: BTreeMap<DeviceId, Known> = BTreeMap::new();
        let mut there: BTreeMap<Uuid, i64> = BTreeMap::new();
        let mut touched: BTreeMap<Uuid, Vec<&Event>> = BTreeMap::new();
        for event in events {
            let mut device = match known.remove(&event.device) {
                Some(device) => device,
                None => self.known(event.device)?,
            };
            let refusal = self.refusal(event, &device, &mut there, &touched)?;
            match refusal {
                Some(why) => ingested.refuse(event, why),
                None => match self.add(event, &mut device, ingested.is_forked(event.device))? {
                    Added::New => {
                        ingested.new += 1;
                        touched.entry(event.entity).or_default().push(event);
                    }
                    Added::Here => {}
                    Added::Forked => ingested.refuse(event, Refusal::Forked),
                },
            }
            known.insert(event.device, device);
        }
        for (entity, new) in touched {
            // Mostly these are all there are of it, and need not be read again.
            if there.get(&entity) == Some(&0) {
                self.refolded(entity, &new)?;
            } else {
                let events = of_entity(self.conn, self.strings, entity)?;
                self.refolded(entity, &events)?;
            }
        }
        Ok(())
    }

    fn known(&self, device: DeviceId) -> Result<Known, StoreError> {
        let number = number_of(self.conn, device)?;
        let last = number.map(|number| last_seq(self.conn, number)).transpose()?.unwrap_or(0);
        Ok(Known { number, last })
    }

    /// Why an event is not believed.
    fn refusal(
        &self,
        event: &Event,
        device: &Known,
        there: &mut BTreeMap<Uuid, i64>,
        touched: &BTreeMap<Uuid, Vec<&Event>>,
    ) -> Result<Option<Refusal>, StoreError> {
        let is_number = (1..1 << SEQ_BITS).contains(&event.seq) && event.seq <= device.last.saturating_add(MOST_JUMP);
        if !is_number || Clock::from_packed(event.clock.packed()).is_none() {
            return Ok(Some(Refusal::NoSuchNumber));
        }
        if too_large(event).is_some() {
            return Ok(Some(Refusal::TooLarge));
        }
        if device.number.is_none() && self.devices()? >= MOST_DEVICES {
            return Ok(Some(Refusal::TooManyDevices));
        }
        let here = match there.get(&event.entity) {
            Some(here) => *here,
            None => {
                let here = count_of_entity(self.conn, event.entity)?;
                there.insert(event.entity, here);
                here
            }
        };
        let new = touched.get(&event.entity).map_or(0, Vec::len) as i64;
        if here + new >= MOST_ABOUT_ONE && self.by_device(event, device)? >= MOST_ABOUT_ONE {
            return Ok(Some(Refusal::TooMany));
        }
        Ok(None)
    }

    fn devices(&self) -> Result<i64, StoreError> {
        Ok(self.conn.prepare_cached("SELECT count(*) FROM device")?.query_row([], |row| row.get(0))?)
    }

    /// How many other events of its device about its entity are here.
    fn by_device(&self, event: &Event, device: &Known) -> Result<i64, StoreError> {
        let Some(number) = device.number else { return Ok(0) };
        let mut select = self.conn.prepare_cached(
            "SELECT count(*) FROM event WHERE entity = ?1 AND place BETWEEN ?2 AND ?3 AND place <> ?4",
        )?;
        let params = params![event.entity, place(number, 0), place(number + 1, 0) - 1, place(number, event.seq)];
        Ok(select.query_row(params, |row| row.get(0))?)
    }

    /// Adds an event unless it is here. New events of a device that was found forked stay out: those of two would be mixed.
    fn add(&mut self, event: &Event, device: &mut Known, is_forked: bool) -> Result<Added, StoreError> {
        let number = match device.number {
            Some(number) => number,
            None => device_number(self.conn, event.device)?,
        };
        device.number = Some(number);
        if is_forked || !insert(self.conn, self.strings, number, event)? {
            let known = between(self.conn, self.strings, number, event.seq, event.seq)?;
            return Ok(if known.first() == Some(event) { Added::Here } else { Added::Forked });
        }
        device.last = device.last.max(event.seq);
        self.clock = self.clock.observe(event.clock, self.now_ms);
        self.events.push(event.id());
        if number == self.device.number {
            // This phone's own, come back after an older copy of the studio was restored.
            self.next_seq = self.next_seq.max(event.seq + 1);
            self.first_seq = self.next_seq;
        }
        Ok(Added::New)
    }
}

enum Added {
    New,
    Here,
    Forked,
}

/// Why an event says more than any can; `None` where it does not.
pub(super) fn too_large(event: &Event) -> Option<Refusal> {
    let mut left = MOST_BODY;
    let names = event.kind.name().len() <= MOST_NAME && event.body.keys().all(|name| name.len() <= MOST_NAME);
    let fits =
        names && event.body.iter().all(|(name, value)| takes(name, &mut left) && fits(value, MOST_DEPTH, &mut left));
    (!fits).then_some(Refusal::TooLarge)
}

/// Whether a value is small enough by itself and takes no more than is `left` of all.
fn fits(value: &Value, depth: usize, left: &mut usize) -> bool {
    let Some(deeper) = depth.checked_sub(1) else { return false };
    match value {
        Value::Null | Value::Bool(_) | Value::Number(_) => takes("12345678", left),
        Value::String(text) => text.len() <= MOST_TEXT && takes(text, left),
        Value::Array(values) => takes("[]", left) && values.iter().all(|value| fits(value, deeper, left)),
        Value::Object(fields) => {
            takes("{}", left) && fields.iter().all(|(name, value)| takes(name, left) && fits(value, deeper, left))
        }
    }
}

/// Takes the bytes of a text from what is left.
fn takes(text: &str, left: &mut usize) -> bool {
    match left.checked_sub(text.len() + 3) {
        Some(rest) => {
            *left = rest;
            true
        }
        None => false,
    }
}
