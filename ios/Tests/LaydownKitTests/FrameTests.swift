import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

@MainActor @Suite struct FrameTests {
    @Test func aFileThatIsNoStudioIsLeftAsItWas() async throws {
        let pottery = try await Pottery()
        let folder = pottery.folder.appendingPathComponent("other")
        try FileManager.default.createDirectory(at: folder, withIntermediateDirectories: true)
        let file = folder.appendingPathComponent("studio.laydown")
        try Data("not a studio".utf8).write(to: file)
        let frame = AppModel(folder: StudioFolder(folder), phone: .invented())
        await frame.open()
        let failure = try #require(frame.failure)
        #expect(!failure.sentence.isEmpty && failure.way == .tryAgain && frame.preferences == nil)
        #expect(try Data(contentsOf: file) == Data("not a studio".utf8))
        try FileManager.default.removeItem(at: file)
        await frame.open()
        #expect(frame.failure == nil && frame.preferences != nil)
    }

    @Test func whatCanBeReadOfADamagedStudioIsSavedAndTheDamagedFileIsSaved() async throws {
        let folder = Pottery.Folder().url.appendingPathComponent("damaged")
        try {
            // Closed by the end of this: its log is then in the file.
            _ = try StudioFolder(folder).open(Now(unixMs: 1_790_000_000_000, utcOffsetS: 0)).preferences()
        }()
        let file = folder.appendingPathComponent("studio.laydown")
        let whole = try Data(contentsOf: file)
        try whole.dropLast(100).write(to: file)
        let frame = AppModel(folder: StudioFolder(folder), phone: .invented())
        await frame.open()
        #expect(frame.failure?.way == .saveReadable)
        await frame.saveReadable()
        #expect(frame.failure?.way == .back && frame.failure?.sentence.contains("damaged file was kept") == true)
        await frame.open()
        #expect(frame.failure == nil && frame.preferences != nil)
    }

    @Test func aFailureOfTheProgramIsSaidInWords() async {
        struct Odd: Error {}
        let transferFolder = TransferFolder(folder: Pottery.Folder().url)
        let odd = StudioWork(recover: { _ in throw Odd() }, open: { _ in throw Odd() })
        let frame = AppModel(work: odd, transferFolder: transferFolder, phone: .invented())
        await frame.open()
        #expect(frame.failure == AppModel.Failure(sentence: Words.broken, way: .tryAgain))
        let foreign = StudioWork(recover: { _ in throw Odd() }, open: { _ in throw LibraryMismatch() })
        let other = AppModel(work: foreign, transferFolder: transferFolder, phone: .invented())
        await other.open()
        #expect(other.failure == AppModel.Failure(sentence: Words.otherBuild, way: .none))
    }

    @Test func callsAreMadeInTheOrderInWhichTheyAreAskedFor() async throws {
        let pottery = try await Pottery()
        let work = pottery.frame.work
        let seen = Order()
        let calls = (0..<50).map { number in Task { _ = try? await work.ask { _, _ in seen.add(number) } } }
        for call in calls { await call.value }
        #expect(seen.numbers == Array(0..<50))
    }

    /// Numbers in the order in which the studio's queue saw them: only that queue adds to it.
    private final class Order: @unchecked Sendable {
        private(set) var numbers: [Int] = []
        func add(_ number: Int) { numbers.append(number) }
    }

    @Test func theMarkOfThePhoneLiesBesideTheStudioAndNotInIt() async throws {
        let pottery = try await Pottery()
        let mark = pottery.folder.appendingPathComponent("this_phone/mark")
        let first = try String(contentsOf: mark, encoding: .utf8)
        try await pottery.reopen()
        #expect(try String(contentsOf: mark, encoding: .utf8) == first)
        // As after a move to another phone, which the mark does not come along to.
        try FileManager.default.removeItem(at: mark)
        try await pottery.reopen()
        #expect(try String(contentsOf: mark, encoding: .utf8) != first)
    }

    @Test func aPlaceIsFoundAgainWhereItWasWrittenDown() throws {
        let sheets = EditorKind.all.map { Place.editor($0, id: "1", subject: "2") }
        let places: [Place] = [
            .coat("1"), .bucket("1"), .sizes, .cautions, .backup, .firing("1"), .look(firing: "1", piece: "2"),
            .contactSheet(firing: "1"), .contactSheet(firing: "1", piece: "2"), .archived, .meanwhile, .piece("1"),
            .compare("1"), .find, .glazeFindings("1"),
            .history("1"), .history(""), .devices, .import,
        ]
        let written = try JSONEncoder().encode(sheets + places)
        #expect(try JSONDecoder().decode([Place].self, from: written) == sheets + places)
        for unknown in [#"["barn"]"#, #"["editor","barn","",""]"#, #"["coat"]"#, "[]"] {
            #expect(throws: DecodingError.self) { try JSONDecoder().decode(Place.self, from: Data(unknown.utf8)) }
        }
    }

    @Test func aPictureThatTheAppDiedOverIsSweptAndOneThatIsShownIsNot() async throws {
        let pottery = try await Pottery()
        for name in ["piece-1.jpg", "piece-2.upright.jpg"] {
            try Data("picture".utf8).write(to: pottery.frame.transferFolder.place(named: name))
        }
        try await pottery.reopen()
        #expect(try pottery.handedOver() == ["piece-2.upright.jpg"])
    }

    @Test func whatCanBePutRightIsSaidInPlaceAndAnythingElseOverTheWholeScreen() async throws {
        let pottery = try await Pottery()
        let full = StudioError.Full(sentence: "The phone is full.")
        #expect(pottery.frame.refusal(of: full) == "The phone is full." && pottery.frame.failure == nil)
        #expect(pottery.frame.refusal(of: StudioError.Missing(sentence: "It is gone.")) == nil)
        #expect(pottery.frame.failure == AppModel.Failure(sentence: "It is gone.", way: .back))
        await pottery.frame.open()
        #expect(pottery.frame.failure == nil)
        #expect(pottery.frame.refusal(of: StudioError.Damaged(sentence: "It is damaged.")) == nil)
        #expect(pottery.frame.failure?.way == .saveReadable)
    }
}
