//! The sheet of this phone's preferences: units, decimal mark, sound and touch.

use super::draft::{Ask, Draft, item};
use super::{Desk, FieldKind, Keeping};
use crate::store::{device, entity};
use crate::studio::Result;
use crate::studio::facts::preference;

pub(super) fn lay(desk: &Desk<'_>, draft: &mut Draft<'_>) -> Result<Option<Keeping>> {
    let kept = preference(desk.conn)?;
    draft.title = "Units, sound and touch".to_owned();
    let mut choice = |key, label, kept: &str, items: &[(&str, &str)]| {
        let items = items.iter().map(|(code, name)| item(code, name, "")).collect();
        draft.choice(Ask::new(key, label), Some(kept), FieldKind::Choice, items).unwrap_or_default()
    };
    let preference = move |id| entity::Preference {
        id,
        mass: choice("mass", "Weights in", &kept.mass, &[("gram", "Grams"), ("ounce", "Ounces")]),
        volume: choice(
            "volume",
            "Volumes in",
            &kept.volume,
            &[("millilitre", "Millilitres"), ("us_fluid_ounce", "US fluid ounces"), ("imperial_fluid_ounce", "Imperial fluid ounces")],
        ),
        area: choice("area", "Areas in", &kept.area, &[("square_centimetre", "Square centimetres"), ("square_inch", "Square inches")]),
        decimal: choice("decimal", "Decimal mark", &kept.decimal, &[("point", "Point: 19.4"), ("comma", "Comma: 19,4")]),
        speak: draft.switch(Ask::new("speak", "Speak the verdict"), kept.speak),
        tick: draft.switch(Ask::new("tick", "Tick at every key"), kept.tick),
    };
    Ok(Some(Keeping::one(Some(device(desk.conn)?.into()), "Kept.".to_owned(), preference)))
}
