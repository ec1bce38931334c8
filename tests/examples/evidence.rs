//! What evidence says beside a target, of the cases that `tests/oracle/evidence.py` made; JSON in on standard input, JSON out on
//! standard output.
#![allow(clippy::print_stdout, reason = "it prints what was calculated")]

use laydown_domain::coat::Solids;
use laydown_domain::coat::target::{STARTING_LAYDOWN, Sensitivity};
use laydown_domain::form::{AREA_FROM_CAPACITY, ShapeClass, ZoneKind};
use laydown_domain::glaze::slurry::SgReading;
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::cusum::{Side, drift};
use laydown_domain::learning::fault::Share;
use laydown_domain::learning::hand::by_hand;
use laydown_domain::learning::pooled::{Assumptions, Fitted, GlazeEvidence, JudgedPot, Place, Proportions};
use laydown_domain::learning::size::Sizes;
use laydown_domain::learning::{consumption, set};
use laydown_domain::units::{Grams, Laydown, Millilitres, PowderDensity, SpecificGravity};
use serde::Deserialize;
use serde_json::{Value, json};
use uuid::Uuid;

#[derive(Deserialize)]
struct Case {
    share: (usize, usize),
    shelf: Vec<f64>,
    size: usize,
    ratios: Vec<f64>,
    pots: Vec<Pot>,
    zone: ZoneKind,
    factor: f64,
    known: Vec<f64>,
    capacities: Vec<f64>,
    sg: f64,
    sg_u: f64,
    density: f64,
    coats: Vec<(f64, f64)>,
    hands: Vec<(String, f64)>,
    today: f64,
    mixed: f64,
}

#[derive(Deserialize)]
struct Pot {
    laydown: f64,
    found: Thickness,
}

const CLASS: ShapeClass = ShapeClass::RoundedMug;

fn main() {
    let cases: Vec<Case> = serde_json::from_reader(std::io::stdin()).expect("cases as JSON");
    println!("{}", cases.iter().map(answer).collect::<Value>());
}

fn answer(case: &Case) -> Value {
    let shelf: Vec<Laydown> = case.shelf.iter().map(|laydown| Laydown::new(*laydown)).collect();
    let matching = set::best(&shelf, case.size).expect("enough pieces");
    let drift = drift(&case.ratios).expect("enough coats");
    let side = |side| if side == Side::High { "high" } else { "low" };

    let sg = SpecificGravity::new(case.sg).expect("a glaze");
    let density = PowderDensity::new(case.density).expect("a powder");
    // As typed, not as stored: the oracle is exact.
    let fraction = Solids::of(SgReading::new(sg, case.sg_u).expect("an uncertainty"), density).expect("solids");
    let place = |form| Place {
        form: Uuid::from_u128(form),
        zone: case.zone,
        class: CLASS,
        area_relative_uncertainty: AREA_FROM_CAPACITY,
        body: None,
        cone: None,
    };
    let pots = case.pots.iter().enumerate().map(|(at, pot)| JudgedPot {
        id: Uuid::from_u128(at as u128),
        place: place(1),
        laydown: Laydown::new(pot.laydown),
        relative_uncertainty: 0.02,
        thickness: pot.found,
        day: 0.0,
    });
    let evidence = GlazeEvidence {
        pots: pots.collect(),
        controls: Vec::new(),
        tiles: Vec::new(),
        starting: STARTING_LAYDOWN,
        sensitivity: Sensitivity::Medium,
    };
    let outlook = Fitted::new(&evidence, &place(2), 0.0, &Assumptions::default(), None).expect("a fit").outlook();
    let sizes = Sizes {
        class: CLASS,
        zone: case.zone,
        proportions: Proportions { factor: case.factor, relative_uncertainty: AREA_FROM_CAPACITY },
        known: case.known.iter().map(|ml| Millilitres::new(*ml)).collect(),
    };
    let at = |ml: &f64| sizes.at(Millilitres::new(*ml), &outlook, &fraction).expect("a size");
    let class_area = CLASS.area(case.zone, Millilitres::new(case.capacities[0])).expect("an area").0.value();

    let hands: Vec<(&str, f64)> = case.hands.iter().map(|(name, ratio)| (name.as_str(), *ratio)).collect();
    let coats: Vec<(f64, Grams)> = case.coats.iter().map(|(day, wet)| (*day, Grams::new(*wet))).collect();
    let used = consumption::weekly_use(&coats, case.today);
    let taken = Grams::new(case.coats.iter().map(|(_, wet)| wet).sum());
    let left = used.and_then(|used| consumption::left(Millilitres::new(case.mixed), sg, taken, used.per_coat));
    let (powder, water) = consumption::to_mix(taken, &fraction);
    json!({
        "interval": Share { with: case.share.0, of: case.share.1 }.interval(),
        "set": {"members": matching.members, "sd": matching.spread.sd, "next": matching.next.value()},
        "drift": {
            "sd": drift.sd,
            "alarm": drift.alarm.map(|alarm| (alarm.at, alarm.since, side(alarm.side))),
            "mean_off": drift.mean_off,
        },
        "outlook": outlook.middle(),
        "class_area": class_area,
        "sizes": case.capacities.iter().map(at).map(|size| json!({
            "area": size.area.value(),
            "wet": size.aim.wet.value(),
            "from": size.aim.interval.0.value(),
            "to": size.aim.interval.1.value(),
        })).collect::<Value>(),
        "use": used.map(|used| json!({"per_week": used.per_week.value(), "per_coat": used.per_coat.value()})),
        "left": left.map(|left| json!({"wet": left.wet.value(), "coats": left.coats})),
        "hands": by_hand(&hands).iter().map(|hand| {
            json!({"name": hand.name, "mean_off": hand.mean_off, "spread": hand.spread})
        }).collect::<Value>(),
        "mix": [powder.value(), water.value()],
    })
}
