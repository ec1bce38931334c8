import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

/// Where the phones of a studio meet, over the real library and a folder of this machine.
@MainActor @Suite struct SyncTests {
    private let place = Pottery.Folder()

    /// A sheet of the sync location with this in it.
    private func editor(_ pottery: Pottery, _ values: [String: String]) async throws -> EditorScreen {
        let screen = EditorScreen(frame: pottery.frame, kind: .syncLocation, pause: .milliseconds(1))
        await screen.refresh()
        // Which kind of place it is decides which fields there are, and so does whether it is sealed.
        for key in ["kind", "sealed"] where values[key] != nil { try await enter(values, key, on: screen) }
        for key in values.keys where key != "kind" && key != "sealed" { try await enter(values, key, on: screen) }
        return screen
    }

    private func enter(_ values: [String: String], _ key: String, on screen: EditorScreen) async throws {
        let field = try #require(screen.view?.fields.first { $0.key == key }, "\(key)")
        await screen.enter(values[key] ?? "", in: field).value
    }

    private func meetInFolder(_ pottery: Pottery) async throws {
        try FileManager.default.createDirectory(at: place.url, withIntermediateDirectories: true)
        let screen = try await editor(pottery, ["kind": "folder"])
        let field = try #require(screen.view?.fields.first { $0.kind == .folder })
        await screen.choose(place.url, in: field).value
        #expect(screen.folderName(of: field) == place.url.lastPathComponent)
        await screen.save().value
        try #require(screen.isDone, "\(screen.refusal)")
    }

    private func phones(_ pottery: Pottery) async -> DevicesScreen {
        let screen = DevicesScreen(frame: pottery.frame)
        await screen.refresh()
        return screen
    }

    private func weighed(_ pottery: Pottery) async -> [String] {
        let screen = WeighScreen(frame: pottery.frame)
        await screen.refresh()
        return screen.view?.recent.map(\.wet) ?? []
    }

    @Test func whatOnePhoneWeighedIsOnTheOtherAfterTheyMet() async throws {
        let (mine, other) = (try await Pottery.furnished(), try await Pottery())
        try await mine.coat("20.5")
        for pottery in [mine, other] {
            try await meetInFolder(pottery)
            // There is nothing to undo of it.
            #expect(!pottery.frame.offer.sentence.isEmpty && !pottery.frame.offer.canTurn)
        }
        let screens = (await phones(mine), await phones(other))
        #expect(screens.0.view?.sync.chosen == true && screens.0.view?.sync.folder == place.url.path)
        await screens.0.syncNow().value
        await screens.1.syncNow().value
        #expect(screens.1.view?.sync.notes.map(\.text) == [])
        #expect(screens.1.view?.devices.count == 2 && screens.1.sync.ended == 1 && !screens.1.sync.isRunning)
        #expect(await weighed(other) == ["20.5 g"])
        await screens.0.syncNow(check: true).value
        #expect(screens.0.view?.sync.notes.map(\.text) == [])
    }

    @Test func aFolderThatIsGoneIsSaidOnThePage() async throws {
        let pottery = try await Pottery.furnished()
        try await meetInFolder(pottery)
        try FileManager.default.removeItem(at: place.url)
        let screen = await phones(pottery)
        await screen.syncNow().value
        #expect(screen.view?.sync.notes.isEmpty == false && pottery.frame.failure == nil)
        // No folder was made in its place.
        #expect(!FileManager.default.fileExists(atPath: place.url.path))
    }

    @Test func oneSyncIsUnderWayAndItCanBeStopped() async throws {
        let pottery = try await Pottery.furnished()
        try await meetInFolder(pottery)
        let screen = await phones(pottery)
        let (tap, second) = (screen.syncNow(), screen.syncNow())
        await Task.yield()
        #expect(screen.sync.isRunning && screen.sync.words == Words.syncBegins)
        screen.sync.stop()
        #expect(screen.sync.words == Words.stopping)
        await tap.value
        await second.value
        #expect(screen.sync.ended == 1 && !screen.sync.isRunning && !screen.sync.isStopping)
    }

    @Test func secretsAreSavedByThePhoneAloneAndForgottenWithThePlace() async throws {
        let secrets = SecretsInMemory()
        try secrets.save("old", under: "secret")
        let pottery = try await Pottery(phone: .invented(secrets: secrets))
        let place = ["kind": "webdav", "address": "files.example.org/dav", "user": "kim", "password": "slip and clay"]
        let screen = try await editor(pottery, place)
        let field = try #require(screen.view?.fields.first { $0.kind == .secret })
        #expect(screen.text(of: field) == "slip and clay" && field.text.isEmpty)
        // Never written down with the rest.
        #expect(!screen.half.isEmpty && !screen.half.values.contains("slip and clay"))
        await screen.save().value
        #expect(screen.isDone && screen.text(of: field).isEmpty)
        // What belonged to another kind of place is gone.
        #expect(secrets.all() == ["password": "slip and clay"])

        let again = try await editor(pottery, [:])
        #expect(again.view?.fields.first { $0.kind == .secret }?.text == "" && !again.hasSomethingToSave)
        let page = await phones(pottery)
        await page.forget().value
        #expect(page.view?.sync.chosen == false && secrets.all().isEmpty && page.refusal.isEmpty)
    }

    @Test func aSecretThatThePhoneDoesNotTakeIsSaidOnTheEditor() async throws {
        let secrets = SecretsInMemory()
        secrets.isFull = true
        let pottery = try await Pottery(phone: .invented(secrets: secrets))
        let place = ["kind": "webdav", "address": "files.example.org/dav", "user": "kim", "password": "slip and clay"]
        let screen = try await editor(pottery, place)
        await screen.save().value
        #expect(screen.refusal == Words.secretNotSaved && !screen.isDone && pottery.frame.failure == nil)
    }

    @Test func filesThatWereNotFetchedYetAreThereUnderTheirNames() throws {
        /// A folder whose keeper fetches a file when it is read, and knows before how long it is.
        struct CommandResult: Folders {
            let here = FoldersHere()
            func handle(of folder: URL) throws -> String { try here.handle(of: folder) }
            func reach<ActivityResult>(_ handle: String, _ work: (URL) throws -> ActivityResult) throws
                -> ActivityResult
            {
                try here.reach(handle, work)
            }
            func read<ActivityResult>(_ url: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
                try work(url)
            }
            func write<ActivityResult>(_ url: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
                try work(url)
            }
            func size(of file: URL) throws -> UInt64 {
                file.lastPathComponent == "photo" ? 4_000_000 : try here.size(of: file)
            }
            func delete(_ url: URL) throws { try here.delete(url) }
        }
        try FileManager.default.createDirectory(at: place.url, withIntermediateDirectories: true)
        let folder = SyncFolder(place.url, CommandResult())
        #expect(try folder.list().isEmpty && folder.get(path: "devices/one/a") == nil)
        try folder.put(path: "devices/one/a", bytes: Data("abc".utf8))
        for hidden in [".photo.icloud", ".half-written"] {
            try Data().write(to: place.url.appendingPathComponent("devices/one/\(hidden)"))
        }
        let list = try folder.list().sorted { $0.path < $1.path }
        #expect(list.map(\.path) == ["devices/one/a", "devices/one/photo"] && list.map(\.size) == [3, 4_000_000])
        #expect(try folder.get(path: "devices/one/a") == Data("abc".utf8))
    }

    @Test func whatTheStorageSaysIsTold() throws {
        let nowhere = URL(fileURLWithPath: "/nowhere/at/all")
        #expect(throws: FolderError.Gone) {
            do { _ = try Data(contentsOf: nowhere) } catch { throw FolderError(error) }
        }
        #expect(FolderError(POSIXError(.ENOSPC)) == .Full)
        #expect(FolderError(CocoaError(.fileWriteOutOfSpace)) == .Full)
        #expect(FolderError(CocoaError(.fileWriteNoPermission)) == .NotAllowed)
        let quota = CocoaError(.fileReadUnknown, userInfo: [NSUnderlyingErrorKey: POSIXError(.EDQUOT)])
        #expect(FolderError(quota) == .Full)
        #expect(FolderError(SecretNotSaved()) == .Failed)
        let shut = ShutFolder(.NotAllowed)
        #expect(throws: FolderError.NotAllowed) { try shut.list() }
        #expect(throws: FolderError.NotAllowed) { try shut.get(path: "devices/a") }
        #expect(throws: FolderError.NotAllowed) { try shut.put(path: "devices/a", bytes: Data()) }
    }
}
