// What the app uses of Apple's Foundation and other systems' Foundation lacks, as signatures only: see SwiftUI.swift beside this
// file. Compiled together with the app.

import Foundation

private func notFoundation() -> Never { fatalError("declarations to check types against") }

extension URL {
    func startAccessingSecurityScopedResource() -> Bool { notFoundation() }
    func stopAccessingSecurityScopedResource() { notFoundation() }
    func promisedItemResourceValues(forKeys: Set<URLResourceKey>) throws -> URLResourceValues { notFoundation() }
    struct BookmarkCreationOptions: OptionSet { let rawValue: UInt }
    struct BookmarkResolutionOptions: OptionSet { let rawValue: UInt }
    func bookmarkData(
        options: BookmarkCreationOptions = [], includingResourceValuesForKeys: Set<URLResourceKey>? = nil,
        relativeTo: URL? = nil
    ) throws -> Data { notFoundation() }
    init(
        resolvingBookmarkData: Data, options: BookmarkResolutionOptions = [], relativeTo: URL? = nil,
        bookmarkDataIsStale: inout Bool
    ) throws { notFoundation() }
}

final class NSFileCoordinator {
    struct ReadingOptions: OptionSet { let rawValue: UInt }
    struct WritingOptions: OptionSet {
        let rawValue: UInt
        static let forDeleting = WritingOptions(rawValue: 1)
        static let forReplacing = WritingOptions(rawValue: 8)
    }
    init(filePresenter: Never? = nil) { notFoundation() }
    // On Apple's systems the problem goes into an NSErrorPointer, which takes `&problem` as well.
    func coordinate(
        readingItemAt: URL, options: ReadingOptions = [], error: inout NSError?, byAccessor: (URL) -> Void
    ) { notFoundation() }
    func coordinate(
        writingItemAt: URL, options: WritingOptions = [], error: inout NSError?, byAccessor: (URL) -> Void
    ) { notFoundation() }
}

extension ProcessInfo {
    var isLowPowerModeEnabled: Bool { notFoundation() }
}
