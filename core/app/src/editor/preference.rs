//! The editor of this phone's preferences: units, decimal mark, sound and touch.

use super::builder::{Ask, EditorBuilder, coded_item};
use super::{EditContext, FieldKind, PendingWrite};
use crate::Result;
use crate::evidence::preference;
use crate::in_words::Named;
use crate::messages::{editor as shared, editor_preference as say};
use laydown_domain::coded::Coded;
use laydown_domain::units::{AreaUnit, DecimalMark, LengthUnit, MassUnit, VolumeUnit};
use laydown_store::entity;

pub(super) fn build(context: &EditContext<'_>, builder: &mut EditorBuilder<'_>) -> Result<Option<PendingWrite>> {
    let saved = preference(context.conn)?;
    builder.title = say::title();
    let before = saved.clone();
    let preference = entity::Preference {
        mass: choice(builder, "mass", say::mass(), &saved.mass, MassUnit::ALL),
        volume: choice(builder, "volume", say::volume(), &saved.volume, VolumeUnit::ALL),
        area: choice(builder, "area", say::area(), &saved.area, AreaUnit::ALL),
        length: choice(builder, "length", say::length(), &saved.length, LengthUnit::ALL),
        decimal: choice(builder, "decimal", say::decimal(), &saved.decimal, DecimalMark::ALL),
        speak: builder.switch(Ask::new("speak", say::speak()), saved.speak),
        tick: builder.switch(Ask::new("tick", say::tick()), saved.tick),
        code_pieces: builder
            .switch(Ask::new("code_pieces", say::code_pieces()).help(say::code_pieces_help()), saved.code_pieces),
        ask_dip: builder.switch(Ask::new("ask_dip", say::ask_dip()).help(say::ask_dip_help()), saved.ask_dip),
        ..saved
    };
    let phone = builder.remark(Ask::new("phone", say::phone()).hint(say::phone_hint()), preference.phone.as_deref());
    let hand = Ask::new("hand", say::hand()).hint(say::hand_hint()).help(say::hand_help());
    let hand = builder.remark(hand, preference.hand.as_deref());
    let (Some(phone), Some(hand)) = (phone, hand) else { return Ok(None) };
    let preference = entity::Preference { phone, hand, ..preference };
    // What a phone begins with is nothing to write down.
    if preference == before {
        return Ok(Some(PendingWrite::nothing(preference.id, shared::saved())));
    }
    Ok(Some(PendingWrite::under(Some(preference.id), shared::saved(), move |_| preference)))
}

/// One of a closed list; answers with its code.
fn choice<T: Coded + Named>(
    builder: &mut EditorBuilder<'_>,
    key: &'static str,
    label: String,
    saved: &str,
    all: &[T],
) -> String {
    let items = all.iter().map(|value| coded_item(*value, "")).collect();
    builder.choice(Ask::new(key, label), Some(saved), FieldKind::Choice, items).unwrap_or_default()
}
