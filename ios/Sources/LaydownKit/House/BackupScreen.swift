import Dispatch
import Foundation
import LaydownCore
import Observation

/// Everything into one file that lies elsewhere, and such a file taken in again. What takes long happens beside the weighing.
@MainActor @Observable
public final class BackupScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: BackupView? { latest.view }
    /// Whether something that takes long is under way.
    public private(set) var isWorking = false
    /// What came of the last thing done; nil while there is nothing to say.
    public private(set) var said: Note?

    private let frame: Frame
    private let latest = Latest<BackupView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: Frame) {
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
        guard let name = view?.name, !isWorking else { return nil }
        begin()
        frame.handover.clear()
        do {
            let file = try frame.handover.place(named: name)
            _ = try await frame.work.aside { studio, _ in try studio.backUp(into: file.path) }
            await end(nil)
            return file
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
    public func takeIn(from place: URL) async {
        await take(place, named: "taken.zip") { studio, now, copy in try studio.takeIn(now: now, from: copy) }
    }

    /// No place was chosen, or no file.
    public func notChosen() {
        frame.handover.clear()
        said = Note(tone: .attention, text: Words.noFile)
    }

    /// What was chosen cannot be read or written.
    public func notCopied() {
        said = Note(tone: .attention, text: Words.fileNotCopied)
    }

    /// Copies a file to here, and hands it to `call`, which answers with what to say.
    private func take(
        _ place: URL, named name: String, _ call: @escaping @Sendable (Studio, Now, String) throws -> String
    ) async {
        guard !isWorking else { return }
        begin()
        let handover = frame.handover
        do {
            let sentence = try await frame.work.aside { studio, now in
                guard let copy = try? handover.fetch(place, named: name) else { throw NotCopied() }
                return try call(studio, now, copy.path)
            }
            await end(nil)
            said = Note(tone: .plain, text: sentence)
        } catch {
            await end(error)
        }
        handover.clear()
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
