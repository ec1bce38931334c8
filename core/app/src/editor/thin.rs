//! The editor that calculates how much water brings a bucket to another SG. It keeps nothing: a check afterwards does.

use super::builder::{Ask, EditorBuilder, volume_text};
use super::{EditContext, Note, PendingWrite};
use crate::Result;
use crate::archive::found;
use crate::evidence::{latest_sg, powder_density};
use laydown_domain::glaze::slurry::{Thinning, thin};
use laydown_domain::units::{Grams, parse};
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let bucket: entity::Bucket = context.subject()?;
    let glaze: entity::Glaze = found(context.conn, bucket.glaze)?;
    let style = builder.style;
    builder.title = format!("Thin {}, {}", glaze.name, bucket.name);
    builder.save_label = String::new();

    let (reading, checked_at) = latest_sg(context.conn, bucket.id)?;
    let from = builder.quantity(
        Ask::new("from", "SG now").hint("1.45"),
        checked_at.map(|_| style.specific_gravity(reading.sg)),
        parse::specific_gravity,
    );
    let to = builder.quantity(Ask::new("to", "SG wanted").hint("1.42"), None, parse::specific_gravity);
    let volume = builder.quantity(
        Ask::new("volume", "Glaze in the bucket").hint(style.volume.symbol()),
        bucket.volume_ul.map(|ul| volume_text(style, ul)),
        parse::volume,
    );
    let (Some(from), Some(to), Some(volume)) = (from, to, volume) else { return Ok(None) };
    let thinning = match thin(volume, from, to, powder_density(&glaze)) {
        Ok(thinning) => thinning,
        Err(error) => {
            builder.field_error("to", error);
            return Ok(None);
        }
    };
    for sg in [from, to] {
        builder.result_if(sg.doubt(style).map(Note::attention));
    }
    match thinning {
        Thinning::Nothing => builder.result(Note::plain("It is there already.")),
        Thinning::AddWater(water) => {
            builder.result(Note::plain(format!("Add {} of water.", style.volume(water))));
            builder.result(Note::plain(
                "Add two thirds of it, stir, check, then the rest: water cannot be taken out again the same day.",
            ));
        }
        Thinning::TakeOffWater { water, or_add_powder } => {
            builder.result(Note::plain(format!("Let it settle and take off {} of clear water.", style.volume(water))));
            builder.result(Note::plain(format!(
                "Or stir in {} of the dry glaze.",
                style.mass(or_add_powder, Grams::new(1.0))
            )));
            builder.result(Note::warning("Dry glaze is dust: mask on, add it to water, wipe up wet."));
        }
    }
    Ok(None)
}
