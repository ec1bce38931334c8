//! Reads cases of `tests/oracle/mixing.py` and writes what laydown makes of them: batches, thinnings, what a bucket holds, the SG to
//! expect, and SGs by vessel: `cargo run -p laydown-tests --example mixing < cases.json`.

use std::io::Write;

use laydown_domain::glaze::bucket::{Change, Contents};
use laydown_domain::glaze::recipe::{Batch, Material, Recipe};
use laydown_domain::glaze::sg_age::{days_until_due, projected, rise, walk};
use laydown_domain::glaze::slurry::{SgReading, Thinning, thin, water_density};
use laydown_domain::units::{Celsius, Grams, Millilitres, PowderDensity, SpecificGravity};
use serde::Deserialize;
use serde_json::{Value, json};

#[derive(Deserialize)]
struct Case {
    materials: Vec<(f64, bool, f64)>,
    base: f64,
    sg: f64,
    to: f64,
    uncertainty: f64,
    volume: f64,
    steps: Vec<(String, f64)>,
    checks: Vec<(f64, f64, f64)>,
    changed: Vec<f64>,
    later: f64,
    vessel: (f64, f64, f64, f64),
}

fn sg(value: f64) -> SpecificGravity {
    SpecificGravity::new(value).unwrap()
}

fn found(case: &Case) -> Value {
    let material = |(parts, is_addition, density): &(f64, bool, f64)| Material {
        name: "Material".to_owned(),
        parts: *parts,
        is_addition: *is_addition,
        density: Some(PowderDensity::new(*density).unwrap()),
        price_per_kg: None,
    };
    let recipe = Recipe::new(case.materials.iter().map(material).collect()).unwrap();
    let density = recipe.powder_density().unwrap();
    let base = Grams::new(case.base);
    let weights: Vec<f64> = recipe.weights(base).into_iter().map(Grams::value).collect();
    let batch = Batch::of_powder(base * recipe.powder_per_base(), sg(case.sg), density).unwrap();
    let by_volume = Batch::of_volume(batch.volume, sg(case.sg), density).unwrap();
    let thin = match thin(Millilitres::new(case.volume), sg(case.sg), sg(case.to), density).unwrap() {
        Thinning::Nothing => json!({ "nothing": true }),
        Thinning::AddWater(water) => json!({ "water": water.value() }),
        Thinning::TakeOffWater { water, or_add_powder } => {
            json!({ "water": -water.value(), "powder": or_add_powder.value() })
        }
    };
    let reading = SgReading::new(sg(case.sg), case.uncertainty).unwrap();
    let mut contents = Contents { volume: Some(Millilitres::new(case.volume)), sg: reading };
    let mut steps = Vec::new();
    for (what, amount) in &case.steps {
        let change = match what.as_str() {
            "water" => Change::Water(Millilitres::new(*amount)),
            "water_off" => Change::WaterOff(Millilitres::new(*amount)),
            "powder" => Change::Powder(Grams::new(*amount)),
            _ => Change::Taken(Grams::new(*amount)),
        };
        contents = contents.after(change, density);
        let volume = contents.volume.map(Millilitres::value);
        steps.push(json!([volume, contents.sg.sg.value(), contents.sg.standard_uncertainty]));
    }
    let checks: Vec<(f64, SgReading)> =
        case.checks.iter().map(|(day, value, unsure)| (*day, SgReading::new(sg(*value), *unsure).unwrap())).collect();
    let (walk, rise) = (walk(&checks, &case.changed), rise(&checks, &case.changed));
    let expected = projected(reading, case.later, walk, rise);
    let (empty, with_water, celsius, step) = case.vessel;
    // What the vessel would weigh with this glaze, as its scale shows it.
    let water_ml = (with_water - empty) / water_density(Celsius::new(celsius)).unwrap();
    let with_glaze = ((empty + water_ml * case.sg) / step).round() * step;
    let grams = Grams::new;
    let by_vessel =
        SgReading::by_vessel(grams(empty), grams(with_water), Celsius::new(celsius), grams(with_glaze), grams(step))
            .unwrap();
    let cup = Millilitres::new(water_ml);
    let by_cup = SgReading::by_volume(grams(empty), grams(with_glaze), cup, grams(step)).unwrap();
    let pair = |reading: SgReading| json!([reading.sg.value(), reading.standard_uncertainty]);
    json!({
        "weights": weights,
        "density": density.value(),
        "powder": batch.powder.value(),
        "water": batch.water.value(),
        "mixed": batch.volume.value(),
        "by_volume": [by_volume.powder.value(), by_volume.water.value()],
        "thin": thin,
        "steps": steps,
        "walk": walk,
        "rise": [rise.per_day, rise.standard_uncertainty],
        "projected": pair(expected),
        "due": days_until_due(reading, walk, rise),
        "with_glaze": with_glaze,
        "by_vessel": pair(by_vessel),
        "cup_ml": water_ml,
        "by_volume_sg": pair(by_cup),
    })
}

fn main() {
    let cases: Vec<Case> = serde_json::from_reader(std::io::stdin()).unwrap();
    let all: Vec<Value> = cases.iter().map(found).collect();
    serde_json::to_writer(std::io::stdout().lock(), &all).unwrap();
    std::io::stdout().flush().unwrap();
}
