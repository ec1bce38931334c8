//! Charts as one SVG picture, for paper: the same view records that a shell scales, black on white.

use std::fmt::Write;

use super::chart::{ChartSpot, ChartView, LegendEntry, Mark, Stroke};

/// Sizes in the picture's own units, as wide as A4 at 96 to the inch less its edges.
const WIDTH: f64 = 700.0;
const EDGE: f64 = 20.0;
const PLOT_LEFT: f64 = 90.0;
const PLOT_HEIGHT: f64 = 220.0;
const LINE: f64 = 18.0;
const MARK: f64 = 5.5;
/// So many letters fit on a line.
const LETTERS: usize = 100;

const INK: &str = "#1b1b1b";
const QUIET: &str = "#5a5a5a";
const BAND: &str = "#d9ead3";
const CURVE: &str = "#1f4e79";

/// A picture of `charts` below one another, each with its words and what stands for what.
pub(super) fn page(title: &str, charts: &[&ChartView]) -> String {
    let mut body = String::new();
    let mut y = EDGE + 2.0 * LINE;
    text(&mut body, (EDGE, EDGE + LINE), "start", 22.0, INK, title);
    for chart in charts {
        y = drawn(&mut body, chart, y + LINE);
    }
    let height = y + EDGE;
    let title = escaped(title);
    format!(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{WIDTH}\" height=\"{height}\" \
         viewBox=\"0 0 {WIDTH} {height}\" font-family=\"sans-serif\">\n<title>{title}</title>\n\
         <rect width=\"{WIDTH}\" height=\"{height}\" fill=\"#ffffff\"/>\n{body}</svg>\n"
    )
}

/// Draws a chart from `top` on and answers where it ends.
fn drawn(out: &mut String, chart: &ChartView, top: f64) -> f64 {
    put(out, format_args!("<g role=\"img\" aria-label=\"{}\">\n", escaped(&chart.words)));
    let mut y = top;
    text(out, (EDGE, y), "start", 16.0, INK, &chart.title);
    for line in wrapped(&chart.words, LETTERS) {
        y += LINE;
        text(out, (EDGE, y), "start", 12.0, QUIET, &line);
    }
    let (left, right) = (PLOT_LEFT, WIDTH - EDGE);
    let (above, below) = (y + LINE, y + LINE + PLOT_HEIGHT);
    let place = |spot: &ChartSpot| (left + (right - left) * spot.x, above + (below - above) * spot.y);
    for band in &chart.bands {
        let ((x, y), (to_x, to_y)) = (place(&band.from), place(&band.to));
        rectangle(out, (x, y), (to_x - x, to_y - y));
    }
    path(out, &[(left, above), (left, below), (right, below)], QUIET, 1.5, "");
    for tick in &chart.up {
        let y = above + (below - above) * tick.at;
        path(out, &[(left - 4.0, y), (left, y)], QUIET, 1.5, "");
        text(out, (left - 8.0, y + 4.0), "end", 12.0, QUIET, &tick.words);
    }
    for tick in &chart.across {
        let x = left + (right - left) * tick.at;
        path(out, &[(x, below), (x, below + 4.0)], QUIET, 1.5, "");
        // Words at an end stay within the picture.
        let anchor = if tick.at > 0.9 { "end" } else { "middle" };
        text(out, (x, below + LINE), anchor, 12.0, QUIET, &tick.words);
    }
    text(out, (right, below + 2.0 * LINE), "end", 12.0, QUIET, &chart.across_title);
    for line in &chart.lines {
        stroke(out, line.stroke, &line.spots.iter().map(place).collect::<Vec<_>>());
    }
    for dot in &chart.dots {
        mark(out, dot.mark, place(&dot.at));
    }
    let mut y = below + 2.0 * LINE;
    for entry in &chart.legend {
        y += LINE;
        key(out, entry, y - 4.0);
        text(out, (EDGE + 44.0, y), "start", 12.0, INK, &entry.words);
    }
    put(out, format_args!("</g>\n"));
    y + LINE
}

/// What stands for something, at the left edge.
fn key(out: &mut String, entry: &LegendEntry, y: f64) {
    match (entry.mark, entry.stroke) {
        (Some(of), _) => mark(out, of, (EDGE + 18.0, y)),
        (None, Some(of)) => stroke(out, of, &[(EDGE, y), (EDGE + 36.0, y)]),
        (None, None) => rectangle(out, (EDGE, y - 6.0), (36.0, 12.0)),
    }
}

fn stroke(out: &mut String, stroke: Stroke, spots: &[(f64, f64)]) {
    let (ink, width, dashes) = match stroke {
        Stroke::Aim => (INK, 1.5, ""),
        Stroke::Best => (CURVE, 2.0, "7 7"),
        Stroke::Average => (CURVE, 2.5, ""),
        Stroke::Edge => (CURVE, 1.5, "2 4"),
    };
    path(out, spots, ink, width, dashes);
}

/// Told apart by shape, as on a screen.
fn mark(out: &mut String, mark: Mark, (x, y): (f64, f64)) {
    let disc = |out: &mut String, radius: f64, ink: &str| {
        put(
            out,
            format_args!("<circle cx=\"{x:.2}\" cy=\"{y:.2}\" r=\"{radius:.2}\" fill=\"{ink}\" stroke=\"#ffffff\"/>\n"),
        );
    };
    let triangle = |out: &mut String, towards: f64, ink: &str| {
        let (point, base) = (y + MARK * 1.2 * towards, y - MARK * 0.8 * towards);
        let (left, right) = (x - MARK * 1.15, x + MARK * 1.15);
        put(
            out,
            format_args!(
                "<path d=\"M{x:.2} {point:.2} L{left:.2} {base:.2} L{right:.2} {base:.2} Z\" fill=\"{ink}\" stroke=\"#ffffff\"/>\n"
            ),
        );
    };
    match mark {
        Mark::Thin => triangle(out, 1.0, "#7a5900"),
        Mark::Thick => triangle(out, -1.0, "#8c1d18"),
        Mark::Right => disc(out, MARK, "#1b6b3a"),
        Mark::Coat => disc(out, MARK * 0.6, QUIET),
        Mark::Outlier => {
            for down in [MARK, -MARK] {
                path(out, &[(x - MARK, y - down), (x + MARK, y + down)], "#8c1d18", 2.0, "");
            }
        }
    }
}

fn rectangle(out: &mut String, (x, y): (f64, f64), (width, height): (f64, f64)) {
    put(
        out,
        format_args!(
            "<rect x=\"{x:.2}\" y=\"{y:.2}\" width=\"{width:.2}\" height=\"{height:.2}\" fill=\"{BAND}\" stroke=\"#1b6b3a\"/>\n"
        ),
    );
}

fn path(out: &mut String, spots: &[(f64, f64)], ink: &str, width: f64, dashes: &str) {
    let spots: Vec<String> = spots.iter().map(|(x, y)| format!("{x:.2},{y:.2}")).collect();
    let dashes = if dashes.is_empty() { String::new() } else { format!(" stroke-dasharray=\"{dashes}\"") };
    put(
        out,
        format_args!(
            "<polyline points=\"{}\" fill=\"none\" stroke=\"{ink}\" stroke-width=\"{width}\" stroke-linecap=\"round\"{dashes}/>\n",
            spots.join(" ")
        ),
    );
}

fn text(out: &mut String, (x, y): (f64, f64), anchor: &str, size: f64, ink: &str, words: &str) {
    put(
        out,
        format_args!(
            "<text x=\"{x:.2}\" y=\"{y:.2}\" font-size=\"{size}\" text-anchor=\"{anchor}\" fill=\"{ink}\">{}</text>\n",
            escaped(words)
        ),
    );
}

fn put(out: &mut String, what: std::fmt::Arguments<'_>) {
    // Writing into a string cannot fail.
    let _ = out.write_fmt(what);
}

/// Names are a potter's own: what XML would read as its own is written otherwise, and what it cannot hold is left out.
fn escaped(words: &str) -> String {
    let mut out = String::with_capacity(words.len());
    for letter in words.chars() {
        match letter {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\t' | '\n' | '\r' => out.push(' '),
            other if other.is_control() || matches!(other, '\u{fffe}' | '\u{ffff}') => {}
            other => out.push(other),
        }
    }
    out
}

/// Lines of at most so many letters, broken between words; a longer word stays whole.
fn wrapped(words: &str, letters: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in words.split_whitespace() {
        match lines.last_mut().filter(|line| line.chars().count() + 1 + word.chars().count() <= letters) {
            Some(line) => {
                line.push(' ');
                line.push_str(word);
            }
            None => lines.push(word.to_owned()),
        }
    }
    lines
}
