//! What fired pots say about the amount of glaze: the window in which a glaze comes out right, whether the hand drifts from its
//! aim, how alike the pieces of a set are, what other sizes take, how much is used. It says how often, never why.

mod climb;
pub mod consumption;
pub mod control_chart;
pub mod cusum;
pub mod dip_time;
pub mod fault;
pub mod hand;
pub mod observation;
mod ordered;
pub mod pooled;
pub mod repeatability;
pub mod set;
pub mod size;
pub mod spread;
pub mod window;
