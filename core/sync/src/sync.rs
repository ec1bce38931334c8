//! One round: what others put on the shelf comes here, what is new here goes there.

use std::collections::BTreeSet;
use std::rc::Rc;
use std::sync::atomic::{AtomicBool, Ordering};

use laydown_store::StoreError;
use laydown_store::journal::segment::{self, MOST_EVENTS, Name, SegmentError, Wrong};
use laydown_store::journal::{DeviceId, Event};
use laydown_store::photos::sha256_of;

use crate::encryption::{Key, MOST_KEY, SEALED};
use crate::error::damaged;
use crate::journal::Journal;
use crate::listing::{KEY, PICTURE, Picture, RemoteListing, RemoteSegment, There, untagged};
use crate::record::Record;
use crate::remote_store::{DEVICES, Entry, RemoteStore};
use crate::{RemoteError, Secret};

/// The most bytes of a file that is fetched: a photograph has at most 64 MB, a segment far less.
const MOST_FILE: u64 = 66 << 20;
/// The most segments of one device that may turn out useless before the rest of them waits for the next round.
const MOST_FAILURES: usize = 8;
/// The same for all devices together of which this studio has no event.
const MOST_STRANGE_FAILURES: usize = 32;
/// The most segments of one device that are read in a round only to know whether they are whole.
const MOST_CHECKS: usize = 16;
/// More segments of a device than these that are not full are merged by this one, where it wrote them.
const MOST_SMALL: usize = 16;
/// Of so many bytes a segment counts as full, however few events it holds.
const FULL: u64 = 1 << 20;
/// Files that are asked for at once, and the most bytes of them together.
const AT_ONCE: usize = 8;
const BYTES_AT_ONCE: u64 = 16 << 20;
/// The most segments that are planned ahead.
const MOST_PLANNED: usize = 64;
/// The most keys that are fetched of phones that are not known, and the most that are stretched for in a round.
const MOST_STRANGE_KEYS: usize = 4;
const MOST_STRETCHES: usize = 8;

/// How a round is to go.
#[derive(Debug, Clone, Default)]
pub struct Options {
    /// Seals what is put there, and only what it opens counts. What this device put there unsealed before is sealed again.
    pub passphrase: Option<Secret>,
    /// Every byte costs: the journal alone, photographs another time.
    pub metered: bool,
    /// Reads everything that this device ever put there, and puts again what is damaged or gone.
    pub check: bool,
    /// Goes on where nothing that is sealed there can be opened: with a key of its own, as the first phone would.
    pub afresh: bool,
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
    /// Files of this device's that were damaged there, and were put again.
    pub repaired: usize,
    /// Bytes that went either way.
    pub bytes: u64,
    /// What could not be used. The rest was done all the same; these are asked for again next time.
    pub file_errors: Vec<RemoteError>,
}

/// Saves `journal` and `remote` alike, once. May be stopped through `stop`, and broken off anywhere: what has arrived is kept,
/// and the next round goes on from there. Nothing is fetched twice that has arrived whole.
///
/// # Errors
/// When the place does not answer, refuses, or is full; when the passphrase is wrong; when this device's studio cannot be
/// read or written; when stopped. What is wrong with a single file is no error but one of the [`Outcome::file_errors`].
pub fn sync(
    journal: &dyn Journal,
    remote: &dyn RemoteStore,
    options: &Options,
    stop: &AtomicBool,
    progress: &mut dyn FnMut(Progress),
) -> Result<Outcome, RemoteError> {
    let before = Record::of(journal.remembered()?);
    let mut round = Round {
        journal,
        remote,
        options,
        stop,
        progress,
        so_far: Progress::default(),
        outcome: Outcome::default(),
        record: before.clone(),
        saved: before.clone(),
        before,
        own_key: None,
        ring: Vec::new(),
        shut: 0,
        strange_failures: 0,
        strange: 0,
        gone: false,
        relisted: false,
        older: false,
    };
    let done = round.go();
    // What was put and read counts, whatever came after it.
    let remembered = round.remember();
    done?;
    remembered?;
    round.outcome.bytes = round.so_far.bytes;
    Ok(round.outcome)
}

struct Round<'a> {
    journal: &'a dyn Journal,
    remote: &'a dyn RemoteStore,
    options: &'a Options,
    stop: &'a AtomicBool,
    progress: &'a mut dyn FnMut(Progress),
    so_far: Progress,
    outcome: Outcome,
    record: Record,
    /// The record as it was when the round began.
    before: Record,
    /// The record as it is on the disk.
    saved: Record,
    own_key: Option<Rc<Key>>,
    /// All keys that the passphrase opens, the own one first.
    ring: Vec<Rc<Key>>,
    /// How many keys it does not open.
    shut: usize,
    strange_failures: usize,
    /// Files that were fetched and that no key opens.
    strange: usize,
    /// A segment was listed and is not there.
    gone: bool,
    /// The place was listed a second time for that.
    relisted: bool,
    /// Something that was there is not there any more.
    older: bool,
}

impl Round<'_> {
    fn go(&mut self) -> Result<(), RemoteError> {
        let listed = RemoteListing::of(self.remote.list()?);
        self.go_on()?;
        self.unlock(&listed)?;
        let mut there = self.admit(listed);
        self.fetch_events(&there)?;
        if self.gone {
            // Another phone has merged its segments meanwhile.
            there = self.admit(RemoteListing::of(self.remote.list()?));
            self.relisted = true;
            self.fetch_events(&there)?;
        }
        self.put_events(&mut there)?;
        self.remember()?;
        self.photographs(&there)?;
        self.remove_open(&there)?;
        self.say(there.strange);
        // Whoever watches is told also where there was nothing to do but to look.
        if self.so_far.done == 0 { self.step() } else { Ok(()) }
    }

    fn say(&mut self, strange: usize) {
        let files = strange + self.strange + self.shut;
        if files > 0 && self.sealed() {
            self.outcome.file_errors.push(RemoteError::StrangeFiles { files });
        } else if files > 0 {
            self.outcome.file_errors.push(RemoteError::SealedFiles { files });
        }
        if self.older {
            self.outcome.file_errors.push(RemoteError::OlderThanLastTime);
        }
    }

    fn sealed(&self) -> bool {
        self.options.passphrase.is_some()
    }

    fn admit(&self, listed: RemoteListing) -> There {
        listed.admit(self.journal.device(), self.sealed().then_some(self.ring.as_slice()))
    }

    fn remember(&mut self) -> Result<(), RemoteError> {
        if self.record != self.saved {
            let text = serde_json::to_string(&self.record)
                .map_err(|error| StoreError::Fault { details: error.to_string() })?;
            self.journal.remember(&text)?;
            self.saved = self.record.clone();
        }
        Ok(())
    }

    /// Finds or makes the key that this device seals with, and opens those of the others.
    fn unlock(&mut self, listed: &RemoteListing) -> Result<(), RemoteError> {
        let Some(passphrase) = &self.options.passphrase else {
            let comes_new = !self.record.met_open() && !self.options.afresh;
            return if listed.any_sealed() && comes_new { Err(RemoteError::NoPassphrase) } else { Ok(()) };
        };
        let me = self.journal.device();
        let mut tried: Vec<Vec<u8>> = Vec::new();
        let mut stretches = 0;
        if let Some(file) = self.record.key.as_deref().and_then(bytes_of) {
            stretches += 1;
            match Key::open(file.clone(), passphrase, self.stop)? {
                Some(key) => self.ring.push(Rc::new(key)),
                None => self.record.forget_shut(),
            }
            tried.push(file);
        }
        let mut own_file = None;
        for writer in self.writers_of_keys(listed)? {
            let Some(file) = self.read_key(&listed.keys[&writer])? else { continue };
            if writer == me {
                own_file = Some(file.clone());
            }
            if tried.contains(&file) {
                continue;
            }
            let sum = sha256_of(&file);
            if self.record.is_shut(&sum) || !Key::is_one(&file) || stretches >= MOST_STRETCHES {
                self.shut += 1;
            } else {
                stretches += 1;
                match Key::open(file.clone(), passphrase, self.stop)? {
                    Some(key) => self.ring.push(Rc::new(key)),
                    None => {
                        self.shut += 1;
                        // Only a passphrase that is known to be right says anything of a key.
                        if !self.ring.is_empty() {
                            self.record.remember_shut(sum);
                        }
                    }
                }
            }
            tried.push(file);
        }
        let key = match self.ring.first() {
            Some(key) => Rc::clone(key),
            None if self.options.afresh || tried.is_empty() => {
                self.ring.push(Rc::new(Key::new(passphrase, self.stop)?));
                Rc::clone(&self.ring[0])
            }
            None => return Err(RemoteError::WrongPassphrase { keys: tried.len() }),
        };
        if own_file.as_ref() != Some(&key.file) {
            self.put_whole(&format!("{DEVICES}{}/{KEY}", me.0), &key.file)?;
        }
        self.record.key = Some(hex(&key.file));
        self.own_key = Some(key);
        Ok(())
    }

    /// Whose keys are looked at: the own one, those of the phones that are known, and in turn a few of the others.
    fn writers_of_keys(&mut self, listed: &RemoteListing) -> Result<Vec<DeviceId>, RemoteError> {
        let me = self.journal.device();
        let version = self.journal.version()?;
        let others = listed.keys.keys().copied().filter(|writer| *writer != me);
        let (known, unknown): (Vec<_>, Vec<_>) = others.partition(|writer| version.contains_key(writer));
        let turn = self.record.turn.checked_rem(unknown.len()).unwrap_or(0);
        let few = unknown.len().min(MOST_STRANGE_KEYS);
        self.record.turn = if unknown.len() > few { turn + few } else { 0 };
        let own = listed.keys.contains_key(&me).then_some(me);
        let in_turn = unknown.iter().copied().cycle().skip(turn).take(few);
        Ok(own.into_iter().chain(known).chain(in_turn).collect())
    }

    /// The file of a key; `None` where it is gone, or too long for one.
    fn read_key(&mut self, entry: &Entry) -> Result<Option<Vec<u8>>, RemoteError> {
        if entry.size > MOST_KEY { Ok(None) } else { self.get(&entry.path, MOST_KEY) }
    }

    /// Takes in what others put there; and what this device did, where an older copy of its studio came back. Phones that are
    /// known come first: whatever a stranger lays there, it takes nothing from them.
    fn fetch_events(&mut self, there: &There) -> Result<(), RemoteError> {
        let version = self.journal.version()?;
        let (known, unknown): (Vec<_>, Vec<_>) = there.devices().partition(|device| version.contains_key(device));
        for device in known {
            self.fetch_of(device, version[&device], there, MOST_FAILURES)?;
        }
        for device in unknown {
            let left = MOST_STRANGE_FAILURES.saturating_sub(self.strange_failures).min(MOST_FAILURES);
            if left == 0 {
                break;
            }
            self.strange_failures += self.fetch_of(device, 0, there, left)?;
        }
        Ok(())
    }

    /// Takes in the events of a device after `have`; says how many of its segments were of no use.
    fn fetch_of(&mut self, device: DeviceId, mut have: i64, there: &There, most: usize) -> Result<usize, RemoteError> {
        let mut useless = BTreeSet::new();
        while useless.len() < most {
            let plan = there.chain(device, have, MOST_PLANNED, &useless);
            if plan.is_empty() {
                let firsts = there.segments_of(device).iter().filter(|segment| segment.proven);
                let next = firsts.map(|segment| segment.name.first).filter(|first| *first > have).min();
                if let (true, Some(next)) = (useless.is_empty(), next) {
                    let device = device.0.to_string();
                    self.outcome.file_errors.push(RemoteError::Missing { device, first: have + 1, last: next - 1 });
                }
                break;
            }
            self.so_far.of += plan.len();
            'plan: for some in batches(&plan, |segment| (segment.file.size, segment.proven)) {
                let files = self.get_many(some.iter().map(|segment| &segment.file))?;
                for (segment, file) in some.iter().zip(files) {
                    let events = self.events_of(segment, file);
                    self.step()?;
                    let events = match events {
                        Ok(events) => events,
                        Err(trouble) => {
                            self.outcome.file_errors.extend(trouble);
                            useless.insert(segment.file.path.clone());
                            break 'plan;
                        }
                    };
                    // What is refused leaves a gap, and is asked for again next time.
                    let ingested = self.journal.ingest_events(&events)?;
                    self.outcome.events_in += ingested.new;
                    if let Some((device, seq)) = ingested.forked() {
                        self.outcome.file_errors.push(StoreError::Forked { device, seq }.into());
                        return Ok(useless.len() + 1);
                    }
                    self.outcome.file_errors.extend(ingested.refusals().into_iter().map(RemoteError::Refused));
                    have = segment.name.last;
                    self.record.segments.insert(segment.file.path.clone(), segment.file.size);
                }
            }
        }
        Ok(useless.len())
    }

    /// The events of a segment that was fetched; else what is wrong with it, where that is to be told.
    fn events_of(&mut self, segment: &RemoteSegment, file: Option<Vec<u8>>) -> Result<Vec<Event>, Option<RemoteError>> {
        let name = segment.name.to_string();
        let Some(bytes) = file else {
            self.gone = true;
            return Err(self.relisted.then(|| damaged(&name, Wrong::Cut)));
        };
        let Some(bytes) = self.open(bytes, &segment.file.path) else {
            self.strange += usize::from(!segment.proven);
            return Err(segment.proven.then(|| damaged(&name, Wrong::Packing)));
        };
        segment::unpack(&segment.name, &bytes).map_err(|error| Some(error.into()))
    }

    /// Puts there what this device knows and the place does not. For its own events it relies on nobody else: another's file
    /// may be cut, and that other may be gone. What others say that they have counts once it was read.
    fn put_events(&mut self, there: &mut There) -> Result<(), RemoteError> {
        let me = self.journal.device();
        for (device, have) in self.journal.version()? {
            let mine = device == me;
            let counts = |segment: &RemoteSegment| segment.name.device == device && (!mine || segment.writer == me);
            let reached = covered(&self.effective(there, device, counts));
            let forked = self.check_own(device, have, there)?;
            if forked && mine {
                continue;
            }
            if !mine {
                self.check_others(device, have, there)?;
            }
            let effective = self.effective(there, device, counts);
            let reached = if mine { reached } else { covered(&effective) };
            self.older |= reached < self.reached_before(device, mine);
            for (first, last) in gaps(&effective, have, me) {
                self.outcome.events_out += self.put_segments(device, first, last, there)?;
            }
            if !forked {
                self.remove_superseded(device, there)?;
            }
        }
        Ok(())
    }

    /// The segments of a device that were read whole and lie there still, by their first events.
    fn effective(
        &self,
        there: &There,
        device: DeviceId,
        counts: impl Fn(&RemoteSegment) -> bool,
    ) -> Vec<RemoteSegment> {
        let known = |segment: &&RemoteSegment| self.record.segments.get(&segment.file.path) == Some(&segment.file.size);
        let segments = there.segments_of(device).iter().filter(known).filter(|segment| counts(segment));
        let mut effective: Vec<RemoteSegment> = segments.cloned().collect();
        effective.sort_by_key(|segment| (segment.name.first, std::cmp::Reverse(segment.name.last)));
        effective
    }

    /// How far the events of a device lay there when this phone was there last.
    fn reached_before(&self, device: DeviceId, mine: bool) -> i64 {
        let me = self.journal.device();
        let entries = self.before.segments.iter().map(|(path, size)| Entry { path: path.clone(), size: *size });
        let lay = RemoteListing::of(entries.collect()).admit(me, self.sealed().then_some(self.ring.as_slice()));
        let of = lay.segments_of(device).iter().filter(|segment| !mine || segment.writer == me);
        covered(&of.cloned().collect::<Vec<_>>())
    }

    /// Looks at what lies in this device's own folder and was not yet read, the newest first, or at all of it where that is asked
    /// for. What is damaged does not count, and so is put again. Says whether another device writes under this one's name.
    fn check_own(&mut self, device: DeviceId, have: i64, there: &There) -> Result<bool, RemoteError> {
        let me = self.journal.device();
        let mut own: Vec<RemoteSegment> = there
            .segments_of(device)
            .iter()
            .filter(|segment| segment.writer == me && segment.name.first <= have)
            .filter(|segment| self.options.check || !self.record.segments.contains_key(&segment.file.path))
            .cloned()
            .collect();
        own.sort_by_key(|segment| std::cmp::Reverse((segment.proven, segment.name.last)));
        if !self.options.check {
            own.truncate(MOST_CHECKS);
        }
        self.so_far.of += own.len();
        let mut forked = false;
        for segment in own {
            let path = segment.file.path.clone();
            let was_known = self.record.segments.remove(&path).is_some();
            let file = self.get(&path, segment.file.size)?;
            let events = self.events_of(&segment, file);
            self.step()?;
            match events {
                Ok(lies) => match self.first_that_differs(&segment, &lies)? {
                    None if segment.name.last <= have => {
                        self.record.segments.insert(path, segment.file.size);
                    }
                    None => {}
                    Some(seq) => {
                        self.outcome.file_errors.push(StoreError::Forked { device, seq }.into());
                        forked = true;
                    }
                },
                // Written before the app went back to an older version.
                Err(Some(newer @ RemoteError::Newer)) => self.outcome.file_errors.push(newer),
                Err(_) => self.outcome.repaired += usize::from(segment.proven || was_known),
            }
        }
        // Once this device has put its events there, a file that contradicts them stops it no more.
        Ok(forked && !self.before.segments.keys().any(|path| path.starts_with(&format!("{DEVICES}{}/", me.0))))
    }

    /// Looks whether others have put there what is known here of a device: then it need not be put once more.
    fn check_others(&mut self, device: DeviceId, have: i64, there: &There) -> Result<(), RemoteError> {
        let mut useless = BTreeSet::new();
        for _ in 0..MOST_CHECKS {
            let reached = covered(&self.effective(there, device, |_| true));
            if reached >= have || useless.len() >= MOST_FAILURES {
                break;
            }
            let Some(segment) = there.chain(device, reached, 1, &useless).first().copied().cloned() else { break };
            self.so_far.of += 1;
            let file = self.get(&segment.file.path, segment.file.size)?;
            let events = self.events_of(&segment, file);
            self.step()?;
            match events {
                Ok(lies) if self.first_that_differs(&segment, &lies)?.is_none() => {
                    self.record.segments.insert(segment.file.path, segment.file.size);
                }
                _ => {
                    useless.insert(segment.file.path);
                }
            }
        }
        Ok(())
    }

    /// The first event of a segment that is another here.
    fn first_that_differs(&self, segment: &RemoteSegment, lies: &[Event]) -> Result<Option<i64>, RemoteError> {
        let Name { device, first, last } = segment.name;
        let here = self.journal.events(device, first, last)?;
        Ok(lies.iter().zip(&here).find(|(lies, here)| lies != here).map(|(lies, _)| lies.seq))
    }

    /// Puts the events of a device there, in as few segments as hold them; says how many there were.
    fn put_segments(
        &mut self,
        device: DeviceId,
        mut first: i64,
        last: i64,
        there: &mut There,
    ) -> Result<usize, RemoteError> {
        let writer = self.journal.device();
        let mut put = 0;
        while first <= last {
            let until = last.min(first + MOST_EVENTS as i64 - 1);
            let events = self.journal.events(device, first, until)?;
            let segment = segment::pack(&events).map_err(of_own)?;
            let name = segment.name;
            let path = untagged(writer, &name);
            let (path, bytes) = match &self.own_key {
                Some(key) => (format!("{path}.{}{SEALED}", key.tag(&path)), key.seal(&segment.bytes)?),
                None => (path, segment.bytes),
            };
            self.so_far.of += 1;
            self.put_whole(&path, &bytes)?;
            self.step()?;
            let file = Entry { path, size: bytes.len() as u64 };
            self.record.segments.insert(file.path.clone(), file.size);
            there.add(RemoteSegment { writer, name, file, proven: true });
            put += usize::try_from(name.last - name.first + 1).unwrap_or_default();
            first = name.last + 1;
        }
        Ok(put)
    }

    /// Removes segments of this device's whose events lie in a larger one of its own, and forgets those that are gone. Whoever
    /// is ended before that finds both, and that is no harm: the larger one is read.
    fn remove_superseded(&mut self, device: DeviceId, there: &There) -> Result<(), RemoteError> {
        let me = self.journal.device();
        let own = self.effective(there, device, |segment| segment.writer == me);
        let holds = |large: &Name, small: &Name| large.first <= small.first && small.last <= large.last;
        let mut largest: Vec<&RemoteSegment> = Vec::new();
        for segment in &own {
            // Sorted by their beginnings, the longer one first.
            if largest.last().is_none_or(|large| !holds(&large.name, &segment.name)) {
                largest.push(segment);
            }
        }
        let superseded = |segment: &&RemoteSegment| {
            segment.writer == me
                && largest.iter().any(|large| holds(&large.name, &segment.name) && large.file.path != segment.file.path)
        };
        for segment in there.segments_of(device).iter().filter(superseded) {
            self.go_on()?;
            if !self.remote.remove(&segment.file.path)? {
                break;
            }
            self.record.segments.remove(&segment.file.path);
        }
        let of_device = format!("/journal/{}/", device.0);
        self.record.segments.retain(|path, size| !path.contains(&of_device) || there.has(path, *size));
        Ok(())
    }

    /// Photographs both ways.
    fn photographs(&mut self, there: &There) -> Result<(), RemoteError> {
        let named = self.journal.photographs()?;
        let version = self.journal.version()?;
        let me = self.journal.device();
        let lying = |sha256: &str| -> Vec<Picture> {
            let names: Vec<String> = match &self.ring[..] {
                [] => vec![sha256.to_owned()],
                ring => ring.iter().map(|key| key.name_of(sha256)).collect(),
            };
            there.pictures(&names, me, |writer| version.contains_key(&writer))
        };

        // Where they are to be looked at, and whether they are here.
        let mut to_read: Vec<(String, bool, Vec<Picture>)> = Vec::new();
        let mut to_put = Vec::new();
        for (sha256, size) in named {
            let known = self.record.photographs.get(&sha256);
            let lies = known.filter(|(path, size)| there.has(path, *size));
            let was_there = self.before.photographs.get(&sha256);
            self.older |= lies.is_none() && was_there.is_some_and(|(path, _)| path.ends_with(SEALED) == self.sealed());
            let here = size.is_some();
            let own = lies.filter(|(path, _)| path.starts_with(&format!("{DEVICES}{}/", me.0)));
            match (here, lies, own) {
                (true, Some(_), Some((path, size))) if self.options.check => {
                    let file = Entry { path: path.clone(), size: *size };
                    to_read.push((sha256, here, vec![Picture { writer: me, file }]));
                }
                (true, Some(_), _) => {}
                _ => {
                    let found = lying(&sha256);
                    match (here, found.is_empty()) {
                        (true, true) => to_put.push(sha256),
                        (false, true) => self.outcome.photographs_missing += 1,
                        (_, false) => to_read.push((sha256, here, found)),
                    }
                }
            }
        }
        if self.options.metered {
            self.outcome.photographs_waiting = to_put.len() + to_read.len();
            return Ok(());
        }
        self.so_far.of += to_put.len() + to_read.len();
        for some in batches(&to_read, |(_, _, found)| (found[0].file.size, true)) {
            let files = self.get_many(some.iter().map(|(_, _, found)| &found[0].file))?;
            for ((sha256, here, found), first) in some.iter().zip(files) {
                if !self.read_photograph(sha256, *here, found, first)? && *here {
                    let again = self.record.photographs.remove(sha256).is_some();
                    self.put_photograph(sha256)?;
                    self.outcome.repaired += usize::from(again);
                    self.outcome.photographs_out += usize::from(!again);
                }
                self.step()?;
            }
        }
        for sha256 in to_put {
            self.put_photograph(&sha256)?;
            self.step()?;
            self.outcome.photographs_out += 1;
        }
        Ok(())
    }

    /// Reads a photograph where it may lie, first what was fetched already, and keeps it unless it is here. Says whether it is
    /// there.
    fn read_photograph(
        &mut self,
        sha256: &str,
        here: bool,
        found: &[Picture],
        first: Option<Vec<u8>>,
    ) -> Result<bool, RemoteError> {
        let mut first = Some(first);
        for Picture { file, .. } in found {
            let bytes = match first.take() {
                Some(bytes) => bytes,
                None => self.get(&file.path, file.size.min(MOST_FILE))?,
            };
            let picture = bytes.and_then(|bytes| self.open(bytes, &file.path));
            if let Some(bytes) = picture.filter(|bytes| sha256_of(bytes) == sha256)
                && (here || self.journal.adopt(sha256, &bytes)?)
            {
                self.outcome.photographs_in += usize::from(!here);
                self.record.photographs.insert(sha256.to_owned(), (file.path.clone(), file.size));
                return Ok(true);
            }
            if !here {
                self.outcome.file_errors.push(RemoteError::DamagedPhotograph { file: file.path.clone() });
            }
        }
        Ok(false)
    }

    fn put_photograph(&mut self, sha256: &str) -> Result<(), RemoteError> {
        let picture = self.journal.photograph(sha256)?;
        let folder = format!("{DEVICES}{}/photos/", self.journal.device().0);
        let (path, bytes) = match &self.own_key {
            Some(key) => (format!("{folder}{}{PICTURE}{SEALED}", key.name_of(sha256)), key.seal(&picture)?),
            None => (format!("{folder}{sha256}{PICTURE}"), picture),
        };
        let size = bytes.len() as u64;
        self.put(&path, bytes)?;
        self.record.photographs.insert(sha256.to_owned(), (path, size));
        Ok(())
    }

    /// Removes what this device put there before the place was sealed, once it lies there sealed.
    fn remove_open(&mut self, there: &There) -> Result<(), RemoteError> {
        let me = self.journal.device();
        let before = RemoteListing::of(there.open.clone()).admit(me, None);
        let own = |segment: &RemoteSegment| segment.writer == me;
        let mut sealed: Vec<&Entry> = Vec::new();
        for device in before.devices() {
            let reached = covered(&self.effective(there, device, own));
            let done = before.segments_of(device).iter().filter(|segment| segment.name.last <= reached);
            sealed.extend(done.map(|segment| &segment.file));
        }
        sealed.extend(before.pictures_where(|sha256| {
            self.record.photographs.get(sha256).is_some_and(|(path, _)| path.ends_with(SEALED))
        }));
        let mut files = 0;
        for file in sealed {
            self.go_on()?;
            if files > 0 || !self.remote.remove(&file.path)? {
                files += 1;
            }
            self.record.segments.remove(&file.path);
        }
        if files > 0 {
            self.outcome.file_errors.push(RemoteError::LeftUnsealed { files });
        }
        Ok(())
    }

    /// A file as it was before it was sealed; `None` where none of the keys opens it.
    fn open(&self, bytes: Vec<u8>, path: &str) -> Option<Vec<u8>> {
        if !path.ends_with(SEALED) {
            return Some(bytes);
        }
        self.ring.iter().find_map(|key| key.unseal(&bytes))
    }

    /// A file; `None` also where it is longer than it may be.
    fn get(&mut self, path: &str, most: u64) -> Result<Option<Vec<u8>>, RemoteError> {
        self.go_on()?;
        let file = match self.remote.get(path, most.min(MOST_FILE)) {
            Err(RemoteError::TooLong) => None,
            other => other?,
        };
        self.so_far.bytes += file.as_ref().map_or(0, |bytes| bytes.len() as u64);
        Ok(file)
    }

    /// The same of several files, none of them longer than it was listed.
    fn get_many<'e>(&mut self, files: impl Iterator<Item = &'e Entry>) -> Result<Vec<Option<Vec<u8>>>, RemoteError> {
        self.go_on()?;
        let wanted: Vec<(&str, u64)> = files.map(|file| (file.path.as_str(), file.size.min(MOST_FILE))).collect();
        let files = self.remote.get_many(&wanted)?;
        self.so_far.bytes += files.iter().flatten().map(|bytes| bytes.len() as u64).sum::<u64>();
        Ok(files)
    }

    fn put(&mut self, path: &str, bytes: Vec<u8>) -> Result<(), RemoteError> {
        self.go_on()?;
        self.so_far.bytes += bytes.len() as u64;
        self.remote.put(path, bytes)
    }

    /// Puts a small file there and reads it back: only then does it count.
    fn put_whole(&mut self, path: &str, bytes: &[u8]) -> Result<(), RemoteError> {
        self.put(path, bytes.to_vec())?;
        if self.get(path, bytes.len() as u64)?.as_deref() == Some(bytes) {
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

/// How far events are held from the first on without a gap, by segments in any order.
fn covered(segments: &[RemoteSegment]) -> i64 {
    let mut names: Vec<Name> = segments.iter().map(|segment| segment.name).collect();
    names.sort_by_key(|name| name.first);
    names.iter().fold(0, |reached, name| if name.first <= reached + 1 { reached.max(name.last) } else { reached })
}

/// What of the events from 1 to `have` is held by none of these segments, which are sorted by their beginnings. Where `me` has many
/// small segments at the end, these are put as one together with what follows.
fn gaps(effective: &[RemoteSegment], have: i64, me: DeviceId) -> Vec<(i64, i64)> {
    let mut gaps = Vec::new();
    let mut reached = 0;
    for RemoteSegment { name, .. } in effective {
        if name.first > reached + 1 {
            gaps.push((reached + 1, name.first - 1));
        }
        reached = reached.max(name.last);
    }
    if reached < have {
        let mut first = reached + 1;
        let mut small = 0;
        for segment in effective.iter().rev() {
            if segment.name.last + 1 == first && segment.writer == me && is_small(segment) {
                first = segment.name.first;
                small += 1;
            }
        }
        gaps.push((if small >= MOST_SMALL { first } else { reached + 1 }, have));
    }
    gaps
}

fn is_small(segment: &RemoteSegment) -> bool {
    segment.name.last - segment.name.first + 1 < MOST_EVENTS as i64 && segment.file.size < FULL
}

/// Files in their order, as many together as may be asked for at once; one that is not proven by itself.
fn batches<T>(files: &[T], size: impl Fn(&T) -> (u64, bool)) -> Vec<&[T]> {
    let mut batches = Vec::new();
    let mut begin = 0;
    let mut bytes = 0;
    for (at, file) in files.iter().enumerate() {
        let (more, proven) = size(file);
        let alone = !proven || at > begin && !size(&files[at - 1]).1;
        if at > begin && (alone || at - begin == AT_ONCE || bytes + more > BYTES_AT_ONCE) {
            batches.push(&files[begin..at]);
            (begin, bytes) = (at, 0);
        }
        bytes = bytes.saturating_add(more);
    }
    if begin < files.len() {
        batches.push(&files[begin..]);
    }
    batches
}

/// This device's own events could not be packed: its journal is not what it should be.
fn of_own(error: SegmentError) -> RemoteError {
    RemoteError::Store(StoreError::Damaged { details: error.to_string() })
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

fn bytes_of(hex: &str) -> Option<Vec<u8>> {
    let digits = hex.as_bytes().chunks(2);
    digits.map(|two| u8::from_str_radix(std::str::from_utf8(two).ok()?, 16).ok()).collect()
}
