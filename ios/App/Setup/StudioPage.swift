import LaydownCore
import LaydownKit
import SwiftUI

/// The Studio screen: everything that is set up once and used for years.
struct StudioPage: View {
    @State private var screen: SetupScreen

    init(frame: AppModel) {
        _screen = State(initialValue: SetupScreen(frame: frame))
    }

    var body: some View {
        ListPage(Words.tabStudio, refresh: screen.refresh) {
            if let view = screen.view {
                if !view.meanwhile.isEmpty {
                    Section { GoRow(title: Words.meanwhile, detail: view.meanwhile, place: .meanwhile) }
                }
                ForEach(view.sections, id: \.title) { section in
                    Section(section.title) {
                        if section.rows.isEmpty { Sentence(section.empty) }
                        ForEach(section.rows, id: \.id) { row in
                            GoRow(
                                title: row.title, detail: row.detail, outline: row.outline,
                                place: .editor(section.editor, id: row.id))
                        }
                        GoRow(title: section.addLabel, mark: "plus", place: .editor(section.editor))
                        // What the forms are compared by stands right under them.
                        if section.editor == .form {
                            GoRow(title: Words.sizes, detail: Words.sizesDetail, place: .sizes)
                        }
                    }
                }
                Section {
                    GoRow(title: Words.backup, detail: view.backup, place: .backup)
                    GoRow(title: Words.devices, detail: Words.devicesDetail, place: .devices)
                    GoRow(title: Words.archived, detail: Words.archivedDetail, place: .archived)
                    GoRow(title: Words.preferences, detail: Words.preferencesDetail, place: .editor(.preference))
                    GoRow(title: Words.cautions, detail: Words.cautionsDetail, place: .cautions)
                }
            }
        }
    }
}

/// Every caution in full.
struct CautionsPage: View {
    @State private var screen: SetupScreen

    init(frame: AppModel) {
        _screen = State(initialValue: SetupScreen(frame: frame))
    }

    var body: some View {
        ListPage(Words.cautions, refresh: screen.refresh) {
            ForEach(screen.view?.cautions ?? [], id: \.title) { caution in
                Section(caution.title) { Sentence(caution.text) }
            }
        }
    }
}
