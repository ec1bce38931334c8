//! Which effects there are: what makes the middle of the window differ from place to place.

use std::collections::BTreeMap;

use super::{Assumptions, Group, MOST_EFFECTS, Place};
use crate::form::{ShapeClass, ZoneKind};
use uuid::Uuid;

/// What an effect is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Effect {
    /// A group that a potter can name.
    Of(Group),
    /// A class of shape.
    Class(ShapeClass),
    /// What the usual proportions of a class are off, in areas from capacities.
    Proportions(ShapeClass, ZoneKind),
    /// A zone of a form, with the error of its area.
    Form(Uuid, ZoneKind),
}

/// The effects that are parameters, each a standard normal variable times its size.
#[derive(Debug, Clone)]
pub(super) struct Design {
    /// Different places of the evidence.
    pub(super) places: Vec<Place>,
    /// Of each of them, the effects it has (by number) and their sizes.
    pub(super) sizes: Vec<Vec<(usize, f64)>>,
    /// Of each, the variance of the effects that are no parameters.
    pub(super) left: Vec<f64>,
    /// The same for the job.
    pub(super) job_sizes: Vec<(usize, f64)>,
    /// The variance of effects that only the job has, or that are no parameters.
    pub(super) job_left: f64,
    /// How many effects are parameters.
    pub(super) count: usize,
    /// By which parameter the effect of a group goes, where it goes by itself.
    pub(super) groups: Vec<(Group, usize, f64)>,
}

/// One effect among the places: the members (a place, or the job as one past the last) and its size there.
#[derive(Debug, Clone)]
struct Column {
    effects: Vec<Effect>,
    members: Vec<(usize, f64)>,
    evidence: usize,
}

impl Column {
    /// Whether the other differs from it by a factor alone, so that the two cannot be told apart.
    fn goes_with(&self, other: &Column) -> bool {
        let Some(((_, ours), (_, theirs))) = self.members.first().zip(other.members.first()) else { return false };
        let ratio = theirs / ours;
        self.members.len() == other.members.len()
            && self.members.iter().zip(&other.members).all(|((at, ours), (other_at, theirs))| {
                at == other_at && (theirs - ours * ratio).abs() <= 1e-12 * theirs.abs()
            })
    }
}

fn effects(place: &Place, assume: &Assumptions) -> impl Iterator<Item = (Effect, f64)> {
    let area = place.area_relative_uncertainty;
    let own = area.min(assume.own_area);
    let shared = (area * area - own * own).max(0.0).sqrt();
    let groups = [
        Some((Effect::Of(Group::Zone(place.zone)), assume.zone)),
        place.body.map(|body| (Effect::Of(Group::Body(body)), assume.body)),
        place.cone.map(|cone| (Effect::Of(Group::Cone(cone)), assume.cone)),
        Some((Effect::Class(place.class), assume.class)),
        Some((Effect::Proportions(place.class, place.zone), shared)),
        Some((Effect::Form(place.form, place.zone), assume.form.hypot(own))),
    ];
    groups.into_iter().flatten().filter(|(_, size)| *size > 0.0)
}

impl Design {
    /// For the places of the evidence, each with how many pieces lie there, and the job's.
    pub(super) fn new(places: Vec<Place>, pieces: &[usize], job: &Place, assume: &Assumptions) -> Design {
        let job_at = places.len();
        let mut by_effect: BTreeMap<Effect, Column> = BTreeMap::new();
        for (at, place) in places.iter().chain(std::iter::once(job)).enumerate() {
            for (effect, size) in effects(place, assume) {
                let column = by_effect.entry(effect).or_insert_with(|| Column {
                    effects: vec![effect],
                    members: Vec::new(),
                    evidence: 0,
                });
                column.members.push((at, size));
                column.evidence += pieces.get(at).copied().unwrap_or_default();
            }
        }
        // Where all is of one zone, body or cone, the middle is of that one.
        let levels = |factor: u8| by_effect.keys().filter(|effect| effect.factor() == Some(factor)).count();
        let alone = [levels(0) < 2, levels(1) < 2, levels(2) < 2];
        let mut columns: Vec<Column> = Vec::new();
        for (effect, column) in by_effect {
            if effect.factor().is_some_and(|factor| alone[usize::from(factor)]) {
                continue;
            }
            match columns.iter_mut().find(|known| known.goes_with(&column)) {
                Some(known) => {
                    known.effects.extend(column.effects);
                    for ((_, ours), (_, theirs)) in known.members.iter_mut().zip(column.members) {
                        *ours = ours.hypot(theirs);
                    }
                }
                None => columns.push(column),
            }
        }
        // Those of the job first, then those of most pieces.
        let is_of_job = |column: &Column| column.members.last().is_some_and(|(at, _)| *at == job_at);
        columns.sort_by_key(|column| std::cmp::Reverse((is_of_job(column) && column.evidence > 0, column.evidence)));
        let count = columns.iter().take_while(|column| column.evidence > 0).count().min(MOST_EFFECTS);
        let mut design = Design {
            sizes: vec![Vec::new(); job_at],
            left: vec![0.0; job_at],
            job_sizes: Vec::new(),
            job_left: 0.0,
            count,
            groups: Vec::new(),
            places,
        };
        for (number, column) in columns.iter().enumerate() {
            let is_parameter = number < count;
            for (at, size) in &column.members {
                let (sizes, left) = match (design.sizes.get_mut(*at), design.left.get_mut(*at)) {
                    (Some(sizes), Some(left)) => (sizes, left),
                    _ => (&mut design.job_sizes, &mut design.job_left),
                };
                if is_parameter {
                    sizes.push((number, *size));
                } else {
                    *left += size * size;
                }
            }
            if let ([Effect::Of(group)], [(_, size), ..], true) =
                (&column.effects[..], &column.members[..], is_parameter)
            {
                design.groups.push((*group, number, *size));
            }
        }
        design
    }
}

impl Effect {
    /// Which kind of group it is of, if it is of one.
    fn factor(self) -> Option<u8> {
        match self {
            Self::Of(Group::Zone(_)) => Some(0),
            Self::Of(Group::Body(_)) => Some(1),
            Self::Of(Group::Cone(_)) => Some(2),
            _ => None,
        }
    }
}
