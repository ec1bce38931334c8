import LaydownCore
import SwiftUI

/// A verdict as a shape that is known at arm's length: within is a filled disc with a check on it; short an arrow that falls
/// away under the line; over an arrow that rises above it; cannot tell a broken ring with a wave; a guess an open diamond
/// round a dot; probably within an open ring with a check in it.
struct VerdictMark: View {
    let kind: VerdictKind

    var body: some View {
        Canvas { context, size in
            let side = min(size.width, size.height)
            var context = context
            context.translateBy(x: (size.width - side) / 2, y: (size.height - side) / 2)
            // Drawn on a square of 48.
            context.scaleBy(x: side / 48, y: side / 48)
            switch kind {
            case .within: within(context)
            case .short: arrow(context, up: false)
            case .over: arrow(context, up: true)
            case .cannotTell: cannotTell(context)
            case .guess: guess(context)
            case .probablyWithin: probablyWithin(context)
            }
        }
        .accessibilityHidden(true)
    }

    private func style(_ width: CGFloat) -> StrokeStyle {
        StrokeStyle(lineWidth: width, lineCap: .round, lineJoin: .round)
    }

    private func within(_ context: GraphicsContext) {
        context.fill(Path(ellipseIn: CGRect(x: 4, y: 4, width: 40, height: 40)), with: .color(kind.ink))
        var check = Path()
        check.addLines([CGPoint(x: 14.5, y: 24.5), CGPoint(x: 21.5, y: 31.5), CGPoint(x: 33.5, y: 17.5)])
        context.stroke(check, with: .color(.surface), style: style(5))
    }

    /// As within, but the disc is open.
    private func probablyWithin(_ context: GraphicsContext) {
        let disc = Path(ellipseIn: CGRect(x: 5, y: 5, width: 38, height: 38))
        context.stroke(disc, with: .color(kind.ink), style: style(4.5))
        var check = Path()
        check.addLines([CGPoint(x: 14.5, y: 24.5), CGPoint(x: 21.5, y: 31.5), CGPoint(x: 33.5, y: 17.5)])
        context.stroke(check, with: .color(kind.ink), style: style(4.5))
    }

    /// An arrow away from the line that the coat should have met.
    private func arrow(_ context: GraphicsContext, up: Bool) {
        let (tip, wings, tail, level): (CGFloat, CGFloat, CGFloat, CGFloat) = up ? (4, 22, 34, 42) : (44, 26, 14, 6)
        var path = Path()
        path.addLines([
            CGPoint(x: 24, y: tip), CGPoint(x: 42, y: wings), CGPoint(x: 31, y: wings), CGPoint(x: 31, y: tail),
            CGPoint(x: 17, y: tail), CGPoint(x: 17, y: wings), CGPoint(x: 6, y: wings),
        ])
        context.fill(path, with: .color(kind.ink))
        var line = Path()
        line.addLines([CGPoint(x: 10, y: level), CGPoint(x: 38, y: level)])
        context.stroke(line, with: .color(kind.ink), style: style(5))
    }

    private func cannotTell(_ context: GraphicsContext) {
        for start in [20.0, 110, 200, 290] {
            var arc = Path()
            arc.addArc(
                center: CGPoint(x: 24, y: 24), radius: 19, startAngle: .degrees(start), endAngle: .degrees(start + 50),
                clockwise: false)
            context.stroke(arc, with: .color(kind.ink), style: style(4.5))
        }
        var wave = Path()
        wave.move(to: CGPoint(x: 14, y: 26))
        wave.addCurve(
            to: CGPoint(x: 24, y: 24), control1: CGPoint(x: 18, y: 17), control2: CGPoint(x: 22, y: 20))
        wave.addCurve(
            to: CGPoint(x: 34, y: 22), control1: CGPoint(x: 26, y: 28), control2: CGPoint(x: 30, y: 31))
        context.stroke(wave, with: .color(kind.ink), style: style(4.5))
    }

    private func guess(_ context: GraphicsContext) {
        var diamond = Path()
        diamond.addLines([
            CGPoint(x: 24, y: 5), CGPoint(x: 43, y: 24), CGPoint(x: 24, y: 43), CGPoint(x: 5, y: 24),
        ])
        diamond.closeSubpath()
        context.stroke(diamond, with: .color(kind.ink), style: style(4.5))
        context.fill(Path(ellipseIn: CGRect(x: 19, y: 19, width: 10, height: 10)), with: .color(kind.ink))
    }
}

extension VerdictKind {
    /// The colour of a verdict's words and mark.
    var ink: Color {
        switch self {
        case .within, .probablyWithin: .within
        case .short: .shortOf
        case .over: .over
        case .cannotTell: .cannotTell
        case .guess: .ink
        }
    }

    /// The colour of the card that a verdict lies on.
    var ground: Color {
        switch self {
        case .within: .withinGround
        case .short: .shortOfGround
        case .over: .overGround
        case .cannotTell: .cannotTellGround
        case .guess, .probablyWithin: .keyQuiet
        }
    }
}
