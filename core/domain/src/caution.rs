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
