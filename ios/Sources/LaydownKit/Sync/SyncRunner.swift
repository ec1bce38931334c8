import Foundation
import LaydownCore
import Observation

/// The meeting under way, if one is. It belongs to the house and not to a page, so that it goes on while another page is
/// looked at.
@MainActor @Observable
public final class SyncRunner {
    /// Whether one is under way.
    public private(set) var isRunning = false
    /// Whether it was told to stop and has not ended yet.
    public private(set) var isStopping = false
    /// How far it is, from 0 to 1; nil before it knows.
    public var fraction: Double? { progressed?.fraction }
    /// How far it is, in words.
    public var words: String {
        if isStopping { return Words.stopping }
        return progressed.map { Words.syncSoFar($0.sentence) } ?? Words.syncBegins
    }
    /// How many have ended: whoever shows the phones reads them anew when this changes.
    public private(set) var ended = 0

    private var progressed: SyncProgress?
    @ObservationIgnored private let work: StudioWork
    @ObservationIgnored private let phone: Phone
    @ObservationIgnored private var stopper: Stop?

    init(work: StudioWork, phone: Phone) {
        self.work = work
        self.phone = phone
    }

    /// Meets the others once. What came of it, or what the place or the studio refused, stands in the view of the phones.
    ///
    /// - Parameters:
    ///   - folder: What the folder is found again by; empty where the place is none.
    ///   - check: Whether all that this phone put there is read again.
    /// - Throws: What broke within the app.
    func run(folder: String, check: Bool) async throws {
        guard !isRunning else { return }
        isRunning = true
        let (phone, stop, eye) = (phone, Stop(), ProgressRelay { [weak self] in self?.hear($0) })
        stopper = stop
        defer {
            isRunning = false
            isStopping = false
            progressed = nil
            stopper = nil
            ended += 1
        }
        do {
            _ = try await work.inBackground { studio, now in
                let secrets = phone.secrets.all().sorted { $0.key < $1.key }.map { Value(key: $0.key, text: $0.value) }
                let isMetered = phone.isMetered()
                func meet(in folder: (any Folder)?) throws -> String {
                    try studio.syncNow(
                        now: now, secrets: secrets, metered: isMetered, check: check, folder: folder,
                        client: SessionHttpClient.shared, listener: eye, stop: stop)
                }
                guard !folder.isEmpty else { return try meet(in: nil) }
                do {
                    return try phone.folders.reach(folder) { try meet(in: SyncFolder($0, phone.folders)) }
                } catch let problem as FolderError {
                    // The studio is to remember, and to say, that the folder cannot be reached.
                    return try meet(in: ShutFolder(problem))
                }
            }
        } catch is StudioError {
            // The studio has remembered what went wrong, and its view says it.
        }
    }

    /// Has it end soon. What is done stays done.
    public func stop() {
        stopper?.stop()
        isStopping = isRunning
    }

    private func hear(_ news: SyncProgress) {
        if isRunning { progressed = news }
    }
}

/// Tells the main actor how far a sync is. Of the news that come faster than they can be shown only the last counts.
private final class ProgressRelay: ProgressListener, @unchecked Sendable {
    private let tell: @MainActor (SyncProgress) -> Void
    private let lock = NSLock()
    /// What was not told yet; under the lock.
    private var latest: SyncProgress?

    init(_ tell: @escaping @MainActor (SyncProgress) -> Void) {
        self.tell = tell
    }

    func progress(progress: SyncProgress) {
        let isUnderWay = lock.withLock {
            defer { latest = progress }
            return latest != nil
        }
        if !isUnderWay { Task { @MainActor in pass() } }
    }

    @MainActor
    private func pass() {
        let news = lock.withLock {
            defer { latest = nil }
            return latest
        }
        if let news { tell(news) }
    }
}
