//! The sheet that reckons how much water brings a bucket to another SG. It keeps nothing: a check afterwards does.

use super::draft::{Ask, Draft, volume_text};
use super::{Desk, Keeping, Note};
use crate::Result;
use crate::facts::{latest_sg, powder_density};
use crate::rows::found;
use laydown_domain::glaze::slurry::{Thinning, thin};
use laydown_domain::units::{Grams, parse};
use laydown_store::entity;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let bucket: entity::Bucket = desk.subject()?;
    let glaze: entity::Glaze = found(desk.conn, bucket.glaze)?;
    let style = draft.style;
    draft.title = format!("Thin {}, {}", glaze.name, bucket.name);
    draft.keep_label = String::new();

    let (reading, checked_at) = latest_sg(desk.conn, bucket.id)?;
    let from = draft.quantity(
        Ask::new("from", "SG now").hint("1.45"),
        checked_at.map(|_| style.specific_gravity(reading.sg)),
        parse::specific_gravity,
    );
    let to = draft.quantity(Ask::new("to", "SG wanted").hint("1.42"), None, parse::specific_gravity);
    let volume = draft.quantity(
        Ask::new("volume", "Glaze in the bucket").hint(style.volume.symbol()),
        bucket.volume_ul.map(|ul| volume_text(style, ul)),
        parse::volume,
    );
    let (Some(from), Some(to), Some(volume)) = (from, to, volume) else { return Ok(None) };
    let thinning = match thin(volume, from, to, powder_density(&glaze)) {
        Ok(thinning) => thinning,
        Err(error) => {
            draft.refuse("to", error);
            return Ok(None);
        }
    };
    for sg in [from, to] {
        draft.result_if(sg.doubt(style).map(Note::attention));
    }
    match thinning {
        Thinning::Nothing => draft.result(Note::plain("It is there already.")),
        Thinning::AddWater(water) => {
            draft.result(Note::plain(format!("Add {} of water.", style.volume(water))));
            draft.result(Note::plain(
                "Add two thirds of it, stir, check, then the rest: water cannot be taken out again the same day.",
            ));
        }
        Thinning::TakeOffWater { water, or_add_powder } => {
            draft.result(Note::plain(format!("Let it settle and take off {} of clear water.", style.volume(water))));
            draft.result(Note::plain(format!(
                "Or stir in {} of the dry glaze.",
                style.mass(or_add_powder, Grams::new(1.0))
            )));
            draft.result(Note::warning("Dry glaze is dust: mask on, add it to water, wipe up wet."));
        }
    }
    Ok(None)
}
