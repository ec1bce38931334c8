//! Fits the pooled model to the evidence that `tests/oracle/pooled.py` made; JSON in on standard input, JSON out on standard output.
#![allow(clippy::print_stdout, reason = "it prints the fits")]

use laydown_domain::coat::target::Sensitivity;
use laydown_domain::form::{ShapeClass, ZoneKind};
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::pooled::{Assumptions, ControlPot, Fitted, GlazeEvidence, JudgedPot, Place, RightTile};
use laydown_domain::units::Laydown;
use serde::Deserialize;
use serde_json::{Value, json};
use uuid::Uuid;

const TODAY: f64 = 1_000.0;

#[derive(Deserialize)]
struct Case {
    plain: bool,
    pots: Vec<Coat>,
    controls: Vec<Coat>,
    tiles: Vec<Tile>,
    starting: f64,
    sensitivity: Sensitivity,
    job: Lies,
}

#[derive(Deserialize)]
struct Lies {
    form: u128,
    class: ShapeClass,
    area: f64,
    body: Option<u128>,
}

#[derive(Deserialize)]
struct Coat {
    place: Lies,
    laydown: f64,
    u: f64,
    found: Option<Thickness>,
    day: f64,
}

#[derive(Deserialize)]
struct Tile {
    laydown: f64,
    u: f64,
}

fn main() {
    let cases: Vec<Case> = serde_json::from_reader(std::io::stdin()).expect("evidence as JSON");
    println!("{}", cases.iter().map(fitted).collect::<Value>());
}

fn place(lies: &Lies) -> Place {
    Place {
        form: Uuid::from_u128(lies.form),
        zone: ZoneKind::Inside,
        class: lies.class,
        area_relative_uncertainty: lies.area,
        body: lies.body.map(Uuid::from_u128),
        cone: None,
    }
}

fn fitted(case: &Case) -> Value {
    let id = |at: usize| Uuid::from_u128(at as u128);
    let pots = case.pots.iter().enumerate().map(|(at, coat)| JudgedPot {
        id: id(at),
        place: place(&coat.place),
        laydown: Laydown::new(coat.laydown),
        relative_uncertainty: coat.u,
        thickness: coat.found.expect("a pot was judged"),
        day: coat.day,
    });
    let controls = case.controls.iter().enumerate().map(|(at, coat)| ControlPot {
        id: id(10_000 + at),
        place: place(&coat.place),
        laydown: Laydown::new(coat.laydown),
        relative_uncertainty: coat.u,
        day: coat.day,
    });
    let tiles = case.tiles.iter().enumerate().map(|(at, tile)| RightTile {
        id: id(20_000 + at),
        laydown: Laydown::new(tile.laydown),
        relative_uncertainty: tile.u,
    });
    let evidence = GlazeEvidence {
        pots: pots.collect(),
        controls: controls.collect(),
        tiles: tiles.collect(),
        starting: Laydown::new(case.starting),
        sensitivity: case.sensitivity,
    };
    let assume = if case.plain { plain() } else { Assumptions::default() };
    let fitted = Fitted::new(&evidence, &place(&case.job), TODAY, &assume, None).expect("a fit");
    let (start, (job_middle, job_sd)) = (fitted.start(), fitted.middle());
    json!({
        "middle": start.middle,
        "ln_half_width": start.ln_half_width,
        "ln_steepness": start.ln_steepness,
        "job_middle": job_middle,
        "job_sd": job_sd,
    })
}

/// Flat priors, no effects, no slips, no age: the ordered logistic model of the textbooks.
fn plain() -> Assumptions {
    let flat = f64::INFINITY;
    Assumptions {
        lapse: 0.0,
        starting_sd: flat,
        half_width_sd: flat,
        steepness_sd: flat,
        class: 0.0,
        form: 0.0,
        zone: 0.0,
        body: 0.0,
        cone: 0.0,
        half_life: flat,
        ..Assumptions::default()
    }
}
