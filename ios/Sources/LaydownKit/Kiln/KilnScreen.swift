import LaydownCore

/// The Kiln screen: what waits, the firings, and the way to a piece of old.
@MainActor
public final class KilnScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: KilnView? { latest.view }

    private let frame: AppModel
    private let latest = Latest<KilnView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: AppModel) {
        self.frame = frame
    }

    /// Reads the firings.
    public func refresh() async {
        await frame.show(latest) { try $0.kiln(now: $1) }
    }
}
