import CoreGraphics
import ImageIO
import SwiftUI
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

    /// Writes pages of one size, in points of 1/72 inch, into a PDF file.
    ///
    /// - Throws: When the file cannot be written.
    @MainActor
    static func write<Page: View>(pages: [Page], of size: CGSize, to file: URL) throws {
        var box = CGRect(origin: .zero, size: size)
        guard let document = CGContext(file as CFURL, mediaBox: &box, nil) else {
            throw CocoaError(.fileWriteUnknown)
        }
        for page in pages {
            ImageRenderer(content: page).render { _, draw in
                document.beginPDFPage(nil)
                draw(document)
                document.endPDFPage()
            }
        }
        document.closePDF()
        // A full phone is noticed only by what is missing.
        guard let bytes = try file.resourceValues(forKeys: [.fileSizeKey]).fileSize, bytes > 0 else {
            throw CocoaError(.fileWriteOutOfSpace)
        }
    }
}
