//! The table of a profile's points: text as the potter typed it on one side, measured points on the other.

use crate::in_words::Sentence;
use crate::messages::editor_form as say;
use laydown_domain::form::ProfilePoint;
use laydown_domain::units::{Millimetres, Style, UnitError, parse};
use laydown_store::entity::Points;

/// As fine as points are dragged: half a millimetre, as calipers are read.
pub(super) const FINEST: f64 = 0.5;

/// The table's text for points in the style's unit.
pub(super) fn text(points: &[ProfilePoint], style: &Style) -> String {
    let cell = |length: Millimetres| style.length_number(length);
    let row = |point: &ProfilePoint| {
        let wall = point.wall.map(cell).unwrap_or_default();
        format!("{}\t{}\t{wall}", cell(point.height), cell(point.radius * 2.0))
    };
    points.iter().map(row).collect::<Vec<_>>().join("\n")
}

/// The rows of the table's text: height, width across and wall, as typed.
pub(super) fn rows(text: &str) -> Vec<[&str; 3]> {
    text.lines()
        .map(|line| {
            let mut cells = line.split('\t').map(str::trim);
            [(); 3].map(|()| cells.next().unwrap_or_default())
        })
        .collect()
}

/// The points of the table's text; a row left empty is no point.
///
/// # Errors
/// A sentence naming the point, counted from 1, and what to put right.
pub(super) fn read(text: &str, style: &Style) -> Result<Vec<ProfilePoint>, String> {
    let mut points = Vec::new();
    for (number, [height, across, wall]) in rows(text).into_iter().enumerate().map(|(at, row)| (at + 1, row)) {
        if [height, across, wall].iter().all(|cell| cell.is_empty()) {
            continue;
        }
        if height.is_empty() || across.is_empty() {
            return Err(say::point_half_given(number));
        }
        let length = |cell: &str| {
            parse::length(cell, style).map_err(|error: UnitError| say::point_error(number, error.sentence()))
        };
        points.push(ProfilePoint {
            height: length(height)?,
            radius: length(across)? / 2.0,
            wall: if wall.is_empty() { None } else { Some(length(wall)?) },
        });
    }
    Ok(points)
}

/// As they are stored.
pub(super) fn stored(points: &[ProfilePoint]) -> Points {
    let um = |length: Millimetres| length.micrometres();
    Points(
        points
            .iter()
            .map(|point| [Some(point.height), Some(point.radius), point.wall].into_iter().flatten().map(um).collect())
            .collect(),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn point(height: f64, radius: f64, wall: Option<f64>) -> ProfilePoint {
        let mm = Millimetres::new;
        ProfilePoint { height: mm(height), radius: mm(radius), wall: wall.map(mm) }
    }

    #[test]
    fn what_is_written_reads_back() {
        let points = [point(0.0, 36.0, None), point(40.5, 42.25, Some(4.5)), point(95.0, 41.0, None)];
        let written = text(&points, &Style::default());
        assert_eq!(written, "0\t7.2\t\n4.05\t8.45\t0.45\n9.5\t8.2\t");
        assert_eq!(read(&written, &Style::default()).unwrap(), points);
        assert_eq!(stored(&points).0, [vec![0, 36_000], vec![40_500, 42_250, 4_500], vec![95_000, 41_000]]);
    }

    #[test]
    fn a_row_that_is_half_filled_is_named() {
        let style = Style::default();
        assert_eq!(read("0\t7\n\t\n\n5\t8\t", &style).unwrap().len(), 2);
        assert!(read("0\t7\n5", &style).unwrap_err().starts_with("Point 2: give both"));
        assert!(read("0\t7\n5\twide", &style).unwrap_err().starts_with("Point 2: "));
    }
}
