//! What a finger waits for while it drags a point, and what a photograph costs beside decoding it.

use std::hint::black_box;
use std::io::Cursor;
use std::time::Duration;

use image::{ImageFormat, Rgb, RgbImage};
use laydown::form::profile::Point;
use laydown::form::silhouette::trace;
use laydown::form::{Form, Known, Measured, ProfilePoint, ShapeClass, revolve};
use laydown::studio::{Now, SheetEntry, SheetKind, Spot, Studio, Touch, Value};
use laydown::units::{Millilitres, Millimetres, SquareCentimetres};
use tempfile::TempDir;

use crate::{Goal, row, timed};

const ROUNDS: usize = 200;
const PHOTOGRAPHS: usize = 12;
/// Half a frame of a screen that is drawn sixty times a second.
const HALF_A_FRAME: Duration = Duration::from_millis(8);

pub fn rows() {
    turned();
    dragged();
    traced();
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
    let entry = SheetEntry { kind: SheetKind::Form, id: String::new(), subject: String::new(), values };
    let mut times = (Vec::new(), Vec::new());
    for round in 0..ROUNDS {
        let to = Spot { x: 0.8 + 0.0002 * round as f64, y: 0.5 };
        let touch = Touch::Move { grip: "point.3".into(), to };
        times.0.push(timed(|| _ = black_box(studio.touch(now, &entry, &touch).unwrap())));
        times.1.push(timed(|| _ = black_box(studio.sheet(now, &entry).unwrap())));
    }
    row("one step of a dragged point", times.0, times.1, Goal::Within(HALF_A_FRAME));
}

/// The outline of a pot in 12 megapixels, beside decoding the JPEG and turning it grey.
fn traced() {
    let picture = photograph();
    let mut times = (Vec::new(), Vec::new());
    for _ in 0..PHOTOGRAPHS {
        times.0.push(timed(|| _ = black_box(trace(black_box(&picture)).unwrap())));
        times.1.push(timed(|| _ = black_box(image::load_from_memory(black_box(&picture)).unwrap().into_luma8())));
    }
    row("outline in a 12 MP photograph", times.0, times.1, Goal::Times(2.0));
}

/// A jar before a wall, with the noise of a small lens, as a JPEG of 12 megapixels.
fn photograph() -> Vec<u8> {
    let mut state = 1u32;
    let mut noise = || {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        i16::try_from(state >> 29).unwrap_or_default() - 4
    };
    let picture = RgbImage::from_fn(4_000, 3_000, |x, y| {
        let up = (2_500.0 - f64::from(y)) / 2_000.0;
        let half = 450.0 + 300.0 * (up * std::f64::consts::PI).sin();
        let inside = (0.0..1.0).contains(&up) && (f64::from(x) - 2_000.0).abs() < half;
        let colour = if inside { [92i16, 60, 48] } else { [205, 203, 196] };
        Rgb(colour.map(|value| u8::try_from(value + noise()).unwrap_or_default()))
    });
    let mut file = Cursor::new(Vec::new());
    picture.write_to(&mut file, ImageFormat::Jpeg).unwrap();
    file.into_inner()
}
