//! The phones of the studio: which have written here, until when, and whether their clocks can be right.

use std::collections::BTreeMap;

use rusqlite::Connection;

use super::date_text::{DAY_MS, count};
use super::{Note, Now, Result, Row, Studio, SyncView, sync};
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
                title: super::date_text::sentence_case(&called(&names, *device)),
                detail: match clock {
                    Some(clock) => format!("{}, last {}", count(*entries, "entry", "entries"), now.moment(clock.millis())),
                    None => "Nothing saved yet".to_owned(),
                },
                chosen: *device == own,
                outline: Vec::new(),
            };
            let sync = sync::view(conn, now)?;
            let intro = if sync.chosen {
                "Each phone has everything and works on its own. After a sync they all have the same."
            } else {
                "Each phone has everything and works on its own. To share, send a backup to the other phone and restore it there."
            };
            Ok(DevicesView {
                intro: intro.to_owned(),
                sync,
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
        Ok("This is a new phone to the others now. Everything saved before stays as it is.".to_owned())
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
    (days >= 1).then(|| {
        let days = count(days, "day", "days");
        format!("Entries are dated up to {days} later than this phone's clock shows. Nothing is lost by it. Set the date right, here or on the other phone.")
    })
}

/// What each phone calls itself.
pub(super) fn names_of_devices(conn: &Connection) -> Result<BTreeMap<DeviceId, String>> {
    let own = this_device(conn)?;
    let named =
        Preference::all(conn)?.into_iter().filter_map(|preference| Some((DeviceId(preference.id), preference.phone?)));
    let mut names: BTreeMap<DeviceId, String> = named.collect();
    names.entry(own).and_modify(|name| *name = format!("this phone ({name})")).or_insert("this phone".to_owned());
    Ok(names)
}

/// What a phone is called in a sentence.
pub(super) fn called(names: &BTreeMap<DeviceId, String>, device: DeviceId) -> String {
    names.get(&device).cloned().unwrap_or_else(|| "another phone".to_owned())
}
