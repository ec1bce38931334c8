//! A storage that fails as told: SQLite's own file layer with a plan of faults laid over it.
//!
//! It becomes the layer of the whole process and lets through untouched what lies outside a folder with a plan. What was
//! written and not yet synced is remembered, so that when the power goes each such write is lost, torn or kept by chance.
#![allow(unsafe_code, reason = "a file layer of SQLite's is a table of C functions; the rest of the tests stay safe")]

use std::collections::BTreeMap;
use std::ffi::{CStr, c_char, c_int, c_void};
use std::fs;
use std::mem;
use std::path::{Path, PathBuf};
use std::ptr;
use std::sync::atomic::{AtomicPtr, Ordering};
use std::sync::{Mutex, MutexGuard, Once, PoisonError};

use fastrand::Rng;
use rusqlite::ffi::{self, sqlite3_file, sqlite3_int64, sqlite3_io_methods, sqlite3_vfs};

/// What goes wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// A call of this sort fails with this code of SQLite's, once.
    Fails(Call, c_int),
    /// A write does only its first part, then fails, once.
    Tears,
    /// At a write or a sync the power goes: every later call fails, and what was not synced is lost, torn or kept by chance.
    PowerGoes,
    /// As [`Fault::PowerGoes`], on a drive that had said of every sync that it was done, and had done none.
    PowerGoesAfterLies,
}

/// A sort of call.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Call {
    /// Reading a part of a file.
    Read,
    /// Writing a part of a file.
    Write,
    /// Cutting a file.
    Truncate,
    /// Bringing a file to the disk.
    Sync,
    /// Opening a file.
    Open,
    /// Removing a file.
    Delete,
    /// The memory that processes share beside a log.
    Share,
}

enum Change {
    Write(u64, Vec<u8>),
    Truncate(u64),
}

#[derive(Default)]
struct Disk {
    synced: Vec<u8>,
    since: Vec<Change>,
}

struct Plan {
    fault: Fault,
    /// How many calls that the fault concerns come before it.
    spared: u64,
    calls: u64,
    happened: bool,
    rng: Rng,
    disks: BTreeMap<PathBuf, Disk>,
}

/// Every folder with a plan.
static PLANS: Mutex<BTreeMap<PathBuf, Plan>> = Mutex::new(BTreeMap::new());

fn plans() -> MutexGuard<'static, BTreeMap<PathBuf, Plan>> {
    PLANS.lock().unwrap_or_else(PoisonError::into_inner)
}

/// A plan for the files directly in a folder, while it lives.
pub struct Faulty {
    folder: PathBuf,
}

impl Faulty {
    /// From now on the storage under `folder` fails: `fault` comes after `spared` of the calls that it concerns.
    pub fn storage(folder: &Path, fault: Fault, spared: u64, seed: u64) -> Faulty {
        static REGISTERED: Once = Once::new();
        REGISTERED.call_once(register);
        let folder = folder.canonicalize().unwrap();
        let rng = Rng::with_seed(seed);
        let plan = Plan { fault, spared, calls: 0, happened: false, rng, disks: BTreeMap::new() };
        assert!(plans().insert(folder.clone(), plan).is_none(), "one plan for a folder");
        Faulty { folder }
    }

    /// Whether the fault has happened.
    pub fn has_happened(&self) -> bool {
        plans()[&self.folder].happened
    }

    /// Ends the plan when no file is open any more. After the power went, the files are then what was on the disk.
    pub fn end(self) -> bool {
        let mut plan = plans().remove(&self.folder).unwrap();
        if plan.happened && matches!(plan.fault, Fault::PowerGoes | Fault::PowerGoesAfterLies) {
            for (path, disk) in mem::take(&mut plan.disks) {
                let left = disk.after_the_power_went(&mut plan.rng);
                if path.exists() {
                    fs::write(&path, left).unwrap();
                }
                // The shared memory was memory.
                let shared = PathBuf::from(format!("{}-shm", path.display()));
                if shared.exists() {
                    fs::remove_file(shared).unwrap();
                }
            }
        }
        plan.happened
    }
}

impl Disk {
    fn after_the_power_went(mut self, rng: &mut Rng) -> Vec<u8> {
        for change in mem::take(&mut self.since) {
            match (change, rng.u8(..3)) {
                (_, 0) => {}
                (Change::Write(at, bytes), 1) => {
                    let part = rng.usize(..=bytes.len());
                    write(&mut self.synced, at, &bytes[..part]);
                }
                (change, _) => self.apply(change),
            }
        }
        self.synced
    }

    fn apply(&mut self, change: Change) {
        match change {
            Change::Write(at, bytes) => write(&mut self.synced, at, &bytes),
            Change::Truncate(length) => self.synced.truncate(length as usize),
        }
    }
}

fn write(file: &mut Vec<u8>, at: u64, bytes: &[u8]) {
    let at = at as usize;
    file.resize(file.len().max(at + bytes.len()), 0);
    file[at..at + bytes.len()].copy_from_slice(bytes);
}

/// What the plan says to a call.
enum Verdict {
    Go,
    Fail(c_int),
    Tear(usize),
}

impl Plan {
    fn verdict(&mut self, call: Call, length: usize) -> Verdict {
        let is_out = self.happened && matches!(self.fault, Fault::PowerGoes | Fault::PowerGoesAfterLies);
        if is_out {
            return Verdict::Fail(ffi::SQLITE_IOERR);
        }
        let concerned = match self.fault {
            Fault::Fails(what, _) => what == call,
            Fault::Tears => call == Call::Write,
            Fault::PowerGoes | Fault::PowerGoesAfterLies => matches!(call, Call::Write | Call::Sync),
        };
        if !concerned || self.happened {
            return Verdict::Go;
        }
        self.calls += 1;
        if self.calls <= self.spared {
            return Verdict::Go;
        }
        self.happened = true;
        match self.fault {
            Fault::Fails(_, code) => Verdict::Fail(code),
            Fault::Tears => Verdict::Tear(self.rng.usize(..length.max(1))),
            Fault::PowerGoes | Fault::PowerGoesAfterLies => Verdict::Fail(ffi::SQLITE_IOERR),
        }
    }
}

/// The file as SQLite holds it; that of the layer below lies right behind it.
#[repr(C)]
struct File {
    base: sqlite3_file,
    /// The path, where it lies in a folder with a plan.
    path: *mut PathBuf,
}

/// The layer below. Set once, before ours is registered.
static BELOW: AtomicPtr<sqlite3_vfs> = AtomicPtr::new(ptr::null_mut());

fn below() -> *mut sqlite3_vfs {
    BELOW.load(Ordering::Acquire)
}

fn register() {
    // SAFETY: SQLite gives its own layer, which lives as long as the process; ours is leaked and does too.
    unsafe {
        ffi::sqlite3_initialize();
        let own = ffi::sqlite3_vfs_find(ptr::null());
        BELOW.store(own, Ordering::Release);
        let layer = Box::leak(Box::new(sqlite3_vfs {
            szOsFile: size_of::<File>() as c_int + (*own).szOsFile,
            pNext: ptr::null_mut(),
            zName: c"faulty".as_ptr(),
            xOpen: Some(open),
            xDelete: Some(delete),
            ..*own
        }));
        // All else is the layer below's own, which looks at nothing but the arguments and its own data.
        assert_eq!(ffi::sqlite3_vfs_register(layer, 1), ffi::SQLITE_OK);
    }
}

/// The file of the layer below.
///
/// # Safety
/// `file` was opened by [`open`].
unsafe fn inner(file: *mut sqlite3_file) -> *mut sqlite3_file {
    // SAFETY: SQLite gave us room for both, one behind the other; `File` is as aligned as a pointer.
    unsafe { file.cast::<File>().add(1).cast() }
}

/// Asks the plan of the file, if it has one.
///
/// # Safety
/// `file` was opened by [`open`].
unsafe fn ask<T>(file: *mut sqlite3_file, ask: impl FnOnce(&mut Plan, &Path) -> T) -> Option<T> {
    // SAFETY: the path is ours until the file is closed.
    let path = unsafe { (*file.cast::<File>()).path.as_ref()? };
    plans().get_mut(path.parent()?).map(|plan| ask(plan, path))
}

unsafe extern "C" fn open(
    _: *mut sqlite3_vfs,
    name: ffi::sqlite3_filename,
    file: *mut sqlite3_file,
    flags: c_int,
    out: *mut c_int,
) -> c_int {
    // SAFETY: SQLite gives room of the size we asked for, and a name that ends, or none for a temporary file.
    unsafe {
        let ours = file.cast::<File>();
        (*ours).base.pMethods = ptr::null();
        (*ours).path = ptr::null_mut();
        let path = (!name.is_null()).then(|| PathBuf::from(CStr::from_ptr(name).to_string_lossy().into_owned()));
        let planned = path.filter(|path| path.parent().is_some_and(|folder| plans().contains_key(folder)));
        if let Some(path) = planned {
            let mut plans = plans();
            let plan = path.parent().and_then(|folder| plans.get_mut(folder)).unwrap();
            if let Verdict::Fail(code) = plan.verdict(Call::Open, 0) {
                return if code == ffi::SQLITE_IOERR { ffi::SQLITE_CANTOPEN } else { code };
            }
            // What was there before the plan is on the disk.
            plan.disks
                .entry(path.clone())
                .or_insert_with(|| Disk { synced: fs::read(&path).unwrap_or_default(), since: Vec::new() });
            (*ours).path = Box::into_raw(Box::new(path));
        }
        let code = (*below()).xOpen.unwrap()(below(), name, inner(file), flags, out);
        if code == ffi::SQLITE_OK {
            (*ours).base.pMethods = &raw const METHODS;
        } else if !(*ours).path.is_null() {
            drop(Box::from_raw((*ours).path));
        }
        code
    }
}

unsafe extern "C" fn delete(_: *mut sqlite3_vfs, name: *const c_char, sync_folder: c_int) -> c_int {
    // SAFETY: SQLite gives a name that ends.
    unsafe {
        let path = PathBuf::from(CStr::from_ptr(name).to_string_lossy().into_owned());
        let mut plans = plans();
        if let Some(plan) = path.parent().and_then(|folder| plans.get_mut(folder)) {
            if let Verdict::Fail(_) = plan.verdict(Call::Delete, 0) {
                return ffi::SQLITE_IOERR_DELETE;
            }
            plan.disks.remove(&path);
        }
        drop(plans);
        (*below()).xDelete.unwrap()(below(), name, sync_folder)
    }
}

static METHODS: sqlite3_io_methods = sqlite3_io_methods {
    iVersion: 2,
    xClose: Some(close),
    xRead: Some(read),
    xWrite: Some(write_part),
    xTruncate: Some(truncate),
    xSync: Some(sync),
    xFileSize: Some(file_size),
    xLock: Some(lock),
    xUnlock: Some(unlock),
    xCheckReservedLock: Some(check_reserved_lock),
    xFileControl: Some(file_control),
    xSectorSize: Some(sector_size),
    xDeviceCharacteristics: Some(device_characteristics),
    xShmMap: Some(shm_map),
    xShmLock: Some(shm_lock),
    xShmBarrier: Some(shm_barrier),
    xShmUnmap: Some(shm_unmap),
    xFetch: None,
    xUnfetch: None,
};

/// Calls the layer below with its own file.
macro_rules! pass {
    ($file:ident, $method:ident $(, $argument:expr)*) => {{
        let inner = inner($file);
        ((*(*inner).pMethods).$method).unwrap()(inner $(, $argument)*)
    }};
}

/// A call that the plan has no say in.
macro_rules! passing {
    ($($name:ident = $method:ident($($argument:ident: $kind:ty),*) $(-> $answer:ty)?;)*) => {$(
        unsafe extern "C" fn $name(file: *mut sqlite3_file $(, $argument: $kind)*) $(-> $answer)? {
            // SAFETY: SQLite calls with a file that we opened; the arguments go on as they came.
            unsafe { pass!(file, $method $(, $argument)*) }
        }
    )*};
}

passing! {
    file_size = xFileSize(size: *mut sqlite3_int64) -> c_int;
    lock = xLock(level: c_int) -> c_int;
    unlock = xUnlock(level: c_int) -> c_int;
    check_reserved_lock = xCheckReservedLock(out: *mut c_int) -> c_int;
    file_control = xFileControl(what: c_int, with: *mut c_void) -> c_int;
    sector_size = xSectorSize() -> c_int;
    device_characteristics = xDeviceCharacteristics() -> c_int;
    shm_lock = xShmLock(offset: c_int, count: c_int, flags: c_int) -> c_int;
    shm_barrier = xShmBarrier();
    shm_unmap = xShmUnmap(remove: c_int) -> c_int;
}

unsafe extern "C" fn close(file: *mut sqlite3_file) -> c_int {
    // SAFETY: the last call with this file; the path was ours.
    unsafe {
        let path = (*file.cast::<File>()).path;
        if !path.is_null() {
            drop(Box::from_raw(path));
        }
        pass!(file, xClose)
    }
}

unsafe extern "C" fn read(file: *mut sqlite3_file, into: *mut c_void, length: c_int, at: sqlite3_int64) -> c_int {
    // SAFETY: as `passing!`.
    unsafe {
        match ask(file, |plan, _| plan.verdict(Call::Read, 0)) {
            Some(Verdict::Fail(code)) => code,
            _ => pass!(file, xRead, into, length, at),
        }
    }
}

unsafe extern "C" fn write_part(
    file: *mut sqlite3_file,
    from: *const c_void,
    length: c_int,
    at: sqlite3_int64,
) -> c_int {
    // SAFETY: `from` has `length` bytes.
    unsafe {
        let bytes = std::slice::from_raw_parts(from.cast::<u8>(), length as usize);
        let verdict = ask(file, |plan, path| {
            let verdict = plan.verdict(Call::Write, bytes.len());
            let done = match verdict {
                Verdict::Go => bytes.len(),
                Verdict::Tear(length) => length,
                Verdict::Fail(_) => 0,
            };
            if let Some(disk) = plan.disks.get_mut(path) {
                disk.since.push(Change::Write(at as u64, bytes[..done].to_vec()));
            }
            verdict
        });
        match verdict {
            Some(Verdict::Fail(code)) => code,
            Some(Verdict::Tear(done)) => {
                pass!(file, xWrite, from, done as c_int, at);
                ffi::SQLITE_IOERR_WRITE
            }
            _ => pass!(file, xWrite, from, length, at),
        }
    }
}

unsafe extern "C" fn truncate(file: *mut sqlite3_file, length: sqlite3_int64) -> c_int {
    // SAFETY: as `passing!`.
    unsafe {
        let verdict = ask(file, |plan, path| {
            let verdict = plan.verdict(Call::Truncate, 0);
            if let (Verdict::Go, Some(disk)) = (&verdict, plan.disks.get_mut(path)) {
                disk.since.push(Change::Truncate(length as u64));
            }
            verdict
        });
        match verdict {
            Some(Verdict::Fail(code)) => code,
            _ => pass!(file, xTruncate, length),
        }
    }
}

unsafe extern "C" fn sync(file: *mut sqlite3_file, flags: c_int) -> c_int {
    // SAFETY: as `passing!`. Not passed on: no power goes here but by the plan, and the tests run much faster.
    unsafe {
        let verdict = ask(file, |plan, path| {
            let verdict = plan.verdict(Call::Sync, 0);
            let lies = plan.fault == Fault::PowerGoesAfterLies;
            if let (Verdict::Go, false, Some(disk)) = (&verdict, lies, plan.disks.get_mut(path)) {
                for change in mem::take(&mut disk.since) {
                    disk.apply(change);
                }
            }
            verdict
        });
        match verdict {
            Some(Verdict::Fail(code)) => code,
            Some(_) => ffi::SQLITE_OK,
            None => pass!(file, xSync, flags),
        }
    }
}

unsafe extern "C" fn shm_map(
    file: *mut sqlite3_file,
    region: c_int,
    size: c_int,
    extend: c_int,
    out: *mut *mut c_void,
) -> c_int {
    // SAFETY: as `passing!`.
    unsafe {
        match ask(file, |plan, _| plan.verdict(Call::Share, 0)) {
            Some(Verdict::Fail(code)) => code,
            _ => pass!(file, xShmMap, region, size, extend, out.cast()),
        }
    }
}
