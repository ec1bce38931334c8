import LaydownCore
import LaydownKit
import SwiftUI

/// What is known of one glaze: its window, what targets rest on, and whether coats keep to their aims.
struct GlazeFindingsPage: View {
    @State private var screen: GlazeFindingsScreen

    init(frame: AppModel, glaze: String) {
        _screen = State(
            initialValue: frame.screen("glaze findings \(glaze)") { GlazeFindingsScreen(frame: frame, glaze: glaze) })
    }

    var body: some View {
        ListPage(screen.view?.title ?? "", refresh: screen.refresh) {
            if let view = screen.view {
                if !view.empty.isEmpty { Section { Sentence(view.empty) } }
                ForEach(view.windows, id: \.title) { window in
                    Section(window.title) {
                        Sentence(window.words)
                        Sentence(window.sure)
                        ChartPlot(chart: window.chart)
                        LinesView(lines: window.faults)
                    }
                }
                if !view.rests.isEmpty { Section(Words.targetsRestOn) { LinesView(lines: view.rests) } }
                if !view.take.isEmpty {
                    Section {
                        Trouble(sentence: screen.refusal)
                        Button(view.take) { screen.adoptBest() }.frame(minHeight: 48)
                        Sentence(view.takeHelp)
                    }
                }
                if let controlChart = view.controlChart {
                    Section(controlChart.title) {
                        Sentence(controlChart.words)
                        ChartPlot(chart: controlChart)
                    }
                }
                if !view.sets.isEmpty { Section { LinesView(lines: view.sets) } }
                if !view.notes.isEmpty { Section { NotesView(notes: view.notes) } }
            }
        }
    }
}
