import Foundation
import LaydownCore
import Observation

/// Anything that is filled in: the core says which fields there are and what follows from what is entered.
@MainActor @Observable
public final class EditorScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: EditorView? { latest.view }
    /// What could not be kept, if it is about no single field; empty when nothing is wrong.
    public private(set) var refusal = ""
    /// The key of the field that a refusal names, to be gone to; nil when there is none.
    public private(set) var refusedField: String?
    /// Whether a picture is being looked at.
    public private(set) var isLookingAtPicture = false
    /// Whether something done to the drawing can be undone.
    public var canUndoDrawing: Bool { entered.canUndo }
    /// Whether there is something to lose by going away.
    public var hasSomethingToSave: Bool { !entered.isEmpty && view?.saveLabel.isEmpty == false }
    /// Whether it was kept or removed, so that there is nothing left to do here.
    public private(set) var isDone = false
    /// Where what was kept leads; nil for back.
    public private(set) var next: Place?

    private let frame: AppModel
    private let kind: EditorKind
    /// What is changed; empty for something new.
    public let id: String
    private let subject: String
    private let pause: Duration
    private let latest = Latest<EditorView>()

    private var entered = Entered()
    /// What is wrong with a field, as keeping or a picture found it, by its key.
    private var refusals: [String: String] = [:]
    /// How often something was entered or undone other than by a touch.
    private var entries = 0
    private var isSaving = false

    /// What was done to the drawing and waits for the answer to what was done before it.
    private var touches: [(touch: Touch, gesture: Gesture)] = []
    private var drain: Task<Void, Never>?
    private var gesture: Gesture?

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - kind: Which editor.
    ///   - id: What is changed; empty for something new.
    ///   - subject: What it is about: the glaze of a bucket, the bucket of a check; else empty.
    ///   - pause: How long the fingers pause before what follows is asked for.
    public init(
        frame: AppModel, kind: EditorKind, id: String = "", subject: String = "", pause: Duration = .milliseconds(150)
    ) {
        self.frame = frame
        self.kind = kind
        self.id = id
        self.subject = subject
        self.pause = pause
    }

    /// Reads the editor with what is entered.
    public func refresh() async {
        let entry = entry
        await frame.show(latest) { try $0.editor(now: $1, entry: entry) }
    }

    /// What is to be written down, so that it is there again after the system has ended the app: what is entered on an editor
    /// that keeps something.
    public var half: [String: String] {
        hasSomethingToSave && !isDone ? entered.all.merging([draftKey: draft]) { $1 } : [:]
    }

    /// Enters again what was written down.
    public func restore(_ half: [String: String]) {
        guard entered.isEmpty else { return }
        for (key, text) in half where key != draftKey { entered.type(text, key: key) }
        restoredDraft = half[draftKey] ?? ""
    }

    private var entry: EditorEntry {
        EditorEntry(kind: kind, id: id, subject: subject, values: entered.values, draft: draft)
    }

    /// By this what is new is known when it is saved again.
    private var draft: String { view?.draft ?? restoredDraft }
    private var restoredDraft = ""
    /// No field has this key.
    private let draftKey = "draft"

    // MARK: Fields

    /// What stands in a field: what is entered is newer than what the core has seen.
    public func text(of field: EditorField) -> String {
        // The core never says a secret again: what is being typed stands there.
        field.kind == .secret ? entered.secret(field.key) : entered[field.key] ?? field.text
    }

    /// What the folder in a field is called; empty where none is chosen.
    public func folderName(of field: EditorField) -> String {
        text(of: field).split(separator: "\n").first.map(String.init) ?? ""
    }

    /// What is wrong with a field; empty when nothing is.
    public func refusal(of field: EditorField) -> String {
        refusals[field.key] ?? field.refusal
    }

    /// Something is entered: what follows is asked for at once, or, while one types, once the fingers pause.
    @discardableResult
    public func enter(_ text: String, in field: EditorField) -> Task<Void, Never> {
        guard text != self.text(of: field) else { return Task {} }
        if field.kind == .secret {
            entered.type(secret: text, key: field.key)
        } else {
            entered.type(text, key: field.key)
        }
        entries += 1
        refusal = ""
        refusals[field.key] = nil
        refusedField = nil
        let mine = entries
        let isTyped = [.text, .lines, .exact, .secret, .number, .table].contains(field.kind)
        return Task {
            // Nobody cancels it; what is entered meanwhile makes it out of date.
            if isTyped { guard (try? await Task.sleep(for: pause)) != nil, mine == entries else { return } }
            await refresh()
        }
    }

    // MARK: Days

    /// The day that stands in a field as ISO 8601 writes it, here; today where that is no day.
    public static func date(of text: String) -> Date {
        isoDays.date(from: text) ?? Date()
    }

    /// A day as it stands in a field.
    public static func text(of date: Date) -> String {
        isoDays.string(from: date)
    }

    private static let isoDays: DateFormatter = {
        let days = DateFormatter()
        days.calendar = Calendar(identifier: .gregorian)
        days.locale = Locale(identifier: "en_US_POSIX")
        days.dateFormat = "yyyy-MM-dd"
        return days
    }()

    // MARK: Folders

    /// A folder was chosen for a field.
    @discardableResult
    public func choose(_ folder: URL, in field: EditorField) -> Task<Void, Never> {
        let folders = frame.phone.folders
        return Task {
            let handle = await Task.detached { try? folders.handle(of: folder) }.value
            guard let handle else { return folderDidNotCome(Words.folderNotAllowed, in: field) }
            let name = folder.lastPathComponent.split(whereSeparator: \.isNewline).joined(separator: " ")
            await enter("\(name)\n\(handle)", in: field).value
        }
    }

    /// No folder was chosen, or it may not be used.
    public func folderDidNotCome(_ sentence: String, in field: EditorField) {
        refusals[field.key] = sentence
    }

    // MARK: Keeping

    /// Saves the editor. What cannot be kept is said beside its field, and all that was entered stays.
    @discardableResult
    public func save() -> Task<Void, Never> {
        Task {
            // What the finger did last belongs to it.
            await drain?.value
            guard !isSaving, !isDone else { return }
            isSaving = true
            defer { isSaving = false }
            let (entry, typed, secrets) = (entry, entered.secrets, frame.phone.secrets)
            let fields = Set(view?.fields.filter { $0.kind == .secret }.map(\.key) ?? [])
            let hasSecrets = kind == .syncLocation
            let command: StudioWork.Call<CommandResult> = { studio, now in
                let saved = try studio.saveRecord(now: now, entry: entry)
                if hasSecrets { try secrets.save(typed, of: fields) }
                return saved
            }
            guard let saved = await frame.saved(command, refused: refuse) else { return }
            if id.isEmpty { next = place(after: saved.id) }
            if kind == .preference { await frame.open() }
            leave()
        }
    }

    /// Where something new leads once it is saved.
    private func place(after saved: String) -> Place? {
        switch kind {
        // A firing that is begun is loaded next.
        case .firing: .firing(saved)
        // A new lot is looked at.
        case .bucket, .mix: .bucket(saved)
        // What was thinned is checked.
        case .thin: .editor(.check, subject: subject)
        default: nil
        }
    }

    /// Archives what the editor shows.
    @discardableResult
    public func remove() -> Task<Void, Never> {
        let (kind, id) = (kind, id)
        return Task {
            guard !isSaving, !isDone else { return }
            isSaving = true
            defer { isSaving = false }
            if await frame.save({ try $0.remove(now: $1, kind: kind, id: id) }, refused: refuse) { leave() }
        }
    }

    /// The editor is left for good: its pictures are of no use any more.
    public func leave() {
        isDone = true
        entered.forgetSecrets()
        frame.transferFolder.clear()
    }

    private func refuse(_ problem: any Error) {
        guard let sentence = frame.refusal(of: problem) else { return }
        if case StudioError.Refused(let key, _) = problem, view?.fields.contains(where: { $0.key == key }) == true {
            refusals[key] = sentence
            refusedField = key
        } else {
            refusal = sentence
        }
    }

    // MARK: The drawing

    /// A finger begins something that one Undo undoes.
    public func begin() {
        gesture = Gesture(step: entered.begin())
    }

    /// A finger does something to the drawing. Of the places that it passes through only the newest is asked about.
    @discardableResult
    public func touch(_ touch: Touch) -> Task<Void, Never> {
        let gesture = self.gesture ?? Gesture(step: entered.begin())
        self.gesture = gesture
        if case .move(let grip, _) = touch, case .move(grip, _)? = touches.last?.touch { touches.removeLast() }
        touches.append((touch, gesture))
        if let drain { return drain }
        let started = Task {
            while !touches.isEmpty {
                let (touch, gesture) = touches.removeFirst()
                await redraw(touch, gesture)
            }
            drain = nil
        }
        drain = started
        return started
    }

    private func redraw(_ touch: Touch, _ gesture: Gesture) async {
        let from = gesture.from ?? entry
        gesture.from = from
        let before = entries
        do {
            let redrawn = try await frame.work.ask { try $0.touch(now: $1, entry: from, touch: touch) }
            entered.put(redrawn.values, step: gesture.step)
            await show(redrawn.view, unlessEnteredSince: before)
        } catch {
            refuse(error)
        }
    }

    /// Undoes the last thing done to the drawing.
    @discardableResult
    public func undoDrawing() -> Task<Void, Never> {
        touches.removeAll()
        entered.undo()
        entries += 1
        return Task { await refresh() }
    }

    // MARK: The photograph

    /// Finds the outline in a photograph, and enters what comes of it.
    @discardableResult
    public func photograph(_ picture: Data, in field: EditorField) -> Task<Void, Never> {
        guard !isLookingAtPicture else { return Task {} }
        isLookingAtPicture = true
        refusals[field.key] = nil
        // The files that are entered are still shown.
        frame.transferFolder.clear(except: Set(entered.values.map(\.text)))
        let (entry, before) = (entry, entries)
        return Task {
            defer { isLookingAtPicture = false }
            do {
                let redrawn = try await frame.handOver(picture: picture) {
                    try $0.photograph(now: $1, entry: entry, file: $2)
                }
                for value in redrawn.values { entered.type(value.text, key: value.key) }
                await show(redrawn.view, unlessEnteredSince: before)
            } catch let problem as NoPicture {
                refusals[field.key] = problem.sentence
            } catch {
                refusals[field.key] = frame.refusal(of: error)
            }
        }
    }

    /// No picture came back.
    public func pictureDidNotCome(_ sentence: String, in field: EditorField) {
        refusals[field.key] = sentence
    }

    /// Shows what came; if something was entered meanwhile, that editor does not know it, and is asked for anew.
    private func show(_ view: EditorView, unlessEnteredSince before: Int) async {
        if entries == before { latest.put(view) } else { await refresh() }
    }
}

/// One thing that a finger does, from taking hold to letting go. Each place it passes through is calculated from what stood
/// there when it took hold, and so in the drawing as it was then: a drawing that grew under the finger would carry it along.
@MainActor
private final class Gesture {
    let step: Entered.Step
    var from: EditorEntry?

    init(step: Entered.Step) {
        self.step = step
    }
}
