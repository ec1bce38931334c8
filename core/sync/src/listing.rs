//! What lies at the place, sorted. A name proves nothing unless it carries the tag of a key that the passphrase opens.

use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use laydown_store::journal::DeviceId;
use laydown_store::journal::segment::{MOST_EVENTS, Name};

use crate::encryption::{Key, SEALED, TAG};
use crate::remote_store::{DEVICES, Entry};

pub(crate) const KEY: &str = "key.age";
pub(crate) const PICTURE: &str = ".picture";
/// A photograph is looked for in the folders of the phones that are known, and of so many others.
const MOST_UNKNOWN: usize = 4;

/// A segment at the place.
#[derive(Debug, Clone)]
pub(crate) struct RemoteSegment {
    pub(crate) writer: DeviceId,
    pub(crate) name: Name,
    pub(crate) file: Entry,
    /// Whether its name shows that somebody with the passphrase wrote it; without a passphrase every name counts.
    pub(crate) proven: bool,
}

/// A photograph at the place.
#[derive(Debug, Clone)]
pub(crate) struct Picture {
    pub(crate) writer: DeviceId,
    pub(crate) file: Entry,
}

/// What a file is, by its name.
enum Sort {
    Segment { name: Name, tag: Option<String> },
    Picture { name: String },
}

struct File {
    writer: DeviceId,
    sort: Sort,
    sealed: bool,
    entry: Entry,
}

/// The files whose names laydown gives, before it is known which of them count. Files of any other name are nobody's business.
#[derive(Default)]
pub(crate) struct RemoteListing {
    pub(crate) keys: BTreeMap<DeviceId, Entry>,
    files: Vec<File>,
}

impl RemoteListing {
    pub(crate) fn of(entries: Vec<Entry>) -> RemoteListing {
        let mut listed = RemoteListing::default();
        for entry in entries {
            let Some((writer, rest)) = entry.path.strip_prefix(DEVICES).and_then(|path| path.split_once('/')) else {
                continue;
            };
            let Some(writer) = device(writer) else { continue };
            if rest == KEY {
                listed.keys.insert(writer, entry);
            } else if let Some((sort, sealed)) = sort(rest) {
                listed.files.push(File { writer, sort, sealed, entry });
            }
        }
        listed
    }

    pub(crate) fn any_sealed(&self) -> bool {
        self.files.iter().any(|file| file.sealed)
    }

    /// What counts: with a passphrase what is sealed, and whose name has a tag of `ring` or, as older versions wrote it, none;
    /// without one what is open.
    pub(crate) fn admit(self, me: DeviceId, ring: Option<&[Rc<Key>]>) -> There {
        let mut there = There::default();
        for File { writer, sort, sealed, entry } in self.files {
            let named = match (&sort, ring) {
                (Sort::Segment { name, tag: Some(tag) }, Some(ring)) => {
                    let path = untagged(writer, name);
                    Some(ring.iter().any(|key| key.tag(&path) == *tag))
                }
                (Sort::Segment { tag, .. }, _) => tag.is_none().then_some(ring.is_none()),
                (Sort::Picture { .. }, _) => Some(true),
            };
            let (true, Some(proven)) = (sealed == ring.is_some(), named.filter(|proven| *proven || is_legacy(&sort)))
            else {
                if writer == me && !sealed {
                    there.open.push(entry);
                } else {
                    there.strange += 1;
                }
                continue;
            };
            there.usable.insert(entry.path.clone(), entry.size);
            match sort {
                Sort::Segment { name, .. } => {
                    let segment = RemoteSegment { writer, name, file: entry, proven };
                    there.segments.entry(name.device).or_default().push(segment);
                }
                Sort::Picture { name } => {
                    there.pictures.entry(name).or_default().push(Picture { writer, file: entry });
                }
            }
        }
        // What is proven first, of that the longest, so that few files are fetched; then in an order that is always the same.
        for segments in there.segments.values_mut() {
            segments.sort_by(|a, b| {
                let order = |s: &RemoteSegment| {
                    (!s.proven, std::cmp::Reverse(s.name.last), s.writer != s.name.device, s.writer)
                };
                order(a).cmp(&order(b))
            });
        }
        there
    }
}

fn is_legacy(sort: &Sort) -> bool {
    matches!(sort, Sort::Segment { tag: None, .. })
}

/// One device, one spelling.
fn device(text: &str) -> Option<DeviceId> {
    text.parse().ok().map(DeviceId).filter(|device| device.0.to_string() == text)
}

fn sort(rest: &str) -> Option<(Sort, bool)> {
    let open = rest.strip_suffix(SEALED).unwrap_or(rest);
    let sealed = open != rest;
    if let Some(name) = open.strip_prefix("photos/") {
        let name = name.strip_suffix(PICTURE)?;
        return is_hex(name, 64).then(|| (Sort::Picture { name: name.to_owned() }, sealed));
    }
    let text = open.strip_prefix("journal/")?;
    let (text, tag) = match text.rsplit_once('.') {
        Some((text, tag)) if sealed && is_hex(tag, TAG) => (text, Some(tag.to_owned())),
        _ => (text, None),
    };
    let name: Name = text.parse().ok()?;
    (name.last - name.first < MOST_EVENTS as i64).then_some((Sort::Segment { name, tag }, sealed))
}

fn is_hex(text: &str, digits: usize) -> bool {
    text.len() == digits && text.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'))
}

/// The path of a segment, without what sealing adds.
pub(crate) fn untagged(writer: DeviceId, name: &Name) -> String {
    format!("{DEVICES}{}/journal/{name}", writer.0)
}

/// What counts of all that lies there.
#[derive(Default)]
pub(crate) struct There {
    segments: BTreeMap<DeviceId, Vec<RemoteSegment>>,
    /// By the name without its endings, which is the SHA-256 or, sealed, what a key makes of it.
    pictures: BTreeMap<String, Vec<Picture>>,
    /// The bytes of all of these.
    usable: BTreeMap<String, u64>,
    /// This phone's own that are not sealed, where there is a passphrase.
    pub(crate) open: Vec<Entry>,
    /// How many files do not count.
    pub(crate) strange: usize,
}

impl There {
    pub(crate) fn devices(&self) -> impl Iterator<Item = DeviceId> {
        self.segments.keys().copied()
    }

    pub(crate) fn segments_of(&self, device: DeviceId) -> &[RemoteSegment] {
        self.segments.get(&device).map_or(&[], Vec::as_slice)
    }

    /// Whether a file lies there with as many bytes as it had.
    pub(crate) fn has(&self, path: &str, size: u64) -> bool {
        self.usable.get(path) == Some(&size)
    }

    /// What is in place now that was put there.
    pub(crate) fn add(&mut self, segment: RemoteSegment) {
        self.usable.insert(segment.file.path.clone(), segment.file.size);
        let segments = self.segments.entry(segment.name.device).or_default();
        segments.retain(|other| other.file.path != segment.file.path);
        segments.push(segment);
    }

    /// The segments to fetch, one after the other, for the events of a device after `have`; at most `most`, and none of `not`.
    pub(crate) fn chain(
        &self,
        device: DeviceId,
        mut have: i64,
        most: usize,
        not: &BTreeSet<String>,
    ) -> Vec<&RemoteSegment> {
        let mut chain = Vec::new();
        while chain.len() < most {
            let holds = |segment: &&RemoteSegment| {
                (segment.name.first..=segment.name.last).contains(&(have + 1)) && !not.contains(&segment.file.path)
            };
            let Some(next) = self.segments_of(device).iter().find(holds) else { break };
            chain.push(next);
            have = next.name.last;
        }
        chain
    }

    /// The photographs by whose names `is_so`.
    pub(crate) fn pictures_where(&self, is_so: impl Fn(&str) -> bool) -> impl Iterator<Item = &Entry> {
        let found = self.pictures.iter().filter(move |(name, _)| is_so(name));
        found.flat_map(|(_, pictures)| pictures).map(|picture| &picture.file)
    }

    /// Where a photograph may lie that goes by one of these names: with this phone, with those that are known, and with few others.
    pub(crate) fn pictures(&self, names: &[String], me: DeviceId, known: impl Fn(DeviceId) -> bool) -> Vec<Picture> {
        let found = || names.iter().filter_map(|name| self.pictures.get(name)).flatten();
        let own = found().filter(|picture| picture.writer == me);
        let others = found().filter(|picture| picture.writer != me && known(picture.writer));
        let unknown = found().filter(|picture| picture.writer != me && !known(picture.writer));
        own.chain(others).chain(unknown.take(MOST_UNKNOWN)).cloned().collect()
    }
}
