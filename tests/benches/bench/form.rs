//! What a finger waits for while it drags a point.

use std::hint::black_box;
use std::time::Duration;

use laydown_app::{EditorEntry, EditorKind, Now, Spot, Studio, Touch, Value};
use laydown_domain::form::profile::Point;
use laydown_domain::form::{Form, Known, Measured, ProfilePoint, ShapeClass, revolve};
use laydown_domain::units::{Millilitres, Millimetres, SquareCentimetres};
use tempfile::TempDir;

use crate::{Goal, row, timed};

const ROUNDS: usize = 200;
/// Half a frame of a screen that is drawn sixty times a second.
const HALF_A_FRAME: Duration = Duration::from_millis(8);

pub fn rows() {
    turned();
    dragged();
}

/// A form from twelve points, beside the frusta of as many fine pieces and nothing else.
fn turned() {
    let usual = ShapeClass::Jar.usual(Some(Millilitres::new(900.0))).unwrap();
    let mut profile = usual.profile;
    let between = |a: &ProfilePoint, b: &ProfilePoint| ProfilePoint {
        height: (a.height + b.height) / 2.0,
        radius: (a.radius + b.radius) / 2.0,
        wall: Some(Millimetres::new(5.0)),
    };
    while profile.points.len() < 12 {
        let at = profile.points.len() / 2;
        profile.points.insert(at, between(&profile.points[at - 1], &profile.points[at]));
    }
    let fine: Vec<Point> = profile.cut().unwrap().outside().to_vec();
    let measured = Measured { profile, lines: usual.lines, extra: SquareCentimetres::ZERO, fill: None, traced: None };
    let known = Known { measured: Some(measured), ..Known::default() };
    let mut times = (Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        times.0.push(timed(|| _ = black_box(Form::new(ShapeClass::Jar, black_box(&known)).unwrap())));
        times.1.push(timed(|| _ = black_box((revolve::swept_area(black_box(&fine)), revolve::swept_volume(&fine)))));
    }
    row("form from 12 points, zones and how sure", times.0, times.1, Goal::Within(Duration::from_micros(500)));
}

/// One step of a drag on the form's sheet, beside showing the same sheet once.
fn dragged() {
    let folder = TempDir::new().unwrap();
    let now = Now { unix_ms: 1_795_600_000_000, utc_offset_s: 0 };
    let studio = Studio::open(&folder.path().join("studio.laydown"), now).unwrap();
    let values = [("name", "Jar"), ("class", "jar"), ("way", "profile")];
    let values = values.map(|(key, text)| Value { key: key.into(), text: text.into() }).to_vec();
    let entry =
        EditorEntry { kind: EditorKind::Form, id: String::new(), subject: String::new(), values, draft: String::new() };
    let mut times = (Vec::new(), Vec::new());
    for round in 0..ROUNDS {
        let to = Spot { x: 0.8 + 0.0002 * round as f64, y: 0.5 };
        let touch = Touch::Move { grip: "point.3".into(), to };
        times.0.push(timed(|| _ = black_box(studio.touch(now, &entry, &touch).unwrap())));
        times.1.push(timed(|| _ = black_box(studio.editor(now, &entry).unwrap())));
    }
    row("one step of a dragged point", times.0, times.1, Goal::Within(HALF_A_FRAME));
}
