import Dispatch
import Foundation
import LaydownCore
import Observation

/// Everything into one file that lies elsewhere, by hand or by itself, and such a file taken in again; and files for other
/// programs. What takes long happens beside the weighing.
@MainActor @Observable
public final class BackupScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: BackupView? { latest.view }
    /// Whether something that takes long is under way.
    public private(set) var isWorking = false
    /// What came of the last thing done; nil while there is nothing to say.
    public private(set) var said: Note?

    private let frame: AppModel
    private let latest = Latest<BackupView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: AppModel) {
        self.frame = frame
    }

    /// Reads the page.
    public func refresh() async {
        await frame.show(latest) { try $0.backup(now: $1) }
    }

    /// Makes a backup and reads it again.
    ///
    /// - Returns: Where it lies until it has its place or was sent; nil if none could be made, which is then said.
    public func make() async -> URL? {
        guard let name = view?.name else { return nil }
        return await write(named: name) { try $0.backUp(into: $1) }?.file
    }

    /// Writes a file that `write` fills, to be handed to another app.
    private func write<ActivityResult: Sendable>(
        named name: String, _ write: @escaping @Sendable (Studio, String) throws -> ActivityResult
    ) async -> (file: URL, answer: ActivityResult)? {
        guard !isWorking else { return nil }
        begin()
        frame.transferFolder.clear()
        do {
            let file = try frame.transferFolder.place(named: name)
            let answer = try await frame.work.inBackground { studio, _ in try write(studio, file.path) }
            await end(nil)
            return (file, answer)
        } catch {
            await end(error)
            return nil
        }
    }

    /// The backup was moved to `place`: reads it from there, and remembers that there is one.
    public func arrived(at place: URL) async {
        await take(place, named: "copy.zip") { studio, now, copy in try studio.backedUp(now: now, copy: copy) }
    }

    /// Takes in a backup, or what another phone sent.
    public func restore(from place: URL) async {
        await take(place, named: "taken.zip") { studio, now, copy in try studio.restore(now: now, from: copy) }
    }

    /// No place was chosen, or no file.
    public func notChosen() {
        frame.transferFolder.clear()
        said = Note(tone: .attention, text: Words.noFile)
    }

    /// What was chosen cannot be read or written.
    public func notCopied() {
        said = Note(tone: .attention, text: Words.fileNotCopied)
    }

    // MARK: By itself

    /// How often, of the rows that can be chosen.
    public var every: Row? { view?.every.first(where: \.chosen) }

    /// Chooses how often a backup is made automatically.
    @discardableResult
    public func choose(every row: Row) -> Task<Void, Never> {
        Task {
            await frame.tell { try $0.setBackupSchedule(now: $1, every: row.id) }
            await refresh()
        }
    }

    /// Chooses the folder. A first backup goes there at once: then one knows that the folder can be used.
    public func saveBackups(in folder: URL) async {
        guard !isWorking else { return }
        begin()
        let folders = frame.phone.folders
        do {
            let name = folder.lastPathComponent.split(whereSeparator: \.isNewline).joined(separator: " ")
            try await frame.work.inBackground { studio, now in
                guard let handle = try? folders.handle(of: folder) else { throw NotCopied() }
                try studio.setBackupFolder(now: now, place: handle, called: name)
            }
        } catch is NotCopied {
            await end(nil)
            return folderDidNotCome(Words.folderNotUsable)
        } catch {
            return await end(error)
        }
        await made(frame.backups.run())
    }

    /// Makes one there now, whether or not it is due.
    public func backUpThere() async {
        guard !isWorking else { return }
        begin()
        await made(frame.backups.run(asked: true))
    }

    /// Why no folder came.
    public func folderDidNotCome(_ sentence: String) {
        said = Note(tone: .attention, text: sentence)
    }

    private func made(_ outcome: BackupsByThemselves.Outcome) async {
        switch outcome {
        case .made:
            await end(nil)
            said = Note(tone: .plain, text: Words.backedUpThere)
        // What went wrong stands among the notes.
        case .notMade: await end(nil)
        case .refused(let problem): await end(problem)
        }
    }

    // MARK: For other programs

    /// The tables, to choose one from.
    public var tables: [Row] {
        view?.tables.map { Row(id: $0.what, title: $0.title, detail: $0.detail, chosen: false, outline: []) } ?? []
    }

    /// What is written for other programs under this name.
    public func export(_ what: String) -> Export? {
        view.flatMap { view in (view.tables + [view.journal]).first { $0.what == what } }
    }

    /// Writes a table or the journal.
    ///
    /// - Returns: Where it lies until it was handed to another app, and what to say then; nil if it could not be written, which
    ///   is then said.
    public func write(_ export: Export) async -> (file: URL, answer: String)? {
        let what = export.what
        return await write(named: export.name) { try $0.export(what: what, into: $1) }
    }

    /// A file was handed to another app, or to a folder by way of it.
    public func handedOn(_ sentence: String) {
        said = Note(tone: .plain, text: sentence)
    }

    // MARK: The way here

    /// Copies a file to here, and hands it to `call`, which answers with what to say.
    private func take(
        _ place: URL, named name: String, _ call: @escaping @Sendable (Studio, Now, String) throws -> String
    ) async {
        guard !isWorking else { return }
        begin()
        let transferFolder = frame.transferFolder
        do {
            let sentence = try await frame.work.inBackground { studio, now in
                guard let copy = try? transferFolder.fetch(place, named: name) else { throw NotCopied() }
                return try call(studio, now, copy.path)
            }
            await end(nil)
            said = Note(tone: .plain, text: sentence)
        } catch {
            await end(error)
        }
        transferFolder.clear()
    }

    private func begin() {
        isWorking = true
        said = nil
    }

    private func end(_ problem: (any Error)?) async {
        isWorking = false
        switch problem {
        case nil: break
        case let problem as StudioError: said = Note(tone: .attention, text: problem.sentence)
        case is NotCopied, is CocoaError: notCopied()
        case let problem?: return frame.fail(problem)
        }
        await refresh()
    }
}

/// A file that could not be copied to here.
private struct NotCopied: Error {}
