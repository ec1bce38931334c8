import LaydownKit
import SwiftUI
import UniformTypeIdentifiers

extension View {
    /// Has a folder chosen in the system's own way.
    ///
    /// - Parameters:
    ///   - asked: Set to what it is asked for; nil again once that has been answered.
    ///   - chosen: Is given the folder, and what it was asked for.
    ///   - none: Is given the sentence why no folder came, and what it was asked for.
    /// - Returns: The view, which opens the system's chooser over itself.
    func choosesFolder<Asked>(
        _ asked: Binding<Asked?>, chosen: @escaping @MainActor (URL, Asked) -> Void,
        none: @escaping @MainActor (String, Asked) -> Void
    ) -> some View {
        modifier(FolderChoosing(asked: asked, chosen: chosen, none: none))
    }
}

private struct FolderChoosing<Asked>: ViewModifier {
    @Binding var asked: Asked?
    let chosen: @MainActor (URL, Asked) -> Void
    let none: @MainActor (String, Asked) -> Void
    @State private var isOpen = false
    /// Kept beside `asked`: the system closes its chooser, and only then says what came of it.
    @State private var waiting: Asked?

    func body(content: Content) -> some View {
        content
            .onChange(of: asked != nil) { _, isAsked in
                guard isAsked else { return }
                waiting = asked
                asked = nil
                isOpen = true
            }
            .fileImporter(isPresented: $isOpen, allowedContentTypes: [.folder], allowsMultipleSelection: false) {
                result in
                guard let wanted = waiting else { return }
                if case .success(let folders) = result, let folder = folders.first {
                    chosen(folder, wanted)
                } else {
                    none(Words.folderNotAllowed, wanted)
                }
            } onCancellation: {
                if let wanted = waiting { none(Words.noFolder, wanted) }
            }
    }
}
