//! Published values, each with its source in `check-values.json`. Every value in that file is checked here; one whose
//! topic has no check fails, so that no value lies there unused.
//!
//! `LAYDOWN_CHECK_VALUES=FILE cargo test -p laydown-tests --test published -- --nocapture` checks those of another file in the
//! same form, and says of each by its id: OK, FAIL, or UNSUPPORTED where nothing here knows its topic or its inputs.

use std::any::Any;
use std::collections::BTreeSet;
use std::f64::consts::PI;
use std::panic::{self, AssertUnwindSafe};

use laydown_domain::bisque::{Absorption, SoakError, SoakedPiece, USUAL_ABSORPTION};
use laydown_domain::coat::Solids;
use laydown_domain::coat::coverage::student_t_95;
use laydown_domain::coat::dry::{DryGlaze, together};
use laydown_domain::coat::scale::{AccuracyClass, Scale};
use laydown_domain::coat::target::{Evidence, Job, STARTING_LAYDOWN, Sensitivity, target};
use laydown_domain::form::profile::Point;
use laydown_domain::form::{Form, ShapeClass, Shrinkage, Stage, Zone, ZoneKind, revolve};
use laydown_domain::glaze::bucket::volume_at_level;
use laydown_domain::glaze::flow_cup::FlowCup;
use laydown_domain::glaze::material::density_by_name;
use laydown_domain::glaze::slurry::{
    SgReading, Thinning, dry_per_litre, sg_by_volume, sg_from_baume, sg_from_twaddell, solids_fraction, thin,
    water_density,
};
use laydown_domain::kiln::cone::{Cone, ConeKind};
use laydown_domain::learning::control_chart::{Trend, individuals, moving_average};
use laydown_domain::learning::dip_time::{Dip, DipLaw};
use laydown_domain::learning::spread::Spread;
use laydown_domain::units::{
    Celsius, Grams, Laydown, Millilitres, Millimetres, PowderDensity, Seconds, SpecificGravity, SquareCentimetres,
    Style, parse,
};
use serde::Deserialize;
use serde_json::Value;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Check {
    id: String,
    topic: String,
    inputs: Value,
    expected: Value,
    tolerance: Value,
    /// Beside the value for the reader.
    #[serde(rename = "unit")]
    _unit: String,
    source: String,
    seen: bool,
    basis: String,
}

impl Check {
    fn input(&self, key: &str) -> f64 {
        number(&self.inputs[key], key)
    }

    fn inputs(&self, key: &str) -> Vec<f64> {
        numbers(&self.inputs[key], key)
    }

    fn expected(&self, key: &str) -> Option<f64> {
        self.expected.get(key).map(|value| number(value, key))
    }

    /// The tolerance of one expected quantity: given for all, by name, or by place in a list.
    fn tolerance(&self, key: &str, at: usize) -> f64 {
        let tolerance = match &self.tolerance {
            Value::Object(by_name) => &by_name[key],
            Value::Array(by_place) => &by_place[at],
            one => one,
        };
        number(tolerance, key)
    }

    fn is(&self, key: &str, got: f64) {
        let expect = self.expected(key).unwrap_or_else(|| unsupported(format!("nothing is said of {key}")));
        self.near(key, 0, got, expect);
    }

    fn are(&self, key: &str, got: impl IntoIterator<Item = f64>) {
        let got: Vec<f64> = got.into_iter().collect();
        let expect = numbers(&self.expected[key], key);
        assert_eq!(got.len(), expect.len(), "{} {key}", self.id);
        for (at, (got, expect)) in got.into_iter().zip(expect).enumerate() {
            self.near(key, at, got, expect);
        }
    }

    fn near(&self, key: &str, at: usize, got: f64, expect: f64) {
        let tolerance = self.tolerance(key, at).max(expect.abs() * 1e-12);
        assert!(
            (got - expect).abs() <= tolerance,
            "{} {key}: got {got}, {} says {expect} ± {tolerance}",
            self.id,
            self.source
        );
    }
}

fn number(value: &Value, key: &str) -> f64 {
    value.as_f64().unwrap_or_else(|| unsupported(format!("{key} is no number")))
}

fn numbers(value: &Value, key: &str) -> Vec<f64> {
    let list = value.as_array().unwrap_or_else(|| unsupported(format!("{key} is no list")));
    list.iter().map(|value| number(value, key)).collect()
}

fn sg(value: f64) -> SpecificGravity {
    SpecificGravity::new(value).unwrap()
}

fn density(value: f64) -> PowderDensity {
    PowderDensity::new(value).unwrap()
}

/// What a check is thrown out with when nothing here knows its topic or its inputs.
struct Unsupported(String);

fn unsupported(why: String) -> ! {
    panic::panic_any(Unsupported(why))
}

/// What came of one check.
enum Outcome {
    Ok,
    Fail(String),
    Unsupported(String),
}

fn outcome(check: &Check) -> Outcome {
    let Err(thrown) = panic::catch_unwind(AssertUnwindSafe(|| one(check))) else { return Outcome::Ok };
    let text = |thrown: &Box<dyn Any + Send>| {
        let text = thrown.downcast_ref::<String>().cloned();
        text.or_else(|| thrown.downcast_ref::<&str>().map(|text| (*text).to_owned()))
    };
    match thrown.downcast_ref::<Unsupported>() {
        Some(Unsupported(why)) => Outcome::Unsupported(why.clone()),
        None => Outcome::Fail(text(&thrown).unwrap_or_default()),
    }
}

/// The checks of the project's own file.
fn own() -> Vec<Check> {
    serde_json::from_str(include_str!("../check-values.json")).unwrap()
}

#[test]
fn every_published_value() {
    let other = std::env::var_os("LAYDOWN_CHECK_VALUES");
    let checks: Vec<Check> = match &other {
        Some(file) => serde_json::from_str(&std::fs::read_to_string(file).unwrap()).unwrap(),
        None => own(),
    };
    assert!(checks.len() > 40 || other.is_some());
    let (mut failed, mut unknown) = (Vec::new(), Vec::new());
    for check in &checks {
        match outcome(check) {
            Outcome::Ok => println!("OK {}", check.id),
            Outcome::Fail(why) => {
                println!("FAIL {}: {why}", check.id);
                failed.push(&check.id);
            }
            Outcome::Unsupported(why) => {
                println!("UNSUPPORTED {}: {why}", check.id);
                unknown.push(&check.id);
            }
        }
    }
    assert!(failed.is_empty(), "failed: {failed:?}");
    assert!(unknown.is_empty() || other.is_some(), "nothing here checks {unknown:?}");
}

#[test]
fn a_wrong_value_fails_and_an_unknown_one_is_unsupported() {
    let mut checks = own();
    let check = checks.iter_mut().find(|check| check.topic == "frustum").unwrap();
    assert!(matches!(outcome(check), Outcome::Ok));
    check.tolerance = 0.0.into();
    check.expected.as_object_mut().unwrap().values_mut().for_each(|value| *value = 1.0.into());
    assert!(matches!(outcome(check), Outcome::Fail(_)));
    check.inputs = Value::Null;
    assert!(matches!(outcome(check), Outcome::Unsupported(_)));
    check.topic = "weather".to_owned();
    assert!(matches!(outcome(check), Outcome::Unsupported(_)));
}

/// Throws unless the check's value is met.
fn one(check: &Check) {
    assert!(!check.source.is_empty(), "{} has no source", check.id);
    let basis_says_seen = check.basis.starts_with("published");
    assert_eq!(basis_says_seen, check.seen, "{} says both {} and seen: {}", check.id, check.basis, check.seen);
    match check.topic.as_str() {
        "brongniart" => brongniart(check),
        "brongniart_pint_imperial" => brongniart_pint(check),
        "brongniart_sample" => brongniart_sample(check),
        "dilution" => dilution(check),
        "solid_density_range" => solid_density(check),
        "pint_conversion" => pints(check),
        "baume_heavy" => check
            .are("sg", check.inputs("Be").into_iter().map(|be| sg_from_baume(be, check.input("m")).unwrap().value())),
        "twaddell" => {
            check.are("sg", check.inputs("Tw").into_iter().map(|tw| sg_from_twaddell(tw).unwrap().value()));
        }
        "water_density" => check.are("g_per_ml", water(check)),
        "water_density_tanaka" => check.are("kg_per_m3", water(check).map(|density| density * 1_000.0)),
        "resolution_uncertainty" => {
            // Two roundings make √2 of one.
            let net = scale(10_000.0, check.input("d")).net_standard_uncertainty().value();
            check.is("u", net / 2f64.sqrt());
        }
        "tare_gross_resolution" => tare_and_gross(check),
        "oiml_r76_classes" => oiml_classes(check),
        "oiml_r76_mpe" => oiml_errors(check),
        "area_from_volume_ratio" => area_from_volumes(check),
        "area_from_length_ratio" => area_from_lengths(check),
        "frustum" => frustum(check),
        "torus_pappus" => torus(check),
        "spherical_cap" => spherical_cap(check),
        "ford_cup_eq" | "zahn_cup_eq" | "iso_cup_eq" => flow_cup_equation(check),
        "ford_cup" | "zahn_cup" | "iso_cup" => flow_cup(check),
        "evaporation" => evaporation(check),
        "linear_shrinkage" => {
            let fired = fired(check.input("linear"));
            check.are("fired_in", check.inputs("size_in").into_iter().map(|inches| inches * fired));
        }
        "volume_shrinkage" => {
            let fired = fired(check.input("linear"));
            check.is("area_factor", fired.powi(2));
            check.is("volume_factor", fired.powi(3));
            check.is("volume_loss_pct", 100.0 * (1.0 - fired.powi(3)));
        }
        "shrinkage_factors" => {
            let fired = || check.inputs("linear").into_iter().map(fired);
            check.are("area_factor", fired().map(|factor| factor.powi(2)));
            check.are("volume_factor", fired().map(|factor| factor.powi(3)));
        }
        "slurry_sg_range" => slurry_range(check),
        "laydown_from_thickness" | "laydown_range" => laydown_range(check),
        "orton_self_supporting" => cone(check, ConeKind::SelfSupporting, "rate_F_per_h"),
        "orton_large" => cone(check, ConeKind::Large, "rate_C_per_h"),
        "orton_legacy_150C" => older_cones(check),
        "individuals_mr" => individuals_chart(check),
        "ewma" => moving_average_chart(check),
        "student_t" => {
            check.are("t_975", check.inputs("freedom").into_iter().map(|freedom| student_t_95(freedom).unwrap()))
        }
        "univariate" => univariate(check),
        "archimedes" | "archimedes_identity" => archimedes(check),
        "archimedes_reject" => assert_eq!(soaked(check).unwrap_err(), SoakError::SuspendedOverDry, "{}", check.id),
        "bisque_absorption" => {
            let (from, to) = USUAL_ABSORPTION;
            check.are("absorption_pct", [from * 100.0, to * 100.0]);
        }
        "ols_no_intercept" => through_the_origin(check),
        "combined_uncertainty" => combined(check),
        topic => unsupported(format!("nothing checks the topic {topic}")),
    }
}

#[test]
fn no_cone_bends_without_a_check() {
    let checks = own();
    for (kind, topic) in [(ConeKind::SelfSupporting, "orton_self_supporting"), (ConeKind::Large, "orton_large")] {
        let checked = checks.iter().filter(|check| check.topic == topic).map(|check| named_cone(&check.inputs["cone"]));
        let in_table = Cone::all().filter(|cone| cone.bends_at(kind, 60.0).is_some());
        assert_eq!(checked.collect::<BTreeSet<_>>(), in_table.collect(), "{topic}");
    }
}

fn brongniart(check: &Check) {
    let slurry = check.inputs.get("litre_weight_g").map_or_else(
        || sg(check.input("slurry_sg")),
        |_| sg_by_volume(Grams::ZERO, Grams::new(check.input("litre_weight_g")), Millilitres::new(1_000.0)).unwrap(),
    );
    let powder = density(check.input("solid_sg"));
    let dry = dry_per_litre(slurry, powder).value();
    let litre = slurry.value() * 1_000.0;
    check.is("dry_g_per_l", dry);
    assert!((solids_fraction(slurry, powder).unwrap().value() * litre - dry).abs() < 1e-9, "{}", check.id);
    for (key, got) in [
        ("water_g_per_l", litre - dry),
        ("water_pct_of_dry", (litre - dry) / dry * 100.0),
        ("ml_holding_100g_dry", 100_000.0 / dry),
    ] {
        if check.expected(key).is_some() {
            check.is(key, got);
        }
    }
}

fn brongniart_pint(check: &Check) {
    // The trade's rule: an imperial pint of water weighs 20 oz.
    let pint = check.input("P_oz");
    check.is(
        "dry_oz_per_pint",
        solids_fraction(sg(pint / 20.0), density(check.input("solid_sg"))).unwrap().value() * pint,
    );
}

fn brongniart_sample(check: &Check) {
    let weight = check.input("sample_g");
    let sample = sg_by_volume(Grams::ZERO, Grams::new(weight), Millilitres::new(check.input("sample_ml"))).unwrap();
    check.is("sg", sample.value());
    check.is("dry_g", solids_fraction(sample, density(check.input("solid_sg"))).unwrap().value() * weight);
}

fn dilution(check: &Check) {
    let volume = Millilitres::new(check.input("V1_l") * 1_000.0);
    let thinning = thin(volume, sg(check.input("SG1")), sg(check.input("SG2")), PowderDensity::default()).unwrap();
    let Thinning::AddWater(water) = thinning else { panic!("{}: {thinning:?}", check.id) };
    check.is("water_l", water.value() / 1_000.0);
}

/// The cup that a check is about: Ford and Zahn cups by their number, ISO 2431 cups by their orifice.
fn cup(check: &Check) -> FlowCup {
    let make = check.topic.split('_').next().unwrap_or_default();
    let size = check.inputs.get("cup").or_else(|| check.inputs.get("orifice_mm")).and_then(Value::as_u64);
    let code = size.map(|size| format!("{make}_{size}")).unwrap_or_default();
    code.parse().unwrap_or_else(|_| unsupported(format!("no cup {code}")))
}

/// The two constants, found again from two times: `a (t − b)`, or `a t − b/t`.
fn flow_cup_equation(check: &Check) {
    let cup = cup(check);
    let at = |time: f64| cup.by_equation(Seconds::new(time));
    let (a, b) = if check.inputs["form"] == "nu=a*(t-b)" {
        let a = (at(90.0) - at(40.0)) / 50.0;
        (a, 40.0 - at(40.0) / a)
    } else {
        // 4 ν(2) − 2 ν(1) = 6 a, and ν(1) = a − b.
        let a = (4.0 * at(2.0) - 2.0 * at(1.0)) / 6.0;
        (a, a - at(1.0))
    };
    // The constants are found through differences of floating numbers.
    for (key, got) in [("a", a), ("b", b)] {
        let expect = check.expected(key).unwrap();
        assert!((got - expect).abs() <= 1e-9 * expect.abs().max(1.0), "{}: {key} {got}", check.id);
    }
    let (from, to) = cup.valid_seconds();
    assert_eq!(check.inputs("t_valid_s"), [from, to], "{}", check.id);
    assert!(cup.viscosity(Seconds::new(from)).is_ok() && cup.viscosity(Seconds::new(to)).is_ok());
    assert!(cup.viscosity(Seconds::new(from - 0.1)).is_err() && cup.viscosity(Seconds::new(to + 0.1)).is_err());
}

/// Certified oils and makers' ranges, some of them outside the seconds for which the equation is said to hold.
fn flow_cup(check: &Check) {
    let cup = cup(check);
    let times = if check.inputs["t_s"].is_array() { check.inputs("t_s") } else { vec![check.input("t_s")] };
    let found: Vec<f64> = times.iter().map(|time| cup.by_equation(Seconds::new(*time))).collect();
    match found.as_slice() {
        [only] => check.is("nu", *only),
        all => check.are("nu", all.iter().copied()),
    }
}

/// A level that falls in a round bucket is a volume of water.
fn evaporation(check: &Check) {
    let inch = |key: &str| Millimetres::new(check.input(key) * 25.4);
    let days = check.input("days");
    check.is("mm_per_day", inch("drop_in").value() / days);
    let lost = volume_at_level(inch("dia_in"), None, inch("drop_in")).unwrap();
    check.is("g_per_day", lost.value() / days);
}

/// The materials that are known by name lie within the published range of theirs.
fn named_densities(check: &Check) {
    let materials = check.inputs["materials"].as_array().unwrap();
    let ranges = check.expected["sg"].as_array().unwrap();
    for (material, range) in materials.iter().zip(ranges) {
        let name = material.as_str().unwrap();
        let name = if name == "clays" { "ball clay" } else { name };
        let density = density_by_name(name).unwrap_or_else(|| panic!("{name}")).value();
        let [least, most] = numbers(range, "sg")[..] else { panic!("{range}") };
        assert!((least..=most).contains(&density), "{name}: {density} is not {least} to {most}");
    }
}

fn solid_density(check: &Check) {
    named_densities(check);
    let ranges = check.expected["sg"].as_array().unwrap();
    let edges: Vec<f64> = ranges.iter().flat_map(|range| numbers(range, "sg")).collect();
    let (least, most) =
        edges.iter().fold((f64::MAX, f64::MIN), |(least, most), edge| (least.min(*edge), most.max(*edge)));
    assert!((least..=most).contains(&PowderDensity::default().value()));
    for edge in edges {
        assert!(PowderDensity::new(edge).is_ok(), "{edge}");
    }
}

fn pints(check: &Check) {
    let style = Style::default();
    let ounce = parse::mass("1 oz", &style).unwrap().value();
    let imperial = parse::volume("1 imp pint", &style).unwrap().value();
    let us = parse::volume("1 us pint", &style).unwrap().value();
    check.near("imperial_pint_ml", 0, imperial, check.input("imperial_pint_ml"));
    check.near("us_pint_ml", 0, us, check.input("us_pint_ml"));
    check.near("oz_g", 0, ounce, check.input("oz_g"));
    check.is("oz_water_per_imperial_pint_at_1.000", imperial / ounce);
    check.is("oz_water_per_us_pint_at_1.000", us / ounce);
}

fn water(check: &Check) -> impl Iterator<Item = f64> {
    check.inputs("t_C").into_iter().map(|t| water_density(Celsius::new(t)).unwrap())
}

fn scale(capacity: f64, step: f64) -> Scale {
    Scale::new(Grams::new(capacity), Grams::new(step), None, None).unwrap()
}

fn tare_and_gross(check: &Check) {
    if check.expected("half_width").is_some() {
        check.is("half_width", scale(10_000.0, check.input("d")).net_half_width().value());
        return;
    }
    let steps = check.inputs("d");
    check.are("u_net", steps.iter().map(|d| scale(10_000.0, *d).net_standard_uncertainty().value()));
    // Every place of tare and gross between two steps, on a fine grid: the largest error, and how often it exceeds the
    // half-width.
    const GRID: i32 = 1_000;
    let worst = steps.iter().map(|d| {
        let shown = |grams: f64| (grams / d).round() * d;
        let half_width = scale(10_000.0, *d).net_half_width().value();
        let (mut worst, mut outside) = (0.0f64, 0u32);
        for tare in 0..GRID {
            for coat in 0..GRID {
                let (bare, wet) =
                    (f64::from(tare) / f64::from(GRID) * d, 20.0 * d + f64::from(coat) / f64::from(GRID) * d);
                let error = (shown(bare + wet) - shown(bare) - wet).abs();
                worst = worst.max(error);
                outside += u32::from(error > half_width);
            }
        }
        let share = f64::from(outside) / f64::from(GRID * GRID);
        assert!((share - 0.05).abs() < 0.003, "{} d = {d}: {share} outside the half-width", check.id);
        worst
    });
    for (got, expect) in worst.zip(numbers(&check.expected["max_abs_error"], "max_abs_error")) {
        assert!(got <= expect * (1.0 + 1e-9) && got > expect * 0.99, "{}: {got}, expected {expect}", check.id);
    }
}

fn class(name: &str) -> AccuracyClass {
    name.split(' ').next().unwrap().parse().unwrap()
}

fn oiml_classes(check: &Check) {
    let names = check.inputs["class"].as_array().unwrap();
    for (at, name) in names.iter().enumerate() {
        let class = class(name.as_str().unwrap());
        let edges = check.inputs["e_g"][at].as_array().unwrap();
        let steps: Vec<f64> = edges.iter().filter_map(Value::as_f64).collect();
        for step in &steps {
            let limits = class.limits(Grams::new(*step)).unwrap_or_else(|| panic!("{name} has no step {step}"));
            assert_eq!(Some(limits.fewest_steps), check.expected["n_min"][at].as_f64(), "{name}");
            assert_eq!(limits.most_steps, check.expected["n_max"][at].as_f64(), "{name}");
            assert_eq!(Some(limits.minimum_in_steps), check.expected["Min_in_e"][at].as_f64(), "{name}");
        }
        let below = steps[0] * 0.5;
        let finer_row =
            class == AccuracyClass::High && steps[0] == 0.1 || class == AccuracyClass::Medium && steps[0] == 5.0;
        assert!(finer_row || class.limits(Grams::new(below)).is_none(), "{name} at {below} g");
    }
}

fn oiml_errors(check: &Check) {
    let Some(loads) = check.inputs.get("loads_g") else {
        let errors = check.inputs("mpe_in_e");
        for (at, name) in check.inputs["class"].as_array().unwrap().iter().enumerate() {
            let class = class(name.as_str().unwrap());
            let uppers = check.expected["load_upper_in_e"][at].as_array().unwrap();
            for (upper, error) in uppers.iter().zip(&errors) {
                let upper = upper.as_f64().unwrap_or(1e9);
                assert_eq!(class.permitted_error(upper), Some(*error), "{name} at {upper} e");
                assert_ne!(class.permitted_error(upper + 1.0), Some(error - 0.5), "{name} past {upper} e");
            }
        }
        return;
    };
    let (step, capacity) = (check.input("e_g"), check.input("Max_g"));
    let class = class(check.inputs["class"].as_str().unwrap());
    assert!(scale(capacity, step).classes().contains(&class));
    check.is("n", capacity / step);
    check.is("Min_g", class.limits(Grams::new(step)).unwrap().minimum_in_steps * step);
    let loads = numbers(loads, "loads_g");
    check.are("mpe_g", loads.iter().map(|load| class.permitted_error(load / step).unwrap() * step));
}

fn area_from_volumes(check: &Check) {
    // A ratio has no size: the smaller form is made to hold 100 ml.
    let (first, second) = if check.inputs.get("V1_ml").is_some() { ("V1_ml", "V2_ml") } else { ("V1", "V2") };
    let ratio = check.input(second) / check.input(first);
    for shape in ShapeClass::ALL.iter().filter(|shape| !shape.is_flat()) {
        let area = |ml: f64| {
            let form = Form::by_capacity(*shape, Millilitres::new(ml)).unwrap();
            form.zone(ZoneKind::Inside).unwrap().area
        };
        check.is("area_ratio", area(100.0 * ratio) / area(100.0));
    }
}

fn area_from_lengths(check: &Check) {
    let (small, large) = (check.input("r1"), check.input("r2"));
    let area = check.input("A1_over_pi");
    // A closed cylinder of this radius and whole surface.
    let height = (area - 2.0 * small * small) / (2.0 * small);
    let closed = |times: f64| {
        let points = [(0.0, 0.0), (0.0, small), (height, small), (height, 0.0)];
        let line = points.map(|(height, radius)| Point { height: height * times, radius: radius * times });
        revolve::swept_area(&line)
    };
    assert!((closed(1.0) / PI - area).abs() < 1e-9);
    check.is("A2_over_pi", closed(large / small) / PI);
}

/// What is left of a thrown length after the glaze firing.
fn fired(shrinkage: f64) -> f64 {
    Shrinkage::new(0.0, shrinkage).unwrap().factor(Stage::Thrown, Stage::Fired)
}

fn frustum(check: &Check) {
    let (wide, narrow, height) = (check.input("R"), check.input("r"), check.input("h"));
    let wall = [Point { height: 0.0, radius: wide }, Point { height, radius: narrow }];
    let lateral = revolve::swept_area(&wall);
    let closed = [Point { height: 0.0, radius: 0.0 }, wall[0], wall[1], Point { height, radius: 0.0 }];
    for (key, got) in [
        ("lateral", lateral),
        ("slant", lateral / (PI * (wide + narrow))),
        ("volume", revolve::swept_volume(&wall)),
        ("volume_over_pi", revolve::swept_volume(&closed) / PI),
        ("total_area_over_pi", revolve::swept_area(&closed) / PI),
    ] {
        if check.expected(key).is_some() {
            check.is(key, got);
        }
    }
}

/// Points of a circle's arc about (`height`, `radius`), from one angle to another, measured from straight down.
fn arc(height: f64, radius: f64, of: f64, from: f64, to: f64) -> Vec<Point> {
    const PIECES: u32 = 40_000;
    (0..=PIECES)
        .map(|at| from + (to - from) * f64::from(at) / f64::from(PIECES))
        .map(|angle| Point { height: height - of * angle.cos(), radius: radius + of * angle.sin() })
        .collect()
}

fn torus(check: &Check) {
    let ring = arc(0.0, check.input("R"), check.input("r"), 0.0, 2.0 * PI);
    check.is("volume", revolve::swept_volume(&ring).abs());
    check.is("area", revolve::swept_area(&ring));
}

fn spherical_cap(check: &Check) {
    let (r, h) = (check.input("r"), check.input("h"));
    let cap = arc(r, 0.0, r, 0.0, (1.0 - h / r).acos());
    check.is("curved_area", revolve::swept_area(&cap));
    check.is("volume", revolve::swept_volume(&cap));
    check.is("base_radius", cap.last().unwrap().radius);
}

fn slurry_range(check: &Check) {
    let style = Style::default();
    for (method, range) in check.expected["g_per_ml"].as_array().unwrap().iter().enumerate() {
        for (edge, value) in numbers(range, "g_per_ml").into_iter().enumerate() {
            let typed = parse::specific_gravity(&format!("{value} g/ml"), &style).unwrap();
            assert!((typed.value() - value).abs() < 1e-12);
            if let Some(weight) = check.expected.get("g_per_200ml").and_then(|all| all[method][edge].as_f64()) {
                // Printed to 0.01 and to 5 g.
                let weighed = parse::specific_gravity(&format!("{weight} g/200 ml"), &style).unwrap();
                assert!((weighed.value() - value).abs() <= 0.005 + 1e-9, "{} {weight} g", check.id);
            }
        }
    }
}

fn laydown_range(check: &Check) {
    // Where no piece is known yet, the interval around the starting laydown covers what was measured elsewhere.
    let solids = Solids::of(SgReading::checked(sg(1.45)), PowderDensity::default()).unwrap();
    let zone = Zone { kind: ZoneKind::Whole, area: SquareCentimetres::new(100.0), relative_uncertainty: 0.0 };
    let job = Job {
        form_name: "One square decimetre".to_owned(),
        zone,
        capacity: None,
        class: ShapeClass::Tile,
        solids,
        sensitivity: Sensitivity::Medium,
    };
    let evidence = Evidence { controls: Vec::new(), tiles: Vec::new(), starting: STARTING_LAYDOWN };
    let (low, high) = target(&job, &evidence).unwrap().interval;
    for per_square_metre in numbers(&check.expected["dry_g_per_m2"], "dry_g_per_m2") {
        let wet = solids.wet(Grams::new(per_square_metre / 100.0));
        assert!(low < wet && wet < high, "{}: {per_square_metre} g/m² is outside {low:?} to {high:?}", check.id);
    }
}

fn named_cone(name: &Value) -> Cone {
    name.as_str().unwrap().parse().unwrap()
}

fn cone(check: &Check, kind: ConeKind, rates: &str) {
    let degrees_in_an_hour = if rates == "rate_F_per_h" { 5.0 / 9.0 } else { 1.0 };
    let bends = |rate: f64| named_cone(&check.inputs["cone"]).bends_at(kind, rate * degrees_in_an_hour);
    let bends: Vec<f64> =
        check.inputs(rates).into_iter().map(|rate| bends(rate).expect("in the table").value()).collect();
    check.are("deg_C", bends.iter().copied());
    // The table holds whole °C: what was printed in °F is met as nearly as those allow.
    if check.expected.get("deg_F").is_some() {
        for (got, fahrenheit) in bends.iter().zip(numbers(&check.expected["deg_F"], "deg_F")) {
            check.near("deg_C", 0, *got, (fahrenheit - 32.0) * 5.0 / 9.0);
        }
    }
}

/// An older table contradicts the ones here: they are to differ, and by no more than `LARGE` is said to.
fn older_cones(check: &Check) {
    let names = check.inputs["cones"].as_array().unwrap();
    let older = numbers(&check.expected["deg_C"], "deg_C");
    let bends = names.iter().map(|name| named_cone(name).bends_at(ConeKind::Large, check.input("rate_C_per_h")));
    let apart: Vec<f64> = bends.zip(older).filter_map(|(now, older)| Some((now?.value() - older).abs())).collect();
    let most = apart.iter().copied().fold(0.0, f64::max);
    assert!(apart.len() == names.len() && most > 15.0 && most <= 20.0, "{}: {apart:?}", check.id);
}

fn individuals_chart(check: &Check) {
    let chart = individuals(&check.inputs("data")).unwrap();
    for (key, got) in [
        ("mean", chart.centre),
        ("mr_bar", chart.mean_range),
        ("lcl", chart.limits.0),
        ("ucl", chart.limits.1),
        ("ucl_mr", chart.most_range),
    ] {
        if check.expected(key).is_some() {
            check.is(key, got);
        }
    }
}

fn moving_average_chart(check: &Check) {
    let aim = check.input("target");
    let average = moving_average(&check.inputs("data"), aim, check.input("s"), check.input("lambda"));
    check.is("lcl", average.limits.0);
    check.is("ucl", average.limits.1);
    let outside = average.after.iter().filter(|after| **after < average.limits.0 || **after > average.limits.1);
    assert_eq!(outside.count(), check.expected["out_of_control"].as_array().unwrap().len(), "{}", check.id);
    assert_eq!(average.trend(), Trend::Steady, "{}", check.id);
    check.are("ewma_incl_z0", std::iter::once(aim).chain(average.after));
}

fn univariate(check: &Check) {
    let data = match check.inputs.get("data") {
        Some(data) => numbers(data, "data"),
        None => {
            let pair = check.inputs("then_alternate");
            let rest = (1..check.input("n") as usize).map(|at| pair[(at - 1) % 2]);
            std::iter::once(check.input("first")).chain(rest).collect()
        }
    };
    let set = Spread::of(&data).unwrap();
    let relative = check.tolerance("relative", 0);
    for (key, got) in [("mean", set.mean), ("sd", set.sd)] {
        let expect = check.expected(key).unwrap();
        // The data themselves are only as exact as a float of their size.
        let tolerance = relative * expect.abs() + f64::EPSILON * set.mean;
        assert!((got - expect).abs() <= tolerance, "{} {key}: got {got}, {} says {expect}", check.id, check.source);
    }
}

/// A soaked piece by its dry, suspended and saturated weight.
fn soaked(check: &Check) -> Result<Absorption, SoakError> {
    let weight = |key: &str| Grams::new(check.inputs.get(key).map_or(0.0, |value| number(value, key)));
    let piece = SoakedPiece { dry: weight("D"), soaked: weight("M"), suspended: Some(weight("S")) };
    let water = check.inputs.get("water_density").map_or(1.0, |density| number(density, "water_density"));
    piece.absorption(water, Grams::new(0.01))
}

fn archimedes(check: &Check) {
    if check.inputs.get("identity").is_some() {
        let piece = SoakedPiece { dry: Grams::new(87.3), soaked: Grams::new(95.1), suspended: Some(Grams::new(51.7)) };
        let found = piece.absorption(0.998, Grams::new(0.01)).unwrap();
        let pores = found.pores.unwrap();
        check.is("residual", pores.apparent_porosity - found.fraction * pores.bulk_density / 0.998);
        return;
    }
    let found = soaked(check).unwrap();
    let pores = found.pores.unwrap();
    check.is("exterior_volume", pores.exterior_volume);
    check.is("apparent_porosity_pct", pores.apparent_porosity * 100.0);
    check.is("absorption_pct", found.fraction * 100.0);
    check.is("bulk_density", pores.bulk_density);
    check.is("apparent_sg", pores.apparent_specific_gravity);
}

/// A line through the origin is the law of a dip over the roots of the seconds.
fn through_the_origin(check: &Check) {
    let points = check.inputs("x").into_iter().zip(check.inputs("y"));
    let dips: Vec<Dip> = points.map(|(x, y)| Dip { time: Seconds::new(x * x), laydown: Laydown::new(y) }).collect();
    let law = DipLaw::of(&dips).unwrap();
    let freedom = (dips.len() - 1) as f64;
    let relative = check.tolerance("relative", 0);
    for (key, got) in [("b1", law.k), ("sd_b1", law.standard_uncertainty), ("ssr", law.residual.powi(2) * freedom)] {
        let expect = check.expected(key).unwrap();
        assert!((got / expect - 1.0).abs() <= relative, "{} {key}: got {got}, not {expect}", check.id);
    }
}

/// Components that err each by itself, as the coats of one piece do.
fn combined(check: &Check) {
    let one = |nm: f64| DryGlaze { dry: Grams::new(1.0), standard_uncertainty: Grams::new(nm) };
    let components: Vec<DryGlaze> = check.inputs("components_nm").into_iter().map(one).collect();
    check.is("u_c_nm", together(&components).standard_uncertainty.value());
}
