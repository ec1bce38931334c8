import LaydownCore

/// Why a target is what it is: each piece of evidence with its weight, which can be left out.
@MainActor
public final class WhyScreen {
    /// The page; nil until the studio has answered.
    public var view: WhyTargetView? { latest.view }

    private let frame: AppModel
    private let target: String
    private let latest = Latest<WhyTargetView>()

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - target: What the view of Weigh names its target by.
    public init(frame: AppModel, target: String) {
        self.frame = frame
        self.target = target
    }

    /// Reads the page.
    public func refresh() async {
        let target = target
        await frame.show(latest) { try $0.whyTarget(now: $1, target: target) }
    }

    /// Leaves a piece out of targets, or counts it again.
    @discardableResult
    public func toggle(_ row: EvidenceRow) -> Task<Void, Never> {
        Task {
            let (target, firing, piece, counts) = (target, row.firing, row.piece, !row.counts)
            let act: @Sendable (Studio, Now) throws -> CommandResult = {
                try $0.setCounts(now: $1, target: target, firing: firing, piece: piece, counts: counts)
            }
            if await frame.save(act, refused: frame.fail) { await refresh() }
        }
    }
}
