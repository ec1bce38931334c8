import LaydownCore

/// The Buckets screen: each with its SG and how old that is.
@MainActor
public final class BucketsScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: BucketsView? { latest.view }

    private let frame: AppModel
    private let latest = Latest<BucketsView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: AppModel) {
        self.frame = frame
    }

    /// Reads the buckets.
    public func refresh() async {
        await frame.show(latest) { try $0.buckets(now: $1) }
    }
}
