import LaydownCore
import LaydownKit
import SwiftUI

/// Why a target is what it is: each piece of evidence with its weight, which opens, and can be left out.
struct WhyPage: View {
    @State private var screen: WhyScreen

    init(frame: AppModel, target: String) {
        _screen = State(initialValue: frame.screen("why \(target)") { WhyScreen(frame: frame, target: target) })
    }

    var body: some View {
        ListPage(screen.view?.title ?? "", refresh: screen.refresh) {
            if let view = screen.view {
                Section { ForEach(view.answer, id: \.self) { Sentence($0) } }
                if !view.notes.isEmpty { Section { NotesView(notes: view.notes) } }
                ForEach(Array(view.rows.enumerated()), id: \.offset) { item in evidence(item.element) }
            }
        }
    }

    private func evidence(_ row: EvidenceRow) -> some View {
        Section {
            if row.piece.isEmpty {
                Sentence(title(of: row))
                Sentence(row.detail)
            } else {
                if !row.photo.isEmpty {
                    StoredPicture(file: row.photo, name: row.title, side: 120).frame(height: 120)
                }
                GoRow(title: title(of: row), detail: row.detail, place: .piece(row.piece))
            }
            if !row.toggle.isEmpty { Button(row.toggle) { screen.toggle(row) }.frame(minHeight: 48) }
        }
    }

    private func title(of row: EvidenceRow) -> String {
        [row.weight, row.title].filter { !$0.isEmpty }.joined(separator: " · ")
    }
}
