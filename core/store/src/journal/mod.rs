//! The journal: what was done in the studio, as events that are only ever added.
//!
//! Pure: no database, no clock of its own, no randomness of its own. [`event`] is the envelope, [`clock`] orders
//! events made on different phones, [`segment`] packs them into files that travel, [`fold`] turns the events of one thing into what that thing is now.

pub mod clock;
pub mod event;
pub mod fold;
pub mod segment;

pub use clock::Clock;
pub(crate) use event::estimated_bytes;
pub use event::{Body, DeviceId, Event, EventId, Ids, Kind, RandomIds, SEEN, SeededIds};
pub use fold::{History, NoRules, Restored, Rules, State, fold};
