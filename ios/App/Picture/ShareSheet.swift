import SwiftUI
import UIKit

/// A file that is handed to another app.
struct SharedFile: Identifiable {
    let url: URL
    var id: URL { url }
}

/// Hands a file to an app that the person chooses.
struct ShareSheet: UIViewControllerRepresentable {
    let file: URL

    func makeUIViewController(context: Context) -> UIActivityViewController {
        UIActivityViewController(activityItems: [file], applicationActivities: nil)
    }

    func updateUIViewController(_ controller: UIActivityViewController, context: Context) {}
}
