import Foundation
import LaydownCore
import Observation

/// One piece after the firing beside its record. Every tap is kept at once; what is written, when one goes on or away.
@MainActor @Observable
public final class AssessmentScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: AssessmentView? { latest.view }
    /// Why the last thing could not be done; empty when nothing is wrong.
    public private(set) var refusal = ""
    /// Whether a picture is being kept.
    public private(set) var isSavingPicture = false
    /// The note as it is written; what was kept while nothing is.
    public var note: String { written ?? view?.note ?? "" }

    private let frame: AppModel
    private let firing: String
    /// The piece's id; empty for the first one not yet looked at, until the studio has said which that is.
    private var piece: String
    private let latest = Latest<AssessmentView>()
    /// What is written and not kept; nil when all is.
    private var written: String?

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - firing: The firing's id.
    ///   - piece: The piece's id; empty for the first one not yet looked at.
    public init(frame: AppModel, firing: String, piece: String) {
        self.frame = frame
        self.firing = firing
        self.piece = piece
    }

    /// Reads the piece.
    public func refresh() async {
        let (firing, piece) = (firing, piece)
        guard let view = await frame.show(latest, { try $0.assessment(now: $1, firing: firing, piece: piece) }) else {
            return
        }
        self.piece = view.piece
    }

    // MARK: Going on

    /// What the button to the next piece says.
    public var nextLabel: String { view?.next.isEmpty == true ? Words.lastPiece : Words.nextPiece }

    /// Goes to the next piece.
    ///
    /// - Returns: Whether the page is to be left: there is no other piece.
    public func goOn() async -> Bool {
        guard let next = view?.next, await saveWritten() else { return false }
        await go(to: next)
        return next.isEmpty
    }

    /// Goes to the piece before.
    public func goBack() async {
        guard let previous = view?.previous, await saveWritten() else { return }
        await go(to: previous)
    }

    private func go(to next: String) async {
        guard !next.isEmpty else { return }
        refusal = ""
        frame.offer.clear()
        piece = next
        written = nil
        await refresh()
    }

    // MARK: What is said of the piece

    /// Saves what one tap says.
    @discardableResult
    public func say(_ look: Assessment) -> Task<Void, Never> {
        let (firing, piece) = (firing, piece)
        return act { try $0.assess(now: $1, firing: firing, piece: piece, look: look) }
    }

    /// The answers to how much it is liked.
    public var stars: [Choice] {
        (1...5).map { Choice(code: String($0), name: String($0), chosen: view.map { Int($0.liking) } == $0) }
    }

    /// Saves how much it is liked.
    @discardableResult
    public func like(_ choice: Choice) -> Task<Void, Never> {
        say(.liking(stars: UInt8(choice.code) ?? 0))
    }

    /// The note is being written.
    public func write(_ text: String) {
        written = text == view?.note ? nil : text
    }

    /// Saves what is written, without a word, so that nobody is stopped by it.
    ///
    /// - Returns: Whether nothing written is left to be kept.
    @discardableResult
    public func saveWritten() async -> Bool {
        guard let text = written else { return true }
        let (firing, piece) = (firing, piece)
        do {
            _ = try await frame.work.ask {
                try $0.assess(now: $1, firing: firing, piece: piece, look: .note(text: text))
            }
            await refresh()
            // What was written since is newer.
            if written == text { written = nil }
            return true
        } catch {
            refusal = frame.refusal(of: error) ?? ""
            return false
        }
    }

    // MARK: Photographs

    /// Saves a photograph of the piece.
    @discardableResult
    public func save(picture: Data) -> Task<Void, Never> {
        let (firing, piece) = (firing, piece)
        refusal = ""
        isSavingPicture = true
        return Task {
            defer { isSavingPicture = false }
            do {
                let saved = try await frame.handOver(picture: picture) {
                    try $0.savePhoto(now: $1, piece: piece, firing: firing, file: $2)
                }
                frame.offer.tell(saved)
            } catch let problem as NoPicture {
                refusal = problem.sentence
            } catch {
                refusal = frame.refusal(of: error) ?? ""
            }
            await refresh()
        }
    }

    /// No picture came back.
    public func pictureDidNotCome(_ sentence: String) {
        refusal = sentence
    }

    /// Takes a photograph off.
    @discardableResult
    public func takeOff(_ photo: PhotoView) -> Task<Void, Never> {
        act { try $0.removePhoto(now: $1, id: photo.id) }
    }

    /// Saves something and shows the piece with it; what is refused is said on the page.
    private func act(_ command: @escaping StudioWork.Call<CommandResult>) -> Task<Void, Never> {
        Task {
            refusal = ""
            _ = await frame.save(command, refused: { refusal = frame.refusal(of: $0) ?? "" })
            await refresh()
        }
    }
}
