//! Traces the photographs that `tests/photos/render.py` drew, as JSON on standard output.
//! `cargo run -p laydown-tests --example trace_photos -- FOLDER`
#![allow(clippy::print_stdout, reason = "it prints the outlines")]

use std::path::{Path, PathBuf};

use laydown_domain::form::profile::Point;
use laydown_domain::form::revolve;
use laydown_domain::form::silhouette::{KnownSize, Trace, Traced, trace};
use laydown_domain::units::Millimetres;
use serde::Deserialize;
use serde_json::{Value, json};

#[derive(Deserialize)]
struct Truth {
    camera: f64,
    good: Vec<Good>,
    bad: serde_json::Map<String, Value>,
    /// The first of the good ones in the eight ways in which a phone stores it.
    turned: Vec<String>,
}

#[derive(Clone, Deserialize)]
struct Good {
    file: String,
    height: f64,
    width: f64,
    known: String,
    length: [f64; 5],
}

fn main() {
    let folder = PathBuf::from(std::env::args().nth(1).expect("the folder of photographs"));
    let truth: Truth = serde_json::from_slice(&read(&folder.join("truth.json"))).expect("truth.json");
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let traced = &|some: &[Good]| some.iter().map(|good| answer(&folder, good, truth.camera)).collect::<Vec<_>>();
    let good: Vec<Value> = std::thread::scope(|scope| {
        let parts = truth.good.chunks(truth.good.len().div_ceil(cores).max(1));
        let running: Vec<_> = parts.map(|part| scope.spawn(move || traced(part))).collect();
        running.into_iter().flat_map(|part| part.join().expect("no thread panics")).collect()
    });
    let bad: serde_json::Map<String, Value> = truth
        .bad
        .keys()
        .map(|file| {
            let traced = trace(&read(&folder.join("bad").join(file)));
            (file.clone(), traced.err().map(|error| error.to_string()).into())
        })
        .collect();
    let turned: Vec<Value> = truth
        .turned
        .iter()
        .map(|file| answer(&folder, &Good { file: file.clone(), ..truth.good[0].clone() }, truth.camera))
        .collect();
    println!("{}", json!({ "good": good, "bad": bad, "turned": turned }));
}

fn answer(folder: &Path, good: &Good, camera: f64) -> Value {
    let [length, from_x, from_y, to_x, to_y] = good.length;
    let known = match good.known.as_str() {
        "height" => KnownSize::Height(Millimetres::new(good.height)),
        "width" => KnownSize::Width(Millimetres::new(good.width)),
        _ => KnownSize::Length { length: Millimetres::new(length), from: (from_x, from_y), to: (to_x, to_y) },
    };
    let traced = trace(&read(&folder.join(&good.file)))
        .and_then(|trace| Ok((trace.profile(&known, Millimetres::new(camera))?, trace)));
    match traced {
        Ok((traced, trace)) => found(&good.file, &trace, &traced),
        Err(error) => json!({ "file": good.file, "refused": error.to_string() }),
    }
}

fn found(file: &str, trace: &Trace, traced: &Traced) -> Value {
    let point =
        |&(height, radius): &(Millimetres, Millimetres)| Point { height: height.value(), radius: radius.value() };
    let line: Vec<Point> = traced.fine.iter().map(point).collect();
    json!({
        "file": file,
        "area": revolve::swept_area(&line) / 100.0,
        "volume": revolve::swept_volume(&line) / 1_000.0,
        "height": line.last().map(|point| point.height),
        "uncertainty": traced.relative_uncertainty,
        "points": traced.points.len(),
        "handle": trace.handle.map(|side| side.code()),
        "unlike": trace.unlike,
        "sure": trace.sure.code(),
        "left": trace.left,
        "right": trace.right,
        "radii": line.iter().map(|point| [point.height, point.radius]).collect::<Vec<_>>(),
    })
}

fn read(path: &Path) -> Vec<u8> {
    std::fs::read(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}
