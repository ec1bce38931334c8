import LaydownCore

/// The phones of the studio, and how they come to agree.
@MainActor
public final class DevicesScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: DevicesView? { latest.view }

    private let frame: Frame
    private let latest = Latest<DevicesView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: Frame) {
        self.frame = frame
    }

    /// Reads the phones.
    public func refresh() async {
        await frame.show(latest) { try $0.devices(now: $1) }
    }
}
