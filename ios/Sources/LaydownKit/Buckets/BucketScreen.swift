import LaydownCore

/// One bucket: its SG, what that means, its notebook, and what one does to it.
@MainActor
public final class BucketScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: BucketView? { latest.view }
    /// The bucket's id.
    public let id: String

    private let frame: AppModel
    private let latest = Latest<BucketView>()

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - id: The bucket's id.
    public init(frame: AppModel, id: String) {
        self.frame = frame
        self.id = id
    }

    /// Reads the bucket.
    public func refresh() async {
        let id = id
        await frame.show(latest) { try $0.bucket(now: $1, id: id) }
    }

    /// What one does to it, each with its label and the page it leads to.
    public var ways: [(label: String, place: Place)] {
        [
            (Words.check, .editor(.check, subject: id)),
            (Words.thin, .editor(.thin, subject: id)),
            (Words.change, .editor(.bucket, id: id)),
        ]
    }
}
