import LaydownCore
import LaydownKit
import SwiftUI
import UniformTypeIdentifiers

/// Everything into one file that lies elsewhere, and such a file taken in again.
struct BackupPage: View {
    @State private var screen: BackupScreen
    /// The backup that was made and waits for its place.
    @State private var made: URL?
    @State private var isGivenAPlace = false
    @State private var sent: SharedFile?
    @State private var isTakenIn = false

    init(frame: Frame) {
        _screen = State(initialValue: BackupScreen(frame: frame))
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
                Section {
                    MainButton(Words.backUp) {
                        Task {
                            made = await screen.make()
                            isGivenAPlace = made != nil
                        }
                    }
                    Button(Words.sendBackup) {
                        Task { sent = await screen.make().map(SharedFile.init) }
                    }
                    .frame(minHeight: 48)
                    Button(Words.takeIn) { isTakenIn = true }
                        .frame(minHeight: 48)
                }
                .disabled(screen.isWorking)
                Section { GoRow(title: Words.importSheet, place: .import) }
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
                await screen.takeIn(from: place)
            }
        } onCancellation: {
            screen.notChosen()
        }
        .sheet(item: $sent) { ShareSheet(file: $0.url) }
    }
}
