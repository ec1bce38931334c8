import Foundation
import LaydownCore
import Observation

/// What is known of one glaze: its window, what targets rest on, and what else follows from its pots.
@MainActor @Observable
public final class GlazeFindingsScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: GlazeFindingsView? { latest.view }
    /// Why the best could not be taken over; empty when nothing is wrong.
    public private(set) var refusal = ""

    /// Why the charts could not be handed on; empty when nothing is wrong.
    public private(set) var trouble = ""

    private let frame: AppModel
    private let glaze: String
    private let latest = Latest<GlazeFindingsView>()
    private var isTaking = false

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - glaze: The glaze's id.
    public init(frame: AppModel, glaze: String) {
        self.frame = frame
        self.glaze = glaze
    }

    /// Reads what is known.
    public func refresh() async {
        let glaze = glaze
        await frame.show(latest) { try $0.glazeFindings(now: $1, id: glaze) }
    }

    /// Takes the best laydown over as the glaze's starting value.
    @discardableResult
    public func adoptBest() -> Task<Void, Never> {
        // A second tap that comes before the answer would take it over twice.
        guard let view, !view.take.isEmpty, !isTaking else { return Task {} }
        isTaking = true
        refusal = ""
        let (id, best) = (view.id, view.best)
        return Task {
            _ = await frame.save(
                { try $0.adoptBest(now: $1, id: id, best: best) },
                refused: { refusal = frame.refusal(of: $0) ?? "" })
            isTaking = false
            await refresh()
        }
    }

    /// Notes that the drift was seen: coats are looked at anew.
    @discardableResult
    public func answerDrift() -> Task<Void, Never> {
        let glaze = glaze
        return Task {
            if await frame.save({ try $0.answerDrift(now: $1, id: glaze) }, refused: frame.fail) { await refresh() }
        }
    }

    /// Has the core draw all charts into a file that can be handed to another app.
    ///
    /// - Returns: The file; nil if it could not be written, which is then said.
    public func charts() async -> URL? {
        guard let view else { return nil }
        let glaze = glaze
        trouble = ""
        return await frame.fileToShare(titled: view.title, ending: "svg", refused: { trouble = $0 }) {
            _, file, studio, now in
            try studio.writeCharts(now: now, id: glaze, into: file.path)
        }
    }
}
