import LaydownKit
import SwiftUI

/// The app: one studio in one file, in the app's own folder.
@main
struct LaydownApp: App {
    @Environment(\.scenePhase) private var phase
    @State private var frame: AppModel

    init() {
        let frame = AppModel(folder: .ofThisApp, phone: .thisOne)
        BackupTime.register(frame.backups)
        _frame = State(initialValue: frame)
    }

    var body: some Scene {
        WindowGroup {
            RootView()
                .environment(frame)
                .tint(.accent)
                .task { await frame.open() }
        }
        .onChange(of: phase) { _, now in
            switch now {
            // Behind what is shown. The system seldom runs apps that are seldom opened: then this is when one is overdue.
            case .active: Task { await frame.backups.run() }
            case .background: BackupTime.ask()
            default: break
            }
        }
    }
}
