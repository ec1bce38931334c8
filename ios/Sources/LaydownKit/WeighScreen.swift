import LaydownCore

/// The Weigh screen: holds what is chosen and typed, and asks the core what it means.
///
/// Nothing about glaze is computed here. Not for use from several threads at once.
public final class WeighScreen {
    /// All that the screen shows, in the potter's words and units.
    public private(set) var view: WeighView

    private let studio: Studio
    private let clock: () -> Now

    /// Reads the screen as it was left last time.
    ///
    /// - Parameters:
    ///   - studio: The studio, open.
    ///   - clock: Gives the moment of each call.
    /// - Throws: `StudioError` when the studio's file cannot be read.
    public init(studio: Studio, clock: @escaping () -> Now = Now.onThisDevice) throws {
        self.studio = studio
        self.clock = clock
        view = try studio.weigh(now: clock(), entry: nil)
    }

    /// Changes what is chosen or typed and reads the target and the verdict anew.
    ///
    /// - Parameter change: Changes the entry in place. What it gets wrong is said in the view's refusal.
    /// - Throws: `StudioError` when the studio's file cannot be read; the view stays as it was.
    public func enter(_ change: (inout WeighEntry) -> Void) throws {
        var entry = view.entry
        change(&entry)
        view = try studio.weigh(now: clock(), entry: entry)
    }

    /// Keeps the coat as entered, and reads the screen for the next piece.
    ///
    /// - Returns: What was kept and how to take it back.
    /// - Throws: `StudioError` when the entry is refused or the file cannot be written; nothing is half kept.
    public func keep() throws -> Kept {
        let kept = try studio.keep(now: clock(), entry: view.entry)
        view = try studio.weigh(now: clock(), entry: nil)
        return kept
    }
}
