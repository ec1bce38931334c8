//! One round: what others put on the shelf comes here, what is new here goes there.

use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;
use std::sync::atomic::{AtomicBool, Ordering};

use laydown::journal::segment::{self, MOST_EVENTS, Name, SegmentError, Wrong};
use laydown::journal::{DeviceId, Event};
use laydown::store::StoreError;
use sha2::{Digest, Sha256};

use crate::error::damaged;
use crate::journal::Journal;
use crate::seal::{Key, MOST_KEY, SEALED, least_sealed};
use crate::shelf::{DEVICES, Entry, Shelf};
use crate::{RemoteError, Secret};

/// The most bytes of a file that is fetched: a photograph has at most 64 MB, a segment far less.
const MOST_FILE: u64 = 66 << 20;
const PICTURE: &str = ".picture";

/// How a round is to go.
#[derive(Debug, Clone, Default)]
pub struct Options {
    /// Seals what is put there and opens what is sealed there. What already lies there unsealed stays so.
    pub passphrase: Option<Secret>,
    /// Every byte costs: the journal alone, photographs another time.
    pub metered: bool,
    /// Reads everything that this device ever put there, and puts again what is damaged or gone.
    pub check: bool,
}

/// How far a round is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Progress {
    /// Files fetched, put or looked at.
    pub done: usize,
    /// Of so many; more may become known on the way.
    pub of: usize,
    /// Bytes that went either way.
    pub bytes: u64,
}

/// What came of a round.
#[derive(Debug, Default)]
pub struct Outcome {
    /// Events that came from others and were new here.
    pub events_in: usize,
    /// Events put there.
    pub events_out: usize,
    /// Photographs that came.
    pub photographs_in: usize,
    /// Photographs put there.
    pub photographs_out: usize,
    /// Photographs left for a network that costs nothing.
    pub photographs_waiting: usize,
    /// Photographs that a record names and that are neither here nor there.
    pub photographs_missing: usize,
    /// Files of this device's that were damaged or gone there, and were put again.
    pub put_again: usize,
    /// Bytes that went either way.
    pub bytes: u64,
    /// What could not be used. The rest was done all the same; these are asked for again next time.
    pub troubles: Vec<RemoteError>,
}

/// Keeps `journal` and `shelf` alike, once. May be stopped through `stop`, and broken off anywhere: what has arrived is kept,
/// and the next round goes on from there. Nothing is fetched twice that has arrived whole.
///
/// # Errors
/// When the place does not answer, refuses, or is full; when the passphrase is wrong; when this device's studio cannot be
/// read or written; when stopped. What is wrong with a single file is no error but one of the [`Outcome::troubles`].
pub fn sync(
    journal: &dyn Journal,
    shelf: &dyn Shelf,
    options: &Options,
    stop: &AtomicBool,
    progress: &mut dyn FnMut(Progress),
) -> Result<Outcome, RemoteError> {
    let there = There::of(shelf.list()?);
    let mut round = Round {
        journal,
        shelf,
        options,
        stop,
        progress,
        so_far: Progress::default(),
        outcome: Outcome::default(),
        forked: false,
        own_key: None,
        keys: BTreeMap::new(),
    };
    round.unlock(&there)?;
    round.fetch_events(&there)?;
    round.look_after_own(&there)?;
    round.put_events(&there)?;
    round.photographs(&there)?;
    round.outcome.bytes = round.so_far.bytes;
    Ok(round.outcome)
}

/// A segment on the shelf.
#[derive(Debug, Clone)]
struct Lying {
    writer: DeviceId,
    name: Name,
    file: Entry,
}

/// A photograph on the shelf.
#[derive(Debug, Clone)]
struct Picture {
    writer: DeviceId,
    file: Entry,
}

/// What lies on the shelf. Files of any other name are nobody's business here.
#[derive(Default)]
struct There {
    segments: BTreeMap<DeviceId, Vec<Lying>>,
    /// By the name without its endings, which is the SHA-256 or, sealed, what a key makes of it.
    pictures: BTreeMap<String, Vec<Picture>>,
    keys: BTreeMap<DeviceId, Entry>,
    any_sealed: bool,
}

impl There {
    fn of(entries: Vec<Entry>) -> There {
        let mut there = There::default();
        for file in entries {
            let Some((writer, rest)) = file.path.strip_prefix(DEVICES).and_then(|path| path.split_once('/')) else {
                continue;
            };
            let Ok(writer) = writer.parse().map(DeviceId) else { continue };
            let open = rest.strip_suffix(SEALED).unwrap_or(rest);
            let sealed = open != rest;
            if rest == KEY {
                there.keys.insert(writer, file);
            } else if let Some(Ok(name)) = open.strip_prefix("journal/").map(str::parse::<Name>) {
                there.any_sealed |= sealed;
                there.segments.entry(name.device).or_default().push(Lying { writer, name, file });
            } else if let Some(name) = open.strip_prefix("photos/").and_then(|name| name.strip_suffix(PICTURE)) {
                there.any_sealed |= sealed;
                there.pictures.entry(name.to_owned()).or_default().push(Picture { writer, file });
            }
        }
        // The longest first, so that few files are fetched; then in any order that is always the same.
        for segments in there.segments.values_mut() {
            segments.sort_by(|a, b| (b.name.last, a.writer).cmp(&(a.name.last, b.writer)));
        }
        there
    }

    fn segments_of(&self, device: DeviceId) -> &[Lying] {
        self.segments.get(&device).map_or(&[], Vec::as_slice)
    }

    /// How far the events of a device lie there, from the first on without a gap, in the segments of one writer or of all.
    fn covered(&self, device: DeviceId, writer: Option<DeviceId>) -> i64 {
        let mut covered = 0;
        let by = |segment: &&Lying| writer.is_none_or(|writer| segment.writer == writer);
        while let Some(next) = self.holding(device, covered + 1).find(by) {
            covered = next.name.last;
        }
        covered
    }

    /// The segments that hold one event of a device.
    fn holding(&self, device: DeviceId, seq: i64) -> impl Iterator<Item = &Lying> {
        self.segments_of(device).iter().filter(move |segment| (segment.name.first..=segment.name.last).contains(&seq))
    }
}

const KEY: &str = "key.age";

struct Round<'a> {
    journal: &'a dyn Journal,
    shelf: &'a dyn Shelf,
    options: &'a Options,
    stop: &'a AtomicBool,
    progress: &'a mut dyn FnMut(Progress),
    so_far: Progress,
    outcome: Outcome,
    /// Another device writes under this one's name.
    forked: bool,
    own_key: Option<Rc<Key>>,
    /// The keys of other writers; `None` for one that could not be had.
    keys: BTreeMap<DeviceId, Option<Rc<Key>>>,
}

impl Round<'_> {
    /// Finds or makes the key that this device seals with.
    fn unlock(&mut self, there: &There) -> Result<(), RemoteError> {
        let Some(passphrase) = &self.options.passphrase else {
            return if there.any_sealed { Err(RemoteError::NoPassphrase) } else { Ok(()) };
        };
        let me = self.journal.device();
        let mut known = there.keys.get(&me).into_iter().chain(there.keys.values());
        let found = known.find_map(|entry| self.read_key(entry, passphrase).transpose());
        let key = found.unwrap_or_else(|| Key::new(passphrase))?;
        let own_is_there = match there.keys.get(&me) {
            Some(entry) => self.get(entry)?.is_some_and(|file| file == key.file),
            None => false,
        };
        if !own_is_there {
            self.put_whole(&format!("{DEVICES}{}/{KEY}", me.0), &key.file)?;
        }
        let key = Rc::new(key);
        self.keys.insert(me, Some(Rc::clone(&key)));
        self.own_key = Some(key);
        Ok(())
    }

    fn read_key(&self, entry: &Entry, passphrase: &Secret) -> Result<Option<Key>, RemoteError> {
        if entry.size > MOST_KEY {
            return Ok(None);
        }
        match self.shelf.get(&entry.path, MOST_KEY)? {
            Some(file) => Key::open(file, passphrase),
            None => Ok(None),
        }
    }

    /// The key of another writer, asked for once.
    fn key_of(&mut self, writer: DeviceId, there: &There) -> Result<Option<Rc<Key>>, RemoteError> {
        if let Some(known) = self.keys.get(&writer) {
            return Ok(known.clone());
        }
        let key = match (there.keys.get(&writer), &self.options.passphrase, &self.own_key) {
            (Some(entry), Some(passphrase), Some(own)) => {
                let file = if entry.size > MOST_KEY { None } else { self.shelf.get(&entry.path, MOST_KEY)? };
                match file {
                    // As a rule it is the same, and stretching the passphrase again would take its time.
                    Some(file) if file == own.file => Some(Rc::clone(own)),
                    Some(file) => match Key::open(file, passphrase) {
                        Ok(key) => key.map(Rc::new),
                        Err(wrong) => {
                            self.outcome.troubles.push(wrong);
                            None
                        }
                    },
                    None => None,
                }
            }
            _ => None,
        };
        self.keys.insert(writer, key.clone());
        Ok(key)
    }

    /// Takes in what others put there; and what this device did, where an older copy of its studio came back.
    fn fetch_events(&mut self, there: &There) -> Result<(), RemoteError> {
        let version = self.journal.version()?;
        let here = |device: &DeviceId| version.get(device).copied().unwrap_or(0);
        for (device, segments) in &there.segments {
            self.so_far.of += segments.iter().filter(|segment| segment.name.last > here(device)).count();
        }
        for device in there.segments.keys() {
            self.fetch_of(*device, here(device), there)?;
        }
        Ok(())
    }

    fn fetch_of(&mut self, device: DeviceId, mut have: i64, there: &There) -> Result<(), RemoteError> {
        loop {
            let mut found = None;
            let mut any = false;
            for segment in there.holding(device, have + 1) {
                any = true;
                match self.read_segment(segment, there)? {
                    Ok(events) => {
                        found = Some((segment.name, events));
                        break;
                    }
                    Err(trouble) => self.outcome.troubles.push(trouble),
                }
            }
            let Some((name, events)) = found else {
                let after = there.segments_of(device).iter().map(|segment| segment.name.first);
                if let (false, Some(next)) = (any, after.filter(|first| *first > have).min()) {
                    let device = device.0.to_string();
                    self.outcome.troubles.push(RemoteError::Missing { device, first: have + 1, last: next - 1 });
                }
                return Ok(());
            };
            match self.journal.take_in(&events) {
                Ok(new) => self.outcome.events_in += new,
                Err(trouble @ (StoreError::Forked { .. } | StoreError::BadEvent { .. })) => {
                    self.outcome.troubles.push(trouble.into());
                    return Ok(());
                }
                Err(error) => return Err(error.into()),
            }
            have = name.last;
        }
    }

    /// The events of a segment, or what is wrong with it.
    fn read_segment(&mut self, segment: &Lying, there: &There) -> Result<Result<Vec<Event>, RemoteError>, RemoteError> {
        let name = segment.name.to_string();
        if segment.file.size > MOST_FILE {
            return Ok(Err(damaged(&name, Wrong::TooLarge)));
        }
        let file = self.get(&segment.file)?;
        self.step()?;
        let Some(bytes) = file else { return Ok(Err(damaged(&name, Wrong::Cut))) };
        Ok(match self.open(bytes, &segment.file.path, segment.writer, there)? {
            Some(bytes) => segment::unpack(&segment.name, &bytes).map_err(RemoteError::from),
            None => Err(damaged(&name, Wrong::Packing)),
        })
    }

    /// Puts again what this device put there and what is not whole: the last segment of each device always, since that may
    /// have been cut off when the app was ended, and all of them where that is asked for. One that is whole and says something else was put
    /// there by another that goes by the same name.
    fn look_after_own(&mut self, there: &There) -> Result<(), RemoteError> {
        let me = self.journal.device();
        let version = self.journal.version()?;
        let own = there.segments.values().flatten().filter(|segment| segment.writer == me);
        let mut own: Vec<&Lying> = own.filter(|s| version.get(&s.name.device) >= Some(&s.name.last)).collect();
        if !self.options.check {
            own.sort_by_key(|segment| segment.name.last);
            let last: BTreeMap<DeviceId, &Lying> =
                own.into_iter().map(|segment| (segment.name.device, segment)).collect();
            own = last.into_values().collect();
        }
        self.so_far.of += own.len();
        for segment in own {
            let Name { device, first, last } = segment.name;
            match self.read_segment(segment, there)? {
                Ok(lies) => {
                    let here = self.journal.events(device, first, last)?;
                    if let Some((other, _)) = lies.iter().zip(&here).find(|(lies, here)| lies != here) {
                        self.forked = true;
                        self.outcome.troubles.push(StoreError::Forked { device, seq: other.seq }.into());
                    }
                }
                // Written before the app went back to an older version: good, only not readable here.
                Err(newer @ RemoteError::Newer) => self.outcome.troubles.push(newer),
                Err(_) => {
                    self.put_segments(device, first, last)?;
                    self.outcome.put_again += 1;
                }
            }
        }
        Ok(())
    }

    /// Puts there what this device knows and the shelf does not. For its own events it relies on nobody else: another's file
    /// may be cut, and that other may be gone.
    fn put_events(&mut self, there: &There) -> Result<(), RemoteError> {
        let me = self.journal.device();
        for (device, have) in self.journal.version()? {
            if self.forked && device == me {
                continue;
            }
            let first = there.covered(device, (device == me).then_some(me)) + 1;
            if first <= have {
                self.outcome.events_out += self.put_segments(device, first, have)?;
            }
        }
        Ok(())
    }

    /// Puts the events of a device there, in as few segments as hold them; says how many there were.
    fn put_segments(&mut self, device: DeviceId, mut first: i64, last: i64) -> Result<usize, RemoteError> {
        let mut put = 0;
        while first <= last {
            let until = last.min(first + MOST_EVENTS as i64 - 1);
            let events = self.journal.events(device, first, until)?;
            let segment = segment::pack(&events).map_err(of_own)?;
            let path = format!("{DEVICES}{}/journal/{}", self.journal.device().0, segment.name);
            let (path, bytes) = self.close(path, segment.bytes)?;
            self.so_far.of += 1;
            self.put_whole(&path, &bytes)?;
            self.step()?;
            put += usize::try_from(segment.name.last - segment.name.first + 1).unwrap_or_default();
            first = segment.name.last + 1;
        }
        Ok(put)
    }

    /// Photographs both ways.
    fn photographs(&mut self, there: &There) -> Result<(), RemoteError> {
        let named = self.journal.photographs()?;
        let writers: BTreeSet<DeviceId> = there.pictures.values().flatten().map(|picture| picture.writer).collect();
        let mut keys: Vec<Rc<Key>> = Vec::new();
        if self.options.passphrase.is_some() {
            for writer in writers {
                keys.extend(self.key_of(writer, there)?);
            }
            keys.sort_by(|a, b| a.file.cmp(&b.file));
            keys.dedup_by(|a, b| a.file == b.file);
        }
        let lying = |sha256: &str| -> Vec<&Picture> {
            let names = std::iter::once(sha256.to_owned()).chain(keys.iter().map(|key| key.name_of(sha256)));
            names.filter_map(|name| there.pictures.get(&name)).flatten().collect()
        };

        let mut to_put = Vec::new();
        let mut to_fetch = Vec::new();
        let mut to_check = Vec::new();
        let me = self.journal.device();
        for (sha256, size) in named {
            let found = lying(&sha256);
            match size {
                Some(size) if !found.iter().any(|picture| is_whole(&picture.file, size)) => to_put.push(sha256),
                Some(_) if self.options.check => {
                    to_check.extend(found.into_iter().find(|picture| picture.writer == me).map(|own| (sha256, own)));
                }
                Some(_) => {}
                None if found.is_empty() => self.outcome.photographs_missing += 1,
                None => to_fetch.push((sha256, found)),
            }
        }
        if self.options.metered {
            self.outcome.photographs_waiting = to_put.len() + to_fetch.len();
            return Ok(());
        }
        self.so_far.of += to_put.len() + to_fetch.len() + to_check.len();
        for (sha256, own) in to_check {
            let file = self.get(&own.file)?;
            self.step()?;
            let opened = match file {
                Some(bytes) => self.open(bytes, &own.file.path, me, there)?,
                None => None,
            };
            if opened.is_none_or(|picture| sha256_of(&picture) != sha256) {
                self.put_photograph(&sha256)?;
                self.outcome.put_again += 1;
            }
        }
        for sha256 in to_put {
            self.put_photograph(&sha256)?;
            self.step()?;
            self.outcome.photographs_out += 1;
        }
        for (sha256, found) in to_fetch {
            self.fetch_photograph(&sha256, &found, there)?;
            self.step()?;
        }
        Ok(())
    }

    fn put_photograph(&mut self, sha256: &str) -> Result<(), RemoteError> {
        let name = self.own_key.as_ref().map_or_else(|| sha256.to_owned(), |key| key.name_of(sha256));
        let path = format!("{DEVICES}{}/photos/{name}{PICTURE}", self.journal.device().0);
        let (path, bytes) = self.close(path, self.journal.photograph(sha256)?)?;
        self.put(&path, bytes)
    }

    /// The first of these that is the photograph is kept.
    fn fetch_photograph(&mut self, sha256: &str, found: &[&Picture], there: &There) -> Result<(), RemoteError> {
        for picture in found {
            let file = if picture.file.size > MOST_FILE { None } else { self.get(&picture.file)? };
            let opened = match file {
                Some(bytes) => self.open(bytes, &picture.file.path, picture.writer, there)?,
                None => None,
            };
            if let Some(bytes) = opened
                && sha256_of(&bytes) == sha256
                && self.journal.adopt(sha256, &bytes)?
            {
                self.outcome.photographs_in += 1;
                return Ok(());
            }
            self.outcome.troubles.push(RemoteError::DamagedPhotograph { file: picture.file.path.clone() });
        }
        Ok(())
    }

    /// A file as it was before it was sealed; `None` where that cannot be had.
    fn open(
        &mut self,
        bytes: Vec<u8>,
        path: &str,
        writer: DeviceId,
        there: &There,
    ) -> Result<Option<Vec<u8>>, RemoteError> {
        if !path.ends_with(SEALED) {
            return Ok(Some(bytes));
        }
        Ok(self.key_of(writer, there)?.and_then(|key| key.unseal(&bytes)))
    }

    /// A file as it leaves this device, and its path.
    fn close(&self, path: String, bytes: Vec<u8>) -> Result<(String, Vec<u8>), RemoteError> {
        match &self.own_key {
            Some(key) => Ok((path + SEALED, key.seal(&bytes)?)),
            None => Ok((path, bytes)),
        }
    }

    fn get(&mut self, entry: &Entry) -> Result<Option<Vec<u8>>, RemoteError> {
        self.go_on()?;
        let file = self.shelf.get(&entry.path, MOST_FILE)?;
        self.so_far.bytes += file.as_ref().map_or(0, |bytes| bytes.len() as u64);
        Ok(file)
    }

    fn put(&mut self, path: &str, bytes: Vec<u8>) -> Result<(), RemoteError> {
        self.go_on()?;
        self.so_far.bytes += bytes.len() as u64;
        self.shelf.put(path, bytes)
    }

    /// Puts a small file there and reads it back: only then does it count.
    fn put_whole(&mut self, path: &str, bytes: &[u8]) -> Result<(), RemoteError> {
        self.put(path, bytes.to_vec())?;
        let lies = self.shelf.get(path, MOST_FILE)?;
        self.so_far.bytes += bytes.len() as u64;
        if lies.as_deref() == Some(bytes) {
            Ok(())
        } else {
            Err(RemoteError::Failed { details: "a file that was put there did not lie there afterwards".to_owned() })
        }
    }

    fn step(&mut self) -> Result<(), RemoteError> {
        self.so_far.done += 1;
        self.so_far.of = self.so_far.of.max(self.so_far.done);
        (self.progress)(self.so_far);
        self.go_on()
    }

    fn go_on(&self) -> Result<(), RemoteError> {
        if self.stop.load(Ordering::Relaxed) { Err(RemoteError::Stopped) } else { Ok(()) }
    }
}

/// Whether a photograph lies there whole, as far as its length tells. One that was cut off is shorter.
fn is_whole(file: &Entry, size: u64) -> bool {
    if file.path.ends_with(SEALED) { file.size >= least_sealed(size) } else { file.size == size }
}

/// This device's own events could not be packed: its journal is not what it should be.
fn of_own(error: SegmentError) -> RemoteError {
    RemoteError::Store(StoreError::Damaged { details: error.to_string() })
}

fn sha256_of(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}
