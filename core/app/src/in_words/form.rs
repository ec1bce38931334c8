//! Why a form, its profile, a clay's shrinkage or an outline cannot be, in words.

use super::Sentence;
use super::units::figures;
use crate::messages::form_errors as say;
use laydown_domain::form::silhouette::PhotoError;
use laydown_domain::form::{FormError, MOST_POINTS, ProfileError, ShrinkageError};

impl Sentence for FormError {
    fn sentence(&self) -> String {
        match self {
            FormError::NoSize => say::no_size(),
            FormError::Capacity { capacity } => say::capacity(figures(capacity.value())),
            FormError::Area { area } => say::area(figures(area.value())),
            FormError::OneMeasure { capacity } => say::one_measure(figures(capacity.value())),
            FormError::HoldsNothing => say::holds_nothing(),
            FormError::HeightOfPlate => say::height_of_plate(),
            FormError::Profile(error) => error.sentence(),
        }
    }
}

impl Sentence for ProfileError {
    fn sentence(&self) -> String {
        match *self {
            ProfileError::TooFew => say::too_few_points(),
            ProfileError::TooMany => say::too_many_points(MOST_POINTS),
            ProfileError::OutOfReach { point } => say::out_of_reach(point),
            ProfileError::SameHeight { point } => say::same_height(point - 1, point),
            ProfileError::Crosses { point } => say::crosses(point),
            ProfileError::NoWall => say::no_wall(),
            ProfileError::WallTooThick { point } => say::wall_too_thick(point),
            ProfileError::Floor => say::floor(),
            ProfileError::FootRing => say::foot_ring(),
            ProfileError::NoWeight => say::no_weight(),
            ProfileError::NothingToGlaze => say::nothing_to_glaze(),
        }
    }
}

impl Sentence for ShrinkageError {
    fn sentence(&self) -> String {
        say::shrinkage()
    }
}

impl Sentence for PhotoError {
    fn sentence(&self) -> String {
        match self {
            PhotoError::NoPicture => say::photo_no_picture(),
            PhotoError::CutShort => say::photo_cut_short(),
            PhotoError::TooLarge => say::photo_too_large(),
            PhotoError::TooSmall => say::photo_too_small(),
            PhotoError::TooDark => say::photo_too_dark(),
            PhotoError::Busy => say::photo_busy(),
            PhotoError::Nothing => say::photo_nothing(),
            PhotoError::CutOff => say::photo_cut_off(),
            PhotoError::TooFar => say::photo_too_far(),
            PhotoError::NotAlone => say::photo_not_alone(),
            PhotoError::TooTilted => say::photo_too_tilted(),
            PhotoError::Lopsided => say::photo_lopsided(),
            PhotoError::FromAbove => say::photo_from_above(),
            PhotoError::Stacked => say::photo_stacked(),
            PhotoError::TooFlat => say::photo_too_flat(),
            PhotoError::Size => say::photo_size(),
        }
    }
}
