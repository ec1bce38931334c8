import LaydownCore
import Testing

@testable import LaydownKit

/// What was done, over the real library.
@MainActor @Suite struct HistoryTests {
    @Test func whatWasDoneIsTakenBackAndDoneAgain() async throws {
        let pottery = try await Pottery.furnished()
        let coat = try await pottery.coat("20.5")
        let screen = HistoryScreen(frame: pottery.frame, thing: "")
        await screen.refresh()
        let first = try #require(screen.view?.recentChanges.first)
        #expect(first.thing == coat.id && !first.isUndone)
        #expect(screen.ways(about: first).map(\.title) == [Words.takeItBack, Words.itsHistory])

        await screen.toggleUndo(first).value
        let isUndone = try #require(screen.view?.recentChanges.first { $0.isUndone })
        #expect(isUndone.thing == coat.id && screen.refusal.isEmpty)
        #expect(screen.ways(about: isUndone).first?.title == Words.doItAgain)
        #expect(!pottery.frame.offer.sentence.isEmpty)

        await screen.toggleUndo(isUndone).value
        #expect(screen.view?.recentChanges.contains { $0.isUndone } == false)
    }

    @Test func theHistoryOfAThingIsOfThatThingAlone() async throws {
        let pottery = try await Pottery.furnished()
        let coat = try await pottery.coat("20.5")
        let screen = HistoryScreen(frame: pottery.frame, thing: coat.id)
        await screen.refresh()
        let recentChanges = try #require(screen.view?.recentChanges)
        #expect(!recentChanges.isEmpty && recentChanges.allSatisfy { $0.thing == coat.id })
        #expect(
            recentChanges.allSatisfy { entry in !screen.ways(about: entry).contains { $0.title == Words.itsHistory } })
    }

    @Test func twoTapsTurnItOnce() async throws {
        let pottery = try await Pottery.furnished()
        try await pottery.coat("20.5")
        let screen = HistoryScreen(frame: pottery.frame, thing: "")
        await screen.refresh()
        let first = try #require(screen.view?.recentChanges.first)
        let (tap, second) = (screen.toggleUndo(first), screen.toggleUndo(first))
        await tap.value
        await second.value
        #expect(screen.refusal.isEmpty)
        #expect(screen.view?.recentChanges.filter(\.isUndone).count == 1)
    }

    @Test func thisPhoneIsTheFirstOfThePhones() async throws {
        let pottery = try await Pottery.furnished()
        let screen = DevicesScreen(frame: pottery.frame)
        await screen.refresh()
        let phones = try #require(screen.view?.devices)
        #expect(phones.count == 1 && phones[0].chosen)
    }
}
