import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

/// What fired pots say, over the real library. What that makes of them is tested in Rust and not again here.
@MainActor @Suite struct FindingsTests {
    /// A row of mugs from thin to thick, fired and looked at.
    private func fired() async throws -> Pottery {
        let pottery = try await Pottery()
        try await pottery.editor(.form, ["name": "Small mug", "class": "cylinder_mug", "capacity": "250 ml"])
        try await pottery.editor(.glaze, ["name": "Ash white", "specific_gravity": "1.45"])
        try await pottery.editor(.scale, ["name": "Bench scale", "capacity": "2000 g", "step": "0.1 g"])
        try await pottery.editor(.kiln, ["name": "Garden kiln", "across": "60 cm", "deep": "60 cm", "shelves": "2"])
        for net in ["14.2", "15.6", "17.2", "18.4", "19.6", "20.6", "21.4", "23.8", "25.2"] {
            try await pottery.coat(net)
        }
        let firing = try await pottery.editor(.firing, ["cone": "6"]).id
        let pieces = try await pottery.frame.work.ask { studio, now in
            _ = try studio.loadAll(now: now, firing: firing)
            _ = try studio.advance(now: now, firing: firing)
            return try studio.firing(now: now, id: firing).pieces
        }
        // The wet weight stands in the line of the coat: whichever order they come in, the light ones are thin.
        let came = ["14.2": "thin", "15.6": "thin", "23.8": "thick", "25.2": "thick"]
        for piece in pieces {
            let id = piece.piece
            let coats = try await pottery.frame.work.ask { try $0.piece(now: $1, id: id).coats }
            let wet = coats.map(\.value).joined(separator: " ")
            let thickness = came.first { wet.contains($0.key) }?.value ?? "right"
            _ = try await pottery.frame.work.ask {
                try $0.assess(
                    now: $1, firing: firing, piece: id, look: .thickness(zone: "inside", thickness: thickness))
            }
        }
        return pottery
    }

    @Test func whileNothingIsKnownItSaysWhatToDo() async throws {
        let screen = FindingsScreen(frame: try await Pottery().frame)
        await screen.refresh()
        #expect(screen.view?.glazes.isEmpty == true && screen.view?.empty.isEmpty == false)
    }

    @Test func theBestIsTakenOverOnceAndTakenBack() async throws {
        let pottery = try await fired()
        let list = FindingsScreen(frame: pottery.frame)
        await list.refresh()
        let glaze = try #require(list.view?.glazes.first)
        let screen = GlazeFindingsScreen(frame: pottery.frame, glaze: glaze.id)
        await screen.refresh()
        let window = try #require(screen.view?.windows.first)
        #expect(window.chart.dots.count == 9 && !window.chart.words.isEmpty && screen.view?.take.isEmpty == false)
        let (tap, second) = (screen.adoptBest(), screen.adoptBest())
        await tap.value
        await second.value
        #expect(screen.view?.take == "" && screen.refusal.isEmpty && pottery.frame.offer.canTurn)
        // There is nothing more to take over.
        await screen.adoptBest().value
        #expect(screen.refusal.isEmpty && pottery.frame.failure == nil)
        await pottery.frame.toggleUndo().value
        await screen.refresh()
        #expect(screen.view?.take.isEmpty == false)
    }

    @Test func sizesSetsAndUseAreSaidAndADriftIsAnswered() async throws {
        let pottery = try await fired()
        let glaze = try await pottery.frame.work.ask { try $0.findings(now: $1).glazes[0].id }
        let screen = GlazeFindingsScreen(frame: pottery.frame, glaze: glaze)
        await screen.refresh()
        let sections = try #require(screen.view?.sections)
        #expect(sections.contains { $0.title == "Sizes: straight mug, inside" && $0.chart?.lines.count == 3 })
        #expect(sections.contains { $0.title == "Use" && !$0.lines.isEmpty })
        let drifts = { screen.view?.sections.filter { !$0.answer.isEmpty }.count }
        #expect(drifts() == 1)
        await screen.answerDrift().value
        #expect(drifts() == 0 && pottery.frame.offer.canTurn)
        await pottery.frame.toggleUndo().value
        await screen.refresh()
        #expect(drifts() == 1)
    }

    @Test func theChartsAreHandedOnAsOnePicture() async throws {
        let pottery = try await fired()
        let glaze = try await pottery.frame.work.ask { try $0.findings(now: $1).glazes[0].id }
        let screen = GlazeFindingsScreen(frame: pottery.frame, glaze: glaze)
        #expect(await screen.charts() == nil, "nothing is read yet")
        await screen.refresh()
        let file = try #require(await screen.charts())
        #expect(file.lastPathComponent == "Ash white.svg" && screen.trouble.isEmpty)
        #expect(try String(contentsOf: file, encoding: .utf8).contains("<svg xmlns="))
    }

    @Test func aMovedTargetIsTakenBackInOneTap() async throws {
        let pottery = try await fired()
        let screen = WeighScreen(frame: pottery.frame)
        await screen.refresh()
        let moved = try #require(screen.view?.moved)
        #expect(moved.text.hasPrefix("After 9 fired pots: ") && moved.keep.label.hasPrefix("Keep "))
        await screen.choose(moved.keep).value
        #expect(screen.view?.moved == nil)
        #expect(screen.view?.target?.wet == moved.keep.label.replacingOccurrences(of: "Keep ", with: ""))
    }

    @Test func aGlazeThatIsGoneIsSaid() async throws {
        let pottery = try await Pottery()
        let screen = GlazeFindingsScreen(frame: pottery.frame, glaze: "nobody")
        await screen.refresh()
        #expect(screen.view == nil && pottery.frame.failure?.way == .back)
    }
}
