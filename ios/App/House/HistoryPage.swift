import LaydownCore
import LaydownKit
import SwiftUI

/// What was done lately, or all that was ever said of one thing; each can be taken back, and done again.
struct HistoryPage: View {
    @Environment(Frame.self) private var frame
    @Environment(\.go) private var go
    @State private var screen: HistoryScreen
    @State private var asked: Asked?

    /// What it is asked about: what to do with it.
    private struct Asked: Identifiable {
        let doing: Doing
        var id: String { doing.token + doing.thing }
    }

    init(frame: Frame, thing: String) {
        _screen = State(initialValue: HistoryScreen(frame: frame, thing: thing))
    }

    var body: some View {
        ListPage(screen.view?.title ?? "", offersLately: false, refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    Sentence(view.intro)
                    Trouble(sentence: screen.refusal)
                }
                Section {
                    ForEach(Array(view.doings.enumerated()), id: \.offset) { row($0.element) }
                }
            }
        }
        .sheet(item: $asked) { asked in
            Chooser(title: asked.doing.title, rows: screen.ways(about: asked.doing)) { act($0, on: asked.doing) }
        }
    }

    @ViewBuilder
    private func row(_ doing: Doing) -> some View {
        if screen.ways(about: doing).isEmpty {
            StillRow(title: doing.title, detail: doing.detail)
        } else {
            TapRow(title: doing.title, detail: doing.detail, mark: doing.takenBack ? "xmark" : "chevron.forward") {
                asked = Asked(doing: doing)
            }
        }
    }

    private func act(_ way: Row, on doing: Doing) {
        if way.id == HistoryScreen.Way.turn.rawValue {
            screen.turn(doing)
        } else {
            frame.offer.clear()
            go(.history(doing.thing))
        }
    }
}
