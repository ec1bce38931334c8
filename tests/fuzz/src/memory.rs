//! How much memory a piece of work takes at once: an allocator that counts, each thread for itself.
#![allow(unsafe_code, reason = "an allocator is unsafe; this one hands every call on to the system's")]

use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;

thread_local! {
    // Of this thread: the bytes it holds, and the most it held since it was last asked. Freed elsewhere counts there.
    static HELD: Cell<isize> = const { Cell::new(0) };
    static MOST: Cell<isize> = const { Cell::new(0) };
}

/// The system's allocator, counted. What C code takes is not among it.
struct Counting;

#[global_allocator]
static COUNTING: Counting = Counting;

fn count(bytes: isize) {
    // A thread that is ending counts no more.
    let _ = HELD.try_with(|held| {
        held.set(held.get() + bytes);
        let _ = MOST.try_with(|most| most.set(most.get().max(held.get())));
    });
}

fn size(bytes: usize) -> isize {
    isize::try_from(bytes).unwrap_or(isize::MAX)
}

// SAFETY: every call goes to the system's allocator as it came.
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        count(size(layout.size()));
        unsafe { System.alloc(layout) }
    }

    unsafe fn alloc_zeroed(&self, layout: Layout) -> *mut u8 {
        count(size(layout.size()));
        unsafe { System.alloc_zeroed(layout) }
    }

    unsafe fn dealloc(&self, at: *mut u8, layout: Layout) {
        count(-size(layout.size()));
        unsafe { System.dealloc(at, layout) }
    }

    unsafe fn realloc(&self, at: *mut u8, layout: Layout, new: usize) -> *mut u8 {
        count(size(new) - size(layout.size()));
        unsafe { System.realloc(at, layout, new) }
    }
}

/// Does some work and says how many bytes more it held at once than were held before.
pub fn most_during(work: impl FnOnce()) -> usize {
    let before = HELD.get();
    MOST.set(before);
    work();
    (MOST.get() - before).unsigned_abs()
}
