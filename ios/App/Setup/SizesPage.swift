import LaydownCore
import LaydownKit
import SwiftUI

/// What every form should take, going by one amount that is known to be right.
struct SizesPage: View {
    @State private var screen: SizesScreen
    @State private var isChoosing = false

    init(frame: AppModel) {
        _screen = State(initialValue: SizesScreen(frame: frame))
    }

    var body: some View {
        ListPage(Words.sizes, refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    if let chosen = view.known.first(where: \.chosen) {
                        Text(Words.known).font(.subheadline).foregroundStyle(Color.quiet)
                        TapRow(
                            title: chosen.title, detail: chosen.detail, outline: chosen.outline, mark: "chevron.down"
                        ) { isChoosing = true }
                    }
                    Sentence(view.intro)
                }
                Section {
                    ForEach(view.sizes, id: \.form) { SizeView(size: $0) }
                }
            }
        }
        .sheet(isPresented: $isChoosing) {
            Chooser(title: Words.chooseKnown, rows: screen.view?.known ?? []) { screen.go(by: $0) }
        }
    }
}

private struct SizeView: View {
    let size: SizeRow

    var body: some View {
        HStack(spacing: 12) {
            OutlineView(outline: size.outline).frame(width: 56, height: 56)
            VStack(alignment: .leading, spacing: 2) {
                HStack(alignment: .firstTextBaseline) {
                    Text(size.title).font(.headline)
                    Spacer()
                    Text(size.wet).font(.title3.monospacedDigit())
                }
                .foregroundStyle(Color.ink)
                Text(Words.rightIs(size.span)).font(.subheadline).foregroundStyle(Color.quiet)
                Text(size.reason).font(.subheadline).foregroundStyle(Color.quiet)
            }
        }
        .accessibilityElement(children: .combine)
    }
}
