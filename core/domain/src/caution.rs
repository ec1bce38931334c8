//! What can hurt in a glazing studio, said where it matters. Every caution defers to those who know the place:
//! local codes, safety data sheets, laboratory tests, licensed people.

/// Where a caution is shown beside the work; all of them stand together on the Studio screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// Beside the bucket.
    Buckets,
    /// Beside the kiln.
    Kiln,
    /// On the list of cautions only.
    Studio,
}

/// One thing that can hurt.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Caution {
    /// Silica and other dusts.
    Dust,
    /// Toxic and soluble materials.
    Materials,
    /// Spraying.
    Spraying,
    /// Food and drink surfaces.
    Food,
    /// Crazed ware and boiling water.
    Crazing,
    /// Sharp edges.
    Edges,
    /// The kiln.
    Kiln,
}

impl Caution {
    /// All of them, in the order in which they are listed.
    pub const ALL: &'static [Caution] = &[
        Caution::Dust,
        Caution::Materials,
        Caution::Spraying,
        Caution::Food,
        Caution::Crazing,
        Caution::Edges,
        Caution::Kiln,
    ];

    /// What it is about.
    pub const fn title(self) -> &'static str {
        match self {
            Caution::Dust => "Dust",
            Caution::Materials => "Toxic and soluble materials",
            Caution::Spraying => "Spraying",
            Caution::Food => "Food and drink",
            Caution::Crazing => "Crazed ware and boiling water",
            Caution::Edges => "Sharp edges",
            Caution::Kiln => "The kiln",
        }
    }

    /// What to mind, and whom to ask.
    pub const fn text(self) -> &'static str {
        match self {
            Caution::Dust => {
                "Dry glaze and clay hold silica, which harms the lungs for good. Clean wet, never sweep dry; add powder to water, not water to powder; wear a respirator fit for silica when dust cannot be kept down. Your workplace rules and the safety data sheets come first."
            }
            Caution::Materials => {
                "Some glaze materials are poisonous, and some dissolve and pass through skin. Read each safety data sheet, wear gloves, keep food and drink out, wash your hands, and take waste where your local rules say."
            }
            Caution::Spraying => {
                "A sprayed mist is breathed in deep. Spray only in a booth with working extraction, with a respirator fit for it. Ask a licensed person about the extraction."
            }
            Caution::Food => {
                "The right amount of glaze does not make a glaze fit for food. What leaches from it only a laboratory test of the fired piece can tell, and local law says what is allowed."
            }
            Caution::Crazing => {
                "A crazed or thick piece can break when boiling water is poured in. Try unproven ware at arm's length over a sink, and do not sell it for hot drinks on a guess."
            }
            Caution::Edges => {
                "Glaze drips and chipped rims fire into blades. Smooth them before the firing, wear eye protection and gloves when grinding, and keep fingers off fresh shards."
            }
            Caution::Kiln => {
                "Kilns burn, fume and carry dangerous voltages. Air the room, keep clear of what burns, follow the maker's manual, and leave wiring and gas to licensed people."
            }
        }
    }

    /// Where it is shown beside the work.
    pub const fn place(self) -> Place {
        match self {
            Caution::Dust | Caution::Materials => Place::Buckets,
            Caution::Kiln | Caution::Edges => Place::Kiln,
            _ => Place::Studio,
        }
    }
}

/// The cautions shown at `place`.
pub fn at(place: Place) -> impl Iterator<Item = Caution> {
    Caution::ALL.iter().copied().filter(move |caution| caution.place() == place)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dust_is_warned_of_beside_the_bucket() {
        assert!(at(Place::Buckets).any(|caution| caution == Caution::Dust));
    }
}
