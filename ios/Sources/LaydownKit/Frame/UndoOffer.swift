import LaydownCore
import Observation

/// What was kept last, and the way to take it back or to do it again. One at a time: the next takes its place.
@MainActor @Observable
public final class UndoOffer {
    /// What was kept, or that it was taken back; empty while there is nothing to say.
    public private(set) var sentence = ""
    /// Whether it has been taken back, so that it can be done again.
    public private(set) var isTakenBack = false
    /// The coats that may follow on the same piece; none once it was taken back.
    public var next: [NextCoat] { isTakenBack ? [] : kept?.next ?? [] }
    /// How often something was taken back or done again: whoever shows the studio reads it anew when this changes.
    public private(set) var turns = 0
    /// Why it could not be taken back; empty when nothing is wrong.
    public private(set) var refusal = ""
    /// What the button says that turns it.
    public var label: String { isTakenBack ? Words.doAgain : Words.undo }

    /// Whether there is something to take back or do again: not everything that is kept can be.
    public var canTurn: Bool { kept?.undo.isEmpty == false }

    /// The id of what was kept; empty while there is nothing to say.
    var keptID: String { kept?.id ?? "" }

    private var kept: Kept?
    @ObservationIgnored private var token = ""
    @ObservationIgnored private var isTurning = false

    func tell(_ kept: Kept) {
        self.kept = kept
        token = kept.undo
        sentence = kept.sentence
        isTakenBack = false
        refusal = ""
    }

    /// There is nothing to say any more: the potter has gone on.
    public func clear() {
        guard kept != nil else { return }
        kept = nil
        token = ""
        sentence = ""
        isTakenBack = false
        refusal = ""
    }

    /// Whether what is offered can be turned now: until `turn` has ended it cannot again. To be asked at the tap itself, since by
    /// the time a second tap's task begins the first may have been answered.
    func beginTurn() -> Bool {
        guard kept != nil, canTurn, !isTurning else { return false }
        isTurning = true
        return true
    }

    /// Takes back what was kept, or does it again, once `beginTurn` has said that it can be.
    func turn(on work: StudioWork) async throws {
        defer { isTurning = false }
        guard let kept else { return }
        let token = token
        let answer = try await work.ask { try $0.undo(now: $1, token: token) }
        turns += 1
        // Something else was kept meanwhile: what is offered is about that.
        guard token == self.token else { return }
        isTakenBack.toggle()
        sentence = isTakenBack ? answer.sentence : kept.sentence
        self.token = answer.undo
        refusal = ""
    }

    func refuse(_ sentence: String) {
        refusal = sentence
    }
}
