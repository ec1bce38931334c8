//! The editor of what was done to a bucket, or seen of it: water, powder, what changes its flow, sieving, its level.

use super::builder::{Ask, EditorBuilder, coded_item};
use super::notation::{LENGTH, MASS, VOLUME};
use super::{EditContext, FieldKind, Note, PendingWrite};
use crate::Result;
use crate::archive::found;
use crate::contents::{BucketHistory, glaze_in, volume_at};
use crate::evidence::{latest_sg, powder_density};
use crate::messages::editor_bucket_entry as say;
use laydown_domain::glaze::bucket::{EntryKind, can_take_off};
use laydown_domain::units::{Grams, Millilitres, Millimetres};
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::BucketEntry> = context.current()?;
    let saved = current.as_ref();
    let bucket: entity::Bucket = match saved {
        Some(entry) => found(context.conn, entry.bucket)?,
        None => context.subject()?,
    };
    let glaze: entity::Glaze = found(context.conn, bucket.glaze)?;
    let style = builder.style;
    builder.title = say::title(&glaze.name, &bucket.name);
    builder.remove_label = say::remove();

    let items = EntryKind::ALL.iter().map(|kind| coded_item(*kind, "")).collect();
    let what =
        builder.choice(Ask::new("what", say::what()), saved.map(|entry| entry.what.as_str()), FieldKind::Choice, items);
    let kind: Option<EntryKind> = what.as_deref().and_then(|code| code.parse().ok());
    let (mut volume, mut amount, mut level) = (Some(None), Some(None), Some(None));
    match kind {
        Some(EntryKind::Water | EntryKind::WaterOff) => {
            let ask = Ask::new("volume", say::volume()).hint(style.volume.symbol());
            volume = builder.quantity(ask, saved.and_then(|entry| entry.volume_ul), VOLUME).map(Some);
        }
        Some(EntryKind::Powder) => {
            let ask = Ask::new("amount", say::amount()).hint(style.mass.symbol());
            amount = builder.quantity(ask, saved.and_then(|entry| entry.amount_mg), MASS).map(Some);
        }
        Some(EntryKind::Flocculant | EntryKind::Deflocculant) => {
            let ask = Ask::new("amount", say::amount_if_known()).hint(style.mass.symbol()).help(say::never_dosed());
            amount = builder.optional(ask, saved.and_then(|entry| entry.amount_mg), MASS);
        }
        Some(EntryKind::Level) => {
            let ask = Ask::new("level", say::level()).hint(style.length.symbol()).help(say::level_help());
            level = builder.quantity(ask, saved.and_then(|entry| entry.level_um), LENGTH).map(Some);
        }
        Some(EntryKind::Weighed) => {
            let ask = Ask::new("amount", say::weight()).hint(style.mass.symbol());
            amount = builder.quantity(ask, saved.and_then(|entry| entry.amount_mg), MASS).map(Some);
        }
        Some(EntryKind::Sieved | EntryKind::Note) => {}
        // A kind of a newer version keeps what it has.
        None => {
            volume = Some(saved.and_then(|entry| entry.volume_ul).map(Millilitres::from_microlitres));
            amount = Some(saved.and_then(|entry| entry.amount_mg).map(Grams::from_milligrams));
            level = Some(saved.and_then(|entry| entry.level_um).map(Millimetres::from_micrometres));
        }
    }
    let at =
        builder.day(Ask::new("date", say::date()), saved.map_or(context.now.unix_ms, |entry| entry.at), context.now);
    let note = builder.remark(Ask::new("note", say::note()), saved.and_then(|entry| entry.note.as_deref()));
    let (Some(what), Some(volume), Some(amount), Some(level)) = (what, volume, amount, level) else { return Ok(None) };
    if let (Some(EntryKind::WaterOff), Some(water), None) = (kind, volume, saved) {
        let contents = BucketHistory::read(context.conn, bucket.id)?.contents(context.conn, &bucket, &glaze)?;
        let possible = contents
            .volume
            .map_or(Ok(()), |volume| can_take_off(water, volume, contents.sg.sg, powder_density(&glaze)));
        if let Err(error) = possible {
            builder.field_error("volume", error);
            return Ok(None);
        }
    }
    if let Some(level) = level.filter(|_| kind == Some(EntryKind::Level)) {
        match volume_at(&bucket, level) {
            Some(Ok(volume)) => builder.result(Note::plain(say::level_is(style.volume(volume)))),
            Some(Err(error)) => {
                builder.field_error("level", error);
                return Ok(None);
            }
            None => builder.result(Note::attention(say::measure_bucket())),
        }
    }
    if let Some(full) = amount.filter(|_| kind == Some(EntryKind::Weighed)) {
        match glaze_in(&bucket, full) {
            Some(Ok(wet)) => {
                let (sg, _) = latest_sg(context.conn, bucket.id)?;
                let volume = Millilitres::new(wet.value() / sg.sg.value());
                builder.result(Note::plain(say::level_is(style.volume(volume))));
            }
            Some(Err(error)) => {
                builder.field_error("amount", error);
                return Ok(None);
            }
            None => builder.result(Note::attention(say::tare_bucket())),
        }
    }
    if kind == Some(EntryKind::Powder) {
        builder.result(Note::warning(say::dust()));
    }
    let (Some(at), Some(note)) = (at, note) else { return Ok(None) };
    let sentence = say::saved(&bucket.name);
    let entry = move |id| entity::BucketEntry {
        id,
        bucket: bucket.id,
        at,
        what,
        volume_ul: volume.map(Millilitres::microlitres),
        amount_mg: amount.map(Grams::milligrams),
        level_um: level.map(Millimetres::micrometres),
        note,
        ..current.unwrap_or_default()
    };
    Ok(Some(PendingWrite::one(context, sentence, entry)))
}
