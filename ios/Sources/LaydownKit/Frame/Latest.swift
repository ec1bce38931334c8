import LaydownCore
import Observation

/// What a screen shows: the answer to the last question. Older ones are about what stood there before, and are dropped.
@MainActor @Observable
final class Latest<View: Sendable> {
    private(set) var view: View?
    @ObservationIgnored private var asked = 0

    /// Asks for the view. `refused` is given what went wrong, unless it was asked again meanwhile.
    ///
    /// - Returns: The view, unless something went wrong or it was asked again meanwhile.
    @discardableResult
    func ask(
        _ work: StudioWork, _ question: @escaping StudioWork.Call<View>, refused: (any Error) -> Void
    ) async -> View? {
        asked += 1
        let mine = asked
        do {
            let answer = try await work.ask(question)
            guard mine == asked else { return nil }
            view = answer
            return answer
        } catch {
            if mine == asked { refused(error) }
            return nil
        }
    }

    /// What is still asked for is about what stood there before, and its answer is not shown.
    func overtake() {
        asked += 1
    }

    /// Shows what came by another way.
    func put(_ view: View) {
        overtake()
        self.view = view
    }
}
