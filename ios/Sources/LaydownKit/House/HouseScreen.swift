import LaydownCore

/// The Studio screen: everything that is set up once and used for years; and every caution in full.
@MainActor
public final class HouseScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: HouseView? { latest.view }

    private let frame: Frame
    private let latest = Latest<HouseView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: Frame) {
        self.frame = frame
    }

    /// Reads the lists.
    public func refresh() async {
        await frame.show(latest) { try $0.house(now: $1) }
    }
}
