import LaydownKit
import SwiftUI

/// The app: one studio in one file, in the app's own folder.
@main
struct LaydownApp: App {
    @State private var frame = Frame(folder: .ofThisApp, phone: .thisOne)

    var body: some Scene {
        WindowGroup {
            RootView()
                .environment(frame)
                .tint(.accent)
                .task { await frame.open() }
        }
    }
}
