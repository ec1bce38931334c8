//! An invented studio for the tests, the benches and the programs beside them.

pub mod faulty;
pub mod memory;
pub mod segments;
pub mod simulated;
pub mod work;

use std::path::Path;

use laydown_store::entity::{
    BisqueLot, Body, Bucket, BucketEntry, Check, Coat, Control, Form, Glaze, Material, Materials, Pairs, Points,
    Preference, Scale, ScaleTest, Tile, Vessel, Weights,
};
use laydown_store::journal::{Ids, RandomIds, SeededIds};
use laydown_store::{Committed, Store, StoreError, query};
use rusqlite::Connection;
use tempfile::TempDir;
use uuid::Uuid;

/// A morning in the invented studio, unix ms.
pub const NOW: i64 = 1_790_000_000_000;

/// Opens the studio at `path` as a device whose names follow from `seed`.
pub fn open(path: &Path, seed: u64) -> Store {
    Store::open(path, NOW, SeededIds::new(seed)).unwrap()
}

/// A new, empty studio in a folder of its own.
pub fn studio() -> (TempDir, Store) {
    let folder = tempfile::tempdir().unwrap();
    let store = open(&folder.path().join("studio.laydown"), 1);
    (folder, store)
}

/// The things one weighing refers to.
pub struct Bench {
    /// The glaze.
    pub glaze: Glaze,
    /// Its bucket.
    pub bucket: Bucket,
    /// The form.
    pub form: Form,
    /// The scale.
    pub scale: Scale,
    /// The check of the bucket.
    pub check: Check,
}

/// Saves one of each thing that a weighing needs.
pub fn furnish(store: &Store) -> Bench {
    let saved = store.transact(NOW, |tx| {
        let mut ids = || tx.new_id();
        let (glaze, bucket) = (ids(), ids());
        let bench = Bench {
            glaze: Glaze {
                materials: Some(Materials(vec![
                    Material { name: "Potash feldspar".into(), parts_e3: 42_500, ..Material::default() },
                    Material {
                        name: "Copper carbonate".into(),
                        parts_e3: 2_000,
                        addition: true,
                        density_e3: Some(4_000),
                        price_e3: Some(31_500),
                        ..Material::default()
                    },
                ])),
                density_from: Some("own".into()),
                hazards: Some(Pairs(vec![("lead".into(), "yes".into())])),
                working_sg_e5: Some(145_000),
                ..glaze_called(glaze, "Winter ash")
            },
            bucket: Bucket {
                id: bucket,
                glaze,
                name: "Blue lid".into(),
                volume_ul: Some(12_000_000),
                mixed_at: NOW - 86_400_000,
                gone: false,
                diameter_um: Some(285_000),
                depth_um: Some(320_000),
                empty_mg: Some(812_000),
            },
            form: Form {
                id: ids(),
                name: "Breakfast mug".into(),
                class: "cylinder_mug".into(),
                capacity_ul: Some(350_000),
                inside_area_mm2: Some(26_400),
                profile: Some(Points(vec![vec![0, 36_000], vec![45_500, 42_000, 4_500], vec![95_000, 41_000]])),
                stage: Some("bisque".into()),
                wall_um: Some(4_000),
                floor_um: Some(5_000),
                bare_foot_um: Some(6_000),
                ..Form::default()
            },
            scale: Scale {
                id: ids(),
                name: "Shelf scale".into(),
                capacity_mg: 5_000_000,
                step_mg: 100,
                minimum_mg: None,
                repeatability_mg: Some(80),
                gone: false,
                accuracy_class: None,
            },
            check: Check {
                id: ids(),
                bucket,
                at: NOW - 3_600_000,
                specific_gravity_e5: 145_000,
                standard_uncertainty_e5: 250,
                how: "vessel".into(),
                vessel: None,
                full_mg: Some(312_400),
                temperature_mc: Some(19_500),
                flow_ms: Some(31_000),
                note: None,
                cup: Some("ford_4".into()),
                gone: false,
            },
        };
        tx.put(&bench.glaze)?;
        tx.put(&bench.bucket)?;
        tx.put(&bench.form)?;
        tx.put(&bench.scale)?;
        tx.put(&bench.check)?;
        Ok::<_, StoreError>(bench)
    });
    saved.unwrap().value
}

/// A glaze that is only a name.
pub fn glaze_called(id: Uuid, name: &str) -> Glaze {
    Glaze {
        id,
        name: name.into(),
        sensitivity: "medium".into(),
        powder_density_e3: 2_600,
        starting_laydown_mg_dm2: 5_500,
        gone: false,
        ..Glaze::default()
    }
}

/// The `number`th coat weighed on `bench`, a minute after the one before; every fiftieth is a control piece.
pub fn coat(bench: &Bench, ids: &mut dyn Ids, number: i64) -> Coat {
    let at = NOW + number * 60_000;
    let net_mg = 22_000 + (number * 7_919) % 3_000;
    Coat {
        id: ids.next(at),
        piece: ids.next(at),
        form: bench.form.id,
        bucket: bench.bucket.id,
        glaze: bench.glaze.id,
        zone: "inside".into(),
        scale: bench.scale.id,
        at,
        bare_mg: None,
        glazed_mg: None,
        net_mg,
        specific_gravity_e5: 145_000,
        sg_uncertainty_e5: 250,
        powder_density_e3: 2_600,
        area_mm2: 26_400,
        aim_mg: 23_400,
        low_mg: 21_760,
        high_mg: 25_040,
        source: "starting".into(),
        verdict: "within".into(),
        laydown_mg_dm2: net_mg * 235 / 1_000,
        control: number % 50 == 0,
        note: None,
        code: None,
        confirmed: false,
        added_mg: None,
        rubbed_off_mg: None,
        hand: None,
        dry_mg: None,
        dry_uncertainty_mg: None,
        dip_ms: None,
    }
}

/// Saves one coat as one command.
pub fn save(store: &Store, coat: &Coat) -> Result<Committed<()>, StoreError> {
    store.transact(coat.at, |tx| tx.put(coat).map(|_| ()))
}

/// A piece that is in the studio: the one coated last, or one that is coated now.
pub fn a_piece(store: &Store) -> Uuid {
    if let Some(coat) = store.read(|conn| query::latest_coats(conn, 1)).unwrap().pop() {
        return coat.piece;
    }
    let coat = coat(&furnish(store), &mut RandomIds, 0);
    save(store, &coat).unwrap();
    coat.piece
}

/// Saves one of every remaining kind, each with all of its fields.
pub fn save_the_rest(store: &Store, bench: &Bench) {
    let device = store.device();
    let saved = store.transact(NOW, |tx| {
        let vessel = Vessel {
            id: tx.new_id(),
            name: "Jam jar".into(),
            empty_mg: 104_200,
            with_water_mg: 247_900,
            water_temperature_mc: 20_000,
            gone: false,
        };
        let control = Control {
            id: tx.new_id(),
            form: bench.form.id,
            glaze: bench.glaze.id,
            zone: "inside".into(),
            net_mg: 23_000,
            specific_gravity_e5: 145_500,
            sg_uncertainty_e5: 500,
            powder_density_e3: 2_600,
            area_mm2: 26_400,
            at: NOW,
            gone: false,
        };
        let tile = Tile {
            id: tx.new_id(),
            glaze: bench.glaze.id,
            name: "Row 3".into(),
            area_mm2: 4_200,
            net_mg: Some(3_600),
            dry_mg: Some(1_820),
            specific_gravity_e5: Some(145_000),
            at: NOW,
            gone: false,
            came_out: Some("right".into()),
            coats: Some(2),
            aim_mg: Some(3_500),
        };
        let preference = Preference {
            id: device.0,
            mass: "gram".into(),
            volume: "millilitre".into(),
            area: "square_centimetre".into(),
            length: "millimetre".into(),
            decimal: "comma".into(),
            speak: true,
            tick: false,
            code_pieces: true,
            phone: Some("Tablet by the sink".into()),
            hand: None,
            ask_dip: true,
        };
        let check = Check {
            id: tx.new_id(),
            vessel: Some(vessel.id),
            at: NOW,
            flow_ms: Some(14_300),
            note: Some("stirred, sieved; it's smooth".into()),
            ..bench.check.clone()
        };
        let body = Body {
            id: tx.new_id(),
            name: "White stoneware".into(),
            to_bisque_e4: 600,
            to_fired_e4: 1_250,
            bisque_density_mg_ml: Some(1_850),
            gone: false,
        };
        let lot = BisqueLot {
            id: tx.new_id(),
            name: "Bisque 14".into(),
            body: Some(body.id),
            cone: Some("04".into()),
            at: NOW,
            soaking: "boil".into(),
            bone_dry_mg: 100_000,
            soaked_mg: 108_200,
            suspended_mg: Some(58_100),
            water_temperature_mc: 20_500,
            gone: false,
        };
        let test = ScaleTest {
            id: tx.new_id(),
            scale: bench.scale.id,
            at: NOW,
            readings: Some(Weights(vec![312_400, 312_500, 312_400, 312_300, 312_500])),
            known_mg: Some(500_000),
            shown_mg: Some(500_100),
            gone: false,
        };
        tx.put(&lot)?;
        tx.put(&test)?;
        let entry = BucketEntry {
            id: tx.new_id(),
            bucket: bench.bucket.id,
            at: NOW,
            what: "water".into(),
            volume_ul: Some(350_000),
            note: Some("before the big bowls".into()),
            ..BucketEntry::default()
        };
        tx.put(&body)?;
        tx.put(&entry)?;
        tx.put(&vessel)?;
        tx.put(&control)?;
        tx.put(&tile)?;
        tx.put(&preference)?;
        tx.put(&check)
    });
    saved.unwrap();
}

/// The newest schema with a filled sample, as SQL.
pub fn newest_sample() -> String {
    let (folder, store) = studio();
    let bench = furnish(&store);
    save_the_rest(&store, &bench);
    for number in 0..3 {
        save(&store, &coat(&bench, &mut SeededIds::new(number as u64), number)).unwrap();
    }
    let undone = save(&store, &coat(&bench, &mut SeededIds::new(9), 9)).unwrap();
    store.undo(NOW, undone.undo).unwrap();
    drop(store);
    let path = folder.path().join("studio.laydown");
    let conn = Connection::open(&path).unwrap();
    let pragma = |name| conn.pragma_query_value(None, name, |row| row.get::<_, i64>(0)).unwrap();
    let (version, mark) = (pragma("user_version"), pragma("application_id"));
    let mut sql = format!("PRAGMA application_id = {mark};\nPRAGMA user_version = {version};\n");
    let mut tables = conn.prepare("SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY rowid").unwrap();
    let tables: Vec<(String, String)> =
        tables.query_map([], |row| Ok((row.get(0)?, row.get(1)?))).unwrap().map(Result::unwrap).collect();
    for (name, create) in &tables {
        sql += &format!("{create};\n");
        if !create.starts_with("CREATE TABLE") {
            continue;
        }
        let mut columns = conn.prepare(&format!("SELECT name FROM pragma_table_info('{name}')")).unwrap();
        let columns: Vec<String> =
            columns.query_map([], |row| row.get::<_, String>(0)).unwrap().map(Result::unwrap).collect();
        let values: Vec<String> = columns.iter().map(|column| format!("quote(\"{column}\")")).collect();
        let rows = format!("SELECT {} FROM \"{name}\" ORDER BY 1", values.join(" || ', ' || "));
        let mut rows = conn.prepare(&rows).unwrap();
        for row in rows.query_map([], |row| row.get::<_, String>(0)).unwrap() {
            sql += &format!("INSERT INTO \"{name}\" VALUES ({});\n", row.unwrap());
        }
    }
    sql
}
