import LaydownCore
import SwiftUI
import UIKit

/// A drawing: its shapes in order, a photograph under them if there is one, and the grips over them.
struct DrawingView: View {
    let drawing: Drawing
    /// The key of the grip that stands out.
    let chosen: String?
    /// Where that grip is shown while a finger carries it; nil to show it at its own place.
    let carried: Spot?

    private static let hatch = 7.0
    private static let mostLabel: CGFloat = 14
    private static let leastLabel: CGFloat = 7

    var body: some View {
        ZStack {
            if isOnPhoto { StoredPicture(file: drawing.photo, name: drawing.words, side: 800) }
            Canvas { context, size in
                for shape in drawing.shapes { paint(shape, context, size.width) }
                // The one that stands out lies on top of its neighbours.
                for grip in drawing.grips where grip.key != chosen { paint(grip, context, size.width) }
                for grip in drawing.grips where grip.key == chosen { paint(grip, context, size.width) }
            }
            .accessibilityLabel(drawing.words)
        }
        .aspectRatio(1 / max(drawing.tall, 0.01), contentMode: .fit)
    }

    private var isOnPhoto: Bool { !drawing.photo.isEmpty }

    private func path(_ spots: [Spot], _ width: CGFloat) -> Path {
        var path = Path()
        path.addLines(spots.map { CGPoint(x: $0.x * width, y: $0.y * width) })
        return path
    }

    private func circle(_ shape: LaydownCore.Shape, _ width: CGFloat) -> Path {
        // The line of a circle lies inside it, or the edge of the drawing would cut it.
        let radius = shape.radius * width - (shape.ink == .line ? 1 : 0)
        return shape.spots.first.map { disc(CGPoint(x: $0.x * width, y: $0.y * width), radius) } ?? Path()
    }

    private func style(_ width: CGFloat, dash: [CGFloat] = []) -> StrokeStyle {
        StrokeStyle(lineWidth: width, lineCap: .round, lineJoin: .round, dash: dash)
    }

    private func paint(_ shape: LaydownCore.Shape, _ context: GraphicsContext, _ width: CGFloat) {
        var path = shape.radius > 0 ? circle(shape, width) : path(shape.spots, width)
        switch shape.ink {
        case .clay, .bisque, .glazed, .overlap:
            path.closeSubpath()
            context.fill(path, with: .color(color(of: shape.ink)))
            if shape.ink == .overlap { hatch(path, context) }
        case .line:
            if isOnPhoto { seen(path, context) } else { context.stroke(path, with: .color(.ink), style: style(2)) }
        case .guide:
            if isOnPhoto { context.stroke(path, with: .color(.seenEdge), style: style(2.5)) }
            context.stroke(path, with: .color(isOnPhoto ? .seen : .quiet), style: style(1, dash: [6, 5]))
        case .seen:
            seen(path, context)
        }
    }

    private func color(of ink: Ink) -> Color {
        switch ink {
        case .clay: .clay
        case .bisque: .bisque
        case .glazed, .overlap: .glazed
        case .line: .ink
        case .guide: .quiet
        case .seen: .seen
        }
    }

    /// Where two glazes lie, lines say so besides the colour.
    private func hatch(_ area: Path, _ context: GraphicsContext) {
        var context = context
        context.clip(to: area)
        let box = area.boundingRect
        var lines = Path()
        for x in stride(from: box.minX - box.height, to: box.maxX, by: DrawingView.hatch) {
            lines.move(to: CGPoint(x: x, y: box.maxY))
            lines.addLine(to: CGPoint(x: x + box.height, y: box.minY))
        }
        context.stroke(lines, with: .color(.overlap), style: style(1.5))
    }

    /// A bright line with a dark edge can be seen on any picture.
    private func seen(_ path: Path, _ context: GraphicsContext) {
        context.stroke(path, with: .color(.seenEdge.opacity(0.8)), style: style(5.5))
        context.stroke(path, with: .color(.seen), style: style(2.5))
    }

    private func disc(_ at: CGPoint, _ radius: CGFloat) -> Path {
        Path(ellipseIn: CGRect(x: at.x - radius, y: at.y - radius, width: 2 * radius, height: 2 * radius))
    }

    /// A piece seen from above, with its code in it.
    private func piece(_ grip: Grip, _ at: CGPoint, _ radius: CGFloat, _ context: GraphicsContext) {
        let stands = grip.key == chosen
        let edge = disc(at, radius)
        context.fill(edge, with: .color(stands ? .accentGround : .glazed))
        context.stroke(
            edge, with: .color(grip.warns ? .warning : stands ? .accent : .ink), style: style(grip.warns ? 3.5 : 2))
        // As large as fits; smaller than can be read, the circle alone is clearer.
        for size in stride(from: DrawingView.mostLabel, through: DrawingView.leastLabel, by: -1) {
            let label = context.resolve(Text(grip.label).font(.system(size: size, weight: .bold)))
            let fits = label.measure(in: CGSize(width: 1000, height: 1000)).width <= 2 * radius - 4
            if fits { return context.draw(label, at: at) }
        }
    }

    private func paint(_ grip: Grip, _ context: GraphicsContext, _ width: CGFloat) {
        let stands = grip.key == chosen
        let spot = stands ? carried ?? grip.at : grip.at
        let at = CGPoint(x: spot.x * width, y: spot.y * width)
        if grip.radius > 0 { return piece(grip, at, grip.radius * width, context) }
        let out: CGFloat = stands ? 1.5 : 1
        if !grip.line.isEmpty {
            context.stroke(path(grip.line, width), with: .color(.accent), style: style(2))
            // Wider than high: it goes up and down, and is no point.
            let box = CGRect(x: at.x - 15 * out, y: at.y - 7 * out, width: 30 * out, height: 14 * out)
            context.fill(Path(roundedRect: box, cornerRadius: 7 * out), with: .color(.surface))
            context.fill(Path(roundedRect: box.insetBy(dx: 2, dy: 2), cornerRadius: 6 * out), with: .color(.accent))
        } else if isOnPhoto {
            // Hollow, so that what it points at is seen.
            seen(disc(at, 10.5 * out), context)
            context.fill(disc(at, 3), with: .color(.seenEdge))
            context.fill(disc(at, 1.5), with: .color(.seen))
        } else {
            context.fill(disc(at, 7 * out + 2), with: .color(.surface))
            context.fill(disc(at, 7 * out), with: .color(.accent))
        }
    }
}
