//! Charts ready laid out: a shell scales them to its view and paints bands, lines and dots in this order; what they say is in
//! their words.

use laydown_domain::units::Style;

/// A place in a chart: fractions of its width from the left and of its height from the top, 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ChartSpot {
    /// From the left.
    pub x: f64,
    /// From the top.
    pub y: f64,
}

/// The shape of a dot. Each is told from the others without its colour.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, uniffi::Enum)]
pub enum Mark {
    /// Came out thin: a triangle that points down.
    Thin,
    /// Came out right: a filled disc.
    Right,
    /// Came out thick: a triangle that points up.
    Thick,
    /// A coat as others: a small disc.
    Coat,
    /// A coat that lies out further than the others let expect: a cross.
    Outlier,
}

/// How a line is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, uniffi::Enum)]
pub enum Stroke {
    /// What is aimed at: drawn through.
    Aim,
    /// The best of the window: dashed.
    Best,
    /// A moving average, a curve or how far something reaches: drawn through, heavier.
    Average,
    /// Where an interval ends, or where something began: dotted.
    Edge,
}

/// One thing that was weighed.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct Dot {
    /// Where.
    pub at: ChartSpot,
    /// As what.
    pub mark: Mark,
}

/// An area between two corners.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct Band {
    /// Its upper left corner.
    pub from: ChartSpot,
    /// Its lower right corner.
    pub to: ChartSpot,
}

/// A line through spots.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ChartLine {
    /// How it is drawn.
    pub stroke: Stroke,
    /// Its spots, from left to right or from top to bottom.
    pub spots: Vec<ChartSpot>,
}

/// A place on an axis with its words.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct AxisTick {
    /// From the left, or from the top.
    pub at: f64,
    /// What stands there.
    pub words: String,
}

/// What a mark, a stroke or the band stands for; with neither mark nor stroke it is the band.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct LegendEntry {
    /// The mark, if it is one.
    pub mark: Option<Mark>,
    /// The stroke, if it is one.
    pub stroke: Option<Stroke>,
    /// What it stands for.
    pub words: String,
}

/// A chart.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ChartView {
    /// What it shows.
    pub title: String,
    /// The same in words, for everyone who reads or listens rather than looks.
    pub words: String,
    /// What runs across.
    pub across_title: String,
    /// The axis below, from left to right.
    pub across: Vec<AxisTick>,
    /// The axis on the left, from top to bottom.
    pub up: Vec<AxisTick>,
    /// Areas, painted first.
    pub bands: Vec<Band>,
    /// Lines, painted over them.
    pub lines: Vec<ChartLine>,
    /// Dots, painted last.
    pub dots: Vec<Dot>,
    /// What stands for what, of all that is painted.
    pub legend: Vec<LegendEntry>,
}

pub(super) fn marked(mark: Mark, words: impl Into<String>) -> LegendEntry {
    LegendEntry { mark: Some(mark), stroke: None, words: words.into() }
}

pub(super) fn stroked(stroke: Stroke, words: impl Into<String>) -> LegendEntry {
    LegendEntry { mark: None, stroke: Some(stroke), words: words.into() }
}

pub(super) fn banded(words: impl Into<String>) -> LegendEntry {
    LegendEntry { mark: None, stroke: None, words: words.into() }
}

/// A line from the top to the bottom at `x`.
pub(super) fn upright(stroke: Stroke, x: f64) -> ChartLine {
    ChartLine { stroke, spots: vec![ChartSpot { x, y: 0.0 }, ChartSpot { x, y: 1.0 }] }
}

/// A line from the left to the right at `y`.
pub(super) fn level(stroke: Stroke, y: f64) -> ChartLine {
    ChartLine { stroke, spots: vec![ChartSpot { x: 0.0, y }, ChartSpot { x: 1.0, y }] }
}

/// An axis from the least to the most that it has to show, with a little room at both ends.
#[derive(Debug, Clone, Copy)]
pub(super) struct Span {
    low: f64,
    high: f64,
}

impl Span {
    /// Room at each end, as a part of what is shown.
    const ROOM: f64 = 0.06;

    /// An axis from end to end, without room.
    pub(super) const fn exactly(low: f64, high: f64) -> Span {
        Span { low, high }
    }

    /// An axis for `values`, at least `least` long.
    pub(super) fn of(values: impl IntoIterator<Item = f64>, least: f64) -> Span {
        let (low, high) =
            values.into_iter().fold((f64::MAX, f64::MIN), |(low, high), value| (low.min(value), high.max(value)));
        let middle = (low + high) / 2.0;
        let half = (high - low).max(least) / 2.0 * (1.0 + 2.0 * Span::ROOM);
        Span { low: middle - half, high: middle + half }
    }

    /// How far along it `value` lies, 0 to 1.
    pub(super) fn along(&self, value: f64) -> f64 {
        ((value - self.low) / (self.high - self.low)).clamp(0.0, 1.0)
    }

    /// Round numbers on it, at most `most` of them.
    pub(super) fn round_numbers(&self, most: usize) -> Vec<f64> {
        let step = (-4..4)
            .flat_map(|power| [1.0, 2.0, 5.0].map(|number| number * 10f64.powi(power)))
            .find(|step| (self.high / step).floor() - (self.low / step).ceil() < most as f64);
        let Some(step) = step else { return Vec::new() };
        let (first, last) = ((self.low / step).ceil() as i64, (self.high / step).floor() as i64);
        (first..=last).map(|number| number as f64 * step).collect()
    }
}

/// The most numbers on an axis, so that they stand apart in large type too.
const MOST_NUMBERS: usize = 5;

/// An axis of numbers, with as many decimals as they need.
pub(super) fn number_axis(span: Span, style: &Style) -> Vec<AxisTick> {
    let numbers = span.round_numbers(MOST_NUMBERS);
    let finest = numbers.windows(2).map(|pair| pair[1] - pair[0]).fold(1.0, f64::min);
    let decimals = (0..4).find(|decimals| 10f64.powi(-decimals) <= finest * 1.000_001).unwrap_or(4) as usize;
    numbers
        .into_iter()
        .map(|number| AxisTick { at: span.along(number), words: style.number(number, decimals) })
        .collect()
}

/// Dots of one row on the axis, each moved up or down so far that it does not hide its neighbours: `xs` from 0 to 1, answered
/// with how many steps each is moved.
pub(super) fn spread(xs: &[f64], apart: f64, most: i32) -> Vec<i32> {
    let mut order: Vec<usize> = (0..xs.len()).collect();
    order.sort_by(|a, b| xs[*a].total_cmp(&xs[*b]));
    let levels: Vec<i32> =
        (0..=most).flat_map(|level| if level == 0 { vec![0] } else { vec![level, -level] }).collect();
    let mut last: Vec<f64> = vec![f64::MIN; levels.len()];
    let mut moved = vec![0; xs.len()];
    for at in order {
        // Where all rows are taken, the one whose last dot is furthest away.
        let free = last.iter().position(|taken| xs[at] - taken >= apart);
        let furthest = || last.iter().enumerate().min_by(|a, b| a.1.total_cmp(b.1)).map_or(0, |(row, _)| row);
        let row = free.unwrap_or_else(furthest);
        last[row] = xs[at];
        moved[at] = levels[row];
    }
    moved
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_axis_has_few_round_numbers_within_its_span() {
        for (low, high) in [(4.1, 7.3), (0.9, 1.6), (5.4, 5.6), (2.0, 19.0), (-0.12, 0.09)] {
            let span = Span::of([low, high], 0.0);
            let numbers = span.round_numbers(MOST_NUMBERS);
            assert!((2..=MOST_NUMBERS).contains(&numbers.len()), "{low} to {high}: {numbers:?}");
            assert!(numbers.iter().all(|number| (0.0..=1.0).contains(&span.along(*number))));
        }
        // One value has an axis too.
        assert!(Span::of([5.0], 0.4).along(5.0) == 0.5);
    }

    #[test]
    fn numbers_on_an_axis_are_all_different() {
        let style = Style::default();
        for (low, high) in [(5.4, 5.6), (5.45, 5.52), (3.0, 11.0)] {
            let mut words: Vec<String> =
                number_axis(Span::of([low, high], 0.0), &style).into_iter().map(|tick| tick.words).collect();
            let count = words.len();
            words.dedup();
            assert_eq!(words.len(), count, "{words:?}");
        }
    }

    #[test]
    fn dots_that_would_hide_each_other_are_moved_apart() {
        let moved = spread(&[0.5, 0.5, 0.5, 0.9, 0.51], 0.03, 2);
        assert_eq!(moved[3], 0);
        let near = [moved[0], moved[1], moved[2], moved[4]];
        assert!((0..4).all(|one| (0..one).all(|other| near[one] != near[other])), "{near:?}");
        // More than there is room for: they overlap, and stay on the chart.
        assert!(spread(&[0.5; 40], 0.03, 2).iter().all(|level| level.abs() <= 2));
    }
}
