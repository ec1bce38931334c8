import LaydownCore
import Observation

/// The Weigh screen: holds what is chosen and typed, and asks the core what it means.
@MainActor @Observable
public final class WeighScreen {
    /// All that the screen shows, in the potter's words and units; nil until the studio has answered.
    public var view: WeighView? { latest.view }
    /// What is chosen and typed: ahead of `view` while the core still thinks.
    public private(set) var entry: WeighEntry?
    /// What could not be kept, and what to do; empty when nothing is wrong. Said in the verdict's place.
    public private(set) var refusal = ""
    /// How often a key did something: the phone ticks when this changes, if it is to.
    public private(set) var presses = 0
    /// What was kept last, with what may follow on the same piece.
    public var offer: UndoOffer { frame.offer }
    /// What this phone does beside showing.
    public var preferences: Preferences? { frame.preferences }

    private let frame: AppModel
    private let latest = Latest<WeighView>()
    private let speaker: Speaker
    private var isSaving = false
    /// Keys pressed before the studio has said what is chosen for the next piece: none of them is lost.
    @ObservationIgnored private var early: [Key] = []

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - rest: How long the digits rest before the verdict is spoken.
    ///   - isListenedTo: Whether somebody has the screen read out to them, who is told the verdict in any case.
    ///   - say: Says words aloud. Only called on a phone that is to speak, or for whoever listens.
    public init(
        frame: AppModel, rest: Duration = .milliseconds(900),
        isListenedTo: @escaping @MainActor () -> Bool = { false },
        say: @escaping @MainActor (String) -> Void = { _ in }
    ) {
        self.frame = frame
        speaker = Speaker(rest: rest) { words in
            if frame.preferences?.speak == true || isListenedTo() { say(words) }
        }
    }

    /// Asks what is chosen and typed means; what was remembered if it is asked for the first time.
    public func refresh() async {
        let asked = entry
        guard let view = await frame.show(latest, { try $0.weigh(now: $1, entry: asked) }) else { return }
        entry = view.entry
        let keys = early
        early = []
        for key in keys { press(key) }
        if let verdict = view.verdict { speaker.verdict(verdict.spoken) }
    }

    /// The screen goes out of sight: nothing more is said, and what is chosen and typed is remembered.
    @discardableResult
    public func leave() -> Task<Void, Never> {
        speaker.hush()
        return Task { await remember() }
    }

    // MARK: What the potter does

    /// Picks one of the rows of a choice.
    @discardableResult
    public func choose(_ choice: WeighChoice, _ row: Row) -> Task<Void, Never> {
        // The glaze of the zone that is left, too, where it was never chosen or saved.
        change(leaving: choice == .zone ? entry : nil) { choice.pick(row, in: &$0) }
    }

    /// Turns from one reading after tare to two weights, or back.
    @discardableResult
    public func turnWay() -> Task<Void, Never> {
        change { $0.way = $0.way == .twoWeights ? .net : .twoWeights }
    }

    /// Has the keypad fill another field.
    @discardableResult
    public func fill(_ field: Field) -> Task<Void, Never> {
        change { $0.field = field }
    }

    /// A key is pressed: what is typed changes at once, what it means follows.
    @discardableResult
    public func press(_ key: Key) -> Task<Void, Never> {
        guard var after = entry, let preferences else {
            early.append(key)
            return Task {}
        }
        let wasBlank = after.isBlank
        after.typed.press(key, decimal: preferences.decimal)
        guard after != entry else { return Task {} }
        if wasBlank { speaker.next() }
        speaker.changed()
        offer.clear()
        refusal = ""
        presses += 1
        enter(after)
        return Task { await refresh() }
    }

    /// Goes to the field that is still empty; keeps the coat when none is.
    @discardableResult
    public func saveOrNext() -> Task<Void, Never> {
        if let next = nextField { fill(next.field) } else { Task { await save() } }
    }

    /// Goes on with the next coat of the same piece.
    @discardableResult
    public func goOn(with coat: NextCoat) -> Task<Void, Never> {
        offer.clear()
        return change { $0 = coat.entry }
    }

    /// The pieces that this coat can go onto; nil until the studio has said what is chosen.
    public func piecePicker() -> PiecePicker? {
        entry.map { PiecePicker(frame: frame, entry: $0) }
    }

    /// Goes on with a piece that was picked.
    @discardableResult
    public func pick(_ piece: PieceToGlaze) -> Task<Void, Never> {
        offer.clear()
        return change { $0 = piece.entry }
    }

    /// Answers what was asked about the reading.
    @discardableResult
    public func answer(_ suggestion: Suggestion) -> Task<Void, Never> {
        change { $0 = suggestion.entry }
    }

    /// Chooses another way to the target.
    @discardableResult
    public func choose(_ option: TargetOption) -> Task<Void, Never> {
        Task {
            guard let target = view?.target else { return }
            let choice = option.choice
            let act: @Sendable (Studio, Now) throws -> CommandResult = {
                try $0.chooseTarget(now: $1, target: target.id, choice: choice)
            }
            if await frame.save(act, refused: refuse) { await refresh() }
        }
    }

    // MARK: What is shown of what is typed

    /// What is typed in a field.
    public func text(of field: WeighField) -> String {
        entry?.text(of: field.field) ?? field.text
    }

    /// Whether the keypad fills this field.
    public func isActive(_ field: WeighField) -> Bool {
        entry?.field == field.field
    }

    /// What the button by the keys says.
    public var saveLabel: String {
        if let nextField { return Words.nextField(nextField.label) }
        return isSaveProposed ? Words.save : Words.saveAsIs
    }

    /// Whether that button is what to do now: saving what misses the span is allowed, but not proposed.
    public var isSaveProposed: Bool {
        nextField != nil || view?.verdict.map { [.within, .probablyWithin, .guess].contains($0.kind) } ?? true
    }

    /// Whether that button can be pressed: something is typed that the core does not refuse.
    public var canPressSave: Bool {
        guard let entry, !entry.typed.text.isEmpty else { return false }
        // What was just typed is not judged yet: the core then takes or refuses it.
        return view?.entry != entry || (view?.refusal == nil && view?.question == nil)
    }

    private var nextField: WeighField? {
        // Seconds may stay empty.
        view?.fields.first { text(of: $0).isEmpty && !isActive($0) && $0.field != .seconds }
    }

    // MARK: Commands

    private func change(leaving left: WeighEntry? = nil, _ how: (inout WeighEntry) -> Void) -> Task<Void, Never> {
        guard var changed = entry else { return Task {} }
        how(&changed)
        speaker.changed()
        refusal = ""
        enter(changed)
        return Task {
            if let left { await frame.tell { try $0.remember(now: $1, entry: left) } }
            await remember()
            await refresh()
        }
    }

    /// From now on an answer to what was entered before is out of date, and would take a digit away again.
    private func enter(_ entry: WeighEntry) {
        latest.overtake()
        self.entry = entry
    }

    private func remember() async {
        guard let entry else { return }
        await frame.tell { try $0.remember(now: $1, entry: entry) }
    }

    private func save() async {
        guard let entry, !isSaving else { return }
        isSaving = true
        defer { isSaving = false }
        speaker.now()
        refusal = ""
        guard await frame.save({ try $0.save(now: $1, entry: entry) }, refused: refuse) else { return }
        speaker.next()
        // The studio has remembered what stays chosen, with the digits cleared.
        self.entry = nil
        await refresh()
    }

    /// What could not be kept: said in the verdict's place, and the digits stay.
    private func refuse(_ problem: any Error) {
        if case StudioError.Refused(let key, _) = problem, let field = Field(key: key) { fill(field) }
        refusal = frame.refusal(of: problem) ?? ""
    }
}
