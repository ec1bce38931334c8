import LaydownCore
import Observation

/// The phones of the studio, where they meet, and how they come to agree.
@MainActor @Observable
public final class DevicesScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: DevicesView? { latest.view }
    /// The meeting, under way or not.
    public var sync: SyncRunner { frame.sync }
    /// Why the last thing could not be done; empty when nothing is wrong.
    public private(set) var refusal = ""

    private let frame: AppModel
    private let latest = Latest<DevicesView>()

    /// - Parameter frame: The house around the screen.
    public init(frame: AppModel) {
        self.frame = frame
    }

    /// Reads the phones.
    public func refresh() async {
        await frame.show(latest) { try $0.devices(now: $1) }
    }

    /// Meets the others now; with `check`, all that this phone put there is read again.
    @discardableResult
    public func syncNow(check: Bool = false) -> Task<Void, Never> {
        refusal = ""
        let folder = view?.sync.folder ?? ""
        return Task {
            do {
                try await sync.run(folder: folder, check: check)
            } catch {
                frame.fail(error)
            }
            await refresh()
        }
    }

    /// Forgets where they meet, and what is secret about it.
    @discardableResult
    public func forget() -> Task<Void, Never> {
        refusal = ""
        let secrets = frame.phone.secrets
        return Task {
            do {
                try await frame.work.ask { studio, now in
                    // A bookmark needs no leave to be given back.
                    _ = try studio.forgetSyncLocation(now: now)
                    try secrets.forgetAll()
                }
            } catch {
                refusal = frame.refusal(of: error) ?? ""
            }
            await refresh()
        }
    }

    /// Sets this phone up as a new one, as where two phones have written under one name.
    @discardableResult
    public func setUpAsNewPhone() -> Task<Void, Never> {
        refusal = ""
        return Task {
            do {
                try await frame.work.ask { studio, now in _ = try studio.setUpAsNewPhone(now: now) }
            } catch {
                refusal = frame.refusal(of: error) ?? ""
            }
            await refresh()
        }
    }
}
