//! The trade as pure calculation: units, the glaze in the bucket, forms, coats, firings and what fired pots teach.
//!
//! Nothing here knows a database, a clock, chance, a file or the generator: the time and new ids are passed in.

pub mod coded;
pub mod truncate;

pub mod bisque;
pub mod caution;
pub mod coat;
pub mod decode;
pub mod form;
pub mod glaze;
pub mod kiln;
pub mod learning;
pub mod units;
pub mod visible;

pub use coded::UnknownCode;
