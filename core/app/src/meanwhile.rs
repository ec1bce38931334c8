//! What other phones did meanwhile: what they archived, removed or renamed, said once after a sync; and where two phones said
//! different things before they heard of each other, which of them is to count.

use std::collections::BTreeMap;

use rusqlite::Connection;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use uuid::Uuid;

use super::devices::{called, names_of_devices};
use super::history::Telling;
use super::local_settings::{remember, remembered};
use super::messages::meanwhile as say;
use super::{CommandResult, Now, Result, Studio, StudioError};
use laydown_store::backup::{VersionVector, version_vector};
use laydown_store::entity::{Coat, Entity, Finding};
use laydown_store::journal::{DeviceId, Event, Kind};
use laydown_store::{events_after, events_of, history, is_shown, this_device};

/// Under what name it is remembered.
const MEANWHILE: &str = "meanwhile";
/// The most that is said: after years apart nobody reads more.
const MOST: usize = 100;
/// Among how many of the newest entries of a phone it is looked for.
const LOOKED_THROUGH: i64 = 2_000;
/// Of how many syncs it is remembered what had gone out by then.
const SYNCS: usize = 200;
/// The answers of which two can differ on one finding, beside names and weights.
const ANSWERS: [&str; 4] = ["inside", "outside", "overlap", "liking"];

/// What another phone did to a thing of the studio.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
enum Did {
    Archived,
    Removed,
    Renamed { before: String },
}

/// One thing that is to be said.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
struct News {
    kind: String,
    entity: Uuid,
    device: Uuid,
    did: Did,
}

/// Two phones set one field to different values, neither knowing of the other.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
struct Clash {
    kind: String,
    entity: Uuid,
    field: String,
    ours: Value,
    theirs: Value,
    device: Uuid,
}

/// What is remembered until it was read and answered.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
struct Meanwhile {
    /// How far each phone's entries have been looked through.
    looked_through: BTreeMap<Uuid, i64>,
    /// When this phone synced, unix ms, and how many of its own entries had gone out then: what was said elsewhere before that was
    /// said without having heard of them.
    #[serde(default)]
    sent: Vec<(i64, i64)>,
    news: Vec<News>,
    clashes: Vec<Clash>,
}

/// A question between two phones.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct ClashView {
    /// To hand back with the answer.
    pub id: String,
    /// What it is about: "Coat: Small mug, inside, 19.6 g".
    pub title: String,
    /// What this phone said: "Wet weight: 19.6 g".
    pub ours: String,
    /// What the other phone said, and which it is.
    pub theirs: String,
    /// Whether ours counts now; else theirs does.
    pub ours_counts: bool,
    /// What keeping both would do; empty where both cannot be kept.
    pub both: String,
}

/// What other phones did meanwhile.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct MeanwhileView {
    /// What they archived, removed or renamed, a sentence each.
    pub news: Vec<String>,
    /// What two phones disagree on.
    pub clashes: Vec<ClashView>,
    /// What to say where there is nothing; else empty.
    pub nothing: String,
}

/// Which of two values is to count.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, uniffi::Enum)]
pub enum ClashAnswer {
    /// This phone's.
    Ours,
    /// The other phone's.
    Theirs,
    /// Both: a name holds both; for a weight or an answer the one that counts stays, and a note says the other.
    Both,
}

#[uniffi::export]
impl Studio {
    /// What other phones did since this was last asked and read.
    ///
    /// # Errors
    /// Only when the file cannot be read.
    pub fn meanwhile(&self, now: Now) -> Result<MeanwhileView> {
        self.store.read(|conn| {
            let kept = kept(conn)?;
            let told = Telling::new(conn, now)?;
            let names = names_of_devices(conn)?;
            let mut news = Vec::new();
            for one in &kept.news {
                let title = told.title(&Kind::named(one.kind.clone()), one.entity)?;
                let phone = called(&names, DeviceId(one.device));
                news.push(match &one.did {
                    Did::Archived => say::archived(title, phone),
                    Did::Removed => say::removed(title, phone),
                    Did::Renamed { before } => say::renamed(title, before, phone),
                });
            }
            let mut clashes = Vec::new();
            for (at, clash) in kept.clashes.iter().enumerate() {
                let in_words = |value: &Value| told.field(&clash.field, value);
                let both = match clash.keeps() {
                    Keeps::InName => say::both_in_name(joined(&clash.ours, &clash.theirs)),
                    Keeps::InNote => say::both_in_note(),
                    Keeps::One => String::new(),
                };
                clashes.push(ClashView {
                    id: at.to_string(),
                    title: told.title(&Kind::named(clash.kind.clone()), clash.entity)?,
                    ours: say::ours(in_words(&clash.ours)?),
                    theirs: say::theirs(called(&names, DeviceId(clash.device)), in_words(&clash.theirs)?),
                    ours_counts: counts(conn, clash)?.as_ref() == Some(&clash.ours),
                    both,
                });
            }
            let nothing = if news.is_empty() && clashes.is_empty() { say::nothing() } else { String::new() };
            Ok(MeanwhileView { news, clashes, nothing })
        })
    }

    /// The news were read, and are not said again. What phones disagree on stays until it is answered.
    ///
    /// # Errors
    /// Only when the file cannot be written.
    pub fn meanwhile_read(&self, now: Now) -> Result<()> {
        self.command(now, |tx| {
            let kept = kept(tx.conn())?;
            remember(tx, MEANWHILE, &Meanwhile { news: Vec::new(), ..kept })
        })?;
        Ok(())
    }

    /// Says which of two values counts. `id` is that of [`ClashView`].
    ///
    /// # Errors
    /// [`StudioError::Missing`] when that was answered meanwhile; [`StudioError::Refused`] where both cannot be kept.
    pub fn settle_clash(&self, now: Now, id: &str, answer: ClashAnswer) -> Result<CommandResult> {
        let stored = self.command(now, |tx| {
            let mut kept = kept(tx.conn())?;
            let at =
                id.parse().ok().filter(|at| *at < kept.clashes.len()).ok_or_else(|| StudioError::missing("thing"))?;
            let clash = kept.clashes.remove(at);
            let now_counts = counts(tx.conn(), &clash)?;
            let value = match answer {
                ClashAnswer::Ours => clash.ours.clone(),
                ClashAnswer::Theirs => clash.theirs.clone(),
                ClashAnswer::Both => match clash.keeps() {
                    Keeps::InName => joined(&clash.ours, &clash.theirs).into(),
                    Keeps::InNote => now_counts.clone().unwrap_or_else(|| clash.theirs.clone()),
                    Keeps::One => return Err(StudioError::refused("", say::not_both())),
                },
            };
            let kind = Kind::named(clash.kind.clone());
            let mut body = laydown_store::journal::Body::new();
            if now_counts.as_ref() != Some(&value) {
                body.insert(clash.field.clone(), value.clone());
            }
            if answer == ClashAnswer::Both && clash.keeps() == Keeps::InNote {
                let other = if value == clash.ours { &clash.theirs } else { &clash.ours };
                let told = Telling::new(tx.conn(), now)?.field(&clash.field, other)?;
                let note = said(tx.conn(), &clash, "note")?.and_then(|note| note.as_str().map(str::to_owned));
                let note = note.into_iter().chain([say::other_phone_said(told)]).collect::<Vec<_>>().join(" ");
                body.insert("note".to_owned(), note.into());
            }
            if !body.is_empty() {
                tx.append(kind, clash.entity, body)?;
            }
            remember(tx, MEANWHILE, &kept)?;
            Ok(())
        })?;
        Ok(CommandResult::new(String::new(), say::settled(), stored.undo))
    }
}

impl Studio {
    /// Looks through what came in a sync for what is to be said. `before` is how far each phone's entries were here when it began.
    pub(super) fn notice_meanwhile(&self, now: Now, before: &VersionVector) -> Result<()> {
        self.command(now, |tx| {
            let kept = noticed(tx.conn(), now, before)?;
            remember(tx, MEANWHILE, &kept)
        })?;
        Ok(())
    }
}

/// In a line, how much there is to read and to answer; empty where there is nothing.
pub(super) fn in_a_line(conn: &Connection) -> Result<String> {
    let kept = kept(conn)?;
    Ok(match (kept.news.len(), kept.clashes.len()) {
        (0, 0) => String::new(),
        (news, 0) => say::news(news),
        (_, clashes) => say::disagreements(clashes),
    })
}

fn kept(conn: &Connection) -> Result<Meanwhile> {
    Ok(remembered(conn, MEANWHILE)?.unwrap_or_default())
}

fn noticed(conn: &Connection, now: Now, before: &VersionVector) -> Result<Meanwhile> {
    let mut kept = kept(conn)?;
    let own = this_device(conn)?;
    let reached = version_vector(conn)?;
    let known = Known { own, before, looked_through: std::mem::take(&mut kept.looked_through) };
    for (device, last) in reached.iter().filter(|(device, _)| **device != own) {
        let from = known.until(*device).max(last - LOOKED_THROUGH);
        for event in events_after(conn, *device, from)? {
            let heard = kept.sent.iter().filter(|(at, _)| *at <= event.clock.millis()).map(|(_, own)| *own).max();
            let clashes = clashes(conn, &event, own, heard.unwrap_or_default())?;
            // What is asked about is not said besides.
            if clashes.is_empty() && kept.news.len() < MOST {
                kept.news.extend(news(conn, &event, &known)?);
            }
            kept.clashes.extend(clashes);
            kept.clashes.truncate(MOST);
        }
    }
    kept.looked_through = reached.into_iter().map(|(device, last)| (device.0, last)).collect();
    kept.sent.push((now.unix_ms, before.get(&own).copied().unwrap_or_default()));
    let old = kept.sent.len().saturating_sub(SYNCS);
    kept.sent.drain(..old);
    Ok(kept)
}

/// What was known here before.
struct Known<'a> {
    own: DeviceId,
    before: &'a VersionVector,
    /// Further back than `before` where a sync broke off in between.
    looked_through: BTreeMap<Uuid, i64>,
}

impl Known<'_> {
    /// Up to which of its entries.
    fn until(&self, device: DeviceId) -> i64 {
        let looked_through = self.looked_through.get(&device.0);
        looked_through.or_else(|| self.before.get(&device)).copied().unwrap_or_default()
    }

    fn is(&self, event: &Event) -> bool {
        event.device == self.own || event.seq <= self.until(event.device)
    }
}

/// What one entry of another phone did that is to be said.
fn news(conn: &Connection, event: &Event, known: &Known<'_>) -> Result<Option<News>> {
    let events = events_of(conn, event.entity)?;
    if !events.iter().any(|event| known.is(event)) {
        // It came and went elsewhere: nobody here misses it.
        return Ok(None);
    }
    let Some(kind) = events.iter().map(|event| &event.kind).find(|kind| **kind != Kind::RETRACT).cloned() else {
        return Ok(None);
    };
    let is_named = NAMED.contains(&kind.name());
    let said = history(&events);
    let stands = event.kind == Kind::RETRACT || said.effective().contains(&event.id());
    if !is_named || !stands {
        return Ok(None);
    }
    let did = if event.kind == Kind::RETRACT {
        (is_shown(conn, &kind, event.entity)? == Some(false)).then_some(Did::Removed)
    } else if event.body.get("gone").is_some_and(|gone| gone.as_bool() == Some(true)) {
        Some(Did::Archived)
    } else {
        renamed(&events, event, known)
    };
    let (device, entity) = (event.device.0, event.entity);
    Ok(did.map(|did| News { kind: kind.name().to_owned(), entity, device, did }))
}

/// What a thing was called here, if this entry gave it the name that it has now; nothing of what is archived by now.
fn renamed(events: &[Event], event: &Event, known: &Known<'_>) -> Option<Did> {
    let name = |event: &Event| event.body.get("name").and_then(Value::as_str).map(str::to_owned);
    let new = name(event)?;
    let effective = history(events).effective();
    let mut later = events.iter().filter(|later| later.order() > event.order() && effective.contains(&later.id()));
    if later.any(|later| later.body.contains_key("name") || later.body.contains_key("gone")) {
        return None;
    }
    let here = events.iter().filter(|event| known.is(event)).filter_map(|event| Some((event.order(), name(event)?)));
    let before = here.max_by(|one, other| one.0.cmp(&other.0)).map(|(_, name)| name)?;
    (before != new).then_some(Did::Renamed { before })
}

/// The kinds that have a name, or are spoken of as one thing.
const NAMED: [&str; 11] =
    ["glaze", "bucket", "vessel", "form", "body", "bisque_lot", "scale", "kiln", "tile", "firing", "piece"];

/// Where an entry of another phone says otherwise than one of this phone that the other had not heard of: it had heard of this
/// phone's entries up to `heard`.
fn clashes(conn: &Connection, theirs: &Event, own: DeviceId, heard: i64) -> Result<Vec<Clash>> {
    let mut found = Vec::new();
    let events = events_of(conn, theirs.entity)?;
    let is_ours = |event: &&Event| event.device == own && event.seq > heard && event.kind == theirs.kind;
    let ours: Vec<&Event> = events.iter().filter(is_ours).collect();
    if ours.is_empty() || theirs.kind == Kind::RETRACT {
        return Ok(found);
    }
    let effective = history(&events).effective();
    if !effective.contains(&theirs.id()) {
        return Ok(found);
    }
    // What the same phone said later counts in its place.
    let said_later = |field: &String| {
        events.iter().any(|later| {
            later.device == theirs.device
                && later.seq > theirs.seq
                && effective.contains(&later.id())
                && later.body.contains_key(field)
        })
    };
    for (field, value) in theirs.body.iter().filter(|(field, _)| !said_later(field)) {
        // How sure a weight is goes with the weight.
        let is_weight = field.ends_with("_mg") && !field.contains("uncertainty");
        let is_asked = field == "name" || is_weight || ANSWERS.contains(&field.as_str());
        let last = ours
            .iter()
            .filter(|ours| effective.contains(&ours.id()) && ours.body.contains_key(field))
            .max_by_key(|ours| ours.seq);
        let Some(mine) = last.and_then(|ours| ours.body.get(field)).filter(|mine| is_asked && *mine != value) else {
            continue;
        };
        found.push(Clash {
            kind: theirs.kind.name().to_owned(),
            entity: theirs.entity,
            field: field.clone(),
            ours: mine.clone(),
            theirs: value.clone(),
            device: theirs.device.0,
        });
    }
    Ok(found)
}

/// How both values of a field can be kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Keeps {
    InName,
    InNote,
    One,
}

impl Clash {
    fn keeps(&self) -> Keeps {
        let has_note = self.kind == Coat::KIND.name() || self.kind == Finding::KIND.name();
        match self.field.as_str() {
            "name" => Keeps::InName,
            _ if has_note => Keeps::InNote,
            _ => Keeps::One,
        }
    }
}

fn joined(ours: &Value, theirs: &Value) -> String {
    [ours, theirs].map(|value| value.as_str().unwrap_or_default()).join(" / ")
}

/// The value that counts now.
fn counts(conn: &Connection, clash: &Clash) -> Result<Option<Value>> {
    said(conn, clash, &clash.field)
}

fn said(conn: &Connection, clash: &Clash, field: &str) -> Result<Option<Value>> {
    Ok(laydown_store::state_of(conn, &Kind::named(clash.kind.clone()), clash.entity)?
        .and_then(|state| state.fields.get(field).cloned()))
}
