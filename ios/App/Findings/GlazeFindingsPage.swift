import LaydownCore
import LaydownKit
import SwiftUI

/// What is known of one glaze: its window, what targets rest on, and what else follows from its pots.
struct GlazeFindingsPage: View {
    @State private var screen: GlazeFindingsScreen
    @State private var shared: SharedFile?

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
                        if let chart = window.faultChart { ChartPlot(chart: chart) }
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
                ForEach(view.sections, id: \.title) { section($0) }
                if !view.notes.isEmpty { Section { NotesView(notes: view.notes) } }
                if !view.windows.isEmpty {
                    Section {
                        Trouble(sentence: screen.trouble)
                        Button(Words.shareCharts) { Task { shared = await screen.charts().map(SharedFile.init) } }
                            .frame(minHeight: 48)
                    }
                }
            }
        }
        .sheet(item: $shared) { ShareSheet(file: $0.url) }
    }

    private func section(_ section: FindingsSection) -> some View {
        Section(section.title) {
            if !section.words.isEmpty { Sentence(section.words) }
            if let chart = section.chart { ChartPlot(chart: chart) }
            LinesView(lines: section.lines)
            if !section.answer.isEmpty {
                Button(section.answer) { screen.answerDrift() }.frame(minHeight: 48)
            }
        }
    }
}
