import LaydownCore
import Observation

/// What other phones did meanwhile, said once; and where two phones disagree, which of them counts.
@MainActor @Observable
public final class MeanwhileScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: MeanwhileView? { latest.view }
    /// Why the last thing could not be done; empty when nothing is wrong.
    public private(set) var refusal = ""

    private let frame: AppModel
    private let latest = Latest<MeanwhileView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: AppModel) {
        self.frame = frame
    }

    /// Reads what is to be said.
    public func refresh() async {
        await frame.show(latest) { try $0.meanwhile(now: $1) }
    }

    /// What was shown is not said again.
    public func markRead() async {
        await frame.tell { try $0.meanwhileRead(now: $1) }
    }

    /// What this phone and the other said, with what counts now.
    public func sides(of clash: ClashView) -> [String] {
        clash.oursCounts
            ? [Words.whatCountsNow(clash.ours), clash.theirs] : [clash.ours, Words.whatCountsNow(clash.theirs)]
    }

    /// Says which of two values counts.
    @discardableResult
    public func settle(_ clash: ClashView, _ answer: ClashAnswer) -> Task<Void, Never> {
        Task {
            refusal = ""
            _ = await frame.save(
                { try $0.settleClash(now: $1, id: clash.id, answer: answer) },
                refused: { refusal = frame.refusal(of: $0) ?? "" })
            await refresh()
        }
    }
}
