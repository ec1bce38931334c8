import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

/// A spreadsheet taken in, over the real library. What its cells mean is tested in Rust and not again here.
@MainActor @Suite struct ImportTests {
    private let reading = "date,form,glaze,zone,wet,SG\n2026-11-20,Breakfast mug,Ash white,inside,20.5,1.45\n"

    private func editor(_ text: String, _ pottery: Pottery) throws -> URL {
        let file = pottery.folder.appendingPathComponent("readings.csv")
        try Data(text.utf8).write(to: file)
        return file
    }

    @Test func aFileThatIsNotThereIsSaid() async throws {
        let pottery = try await Pottery.furnished()
        let screen = ImportScreen(frame: pottery.frame)
        await screen.choose(pottery.folder.appendingPathComponent("none.csv"))
        #expect(screen.trouble == Words.spreadsheetNotCopied && screen.view == nil && !screen.isWorking)
        #expect(screen.chooseLabel == Words.chooseSpreadsheet)
    }

    @Test func whatCannotBeReadIsSaidOnThePage() async throws {
        let pottery = try await Pottery.furnished()
        let screen = ImportScreen(frame: pottery.frame)
        await screen.choose(try editor("", pottery))
        #expect(!screen.trouble.isEmpty && screen.view == nil && pottery.frame.failure == nil)
        #expect(screen.chooseLabel == Words.chooseAnotherSpreadsheet)
    }

    @Test func aEditorIsSeenFirstAndThenTakenIn() async throws {
        let pottery = try await Pottery.furnished()
        let screen = ImportScreen(frame: pottery.frame)
        await screen.choose(try editor(reading, pottery))
        let view = try #require(screen.view, "\(screen.trouble)")
        #expect(view.columns.count == 6)
        let column = view.columns[0]
        #expect(screen.rows(of: column).filter(\.chosen).map(\.id) == [column.text])
        let weigh = WeighScreen(frame: pottery.frame)
        await weigh.refresh()
        #expect(weigh.view?.recent.isEmpty == true)

        #expect(view.canTakeIn, "\(view.questions.map(\.label)) \(view.rowErrors) \(view.notes.map(\.text))")
        let (tap, second) = (screen.restore(), screen.restore())
        await tap.value
        await second.value
        await weigh.refresh()
        #expect(weigh.view?.recent.count == 1 && screen.trouble.isEmpty && !screen.isWorking)
        #expect(!pottery.frame.offer.sentence.isEmpty)
    }

    @Test func whatAColumnHoldsCanBeSaid() async throws {
        let pottery = try await Pottery.furnished()
        let screen = ImportScreen(frame: pottery.frame)
        await screen.choose(try editor(reading, pottery))
        let column = try #require(screen.view?.columns.last)
        let other = try #require(screen.rows(of: column).first { !$0.chosen })
        await screen.pick(other, for: column).value
        #expect(screen.view?.columns.last?.text == other.id)
        #expect(screen.detail(of: try #require(screen.view?.columns.last)).hasPrefix(other.title))
    }
}
