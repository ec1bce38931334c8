import Foundation
import LaydownCore
import Observation

/// A firing on a page, or one piece of it, to be looked at, shared and printed.
@MainActor @Observable
public final class ContactSheetScreen {
    /// How many pieces stand beside one another on a page; one by itself has the whole page.
    public var across: Int { view?.tiles.count == 1 ? 1 : 2 }
    /// How many rows of them there are.
    public var down: Int { view?.tiles.count == 1 ? 1 : 3 }

    /// All that it shows; nil until the studio has answered.
    public var view: ContactSheetView? { latest.view }
    /// Why it could not be handed on; empty when nothing is wrong.
    public private(set) var trouble = ""

    private let frame: AppModel
    private let firing: String
    /// Whether it is one piece by itself.
    public var isOnePiece: Bool { !piece.isEmpty }
    private let piece: String
    private let latest = Latest<ContactSheetView>()

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - firing: The firing's id.
    ///   - piece: The id of one piece; empty for the whole firing.
    public init(frame: AppModel, firing: String, piece: String = "") {
        self.frame = frame
        self.firing = firing
        self.piece = piece
    }

    /// Reads the sheet.
    public func refresh() async {
        let (firing, piece) = (firing, piece)
        await frame.show(latest) {
            piece.isEmpty
                ? try $0.contactSheet(now: $1, firing: firing)
                : try $0.pieceSheet(now: $1, firing: firing, piece: piece)
        }
    }

    /// The pieces, page by page; a single empty page where there are none.
    public var pages: [[ContactTile]] {
        let tiles = view?.tiles ?? []
        let size = across * down
        guard !tiles.isEmpty else { return [[]] }
        return stride(from: 0, to: tiles.count, by: size).map { Array(tiles[$0..<min($0 + size, tiles.count)]) }
    }

    /// Puts the painted sheet, as a JPEG file's bytes, where it can be handed to another app.
    ///
    /// - Returns: The file; nil if it could not be written, which is then said.
    public func file(of picture: Data) async -> URL? {
        await fileToShare(ending: "jpg") { _, file, _, _ in
            guard !picture.isEmpty, (try? picture.write(to: file, options: .atomic)) != nil else {
                throw NoPicture(sentence: Words.pictureNotCopied)
            }
        }
    }

    /// Has the core bind painted pages, JPEG files' bytes in A4's shape, into a document.
    ///
    /// - Returns: The file; nil if it could not be written, which is then said.
    public func document(of pages: [Data]) async -> URL? {
        let title = view?.title ?? ""
        return await fileToShare(ending: "pdf") { transferFolder, file, studio, _ in
            guard let paths = try? pages.map({ try transferFolder.write(picture: $0).path }) else {
                throw NoPicture(sentence: Words.pictureNotCopied)
            }
            try studio.writePdf(title: title, pages: paths, into: file.path)
        }
    }

    private func fileToShare(
        ending: String, write: @escaping @Sendable (TransferFolder, URL, Studio, Now) throws -> Void
    ) async -> URL? {
        guard let view else { return nil }
        trouble = ""
        return await frame.fileToShare(titled: view.title, ending: ending, refused: { trouble = $0 }, write: write)
    }
}
