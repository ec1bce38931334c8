import LaydownKit
import SwiftUI

/// The keys: big enough for a wet thumb.
struct KeypadView: View {
    let shape: BenchShape
    let decimal: String
    let pressed: @MainActor (Key) -> Void

    var body: some View {
        VStack(spacing: 4) {
            ForEach(shape.keys, id: \.self) { row in
                HStack(spacing: 4) {
                    ForEach(row, id: \.self) { key in
                        face(key)
                    }
                }
            }
        }
    }

    @ViewBuilder
    private func face(_ key: Key) -> some View {
        switch key {
        case .digit(let digit): button(Text(String(digit)), key)
        case .decimal: button(Text(decimal), key, quiet: true).accessibilityLabel(Words.keyPoint)
        case .delete, .clear:
            button(Text(Image(systemName: "delete.backward")), .delete, quiet: true)
                .accessibilityLabel(Words.keyDelete)
                .simultaneousGesture(LongPressGesture().onEnded { _ in pressed(.clear) })
        }
    }

    private func button(_ face: Text, _ key: Key, quiet: Bool = false) -> some View {
        Button {
            pressed(key)
        } label: {
            face
                .font(.system(.title, design: .rounded))
                .minimumScaleFactor(0.5)
                .foregroundStyle(Color.ink)
                .frame(maxWidth: .infinity, minHeight: 56, maxHeight: shape.isLying ? .infinity : 56)
                .card(ground: quiet ? .keyQuiet : .key)
        }
        .buttonStyle(.plain)
    }
}
