//! The phones of the studio: which have written here, until when, and whether their clocks can be right.

use std::collections::BTreeMap;

use rusqlite::Connection;

use super::date_text::{DAY_MS, sentence_case};
use super::messages::devices as say;
use super::{Note, Now, Result, Row, Studio, SyncView, meanwhile, sync};
use laydown_store::entity::{Entity, Preference};
use laydown_store::journal::{Clock, DeviceId};
use laydown_store::{last_clocks, this_device};

/// The phones of the studio.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct DevicesView {
    /// How phones come to agree.
    pub intro: String,
    /// Sync location.
    pub sync: SyncView,
    /// The phones, this one first.
    pub devices: Vec<Row>,
    /// How much other phones did meanwhile that is to be read; empty where nothing is.
    pub meanwhile: String,
    /// Clocks that cannot be right.
    pub notes: Vec<Note>,
}

#[uniffi::export]
impl Studio {
    /// The phones that have written here.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn devices(&self, now: Now) -> Result<DevicesView> {
        self.store.read(|conn| {
            let own = this_device(conn)?;
            let names = names_of_devices(conn)?;
            let mut last = last_clocks(conn)?;
            last.sort_by_key(|(device, _, clock)| (*device != own, std::cmp::Reverse(*clock)));
            let row = |(device, entries, clock): &(DeviceId, i64, Option<Clock>)| Row {
                id: device.0.to_string(),
                title: match names.phone(*device) {
                    Phone::This(None) => say::this_phone_row(),
                    Phone::This(Some(name)) => say::this_phone_named_row(name),
                    Phone::Named(name) => sentence_case(name),
                    Phone::Another => say::another_phone_row(),
                },
                detail: match clock {
                    Some(clock) => say::entries_last(*entries, now.moment(clock.millis())),
                    None => say::no_entries(),
                },
                chosen: *device == own,
                outline: Vec::new(),
            };
            let sync = sync::view(conn, now)?;
            Ok(DevicesView {
                intro: if sync.chosen { say::intro_with_location() } else { say::intro_without_location() },
                sync,
                meanwhile: meanwhile::in_a_line(conn)?,
                devices: last.iter().map(row).collect(),
                notes: ahead(now, &last).map(Note::attention).into_iter().collect(),
            })
        })
    }

    /// Sets this phone up as a new one, as where two phones have written under one name: what it keeps from now on carries a name
    /// of its own, with the same preferences. What was kept before stays as it is. Answers with what to say.
    ///
    /// # Errors
    /// When the file cannot be written.
    pub fn set_up_as_new_phone(&self, now: Now) -> Result<String> {
        let before = self.store.rename_own_device(now.unix_ms)?;
        self.prefer_as(now, before, |preferred| preferred)?;
        Ok(say::new_phone_set_up())
    }
}

impl Studio {
    /// Prefers here what the device `before` preferred, changed as `change` says.
    pub(super) fn prefer_as(
        &self,
        now: Now,
        before: DeviceId,
        change: impl FnOnce(Preference) -> Preference,
    ) -> Result<()> {
        self.command(now, |tx| {
            if let Some(preferred) = Preference::load(tx.conn(), before.0)? {
                let id = this_device(tx.conn())?.0;
                tx.put(&change(Preference { id, ..preferred }))?;
            }
            Ok(())
        })?;
        Ok(())
    }
}

/// What to say where entries are dated later than now. They count all the same, and what is kept from now on counts after
/// them; but the day they show is wrong.
fn ahead(now: Now, last: &[(DeviceId, i64, Option<Clock>)]) -> Option<String> {
    let latest = last.iter().filter_map(|(_, _, clock)| *clock).max()?.millis();
    let days = (latest - now.unix_ms) / DAY_MS;
    (days >= 1).then(|| say::clock_behind(days))
}

/// What the phones call themselves.
pub(super) struct PhoneNames {
    own: DeviceId,
    names: BTreeMap<DeviceId, String>,
}

/// A phone as a potter knows it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Phone<'a> {
    /// The one in the hand, with its name where it has one.
    This(Option<&'a str>),
    /// Another with a name.
    Named(&'a str),
    /// Another.
    Another,
}

impl PhoneNames {
    fn phone(&self, device: DeviceId) -> Phone<'_> {
        match self.names.get(&device) {
            name if device == self.own => Phone::This(name.map(String::as_str)),
            Some(name) => Phone::Named(name),
            None => Phone::Another,
        }
    }

    /// For a sentence that names a phone: the code that the message chooses its words by, and the phone's name, empty where it
    /// has none.
    pub(super) fn code_and_name(&self, device: DeviceId) -> (&'static str, &str) {
        match self.phone(device) {
            Phone::This(None) => ("this", ""),
            Phone::This(Some(name)) => ("this-named", name),
            Phone::Named(name) => ("named", name),
            Phone::Another => ("another", ""),
        }
    }
}

/// What each phone calls itself.
pub(super) fn names_of_devices(conn: &Connection) -> Result<PhoneNames> {
    let named =
        Preference::all(conn)?.into_iter().filter_map(|preference| Some((DeviceId(preference.id), preference.phone?)));
    Ok(PhoneNames { own: this_device(conn)?, names: named.collect() })
}

/// What a phone is called, standing by itself.
pub(super) fn called(names: &PhoneNames, device: DeviceId) -> String {
    match names.phone(device) {
        Phone::This(None) => say::this_phone(),
        Phone::This(Some(name)) => say::this_phone_named(name),
        Phone::Named(name) => name.to_owned(),
        Phone::Another => say::another_phone(),
    }
}
