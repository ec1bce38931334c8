//! From the shelf of glazed pots to the opened kiln: the code on a foot, the cones, and the words for what came out.

pub mod cone;
pub mod fault;
pub mod piece_code;
