//! One target from everything known of a glaze: judged pots, control pieces, test tiles and the starting laydown, each for what
//! it is worth.
//!
//! An ordered logistic model in x = ln(laydown), as in [`super::window`]: the middle of the window is that of the glaze, m, and
//! what the coat's place adds to it; the half-width h and the steepness s are the glaze's. What each piece of evidence says:
//!
//! | evidence | what it says of the middle |
//! |---|---|
//! | judged pot | thin, right or thick by the ordered model, but for a share of lapses (a slip of the eye or of the pencil) |
//! | control piece | right within half the usual half-width: it lies where somebody aimed, so it bounds and does not centre, and was chosen for being right, so it says nothing of how wide the window is |
//! | test tiles | their median, within an offset that all tiles share |
//! | starting laydown | a normal prior |
//!
//! How far the right laydown differs between zones, bodies, cones, classes of shape and forms are effects, each normal around
//! nothing. A form's effect also holds the error of its area, and a class's the error of areas that are taken from capacities:
//! on the same form both cancel, on another they count. Not more than [`MOST_EFFECTS`] of them are parameters; what is left of
//! them counts as noise of each pot. An uncertain laydown flattens the curve of its pot by `√(1 + π s² v / 8)` (MacKay, "The
//! evidence framework applied to classification networks", 1992; Bishop, Pattern Recognition and Machine Learning, 4.153).
//! Older evidence weighs less: a likelihood of age t counts `2^(−t / half-life)` times.
//!
//! The most probable parameters are found by Newton's method, how sure they are by Laplace's approximation, widened by
//! [`Assumptions::inflation`].

mod design;
mod fit;
mod judge;
mod note;
mod outlook;
mod proportions;
mod target;

use uuid::Uuid;

use crate::coat::target::Sensitivity;
use crate::form::{ShapeClass, ZoneKind};
use crate::kiln::cone::Cone;
use crate::kiln::fault::Thickness;
use crate::units::Laydown;

pub use fit::{Fitted, Start};
pub use judge::{RestsOn, chance_right, judge, target_for};
pub use note::{Group, Note};
pub use outlook::Outlook;
pub use proportions::{Proportions, proportions};
pub use target::{
    Aim, Chances, Piece, PooledJob, PooledTarget, PooledVerdict, SURE, Weight, reading_standard_uncertainty, verdict,
};

/// The most effects that are parameters, beside middle, half-width and steepness.
pub const MOST_EFFECTS: usize = 8;

/// Where a coat lies, as far as that matters to how much of the glaze is right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// The form.
    pub form: Uuid,
    /// The zone of it.
    pub zone: ZoneKind,
    /// The form's class of shape.
    pub class: ShapeClass,
    /// One standard uncertainty of the zone's area, as a fraction of it.
    pub area_relative_uncertainty: f64,
    /// The clay, where known.
    pub body: Option<Uuid>,
    /// The cone that is aimed at, where known.
    pub cone: Option<Cone>,
}

/// A coat that was weighed, fired and looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JudgedPot {
    /// Which coat.
    pub id: Uuid,
    /// Where it lies.
    pub place: Place,
    /// Its laydown.
    pub laydown: Laydown,
    /// One standard uncertainty of its dry weight (specific gravity and scale, without the area), as a fraction of it.
    pub relative_uncertainty: f64,
    /// How thick it came out.
    pub thickness: Thickness,
    /// When, in days from any one day.
    pub day: f64,
}

/// A coat that the potter knows to be right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ControlPot {
    /// Which coat.
    pub id: Uuid,
    /// Where it lies.
    pub place: Place,
    /// Its laydown.
    pub laydown: Laydown,
    /// One standard uncertainty of its dry weight, without the area, as a fraction of it.
    pub relative_uncertainty: f64,
    /// When, in days from the same day.
    pub day: f64,
}

/// A test tile that came out right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RightTile {
    /// Which tile.
    pub id: Uuid,
    /// Its laydown.
    pub laydown: Laydown,
    /// One standard uncertainty of the laydown, as a fraction of it.
    pub relative_uncertainty: f64,
}

/// All that is known about how thick a glaze should lie. Figures that cannot be (a laydown that is no positive number, an
/// uncertainty below nothing, no day) do not count. A control piece that was also judged counts as control piece alone,
/// unless it was judged thin or thick: then it counts as judged.
#[derive(Debug, Clone, PartialEq)]
pub struct GlazeEvidence {
    /// Judged pots.
    pub pots: Vec<JudgedPot>,
    /// Control pieces.
    pub controls: Vec<ControlPot>,
    /// Test tiles.
    pub tiles: Vec<RightTile>,
    /// The glaze's starting laydown.
    pub starting: Laydown,
    /// How much the glaze minds.
    pub sensitivity: Sensitivity,
}

/// What the model takes for granted. [`Assumptions::default`] is what the app uses; others are for simulations and checks.
/// All are common practice without a source, but for `half_life` and `inflation`, which were chosen by simulation
/// (`tests/examples/simulate.rs`).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Assumptions {
    /// Share of ratings and weights that are slips.
    pub lapse: f64,
    /// What the middle of the window is off the starting laydown, one standard deviation in logarithms.
    pub starting_sd: f64,
    /// Median of the half-width in logarithms for a glaze of [`Sensitivity::Low`], `Medium` and `High`.
    pub half_width: [f64; 3],
    /// Standard deviation of its logarithm.
    pub half_width_sd: f64,
    /// Median of the steepness.
    pub steepness: f64,
    /// Standard deviation of its logarithm.
    pub steepness_sd: f64,
    /// How far classes of shape differ, one standard deviation.
    pub class: f64,
    /// How far forms of a class differ.
    pub form: f64,
    /// How far zones differ.
    pub zone: f64,
    /// How far bodies differ.
    pub body: f64,
    /// How far cones differ.
    pub cone: f64,
    /// The part of an area's uncertainty that is the form's own; what is more comes from its class's proportions and is shared.
    pub own_area: f64,
    /// From tiles to pots; shared by all tiles.
    pub tile_to_pot: f64,
    /// From tile to tile.
    pub tile_to_tile: f64,
    /// Days after which evidence counts half. By cross-validation on simulated studios whose optimum moves by about 5% a year:
    /// 250 to 1,500 days foretell alike, 120 and none at all less well.
    pub half_life: f64,
    /// What Laplace's standard deviation of the middle is widened by. With 1.05 and three control pieces to a place 95% intervals
    /// held for 88.5% of the new sizes in studios of one class that it steered, with this for 91.5% (seeds from 0).
    pub inflation: f64,
}

impl Default for Assumptions {
    fn default() -> Self {
        Self {
            lapse: 0.03,
            starting_sd: 0.31,
            half_width: [0.30, 0.20, 0.13],
            half_width_sd: 0.5,
            steepness: 20.0,
            steepness_sd: 0.7,
            class: 0.05,
            form: 0.02,
            zone: 0.05,
            body: 0.06,
            cone: 0.10,
            own_area: 0.022,
            tile_to_pot: 0.10,
            tile_to_tile: 0.05,
            half_life: 500.0,
            inflation: 1.1,
        }
    }
}

impl Assumptions {
    /// The median of the half-width.
    fn half_width_of(&self, sensitivity: Sensitivity) -> f64 {
        let [low, medium, high] = self.half_width;
        match sensitivity {
            Sensitivity::Low => low,
            Sensitivity::Medium => medium,
            Sensitivity::High => high,
        }
    }
}

#[cfg(test)]
mod tests;
