import Observation

/// Decides when a verdict is said: when the digits have rested, or when Save is pressed, and never twice for one reading.
@MainActor
final class Speaker {
    private let rest: Duration
    private let say: (String) -> Void
    private var waiting: String?
    private var said: String?
    private var isArmed = false
    private var later: Task<Void, Never>?

    /// - Parameters:
    ///   - rest: How long the digits rest before a verdict is said.
    ///   - say: Says words aloud.
    init(rest: Duration, say: @escaping (String) -> Void) {
        self.rest = rest
        self.say = say
    }

    /// The potter changed something: what was about to be said is out of date, and what comes of it will be said.
    func changed() {
        hush()
        isArmed = true
    }

    /// Nothing more is said until something changes.
    func hush() {
        later?.cancel()
        later = nil
        waiting = nil
        isArmed = false
    }

    /// The reading has the verdict `words`. Said only if it comes of a change: not again when the page is shown anew.
    func verdict(_ words: String) {
        guard isArmed else { return }
        later?.cancel()
        waiting = words
        later = Task {
            // Only a newer word ends the rest before its time, and then there is nothing to say.
            guard (try? await Task.sleep(for: rest)) != nil else { return }
            now()
        }
    }

    /// The digits rest, or the reading is being kept: says it if it has not been said.
    func now() {
        let words = waiting
        hush()
        guard let words, words != said else { return }
        said = words
        say(words)
    }

    /// The next reading begins; its verdict is said even if it is the same.
    func next() {
        hush()
        said = nil
    }
}
