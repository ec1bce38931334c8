import LaydownCore
import Observation

/// One firing: loaded shelf by shelf, then fired, then looked at piece by piece.
@MainActor @Observable
public final class FiringScreen {
    /// Pieces and the shelf they could be put on.
    public struct ShelfChoice: Hashable, Identifiable, Sendable {
        /// Itself.
        public var id: Self { self }
        /// The shelf.
        public let title: String
        /// How many of them; empty for a single piece.
        public let detail: String
        let pieces: [String]
        let shelf: UInt32
    }

    /// All that it shows; nil until the studio has answered.
    public var view: FiringView? { latest.view }
    /// Why the last thing could not be done; empty when nothing is wrong.
    public private(set) var refusal = ""
    /// The firing's id.
    public let id: String

    private var ticked: Set<String> = []
    private let frame: AppModel
    private let latest = Latest<FiringView>()
    private var isAdvancing = false

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - id: The firing's id.
    public init(frame: AppModel, id: String) {
        self.frame = frame
        self.id = id
    }

    /// Reads the firing.
    public func refresh() async {
        let id = id
        await frame.show(latest) { try $0.firing(now: $1, id: id) }
    }

    // MARK: Loading

    /// What a row of the list of what waits says.
    public func title(of waiting: WaitingRow) -> String {
        waiting.pieces.count > 1 ? "\(waiting.pieces.count) × \(waiting.title)" : waiting.title
    }

    /// Whether all pieces of this row are ticked, to be loaded together.
    public func isTicked(_ waiting: WaitingRow) -> Bool {
        ticked.isSuperset(of: waiting.pieces)
    }

    /// Whether everything that waits is ticked.
    public var isAllTicked: Bool { view?.waiting.allSatisfy { isTicked($0) } ?? false }

    /// Whether something is ticked.
    public var hasTicks: Bool { !tickedRows.isEmpty }

    /// Ticks a row, or takes its tick off.
    public func tick(_ waiting: WaitingRow) {
        if isTicked(waiting) { ticked.subtract(waiting.pieces) } else { ticked.formUnion(waiting.pieces) }
    }

    /// Ticks everything that waits, or takes all ticks off.
    public func tickAll() {
        ticked = isAllTicked ? [] : Set((view?.waiting ?? []).flatMap(\.pieces))
    }

    /// The shelves that the ticked pieces could be put on; of one run of equal pieces all or one.
    public var shelves: [ShelfChoice] {
        let pieces = tickedRows.flatMap(\.pieces)
        let run = tickedRows.count == 1 && pieces.count > 1
        return (view?.shelves ?? []).flatMap { shelf -> [ShelfChoice] in
            let all = ShelfChoice(
                title: shelf.title, detail: run ? Words.allOfThem(pieces.count) : "", pieces: pieces,
                shelf: shelf.number)
            guard run else { return [all] }
            let one = ShelfChoice(
                title: shelf.title, detail: Words.oneOfThem, pieces: Array(pieces.prefix(1)), shelf: shelf.number)
            return [all, one]
        }
    }

    /// Whether all pieces of one form are ticked.
    public func isTicked(_ group: WaitingGroup) -> Bool {
        ticked.isSuperset(of: group.pieces)
    }

    /// Ticks all pieces of one form, or takes their ticks off.
    public func tick(_ group: WaitingGroup) {
        if isTicked(group) { ticked.subtract(group.pieces) } else { ticked.formUnion(group.pieces) }
    }

    /// What is ticked and still waits.
    private var tickedRows: [WaitingRow] { (view?.waiting ?? []).filter { isTicked($0) } }

    /// Puts pieces on a shelf, each where there is room.
    @discardableResult
    public func load(_ choice: ShelfChoice) -> Task<Void, Never> {
        act { try $0.load(now: $1, firing: $2, pieces: choice.pieces, shelf: choice.shelf) }
    }

    /// Puts all that waits in, as far as there is room.
    @discardableResult
    public func loadAll() -> Task<Void, Never> {
        act { try $0.loadAll(now: $1, firing: $2) }
    }

    /// A piece was moved on the plan of its shelf, or is to be taken out.
    @discardableResult
    public func touch(_ touch: Touch) -> Task<Void, Never> {
        switch touch {
        case .move(let piece, let to): act { try $0.place(now: $1, firing: $2, piece: piece, to: to) }
        case .remove(let piece): act { try $0.takeOut(now: $1, firing: $2, piece: piece) }
        // A bare spot of a shelf means nothing.
        case .add: Task {}
        }
    }

    // MARK: Firing

    /// Ticks off something to look at before the firing, or takes the tick away.
    @discardableResult
    public func toggleUndo(_ tick: ChecklistItem) -> Task<Void, Never> {
        act { try $0.setChecklistItem(now: $1, firing: $2, what: tick.code, done: !tick.done) }
    }

    /// Takes the firing on to its next state; where there is a question, it has been answered with yes.
    @discardableResult
    public func advance() -> Task<Void, Never> {
        // A second tap that comes before the answer would take it two states on.
        guard !isAdvancing else { return Task {} }
        isAdvancing = true
        return Task {
            await act { try $0.advance(now: $1, firing: $2) }.value
            isAdvancing = false
        }
    }

    /// The page that a piece's row leads to.
    public func place(of piece: PlacedPiece) -> Place {
        view?.isLoading == true ? .piece(piece.piece) : .look(firing: id, piece: piece.piece)
    }

    /// Whether there is something to put on a contact sheet.
    public var hasContactSheet: Bool {
        view.map { !$0.isLoading && !$0.pieces.isEmpty } ?? false
    }

    /// Saves something and shows the firing with it; what is refused is said on the page.
    private func act(_ command: @escaping @Sendable (Studio, Now, String) throws -> CommandResult) -> Task<Void, Never>
    {
        let id = id
        return Task {
            refusal = ""
            _ = await frame.save({ try command($0, $1, id) }, refused: { refusal = frame.refusal(of: $0) ?? "" })
            await refresh()
        }
    }
}
