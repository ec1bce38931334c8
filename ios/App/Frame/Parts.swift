import LaydownCore
import LaydownKit
import SwiftUI

extension View {
    /// Lays this on a card with an edge that everyone can see: the usual thin one, or one that means something.
    func card(ground: Color = .surface, edge: Color? = nil) -> some View {
        background(ground, in: RoundedRectangle(cornerRadius: 12))
            .overlay { RoundedRectangle(cornerRadius: 12).stroke(edge ?? .line, lineWidth: edge == nil ? 1 : 2) }
    }
}

/// A row that leads to a page.
struct GoRow: View {
    @Environment(AppModel.self) private var frame
    @Environment(\.go) private var go
    let title: String
    var detail = ""
    var outline: [LaydownCore.Point] = []
    var mark = "chevron.forward"
    let place: Place

    var body: some View {
        TapRow(title: title, detail: detail, outline: outline, mark: mark) {
            frame.offer.clear()
            go(place)
        }
    }
}

/// A row that only says something.
struct StillRow: View {
    let title: String
    let detail: String

    var body: some View {
        VStack(alignment: .leading, spacing: 2) {
            Text(title).foregroundStyle(Color.ink)
            if !detail.isEmpty { Text(detail).font(.subheadline).foregroundStyle(Color.quiet) }
        }
        .accessibilityElement(children: .combine)
    }
}

/// The way to what was done lately.
struct RecentButton: View {
    @Environment(AppModel.self) private var frame
    @Environment(\.go) private var go

    var body: some View {
        Button {
            frame.offer.clear()
            go(.history(""))
        } label: {
            Image(systemName: "clock.arrow.circlepath")
        }
        .accessibilityLabel(Words.recentChanges)
        .frame(minWidth: 48, minHeight: 48)
    }
}

/// A row that is tapped. `mark` is the drawing at its end; the outline of a form is drawn at its start.
struct TapRow: View {
    let title: String
    var detail = ""
    var outline: [LaydownCore.Point] = []
    var mark: String?
    let act: @MainActor () -> Void

    var body: some View {
        Button(action: act) {
            HStack(spacing: 12) {
                if !outline.isEmpty { OutlineView(outline: outline).frame(width: 44, height: 44) }
                VStack(alignment: .leading, spacing: 2) {
                    Text(title).foregroundStyle(Color.ink)
                    if !detail.isEmpty { Text(detail).font(.subheadline).foregroundStyle(Color.quiet) }
                }
                .frame(maxWidth: .infinity, alignment: .leading)
                if let mark {
                    Image(systemName: mark).foregroundStyle(Color.quiet).accessibilityHidden(true)
                }
            }
            .multilineTextAlignment(.leading)
            .frame(minHeight: 48)
            .contentShape(Rectangle())
        }
        .buttonStyle(.plain)
    }
}

/// A sentence with the mark of its tone: a shape, a word for whoever listens, and a colour besides.
struct NoteView: View {
    let note: Note

    init(_ note: Note) {
        self.note = note
    }

    var body: some View {
        HStack(alignment: .firstTextBaseline, spacing: 10) {
            Image(systemName: mark).foregroundStyle(ink).accessibilityHidden(true)
            Text(note.text).foregroundStyle(Color.ink).frame(maxWidth: .infinity, alignment: .leading)
        }
        .padding(.vertical, 4)
        .accessibilityElement(children: .ignore)
        .accessibilityLabel(words)
    }

    private var mark: String {
        switch note.tone {
        case .plain: "info.circle"
        case .attention: "exclamationmark.circle"
        case .warning: "exclamationmark.triangle.fill"
        }
    }

    private var ink: Color {
        switch note.tone {
        case .plain: .quiet
        case .attention: .attention
        case .warning: .warning
        }
    }

    private var words: String {
        switch note.tone {
        case .plain: note.text
        case .attention: Words.noteAttention(note.text)
        case .warning: Words.noteWarning(note.text)
        }
    }
}

/// Sentences, each with the mark of its tone.
struct NotesView: View {
    let notes: [Note]

    var body: some View {
        ForEach(Array(notes.enumerated()), id: \.offset) { NoteView($0.element) }
    }
}

/// Sentences that something is wrong with, where there are any.
struct Trouble: View {
    let sentence: String

    var body: some View {
        if !sentence.isEmpty { NoteView(Note(tone: .attention, text: sentence)) }
    }
}

/// The lines of a record.
struct LinesView: View {
    let lines: [Line]

    var body: some View {
        ForEach(Array(lines.enumerated()), id: \.offset) { _, line in
            LabeledContent {
                Text(line.value).foregroundStyle(Color.ink).multilineTextAlignment(.trailing)
            } label: {
                Text(line.label).foregroundStyle(Color.quiet)
            }
            .accessibilityElement(children: .combine)
        }
    }
}

/// A sentence by itself.
struct Sentence: View {
    let words: String

    init(_ words: String) {
        self.words = words
    }

    var body: some View {
        if !words.isEmpty { Text(words).foregroundStyle(Color.ink) }
    }
}

/// The one thing to do on a page.
struct MainButton: View {
    let words: String
    let act: @MainActor () -> Void

    init(_ words: String, act: @escaping @MainActor () -> Void) {
        self.words = words
        self.act = act
    }

    var body: some View {
        Button(action: act) {
            Text(words)
                .font(.headline)
                .multilineTextAlignment(.center)
                .frame(maxWidth: .infinity, minHeight: 44)
        }
        .buttonStyle(.borderedProminent)
        .foregroundStyle(Color.onAccent)
    }
}

/// A list to choose from, which comes up from below into reach of the thumb.
struct Chooser: View {
    @Environment(\.dismiss) private var dismiss
    let title: String
    let rows: [Row]
    /// The way to one that is not in the list.
    var adding: (label: String, act: @MainActor () -> Void)?
    let picked: @MainActor (Row) -> Void

    var body: some View {
        NavigationStack {
            List {
                ForEach(rows, id: \.id) { row in
                    TapRow(
                        title: row.title, detail: row.detail, outline: row.outline, mark: row.chosen ? "checkmark" : nil
                    ) {
                        dismiss()
                        picked(row)
                    }
                    .accessibilityAddTraits(row.chosen ? .isSelected : [])
                    .listRowBackground(row.chosen ? Color.accentGround : Color.surface)
                }
                if let adding {
                    Button(adding.label) {
                        dismiss()
                        adding.act()
                    }
                    .frame(minHeight: 48)
                    .listRowBackground(Color.surface)
                }
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
}

/// Words in a line, which go on in the next line.
struct Flow: Layout {
    var gap: CGFloat = 8

    func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) -> CGSize {
        let width = proposal.width ?? .infinity
        let places = places(of: subviews, within: width)
        let used = places.map(\.maxX).max() ?? 0
        return CGSize(width: width.isFinite ? width : used, height: places.map(\.maxY).max() ?? 0)
    }

    func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) {
        for (subview, place) in zip(subviews, places(of: subviews, within: bounds.width)) {
            let at = CGPoint(x: bounds.minX + place.minX, y: bounds.minY + place.minY)
            subview.place(at: at, anchor: .topLeading, proposal: ProposedViewSize(place.size))
        }
    }

    private func places(of subviews: Subviews, within width: CGFloat) -> [CGRect] {
        var (x, y, tall): (CGFloat, CGFloat, CGFloat) = (0, 0, 0)
        return subviews.map { subview in
            let size = subview.sizeThatFits(ProposedViewSize(width: width, height: nil))
            if x > 0, x + size.width > width {
                (x, y, tall) = (0, y + tall + gap, 0)
            }
            defer {
                x += size.width + gap
                tall = max(tall, size.height)
            }
            return CGRect(origin: CGPoint(x: x, y: y), size: size)
        }
    }
}
