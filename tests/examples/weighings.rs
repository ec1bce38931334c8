//! Dry weights, tests of scales, soaked bisque and seconds of dips, of the cases that `tests/oracle/weighings.py` made; JSON in on
//! standard input, JSON out on standard output.
#![allow(clippy::print_stdout, reason = "it prints what was calculated")]

use laydown_domain::bisque::SoakedPiece;
use laydown_domain::coat::Solids;
use laydown_domain::coat::dry::{DryGlaze, WetCoat, disagreement};
use laydown_domain::coat::scale::Scale;
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::learning::dip_time::{Dip, DipLaw};
use laydown_domain::learning::repeatability::Repeatability;
use laydown_domain::units::{Grams, Laydown, PowderDensity, Seconds, SpecificGravity};
use serde::Deserialize;
use serde_json::{Value, json};

#[derive(Deserialize)]
struct Case {
    step: f64,
    repeatability: f64,
    bare: f64,
    bone_dry: f64,
    /// Wet weight, SG, its uncertainty, powder density.
    coats: Vec<(f64, f64, f64, f64)>,
    readings: Vec<f64>,
    dips: Vec<(f64, f64)>,
    aim: f64,
    /// Dry, soaked, hanging in water, the water's density.
    soaked: (f64, f64, f64, f64),
}

fn main() {
    let cases: Vec<Case> = serde_json::from_reader(std::io::stdin()).expect("cases as JSON");
    println!("{}", cases.iter().map(answer).collect::<Value>());
}

fn answer(case: &Case) -> Value {
    let scale = Scale::new(Grams::new(5_000.0), Grams::new(case.step), None, Some(Grams::new(case.repeatability)));
    let scale = scale.expect("a scale");
    let coats: Vec<WetCoat> = case.coats.iter().map(|coat| wet_coat(*coat, &scale)).collect();
    let bare = Grams::new(case.bare);
    let weighed = DryGlaze::of_piece(bare, Grams::new(case.bone_dry), &scale).expect("a dry piece");
    let split = weighed.split(&coats).expect("coats");
    let one = |found: &DryGlaze| json!([found.dry.value(), found.standard_uncertainty.value()]);
    let law = DipLaw::of(&dips(case)).expect("dips");
    let hint = law.hint(Laydown::new(case.aim));
    let readings: Vec<Grams> = case.readings.iter().map(|reading| Grams::new(*reading)).collect();
    let repeats = Repeatability::of(&readings, &scale).expect("a test");
    let (dry, soaked, suspended, water) = case.soaked;
    let piece =
        SoakedPiece { dry: Grams::new(dry), soaked: Grams::new(soaked), suspended: Some(Grams::new(suspended)) };
    let soaked = piece.absorption(water, scale.step).expect("soaked bisque");
    json!({
        "weighed": one(&weighed),
        "by_sg": coats.iter().map(|coat| one(&coat.dry())).collect::<Value>(),
        "split": split.iter().map(one).collect::<Value>(),
        "combined": one(&DryGlaze::combined(split[0], without_powder(&coats[0]), coats[0].powder)),
        "disagrees": disagreement(weighed, bare, &coats).is_some(),
        "repeats": [repeats.mean.value(), repeats.standard_deviation.value(), repeats.between.0.value(), repeats.between.1.value()],
        "law": [law.k, law.standard_uncertainty, law.residual],
        "hint": hint.map(|hint| json!([hint.time.value(), hint.from.value(), hint.to.map(Seconds::value)])),
        "absorption": [soaked.fraction, soaked.standard_uncertainty],
    })
}

fn wet_coat((wet, sg, uncertainty, powder): (f64, f64, f64, f64), scale: &Scale) -> WetCoat {
    let sg = SgReading::new(SpecificGravity::new(sg).expect("a glaze"), uncertainty).expect("an uncertainty");
    let powder = PowderDensity::new(powder).expect("a powder");
    let solids = Solids::of(sg, powder).expect("solids");
    let wet_standard_uncertainty = scale.net_standard_uncertainty();
    WetCoat { wet: Grams::new(wet), wet_standard_uncertainty, sg, powder, solids }
}

/// Its dry glaze by the SG, as it is compared among coats: the powder's density cancels.
fn without_powder(coat: &WetCoat) -> DryGlaze {
    let dry = coat.solids.dry(coat.wet);
    let relative = coat.solids.relative_uncertainty.hypot(coat.wet_standard_uncertainty / coat.wet);
    DryGlaze { dry, standard_uncertainty: dry * relative }
}

fn dips(case: &Case) -> Vec<Dip> {
    let dip = |(time, laid): &(f64, f64)| Dip { time: Seconds::new(*time), laydown: Laydown::new(*laid) };
    case.dips.iter().map(dip).collect()
}
