//! What the fields of the studio's things can hold: events come from elsewhere too, and one value that cannot be must not make a
//! thing unreadable. Such a value is left out of the fold, on every phone alike, and what was there before it stays.

use std::ops::RangeInclusive;

use serde::Deserialize;
use serde_json::Value;
use uuid::Uuid;

use super::entity::{Materials, Pairs, Points, Table, Weights};
use crate::journal::{Body, Clock, Kind, Rules};

/// The rules of the kinds that this version knows.
pub(super) struct Domain;

impl Rules for Domain {
    fn can_be(&self, kind: &Kind, field: &str, value: &Value) -> bool {
        Table::named(kind).is_none_or(|table| (table.can_be)(field, value))
    }

    fn is_whole(&self, kind: &Kind, body: &Body) -> bool {
        Table::named(kind).is_some_and(|table| {
            let set = body.iter().filter(|(name, value)| !value.is_null() && (table.can_be)(name, value));
            (table.is_whole)(&set.map(|(name, value)| (name.clone(), value.clone())).collect())
        })
    }
}

/// A type that a field has in the journal.
pub(super) trait Held {
    /// Whether the field `name` can have this value.
    fn can_be(name: &str, value: &Value) -> bool;
}

impl Held for String {
    fn can_be(_: &str, value: &Value) -> bool {
        value.is_string()
    }
}

impl Held for bool {
    /// Nothing is no.
    fn can_be(_: &str, value: &Value) -> bool {
        value.is_boolean() || value.is_null()
    }
}

impl Held for Uuid {
    fn can_be(_: &str, value: &Value) -> bool {
        value.as_str().is_some_and(|text| Uuid::try_parse(text).is_ok())
    }
}

impl Held for i64 {
    fn can_be(name: &str, value: &Value) -> bool {
        value.as_i64().is_some_and(|number| range(name).contains(&number))
    }
}

impl Held for Points {
    fn can_be(_: &str, value: &Value) -> bool {
        Points::deserialize(value).is_ok()
    }
}

impl Held for Weights {
    fn can_be(name: &str, value: &Value) -> bool {
        Weights::deserialize(value).is_ok_and(|weights| weights.0.iter().all(|weight| range(name).contains(weight)))
    }
}

impl Held for Materials {
    fn can_be(_: &str, value: &Value) -> bool {
        Materials::deserialize(value).is_ok_and(|materials| {
            materials.0.iter().all(|material| {
                let numbers = [
                    ("parts_e3", Some(material.parts_e3)),
                    ("powder_density_e3", material.density_e3),
                    ("price_e3", material.price_e3),
                ];
                numbers.iter().all(|(name, number)| number.is_none_or(|number| range(name).contains(&number)))
            })
        })
    }
}

impl Held for Pairs {
    fn can_be(_: &str, value: &Value) -> bool {
        Pairs::deserialize(value).is_ok()
    }
}

impl<T: Held> Held for Option<T> {
    fn can_be(name: &str, value: &Value) -> bool {
        value.is_null() || T::can_be(name, value)
    }
}

/// The numbers that a field can hold. The unit ends its name, as the schema explains. Wider than what can be typed, so that
/// nothing that was ever kept is left out; narrow enough that no sum or product of them overflows.
fn range(name: &str) -> RangeInclusive<i64> {
    const LATEST_MS: i64 = Clock::LATEST.millis();
    match name {
        // Heavier than water, and a slurry that still pours: the limits of `SpecificGravity`.
        "specific_gravity_e5" | "working_sg_e5" => 100_001..=219_999,
        // The limits of `PowderDensity`.
        "powder_density_e3" => 1_500..=7_000,
        "at" | "mixed_at" | "fired_at" | "drift_answered_at" => -LATEST_MS..=LATEST_MS,
        "liking" => 1..=5,
        "shelf" | "shelves" => 0..=1_000,
        "temperature_mc" | "water_temperature_mc" | "top_mc" => -300_000..=3_000_000,
        "x_e4" | "y_e4" => -100_000..=100_000,
        // A tonne, 1,000 litres, 1,000 square metres, a kilometre and less.
        _ => 0..=1_000_000_000,
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[test]
    fn a_field_holds_what_it_can() {
        let can_be = |kind: &'static str, field: &str, value: Value| Domain.can_be(&Kind::of(kind), field, &value);
        assert!(can_be("glaze", "name", json!("Rain")));
        assert!(!can_be("glaze", "name", json!(7)));
        assert!(!can_be("glaze", "name", Value::Null));
        assert!(can_be("glaze", "gone", Value::Null));
        assert!(!can_be("glaze", "gone", json!(1)));
        assert!(can_be("coat", "note", Value::Null));
        assert!(!can_be("coat", "net_mg", json!(-1)));
        assert!(!can_be("coat", "net_mg", json!(7.5)));
        assert!(!can_be("coat", "specific_gravity_e5", json!(100_000)));
        assert!(!can_be("coat", "at", json!(i64::MAX)));
        assert!(!can_be("coat", "form", json!("no id")));
        assert!(!can_be("form", "profile", json!([[], "x"])));
        let material = |parts: i64| json!([{"name": "Silica", "parts_e3": parts, "of a newer laydown": 7}]);
        assert!(can_be("glaze", "materials", material(42_500)));
        assert!(!can_be("glaze", "materials", material(-1)));
        assert!(!can_be("glaze", "materials", json!([{"name": "Silica"}])));
        assert!(can_be("form", "a field of a newer laydown", json!([[], "x"])));
        assert!(can_be("a kind of a newer laydown", "name", json!(7)));
    }

    #[test]
    fn what_has_all_that_is_needed_is_whole() {
        let is_whole = |body: Value| Domain.is_whole(&Kind::of("scale"), body.as_object().unwrap());
        assert!(is_whole(json!({"name": "Shelf", "capacity_mg": 5_000_000, "step_mg": 100})));
        assert!(is_whole(json!({"name": "Shelf", "capacity_mg": 5_000_000, "step_mg": 100, "gone": null, "x": 1})));
        assert!(!is_whole(json!({"name": "Shelf", "capacity_mg": 5_000_000})));
        assert!(!is_whole(json!({"name": "Shelf", "capacity_mg": 5_000_000, "step_mg": -4})));
    }
}
