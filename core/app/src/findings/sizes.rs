//! What other sizes take, as a curve of grams over what a form holds, and as the aim of each form that has no fired pots yet.

use super::FindingsSection;
use super::chart::{AxisTick, ChartLine, ChartSpot, ChartView, Dot, Mark, Span, Stroke, marked, number_axis, stroked};
use crate::Line;
use crate::date_text::sentence_case;
use crate::in_words::Named;
use crate::messages::findings as say;
use crate::pooled::ShapeSizes;
use laydown_domain::coat::Solids;
use laydown_domain::kiln::fault::Thickness;
use laydown_domain::learning::pooled::Aim;
use laydown_domain::learning::size::Size;
use laydown_domain::units::{Grams, Millilitres, Style};

/// In so many parts a curve is drawn.
const PARTS: usize = 24;
/// So far beyond the smallest and the largest form a curve goes.
const BEYOND: f64 = 1.35;
/// The next size is a round one between so many times the largest. Common practice, no source.
const NEXT: (f64, f64) = (1.15, 1.6);
/// The most numbers on an axis.
const MOST_NUMBERS: usize = 5;

/// The sizes of one shape and zone; `None` where a figure cannot be.
pub(super) fn section(shape: &ShapeSizes, solids: &Solids, step: Grams, style: &Style) -> Option<FindingsSection> {
    let holds: Vec<f64> = shape
        .pots
        .iter()
        .map(|pot| pot.capacity)
        .chain(shape.new.iter().map(|new| new.capacity))
        .map(Millilitres::value)
        .collect();
    let (least, most) = holds.iter().fold((f64::MAX, 0.0f64), |(least, most), ml| (least.min(*ml), most.max(*ml)));
    let ends = (Millilitres::new(least / BEYOND), Millilitres::new(most * BEYOND));
    let curve = shape.sizes.curve(ends.0, ends.1, PARTS, &shape.outlook, solids);
    let title = sentence_case(&say::sizes_title(shape.sizes.zone.code(), shape.sizes.class.name()));
    let chart = chart(&title, shape, &curve, solids, step, style)?;
    let amount = |aim: &Aim| {
        say::size_amount(
            style.mass(aim.wet, step),
            style.mass_number(aim.interval.0, step),
            style.mass(aim.interval.1, step),
        )
    };
    let new = shape.new.iter().map(|new| Line {
        label: say::form_and_capacity(&new.name, style.volume(new.capacity)),
        value: amount(&new.aim),
    });
    let mut lines: Vec<Line> = new.collect();
    if lines.is_empty() {
        let unit = style.volume.millilitres();
        let larger = Span::exactly(most * NEXT.0 / unit, most * NEXT.1 / unit).round_numbers(2);
        let next = larger.first().map(|size| Millilitres::new(size * unit));
        let next = next.and_then(|size| shape.sizes.at(size, &shape.outlook, solids));
        lines.extend(
            next.map(|size| Line { label: say::next_size(style.volume(size.capacity)), value: amount(&size.aim) }),
        );
    }
    Some(FindingsSection {
        title,
        words: say::sizes_rest_on(shape.pots.len()),
        lines,
        chart: Some(chart),
        answer: String::new(),
    })
}

fn chart(
    title: &str,
    shape: &ShapeSizes,
    curve: &[Size],
    solids: &Solids,
    step: Grams,
    style: &Style,
) -> Option<ChartView> {
    let (first, last) = (curve.first()?, curve.last()?);
    let (volume, mass) = (style.volume.millilitres(), style.mass.grams());
    let across = Span::exactly(first.capacity.value() / volume, last.capacity.value() / volume);
    let shown = curve
        .iter()
        .flat_map(|size| [size.aim.interval.0, size.aim.interval.1])
        .chain(shape.pots.iter().map(|pot| pot.wet));
    let up = Span::of(shown.map(|wet| wet.value() / mass), 1.0);
    let spot = |capacity: Millilitres, wet: Grams| ChartSpot {
        x: across.along(capacity.value() / volume),
        y: 1.0 - up.along(wet.value() / mass),
    };
    let line = |stroke, of: fn(&Aim) -> Grams| ChartLine {
        stroke,
        spots: curve.iter().map(|size| spot(size.capacity, of(&size.aim))).collect(),
    };
    let mark = |thickness| match thickness {
        Thickness::Thin => Mark::Thin,
        Thickness::Right => Mark::Right,
        Thickness::Thick => Mark::Thick,
    };
    let dots = shape.pots.iter().map(|pot| Dot { at: spot(pot.capacity, pot.wet), mark: mark(pot.thickness) });
    let mut legend: Vec<_> = Thickness::ALL
        .iter()
        .filter(|thickness| shape.pots.iter().any(|pot| pot.thickness == **thickness))
        .map(|thickness| marked(mark(*thickness), say::came_out(thickness.code())))
        .collect();
    legend.push(stroked(Stroke::Average, say::the_aim()));
    legend.push(stroked(Stroke::Edge, say::aim_may_be()));
    // Who listens hears the curve at the numbers below it.
    let at = across.round_numbers(MOST_NUMBERS).into_iter().filter_map(|number| {
        let size = shape.sizes.at(Millilitres::new(number * volume), &shape.outlook, solids)?;
        Some(say::size_at(style.volume(size.capacity), style.mass(size.aim.wet, step)))
    });
    let ticks = number_axis(up, style).into_iter().rev();
    Some(ChartView {
        title: title.to_owned(),
        words: say::sizes_words(title, at.collect::<Vec<_>>().join("; ")),
        across_title: say::holds(style.volume.symbol()),
        across: number_axis(across, style),
        up: ticks
            .map(|tick| AxisTick { at: 1.0 - tick.at, words: format!("{} {}", tick.words, style.mass.symbol()) })
            .collect(),
        bands: Vec::new(),
        lines: vec![
            line(Stroke::Edge, |aim| aim.interval.0),
            line(Stroke::Edge, |aim| aim.interval.1),
            line(Stroke::Average, |aim| aim.wet),
        ],
        dots: dots.collect(),
        legend,
    })
}
