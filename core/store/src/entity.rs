//! The things of the studio, one struct per kind: its fields in the journal, its row in the fold, its reading back.
//!
//! One definition here is the struct, the JSON body and the columns; the table itself is in `schema/`. All quantities
//! are scaled integers so that no phone rounds them otherwise: the unit ends the name, as the schema explains.
//!
//! A field marked `as word` is a code or the id of one of a few things. In its column lies the number of its word, since
//! there are coats by the hundred thousand; everything that reads or writes a row turns the one into the other here.

use std::borrow::Cow;
use std::str::FromStr;

use rusqlite::types::{FromSql, FromSqlError, FromSqlResult, ToSqlOutput, ValueRef};
use rusqlite::{Connection, Params, Row, ToSql, params_from_iter};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use uuid::Uuid;

use super::domain::Held;
use super::error::StoreError;
use super::packed::StringDictionary;
use crate::journal::{self, Kind, State};
use laydown_domain::visible::visible;

/// A kind of thing in the studio that has a table of its own.
pub trait Entity: Sized + Serialize + DeserializeOwned {
    /// Its kind in the journal, which is also the name of its table.
    const KIND: Kind;
    /// Its fields, which are also its columns beside `id`.
    const FIELDS: &'static [&'static str];
    /// Whether the number of a word lies in a column, of `id` and the fields in order.
    const IS_INTERNED: &'static [bool];
    /// Reads rows; what picks and orders them is to be added.
    const SELECT: &'static str;
    /// Writes its row, given the id and the fields in order.
    const UPSERT: &'static str;
    /// Removes one row by id.
    const DELETE: &'static str;

    /// Whether the field `name` can have this value; one that only a newer laydown knows can have any.
    fn can_be(name: &str, value: &Value) -> bool;
    /// Names this one.
    fn id(&self) -> Uuid;
    /// Sets the name.
    fn set_id(&mut self, id: Uuid);
    /// The row: id, then the fields in order.
    fn row(&self) -> Vec<&dyn ToSql>;
    /// Reads a row that [`Entity::SELECT`] gave.
    fn from_row(conn: &Connection, strings: &mut StringDictionary, row: &Row<'_>) -> Result<Self, StoreError>;

    /// Those that `which` picks (what follows `FROM`: joins, `WHERE`, `ORDER BY`), in its order.
    fn select(conn: &Connection, which: &str, params: impl Params) -> Result<Vec<Self>, StoreError> {
        let mut found = Vec::new();
        Self::each(conn, which, params, |one| {
            found.push(one);
            Ok(())
        })?;
        Ok(found)
    }

    /// As [`Entity::select`], handing one after the other to `work`.
    fn each(
        conn: &Connection,
        which: &str,
        params: impl Params,
        mut work: impl FnMut(Self) -> Result<(), StoreError>,
    ) -> Result<(), StoreError> {
        let mut select = conn.prepare_cached(&[Self::SELECT, which].concat())?;
        let mut rows = select.query(params)?;
        let mut strings = StringDictionary::default();
        while let Some(row) = rows.next()? {
            work(Self::from_row(conn, &mut strings, row)?)?;
        }
        Ok(())
    }

    /// The one named `id`, or `None` where there is none (or not all of it has arrived).
    fn load(conn: &Connection, id: Uuid) -> Result<Option<Self>, StoreError> {
        Ok(Self::select(conn, "WHERE id = ?1", [id])?.pop())
    }

    /// All of them, oldest first.
    fn all(conn: &Connection) -> Result<Vec<Self>, StoreError> {
        Self::select(conn, "ORDER BY id", [])
    }

    /// The entity that `state` makes, or `None` where fields are missing or not what they should be, as when only some
    /// of its events have arrived.
    fn from_state(id: Uuid, state: &State) -> Option<Self> {
        if state.kind != Self::KIND {
            return None;
        }
        let mut entity = Self::deserialize(&state.fields).ok()?;
        entity.set_id(id);
        Some(entity)
    }

    /// What an event must say to turn `state` into this: the fields that differ, `null` for one to take away.
    /// Fields that only a newer laydown knows are left alone.
    fn difference(&self, state: Option<&State>) -> Result<journal::Body, StoreError> {
        let Value::Object(mut fields) =
            serde_json::to_value(self).map_err(|error| StoreError::Fault { details: error.to_string() })?
        else {
            return Err(StoreError::Fault { details: format!("{} is not an object", Self::KIND.name()) });
        };
        let before = |name: &str| state.and_then(|state| state.fields.get(name)).unwrap_or(&Value::Null);
        let mut body = journal::Body::new();
        for name in Self::FIELDS {
            let now = fields.remove(*name).unwrap_or(Value::Null);
            // What only looks otherwise is not changed.
            if now != *before(name) && now != shown(before(name)) {
                body.insert((*name).to_owned(), now);
            }
        }
        Ok(body)
    }
}

/// The fold of one kind, for code that meets kinds by name.
pub(super) struct Table {
    pub kind: Kind,
    pub fields: &'static [&'static str],
    /// As [`Entity::IS_INTERNED`].
    pub is_interned: &'static [bool],
    /// As [`Entity::can_be`].
    pub can_be: fn(&str, &Value) -> bool,
    /// Whether fields are all that a row needs.
    pub is_whole: fn(&journal::Body) -> bool,
    project: fn(&Connection, &mut StringDictionary, Uuid, Option<&State>) -> Result<(), StoreError>,
}

impl Table {
    const fn of<E: Entity>() -> Table {
        Table {
            kind: E::KIND,
            fields: E::FIELDS,
            is_interned: E::IS_INTERNED,
            can_be: E::can_be,
            is_whole: |fields| E::deserialize(fields).is_ok(),
            project: project::<E>,
        }
    }

    /// The table for `kind`, or `None` for a kind that only a newer laydown knows.
    pub fn named(kind: &Kind) -> Option<&'static Table> {
        TABLES.iter().find(|table| table.kind == *kind)
    }

    /// Makes the row of `id` what `state` says: written, or removed where `state` makes no whole entity.
    pub fn project(
        &self,
        conn: &Connection,
        strings: &mut StringDictionary,
        id: Uuid,
        state: Option<&State>,
    ) -> Result<(), StoreError> {
        (self.project)(conn, strings, id, state)
    }
}

fn project<E: Entity>(
    conn: &Connection,
    strings: &mut StringDictionary,
    id: Uuid,
    state: Option<&State>,
) -> Result<(), StoreError> {
    let Some(entity) = state.and_then(|state| E::from_state(id, state)) else {
        conn.prepare_cached(E::DELETE)?.execute([id])?;
        return Ok(());
    };
    let mut row = Vec::with_capacity(E::IS_INTERNED.len());
    for (value, is_interned) in entity.row().into_iter().zip(E::IS_INTERNED) {
        let value = value.to_sql()?;
        row.push(if *is_interned { numbered(conn, strings, value)? } else { value });
    }
    conn.prepare_cached(E::UPSERT)?.execute(params_from_iter(row))?;
    Ok(())
}

/// The number of the word that a code or an id is.
fn numbered<'a>(
    conn: &Connection,
    strings: &mut StringDictionary,
    value: ToSqlOutput<'a>,
) -> Result<ToSqlOutput<'a>, StoreError> {
    let said = match &value {
        ToSqlOutput::Borrowed(said) => *said,
        ToSqlOutput::Owned(said) => said.into(),
        _ => return Ok(value),
    };
    let number = match said {
        ValueRef::Null => return Ok(value),
        ValueRef::Blob(_) => {
            let id = Uuid::column_result(said).map_err(rusqlite::Error::from)?;
            strings.number(conn, id.hyphenated().encode_lower(&mut Uuid::encode_buffer()))?
        }
        _ => strings.number(conn, said.as_str().map_err(rusqlite::Error::from)?)?,
    };
    Ok(number.into())
}

/// The code or the id whose number lies at `place` in a row.
pub(super) fn decode<T: FromStr>(
    conn: &Connection,
    strings: &mut StringDictionary,
    row: &Row<'_>,
    place: usize,
) -> Result<T, StoreError> {
    let number = row.get(place)?;
    let text = strings.text(conn, number)?;
    text.parse().map_err(|_| StoreError::Damaged { details: format!("word {number} is not what its column says") })
}

/// A value of a row as a person can read it: text that came from elsewhere may hold what cannot be seen. The journal keeps it
/// as it came.
trait Shown: Sized {
    fn shown(self) -> Self {
        self
    }
}

impl Shown for i64 {}
impl Shown for bool {}
impl Shown for Uuid {}
impl Shown for Points {}
impl Shown for Weights {}

impl Shown for String {
    fn shown(self) -> String {
        match visible(&self) {
            Cow::Borrowed(_) => self,
            Cow::Owned(shown) => shown,
        }
    }
}

impl Shown for Materials {
    fn shown(self) -> Materials {
        Materials(self.0.into_iter().map(|material| Material { name: material.name.shown(), ..material }).collect())
    }
}

impl Shown for Pairs {
    fn shown(self) -> Pairs {
        Pairs(self.0.into_iter().map(|(one, other)| (one.shown(), other.shown())).collect())
    }
}

impl<T: Shown> Shown for Option<T> {
    fn shown(self) -> Option<T> {
        self.map(T::shown)
    }
}

/// The same for a value of an event.
fn shown(value: &Value) -> Value {
    match value {
        Value::String(text) => visible(text).into(),
        Value::Array(items) => items.iter().map(shown).collect(),
        Value::Object(fields) => fields.iter().map(|(name, value)| (name.clone(), shown(value))).collect(),
        other => other.clone(),
    }
}

macro_rules! is_interned {
    () => {
        false
    };
    (word) => {
        true
    };
}

/// A field of a row.
macro_rules! field {
    ($conn:ident, $strings:ident, $row:ident, $place:expr) => {
        Shown::shown($row.get::<usize, _>($place)?)
    };
    ($conn:ident, $strings:ident, $row:ident, $place:expr, word) => {
        Shown::shown(decode($conn, $strings, $row, $place)?)
    };
}

macro_rules! entities {
    ($($(#[$meta:meta])* $name:ident $kind:literal {
        $($(#[$field_meta:meta])* $field:ident: $type:ty $(as $how:ident)?,)*
    })*) => {
        $(
            $(#[$meta])*
            #[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
            pub struct $name {
                /// Names this one; the entity of its events, so not among their fields.
                #[serde(skip)]
                pub id: Uuid,
                $($(#[$field_meta])* pub $field: $type,)*
            }

            impl Entity for $name {
                const KIND: Kind = Kind::of($kind);
                const FIELDS: &'static [&'static str] = &[$(stringify!($field)),*];
                const IS_INTERNED: &'static [bool] = &[false, $(is_interned!($($how)?)),*];
                const SELECT: &'static str = concat!("SELECT \"", $kind, "\".* FROM \"", $kind, "\" ");
                const UPSERT: &'static str = concat!(
                    "INSERT OR REPLACE INTO \"", $kind, "\" (id", $(", ", stringify!($field),)*
                    ") VALUES (:id", $(", :", stringify!($field),)* ")"
                );
                const DELETE: &'static str = concat!("DELETE FROM \"", $kind, "\" WHERE id = ?1");

                fn can_be(name: &str, value: &Value) -> bool {
                    match name {
                        $(stringify!($field) => <$type as Held>::can_be(name, value),)*
                        _ => true,
                    }
                }

                fn id(&self) -> Uuid {
                    self.id
                }

                fn set_id(&mut self, id: Uuid) {
                    self.id = id;
                }

                fn row(&self) -> Vec<&dyn ToSql> {
                    vec![&self.id, $(&self.$field,)*]
                }

                #[allow(unused_variables, reason = "not every kind has fields that are words")]
                fn from_row(conn: &Connection, strings: &mut StringDictionary, row: &Row<'_>) -> Result<Self, StoreError> {
                    // By place and not by name: to look up 23 names in each row took longer than to read it.
                    let mut places = 0..;
                    let mut next = || places.next().unwrap_or_default();
                    Ok($name {
                        id: field!(conn, strings, row, next()),
                        $($field: field!(conn, strings, row, next() $(, $how)?),)*
                    })
                }
            }
        )*

        /// Every kind that has a table.
        pub(super) static TABLES: &[Table] = &[$(Table::of::<$name>()),*];
    };
}

/// Defines a list that is one value to the journal and JSON text in its column: two edits of one list are two lists,
/// never a mixture.
macro_rules! json_column {
    ($(#[$meta:meta])* $name:ident($item:ty)) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub Vec<$item>);

        impl ToSql for $name {
            fn to_sql(&self) -> rusqlite::Result<ToSqlOutput<'_>> {
                let text =
                    serde_json::to_string(self).map_err(|error| rusqlite::Error::ToSqlConversionFailure(error.into()))?;
                Ok(text.into())
            }
        }

        impl FromSql for $name {
            fn column_result(value: ValueRef<'_>) -> FromSqlResult<$name> {
                serde_json::from_str(value.as_str()?).map_err(FromSqlError::other)
            }
        }
    };
}

json_column! {
    /// Points of a profile, each `[height, radius, wall]` in um, or `[height, radius]` where the wall is as elsewhere.
    Points(Vec<i64>)
}

json_column! {
    /// Weights in mg, in the order in which they were read.
    Weights(i64)
}

json_column! {
    /// Pairs of codes.
    Pairs((String, String))
}

/// A dry material of a glaze.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Material {
    /// What the potter calls it.
    pub name: String,
    /// Parts by weight, thousandths; of an addition, per cent on top.
    pub parts_e3: i64,
    /// Whether it comes on top of the others.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub addition: bool,
    /// Density of its powder relative to water, thousandths, where the potter gave one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density_e3: Option<i64>,
    /// What a kilogram costs, thousandths of the potter's currency.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price_e3: Option<i64>,
    /// What a newer version says of it.
    #[serde(flatten)]
    pub newer: serde_json::Map<String, Value>,
}

json_column! {
    /// The dry materials of a glaze, in the potter's order.
    Materials(Material)
}

entities! {
    /// A glaze recipe as the studio uses it.
    Glaze "glaze" {
        /// What the potter calls it.
        name: String,
        /// How much a few percent of thickness matter: code `low`, `medium` or `high`.
        sensitivity: String,
        /// Density of the dry powder relative to water, thousandths.
        powder_density_e3: i64,
        /// Laydown to aim at until the studio knows better, mg per dm2.
        starting_laydown_mg_dm2: i64,
        /// No longer offered.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
        /// How targets are chosen where the potter chose: `[zone, "best"]` for the best single evidence in a zone, and
        /// `[zone form, mg]` for the dry glaze that is kept as the target in a zone of a form.
        targets: Option<Pairs>,
        /// When the potter last answered that coats drift off their aims, unix ms: coats until then are not counted any more.
        drift_answered_at: Option<i64>,
        /// Its dry materials, where the potter gave them.
        materials: Option<Materials>,
        /// Code of where the powder's density comes from: `materials` or `own`; none where an earlier version did not ask.
        density_from: Option<String>,
        /// Where the potter says otherwise than the materials' names: `[code of the hazard, yes or no]`.
        hazards: Option<Pairs>,
        /// Specific gravity at which it is used, hundred-thousandths.
        working_sg_e5: Option<i64>,
    }

    /// One mixed lot of a glaze.
    Bucket "bucket" {
        /// The glaze in it.
        glaze: Uuid,
        /// What the potter calls it.
        name: String,
        /// How much there is, microlitres.
        volume_ul: Option<i64>,
        /// When it was mixed, unix ms.
        mixed_at: i64,
        /// No longer offered.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
        /// How wide the bucket is inside, half way up, um.
        diameter_um: Option<i64>,
        /// How deep it is up to the rim, um.
        depth_um: Option<i64>,
        /// What it weighs empty, mg.
        empty_mg: Option<i64>,
    }

    /// What was done to a bucket, or seen of it, beside checks.
    BucketEntry "bucket_entry" {
        /// The bucket.
        bucket: Uuid,
        /// When, unix ms.
        at: i64,
        /// Code of what it was.
        what: String,
        /// Water added or taken off, microlitres.
        volume_ul: Option<i64>,
        /// Anything else that was added, mg.
        amount_mg: Option<i64>,
        /// Level of the glaze above the bottom, um.
        level_um: Option<i64>,
        /// What the potter noted.
        note: Option<String>,
        /// Entered by mistake.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// A check of a bucket's specific gravity.
    Check "check" {
        /// The bucket checked.
        bucket: Uuid,
        /// When, unix ms.
        at: i64,
        /// Specific gravity found, hundred-thousandths.
        specific_gravity_e5: i64,
        /// Its standard uncertainty, hundred-thousandths.
        standard_uncertainty_e5: i64,
        /// How it was found: code `vessel`, `volume`, `hydrometer` or `typed`.
        how: String,
        /// The vessel used, if one was.
        vessel: Option<Uuid>,
        /// Weight of the vessel full of glaze, mg.
        full_mg: Option<i64>,
        /// Temperature of the glaze, thousandths of a degree Celsius.
        temperature_mc: Option<i64>,
        /// Time through the flow cup, ms.
        flow_ms: Option<i64>,
        /// What the potter noted.
        note: Option<String>,
        /// Code of the flow cup.
        cup: Option<String>,
        /// Made by mistake.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// A vessel for measuring specific gravity: weighed empty and filled with water to its mark.
    Vessel "vessel" {
        /// What the potter calls it.
        name: String,
        /// Weight empty, mg.
        empty_mg: i64,
        /// Weight filled with water, mg.
        with_water_mg: i64,
        /// Temperature of that water, thousandths of a degree Celsius.
        water_temperature_mc: i64,
        /// No longer offered.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// A shape at a size, made again and again.
    Form "form" {
        /// What the potter calls it.
        name: String,
        /// Code of its shape class.
        class: String,
        /// What it holds, microlitres.
        capacity_ul: Option<i64>,
        /// Glazed area inside, mm2.
        inside_area_mm2: Option<i64>,
        /// Glazed area outside, mm2.
        outside_area_mm2: Option<i64>,
        /// No longer offered.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
        /// Its outside as measured or traced, from the ground up.
        profile: Option<Points>,
        /// Relative standard uncertainty that a photograph gave the profile, ten-thousandths; none if measured.
        traced_e4: Option<i64>,
        /// Code of the stage at which the profile was measured.
        stage: Option<String>,
        /// The body it is made of.
        body: Option<Uuid>,
        /// Thickness of the wall where the profile does not say otherwise, um.
        wall_um: Option<i64>,
        /// Thickness of the floor in the middle, um.
        floor_um: Option<i64>,
        /// Width of the ring of clay it stands on, um.
        foot_width_um: Option<i64>,
        /// Height of that ring, um.
        foot_height_um: Option<i64>,
        /// Height above the ground at which the glaze begins, um.
        bare_foot_um: Option<i64>,
        /// Depth below the rim, outside, to which both glazes lie, um.
        overlap_um: Option<i64>,
        /// Depth below the rim to which it is filled in use, um.
        fill_um: Option<i64>,
        /// Length of its handle, um.
        handle_length_um: Option<i64>,
        /// Girth of its handle, um.
        handle_girth_um: Option<i64>,
        /// Area of what else takes glaze outside, mm2.
        extra_area_mm2: Option<i64>,
        /// What a bisque piece of it weighs, mg.
        bisque_mg: Option<i64>,
        /// Width at the widest of a bisque piece, um, where the form is known by that alone.
        width_um: Option<i64>,
        /// Height of a bisque piece, um, where the form is known by that alone.
        height_um: Option<i64>,
        /// The wet clay it is thrown of, mg, where the form is known by that alone.
        clay_mg: Option<i64>,
    }

    /// A clay body: how it shrinks, and how dense its bisque is.
    Body "body" {
        /// What the potter calls it.
        name: String,
        /// Linear shrinkage from thrown to bisque, ten-thousandths of the thrown size.
        to_bisque_e4: i64,
        /// Linear shrinkage from thrown to fired, ten-thousandths of the thrown size.
        to_fired_e4: i64,
        /// Bulk density of its bisque, mg per ml.
        bisque_density_mg_ml: Option<i64>,
        /// No longer offered.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// A scale of the studio.
    Scale "scale" {
        /// What the potter calls it.
        name: String,
        /// The most it can weigh, mg.
        capacity_mg: i64,
        /// The step of its display, mg.
        step_mg: i64,
        /// The least its maker lets it weigh, mg.
        minimum_mg: Option<i64>,
        /// Standard deviation of repeated weighings, mg, where tested.
        repeatability_mg: Option<i64>,
        /// No longer offered.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
        /// Code of the accuracy class marked on it.
        accuracy_class: Option<String>,
    }

    /// A test of a scale: one load put on again and again, and a known weight.
    ScaleTest "scale_test" {
        /// The scale.
        scale: Uuid,
        /// When, unix ms.
        at: i64,
        /// What it showed of the load each time, mg.
        readings: Option<Weights>,
        /// The known weight, mg.
        known_mg: Option<i64>,
        /// What it showed of that, mg.
        shown_mg: Option<i64>,
        /// No longer counted.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// Ware of one bisque firing: how much water it drinks.
    BisqueLot "bisque_lot" {
        /// What the potter calls it.
        name: String,
        /// Its body.
        body: Option<Uuid>,
        /// The cone it was fired to.
        cone: Option<String>,
        /// When it was fired, unix ms.
        at: i64,
        /// Code of how the piece was filled with water.
        soaking: String,
        /// Weight of the piece bone dry, mg.
        bone_dry_mg: i64,
        /// Its weight soaked and blotted, mg.
        soaked_mg: i64,
        /// Its weight hanging in water, mg.
        suspended_mg: Option<i64>,
        /// Temperature of that water, thousandths of a degree Celsius.
        water_temperature_mc: i64,
        /// No longer offered.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// One application of glaze to one zone of one piece, as weighed and judged.
    Coat "coat" {
        /// The piece; the coats of one piece share it.
        piece: Uuid,
        /// The form of the piece.
        form: Uuid as word,
        /// The bucket the glaze came from.
        bucket: Uuid as word,
        /// The glaze in that bucket then.
        glaze: Uuid as word,
        /// Code of the zone coated.
        zone: String as word,
        /// The scale used.
        scale: Uuid as word,
        /// When it was weighed, unix ms.
        at: i64,
        /// Weight before, mg, where it was read.
        bare_mg: Option<i64>,
        /// Weight after, mg, where two weights were read.
        glazed_mg: Option<i64>,
        /// Wet weight of the coat, mg.
        net_mg: i64,
        /// Specific gravity of the glaze then, hundred-thousandths.
        specific_gravity_e5: i64,
        /// Its standard uncertainty, hundred-thousandths.
        sg_uncertainty_e5: i64,
        /// Density of the dry powder relative to water, thousandths.
        powder_density_e3: i64,
        /// Area coated, mm2.
        area_mm2: i64,
        /// Wet weight aimed at, mg.
        aim_mg: i64,
        /// Least wet weight within tolerance, mg.
        low_mg: i64,
        /// Most wet weight within tolerance, mg.
        high_mg: i64,
        /// Code of what the aim rested on.
        source: String as word,
        /// Code of the verdict.
        verdict: String as word,
        /// Laydown reached, mg per dm2.
        laydown_mg_dm2: i64,
        /// Whether this is a control piece, to compare others with.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        control: bool,
        /// What the potter noted.
        note: Option<String>,
        /// The code pencilled on the piece's foot, on its first coat.
        code: Option<String>,
        /// Whether the potter was asked about a reading far off its aim, and said that it is right.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        confirmed: bool,
        /// What was added to it in a touch-up, mg; a part of its wet weight.
        added_mg: Option<i64>,
        /// What was rubbed off it again, mg; no part of its wet weight any more.
        rubbed_off_mg: Option<i64>,
        /// Who glazed, where a studio writes that down.
        hand: Option<String>,
        /// Its dry glaze, from the piece weighed again bone dry, mg.
        dry_mg: Option<i64>,
        /// One standard uncertainty of that, mg.
        dry_uncertainty_mg: Option<i64>,
        /// How long it was dipped or poured over, ms.
        dip_ms: Option<i64>,
    }

    /// A kiln.
    Kiln "kiln" {
        /// What the potter calls it.
        name: String,
        /// Whether its shelves are round.
        round: bool,
        /// Width of a shelf, or its diameter, um.
        across_um: i64,
        /// Depth of a shelf that is not round, um.
        deep_um: Option<i64>,
        /// How many shelves it takes.
        shelves: i64,
        /// No longer offered.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// One firing, from the first piece loaded to the last one looked at.
    Firing "firing" {
        /// The kiln.
        kiln: Uuid,
        /// When it was begun to be loaded, unix ms.
        at: i64,
        /// The cone aimed at.
        cone: String,
        /// Code of the kind of its cones.
        cone_kind: String,
        /// Code of how far it has come.
        state: String,
        /// Ramps and holds in the potter's words.
        program: Option<String>,
        /// When it was fired, unix ms.
        fired_at: Option<i64>,
        /// Top temperature, thousandths of a degree Celsius.
        top_mc: Option<i64>,
        /// How long it took, minutes.
        minutes: Option<i64>,
        /// Witness cones set: `[cone, code of the reading]`, the coolest first; the code is empty until one is read.
        witnesses: Option<Pairs>,
        /// What was looked at before loading: codes of the list, with commas.
        checked: Option<String>,
        /// What the potter noted.
        note: Option<String>,
        /// Thrown away, as when it was begun by mistake.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
        /// Its number in the studio's book; none where an earlier version did not ask.
        number: Option<i64>,
        /// What the potter calls it.
        name: Option<String>,
        /// Code of what goes through it: `bisque`, or none for glazed ware.
        fires: Option<String>,
    }

    /// A piece that went into a firing without having been weighed; its id is that of the piece.
    Piece "piece" {
        /// What the potter calls it; may be empty where it has a code.
        name: String,
        /// The code or mark on its foot.
        code: Option<String>,
        /// Its form, where it is one of the studio's.
        form: Option<Uuid>,
        /// When it was told of, unix ms.
        at: i64,
        /// Added by mistake.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// A piece's place in a firing.
    Placement "placement" {
        /// The firing.
        firing: Uuid,
        /// The piece.
        piece: Uuid,
        /// The shelf, counted from 0 at the bottom.
        shelf: i64,
        /// Where its middle stands, from the left of the shelf, ten-thousandths of its width.
        x_e4: i64,
        /// The same from the front.
        y_e4: i64,
        /// Taken out again before the firing.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// What came out of a firing on one piece.
    Finding "finding" {
        /// The firing.
        firing: Uuid,
        /// The piece.
        piece: Uuid,
        /// When it was last looked at, unix ms.
        at: i64,
        /// Code of how thick the glaze inside looks.
        inside: Option<String>,
        /// The same outside.
        outside: Option<String>,
        /// The same where both glazes lie.
        overlap: Option<String>,
        /// Faults in the order in which they were found: `[code, where]`, where being empty or the side and the height in
        /// thousandths of the form's, as in `outside 870`.
        faults: Option<Pairs>,
        /// How much the potter likes it, 1 to 5.
        liking: Option<i64>,
        /// What the potter noted.
        note: Option<String>,
        /// To be fired again.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        again: bool,
        /// Does not count for targets.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        left_out: bool,
    }

    /// A photograph of a piece; the file is named by its SHA-256.
    Photo "photo" {
        /// The piece.
        piece: Uuid,
        /// The firing it came out of, if it was taken after one.
        firing: Option<Uuid>,
        /// SHA-256 of the file, in hexadecimal.
        sha256: String,
        /// When it was taken, unix ms.
        at: i64,
        /// Width of the upright picture, pixels.
        width: i64,
        /// Height of the upright picture, pixels.
        height: i64,
        /// No longer shown.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// A control piece not weighed here: an amount the potter knows is right.
    Control "control" {
        /// The form it is right on.
        form: Uuid,
        /// The glaze.
        glaze: Uuid,
        /// Code of the zone.
        zone: String,
        /// Wet weight that is right, mg.
        net_mg: i64,
        /// Specific gravity at which it is right, hundred-thousandths.
        specific_gravity_e5: i64,
        /// Its standard uncertainty, hundred-thousandths.
        sg_uncertainty_e5: i64,
        /// Density of the dry powder relative to water, thousandths.
        powder_density_e3: i64,
        /// Area coated, mm2.
        area_mm2: i64,
        /// When it was told, unix ms.
        at: i64,
        /// No longer compared with.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
    }

    /// A test tile.
    Tile "tile" {
        /// The glaze on it.
        glaze: Uuid,
        /// What the potter calls it.
        name: String,
        /// Area coated, mm2.
        area_mm2: i64,
        /// Wet weight of the coat, mg.
        net_mg: Option<i64>,
        /// Dry weight of the coat, mg.
        dry_mg: Option<i64>,
        /// Specific gravity of the glaze then, hundred-thousandths.
        specific_gravity_e5: Option<i64>,
        /// When it was coated, unix ms.
        at: i64,
        /// No longer compared with.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        gone: bool,
        /// Code of how it came out of the kiln; none where an earlier version did not ask.
        came_out: Option<String>,
        /// How many coats it carries.
        coats: Option<i64>,
        /// The wet weight that was planned for it, mg.
        aim_mg: Option<i64>,
    }

    /// What one device prefers; its id is the device's.
    Preference "preference" {
        /// Code of the unit of mass.
        mass: String,
        /// Code of the unit of volume.
        volume: String,
        /// Code of the unit of area.
        area: String,
        /// Code of the unit of length.
        length: String,
        /// Code of the decimal mark.
        decimal: String,
        /// Speak the verdict.
        speak: bool,
        /// Tick in the hand.
        tick: bool,
        /// Give each piece a code for its foot.
        code_pieces: bool,
        /// What the phone is called, to tell it from the others.
        phone: Option<String>,
        /// Who glazes at it now, which goes onto each coat.
        hand: Option<String>,
        /// Ask how long a coat was dipped or poured over.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        ask_dip: bool,
    }
}
