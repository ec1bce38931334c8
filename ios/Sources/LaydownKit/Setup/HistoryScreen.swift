import LaydownCore
import Observation

/// Recent changes, or all that was ever said of one thing; each can be undone, and done again.
@MainActor @Observable
public final class HistoryScreen {
    /// What can be done about something that was done.
    public enum WeighMode: String, Sendable {
        /// It is undone, or done again.
        case toggleUndo
        /// All that was ever said of the same thing is looked at.
        case history
    }

    /// All that it shows; nil until the studio has answered.
    public var view: HistoryView? { latest.view }
    /// Why the last thing could not be done; empty when nothing is wrong.
    public private(set) var refusal = ""

    private let frame: AppModel
    private let thing: String
    private let latest = Latest<HistoryView>()
    private var isTurning = false

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - thing: The id of what it is the history of; empty for what was done lately.
    public init(frame: AppModel, thing: String) {
        self.frame = frame
        self.thing = thing
    }

    /// Reads what was done.
    public func refresh() async {
        let thing = thing
        await frame.show(latest) { thing.isEmpty ? try $0.recentChanges(now: $1) : try $0.history(now: $1, id: thing) }
    }

    /// What to choose from about a doing, each row with its way as its id; none where nothing can be done here.
    public func ways(about entry: HistoryEntry) -> [Row] {
        let toggleUndo = row(.toggleUndo, entry.isUndone ? Words.doItAgain : Words.takeItBack)
        return (entry.token.isEmpty ? [] : [toggleUndo]) + (thing.isEmpty ? [row(.history, Words.itsHistory)] : [])
    }

    /// Takes it back, or does it again where it is undone.
    @discardableResult
    public func toggleUndo(_ entry: HistoryEntry) -> Task<Void, Never> {
        // A second tap that comes before the answer would ask for the same once more.
        guard !isTurning else { return Task {} }
        isTurning = true
        return Task {
            refusal = ""
            let (token, isTakenBack) = (entry.token, entry.isUndone)
            _ = await frame.save(
                { isTakenBack ? try $0.redo(now: $1, token: token) : try $0.undo(now: $1, token: token) },
                refused: { refusal = frame.refusal(of: $0) ?? "" })
            isTurning = false
            await refresh()
        }
    }

    private func row(_ way: WeighMode, _ words: String) -> Row {
        Row(id: way.rawValue, title: words, detail: "", chosen: false, outline: [])
    }
}
