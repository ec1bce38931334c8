import ImageIO
import SwiftUI
import UIKit

/// A picture in a file, no finer than it is shown. Nothing where the file has gone.
struct StoredPicture: View {
    let file: String
    /// What it is called.
    let name: String
    /// The longer side it is shown at, in points.
    let side: CGFloat
    @Environment(\.displayScale) private var scale
    @State private var image: UIImage?

    var body: some View {
        ZStack {
            if let image {
                Image(uiImage: image).resizable().scaledToFit()
            } else {
                Color.clear
            }
        }
        .task(id: file) {
            let (file, pixels) = (file, side * scale)
            image = await Task.detached { StoredPicture.read(file, pixels: pixels) }.value
        }
        .accessibilityElement()
        .accessibilityLabel(name)
        .accessibilityAddTraits(.isImage)
    }

    /// The picture, upright, its longer side at most so many pixels.
    nonisolated static func read(_ file: String, pixels: CGFloat) -> UIImage? {
        guard !file.isEmpty,
            let source = CGImageSourceCreateWithURL(URL(fileURLWithPath: file) as CFURL, nil)
        else { return nil }
        let options: [CFString: Any] = [
            kCGImageSourceCreateThumbnailFromImageAlways: true,
            kCGImageSourceCreateThumbnailWithTransform: true,
            kCGImageSourceThumbnailMaxPixelSize: pixels,
        ]
        return CGImageSourceCreateThumbnailAtIndex(source, 0, options as CFDictionary).map { UIImage(cgImage: $0) }
    }
}
