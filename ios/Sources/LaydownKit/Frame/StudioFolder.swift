import Foundation
import LaydownCore

/// Where everything lies on this device: the studio's file with its photographs, the mark of this phone, and what is on its
/// way to or from another app.
public struct StudioFolder: Sendable {
    /// The app's own: in Application Support, where nobody but laydown reads it and the phone's own backups find it.
    public static var ofThisApp: StudioFolder {
        StudioFolder(
            URL(fileURLWithPath: NSHomeDirectory()).appendingPathComponent("Library/Application Support/laydown"))
    }

    private let folder: URL

    /// - Parameter folder: Made if it is not there.
    public init(_ folder: URL) {
        self.folder = folder
    }

    /// What is on its way to or from another app.
    public var transferFolder: TransferFolder {
        TransferFolder(folder: folder.appendingPathComponent("handover", isDirectory: true))
    }

    /// Opens the studio, making an empty one if there is none.
    ///
    /// - Throws: `StudioError` with what to do; a file that cannot be opened is left as it was.
    public func open(_ now: Now) throws -> Studio {
        // Generated code that belongs to another library would read its records wrongly, field by field.
        guard buildStamp() == generatedBuildStamp else { throw LibraryMismatch() }
        _ = setLanguage(tags: [Words.languages[Words.language]])
        try makeFolder(folder)
        try makeFolder(markFolder)
        try leaveOutOfBackups(markFolder)
        return try Studio.openHere(path: studio.path, mark: mark.path, now: now)
    }

    /// Saves what can be read of a damaged studio into a new one in its place, and keeps the damaged file beside it.
    ///
    /// - Returns: How much was saved.
    /// - Throws: `StudioError` with what to do; the damaged file is then still in its place.
    public func recover(_ now: Now) throws -> String {
        try recoverStudio(path: studio.path, mark: mark.path, now: now)
    }

    private var studio: URL { folder.appendingPathComponent("studio.laydown") }

    /// By this a studio knows that it is still on the phone it was made on.
    private var mark: URL { markFolder.appendingPathComponent("mark") }

    /// In a folder of its own, since what is written whole is a new file, which would be importedto the phone's backups again.
    private var markFolder: URL { folder.appendingPathComponent("this_phone", isDirectory: true) }
}

/// Makes a folder whose files can be read from the first unlocking after a start on: a stricter class would close the
/// studio's file under a write that is still going on when the phone is locked.
func makeFolder(_ folder: URL) throws {
    #if os(iOS)
        let attributes: [FileAttributeKey: Any]? = [
            .protectionKey: FileProtectionType.completeUntilFirstUserAuthentication
        ]
    #else
        let attributes: [FileAttributeKey: Any]? = nil
    #endif
    try FileManager.default.createDirectory(at: folder, withIntermediateDirectories: true, attributes: attributes)
}

/// Leaves a folder with all that comes to lie in it out of the phone's own backups.
func leaveOutOfBackups(_ folder: URL) throws {
    #if canImport(Darwin)
        var folder = folder
        var values = URLResourceValues()
        values.isExcludedFromBackup = true
        try folder.setResourceValues(values)
    #endif
}
