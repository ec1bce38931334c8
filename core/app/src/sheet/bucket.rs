//! The sheet of a bucket: one mixed lot of a glaze.

use super::draft::{Ask, Draft, volume_text};
use super::{Desk, Keeping};
use crate::Result;
use crate::rows::found;
use laydown_domain::units::{Millilitres, parse};
use laydown_store::entity;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let current: Option<entity::Bucket> = desk.current()?;
    let kept = current.as_ref();
    let glaze_id = match kept {
        Some(bucket) => bucket.glaze,
        None => desk.subject::<entity::Glaze>()?.id,
    };
    let glaze: entity::Glaze = found(desk.conn, glaze_id)?;
    let style = draft.style;
    draft.title = format!("{}: {}", glaze.name, kept.map_or("new bucket", |_| "bucket"));
    draft.remove_label = "Put this bucket away";

    let name = draft.text(Ask::new("name", "Name").hint("Big bucket"), kept.map(|bucket| bucket.name.as_str()));
    let volume = draft.optional(
        Ask::new("volume", "How much is in it, if known").hint(style.volume.symbol()),
        kept.and_then(|bucket| bucket.volume_ul).map(|ul| volume_text(style, ul)),
        parse::volume,
    );
    let (Some(name), Some(volume)) = (name, volume) else { return Ok(None) };
    let sentence = format!("{name} is kept.");
    let mixed_at = kept.map_or(desk.now.unix_ms, |bucket| bucket.mixed_at);
    let bucket = move |id| entity::Bucket {
        id,
        glaze: glaze_id,
        name,
        volume_ul: volume.map(Millilitres::microlitres),
        mixed_at,
        gone: false,
    };
    Ok(Some(Keeping::one(desk.id, sentence, bucket)))
}
