import LaydownKit
import SwiftUI

/// The record of one coat, and the marks a potter puts on it afterwards.
struct CoatPage: View {
    @Environment(\.dismiss) private var dismiss
    @State private var screen: CoatScreen
    @State private var isAsked = false

    init(frame: AppModel, id: String) {
        _screen = State(initialValue: frame.screen("coat \(id)") { CoatScreen(frame: frame, id: id) })
    }

    var body: some View {
        ListPage(screen.view?.title ?? "", refresh: screen.refresh) {
            if let view = screen.view {
                Section { LinesView(lines: view.lines) }
                Section {
                    GoRow(title: Words.wholePiece, detail: Words.wholePieceDetail, place: .piece(view.piece))
                    GoRow(title: Words.correctCoat, place: .editor(.coat, id: view.id))
                    GoRow(title: Words.itsHistory, place: .history(view.id))
                    Button(view.controlLabel) {
                        if view.controlQuestion.isEmpty { screen.turnControl() } else { isAsked = true }
                    }
                    .alert(view.controlLabel, isPresented: $isAsked) {
                        Button(Words.yes) { screen.turnControl() }
                        Button(Words.notYet, role: .cancel) {}
                    } message: {
                        Text(view.controlQuestion)
                    }
                    Button(Words.takeBack, role: .destructive) {
                        Task { if await screen.takeBack() { dismiss() } }
                    }
                }
            }
        }
    }
}
