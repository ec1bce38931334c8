// Not BackgroundTasks: see SwiftUI.swift beside this file.

import Foundation

private func notBackgroundTasks() -> Never { fatalError("declarations to check types against") }

open class BGTask {
    public init() { notBackgroundTasks() }
    public var expirationHandler: (() -> Void)?
    public func setTaskCompleted(success: Bool) { notBackgroundTasks() }
}
open class BGTaskRequest {
    public init() { notBackgroundTasks() }
    public var earliestBeginDate: Date?
}
public final class BGProcessingTaskRequest: BGTaskRequest {
    public init(identifier: String) { notBackgroundTasks() }
}
public final class BGTaskScheduler: @unchecked Sendable {
    public static var shared: BGTaskScheduler { notBackgroundTasks() }
    public func register(
        forTaskWithIdentifier: String, using: DispatchQueue?, launchHandler: @escaping (BGTask) -> Void
    ) -> Bool { notBackgroundTasks() }
    public func submit(_ request: BGTaskRequest) throws { notBackgroundTasks() }
}
