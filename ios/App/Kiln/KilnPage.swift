import LaydownCore
import LaydownKit
import SwiftUI

/// The Kiln screen: what waits, the firings, and the way to a piece of old.
struct KilnPage: View {
    @State private var screen: KilnScreen

    init(frame: AppModel) {
        _screen = State(initialValue: KilnScreen(frame: frame))
    }

    var body: some View {
        ListPage(Words.tabKiln, refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    Sentence(view.waiting)
                    if !view.dryLabel.isEmpty {
                        GoRow(title: view.dryLabel, mark: "scalemass", place: .editor(.dryWeight))
                    }
                    if view.hasKiln {
                        GoRow(title: Words.beginFiring, mark: "plus", place: .editor(.firing))
                    } else {
                        GoRow(title: Words.addKiln, detail: Words.addKilnDetail, mark: "plus", place: .editor(.kiln))
                    }
                    GoRow(
                        title: Words.findPieces, detail: Words.findPiecesDetail, mark: "magnifyingglass", place: .find)
                }
                Section(Words.firings) {
                    if view.firings.isEmpty { Sentence(view.empty) }
                    ForEach(view.firings, id: \.id) { row in
                        GoRow(title: row.title, detail: row.detail, place: .firing(row.id))
                    }
                }
                Section {
                    ForEach(view.cautions, id: \.self) { NoteView(Note(tone: .warning, text: $0)) }
                }
            }
        }
    }
}
