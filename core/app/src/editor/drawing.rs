//! What an editor draws, ready laid out: a shell scales the box to its view, paints the shapes in order and lets the grips
//! be dragged. What a drag means is decided here.

use std::path::Path;

use serde::Serialize;

use super::{EditorEntry, EditorKind, EditorView, Value, form};
use crate::evidence::style;
use crate::{Now, Result, Studio};
use laydown_domain::units::Style;

/// A place in a drawing, both ways in widths of the drawing: x from its left edge, y from its upper one.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, uniffi::Record)]
pub struct Spot {
    /// From the left edge, 0 to 1.
    pub x: f64,
    /// From the upper edge, 0 to [`Drawing::tall`].
    pub y: f64,
}

/// How a shape is painted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, uniffi::Enum)]
pub enum Ink {
    /// The clay where the form is cut: filled.
    Clay,
    /// The form as it stands, bare: filled.
    Bisque,
    /// Glazed outside: filled.
    Glazed,
    /// Where both glazes lie: filled.
    Overlap,
    /// A line of the form.
    Line,
    /// A thin line to go by: the axis, the ground.
    Guide,
    /// What was seen in a photograph: a bright line.
    Seen,
}

/// A line or an area of a drawing.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct Shape {
    /// How it is painted.
    pub ink: Ink,
    /// Its corners; an area closes itself. Of a circle, its middle alone.
    pub spots: Vec<Spot>,
    /// The radius of a circle, in widths of the drawing; 0 for any other shape.
    pub radius: f64,
}

impl Shape {
    /// A line, or an area that closes itself.
    pub(crate) fn of(ink: Ink, spots: Vec<Spot>) -> Shape {
        Shape { ink, spots, radius: 0.0 }
    }

    pub(crate) fn circle(ink: Ink, middle: Spot, radius: f64) -> Shape {
        Shape { ink, spots: vec![middle], radius }
    }
}

/// Something to take hold of and drag.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct Grip {
    /// What to hand back.
    pub key: String,
    /// Where it is held.
    pub at: Spot,
    /// The line it moves, from end to end; empty for a point.
    pub line: Vec<Spot>,
    /// What it is called, with where it stands: "Point 3: 6.2 cm high, 8.4 cm wide".
    pub name: String,
    /// Whether it can be taken away.
    pub removable: bool,
    /// Whether it can be dragged; else it is only to be looked at.
    pub movable: bool,
    /// The radius of what is held, in widths of the drawing, where that is a disc; 0 for a point or a line.
    pub radius: f64,
    /// What stands in the disc; may be empty.
    pub label: String,
    /// Whether something is wrong with where it stands, so that it is to stand out.
    pub warns: bool,
}

impl Grip {
    /// A point to drag.
    pub(crate) fn point(key: String, at: Spot, name: String, removable: bool) -> Grip {
        let (line, label) = (Vec::new(), String::new());
        Grip { key, at, line, name, removable, movable: true, radius: 0.0, label, warns: false }
    }
}

/// A drawing in a box as wide as 1 and as tall as `tall`.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct Drawing {
    /// The key of the field it belongs below.
    pub below: String,
    /// Height of the box, in widths of it.
    pub tall: f64,
    /// The photograph that lies under it and fills the box; empty where there is none.
    pub photo: String,
    /// What is painted, the lowest first.
    pub shapes: Vec<Shape>,
    /// What can be dragged.
    pub grips: Vec<Grip>,
    /// What it shows, for whoever listens.
    pub words: String,
}

/// What a finger does to a drawing.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Enum)]
pub enum Touch {
    /// Drags the grip of this key to a place.
    Move {
        /// The grip's key.
        grip: String,
        /// Where to.
        to: Spot,
    },
    /// Taps a place where no grip is.
    Add {
        /// Where.
        at: Spot,
    },
    /// Takes the grip of this key away.
    Remove {
        /// The grip's key.
        grip: String,
    },
}

/// An editor after a touch or a photograph.
#[derive(Debug, Clone, PartialEq, Serialize, uniffi::Record)]
pub struct Redrawn {
    /// What is entered by it, in place of what was entered under the same keys.
    pub values: Vec<Value>,
    /// The editor with that.
    pub view: EditorView,
}

#[uniffi::export]
impl Studio {
    /// The editor after a finger has touched its drawing. Nothing is kept by it.
    ///
    /// # Errors
    /// As [`Studio::editor`]. A touch that means nothing changes nothing.
    pub fn touch(&self, now: Now, entry: &EditorEntry, touch: &Touch) -> Result<Redrawn> {
        self.redraw(now, entry, |view, style| match entry.kind {
            EditorKind::Form => Ok(form::touched(view, entry, touch, style)),
            _ => Ok(Vec::new()),
        })
    }

    /// The editor after a photograph was chosen for its field: `file` is a JPEG or PNG as the camera left it. It is only
    /// read; a smaller, upright copy without location is written beside it, and that one is shown.
    ///
    /// # Errors
    /// `StudioError::Refused` for a picture in which no form can be found, `StudioError::Full` or
    /// `StudioError::Unreadable` when a file cannot be read or written; then the entry stands as it was.
    pub fn photograph(&self, now: Now, entry: &EditorEntry, file: &Path) -> Result<Redrawn> {
        let values = form::photographed(file)?;
        self.redraw(now, entry, |_, _| Ok(values))
    }
}

impl Studio {
    fn redraw(
        &self,
        now: Now,
        entry: &EditorEntry,
        change: impl FnOnce(&EditorView, &Style) -> Result<Vec<Value>>,
    ) -> Result<Redrawn> {
        self.store.read(|conn| {
            let style = style(conn)?;
            let values = change(&entry.view(conn, now, &style)?, &style)?;
            let entered = [entry.values.as_slice(), &values].concat();
            let view = EditorEntry { values: entered, ..entry.clone() }.view(conn, now, &style)?;
            Ok(Redrawn { values, view })
        })
    }
}
