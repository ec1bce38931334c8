import Foundation
import Testing

/// Both shells have the same labels under the same names, and the same pages. That each value of an enum is shown by both, and
/// each error said, their compilers see to: no shell has a branch for the rest.
@Suite struct WordsTests {
    private let root = URL(fileURLWithPath: #filePath).deletingLastPathComponent().deletingLastPathComponent()
        .deletingLastPathComponent()

    @Test func theShellsSayTheSame() throws {
        let words = try read(
            "Sources/LaydownKit/Frame/Words.swift",
            #/(?:let|func) (\w+)(?:\([^)]*\) -> String)? (?:= |\{\s+)(?:"""\s+((?:.|\n)+?)\s+"""|"(.*)")/#)
        let others = try read(
            "../android/app/src/main/res/values/strings.xml", #/name="(\w+)">([^<]+)?(\t)?<\/string>/#)
        #expect(words.count > 100 && others.count > 100)
        let onlyHere: Set = ["camerarefused"]
        for (name, text) in words where !onlyHere.contains(name) { #expect(others[name] == text, "\(name)") }
        // What only Android has to say: an app that its phone may lack, a copy that it may sweep away, a keyboard of the
        // app's own, ways to hand a file on that the system's own sheet asks for here, and the name that is Info.plist's.
        let onlyThere: Set = [
            "appname", "nobodyprints", "backupgone", "nofilesapp", "nofoldersapp", "nogallery", "letters", "digits",
            "chosen", "putfile", "sendfile",
        ]
        #expect(Set(others.keys).subtracting(words.keys) == onlyThere)
    }

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
    private func read(
        _ path: String, _ pattern: Regex<(Substring, Substring, Substring?, Substring?)>
    ) throws -> [String: String] {
        let pairs = try text(of: path).matches(of: pattern).map { match in
            let text = String(match.output.2 ?? match.output.3 ?? "")
            return (
                match.output.1.replacing("_", with: "").lowercased(),
                text.replacing(#/\s*\\\n\s*/#, with: " ").replacing(#/%\d\$[sd]|\\\(\w+\)/#, with: "%")
            )
        }
        return Dictionary(pairs) { first, _ in first }
    }

    private func text(of path: String) throws -> String {
        try String(contentsOf: root.appendingPathComponent(path), encoding: .utf8)
    }
}
