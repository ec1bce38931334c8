//! What the facts of the domain and the store are in words: a file for each subject. The domain knows numbers and codes; a
//! sentence that a potter reads is made here, from `i18n`.

mod bisque;
mod cautions;
mod dry;
mod faults;
mod form;
mod glaze;
mod names;
mod scale;
mod store;
mod sync;
mod target;
#[cfg(test)]
mod tests;
mod units;
mod verdict;

pub use names::Named;
pub use target::{TargetWords, span, target};
pub use verdict::{VerdictWords, reading_refused, verdict};

pub(crate) use bisque::{soaked_pores, trend_of_lots};
pub(crate) use cautions::{caution_text, caution_title};
pub(crate) use dry::{dry_refused, with_doubt};
pub(crate) use faults::{about, hint, witnessed};
pub(crate) use glaze::hurts;
pub(crate) use names::name_of;
pub(crate) use scale::{
    class_allows, fits, good_from, known_weight, repeatability_refused, repeats, repeats_as_its_step,
};
pub(crate) use store::refusals;
pub(crate) use sync::remote_error;
pub(crate) use target::{accepted_by_chance, right_on_aim, thin_tile, why_target};
pub(crate) use units::{StyleWords, decimal_mark, thin_glaze};
pub(crate) use verdict::{rests, scale_advice, scale_doubt, when_to_read};

/// A sentence that a potter reads: ready, or made of why something was refused.
pub trait Sentence {
    /// The sentence, in the language in use.
    fn sentence(&self) -> String;
}

impl Sentence for str {
    fn sentence(&self) -> String {
        self.to_owned()
    }
}

impl Sentence for String {
    fn sentence(&self) -> String {
        self.clone()
    }
}

impl<T: Sentence + ?Sized> Sentence for &T {
    fn sentence(&self) -> String {
        T::sentence(self)
    }
}
