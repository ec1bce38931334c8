import LaydownCore
import LaydownKit
import SwiftUI

/// One bucket: its SG, what that means, its notebook, and what one does to it.
struct BucketPage: View {
    @State private var screen: BucketScreen

    init(frame: AppModel, id: String) {
        _screen = State(initialValue: BucketScreen(frame: frame, id: id))
    }

    var body: some View {
        ListPage(screen.view?.glaze ?? "", refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    VStack(alignment: .leading, spacing: 4) {
                        Text(view.name).foregroundStyle(Color.quiet)
                        Text(view.sg).font(.system(.largeTitle, design: .rounded)).foregroundStyle(Color.ink)
                        Text(view.since).foregroundStyle(Color.quiet)
                    }
                    .accessibilityElement(children: .combine)
                    ForEach(screen.ways, id: \.label) { GoRow(title: $0.label, place: $0.place) }
                }
                Section {
                    NotesView(notes: view.notes)
                    LinesView(lines: view.lines)
                }
                Section(Words.notebook) {
                    GoRow(title: Words.noteBucket, mark: "plus", place: .editor(.bucketEntry, subject: screen.id))
                    ForEach(view.notebook, id: \.id) { row in
                        GoRow(title: row.what, detail: detail(row), place: .editor(row.kind, id: row.id))
                    }
                }
                Section {
                    GoRow(title: Words.mixLot, mark: "plus", place: .editor(.mix, subject: view.glazeId))
                    GoRow(title: Words.anotherBucket, mark: "plus", place: .editor(.bucket, subject: view.glazeId))
                }
            }
        }
    }

    private func detail(_ row: NotebookRow) -> String {
        [row.when, row.detail].filter { !$0.isEmpty }.joined(separator: " · ")
    }
}
