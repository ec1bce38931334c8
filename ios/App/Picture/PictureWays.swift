import AVFoundation
import LaydownKit
import PhotosUI
import SwiftUI
import UIKit

/// A way to get a picture.
enum PictureWay: Hashable {
    case camera, gallery

    /// The way of the code that a sheet gives.
    init(code: String) {
        self = code == "camera" ? .camera : .gallery
    }
}

extension View {
    /// Gets a picture by the way that is asked for, as a JPEG or PNG file's bytes.
    ///
    /// - Parameters:
    ///   - way: Set to ask; nil again once it has been answered.
    ///   - taken: Is given the bytes; none at all if they could not be read.
    ///   - none: Is given the sentence why no picture came.
    /// - Returns: The view, which opens the camera or the gallery over itself.
    func takesPictures(
        by way: Binding<PictureWay?>, taken: @escaping @MainActor (Data) -> Void,
        none: @escaping @MainActor (String) -> Void
    ) -> some View {
        modifier(PictureTaking(way: way, taken: taken, none: none))
    }
}

private struct PictureTaking: ViewModifier {
    @Binding var way: PictureWay?
    let taken: @MainActor (Data) -> Void
    let none: @MainActor (String) -> Void
    @State private var isCameraOpen = false
    @State private var isGalleryOpen = false
    @State private var item: PhotosPickerItem?

    func body(content: Content) -> some View {
        content
            .onChange(of: way) { _, asked in
                way = nil
                switch asked {
                case .camera: openCamera()
                case .gallery: isGalleryOpen = true
                case nil: break
                }
            }
            .fullScreenCover(isPresented: $isCameraOpen) {
                CameraView { picture in
                    isCameraOpen = false
                    if let picture { taken(picture) } else { none(Words.noPicture) }
                }
                .ignoresSafeArea()
            }
            // Compatible: the core reads JPEG and PNG, not what the camera keeps by itself.
            .photosPicker(
                isPresented: $isGalleryOpen, selection: $item, matching: .images, preferredItemEncoding: .compatible
            )
            .onChange(of: item) { _, chosen in
                guard let chosen else { return }
                item = nil
                Task { await load(chosen) }
            }
    }

    private func openCamera() {
        if !UIImagePickerController.isSourceTypeAvailable(.camera) { return none(Words.noCamera) }
        switch AVCaptureDevice.authorizationStatus(for: .video) {
        case .denied, .restricted: none(Words.cameraRefused)
        default: isCameraOpen = true
        }
    }

    private func load(_ chosen: PhotosPickerItem) async {
        do {
            guard let bytes = try await chosen.loadTransferable(type: Data.self) else { return none(Words.noPicture) }
            taken(Picture.readable(bytes))
        } catch {
            none(Words.pictureNotCopied)
        }
    }
}

/// Pictures as the core takes them.
enum Picture {
    private static let quality = 0.92

    /// A photograph as the bytes of a JPEG file; which way is up stays noted in it.
    static func jpeg(_ image: UIImage) -> Data {
        image.jpegData(compressionQuality: quality) ?? Data()
    }

    /// JPEG and PNG as they are; anything else that the phone can show as JPEG; what it cannot, as it is, to be refused.
    static func readable(_ bytes: Data) -> Data {
        if bytes.starts(with: [0xFF, 0xD8]) || bytes.starts(with: [0x89, 0x50, 0x4E, 0x47]) { return bytes }
        return UIImage(data: bytes).map(jpeg) ?? bytes
    }
}

/// The phone's own camera.
private struct CameraView: UIViewControllerRepresentable {
    /// Is given the picture as JPEG; nil if none was taken.
    let answered: @MainActor (Data?) -> Void

    func makeUIViewController(context: Context) -> UIImagePickerController {
        let camera = UIImagePickerController()
        camera.sourceType = .camera
        camera.delegate = context.coordinator
        return camera
    }

    func updateUIViewController(_ camera: UIImagePickerController, context: Context) {}

    func makeCoordinator() -> Listener {
        Listener(answered: answered)
    }

    final class Listener: NSObject, UIImagePickerControllerDelegate, UINavigationControllerDelegate {
        private let answered: @MainActor (Data?) -> Void

        init(answered: @escaping @MainActor (Data?) -> Void) {
            self.answered = answered
        }

        func imagePickerController(
            _ picker: UIImagePickerController,
            didFinishPickingMediaWithInfo info: [UIImagePickerController.InfoKey: Any]
        ) {
            answered((info[.originalImage] as? UIImage).map(Picture.jpeg))
        }

        func imagePickerControllerDidCancel(_ picker: UIImagePickerController) {
            answered(nil)
        }
    }
}
