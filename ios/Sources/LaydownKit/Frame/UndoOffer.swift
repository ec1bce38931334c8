import LaydownCore
import Observation

/// What was kept last, and the way to take it back or to do it again. One at a time: the next takes its place.
@MainActor @Observable
public final class UndoOffer {
    /// What was kept, or that it was undone; empty while there is nothing to say.
    public private(set) var sentence = ""
    /// Whether it has been undone, so that it can be done again.
    public private(set) var isTakenBack = false
    /// The coats that may follow on the same piece; once it was undone, the same coat to weigh again.
    public var next: [NextCoat] { isTakenBack ? again : saved?.next ?? [] }
    /// How often something was undone or done again: whoever shows the studio reads it anew when this changes.
    public private(set) var turns = 0
    /// Why it could not be undone; empty when nothing is wrong.
    public private(set) var refusal = ""
    /// What the button says that turns it.
    public var label: String { isTakenBack ? Words.doAgain : Words.undo }

    /// Whether there is something to undo or do again: not everything that is kept can be.
    public var canTurn: Bool { saved?.undo.isEmpty == false }

    /// The id of what was kept; empty while there is nothing to say.
    var savedId: String { saved?.id ?? "" }

    private var saved: CommandResult?
    private var again: [NextCoat] = []
    @ObservationIgnored private var token = ""
    @ObservationIgnored private var isTurning = false

    func tell(_ saved: CommandResult) {
        self.saved = saved
        token = saved.undo
        sentence = saved.sentence
        isTakenBack = false
        refusal = ""
    }

    /// There is nothing to say any more: the potter has gone on.
    public func clear() {
        guard saved != nil else { return }
        saved = nil
        token = ""
        sentence = ""
        isTakenBack = false
        refusal = ""
    }

    /// Whether what is offered can be turned now: until `toggleUndo` has ended it cannot again. To be asked at the tap itself, since by
    /// the time a second tap's task begins the first may have been answered.
    func beginTurn() -> Bool {
        guard saved != nil, canTurn, !isTurning else { return false }
        isTurning = true
        return true
    }

    /// Undoes what was kept, or does it again, once `beginTurn` has said that it can be.
    func toggleUndo(on work: StudioWork) async throws {
        defer { isTurning = false }
        guard let saved else { return }
        let token = token
        let answer = try await work.ask { try $0.undo(now: $1, token: token) }
        turns += 1
        // Something else was kept meanwhile: what is offered is about that.
        guard token == self.token else { return }
        again = answer.next
        isTakenBack.toggle()
        sentence = isTakenBack ? answer.sentence : saved.sentence
        self.token = answer.undo
        refusal = ""
    }

    func refuse(_ sentence: String) {
        refusal = sentence
    }
}
