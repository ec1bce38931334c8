// In the place of the file of this name in the app, which speaks to Core Graphics.

import SwiftUI
import UIKit

enum PictureFile {
    nonisolated static func read(_ file: String, pixels: CGFloat) -> UIImage? { fatalError("\(file) \(pixels)") }
}
