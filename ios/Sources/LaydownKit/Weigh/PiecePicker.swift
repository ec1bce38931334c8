import LaydownCore
import Observation

/// Picks the piece that a further coat goes onto, by the code on its foot or from the list.
@MainActor @Observable
public final class PiecePicker {
    /// The pieces; nil until the studio has answered.
    public var view: PiecesToGlazeView? { latest.view }
    /// The code as it is typed.
    public private(set) var code = ""

    private let frame: AppModel
    private let entry: WeighEntry
    private let latest = Latest<PiecesToGlazeView>()

    init(frame: AppModel, entry: WeighEntry) {
        self.frame = frame
        self.entry = entry
    }

    /// Asks for the pieces with the code typed so far.
    public func refresh() async {
        let (entry, code) = (entry, code)
        await frame.show(latest) { try $0.piecesToGlaze(now: $1, entry: entry, code: code) }
    }

    /// The code is being typed.
    @discardableResult
    public func type(_ text: String) -> Task<Void, Never> {
        guard text != code else { return Task {} }
        code = text
        return Task { await refresh() }
    }
}
