import LaydownCore
import LaydownKit
import SwiftUI

/// A drawing with what belongs to it: the name of what is held above it, and below it the ways to take something back.
struct DrawingPanel: View {
    let drawing: Drawing
    /// What taking away what was tapped is called.
    let awayWords: String
    /// Whether a drag is told once, when the finger lets go; until then only what is held moves.
    var once = false
    /// Whether a grip is only lifted by a finger that rests on it, so that the page scrolls under one that does not.
    var holdToLift = false
    /// Whether something done here can be undone.
    var canUndo = false
    /// Is told that a new thing begins, which one Undo undoes.
    var begun: @MainActor () -> Void = {}
    /// Is told what is done. While a grip is dragged, many times.
    let touched: @MainActor (Touch) -> Void
    /// Is told that the last thing is to be undone.
    var undone: @MainActor () -> Void = {}

    /// What a finger holds, as it was when it took hold.
    private struct Held: Equatable {
        let grip: Grip
        let tall: Double
    }

    @Environment(AppModel.self) private var frame
    /// The key of the grip that stands out: the one that is held or was tapped.
    @State private var chosen: String?
    @State private var held: Held?
    /// Where the chosen grip is shown while a finger carries it.
    @State private var carried: Spot?
    @State private var holds = 0
    /// Whether a finger is on a grip; false again as well when the system takes the touch away.
    @GestureState private var isDown = false
    @State private var width: CGFloat = 1

    private static let tallest = 420.0
    private static let reach = 48.0
    /// How long a finger rests on what it lifts, seconds.
    private static let hold = 0.4
    /// How far a finger may stray and still tap.
    private static let slop = 8.0
    /// How far one action moves a grip, in parts of the drawing's width: 1 cm on a shelf of 50 cm.
    private static let step = 0.02

    var body: some View {
        VStack(alignment: .leading, spacing: 8) {
            Text(grip?.name ?? drawing.words)
                .font(.subheadline)
                .foregroundStyle(Color.quiet)
                // What it says never moves the drawing under the finger.
                .lineLimit(2, reservesSpace: true)
            DrawingView(drawing: drawing, chosen: chosen, carried: carried)
                .onTapGesture(coordinateSpace: .local) { tap(at: $0) }
                .overlay { grips }
                .onGeometryChange(for: CGFloat.self) {
                    $0.size.width
                } action: {
                    width = $0
                }
                // What lies under the drawing must stay in reach.
                .frame(maxWidth: DrawingPanel.tallest / max(drawing.tall, 0.01))
                .frame(maxWidth: .infinity)
            if held == nil, canUndo || grip?.removable == true {
                HStack {
                    if canUndo {
                        Button(Words.undo) {
                            chosen = nil
                            undone()
                        }
                    }
                    Spacer()
                    if let grip, grip.removable { Button(awayWords) { takeAway(grip) } }
                }
                .buttonStyle(.bordered)
            }
        }
        .onChange(of: isDown) { _, now in
            if !now { drop() }
        }
        .sensoryFeedback(trigger: holds) { _, _ in
            frame.preferences?.tick == true ? .impact(weight: .medium) : nil
        }
    }

    private var grip: Grip? {
        drawing.grips.first { $0.key == chosen }
    }

    /// The places that a finger takes hold of; whoever listens finds them one by one.
    private var grips: some View {
        ForEach(drawing.grips, id: \.key) { grip in
            touchable(grip)
                .accessibilityElement()
                .accessibilityLabel(grip.name)
                .accessibilityActions {
                    if grip.movable {
                        Button(Words.moveLeft) { step(grip, -DrawingPanel.step, 0) }
                        Button(Words.moveRight) { step(grip, DrawingPanel.step, 0) }
                        Button(Words.moveUp) { step(grip, 0, -DrawingPanel.step) }
                        Button(Words.moveDown) { step(grip, 0, DrawingPanel.step) }
                    }
                    if grip.removable { Button(awayWords) { takeAway(grip) } }
                }
        }
    }

    /// The place where a finger is on a grip.
    @ViewBuilder
    private func touchable(_ grip: Grip) -> some View {
        let side = max(DrawingPanel.reach, 2 * grip.radius * width)
        let place = Circle()
            .fill(.clear)
            .contentShape(Circle())
            .frame(width: side, height: side)
            .position(x: grip.at.x * width, y: grip.at.y * width)
        if !grip.movable {
            place.onTapGesture(coordinateSpace: .local) { _ in tap(grip) }
        } else if holdToLift {
            place
                .onTapGesture(coordinateSpace: .local) { _ in tap(grip) }
                .gesture(
                    LongPressGesture(minimumDuration: DrawingPanel.hold)
                        .sequenced(before: DragGesture(minimumDistance: 0, coordinateSpace: .local))
                        .updating($isDown) { value, isDown, _ in
                            if case .second = value { isDown = true }
                        }
                        .onChanged { value in
                            guard case .second(_, let moved) = value else { return }
                            lift(grip)
                            if let moved { drag(grip, by: moved.translation) }
                        }
                        .onEnded { _ in if held != nil { letGo(grip) } }
                )
        } else {
            // From the first touch on: the page must not scroll away under a finger that is on something that moves.
            place.gesture(
                DragGesture(minimumDistance: 0, coordinateSpace: .local)
                    .updating($isDown) { _, isDown, _ in isDown = true }
                    .onChanged { drag(nearest(to: $0.startLocation, or: grip), by: $0.translation) }
                    .onEnded { letGo(nearest(to: $0.startLocation, or: grip)) }
            )
        }
    }

    // MARK: The finger

    private func tap(_ grip: Grip) {
        chosen = chosen == grip.key ? nil : grip.key
    }

    /// Where grips lie close together, the one that the finger came down nearest to.
    private func nearest(to place: CGPoint, or grip: Grip) -> Grip {
        let away = { (grip: Grip) in hypot(grip.at.x * width - place.x, grip.at.y * width - place.y) }
        return drawing.grips.min { away($0) < away($1) } ?? grip
    }

    private func drag(_ grip: Grip, by way: CGSize) {
        if held == nil {
            guard max(abs(way.width), abs(way.height)) > DrawingPanel.slop else { return }
            lift(grip)
        }
        guard let held else { return }
        // The grip keeps its distance from the finger, as it was when taken hold of.
        let to = Spot(
            x: min(max(held.grip.at.x + way.width / width, 0), 1),
            y: min(max(held.grip.at.y + way.height / width, 0), held.tall))
        if once { carried = to } else { touched(.move(grip: held.grip.key, to: to)) }
    }

    /// The grip begins to follow the finger.
    private func lift(_ grip: Grip) {
        guard held == nil else { return }
        held = Held(grip: grip, tall: drawing.tall)
        chosen = grip.key
        holds += 1
        begun()
    }

    private func letGo(_ grip: Grip) {
        guard let held else { return tap(grip) }
        if let carried { touched(.move(grip: held.grip.key, to: carried)) }
        drop()
    }

    /// Nothing is held any more; what was only carried is back in its place.
    private func drop() {
        guard held != nil else { return }
        held = nil
        carried = nil
        chosen = nil
    }

    private func tap(at place: CGPoint) {
        // Beside what was chosen: it is let go, and nothing is added by the way.
        guard chosen == nil else { return chosen = nil }
        begun()
        touched(.add(at: Spot(x: place.x / width, y: place.y / width)))
    }

    /// Moves a grip by parts of the drawing's width, without a finger on it.
    private func step(_ grip: Grip, _ x: Double, _ y: Double) {
        begun()
        let to = Spot(x: min(max(grip.at.x + x, 0), 1), y: min(max(grip.at.y + y, 0), drawing.tall))
        touched(.move(grip: grip.key, to: to))
    }

    private func takeAway(_ grip: Grip) {
        chosen = nil
        begun()
        touched(.remove(grip: grip.key))
    }
}
