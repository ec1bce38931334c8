//! The store from outside: what it keeps, what it makes of it, and what it does when the world is against it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod disasters;
mod fixture;
mod keeping;
mod merging;
mod opening;
mod samples;
