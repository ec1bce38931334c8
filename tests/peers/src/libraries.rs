//! The libraries: how each keeps a coat, sends all it has and merges what was sent, as its own documentation shows it.
//!
//! A coat is a map of its own under its id, in one map of all coats, and is committed by itself, as it is kept by itself.
//! What is sent is everything one replica has, in the smallest form that a replica with other coats of its own can merge.
//! None of them writes anything to the disk here.

use automerge::{AutoCommit, ObjType, ROOT, ReadDoc, ScalarValue, transaction::Transactable};
use loro::{ExportMode, LoroDoc, LoroMap, LoroValue};
use serde_json::Value;
use yrs::updates::decoder::Decode;
use yrs::{Any, Doc, Map, MapPrelim, MapRef, ReadTxn, StateVector, Transact, Update};

use crate::{Record, Result};

const COATS: &str = "coats";

pub(crate) enum Library {
    Automerge,
    Loro,
    Yrs,
}

/// A replica that has merged what was sent.
pub(crate) enum Merged {
    Automerge(Box<AutoCommit>),
    Loro(LoroDoc),
    Yrs(Doc, MapRef),
}

impl Library {
    pub(crate) fn named(name: &str) -> Result<Library> {
        match name {
            "automerge" => Ok(Library::Automerge),
            "loro" => Ok(Library::Loro),
            "yrs" => Ok(Library::Yrs),
            _ => Err(format!("{name} is none of automerge, loro and yrs").into()),
        }
    }

    pub(crate) fn make(&self, records: &[Record]) -> Result<Vec<u8>> {
        match self {
            Library::Automerge => {
                let mut doc = AutoCommit::new();
                let coats = doc.put_object(ROOT, COATS, ObjType::Map)?;
                for (id, fields) in records {
                    let coat = doc.put_object(&coats, id, ObjType::Map)?;
                    for (name, value) in fields {
                        doc.put(&coat, name, scalar(value))?;
                    }
                    doc.commit();
                }
                Ok(doc.save())
            }
            Library::Loro => {
                let doc = LoroDoc::new();
                let coats = doc.get_map(COATS);
                for (id, fields) in records {
                    let coat = coats.insert_container(id, LoroMap::new())?;
                    for (name, value) in fields {
                        coat.insert(name, LoroValue::from(value.clone()))?;
                    }
                    doc.commit();
                }
                Ok(doc.export(ExportMode::all_updates())?)
            }
            Library::Yrs => {
                let doc = Doc::new();
                let coats = doc.get_or_insert_map(COATS);
                for (id, fields) in records {
                    let coat: MapPrelim = fields.iter().map(|(name, value)| (name.as_str(), any(value))).collect();
                    coats.insert(&mut doc.transact_mut(), id.as_str(), coat);
                }
                Ok(doc.transact().encode_state_as_update_v2(&StateVector::default()))
            }
        }
    }

    pub(crate) fn merge(&self, sent: &[u8]) -> Result<Merged> {
        match self {
            Library::Automerge => {
                let mut doc = AutoCommit::new();
                doc.load_incremental(sent)?;
                Ok(Merged::Automerge(Box::new(doc)))
            }
            Library::Loro => {
                let doc = LoroDoc::new();
                doc.import(sent)?;
                Ok(Merged::Loro(doc))
            }
            Library::Yrs => {
                let doc = Doc::new();
                let coats = doc.get_or_insert_map(COATS);
                doc.transact_mut().apply_update(Update::decode_v2(sent)?)?;
                Ok(Merged::Yrs(doc, coats))
            }
        }
    }
}

impl Merged {
    /// How many coats it has.
    pub(crate) fn records(&self) -> usize {
        match self {
            Merged::Automerge(doc) => doc.get(ROOT, COATS).ok().flatten().map_or(0, |(_, coats)| doc.length(&coats)),
            Merged::Loro(doc) => doc.get_map(COATS).len(),
            Merged::Yrs(doc, coats) => coats.len(&doc.transact()) as usize,
        }
    }
}

fn scalar(value: &Value) -> ScalarValue {
    match value {
        Value::Bool(yes) => ScalarValue::Boolean(*yes),
        Value::Number(number) => number.as_i64().map_or(ScalarValue::Null, ScalarValue::Int),
        Value::String(text) => ScalarValue::Str(text.as_str().into()),
        _ => ScalarValue::Null,
    }
}

fn any(value: &Value) -> Any {
    match value {
        Value::Bool(yes) => Any::Bool(*yes),
        Value::Number(number) => number.as_i64().map_or(Any::Null, Any::from),
        Value::String(text) => Any::String(text.as_str().into()),
        _ => Any::Null,
    }
}
