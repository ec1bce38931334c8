//! What was done in the studio: the latest of it on all phones, each to be undone, and all that was ever said of one thing.

use std::collections::{BTreeSet, HashSet};

use rusqlite::Connection;
use serde_json::Value;
use uuid::Uuid;

use super::date_text::sentence_case;
use super::devices::{PhoneNames, called, names_of_devices};
use super::evidence::style;
use super::in_words::{StyleWords, name_of};
use super::kiln::{Pot, firing_title};
use super::messages::history as say;
use super::{CommandResult, Now, Result, Studio, StudioError, undo_token};
use laydown_domain::form::ZoneKind;
use laydown_domain::units::{Celsius, Grams, Laydown, Millilitres, Millimetres, SquareCentimetres, Style};
use laydown_domain::visible::visible;
use laydown_store::entity::{self, Entity};
use laydown_store::journal::{DeviceId, Event, EventId, History, Kind, Restored, SEEN, State};
use laydown_store::{Command, Undo, events_of, latest_commands, this_device};

/// How many doings are shown.
const RECENT_CHANGES: usize = 40;
/// Among how many of each phone's newest commands they are looked for: one that only undoes is none of its own.
const LOOKED_THROUGH: usize = 200;
/// From how many of a command's events it is told what it was: an import makes a hundred thousand.
const TOLD_FROM: i64 = 50;
/// As fine as a weight is shown here.
const STEP: Grams = Grams::new(0.1);

/// Something that was done.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct HistoryEntry {
    /// What it was about.
    pub title: String,
    /// When, on which phone, and what became of it.
    pub detail: String,
    /// To hand to undo, or to redo where it is undone; empty where it cannot be turned on this phone.
    pub token: String,
    /// Whether it is undone.
    pub is_undone: bool,
    /// The id of what it was about, whose history can be asked for.
    pub thing: String,
}

/// A list of what was done, the newest first.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct HistoryView {
    /// What it is the history of.
    pub title: String,
    /// How to read it, or what stands there while it is empty.
    pub intro: String,
    /// What was done.
    pub recent_changes: Vec<HistoryEntry>,
}

#[uniffi::export]
impl Studio {
    /// Recent changes, on all phones.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn recent_changes(&self, now: Now) -> Result<HistoryView> {
        self.store.read(|conn| {
            let told = Telling::new(conn, now)?;
            let mut recent_changes = Vec::new();
            for command in latest_commands(conn, now.unix_ms, LOOKED_THROUGH, TOLD_FROM)? {
                if recent_changes.len() == RECENT_CHANGES {
                    break;
                }
                recent_changes.extend(told.entry(&command)?);
            }
            let intro = if recent_changes.is_empty() { say::nothing_done() } else { say::how_to_read() };
            Ok(HistoryView { title: say::recent_changes(), intro, recent_changes })
        })
    }

    /// All that was ever said of the thing with this id, what no longer counts included.
    ///
    /// # Errors
    /// [`StudioError::Missing`] when nothing was ever said of it.
    pub fn history(&self, now: Now, id: &str) -> Result<HistoryView> {
        self.store.read(|conn| {
            let id: Uuid = id.parse().map_err(|_| StudioError::missing("thing"))?;
            let events = events_of(conn, id)?;
            let said = laydown_store::history(&events);
            let about = said.events().map(|(event, _)| event).find(|event| event.kind != Kind::RETRACT);
            let about = about.ok_or_else(|| StudioError::missing("thing"))?;
            let told = Telling::new(conn, now)?;
            Ok(HistoryView {
                title: told.title(&about.kind, id)?,
                intro: say::how_to_read_one(),
                recent_changes: told.said_of(&said)?,
            })
        })
    }

    /// Does again what was undone: the command with this token, as [`HistoryEntry::token`] gives it.
    ///
    /// # Errors
    /// [`StudioError::Refused`] when the token is not one of this studio's, or nothing of that is undone.
    pub fn redo(&self, now: Now, token: &str) -> Result<CommandResult> {
        let nothing = || StudioError::refused("", say::nothing_to_redo());
        let undo: Undo = serde_json::from_str(token).map_err(|_| nothing())?;
        let done = self.command(now, |tx| Ok(tx.redo(undo)?))?;
        if done.undo.is_empty() {
            Err(nothing())
        } else {
            Ok(CommandResult::new(String::new(), say::redone(), done.undo))
        }
    }
}

/// What is needed to tell of events in words.
pub(super) struct Telling<'a> {
    conn: &'a Connection,
    now: Now,
    style: Style,
    own: DeviceId,
    devices: PhoneNames,
}

impl<'a> Telling<'a> {
    pub(super) fn new(conn: &'a Connection, now: Now) -> Result<Telling<'a>> {
        Ok(Telling { conn, now, style: style(conn)?, own: this_device(conn)?, devices: names_of_devices(conn)? })
    }

    fn when_and_where(&self, event: &Event) -> String {
        say::when_and_where(self.now.moment(event.clock.millis()), called(&self.devices, event.device))
    }

    /// One command; `None` for one that only undoes, which shows on what it took back.
    fn entry(&self, command: &Command) -> Result<Option<HistoryEntry>> {
        let about: Vec<&Event> = command.events.iter().filter(|event| event.kind != Kind::RETRACT).collect();
        let Some(first) = about.first() else { return self.came_back(command) };
        let things: BTreeSet<Uuid> = about.iter().map(|event| event.entity).collect();
        let events = |thing: &Uuid| events_of(self.conn, *thing);
        let events = things.iter().map(events).collect::<Result<Vec<_>, _>>()?;
        let histories: Vec<History<'_>> = events.iter().map(|events| laydown_store::history(events)).collect();
        let is_effective: HashSet<EventId> = histories.iter().flat_map(History::effective).collect();
        let is_undone = !about.iter().any(|event| is_effective.contains(&event.id()));
        let mut firsts = histories.iter().filter_map(|history| Some(history.events().next()?.0.id()));
        let is_new = firsts.any(|event| event == first.id());
        let mut title = self.title(&first.kind, first.entity)?;
        if command.things > 1 {
            title = say::title_and_more(command.things - 1, title);
        }
        let mut detail = vec![self.when_and_where(first)];
        if !is_new {
            detail.push(fields_in_words(first));
        }
        if is_undone {
            detail.push(say::undone());
        }
        let restored = histories.iter().flat_map(History::restored);
        if let Some(restored) = restored.into_iter().find(|restored| restored.made == first.id()) {
            detail.push(self.restored(*restored));
        }
        if !is_undone {
            detail.extend(self.without_effect(first)?);
        }
        Ok(Some(HistoryEntry {
            title,
            detail: detail.join(", "),
            token: if first.device == self.own { undo_token(command.undo) } else { String::new() },
            is_undone,
            thing: first.entity.to_string(),
        }))
    }

    /// A command that undid what came back; `None` for any other.
    fn came_back(&self, command: &Command) -> Result<Option<HistoryEntry>> {
        for undoing in &command.events {
            let events = events_of(self.conn, undoing.entity)?;
            let history = laydown_store::history(&events);
            let restored = history.restored().iter().find(|restored| restored.retraction == undoing.id());
            let Some(restored) = restored else { continue };
            let Some(made) = events.iter().find(|event| event.id() == restored.made) else { continue };
            return Ok(Some(HistoryEntry {
                title: self.title(&made.kind, made.entity)?,
                detail: [self.when_and_where(undoing), self.restored(*restored)].join(", "),
                token: String::new(),
                is_undone: false,
                thing: made.entity.to_string(),
            }));
        }
        Ok(None)
    }

    /// Why what was undone is there: nobody loses what he said because another had not heard of it.
    fn restored(&self, restored: Restored) -> String {
        let (undone, undone_name) = self.devices.code_and_name(restored.retraction.device);
        let (edited, edited_name) = self.devices.code_and_name(restored.edit.device);
        say::came_back(undone, undone_name, edited, edited_name)
    }

    /// Why an event that stands does not show: its thing was undone, as was one that it is about, or it has values that cannot be.
    fn without_effect(&self, event: &Event) -> Result<Option<String>> {
        if laydown_store::is_shown(self.conn, &event.kind, event.entity)? == Some(false) {
            return Ok(Some(say::not_shown()));
        }
        let left_out: Vec<String> = laydown_store::left_out(event).map(field_in_words).collect();
        if !left_out.is_empty() {
            return Ok(Some(say::left_out(left_out.join(", "))));
        }
        for (name, value) in &event.body {
            let Some(id) = value.as_str().and_then(|text| text.parse::<Uuid>().ok()) else { continue };
            let kind = Kind::named(name.clone());
            if laydown_store::is_shown(self.conn, &kind, id)? == Some(false) && !events_of(self.conn, id)?.is_empty() {
                return Ok(Some(say::its_was_undone(name)));
            }
        }
        Ok(None)
    }

    /// Every event of one thing, the newest first.
    fn said_of(&self, said: &History<'_>) -> Result<Vec<HistoryEntry>> {
        let events: Vec<(&Event, bool)> = said.events().collect();
        let mut recent_changes = Vec::new();
        for (at, (event, stands)) in events.iter().enumerate().filter(|(_, (event, _))| event.kind != Kind::RETRACT) {
            let is_undone = !stands;
            let fields = event.body.iter().filter(|(name, value)| *name != SEEN && (!value.is_null() || at > 0));
            let title = fields.map(|(name, value)| self.field(name, value)).collect::<Result<Vec<_>>>()?.join("; ");
            let mut later = events[at + 1..].iter().filter(|(later, stands)| {
                *stands && event.body.keys().any(|name| name != SEEN && later.body.contains_key(name))
            });
            let restored = said.restored().iter().find(|restored| restored.made == event.id());
            let mut detail = vec![self.when_and_where(event)];
            match (is_undone, later.next_back(), restored) {
                (true, ..) => detail.push(say::undone()),
                (false, Some((later, _)), _) => {
                    let (phone, name) = self.devices.code_and_name(later.device);
                    detail.push(say::set_anew(phone, name));
                }
                (false, None, Some(restored)) => detail.push(self.restored(*restored)),
                (false, None, None) => detail.extend(self.without_effect(event)?),
            }
            let undo = Undo::of(event.device, event.seq, event.seq);
            let can_turn = event.device == self.own && at > 0;
            recent_changes.push(HistoryEntry {
                title,
                detail: detail.join(", "),
                token: if can_turn { undo_token(undo) } else { String::new() },
                is_undone,
                thing: event.entity.to_string(),
            });
        }
        recent_changes.reverse();
        Ok(recent_changes)
    }

    /// What a thing is called: "Glaze: Ash white".
    pub(super) fn title(&self, kind: &Kind, id: Uuid) -> Result<String> {
        let word = say::kind(kind.name());
        Ok(match self.named(kind, id)? {
            Some(name) => say::kind_and_name(word, visible(&name)),
            None => word,
        })
    }

    /// The name of a thing; `None` where it is undone, or of a kind that has no names or is not known here.
    fn named(&self, kind: &Kind, id: Uuid) -> Result<Option<String>> {
        let conn = self.conn;
        match kind.name() {
            "glaze" => self.name_of::<entity::Glaze>(id, |glaze| Ok(glaze.name)),
            "bucket" => self.name_of::<entity::Bucket>(id, |bucket| Ok(bucket.name)),
            "vessel" => self.name_of::<entity::Vessel>(id, |vessel| Ok(vessel.name)),
            "form" => self.name_of::<entity::Form>(id, |form| Ok(form.name)),
            "body" => self.name_of::<entity::Body>(id, |body| Ok(body.name)),
            "scale" => self.name_of::<entity::Scale>(id, |scale| Ok(scale.name)),
            "scale_test" => self.name_of::<entity::ScaleTest>(id, |test| self.id_in_words("scale", test.scale)),
            "bisque_lot" => self.name_of::<entity::BisqueLot>(id, |lot| Ok(lot.name)),
            "kiln" => self.name_of::<entity::Kiln>(id, |kiln| Ok(kiln.name)),
            "tile" => self.name_of::<entity::Tile>(id, |tile| Ok(tile.name)),
            "check" => self.name_of::<entity::Check>(id, |check| self.id_in_words("bucket", check.bucket)),
            "bucket_entry" => self.name_of::<entity::BucketEntry>(id, |entry| self.id_in_words("bucket", entry.bucket)),
            "control" => self.name_of::<entity::Control>(id, |known| self.id_in_words("form", known.form)),
            "coat" => self.name_of::<entity::Coat>(id, |coat| self.coat(&coat)),
            "firing" => self.name_of::<entity::Firing>(id, |firing| firing_title(conn, &firing)),
            "placement" => self.name_of::<entity::Placement>(id, |placed| self.piece(placed.piece)),
            "finding" => self.name_of::<entity::Finding>(id, |found| self.piece(found.piece)),
            "piece" => self.piece(id).map(Some),
            "photo" => self.name_of::<entity::Photo>(id, |photo| self.piece(photo.piece)),
            _ => Ok(None),
        }
    }

    /// The name of a thing, also of one that is undone: by the last that was said of it.
    fn name_of<E: Entity>(&self, id: Uuid, name: impl FnOnce(E) -> Result<String>) -> Result<Option<String>> {
        let said = || -> Result<Option<E>> {
            let mut events = events_of(self.conn, id)?;
            events.sort_by_key(Event::order);
            let said = events.into_iter().filter(|event| event.kind == E::KIND).flat_map(|event| event.body);
            Ok(E::from_state(
                id,
                &State { kind: E::KIND, fields: said.filter(|(_, value)| !value.is_null()).collect() },
            ))
        };
        let thing = E::load(self.conn, id)?.map_or_else(said, |thing| Ok(Some(thing)))?;
        thing.map(name).transpose()
    }

    fn coat(&self, coat: &entity::Coat) -> Result<String> {
        let form = self.id_in_words("form", coat.form)?;
        let zone = name_of::<ZoneKind>(&coat.zone);
        Ok(format!("{form}, {zone}, {}", self.style.mass(Grams::from_milligrams(coat.net_mg), STEP)))
    }

    fn piece(&self, piece: Uuid) -> Result<String> {
        Pot::load(self.conn, piece)?.name(self.conn)
    }

    /// The name of what a field points to.
    fn id_in_words(&self, field: &str, id: Uuid) -> Result<String> {
        Ok(match field {
            "piece" => self.piece(id)?,
            _ => self.named(&Kind::named(field.to_owned()), id)?.unwrap_or_else(say::not_here),
        })
    }

    /// "Starting laydown: 5.5 g/dm²".
    pub(super) fn field(&self, name: &str, value: &Value) -> Result<String> {
        Ok(say::field_and_value(sentence_case(&field_in_words(name)), self.value(name, value)?))
    }

    fn value(&self, name: &str, value: &Value) -> Result<String> {
        Ok(match value {
            Value::Null => say::value_none(),
            Value::Bool(true) => say::value_yes(),
            Value::Bool(false) => say::value_no(),
            Value::Number(number) => match number.as_i64() {
                Some(number) => self.quantity(name, number),
                None => number.to_string(),
            },
            Value::String(text) => match text.parse::<Uuid>() {
                Ok(id) => self.id_in_words(name, id)?,
                Err(_) if CODES.contains(&name) => {
                    say::value_code(format!("{name}-{text}"), visible(text).replace('_', " "))
                }
                Err(_) => visible(text).into_owned(),
            },
            Value::Array(items) => say::value_list(items.len()),
            Value::Object(_) => say::value_kept(),
        })
    }

    /// The unit ends the field's name, as the schema explains.
    fn quantity(&self, name: &str, number: i64) -> String {
        let style = &self.style;
        match split_unit(name).1 {
            Some("mg_dm2") => style.laydown_with_unit(Laydown::from_milligrams_per_dm2(number)),
            Some("mg_ml") => format!("{} g/ml", style.number(number as f64 / 1e3, 2)),
            Some("mg") => style.mass(Grams::from_milligrams(number), STEP),
            Some("ul") => style.volume(Millilitres::from_microlitres(number)),
            Some("mm2") => style.area(SquareCentimetres::from_square_millimetres(number)),
            Some("um") => style.length(Millimetres::from_micrometres(number)),
            Some("mc") => format!("{} °C", style.number(Celsius::from_millidegrees(number).value(), 0)),
            Some("ms") => format!("{} s", style.number(number as f64 / 1e3, 1)),
            Some("e3") => style.number(number as f64 / 1e3, 2),
            Some("e4") => style.percent(number as f64 / 1e4, 1),
            Some("e5") => style.number(number as f64 / 1e5, 3),
            _ if matches!(name, "at" | "mixed_at" | "fired_at" | "drift_answered_at") => self.now.moment(number),
            _ => number.to_string(),
        }
    }
}

/// The units that end the names of fields, the longer ones first.
const UNITS: &[&str] = &["mg_dm2", "mg_ml", "mm2", "mg", "ul", "um", "mc", "ms", "e3", "e4", "e5"];

/// Fields that hold a code, which is a word or several.
const CODES: &[&str] = &[
    "class",
    "stage",
    "sensitivity",
    "how",
    "source",
    "verdict",
    "cone_kind",
    "state",
    "fires",
    "soaking",
    "zone",
    "inside",
    "outside",
    "overlap",
    "density_from",
    "what",
];

fn split_unit(name: &str) -> (&str, Option<&'static str>) {
    let unit = UNITS.iter().find_map(|unit| Some((name.strip_suffix(unit)?.strip_suffix('_')?, *unit)));
    unit.map_or((name, None), |(stem, unit)| (stem, Some(unit)))
}

/// "starting laydown" for `starting_laydown_mg_dm2`.
fn field_in_words(name: &str) -> String {
    let stem = split_unit(name).0;
    say::field(stem, visible(stem).replace('_', " "))
}

/// "changed: name, starting laydown".
fn fields_in_words(event: &Event) -> String {
    let names: Vec<String> = event.body.keys().filter(|name| *name != SEEN).map(|name| field_in_words(name)).collect();
    say::changed(names.join(", "))
}
