//! How the body of an event lies in the file: a third of its JSON, and the same JSON when it is read.
//!
//! What is said again and again (kinds, lists of field names, codes, the ids of forms, glazes, buckets, scales) has a number in
//! the table `word`; numbers are short; ids are 16 bytes. The numbers mean something in this file only: what leaves it is JSON.

use std::collections::HashMap;
use std::collections::hash_map::Entry;

use rusqlite::{Connection, OptionalExtension};
use serde_json::Value;
use uuid::Uuid;

use super::error::StoreError;
use crate::journal::Body;

/// The shape of a body that is not packed but JSON as it is.
const AS_JSON: i64 = 0;
/// Longest code that gets a number.
const LONGEST_CODE: usize = 24;
/// Fields that name one of a few things, again and again.
const NAMES_ONE_OF_FEW: &[&str] = &["form", "bucket", "glaze", "scale", "kiln", "firing", "body", "vessel", "device"];
/// What stands between the field names of a shape.
const BETWEEN: char = '\n';

// What kind of value follows, in its first byte.
const NULL: u8 = 0;
const FALSE: u8 = 1;
const TRUE: u8 = 2;
const THE_ENTITY: u8 = 3;
const ID: u8 = 4;
const WORD: u8 = 5;
const TEXT: u8 = 6;
const JSON: u8 = 7;
/// A whole number of so many bytes less this, the lowest first, two's complement.
const NUMBER: u8 = 8;

/// The words of a file, as far as they were met.
#[derive(Default)]
pub struct StringDictionary {
    numbers: HashMap<String, i64>,
    texts: HashMap<i64, String>,
}

impl StringDictionary {
    /// The number of a word, given to it here if it is new.
    pub(super) fn number(&mut self, conn: &Connection, text: &str) -> Result<i64, StoreError> {
        if let Some(number) = self.numbers.get(text) {
            return Ok(*number);
        }
        let number = match known_number(conn, text)? {
            Some(number) => number,
            None => {
                conn.prepare_cached("INSERT INTO word (text) VALUES (?1)")?.execute([text])?;
                conn.last_insert_rowid()
            }
        };
        self.numbers.insert(text.to_owned(), number);
        Ok(number)
    }

    /// The word that has a number.
    pub(super) fn text(&mut self, conn: &Connection, number: i64) -> Result<&str, StoreError> {
        match self.texts.entry(number) {
            Entry::Occupied(known) => Ok(known.into_mut()),
            Entry::Vacant(place) => {
                let mut select = conn.prepare_cached("SELECT text FROM word WHERE number = ?1")?;
                let text: Option<String> = select.query_row([number], |row| row.get(0)).optional()?;
                let lost = || StoreError::Damaged { details: format!("word {number} is not there") };
                Ok(place.insert(text.ok_or_else(lost)?))
            }
        }
    }

    /// Forgets all, since what it was told may have been rolled back.
    pub(super) fn forget(&mut self) {
        *self = StringDictionary::default();
    }
}

/// The number of a word; `None` where the file does not have it.
pub(super) fn known_number(conn: &Connection, text: &str) -> Result<Option<i64>, StoreError> {
    Ok(conn
        .prepare_cached("SELECT number FROM word WHERE text = ?1")?
        .query_row([text], |row| row.get(0))
        .optional()?)
}

/// Packs a body of `entity`.
pub(super) fn pack(
    conn: &Connection,
    strings: &mut StringDictionary,
    entity: Uuid,
    body: &Body,
) -> Result<Vec<u8>, StoreError> {
    let mut packed = Vec::with_capacity(128);
    if body.keys().any(|name| name.contains(BETWEEN)) || body.is_empty() {
        put_length(&mut packed, AS_JSON);
        packed.extend(as_json(body)?);
        return Ok(packed);
    }
    let shape: String = body.keys().map(String::as_str).collect::<Vec<_>>().join("\n");
    put_length(&mut packed, strings.number(conn, &shape)?);
    for (name, value) in body {
        put_value(conn, strings, entity, name, value, &mut packed)?;
    }
    Ok(packed)
}

fn put_value(
    conn: &Connection,
    strings: &mut StringDictionary,
    entity: Uuid,
    name: &str,
    value: &Value,
    packed: &mut Vec<u8>,
) -> Result<(), StoreError> {
    match value {
        Value::Null => packed.push(NULL),
        Value::Bool(false) => packed.push(FALSE),
        Value::Bool(true) => packed.push(TRUE),
        Value::Number(number) if number.is_i64() => put_number(packed, number.as_i64().unwrap_or_default()),
        Value::String(text) => match id_in(text) {
            Some(id) if id == entity => packed.push(THE_ENTITY),
            Some(id) if !NAMES_ONE_OF_FEW.contains(&name) => {
                packed.push(ID);
                packed.extend(id.as_bytes());
            }
            found if found.is_some() || is_code(text) => {
                packed.push(WORD);
                put_length(packed, strings.number(conn, text)?);
            }
            _ => put_bytes(packed, TEXT, text.as_bytes()),
        },
        other => put_bytes(packed, JSON, &as_json(other)?),
    }
    Ok(())
}

/// The id that a text is, if it is one written as this program writes them.
fn id_in(text: &str) -> Option<Uuid> {
    let id = Uuid::try_parse(text).ok()?;
    let mut written = Uuid::encode_buffer();
    (text == id.hyphenated().encode_lower(&mut written)).then_some(id)
}

fn is_code(text: &str) -> bool {
    (1..=LONGEST_CODE).contains(&text.len())
        && text.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'_')
}

fn as_json(value: &impl serde::Serialize) -> Result<Vec<u8>, StoreError> {
    serde_json::to_vec(value).map_err(|error| StoreError::Fault { details: error.to_string() })
}

fn put_number(packed: &mut Vec<u8>, number: i64) {
    let bytes = number.to_le_bytes();
    let sign = if number < 0 { 0xFF } else { 0 };
    let mut length = bytes.len();
    // As long as the sign can still be told from the highest bit that stays.
    while length > 0 && bytes[length - 1] == sign && (length == 1 || (bytes[length - 2] ^ sign) < 0x80) {
        length -= 1;
    }
    if number == -1 {
        length = 1;
    }
    packed.push(NUMBER + length as u8);
    packed.extend(&bytes[..length]);
}

fn put_bytes(packed: &mut Vec<u8>, tag: u8, bytes: &[u8]) {
    packed.push(tag);
    put_length(packed, i64::try_from(bytes.len()).unwrap_or(i64::MAX));
    packed.extend(bytes);
}

/// Seven bits a byte, the lowest first; the highest bit says that more follow.
fn put_length(packed: &mut Vec<u8>, length: i64) {
    let mut left = length.unsigned_abs();
    while left >= 0x80 {
        packed.push(left as u8 | 0x80);
        left >>= 7;
    }
    packed.push(left as u8);
}

/// The body of `entity` that was packed.
pub(super) fn unpack(
    conn: &Connection,
    strings: &mut StringDictionary,
    entity: Uuid,
    packed: &[u8],
) -> Result<Body, StoreError> {
    let mut left = packed;
    let shape = take_length(&mut left)?;
    if shape == AS_JSON {
        return serde_json::from_slice(left).map_err(|_| damaged());
    }
    let names: Vec<String> = strings.text(conn, shape)?.split(BETWEEN).map(str::to_owned).collect();
    let mut body = Body::new();
    for name in names {
        let value = take_value(conn, strings, entity, &mut left)?;
        body.insert(name, value);
    }
    if left.is_empty() { Ok(body) } else { Err(damaged()) }
}

fn take_value(
    conn: &Connection,
    strings: &mut StringDictionary,
    entity: Uuid,
    left: &mut &[u8],
) -> Result<Value, StoreError> {
    Ok(match take(left, 1)?[0] {
        NULL => Value::Null,
        FALSE => Value::Bool(false),
        TRUE => Value::Bool(true),
        THE_ENTITY => Value::from(entity.to_string()),
        ID => Value::from(Uuid::from_slice(take(left, 16)?).map_err(|_| damaged())?.to_string()),
        WORD => {
            let number = take_length(left)?;
            Value::from(strings.text(conn, number)?)
        }
        TEXT => Value::from(std::str::from_utf8(take_bytes(left)?).map_err(|_| damaged())?),
        JSON => serde_json::from_slice(take_bytes(left)?).map_err(|_| damaged())?,
        tag => Value::from(take_number(left, usize::from(tag - NUMBER))?),
    })
}

fn take_number(left: &mut &[u8], length: usize) -> Result<i64, StoreError> {
    if length > 8 {
        return Err(damaged());
    }
    let bytes = take(left, length)?;
    let sign = if bytes.last().is_some_and(|byte| *byte >= 0x80) { 0xFF } else { 0 };
    let mut whole = [sign; 8];
    whole[..length].copy_from_slice(bytes);
    Ok(i64::from_le_bytes(whole))
}

fn take_bytes<'a>(left: &mut &'a [u8]) -> Result<&'a [u8], StoreError> {
    let length = usize::try_from(take_length(left)?).map_err(|_| damaged())?;
    take(left, length)
}

fn take_length(left: &mut &[u8]) -> Result<i64, StoreError> {
    let mut length = 0_u64;
    for shift in (0..63).step_by(7) {
        let byte = take(left, 1)?[0];
        length |= u64::from(byte & 0x7F) << shift;
        if byte < 0x80 {
            return i64::try_from(length).map_err(|_| damaged());
        }
    }
    Err(damaged())
}

fn take<'a>(left: &mut &'a [u8], length: usize) -> Result<&'a [u8], StoreError> {
    let (taken, rest) = left.split_at_checked(length).ok_or_else(damaged)?;
    *left = rest;
    Ok(taken)
}

fn damaged() -> StoreError {
    StoreError::Damaged { details: "an event's body cannot be read".to_owned() }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use serde_json::json;

    use super::*;

    fn file() -> Connection {
        let conn = Connection::open_in_memory().unwrap();
        conn.execute_batch("CREATE TABLE word (number INTEGER PRIMARY KEY, text TEXT NOT NULL UNIQUE) STRICT").unwrap();
        conn
    }

    fn body(value: Value) -> Body {
        value.as_object().unwrap().clone()
    }

    /// Packed, and unpacked by one who has met none of the words.
    fn there_and_back(conn: &Connection, entity: Uuid, body: &Body) -> (usize, Body) {
        let packed = pack(conn, &mut StringDictionary::default(), entity, body).unwrap();
        (packed.len(), unpack(conn, &mut StringDictionary::default(), entity, &packed).unwrap())
    }

    #[test]
    fn a_body_comes_back_as_it_was() {
        let conn = file();
        let entity = Uuid::from_u128(7);
        for value in [
            json!({}),
            json!({"a": null, "b": true, "c": false}),
            json!({"piece": entity.to_string(), "form": Uuid::from_u128(8).to_string(), "x": Uuid::from_u128(9).to_string()}),
            json!({"X": "0000000000000000000000000000000A", "upper": "00000000-0000-0000-0000-00000000000A"}),
            json!({"zone": "inside", "note": "", "name": "Ash white – weiß", "long": "a".repeat(300)}),
            json!({"n": [0, 1, -1, 127, 128, -128, -129, i64::MAX, i64::MIN], "f": [1.0, 261364026.04515854], "u": u64::MAX, "deep": {"a": [{}]}}),
            json!({"a\nb": 1, "": 2}),
            json!({"": 2}),
        ] {
            let body = body(value);
            assert_eq!(there_and_back(&conn, entity, &body).1, body);
        }
        for number in [0, 1, -1, 127, 128, 255, 256, -128, -129, 32_767, 32_768, i64::MAX, i64::MIN] {
            let body = body(json!({ "n": number }));
            assert_eq!(there_and_back(&conn, entity, &body).1, body);
        }
    }

    #[test]
    fn cut_or_overlong_bodies_are_refused() {
        let conn = file();
        let entity = Uuid::from_u128(7);
        let packed = pack(
            &conn,
            &mut StringDictionary::default(),
            entity,
            &body(json!({"a": 70_000, "zone": "inside", "t": "Mug"})),
        )
        .unwrap();
        let read = |bytes: &[u8]| unpack(&conn, &mut StringDictionary::default(), entity, bytes);
        assert!((0..packed.len()).all(|end| read(&packed[..end]).is_err()));
        assert!(read(&[packed.as_slice(), &[0]].concat()).is_err());
        assert!(read(&[9]).is_err(), "a word that is not there");
        assert!(read(&[0xFF; 12]).is_err());
    }

    fn value() -> impl Strategy<Value = Value> {
        let leaf = prop_oneof![
            Just(Value::Null),
            any::<bool>().prop_map(Value::from),
            any::<i64>().prop_map(Value::from),
            any::<u64>().prop_map(Value::from),
            any::<i16>().prop_map(Value::from),
            (-1e9..1e9_f64).prop_map(Value::from),
            "[a-z0-9_]{0,30}".prop_map(Value::from),
            any::<String>().prop_map(Value::from),
            any::<u128>().prop_map(|id| Value::from(Uuid::from_u128(id).to_string())),
        ];
        leaf.prop_recursive(2, 8, 4, |inner| prop::collection::vec(inner, 0..4).prop_map(Value::from))
    }

    proptest! {
        #[test]
        fn any_body_comes_back(fields in prop::collection::btree_map("[a-z\\n]{0,5}|form|piece", value(), 0..8), entity: u128) {
            let body = Body::from_iter(fields);
            prop_assert_eq!(there_and_back(&file(), Uuid::from_u128(entity), &body).1, body);
        }

        #[test]
        fn any_bytes_are_read_or_refused(bytes in prop::collection::vec(any::<u8>(), 0..64)) {
            let conn = file();
            conn.execute("INSERT INTO word (number, text) VALUES (1, 'a' || char(10) || 'b'), (2, 'inside')", []).unwrap();
            let read = unpack(&conn, &mut StringDictionary::default(), Uuid::nil(), &bytes);
            let is_damaged = |error: &StoreError| matches!(error, StoreError::Damaged { .. });
            prop_assert!(read.as_ref().err().is_none_or(is_damaged));
        }
    }
}
