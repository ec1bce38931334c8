import LaydownCore

/// The Findings screen: each glaze with what its fired pots say, in a sentence.
@MainActor
public final class FindingsScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: FindingsView? { latest.view }

    private let frame: AppModel
    private let latest = Latest<FindingsView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: AppModel) {
        self.frame = frame
    }

    /// Reads the glazes.
    public func refresh() async {
        await frame.show(latest) { try $0.findings(now: $1) }
    }
}
