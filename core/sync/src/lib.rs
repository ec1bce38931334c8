//! Saves the studios of several devices alike, through any place that can hold files: a folder, a WebDAV server or an S3
//! bucket. The only part of laydown that asks for a network, by the shell's [`http_client`], and only while [`sync`] is called.
//!
//! What lies on such a [`RemoteStore`]:
//!
//! ```text
//! devices/WRITER/journal/DEVICE/000000000001-000000000500.jsonl.zst   events of a device, see laydown_store::journal::segment
//! devices/WRITER/journal/DEVICE/000000000001-000000000500.jsonl.zst.TAG.age    the same, sealed
//! devices/WRITER/photos/SHA256.picture                                 a photograph, JPEG or PNG
//! devices/WRITER/key.age                                               where the files are sealed: what opens them
//! ```
//!
//! Each device writes only below its own name, and never changes a file it has put there. It merges its small segments into
//! larger ones, and removes the small ones where the place can do that; so the place needs to know nothing but get, put,
//! list and remove, and two devices never stand in each other's way. Nearly always WRITER is DEVICE; a device
//! puts down another's events only where the shelf lacks them, as after the other was lost and its studio came back from a
//! backup. A photograph is put there once, by whoever comes first.
//!
//! With a passphrase every file is sealed by age before it leaves the phone, and its name ends in `.age`. Then the shelf's
//! owner can read which devices there are, how many events each has made and when, and how many photographs and how large;
//! a photograph's name says nothing of what it shows. `age --decrypt` and the passphrase open `key.age`, which holds the
//! identity that opens the files beside it. With a passphrase only what it opens counts for anything; TAG shows that before a
//! file is fetched. What this phone itself put or read there it remembers, and says when that is gone.

pub mod address;
mod connection;
mod encryption;
mod error;
pub mod http_client;
mod journal;
mod listing;
mod record;
mod remote_store;
mod sync;
mod transport;
mod webdav;

pub use connection::{Connection, RemoteConfig, RetryPolicy, Secret};
pub use error::RemoteError;
pub use journal::{Journal, SYNC_RECORD};
pub use remote_store::{Entry, RemoteStore};
pub use sync::{Options, Outcome, Progress, sync};
