import LaydownCore

/// The Studio screen: everything that is set up once and used for years; and every caution in full.
@MainActor
public final class SetupScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: SetupView? { latest.view }

    private let frame: AppModel
    private let latest = Latest<SetupView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: AppModel) {
        self.frame = frame
    }

    /// Reads the lists.
    public func refresh() async {
        await frame.show(latest) { try $0.setup(now: $1) }
    }
}
