import LaydownCore
import Testing

@testable import LaydownKit

@Suite struct KeypadTests {
    /// What stands there after these keys: digits, `.` for the decimal mark, `<` for delete, `c` for clear.
    private func typed(_ keys: String, after text: String = "", decimal: String = ".") -> String {
        var typed = Typed(text)
        for key in keys {
            switch key {
            case ".": typed.press(.decimal, decimal: decimal)
            case "<": typed.press(.delete, decimal: decimal)
            case "c": typed.press(.clear, decimal: decimal)
            default: typed.press(.digit(key.wholeNumberValue ?? 0), decimal: decimal)
            }
        }
        return typed.text
    }

    @Test(arguments: [
        ("", ""), ("19.4", "19.4"), (".5", "0.5"), ("1..5", "1.5"), ("0", "0"), ("00", "0"), ("07", "7"),
        ("0.7", "0.7"),
        ("19.4<", "19."), ("<", ""), ("19.4c", ""), ("123456789", "12345678"), ("1234567.9", "1234567."),
        ("12345678.", "12345678"), ("12345678<<9", "1234569"),
    ])
    func keysBecomeText(_ keys: String, _ text: String) {
        #expect(typed(keys) == text)
    }

    @Test func theDecimalMarkIsTheUsers() {
        #expect(typed("19.4", decimal: ",") == "19,4")
        #expect(typed(".", decimal: ",") == "0,")
    }

    @Test func oneMarkIsEnoughEvenAfterThePreferenceChanged() {
        #expect(typed(".5", after: "19,4", decimal: ".") == "19,45")
    }
}

@MainActor @Suite struct SpeakerTests {
    private final class Voice {
        var said: [String] = []
    }

    private let voice = Voice()

    private func speaker(rest: Duration = .seconds(60)) -> Speaker {
        Speaker(rest: rest) { [voice] in voice.said.append($0) }
    }

    @Test func aVerdictIsSaidOnceTheDigitsRest() async throws {
        let speaker = speaker(rest: .milliseconds(1))
        speaker.changed()
        speaker.verdict("Short")
        for _ in 0..<1000 where voice.said.isEmpty { try await Task.sleep(for: .milliseconds(5)) }
        #expect(voice.said == ["Short"])
    }

    @Test func whatComesOfTheNextDigitTakesItsPlace() {
        let speaker = speaker()
        speaker.changed()
        speaker.verdict("Short")
        speaker.changed()
        speaker.verdict("Right")
        speaker.now()
        #expect(voice.said == ["Right"])
    }

    @Test func nothingIsSaidWhenThePageIsOnlyShownAnew() {
        let speaker = speaker()
        speaker.verdict("Right")
        speaker.now()
        #expect(voice.said.isEmpty)
    }

    @Test func oneReadingIsSaidOnceAndTheNextOneEvenIfItIsTheSame() {
        let speaker = speaker()
        for _ in 0..<2 {
            speaker.changed()
            speaker.verdict("Right")
            speaker.now()
        }
        #expect(voice.said == ["Right"])
        speaker.next()
        speaker.changed()
        speaker.verdict("Right")
        speaker.now()
        #expect(voice.said == ["Right", "Right"])
    }
}
