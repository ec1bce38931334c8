//! The glaze as it stands in the bucket.

pub mod bucket;
pub mod flow_cup;
pub mod material;
pub mod recipe;
pub mod sg_age;
pub mod slurry;
