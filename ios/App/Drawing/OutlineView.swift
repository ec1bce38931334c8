import LaydownCore
import SwiftUI

/// A form's outline, drawn whole from its right half: filled quietly, with its wall as a line and the rim open.
struct OutlineView: View {
    let outline: [LaydownCore.Point]

    var body: some View {
        Canvas { context, size in
            guard let widest = outline.map(\.radius).max(), let tallest = outline.map(\.height).max(), widest > 0,
                tallest > 0
            else { return }
            // One scale for both ways, so that a plate stays flat and a vase tall.
            let edge = 2.0
            let scale = min((size.width - 2 * edge) / (2 * widest), (size.height - 2 * edge) / tallest)
            let axis = size.width / 2
            let foot = (size.height + tallest * scale) / 2
            let left = outline.reversed().map { CGPoint(x: axis - $0.radius * scale, y: foot - $0.height * scale) }
            let right = outline.map { CGPoint(x: axis + $0.radius * scale, y: foot - $0.height * scale) }
            var path = Path()
            path.addLines(left + right)
            context.fill(path, with: .color(.bisque))
            context.stroke(
                path, with: .color(.ink), style: StrokeStyle(lineWidth: 2, lineCap: .round, lineJoin: .round))
        }
        .accessibilityHidden(true)
    }
}
