//! What a potter should know beside the figure: evidence that disagrees, is odd, or says little. Facts only; sentences are made
//! elsewhere.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::fit::{EFFECTS, Fitted, Item, MIDDLE};
use super::{GlazeEvidence, Piece};
use crate::form::ZoneKind;
use crate::kiln::cone::Cone;
use crate::kiln::fault::Thickness;
use crate::learning::observation::ENOUGH;
use crate::learning::ordered;

/// What pots may be told apart by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Group {
    /// A zone.
    Zone(ZoneKind),
    /// A clay.
    Body(Uuid),
    /// A cone.
    Cone(Cone),
}

/// A fact about the evidence.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Note {
    /// Fewer judged pots than a window needs.
    FewPots {
        /// How many.
        pots: usize,
    },
    /// All judged pots came out alike: the ends of the window are not seen.
    AllAlike(Thickness),
    /// Pots that came out thin carry more than those that came out thick: perhaps the ratings were swapped.
    RatingsInverted,
    /// Thin, right and thick lie mixed: nowhere is the chance of coming out right high enough.
    Mixed,
    /// Two control pieces are further apart than areas and hands explain.
    ControlsApart {
        /// The one with less glaze on its area.
        less: Uuid,
        /// The one with more.
        more: Uuid,
        /// The laydown of the second over that of the first.
        ratio: f64,
    },
    /// Test tiles lie far from where everything else puts the glaze.
    TilesApart {
        /// Their laydown over that of the pots.
        ratio: f64,
    },
    /// The starting laydown lies far from it.
    StartingApart {
        /// The starting laydown over that of the pots.
        ratio: f64,
    },
    /// A pot or control piece that does not fit with the others: a weight or a rating that may be a slip. It hardly counts.
    Odd {
        /// Which.
        piece: Piece,
        /// Its laydown over the right one at its place.
        ratio: f64,
    },
    /// Two groups need different amounts: learn from each by itself.
    GroupsApart {
        /// The one that needs less.
        less: Group,
        /// The one that needs more.
        more: Group,
        /// What the second needs over what the first does.
        ratio: f64,
    },
}

/// So many standard deviations off is no chance. Common practice.
const FAR: f64 = 2.5;
/// A difference that a potter would act on.
const NOTABLE: f64 = 0.10;
/// Control pieces nearer than this are alike to a potter.
const CONTROLS_ALIKE: f64 = 0.20;
/// A piece that is so likely a slip is named.
const SURELY_A_SLIP: f64 = 0.8;
/// The most odd pieces that are named.
const MOST_ODD: usize = 5;

/// The notes on a fit.
pub(super) fn notes(fitted: &Fitted, evidence: &GlazeEvidence) -> Vec<Note> {
    let counts: Vec<(Thickness, usize)> = Thickness::ALL.iter().map(|found| (*found, fitted.count(*found))).collect();
    let pots: usize = counts.iter().map(|(_, count)| count).sum();
    let mut notes = Vec::new();
    if pots < ENOUGH {
        notes.push(Note::FewPots { pots });
    }
    if pots > 1 {
        notes.extend(counts.iter().filter(|(_, count)| *count == pots).map(|(found, _)| Note::AllAlike(*found)));
    }
    if is_inverted(&fitted.items) {
        notes.push(Note::RatingsInverted);
    }
    if ordered::half_width_at(super::SURE, fitted.half_width(), fitted.steepness()).is_none() {
        notes.push(Note::Mixed);
    }
    notes.extend(controls_apart(fitted, evidence));
    let known = fitted.at[MIDDLE];
    let variance = fitted.covariance[(MIDDLE, MIDDLE)];
    let far = |x: f64, sd: f64| {
        // The source's own share is in what it is compared with, which makes this cautious.
        let off = x - known;
        (off.abs() > FAR * (sd * sd + variance).sqrt() && off.abs() > NOTABLE).then(|| off.exp())
    };
    notes.extend(fitted.tiles.and_then(|tiles| far(tiles.x, tiles.sd)).map(|ratio| Note::TilesApart { ratio }));
    let starting = far(fitted.starting, fitted.assume.starting_sd);
    notes.extend(starting.map(|ratio| Note::StartingApart { ratio }));
    notes.extend(odd(fitted));
    notes.extend(groups_apart(fitted));
    notes
}

/// Whether at least two of each came out thin and thick, and the typical thin one carries more than the typical thick one.
fn is_inverted(items: &[Item]) -> bool {
    let sorted = |thickness| {
        let mut found: Vec<f64> = items.iter().filter(|item| item.thickness == thickness).map(|item| item.x).collect();
        found.sort_by(f64::total_cmp);
        found
    };
    let (thin, thick) = (sorted(Thickness::Thin), sorted(Thickness::Thick));
    thin.len() > 1 && thick.len() > 1 && thin[(thin.len() - 1) / 2] > thick[thick.len() / 2]
}

/// The two control pieces that are furthest apart, where that is no chance.
fn controls_apart(fitted: &Fitted, evidence: &GlazeEvidence) -> Option<Note> {
    let assume = &fitted.assume;
    let mut controls: Vec<(&Item, Uuid)> = fitted
        .items
        .iter()
        .filter_map(|item| match item.piece {
            Piece::Control(id) => Some((item, id)),
            _ => None,
        })
        .collect();
    controls.sort_by(|one, other| one.0.x.total_cmp(&other.0.x));
    let ((less, less_id), (more, more_id)) = (controls.first()?, controls.last()?);
    let [one, other] = [less, more].map(|item| &fitted.design.places[item.place]);
    let differs = |is_other: bool, size: f64| if is_other { 2.0 * size * size } else { 0.0 };
    let is_other_form = one.form != other.form || one.zone != other.zone;
    let area = |uncertainty: f64| if is_other_form { uncertainty * uncertainty } else { 0.0 };
    let variance = differs(true, assume.tile_to_tile)
        + less.variance
        + more.variance
        + area(one.area_relative_uncertainty)
        + area(other.area_relative_uncertainty)
        + differs(is_other_form, assume.form)
        + differs(one.class != other.class, assume.class)
        + differs(one.zone != other.zone, assume.zone)
        + differs(one.body != other.body, assume.body)
        + differs(one.cone != other.cone, assume.cone);
    let apart = more.x - less.x;
    let is_known = |id| evidence.controls.iter().any(|control| control.id == id);
    let is_far = apart > FAR * variance.sqrt() && apart > (1.0f64 + CONTROLS_ALIKE).ln();
    (is_far && is_known(*less_id) && is_known(*more_id)).then(|| Note::ControlsApart {
        less: *less_id,
        more: *more_id,
        ratio: apart.exp(),
    })
}

/// The pieces that are most surely slips.
fn odd(fitted: &Fitted) -> Vec<Note> {
    let mut found: Vec<(f64, Note)> = fitted
        .items
        .iter()
        .filter_map(|item| {
            let middle = fitted.middle_at(&fitted.at, item.place);
            let slip = 1.0 - fitted.local(item, middle, &fitted.at).meant;
            (slip > SURELY_A_SLIP).then(|| (slip, Note::Odd { piece: item.piece, ratio: (item.x - middle).exp() }))
        })
        .collect();
    found.sort_by(|one, other| other.0.total_cmp(&one.0));
    found.into_iter().take(MOST_ODD).map(|(_, note)| note).collect()
}

/// For each kind of group the two that are furthest apart, where that is no chance.
fn groups_apart(fitted: &Fitted) -> Vec<Note> {
    let value = |(_, effect, size): &(Group, usize, f64)| fitted.at[EFFECTS + effect] * size;
    let kinds: [fn(&Group) -> bool; 3] = [
        |group| matches!(group, Group::Zone(_)),
        |group| matches!(group, Group::Body(_)),
        |group| matches!(group, Group::Cone(_)),
    ];
    let of_kind = kinds.iter().filter_map(|is_kind| {
        let mut groups: Vec<_> = fitted.design.groups.iter().filter(|(group, ..)| is_kind(group)).collect();
        groups.sort_by(|one, other| value(one).total_cmp(&value(other)));
        let (less, more) = (groups.first()?, groups.last()?);
        let apart = value(more) - value(less);
        let covariance = |one: usize, other: usize| fitted.covariance[(EFFECTS + one, EFFECTS + other)];
        let (a, b) = (less.1, more.1);
        let variance = covariance(a, a) * less.2.powi(2) + covariance(b, b) * more.2.powi(2)
            - 2.0 * covariance(a, b) * less.2 * more.2;
        (apart > FAR * variance.max(0.0).sqrt() && apart > NOTABLE).then(|| Note::GroupsApart {
            less: less.0,
            more: more.0,
            ratio: apart.exp(),
        })
    });
    of_kind.collect()
}
