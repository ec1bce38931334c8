import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

/// Backups that are made by themselves, over the real library and a folder of this machine; and files for other programs.
@MainActor @Suite struct BackupsByThemselvesTests {
    private let place = Pottery.Folder()

    /// A studio whose backups go into `place`, the first of them made already.
    private func saving(_ folders: any Folders = FoldersHere()) async throws -> (Pottery, BackupScreen) {
        try FileManager.default.createDirectory(at: place.url, withIntermediateDirectories: true)
        let pottery = try await Pottery.furnished(phone: .invented(folders: folders))
        let screen = BackupScreen(frame: pottery.frame)
        await screen.refresh()
        await screen.saveBackups(in: place.url)
        return (pottery, screen)
    }

    private func there() throws -> [String] {
        try FileManager.default.contentsOfDirectory(atPath: place.url.path).sorted()
    }

    private func onTheWay(_ pottery: Pottery) -> [String] {
        let folder = pottery.folder.appendingPathComponent("backup").path
        return (try? FileManager.default.contentsOfDirectory(atPath: folder)) ?? []
    }

    @Test func theFirstGoesThereAtOnceAndTheNextWhenItIsDue() async throws {
        let (pottery, screen) = try await saving()
        #expect(screen.said == Note(tone: .plain, text: Words.backedUpThere) && !screen.isWorking)
        #expect(screen.view?.place == place.url.lastPathComponent)
        #expect(try there().count == 1 && onTheWay(pottery).isEmpty)
        // Nothing new, and not a week yet.
        await pottery.frame.backups.run()
        #expect(try there().count == 1)
        // Within the same minute it would have the same name.
        await screen.backUpThere()
        #expect(try there().count == 2 && screen.view?.notes.map(\.text) == [])

        // What lies there is a backup.
        let other = try await Pottery()
        let taking = BackupScreen(frame: other.frame)
        await taking.refresh()
        await taking.restore(from: place.url.appendingPathComponent(try there()[1]))
        #expect(taking.said?.tone == .plain, "\(taking.said?.text ?? "")")
    }

    @Test func theNewestFiveStayAndWhatIsNotItsOwnIsLeftAlone() async throws {
        let (_, screen) = try await saving()
        let foreign = place.url.appendingPathComponent("laydown-2020-01-01-0000.zip")
        try Data("mine".utf8).write(to: foreign)
        for _ in 1...6 { await screen.backUpThere() }
        #expect(try there().count == 6 && FileManager.default.fileExists(atPath: foreign.path))
    }

    @Test func oneRunComesAfterTheOther() async throws {
        let (pottery, _) = try await saving()
        let backups = pottery.frame.backups
        let runs = [Task { await backups.run(asked: true) }, Task { await backups.run(asked: true) }]
        for run in runs {
            guard case .made = await run.value else {
                Issue.record("it was not made")
                return
            }
        }
        #expect(try there().count == 3)
    }

    @Test func howOftenIsChosen() async throws {
        let (_, screen) = try await saving()
        let never = try #require(screen.view?.every.last)
        #expect(screen.every?.id != never.id)
        await screen.choose(every: never).value
        #expect(screen.every?.id == never.id)
    }

    @Test func aFolderThatIsGoneIsSaidAndNoneIsMadeInItsPlace() async throws {
        let (pottery, screen) = try await saving()
        try FileManager.default.removeItem(at: place.url)
        await screen.backUpThere()
        #expect(screen.said == nil && screen.view?.notes.isEmpty == false && pottery.frame.failure == nil)
        #expect(!FileManager.default.fileExists(atPath: place.url.path) && onTheWay(pottery).isEmpty)
    }

    @Test func whatGoesWrongThereIsSaidAndLeavesNothingBehind() async throws {
        let troubles: [(FoldersInTrouble.Trouble, String)] = [
            (.full, "the folder is full"), (.torn, "does not match what laydown wrote"),
            (.locked, "may no longer write"),
        ]
        for (trouble, words) in troubles {
            let folders = FoldersInTrouble()
            let (pottery, screen) = try await saving(folders)
            let before = try there()
            folders.trouble = trouble
            await screen.backUpThere()
            let notes = screen.view?.notes.map(\.text) ?? []
            #expect(notes.contains { $0.contains(words) }, "\(trouble): \(notes)")
            #expect(try there() == before && onTheWay(pottery).isEmpty && pottery.frame.failure == nil)
            folders.trouble = nil
            await screen.backUpThere()
            #expect(screen.said?.text == Words.backedUpThere && screen.view?.notes.map(\.text) == [])
            for name in try there() { try FileManager.default.removeItem(at: place.url.appendingPathComponent(name)) }
        }
    }

    @Test func aPhoneOnWhichItCannotBeMadeSaysSo() async throws {
        let (pottery, screen) = try await saving()
        let folder = pottery.folder.appendingPathComponent("backup")
        try? FileManager.default.removeItem(at: folder)
        try Data().write(to: folder)
        await screen.backUpThere()
        #expect(screen.view?.notes.contains { $0.text.contains("something went wrong on this phone") } == true)
    }

    @Test func aFolderThatMayNotBeUsedIsNotTaken() async throws {
        let folders = FoldersInTrouble()
        folders.trouble = .locked
        let (_, screen) = try await saving(folders)
        #expect(screen.said == Note(tone: .attention, text: Words.folderNotUsable) && screen.view?.place == "")
        screen.folderDidNotCome(Words.noFolder)
        #expect(screen.said?.text == Words.noFolder)
    }

    @Test func tablesAndTheJournalAreWrittenForOtherPrograms() async throws {
        let pottery = try await Pottery.furnished()
        try await pottery.coat("20.5")
        let screen = BackupScreen(frame: pottery.frame)
        await screen.refresh()
        #expect(screen.tables.count > 3 && screen.export("nothing") == nil)
        let journal = try #require(screen.view?.journal.what)
        for what in [screen.tables[0].id, journal] {
            let export = try #require(screen.export(what))
            let written = try #require(await screen.write(export))
            #expect(written.file.lastPathComponent == export.name && !written.answer.isEmpty)
            #expect(try Data(contentsOf: written.file).isEmpty == false)
            screen.handedOn(written.answer)
            #expect(screen.said == Note(tone: .plain, text: written.answer))
        }
    }
}

/// Folders of this machine in which something goes wrong.
private final class FoldersInTrouble: Folders, @unchecked Sendable {
    enum Trouble {
        /// There is room for half of a file.
        case full
        /// What was written is not what lies there.
        case torn
        /// Nothing may be written any more.
        case locked
    }

    private let lock = NSLock()
    private var now: Trouble?
    var trouble: Trouble? {
        get { lock.withLock { now } }
        set { lock.withLock { now = newValue } }
    }

    func handle(of folder: URL) throws -> String {
        if trouble == .locked { throw CocoaError(.fileReadNoPermission) }
        return folder.path
    }

    func reach<ActivityResult>(_ handle: String, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
        try FoldersHere().reach(handle, work)
    }

    func read<ActivityResult>(_ url: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
        try work(url)
    }

    func write<ActivityResult>(_ url: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
        if trouble == .locked { throw CocoaError(.fileWriteNoPermission) }
        let answer = try work(url)
        guard let trouble else { return answer }
        let whole = try Data(contentsOf: url)
        try whole.dropLast(whole.count / 2).write(to: url)
        if trouble == .full { throw CocoaError(.fileWriteOutOfSpace) }
        return answer
    }

    func size(of file: URL) throws -> UInt64 { try FoldersHere().size(of: file) }

    func delete(_ url: URL) throws { try FileManager.default.removeItem(at: url) }
}
