//! How a target is chosen: by everything known, by the best single evidence as before there were fired pots, or kept.

use serde::Serialize;
use uuid::Uuid;

use crate::messages::pooled as say;
use laydown_domain::form::ZoneKind;
use laydown_domain::units::Grams;
use laydown_store::entity::{self, Pairs};

/// How the target of a glaze on a zone of a form is chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, uniffi::Enum)]
pub enum TargetChoice {
    /// From everything known of the glaze, as usual.
    AllEvidence,
    /// From the best single evidence, as before fired pots moved it; for this glaze and zone.
    BestEvidence,
    /// It stays as it is now; for this form, glaze and zone.
    Kept,
}

/// Another way in which the target can be chosen.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, uniffi::Record)]
pub struct TargetOption {
    /// What the button says.
    pub label: String,
    /// To hand to [`crate::Studio::choose_target`].
    pub choice: TargetChoice,
}

/// What the potter has chosen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Chosen {
    All,
    Best,
    /// So much dry glaze.
    Kept(Grams),
}

/// The code of [`TargetChoice::BestEvidence`] in [`entity::Glaze::targets`].
const BEST: &str = "best";

/// What is chosen for a zone of a form. What cannot be read came from elsewhere and counts as nothing.
pub(crate) fn chosen(glaze: &entity::Glaze, form: Uuid, zone: ZoneKind) -> Chosen {
    let under = |key: &str| {
        let pairs = glaze.targets.iter().flat_map(|targets| &targets.0);
        pairs.filter(|(named, _)| named == key).map(|(_, how)| how.as_str()).next_back()
    };
    let kept = under(&kept_key(form, zone)).and_then(|mg| mg.parse().ok()).map(Grams::from_milligrams);
    match kept.filter(|dry| dry.is_positive()) {
        Some(dry) => Chosen::Kept(dry),
        None if under(zone.code()) == Some(BEST) => Chosen::Best,
        None => Chosen::All,
    }
}

/// The glaze once this is chosen; `dry` is the dry glaze in the target of now.
pub(crate) fn with_choice(
    glaze: entity::Glaze,
    form: Uuid,
    zone: ZoneKind,
    choice: TargetChoice,
    dry: Grams,
) -> entity::Glaze {
    let key = kept_key(form, zone);
    let mut pairs = glaze.targets.clone().unwrap_or_default().0;
    pairs.retain(|(named, _)| *named != key && (choice == TargetChoice::Kept || named != zone.code()));
    match choice {
        TargetChoice::AllEvidence => {}
        TargetChoice::BestEvidence => pairs.push((zone.code().to_owned(), BEST.to_owned())),
        TargetChoice::Kept => pairs.push((key, dry.milligrams().to_string())),
    }
    entity::Glaze { targets: Some(Pairs(pairs)).filter(|pairs| !pairs.0.is_empty()), ..glaze }
}

/// The other choices. `before`: the target by the best single evidence, in words; `now`: the one that is shown.
pub(crate) fn options(chosen: Chosen, is_learned: bool, before: Option<&str>, now: &str) -> Vec<TargetOption> {
    let option = |choice, label| TargetOption { label, choice };
    match chosen {
        Chosen::All if is_learned => {
            let back = before.filter(|before| *before != now);
            let back = back.map(|before| option(TargetChoice::BestEvidence, say::back_to(before)));
            back.into_iter().chain([option(TargetChoice::Kept, say::keep(now))]).collect()
        }
        Chosen::All => Vec::new(),
        Chosen::Best if !is_learned => Vec::new(),
        Chosen::Best | Chosen::Kept(_) => vec![option(TargetChoice::AllEvidence, say::use_all())],
    }
}

fn kept_key(form: Uuid, zone: ZoneKind) -> String {
    format!("{} {form}", zone.code())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_choice_holds_for_its_zone_and_a_kept_amount_for_its_form() {
        let (mug, bowl) = (Uuid::from_u128(1), Uuid::from_u128(2));
        let (inside, outside) = (ZoneKind::Inside, ZoneKind::Outside);
        let dry = Grams::new(9.8);
        let glaze = entity::Glaze::default();
        assert_eq!(chosen(&glaze, mug, inside), Chosen::All);
        let kept = with_choice(glaze, mug, inside, TargetChoice::Kept, dry);
        assert_eq!(chosen(&kept, mug, inside), Chosen::Kept(dry));
        assert_eq!((chosen(&kept, bowl, inside), chosen(&kept, mug, outside)), (Chosen::All, Chosen::All));
        let best = with_choice(kept.clone(), bowl, inside, TargetChoice::BestEvidence, dry);
        assert_eq!((chosen(&best, bowl, inside), chosen(&best, mug, inside)), (Chosen::Best, Chosen::Kept(dry)));
        assert_eq!(chosen(&best, bowl, outside), Chosen::All);
        let again = with_choice(kept, mug, inside, TargetChoice::AllEvidence, dry);
        assert_eq!(again.targets, None);
        // A row from elsewhere.
        let odd = Pairs(vec![(kept_key(mug, inside), "-4".into()), ("inside".into(), "oracle".into())]);
        assert_eq!(chosen(&entity::Glaze { targets: Some(odd), ..again }, mug, inside), Chosen::All);
    }
}
