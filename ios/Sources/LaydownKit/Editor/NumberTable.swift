/// A table of numbers as it is filled in. Its text has a line for each row, and tabs between the cells.
public struct NumberTable: Equatable, Sendable {
    /// The rows with their cells, as typed.
    public private(set) var rows: [[String]]
    private let width: Int

    /// - Parameters:
    ///   - text: What stands in the field.
    ///   - columns: How many columns there are.
    public init(text: String, columns: Int) {
        width = columns
        rows = text.split(separator: "\n", omittingEmptySubsequences: false).map { line in
            let cells = line.split(separator: "\t", omittingEmptySubsequences: false).map(String.init)
            return (0..<columns).map { $0 < cells.count ? cells[$0] : "" }
        }
    }

    /// What stands in the field with this.
    public var text: String {
        rows.map { $0.joined(separator: "\t") }.joined(separator: "\n")
    }

    /// Types into a cell; what would tear the table apart becomes a space.
    public mutating func type(_ text: String, row: Int, column: Int) {
        guard rows.indices.contains(row), rows[row].indices.contains(column) else { return }
        rows[row][column] = String(text.map { $0 == "\t" || $0.isNewline ? " " : $0 })
    }

    /// Adds an empty row at the end.
    public mutating func addRow() {
        rows.append(Array(repeating: "", count: width))
    }

    /// Takes a row away.
    public mutating func takeAway(row: Int) {
        guard rows.indices.contains(row) else { return }
        rows.remove(at: row)
    }
}
