import LaydownCore

/// What every form should take, going by one amount that is known to be right.
@MainActor
public final class SizesScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: SizesView? { latest.view }

    private let frame: AppModel
    private let latest = Latest<SizesView>()
    /// The id of the amount gone by; empty for the newest.
    private var known = ""

    /// - Parameter frame: The house around the screen.
    public init(frame: AppModel) {
        self.frame = frame
    }

    /// Reads the sizes.
    public func refresh() async {
        let known = known
        await frame.show(latest) { try $0.sizes(now: $1, known: known) }
    }

    /// Goes by another amount.
    @discardableResult
    public func go(by row: Row) -> Task<Void, Never> {
        known = row.id
        return Task { await refresh() }
    }
}
