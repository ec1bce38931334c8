import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

@MainActor @Suite struct EditorScreenTests {
    private func open(
        _ pottery: Pottery, _ kind: EditorKind, id: String = "", subject: String = ""
    ) async -> EditorScreen {
        let screen = EditorScreen(frame: pottery.frame, kind: kind, id: id, subject: subject, pause: .zero)
        await screen.refresh()
        return screen
    }

    private func field(_ key: String, of screen: EditorScreen) throws -> EditorField {
        try #require(screen.view?.fields.first { $0.key == key })
    }

    private func enter(_ values: KeyValuePairs<String, String>, on screen: EditorScreen) async throws {
        for (key, text) in values { await screen.enter(text, in: try field(key, of: screen)).value }
    }

    private let bowl: KeyValuePairs = [
        "name": "Soup bowl", "class": "deep_bowl", "way": "profile", "points": "0\t6.4\t\n3.9\t12.9\t\n7.4\t14.9\t",
    ]

    @Test func aNewFormIsSavedAndFoundAgain() async throws {
        let pottery = try await Pottery()
        let screen = await open(pottery, .form)
        #expect(!screen.hasSomethingToSave)
        try await enter(["name": "Breakfast mug", "class": "cylinder_mug", "capacity": "350 ml"], on: screen)
        #expect(screen.hasSomethingToSave && screen.view?.canSave == true)
        await screen.save().value
        #expect(screen.isDone && !pottery.frame.offer.sentence.isEmpty)
        let setup = SetupScreen(frame: pottery.frame)
        await setup.refresh()
        #expect(setup.view?.sections.first { $0.editor == .form }?.rows.map(\.title) == ["Breakfast mug"])
        await pottery.frame.toggleUndo().value
        await setup.refresh()
        #expect(setup.view?.sections.first { $0.editor == .form }?.rows.isEmpty == true)
    }

    @Test func whatIsEnteredShowsBeforeTheCoreHasAnswered() async throws {
        let screen = await open(try await Pottery(), .form)
        let name = try field("name", of: screen)
        let answer = screen.enter("Breakfast mug", in: name)
        #expect(screen.text(of: name) == "Breakfast mug")
        await answer.value
        #expect(try field("name", of: screen).text == "Breakfast mug")
    }

    @Test func whatIsRefusedIsSaidBesideItsFieldAndStaysEntered() async throws {
        let pottery = try await Pottery()
        let screen = await open(pottery, .scale)
        try await enter(["name": "Bench scale", "capacity": "heavy", "step": "0.1 g"], on: screen)
        await screen.save().value
        #expect(!screen.isDone && screen.refusedField == "capacity" && pottery.frame.offer.sentence.isEmpty)
        let capacity = try field("capacity", of: screen)
        #expect(!screen.refusal(of: capacity).isEmpty && screen.text(of: capacity) == "heavy")
        #expect(screen.text(of: try field("name", of: screen)) == "Bench scale")
        await screen.enter("2000 g", in: capacity).value
        #expect(screen.refusedField == nil)
        #expect(screen.refusal(of: try field("capacity", of: screen)).isEmpty)
        await screen.save().value
        #expect(screen.isDone)
    }

    /// As a page asks for it, also one that was made anew because the phone was turned.
    private func page(_ pottery: Pottery) -> EditorScreen {
        pottery.frame.screen("editor scale", isOver: \.isDone) {
            EditorScreen(frame: pottery.frame, kind: .scale, pause: .zero)
        }
    }

    @Test func thePhoneIsTurnedWhileItIsSaved() async throws {
        let pottery = try await Pottery()
        var screen: EditorScreen? = page(pottery)
        await screen?.refresh()
        try await enter(["name": "Bench scale", "capacity": "heavy", "step": "0.1 g"], on: try #require(screen))
        var saving = screen?.save()
        // The page goes, and with it its screen, but for the command that is under way.
        screen = nil
        var turned = page(pottery)
        await saving?.value
        #expect(!turned.isDone && turned.refusedField == "capacity")
        await turned.enter("2000 g", in: try field("capacity", of: turned)).value
        saving = turned.save()
        turned = page(pottery)
        await saving?.value
        #expect(turned.isDone && !pottery.frame.offer.sentence.isEmpty)
        #expect(page(pottery) !== turned, "the next scale is begun anew")
    }

    @Test func whatIsRestoredAfterItWasSavedIsNotSavedTwice() async throws {
        let pottery = try await Pottery()
        let screen = await open(pottery, .scale)
        try await enter(["name": "Bench scale", "capacity": "2000 g", "step": "0.1 g"], on: screen)
        let half = screen.half
        await screen.save().value
        // The system ended the app before the page was left: what was written down is there again.
        let again = EditorScreen(frame: pottery.frame, kind: .scale, pause: .zero)
        again.restore(half)
        await again.refresh()
        await again.save().value
        #expect(again.isDone)
        let setup = SetupScreen(frame: pottery.frame)
        await setup.refresh()
        #expect(setup.view?.sections.first { $0.editor == .scale }?.rows.count == 1)
    }

    @Test func twoTapsOnSaveSaveOne() async throws {
        let pottery = try await Pottery()
        let screen = await open(pottery, .scale)
        try await enter(["name": "Bench scale", "capacity": "2000 g", "step": "0.1 g"], on: screen)
        let taps = [screen.save(), screen.save()]
        for tap in taps { await tap.value }
        let setup = SetupScreen(frame: pottery.frame)
        await setup.refresh()
        #expect(setup.view?.sections.first { $0.editor == .scale }?.rows.count == 1)
    }

    @Test func whatWasSavedCanBeChangedAndPutAway() async throws {
        let pottery = try await Pottery.furnished()
        let setup = SetupScreen(frame: pottery.frame)
        await setup.refresh()
        let form = try #require(setup.view?.sections.first { $0.editor == .form }?.rows.first)
        let screen = await open(pottery, .form, id: form.id)
        try await enter(["name": "Tea mug"], on: screen)
        await screen.save().value
        await setup.refresh()
        #expect(setup.view?.sections.first { $0.editor == .form }?.rows.map(\.title) == ["Tea mug"])
        let again = await open(pottery, .form, id: form.id)
        #expect(again.view?.removeLabel.isEmpty == false)
        await again.remove().value
        await setup.refresh()
        #expect(again.isDone && setup.view?.sections.first { $0.editor == .form }?.rows.isEmpty == true)
        await pottery.frame.toggleUndo().value
        await setup.refresh()
        #expect(setup.view?.sections.first { $0.editor == .form }?.rows.count == 1)
    }

    @Test func whatWasThinnedIsCheckedNext() async throws {
        let pottery = try await Pottery.furnished()
        let buckets = BucketsScreen(frame: pottery.frame)
        await buckets.refresh()
        let bucket = try #require(buckets.view?.buckets.first)
        let screen = await open(pottery, .thin, subject: bucket.id)
        try await enter(["to": "1.4", "volume": "5 l"], on: screen)
        await screen.save().value
        #expect(screen.isDone && screen.next == .editor(.check, subject: bucket.id))
    }

    @Test func aNewLotLeadsToItsPage() async throws {
        let pottery = try await Pottery.furnished()
        let buckets = BucketsScreen(frame: pottery.frame)
        await buckets.refresh()
        let id = try #require(buckets.view?.buckets.first?.id)
        let page = BucketScreen(frame: pottery.frame, id: id)
        await page.refresh()
        let screen = await open(pottery, .mix, subject: try #require(page.view?.glazeId))
        try await enter(["powder": "1000"], on: screen)
        await screen.save().value
        guard case .bucket(let lot)? = screen.next else {
            Issue.record("a new lot is looked at next")
            return
        }
        #expect(lot != id)
    }

    @Test func aBucketIsCheckedAndItsPageShowsIt() async throws {
        let pottery = try await Pottery.furnished()
        let buckets = BucketsScreen(frame: pottery.frame)
        await buckets.refresh()
        let id = try #require(buckets.view?.buckets.first?.id)
        let page = BucketScreen(frame: pottery.frame, id: id)
        await page.refresh()
        let before = try #require(page.view)
        guard case .editor(.check, "", let subject)? = page.ways.first?.place else {
            Issue.record("the first way is to check the bucket")
            return
        }
        let screen = await open(pottery, .check, subject: subject)
        try await enter(["way": "typed", "typed": "1.41"], on: screen)
        await screen.save().value
        await page.refresh()
        #expect(page.view?.sg.contains("1.41") == true && page.view?.notebook.count == before.notebook.count + 1)
    }

    @Test func thePreferencesAreReadAnewOnceSaved() async throws {
        let pottery = try await Pottery()
        let screen = await open(pottery, .preference)
        try await enter(["decimal": "comma", "speak": "yes"], on: screen)
        await screen.save().value
        #expect(pottery.frame.preferences?.decimal == "," && pottery.frame.preferences?.speak == true)
    }

    @Test func whatIsHalfFilledInIsThereAfterTheAppWasEnded() async throws {
        let pottery = try await Pottery()
        let screen = await open(pottery, .scale)
        #expect(screen.half.isEmpty)
        try await enter(["name": "Bench scale", "capacity": "heavy"], on: screen)
        let half = screen.half
        try await pottery.reopen()
        let again = EditorScreen(frame: pottery.frame, kind: .scale, pause: .zero)
        again.restore(half)
        await again.refresh()
        #expect(again.text(of: try field("capacity", of: again)) == "heavy" && again.hasSomethingToSave)
        again.restore(["name": "Another"])
        #expect(again.text(of: try field("name", of: again)) == "Bench scale")
        again.leave()
        #expect(again.half.isEmpty)
    }

    // MARK: The drawing

    @Test func aDragIsEnteredAsIfItHadBeenTypedAndOneUndoTakesItBack() async throws {
        let screen = await open(try await Pottery(), .form)
        try await enter(bowl, on: screen)
        let points = screen.text(of: try field("points", of: screen))
        let grip = try #require(screen.view?.drawing?.grips.first { $0.line.isEmpty })
        screen.begin()
        for step in 1...5 {
            screen.touch(.move(grip: grip.key, to: Spot(x: grip.at.x - 0.02 * Double(step), y: grip.at.y)))
        }
        await screen.touch(.move(grip: grip.key, to: Spot(x: grip.at.x - 0.1, y: grip.at.y))).value
        #expect(screen.text(of: try field("points", of: screen)) != points && screen.canUndoDrawing)
        await screen.undoDrawing().value
        #expect(screen.text(of: try field("points", of: screen)) == points && !screen.canUndoDrawing)
    }

    @Test func whatIsTypedAfterADragIsNotTakenBackWithIt() async throws {
        let screen = await open(try await Pottery(), .form)
        try await enter(bowl, on: screen)
        let grip = try #require(screen.view?.drawing?.grips.first { $0.line.isEmpty })
        screen.begin()
        await screen.touch(.move(grip: grip.key, to: Spot(x: grip.at.x - 0.05, y: grip.at.y))).value
        try await enter(["points": "0\t5\t\n8\t12\t"], on: screen)
        #expect(!screen.canUndoDrawing)
    }

    @Test func saveWaitsForTheFinger() async throws {
        let pottery = try await Pottery()
        let screen = await open(pottery, .form)
        try await enter(bowl, on: screen)
        let before = screen.text(of: try field("points", of: screen))
        let grip = try #require(screen.view?.drawing?.grips.first { $0.line.isEmpty })
        screen.begin()
        screen.touch(.move(grip: grip.key, to: Spot(x: grip.at.x - 0.05, y: grip.at.y)))
        await screen.save().value
        #expect(screen.isDone)
        let saved = await open(pottery, .form, id: pottery.frame.offer.savedId)
        #expect(saved.text(of: try field("points", of: saved)) != before)
    }

    // MARK: The photograph

    @Test func aPhotographGivesAnOutline() async throws {
        let pottery = try await Pottery()
        let screen = await open(pottery, .form)
        try await enter(["name": "Vase", "way": "photograph"], on: screen)
        let photo = try #require(screen.view?.fields.first { $0.kind == .photo })
        let work = screen.photograph(Picture.vase(), in: photo)
        #expect(screen.isLookingAtPicture)
        await work.value
        let shown = try #require(screen.view?.drawing?.photo)
        #expect(!screen.isLookingAtPicture && FileManager.default.fileExists(atPath: shown))
        // The picture as it was taken is gone; the copy that is shown is there until the sheet is left.
        #expect(try pottery.handedOver() == [URL(fileURLWithPath: shown).lastPathComponent])
        screen.leave()
        #expect(try pottery.handedOver().isEmpty)
    }

    @Test(arguments: [Data(), Data("no picture".utf8)])
    func aPhotographThatIsNoneIsSaidBesideItsField(_ picture: Data) async throws {
        let pottery = try await Pottery()
        let screen = await open(pottery, .form)
        try await enter(["name": "Vase", "way": "photograph"], on: screen)
        let photo = try #require(screen.view?.fields.first { $0.kind == .photo })
        await screen.photograph(picture, in: photo).value
        #expect(!screen.refusal(of: photo).isEmpty && !screen.isLookingAtPicture)
        #expect((screen.refusal(of: photo) == Words.emptyPicture) == picture.isEmpty)
        #expect(screen.text(of: try field("name", of: screen)) == "Vase")
        #expect(screen.view?.drawing?.photo.isEmpty != false)
        #expect(try pottery.handedOver().isEmpty)
    }
}

@Suite struct NumberTableTests {
    @Test func whatIsTypedComesBackAsText() {
        var table = NumberTable(text: "0\t6.4\t\n3.9\t12.9", columns: 3)
        #expect(table.rows == [["0", "6.4", ""], ["3.9", "12.9", ""]])
        table.type("0.5\t", row: 1, column: 2)
        table.addRow()
        table.type("7.4", row: 2, column: 0)
        #expect(table.text == "0\t6.4\t\n3.9\t12.9\t0.5 \n7.4\t\t")
        table.takeAway(row: 0)
        table.takeAway(row: 9)
        table.type("1", row: 9, column: 0)
        #expect(table.text == "3.9\t12.9\t0.5 \n7.4\t\t")
    }

    @Test func anEmptyFieldIsOneEmptyRow() {
        #expect(NumberTable(text: "", columns: 2).rows == [["", ""]])
    }
}

@Suite struct EnteredTests {
    @Test func undoBringsBackWhatStoodThere() {
        var entered = Entered()
        entered.type("1", key: "a")
        let step = entered.begin()
        entered.put([Value(key: "a", text: "2"), Value(key: "b", text: "3")], step: step)
        entered.put([Value(key: "a", text: "4")], step: step)
        #expect(entered["a"] == "4" && entered["b"] == "3" && entered.canUndo)
        entered.undo()
        #expect(entered["a"] == "1" && entered["b"] == nil && !entered.canUndo)
    }

    @Test func whatComesOfAStepThatWasTakenBackIsDropped() {
        var entered = Entered()
        let step = entered.begin()
        entered.undo()
        entered.put([Value(key: "a", text: "2")], step: step)
        #expect(entered.isEmpty)
    }

    @Test func fiftyStepsCanBeTakenBack() {
        var entered = Entered()
        for number in 1...60 {
            let step = entered.begin()
            entered.put([Value(key: "a", text: String(number))], step: step)
        }
        for _ in 1...60 { entered.undo() }
        #expect(entered["a"] == "10")
    }
}
