import SwiftUI
import UIKit

/// Slip, clay and cobalt: the same as on Android, where the contrast is measured from the dots. Every ink on its ground has at
/// least 4.5 to 1, every border, line and mark at least 3 to 1; by night a warm near-black for a dim glazing room.
extension Color {
    static let ground = Color(day: 0xF5EFE6, night: 0x15110D)
    static let surface = Color(day: 0xFFFBF5, night: 0x221B15)
    static let key = Color(day: 0xFFFBF5, night: 0x2B231B)
    static let keyQuiet = Color(day: 0xEADFD0, night: 0x1D1711)
    static let ink = Color(day: 0x2A231D, night: 0xEDE2D4)
    static let quiet = Color(day: 0x655849, night: 0xB3A490)
    static let line = Color(day: 0x857560, night: 0x857563)
    static let accent = Color(day: 0x26478D, night: 0xA9BDEE)
    static let onAccent = Color(day: 0xFFFFFF, night: 0x11224E)
    static let accentGround = Color(day: 0xDBE3F4, night: 0x2B3A62)
    static let onAccentGround = Color(day: 0x1B3470, night: 0xD5DFF8)
    static let within = Color(day: 0x1F6548, night: 0x93D1AE)
    static let withinGround = Color(day: 0xD8EBDD, night: 0x1B3427)
    static let shortOf = Color(day: 0x7B5200, night: 0xE9BE6C)
    static let shortOfGround = Color(day: 0xF8E6BD, night: 0x3A2C10)
    static let over = Color(day: 0x9E3318, night: 0xF5A188)
    static let overGround = Color(day: 0xFADDD2, night: 0x43200F)
    static let cannotTell = Color(day: 0x594F60, night: 0xC9BBD0)
    static let cannotTellGround = Color(day: 0xE6DFE8, night: 0x302934)
    static let attention = Color(day: 0x7B5200, night: 0xE9BE6C)
    static let warning = Color(day: 0x9E3318, night: 0xF5A188)
    // Drawings: clay that is cut, bisque, glaze on it, the lines where two glazes lie.
    static let clay = Color(day: 0xB98A68, night: 0x8F6448)
    static let bisque = Color(day: 0xEBD9C4, night: 0x54432F)
    static let glazed = Color(day: 0xB4CBC2, night: 0x3C5950)
    static let overlap = Color(day: 0x3F6D62, night: 0x9CC9BB)
    // On a photograph, which has neither day nor night.
    static let seen = Color(day: 0xFFE45C, night: 0xFFE45C)
    static let seenEdge = Color(day: 0x1A1410, night: 0x1A1410)

    private init(day: UInt32, night: UInt32) {
        self.init(uiColor: UIColor { $0.userInterfaceStyle == .dark ? UIColor(rgb: night) : UIColor(rgb: day) })
    }
}

extension UIColor {
    fileprivate convenience init(rgb: UInt32) {
        let part = { (shift: UInt32) in CGFloat(rgb >> shift & 0xFF) / 255 }
        self.init(red: part(16), green: part(8), blue: part(0), alpha: 1)
    }
}
