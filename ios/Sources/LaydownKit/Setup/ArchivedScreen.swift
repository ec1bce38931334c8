import LaydownCore
import Observation

/// What was archived or removed, each with the way back.
@MainActor @Observable
public final class ArchivedScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: ArchivedView? { latest.view }
    /// Why the last thing could not be done; empty when nothing is wrong.
    public private(set) var refusal = ""

    private let frame: AppModel
    private let latest = Latest<ArchivedView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: AppModel) {
        self.frame = frame
    }

    /// Reads what was archived.
    public func refresh() async {
        await frame.show(latest) { try $0.archived(now: $1) }
    }

    /// Brings something back.
    @discardableResult
    public func bringBack(_ row: ArchivedRow) -> Task<Void, Never> {
        Task {
            refusal = ""
            _ = await frame.save(
                { try $0.unarchive(now: $1, kind: row.kind, id: row.id) },
                refused: { refusal = frame.refusal(of: $0) ?? "" })
            await refresh()
        }
    }
}
