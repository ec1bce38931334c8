//! The glaze as it stands in the bucket.

pub mod sg_age;
pub mod slurry;
