/// How the Weigh screen is laid out so that all of it is seen at once. The same as Android's, by the room between the bars.
public struct BenchShape: Equatable, Sendable {
    /// Whether the keys stand at the side.
    public let isLying: Bool
    /// Whether there is room for the names of the choices, and for a larger aim.
    public let isRoomy: Bool
    /// Whether Save stands beside the keys; else below them.
    public let isSaveBeside: Bool
    /// Whether the bare and the glazed piece stand above one another.
    public let isStacked: Bool
    /// How many rows the keys stand in.
    public let rows: Int

    /// - Parameters:
    ///   - width: The room between the edges, in points.
    ///   - height: The room between the bars, in points.
    ///   - isLarge: Whether letters are at least 1.3 times as large as usual.
    public init(width: Double, height: Double, isLarge: Bool) {
        let isNarrow = width < 380
        isLying = width > height
        isRoomy = !isLarge && (isLying ? height >= 340 : !isNarrow && height >= 770)
        isSaveBeside = isLying || isLarge || height < (isNarrow ? 690 : 640)
        // Two fields above one another take 76 points more, which the shortest screens do not have.
        isStacked = (isLarge || isNarrow) && height >= (isLying ? 340 : 565)
        rows = isLying || height < 630 ? 3 : 4
    }

    /// The keys, row by row.
    public var keys: [[Key]] {
        let digits = { (range: ClosedRange<Int>) in range.map(Key.digit) }
        return rows == 3
            ? [digits(1...3) + [.delete], digits(4...6) + [.decimal], digits(7...9) + [.digit(0)]]
            : [digits(1...3), digits(4...6), digits(7...9), [.decimal, .digit(0), .delete]]
    }
}
