import LaydownCore
import LaydownKit
import SwiftUI

/// Where the reading lies: a line; on it, between two brackets, the accepted span with the aim as a tick; and the reading as a
/// pointer from above, with a bar as wide as the scale cannot tell. Told by shape, so that it reads without colour. A guess's
/// span has no brackets: nothing is accepted yet.
struct GaugeView: View {
    let gauge: LaydownCore.Gauge

    var body: some View {
        Canvas { context, size in
            let middle = size.height - 12
            let edge = 10.0
            func x(_ at: Double) -> CGFloat { edge + at * (size.width - 2 * edge) }
            func line(_ from: CGPoint, _ to: CGPoint, _ color: Color, _ width: CGFloat) {
                var path = Path()
                path.addLines([from, to])
                context.stroke(path, with: .color(color), style: StrokeStyle(lineWidth: width, lineCap: .round))
            }
            func level(_ from: Double, _ to: Double, _ color: Color, _ width: CGFloat) {
                line(CGPoint(x: x(from), y: middle), CGPoint(x: x(to), y: middle), color, width)
            }
            level(0, 1, .line, 4)
            let span = CGRect(x: x(gauge.low), y: middle - 8, width: x(gauge.high) - x(gauge.low), height: 16)
            context.fill(Path(roundedRect: span, cornerRadius: 3), with: .color(gauge.guess ? .line : .withinGround))
            if !gauge.guess {
                bracket(context, at: x(gauge.low), middle: middle, towards: 4)
                bracket(context, at: x(gauge.high), middle: middle, towards: -4)
            }
            let aim = x(gauge.aim)
            let aimColour: Color = gauge.guess ? .ink : .within
            line(CGPoint(x: aim, y: middle - 8), CGPoint(x: aim, y: middle + 8), aimColour, 2)
            guard let reading = gauge.reading else { return }
            level(max(reading - gauge.blur, 0), min(reading + gauge.blur, 1), .quiet, 3)
            let at = x(reading)
            var pointer = Path()
            pointer.addLines([
                CGPoint(x: at, y: middle + 1), CGPoint(x: at - 9, y: middle - 16), CGPoint(x: at + 9, y: middle - 16),
            ])
            context.fill(pointer, with: .color(.ink))
        }
        .frame(height: 32)
        .accessibilityElement()
        .accessibilityLabel(words)
    }

    private func bracket(_ context: GraphicsContext, at x: CGFloat, middle: CGFloat, towards: CGFloat) {
        var path = Path()
        path.addLines([
            CGPoint(x: x + towards, y: middle - 9), CGPoint(x: x, y: middle - 9), CGPoint(x: x, y: middle + 9),
            CGPoint(x: x + towards, y: middle + 9),
        ])
        let style = StrokeStyle(lineWidth: 3, lineCap: .round, lineJoin: .round)
        context.stroke(path, with: .color(.within), style: style)
    }

    private var words: String {
        guard let reading = gauge.reading else { return Words.gaugeNone }
        if gauge.guess { return Words.gaugeGuess }
        if reading + gauge.blur < gauge.low { return Words.gaugeBelow }
        if reading - gauge.blur > gauge.high { return Words.gaugeAbove }
        let inside = reading - gauge.blur >= gauge.low && reading + gauge.blur <= gauge.high
        return inside ? Words.gaugeInside : Words.gaugeEdge
    }
}
