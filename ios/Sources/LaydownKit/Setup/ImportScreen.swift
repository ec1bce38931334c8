import Foundation
import LaydownCore
import Observation

/// A potter's own spreadsheet: what its columns hold, what taking it in would do, and taking it in.
@MainActor @Observable
public final class ImportScreen {
    /// What taking the sheet in would do; nil while there is no sheet that can be read.
    public private(set) var view: ImportView?
    /// Why the last thing could not be done; empty when nothing is wrong.
    public private(set) var trouble = ""
    /// Whether the sheet is being copied, or taken in.
    public private(set) var isWorking = false

    private let frame: AppModel
    private var file: URL?
    /// What was chosen, by the keys of columns and questions.
    private var chosen: [String: String] = [:]

    /// - Parameter frame: The house around the screen.
    public init(frame: AppModel) {
        self.frame = frame
    }

    /// What the button says that chooses a file.
    public var chooseLabel: String { file == nil ? Words.chooseSpreadsheet : Words.chooseAnotherSpreadsheet }

    /// Reads the sheet again.
    public func refresh() async {
        guard let file else { return }
        let values = values
        do {
            view = try await frame.work.ask { try $0.import(now: $1, file: file.path, columns: values) }
        } catch {
            view = nil
            refuse(error)
        }
    }

    /// Copies the sheet to here, since `place` may be far away, and reads it.
    public func choose(_ place: URL) async {
        guard !isWorking else { return }
        isWorking = true
        let transferFolder = frame.transferFolder
        defer { isWorking = false }
        do {
            file = try await frame.work.inBackground { _, _ in try transferFolder.fetch(place, named: "sheet.csv") }
            chosen = [:]
            trouble = ""
            await refresh()
        } catch let problem as StudioError {
            refuse(problem)
        } catch {
            say(Words.spreadsheetNotCopied)
        }
    }

    /// No file was chosen, or it cannot be read.
    public func say(_ sentence: String) {
        trouble = sentence
    }

    /// What a row says under a column or a question: what it is taken for, and what is wrong or what it means.
    public func detail(of field: EditorField) -> String {
        let taken = field.items.first { $0.code == field.text }?.name ?? ""
        let more = field.refusal.isEmpty ? field.help : field.refusal
        return [taken, more].filter { !$0.isEmpty }.joined(separator: "\n")
    }

    /// What a column or a question can be taken for.
    public func rows(of field: EditorField) -> [Row] {
        field.items.map {
            Row(id: $0.code, title: $0.name, detail: $0.detail, chosen: $0.code == field.text, outline: [])
        }
    }

    /// Says what a column holds, or answers a question.
    @discardableResult
    public func pick(_ row: Row, for field: EditorField) -> Task<Void, Never> {
        chosen[field.key] = row.id
        trouble = ""
        return Task { await refresh() }
    }

    /// Takes the sheet in, as the view says.
    @discardableResult
    public func restore() -> Task<Void, Never> {
        // A second tap that comes before the answer would take it in twice.
        guard let file, !isWorking else { return Task {} }
        isWorking = true
        trouble = ""
        let values = values
        return Task {
            _ = await frame.save(
                { try $0.importSpreadsheet(now: $1, file: file.path, columns: values) }, refused: refuse)
            isWorking = false
            await refresh()
        }
    }

    private var values: [Value] {
        chosen.sorted { $0.key < $1.key }.map { Value(key: $0.key, text: $0.value) }
    }

    private func refuse(_ problem: any Error) {
        if let sentence = frame.refusal(of: problem) { trouble = sentence }
    }
}
