import Testing

@testable import LaydownKit

/// How the Weigh screen is laid out on the phones there are, by the room between their bars.
@Suite struct BenchShapeTests {
    @Test func allOfItIsSeenAtOnceOnEveryPhone() {
        // Widths and heights of iPhones (320 by 568 to 440 by 956), without their bars.
        for (width, height) in [(320.0, 499.0), (375, 598), (375, 679), (390, 711), (393, 710), (430, 790), (440, 808)]
        {
            let shape = BenchShape(width: width, height: height, isLarge: false)
            let upper = shape.isRoomy ? 216.0 : 100
            let reading = shape.isStacked ? 152.0 : 76
            let keys = Double(shape.rows) * 60 + (shape.isSaveBeside ? 0 : 60) + 8
            #expect(upper + 116 + reading + keys <= height, "\(width) by \(height): \(shape)")
        }
    }

    @Test func fieldsStandAboveOneAnotherWhereLettersAreLargeOrTheScreenIsNarrow() {
        #expect(!BenchShape(width: 393, height: 710, isLarge: false).isStacked)
        #expect(BenchShape(width: 393, height: 710, isLarge: true).isStacked)
        #expect(BenchShape(width: 375, height: 679, isLarge: false).isStacked)
        #expect(!BenchShape(width: 320, height: 499, isLarge: false).isStacked)
    }

    @Test func everyKeyIsThereOnce() {
        let all = Set((0...9).map(Key.digit) + [.decimal, .delete])
        for (width, height) in [(320.0, 499.0), (393, 710), (710, 393)] {
            let keys = BenchShape(width: width, height: height, isLarge: false).keys.flatMap { $0 }
            #expect(keys.count == all.count && Set(keys) == all)
        }
    }
}
