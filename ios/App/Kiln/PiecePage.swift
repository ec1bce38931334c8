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
                // Those of each firing under its name.
                ForEach(screen.photosByFiring, id: \.caption) { firing in
                    Section(firing.caption) { PhotoStrip(photos: firing.photos) { screen.takeOff($0) } }
                }
                if !view.coats.isEmpty {
                    Section(Words.asWeighed) {
                        LinesView(lines: view.coats)
                        if !view.dryLabel.isEmpty {
                            GoRow(title: view.dryLabel, mark: "scalemass", place: .editor(.dryWeight, id: screen.id))
                        }
                    }
                }
                Section(Words.fired) {
                    if view.firings.isEmpty { Sentence(view.unfired) }
                    ForEach(view.firings, id: \.id) { row in
                        GoRow(title: row.title, detail: row.detail, place: .firing(row.id))
                    }
                }
                Section {
                    GoRow(title: Words.compare, detail: Words.compareDetail, place: .compare(screen.id))
                    if view.isUnweighed {
                        GoRow(title: Words.change, detail: Words.changePiece, place: .editor(.piece, id: screen.id))
                    }
                }
            }
        }
    }
}
