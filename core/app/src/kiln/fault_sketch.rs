//! A small drawing of each fault, so that one who does not know its name finds it by looking: a wall cut through with the glaze on
//! it, a piece of its face, or the whole pot.

use crate::editor::{Drawing, Ink, Shape, Spot};
use laydown_domain::kiln::fault::Fault;

/// Height of a drawing, in widths of it.
const TALL: f64 = 0.7;
/// The cut wall: from its left to its right end, and the heights of its glaze, its surface and its back.
const WALL: [f64; 2] = [0.06, 0.94];
const GLAZE: f64 = 0.26;
const SURFACE: f64 = 0.4;
const BACK: f64 = 0.62;
/// Where the pot stands.
const SHELF: f64 = 0.6;

type At = (f64, f64);
/// What is drawn of one thing.
type Part = Vec<Shape>;

/// A small drawing of the fault with this code, as [`super::FaultChip::code`] gives it; nothing drawn for one that only a newer
/// version knows.
#[uniffi::export]
pub fn fault_sketch(code: &str) -> Drawing {
    let shapes = code.parse().map(sketch).unwrap_or_default();
    Drawing { below: String::new(), tall: TALL, photo: String::new(), shapes, grips: Vec::new(), words: String::new() }
}

fn sketch(fault: Fault) -> Part {
    match fault {
        Fault::Crawling => wall(&[
            glaze(&[(0.06, SURFACE), (0.06, GLAZE), (0.26, GLAZE), (0.34, 0.31), (0.36, SURFACE)]),
            glaze(&[(0.66, SURFACE), (0.68, 0.31), (0.76, GLAZE), (0.94, GLAZE), (0.94, SURFACE)]),
        ]),
        Fault::Pinholing => wall(&[coat(), hole(0.24, 0.02), hole(0.42, 0.02), hole(0.68, 0.02), hole(0.8, 0.02)]),
        Fault::Blistering => {
            wall(&[coat(), bubble(0.24, 0.32, 0.05), bubble(0.5, 0.27, 0.07), bubble(0.76, 0.33, 0.04)])
        }
        Fault::Running => pot(&[glaze(&[
            (0.3, 0.1),
            (0.7, 0.1),
            (0.68, 0.4),
            (0.63, 0.5),
            (0.58, 0.42),
            (0.54, SHELF),
            (0.47, SHELF),
            (0.44, 0.44),
            (0.38, 0.54),
            (0.32, 0.4),
        ])]),
        Fault::Crazing => face(&[net(Ink::Line)]),
        Fault::DelayedCrazing => face(&[net(Ink::Guide)]),
        Fault::Shivering => wall(&[
            glaze(&[(0.06, SURFACE), (0.06, GLAZE), (0.6, GLAZE), (0.66, SURFACE)]),
            glaze(&[(0.7, 0.34), (0.74, 0.18), (0.82, 0.3)]),
            glaze(&[(0.84, 0.22), (0.9, 0.08), (0.95, 0.2)]),
        ]),
        Fault::Dunting => pot(&[
            dressed(),
            crack(&[(0.34, 0.1), (0.42, 0.24), (0.38, 0.32), (0.54, 0.44), (0.5, 0.5), (0.62, SHELF)]),
        ]),
        Fault::Underfired => wall(&[coat(), grains()]),
        Fault::Overfired => pot(&[
            glaze(&[
                (0.3, 0.16),
                (0.7, 0.16),
                (0.67, SHELF),
                (0.84, 0.62),
                (0.84, 0.66),
                (0.16, 0.66),
                (0.16, 0.62),
                (0.33, SHELF),
            ]),
            bubble(0.44, 0.32, 0.04),
            bubble(0.58, 0.42, 0.03),
        ]),
        Fault::Stuck => pot(&[dressed(), glaze(&[(0.3, 0.52), (0.7, 0.52), (0.78, 0.64), (0.22, 0.64)])]),
        Fault::Warped => {
            let leaning = [(0.24, 0.2), (0.72, 0.08), (0.68, SHELF), (0.32, SHELF)];
            [shape(Ink::Glazed, &leaning), outline(&leaning), shape(Ink::Guide, &[(0.18, 0.14), (0.82, 0.14)]), shelf()]
                .concat()
        }
        Fault::Cracked => pot(&[dressed(), crack(&[(0.48, 0.1), (0.52, 0.2), (0.47, 0.28), (0.51, 0.36)])]),
        Fault::Plucked => {
            let bitten = [
                (0.3, 0.1),
                (0.7, 0.1),
                (0.68, SHELF),
                (0.6, SHELF),
                (0.57, 0.52),
                (0.52, SHELF),
                (0.46, SHELF),
                (0.43, 0.53),
                (0.38, SHELF),
                (0.32, SHELF),
            ];
            [
                shape(Ink::Glazed, &bitten),
                outline(&bitten),
                shelf(),
                shape(Ink::Clay, &[(0.39, 0.64), (0.43, 0.57), (0.46, 0.64)]),
                shape(Ink::Clay, &[(0.53, 0.64), (0.57, 0.56), (0.6, 0.64)]),
            ]
            .concat()
        }
        Fault::Bloating => {
            let swollen = [
                (0.06, BACK),
                (0.06, SURFACE),
                (0.28, SURFACE),
                (0.36, 0.24),
                (0.5, 0.18),
                (0.64, 0.24),
                (0.72, SURFACE),
                (0.94, SURFACE),
                (0.94, BACK),
            ];
            [shape(Ink::Clay, &swollen), outline(&swollen), bubble(0.5, 0.36, 0.1)].concat()
        }
        Fault::Thin => wall(&[glaze(&[(0.06, SURFACE), (0.06, 0.37), (0.94, 0.37), (0.94, SURFACE)])]),
        Fault::Dry => wall(&[glaze(&rough())]),
        Fault::BareSpot => face(&[disc(Ink::Bisque, 0.5, 0.35, 0.13), ring(0.5, 0.35, 0.13)]),
        Fault::Pooling => {
            let bowl = [(0.1, 0.16), (0.2, 0.42), (0.36, 0.56), (0.64, 0.56), (0.8, 0.42), (0.9, 0.16)];
            [
                shape(Ink::Glazed, &[(0.16, 0.32), (0.2, 0.42), (0.36, 0.56), (0.64, 0.56), (0.8, 0.42), (0.84, 0.32)]),
                shape(Ink::Line, &bowl),
                shelf(),
            ]
            .concat()
        }
        Fault::Sagging => pot(&[glaze(&[
            (0.3, 0.1),
            (0.7, 0.1),
            (0.69, 0.3),
            (0.76, 0.36),
            (0.74, 0.44),
            (0.67, 0.42),
            (0.33, 0.42),
            (0.26, 0.44),
            (0.24, 0.36),
            (0.31, 0.3),
        ])]),
        Fault::Pitting => wall(&[coat(), pit(0.24), pit(0.5), pit(0.74)]),
        Fault::Beading => wall(&[
            disc(Ink::Glazed, 0.22, 0.34, 0.07),
            disc(Ink::Glazed, 0.48, 0.35, 0.06),
            disc(Ink::Glazed, 0.76, 0.34, 0.07),
            ring(0.22, 0.34, 0.07),
            ring(0.48, 0.35, 0.06),
            ring(0.76, 0.34, 0.07),
        ]),
        Fault::RawCracking => wall(&[
            coat(),
            crack(&[(0.28, GLAZE), (0.26, 0.33), (0.29, SURFACE)]),
            crack(&[(0.52, GLAZE), (0.55, 0.34), (0.53, SURFACE)]),
            crack(&[(0.74, GLAZE), (0.72, 0.32), (0.75, SURFACE)]),
        ]),
        Fault::Flaking => wall(&[
            glaze(&[(0.06, SURFACE), (0.06, GLAZE), (0.46, GLAZE), (0.5, SURFACE)]),
            glaze(&[(0.56, 0.36), (0.86, 0.14), (0.92, 0.22), (0.64, 0.4)]),
        ]),
        Fault::Matting => face(&[strokes(0.0)]),
        Fault::Scumming => face(&[
            disc(Ink::Bisque, 0.4, 0.3, 0.12),
            disc(Ink::Bisque, 0.55, 0.36, 0.14),
            disc(Ink::Bisque, 0.66, 0.28, 0.08),
        ]),
        Fault::Blushing => face(&[shape(Ink::Overlap, &[(0.5, 0.1), (0.86, 0.1), (0.86, 0.6), (0.62, 0.6)])]),
        Fault::Speck => face(&[
            disc(Ink::Clay, 0.36, 0.26, 0.035),
            disc(Ink::Clay, 0.6, 0.4, 0.045),
            disc(Ink::Clay, 0.44, 0.48, 0.025),
            disc(Ink::Clay, 0.66, 0.22, 0.025),
        ]),
        Fault::MetalMarking => face(&[strokes(0.12)]),
    }
}

fn spots(corners: &[At]) -> Vec<Spot> {
    corners.iter().map(|&(x, y)| Spot { x, y }).collect()
}

/// A line, or an area: the ink says which.
fn shape(ink: Ink, corners: &[At]) -> Part {
    vec![Shape::of(ink, spots(corners))]
}

fn outline(corners: &[At]) -> Part {
    shape(Ink::Line, &[corners, &corners[..1]].concat())
}

fn crack(corners: &[At]) -> Part {
    shape(Ink::Line, corners)
}

fn disc(ink: Ink, x: f64, y: f64, radius: f64) -> Part {
    vec![Shape::circle(ink, Spot { x, y }, radius)]
}

fn ring(x: f64, y: f64, radius: f64) -> Part {
    disc(Ink::Line, x, y, radius)
}

/// A bubble, or whatever else is round and hollow.
fn bubble(x: f64, y: f64, radius: f64) -> Part {
    [disc(Ink::Bisque, x, y, radius), ring(x, y, radius)].concat()
}

fn glaze(corners: &[At]) -> Part {
    [shape(Ink::Glazed, corners), outline(corners)].concat()
}

/// The whole wall, evenly glazed.
fn coat() -> Part {
    glaze(&[(WALL[0], SURFACE), (WALL[0], GLAZE), (WALL[1], GLAZE), (WALL[1], SURFACE)])
}

/// A narrow hole through the glaze, down to the clay.
fn hole(x: f64, half: f64) -> Part {
    let corners = [(x - half, GLAZE), (x - half, SURFACE), (x + half, SURFACE), (x + half, GLAZE)];
    [shape(Ink::Bisque, &corners), outline(&corners)].concat()
}

/// A hollow that does not reach the clay.
fn pit(x: f64) -> Part {
    let corners = [(x - 0.06, GLAZE), (x, 0.33), (x + 0.06, GLAZE)];
    [shape(Ink::Bisque, &corners), shape(Ink::Line, &corners)].concat()
}

/// Powder that has not melted.
fn grains() -> Part {
    (0..14)
        .flat_map(|grain| disc(Ink::Clay, 0.12 + 0.058 * f64::from(grain), [0.3, 0.36][grain as usize % 2], 0.012))
        .collect()
}

/// Glaze with an upper side that was not melted smooth.
fn rough() -> Vec<At> {
    let teeth = (0..=16).map(|tooth| (WALL[0] + 0.055 * f64::from(tooth), [0.3, 0.34][tooth as usize % 2]));
    [(WALL[0], SURFACE)].into_iter().chain(teeth).chain([(WALL[1], SURFACE)]).collect()
}

/// Fine cracks that cross one another.
fn net(ink: Ink) -> Part {
    [
        [(0.14, 0.22), (0.36, 0.28), (0.58, 0.2), (0.86, 0.26)].as_slice(),
        &[(0.14, 0.44), (0.4, 0.4), (0.62, 0.48), (0.86, 0.42)],
        &[(0.3, 0.1), (0.36, 0.28), (0.4, 0.4), (0.34, 0.6)],
        &[(0.62, 0.1), (0.58, 0.2), (0.62, 0.48), (0.7, 0.6)],
    ]
    .iter()
    .flat_map(|corners| shape(ink, corners))
    .collect()
}

/// Strokes across a face, slanting by so much.
fn strokes(slant: f64) -> Part {
    (0..4)
        .flat_map(|stroke| {
            let y = 0.2 + 0.1 * f64::from(stroke);
            shape(if slant > 0.0 { Ink::Line } else { Ink::Guide }, &[(0.26, y + slant / 2.0), (0.74, y - slant / 2.0)])
        })
        .collect()
}

/// A wall cut through, with what lies on it.
fn wall(on_it: &[Part]) -> Part {
    let clay = [(WALL[0], SURFACE), (WALL[1], SURFACE), (WALL[1], BACK), (WALL[0], BACK)];
    [shape(Ink::Clay, &clay), outline(&clay), on_it.concat()].concat()
}

/// A piece of a glazed face, with what is seen on it.
fn face(on_it: &[Part]) -> Part {
    let edge = [(0.14, 0.1), (0.86, 0.1), (0.86, 0.6), (0.14, 0.6)];
    [shape(Ink::Glazed, &edge), on_it.concat(), outline(&edge)].concat()
}

/// A bare pot on its shelf, with what is on it.
fn pot(on_it: &[Part]) -> Part {
    let clay = [(0.3, 0.1), (0.7, 0.1), (0.67, SHELF), (0.33, SHELF)];
    [shape(Ink::Bisque, &clay), outline(&clay), shelf(), on_it.concat()].concat()
}

/// The glaze of a pot as it should be.
fn dressed() -> Part {
    glaze(&[(0.3, 0.1), (0.7, 0.1), (0.675, 0.5), (0.325, 0.5)])
}

fn shelf() -> Part {
    shape(Ink::Line, &[(0.06, 0.65), (0.94, 0.65)])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_fault_has_a_drawing_of_its_own_inside_its_box() {
        let drawings: Vec<Drawing> = Fault::ALL.iter().map(|fault| fault_sketch(fault.code())).collect();
        assert!(fault_sketch("of a newer version").shapes.is_empty());
        for (at, (fault, drawing)) in Fault::ALL.iter().zip(&drawings).enumerate() {
            for shape in &drawing.shapes {
                let room = shape.radius;
                let inside =
                    |spot: &Spot| (room..=1.0 - room).contains(&spot.x) && (room..=TALL - room).contains(&spot.y);
                assert!(!shape.spots.is_empty() && shape.spots.iter().all(inside), "{fault:?}: {shape:?}");
            }
            assert!(drawings[..at].iter().all(|other| other.shapes != drawing.shapes), "{fault:?}");
        }
    }
}
