/// A key of the keypad.
public enum Key: Hashable, Sendable {
    /// 0 to 9.
    case digit(Int)
    /// The decimal mark, as the potter writes it.
    case decimal
    /// Takes the last one away.
    case delete
    /// Takes all away.
    case clear
}

/// What stands in a field that the keypad fills. Only the writing is looked after here; what it means, the core says.
struct Typed: Equatable, Sendable {
    /// A hundred kilograms to the hundredth of a gram; more is a thumb resting on a key.
    static let longest = 8

    private(set) var text: String

    init(_ text: String) {
        self.text = text
    }

    /// Changes what stands there; `decimal` is the decimal mark, as the potter writes it.
    mutating func press(_ key: Key, decimal: String) {
        switch key {
        case .delete: text = String(text.dropLast())
        case .clear: text = ""
        case .decimal:
            // Both marks count: the preference may have changed since the first was typed.
            if text.contains(where: { $0 == "." || $0 == "," }) || text.count >= Typed.longest { return }
            text = text.isEmpty ? "0" + decimal : text + decimal
        case .digit(let digit):
            if text == "0" { text = "" }
            if text.count < Typed.longest { text += String(digit) }
        }
    }
}
