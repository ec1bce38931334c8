//! Events of another device that are sound in form and mad in content: taken in, and every screen looked at afterwards.

use std::fs;
use std::sync::OnceLock;

use arbitrary::Arbitrary;
use laydown_app::sample;
use laydown_app::{EditorEntry, EditorKind, Studio, StudioError, WeighEntry};
use laydown_store::journal::{Clock, DeviceId, Event, Kind};
use laydown_tests::work::all_events;
use serde_json::{Value, json};
use uuid::Uuid;

use crate::script::{self, Number};
use crate::{NOW, folder, is_sentence};

const DEVICE: DeviceId = DeviceId(Uuid::from_u128(0x0198_2f6e_0000_7000_8000_0000_0000_0002));
const KINDS: [EditorKind; 21] = [
    EditorKind::Form,
    EditorKind::Body,
    EditorKind::BisqueLot,
    EditorKind::Kiln,
    EditorKind::Firing,
    EditorKind::WitnessCones,
    EditorKind::Piece,
    EditorKind::Glaze,
    EditorKind::Bucket,
    EditorKind::Check,
    EditorKind::BucketEntry,
    EditorKind::Mix,
    EditorKind::Thin,
    EditorKind::Vessel,
    EditorKind::Scale,
    EditorKind::ScaleTest,
    EditorKind::Tile,
    EditorKind::TileLadder,
    EditorKind::Control,
    EditorKind::DryWeight,
    EditorKind::Preference,
];

#[derive(Debug, Arbitrary)]
struct Change {
    /// Which event it is made after.
    after: u16,
    /// Which of its fields is another.
    field: u8,
    value: Content,
    /// Whether it says that field alone.
    alone: bool,
    /// Whether it is of another kind than its entity.
    kind: Option<u8>,
    /// How much later, ms.
    later: Number,
}

#[derive(Debug, Arbitrary)]
enum Content {
    Number(Number),
    Share(f64),
    Text(Text),
    Nothing,
    Yes(bool),
    Points(Vec<(i32, i32)>),
    List,
    Object,
    /// The id of another thing.
    Thing(u16),
}

#[derive(Debug, Arbitrary)]
enum Text {
    Empty,
    Letters(String),
    Long,
    Formula,
    Lines,
    Id,
}

impl Content {
    fn json(&self, events: &[Event]) -> Value {
        match self {
            Content::Number(number) => json!(number.value()),
            Content::Share(number) => json!(number),
            Content::Text(Text::Empty) => json!(""),
            Content::Text(Text::Letters(letters)) => json!(letters),
            Content::Text(Text::Long) => json!("Mug ".repeat(2_000)),
            Content::Text(Text::Formula) => json!("=HYPERLINK(\"x\")"),
            Content::Text(Text::Lines) => json!("a\r\nb\0\u{202e}c"),
            Content::Text(Text::Id) => json!(Uuid::nil()),
            Content::Nothing => Value::Null,
            Content::Yes(yes) => json!(yes),
            Content::Points(points) => json!(points),
            Content::List => json!([[], [1], [1, 2, 3, 4]]),
            Content::Object => json!({"a": {"b": []}}),
            Content::Thing(number) => json!(events[usize::from(*number) % events.len()].entity),
        }
    }
}

/// The file of the sample studio, and its events.
fn good() -> &'static (Vec<u8>, Vec<Event>) {
    static GOOD: OnceLock<(Vec<u8>, Vec<Event>)> = OnceLock::new();
    GOOD.get_or_init(|| {
        let folder = folder();
        let path = folder.path().join("studio.laydown");
        let studio = Studio::open(&path, NOW).unwrap();
        sample::fill(&studio, NOW).unwrap();
        let events = all_events(studio.store());
        drop(studio);
        (fs::read(path).unwrap(), events)
    })
}

/// What another device said of the sample's things, as a script says.
pub fn changed(input: &[u8]) -> Vec<u8> {
    let (_, events) = good();
    let changes: Vec<Change> = script::of(input);
    let made = changes.iter().zip(1..).map(|(change, seq)| {
        let before = &events[usize::from(change.after) % events.len()];
        let mut body = before.body.clone();
        let field = body.keys().nth(usize::from(change.field) % body.len().max(1)).cloned().unwrap_or_default();
        if change.alone {
            body.clear();
        }
        body.insert(field, change.value.json(events));
        let later = before.clock.packed().saturating_add(change.later.value().saturating_mul(1 << 16));
        let clock = Clock::from_packed(later).unwrap_or(Clock::from_packed(before.clock.packed() + (1 << 30)).unwrap());
        let other = |kind: u8| events[usize::from(kind) % events.len()].kind.clone();
        let kind: Kind = change.kind.map_or(before.kind.clone(), other);
        Event { device: DEVICE, seq, clock, entity: before.entity, kind, body }
    });
    let lines: Vec<String> = made.map(|event| serde_json::to_string(&event).unwrap()).collect();
    lines.join("\n").into_bytes()
}

pub fn read(lines: &[u8]) {
    let lines = lines.split(|byte| *byte == b'\n').filter(|line| !line.is_empty());
    let events: Vec<Event> = lines.map(|line| serde_json::from_slice(line).unwrap()).collect();
    let folder = folder();
    let path = folder.path().join("studio.laydown");
    fs::write(&path, &good().0).unwrap();
    let studio = Studio::open(&path, NOW).unwrap();
    if let Err(error) = studio.store().merge(NOW.unix_ms, &events) {
        is_sentence(error);
    }
    let dump = studio.store().dump().unwrap();
    studio.store().rebuild().unwrap();
    assert!(studio.store().dump().unwrap() == dump, "tables are folds");

    shown(studio.setup(NOW));
    shown(studio.kiln(NOW));
    shown(studio.buckets(NOW));
    shown(studio.devices(NOW));
    shown(studio.recent_changes(NOW));
    shown(studio.backup(NOW));
    shown(studio.find_pieces(NOW, &[], 0));
    shown(studio.archived(NOW));
    shown(studio.meanwhile(NOW));
    weigh(&studio, WeighEntry::default());
    for event in &events {
        let id = event.entity.to_string();
        shown(studio.history(NOW, &id));
        shown(studio.coat(NOW, &id));
        shown(studio.bucket(NOW, &id));
        shown(studio.firing(NOW, &id));
        shown(studio.contact_sheet(NOW, &id));
        let piece = event.body.get("piece").and_then(Value::as_str).unwrap_or(&id);
        shown(studio.piece(NOW, piece));
        shown(studio.compare(NOW, &id, piece));
        shown(studio.assessment(NOW, event.body.get("firing").and_then(Value::as_str).unwrap_or(&id), piece));
        weigh(&studio, WeighEntry { form: id.clone(), ..WeighEntry::default() });
        weigh(&studio, WeighEntry { bucket: id.clone(), scale: id.clone(), ..WeighEntry::default() });
        for kind in KINDS {
            let entry =
                EditorEntry { kind, id: id.clone(), subject: id.clone(), values: Vec::new(), draft: String::new() };
            shown(studio.editor(NOW, &entry));
        }
    }
    // Last, since it adds to the journal.
    if let Err(error) = studio.back_up(&folder.path().join("backup.zip")) {
        is_sentence(error);
    }
}

fn weigh(studio: &Studio, entry: WeighEntry) {
    match studio.weigh(NOW, Some(entry)) {
        Ok(view) => {
            let entry = WeighEntry { net: "22.0".to_owned(), ..view.entry };
            shown(studio.weigh(NOW, Some(entry.clone())));
            shown(studio.save(NOW, entry));
        }
        Err(error) => is_sentence(error),
    }
}

fn shown<T>(view: Result<T, StudioError>) {
    if let Err(error) = view {
        is_sentence(error);
    }
}
