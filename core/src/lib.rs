//! Laydown: how many grams of glaze a piece should take today, whether a reading of the scale is right,
//! what to do about it, and the record of what was done.

pub mod journal;
pub mod store;
