/// The screens that are in use, by what they show. Pages come and go as the phone is turned; a screen stays as long as a page
/// shows it or a command of it is under way, so that the page made anew shows what came of that.
@MainActor
final class Screens {
    private struct Known {
        weak var screen: AnyObject?
    }

    private var known: [String: Known] = [:]

    /// The screen of this name, if it is in use and not over; else a new one.
    func screen<Screen: AnyObject>(_ name: String, isOver: (Screen) -> Bool, make: () -> Screen) -> Screen {
        if let screen = known[name]?.screen as? Screen, !isOver(screen) { return screen }
        known = known.filter { $0.value.screen != nil }
        let screen = make()
        known[name] = Known(screen: screen)
        return screen
    }
}
