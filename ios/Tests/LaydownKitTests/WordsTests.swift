import Foundation
import Testing

/// Both shells have the same pages; their labels are written from one source. That each value of an enum is shown by both, and
/// each error said, their compilers see to: no shell has a branch for the rest.
@Suite struct WordsTests {
    private let root = URL(fileURLWithPath: #filePath).deletingLastPathComponent().deletingLastPathComponent()
        .deletingLastPathComponent()

    @Test func theShellsHaveTheSamePages() throws {
        let android = try text(of: "../android/app/src/main/kotlin/studio/laydown/Place.kt")
        let listed = try #require(android.firstMatch(of: #/enum class PageKind \{([^}]+)\}/#)).output.1
        let others = Set(listed.matches(of: #/\w+/#).map { $0.output.replacing("_", with: "").lowercased() })
        let places = try text(of: "Sources/LaydownKit/Frame/Place.swift")
        let declared = try #require(places.firstMatch(of: #/enum Place[^{]+\{((?:.|\n)+?)\n\}/#)).output.1
        let pages = Set(declared.matches(of: #/case `?(\w+)/#).map { $0.output.1.lowercased() })
        let root = try text(of: "App/Frame/RootView.swift")
        let row = try #require(root.firstMatch(of: #/enum Tab[^{]+\{\s+case ([^\n]+)/#)).output.1
        let tabs = Set(row.matches(of: #/\w+/#).map { String($0.output) })
        #expect(pages.count > 10 && tabs.count == 5 && pages.union(tabs) == others)
    }

    /// Names as one word in lower case, with what they say; every place for a word or a number as `%`.
    private func text(of path: String) throws -> String {
        try String(contentsOf: root.appendingPathComponent(path), encoding: .utf8)
    }
}
