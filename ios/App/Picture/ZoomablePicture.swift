import SwiftUI
import UIKit

/// A photograph to look at closely: two fingers zoom to the pixel, one moves it, and a double tap goes to the pixels and back.
struct ZoomablePicture: View {
    let file: String
    /// What it is called.
    let name: String

    @Environment(\.displayScale) private var scale
    @State private var image: UIImage?
    @State private var size = CGSize(width: 1, height: 1)
    @State private var zoom: CGFloat = 1
    @State private var at = CGSize.zero
    /// Where it was when the fingers came down.
    @State private var before: (zoom: CGFloat, at: CGSize)?

    /// The most pixels on the longer side that are unpacked.
    private static let most: CGFloat = 6000
    /// Screen pixels to a pixel of the picture, at most.
    private static let mostPerPixel: CGFloat = 4

    var body: some View {
        ZStack {
            if let image {
                Image(uiImage: image)
                    .resizable()
                    .scaledToFit()
                    .scaleEffect(zoom)
                    .offset(at)
            } else {
                Color.clear
            }
        }
        .frame(maxWidth: .infinity, maxHeight: .infinity)
        .contentShape(Rectangle())
        .onGeometryChange(for: CGSize.self) {
            $0.size
        } action: {
            size = $0
        }
        .onTapGesture(count: 2) { _ in turn() }
        .simultaneousGesture(
            MagnifyGesture()
                .onChanged { value in
                    let was = hold()
                    zoom = min(max(was.zoom * value.magnification, 1), toThePixel * ZoomablePicture.mostPerPixel)
                    settle()
                }
                .onEnded { _ in before = nil }
        )
        .simultaneousGesture(
            DragGesture(minimumDistance: 4, coordinateSpace: .local)
                .onChanged { value in
                    let was = hold()
                    at = CGSize(
                        width: was.at.width + value.translation.width, height: was.at.height + value.translation.height)
                    settle()
                }
                .onEnded { _ in before = nil }
        )
        .task(id: file) {
            let (file, most) = (file, ZoomablePicture.most)
            image = await Task.detached { PictureFile.read(file, pixels: most) }.value
        }
        .accessibilityElement()
        .accessibilityLabel(name)
        .accessibilityAddTraits(.isImage)
        .accessibilityActions { Button(name) { turn() } }
    }

    /// The zoom at which a pixel of the picture is one of the screen; no less than shows something.
    private var toThePixel: CGFloat {
        guard let image, image.size.width > 0, image.size.height > 0 else { return 2 }
        let fitted = min(size.width / image.size.width, size.height / image.size.height)
        return max(2, 1 / max(fitted * scale, 0.001))
    }

    private func hold() -> (zoom: CGFloat, at: CGSize) {
        if let before { return before }
        before = (zoom, at)
        return (zoom, at)
    }

    /// Goes to the pixels, or back to the whole picture.
    private func turn() {
        zoom = zoom > 1 ? 1 : toThePixel
        settle()
    }

    /// The picture stays in sight.
    private func settle() {
        let (x, y) = (size.width * (zoom - 1) / 2, size.height * (zoom - 1) / 2)
        at = CGSize(width: min(max(at.width, -x), x), height: min(max(at.height, -y), y))
    }
}
