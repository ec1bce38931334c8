import LaydownCore
import LaydownKit
import SwiftUI
import UIKit

/// The phones of the studio, where they meet, and how they come to agree.
struct DevicesPage: View {
    @State private var screen: DevicesScreen
    @State private var isForgetting = false
    @State private var isRenaming = false

    init(frame: AppModel) {
        _screen = State(initialValue: frame.screen("devices") { DevicesScreen(frame: frame) })
    }

    var body: some View {
        ListPage(Words.devices, refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    Sentence(view.intro)
                    NotesView(notes: view.notes)
                }
                if !view.meanwhile.isEmpty {
                    Section { GoRow(title: Words.meanwhile, detail: view.meanwhile, place: .meanwhile) }
                }
                Section(Words.syncLocation) { place(view.sync) }
                Section(Words.phones) {
                    ForEach(view.devices, id: \.id) { row in
                        // Only one's own name can be set here.
                        if row.chosen {
                            GoRow(title: row.title, detail: row.detail, place: .editor(.preference))
                        } else {
                            StillRow(title: row.title, detail: row.detail)
                        }
                    }
                    Button(Words.newPhone) { isRenaming = true }.frame(minHeight: 48)
                }
                Section {
                    GoRow(title: Words.backup, detail: Words.backupForOthers, place: .backup)
                }
            }
        }
        .confirmationDialog(Words.forgetPlaceQuestion, isPresented: $isForgetting, titleVisibility: .visible) {
            Button(Words.forget, role: .destructive) { screen.forget() }
            Button(Words.stay, role: .cancel) {}
        } message: {
            Text(Words.forgetPlaceDetail)
        }
        .confirmationDialog(Words.newPhoneQuestion, isPresented: $isRenaming, titleVisibility: .visible) {
            Button(Words.setUp) { screen.setUpAsNewPhone() }
            Button(Words.stay, role: .cancel) {}
        } message: {
            Text(Words.newPhoneDetail)
        }
        // Another page may have begun it.
        .onChange(of: screen.sync.ended) { Task { await screen.refresh() } }
        // A phone that sleeps sends nothing.
        .onChange(of: screen.sync.isRunning, initial: true) { _, isRunning in stayAwake(isRunning) }
        .onDisappear { stayAwake(false) }
    }

    @ViewBuilder
    private func place(_ view: SyncView) -> some View {
        Sentence(view.place)
        if !view.chosen {
            GoRow(title: Words.choosePlace, mark: "plus", place: .editor(.syncLocation))
        } else {
            Sentence(view.last)
            Sentence(view.waits)
            Trouble(sentence: screen.refusal)
            if screen.sync.isRunning {
                underWay
            } else {
                NotesView(notes: view.notes)
                MainButton(Words.syncNow) { screen.syncNow() }
                GoRow(title: Words.changePlace, place: .editor(.syncLocation))
                Button(Words.checkThere) { screen.syncNow(check: true) }.frame(minHeight: 48)
                Button(Words.forgetPlace, role: .destructive) { isForgetting = true }.frame(minHeight: 48)
            }
        }
    }

    @ViewBuilder
    private var underWay: some View {
        let sync = screen.sync
        VStack(alignment: .leading, spacing: 8) {
            Text(sync.words)
                .font(.headline)
                .foregroundStyle(Color.ink)
                .accessibilityAddTraits(.updatesFrequently)
            ProgressView(value: sync.fraction).accessibilityHidden(true)
        }
        Button(Words.stop) { sync.stop() }
            .frame(minHeight: 48)
            .disabled(sync.isStopping)
    }

    private func stayAwake(_ isAwake: Bool) {
        UIApplication.shared.isIdleTimerDisabled = isAwake
    }
}
