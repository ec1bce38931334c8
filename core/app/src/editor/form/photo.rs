//! A form from a photograph: the picture with the outline that was found in it, and the size that makes it millimetres.

use std::io::Read;
use std::path::Path;

use crate::editor::{Drawing, EditorEntry, Grip, Ink, Shape, Spot, Value};
use crate::in_words::Sentence;
use crate::messages::editor_form as say;
use crate::{Result, StudioError};
use laydown_domain::form::silhouette::{KnownSize, PhotoError, Trace, trace, upright_preview};
use laydown_domain::units::Millimetres;
use laydown_store::StoreError;

/// The most bytes of a file that can be a photograph.
const LARGEST_FILE: u64 = 64 << 20;
/// The longer side of the copy that is shown, in pixels: as many as a phone's screen has.
const PREVIEW: u32 = 1600;

/// The keys of what a photograph leaves in the entry.
pub(super) struct Taken {
    /// The file that is shown: upright and small.
    pub(super) photo: &'static str,
    /// The outline found in it, as JSON.
    pub(super) trace: &'static str,
    /// Where the known length lies in the picture.
    pub(super) marks: &'static str,
}

pub(super) const TAKEN: Taken = Taken { photo: "photo", trace: "trace", marks: "marks" };

/// The ends of a coin or a ruler in the picture, in widths of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Marks {
    from: Spot,
    to: Spot,
}

const FROM: &str = "mark.from";
const TO: &str = "mark.to";

impl Default for Marks {
    /// Low in the picture, where a ruler is likely to lie.
    fn default() -> Marks {
        Marks { from: Spot { x: 0.2, y: 0.5 }, to: Spot { x: 0.8, y: 0.5 } }
    }
}

impl Marks {
    /// Where they were left.
    pub(super) fn entered(entry: &EditorEntry) -> Marks {
        let text = entry.values.iter().rev().find(|value| value.key == TAKEN.marks).map(|value| value.text.as_str());
        text.and_then(Marks::read).unwrap_or_default()
    }

    pub(super) fn read(text: &str) -> Option<Marks> {
        let numbers: Vec<f64> = text.split(' ').map(str::parse).collect::<Result<_, _>>().ok()?;
        let &[from_x, from_y, to_x, to_y] = numbers.as_slice() else { return None };
        let inside = numbers.iter().all(|number| (0.0..=10.0).contains(number));
        inside.then_some(Marks { from: Spot { x: from_x, y: from_y }, to: Spot { x: to_x, y: to_y } })
    }

    pub(super) fn text(self) -> String {
        format!("{} {} {} {}", self.from.x, self.from.y, self.to.x, self.to.y)
    }

    /// With the end of this key moved; `None` for another key.
    pub(super) fn moved(self, key: &str, to: Spot) -> Option<Marks> {
        match key {
            FROM => Some(Marks { from: to, ..self }),
            TO => Some(Marks { to, ..self }),
            _ => None,
        }
    }

    /// A known length between them, in pixels of the traced picture.
    pub(super) fn known(self, length: Millimetres, trace: &Trace) -> KnownSize {
        let width = f64::from(trace.width);
        let pixels = |spot: Spot| (spot.x * width, spot.y * width);
        KnownSize::Length { length, from: pixels(self.from), to: pixels(self.to) }
    }
}

/// Finds the outline in a photograph; answers with what is entered by it.
pub(in crate::editor) fn photographed(file: &Path) -> Result<Vec<Value>> {
    let bytes = read(file)?;
    let refused = |error: PhotoError| StudioError::refused(TAKEN.photo, error.sentence());
    let trace = trace(&bytes).map_err(refused)?;
    let preview = upright_preview(&bytes, PREVIEW).map_err(refused)?;
    let shown = file.with_extension("upright.jpg");
    std::fs::write(&shown, preview).map_err(StoreError::from)?;
    let trace =
        serde_json::to_string(&trace).map_err(|_| StudioError::refused(TAKEN.photo, say::photograph_unreadable()))?;
    let value = |key: &str, text: String| Value { key: key.to_owned(), text };
    Ok(vec![
        value(TAKEN.photo, shown.to_string_lossy().into_owned()),
        value(TAKEN.trace, trace),
        value(TAKEN.marks, Marks::default().text()),
    ])
}

fn read(file: &Path) -> Result<Vec<u8>> {
    let mut bytes = Vec::new();
    let unreadable = |_| StudioError::refused(TAKEN.photo, say::photograph_unreadable());
    let open = std::fs::File::open(file).map_err(unreadable)?;
    open.take(LARGEST_FILE + 1).read_to_end(&mut bytes).map_err(unreadable)?;
    if bytes.len() as u64 > LARGEST_FILE {
        return Err(StudioError::refused(TAKEN.photo, say::photograph_too_large()));
    }
    Ok(bytes)
}

/// The picture with the outline over it, and with the marks to drag where a length in the picture is known.
pub(super) fn draw(below: &str, photo: &str, trace: &Trace, marks: Option<Marks>) -> Drawing {
    let width = f64::from(trace.width);
    let spots = |line: &[(f64, f64)]| line.iter().map(|(x, y)| Spot { x: x / width, y: y / width }).collect::<Vec<_>>();
    let seen = |line: &[(f64, f64)]| Shape::of(Ink::Seen, spots(line));
    let mut shapes =
        vec![Shape::of(Ink::Guide, spots(&[trace.axis.foot, trace.axis.rim])), seen(&trace.left), seen(&trace.right)];
    let mut grips = Vec::new();
    if let Some(Marks { from, to }) = marks {
        shapes.push(Shape::of(Ink::Line, vec![from, to]));
        let grip = |key: &str, at, name| Grip::point(key.to_owned(), at, name, false);
        grips.push(grip(FROM, from, say::mark_from()));
        grips.push(grip(TO, to, say::mark_to()));
    }
    Drawing {
        below: below.to_owned(),
        tall: f64::from(trace.height) / width,
        photo: photo.to_owned(),
        shapes,
        grips,
        words: say::drawing_of_photograph(),
    }
}
