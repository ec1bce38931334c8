import LaydownKit
import SwiftUI

/// The app: one studio in one file, in the app's own folder.
@main
struct LaydownApp: App {
    @State private var frame = Frame(
        folder: StudioFolder(URL.applicationSupportDirectory.appending(path: "laydown", directoryHint: .isDirectory)))

    var body: some Scene {
        WindowGroup {
            RootView()
                .environment(frame)
                .tint(.accent)
                .task { await frame.open() }
        }
    }
}
