// Not PhotosUI: see SwiftUI.swift beside this file.

import SwiftUI

private func notPhotosUI() -> Never { fatalError("declarations to check types against") }

public protocol Transferable {}
extension Data: Transferable {}

public struct PHPickerFilter: Sendable { public static var images: PHPickerFilter { notPhotosUI() } }
public struct PhotosPickerItem: Equatable, Hashable, Sendable {
    public struct EncodingDisambiguationPolicy: Sendable {
        public static var automatic: EncodingDisambiguationPolicy { notPhotosUI() }
        public static var compatible: EncodingDisambiguationPolicy { notPhotosUI() }
    }
    public func loadTransferable<T: Transferable>(type: T.Type) async throws -> T? { notPhotosUI() }
}
extension View {
    public func photosPicker(
        isPresented: Binding<Bool>, selection: Binding<PhotosPickerItem?>, matching: PHPickerFilter? = nil,
        preferredItemEncoding: PhotosPickerItem.EncodingDisambiguationPolicy = .automatic
    ) -> some View { Drawn() }
}
