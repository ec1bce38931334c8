import LaydownCore
import LaydownKit
import SwiftUI

/// Two pieces side by side.
struct ComparePage: View {
    @State private var screen: CompareScreen
    @State private var isChoosing = false

    init(frame: AppModel, piece: String) {
        _screen = State(initialValue: CompareScreen(frame: frame, piece: piece))
    }

    var body: some View {
        ListPage(Words.compare, refresh: screen.refresh) {
            if let view = screen.view {
                Section(Words.beside) {
                    TapRow(title: view.rightTitle, mark: "chevron.down") { isChoosing = true }
                }
                Section {
                    HStack(alignment: .top, spacing: 12) {
                        head(view.leftTitle, view.leftPhoto, Words.leftPhoto)
                        head(view.rightTitle, view.rightPhoto, Words.rightPhoto)
                    }
                    ForEach(Array(view.lines.enumerated()), id: \.offset) { CompareRow(line: $0.element) }
                }
            }
        }
        .sheet(isPresented: $isChoosing) {
            Chooser(title: Words.compareWith, rows: screen.view?.others ?? []) { screen.compare(with: $0) }
        }
    }

    private func head(_ title: String, _ photo: String, _ name: String) -> some View {
        VStack {
            if !photo.isEmpty { StoredPicture(file: photo, name: name, side: 400) }
            Text(title).font(.headline).foregroundStyle(Color.ink)
        }
        .frame(maxWidth: .infinity)
    }
}

private struct CompareRow: View {
    let line: CompareLine

    var body: some View {
        VStack(alignment: .leading, spacing: 2) {
            Text(line.differs ? Words.differs(line.label) : line.label)
                .font(.subheadline)
                .foregroundStyle(Color.quiet)
            HStack(alignment: .top, spacing: 12) {
                ForEach(Array([line.left, line.right].enumerated()), id: \.offset) { _, words in
                    Text(words).frame(maxWidth: .infinity, alignment: .leading)
                }
            }
            .fontWeight(line.differs ? .bold : .regular)
            .foregroundStyle(Color.ink)
        }
        .accessibilityElement(children: .combine)
    }
}
