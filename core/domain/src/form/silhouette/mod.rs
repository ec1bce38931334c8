//! From a photograph taken from the side to a profile.
//!
//! The picture is decoded upright and made small ([`picture`]). The ground is learnt from its border ([`ground`]), and what
//! differs from it is cut out ([`mask`], by a least cut, [`cut`]). The pot's edge is followed ([`outline`]), its axis found and
//! a handle left out ([`upright`]). Foot and rim are seen as arcs, which say from how high the lens looked ([`arcs`]). With one
//! known size the outline becomes radii at heights, as a lens near the piece sees them ([`perspective`]). A picture that cannot
//! be trusted is refused with the reason: better no outline than a wrong one.

mod arcs;
mod cut;
mod ground;
mod mask;
mod outline;
mod perspective;
mod picture;
mod upright;

use serde::{Deserialize, Serialize};

use crate::coded::coded;
use crate::units::Millimetres;

pub use picture::upright_preview;

/// Steps along the axis at which the half width is taken.
const STEPS: usize = 160;

/// Why a photograph gives no outline.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub enum PhotoError {
    /// No JPEG or PNG.
    NoPicture,
    /// It ends too early.
    CutShort,
    /// More pixels than memory allows.
    TooLarge,
    /// Too few pixels.
    TooSmall,
    /// No light.
    TooDark,
    /// A ground that is not plain.
    Busy,
    /// Nothing stands out.
    Nothing,
    /// It touches the picture's edge.
    CutOff,
    /// Too far away.
    TooFar,
    /// More than one thing.
    NotAlone,
    /// Not upright.
    TooTilted,
    /// Its sides differ by more than a handle.
    Lopsided,
    /// Too flat to be seen from the side.
    TooFlat,
    /// Seen from above, so that heights look shorter.
    FromAbove,
    /// More than one turned wall, one on or in the other.
    Stacked,
    /// A known size that cannot be.
    Size,
}

coded! {
    /// A side of the picture.
    "side" Side {
        /// The left one.
        Left = "left",
        /// The right one.
        Right = "right",
    }
}

coded! {
    /// How far an outline is to be trusted.
    "sureness" Sureness {
        /// Said by versions before 2026-12 where both sides agree; no longer.
        Sure = "sure",
        /// Both sides agree and the edge is sharp.
        Fair = "fair",
        /// They hardly agree.
        Doubtful = "doubtful",
    }
}

/// The axis as it stands in the picture, in pixels: x from the left, y from the top.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Axis {
    /// Where it meets the ground.
    pub foot: (f64, f64),
    /// Where it meets the level of the rim.
    pub rim: (f64, f64),
}

/// The arc in which the circle of a foot or a rim is seen: half an ellipse, as the lens is above or below it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct EndArc {
    /// How far its middle stands out beyond its ends, pixels; less than 0 where it is bent inwards.
    pub sagitta: f64,
    /// Half the distance of its ends, pixels.
    pub half: f64,
    /// How far the edge strays from it, pixels: the median.
    pub stray: f64,
}

/// What was seen in a photograph: pixels of the upright picture, so that the known size can be given afterwards.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Trace {
    /// Width of the upright picture.
    pub width: u32,
    /// Its height.
    pub height: u32,
    /// The axis of the piece.
    pub axis: Axis,
    /// Half widths square to the axis, at equal steps along it from the foot to the rim; a handle is left out.
    pub radii: Vec<f64>,
    /// The left edge as seen, from the foot to the rim, the handle left out.
    pub left: Vec<(f64, f64)>,
    /// The right edge.
    pub right: Vec<(f64, f64)>,
    /// The side of the handle, where there is one.
    pub handle: Option<Side>,
    /// How far the two sides differ, as a part of the width.
    pub unlike: f64,
    /// How far it is to be trusted.
    pub sure: Sureness,
    /// Which part of the edge hardly differs from what lies beside it: of the whole edge.
    #[serde(default)]
    pub unclear: f64,
    /// The arc of the foot, where it is seen: from how far above the lens looks.
    #[serde(default)]
    pub foot_arc: Option<EndArc>,
    /// The arc of the rim.
    #[serde(default)]
    pub rim_arc: Option<EndArc>,
    /// The lens's focal length in pixels, where the camera noted it: then no distance needs to be known.
    #[serde(default)]
    pub focal: Option<f64>,
}

/// What is known of the piece's size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum KnownSize {
    /// Its height.
    Height(Millimetres),
    /// Its width at the widest, without the handle.
    Width(Millimetres),
    /// A length in the picture, as far from the lens as the axis: a coin or a ruler.
    Length {
        /// The length.
        length: Millimetres,
        /// One end, in pixels.
        from: (f64, f64),
        /// The other end.
        to: (f64, f64),
    },
}

/// A profile from a photograph.
#[derive(Debug, Clone, PartialEq)]
pub struct Traced {
    /// Height above the ground and radius of a few points, from the ground up: enough for the smooth curve of a profile.
    pub points: Vec<(Millimetres, Millimetres)>,
    /// The whole outline in the same way.
    pub fine: Vec<(Millimetres, Millimetres)>,
    /// One standard uncertainty of an area made from it, as a fraction.
    pub relative_uncertainty: f64,
    /// How far the lens pointed downwards, radians.
    pub pitch: f64,
    /// How far it is to be trusted: no further than the trace.
    pub sure: Sureness,
}

/// Finds the outline of a piece in a photograph.
///
/// # Errors
/// When it is no picture, or none that can be trusted; the sentence says what to do.
pub fn trace(bytes: &[u8]) -> Result<Trace, PhotoError> {
    let picture = picture::read(bytes)?;
    let (ground, mask) = mask::pot(&picture)?;
    outline::follow(&picture, &ground, &mask)
}

impl Trace {
    /// The profile, once a size is known; `camera` is the distance from the lens to the axis, which counts where the focal
    /// length is not known.
    ///
    /// # Errors
    /// When the size cannot be that of what is seen.
    pub fn profile(&self, known: &KnownSize, camera: Millimetres) -> Result<Traced, PhotoError> {
        perspective::profile(self, known, camera.value())
    }
}

#[cfg(test)]
mod tests;
