//! placeholder until the tracer lands
#![allow(missing_docs)]
use crate::coded::coded;
use crate::units::Millimetres;
coded! {
    /// side
    "side" Side {
        /// l
        Left = "left" "left",
        /// r
        Right = "right" "right",
    }
}
#[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
pub struct Axis {
    pub foot: (f64, f64),
    pub rim: (f64, f64),
}
#[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
pub struct Trace {
    pub width: u32,
    pub height: u32,
    pub axis: Axis,
    pub left: Vec<(f64, f64)>,
    pub right: Vec<(f64, f64)>,
    pub handle: Option<Side>,
}
#[derive(Debug, Clone, PartialEq)]
pub enum KnownSize {
    Height(Millimetres),
    Width(Millimetres),
    Length { length: Millimetres, from: (f64, f64), to: (f64, f64) },
}
#[derive(Debug, Clone, PartialEq)]
pub struct Traced {
    pub points: Vec<(Millimetres, Millimetres)>,
    pub relative_uncertainty: f64,
}
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("not yet")]
pub struct PhotoError;
pub fn trace(_bytes: &[u8]) -> Result<Trace, PhotoError> {
    Err(PhotoError)
}
pub fn upright_preview(_bytes: &[u8], _longest: u32) -> Result<Vec<u8>, PhotoError> {
    Err(PhotoError)
}
impl Trace {
    pub fn profile(&self, _known: &KnownSize, _camera: Millimetres) -> Result<Traced, PhotoError> {
        Err(PhotoError)
    }
}
