//! The editor that calculates how much water brings a bucket to another SG. It keeps nothing: a check afterwards does.

use super::builder::{Ask, EXAMPLE_SG, EditorBuilder};
use super::notation::{SG, VOLUME};
use super::{EditContext, Note, PendingWrite};
use crate::Result;
use crate::archive::found;
use crate::evidence::{latest_sg, powder_density};
use crate::in_words::thin_glaze;
use crate::messages::editor_thin as say;
use laydown_domain::glaze::slurry::{Thinning, thin};
use laydown_domain::units::Grams;
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let bucket: entity::Bucket = context.subject()?;
    let glaze: entity::Glaze = found(context.conn, bucket.glaze)?;
    let style = builder.style;
    builder.title = say::title(&glaze.name, &bucket.name);
    builder.save_label = String::new();

    let (reading, checked_at) = latest_sg(context.conn, bucket.id)?;
    let from = builder.quantity(
        Ask::new("from", say::from()).hint(style.number(EXAMPLE_SG, 2)),
        checked_at.map(|_| reading.sg.hundred_thousandths()),
        SG,
    );
    let to = builder.quantity(Ask::new("to", say::to()).hint(style.number(1.42, 2)), None, SG);
    let volume =
        builder.quantity(Ask::new("volume", say::volume()).hint(style.volume.symbol()), bucket.volume_ul, VOLUME);
    let (Some(from), Some(to), Some(volume)) = (from, to, volume) else { return Ok(None) };
    let thinning = match thin(volume, from, to, powder_density(&glaze)) {
        Ok(thinning) => thinning,
        Err(error) => {
            builder.field_error("to", error);
            return Ok(None);
        }
    };
    for sg in [from, to] {
        builder.result_if(thin_glaze(sg, style).map(Note::attention));
    }
    match thinning {
        Thinning::Nothing => builder.result(Note::plain(say::there_already())),
        Thinning::AddWater(water) => {
            builder.result(Note::plain(say::add_water(style.volume(water))));
            builder.result(Note::plain(say::add_in_parts()));
        }
        Thinning::TakeOffWater { water, or_add_powder } => {
            builder.result(Note::plain(say::take_off_water(style.volume(water))));
            builder.result(Note::plain(say::or_add_powder(style.mass(or_add_powder, Grams::new(1.0)))));
            builder.result(Note::warning(say::dust()));
        }
    }
    Ok(None)
}
