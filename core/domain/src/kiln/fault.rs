//! The words for what came out of the kiln: how thick the glaze looks, and its faults.
//!
//! What a fault often speaks of is common practice, no source; more than "often" is never said, since most faults have
//! several causes. Where ASTM F109 (terminology relating to surface imperfections on ceramics) has a term, it is the name
//! here, as a potter says it of a pot: blistering for a blister.

use crate::coded::coded;

coded! {
    /// How thick the fired glaze looks.
    "thickness" Thickness {
        /// Too little.
        Thin = "thin",
        /// As it should be.
        Right = "right",
        /// Too much.
        Thick = "thick",
    }
}

coded! {
    /// A fault of a fired glaze or pot, those that are met most first.
    "fault" Fault {
        /// Drawn back from bare clay.
        Crawling = "crawling",
        /// Small holes down to the clay.
        Pinholing = "pinholing",
        /// Bubbles, open or closed.
        Blistering = "blistering",
        /// Flowed down the wall.
        Running = "running",
        /// Fine cracks in the fired glaze.
        Crazing = "crazing",
        /// Slivers of glaze spring off edges.
        Shivering = "shivering",
        /// The pot itself cracked in cooling.
        Dunting = "dunting",
        /// Not melted through.
        Underfired = "underfired",
        /// Taken too far.
        Overfired = "overfired",
        /// Glued to the shelf by its glaze.
        Stuck = "stuck",
        /// Out of round, or not flat any more.
        Warped = "warped",
        /// A crack in the rim, the floor or a join.
        Cracked = "cracked",
        /// Bits of the foot stayed on the shelf.
        Plucked = "plucked",
        /// Swellings of the clay.
        Bloating = "bloating",
        /// Too little glaze.
        Thin = "thin",
        /// Rough, not melted through.
        Dry = "dry",
        /// A place without glaze.
        BareSpot = "bare_spot",
        /// Gathered deep in the floor.
        Pooling = "pooling",
        /// Slipped down in a fold.
        Sagging = "sagging",
        /// Small hollows that do not reach the clay.
        Pitting = "pitting",
        /// Gathered in drops.
        Beading = "beading",
        /// The raw coat cracked before the firing.
        RawCracking = "raw_cracking",
        /// The raw coat came off before or in the firing.
        Flaking = "flaking",
        /// Fine cracks, days or months after the firing.
        DelayedCrazing = "delayed_crazing",
        /// Dull where it should shine.
        Matting = "matting",
        /// A film on the surface.
        Scumming = "scumming",
        /// Colour drifted from elsewhere.
        Blushing = "blushing",
        /// A spot of something else.
        Speck = "speck",
        /// Grey lines from cutlery.
        MetalMarking = "metal_marking",
    }
}

/// What a fault often speaks of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SpeaksOf {
    /// Often of too much glaze.
    TooMuch,
    /// Often of too little.
    TooLittle,
    /// Not of the amount.
    SomethingElse,
}

impl Fault {
    /// What it often speaks of. Common practice, no source.
    pub const fn speaks_of(self) -> SpeaksOf {
        match self {
            Self::Crawling
            | Self::Beading
            | Self::RawCracking
            | Self::Flaking
            | Self::Running
            | Self::Pooling
            | Self::Sagging
            | Self::Stuck
            | Self::Blistering => SpeaksOf::TooMuch,
            Self::Thin | Self::Dry | Self::BareSpot => SpeaksOf::TooLittle,
            _ => SpeaksOf::SomethingElse,
        }
    }

    /// Whether it is of the clay, and so is met on ware without glaze too.
    pub const fn is_of_the_clay(self) -> bool {
        matches!(
            self,
            Self::Dunting | Self::Overfired | Self::Underfired | Self::Warped | Self::Cracked | Self::Bloating
        )
    }
}
