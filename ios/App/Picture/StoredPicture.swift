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
            image = await Task.detached { PictureFile.read(file, pixels: pixels) }.value
        }
        .accessibilityElement()
        .accessibilityLabel(name)
        .accessibilityAddTraits(.isImage)
    }
}
