import LaydownCore

/// Two pieces side by side.
@MainActor
public final class CompareScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: CompareView? { latest.view }

    private let frame: AppModel
    private let left: String
    /// The id of the other piece; empty for a control piece.
    private var right = ""
    private let latest = Latest<CompareView>()

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - piece: The id of the left piece.
    public init(frame: AppModel, piece: String) {
        self.frame = frame
        left = piece
    }

    /// Reads both.
    public func refresh() async {
        let (left, right) = (left, right)
        await frame.show(latest) { try $0.compare(now: $1, left: left, right: right) }
    }

    /// Puts another piece beside it.
    @discardableResult
    public func compare(with row: Row) -> Task<Void, Never> {
        right = row.id
        return Task { await refresh() }
    }
}
