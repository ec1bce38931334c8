import LaydownCore
import LaydownKit
import SwiftUI

/// One field of an editor as it is filled in.
struct FieldView: View {
    let screen: EditorScreen
    let field: EditorField
    @FocusState.Binding var focused: String?
    @Binding var way: PictureWay?
    /// The field that a folder is asked for.
    @Binding var asked: EditorField?

    private static let yes = "yes"
    private static let no = "no"

    var body: some View {
        VStack(alignment: .leading, spacing: 6) {
            if field.kind != .switch {
                Text(field.label).font(.subheadline).foregroundStyle(Color.quiet).accessibilityHidden(isTyped)
            }
            input
            if !field.help.isEmpty { Text(field.help).font(.footnote).foregroundStyle(Color.quiet) }
            Trouble(sentence: screen.refusal(of: field))
        }
        .padding(.vertical, 2)
    }

    /// A field of text is read out with what it asks for.
    private var isTyped: Bool { [.text, .lines, .exact, .secret, .number].contains(field.kind) }

    private var text: Binding<String> {
        Binding {
            screen.text(of: field)
        } set: {
            screen.enter($0, in: field)
        }
    }

    @ViewBuilder
    private var input: some View {
        switch field.kind {
        case .text: line.textInputAutocapitalization(.sentences)
        case .lines: lines
        // It counts letter by letter.
        case .exact: line.keyboardType(.URL).textInputAutocapitalization(.never).autocorrectionDisabled()
        case .secret: SecretField(field: field, text: text, focused: $focused)
        case .folder: folder
        // Digits come first, yet "1 lb 2 oz" and "40 Bé" can be written too: the core says what it can read.
        case .number: line.keyboardType(.numbersAndPunctuation).autocorrectionDisabled()
        case .choice: choices
        case .outline: outlines
        case .switch:
            Toggle(
                field.label,
                isOn: Binding {
                    text.wrappedValue == FieldView.yes
                } set: {
                    text.wrappedValue = $0 ? FieldView.yes : FieldView.no
                })
        case .table: TableField(columns: field.columns, text: text, focused: $focused, key: field.key)
        case .photo: photo
        case .day: day
        }
    }

    /// The day stands in the field as ISO 8601 writes it.
    private var day: some View {
        DatePicker(
            field.label,
            selection: Binding {
                EditorScreen.date(of: text.wrappedValue)
            } set: {
                text.wrappedValue = EditorScreen.text(of: $0)
            }, displayedComponents: .date
        )
        .labelsHidden()
        .frame(minHeight: 44)
    }

    private var line: some View {
        TextField(field.hint, text: text)
            .font(.title3)
            .foregroundStyle(Color.ink)
            .focused($focused, equals: field.key)
            .frame(minHeight: 44)
            .accessibilityLabel([field.label, field.hint].filter { !$0.isEmpty }.joined(separator: ", "))
    }

    private var lines: some View {
        TextField(field.hint, text: text, axis: .vertical)
            .lineLimit(12)
            .font(.title3)
            .foregroundStyle(Color.ink)
            .textInputAutocapitalization(.sentences)
            .focused($focused, equals: field.key)
            .frame(minHeight: 44)
            .accessibilityLabel([field.label, field.hint].filter { !$0.isEmpty }.joined(separator: ", "))
    }

    @ViewBuilder
    private var folder: some View {
        let name = screen.folderName(of: field)
        if !name.isEmpty { Text(name).font(.title3).foregroundStyle(Color.ink) }
        Button(name.isEmpty ? Words.chooseFolder : Words.chooseAnotherFolder) { asked = field }
            .buttonStyle(.bordered)
            .controlSize(.large)
    }

    private var choices: some View {
        ForEach(field.items, id: \.code) { item in
            let isChosen = item.code == text.wrappedValue
            TapRow(title: item.name, detail: item.detail, mark: isChosen ? "checkmark.circle.fill" : "circle") {
                text.wrappedValue = item.code
            }
            .accessibilityAddTraits(isChosen ? .isSelected : [])
        }
    }

    private var outlines: some View {
        LazyVGrid(columns: [GridItem(.adaptive(minimum: 92), spacing: 8)], spacing: 8) {
            ForEach(field.items, id: \.code) { item in
                let isChosen = item.code == text.wrappedValue
                Button {
                    text.wrappedValue = item.code
                } label: {
                    VStack(spacing: 4) {
                        OutlineView(outline: item.outline).frame(height: 64)
                        Text(item.name).font(.footnote).foregroundStyle(Color.ink).multilineTextAlignment(.center)
                        Image(systemName: "checkmark.circle.fill")
                            .foregroundStyle(Color.accent)
                            .opacity(isChosen ? 1 : 0)
                    }
                    .frame(maxWidth: .infinity)
                    .padding(8)
                    .card(ground: isChosen ? .accentGround : .keyQuiet, edge: isChosen ? .accent : nil)
                }
                .buttonStyle(.plain)
                .accessibilityLabel(item.name)
                .accessibilityAddTraits(isChosen ? .isSelected : [])
            }
        }
    }

    @ViewBuilder
    private var photo: some View {
        ForEach(field.items, id: \.code) { item in
            Button(item.name) { way = PictureWay(code: item.code) }
                .buttonStyle(.bordered)
                .controlSize(.large)
                .disabled(screen.isLookingAtPicture)
        }
        if screen.isLookingAtPicture { ProgressView(Words.pictureInWork) }
    }
}

/// A secret, in dots as long as one does not ask to see what is being typed. What was kept before is nowhere to be seen.
private struct SecretField: View {
    let field: EditorField
    @Binding var text: String
    @FocusState.Binding var focused: String?
    @State private var isShown = false

    var body: some View {
        HStack(spacing: 8) {
            line
                .font(.title3)
                .foregroundStyle(Color.ink)
                .textInputAutocapitalization(.never)
                .autocorrectionDisabled()
                .focused($focused, equals: field.key)
                .frame(minHeight: 44)
                .accessibilityLabel([field.label, field.hint].filter { !$0.isEmpty }.joined(separator: ", "))
            if !text.isEmpty {
                Button(isShown ? Words.hideSecret : Words.showSecret) {
                    isShown.toggle()
                    // It is another view from now on, and one goes on typing in that.
                    focused = field.key
                }
                .buttonStyle(.bordered)
            }
        }
    }

    @ViewBuilder
    private var line: some View {
        if isShown { TextField(field.hint, text: $text) } else { SecureField(field.hint, text: $text) }
    }
}

/// A table of numbers, one row under the other.
private struct TableField: View {
    let columns: [String]
    @Binding var text: String
    @FocusState.Binding var focused: String?
    let key: String

    var body: some View {
        let table = NumberTable(text: text, columns: columns.count)
        Grid(horizontalSpacing: 8, verticalSpacing: 8) {
            GridRow {
                Color.clear.frame(width: 1, height: 1)
                ForEach(columns, id: \.self) { Text($0).font(.caption).foregroundStyle(Color.quiet) }
                Color.clear.frame(width: 1, height: 1)
            }
            .accessibilityHidden(true)
            ForEach(table.rows.indices, id: \.self) { row in
                GridRow {
                    Text(String(row + 1)).font(.caption).foregroundStyle(Color.quiet).accessibilityHidden(true)
                    ForEach(columns.indices, id: \.self) { column in cell(table, row, column) }
                    Button {
                        change { $0.takeAway(row: row) }
                    } label: {
                        Image(systemName: "minus.circle").frame(minWidth: 44, minHeight: 44)
                    }
                    .buttonStyle(.plain)
                    .foregroundStyle(Color.quiet)
                    .accessibilityLabel(Words.rowAway(row + 1))
                }
            }
        }
        Button(Words.rowAdd) {
            change { $0.addRow() }
            focused = name(table.rows.count, 0)
        }
        .buttonStyle(.bordered)
    }

    private func cell(_ table: NumberTable, _ row: Int, _ column: Int) -> some View {
        let typed = Binding {
            table.rows[row][column]
        } set: { typed in
            change { $0.type(typed, row: row, column: column) }
        }
        return TextField("", text: typed)
            .keyboardType(.numbersAndPunctuation)
            .autocorrectionDisabled()
            .font(.body.monospacedDigit())
            .padding(.horizontal, 8)
            .frame(minHeight: 44)
            .card(ground: .keyQuiet)
            .focused($focused, equals: name(row, column))
            .accessibilityLabel(Words.cellIs(columns[column], row + 1))
    }

    /// The whole of the field, as the core takes it.
    private func change(_ how: (inout NumberTable) -> Void) {
        var table = NumberTable(text: text, columns: columns.count)
        how(&table)
        text = table.text
    }

    private func name(_ row: Int, _ column: Int) -> String {
        // The first cell goes by the field's own name: it is gone to when the field is refused.
        row == 0 && column == 0 ? key : "\(key) \(row) \(column)"
    }
}
