//! From a photograph taken from the side to a profile.
//!
//! The picture is decoded upright and made small ([`picture`]), the plain ground is told from the pot ([`ground`]), the
//! pot's two edges are followed and its axis found ([`outline`]), and with one known size the outline is turned into
//! radii at heights, as a lens at arm's length sees them ([`perspective`]). A picture that cannot be trusted is refused
//! in words: better no outline than a wrong one.

mod background;
mod outline;
mod perspective;
mod picture;

use serde::{Deserialize, Serialize};

use crate::coded::coded;
use crate::units::Millimetres;

pub use picture::upright_preview;

/// Steps along the axis at which the half width is taken.
const STEPS: usize = 160;

/// Why a photograph gives no outline. The display is the sentence the potter reads.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum PhotoError {
    /// No JPEG or PNG.
    #[error("This file is no JPEG or PNG picture. Take the photograph again, or set the camera to save JPEG.")]
    NoPicture,
    /// It ends too early.
    #[error("This picture was cut short and cannot be read to its end. Take it again.")]
    CutShort,
    /// More pixels than memory allows.
    #[error(
        "This picture has over 50 megapixels, which is more than is needed or can be held. Set the camera to a smaller size."
    )]
    TooLarge,
    /// Too few pixels.
    #[error("This picture is too small to measure in. Take it again at the camera's full size.")]
    TooSmall,
    /// No light.
    #[error("It is too dark to see the edge of the piece. Take it again in more light, without the sun behind it.")]
    TooDark,
    /// A ground that is not plain.
    #[error(
        "The ground behind the piece is too busy. Hang a plain cloth or sheet behind it, one that differs from the piece."
    )]
    Busy,
    /// Nothing stands out.
    #[error("No piece stands out from the ground. Use a ground much lighter or darker than the piece.")]
    Nothing,
    /// It touches the picture's edge.
    #[error("The piece runs out of the picture. Step back until there is ground all around it.")]
    CutOff,
    /// Too far away.
    #[error("The piece is too small in the picture. Come nearer, until it takes up at least a third of the height.")]
    TooFar,
    /// More than one thing.
    #[error("There is more than one thing in the picture. Leave only the piece, and the ruler well beside it.")]
    NotAlone,
    /// Not upright.
    #[error("The phone was held too much aslant. Hold it level, so that the piece stands upright.")]
    TooTilted,
    /// Its sides differ by more than a handle.
    #[error(
        "Its two sides differ too much to be one round piece. Turn the handle straight to one side, and mind shadows and bright windows."
    )]
    Lopsided,
    /// Too flat to be seen from the side.
    #[error("A piece this flat cannot be measured from the side. Measure a few widths and heights instead.")]
    TooFlat,
    /// A known size that cannot be.
    #[error("This size does not fit the picture. Check the figure and its unit, and that the marks lie on its ends.")]
    Size,
}

coded! {
    /// A side of the picture.
    "side" Side {
        /// The left one.
        Left = "left" "left",
        /// The right one.
        Right = "right" "right",
    }
}

coded! {
    /// How far an outline is to be trusted.
    "sureness" Sureness {
        /// Both sides agree and the edge is sharp.
        Sure = "sure" "The outline is clear.",
        /// They agree less well.
        Fair = "fair" "The outline is fair: look it over, and drag what is off once it is saved.",
        /// They hardly agree.
        Doubtful = "doubtful" "The outline is doubtful: compare it with the piece, or take the picture again.",
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
}

/// Finds the outline of a piece in a photograph.
///
/// # Errors
/// When it is no picture, or none that can be trusted; the sentence says what to do.
pub fn trace(bytes: &[u8]) -> Result<Trace, PhotoError> {
    let picture = picture::read(bytes)?;
    let (ground, mask) = background::pot(&picture)?;
    outline::follow(&picture, &ground, &mask)
}

impl Trace {
    /// The profile, once a size is known; `camera` is the distance from the lens to the axis.
    ///
    /// # Errors
    /// When the size cannot be that of what is seen.
    pub fn profile(&self, known: &KnownSize, camera: Millimetres) -> Result<Traced, PhotoError> {
        perspective::profile(self, known, camera.value())
    }
}

#[cfg(test)]
mod tests;
