//! The editor of a bucket: one mixed lot of a glaze.

use super::builder::{Ask, EditorBuilder};
use super::notation::VOLUME;
use super::{EditContext, PendingWrite};
use crate::Result;
use crate::archive::found;
use crate::messages::{editor as shared, editor_bucket as say};
use laydown_domain::units::Millilitres;
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let current: Option<entity::Bucket> = context.current()?;
    let saved = current.as_ref();
    let glaze_id = match saved {
        Some(bucket) => bucket.glaze,
        None => context.subject::<entity::Glaze>()?.id,
    };
    let glaze: entity::Glaze = found(context.conn, glaze_id)?;
    let style = builder.style;
    builder.title = if saved.is_some() { say::title(&glaze.name) } else { say::new(&glaze.name) };
    builder.remove_label = say::archive();

    let name =
        builder.text(Ask::new("name", shared::name()).hint(say::name_hint()), saved.map(|bucket| bucket.name.as_str()));
    let volume = builder.optional(
        Ask::new("volume", say::volume()).hint(style.volume.symbol()),
        saved.and_then(|bucket| bucket.volume_ul),
        VOLUME,
    );
    let (Some(name), Some(volume)) = (name, volume) else { return Ok(None) };
    let sentence = shared::is_saved(&name);
    let mixed_at = saved.map_or(context.now.unix_ms, |bucket| bucket.mixed_at);
    let bucket = move |id| entity::Bucket {
        id,
        glaze: glaze_id,
        name,
        volume_ul: volume.map(Millilitres::microlitres),
        mixed_at,
        ..current.unwrap_or_default()
    };
    Ok(Some(PendingWrite::one(context, sentence, bucket)))
}
