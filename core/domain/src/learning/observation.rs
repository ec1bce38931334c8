//! One fired coat beside its record, and which of them are spoken of together.

use std::collections::BTreeMap;

use uuid::Uuid;

use crate::form::ZoneKind;
use crate::kiln::fault::{Fault, Thickness};
use crate::units::Laydown;

/// So many pots are needed before a window is spoken of: with fewer, one odd pot moves its ends by more than a potter's
/// tolerance. Common practice, no source.
pub const ENOUGH: usize = 8;

/// A coat that was weighed, fired and looked at.
#[derive(Debug, Clone, PartialEq)]
pub struct FiredObservation {
    /// Its laydown.
    pub laydown: Laydown,
    /// How thick it looks.
    pub thickness: Thickness,
    /// The zone it is on.
    pub zone: ZoneKind,
    /// The code of the cone that was aimed at.
    pub cone: String,
    /// The body of its form, where that is known.
    pub body: Option<Uuid>,
    /// The faults of the piece.
    pub faults: Vec<Fault>,
}

/// The looks in groups that can be learned from each by itself: first by cone, then by zone, then by body, as far as a part
/// has [`ENOUGH`] pots. What has too few for a group of its own stays together.
pub fn groups(observations: Vec<FiredObservation>) -> Vec<Vec<FiredObservation>> {
    let by: [fn(&FiredObservation) -> String; 3] = [
        |observation| observation.cone.clone(),
        |observation| observation.zone.code().to_owned(),
        |observation| observation.body.map(|body| body.to_string()).unwrap_or_default(),
    ];
    let all = if observations.is_empty() { Vec::new() } else { vec![observations] };
    by.into_iter().fold(all, |groups, by| groups.into_iter().flat_map(|group| parted(group, by)).collect())
}

/// The parts of a group that have enough pots, the largest first, and what is left of it.
fn parted(group: Vec<FiredObservation>, by: fn(&FiredObservation) -> String) -> Vec<Vec<FiredObservation>> {
    let mut parts: BTreeMap<String, Vec<FiredObservation>> = BTreeMap::new();
    for observation in group {
        parts.entry(by(&observation)).or_default().push(observation);
    }
    let (mut large, small): (Vec<_>, Vec<_>) = parts.into_values().partition(|part| part.len() >= ENOUGH);
    large.sort_by_key(|part| std::cmp::Reverse(part.len()));
    let rest: Vec<FiredObservation> = small.into_iter().flatten().collect();
    if !rest.is_empty() {
        large.push(rest);
    }
    large
}

#[cfg(test)]
mod tests {
    use super::*;

    fn observations(count: usize, cone: &str, zone: ZoneKind, body: Option<u128>) -> Vec<FiredObservation> {
        let observation = FiredObservation {
            laydown: Laydown::new(5.5),
            thickness: Thickness::Right,
            zone,
            cone: cone.to_owned(),
            body: body.map(Uuid::from_u128),
            faults: Vec::new(),
        };
        vec![observation; count]
    }

    fn sizes(observations: Vec<FiredObservation>) -> Vec<usize> {
        groups(observations).iter().map(Vec::len).collect()
    }

    #[test]
    fn a_part_with_enough_stands_alone_and_the_rest_stays_together() {
        use ZoneKind::{Inside, Outside};
        assert_eq!(sizes(Vec::new()), [0usize; 0]);
        // Three of each: nothing has enough, all stay together.
        let few = [
            observations(3, "6", Inside, None),
            observations(3, "6", Outside, None),
            observations(3, "10", Inside, Some(1)),
        ]
        .concat();
        assert_eq!(sizes(few), [9]);
        // Cones are told apart before zones, and zones before bodies.
        let many = [
            observations(9, "6", Inside, Some(1)),
            observations(8, "6", Inside, Some(2)),
            observations(12, "6", Outside, Some(1)),
            observations(4, "10", Inside, Some(1)),
            observations(2, "9", Inside, Some(1)),
        ];
        assert_eq!(sizes(many.concat()), [9, 8, 12, 6]);
    }
}
