//! How much memory something takes, as Linux tells it. Of use in a process of its own: the peak is that of its whole life.

use std::fs;

/// The most kilobytes that this process took at any time during `work`, beside what it had before; `None` where the system does
/// not tell.
pub fn needed(work: impl FnOnce()) -> Option<u64> {
    let before = kilobytes("VmRSS");
    work();
    Some(kilobytes("VmHWM")? - before?)
}

/// One of the sizes that Linux tells of this process.
fn kilobytes(name: &str) -> Option<u64> {
    let status = fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find(|line| line.starts_with(name))?;
    line.split_ascii_whitespace().nth(1)?.parse().ok()
}
