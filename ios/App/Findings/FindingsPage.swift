import LaydownKit
import SwiftUI

/// The Findings screen: each glaze with what its fired pots say, in a sentence.
struct FindingsPage: View {
    @State private var screen: FindingsScreen

    init(frame: AppModel) {
        _screen = State(initialValue: FindingsScreen(frame: frame))
    }

    var body: some View {
        ListPage(Words.tabFindings, refresh: screen.refresh) {
            if let view = screen.view {
                if !view.empty.isEmpty { Section { Sentence(view.empty) } }
                if !view.glazes.isEmpty {
                    Section {
                        ForEach(view.glazes, id: \.id) { row in
                            GoRow(title: row.title, detail: row.detail, place: .glazeFindings(row.id))
                        }
                    }
                }
                if !view.notes.isEmpty { Section { NotesView(notes: view.notes) } }
            }
        }
    }
}
