import CoreGraphics
import ImageIO
import UIKit

/// What speaks to Core Graphics in its own types. Kept apart: only an Apple machine can check the types in this file.
enum PictureFile {
    /// The picture in a file, upright, its longer side at most so many pixels; nil where the file has gone.
    nonisolated static func read(_ file: String, pixels: CGFloat) -> UIImage? {
        guard !file.isEmpty, let source = CGImageSourceCreateWithURL(URL(fileURLWithPath: file) as CFURL, nil) else {
            return nil
        }
        let options: [CFString: Any] = [
            kCGImageSourceCreateThumbnailFromImageAlways: true,
            kCGImageSourceCreateThumbnailWithTransform: true,
            kCGImageSourceThumbnailMaxPixelSize: pixels,
        ]
        return CGImageSourceCreateThumbnailAtIndex(source, 0, options as CFDictionary).map { UIImage(cgImage: $0) }
    }
}
