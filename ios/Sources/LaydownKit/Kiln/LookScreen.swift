import Foundation
import LaydownCore
import Observation

/// One piece after the firing beside its record. Every tap is kept at once; what is written, when one goes on or away.
@MainActor @Observable
public final class LookScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: LookView? { latest.view }
    /// Why the last thing could not be done; empty when nothing is wrong.
    public private(set) var refusal = ""
    /// Whether a picture is being kept.
    public private(set) var isKeepingPicture = false
    /// The note as it is written; what was kept while nothing is.
    public var note: String { written ?? view?.note ?? "" }

    private let frame: Frame
    private let firing: String
    /// The piece's id; empty for the first one not yet looked at, until the studio has said which that is.
    private var piece: String
    private let latest = Latest<LookView>()
    /// What is written and not kept; nil when all is.
    private var written: String?

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - firing: The firing's id.
    ///   - piece: The piece's id; empty for the first one not yet looked at.
    public init(frame: Frame, firing: String, piece: String) {
        self.frame = frame
        self.firing = firing
        self.piece = piece
    }

    /// Reads the piece.
    public func refresh() async {
        let (firing, piece) = (firing, piece)
        guard let view = await frame.show(latest, { try $0.lookAt(now: $1, firing: firing, piece: piece) }) else {
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
        guard let next = view?.next, await keepWritten() else { return false }
        await go(to: next)
        return next.isEmpty
    }

    /// Goes to the piece before.
    public func goBack() async {
        guard let previous = view?.previous, await keepWritten() else { return }
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

    /// Keeps what one tap says.
    @discardableResult
    public func say(_ look: Look) -> Task<Void, Never> {
        let (firing, piece) = (firing, piece)
        return act { try $0.look(now: $1, firing: firing, piece: piece, look: look) }
    }

    /// The answers to how much it is liked.
    public var stars: [Choice] {
        (1...5).map { Choice(code: String($0), name: String($0), chosen: view.map { Int($0.liking) } == $0) }
    }

    /// Keeps how much it is liked.
    @discardableResult
    public func like(_ choice: Choice) -> Task<Void, Never> {
        say(.liking(stars: UInt8(choice.code) ?? 0))
    }

    /// The note is being written.
    public func write(_ text: String) {
        written = text == view?.note ? nil : text
    }

    /// Keeps what is written, without a word, so that nobody is stopped by it.
    ///
    /// - Returns: Whether nothing written is left to be kept.
    @discardableResult
    public func keepWritten() async -> Bool {
        guard let text = written else { return true }
        let (firing, piece) = (firing, piece)
        do {
            _ = try await frame.work.ask { try $0.look(now: $1, firing: firing, piece: piece, look: .note(text: text)) }
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

    /// Keeps a photograph of the piece.
    @discardableResult
    public func keep(picture: Data) -> Task<Void, Never> {
        let (firing, piece) = (firing, piece)
        refusal = ""
        isKeepingPicture = true
        return Task {
            defer { isKeepingPicture = false }
            do {
                let kept = try await frame.handOver(picture: picture) {
                    try $0.keepPhoto(now: $1, piece: piece, firing: firing, file: $2)
                }
                frame.offer.tell(kept)
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
        act { try $0.takePhotoOff(now: $1, id: photo.id) }
    }

    /// Keeps something and shows the piece with it; what is refused is said on the page.
    private func act(_ command: @escaping StudioWork.Call<Kept>) -> Task<Void, Never> {
        Task {
            refusal = ""
            _ = await frame.keep(command, refused: { refusal = frame.refusal(of: $0) ?? "" })
            await refresh()
        }
    }
}
