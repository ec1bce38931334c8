//! The store from outside: what it keeps, what it makes of it, and what it does when the world is against it.

mod backup;
mod commands;
mod copies;
mod disasters;
mod faults;
mod histories;
mod hostile;
mod memory;
mod merging;
mod opening;
mod photographs;
mod recovery;
mod samples;
mod saving;
