import LaydownKit
import SwiftUI

/// A page that is one scrolling list, read anew whenever it comes to the front.
struct ListPage<Content: View>: View {
    @Environment(AppModel.self) private var frame
    let title: String
    let offersRecent: Bool
    let refresh: () async -> Void
    @ViewBuilder let content: Content

    init(
        _ title: String, offersRecent: Bool = true, refresh: @escaping () async -> Void,
        @ViewBuilder content: () -> Content
    ) {
        self.title = title
        self.offersRecent = offersRecent
        self.refresh = refresh
        self.content = content()
    }

    var body: some View {
        List { content.listRowBackground(Color.surface) }
            .listStyle(.insetGrouped)
            .scrollContentBackground(.hidden)
            .background(Color.ground)
            .navigationTitle(title)
            .navigationBarTitleDisplayMode(.inline)
            .toolbar {
                if offersRecent { ToolbarItem(placement: .primaryAction) { RecentButton() } }
            }
            .safeAreaInset(edge: .bottom) { UndoBar() }
            .refreshed(by: refresh)
    }
}

extension View {
    /// Reads what is shown when it comes to the front, when something was undone, and when time has passed: what was
    /// checked today may have been checked yesterday.
    func refreshed(by refresh: @escaping () async -> Void) -> some View {
        modifier(Refreshed(refresh: refresh))
    }
}

private struct Refreshed: ViewModifier {
    @Environment(AppModel.self) private var frame
    @Environment(\.scenePhase) private var phase
    let refresh: () async -> Void

    func body(content: Content) -> some View {
        content
            .task(id: frame.offer.turns) { await refresh() }
            .onChange(of: phase) { _, now in
                if now == .active { Task { await refresh() } }
            }
    }
}

/// What was kept last, and the way to take it back or do it again.
struct UndoBar: View {
    @Environment(AppModel.self) private var frame

    var body: some View {
        if !frame.offer.sentence.isEmpty {
            HStack(alignment: .center, spacing: 12) {
                VStack(alignment: .leading, spacing: 4) {
                    Text(frame.offer.sentence)
                    if !frame.offer.refusal.isEmpty {
                        Text(frame.offer.refusal).foregroundStyle(Color.attention)
                    }
                }
                .frame(maxWidth: .infinity, alignment: .leading)
                if frame.offer.canTurn {
                    Button(frame.offer.label) { frame.toggleUndo() }
                        .frame(minWidth: 48, minHeight: 48)
                }
            }
            .padding(.horizontal, 16)
            .padding(.vertical, 4)
            .background(Color.accentGround, in: RoundedRectangle(cornerRadius: 12))
            .foregroundStyle(Color.onAccentGround)
            .padding(.horizontal, 12)
            .accessibilityElement(children: .contain)
        }
    }
}
