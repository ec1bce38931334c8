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
        #expect(buildStamp() == generatedBuildStamp)
    }

    @Test func anEmptyStudioSaysWhatItNeeds() throws {
        let screen = try WeighScreen(studio: Studio.open(path: file, now: .onThisDevice()))
        #expect(screen.view.missing.map(\.sheet) == [.form, .glaze, .scale])
        #expect(!screen.view.canKeep)
    }

    @Test func aReadingIsJudged() throws {
        let screen = try WeighScreen(studio: furnished())
        #expect(screen.view.verdict == nil)
        try screen.enter { $0.net = "19.4" }
        #expect(screen.view.verdict?.headline.isEmpty == false)
        #expect(screen.view.canKeep)
    }

    @Test func aKeptReadingIsThereAfterReopening() throws {
        try {
            let screen = try WeighScreen(studio: furnished())
            try screen.enter { $0.net = "19.4" }
            _ = try screen.keep()
        }()
        let reopened = try WeighScreen(studio: Studio.open(path: file, now: .onThisDevice()))
        #expect(reopened.view.recent.map(\.wet) == ["19.4 g"])
    }

    @Test func nonsenseIsRefusedWithASentenceAndTheFieldToGoBackTo() throws {
        let screen = try WeighScreen(studio: furnished())
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
        let error = studioError { _ = try Studio.open(path: file, now: .onThisDevice()) }
        #expect(error?.sentence.isEmpty == false)
        #expect(try String(contentsOfFile: file, encoding: .utf8) == "not a studio")
    }

    /// A studio with one form, one glaze and one scale, set up through the sheets as a potter does it.
    private func furnished() throws -> Studio {
        let studio = try Studio.open(path: file, now: .onThisDevice())
        let sheets: [(SheetKind, [(String, String)])] = [
            (.form, [("name", "Small mug"), ("class", "cylinder_mug"), ("capacity", "250 ml")]),
            (.glaze, [("name", "Ash white"), ("specific_gravity", "1.45")]),
            (.scale, [("name", "Bench scale"), ("capacity", "2000 g"), ("step", "0.1 g")]),
        ]
        for (kind, values) in sheets {
            let values = values.map { Value(key: $0.0, text: $0.1) }
            let entry = SheetEntry(kind: kind, id: "", subject: "", values: values)
            _ = try studio.keepSheet(now: .onThisDevice(), entry: entry)
        }
        return studio
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
