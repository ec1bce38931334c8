//! What a finger on the drawing of a form means: text put into its fields, as if it had been typed.

use super::draw::{BARE_FOOT, FILL, Frame, OVERLAP, POINT};
use super::photo::{Marks, TAKEN};
use super::points;
use crate::editor::{EditorEntry, EditorView, Spot, Touch, Value};
use laydown_domain::form::ProfilePoint;
use laydown_domain::units::Style;

/// The most points a profile is given by hand.
const MOST_POINTS: usize = 60;

/// The values that `touch` enters into the editor that is shown as `view`; none where it means nothing.
pub(in crate::editor) fn touched(view: &EditorView, entry: &EditorEntry, touch: &Touch, style: &Style) -> Vec<Value> {
    let is_place = |spot: &Spot| spot.x.is_finite() && spot.y.is_finite();
    if let Touch::Move { to: spot, .. } | Touch::Add { at: spot } = touch
        && !is_place(spot)
    {
        return Vec::new();
    }
    let photographed = view.drawing.as_ref().is_some_and(|drawing| !drawing.photo.is_empty());
    let changed = if photographed { move_mark(entry, touch) } else { change_points(view, entry, touch, style) };
    changed.unwrap_or_default()
}

fn move_mark(entry: &EditorEntry, touch: &Touch) -> Option<Vec<Value>> {
    let Touch::Move { grip, to } = touch else { return None };
    let marks = Marks::entered(entry).moved(grip, *to)?;
    Some(vec![value(TAKEN.marks, marks.text())])
}

fn change_points(view: &EditorView, entry: &EditorEntry, touch: &Touch, style: &Style) -> Option<Vec<Value>> {
    let table = view.fields.iter().find(|field| field.key == "points")?;
    // A row that cannot be read is put right in the table first: a drag would have to guess it.
    let mut found = points::read(&table.text, style).ok()?;
    let frame = Frame::around(&found, entered_frame(entry));
    match touch {
        Touch::Move { grip, to } => match grip.strip_prefix(POINT) {
            Some(number) => {
                let point = found.get_mut(number.parse::<usize>().ok()?)?;
                (point.radius, point.height) = frame.at(*to);
            }
            None => return move_line(&found, frame, grip, *to, style),
        },
        Touch::Add { at } => {
            if found.len() >= MOST_POINTS {
                return None;
            }
            let (radius, height) = frame.at(*at);
            let place = frame.place_for(&found, *at)?;
            found.insert(place + 1, ProfilePoint { height, radius, wall: None });
        }
        Touch::Remove { grip } => {
            let number: usize = grip.strip_prefix(POINT)?.parse().ok()?;
            if number >= found.len() {
                return None;
            }
            found.remove(number);
        }
    }
    let frame = Frame::around(&found, Some(frame));
    Some(vec![value("points", points::text(&found, style)), value(FRAME, frame.text())])
}

/// A glaze line or the filling line: heights above the ground for the one, depths below the rim for the others.
fn move_line(found: &[ProfilePoint], frame: Frame, grip: &str, to: Spot, style: &Style) -> Option<Vec<Value>> {
    let rim = found.last()?.height;
    let (_, height) = frame.at(to);
    let height = height.min(rim);
    let (key, length) = match grip {
        BARE_FOOT => (BARE_FOOT, height),
        OVERLAP => (OVERLAP, rim - height),
        FILL => (FILL, rim - height),
        _ => return None,
    };
    Some(vec![value(key, style.length_number(length)), value(FRAME, frame.text())])
}

/// The key under which the drawing's frame travels with what is entered, so that it does not change under the finger.
pub(super) const FRAME: &str = "frame";

fn entered_frame(entry: &EditorEntry) -> Option<Frame> {
    entry.values.iter().rev().find(|value| value.key == FRAME).and_then(|value| Frame::read(&value.text))
}

fn value(key: &str, text: String) -> Value {
    Value { key: key.to_owned(), text }
}
