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
pub struct Look {
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
pub fn groups(looks: Vec<Look>) -> Vec<Vec<Look>> {
    let by: [fn(&Look) -> String; 3] = [
        |look| look.cone.clone(),
        |look| look.zone.code().to_owned(),
        |look| look.body.map(|body| body.to_string()).unwrap_or_default(),
    ];
    let all = if looks.is_empty() { Vec::new() } else { vec![looks] };
    by.into_iter().fold(all, |groups, by| groups.into_iter().flat_map(|group| parted(group, by)).collect())
}

/// The parts of a group that have enough pots, the largest first, and what is left of it.
fn parted(group: Vec<Look>, by: fn(&Look) -> String) -> Vec<Vec<Look>> {
    let mut parts: BTreeMap<String, Vec<Look>> = BTreeMap::new();
    for look in group {
        parts.entry(by(&look)).or_default().push(look);
    }
    let (mut large, small): (Vec<_>, Vec<_>) = parts.into_values().partition(|part| part.len() >= ENOUGH);
    large.sort_by_key(|part| std::cmp::Reverse(part.len()));
    let rest: Vec<Look> = small.into_iter().flatten().collect();
    if !rest.is_empty() {
        large.push(rest);
    }
    large
}

#[cfg(test)]
mod tests {
    use super::*;

    fn looks(count: usize, cone: &str, zone: ZoneKind, body: Option<u128>) -> Vec<Look> {
        let look = Look {
            laydown: Laydown::new(5.5),
            thickness: Thickness::Right,
            zone,
            cone: cone.to_owned(),
            body: body.map(Uuid::from_u128),
            faults: Vec::new(),
        };
        vec![look; count]
    }

    fn sizes(looks: Vec<Look>) -> Vec<usize> {
        groups(looks).iter().map(Vec::len).collect()
    }

    #[test]
    fn a_part_with_enough_stands_alone_and_the_rest_stays_together() {
        use ZoneKind::{Inside, Outside};
        assert_eq!(sizes(Vec::new()), [0usize; 0]);
        // Three of each: nothing has enough, all stay together.
        let few = [looks(3, "6", Inside, None), looks(3, "6", Outside, None), looks(3, "10", Inside, Some(1))].concat();
        assert_eq!(sizes(few), [9]);
        // Cones are told apart before zones, and zones before bodies.
        let many = [
            looks(9, "6", Inside, Some(1)),
            looks(8, "6", Inside, Some(2)),
            looks(12, "6", Outside, Some(1)),
            looks(4, "10", Inside, Some(1)),
            looks(2, "9", Inside, Some(1)),
        ];
        assert_eq!(sizes(many.concat()), [9, 8, 12, 6]);
    }
}
