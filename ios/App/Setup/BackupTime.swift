import BackgroundTasks
import Foundation
import LaydownKit

/// The system lets the app run now and then, out of sight, so that a backup that is due is made though nobody opens the app. It
/// does so when it sees fit, and not at all where the person has turned that off: then one is made when the app is opened.
@MainActor
enum BackupTime {
    /// The same in Info.plist.
    private static let identifier = "studio.laydown.backup"
    private static let pause: TimeInterval = 12 * 3600

    /// Says what is to be done then. To be called before the app has started.
    static func register(_ backups: BackupsByThemselves) {
        // False where Info.plist does not know the identifier, which a test sees to.
        _ = BGTaskScheduler.shared.register(forTaskWithIdentifier: identifier, using: .main) { @Sendable task in
            nonisolated(unsafe) let task = task
            MainActor.assumeIsolated { run(task, backups) }
        }
    }

    /// Asks for the next time.
    static func ask() {
        let request = BGProcessingTaskRequest(identifier: identifier)
        request.earliestBeginDate = Date(timeIntervalSinceNow: pause)
        // Refused where the person has turned it off, and on a simulator.
        try? BGTaskScheduler.shared.submit(request)
    }

    private static func run(_ task: BGTask, _ backups: BackupsByThemselves) {
        ask()
        guard !ProcessInfo.processInfo.isLowPowerModeEnabled else { return task.setTaskCompleted(success: true) }
        nonisolated(unsafe) let task = task
        let work = Task {
            await backups.run()
            // The studio remembers what went wrong; the system need not try again before the next time.
            if !Task.isCancelled { task.setTaskCompleted(success: true) }
        }
        // The phone needs its strength: what is not finished is due all the same, the next time. On which thread it is told so,
        // the system does not say.
        task.expirationHandler = { @Sendable in
            work.cancel()
            task.setTaskCompleted(success: false)
        }
    }
}
