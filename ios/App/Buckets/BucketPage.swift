import LaydownCore
import LaydownKit
import SwiftUI

/// One bucket: its SG, what that means, its checks, and what one does to it.
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
                if !view.checks.isEmpty {
                    Section(Words.checks) { LinesView(lines: view.checks.map(line)) }
                }
                Section {
                    GoRow(title: Words.anotherBucket, mark: "plus", place: .editor(.bucket, subject: view.glazeId))
                }
            }
        }
    }

    private func line(_ check: CheckRow) -> Line {
        Line(label: check.when, value: [check.sg, check.flow].filter { !$0.isEmpty }.joined(separator: " · "))
    }
}
