import LaydownCore

/// The record of one coat, and the marks a potter puts on it afterwards.
@MainActor
public final class CoatScreen {
    /// The record; nil until the studio has answered.
    public var view: CoatView? { latest.view }

    private let frame: AppModel
    private let id: String
    private let latest = Latest<CoatView>()
    /// It was taken out of the record, or is being so.
    private var isTakenBack = false

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - id: The coat's id.
    public init(frame: AppModel, id: String) {
        self.frame = frame
        self.id = id
    }

    /// Reads the record.
    public func refresh() async {
        let id = id
        await frame.show(latest) { try $0.coat(now: $1, id: id) }
    }

    /// Marks it as a control piece, or takes the mark off.
    @discardableResult
    public func turnControl() -> Task<Void, Never> {
        Task {
            guard let view else { return }
            let (id, control) = (id, !view.control)
            if await frame.save({ try $0.setControl(now: $1, id: id, control: control) }, refused: frame.fail) {
                await refresh()
            }
        }
    }

    /// Takes the coat out of the record.
    ///
    /// - Returns: Whether it was, so that there is nothing left to show here.
    public func takeBack() async -> Bool {
        // A second tap would ask for what is gone, also where it begins only after the answer to the first.
        guard !isTakenBack else { return false }
        isTakenBack = true
        let id = id
        isTakenBack = await frame.save({ try $0.removeCoat(now: $1, id: id) }, refused: frame.fail)
        return isTakenBack
    }
}
