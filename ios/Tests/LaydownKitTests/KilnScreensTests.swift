import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

@MainActor @Suite struct KilnScreensTests {
    private func open(_ pottery: Pottery, firing: String) async -> FiringScreen {
        let screen = FiringScreen(frame: pottery.frame, id: firing)
        await screen.refresh()
        return screen
    }

    private func look(_ pottery: Pottery, _ firing: String, piece: String = "") async -> AssessmentScreen {
        let screen = AssessmentScreen(frame: pottery.frame, firing: firing, piece: piece)
        await screen.refresh()
        return screen
    }

    // MARK: Loading

    @Test func theKilnShowsWhatWaitsAndTheFirings() async throws {
        let empty = KilnScreen(frame: try await Pottery().frame)
        await empty.refresh()
        #expect(empty.view?.hasKiln == false && empty.view?.firings.isEmpty == true)
        let (pottery, firing) = try await Pottery.loading()
        let screen = KilnScreen(frame: pottery.frame)
        await screen.refresh()
        #expect(screen.view?.hasKiln == true && screen.view?.firings.map(\.id) == [firing])
    }

    @Test func piecesAreLoadedMovedTakenOutAndTakenBack() async throws {
        let (pottery, firing) = try await Pottery.loading()
        let screen = await open(pottery, firing: firing)
        let waiting = try #require(screen.view?.waiting.first)
        #expect(!screen.hasTicks)
        screen.tick(waiting)
        #expect(screen.isTicked(waiting) && screen.shelves.count == (waiting.pieces.count > 1 ? 4 : 2))
        await screen.load(try #require(screen.shelves.last)).value
        let grip = try #require(screen.view?.shelves.last?.drawing.grips.first)
        #expect(screen.view?.pieces.count == 1)
        await screen.touch(.move(grip: grip.key, to: Spot(x: 0.5, y: 0.5))).value
        let moved = try #require(screen.view?.shelves.last?.drawing.grips.first)
        #expect(moved.at != grip.at)
        await screen.touch(.remove(grip: grip.key)).value
        #expect(screen.view?.pieces.isEmpty == true)
        await pottery.frame.toggleUndo().value
        await screen.refresh()
        #expect(screen.view?.pieces.count == 1)
    }

    @Test func allThatWaitsIsPutOnAChosenShelfAtOnce() async throws {
        let (pottery, firing) = try await Pottery.loading()
        let screen = await open(pottery, firing: firing)
        let waiting = screen.view?.waiting.flatMap(\.pieces).count
        screen.tickAll()
        #expect(screen.isAllTicked)
        screen.tickAll()
        #expect(!screen.hasTicks)
        screen.tickAll()
        await screen.load(try #require(screen.shelves.last)).value
        #expect(screen.view?.shelves.last?.drawing.grips.count == waiting && !screen.hasTicks)
    }

    @Test func allThatWaitsIsPutInAndWhatIsToBeLookedAtIsTickedOff() async throws {
        let (pottery, firing) = try await Pottery.loading()
        let screen = await open(pottery, firing: firing)
        await screen.loadAll().value
        #expect(screen.view?.pieces.count == 3 && screen.view?.waiting.isEmpty == true)
        let tick = try #require(screen.view?.before.first)
        await screen.toggleUndo(tick).value
        #expect(screen.view?.before.first?.done == !tick.done)
    }

    @Test func whatIsRefusedIsSaidOnThePageAndChangesNothing() async throws {
        let (pottery, firing) = try await Pottery.fired()
        let looked = await look(pottery, firing)
        await looked.like(looked.stars[4]).value
        let screen = await open(pottery, firing: firing)
        await screen.touch(.remove(grip: try #require(looked.view?.piece))).value
        #expect(!screen.refusal.isEmpty && screen.view?.pieces.count == 3 && pottery.frame.failure == nil)
        await screen.advance().value
        #expect(screen.refusal.isEmpty)
    }

    @Test func aRowLeadsToThePieceWhileLoadingAndToLookingAtItAfterwards() async throws {
        let (pottery, firing) = try await Pottery.loading()
        let screen = await open(pottery, firing: firing)
        await screen.loadAll().value
        let piece = try #require(screen.view?.pieces.first)
        #expect(screen.place(of: piece) == .piece(piece.piece) && !screen.hasContactSheet)
        await screen.advance().value
        #expect(screen.place(of: piece) == .look(firing: firing, piece: piece.piece) && screen.hasContactSheet)
    }

    @Test func twoTapsTakeAFiringOnByOneState() async throws {
        let (pottery, firing) = try await Pottery.loading()
        let screen = await open(pottery, firing: firing)
        await screen.loadAll().value
        let before = screen.view?.next
        let taps = [screen.advance(), screen.advance()]
        for tap in taps { await tap.value }
        let fired = screen.view
        #expect(fired?.isLoading == false && fired?.next != before && fired?.lookLabel.isEmpty == false)
        await screen.advance().value
        #expect(screen.view?.next != fired?.next)
    }

    @Test func aFiringThatIsGoneLeadsBack() async throws {
        let pottery = try await Pottery()
        let screen = await open(pottery, firing: "019ab000-0000-7000-8000-000000000000")
        #expect(screen.view == nil && pottery.frame.failure?.way == .back)
    }

    // MARK: Looking

    @Test func everyTapIsSaved() async throws {
        let (pottery, firing) = try await Pottery.fired()
        let screen = await look(pottery, firing)
        let question = try #require(screen.view?.questions.first)
        await screen.say(.thickness(zone: question.zone, thickness: question.choices[0].code)).value
        #expect(screen.view?.questions.first?.choices[0].chosen == true)
        await screen.like(screen.stars[3]).value
        #expect(screen.view?.liking == 4 && screen.stars.map(\.chosen) == [false, false, false, true, false])
        let fault = try #require(screen.view?.faults.first)
        await screen.say(.fault(fault: fault.code, on: true)).value
        await screen.say(.where(touch: .add(at: Spot(x: 0.8, y: 0.5)))).value
        #expect(screen.view?.faults.first?.on == true && screen.view?.drawing?.grips.count == 1)
        await pottery.frame.toggleUndo().value
        await screen.refresh()
        #expect(screen.view?.drawing?.grips.isEmpty == true)
    }

    @Test func whatIsWrittenIsSavedWhenOneGoesOn() async throws {
        let (pottery, firing) = try await Pottery.fired()
        let screen = await look(pottery, firing)
        let first = try #require(screen.view?.piece)
        screen.write("Runs at the foot")
        #expect(screen.note == "Runs at the foot" && screen.view?.note.isEmpty == true)
        #expect(await !screen.goOn())
        #expect(screen.view?.piece != first && screen.note.isEmpty)
        await screen.goBack()
        #expect(screen.view?.piece == first && screen.note == "Runs at the foot")
    }

    @Test func afterTheLastPieceThePageIsLeft() async throws {
        let (pottery, firing) = try await Pottery.fired()
        let screen = await look(pottery, firing)
        var seen: Set<String> = []
        repeat { seen.insert(try #require(screen.view?.piece)) } while await !screen.goOn()
        #expect(seen.count == 3 && screen.nextLabel == Words.lastPiece)
    }

    @Test func aPhotographIsSavedTakenOffAndTakenBack() async throws {
        let (pottery, firing) = try await Pottery.fired()
        let screen = await look(pottery, firing)
        let work = screen.save(picture: Picture.vase())
        #expect(screen.isSavingPicture)
        await work.value
        let photo = try #require(screen.view?.photos.first)
        #expect(FileManager.default.fileExists(atPath: photo.preview) && !screen.isSavingPicture)
        #expect(try pottery.handedOver().isEmpty)
        await screen.takeOff(photo).value
        #expect(screen.view?.photos.isEmpty == true)
        await pottery.frame.toggleUndo().value
        let piece = PieceScreen(frame: pottery.frame, id: try #require(screen.view?.piece))
        await piece.refresh()
        #expect(piece.view?.photos.map(\.id) == [photo.id])
        await piece.takeOff(photo).value
        #expect(piece.view?.photos.isEmpty == true && piece.view?.coats.isEmpty == false)
    }

    @Test(arguments: [Data(), Data("no picture".utf8)])
    func aPhotographThatIsNoneIsRefusedAndNothingIsSaved(_ picture: Data) async throws {
        let (pottery, firing) = try await Pottery.fired()
        let screen = await look(pottery, firing)
        await screen.save(picture: picture).value
        #expect(!screen.refusal.isEmpty && screen.view?.photos.isEmpty == true && pottery.frame.offer.sentence.isEmpty)
        #expect(try pottery.handedOver().isEmpty && !screen.isSavingPicture)
    }

    @Test func aPictureThatCannotBeWrittenIsSaidAndNothingIsSaved() async throws {
        let (pottery, firing) = try await Pottery.fired()
        // As on a phone that is full: nothing can be put into the folder.
        try Data().write(to: pottery.folder.appendingPathComponent("handover"))
        let screen = await look(pottery, firing)
        await screen.save(picture: Picture.vase()).value
        #expect(screen.refusal == Words.pictureNotCopied && screen.view?.photos.isEmpty == true)
        let editor = ContactSheetScreen(frame: pottery.frame, firing: firing)
        await editor.refresh()
        #expect(await editor.file(of: Picture.vase()) == nil)
        #expect(await editor.document(of: [Picture.vase()]) == nil)
        #expect(editor.trouble == Words.pictureNotCopied)
        let backup = BackupScreen(frame: pottery.frame)
        await backup.refresh()
        #expect(await backup.make() == nil)
        #expect(backup.said?.text == Words.fileNotCopied && pottery.frame.failure == nil)
    }

    // MARK: Finding, comparing, the page

    @Test func aPieceIsFoundByItsFormAndByItsCode() async throws {
        let (pottery, _) = try await Pottery.fired()
        let screen = FindScreen(frame: pottery.frame, pause: .zero)
        await screen.refresh()
        let all = try #require(screen.view?.pieces)
        let filter = try #require(screen.view?.filters.first { $0.rows.count > 1 })
        await screen.pick(try #require(filter.rows.last), of: filter).value
        #expect(screen.view?.filters.first { $0.key == filter.key }?.chosen == filter.rows.last?.title)
        await screen.pick(filter.rows[0], of: filter).value
        #expect(screen.view?.pieces == all)
        await screen.type("zzzzz").value
        #expect(!screen.refusal.isEmpty && screen.code == "zzzzz" && pottery.frame.failure == nil)
        await screen.type(note: "no such words").value
        #expect(screen.view?.pieces.isEmpty == true || !screen.refusal.isEmpty)
        await screen.type(note: "").value
        await screen.type("").value
        #expect(screen.refusal.isEmpty && screen.view?.pieces == all)
    }

    @Test func allPiecesAreListedAsOneScrolls() async throws {
        let pottery = try await Pottery.furnished()
        for _ in 0..<61 { try await pottery.coat("20.5") }
        let screen = FindScreen(frame: pottery.frame, pause: .zero)
        await screen.refresh()
        #expect(screen.view?.pieces.count == 60 && screen.view?.more == 120)
        await screen.reached(try #require(screen.view?.pieces.first)).value
        #expect(screen.view?.pieces.count == 60)
        await screen.reached(try #require(screen.view?.pieces.last)).value
        #expect(screen.view?.pieces.count == 61 && screen.view?.more == 0)
    }

    @Test func onePieceHasASheetOfItsOwn() async throws {
        let (pottery, firing) = try await Pottery.fired()
        let looked = await look(pottery, firing)
        let piece = try #require(looked.view?.piece)
        let screen = ContactSheetScreen(frame: pottery.frame, firing: firing, piece: piece)
        await screen.refresh()
        #expect(screen.isOnePiece && screen.across == 1 && screen.down == 1 && screen.pages.map(\.count) == [1])
        #expect(screen.view?.tiles.first?.coats.isEmpty == false)
    }

    // MARK: Beginning

    @Test func aFiringThatIsBegunLeadsIntoItsLoad() async throws {
        let (pottery, first) = try await Pottery.loading()
        let screen = EditorScreen(frame: pottery.frame, kind: .firing, pause: .zero)
        await screen.refresh()
        let day = try #require(screen.view?.fields.first { $0.kind == .day })
        #expect(EditorScreen.text(of: EditorScreen.date(of: day.text)) == day.text)
        await screen.save().value
        guard case .firing(let begun) = screen.next else { Issue.record("it leads nowhere"); return }
        #expect(screen.isDone && begun != first)
        let changed = EditorScreen(frame: pottery.frame, kind: .firing, id: begun, pause: .zero)
        await changed.refresh()
        await changed.save().value
        #expect(changed.isDone && changed.next == nil)
    }

    @Test func piecesThatWereNeverWeighedAreAddedAndTicksByFormLoadThem() async throws {
        let (pottery, firing) = try await Pottery.loading()
        let teapot = try await pottery.editor(.piece, ["name": "Teapot", "code": "T7"], subject: firing)
        let screen = await open(pottery, firing: firing)
        #expect(screen.view?.pieces.map(\.title) == ["Teapot, T7"])
        #expect(screen.view?.shelves.first?.drawing.grips.map(\.label) == ["T7"])
        await screen.touch(.remove(grip: teapot.id)).value
        let group = try #require(screen.view?.groups.first)
        screen.tick(group)
        #expect(screen.isTicked(group) && screen.hasTicks)
        await screen.load(try #require(screen.shelves.first)).value
        #expect(screen.view?.pieces.count == group.pieces.count)
        let page = PieceScreen(frame: pottery.frame, id: teapot.id)
        await page.refresh()
        #expect(page.view?.isUnweighed == true && page.photosByFiring.isEmpty)
    }

    @Test func photographsStandUnderTheirFiring() async throws {
        let (pottery, firing) = try await Pottery.fired()
        let looked = await look(pottery, firing)
        await looked.save(picture: Picture.vase()).value
        let page = PieceScreen(frame: pottery.frame, id: try #require(looked.view?.piece))
        await page.refresh()
        #expect(page.photosByFiring.map(\.photos.count) == [1])
        #expect(page.photosByFiring.first?.caption.hasPrefix("Firing 1: cone 6, Garden kiln") == true)
    }

    @Test func twoPiecesSideBySide() async throws {
        let (pottery, firing) = try await Pottery.fired()
        let looked = await look(pottery, firing)
        let screen = CompareScreen(frame: pottery.frame, piece: try #require(looked.view?.piece))
        await screen.refresh()
        let other = try #require(screen.view?.others.first)
        await screen.compare(with: other).value
        #expect(screen.view?.right == other.id && screen.view?.lines.isEmpty == false)
    }

    @Test func theContactSheetIsWrittenWhereItCanBeHandedOn() async throws {
        let (pottery, firing) = try await Pottery.fired()
        let screen = ContactSheetScreen(frame: pottery.frame, firing: firing)
        await screen.refresh()
        #expect(screen.pages.map(\.count) == [3])
        let picture = try #require(await screen.file(of: Data("picture".utf8)))
        #expect(try Data(contentsOf: picture) == Data("picture".utf8) && screen.trouble.isEmpty)
    }

    @Test func theCoreBindsThePaintedPages() async throws {
        let (pottery, firing) = try await Pottery.fired()
        let looked = await look(pottery, firing)
        await looked.save(picture: Picture.vase()).value
        let page = try Data(contentsOf: URL(fileURLWithPath: try #require(looked.view?.photos.first?.preview)))
        let screen = ContactSheetScreen(frame: pottery.frame, firing: firing)
        await screen.refresh()
        let document = try #require(await screen.document(of: [page, page]))
        #expect(document.pathExtension == "pdf" && screen.trouble.isEmpty)
        #expect(try Data(contentsOf: document).starts(with: Data("%PDF".utf8)))
        #expect(await screen.document(of: [Data("no picture".utf8)]) == nil)
        #expect(!screen.trouble.isEmpty && pottery.frame.failure == nil)
    }
}

@MainActor @Suite struct SetupScreensTests {
    @Test func whatWasArchivedComesBack() async throws {
        let pottery = try await Pottery.furnished()
        let setup = SetupScreen(frame: pottery.frame)
        await setup.refresh()
        let scale = try #require(setup.view?.sections.first { $0.editor == .scale }?.rows.first)
        let editor = EditorScreen(frame: pottery.frame, kind: .scale, id: scale.id)
        await editor.remove().value
        let screen = ArchivedScreen(frame: pottery.frame)
        await screen.refresh()
        let row = try #require(screen.view?.sections.first?.rows.first)
        #expect(row.title == "Bench scale")
        await screen.bringBack(row).value
        #expect(screen.view?.sections.isEmpty == true && screen.view?.nothing.isEmpty == false)
        let meanwhile = MeanwhileScreen(frame: pottery.frame)
        await meanwhile.refresh()
        await meanwhile.markRead()
        #expect(meanwhile.view?.nothing.isEmpty == false && pottery.frame.failure == nil)
    }

    @Test func theStudioListsWhatThereIsAndTheCautions() async throws {
        let screen = SetupScreen(frame: try await Pottery.furnished().frame)
        await screen.refresh()
        #expect(screen.view?.sections.first { $0.editor == .scale }?.rows.map(\.title) == ["Bench scale"])
        #expect(screen.view?.cautions.isEmpty == false)
    }

    @Test func sizesGoByAnAmountThatIsKnown() async throws {
        let pottery = try await Pottery.furnished()
        let screen = SizesScreen(frame: pottery.frame)
        await screen.refresh()
        #expect(screen.view?.known.isEmpty == true)
        for net in ["20.5", "21.0"] {
            let coat = CoatScreen(frame: pottery.frame, id: try await pottery.coat(net).id)
            await coat.refresh()
            await coat.turnControl().value
        }
        await screen.refresh()
        let other = try #require(screen.view?.known.first { !$0.chosen })
        await screen.go(by: other).value
        #expect(screen.view?.known.first { $0.chosen }?.id == other.id && screen.view?.sizes.isEmpty == false)
    }

    @Test func aBackupGoesOutAndIsTakenInOnAnotherPhone() async throws {
        let (pottery, _) = try await Pottery.loading()
        let screen = BackupScreen(frame: pottery.frame)
        await screen.refresh()
        let before = screen.view?.last
        let file = try #require(await screen.make())
        #expect(file.lastPathComponent == screen.view?.name && !screen.isWorking && screen.said == nil)
        let place = FileManager.default.temporaryDirectory.appendingPathComponent("\(UUID().uuidString).zip")
        defer { try? FileManager.default.removeItem(at: place) }
        try FileManager.default.moveItem(at: file, to: place)
        await screen.arrived(at: place)
        #expect(screen.said?.tone == .plain && screen.view?.last != before)
        #expect(try pottery.handedOver().isEmpty)

        let other = try await Pottery()
        let taking = BackupScreen(frame: other.frame)
        await taking.refresh()
        await taking.restore(from: place)
        #expect(taking.said?.tone == .plain)
        let setup = SetupScreen(frame: other.frame)
        await setup.refresh()
        #expect(setup.view?.sections.first { $0.editor == .form }?.rows.map(\.title) == ["Breakfast mug"])
    }

    @Test func whatIsNoBackupIsRefusedAndNothingIsTakenIn() async throws {
        let pottery = try await Pottery.furnished()
        let screen = BackupScreen(frame: pottery.frame)
        await screen.refresh()
        let place = FileManager.default.temporaryDirectory.appendingPathComponent("\(UUID().uuidString).zip")
        try Data("no backup".utf8).write(to: place)
        await screen.restore(from: place)
        let refused = try #require(screen.said)
        #expect(refused.tone == .attention && refused.text != Words.fileNotCopied)
        try FileManager.default.removeItem(at: place)
        await screen.restore(from: place)
        #expect(screen.said == Note(tone: .attention, text: Words.fileNotCopied) && !screen.isWorking)
        screen.notChosen()
        #expect(screen.said?.text == Words.noFile && pottery.frame.failure == nil)
    }
}
