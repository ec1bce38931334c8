//! One coat on one zone: what it should weigh, and what the scale says.
