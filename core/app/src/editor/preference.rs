//! The editor of this phone's preferences: units, decimal mark, sound and touch.

use super::builder::{Ask, EditorBuilder, coded_item};
use super::{EditContext, FieldKind, PendingWrite};
use crate::Result;
use crate::evidence::preference;
use laydown_domain::coded::Coded;
use laydown_domain::units::{AreaUnit, DecimalMark, LengthUnit, MassUnit, VolumeUnit};
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let saved = preference(context.conn)?;
    builder.title = "Units, sound and touch".to_owned();
    let preference = entity::Preference {
        mass: choice(builder, "mass", "Weights in", &saved.mass, MassUnit::ALL),
        volume: choice(builder, "volume", "Volumes in", &saved.volume, VolumeUnit::ALL),
        area: choice(builder, "area", "Areas in", &saved.area, AreaUnit::ALL),
        length: choice(builder, "length", "Lengths in", &saved.length, LengthUnit::ALL),
        decimal: choice(builder, "decimal", "Decimal mark", &saved.decimal, DecimalMark::ALL),
        speak: builder.switch(Ask::new("speak", "Speak the verdict"), saved.speak),
        tick: builder.switch(Ask::new("tick", "Tick at every key"), saved.tick),
        code_pieces: builder.switch(
            Ask::new("code_pieces", "A code for each piece")
                .help("To mark on the foot, so that you know the piece after the firing. Off: equal pieces are counted as a run."),
            saved.code_pieces,
        ),
        ..saved
    };
    let phone =
        builder.remark(Ask::new("phone", "Name of this phone").hint("Tablet by the sink"), preference.phone.as_deref());
    let Some(phone) = phone else { return Ok(None) };
    Ok(Some(PendingWrite::one(Some(preference.id), "Saved.".to_owned(), move |_| entity::Preference {
        phone,
        ..preference
    })))
}

/// One of a closed list; answers with its code.
fn choice<T: Coded>(
    builder: &mut EditorBuilder<'_>,
    key: &'static str,
    label: &'static str,
    saved: &str,
    all: &[T],
) -> String {
    let items = all.iter().map(|value| coded_item(value, "")).collect();
    builder.choice(Ask::new(key, label), Some(saved), FieldKind::Choice, items).unwrap_or_default()
}
