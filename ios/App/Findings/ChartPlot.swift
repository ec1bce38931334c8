import LaydownCore
import LaydownKit
import SwiftUI

/// A chart of the core's, scaled to where it stands, with what stands for what below it. Whoever listens hears its words.
struct ChartPlot: View {
    let chart: ChartView
    /// A line of the chart's words, which grow with the person's letters as all others do.
    @ScaledMetric(relativeTo: .caption) private var line = 16.0

    private static let margin = 8.0
    private static let tall = 176.0
    private static let tick = 4.0
    private static let gap = 4.0

    var body: some View {
        VStack(alignment: .leading, spacing: 8) {
            Canvas { context, size in paint(context, size) }
                // Room for the numbers and for what they are, each on a line of its own.
                .frame(height: ChartPlot.margin + ChartPlot.tall + ChartPlot.tick + 2 * line + ChartPlot.gap)
                .accessibilityElement()
                .accessibilityLabel(chart.words)
                .accessibilityAddTraits(.isImage)
            // The chart's words say it already.
            legend.accessibilityHidden(true)
        }
        .padding(.vertical, 4)
    }

    private var legend: some View {
        Flow(gap: 12) {
            ForEach(Array(chart.legend.enumerated()), id: \.offset) { _, entry in
                HStack(spacing: 6) {
                    ChartKey(entry: entry)
                    Text(entry.words).font(.caption).foregroundStyle(Color.ink)
                }
            }
        }
    }

    private func paint(_ context: GraphicsContext, _ size: CGSize) {
        let painter = ChartPainter(context: context)
        let ups = chart.up.map { (at: $0.at, words: context.resolve(words($0.words))) }
        let left = (ups.map { $0.words.measure(in: size).width }.max() ?? 0) + ChartPlot.tick + ChartPlot.gap
        let (top, right) = (ChartPlot.margin, size.width - ChartPlot.margin)
        let bottom = top + ChartPlot.tall
        func spot(_ at: ChartSpot) -> CGPoint {
            CGPoint(x: left + (right - left) * at.x, y: top + (bottom - top) * at.y)
        }

        for band in chart.bands { painter.band(from: spot(band.from), to: spot(band.to)) }
        painter.axis([CGPoint(x: left, y: top), CGPoint(x: left, y: bottom), CGPoint(x: right, y: bottom)])
        for up in ups {
            let y = top + (bottom - top) * up.at
            painter.axis([CGPoint(x: left - ChartPlot.tick, y: y), CGPoint(x: left, y: y)])
            context.draw(
                up.words, at: CGPoint(x: left - ChartPlot.tick - ChartPlot.gap, y: y), anchor: .trailing)
        }
        across(painter, from: left, to: right, below: bottom, within: size)
        let title = CGPoint(x: right, y: bottom + ChartPlot.tick + ChartPlot.gap + line)
        context.draw(context.resolve(words(chart.acrossTitle)), at: title, anchor: .topTrailing)
        for line in chart.lines { painter.line(line.stroke, line.spots.map(spot)) }
        for dot in chart.dots { painter.mark(dot.mark, at: spot(dot.at)) }
    }

    /// The words stay within the view, and those that would run into the ones before them are left out.
    private func across(
        _ painter: ChartPainter, from left: CGFloat, to right: CGFloat, below bottom: CGFloat, within size: CGSize
    ) {
        var free: CGFloat = 0
        for tick in chart.across {
            let x = left + (right - left) * tick.at
            painter.axis([CGPoint(x: x, y: bottom), CGPoint(x: x, y: bottom + ChartPlot.tick)])
            let text = painter.context.resolve(words(tick.words))
            let wide = text.measure(in: size).width
            let start = min(max(x - wide / 2, 0), max(size.width - wide, 0))
            if start < free { continue }
            let at = CGPoint(x: start, y: bottom + ChartPlot.tick + ChartPlot.gap)
            painter.context.draw(text, at: at, anchor: .topLeading)
            free = start + wide + ChartPlot.gap
        }
    }

    private func words(_ words: String) -> Text {
        Text(words).font(.caption).foregroundStyle(Color.quiet)
    }
}

/// What stands for something in a chart, by itself.
private struct ChartKey: View {
    let entry: LegendEntry

    var body: some View {
        Canvas { context, size in
            let painter = ChartPainter(context: context)
            let (edge, middle) = (3.0, size.height / 2)
            if let mark = entry.mark {
                painter.mark(mark, at: CGPoint(x: size.width / 2, y: middle))
            } else if let stroke = entry.stroke {
                painter.line(stroke, [CGPoint(x: edge, y: middle), CGPoint(x: size.width - edge, y: middle)])
            } else {
                painter.band(
                    from: CGPoint(x: edge, y: edge), to: CGPoint(x: size.width - edge, y: size.height - edge))
            }
        }
        .frame(width: 28, height: 18)
    }
}

/// How the parts of a chart are painted, in the chart and in what stands for what.
private struct ChartPainter {
    let context: GraphicsContext

    private static let size = 5.5

    func band(from: CGPoint, to: CGPoint) {
        var path = Path()
        path.addLines([from, CGPoint(x: to.x, y: from.y), to, CGPoint(x: from.x, y: to.y)])
        context.fill(path, with: .color(.withinGround))
        // Its ground alone is too faint to be seen by everyone.
        path.closeSubpath()
        context.stroke(path, with: .color(.within), style: StrokeStyle(lineWidth: 1))
    }

    func axis(_ points: [CGPoint]) {
        draw(points, .line, StrokeStyle(lineWidth: 2, lineCap: .round, lineJoin: .round))
    }

    func line(_ stroke: LaydownCore.Stroke, _ points: [CGPoint]) {
        switch stroke {
        case .aim: draw(points, .ink, StrokeStyle(lineWidth: 2, lineCap: .round, lineJoin: .round))
        case .best: draw(points, .accent, StrokeStyle(lineWidth: 2.5, lineCap: .round, dash: [7, 7]))
        case .average: draw(points, .accent, StrokeStyle(lineWidth: 3, lineCap: .round, lineJoin: .round))
        case .edge: draw(points, .accent, StrokeStyle(lineWidth: 2, lineCap: .round, dash: [2, 5]))
        }
    }

    /// Told apart by shape; an edge in the colour of the ground keeps two that touch from running together.
    func mark(_ mark: Mark, at: CGPoint) {
        let size = ChartPainter.size
        switch mark {
        case .thin: filled(triangle(at, towards: 1), .shortOf)
        case .right: filled(disc(at, radius: size), .within)
        case .thick: filled(triangle(at, towards: -1), .over)
        case .coat: filled(disc(at, radius: size * 0.6), .quiet)
        case .outlier:
            let style = StrokeStyle(lineWidth: 2.5, lineCap: .round)
            for down in [size, -size] {
                draw([CGPoint(x: at.x - size, y: at.y - down), CGPoint(x: at.x + size, y: at.y + down)], .over, style)
            }
        }
    }

    /// A triangle whose point is below (`towards` 1) or above (−1) its base.
    private func triangle(_ at: CGPoint, towards: CGFloat) -> Path {
        let size = ChartPainter.size
        var path = Path()
        path.addLines([
            CGPoint(x: at.x, y: at.y + size * 1.2 * towards),
            CGPoint(x: at.x - size * 1.15, y: at.y - size * 0.8 * towards),
            CGPoint(x: at.x + size * 1.15, y: at.y - size * 0.8 * towards),
        ])
        path.closeSubpath()
        return path
    }

    private func disc(_ at: CGPoint, radius: CGFloat) -> Path {
        Path(ellipseIn: CGRect(x: at.x - radius, y: at.y - radius, width: 2 * radius, height: 2 * radius))
    }

    private func filled(_ path: Path, _ ink: Color) {
        context.fill(path, with: .color(ink))
        context.stroke(path, with: .color(.surface), lineWidth: 1)
    }

    private func draw(_ points: [CGPoint], _ ink: Color, _ style: StrokeStyle) {
        var path = Path()
        path.addLines(points)
        context.stroke(path, with: .color(ink), style: style)
    }
}
