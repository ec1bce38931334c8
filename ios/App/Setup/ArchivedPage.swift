import LaydownCore
import LaydownKit
import SwiftUI

/// What was archived or removed, each with the way back.
struct ArchivedPage: View {
    @State private var screen: ArchivedScreen
    @State private var asked: Asked?

    private struct Asked: Identifiable {
        let row: ArchivedRow
        var id: String { row.id }
    }

    init(frame: AppModel) {
        _screen = State(initialValue: frame.screen("archived") { ArchivedScreen(frame: frame) })
    }

    var body: some View {
        ListPage(Words.archived, refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    Sentence(view.nothing)
                    Trouble(sentence: screen.refusal)
                }
                ForEach(view.sections, id: \.title) { section in
                    Section(section.title) {
                        ForEach(section.rows, id: \.id) { row in
                            TapRow(title: row.title, detail: row.detail) { asked = Asked(row: row) }
                        }
                    }
                }
            }
        }
        .sheet(item: $asked) { asked in
            Chooser(title: asked.row.title, rows: [way]) { _ in screen.bringBack(asked.row) }
        }
    }

    private var way: Row { Row(id: "back", title: Words.bringBack, detail: "", chosen: false, outline: []) }
}
