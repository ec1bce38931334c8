//! Editing is a patch: what was not touched keeps its stored value exactly, whatever the units, and only what was touched is
//! written.

use std::collections::{BTreeMap, BTreeSet};

use fastrand::Rng;
use laydown_app::{EditorEntry, EditorField, EditorKind, EditorView, FieldKind, Value};
use laydown_domain::units::{AreaUnit, DecimalMark, LengthUnit, MassUnit, VolumeUnit};
use laydown_store::entity::{
    BisqueLot, Body, Bucket, BucketEntry, Check, Coat, Control, Entity, Firing, Form, Glaze, Kiln, Material, Materials,
    Pairs, Piece, Points, Preference, Scale, ScaleTest, Tile, Vessel, Weights,
};
use laydown_store::journal::{Event, SEEN};
use laydown_store::{StoreError, Transaction, devices, events_after};
use serde_json::Value as Json;
use uuid::Uuid;

use crate::{Bench, NOW};

/// What also changes with a field, by definition. A field that is not here changes the column of its own name alone.
const FOLLOWS: &[(EditorKind, &str, &[&str])] = &[
    // A round shelf has no depth.
    (EditorKind::Kiln, "round", &["deep_um"]),
    // The amount was right for that glaze's powder, on that form's zone, and an SG has its uncertainty.
    (EditorKind::Control, "glaze", &["powder_density_e3"]),
    (EditorKind::Control, "form", &["zone", "area_mm2"]),
    (EditorKind::Control, "zone", &["area_mm2"]),
    (EditorKind::Control, "specific_gravity", &["sg_uncertainty_e5"]),
    // Witness cones stand around the cone aimed at.
    (EditorKind::Firing, "cone", &["witnesses"]),
    // Its day is that on which it was begun, and once it was fired, that on which it was.
    (EditorKind::Firing, "date", &["at", "fired_at"]),
    // A coat's laydown and verdict follow from its weight, and on another zone or from another bucket all that it is held against.
    (EditorKind::Coat, "net", &["laydown_mg_dm2", "verdict"]),
    (EditorKind::Coat, "added", &["net_mg", "laydown_mg_dm2", "verdict"]),
    (EditorKind::Coat, "rubbed_off", &["net_mg", "laydown_mg_dm2", "verdict"]),
    (EditorKind::Coat, "zone", TARGET),
    (EditorKind::Coat, "bucket", TARGET),
    (EditorKind::Coat, "piece", TARGET),
    // The dry glaze is what the dry piece weighs over the bare one, shared among its coats.
    (EditorKind::DryWeight, "bare", &["bare_mg", "dry_mg", "dry_uncertainty_mg"]),
    (EditorKind::DryWeight, "bone_dry", &["bare_mg", "dry_mg", "dry_uncertainty_mg"]),
    // What a test finds is what its scale counts with.
    (EditorKind::ScaleTest, "readings", &["repeatability_mg"]),
    // A usual handle has a usual size.
    (EditorKind::Form, "handle", &["handle_length_um", "handle_girth_um"]),
    // The density of a glaze's powder follows from its materials, unless it has one of its own.
    (EditorKind::Glaze, "materials", &["powder_density_e3", "density_from"]),
    (EditorKind::Glaze, "density_from", &["powder_density_e3"]),
    // An SG that was corrected is one that was typed.
    (EditorKind::Check, "typed", &["specific_gravity_e5", "standard_uncertainty_e5", "how", "vessel", "full_mg"]),
    // A time without a cup was taken with none.
    (EditorKind::Check, "flow", &["cup"]),
    // What was done is so much water, or so much of something, or a level.
    (EditorKind::BucketEntry, "what", &["volume_ul", "amount_mg", "level_um"]),
    // Known in another way, a form is described anew.
    (EditorKind::Form, "way", Form::FIELDS),
];

/// What a coat is held against, and what follows from that.
const TARGET: &[&str] = &[
    "form",
    "glaze",
    "code",
    "specific_gravity_e5",
    "sg_uncertainty_e5",
    "powder_density_e3",
    "area_mm2",
    "aim_mg",
    "low_mg",
    "high_mg",
    "source",
    "laydown_mg_dm2",
    "verdict",
];

/// Fields whose column has another name than they have with their unit, and those that have none.
const COLUMNS: &[(EditorKind, &str, &str)] = &[
    (EditorKind::BisqueLot, "date", "at"),
    (EditorKind::Firing, "hours", "minutes"),
    (EditorKind::Firing, "witness_low", "witnesses"),
    (EditorKind::Firing, "witness", "witnesses"),
    (EditorKind::Firing, "witness_high", "witnesses"),
    (EditorKind::Firing, "5", "witnesses"),
    (EditorKind::Firing, "6", "witnesses"),
    (EditorKind::Firing, "7", "witnesses"),
    (EditorKind::Firing, "9", "witnesses"),
    (EditorKind::WitnessCones, "cones", "witnesses"),
    (EditorKind::Form, "points", "profile"),
    (EditorKind::BucketEntry, "date", "at"),
    (EditorKind::Glaze, "silica", "hazards"),
    (EditorKind::Glaze, "barium", "hazards"),
    (EditorKind::Glaze, "manganese", "hazards"),
    (EditorKind::Glaze, "lithium", "hazards"),
    (EditorKind::Glaze, "cobalt", "hazards"),
    (EditorKind::Glaze, "chromium", "hazards"),
    (EditorKind::Glaze, "nickel", "hazards"),
    (EditorKind::Glaze, "vanadium", "hazards"),
    (EditorKind::Glaze, "copper", "hazards"),
    (EditorKind::Glaze, "soluble", "hazards"),
    (EditorKind::Glaze, "lead", "hazards"),
    (EditorKind::Glaze, "cadmium", "hazards"),
    (EditorKind::Form, "way", ""),
    (EditorKind::Form, "more", ""),
    (EditorKind::Form, "measure", ""),
];

/// Units that end the names of columns.
const UNITS: &[&str] = &["_mg_dm2", "_mg_ml", "_mm2", "_mg", "_ul", "_um", "_mc", "_ms", "_e3", "_e4", "_e5"];

/// What is typed to change a number; units are named so that it means the same in every style.
const NUMBERS: &[(EditorKind, &str, &str)] = &[
    (EditorKind::Scale, "capacity", "4 kg"),
    (EditorKind::Scale, "step", "777 mg"),
    (EditorKind::Scale, "minimum", "21 g"),
    (EditorKind::Scale, "repeatability", "78 mg"),
    (EditorKind::ScaleTest, "known", "200 g"),
    (EditorKind::ScaleTest, "shown", "201 g"),
    (EditorKind::Vessel, "empty", "91 g"),
    (EditorKind::Vessel, "with_water", "999 g"),
    (EditorKind::Vessel, "water_temperature", "17"),
    (EditorKind::Body, "to_bisque", "1"),
    (EditorKind::Body, "to_fired", "29"),
    (EditorKind::Body, "bisque_density", "2"),
    (EditorKind::BisqueLot, "bone_dry", "51 g"),
    (EditorKind::BisqueLot, "soaked", "71 g"),
    (EditorKind::BisqueLot, "suspended", "35 g"),
    (EditorKind::BisqueLot, "water_temperature", "17"),
    (EditorKind::Kiln, "across", "333 mm"),
    (EditorKind::Kiln, "deep", "444 mm"),
    (EditorKind::Kiln, "shelves", "29"),
    (EditorKind::Glaze, "powder_density", "3"),
    (EditorKind::Glaze, "starting_laydown", "7"),
    (EditorKind::Glaze, "working_sg", "1470 g/l"),
    (EditorKind::Bucket, "volume", "7 l"),
    (EditorKind::Bucket, "diameter", "280 mm"),
    (EditorKind::Bucket, "depth", "310 mm"),
    (EditorKind::Bucket, "empty", "777 g"),
    (EditorKind::Check, "typed", "1470 g/l"),
    (EditorKind::Check, "flow", "44"),
    (EditorKind::BucketEntry, "volume", "777 ml"),
    (EditorKind::BucketEntry, "amount", "7.7 kg"),
    (EditorKind::BucketEntry, "level", "77 mm"),
    (EditorKind::Tile, "area", "55 cm²"),
    (EditorKind::Tile, "net", "6 g"),
    (EditorKind::Tile, "dry", "2 g"),
    (EditorKind::Tile, "specific_gravity", "1450 g/l"),
    (EditorKind::Control, "net", "21 g"),
    (EditorKind::Control, "specific_gravity", "1450 g/l"),
    (EditorKind::DryWeight, "bare", "301 g"),
    (EditorKind::DryWeight, "bone_dry", "335 g"),
    (EditorKind::Coat, "net", "20.5 g"),
    (EditorKind::Coat, "added", "777 mg"),
    (EditorKind::Coat, "rubbed_off", "333 mg"),
    (EditorKind::Coat, "dip", "4"),
    (EditorKind::Firing, "number", "12"),
    (EditorKind::Firing, "top", "1222"),
    (EditorKind::Firing, "hours", "9"),
    (EditorKind::Form, "capacity", "333 ml"),
    (EditorKind::Form, "width", "211 mm"),
    (EditorKind::Form, "height", "111 mm"),
    (EditorKind::Form, "clay", "555 g"),
    (EditorKind::Form, "inside_area", "222 cm²"),
    (EditorKind::Form, "outside_area", "223 cm²"),
    (EditorKind::Form, "wall", "3 mm"),
    (EditorKind::Form, "floor", "4 mm"),
    (EditorKind::Form, "foot_width", "6 mm"),
    (EditorKind::Form, "foot_height", "2 mm"),
    (EditorKind::Form, "bare_foot", "9 mm"),
    (EditorKind::Form, "overlap", "11 mm"),
    (EditorKind::Form, "fill", "8 mm"),
    (EditorKind::Form, "handle_length", "99 mm"),
    (EditorKind::Form, "handle_girth", "44 mm"),
    (EditorKind::Form, "extra_area", "12 cm²"),
    (EditorKind::Form, "bisque", "401 g"),
];

/// Names as other phones and old versions may have written them.
const NAMES: &[&str] = &[
    "Ash white",
    " Ash  white ",
    "Ash\u{200b}white",
    "Ash\nwhite",
    "",
    "نمی\u{200c}خواهم",
    "A name of more than eighty letters, as only a spreadsheet or another version can have brought it into a studio like this",
];

type Units = (MassUnit, VolumeUnit, AreaUnit, LengthUnit, DecimalMark);

fn every_style() -> Vec<Units> {
    let mut styles = Vec::new();
    for mass in MassUnit::ALL {
        for volume in VolumeUnit::ALL {
            for area in AreaUnit::ALL {
                for length in LengthUnit::ALL {
                    styles.extend(DecimalMark::ALL.iter().map(|mark| (*mass, *volume, *area, *length, *mark)));
                }
            }
        }
    }
    styles
}

/// A studio full of things whose figures have no short text in any unit.
struct Filled {
    bench: Bench,
    things: Vec<(EditorKind, Uuid)>,
}

impl Filled {
    fn new(units: Units, seed: u64) -> Filled {
        let bench = Bench::empty();
        let device = bench.studio.store().device().0;
        let mut rng = Rng::with_seed(seed);
        let things = bench.studio.store().transact(NOW.unix_ms, |tx| {
            let mut things = Things { tx, rng: &mut rng, things: Vec::new() };
            things.fill(device, units)?;
            Ok::<_, StoreError>(things.things)
        });
        Filled { bench, things: things.unwrap().value }
    }

    fn view(&self, entry: &EditorEntry) -> EditorView {
        self.bench.studio.editor(NOW, entry).unwrap_or_else(|error| panic!("{:?}: {error}", entry.kind))
    }

    /// The events that `entry` wrote, which are then undone; `None` where it was refused, and so wrote none.
    fn events_of(&self, entry: &EditorEntry) -> Option<Vec<Event>> {
        let store = self.bench.studio.store();
        let device = store.device();
        let last = || store.read(devices).unwrap().into_iter().find(|(known, _)| *known == device).unwrap().1;
        let before = last();
        let saved = self.bench.studio.save_record(NOW, entry);
        let events = store.read(|conn| events_after(conn, device, before)).unwrap();
        match saved {
            Ok(saved) => {
                assert_eq!(saved.undo.is_empty(), events.is_empty());
                if !events.is_empty() {
                    self.bench.studio.undo(NOW, &saved.undo).unwrap();
                }
                Some(events)
            }
            Err(_) => {
                assert!(events.is_empty());
                None
            }
        }
    }
}

struct Things<'a, 'b> {
    tx: &'a mut Transaction<'b>,
    rng: &'a mut Rng,
    things: Vec<(EditorKind, Uuid)>,
}

impl Things<'_, '_> {
    fn put(&mut self, kind: EditorKind, entity: &impl Entity) -> Result<Uuid, StoreError> {
        self.tx.put(entity)?;
        self.things.push((kind, entity.id()));
        Ok(entity.id())
    }

    fn name(&mut self) -> String {
        self.rng.choice(NAMES).unwrap().to_string()
    }

    fn note(&mut self) -> Option<String> {
        self.maybe(|rng| rng.choice(NAMES).unwrap().to_string())
    }

    fn maybe<T>(&mut self, make: impl FnOnce(&mut Rng) -> T) -> Option<T> {
        self.rng.bool().then(|| make(self.rng))
    }

    fn fill(&mut self, device: Uuid, units: Units) -> Result<(), StoreError> {
        let (mass, volume, area, length, decimal) = units;
        let preference = Preference {
            id: device,
            mass: mass.code().into(),
            volume: volume.code().into(),
            area: area.code().into(),
            length: length.code().into(),
            decimal: decimal.code().into(),
            speak: self.rng.bool(),
            tick: self.rng.bool(),
            code_pieces: self.rng.bool(),
            phone: self.note(),
            hand: self.note(),
            ask_dip: self.rng.bool(),
        };
        self.put(EditorKind::Preference, &preference)?;
        let bodies = [self.body()?, self.body()?];
        self.bisque_lot(bodies[0])?;
        let glazes = [self.glaze()?, self.glaze()?];
        let bucket = self.bucket(glazes[0])?;
        self.bucket(glazes[0])?;
        self.check(bucket)?;
        for what in ["water", "water_off", "powder", "flocculant", "level", "weighed", "note", "of_a_newer_version"] {
            self.bucket_entry(bucket, what)?;
        }
        self.scale()?;
        self.vessel()?;
        let forms = self.forms(&bodies)?;
        for glaze in glazes {
            self.tile(glaze)?;
            self.control(glaze, forms[0])?;
        }
        self.coat(bucket, glazes[0], forms[0])?;
        let kilns = [self.kiln(false)?, self.kiln(true)?];
        self.firing(kilns[0], "loading")?;
        self.firing(kilns[1], "fired")?;
        self.piece(forms[0])
    }

    fn body(&mut self) -> Result<Uuid, StoreError> {
        let body = Body {
            id: self.tx.new_id(),
            name: self.name(),
            to_bisque_e4: self.rng.i64(200..900),
            to_fired_e4: self.rng.i64(1_000..2_500),
            bisque_density_mg_ml: self.maybe(|rng| rng.i64(1_500..2_500)),
            gone: false,
        };
        self.put(EditorKind::Body, &body)
    }

    fn bisque_lot(&mut self, body: Uuid) -> Result<(), StoreError> {
        let bone_dry_mg = self.rng.i64(52_001..66_000);
        let lot = BisqueLot {
            id: self.tx.new_id(),
            name: self.name(),
            body: self.maybe(|_| body),
            cone: self.maybe(|_| "04".into()),
            at: self.rng.i64(0..NOW.unix_ms),
            soaking: "cold".into(),
            bone_dry_mg,
            soaked_mg: bone_dry_mg + self.rng.i64(3_001..4_500),
            suspended_mg: self.maybe(|rng| bone_dry_mg / 2 + rng.i64(0..999)),
            water_temperature_mc: self.rng.i64(10_001..30_000),
            gone: false,
        };
        self.put(EditorKind::BisqueLot, &lot).map(|_| ())
    }

    fn glaze(&mut self) -> Result<Uuid, StoreError> {
        let glaze = Glaze {
            id: self.tx.new_id(),
            name: self.name(),
            sensitivity: "high".into(),
            powder_density_e3: self.rng.i64(2_001..2_999),
            starting_laydown_mg_dm2: self.rng.i64(3_001..8_000),
            gone: false,
            targets: None,
            drift_answered_at: Some(NOW.unix_ms),
            materials: self.maybe(|rng| {
                let parts = |rng: &mut Rng| Material {
                    name: rng.choice(NAMES).unwrap().to_string(),
                    parts_e3: rng.i64(1..90_000),
                    addition: false,
                    density_e3: rng.bool().then(|| rng.i64(2_001..5_999)),
                    price_e3: rng.bool().then(|| rng.i64(1..90_000)),
                    newer: [("colour".to_owned(), Json::from("blue"))].into_iter().collect(),
                };
                let addition = Material { addition: true, name: "Copper carbonate".into(), ..parts(rng) };
                Materials(vec![parts(rng), parts(rng), addition])
            }),
            density_from: self.maybe(|rng| rng.choice(["materials", "own"]).unwrap().to_string()),
            hazards: self
                .maybe(|_| Pairs(vec![("lead".into(), "yes".into()), ("of_a_newer_version".into(), "no".into())])),
            working_sg_e5: self.maybe(|rng| rng.i64(140_001..150_000)),
        };
        self.put(EditorKind::Glaze, &glaze)
    }

    fn bucket(&mut self, glaze: Uuid) -> Result<Uuid, StoreError> {
        let bucket = Bucket {
            id: self.tx.new_id(),
            glaze,
            name: self.name(),
            volume_ul: self.maybe(|rng| rng.i64(1_000_000..20_000_000)),
            mixed_at: self.rng.i64(0..NOW.unix_ms),
            gone: false,
            diameter_um: self.maybe(|rng| rng.i64(200_001..400_000)),
            depth_um: self.maybe(|rng| rng.i64(250_001..400_000)),
            empty_mg: self.maybe(|rng| rng.i64(300_001..900_000)),
        };
        self.put(EditorKind::Bucket, &bucket)
    }

    fn check(&mut self, bucket: Uuid) -> Result<(), StoreError> {
        let check = Check {
            id: self.tx.new_id(),
            bucket,
            at: self.rng.i64(0..NOW.unix_ms),
            specific_gravity_e5: self.rng.i64(140_001..150_000),
            standard_uncertainty_e5: self.rng.i64(1..999),
            how: "vessel".into(),
            vessel: self.maybe(|_| Uuid::from_u128(78)),
            full_mg: self.maybe(|rng| rng.i64(100_001..300_000)),
            temperature_mc: self.maybe(|rng| rng.i64(10_001..30_000)),
            flow_ms: self.maybe(|rng| rng.i64(10_001..90_000)),
            note: self.note(),
            cup: self.maybe(|rng| rng.choice(["ford_4", "of_a_newer_version"]).unwrap().to_string()),
            gone: false,
        };
        self.put(EditorKind::Check, &check).map(|_| ())
    }

    /// With all that any kind has, as when two phones each knew something.
    fn bucket_entry(&mut self, bucket: Uuid, what: &str) -> Result<(), StoreError> {
        let (has_volume, has_amount) = (what.starts_with("water"), matches!(what, "powder" | "flocculant" | "weighed"));
        let entry = BucketEntry {
            id: self.tx.new_id(),
            bucket,
            at: self.rng.i64(0..NOW.unix_ms),
            what: what.to_owned(),
            volume_ul: (has_volume || what == "of_a_newer_version").then(|| self.rng.i64(100_001..900_000)),
            amount_mg: has_amount.then(|| self.rng.i64(1_000_001..9_000_000)),
            level_um: (what == "level").then(|| self.rng.i64(100_001..190_000)),
            note: self.note(),
            gone: false,
        };
        self.put(EditorKind::BucketEntry, &entry).map(|_| ())
    }

    fn scale(&mut self) -> Result<(), StoreError> {
        let scale = Scale {
            id: self.tx.new_id(),
            name: self.name(),
            capacity_mg: self.rng.i64(1_000_000..5_000_000),
            step_mg: self.rng.i64(1..1_000),
            minimum_mg: self.maybe(|rng| rng.i64(1..20_000)),
            repeatability_mg: self.maybe(|rng| rng.i64(1..200)),
            accuracy_class: self.maybe(|_| "III".into()),
            gone: false,
        };
        let scale = self.put(EditorKind::Scale, &scale)?;
        let readings = (0..10).map(|_| 312_400 + self.rng.i64(0..999)).collect();
        let test = ScaleTest {
            id: self.tx.new_id(),
            scale,
            at: self.rng.i64(0..NOW.unix_ms),
            readings: Some(Weights(readings)),
            known_mg: Some(self.rng.i64(100_001..500_000)),
            shown_mg: Some(self.rng.i64(100_001..500_000)),
            gone: false,
        };
        self.put(EditorKind::ScaleTest, &test).map(|_| ())
    }

    fn vessel(&mut self) -> Result<(), StoreError> {
        let vessel = Vessel {
            id: self.tx.new_id(),
            name: self.name(),
            empty_mg: self.rng.i64(50_000..150_000),
            with_water_mg: self.rng.i64(200_000..400_000),
            water_temperature_mc: self.rng.i64(10_000..30_000),
            gone: false,
        };
        self.put(EditorKind::Vessel, &vessel).map(|_| ())
    }

    /// One known by each way, and one that has all at once, as when two phones each knew something.
    fn forms(&mut self, bodies: &[Uuid]) -> Result<Vec<Uuid>, StoreError> {
        let blank = Form { class: "cylinder_mug".into(), ..Form::default() };
        let by_capacity = Form { capacity_ul: Some(self.rng.i64(200_000..400_000)), ..blank.clone() };
        let by_areas = Form {
            inside_area_mm2: Some(self.rng.i64(20_000..30_000)),
            outside_area_mm2: self.maybe(|rng| rng.i64(20_000..30_000)),
            ..blank.clone()
        };
        let by_profile = Form {
            profile: Some(self.profile()),
            traced_e4: self.maybe(|rng| rng.i64(100..900)),
            stage: self.maybe(|_| "bisque".into()),
            body: self.maybe(|rng| *rng.choice(bodies).unwrap()),
            wall_um: Some(self.rng.i64(3_000..5_000)),
            floor_um: Some(self.rng.i64(3_000..7_000)),
            foot_width_um: Some(self.rng.i64(4_000..8_000)),
            foot_height_um: Some(self.rng.i64(2_000..4_000)),
            bare_foot_um: self.maybe(|rng| rng.i64(1_000..9_000)),
            overlap_um: Some(self.rng.i64(0..2) * self.rng.i64(9_000..20_000)),
            fill_um: self.maybe(|rng| rng.i64(5_000..20_000)),
            handle_length_um: self.maybe(|rng| rng.i64(90_000..120_000)),
            handle_girth_um: self.maybe(|rng| rng.i64(30_000..50_000)),
            extra_area_mm2: self.maybe(|rng| rng.i64(0..2) * rng.i64(1_000..2_000)),
            bisque_mg: self.maybe(|rng| rng.i64(250_000..400_000)),
            ..blank.clone()
        };
        let by_all = Form {
            inside_area_mm2: by_areas.inside_area_mm2,
            capacity_ul: by_capacity.capacity_ul,
            profile: Some(self.profile()),
            ..by_profile.clone()
        };
        let made =
            |body: &Form| Form { stage: Some("fired".into()), body: body.body.or(Some(bodies[0])), ..body.clone() };
        let by_width =
            Form { class: "plate".into(), width_um: Some(self.rng.i64(150_000..300_000)), ..Form::default() };
        let by_height = Form { height_um: Some(self.rng.i64(70_000..150_000)), ..blank.clone() };
        let by_clay = Form { clay_mg: Some(self.rng.i64(300_000..900_000)), ..blank.clone() };
        let forms = [by_capacity, by_areas, made(&by_profile), by_profile, by_all, by_width, by_height, by_clay];
        let mut ids = Vec::new();
        for form in forms {
            let form = Form { id: self.tx.new_id(), name: self.name(), ..form };
            ids.push(self.put(EditorKind::Form, &form)?);
        }
        Ok(ids)
    }

    fn profile(&mut self) -> Points {
        let heights = [0, 20_000, 45_000, 70_000, 95_000];
        let point = |height: i64| {
            let height = height + if height == 0 { 0 } else { self.rng.i64(0..9_999) };
            let mut point = vec![height, self.rng.i64(36_000..42_000)];
            if self.rng.bool() {
                point.push(self.rng.i64(3_000..5_000));
            }
            point
        };
        Points(heights.into_iter().map(point).collect())
    }

    fn tile(&mut self, glaze: Uuid) -> Result<(), StoreError> {
        let area_mm2 = self.rng.i64(3_000..6_000);
        let tile = Tile {
            id: self.tx.new_id(),
            glaze,
            name: self.name(),
            area_mm2,
            net_mg: Some(area_mm2 + self.rng.i64(0..999)),
            dry_mg: self.maybe(|rng| area_mm2 / 2 + rng.i64(0..99)),
            specific_gravity_e5: Some(self.rng.i64(140_001..150_000)),
            at: self.rng.i64(0..NOW.unix_ms),
            gone: false,
            came_out: self.maybe(|_| "right".to_owned()),
            coats: self.maybe(|rng| rng.i64(1..6)),
            aim_mg: self.maybe(|rng| rng.i64(3_001..6_000)),
        };
        self.put(EditorKind::Tile, &tile).map(|_| ())
    }

    /// As it was when it was written down: the glaze's powder and the form's area are known otherwise by now.
    fn control(&mut self, glaze: Uuid, form: Uuid) -> Result<(), StoreError> {
        let control = Control {
            id: self.tx.new_id(),
            form,
            glaze,
            zone: "inside".into(),
            net_mg: self.rng.i64(18_000..26_000),
            specific_gravity_e5: self.rng.i64(140_001..150_000),
            sg_uncertainty_e5: self.rng.i64(1..999),
            powder_density_e3: self.rng.i64(2_001..2_999),
            area_mm2: self.rng.i64(20_000..30_000),
            at: self.rng.i64(0..NOW.unix_ms),
            gone: false,
        };
        self.put(EditorKind::Control, &control).map(|_| ())
    }

    fn coat(&mut self, bucket: Uuid, glaze: Uuid, form: Uuid) -> Result<(), StoreError> {
        let coat = Coat {
            id: self.tx.new_id(),
            piece: self.tx.new_id(),
            form,
            glaze,
            bucket,
            scale: self.tx.new_id(),
            zone: "inside".into(),
            at: NOW.unix_ms,
            net_mg: self.rng.i64(18_000..26_000),
            specific_gravity_e5: self.rng.i64(140_001..150_000),
            powder_density_e3: 2_600,
            area_mm2: self.rng.i64(20_000..30_000),
            aim_mg: 22_000,
            low_mg: 20_000,
            high_mg: 24_000,
            added_mg: self.maybe(|rng| rng.i64(1..999)),
            rubbed_off_mg: self.maybe(|rng| rng.i64(1..999)),
            dip_ms: self.maybe(|rng| rng.i64(1_001..9_999)),
            source: "starting".into(),
            verdict: "within".into(),
            control: true,
            note: self.note(),
            ..Coat::default()
        };
        self.put(EditorKind::Control, &coat)?;
        self.put(EditorKind::Coat, &coat)?;
        // A piece with two coats, weighed again bone dry.
        let inside = Coat {
            id: self.tx.new_id(),
            piece: self.tx.new_id(),
            bare_mg: Some(self.rng.i64(300_001..320_000)),
            ..coat.clone()
        };
        let dry = |rng: &mut Rng, coat: Coat| Coat {
            dry_mg: Some(rng.i64(9_001..11_000)),
            dry_uncertainty_mg: Some(rng.i64(101..400)),
            control: false,
            ..coat
        };
        let outside = Coat { id: self.tx.new_id(), zone: "outside".into(), ..inside.clone() };
        let (inside, outside) = (dry(self.rng, inside), dry(self.rng, outside));
        self.tx.put(&inside)?;
        self.tx.put(&outside)?;
        self.things.push((EditorKind::DryWeight, inside.piece));
        Ok(())
    }

    fn kiln(&mut self, round: bool) -> Result<Uuid, StoreError> {
        let kiln = Kiln {
            id: self.tx.new_id(),
            name: self.name(),
            round,
            across_um: self.rng.i64(300_000..600_000),
            // Also where it is round: it was not when its depth was measured on another phone.
            deep_um: Some(self.rng.i64(300_000..600_000)),
            shelves: self.rng.i64(1..20),
            gone: false,
        };
        self.put(EditorKind::Kiln, &kiln)
    }

    fn firing(&mut self, kiln: Uuid, state: &str) -> Result<(), StoreError> {
        // More cones than the editor offers, read or not, and one of them twice.
        let witnesses = [("5", "touching"), ("6", ""), ("7", "standing"), ("9", ""), ("9", "bent")];
        let witnesses = witnesses.map(|(cone, reading)| (cone.to_owned(), reading.to_owned()));
        let firing = Firing {
            id: self.tx.new_id(),
            kiln,
            at: self.rng.i64(0..NOW.unix_ms),
            cone: self.rng.choice(["6", "010", "06"]).unwrap().into(),
            cone_kind: "self_supporting".into(),
            state: state.into(),
            program: self.note(),
            fired_at: self.maybe(|rng| rng.i64(0..NOW.unix_ms)),
            top_mc: self.maybe(|rng| rng.i64(900_000..1_300_000)),
            minutes: self.maybe(|rng| rng.i64(100..2_000)),
            witnesses: self.maybe(|rng| Pairs(witnesses[..rng.usize(1..=5)].to_vec())),
            checked: self.maybe(|_| "shelves_washed,a thing of a newer version".into()),
            note: self.note(),
            gone: false,
            number: self.maybe(|rng| rng.i64(0..1_000_000_000)),
            name: self.note(),
            fires: self.maybe(|rng| rng.choice(["bisque", "glazed", "raku"]).unwrap().to_string()),
        };
        self.put(EditorKind::WitnessCones, &firing)?;
        self.put(EditorKind::Firing, &firing).map(|_| ())
    }

    fn piece(&mut self, form: Uuid) -> Result<(), StoreError> {
        let piece = Piece {
            id: self.tx.new_id(),
            name: self.name(),
            code: self.note(),
            form: Some(form),
            at: self.rng.i64(0..NOW.unix_ms),
            gone: false,
        };
        self.put(EditorKind::Piece, &piece).map(|_| ())
    }
}

fn entry(kind: EditorKind, id: Uuid, values: &[(&str, &str)]) -> EditorEntry {
    EditorEntry { id: id.to_string(), ..crate::editor(kind, "", values) }
}

/// What is entered to change `field`; `None` for one that cannot be changed by entering one thing.
fn changed(kind: EditorKind, field: &EditorField) -> Option<String> {
    match field.kind {
        FieldKind::Text if field.key == "cones" => Some("8, 9".into()),
        FieldKind::Lines => Some("Silica 30\nWhiting 20\n+ Cobalt oxide 1".into()),
        FieldKind::Text | FieldKind::Exact => Some("Otherwise".into()),
        FieldKind::Number => {
            let number = NUMBERS.iter().find(|(of, key, _)| (*of, *key) == (kind, &field.key));
            Some(number.unwrap_or_else(|| panic!("no number for {kind:?}.{}", field.key)).2.into())
        }
        FieldKind::Choice | FieldKind::Outline => {
            let mut others = field.items.iter().filter(|item| item.code != field.text && item.code != "tile");
            // What is known in the first way is known at once; the last wants more to be filled in.
            let other = if field.key == "way" { others.next() } else { others.next_back() };
            Some(other?.code.clone())
        }
        FieldKind::Switch => Some(if field.text == "yes" { "no" } else { "yes" }.into()),
        FieldKind::Table => {
            let mut rows: Vec<String> = field.text.lines().map(str::to_owned).collect();
            *rows.last_mut()? = if kind == EditorKind::ScaleTest { "312777 mg" } else { "112 mm\t80 mm\t" }.into();
            Some(rows.join("\n"))
        }
        FieldKind::Day => Some("2026-11-11".into()),
        FieldKind::Secret | FieldKind::Folder | FieldKind::Photo => None,
    }
}

/// The columns that may change when the field `key` is touched.
fn may_change(kind: EditorKind, key: &str) -> impl Fn(&str) -> bool {
    let own = COLUMNS.iter().find(|(of, known, _)| (*of, *known) == (kind, key)).map_or(key, |(.., column)| column);
    let own = own.to_owned();
    let follows = FOLLOWS.iter().find(|(of, known, _)| (*of, *known) == (kind, key)).map_or(&[][..], |(.., also)| also);
    move |column| {
        let stem = UNITS.iter().find_map(|unit| column.strip_suffix(unit)).unwrap_or(column);
        stem == own || column == own || follows.contains(&column)
    }
}

#[test]
fn saving_what_was_not_touched_writes_nothing() {
    let mut faults: BTreeMap<String, usize> = BTreeMap::new();
    let mut saved: BTreeMap<String, usize> = BTreeMap::new();
    for (seed, units) in every_style().into_iter().enumerate() {
        let filled = Filled::new(units, seed as u64);
        for (kind, id) in &filled.things {
            let untouched = entry(*kind, *id, &[]);
            let view = filled.view(&untouched);
            // A shell may also hand back all that it shows.
            let shown = view.fields.iter().filter(|field| field.kind != FieldKind::Secret);
            let shown: Vec<Value> =
                shown.map(|field| Value { key: field.key.clone(), text: field.text.clone() }).collect();
            for entry in [untouched.clone(), EditorEntry { values: shown, ..untouched }] {
                let Some(events) = filled.events_of(&entry) else {
                    *faults.entry(format!("{kind:?} is refused")).or_default() += 1;
                    continue;
                };
                *saved.entry(format!("{kind:?}")).or_default() += 1;
                for column in events.iter().flat_map(|event| event.body.keys()) {
                    *faults.entry(format!("{kind:?}.{column}")).or_default() += 1;
                }
            }
        }
    }
    assert_eq!(faults, BTreeMap::new());
    assert!(saved.len() == 19 && saved.values().all(|times| *times >= 144), "{saved:?}");
}

#[test]
fn touching_one_field_writes_that_field_alone() {
    let mut faults: BTreeMap<String, usize> = BTreeMap::new();
    let (mut tried, mut written) = (BTreeSet::new(), BTreeSet::new());
    for (seed, units) in every_style().into_iter().enumerate().step_by(5) {
        let filled = Filled::new(units, 1_000 + seed as u64);
        for (kind, id) in &filled.things {
            for field in filled.view(&entry(*kind, *id, &[])).fields {
                let Some(text) = changed(*kind, &field) else { continue };
                tried.insert(format!("{kind:?}.{}", field.key));
                // Some cannot be changed by themselves: nothing was ever fired before there was a body to shrink.
                let Some(events) = filled.events_of(&entry(*kind, *id, &[(&field.key, &text)])) else { continue };
                let may_change = may_change(*kind, &field.key);
                let body = events.iter().flat_map(|event| event.body.keys()).filter(|column| *column != SEEN);
                let (own, others): (Vec<_>, Vec<_>) = body.partition(|column| may_change(column));
                for column in others {
                    *faults.entry(format!("{kind:?}.{} wrote {column}", field.key)).or_default() += 1;
                }
                if !own.is_empty() {
                    written.insert(format!("{kind:?}.{}", field.key));
                }
            }
        }
    }
    assert_eq!(faults, BTreeMap::new());
    // All of them are stored, but for those that only show other fields.
    let only_shows = ["Form.measure", "Form.more", "Glaze.correct_hazards", "Tile.compare_with", "Tile.size"];
    assert_eq!(tried.difference(&written).collect::<Vec<_>>(), only_shows);
    assert!(written.len() > 70, "{written:?}");
}

#[test]
fn a_code_of_a_newer_version_and_a_thing_that_is_not_here_stay_chosen() {
    let units = (
        MassUnit::Gram,
        VolumeUnit::Millilitre,
        AreaUnit::SquareCentimetre,
        LengthUnit::Millimetre,
        DecimalMark::Point,
    );
    let filled = Filled::new(units, 7);
    let store = filled.bench.studio.store();
    let device = store.device().0;
    let newer = || "of_a_newer_version".to_owned();
    let elsewhere = store.transact(NOW.unix_ms, |tx| {
        let mut things = Vec::new();
        let mut put = |kind: EditorKind, id: Uuid, key: &'static str| things.push((kind, id, key));
        for (kind, id) in &filled.things {
            let (conn, not_here) = (tx.conn(), Uuid::from_u128(77));
            match kind {
                EditorKind::Glaze => {
                    let glaze = Glaze::load(conn, *id)?.unwrap();
                    tx.put(&Glaze { sensitivity: newer(), ..glaze })?;
                    put(*kind, *id, "sensitivity");
                }
                EditorKind::Form => {
                    let form = Form::load(conn, *id)?.unwrap();
                    let has_profile = form.profile.is_some() && form.inside_area_mm2.is_none();
                    let key = *Rng::with_seed(id.as_u128() as u64).choice(&["class", "stage", "body"]).unwrap();
                    let key = if has_profile { key } else { "class" };
                    tx.put(&match key {
                        "class" => Form { class: newer(), ..form },
                        "stage" => Form { stage: Some(newer()), body: Some(not_here), ..form },
                        _ => Form { body: Some(not_here), stage: Some("fired".into()), ..form },
                    })?;
                    put(*kind, *id, key);
                }
                EditorKind::Tile => {
                    let tile = Tile::load(conn, *id)?.unwrap();
                    tx.put(&Tile { glaze: not_here, ..tile })?;
                    put(*kind, *id, "glaze");
                }
                EditorKind::Control => {
                    if let Some(control) = Control::load(conn, *id)? {
                        tx.put(&Control { zone: newer(), form: not_here, ..control })?;
                        put(*kind, *id, "zone");
                    } else {
                        let coat = Coat::load(conn, *id)?.unwrap();
                        tx.put(&Coat { zone: newer(), form: not_here, ..coat })?;
                        put(*kind, *id, "note");
                    }
                }
                EditorKind::Firing => {
                    let firing = Firing::load(conn, *id)?.unwrap();
                    let state = if firing.state == "fired" { newer() } else { firing.state.clone() };
                    tx.put(&Firing { cone: newer(), cone_kind: newer(), state, kiln: not_here, ..firing })?;
                    put(*kind, *id, "cone");
                }
                _ => {}
            }
        }
        let preference = Preference::load(tx.conn(), device)?.unwrap();
        tx.put(&Preference { mass: newer(), decimal: newer(), ..preference })?;
        put(EditorKind::Preference, device, "mass");
        Ok::<_, StoreError>(things)
    });
    for (kind, id, key) in elsewhere.unwrap().value {
        let view = filled.view(&entry(kind, id, &[]));
        let field = view.fields.iter().find(|field| field.key == key).unwrap();
        if key != "note" {
            let shown = field.items.iter().find(|item| item.code == field.text).unwrap();
            let said = if key == "glaze" || key == "body" { "Not on this phone" } else { "From a newer version" };
            assert_eq!(shown.name, said, "{kind:?}.{key}");
        }
        assert_eq!(filled.events_of(&entry(kind, id, &[])), Some(Vec::new()), "{kind:?}.{key}");
        // What is touched is changed all the same.
        let touched = if kind == EditorKind::Preference { "phone" } else { "name" };
        let touched = if matches!(kind, EditorKind::Firing | EditorKind::Control) { "note" } else { touched };
        let Some(events) = filled.events_of(&entry(kind, id, &[(touched, "Otherwise")])) else {
            panic!("{kind:?}.{key}")
        };
        let columns: Vec<&String> = events.iter().flat_map(|event| event.body.keys()).collect();
        let is_control = kind == EditorKind::Control && key == "zone";
        assert_eq!(columns, if is_control { vec![] } else { vec![touched] }, "{kind:?}.{key}");
    }
}

#[test]
fn what_a_phone_begins_with_is_nothing_to_write_down() {
    let bench = Bench::empty();
    let before = bench.dump();
    let saved = bench.studio.save_record(NOW, &crate::editor(EditorKind::Preference, "", &[])).unwrap();
    assert!(saved.undo.is_empty());
    assert_eq!(bench.dump(), before);
    assert!(!bench.try_save(EditorKind::Preference, "", &[("mass", "ounce")]).unwrap().undo.is_empty());
}
