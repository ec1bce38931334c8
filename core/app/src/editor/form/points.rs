//! The table of a profile's points: text as the potter typed it on one side, measured points on the other.

use crate::in_words::Sentence;
use crate::messages::editor_form as say;
use laydown_domain::form::{MOST_POINTS, ProfilePoint};
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

/// The rows of the table for points as they are stored.
pub(super) fn shown(points: &Points, style: &Style) -> String {
    let row = |numbers: &Vec<i64>| {
        let cell = |at: usize, times: f64| {
            let um = numbers.get(at).map(|um| Millimetres::from_micrometres(*um) * times);
            um.map(|length| style.length_number(length)).unwrap_or_default()
        };
        format!("{}\t{}\t{}", cell(0, 1.0), cell(1, 2.0), cell(2, 1.0))
    };
    points.0.iter().map(row).collect::<Vec<_>>().join("\n")
}

/// The points of the table's text, as they are to be stored: a row that is one of those shown for `saved` keeps its stored
/// numbers, the others are read.
///
/// # Errors
/// As [`read`].
pub(super) fn patched(text: &str, saved: &Points, style: &Style) -> Result<Points, String> {
    let before = shown(saved, style);
    let (before, entered) = (rows(&before), rows(text));
    let kept = in_both(&before, &entered);
    let mut points = Vec::new();
    for (at, row) in entered.iter().enumerate() {
        match kept.get(at).copied().flatten().and_then(|place| saved.0.get(place)) {
            Some(numbers) => points.push(numbers.clone()),
            None => points.extend(point(at + 1, *row, style)?.map(|point| stored(&[point]).0).into_iter().flatten()),
        }
    }
    Ok(Points(points))
}

/// For each row of `after` its place in `before`, where it stands in both: the longest run of rows that are in both in order.
fn in_both(before: &[[&str; 3]], after: &[[&str; 3]]) -> Vec<Option<usize>> {
    // More points than a profile may have are refused, and compared with nothing.
    if after.len() > 2 * MOST_POINTS || before.len() > 2 * MOST_POINTS {
        return Vec::new();
    }
    // `longest[b][a]`: how many of the rows from `b` and `a` on can be matched.
    let mut longest = vec![vec![0; after.len() + 1]; before.len() + 1];
    for b in (0..before.len()).rev() {
        for a in (0..after.len()).rev() {
            longest[b][a] = if before[b] == after[a] {
                1 + longest[b + 1][a + 1]
            } else {
                longest[b + 1][a].max(longest[b][a + 1])
            };
        }
    }
    let mut places = vec![None; after.len()];
    let (mut b, mut a) = (0, 0);
    while b < before.len() && a < after.len() {
        if before[b] == after[a] {
            places[a] = Some(b);
            (b, a) = (b + 1, a + 1);
        } else if longest[b + 1][a] >= longest[b][a + 1] {
            b += 1;
        } else {
            a += 1;
        }
    }
    places
}

/// The points of the table's text; a row left empty is no point.
///
/// # Errors
/// A sentence naming the point, counted from 1, and what to put right.
pub(super) fn read(text: &str, style: &Style) -> Result<Vec<ProfilePoint>, String> {
    let read = rows(text).into_iter().enumerate().filter_map(|(at, row)| point(at + 1, row, style).transpose());
    read.collect()
}

/// The point of one row; `None` of an empty one. `number` counts the rows from 1.
fn point(number: usize, [height, across, wall]: [&str; 3], style: &Style) -> Result<Option<ProfilePoint>, String> {
    if [height, across, wall].iter().all(|cell| cell.is_empty()) {
        return Ok(None);
    }
    if height.is_empty() || across.is_empty() {
        return Err(say::point_half_given(number));
    }
    let length =
        |cell: &str| parse::length(cell, style).map_err(|error: UnitError| say::point_error(number, error.sentence()));
    Ok(Some(ProfilePoint {
        height: length(height)?,
        radius: length(across)? / 2.0,
        wall: if wall.is_empty() { None } else { Some(length(wall)?) },
    }))
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
    use laydown_domain::units::LengthUnit;

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
    fn a_row_that_was_not_touched_keeps_its_stored_numbers() {
        let inches = Style { length: LengthUnit::Inch, ..Style::default() };
        let saved = Points(vec![
            vec![0, 36_001],
            vec![20_003, 40_007, 4_011],
            vec![20_004, 40_006, 4_012],
            vec![70_013, 41_017],
            vec![95_019, 42_023],
        ]);
        let text = shown(&saved, &inches);
        let lines: Vec<&str> = text.lines().collect();
        assert_eq!(lines[1], lines[2]);
        assert_eq!(patched(&text, &saved, &inches).unwrap(), saved);
        let patched = |lines: &[&str]| patched(&lines.join("\n"), &saved, &inches).unwrap().0;
        // Changed, with another, taken away, and made equal to another: the others stay.
        let changed = patched(&[lines[0], lines[1], lines[2], "3 in\t3 in\t", lines[4]]);
        assert_eq!(changed[3], [76_200, 38_100]);
        assert_eq!([&changed[..3], &changed[4..]].concat(), [&saved.0[..3], &saved.0[4..]].concat());
        let with_another = patched(&[lines[0], "0.5\t3\t", lines[1], lines[2], lines[3], lines[4], "\t\t"]);
        assert_eq!([&with_another[..1], &with_another[2..]].concat(), saved.0);
        assert_eq!(patched(&[lines[0], lines[3], lines[4]]), [&saved.0[..1], &saved.0[3..]].concat());
        let equal = patched(&[lines[4], lines[1], lines[2], lines[3], lines[4]]);
        assert_eq!(equal[1..], saved.0[1..]);
        // What a newer version says of a point stays with it.
        let newer = Points(vec![vec![0, 36_001, 4_000, 7]]);
        assert_eq!(super::patched(&shown(&newer, &inches), &newer, &inches).unwrap(), newer);
    }

    #[test]
    fn a_row_that_is_half_filled_is_named() {
        let style = Style::default();
        assert_eq!(read("0\t7\n\t\n\n5\t8\t", &style).unwrap().len(), 2);
        assert!(read("0\t7\n5", &style).unwrap_err().starts_with("Point 2: give both"));
        assert!(read("0\t7\n5\twide", &style).unwrap_err().starts_with("Point 2: "));
    }
}
