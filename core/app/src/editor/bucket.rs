//! The editor of a bucket: one mixed lot of a glaze.

use super::builder::{Ask, EditorBuilder};
use super::notation::{LENGTH, MASS, VOLUME};
use super::{EditContext, Note, PendingWrite};
use crate::Result;
use crate::archive::found;
use crate::messages::{editor as shared, editor_bucket as say};
use laydown_domain::glaze::bucket::volume_at_level;
use laydown_domain::units::{Grams, Millilitres, Millimetres};
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
    let length = |key: &'static str, label: String| Ask::new(key, label).hint(style.length.symbol());
    let diameter = builder.optional(
        length("diameter", say::diameter()).help(say::diameter_help()),
        saved.and_then(|bucket| bucket.diameter_um),
        LENGTH,
    );
    let depth = builder.optional(length("depth", say::depth()), saved.and_then(|bucket| bucket.depth_um), LENGTH);
    let empty = builder.optional(
        Ask::new("empty", say::empty()).hint(style.mass.symbol()).help(say::empty_help()),
        saved.and_then(|bucket| bucket.empty_mg),
        MASS,
    );
    if let (Some(Some(diameter)), Some(Some(depth))) = (diameter, depth)
        && let Ok(full) = volume_at_level(diameter, Some(depth), depth)
    {
        builder.result(Note::plain(say::holds(style.volume(full))));
    }
    let (Some(name), Some(volume), Some(diameter), Some(depth), Some(empty)) = (name, volume, diameter, depth, empty)
    else {
        return Ok(None);
    };
    let sentence = shared::is_saved(&name);
    let mixed_at = saved.map_or(context.now.unix_ms, |bucket| bucket.mixed_at);
    let bucket = move |id| entity::Bucket {
        id,
        glaze: glaze_id,
        name,
        volume_ul: volume.map(Millilitres::microlitres),
        mixed_at,
        diameter_um: diameter.map(Millimetres::micrometres),
        depth_um: depth.map(Millimetres::micrometres),
        empty_mg: empty.map(Grams::milligrams),
        ..current.unwrap_or_default()
    };
    Ok(Some(PendingWrite::one(context, sentence, bucket)))
}
