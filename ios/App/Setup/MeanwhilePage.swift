import LaydownCore
import LaydownKit
import SwiftUI

/// What other phones did meanwhile, said once; and where two phones disagree, which of them counts.
struct MeanwhilePage: View {
    @State private var screen: MeanwhileScreen

    init(frame: AppModel) {
        _screen = State(initialValue: frame.screen("meanwhile") { MeanwhileScreen(frame: frame) })
    }

    var body: some View {
        ListPage(Words.meanwhile, refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    Sentence(view.nothing)
                    Trouble(sentence: screen.refusal)
                }
                ForEach(view.clashes, id: \.id) { clash in
                    Section(clash.title) {
                        ForEach(screen.sides(of: clash), id: \.self) { Sentence($0) }
                        Button(Words.keepOurs) { screen.settle(clash, .ours) }.frame(minHeight: 48)
                        Button(Words.takeTheirs) { screen.settle(clash, .theirs) }.frame(minHeight: 48)
                        if !clash.both.isEmpty {
                            Button(Words.keepBoth) { screen.settle(clash, .both) }.frame(minHeight: 48)
                            Sentence(clash.both)
                        }
                    }
                }
                Section {
                    ForEach(Array(view.news.enumerated()), id: \.offset) {
                        NoteView(Note(tone: .plain, text: $0.element))
                    }
                }
            }
        }
        .onDisappear { Task { await screen.markRead() } }
    }
}
