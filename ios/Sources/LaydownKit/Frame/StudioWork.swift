import Dispatch
import Foundation
import LaydownCore

/// The one queue on which the studio is opened, asked and told: one call after the other, in the order of the questions.
@MainActor
public final class StudioWork {
    /// A question or a command, and the moment it is asked at.
    public typealias Call<ActivityResult> = @Sendable (Studio, Now) throws -> ActivityResult

    private let queue = DispatchQueue(label: "studio", qos: .userInitiated)
    private let opening: Opening
    private let saveReadable: @Sendable (Now) throws -> String
    private let clock: @Sendable () -> Now

    /// - Parameters:
    ///   - clock: The one place where the time comes from.
    ///   - recover: Saves what can be read of a damaged studio, and says how much that was.
    ///   - open: Opens the studio; asked by the first question, and again by the first one after a failure.
    public init(
        clock: @escaping @Sendable () -> Now = { Now.onThisDevice() },
        recover: @escaping @Sendable (Now) throws -> String,
        open: @escaping @Sendable (Now) throws -> Studio
    ) {
        self.clock = clock
        saveReadable = recover
        opening = Opening(open)
    }

    /// Makes `call` on the studio's queue. Calls are made in the order in which they are asked for here.
    public func ask<ActivityResult: Sendable>(_ call: @escaping Call<ActivityResult>) async throws -> ActivityResult {
        let now = clock()
        let opening = opening
        return try await withCheckedThrowingContinuation { answer in
            queue.async { answer.resume(with: Result { try call(opening.studio(now), now) }) }
        }
    }

    /// Saves what can be read of a damaged studio; the next question opens the new one.
    ///
    /// - Returns: How much was saved.
    public func recover() async throws -> String {
        let now = clock()
        let opening = opening
        let saveReadable = saveReadable
        return try await withCheckedThrowingContinuation { answer in
            queue.async {
                opening.close()
                answer.resume(with: Result { try saveReadable(now) })
            }
        }
    }

    /// As `ask`, but beside the queue once the studio is open: for what takes long, while weighing goes on.
    public func inBackground<ActivityResult: Sendable>(_ call: @escaping Call<ActivityResult>) async throws
        -> ActivityResult
    {
        let studio = try await ask { studio, _ in studio }
        let now = clock()
        return try await withCheckedThrowingContinuation { answer in
            DispatchQueue.global(qos: .utility).async { answer.resume(with: Result { try call(studio, now) }) }
        }
    }
}

/// The studio, opened when it is first needed. Used on the studio's queue alone, which is what makes it safe to send.
private final class Opening: @unchecked Sendable {
    private let open: @Sendable (Now) throws -> Studio
    private var opened: Studio?

    init(_ open: @escaping @Sendable (Now) throws -> Studio) {
        self.open = open
    }

    func close() {
        opened = nil
    }

    func studio(_ now: Now) throws -> Studio {
        if let opened { return opened }
        let studio = try open(now)
        opened = studio
        return studio
    }
}
