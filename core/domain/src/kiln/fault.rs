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
        Thin = "thin" "thin",
        /// As it should be.
        Right = "right" "right",
        /// Too much.
        Thick = "thick" "thick",
    }
}

coded! {
    /// A fault of a fired glaze or pot.
    "fault" Fault {
        /// Drawn back from bare clay.
        Crawling = "crawling" "crawling",
        /// Gathered in drops.
        Beading = "beading" "beading",
        /// The raw coat cracked before the firing.
        RawCracking = "raw_cracking" "raw cracking",
        /// The raw coat came off before or in the firing.
        Flaking = "flaking" "flaking",
        /// Fine cracks in the fired glaze.
        Crazing = "crazing" "crazing",
        /// The same, days or months later.
        DelayedCrazing = "delayed_crazing" "delayed crazing",
        /// Slivers of glaze spring off edges.
        Shivering = "shivering" "shivering",
        /// The pot itself cracked in cooling.
        Dunting = "dunting" "dunting",
        /// Small holes down to the clay.
        Pinholing = "pinholing" "pinholing",
        /// Small hollows that do not reach the clay.
        Pitting = "pitting" "pitting",
        /// Bubbles, open or closed.
        Blistering = "blistering" "blistering",
        /// Swellings of the clay.
        Bloating = "bloating" "bloating",
        /// Flowed down the wall.
        Running = "running" "running",
        /// Gathered deep in the floor.
        Pooling = "pooling" "pooling",
        /// Slipped down in a fold.
        Sagging = "sagging" "sagging",
        /// Too little glaze.
        Thin = "thin" "thin",
        /// Rough, not melted through.
        Dry = "dry" "dry",
        /// Taken too far.
        Overfired = "overfired" "overfired",
        /// Dull where it should shine.
        Matting = "matting" "matting",
        /// A film on the surface.
        Scumming = "scumming" "scumming",
        /// Colour drifted from elsewhere.
        Blushing = "blushing" "blushing",
        /// A spot of something else.
        Speck = "speck" "speck",
        /// A place without glaze.
        BareSpot = "bare_spot" "bare spot",
        /// Grey lines from cutlery.
        MetalMarking = "metal_marking" "metal marking",
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
            | Self::Blistering => SpeaksOf::TooMuch,
            Self::Thin | Self::Dry | Self::BareSpot => SpeaksOf::TooLittle,
            _ => SpeaksOf::SomethingElse,
        }
    }

    /// A hint for next time; never more than "often".
    pub const fn hint(self) -> &'static str {
        match self {
            Self::Crawling | Self::Beading => "Often too thick, or dust and grease on the bisque.",
            Self::RawCracking | Self::Flaking => "Often too thick, or a coat that shrinks too much as it dries.",
            Self::Running | Self::Sagging => {
                "Often too thick, most of all near the rim and where glazes meet; or too hot."
            }
            Self::Pooling => "Often too much left inside: pour out at once and let it drain.",
            Self::Blistering => "Often too thick or too hot, or gas from the clay.",
            Self::Thin => "Often too little, or a bucket that has been thinned.",
            Self::Dry => "Often too little, or not hot enough.",
            Self::BareSpot => "Often a touch of the fingers, or a place the glaze did not reach.",
            Self::Crazing | Self::DelayedCrazing => {
                "Mostly how glaze and clay fit, less often the amount; a thick coat shows it more. Crazed ware can leak and break with boiling water."
            }
            Self::Shivering => {
                "How glaze and clay fit, not the amount. The slivers are sharp: such a piece is not for use."
            }
            Self::Dunting => "Mostly cooling or the clay, not the amount.",
            Self::Pinholing | Self::Pitting => "Mostly gas from the clay or a short hold, less often the amount.",
            Self::Bloating => "The clay, taken too far; not the amount.",
            Self::Overfired => "The firing, not the amount.",
            Self::Matting | Self::Scumming | Self::Blushing => "Mostly the firing, the cooling or the recipe.",
            Self::Speck => "Dust, a crumb of shelf or iron in the clay.",
            Self::MetalMarking => {
                "The recipe, not the amount. A laboratory test tells whether the surface gives anything off."
            }
        }
    }
}
