import SwiftUI
import UIKit

/// A file that is handed to another app.
struct SharedFile: Identifiable {
    let url: URL
    var id: URL { url }
}

/// Hands a file to an app that the person chooses, or into a folder.
struct ShareSheet: UIViewControllerRepresentable {
    let file: URL
    /// Is told whether it was handed on.
    var done: @MainActor (Bool) -> Void = { _ in }

    func makeUIViewController(context: Context) -> UIActivityViewController {
        let editor = UIActivityViewController(activityItems: [file], applicationActivities: nil)
        // The system answers on the main thread.
        editor.completionWithItemsHandler = { _, isDone, _, _ in MainActor.assumeIsolated { done(isDone) } }
        return editor
    }

    func updateUIViewController(_ controller: UIActivityViewController, context: Context) {}
}
