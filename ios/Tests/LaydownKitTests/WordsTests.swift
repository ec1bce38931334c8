import Foundation
import Testing

/// The labels of both shells stand under the same names and say the same.
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
    }

    /// Names as one word in lower case, with what they say; every place for a word or a number as `%`.
    private func read(
        _ path: String, _ pattern: Regex<(Substring, Substring, Substring?, Substring?)>
    ) throws -> [String: String] {
        let file = try String(contentsOf: root.appendingPathComponent(path), encoding: .utf8)
        let pairs = file.matches(of: pattern).map { match in
            let text = String(match.output.2 ?? match.output.3 ?? "")
            return (
                match.output.1.replacing("_", with: "").lowercased(),
                text.replacing(#/\s*\\\n\s*/#, with: " ").replacing(#/%\d\$[sd]|\\\(\w+\)/#, with: "%")
            )
        }
        return Dictionary(pairs) { first, _ in first }
    }
}
