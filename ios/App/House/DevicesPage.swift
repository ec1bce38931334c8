import LaydownCore
import LaydownKit
import SwiftUI

/// The phones of the studio, and how they come to agree.
struct DevicesPage: View {
    @State private var screen: DevicesScreen

    init(frame: Frame) {
        _screen = State(initialValue: DevicesScreen(frame: frame))
    }

    var body: some View {
        ListPage(Words.devices, refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    Sentence(view.intro)
                    ForEach(Array(view.notes.enumerated()), id: \.offset) { NoteView($0.element) }
                }
                Section {
                    ForEach(view.devices, id: \.id) { row in
                        // Only one's own name can be set here.
                        if row.chosen {
                            GoRow(title: row.title, detail: row.detail, place: .sheet(.preference))
                        } else {
                            StillRow(title: row.title, detail: row.detail)
                        }
                    }
                }
                Section {
                    GoRow(title: Words.backup, detail: Words.backupForOthers, place: .backup)
                }
            }
        }
    }
}
