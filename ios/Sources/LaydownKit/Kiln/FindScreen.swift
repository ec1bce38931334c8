import LaydownCore
import Observation

/// Finds pieces by the code on their foot, or by what is known of them.
@MainActor @Observable
public final class FindScreen {
    /// What was found; nil until the studio has answered.
    public var view: PiecesView? { latest.view }
    /// The code as it is typed.
    public private(set) var code = ""
    /// Words of a note as they are typed.
    public private(set) var note = ""
    /// What is wrong with the code; empty when nothing is.
    public private(set) var refusal = ""

    private let frame: AppModel
    private let pause: Duration
    private let latest = Latest<PiecesView>()
    /// What was picked, by the filters' keys.
    private var picked: [String: String] = [:]
    /// How many are asked for; 0 for the first page.
    private var limit: UInt32 = 0
    private var isAskingForMore = false

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - pause: How long the fingers pause before the code is looked for.
    public init(frame: AppModel, pause: Duration = .milliseconds(150)) {
        self.frame = frame
        self.pause = pause
    }

    /// Looks for the pieces.
    public func refresh() async {
        var wanted = picked.map { Value(key: $0.key, text: $0.value) }
        wanted.append(Value(key: "code", text: code))
        wanted.append(Value(key: "note", text: note))
        let (asked, limit) = (wanted, limit)
        let found = await latest.ask(
            frame.work, { try $0.findPieces(now: $1, wanted: asked, limit: limit) }
        ) { problem in
            // While one still types, the code is short, and nothing is wrong with that.
            refusal = frame.refusal(of: problem) ?? ""
        }
        if found != nil { refusal = "" }
    }

    /// The code is being typed: looked for once the fingers pause.
    @discardableResult
    public func type(_ text: String) -> Task<Void, Never> {
        guard text != code else { return Task {} }
        code = text
        return lookOnceStill { $0.code == text }
    }

    /// Words of a note are being typed: looked for once the fingers pause.
    @discardableResult
    public func type(note text: String) -> Task<Void, Never> {
        guard text != note else { return Task {} }
        note = text
        return lookOnceStill { $0.note == text }
    }

    private func lookOnceStill(_ isStill: @escaping @MainActor (FindScreen) -> Bool) -> Task<Void, Never> {
        limit = 0
        return Task {
            // Nobody cancels it; what is typed meanwhile makes it out of date.
            guard (try? await Task.sleep(for: pause)) != nil, isStill(self) else { return }
            await refresh()
        }
    }

    /// The last piece that is listed came into sight: more are listed, if there are.
    @discardableResult
    public func reached(_ piece: FoundPiece) -> Task<Void, Never> {
        guard let view, view.more > 0, piece.id == view.pieces.last?.id, !isAskingForMore else { return Task {} }
        isAskingForMore = true
        limit = view.more
        return Task {
            await refresh()
            isAskingForMore = false
        }
    }

    /// Picks one of a filter's rows.
    @discardableResult
    public func pick(_ row: Row, of filter: Filter) -> Task<Void, Never> {
        picked[filter.key] = row.id
        limit = 0
        return Task { await refresh() }
    }
}
