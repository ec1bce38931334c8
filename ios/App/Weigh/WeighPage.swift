import LaydownCore
import LaydownKit
import SwiftUI
import UIKit

/// The Weigh screen: what is weighed, what it should take, what the reading means, and Keep.
struct WeighPage: View {
    private static let voice = Voice()

    @Environment(\.go) private var go
    @Environment(\.dynamicTypeSize) private var letters
    @Environment(\.scenePhase) private var phase
    @State private var screen: WeighScreen
    @State private var choosing: WeighChoice?
    @State private var telling: Telling?
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
                if view.missing.isEmpty {
                    GeometryReader { room in
                        let large = letters >= .xxxLarge
                        bench(view, BenchShape(width: room.size.width, height: room.size.height, isLarge: large))
                    }
                } else {
                    FirstSteps(steps: view.missing)
                }
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
                if choice == .zone, let picker = screen.piecePicker() {
                    ZoneAndPiece(
                        zones: choice.rows(of: view), picker: picker, choose: { screen.choose(choice, $0) },
                        pick: { screen.pick($0) })
                } else {
                    Chooser(
                        title: choice.question, rows: choice.rows(of: view),
                        adding: adding(to: choice)
                    ) { screen.choose(choice, $0) }
                }
            }
        }
        .sheet(item: $telling) { telling in
            if let view = screen.view {
                switch telling {
                case .details: Details(view: view) { screen.choose($0) }
                case .recent: RecentCoats(title: view.tally, coats: view.recent)
                }
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

    @ViewBuilder
    private func bench(_ view: WeighView, _ shape: BenchShape) -> some View {
        if shape.isLying {
            HStack(spacing: 8) {
                BenchColumn {
                    upper(view, shape)
                    slot(view)
                }
                lower(view, shape).frame(maxWidth: .infinity)
            }
            .padding(.horizontal, 8)
        } else {
            BenchColumn {
                upper(view, shape)
                slot(view)
                lower(view, shape)
            }
            .padding(.horizontal, 8)
        }
    }

    /// What is chosen, and the aim. It scrolls only where large letters need more room than there is.
    private func upper(_ view: WeighView, _ shape: BenchShape) -> some View {
        ViewThatFits(in: .vertical) {
            choicesAndAim(view, shape)
            ScrollView { choicesAndAim(view, shape) }
        }
    }

    private func choicesAndAim(_ view: WeighView, _ shape: BenchShape) -> some View {
        VStack(alignment: .leading, spacing: shape.isRoomy ? 8 : 2) {
            if shape.isRoomy {
                HStack(spacing: 8) { chips([.form, .zone], view, isNamed: true) }
                HStack(spacing: 8) { chips([.glaze, .scale], view, isNamed: true) }
            } else {
                HStack(spacing: 4) { chips([.form, .glaze, .zone, .scale], view, isNamed: false) }
            }
            if let target = view.target {
                AimCard(target: target, gauge: view.gauge, isRoomy: shape.isRoomy) { telling = .details }
            }
        }
    }

    private func chips(_ choices: [WeighChoice], _ view: WeighView, isNamed: Bool) -> some View {
        ForEach(choices) { choice in
            Button {
                choosing = choice
            } label: {
                VStack(alignment: .leading, spacing: 0) {
                    if isNamed {
                        Text(choice.label).font(.caption).foregroundStyle(Color.quiet)
                    }
                    Text(choice.chosen(in: view))
                        .lineLimit(isNamed ? 1 : 2)
                        .minimumScaleFactor(0.6)
                        .foregroundStyle(Color.ink)
                }
                .frame(maxWidth: .infinity, minHeight: 48, maxHeight: isNamed ? nil : 48, alignment: .leading)
                .padding(.horizontal, isNamed ? 12 : 6)
                .card()
            }
            .buttonStyle(.plain)
            .accessibilityLabel(Words.choiceIs(choice.label, choice.chosen(in: view)))
        }
    }

    private func slot(_ view: WeighView) -> some View {
        Slot(screen: screen, view: view) { telling = $0 }
            .frame(maxWidth: .infinity, maxHeight: .infinity)
            .padding(.vertical, 2)
    }

    private func lower(_ view: WeighView, _ shape: BenchShape) -> some View {
        VStack(spacing: 4) {
            if shape.isSaveBeside {
                readings(view, shape)
                HStack(spacing: 4) {
                    keypad(shape)
                    VStack(spacing: 4) {
                        wayButton(view)
                        saveButton
                    }
                    .frame(width: 88)
                }
            } else {
                HStack(spacing: 8) {
                    readings(view, shape)
                    wayButton(view).frame(width: 88)
                }
                keypad(shape)
                saveButton.frame(height: 56)
            }
        }
        .padding(.bottom, 4)
    }

    private func keypad(_ shape: BenchShape) -> some View {
        KeypadView(shape: shape, decimal: screen.preferences?.decimal ?? "") { screen.press($0) }
    }

    private var saveButton: some View {
        SaveButton(words: screen.saveLabel, isProposed: screen.isSaveProposed) { screen.saveOrNext() }
            .disabled(!screen.canPressSave)
    }

    @ViewBuilder
    private func readings(_ view: WeighView, _ shape: BenchShape) -> some View {
        if shape.isStacked {
            VStack(spacing: 4) { fields(view) }
        } else {
            HStack(spacing: 4) { fields(view) }
        }
    }

    private func fields(_ view: WeighView) -> some View {
        ForEach(view.fields, id: \.field) { field in
            ReadingView(
                label: field.label, text: screen.text(of: field), unit: field.unit,
                isActive: screen.isActive(field) && view.fields.count > 1
            ) { screen.fill(field.field) }
        }
    }

    private func wayButton(_ view: WeighView) -> some View {
        let isTwo = screen.entry?.way == .twoWeights
        let (now, other) = isTwo ? (Words.wayTwo, Words.wayNet) : (Words.wayNet, Words.wayTwo)
        return Button {
            screen.turnWay()
        } label: {
            Text(now)
                .font(.subheadline)
                .lineLimit(2)
                .minimumScaleFactor(0.6)
                .foregroundStyle(Color.onAccentGround)
                .frame(maxWidth: .infinity, minHeight: 56)
                .card(ground: .accentGround, edge: .accent)
        }
        .buttonStyle(.plain)
        .accessibilityLabel(Words.wayIs(now, other))
    }
}

/// The zones, and below them the pieces to come back to.
private struct ZoneAndPiece: View {
    @Environment(\.dismiss) private var dismiss
    let zones: [Row]
    @State var picker: PiecePicker
    let choose: @MainActor (Row) -> Void
    let pick: @MainActor (PieceToGlaze) -> Void

    var body: some View {
        NavigationStack {
            List {
                Section {
                    ForEach(zones, id: \.id) { row in
                        TapRow(
                            title: row.title, detail: row.detail, outline: row.outline,
                            mark: row.chosen ? "checkmark" : nil
                        ) {
                            dismiss()
                            choose(row)
                        }
                        .accessibilityAddTraits(row.chosen ? .isSelected : [])
                        .listRowBackground(row.chosen ? Color.accentGround : Color.surface)
                    }
                }
                Section {
                    TextField(
                        Words.codeHint,
                        text: Binding {
                            picker.code
                        } set: {
                            picker.type($0)
                        }
                    )
                    .textInputAutocapitalization(.characters)
                    .autocorrectionDisabled()
                    .font(.title3.monospaced())
                    .frame(minHeight: 48)
                    .accessibilityLabel([Words.pieceWithCoat, Words.codeHint].joined(separator: ", "))
                    if let view = picker.view, !view.nothing.isEmpty { Sentence(view.nothing) }
                } header: {
                    Text(Words.pieceWithCoat)
                }
                .listRowBackground(Color.surface)
                ForEach(picker.view?.groups ?? [], id: \.heading) { group in
                    Section {
                        ForEach(group.pieces, id: \.entry.piece) { piece in
                            TapRow(title: piece.title, detail: piece.detail, outline: piece.outline) {
                                dismiss()
                                pick(piece)
                            }
                        }
                    } header: {
                        Text(group.heading)
                    }
                    .listRowBackground(Color.surface)
                }
            }
            .scrollContentBackground(.hidden)
            .background(Color.ground)
            .navigationTitle(WeighChoice.zone.question)
            .navigationBarTitleDisplayMode(.inline)
            .toolbar {
                ToolbarItem(placement: .cancellationAction) { Button(Words.close) { dismiss() } }
            }
            .task { await picker.refresh() }
        }
        .presentationDetents([.medium, .large])
    }
}

/// What opens over the page.
private enum Telling: Identifiable {
    case details
    case recent

    var id: Self { self }
}

/// What is chosen, the slot, and the reading with its keys, above one another. The slot takes what room is left, and never less
/// than it always needs, so that nothing moves when a verdict comes or goes.
private struct BenchColumn: Layout {
    private let least: CGFloat = 116

    func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) -> CGSize {
        CGSize(width: proposal.width ?? 0, height: proposal.height ?? 0)
    }

    func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) {
        let parts = Array(subviews)
        guard parts.count > 1 else { return }
        let wanted = { (part: LayoutSubview) in
            part.sizeThatFits(ProposedViewSize(width: bounds.width, height: nil)).height
        }
        let keys = parts.count > 2 ? wanted(parts[2]) : 0
        let room = max(bounds.height - keys, 0)
        let slot = min(max(room - wanted(parts[0]), least), room)
        var y = bounds.minY
        for (part, height) in zip(parts, [room - slot, slot, keys]) {
            let size = ProposedViewSize(width: bounds.width, height: height)
            part.place(at: CGPoint(x: bounds.minX, y: y), anchor: .topLeading, proposal: size)
            y += height
        }
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
            Section {
                GoRow(title: Words.restoreHere, detail: Words.restoreHereDetail, place: .backup)
                GoRow(title: Words.joinHere, detail: Words.joinHereDetail, place: .devices)
            } header: {
                Text(Words.existingStudio)
            }
            .listRowBackground(Color.surface)
        }
        .scrollContentBackground(.hidden)
        .safeAreaInset(edge: .bottom) { UndoBar() }
    }
}

/// What the piece should take. A tap tells more of where that comes from.
private struct AimCard: View {
    let target: TargetView
    let gauge: Gauge?
    let isRoomy: Bool
    let act: @MainActor () -> Void

    var body: some View {
        Button(action: act) {
            Group {
                if isRoomy {
                    VStack(alignment: .leading, spacing: 4) {
                        HStack {
                            wet
                            Spacer()
                            span
                        }
                        drawing
                    }
                    .padding(.vertical, 4)
                } else {
                    HStack(spacing: 8) {
                        wet
                        span.frame(maxWidth: .infinity, alignment: .leading)
                        drawing
                    }
                    .frame(height: 48)
                }
            }
            .foregroundStyle(Color.ink)
            .padding(.horizontal, 12)
            .card()
        }
        .buttonStyle(.plain)
        .accessibilityLabel(Words.targetIs(target.wet, target.span, target.source))
    }

    private var wet: some View {
        Text(target.wet)
            .font(.system(isRoomy ? .largeTitle : .title, design: .rounded).weight(.semibold).monospacedDigit())
            .lineLimit(1)
            .minimumScaleFactor(0.5)
    }

    private var span: some View {
        Text(target.span).font(.subheadline).lineLimit(2).minimumScaleFactor(0.6)
    }

    @ViewBuilder
    private var drawing: some View {
        if let gauge { GaugeView(gauge: gauge) }
    }
}

/// The one place, always as high, for what is said: a refusal, the verdict, what was saved last, or what to do.
private struct Slot: View {
    @Environment(AppModel.self) private var frame
    let screen: WeighScreen
    let view: WeighView
    let tell: @MainActor (Telling) -> Void

    var body: some View {
        if !refusal.isEmpty {
            NoteView(Note(tone: .attention, text: refusal))
                .minimumScaleFactor(0.6)
                .padding(.horizontal, 12)
                .frame(maxWidth: .infinity, maxHeight: .infinity)
                .background(Color.surface, in: RoundedRectangle(cornerRadius: 12))
        } else if let verdict = view.verdict {
            VerdictCard(verdict: verdict, tone: gravest?.tone) { tell(.details) }
        } else if let question = view.question {
            QuestionCard(question: question) { screen.answer($0) }
        } else if !frame.offer.sentence.isEmpty {
            saved
        } else {
            prompt
        }
    }

    private var refusal: String {
        screen.refusal.isEmpty ? view.refusal?.sentence ?? "" : screen.refusal
    }

    /// A note says more than the prompt, and the gravest stands where it is seen.
    private var gravest: Note? {
        [Tone.warning, .attention, .plain].lazy.compactMap { tone in view.notes.first { $0.tone == tone } }.first
    }

    private var prompt: some View {
        VStack(spacing: 0) {
            Group {
                if !view.waiting.isEmpty {
                    Text(view.waiting).font(.title3).minimumScaleFactor(0.6).foregroundStyle(Color.ink)
                } else if let moved = view.moved {
                    // Said once, and before all else, with the one tap that takes it back.
                    HStack(spacing: 4) {
                        TapNote(note: Note(tone: .attention, text: moved.text)) { tell(.details) }
                        TonalButton(words: moved.keep.label) { screen.choose(moved.keep) }.frame(
                            maxWidth: 128, maxHeight: 56)
                    }
                } else if let gravest {
                    TapNote(note: gravest) { tell(.details) }
                } else if view.target != nil {
                    Text(Words.nothingTyped).font(.title3).minimumScaleFactor(0.6).foregroundStyle(Color.ink)
                }
            }
            .frame(maxWidth: .infinity, maxHeight: .infinity, alignment: .leading)
            HStack {
                Button(view.tally) { tell(.recent) }
                    .foregroundStyle(Color.accent)
                    .minimumScaleFactor(0.6)
                    .frame(maxWidth: .infinity, minHeight: 48, alignment: .leading)
                    .disabled(view.recent.isEmpty)
                RecentButton()
            }
        }
        .padding(.horizontal, 4)
    }

    private var saved: some View {
        VStack(spacing: 4) {
            Button {
                tell(.recent)
            } label: {
                VStack(alignment: .leading, spacing: 2) {
                    Text(frame.offer.sentence)
                    if !frame.offer.refusal.isEmpty {
                        Text(frame.offer.refusal).foregroundStyle(Color.attention)
                    }
                }
                .minimumScaleFactor(0.5)
                .frame(maxWidth: .infinity, maxHeight: .infinity, alignment: .leading)
                .contentShape(Rectangle())
            }
            .buttonStyle(.plain)
            HStack(spacing: 4) {
                ForEach(frame.offer.next, id: \.label) { coat in
                    TonalButton(words: coat.label) { screen.goOn(with: coat) }
                }
                if frame.offer.canTurn {
                    TonalButton(words: frame.offer.label) { frame.toggleUndo() }.frame(maxWidth: 112)
                }
            }
            .frame(maxWidth: .infinity, minHeight: 56, maxHeight: 56, alignment: .trailing)
        }
        .padding(.horizontal, 8)
        .foregroundStyle(Color.onAccentGround)
        .background(Color.accentGround, in: RoundedRectangle(cornerRadius: 12))
        .accessibilityElement(children: .contain)
    }
}

/// What is asked about a reading that is probably a slip, and the answers to it.
private struct QuestionCard: View {
    let question: Question
    let answer: @MainActor (Suggestion) -> Void

    var body: some View {
        VStack(spacing: 4) {
            NoteView(Note(tone: .attention, text: question.text))
                .minimumScaleFactor(0.6)
                .frame(maxWidth: .infinity, maxHeight: .infinity)
            HStack(spacing: 4) {
                ForEach(question.choices, id: \.label) { choice in
                    TonalButton(words: choice.label) { answer(choice) }
                }
            }
            .frame(maxWidth: .infinity, minHeight: 52, maxHeight: 52)
        }
        .padding(.horizontal, 12)
        .background(Color.surface, in: RoundedRectangle(cornerRadius: 12))
    }
}

/// A note that leads to more.
private struct TapNote: View {
    let note: Note
    let act: @MainActor () -> Void

    var body: some View {
        Button(action: act) {
            NoteView(note)
                .minimumScaleFactor(0.6)
                .frame(maxWidth: .infinity, maxHeight: .infinity)
                .contentShape(Rectangle())
        }
        .buttonStyle(.plain)
    }
}

/// A button that is allowed, beside the one that is proposed.
private struct TonalButton: View {
    let words: String
    let act: @MainActor () -> Void

    var body: some View {
        Button(action: act) {
            Text(words)
                .lineLimit(2)
                .minimumScaleFactor(0.6)
                .multilineTextAlignment(.center)
                .foregroundStyle(Color.onAccentGround)
                .frame(maxWidth: .infinity, minHeight: 52)
                .padding(.horizontal, 4)
                .card(ground: .accentGround, edge: .accent)
        }
        .buttonStyle(.plain)
    }
}

/// Save, or the way to the empty field: filled where that is what to do, tonal where it is only allowed.
private struct SaveButton: View {
    @Environment(\.isEnabled) private var isEnabled
    let words: String
    let isProposed: Bool
    let act: @MainActor () -> Void

    var body: some View {
        Button(action: act) {
            Text(words)
                .font(.title3.weight(.semibold))
                .minimumScaleFactor(0.6)
                .multilineTextAlignment(.center)
                .foregroundStyle(!isEnabled ? Color.quiet : isProposed ? .onAccent : .onAccentGround)
                .padding(.horizontal, 4)
                .frame(maxWidth: .infinity, maxHeight: .infinity)
                .card(
                    ground: !isEnabled ? .keyQuiet : isProposed ? .accent : .accentGround,
                    edge: isEnabled ? .accent : .keyQuiet)
        }
        .buttonStyle(.plain)
    }
}

/// The verdict as a word, a shape and a colour. A tap tells why.
private struct VerdictCard: View {
    let verdict: VerdictView
    /// How grave the gravest note is: whether there is something to mind.
    let tone: Tone?
    let act: @MainActor () -> Void

    var body: some View {
        Button(action: act) {
            HStack(spacing: 12) {
                VerdictMark(kind: verdict.kind).frame(width: 60, height: 60)
                VStack(alignment: .leading, spacing: 2) {
                    Text(verdict.headline)
                        .font(.largeTitle.weight(.bold))
                        .lineLimit(1)
                        .foregroundStyle(verdict.kind.ink)
                    Text(verdict.act).font(.title3.weight(.medium)).lineLimit(2)
                    Text(verdict.kind == .guess ? "\(verdict.detail)\n\(verdict.rests)" : verdict.detail).font(
                        .subheadline)
                }
                .minimumScaleFactor(0.5)
                .foregroundStyle(Color.ink)
                .frame(maxWidth: .infinity, alignment: .leading)
                Image(systemName: tone.flatMap(\.mark) ?? "chevron.forward")
                    .foregroundStyle(Color.ink)
                    .accessibilityHidden(true)
            }
            .multilineTextAlignment(.leading)
            .padding(.horizontal, 12)
            .padding(.vertical, 4)
            .frame(maxWidth: .infinity, maxHeight: .infinity)
            .card(ground: verdict.kind.ground, edge: verdict.kind.ink)
        }
        .buttonStyle(.plain)
    }
}

extension Tone {
    /// What to mind is marked where only its mark has room.
    fileprivate var mark: String? {
        switch self {
        case .plain: nil
        case .attention: "exclamationmark.circle"
        case .warning: "exclamationmark.triangle.fill"
        }
    }
}

/// All that is known of the reading and of the aim, over the page.
private struct Details: View {
    @Environment(\.dismiss) private var dismiss
    @Environment(\.go) private var go
    let view: WeighView
    let choose: @MainActor (TargetOption) -> Void

    var body: some View {
        NavigationStack {
            List {
                Section { NotesView(notes: view.notes) }
                    .listRowBackground(Color.surface)
                if let verdict = view.verdict {
                    section(
                        verdict.headline,
                        [
                            verdict.act, verdict.detail, verdict.rests, verdict.carries, verdict.onControl,
                            verdict.certainty,
                        ])
                }
                if let target = view.target {
                    section(
                        target.span,
                        [target.source, target.restsOn, target.sure, target.tolerance])
                    Section { buttons(target) }
                        .listRowBackground(Color.surface)
                }
            }
            .scrollContentBackground(.hidden)
            .background(Color.ground)
            .navigationTitle(Words.details)
            .navigationBarTitleDisplayMode(.inline)
            .toolbar {
                ToolbarItem(placement: .cancellationAction) { Button(Words.close) { dismiss() } }
            }
        }
        .presentationDetents([.medium, .large])
    }

    @ViewBuilder
    private func buttons(_ target: TargetView) -> some View {
        ForEach(target.options, id: \.label) { option in
            Button(option.label) {
                dismiss()
                choose(option)
            }
            .frame(minHeight: 48)
        }
        Button(target.why) {
            dismiss()
            go(.why(target: target.id))
        }
        .frame(minHeight: 48)
    }

    private func section(_ title: String, _ sentences: [String]) -> some View {
        Section {
            ForEach(sentences.filter { !$0.isEmpty }, id: \.self) { Sentence($0) }
                .listRowBackground(Color.surface)
        } header: {
            Text(title).foregroundStyle(Color.quiet).textCase(nil)
        }
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
                // The unit stands here, where it takes no room from the digits.
                Text([label, unit].joined(separator: ", "))
                    .font(.footnote)
                    .foregroundStyle(Color.quiet)
                    .minimumScaleFactor(0.5)
                // Their size does not follow the phone's letters: all of them show, whatever they are.
                Text(text.isEmpty ? " " : text)
                    .font(.system(size: 40, design: .rounded).monospacedDigit())
                    .foregroundStyle(Color.ink)
                    .minimumScaleFactor(0.35)
            }
            .lineLimit(1)
            .frame(maxWidth: .infinity, minHeight: 72, alignment: .leading)
            .padding(.horizontal, 12)
            .card(edge: isActive ? .accent : nil)
        }
        .buttonStyle(.plain)
        .accessibilityLabel([label, text, unit].joined(separator: " "))
        .accessibilityAddTraits(isActive ? .isSelected : [])
    }
}

/// The coats kept last, over the page.
private struct RecentCoats: View {
    @Environment(\.go) private var go
    @Environment(\.dismiss) private var dismiss
    let title: String
    let coats: [RecentCoat]

    var body: some View {
        NavigationStack {
            List {
                ForEach(coats, id: \.id) { coat in
                    HStack(spacing: 4) {
                        Button {
                            dismiss()
                            go(.coat(coat.id))
                        } label: {
                            row(coat)
                        }
                        Button {
                            dismiss()
                            go(.editor(.coat, id: coat.id))
                        } label: {
                            Image(systemName: "pencil").frame(width: 48, height: 48).contentShape(Rectangle())
                        }
                        .accessibilityLabel(Words.correctThis("\(coat.title), \(coat.wet)"))
                    }
                    .buttonStyle(.plain)
                }
                .listRowBackground(Color.surface)
            }
            .scrollContentBackground(.hidden)
            .background(Color.ground)
            .navigationTitle(title)
            .navigationBarTitleDisplayMode(.inline)
            .toolbar {
                ToolbarItem(placement: .cancellationAction) { Button(Words.close) { dismiss() } }
            }
        }
        .presentationDetents([.medium, .large])
    }

    private func row(_ coat: RecentCoat) -> some View {
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

    private func detail(_ coat: RecentCoat) -> String {
        ([coat.when, coat.word] + (coat.control ? [Words.control] : [])).joined(separator: " · ")
    }
}
