import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

/// The Weigh screen over the real library. What that computes is tested in Rust and not again here.
@MainActor @Suite struct WeighScreenTests {
    private func screen(_ pottery: Pottery) async -> WeighScreen {
        let screen = WeighScreen(frame: pottery.frame)
        await screen.refresh()
        return screen
    }

    private func type(_ digits: String, on screen: WeighScreen) async {
        for digit in digits { await screen.press(digit == "." ? .decimal : .digit(digit.wholeNumberValue ?? 0)).value }
    }

    @Test func theLibraryIsTheOneTheseBindingsWereMadeFor() {
        #expect(buildStamp() == generatedBuildStamp)
    }

    @Test func anEmptyStudioSaysWhatItNeeds() async throws {
        let screen = await screen(try await Pottery())
        #expect(screen.view?.missing.map(\.editor) == [.form, .glaze, .scale])
        #expect(!screen.canPressSave)
    }

    @Test func aReadingIsJudged() async throws {
        let screen = await screen(try await .furnished())
        #expect(screen.view?.verdict == nil)
        await type("19.4", on: screen)
        #expect(screen.entry?.net == "19.4")
        #expect(screen.view?.verdict?.headline.isEmpty == false)
        #expect(screen.canPressSave && screen.presses == 4)
    }

    @Test func aSlipIsAskedAboutAndMendedInOneTap() async throws {
        let screen = await screen(try await .furnished())
        await type("194", on: screen)
        let question = try #require(screen.view?.question)
        // No piece of this form can hold 194 g, so that only the slip mended is offered.
        #expect(screen.view?.verdict == nil && question.choices.count == 1)
        await screen.saveOrNext().value
        #expect(screen.refusal == question.text && screen.view?.recent.isEmpty == true)
        await screen.answer(try #require(question.choices.first)).value
        #expect(screen.entry?.net == "19.4" && screen.refusal.isEmpty && screen.view?.verdict?.kind == .guess)
    }

    @Test func whatIsTypedShowsBeforeTheCoreHasAnswered() async throws {
        let screen = await screen(try await .furnished())
        let answer = screen.press(.digit(7))
        #expect(screen.entry?.net == "7")
        #expect(screen.view?.entry.net.isEmpty == true)
        await answer.value
        #expect(screen.view?.entry.net == "7")
    }

    @Test func fastKeysAreAllThere() async throws {
        let screen = await screen(try await .furnished())
        let answers = "1234".map { screen.press(.digit($0.wholeNumberValue ?? 0)) }
        for answer in answers { await answer.value }
        #expect(screen.view?.entry.net == "1234")
    }

    @Test func aKeyPressedJustBeforeTheAnswerToTheOneBeforeIsThere() async throws {
        let screen = await screen(try await .furnished())
        let first = screen.press(.digit(1))
        await Task.yield()
        // The answer has come, and waits for the main actor.
        usleep(100_000)
        let second = screen.press(.digit(2))
        for answer in [first, second] { await answer.value }
        #expect(screen.entry?.net == "12" && screen.view?.entry.net == "12")
    }

    @Test func aSavedReadingIsThereAfterReopening() async throws {
        let pottery = try await Pottery.furnished()
        let screen = await screen(pottery)
        await type("19.4", on: screen)
        await screen.saveOrNext().value
        #expect(!screen.offer.sentence.isEmpty && screen.entry?.net == "")
        try await pottery.reopen()
        #expect(await self.screen(pottery).view?.recent.map(\.wet) == ["19.4 g"])
    }

    @Test func whatIsHalfTypedIsThereAfterTheAppWasEnded() async throws {
        let pottery = try await Pottery.furnished()
        let screen = await screen(pottery)
        await type("19", on: screen)
        await screen.leave().value
        try await pottery.reopen()
        #expect(await self.screen(pottery).entry?.net == "19")
    }

    @Test func undoTakesTheCoatBackAndDoesItAgain() async throws {
        let pottery = try await Pottery.furnished()
        let screen = await screen(pottery)
        await type("19.4", on: screen)
        await screen.saveOrNext().value
        let saved = screen.offer.sentence
        await pottery.frame.toggleUndo().value
        await screen.refresh()
        #expect(screen.view?.recent.isEmpty == true && screen.offer.isTakenBack && screen.offer.label == Words.doAgain)
        #expect(screen.offer.next.count == 1 && screen.offer.turns == 1)
        await pottery.frame.toggleUndo().value
        await screen.refresh()
        #expect(screen.view?.recent.count == 1 && screen.offer.sentence == saved && !screen.offer.isTakenBack)
    }

    @Test func anUndoneCoatIsWeighedAgainOnItsPiece() async throws {
        let pottery = try await Pottery.furnished()
        let screen = await screen(pottery)
        await type("19.4", on: screen)
        await screen.saveOrNext().value
        let code = try #require(screen.offer.sentence.components(separatedBy: "Mark ").last).prefix(5)
        await pottery.frame.toggleUndo().value
        let again = try #require(screen.offer.next.first)
        #expect(again.label == "Weigh \(code) again")
        await screen.goOn(with: again).value
        #expect(screen.view?.zone == "Inside, \(code)")
        await type("19.8", on: screen)
        await screen.saveOrNext().value
        #expect(screen.offer.sentence.contains("Mark \(code) on the foot"))
    }

    @Test func aPieceIsComeBackToFromTheListAndByItsCode() async throws {
        let pottery = try await Pottery.furnished()
        for net in ["19.4", "19.6"] { try await pottery.coat(net) }
        let screen = await screen(pottery)
        let picker = try #require(screen.piecePicker())
        await picker.refresh()
        #expect(picker.view?.groups.map(\.heading) == ["Insides waiting for outsides"])
        let first = try #require(picker.view?.groups.first?.pieces.last)
        let code = first.title.suffix(5)
        await picker.type(code.lowercased()).value
        #expect(picker.view?.groups.first?.pieces.map(\.title) == [first.title])
        await screen.pick(first).value
        #expect(screen.view?.zone == "Outside, \(code)" && screen.entry?.net.isEmpty == true)
        await picker.type("!").value
        #expect(picker.view?.groups.isEmpty == true && picker.view?.nothing.isEmpty == false)
    }

    @Test func aSavedCoatIsCorrected() async throws {
        let pottery = try await Pottery.furnished()
        let coat = try await pottery.coat("19.4").id
        let sheet = EditorScreen(frame: pottery.frame, kind: .coat, id: coat, pause: .milliseconds(1))
        await sheet.refresh()
        #expect(sheet.view?.fields.map(\.key) == ["net", "added", "rubbed_off", "bucket", "piece", "zone", "dip"])
        let values = [Value(key: "net", text: "18.9"), Value(key: "added", text: "0.3")]
        let entry = EditorEntry(kind: .coat, id: coat, subject: "", values: values)
        let corrected = try await pottery.frame.work.ask { try $0.saveRecord(now: $1, entry: entry) }
        #expect(await screen(pottery).view?.recent.map(\.wet) == ["19.2 g"])
        _ = try await pottery.frame.work.ask { try $0.undo(now: $1, token: corrected.undo) }
        #expect(await screen(pottery).view?.recent.map(\.wet) == ["19.4 g"])
    }

    @Test func eachZoneBringsItsGlazeBack() async throws {
        let pottery = try await Pottery.furnished()
        try await pottery.editor(.glaze, ["name": "Iron red", "specific_gravity": "1.5"])
        let screen = await screen(pottery)
        let row = { (choice: WeighChoice, title: String) in
            try #require(screen.view.flatMap { view in choice.rows(of: view).first { $0.title == title } })
        }
        await screen.choose(.zone, try row(.zone, "Outside")).value
        await screen.choose(.glaze, try row(.glaze, "Iron red")).value
        let red = screen.view?.bucket
        await screen.choose(.zone, try row(.zone, "Inside")).value
        #expect(screen.view?.bucket != red)
        await screen.choose(.zone, try row(.zone, "Outside")).value
        #expect(screen.view?.bucket == red)
    }

    @Test func twoTapsOnUndoTakeBackOnce() async throws {
        let pottery = try await Pottery.furnished()
        let screen = await screen(pottery)
        await type("19.4", on: screen)
        await screen.saveOrNext().value
        let taps = [pottery.frame.toggleUndo(), pottery.frame.toggleUndo()]
        for tap in taps { await tap.value }
        await screen.refresh()
        #expect(screen.view?.recent.isEmpty == true)
    }

    @Test func twoTapsOnSaveSaveOneCoat() async throws {
        let screen = await screen(try await .furnished())
        await type("19.4", on: screen)
        let taps = [screen.saveOrNext(), screen.saveOrNext()]
        for tap in taps { await tap.value }
        #expect(screen.view?.recent.count == 1)
    }

    @Test func whatIsRefusedStaysTyped() async throws {
        let screen = await screen(try await .furnished())
        await type("0", on: screen)
        await screen.saveOrNext().value
        #expect(!screen.refusal.isEmpty && screen.entry?.net == "0")
        #expect(screen.view?.recent.isEmpty == true && screen.offer.sentence.isEmpty)
        await screen.press(.digit(9)).value
        #expect(screen.refusal.isEmpty)
    }

    @Test func aKeyPressedRightAfterSaveIsTheFirstOfTheNextPiece() async throws {
        let screen = await screen(try await .furnished())
        await type("19.4", on: screen)
        let saving = screen.saveOrNext()
        while screen.entry != nil { await Task.yield() }
        screen.press(.digit(7))
        await saving.value
        #expect(screen.entry?.net == "7")
    }

    @Test func saveFollowsTheVerdict() async throws {
        let screen = await screen(try await .furnished())
        await type("15.0", on: screen)
        #expect(screen.view?.verdict?.kind == .guess && screen.isSaveProposed && screen.saveLabel == Words.save)
        #expect(screen.canPressSave)
        await screen.press(.clear).value
        #expect(screen.isSaveProposed && screen.saveLabel == Words.save && !screen.canPressSave)
        await type("0.0", on: screen)
        #expect(screen.view?.refusal != nil && !screen.canPressSave)
        let judging = screen.press(.digit(1))
        #expect(screen.canPressSave, "not judged yet")
        await judging.value
    }

    @Test func twoWeightsAreFilledOneAfterTheOther() async throws {
        let screen = await screen(try await .furnished())
        await screen.turnWay().value
        let fields = try #require(screen.view?.fields)
        #expect(fields.map(\.field) == [.bare, .glazed])
        await screen.fill(.bare).value
        await type("310", on: screen)
        #expect(screen.saveLabel == Words.nextField(fields[1].label))
        await screen.saveOrNext().value
        #expect(screen.entry?.field == .glazed)
        await type("330", on: screen)
        let isProposed = screen.isSaveProposed
        #expect(screen.view?.verdict != nil && screen.saveLabel == (isProposed ? Words.save : Words.saveAsIs))
        await screen.saveOrNext().value
        #expect(screen.view?.recent.map(\.wet) == ["20.0 g"])
    }

    @Test func aChoiceIsRememberedForTheNextStart() async throws {
        let pottery = try await Pottery.furnished()
        let screen = await screen(pottery)
        let zone = try #require(screen.view.map(WeighChoice.zone.rows)?.last { !$0.chosen })
        await screen.choose(.zone, zone).value
        try await pottery.reopen()
        let reopened = await self.screen(pottery)
        #expect(reopened.view.map(WeighChoice.zone.chosen) == zone.title)
    }

    @Test func theNextCoatOfThePieceIsReadyToWeigh() async throws {
        let screen = await screen(try await .furnished())
        let inside = try #require(screen.view?.zones.first { $0.id == "inside" })
        await screen.choose(.zone, inside).value
        await type("19.4", on: screen)
        await screen.saveOrNext().value
        let next = try #require(screen.offer.next.first)
        await screen.goOn(with: next).value
        #expect(screen.entry?.piece.isEmpty == false && screen.offer.sentence.isEmpty)
    }

    @Test func theVerdictIsSpokenWhereThePhoneIsToSpeakAndToWhoeverListens() async throws {
        for (speaks, listens) in [(true, false), (false, true), (false, false)] {
            let pottery = try await Pottery.furnished()
            try await pottery.editor(.preference, ["speak": speaks ? "yes" : "no"])
            await pottery.frame.open()
            var said: [String] = []
            let screen = WeighScreen(frame: pottery.frame, rest: .seconds(60), isListenedTo: { listens }) {
                said.append($0)
            }
            await screen.refresh()
            await type("19.4", on: screen)
            let spoken = try #require(screen.view?.verdict?.spoken)
            await screen.saveOrNext().value
            #expect(said == (speaks || listens ? [spoken] : []))
        }
    }

    @Test func theRecordOfACoat() async throws {
        let pottery = try await Pottery.furnished()
        let id = try await pottery.coat("19.4").id
        let screen = CoatScreen(frame: pottery.frame, id: id)
        await screen.refresh()
        #expect(screen.view?.control == false && screen.view?.lines.isEmpty == false)
        #expect(screen.view?.controlQuestion.contains("not fired yet") == true)
        await screen.turnControl().value
        #expect(screen.view?.control == true && screen.view?.controlQuestion.isEmpty == true)
        let taps = [Task { await screen.takeBack() }, Task { await screen.takeBack() }]
        #expect(await taps[0].value)
        #expect(await !taps[1].value && pottery.frame.failure == nil)
        await screen.refresh()
        #expect(pottery.frame.failure?.way == .back)
    }
}
