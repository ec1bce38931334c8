import LaydownCore
import LaydownKit
import SwiftUI

/// Recent changes, or all that was ever said of one thing; each can be undone, and done again.
struct HistoryPage: View {
    @Environment(AppModel.self) private var frame
    @Environment(\.go) private var go
    @State private var screen: HistoryScreen
    @State private var asked: Asked?

    /// What it is asked about: what to do with it.
    private struct Asked: Identifiable {
        let entry: HistoryEntry
        var id: String { entry.token + entry.thing }
    }

    init(frame: AppModel, thing: String) {
        _screen = State(initialValue: frame.screen("history \(thing)") { HistoryScreen(frame: frame, thing: thing) })
    }

    var body: some View {
        ListPage(screen.view?.title ?? "", offersRecent: false, refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    Sentence(view.intro)
                    Trouble(sentence: screen.refusal)
                }
                Section {
                    ForEach(Array(view.recentChanges.enumerated()), id: \.offset) { row($0.element) }
                }
            }
        }
        .sheet(item: $asked) { asked in
            Chooser(title: asked.entry.title, rows: screen.ways(about: asked.entry)) { act($0, on: asked.entry) }
        }
    }

    @ViewBuilder
    private func row(_ entry: HistoryEntry) -> some View {
        if screen.ways(about: entry).isEmpty {
            StillRow(title: entry.title, detail: entry.detail)
        } else {
            TapRow(title: entry.title, detail: entry.detail, mark: entry.isUndone ? "xmark" : "chevron.forward") {
                asked = Asked(entry: entry)
            }
        }
    }

    private func act(_ way: Row, on entry: HistoryEntry) {
        if way.id == HistoryScreen.WeighMode.toggleUndo.rawValue {
            screen.toggleUndo(entry)
        } else {
            frame.offer.clear()
            go(.history(entry.thing))
        }
    }
}
