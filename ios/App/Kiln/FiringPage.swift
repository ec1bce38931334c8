import LaydownCore
import LaydownKit
import SwiftUI

/// One firing: loaded shelf by shelf, then fired, then looked at piece by piece.
struct FiringPage: View {
    @Environment(\.go) private var go
    @State private var screen: FiringScreen
    @State private var isChoosingShelf = false
    @State private var isAsked = false

    init(frame: AppModel, id: String) {
        _screen = State(initialValue: frame.screen("firing \(id)") { FiringScreen(frame: frame, id: id) })
    }

    var body: some View {
        ListPage(screen.view?.title ?? "", refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    Sentence(view.state)
                    Trouble(sentence: screen.refusal)
                    if !view.lookLabel.isEmpty { MainButton(view.lookLabel) { go(.look(firing: screen.id)) } }
                    NotesView(notes: view.notes)
                }
                before(view)
                // Cones are placed once the ware stands; after the firing they are read first.
                if !view.isLoading { cones(view) }
                waiting(view)
                if view.isLoading { add(view) }
                ForEach(view.shelves, id: \.number) { shelf in
                    Section(shelf.title) {
                        DrawingPanel(drawing: shelf.drawing, awayWords: Words.takeOut, once: true, holdToLift: true) {
                            screen.touch($0)
                        }
                    }
                }
                if view.isLoading { cones(view) } else { add(view) }
                pieces(view)
                Section {
                    Button(view.next) {
                        if view.nextQuestion.isEmpty { screen.advance() } else { isAsked = true }
                    }
                    .frame(minHeight: 48)
                    .alert(view.next, isPresented: $isAsked) {
                        Button(Words.yes) { screen.advance() }
                        Button(Words.notYet, role: .cancel) {}
                    } message: {
                        Text(view.nextQuestion)
                    }
                    LinesView(lines: view.lines)
                    GoRow(title: Words.change, detail: Words.changeFiring, place: .editor(.firing, id: screen.id))
                    if screen.hasContactSheet {
                        GoRow(
                            title: Words.contactSheet, detail: Words.contactSheetDetail,
                            place: .contactSheet(firing: screen.id))
                    }
                }
                if !view.earlier.isEmpty {
                    Section(Words.earlierFirings) {
                        ForEach(view.earlier, id: \.id) { row in
                            GoRow(title: row.title, detail: row.detail, place: .firing(row.id))
                        }
                    }
                }
            }
        }
        .sheet(isPresented: $isChoosingShelf) { ShelfChooser(choices: screen.shelves) { screen.load($0) } }
    }

    @ViewBuilder
    private func add(_ view: FiringView) -> some View {
        if !view.addLabel.isEmpty {
            Section { GoRow(title: view.addLabel, mark: "plus", place: .editor(.piece, subject: screen.id)) }
        }
    }

    @ViewBuilder
    private func cones(_ view: FiringView) -> some View {
        if let cones = view.cones {
            Section { GoRow(title: cones.title, detail: cones.detail, place: .editor(cones.editor, id: screen.id)) }
        }
    }

    @ViewBuilder
    private func before(_ view: FiringView) -> some View {
        if !view.before.isEmpty {
            Section(Words.beforeKiln) {
                ForEach(view.before, id: \.code) { tick in
                    TickRow(title: tick.text, isDone: tick.done) { screen.toggleUndo(tick) }
                }
            }
        }
    }

    @ViewBuilder
    private func waiting(_ view: FiringView) -> some View {
        if !view.waiting.isEmpty {
            Section(view.waitingLabel) {
                if view.waiting.count > 1 {
                    TickRow(title: Words.tickAll, isDone: screen.isAllTicked) { screen.tickAll() }
                }
                ForEach(view.groups, id: \.title) { group in
                    TickRow(title: group.title, isDone: screen.isTicked(group)) { screen.tick(group) }
                }
                ForEach(view.waiting, id: \.pieces) { row in
                    TickRow(title: screen.title(of: row), detail: row.detail, isDone: screen.isTicked(row)) {
                        screen.tick(row)
                    }
                }
                if screen.hasTicks {
                    Button(Words.loadTicked) { choose() }.frame(minHeight: 48)
                } else {
                    Button(Words.loadAll) { screen.loadAll() }.frame(minHeight: 48).disabled(!view.isLoading)
                }
            }
        }
    }

    @ViewBuilder
    private func pieces(_ view: FiringView) -> some View {
        if !view.pieces.isEmpty {
            Section(Words.pieces) {
                ForEach(view.pieces, id: \.piece) { piece in
                    GoRow(
                        title: piece.title, detail: piece.detail,
                        mark: piece.lookedAt ? "checkmark" : "chevron.forward", place: screen.place(of: piece))
                }
            }
        }
    }

    /// A single choice is not asked for.
    private func choose() {
        let choices = screen.shelves
        if choices.count == 1, let only = choices.first { screen.load(only) } else { isChoosingShelf = true }
    }
}

/// Something to tick off.
private struct TickRow: View {
    let title: String
    var detail = ""
    let isDone: Bool
    let act: @MainActor () -> Void

    var body: some View {
        TapRow(title: title, detail: detail, mark: isDone ? "checkmark.circle.fill" : "circle", act: act)
            .accessibilityValue(isDone ? Words.done : Words.toDo)
            .accessibilityAddTraits(isDone ? .isSelected : [])
    }
}

/// Which shelf, and how many.
private struct ShelfChooser: View {
    @Environment(\.dismiss) private var dismiss
    let choices: [FiringScreen.ShelfChoice]
    let picked: @MainActor (FiringScreen.ShelfChoice) -> Void

    var body: some View {
        NavigationStack {
            List(choices) { choice in
                TapRow(title: choice.title, detail: choice.detail) {
                    dismiss()
                    picked(choice)
                }
                .listRowBackground(Color.surface)
            }
            .scrollContentBackground(.hidden)
            .background(Color.ground)
            .navigationTitle(Words.whichShelf)
            .navigationBarTitleDisplayMode(.inline)
            .toolbar {
                ToolbarItem(placement: .cancellationAction) { Button(Words.close) { dismiss() } }
            }
        }
        .presentationDetents([.medium, .large])
    }
}
