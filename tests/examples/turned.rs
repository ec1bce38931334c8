//! Turns the profiles that `tests/oracle/profiles.py` made; JSON in on standard input, JSON out on standard output.
#![allow(clippy::print_stdout, reason = "it prints the areas")]

use laydown_domain::form::{Profile, ProfilePoint, revolve};
use laydown_domain::units::Millimetres;
use serde::Deserialize;
use serde_json::{Value, json};

#[derive(Deserialize)]
struct Pot {
    points: Vec<[f64; 2]>,
    wall: f64,
    floor: f64,
}

fn main() {
    let pots: Vec<Pot> = serde_json::from_reader(std::io::stdin()).expect("profiles as JSON");
    let turned: Vec<Value> = pots.iter().map(turned).collect();
    println!("{}", Value::from(turned));
}

fn turned(pot: &Pot) -> Value {
    let mm = Millimetres::new;
    let point = |&[height, radius]: &[f64; 2]| ProfilePoint { height: mm(height), radius: mm(radius), wall: None };
    let profile = Profile {
        points: pot.points.iter().map(point).collect(),
        wall: mm(pot.wall),
        floor: mm(pot.floor),
        foot: None,
    };
    let cut = profile.cut().expect("a pot");
    json!({
        "outside_area": revolve::swept_area(cut.outside()),
        "solid_volume": revolve::swept_volume(cut.outside()),
        "inside_area": revolve::swept_area(cut.inside()),
        "inside_volume": revolve::swept_volume(cut.inside()),
        "capacity": cut.capacity().value() * 1e3,
        "clay": cut.clay().value() * 1e3,
    })
}
