import LaydownCore
import LaydownKit
import SwiftUI
import UniformTypeIdentifiers

/// Everything into one file that lies elsewhere, by hand or by itself, and such a file taken in again; and files for other
/// programs.
struct BackupPage: View {
    @State private var screen: BackupScreen
    /// The backup that was made and waits for its place.
    @State private var made: URL?
    @State private var isGivenAPlace = false
    @State private var sent: Sent?
    @State private var isTakenIn = false
    @State private var choosing: Choosing?
    /// What was chosen to be written, until the list that it was chosen from is gone.
    @State private var wanted: Export?
    @State private var asked: FolderForBackups?

    /// A file on its way to another app, and what to say once it is there; nil where there is nothing to say.
    private struct Sent: Identifiable {
        let file: URL
        let sentence: String?
        var id: URL { file }
    }

    /// A list to choose from.
    private enum Choosing: Identifiable {
        case every, table
        var id: Self { self }
    }

    /// The one thing that a folder is asked for here.
    private struct FolderForBackups {}

    init(frame: AppModel) {
        _screen = State(initialValue: frame.screen("backup") { BackupScreen(frame: frame) })
    }

    var body: some View {
        ListPage(Words.backup, refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    Sentence(view.intro)
                    Sentence(view.last)
                    NotesView(notes: view.notes)
                    if let said = screen.said { NoteView(said) }
                    if screen.isWorking { ProgressView(Words.backupWorking) }
                }
                Group {
                    if view.restoreFirst { takingIn }
                    byHand
                    byItself(view)
                    forOtherPrograms(view)
                    if !view.restoreFirst { takingIn }
                }
                .disabled(screen.isWorking)
            }
        }
        // Moved, not written anew: photographs of years need not fit into the memory.
        .fileMover(isPresented: $isGivenAPlace, file: made) { result in
            Task {
                guard case .success(let place) = result else { return screen.notCopied() }
                await screen.arrived(at: place)
            }
        } onCancellation: {
            screen.notChosen()
        }
        // Some folders call a zip by no type at all.
        .fileImporter(isPresented: $isTakenIn, allowedContentTypes: [.zip, .data], allowsMultipleSelection: false) {
            result in
            Task {
                guard case .success(let places) = result, let place = places.first else { return screen.notCopied() }
                await screen.restore(from: place)
            }
        } onCancellation: {
            screen.notChosen()
        }
        .sheet(item: $sent) { sent in
            ShareSheet(file: sent.file) { isSent in
                if isSent, let sentence = sent.sentence { screen.handedOn(sentence) }
            }
        }
        .sheet(item: $choosing, onDismiss: write) { choosing in
            switch choosing {
            case .every:
                Chooser(title: Words.howOften, rows: screen.view?.every ?? []) { screen.choose(every: $0) }
            case .table:
                Chooser(title: Words.tables, rows: screen.tables) { wanted = screen.export($0.id) }
            }
        }
    }

    private var byHand: some View {
        Section {
            MainButton(Words.backUp) {
                Task {
                    made = await screen.make()
                    isGivenAPlace = made != nil
                }
            }
            Button(Words.sendBackup) {
                // Where it comes to lie is not known here, so that it does not count as a backup made.
                Task { sent = await screen.make().map { Sent(file: $0, sentence: nil) } }
            }
            .frame(minHeight: 48)
        }
    }

    private func byItself(_ view: BackupView) -> some View {
        Section(Words.byItself) {
            Sentence(view.byItself)
            TapRow(title: Words.howOften, detail: screen.every?.title ?? "", mark: "chevron.down") {
                choosing = .every
            }
            // A page takes one chooser of files: the folder's is this row's.
            TapRow(
                title: Words.backupFolder, detail: view.place.isEmpty ? Words.chooseFolder : view.place,
                mark: "chevron.forward"
            ) {
                asked = FolderForBackups()
            }
            .choosesFolder($asked) { folder, _ in
                Task { await screen.saveBackups(in: folder) }
            } none: { sentence, _ in
                screen.folderDidNotCome(sentence)
            }
            if !view.place.isEmpty {
                Button(Words.backUpThere) { Task { await screen.backUpThere() } }.frame(minHeight: 48)
            }
        }
    }

    private func forOtherPrograms(_ view: BackupView) -> some View {
        Section(Words.forOtherPrograms) {
            TapRow(title: Words.tables, detail: Words.tablesDetail, mark: "chevron.down") { choosing = .table }
            TapRow(title: view.journal.title, detail: view.journal.detail, mark: "square.and.arrow.up") {
                wanted = view.journal
                write()
            }
        }
    }

    private var takingIn: some View {
        Section(Words.takeInHeading) {
            Button(Words.restore) { isTakenIn = true }
                .frame(minHeight: 48)
            GoRow(title: Words.importSpreadsheet, place: .import)
        }
    }

    /// Writes what was chosen, and hands it on: the system's own sheet asks whether to an app or into a folder.
    private func write() {
        guard let export = wanted else { return }
        wanted = nil
        Task {
            guard let written = await screen.write(export) else { return }
            sent = Sent(file: written.file, sentence: written.answer)
        }
    }
}
