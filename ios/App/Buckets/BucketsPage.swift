import LaydownCore
import LaydownKit
import SwiftUI

/// The Buckets screen: each with its SG and how old that is.
struct BucketsPage: View {
    @State private var screen: BucketsScreen

    init(frame: AppModel) {
        _screen = State(initialValue: BucketsScreen(frame: frame))
    }

    var body: some View {
        ListPage(Words.tabBuckets, refresh: screen.refresh) {
            if let view = screen.view {
                Section {
                    if view.buckets.isEmpty { Sentence(view.empty) }
                    ForEach(view.buckets, id: \.id) { BucketCard(bucket: $0) }
                    GoRow(title: Words.addGlaze, mark: "plus", place: .editor(.glaze))
                }
                Section {
                    NotesView(notes: view.notes)
                }
            }
        }
    }
}

private struct BucketCard: View {
    @Environment(\.go) private var go
    let bucket: BucketRow

    var body: some View {
        Button {
            go(.bucket(bucket.id))
        } label: {
            VStack(alignment: .leading, spacing: 4) {
                HStack(alignment: .firstTextBaseline) {
                    Text(bucket.glaze).font(.headline).foregroundStyle(Color.ink)
                    Spacer()
                    Text(bucket.sg).font(.title3.monospacedDigit()).foregroundStyle(Color.ink)
                }
                Text(bucket.name)
                Text(bucket.since)
                if bucket.attention {
                    Label(Words.needsCheck, systemImage: "exclamationmark.circle").foregroundStyle(Color.attention)
                }
            }
            .font(.subheadline)
            .foregroundStyle(Color.quiet)
            .multilineTextAlignment(.leading)
            .frame(maxWidth: .infinity, minHeight: 48, alignment: .leading)
            .contentShape(Rectangle())
        }
        .buttonStyle(.plain)
    }
}
