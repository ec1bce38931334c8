//! Writes random jobs with the targets and verdicts that laydown gives them, as JSON for `tests/oracle/oracle.py`:
//! `cargo run -p laydown-tests --example oracle_cases`. The same cases every time.

use std::io::Write;

use laydown_domain::coat::Solids;
use laydown_domain::coat::scale::Scale;
use laydown_domain::coat::target::{Control, Evidence, Job, Sensitivity, TileEvidence, target};
use laydown_domain::coat::verdict::{Reading, judge};
use laydown_domain::form::{Form, ShapeClass, ZoneKind};
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::units::{Grams, Laydown, Millilitres, PowderDensity, SpecificGravity};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use serde_json::{Value, json};

const CASES: usize = 600;

/// A form by capacity, or by measured area.
#[derive(Debug, Clone, Copy)]
struct Shape {
    class: ShapeClass,
    capacity: f64,
    measured: bool,
}

/// The zones that are drawn, each as often; what a dip over both takes is their sum.
const ZONES: [ZoneKind; 2] = [ZoneKind::Inside, ZoneKind::Outside];

#[derive(Debug, Clone, Copy)]
struct Bucket {
    sg: f64,
    uncertainty: f64,
}

#[derive(Debug, Clone)]
struct Case {
    job: Shape,
    zone: ZoneKind,
    bucket: Bucket,
    powder: f64,
    sensitivity: Sensitivity,
    /// Other forms, whether of the job's class, with their control pieces' wet weights as multiples of a usual one.
    others: Vec<(Shape, bool, Bucket, Vec<f64>)>,
    same: Vec<f64>,
    tiles: Vec<(f64, f64)>,
    starting: f64,
    step: f64,
    repeatability: Option<f64>,
    /// The reading, as a multiple of the aim.
    reading: f64,
    bare: Option<u32>,
}

fn shapes() -> impl Strategy<Value = Shape> {
    let with_profile: Vec<ShapeClass> = ShapeClass::ALL.iter().copied().filter(|class| !class.is_flat()).collect();
    (prop::sample::select(with_profile), 60.0..3_000.0f64, any::<bool>())
        .prop_map(|(class, capacity, measured)| Shape { class, capacity, measured })
}

fn buckets() -> impl Strategy<Value = Bucket> {
    (1.25..1.75f64, prop::sample::select(vec![0.002, 0.005, 0.01, 0.04]))
        .prop_map(|(sg, uncertainty)| Bucket { sg: stored(sg, 1e5), uncertainty })
}

/// A figure as a studio stores it, in whole parts of a unit: nobody can type a finer one.
fn stored(value: f64, parts: f64) -> f64 {
    (value * parts).round() / parts
}

fn cases() -> impl Strategy<Value = Case> {
    let job = (
        (shapes(), prop::sample::select(ZONES.to_vec())),
        buckets(),
        2.3..3.5f64,
        prop::sample::select(Sensitivity::ALL.to_vec()),
    );
    let weights = || vec(0.75..1.3f64, 1..6);
    let evidence = (
        vec((shapes(), any::<bool>(), buckets(), weights()), 0..3),
        prop_oneof![3 => Just(Vec::new()), 1 => weights()],
        vec((3.0..10.0f64, 0.02..0.1f64), 0..4),
        3.0..10.0f64,
    );
    let weighing = (
        prop::sample::select(vec![0.01, 0.1, 0.2, 0.5, 1.0, 2.0]),
        prop::option::of(0.02..0.8f64),
        prop_oneof![4 => 0.85..1.15f64, 1 => 0.3..3.0f64, 1 => 4.0..9.0f64],
        prop::option::of(100u32..600),
    );
    (job, evidence, weighing).prop_map(
        |(
            ((job, zone), bucket, powder, sensitivity),
            (others, same, tiles, starting),
            (step, repeatability, reading, bare),
        )| Case {
            job,
            zone,
            bucket,
            powder: stored(powder, 1e3),
            sensitivity,
            others,
            same,
            tiles,
            starting,
            step,
            repeatability: repeatability.map(|grams| stored(grams, 1e3)),
            reading,
            bare,
        },
    )
}

fn form(shape: Shape, zone: ZoneKind) -> Form {
    let by_capacity = Form::by_capacity(shape.class, Millilitres::new(shape.capacity)).unwrap();
    if !shape.measured {
        return by_capacity;
    }
    // Measured, it need not have the class's proportions.
    let area = by_capacity.zone(zone).unwrap().area * (0.9 + shape.capacity % 0.2);
    let side = |kind| (zone == kind).then_some(area);
    Form::by_area(shape.class, side(ZoneKind::Inside), side(ZoneKind::Outside)).unwrap()
}

fn solids(bucket: Bucket, powder: PowderDensity) -> Solids {
    let reading = SgReading { sg: SpecificGravity::new(bucket.sg).unwrap(), standard_uncertainty: bucket.uncertainty };
    Solids::of(reading, powder).unwrap()
}

fn answer(case: &Case) -> Value {
    let powder = PowderDensity::new(case.powder).unwrap();
    let scale =
        Scale::new(Grams::new(20_000.0), Grams::new(case.step), None, case.repeatability.map(Grams::new)).unwrap();
    let (mut controls, mut written) = (Vec::new(), Vec::new());
    let mut known = |name: &str, shape: Shape, bucket: Bucket, weights: &[f64], same_form: bool| {
        let form = form(shape, case.zone);
        let zone = form.zone(case.zone).unwrap();
        let solids = solids(bucket, powder);
        let usual = solids.wet(Laydown::new(5.5).dry_on(zone.area));
        for weight in weights {
            let control = Control {
                wet: usual * *weight,
                solids,
                area: zone.area,
                area_relative_uncertainty: zone.relative_uncertainty,
                class: form.class,
                capacity: form.capacity,
                form_name: name.to_owned(),
                same_form,
                net_standard_uncertainty: scale.net_standard_uncertainty(),
            };
            written.push(json!({
                "wet": control.wet.value(),
                "sg": bucket.sg,
                "sg_uncertainty": bucket.uncertainty,
                "area": control.area.value(),
                "area_relative_uncertainty": control.area_relative_uncertainty,
                "class": control.class.code(),
                "capacity": control.capacity.map(Millilitres::value),
                "form": name,
                "same_form": same_form,
            }));
            controls.push(control);
        }
    };
    known("this form", case.job, Bucket { sg: 1.5, uncertainty: 0.005 }, &case.same, true);
    for (at, (shape, of_class, bucket, weights)) in case.others.iter().enumerate() {
        let class = if *of_class { case.job.class } else { shape.class };
        known(&format!("form {at}"), Shape { class, ..*shape }, *bucket, weights, false);
    }

    let form = form(case.job, case.zone);
    let job = Job {
        form_name: "this form".to_owned(),
        zone: *form.zone(case.zone).unwrap(),
        capacity: form.capacity,
        class: form.class,
        solids: solids(case.bucket, powder),
        sensitivity: case.sensitivity,
    };
    let tiles = case
        .tiles
        .iter()
        .map(|&(laydown, relative_uncertainty)| TileEvidence { laydown: Laydown::new(laydown), relative_uncertainty });
    let evidence = Evidence { controls, tiles: tiles.collect(), starting: Laydown::new(case.starting) };
    let target = target(&job, &evidence).unwrap();

    let on_scale = |grams: f64| Grams::new((grams / case.step).round().max(1.0) * case.step);
    let net = on_scale(target.wet.value() * case.reading);
    let reading = match case.bare {
        None => Reading::Net(net),
        Some(bare) => {
            let bare = on_scale(f64::from(bare));
            Reading::TwoWeights { bare, glazed: bare + net }
        }
    };
    let verdict = judge(&reading, &target, &scale, &job, evidence.controls.first());
    json!({
        "job": {
            "zone": case.zone.code(),
            "area": job.zone.area.value(),
            "area_relative_uncertainty": job.zone.relative_uncertainty,
            "class": job.class.code(),
            "capacity": job.capacity.map(Millilitres::value),
            "sg": case.bucket.sg,
            "sg_uncertainty": case.bucket.uncertainty,
            "powder_density": case.powder,
            "sensitivity": case.sensitivity.code(),
        },
        "controls": written,
        "tiles": case.tiles,
        "starting": case.starting,
        "scale": { "step": case.step, "repeatability": case.repeatability },
        "net": net.value(),
        "target": {
            "wet": target.wet.value(),
            "low": target.low.value(),
            "high": target.high.value(),
            "interval": [target.interval.0.value(), target.interval.1.value()],
            "laydown": target.laydown.value(),
            "source": target.source.code(),
            "pots": target.pots,
        },
        "verdict": verdict.ok().map(|verdict| json!({
            "kind": verdict.kind.code(),
            "half_width": verdict.half_width.value(),
            "to_aim": verdict.to_aim.value(),
            "to_within": verdict.to_within.value(),
            "dry": verdict.dry.value(),
            "laydown": verdict.laydown.value(),
            "on_control": verdict.on_control.map(Grams::value),
            "too_coarse": verdict.too_coarse,
        })),
        "refused": verdict.err().map(|refused| refused.to_string()),
    })
}

fn main() -> std::io::Result<()> {
    let mut runner = TestRunner::deterministic();
    let answers: Vec<Value> =
        (0..CASES).map(|_| cases().new_tree(&mut runner).unwrap().current()).map(|case| answer(&case)).collect();
    serde_json::to_writer(std::io::stdout().lock(), &answers)?;
    std::io::stdout().write_all(b"\n")
}
