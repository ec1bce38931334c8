//! The glaze as it stands in the bucket.

pub mod slurry;
