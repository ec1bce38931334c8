//! Laydown: how many grams of wet glaze a piece should take today, whether a reading of the scale is right,
//! what to do about it, and the record of what was done.

mod coded;
mod decode;
mod repeated;

pub mod caution;
pub mod coat;
pub mod form;
pub mod glaze;
pub mod journal;
pub mod kiln;
pub mod learn;
pub mod sample;
pub mod store;
pub mod studio;
pub mod units;

pub use coded::UnknownCode;
