//! Studios kept alike: through memory, where anything can be broken, and through real servers on loopback.

// Everything here is a test, also what lies in no test function.
#![allow(clippy::unwrap_used, clippy::panic)]

mod adversary;
mod agree;
mod broken;
mod hostile;
mod meanwhile;
mod networks;
mod plain_http;
mod servers;
mod strangers;
mod studio;
mod years;
