//! The envelope of everything that is ever written down.

use std::borrow::Cow;
use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};
use uuid::{Builder, NoContext, Timestamp, Uuid};

use super::clock::Clock;

/// The fields an event sets, by name. A field that is `null` is taken away. Numbers are scaled integers.
pub type Body = Map<String, Value>;

/// Under this name an event says what it has seen: the last event about the same entity of each other device, `{"DEVICE": SEQ}`.
/// Retractions always say it; other events where the order of the clocks would put what they have seen after them.
pub const SEEN: &str = "seen";

/// Names one event, everywhere and for ever: by who made it, and as which of all that phone made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub struct EventId {
    /// The phone that made it.
    pub device: DeviceId,
    /// Its number among that phone's events.
    pub seq: i64,
}

/// Names the phone (strictly: the installation) that made an event.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct DeviceId(pub Uuid);

/// What sort of thing an event is about: `glaze`, `coat` and so on, or `retract`.
///
/// A plain name, not an enum, because a newer laydown may know more kinds; their events are kept and passed on.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Kind(Cow<'static, str>);

impl Kind {
    /// Undoes the event that its body names as an [`EventId`]. Its entity is that event's entity.
    pub const RETRACT: Kind = Kind::of("retract");

    /// A kind known when the program was built.
    pub const fn of(name: &'static str) -> Kind {
        Kind(Cow::Borrowed(name))
    }

    /// A kind read from a file.
    pub fn named(name: String) -> Kind {
        Kind(Cow::Owned(name))
    }

    /// The name as written in the journal.
    pub fn name(&self) -> &str {
        &self.0
    }
}

/// One thing done, on one phone, to one entity.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Event {
    /// The phone that made it.
    pub device: DeviceId,
    /// Counts that phone's events, from 1, without gaps where it made them.
    pub seq: i64,
    /// When, in the order that all phones agree on.
    pub clock: Clock,
    /// The thing it is about.
    pub entity: Uuid,
    /// What sort of thing that is.
    pub kind: Kind,
    /// The fields it sets.
    pub body: Body,
}

impl Event {
    /// Names this event.
    pub fn id(&self) -> EventId {
        EventId { device: self.device, seq: self.seq }
    }

    /// The place of this event in the order that every phone agrees on: clock, then device, then sequence.
    pub fn order(&self) -> (Clock, EventId) {
        (self.clock, self.id())
    }

    /// The event this one undoes, if it is a retraction that names one.
    pub fn retracted(&self) -> Option<EventId> {
        if self.kind != Kind::RETRACT {
            return None;
        }
        let device = self.body.get("device")?.as_str()?.parse().ok()?;
        Some(EventId { device: DeviceId(device), seq: self.body.get("seq")?.as_i64()? })
    }

    /// The last event of each other device that this one says it has seen; `None` where it does not say.
    pub fn seen(&self) -> Option<Vec<EventId>> {
        let last = |(device, seq): (&String, &Value)| {
            Some(EventId { device: DeviceId(device.parse().ok()?), seq: seq.as_i64()? })
        };
        self.body.get(SEEN)?.as_object()?.iter().map(last).collect()
    }

    /// What an event says under [`SEEN`]: the last of each device of the events that were seen.
    pub fn as_seen(seen: impl IntoIterator<Item = EventId>) -> Value {
        let mut last: BTreeMap<DeviceId, i64> = BTreeMap::new();
        for event in seen {
            let last = last.entry(event.device).or_default();
            *last = event.seq.max(*last);
        }
        last.into_iter().map(|(device, seq)| (device.0.to_string(), Value::from(seq))).collect::<Body>().into()
    }

    /// The body of a retraction of `event`.
    pub fn retraction(event: EventId) -> Body {
        Body::from_iter([
            ("device".to_owned(), Value::from(event.device.0.to_string())),
            ("seq".to_owned(), Value::from(event.seq)),
        ])
    }
}

/// Where new names come from. Passed in, so that a test or the sample studio gets the same ones each time.
pub trait Ids: Send {
    /// A new version 7 uuid for something made at `now_ms` (unix ms).
    fn next(&mut self, now_ms: i64) -> Uuid;
}

/// Names from the system's random source, for real studios.
#[derive(Debug, Clone, Copy, Default)]
pub struct RandomIds;

impl Ids for RandomIds {
    fn next(&mut self, now_ms: i64) -> Uuid {
        let now_ms = now_ms.max(0).unsigned_abs();
        let nanos = u32::try_from(now_ms % 1000).unwrap_or(0) * 1_000_000;
        Uuid::new_v7(Timestamp::from_unix(NoContext, now_ms / 1000, nanos))
    }
}

/// The same names every time for the same seed, for tests and for the sample studio.
#[derive(Debug, Clone)]
pub struct SeededIds(u64);

impl SeededIds {
    /// Names that follow from `seed` alone (and the times asked for).
    pub fn new(seed: u64) -> SeededIds {
        SeededIds(seed)
    }

    /// Steps SplitMix64, whose one word of state is enough for names that need not be secret.
    fn word(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }
}

impl Ids for SeededIds {
    fn next(&mut self, now_ms: i64) -> Uuid {
        let mut random = [0; 10];
        random[..8].copy_from_slice(&self.word().to_be_bytes());
        random[8..].copy_from_slice(&self.word().to_be_bytes()[..2]);
        Builder::from_unix_timestamp_millis(now_ms.max(0).unsigned_abs(), &random).into_uuid()
    }
}

/// Bytes that the events in a text of JSON may need: those of the text, and room for as many values as can begin in it, since
/// two bytes of text can be a value of thirty. Asked before any is made of a file that somebody else wrote.
pub(crate) fn estimated_bytes(text: &[u8]) -> usize {
    text.len() + 32 * text.iter().filter(|byte| matches!(byte, b',' | b'[' | b'{')).count()
}

#[cfg(test)]
mod tests {
    use std::collections::HashSet;

    use serde_json::json;

    use super::*;

    const NOW: i64 = 1_790_000_000_000;

    fn millis(id: Uuid) -> u64 {
        let (seconds, nanos) = id.get_timestamp().unwrap().to_unix();
        seconds * 1000 + u64::from(nanos / 1_000_000)
    }

    #[test]
    fn ids_are_version_7_carry_their_time_and_differ() {
        for mut ids in [Box::new(RandomIds) as Box<dyn Ids>, Box::new(SeededIds::new(7))] {
            let made: HashSet<Uuid> = (0..1000).map(|_| ids.next(NOW + 123)).collect();
            assert_eq!(made.len(), 1000);
            assert!(made.iter().all(|id| id.get_version_num() == 7 && millis(*id) == 1_790_000_000_123));
        }
    }

    #[test]
    fn seeded_ids_repeat() {
        let run = |seed| {
            let mut ids = SeededIds::new(seed);
            [ids.next(NOW), ids.next(NOW + 1)]
        };
        assert_eq!(run(1), run(1));
        assert_ne!(run(1), run(2));
    }

    #[test]
    fn a_phone_set_before_1970_still_gets_ids() {
        assert_eq!(millis(RandomIds.next(-5)), 0);
        assert_eq!(millis(SeededIds::new(1).next(i64::MIN)), 0);
    }

    #[test]
    fn the_written_form_stays() {
        let mut ids = SeededIds::new(3);
        let event = Event {
            device: DeviceId(ids.next(NOW)),
            seq: 4,
            clock: Clock::ZERO.tick(NOW),
            entity: ids.next(NOW),
            kind: Kind::of("glaze"),
            body: json!({"name": "Rain", "starting_laydown_mg_dm2": 5500}).as_object().unwrap().clone(),
        };
        let written = serde_json::to_value(&event).unwrap();
        assert_eq!(
            written,
            json!({
                "device": event.device.0.to_string(), "seq": 4,
                "clock": NOW << 16, "entity": event.entity.to_string(), "kind": "glaze",
                "body": {"name": "Rain", "starting_laydown_mg_dm2": 5500},
            })
        );
        assert_eq!(serde_json::from_value::<Event>(written).unwrap(), event);
    }

    #[test]
    fn only_a_retraction_retracts() {
        let target = EventId { device: DeviceId(SeededIds::new(9).next(NOW)), seq: 3 };
        let mut event = Event {
            device: DeviceId(Uuid::nil()),
            seq: 1,
            clock: Clock::ZERO,
            entity: Uuid::nil(),
            kind: Kind::RETRACT,
            body: Event::retraction(target),
        };
        assert_eq!(event.retracted(), Some(target));
        event.kind = Kind::of("glaze");
        assert_eq!(event.retracted(), None);
        event.kind = Kind::RETRACT;
        event.body = json!({"event": "no id"}).as_object().unwrap().clone();
        assert_eq!(event.retracted(), None);
    }
}
