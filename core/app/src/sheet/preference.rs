//! The sheet of this phone's preferences: units, decimal mark, sound and touch.

use super::draft::{Ask, Draft, coded_item};
use super::{Desk, FieldKind, Keeping};
use crate::Result;
use crate::facts::preference;
use laydown_domain::coded::Coded;
use laydown_domain::units::{AreaUnit, DecimalMark, LengthUnit, MassUnit, VolumeUnit};
use laydown_store::entity;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let kept = preference(desk.conn)?;
    draft.title = "Units, sound and touch".to_owned();
    let preference = entity::Preference {
        mass: choice(draft, "mass", "Weights in", &kept.mass, MassUnit::ALL),
        volume: choice(draft, "volume", "Volumes in", &kept.volume, VolumeUnit::ALL),
        area: choice(draft, "area", "Areas in", &kept.area, AreaUnit::ALL),
        length: choice(draft, "length", "Lengths in", &kept.length, LengthUnit::ALL),
        decimal: choice(draft, "decimal", "Decimal mark", &kept.decimal, DecimalMark::ALL),
        speak: draft.switch(Ask::new("speak", "Speak the verdict"), kept.speak),
        tick: draft.switch(Ask::new("tick", "Tick at every key"), kept.tick),
        code_pieces: draft.switch(
            Ask::new("code_pieces", "A code for each piece")
                .help("To pencil on the foot, so that it is known again after the firing. Off: equal pieces are counted as a run."),
            kept.code_pieces,
        ),
        ..kept
    };
    let phone =
        draft.remark(Ask::new("phone", "Name of this phone").hint("Tablet by the sink"), preference.phone.as_deref());
    let Some(phone) = phone else { return Ok(None) };
    Ok(Some(Keeping::one(Some(preference.id), "Kept.".to_owned(), move |_| entity::Preference { phone, ..preference })))
}

/// One of a closed list; answers with its code.
fn choice<T: Coded>(draft: &mut Draft<'_>, key: &'static str, label: &'static str, kept: &str, all: &[T]) -> String {
    let items = all.iter().map(|value| coded_item(value, "")).collect();
    draft.choice(Ask::new(key, label), Some(kept), FieldKind::Choice, items).unwrap_or_default()
}
