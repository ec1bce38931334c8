// Not Network: see SwiftUI.swift beside this file.

@_exported import Dispatch

private func notNetwork() -> Never { fatalError("declarations to check types against") }

public struct NWPath: Sendable {
    public var isExpensive: Bool { notNetwork() }
    public var isConstrained: Bool { notNetwork() }
}
public final class NWPathMonitor: Sendable {
    public init() { notNetwork() }
    public var currentPath: NWPath { notNetwork() }
    public func start(queue: DispatchQueue) { notNetwork() }
}
