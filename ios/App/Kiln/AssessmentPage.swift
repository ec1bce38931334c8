import LaydownCore
import LaydownKit
import SwiftUI

/// One piece after the firing beside its record. Every tap is kept at once; what is written, when one goes on or away.
struct AssessmentPage: View {
    @Environment(\.dismiss) private var dismiss
    @Environment(\.scenePhase) private var phase
    @State private var screen: AssessmentScreen
    @State private var way: PictureWay?
    @FocusState private var isWriting: Bool

    init(frame: AppModel, firing: String, piece: String) {
        _screen = State(
            initialValue: frame.screen("assessment \(firing) \(piece)") {
                AssessmentScreen(frame: frame, firing: firing, piece: piece)
            })
    }

    var body: some View {
        List {
            if let view = screen.view { rows(view).listRowBackground(Color.surface) }
        }
        .listStyle(.insetGrouped)
        .scrollContentBackground(.hidden)
        .scrollDismissesKeyboard(.interactively)
        .background(Color.ground)
        // The next piece is shown from its beginning.
        .id(screen.view?.piece)
        .navigationTitle(screen.view?.title ?? "")
        .navigationBarTitleDisplayMode(.inline)
        .safeAreaInset(edge: .bottom) { ways }
        .refreshed { await screen.refresh() }
        .toolbar(.hidden, for: .tabBar)
        .onDisappear { saveWritten() }
        .onChange(of: phase) { _, now in if now != .active { saveWritten() } }
        .onChange(of: isWriting) { _, now in if !now { saveWritten() } }
        .takesPictures(by: $way) {
            screen.save(picture: $0)
        } none: {
            screen.pictureDidNotCome($0)
        }
    }

    private func saveWritten() {
        Task { await screen.saveWritten() }
    }

    @ViewBuilder
    private func rows(_ view: AssessmentView) -> some View {
        Section {
            Sentence(view.place)
            Trouble(sentence: screen.refusal)
            if screen.isSavingPicture { ProgressView(Words.pictureBeingSaved) }
            LinesView(lines: view.record)
            PhotoStrip(photos: view.photos) { screen.takeOff($0) }
        }
        Section {
            ForEach(view.questions, id: \.zone) { question in
                AnswersView(question: question.label, choices: question.choices) {
                    screen.say(.thickness(zone: question.zone, thickness: $0.code))
                }
            }
            AnswersView(question: Words.liking, choices: screen.stars) { screen.like($0) }
        }
        Section(Words.faults) {
            Flow {
                ForEach(view.faults, id: \.code) { fault in
                    FaultCell(fault: fault) { screen.say(.fault(fault: fault.code, on: !fault.on)) }
                }
            }
            if let drawing = view.drawing {
                DrawingPanel(drawing: drawing, awayWords: Words.whereAway, once: true) { screen.say(.where(touch: $0)) }
            }
            ForEach(view.faults.filter(\.on), id: \.code) { NoteView(Note(tone: .plain, text: $0.hint)) }
            NotesView(notes: view.notes)
        }
        Section(Words.note) {
            TextField(
                Words.noteHint,
                text: Binding {
                    screen.note
                } set: {
                    screen.write($0)
                }, axis: .vertical
            )
            .focused($isWriting)
            .frame(minHeight: 44)
        }
        Section {
            if view.canBeControl {
                Toggle(
                    Words.controlPiece,
                    isOn: Binding {
                        view.control
                    } set: {
                        screen.say(.control(on: $0))
                    })
            }
            Toggle(
                Words.fireAgain,
                isOn: Binding {
                    view.again
                } set: {
                    screen.say(.again(on: $0))
                })
            Button(Words.fromPictures) { way = .gallery }.frame(minHeight: 48)
            GoRow(title: Words.compare, detail: Words.compareDetail, place: .compare(view.compare))
            GoRow(
                title: Words.sharePiece, detail: Words.sharePieceDetail,
                place: .contactSheet(firing: view.firing, piece: view.piece))
        }
    }

    /// The ways on, which stay where the thumb knows them; above them what was kept last.
    private var ways: some View {
        VStack(spacing: 8) {
            UndoBar()
            HStack(spacing: 8) {
                Button {
                    Task { await screen.goBack() }
                } label: {
                    Image(systemName: "chevron.backward").frame(minWidth: 44, minHeight: 44)
                }
                .buttonStyle(.bordered)
                .accessibilityLabel(Words.previousPiece)
                .disabled(screen.view?.previous.isEmpty != false)
                Button {
                    way = .camera
                } label: {
                    Label(Words.photograph, systemImage: "camera").frame(maxWidth: .infinity, minHeight: 44)
                }
                .buttonStyle(.bordered)
                .disabled(screen.isSavingPicture)
                MainButton(screen.nextLabel) {
                    Task { if await screen.goOn() { dismiss() } }
                }
            }
            .padding(.horizontal, 12)
        }
        .padding(.vertical, 8)
        .background(Color.ground)
    }
}

/// A question with its answers beside one another; the one given is filled.
private struct AnswersView: View {
    let question: String
    let choices: [Choice]
    let answer: @MainActor (Choice) -> Void

    var body: some View {
        VStack(alignment: .leading, spacing: 8) {
            Text(question).foregroundStyle(Color.quiet)
            HStack(spacing: 8) {
                ForEach(choices, id: \.code) { choice in
                    Chip(words: choice.name, isChosen: choice.chosen, fills: true) { answer(choice) }
                        .accessibilityLabel(
                            choice.chosen
                                ? Words.answerChosen(question, choice.name) : Words.answerIs(question, choice.name))
                }
            }
        }
    }
}

/// A fault to tap on or off: a small drawing of it over its name.
private struct FaultCell: View {
    let fault: FaultChip
    let act: @MainActor () -> Void

    var body: some View {
        Button(action: act) {
            VStack(spacing: 4) {
                DrawingView(drawing: faultSketch(code: fault.code), chosen: nil, carried: nil)
                    .frame(width: 88)
                    .accessibilityHidden(true)
                Text(fault.name)
                    .font(.footnote)
                    .foregroundStyle(fault.on ? Color.onAccentGround : Color.ink)
                    .multilineTextAlignment(.center)
            }
            .frame(width: 96)
            .padding(8)
            .card(ground: fault.on ? .accentGround : .keyQuiet, edge: fault.on ? .accent : nil)
        }
        .buttonStyle(.plain)
        .accessibilityLabel(fault.on ? Words.faultChosen(fault.name) : fault.name)
        .accessibilityHint(fault.about)
        .accessibilityAddTraits(fault.on ? .isSelected : [])
    }
}

/// A word to tap on or off: told by a ring besides the colour.
private struct Chip: View {
    let words: String
    let isChosen: Bool
    var fills = false
    let act: @MainActor () -> Void

    var body: some View {
        Button(action: act) {
            Text(words)
                .foregroundStyle(isChosen ? Color.onAccentGround : Color.ink)
                .padding(.horizontal, 12)
                .frame(maxWidth: fills ? .infinity : nil, minHeight: 48)
                .background(isChosen ? Color.accentGround : Color.keyQuiet, in: Capsule())
                .overlay {
                    Capsule().stroke(isChosen ? Color.accent : Color.line, lineWidth: isChosen ? 3 : 1)
                }
        }
        .buttonStyle(.plain)
        .accessibilityLabel(isChosen ? Words.faultChosen(words) : words)
    }
}
