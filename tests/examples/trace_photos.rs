//! Traces the photographs that `tests/photos/render.py` or `tests/photos/path_traced/scenes.py` drew, as JSON on standard output.
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
    /// From lens to axis, mm, where a picture has no distance of its own.
    #[serde(default)]
    camera: f64,
    good: Vec<Pot>,
    /// Seen from too far above.
    #[serde(default)]
    oblique: Vec<Pot>,
    bad: Vec<Bad>,
    /// The first of the good ones in the eight ways in which a phone stores it.
    #[serde(default)]
    turned: Vec<String>,
}

#[derive(Clone, Deserialize)]
struct Pot {
    file: String,
    height: f64,
    width: f64,
    known: String,
    length: [f64; 5],
    camera: Option<f64>,
}

#[derive(Clone, Deserialize)]
struct Bad {
    file: String,
}

fn main() {
    let folder = PathBuf::from(std::env::args().nth(1).expect("the folder of photographs"));
    let truth: Truth = serde_json::from_slice(&read(&folder.join("truth.json"))).expect("truth.json");
    let pot = |pot: &Pot| {
        let [length, from_x, from_y, to_x, to_y] = pot.length;
        let known = match pot.known.as_str() {
            "height" => KnownSize::Height(Millimetres::new(pot.height)),
            "width" => KnownSize::Width(Millimetres::new(pot.width)),
            _ => KnownSize::Length { length: Millimetres::new(length), from: (from_x, from_y), to: (to_x, to_y) },
        };
        answer(&folder, &pot.file, &known, pot.camera.unwrap_or(truth.camera))
    };
    let any_size = KnownSize::Height(Millimetres::new(100.0));
    let turned: Vec<Pot> =
        truth.turned.iter().map(|file| Pot { file: file.clone(), ..truth.good[0].clone() }).collect();
    println!(
        "{}",
        json!({
            "good": each(&truth.good, pot),
            "oblique": each(&truth.oblique, pot),
            "bad": each(&truth.bad, |bad| answer(&folder, &bad.file, &any_size, 600.0)),
            "turned": each(&turned, pot),
        })
    );
}

/// What is answered for each, on all cores.
fn each<T: Sync>(all: &[T], answer: impl Fn(&T) -> Value + Sync) -> Vec<Value> {
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let answer = &answer;
    std::thread::scope(|scope| {
        let parts = all.chunks(all.len().div_ceil(cores).max(1));
        let running: Vec<_> =
            parts.map(|part| scope.spawn(move || part.iter().map(answer).collect::<Vec<_>>())).collect();
        running.into_iter().flat_map(|part| part.join().expect("no thread panics")).collect()
    })
}

fn answer(folder: &Path, file: &str, known: &KnownSize, camera: f64) -> Value {
    let traced =
        trace(&read(&folder.join(file))).and_then(|trace| Ok((trace.profile(known, Millimetres::new(camera))?, trace)));
    match traced {
        Ok((traced, trace)) => found(file, &trace, &traced),
        Err(error) => json!({ "file": file, "refused": error.to_string() }),
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
        "pitch": traced.pitch.to_degrees(),
        "unlike": trace.unlike,
        "sure": traced.sure.code(),
        "left": trace.left,
        "right": trace.right,
        "radii": line.iter().map(|point| [point.height, point.radius]).collect::<Vec<_>>(),
    })
}

fn read(path: &Path) -> Vec<u8> {
    std::fs::read(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}
