import LaydownCore
import LaydownKit
import SwiftUI

/// The photographs of a piece beside one another; each is shown large when it is tapped.
struct PhotoStrip: View {
    let photos: [PhotoView]
    let takeOff: @MainActor (PhotoView) -> Void
    @State private var large: Large?

    private struct Large: Identifiable {
        let photo: PhotoView
        let name: String
        var id: String { photo.id }
    }

    var body: some View {
        if !photos.isEmpty {
            ScrollView(.horizontal, showsIndicators: false) {
                HStack(spacing: 8) {
                    ForEach(Array(photos.enumerated()), id: \.element.id) { at, photo in
                        let name = Words.photoOf(at + 1, photos.count)
                        Button {
                            large = Large(photo: photo, name: name)
                        } label: {
                            StoredPicture(file: photo.preview, name: name, side: 120)
                                .frame(width: 120, height: 120)
                        }
                        .buttonStyle(.plain)
                    }
                }
            }
            .sheet(item: $large) { large in
                NavigationStack {
                    ZoomablePicture(file: large.photo.file, name: large.name)
                        .background(Color.ground)
                        .navigationTitle(large.photo.caption)
                        .navigationBarTitleDisplayMode(.inline)
                        .toolbar {
                            ToolbarItem(placement: .cancellationAction) { Button(Words.close) { self.large = nil } }
                            ToolbarItem(placement: .destructiveAction) {
                                Button(Words.photoOff, role: .destructive) {
                                    self.large = nil
                                    takeOff(large.photo)
                                }
                            }
                        }
                }
            }
        }
    }
}
