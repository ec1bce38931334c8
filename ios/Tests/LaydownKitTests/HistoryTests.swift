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
        let first = try #require(screen.view?.doings.first)
        #expect(first.thing == coat.id && !first.takenBack)
        #expect(screen.ways(about: first).map(\.title) == [Words.takeItBack, Words.itsHistory])

        await screen.turn(first).value
        let takenBack = try #require(screen.view?.doings.first { $0.takenBack })
        #expect(takenBack.thing == coat.id && screen.refusal.isEmpty)
        #expect(screen.ways(about: takenBack).first?.title == Words.doItAgain)
        #expect(!pottery.frame.offer.sentence.isEmpty)

        await screen.turn(takenBack).value
        #expect(screen.view?.doings.contains { $0.takenBack } == false)
    }

    @Test func theHistoryOfAThingIsOfThatThingAlone() async throws {
        let pottery = try await Pottery.furnished()
        let coat = try await pottery.coat("20.5")
        let screen = HistoryScreen(frame: pottery.frame, thing: coat.id)
        await screen.refresh()
        let doings = try #require(screen.view?.doings)
        #expect(!doings.isEmpty && doings.allSatisfy { $0.thing == coat.id })
        #expect(doings.allSatisfy { doing in !screen.ways(about: doing).contains { $0.title == Words.itsHistory } })
    }

    @Test func twoTapsTurnItOnce() async throws {
        let pottery = try await Pottery.furnished()
        try await pottery.coat("20.5")
        let screen = HistoryScreen(frame: pottery.frame, thing: "")
        await screen.refresh()
        let first = try #require(screen.view?.doings.first)
        let (tap, second) = (screen.turn(first), screen.turn(first))
        await tap.value
        await second.value
        #expect(screen.refusal.isEmpty)
        #expect(screen.view?.doings.filter(\.takenBack).count == 1)
    }

    @Test func thisPhoneIsTheFirstOfThePhones() async throws {
        let pottery = try await Pottery.furnished()
        let screen = DevicesScreen(frame: pottery.frame)
        await screen.refresh()
        let phones = try #require(screen.view?.devices)
        #expect(phones.count == 1 && phones[0].chosen)
    }
}
