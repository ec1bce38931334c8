import LaydownCore
import LaydownKit
import SwiftUI
import UIKit

/// The Weigh screen: what is weighed, what it should take, what the reading means, and Keep.
struct WeighPage: View {
    private static let voice = Voice()

    @Environment(\.go) private var go
    @Environment(\.horizontalSizeClass) private var width
    @Environment(\.verticalSizeClass) private var height
    @Environment(\.scenePhase) private var phase
    @State private var screen: WeighScreen
    @State private var choosing: WeighChoice?
    @State private var isAimOpen = false
    @State private var isInFront = false

    init(frame: AppModel) {
        _screen = State(
            initialValue: WeighScreen(
                frame: frame, isListenedTo: { UIAccessibility.isVoiceOverRunning }, say: WeighPage.voice.say))
    }

    var body: some View {
        ZStack {
            Color.ground.ignoresSafeArea()
            if let view = screen.view {
                if view.missing.isEmpty { bench(view) } else { FirstSteps(steps: view.missing) }
            }
        }
        .toolbar(.hidden, for: .navigationBar)
        .refreshed { await screen.refresh() }
        .onAppear {
            isInFront = true
            stayAwake(true)
        }
        .onDisappear {
            isInFront = false
            stayAwake(false)
            screen.leave()
        }
        .onChange(of: phase) { _, now in
            if now == .active { stayAwake(isInFront) } else { screen.leave() }
        }
        .sensoryFeedback(trigger: screen.presses) { _, _ in ticks ? .impact(weight: .light) : nil }
        .sensoryFeedback(trigger: screen.view?.verdict?.kind) { _, now in
            guard ticks, let now else { return nil }
            return now == .within ? .success : .warning
        }
        .sheet(item: $choosing) { choice in
            if let view = screen.view {
                Chooser(
                    title: choice.question, rows: choice.rows(of: view),
                    adding: adding(to: choice)
                ) { screen.choose(choice, $0) }
            }
        }
    }

    private func adding(to choice: WeighChoice) -> (label: String, act: @MainActor () -> Void)? {
        guard let (label, editor) = choice.adding else { return nil }
        return (label, { go(.editor(editor)) })
    }

    private var ticks: Bool { screen.preferences?.tick == true }

    /// With wet hands nobody wakes a phone; one that saves its battery sleeps as it would elsewhere.
    private func stayAwake(_ awake: Bool) {
        UIApplication.shared.isIdleTimerDisabled = awake && !ProcessInfo.processInfo.isLowPowerModeEnabled
    }

    /// Where there is room beside it, or none below, the keypad stands at the side.
    @ViewBuilder
    private func bench(_ view: WeighView) -> some View {
        if width == .regular || height == .compact {
            HStack(alignment: .bottom, spacing: 16) {
                upper(view)
                ViewThatFits(in: .vertical) {
                    lower(view)
                    ScrollView { lower(view) }
                }
                .frame(maxWidth: 400)
            }
            .padding(.horizontal, 16)
        } else {
            VStack(spacing: 8) {
                upper(view)
                lower(view)
            }
            .padding(.horizontal, 16)
        }
    }

    private func upper(_ view: WeighView) -> some View {
        ScrollViewReader { scroll in
            ScrollView {
                VStack(alignment: .leading, spacing: 12) {
                    chips(view)
                    if let target = view.target {
                        AimCard(target: target, isOpen: $isAimOpen)
                    }
                    VerdictPlace(screen: screen, view: view).id("verdict")
                    NotesView(notes: view.notes)
                    HStack {
                        Text(view.tally).font(.subheadline).foregroundStyle(Color.quiet)
                        Spacer()
                        RecentButton()
                    }
                    RecentCoats(coats: view.recent)
                }
                .padding(.vertical, 8)
            }
            // On a short screen the verdict may lie beyond the edge.
            .onChange(of: view.verdict) { _, now in if now != nil { scroll.scrollTo("verdict") } }
            .onChange(of: screen.refusal) { _, now in if !now.isEmpty { scroll.scrollTo("verdict") } }
        }
    }

    private func chips(_ view: WeighView) -> some View {
        LazyVGrid(columns: [GridItem(.adaptive(minimum: 150), spacing: 8)], spacing: 8) {
            ForEach(WeighChoice.allCases) { choice in
                Button {
                    choosing = choice
                } label: {
                    VStack(alignment: .leading, spacing: 0) {
                        Text(choice.label).font(.caption).foregroundStyle(Color.quiet)
                        Text(choice.chosen(in: view)).lineLimit(2).foregroundStyle(Color.ink)
                    }
                    .frame(maxWidth: .infinity, minHeight: 48, alignment: .leading)
                    .padding(.horizontal, 12)
                    .background(Color.surface, in: RoundedRectangle(cornerRadius: 12))
                }
                .buttonStyle(.plain)
                .accessibilityLabel(Words.choiceIs(choice.label, choice.chosen(in: view)))
            }
        }
    }

    private func lower(_ view: WeighView) -> some View {
        VStack(spacing: 8) {
            readings(view)
            KeypadView(decimal: screen.preferences?.decimal ?? "") { screen.press($0) }
            MainButton(screen.saveLabel) { screen.saveOrNext() }
                .disabled(!screen.canPressSave)
        }
        .padding(.bottom, 8)
        // What is read has the first right to the room that larger letters take.
        .dynamicTypeSize(...DynamicTypeSize.accessibility1)
    }

    private func readings(_ view: WeighView) -> some View {
        HStack(spacing: 8) {
            ForEach(view.fields, id: \.field) { field in
                ReadingView(
                    label: field.label, text: screen.text(of: field), unit: field.unit,
                    isActive: screen.isActive(field) && view.fields.count > 1
                ) { screen.fill(field.field) }
            }
            wayButton(view)
        }
    }

    private func wayButton(_ view: WeighView) -> some View {
        let isTwo = screen.entry?.way == .twoWeights
        let (now, other) = isTwo ? (Words.wayTwo, Words.wayNet) : (Words.wayNet, Words.wayTwo)
        return Button(now) { screen.turnWay() }
            .font(.footnote)
            .frame(minWidth: 64, minHeight: 48)
            .accessibilityLabel(Words.wayIs(now, other))
    }
}

/// What the studio still lacks before a piece can be weighed.
private struct FirstSteps: View {
    let steps: [SetupStep]

    var body: some View {
        List {
            Section {
                ForEach(steps, id: \.title) { step in
                    GoRow(
                        title: step.title, detail: step.detail,
                        mark: step.done ? "checkmark.circle.fill" : "circle", place: .editor(step.editor)
                    )
                    .accessibilityValue(step.done ? Words.done : Words.toDo)
                }
                .listRowBackground(Color.surface)
            } header: {
                VStack(alignment: .leading, spacing: 8) {
                    Text(Words.firstTitle).font(.title2).foregroundStyle(Color.ink)
                    Text(Words.firstDetail).font(.body).foregroundStyle(Color.quiet)
                }
                .textCase(nil)
                .padding(.bottom, 12)
            }
        }
        .scrollContentBackground(.hidden)
        .safeAreaInset(edge: .bottom) { UndoBar() }
    }
}

/// What the piece should take. A tap tells more of where that comes from.
private struct AimCard: View {
    let target: TargetView
    @Binding var isOpen: Bool

    var body: some View {
        Button {
            isOpen.toggle()
        } label: {
            VStack(alignment: .leading, spacing: 4) {
                HStack(alignment: .firstTextBaseline) {
                    Text(target.wet).font(.system(.largeTitle, design: .rounded).weight(.semibold))
                    Spacer()
                    Text(target.span).font(.title3)
                }
                .foregroundStyle(Color.ink)
                Text(target.source).lineLimit(isOpen ? nil : 2)
                if isOpen {
                    ForEach([target.restsOn, target.sure, target.tolerance].filter { !$0.isEmpty }, id: \.self) {
                        Text($0)
                    }
                }
            }
            .font(.subheadline)
            .foregroundStyle(Color.quiet)
            .multilineTextAlignment(.leading)
            .frame(maxWidth: .infinity, alignment: .leading)
            .padding(12)
            .background(Color.surface, in: RoundedRectangle(cornerRadius: 12))
        }
        .buttonStyle(.plain)
        .accessibilityLabel(Words.targetIs(target.wet, target.span, target.source))
    }
}

/// What the reading means; what cannot be taken; or what was kept last.
private struct VerdictPlace: View {
    @Environment(AppModel.self) private var frame
    let screen: WeighScreen
    let view: WeighView

    var body: some View {
        VStack(alignment: .leading, spacing: 12) {
            if let gauge = view.gauge { GaugeView(gauge: gauge) }
            if !refusal.isEmpty {
                NoteView(Note(tone: .attention, text: refusal))
                    .padding(12)
                    .background(Color.surface, in: RoundedRectangle(cornerRadius: 12))
            } else if let verdict = view.verdict {
                VerdictCard(verdict: verdict)
            } else if let question = view.question {
                QuestionCard(question: question) { screen.answer($0) }
            } else if !frame.offer.sentence.isEmpty {
                UndoBar()
                Flow {
                    ForEach(frame.offer.next, id: \.label) { coat in
                        Button(coat.label) { screen.goOn(with: coat) }
                            .buttonStyle(.bordered)
                            .controlSize(.large)
                    }
                }
            } else if !view.waiting.isEmpty {
                Text(view.waiting).foregroundStyle(Color.quiet)
            } else if view.target != nil, view.notes.isEmpty {
                // A note says more than the prompt, and stands where it is seen.
                Text(Words.nothingTyped).foregroundStyle(Color.quiet)
            }
        }
    }

    private var refusal: String {
        screen.refusal.isEmpty ? view.refusal?.sentence ?? "" : screen.refusal
    }
}

/// What is asked about a reading that is probably a slip, and the answers to it.
private struct QuestionCard: View {
    let question: Question
    let answer: @MainActor (Suggestion) -> Void

    var body: some View {
        VStack(alignment: .leading, spacing: 8) {
            NoteView(Note(tone: .attention, text: question.text))
            Flow {
                ForEach(question.choices, id: \.label) { choice in
                    Button(choice.label) { answer(choice) }
                        .buttonStyle(.bordered)
                        .controlSize(.large)
                }
            }
        }
        .frame(maxWidth: .infinity, alignment: .leading)
        .padding(12)
        .background(Color.surface, in: RoundedRectangle(cornerRadius: 12))
    }
}

/// The verdict as a word, a shape and a colour.
private struct VerdictCard: View {
    let verdict: VerdictView

    var body: some View {
        VStack(alignment: .leading, spacing: 8) {
            HStack(spacing: 12) {
                VerdictMark(kind: verdict.kind).frame(width: 48, height: 48)
                VStack(alignment: .leading) {
                    Text(verdict.headline)
                        .font(.title.weight(.bold))
                        .foregroundStyle(verdict.kind.ink)
                    Text(verdict.act).font(.title3).foregroundStyle(Color.ink)
                }
            }
            ForEach(facts, id: \.self) { Text($0).font(.subheadline).foregroundStyle(Color.ink) }
        }
        .frame(maxWidth: .infinity, alignment: .leading)
        .padding(12)
        .background(verdict.kind.ground, in: RoundedRectangle(cornerRadius: 12))
        .accessibilityElement(children: .combine)
    }

    private var facts: [String] {
        [verdict.detail, verdict.rests, verdict.carries, verdict.onControl, verdict.certainty].filter { !$0.isEmpty }
    }
}

/// A field that the keypad fills.
private struct ReadingView: View {
    let label: String
    let text: String
    let unit: String
    let isActive: Bool
    let act: @MainActor () -> Void

    var body: some View {
        Button(action: act) {
            VStack(alignment: .leading, spacing: 0) {
                Text(label).font(.caption).foregroundStyle(Color.quiet)
                HStack(alignment: .firstTextBaseline, spacing: 4) {
                    Text(text.isEmpty ? " " : text).font(.system(.title, design: .rounded).monospacedDigit())
                    Text(unit).foregroundStyle(Color.quiet)
                }
                .foregroundStyle(Color.ink)
            }
            .lineLimit(1)
            .minimumScaleFactor(0.6)
            .frame(maxWidth: .infinity, alignment: .leading)
            .padding(.horizontal, 12)
            .padding(.vertical, 6)
            .background(Color.surface, in: RoundedRectangle(cornerRadius: 12))
            .overlay {
                if isActive { RoundedRectangle(cornerRadius: 12).stroke(Color.accent, lineWidth: 3) }
            }
        }
        .buttonStyle(.plain)
        .accessibilityLabel([label, text, unit].joined(separator: " "))
        .accessibilityAddTraits(isActive ? .isSelected : [])
    }
}

/// The coats kept last.
private struct RecentCoats: View {
    @Environment(\.go) private var go
    let coats: [RecentCoat]

    var body: some View {
        VStack(spacing: 0) {
            ForEach(coats, id: \.id) { coat in
                Button {
                    go(.coat(coat.id))
                } label: {
                    HStack(spacing: 12) {
                        VerdictMark(kind: coat.verdict).frame(width: 24, height: 24)
                        VStack(alignment: .leading) {
                            Text(coat.title).foregroundStyle(Color.ink)
                            Text(detail(coat)).font(.subheadline).foregroundStyle(Color.quiet)
                        }
                        .frame(maxWidth: .infinity, alignment: .leading)
                        Text(coat.wet).foregroundStyle(Color.ink).monospacedDigit()
                    }
                    .multilineTextAlignment(.leading)
                    .frame(minHeight: 56)
                    .contentShape(Rectangle())
                }
                .buttonStyle(.plain)
            }
        }
    }

    private func detail(_ coat: RecentCoat) -> String {
        ([coat.when, coat.word] + (coat.control ? [Words.control] : [])).joined(separator: " · ")
    }
}
