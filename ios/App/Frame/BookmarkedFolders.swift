import Foundation
import LaydownCore
import LaydownKit

/// Folders that the person chose, found again by the bookmarks that the system gives out for them, written as base64.
struct BookmarkedFolders: Folders {
    private enum WeighMode { case reading, replacing, deleting }

    func handle(of folder: URL) throws -> String {
        // What has just been chosen may be used only while it is opened.
        try opened(folder) { try $0.bookmarkData().base64EncodedString() }
    }

    func reach<ActivityResult>(_ handle: String, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
        guard let bookmark = Data(base64Encoded: handle) else { throw FolderError.Gone }
        var isStale = false
        // A stale one still leads there: it was made before the folder was moved or renamed.
        guard let folder = try? URL(resolvingBookmarkData: bookmark, bookmarkDataIsStale: &isStale) else {
            throw FolderError.Gone
        }
        return try opened(folder, work)
    }

    func read<ActivityResult>(_ url: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
        try coordinated(.reading, url, work)
    }

    func write<ActivityResult>(_ url: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
        try coordinated(.replacing, url, work)
    }

    func size(of file: URL) throws -> UInt64 {
        // What is only promised has a size too.
        guard let size = try file.promisedItemResourceValues(forKeys: [.fileSizeKey]).fileSize else {
            throw FolderError.Failed
        }
        return UInt64(size)
    }

    func delete(_ url: URL) throws {
        try coordinated(.deleting, url) { try FileManager.default.removeItem(at: $0) }
    }

    private func opened<ActivityResult>(_ folder: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult
    {
        // Where the system does not let it be opened, what is done there fails, and tells why.
        let isOpened = folder.startAccessingSecurityScopedResource()
        defer { if isOpened { folder.stopAccessingSecurityScopedResource() } }
        return try work(folder)
    }

    /// Waits for whoever else has to do with a file, then does `work` where it lies by then. The system calls back before it
    /// returns, or not at all, and then says why.
    private func coordinated<ActivityResult>(
        _ way: WeighMode, _ url: URL, _ work: (URL) throws -> ActivityResult
    ) throws -> ActivityResult {
        let coordinator = NSFileCoordinator()
        var problem: NSError?
        var outcome: Result<ActivityResult, any Error>?
        switch way {
        case .reading:
            coordinator.coordinate(readingItemAt: url, options: [], error: &problem) { url in
                outcome = Result { try work(url) }
            }
        case .replacing:
            coordinator.coordinate(writingItemAt: url, options: .forReplacing, error: &problem) { url in
                outcome = Result { try work(url) }
            }
        case .deleting:
            coordinator.coordinate(writingItemAt: url, options: .forDeleting, error: &problem) { url in
                outcome = Result { try work(url) }
            }
        }
        guard let outcome else { throw problem ?? FolderError.Gone }
        return try outcome.get()
    }
}
