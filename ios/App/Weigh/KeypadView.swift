import LaydownKit
import SwiftUI

/// The keys: big enough for a wet thumb.
struct KeypadView: View {
    @Environment(\.verticalSizeClass) private var height
    @ScaledMetric(relativeTo: .title) private var tall = 56.0
    let decimal: String
    let pressed: @MainActor (Key) -> Void

    var body: some View {
        Grid(horizontalSpacing: 8, verticalSpacing: 8) {
            ForEach([[1, 2, 3], [4, 5, 6], [7, 8, 9]], id: \.self) { digits in
                GridRow {
                    ForEach(digits, id: \.self) { digit in key(Text(String(digit)), .digit(digit)) }
                }
            }
            GridRow {
                key(Text(decimal), .decimal, quiet: true).accessibilityLabel(Words.keyPoint)
                key(Text("0"), .digit(0))
                key(Text(Image(systemName: "delete.backward")), .delete, quiet: true)
                    .accessibilityLabel(Words.keyDelete)
                    .simultaneousGesture(LongPressGesture().onEnded { _ in pressed(.clear) })
            }
        }
    }

    /// The largest letters would leave no room for what is read; nor is there much when a phone lies on its side.
    private var keyHeight: CGFloat { height == .compact ? 44 : min(tall, 84) }

    private func key(_ face: Text, _ key: Key, quiet: Bool = false) -> some View {
        Button {
            pressed(key)
        } label: {
            face
                .font(.system(.title, design: .rounded))
                .foregroundStyle(Color.ink)
                .frame(maxWidth: .infinity, minHeight: keyHeight)
                .background(quiet ? Color.keyQuiet : Color.key, in: RoundedRectangle(cornerRadius: 12))
        }
        .buttonStyle(.plain)
    }
}
