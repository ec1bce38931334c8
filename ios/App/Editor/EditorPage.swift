import LaydownCore
import LaydownKit
import SwiftUI
import UniformTypeIdentifiers

/// Anything that is filled in: the core says which fields there are and what follows from what is entered.
struct EditorPage: View {
    @Environment(\.dismiss) private var dismiss
    @Environment(\.go) private var go
    @State private var screen: EditorScreen
    @State private var isAsked = false
    @State private var way: PictureWay?
    /// The field that a folder is asked for.
    @State private var asked: EditorField?
    @FocusState private var focused: String?
    /// What is half filled in, as JSON.
    @SceneStorage private var half: Data?

    init(frame: AppModel, kind: EditorKind, id: String, subject: String) {
        let screen = frame.screen("editor \(kind.name) \(id) \(subject)", isOver: \.isDone) {
            EditorScreen(frame: frame, kind: kind, id: id, subject: subject)
        }
        _screen = State(initialValue: screen)
        _half = SceneStorage("sheet \(kind.name) \(id) \(subject)")
    }

    var body: some View {
        ScrollViewReader { scroll in
            List {
                if let view = screen.view { rows(view).listRowBackground(Color.surface) }
            }
            .listStyle(.insetGrouped)
            .scrollContentBackground(.hidden)
            .scrollDismissesKeyboard(.interactively)
            .background(Color.ground)
            .onChange(of: screen.refusedField) { _, key in
                guard let key else { return }
                focused = key
                withAnimation { scroll.scrollTo(key, anchor: .center) }
            }
        }
        .navigationTitle(screen.view?.title ?? "")
        .navigationBarTitleDisplayMode(.inline)
        .navigationBarBackButtonHidden(screen.hasSomethingToSave)
        .toolbar {
            if screen.hasSomethingToSave {
                ToolbarItem(placement: .cancellationAction) { Button(Words.back) { isAsked = true } }
            }
        }
        .confirmationDialog(Words.saveOrThrow, isPresented: $isAsked, titleVisibility: .visible) {
            Button(screen.view?.saveLabel ?? Words.save) { screen.save() }
            Button(Words.throwAway, role: .destructive) { screen.leave() }
            Button(Words.stay, role: .cancel) {}
        } message: {
            Text(Words.saveOrThrowDetail)
        }
        .safeAreaInset(edge: .bottom) { saveBar }
        .toolbar(.hidden, for: .tabBar)
        .task {
            if let texts = Saved.read([String: String].self, from: half) { screen.restore(texts) }
            await screen.refresh()
        }
        .onChange(of: screen.half) { _, now in half = now.isEmpty ? nil : Saved.write(now) }
        .onChange(of: screen.isDone) { _, done in
            guard done else { return }
            if let next = screen.next { go(inPlaceOfThis: next) } else { dismiss() }
        }
        .choosesFolder($asked, chosen: { screen.choose($0, in: $1) }, none: { screen.folderDidNotCome($0, in: $1) })
        .takesPictures(by: $way) { picture in
            if let photoField { screen.photograph(picture, in: photoField) }
        } none: { sentence in
            if let photoField { screen.pictureDidNotCome(sentence, in: photoField) }
        }
    }

    private var photoField: EditorField? {
        screen.view?.fields.first { $0.kind == .photo }
    }

    @ViewBuilder
    private func rows(_ view: EditorView) -> some View {
        ForEach(view.fields, id: \.key) { field in
            Section {
                FieldView(screen: screen, field: field, focused: $focused, way: $way, asked: $asked).id(field.key)
                if let drawing = view.drawing, drawing.below == field.key { panel(drawing) }
            }
        }
        if !view.results.isEmpty {
            Section {
                NotesView(notes: view.results)
            }
        }
        if !screen.id.isEmpty {
            // What is half entered here waits until one comes back.
            Section { GoRow(title: Words.itsHistory, place: .history(screen.id)) }
        }
        if !view.removeLabel.isEmpty {
            Section {
                Button(view.removeLabel, role: .destructive) { screen.remove() }.frame(minHeight: 48)
            }
        }
    }

    private func panel(_ drawing: Drawing) -> some View {
        DrawingPanel(
            drawing: drawing, awayWords: Words.pointAway, canUndo: screen.canUndoDrawing,
            begun: {
                // What a table's cell shows while one types in it would not follow the finger.
                focused = nil
                screen.begin()
            },
            touched: { screen.touch($0) },
            undone: { screen.undoDrawing() })
    }

    @ViewBuilder
    private var saveBar: some View {
        if let view = screen.view, !view.saveLabel.isEmpty {
            VStack(alignment: .leading, spacing: 8) {
                Trouble(sentence: screen.refusal)
                MainButton(view.saveLabel) { screen.save() }
            }
            .padding(.horizontal, 16)
            .padding(.vertical, 8)
            .background(Color.ground)
        }
    }
}
