//! A segment: some of the events of one device, in one file that is never changed once it is written.
//!
//! It is called `DEVICE/000000000001-000000000500.jsonl.zst` after its device and the sequence numbers of its first and
//! last event. Outside it is zstd, which every system can undo; inside it is UTF-8 text, a JSON value a line:
//!
//! ```text
//! {"file":"laydown segment","layout":1,"device":"…","first":1,"events":2,"reading":"…how to read it…"}
//! {"row":0,"kind":"coat","fields":["form","net_mg"],"moments":["at"],"ids":["piece"],"as_before":[]}
//! [0,1790000000000,"aad5bd1ea3bc9d8fd10","0198…",22300,0,"1db8f2c7c0a9b3d4e5f"]
//! {"row":1,"kind":"coat","fields":["net_mg"],"moments":["at"],"ids":["piece"],"as_before":["form"]}
//! [1,60213,"bc2b1d0a7f3e8b8a1c0",22900,0,"0c8a4f6b2d1e9f7a3b5"]
//! {"sha256":"…of all lines above, with their line ends…"}
//! ```
//!
//! An object with `row` says what the rows of that number hold, and an array is an event: the number of its row, the
//! milliseconds since the event before (the first counts from 1970 UTC), its entity, then its values in the order of
//! `fields`, `moments` and `ids`. Fields `as_before` have the value that the event of that kind before set last. A moment
//! counts milliseconds from the event's own time. An id is the last 19 hexadecimal digits of a version 7 UUID that was
//! made at the event's own millisecond, as an entity of 19 digits is; its first 12 digits are that millisecond, then
//! comes a 7. The counter of the clock starts at 0 in each millisecond and counts up by one; where it does not, the second
//! value is an array of milliseconds and counter. Sequence numbers count up from `first`.
//!
//! Why zstd and not a pure Rust packer: those that exist pack half as well, and SQLite is built from C here already.
//! What each step brought for one 100,000 coats, in bytes an event, in segments of 5,000: the events as JSON lines 54, field
//! names once 51, the time as a difference 48, moments from it 44, new ids as digits 39, `as_before` 33. Numbers for
//! names that come again brought nothing beyond that (34).

use std::collections::HashMap;
use std::fmt;
use std::io::{BufRead, BufReader, Read};
use std::str::FromStr;

use serde::{Deserialize, Serialize};
use serde_json::Value;
use sha2::{Digest, Sha256};
use uuid::Uuid;

use super::clock::Clock;
use super::event::{Body, DeviceId, Event, Kind, estimated_bytes};

/// The most events in one segment. More would make it little smaller (10,000: 2%), and it is read and taken in whole.
pub const MOST_EVENTS: usize = 5_000;
/// The most bytes of text in one segment, and the most that its values amount to when all are written out.
pub const MOST_TEXT: usize = 32 << 20;
/// What ends the name of a segment.
pub const ENDING: &str = ".jsonl.zst";

/// The version of this layout.
const LAYOUT: u32 = 1;
const WHAT: &str = "laydown segment";
/// Packs best of those that need no more than [`WINDOW_LOG`] to unpack.
const LEVEL: i32 = 19;
/// The binary logarithm of the most bytes that zstd may look back on, and so must hold.
const WINDOW_LOG: u32 = 23;
const TAIL: usize = 19;

const READING: &str = "Each array is an event: row, milliseconds since the event before (first: since 1970 UTC; with the \
    clock's counter in an array where that is not one more than before or 0 in a new millisecond), entity, then the values \
    of that row's fields, moments and ids; moments count ms from the event's time; 19 digits end a UUID made in the \
    event's millisecond: 12 hexadecimal digits of it, 7, the 19; as_before: as the event of this kind before had it; seq \
    counts up from first; sha256 is of all lines above it with their line ends.";

/// Which events a segment holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Name {
    /// The device that made them.
    pub device: DeviceId,
    /// The sequence number of the first, from 1.
    pub first: i64,
    /// The sequence number of the last.
    pub last: i64,
}

impl fmt::Display for Name {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{:012}-{:012}{ENDING}", self.device.0, self.first, self.last)
    }
}

impl FromStr for Name {
    type Err = SegmentError;

    /// Reads only what [`Name`] writes: one name, one spelling.
    fn from_str(text: &str) -> Result<Name, SegmentError> {
        let parsed = || {
            let (device, rest) = text.split_once('/')?;
            let (first, last) = rest.strip_suffix(ENDING)?.split_once('-')?;
            let name =
                Name { device: DeviceId(device.parse().ok()?), first: first.parse().ok()?, last: last.parse().ok()? };
            let sound = name.first >= 1 && name.last >= name.first && name.to_string() == text;
            sound.then_some(name)
        };
        parsed().ok_or_else(|| SegmentError { name: text.to_owned(), wrong: Wrong::Name })
    }
}

/// A segment ready to be put somewhere.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Segment {
    /// What it is to be called.
    pub name: Name,
    /// The file.
    pub bytes: Vec<u8>,
}

/// Why a segment cannot be used. Names the segment and says what is wrong with it.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{name}: {wrong:?}")]
pub struct SegmentError {
    /// The name of the file.
    pub name: String,
    /// What is wrong with it.
    pub wrong: Wrong,
}

/// What is wrong with a segment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Wrong {
    /// No segment is called that.
    Name,
    /// It ends before its last line.
    Cut,
    /// It is not zstd, or zstd's own sum of it differs.
    Packing,
    /// The sum in its last line is not that of the lines above it.
    Sum,
    /// Its first line says that it is something else.
    Foreign,
    /// A newer laydown wrote it.
    Newer,
    /// It holds another device's events than its name says.
    Device,
    /// Its events are not those from first to last, each once.
    Gap,
    /// A line that means nothing.
    Line(usize),
    /// More events or more text than a segment may have.
    TooLarge,
}

#[derive(Serialize, Deserialize)]
struct Head {
    file: String,
    layout: u32,
    device: DeviceId,
    first: i64,
    events: usize,
    reading: String,
}

#[derive(Deserialize)]
struct Known {
    file: String,
    layout: u32,
}

/// What the rows of one number hold.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Serialize, Deserialize)]
struct Shape {
    kind: Kind,
    fields: Vec<String>,
    moments: Vec<String>,
    ids: Vec<String>,
    as_before: Vec<String>,
}

#[derive(Serialize, Deserialize)]
struct Define {
    row: usize,
    #[serde(flatten)]
    shape: Shape,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Foot {
    sha256: String,
}

/// The time of a row: how long after the event before, and the counter where it is not the one to be expected.
#[derive(Serialize, Deserialize)]
#[serde(untagged)]
enum Step {
    Millis(i64),
    Counted(i64, u16),
}

/// What the writer and the reader both know of the lines above.
struct Above {
    clock: Clock,
    values: HashMap<(Kind, String), Value>,
}

impl Above {
    fn new() -> Above {
        Above { clock: Clock::ZERO, values: HashMap::new() }
    }

    fn expected_counter(&self, step: i64) -> Option<u16> {
        if step == 0 { self.clock.counter().checked_add(1) } else { Some(0) }
    }

    fn step_to(&self, clock: Clock) -> Step {
        let millis = clock.millis() - self.clock.millis();
        if self.expected_counter(millis) == Some(clock.counter()) {
            Step::Millis(millis)
        } else {
            Step::Counted(millis, clock.counter())
        }
    }

    fn clock_after(&self, step: &Step) -> Option<Clock> {
        let (millis, counter) = match *step {
            Step::Millis(millis) => (millis, self.expected_counter(millis)?),
            Step::Counted(millis, counter) => (millis, counter),
        };
        let millis = self.clock.millis().checked_add(millis)?;
        Clock::from_packed(millis.checked_mul(1 << u16::BITS)?.checked_add(i64::from(counter))?)
    }

    fn value(&self, kind: &Kind, field: &str) -> Option<&Value> {
        self.values.get(&(kind.clone(), field.to_owned()))
    }

    fn remember(&mut self, event: &Event, as_before: &[String]) {
        for (field, value) in event.body.iter().filter(|(field, _)| !as_before.contains(field)) {
            self.values.insert((event.kind.clone(), field.clone()), value.clone());
        }
        self.clock = event.clock;
    }
}

/// Packs events of one device, in order and without gaps, into a segment: as many from the first on as one may hold.
///
/// # Errors
/// When there are none, one is missing, they are of several devices, or a single one is too large.
pub fn pack(events: &[Event]) -> Result<Segment, SegmentError> {
    let refused = |wrong| SegmentError { name: "new".to_owned(), wrong };
    let first = events.first().ok_or_else(|| refused(Wrong::Gap))?;
    let mut size = 0;
    let fit = events
        .iter()
        .take(MOST_EVENTS)
        .take_while(|event| {
            size += weight_of(&event.body) + WEIGHT_OF_EVENT;
            size <= MOST_TEXT / 2
        })
        .count();
    let events = &events[..fit];
    let last = events.last().ok_or_else(|| refused(Wrong::TooLarge))?;
    let name = Name { device: first.device, first: first.seq, last: last.seq };
    let refused = |wrong| SegmentError { name: name.to_string(), wrong };
    if events.iter().any(|event| event.device != first.device) {
        return Err(refused(Wrong::Device));
    }
    if first.seq < 1 || events.iter().zip(first.seq..).any(|(event, seq)| event.seq != seq) {
        return Err(refused(Wrong::Gap));
    }

    let head = Head {
        file: WHAT.to_owned(),
        layout: LAYOUT,
        device: first.device,
        first: first.seq,
        events: events.len(),
        reading: READING.to_owned(),
    };
    let mut text = String::new();
    let mut line = |value: Value| {
        text.push_str(&value.to_string());
        text.push('\n');
    };
    let json = |value: Result<Value, serde_json::Error>| value.map_err(|_| refused(Wrong::Foreign));
    line(json(serde_json::to_value(head))?);
    let mut rows: HashMap<Shape, usize> = HashMap::new();
    let mut above = Above::new();
    for event in events {
        let shape = shape_of(event, &above);
        let next = rows.len();
        let row = *rows.entry(shape.clone()).or_insert(next);
        if row == next {
            line(json(serde_json::to_value(Define { row, shape: shape.clone() }))?);
        }
        let mut cells = vec![Value::from(row), json(serde_json::to_value(above.step_to(event.clock)))?];
        let entity = event.entity.to_string();
        cells.push(Value::from(tail(&entity, event.clock).unwrap_or(entity)));
        cells.extend(shape.fields.iter().map(|field| event.body[field].clone()));
        let moment = |field: &String| moment(field, &event.body[field], event.clock).map(Value::from);
        cells.extend(shape.moments.iter().filter_map(moment));
        let id = |field: &String| tail(event.body[field].as_str()?, event.clock).map(Value::from);
        cells.extend(shape.ids.iter().filter_map(id));
        line(Value::Array(cells));
        above.remember(event, &shape.as_before);
    }
    let sha256 = sum(Sha256::new_with_prefix(&text));
    text.push_str(&format!("{}\n", json(serde_json::to_value(Foot { sha256 }))?));
    if text.len() > MOST_TEXT {
        return Err(refused(Wrong::TooLarge));
    }
    let bytes = compress(text.as_bytes()).map_err(|_| refused(Wrong::Packing))?;
    Ok(Segment { name, bytes })
}

fn compress(text: &[u8]) -> std::io::Result<Vec<u8>> {
    let mut packer = zstd::bulk::Compressor::new(LEVEL)?;
    packer.include_checksum(true)?;
    packer.window_log(WINDOW_LOG)?;
    packer.compress(text)
}

/// The events of the segment called `name`, from its bytes. Nothing is believed before its sum was checked, and no more is
/// unpacked than a segment may hold.
///
/// # Errors
/// When anything about it is not as it was written, or a newer laydown wrote it.
pub fn unpack(name: &Name, bytes: &[u8]) -> Result<Vec<Event>, SegmentError> {
    let refused = |wrong| SegmentError { name: name.to_string(), wrong };
    let text = lines_of(bytes).map_err(refused)?;
    read(name, &text).map_err(refused)
}

/// The text of a segment, when its last line has the sum of the others; without that line.
fn lines_of(bytes: &[u8]) -> Result<String, Wrong> {
    let mut packed = BufReader::new(bytes);
    let unpacking = zstd::Decoder::with_buffer(&mut packed).and_then(|mut decoder| {
        decoder.window_log_max(WINDOW_LOG)?;
        let mut text = Vec::new();
        decoder.single_frame().take(MOST_TEXT as u64 + 1).read_to_end(&mut text)?;
        Ok(text)
    });
    let text = unpacking.map_err(|error| match error.kind() {
        std::io::ErrorKind::UnexpectedEof => Wrong::Cut,
        _ => Wrong::Packing,
    })?;
    if text.len() > MOST_TEXT {
        return Err(Wrong::TooLarge);
    }
    // What follows the end belongs to no segment.
    if !packed.fill_buf().is_ok_and(<[u8]>::is_empty) {
        return Err(Wrong::Packing);
    }
    let mut text = String::from_utf8(text).map_err(|_| Wrong::Foreign)?;
    let whole = text.strip_suffix('\n').ok_or(Wrong::Cut)?;
    let end = whole.rfind('\n').ok_or(Wrong::Cut)? + 1;
    let known: Known = whole.lines().next().and_then(|line| serde_json::from_str(line).ok()).ok_or(Wrong::Foreign)?;
    if known.file != WHAT {
        return Err(Wrong::Foreign);
    }
    if known.layout > LAYOUT {
        return Err(Wrong::Newer);
    }
    let foot: Foot = serde_json::from_str(&whole[end..]).map_err(|_| Wrong::Cut)?;
    if sum(Sha256::new_with_prefix(&text[..end])) != foot.sha256 {
        return Err(Wrong::Sum);
    }
    text.truncate(end);
    Ok(text)
}

fn read(name: &Name, text: &str) -> Result<Vec<Event>, Wrong> {
    let mut lines = text.lines().zip(1..);
    let (head, _) = lines.next().ok_or(Wrong::Foreign)?;
    let head: Head = serde_json::from_str(head).map_err(|_| Wrong::Foreign)?;
    if head.device != name.device {
        return Err(Wrong::Device);
    }
    if head.events > MOST_EVENTS {
        return Err(Wrong::TooLarge);
    }
    let mut events = Vec::with_capacity(head.events);
    let mut rows: Vec<Shape> = Vec::new();
    let mut above = Above::new();
    let mut size = 0;
    for (line, number) in lines {
        // A definition, too, may need far more than it takes.
        size += estimated_bytes(line.as_bytes());
        if size > MOST_TEXT {
            return Err(Wrong::TooLarge);
        }
        if line.starts_with('{') {
            let define: Define = serde_json::from_str(line).map_err(|_| Wrong::Line(number))?;
            if define.row != rows.len() {
                return Err(Wrong::Line(number));
            }
            rows.push(define.shape);
            continue;
        }
        if events.len() == head.events {
            return Err(Wrong::Gap);
        }
        let seq = i64::try_from(events.len()).ok().and_then(|count| name.first.checked_add(count)).ok_or(Wrong::Gap)?;
        let cells: Vec<Value> = serde_json::from_str(line).map_err(|_| Wrong::Line(number))?;
        let (event, shape) = event_of(cells, &rows, &above, name.device, seq).ok_or(Wrong::Line(number))?;
        // What is as before takes no room here, and would take room there.
        let again = shape.as_before.iter().map(|field| weight(&event.body[field]));
        size += again.sum::<usize>();
        if size > MOST_TEXT {
            return Err(Wrong::TooLarge);
        }
        above.remember(&event, &shape.as_before);
        events.push(event);
    }
    let held = i64::try_from(events.len()).map_err(|_| Wrong::TooLarge)?;
    if head.first != name.first || events.len() != head.events || name.last - name.first + 1 != held {
        return Err(Wrong::Gap);
    }
    Ok(events)
}

fn event_of<'a>(
    cells: Vec<Value>,
    rows: &'a [Shape],
    above: &Above,
    device: DeviceId,
    seq: i64,
) -> Option<(Event, &'a Shape)> {
    let mut cells = cells.into_iter();
    let shape = rows.get(usize::try_from(cells.next()?.as_u64()?).ok()?)?;
    let step: Step = serde_json::from_value(cells.next()?).ok()?;
    let clock = above.clock_after(&step)?;
    let entity = match cells.next()?.as_str()? {
        digits if digits.len() == TAIL => Uuid::parse_str(&whole_id(digits, clock)?).ok()?,
        whole => whole.parse().ok()?,
    };
    let mut body = Body::new();
    for field in &shape.fields {
        body.insert(field.clone(), cells.next()?);
    }
    for field in &shape.moments {
        body.insert(field.clone(), Value::from(clock.millis().checked_add(cells.next()?.as_i64()?)?));
    }
    for field in &shape.ids {
        body.insert(field.clone(), Value::from(whole_id(cells.next()?.as_str()?, clock)?));
    }
    for field in &shape.as_before {
        body.insert(field.clone(), above.value(&shape.kind, field)?.clone());
    }
    let all = cells.next().is_none();
    all.then(|| (Event { device, seq, clock, entity, kind: shape.kind.clone(), body }, shape))
}

fn shape_of(event: &Event, above: &Above) -> Shape {
    let mut shape = Shape {
        kind: event.kind.clone(),
        fields: Vec::new(),
        moments: Vec::new(),
        ids: Vec::new(),
        as_before: Vec::new(),
    };
    for (field, value) in &event.body {
        let group = if above.value(&event.kind, field) == Some(value) {
            &mut shape.as_before
        } else if moment(field, value, event.clock).is_some() {
            &mut shape.moments
        } else if value.as_str().and_then(|text| tail(text, event.clock)).is_some() {
            &mut shape.ids
        } else {
            &mut shape.fields
        };
        group.push(field.clone());
    }
    shape
}

/// How long after the event's own time a field that is a time is, ms.
fn moment(field: &str, value: &Value, clock: Clock) -> Option<i64> {
    let is_time = field == "at" || field.ends_with("_at");
    if is_time { value.as_i64()?.checked_sub(clock.millis()) } else { None }
}

/// The last digits of an id that was made at the event's own millisecond; `None` for any other text.
fn tail(text: &str, clock: Clock) -> Option<String> {
    let id = Uuid::parse_str(text).ok()?.simple().to_string();
    let digits = id[id.len() - TAIL..].to_owned();
    (whole_id(&digits, clock)? == text).then_some(digits)
}

/// The id that these digits end.
fn whole_id(digits: &str, clock: Clock) -> Option<String> {
    if digits.len() != TAIL || !digits.bytes().all(|byte| byte.is_ascii_hexdigit()) {
        return None;
    }
    Some(Uuid::parse_str(&format!("{:012x}7{digits}", clock.millis())).ok()?.to_string())
}

/// What an event takes beside its body, bytes, at most.
const WEIGHT_OF_EVENT: usize = 256;

fn weight_of(body: &Body) -> usize {
    // A field's name stands in a definition of a row, at worst of a row of its own; an escaped character takes six bytes.
    body.iter().map(|(field, value)| 6 * field.len() + weight(value)).sum()
}

/// About the bytes that a value takes, in text and in memory; never far too few.
fn weight(value: &Value) -> usize {
    match value {
        Value::Null | Value::Bool(_) | Value::Number(_) => 32,
        Value::String(text) => 32 + 5 * text.len() + estimated_bytes(text.as_bytes()),
        Value::Array(values) => 32 + values.iter().map(weight).sum::<usize>(),
        Value::Object(fields) => 32 + weight_of(fields),
    }
}

fn sum(sum: Sha256) -> String {
    sum.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use proptest::sample::Index;
    use serde_json::json;

    use super::*;
    use crate::journal::{Ids, SeededIds};

    const NOW: i64 = 1_790_000_000_000;
    const DEVICE: DeviceId = DeviceId(Uuid::from_u128(0x0198_0000_0000_7000_8000_0000_0000_0001));

    /// Coats as a studio weighs them: some forms, runs of the same, a code now and then, weights that scatter.
    fn coats(count: i64) -> Vec<Event> {
        let mut ids = SeededIds::new(7);
        let mut chance = SeededIds::new(8);
        let mut random = move |below: u128| i64::try_from(chance.next(0).as_u128() % below).unwrap();
        let things: Vec<(Uuid, Uuid, i64)> =
            (0..12).map(|thing| (ids.next(NOW), ids.next(NOW), 20_000 + thing * 1_700)).collect();
        let mut clock = Clock::ZERO.tick(NOW);
        let mut events = Vec::new();
        let mut bench = things[0];
        let mut glaze = things[0];
        for seq in 1..=count {
            if random(15) == 0 {
                bench = things[usize::try_from(random(12)).unwrap()];
                glaze = things[usize::try_from(random(12)).unwrap()];
            }
            let at = clock.millis() + 20_000 + random(70_000);
            clock = clock.tick(at);
            let (aim, area) = (bench.2, bench.2 * 10 / 9);
            let net = aim - aim / 8 + random(40) * aim / 160 / 100 * 100;
            let verdict = if net < aim * 93 / 100 { "below" } else { "within" };
            let mut body = json!({
                "piece": ids.next(at).to_string(), "form": bench.0.to_string(), "bucket": glaze.0.to_string(),
                "glaze": glaze.1.to_string(), "zone": "inside", "scale": things[0].0.to_string(), "at": at,
                "net_mg": net, "specific_gravity_e5": 144_000 + glaze.2 / 100, "sg_uncertainty_e5": 250,
                "powder_density_e3": 2_600, "area_mm2": area, "aim_mg": aim, "low_mg": aim * 93 / 100,
                "high_mg": aim * 107 / 100, "source": "starting", "verdict": verdict,
                "laydown_mg_dm2": net * 235 / 1_000, "control": seq % 50 == 0,
            });
            if random(2) == 0 {
                body["code"] = Value::from(format!("{:04}", random(10_000)));
            }
            events.push(Event {
                device: DEVICE,
                seq,
                clock,
                entity: ids.next(at),
                kind: Kind::of("coat"),
                body: body.as_object().unwrap().clone(),
            });
        }
        events
    }

    fn text_of(segment: &Segment) -> String {
        String::from_utf8(zstd::decode_all(segment.bytes.as_slice()).unwrap()).unwrap()
    }

    /// A segment of any text, with the right sum at its end.
    fn forged(text: &str) -> Vec<u8> {
        let foot = json!({"sha256": sum(Sha256::new_with_prefix(text))});
        compress(format!("{text}{foot}\n").as_bytes()).unwrap()
    }

    #[test]
    fn a_coat_takes_at_most_forty_five_bytes() {
        let events = coats(20_000);
        let mut packed = 0;
        let mut rest = &events[..];
        while !rest.is_empty() {
            let segment = pack(rest).unwrap();
            packed += segment.bytes.len();
            let read = unpack(&segment.name, &segment.bytes).unwrap();
            assert_eq!(read, rest[..read.len()]);
            rest = &rest[read.len()..];
        }
        let each = packed as f64 / events.len() as f64;
        assert!(each < 45.0, "{each} bytes an event");
    }

    #[test]
    fn a_stranger_can_read_it() {
        let segment = pack(&coats(3)).unwrap();
        assert_eq!(
            segment.name.to_string(),
            "01980000-0000-7000-8000-000000000001/000000000001-000000000003.jsonl.zst"
        );
        let text = text_of(&segment);
        let lines: Vec<Value> = text.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
        assert_eq!(lines[0]["file"], "laydown segment");
        assert_eq!(lines[0]["events"], 3);
        assert!(lines[0]["reading"].as_str().unwrap().starts_with("Each array is an event"));
        assert_eq!(lines[1]["kind"], "coat");
        let first = coats(1).remove(0);
        let entity = first.entity.simple().to_string();
        assert_eq!(lines[2][1], first.clock.millis());
        assert_eq!(lines[2][2], entity[13..]);
        assert_eq!(format!("{:012x}7{}", first.clock.millis(), lines[2][2].as_str().unwrap()), entity);
        assert!(lines.last().unwrap()["sha256"].is_string());
    }

    #[test]
    fn every_cut_is_found() {
        let segment = pack(&coats(40)).unwrap();
        for length in 0..segment.bytes.len() {
            let error = unpack(&segment.name, &segment.bytes[..length]).unwrap_err();
            assert!(error.to_string().contains(&segment.name.to_string()));
        }
        let mut longer = segment.bytes.clone();
        longer.push(0);
        assert_eq!(unpack(&segment.name, &longer).unwrap_err().wrong, Wrong::Packing);
        let text = text_of(&segment);
        let lines: Vec<&str> = text.split_inclusive('\n').collect();
        let short = compress(lines[..lines.len() - 1].concat().as_bytes()).unwrap();
        assert_eq!(unpack(&segment.name, &short).unwrap_err().wrong, Wrong::Cut);
    }

    #[test]
    fn what_is_wrong_is_said() {
        let segment = pack(&coats(3)).unwrap();
        let (name, text) = (segment.name, text_of(&segment));
        let lines: Vec<&str> = text.split_inclusive('\n').collect();
        let body = lines[..lines.len() - 1].concat();
        let wrong = |name: &Name, bytes: &[u8]| unpack(name, bytes).unwrap_err().wrong;
        let changed = |from: &str, to: &str| forged(&body.replacen(from, to, 1));
        assert_eq!(unpack(&name, &forged(&body)).unwrap(), coats(3));

        assert_eq!(wrong(&name, &compress(text.replacen("starting", "Starting", 1).as_bytes()).unwrap()), Wrong::Sum);
        assert_eq!(wrong(&name, &changed("\"layout\":1", "\"layout\":2")), Wrong::Newer);
        assert_eq!(wrong(&name, &changed("laydown segment", "something")), Wrong::Foreign);
        assert_eq!(wrong(&name, &forged("[]\n")), Wrong::Foreign);
        assert_eq!(wrong(&name, &changed("\"first\":1", "\"first\":2")), Wrong::Gap);
        assert_eq!(wrong(&name, &changed("\"events\":3", "\"events\":2")), Wrong::Gap);
        assert_eq!(wrong(&name, &changed("\"events\":3", "\"events\":9000")), Wrong::TooLarge);
        assert_eq!(wrong(&name, &changed("\"row\":0", "\"row\":7")), Wrong::Line(2));
        assert_eq!(wrong(&name, &changed("\n[0,", "\n[7,")), Wrong::Line(3));
        assert_eq!(wrong(&name, &changed("\n[0,", "\n[0,0,")), Wrong::Line(3));
        assert_eq!(wrong(&Name { device: DeviceId(Uuid::nil()), ..name }, &segment.bytes), Wrong::Device);
        assert_eq!(wrong(&Name { last: 4, ..name }, &segment.bytes), Wrong::Gap);
        assert_eq!(wrong(&Name { first: 2, last: 4, ..name }, &segment.bytes), Wrong::Gap);
        assert_eq!(wrong(&name, b"nothing that was ever packed"), Wrong::Packing);
    }

    #[test]
    fn only_whole_runs_of_one_device_are_packed() {
        let events = coats(5);
        let wrong = |events: &[Event]| pack(events).unwrap_err().wrong;
        assert_eq!(wrong(&[]), Wrong::Gap);
        assert_eq!(wrong(&[events[0].clone(), events[2].clone()]), Wrong::Gap);
        assert_eq!(wrong(&[Event { seq: 0, ..events[0].clone() }]), Wrong::Gap);
        let other = Event { device: DeviceId(Uuid::nil()), ..events[1].clone() };
        assert_eq!(wrong(&[events[0].clone(), other]), Wrong::Device);
    }

    #[test]
    fn bombs_are_refused() {
        let segment = pack(&coats(1)).unwrap();
        let bomb = compress(&vec![b' '; MOST_TEXT + 1]).unwrap();
        assert!(bomb.len() < 10_000);
        assert_eq!(unpack(&segment.name, &bomb).unwrap_err().wrong, Wrong::TooLarge);

        // Many values in little text.
        let head = json!({"file": WHAT, "layout": 1, "device": DEVICE, "first": 1, "events": 1, "reading": ""});
        let define = json!({"row": 0, "kind": "coat", "fields": ["a"], "moments": [], "ids": [], "as_before": []});
        let row = format!("[0,{NOW},\"{}\",[{}0]]", Uuid::nil(), "[],".repeat(1 << 20));
        let name = Name { device: DEVICE, first: 1, last: 1 };
        let unpacked = unpack(&name, &forged(&format!("{head}\n{define}\n{row}\n")));
        assert_eq!(unpacked.unwrap_err().wrong, Wrong::TooLarge);

        // A long text that each of many rows has again.
        let long = "x".repeat(1 << 20);
        let head = json!({"file": WHAT, "layout": 1, "device": DEVICE, "first": 1, "events": 1_001, "reading": ""});
        let define = |row: usize, fields: &[&str], as_before: &[&str]| json!({"row": row, "kind": "coat", "fields": fields, "moments": [], "ids": [], "as_before": as_before});
        let entity = Uuid::nil();
        let again = format!("{}\n", json!([1, 1, entity])).repeat(1_000);
        let text = format!(
            "{head}\n{}\n{}\n{}\n{again}",
            define(0, &["note"], &[]),
            json!([0, NOW, entity, long]),
            define(1, &[], &["note"])
        );
        let name = Name { device: DEVICE, first: 1, last: 1_001 };
        assert_eq!(unpack(&name, &forged(&text)).unwrap_err().wrong, Wrong::TooLarge);
    }

    #[test]
    fn a_segment_takes_what_fits_and_no_more() {
        let events = coats(MOST_EVENTS as i64 + 1);
        assert_eq!(pack(&events).unwrap().name.last, MOST_EVENTS as i64);

        let long = |seq| Event {
            seq,
            body: json!({"note": "é\u{1}".repeat(600_000)}).as_object().unwrap().clone(),
            ..events[0].clone()
        };
        let long = [long(1), long(2), long(3), long(4)];
        let segment = pack(&long).unwrap();
        assert!(segment.name.last < 4);
        assert_eq!(unpack(&segment.name, &segment.bytes).unwrap(), long[..usize::try_from(segment.name.last).unwrap()]);
        let too_long =
            Event { body: json!({"note": "x".repeat(MOST_TEXT)}).as_object().unwrap().clone(), ..events[0].clone() };
        assert_eq!(pack(&[too_long]).unwrap_err().wrong, Wrong::TooLarge);
    }

    #[test]
    fn a_name_has_one_spelling() {
        let name = Name { device: DEVICE, first: 1, last: 500 };
        assert_eq!(name.to_string().parse(), Ok(name));
        for wrong in [
            "",
            "01980000-0000-7000-8000-000000000001/1-500.jsonl.zst",
            "01980000-0000-7000-8000-000000000001/000000000000-000000000500.jsonl.zst",
            "01980000-0000-7000-8000-000000000001/000000000501-000000000500.jsonl.zst",
            "01980000-0000-7000-8000-000000000001/000000000001-000000000500.jsonl",
            "0198000000007000800000000000000A/000000000001-000000000500.jsonl.zst",
            "../000000000001-000000000500.jsonl.zst",
        ] {
            assert_eq!(wrong.parse::<Name>().unwrap_err().wrong, Wrong::Name, "{wrong}");
        }
    }

    fn value() -> impl Strategy<Value = Value> {
        let leaf = prop_oneof![
            Just(Value::Null),
            any::<bool>().prop_map(Value::from),
            any::<i64>().prop_map(Value::from),
            any::<u64>().prop_map(Value::from),
            (-1e9..1e9f64).prop_map(Value::from),
            (NOW - 3..NOW + 3).prop_map(Value::from),
            any::<String>().prop_map(Value::from),
            (0..3i64, 0..4u64).prop_map(|(at, seed)| Value::from(SeededIds::new(seed).next(NOW + at).to_string())),
            (0..3i64).prop_map(|at| Value::from(SeededIds::new(1).next(NOW + at).to_string().to_uppercase())),
        ];
        leaf.prop_recursive(3, 12, 4, |inner| {
            prop_oneof![
                prop::collection::vec(inner.clone(), 0..4).prop_map(Value::from),
                prop::collection::btree_map(any::<String>(), inner, 0..4)
                    .prop_map(|fields| Value::from(Body::from_iter(fields))),
            ]
        })
    }

    fn events() -> impl Strategy<Value = Vec<Event>> {
        let field =
            prop_oneof![Just("at".to_owned()), Just("mixed_at".to_owned()), Just("piece".to_owned()), any::<String>()];
        let body = prop::collection::btree_map(field, value(), 0..5);
        let clock =
            prop_oneof![(0..=Clock::LATEST.packed()), ((NOW << 16)..(NOW + 3) << 16), ((NOW << 16)..(NOW << 16) + 4)];
        let event = (clock, 0..3i64, prop_oneof![Just("coat"), Just("something newer")], body);
        (1..1_000_000i64, prop::collection::vec(event, 1..12)).prop_map(|(first, events)| {
            let made = events.into_iter().zip(first..).map(|((clock, at, kind, body), seq)| Event {
                device: DEVICE,
                seq,
                clock: Clock::from_packed(clock).unwrap(),
                entity: SeededIds::new(5).next(NOW + at),
                kind: Kind::of(kind),
                body: Body::from_iter(body),
            });
            made.collect()
        })
    }

    proptest! {
        #[test]
        fn what_was_packed_is_unpacked(events in events()) {
            let segment = pack(&events).unwrap();
            prop_assert_eq!(unpack(&segment.name, &segment.bytes).unwrap(), events);
        }

        #[test]
        fn a_flipped_bit_is_found_or_changes_nothing(events in events(), at in any::<Index>(), bit in 0..8u8) {
            // Nothing: a few bits of zstd's own head say how much room to make, not what to read.
            let mut segment = pack(&events).unwrap();
            let at = at.index(segment.bytes.len());
            segment.bytes[at] ^= 1 << bit;
            if let Ok(read) = unpack(&segment.name, &segment.bytes) {
                prop_assert_eq!(read, events);
            }
        }

        #[test]
        fn any_bytes_are_refused(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
            let name = Name { device: DEVICE, first: 1, last: 1 };
            prop_assert!(unpack(&name, &bytes).is_err());
        }

        #[test]
        fn any_text_is_read_or_refused(lines in prop::collection::vec(value(), 0..8), first in 1..3i64) {
            let head = json!({"file": WHAT, "layout": 1, "device": DEVICE, "first": first, "events": 2, "reading": ""});
            let define = json!({"row": 0, "kind": "coat", "fields": ["at"], "moments": [], "ids": [], "as_before": []});
            let text: String = lines.iter().map(|line| format!("{line}\n")).collect();
            let name = Name { device: DEVICE, first, last: first + 1 };
            if let Ok(read) = unpack(&name, &forged(&format!("{head}\n{define}\n{text}"))) {
                prop_assert_eq!(read.len(), 2);
            }
        }
    }
}
