import Foundation
import LaydownCore
import Observation

/// A firing on a page, to be looked at, shared and printed.
@MainActor @Observable
public final class ContactSheetScreen {
    /// How many pieces stand beside one another on a page, and how many rows there are.
    public static let across = 3
    /// See `across`.
    public static let down = 4

    /// All that it shows; nil until the studio has answered.
    public var view: ContactSheetView? { latest.view }
    /// Why it could not be handed on; empty when nothing is wrong.
    public private(set) var trouble = ""

    private let frame: Frame
    private let firing: String
    private let latest = Latest<ContactSheetView>()

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - firing: The firing's id.
    public init(frame: Frame, firing: String) {
        self.frame = frame
        self.firing = firing
    }

    /// Reads the sheet.
    public func refresh() async {
        let firing = firing
        await frame.show(latest) { try $0.contactSheet(now: $1, firing: firing) }
    }

    /// The pieces, page by page; a single empty page where there are none.
    public var pages: [[ContactTile]] {
        let tiles = view?.tiles ?? []
        let size = ContactSheetScreen.across * ContactSheetScreen.down
        guard !tiles.isEmpty else { return [[]] }
        return stride(from: 0, to: tiles.count, by: size).map { Array(tiles[$0..<min($0 + size, tiles.count)]) }
    }

    /// Puts the painted sheet into a file that can be handed to another app.
    ///
    /// - Parameters:
    ///   - ending: How the file's name ends: `jpg`, `pdf`.
    ///   - write: Writes the file.
    /// - Returns: The file; nil if it could not be written, which is then said.
    public func file(ending: String, write: (URL) throws -> Void) -> URL? {
        guard let view else { return nil }
        // A title may hold what no file's name can.
        let name = view.title.components(separatedBy: CharacterSet(charactersIn: "/\\:")).joined(separator: "-")
        do {
            frame.handover.clear()
            let file = try frame.handover.place(named: "\(name).\(ending)")
            try write(file)
            trouble = ""
            return file
        } catch {
            trouble = Words.fileNotCopied
            return nil
        }
    }
}
