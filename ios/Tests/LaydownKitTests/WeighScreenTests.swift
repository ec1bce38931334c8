import Foundation
import LaydownCore
import LaydownKit
import Testing

/// The Rust library through the Swift boundary. What it computes is tested in Rust and not again here.
@Suite final class WeighScreenTests {
    private let folder = FileManager.default.temporaryDirectory.appendingPathComponent(UUID().uuidString)
    private var file: String { folder.appendingPathComponent("studio.laydown").path }

    init() throws {
        try FileManager.default.createDirectory(at: folder, withIntermediateDirectories: true)
    }

    deinit {
        try? FileManager.default.removeItem(at: folder)
    }

    @Test func theLibraryIsTheOneTheseBindingsWereMadeFor() {
        #expect(buildStamp() == "stamp")
    }

    @Test func aReadingIsJudged() throws {
        let screen = try WeighScreen(studio: Studio.open(path: file))
        #expect(screen.view.verdict == nil)
        try screen.enter { $0.net = "19.4" }
        #expect(screen.view.verdict?.headline.isEmpty == false)
        #expect(screen.view.canKeep)
    }

    @Test func aKeptReadingIsThereAfterReopening() throws {
        try {
            let screen = try WeighScreen(studio: Studio.open(path: file))
            try screen.enter { $0.net = "19.4" }
            _ = try screen.keep()
        }()
        let reopened = try WeighScreen(studio: Studio.open(path: file))
        #expect(reopened.view.recent.map(\.wet) == ["19.4 g"])
    }

    @Test func nonsenseIsRefusedWithASentenceAndTheFieldToGoBackTo() throws {
        let screen = try WeighScreen(studio: Studio.open(path: file))
        try screen.enter { $0.net = "nineteen" }
        #expect(screen.view.refusal != nil)
        let error = studioError { _ = try screen.keep() }
        guard case .Refused(field: "net", _) = error else {
            Issue.record("expected a refusal of the field net, got \(String(describing: error))")
            return
        }
        #expect(error?.sentence.isEmpty == false)
        #expect(screen.view.recent.isEmpty)
    }

    @Test func aFileThatIsNoStudioIsLeftAsItWas() throws {
        try "not a studio".write(toFile: file, atomically: true, encoding: .utf8)
        let error = studioError { _ = try Studio.open(path: file) }
        #expect(error?.sentence.isEmpty == false)
        #expect(try String(contentsOfFile: file, encoding: .utf8) == "not a studio")
    }

    /// The error with which `call` ended; nil, with an issue recorded for anything else than a `StudioError`.
    private func studioError(_ call: () throws -> Void) -> StudioError? {
        do {
            try call()
        } catch let error as StudioError {
            return error
        } catch {
            Issue.record(error)
        }
        return nil
    }
}
