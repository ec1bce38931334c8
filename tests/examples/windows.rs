//! Fits the windows of the studios that `tests/oracle/windows.py` made; JSON in on standard input, JSON out on standard output.
#![allow(clippy::print_stdout, reason = "it prints the windows")]

use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::window::{Fit, WindowEstimate, estimate};
use laydown_domain::units::Laydown;
use serde::Deserialize;
use serde_json::{Value, json};

#[derive(Deserialize)]
struct Case {
    /// Laydown in g per 100 cm², and the code of how thick it came out.
    looks: Vec<(f64, Thickness)>,
}

fn main() {
    let cases: Vec<Case> = serde_json::from_reader(std::io::stdin()).expect("looks as JSON");
    let fitted: Vec<Value> = cases.iter().map(fitted).collect();
    println!("{}", Value::from(fitted));
}

fn fitted(case: &Case) -> Value {
    let points: Vec<(f64, Thickness)> = case.looks.iter().map(|(laydown, found)| (laydown.ln(), *found)).collect();
    let fit = Fit::of(&points).expect("the prior keeps it finite");
    let looks: Vec<(Laydown, Thickness)> =
        case.looks.iter().map(|(laydown, found)| (Laydown::new(*laydown), *found)).collect();
    let (kind, window) = match estimate(&looks) {
        WindowEstimate::TooFew => ("too few", None),
        WindowEstimate::NoneRight => ("none right", None),
        WindowEstimate::Mixed => ("mixed", None),
        WindowEstimate::Window(window) => ("window", Some(window)),
    };
    json!({
        "middle": fit.middle,
        "half_width": fit.half_width,
        "steepness": fit.steepness,
        "middle_sd": fit.middle_sd,
        "reach": fit.half_width_at(laydown_domain::learning::window::SURE),
        "lesson": kind,
        "from": window.and_then(|window| window.from).map(Laydown::value),
        "to": window.and_then(|window| window.to).map(Laydown::value),
        "best": window.and_then(|window| window.best).map(|best| {
            [best.between.0.value(), best.laydown.value(), best.between.1.value()]
        }),
    })
}
