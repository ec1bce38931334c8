import LaydownCore
import LaydownKit
import SwiftUI

/// The life of one piece: its coats, its firings, its photographs.
struct PiecePage: View {
    @State private var screen: PieceScreen

    init(frame: AppModel, id: String) {
        _screen = State(initialValue: frame.screen("piece \(id)") { PieceScreen(frame: frame, id: id) })
    }

    var body: some View {
        ListPage(screen.view?.title ?? "", refresh: screen.refresh) {
            if let view = screen.view {
                if !view.photos.isEmpty {
                    Section { PhotoStrip(photos: view.photos) { screen.takeOff($0) } }
                }
                Section(Words.asWeighed) { LinesView(lines: view.coats) }
                Section(Words.fired) {
                    if view.firings.isEmpty { Sentence(view.unfired) }
                    ForEach(view.firings, id: \.id) { row in
                        GoRow(title: row.title, detail: row.detail, place: .firing(row.id))
                    }
                }
                Section {
                    GoRow(title: Words.compare, detail: Words.compareDetail, place: .compare(screen.id))
                }
            }
        }
    }
}
