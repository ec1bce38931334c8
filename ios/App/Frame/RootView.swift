import LaydownKit
import SwiftUI

/// The tabs, each with its pages on top of one another; or, over all, why nothing can be shown.
struct RootView: View {
    private enum Tab: String, Codable {
        case weigh, buckets, kiln, findings, studio
    }

    /// Where one is.
    private struct Whereabouts: Codable, Equatable {
        var tab = Tab.weigh
        var paths: [String: [Place]] = [:]
    }

    @Environment(AppModel.self) private var frame
    @State private var at = Whereabouts()
    @SceneStorage("whereabouts") private var saved: Data?

    var body: some View {
        ZStack {
            Color.ground.ignoresSafeArea()
            if let failure = frame.failure {
                FailureView(failure: failure, act: act, save: save)
            } else if frame.preferences != nil {
                tabs
            }
        }
        .onAppear { if let was = Saved.read(Whereabouts.self, from: saved) { at = was } }
        .onChange(of: at) { _, now in saved = Saved.write(now) }
    }

    private var tabs: some View {
        TabView(selection: selection) {
            WeighTab(path: path(of: .weigh))
                .tabItem { Label(Words.tabWeigh, systemImage: "scalemass") }
                .tag(Tab.weigh)
            ListTab(path: path(of: .buckets)) { BucketsPage(frame: frame) }
                .tabItem { Label(Words.tabBuckets, systemImage: "cylinder") }
                .tag(Tab.buckets)
            ListTab(path: path(of: .kiln)) { KilnPage(frame: frame) }
                .tabItem { Label(Words.tabKiln, systemImage: "flame") }
                .tag(Tab.kiln)
            ListTab(path: path(of: .findings)) { FindingsPage(frame: frame) }
                .tabItem { Label(Words.tabFindings, systemImage: "chart.dots.scatter") }
                .tag(Tab.findings)
            ListTab(path: path(of: .studio)) { StudioPage(frame: frame) }
                .tabItem { Label(Words.tabStudio, systemImage: "house") }
                .tag(Tab.studio)
        }
    }

    /// A tab that is tapped again shows its first page; what was kept on another is not spoken of any more.
    private var selection: Binding<Tab> {
        Binding {
            at.tab
        } set: { tapped in
            if tapped == at.tab { at.paths[tapped.rawValue] = [] } else { frame.offer.clear() }
            at.tab = tapped
        }
    }

    private func path(of tab: Tab) -> Binding<[Place]> {
        Binding {
            at.paths[tab.rawValue] ?? []
        } set: {
            at.paths[tab.rawValue] = $0
        }
    }

    private func save() {
        Task { await frame.saveReadable() }
    }

    private func act(on failure: AppModel.Failure) {
        if failure.way == .back { at.paths = [:] }
        Task { await frame.open() }
    }
}

/// The Weigh tab: one page that fills the screen, with others on top of it.
private struct WeighTab: View {
    @Environment(AppModel.self) private var frame
    @Binding var path: [Place]

    var body: some View {
        NavigationStack(path: $path) {
            WeighPage(frame: frame)
                .navigationDestination(for: Place.self) { PageView(place: $0) }
        }
        .environment(\.go, GoAction({ path.append($0) }, replace: { path = path.dropLast() + [$0] }))
    }
}

/// A tab that begins with a list. Where there is room, the list stays beside the page that it leads to.
private struct ListTab<Root: View>: View {
    @Environment(\.horizontalSizeClass) private var width
    @Binding var path: [Place]
    @ViewBuilder let root: Root

    var body: some View {
        if width == .regular {
            NavigationSplitView {
                root.environment(\.go, GoAction({ path = [$0] }, replace: { path = [$0] }))
            } detail: {
                NavigationStack(path: $path) {
                    Color.ground.ignoresSafeArea()
                        .navigationDestination(for: Place.self) { PageView(place: $0) }
                }
                .environment(\.go, GoAction({ path.append($0) }, replace: { path = path.dropLast() + [$0] }))
            }
        } else {
            NavigationStack(path: $path) {
                root.navigationDestination(for: Place.self) { PageView(place: $0) }
            }
            .environment(\.go, GoAction({ path.append($0) }, replace: { path = path.dropLast() + [$0] }))
        }
    }
}

/// The page of a place.
private struct PageView: View {
    @Environment(AppModel.self) private var frame
    let place: Place

    var body: some View {
        switch place {
        case .coat(let id): CoatPage(frame: frame, id: id)
        case .bucket(let id): BucketPage(frame: frame, id: id)
        case .editor(let kind, let id, let subject): EditorPage(frame: frame, kind: kind, id: id, subject: subject)
        case .sizes: SizesPage(frame: frame)
        case .cautions: CautionsPage(frame: frame)
        case .backup: BackupPage(frame: frame)
        case .firing(let id): FiringPage(frame: frame, id: id)
        case .look(let firing, let piece): AssessmentPage(frame: frame, firing: firing, piece: piece)
        case .contactSheet(let firing, let piece): ContactSheetPage(frame: frame, firing: firing, piece: piece)
        case .piece(let id): PiecePage(frame: frame, id: id)
        case .compare(let piece): ComparePage(frame: frame, piece: piece)
        case .find: FindPage(frame: frame)
        case .glazeFindings(let glaze): GlazeFindingsPage(frame: frame, glaze: glaze)
        case .history(let thing): HistoryPage(frame: frame, thing: thing)
        case .devices: DevicesPage(frame: frame)
        case .import: ImportPage(frame: frame)
        case .why(let target): WhyPage(frame: frame, target: target)
        case .archived: ArchivedPage(frame: frame)
        case .meanwhile: MeanwhilePage(frame: frame)
        }
    }
}

/// Why nothing can be shown, and what can be done about it.
private struct FailureView: View {
    let failure: AppModel.Failure
    let act: @MainActor (AppModel.Failure) -> Void
    let save: @MainActor () -> Void

    var body: some View {
        VStack(spacing: 24) {
            Image(systemName: "exclamationmark.triangle")
                .font(.largeTitle)
                .foregroundStyle(Color.warning)
                .accessibilityHidden(true)
            Text(failure.sentence)
                .font(.title3)
                .foregroundStyle(Color.ink)
            switch failure.way {
            case .tryAgain: MainButton(Words.tryAgain) { act(failure) }
            case .saveReadable:
                MainButton(Words.tryAgain) { act(failure) }
                Button(Words.saveReadable, action: save)
                    .frame(minHeight: 48)
            case .back: MainButton(Words.back) { act(failure) }
            case .none: EmptyView()
            }
        }
        .padding(24)
        .frame(maxWidth: 520)
    }
}

/// Goes to a page.
struct GoAction {
    let go: @MainActor (Place) -> Void
    let replace: @MainActor (Place) -> Void

    init(_ go: @escaping @MainActor (Place) -> Void, replace: @escaping @MainActor (Place) -> Void) {
        self.go = go
        self.replace = replace
    }

    @MainActor
    func callAsFunction(_ place: Place) {
        go(place)
    }

    /// The same, for a page that there is no way back to.
    @MainActor
    func callAsFunction(inPlaceOfThis place: Place) {
        replace(place)
    }
}

private struct GoKey: EnvironmentKey {
    static var defaultValue: GoAction { GoAction({ _ in }, replace: { _ in }) }
}

extension EnvironmentValues {
    /// Opens a page on top of this one, or beside the list it was chosen from.
    var go: GoAction {
        get { self[GoKey.self] }
        set { self[GoKey.self] = newValue }
    }
}
