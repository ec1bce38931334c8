import Foundation
import LaydownCore

/// Makes the backups that are made by themselves. The core says when, and what becomes of which file; this reaches the folder.
/// For the app in front and for the system's task alike, one run after the other.
@MainActor
public final class BackupsByThemselves {
    /// What came of a run.
    public enum Outcome: Sendable {
        /// A backup lies in the folder, and was read there.
        case made
        /// None was due, or one could not be made, which the studio has remembered and says.
        case notMade
        /// The studio could not even be asked, or not remember what went wrong.
        case refused(any Error)
    }

    private let work: StudioWork
    private let folders: any Folders
    private let onTheWay: TransferFolder
    private var last: Task<Outcome, Never>?

    /// - Parameters:
    ///   - work: The way to the studio.
    ///   - folders: The way to the folder.
    ///   - onTheWay: Where backups lie on their way there and back: a folder that no page clears.
    init(work: StudioWork, folders: any Folders, onTheWay: TransferFolder) {
        self.work = work
        self.folders = folders
        self.onTheWay = onTheWay
    }

    /// Makes the backup that is due, or with `asked` one in any case, once the runs that were asked for before have ended.
    @discardableResult
    public func run(asked: Bool = false) async -> Outcome {
        let before = last
        let mine = Task {
            _ = await before?.value
            let outcome = await make(asked: asked)
            onTheWay.clear()
            return outcome
        }
        last = mine
        return await mine.value
    }

    private func make(asked: Bool) async -> Outcome {
        do {
            guard let task = try await work.ask({ try $0.backupDue(now: $1, asked: asked) }) else { return .notMade }
            return try await make(task)
        } catch let problem as Trouble {
            return await remember(problem.kind)
        } catch StudioError.Refused {
            // What did not arrive whole, and a folder that is not chosen: the studio says both by itself.
            return .notMade
        } catch StudioError.Full {
            return await remember(.phoneFull)
        } catch is StudioError {
            return await remember(.notMade)
        } catch {
            return .refused(error)
        }
    }

    private func make(_ task: BackupTask) async throws -> Outcome {
        let (folders, onTheWay) = (folders, onTheWay)
        let (name, copy) = try await work.inBackground { studio, _ in
            let file = try here { try onTheWay.place(named: task.name) }
            _ = try studio.backUp(into: file.path)
            let copy = try here { try onTheWay.place(named: "copy.zip") }
            return (try there(folders, task.place) { try put(file, into: $0, folders, copy: copy) }, copy)
        }
        let old: [String]
        do {
            old = try await work.inBackground { studio, now in
                try studio.automaticBackupDone(now: now, place: task.place, file: name, copy: copy.path)
            }
        } catch {
            // What did not arrive whole is of no use, and the studio has remembered it.
            _ = try await work.inBackground { _, _ in try removed([name], from: task.place, folders) }
            throw error
        }
        let gone = try await work.inBackground { _, _ in try removed(old, from: task.place, folders) }
        try await work.ask { try $0.backupsRemoved(now: $1, files: gone) }
        return .made
    }

    private func remember(_ trouble: BackupTrouble) async -> Outcome {
        do {
            try await work.ask { try $0.backupFailed(now: $1, trouble: trouble) }
            return .notMade
        } catch {
            return .refused(error)
        }
    }
}

/// Why a backup was not made automatically.
private struct Trouble: Error {
    let kind: BackupTrouble
}

/// What is done in the app's own folder.
private func here<ActivityResult>(_ work: () throws -> ActivityResult) throws -> ActivityResult {
    do { return try work() } catch { throw Trouble(kind: FolderError(error) == .Full ? .phoneFull : .notMade) }
}

/// What is done in the folder that was chosen.
private func there<ActivityResult>(
    _ folders: any Folders, _ place: String, _ work: (URL) throws -> ActivityResult
) throws -> ActivityResult {
    do {
        return try folders.reach(place, work)
    } catch let trouble as Trouble {
        throw trouble
    } catch {
        throw Trouble(kind: BackupTrouble(FolderError(error)))
    }
}

/// Puts a file into a folder and reads it from there into `copy`.
///
/// - Returns: What it is called there: another phone may have put one of the same name there.
private func put(_ file: URL, into folder: URL, _ folders: any Folders, copy: URL) throws -> String {
    // Else one would be made where a card was pulled out.
    guard FileManager.default.fileExists(atPath: folder.path) else { throw FolderError.Gone }
    let name = freeName(for: file, in: folder)
    let place = folder.appendingPathComponent(name)
    do {
        try folders.write(place) { try FileManager.default.copyItem(at: file, to: $0) }
        // What is read comes to lie on the phone itself.
        try folders.read(place) { read in try here { try FileManager.default.copyItem(at: read, to: copy) } }
    } catch {
        // Of what could not be finished nothing is to stay; if even that fails, the first failure is the one to tell.
        try? folders.delete(place)
        throw error
    }
    return name
}

private func freeName(for file: URL, in folder: URL) -> String {
    let (name, ending) = (file.deletingPathExtension().lastPathComponent, file.pathExtension)
    let names = sequence(first: 1) { $0 + 1 }.lazy.map { $0 == 1 ? "\(name).\(ending)" : "\(name) \($0).\(ending)" }
    return names.first { !FileManager.default.fileExists(atPath: folder.appendingPathComponent($0).path) }
        ?? file.lastPathComponent
}

/// Removes files of the app's own from the folder.
///
/// - Returns: Those that are gone; what could not be removed is asked for again the next time.
private func removed(_ files: [String], from place: String, _ folders: any Folders) throws -> [String] {
    guard !files.isEmpty else { return [] }
    return try there(folders, place) { folder in
        files.filter { name in
            do {
                try folders.delete(folder.appendingPathComponent(name))
                return true
            } catch {
                return FolderError(error) == .Gone
            }
        }
    }
}

extension BackupTrouble {
    fileprivate init(_ problem: FolderError) {
        self =
            switch problem {
            case .Gone: .placeGone
            case .NotAllowed: .notAllowed
            case .Full: .placeFull
            case .Failed: .noAnswer
            }
    }
}
