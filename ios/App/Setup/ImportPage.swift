import LaydownCore
import LaydownKit
import SwiftUI
import UniformTypeIdentifiers

/// A potter's own spreadsheet: what its columns hold, what taking it in would do, and taking it in.
struct ImportPage: View {
    @State private var screen: ImportScreen
    @State private var isChoosing = false
    @State private var asked: Asked?

    /// The column or the question whose answers are shown to choose from.
    private struct Asked: Identifiable {
        let field: EditorField
        var id: String { field.key }
    }

    init(frame: AppModel) {
        _screen = State(initialValue: frame.screen("import") { ImportScreen(frame: frame) })
    }

    var body: some View {
        ListPage(Words.importSpreadsheet, refresh: screen.refresh) {
            Section {
                Sentence(screen.view?.intro ?? Words.importIntro)
                Trouble(sentence: screen.trouble)
                if screen.view == nil { MainButton(screen.chooseLabel) { isChoosing = true } }
            }
            if let view = screen.view {
                if !view.questions.isEmpty { fields(view.questions, Words.importQuestions) }
                fields(view.columns, Words.importColumns)
                Section(view.found) {
                    NotesView(notes: view.notes)
                    MainButton(view.takeInLabel) { screen.restore() }
                        .disabled(!view.canTakeIn || screen.isWorking)
                }
                if !view.readings.isEmpty {
                    Section(Words.importReadings) {
                        ForEach(view.readings, id: \.id) { StillRow(title: $0.title, detail: $0.detail) }
                    }
                }
                if !view.rowErrors.isEmpty {
                    Section(Words.importRowErrors) {
                        ForEach(Array(view.rowErrors.enumerated()), id: \.offset) { Trouble(sentence: $0.element) }
                    }
                }
                Section { Button(screen.chooseLabel) { isChoosing = true }.frame(minHeight: 48) }
            }
        }
        // Spreadsheets call a CSV by many types, or by none.
        .fileImporter(isPresented: $isChoosing, allowedContentTypes: [.data], allowsMultipleSelection: false) {
            result in
            Task {
                guard case .success(let places) = result, let place = places.first else {
                    return screen.say(Words.spreadsheetNotCopied)
                }
                await screen.choose(place)
            }
        } onCancellation: {
            screen.say(Words.noFile)
        }
        .sheet(item: $asked) { asked in
            Chooser(title: asked.field.label, rows: screen.rows(of: asked.field)) { screen.pick($0, for: asked.field) }
        }
    }

    private func fields(_ fields: [EditorField], _ heading: String) -> some View {
        Section(heading) {
            ForEach(fields, id: \.key) { field in
                TapRow(title: field.label, detail: screen.detail(of: field), mark: "chevron.down") {
                    asked = Asked(field: field)
                }
            }
        }
    }
}
