import LaydownCore
import LaydownKit
import SwiftUI

/// Finds pieces by the code on their foot, or by what is known of them.
struct FindPage: View {
    @State private var screen: FindScreen
    @State private var choosing: Choosing?

    /// The filter whose rows are shown to choose from.
    private struct Choosing: Identifiable {
        let filter: Filter
        var id: String { filter.key }
    }

    init(frame: AppModel) {
        _screen = State(initialValue: FindScreen(frame: frame))
    }

    var body: some View {
        ListPage(Words.findPieces, refresh: screen.refresh) {
            Section {
                TextField(
                    Words.codeHint,
                    text: Binding {
                        screen.code
                    } set: {
                        screen.type($0)
                    }
                )
                .textInputAutocapitalization(.characters)
                .autocorrectionDisabled()
                .font(.title3.monospaced())
                .frame(minHeight: 44)
                .accessibilityLabel([Words.codeOnFoot, Words.codeHint].joined(separator: ", "))
                TextField(
                    Words.noteToFind,
                    text: Binding {
                        screen.note
                    } set: {
                        screen.type(note: $0)
                    }
                )
                .frame(minHeight: 44)
                Sentence(screen.refusal)
            } header: {
                Text(Words.codeOnFoot)
            }
            if let view = screen.view, screen.refusal.isEmpty {
                Section {
                    Flow {
                        ForEach(view.filters, id: \.key) { filter in
                            let isSet = filter.rows.first?.chosen == false
                            Button(isSet ? filter.chosen : filter.label) { choosing = Choosing(filter: filter) }
                                .buttonStyle(.bordered)
                                .controlSize(.large)
                                .accessibilityLabel(Words.answerIs(filter.label, filter.chosen))
                                .accessibilityAddTraits(isSet ? .isSelected : [])
                        }
                    }
                }
                Section {
                    Sentence(view.found)
                    ForEach(view.pieces, id: \.id) { piece in
                        HStack(spacing: 12) {
                            if !piece.photo.isEmpty {
                                StoredPicture(file: piece.photo, name: "", side: 64)
                                    .frame(width: 64, height: 64)
                                    .accessibilityHidden(true)
                            }
                            GoRow(
                                title: piece.title, detail: piece.detail,
                                outline: piece.photo.isEmpty ? piece.outline : [], place: .piece(piece.id))
                        }
                        .onAppear { screen.reached(piece) }
                    }
                }
            }
        }
        .sheet(item: $choosing) { choosing in
            Chooser(title: choosing.filter.label, rows: choosing.filter.rows) { screen.pick($0, of: choosing.filter) }
        }
    }
}
