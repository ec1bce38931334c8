import LaydownCore

/// The four things that are chosen on the Weigh screen.
public enum WeighChoice: CaseIterable, Identifiable, Sendable {
    /// The form that is glazed.
    case form
    /// The zone of it.
    case zone
    /// The glaze, and the bucket of it.
    case glaze
    /// The scale.
    case scale

    /// Itself.
    public var id: Self { self }

    /// What it is called.
    public var label: String {
        switch self {
        case .form: Words.form
        case .zone: Words.zone
        case .glaze: Words.glaze
        case .scale: Words.scale
        }
    }

    /// What stands above the list.
    public var question: String {
        switch self {
        case .form: Words.chooseForm
        case .zone: Words.chooseZone
        case .glaze: Words.chooseGlaze
        case .scale: Words.chooseScale
        }
    }

    /// What the button says that adds one, and the sheet it leads to; a zone is not added.
    public var adding: (label: String, editor: EditorKind)? {
        switch self {
        case .form: (Words.addForm, .form)
        case .zone: nil
        case .glaze: (Words.addGlaze, .glaze)
        case .scale: (Words.addScale, .scale)
        }
    }

    /// What is chosen now, in a word or two.
    public func chosen(in view: WeighView) -> String {
        switch self {
        case .form: view.form
        case .zone: view.zone
        case .glaze: view.bucket
        case .scale: view.scale
        }
    }

    /// What can be chosen.
    public func rows(of view: WeighView) -> [Row] {
        switch self {
        case .form: view.forms
        case .zone: view.zones
        case .glaze: view.buckets
        case .scale: view.scales
        }
    }

    /// Enters what was picked.
    func pick(_ row: Row, in entry: inout WeighEntry) {
        switch self {
        case .form:
            entry.form = row.id
            entry.piece = ""
        case .zone:
            entry.zone = ZoneKind(code: row.id)
            // Each zone has its own glaze: the core fills in which.
            entry.bucket = ""
        case .glaze: entry.bucket = row.id
        case .scale: entry.scale = row.id
        }
    }
}

extension ZoneKind {
    /// The zone of a row's code; nil for a code of a newer core, for which the core takes the usual zone.
    init?(code: String) {
        switch code {
        case "inside": self = .inside
        case "outside": self = .outside
        case "whole": self = .whole
        default: return nil
        }
    }
}

extension WeighEntry {
    /// What is typed in a field.
    func text(of field: Field) -> String {
        switch field {
        case .net: net
        case .bare: bare
        case .glazed: glazed
        case .seconds: seconds
        }
    }

    /// What is typed in the field that the keypad fills.
    var typed: Typed {
        get { Typed(text(of: field)) }
        set {
            switch field {
            case .net: net = newValue.text
            case .bare: bare = newValue.text
            case .glazed: glazed = newValue.text
            case .seconds: seconds = newValue.text
            }
        }
    }

    /// Whether nothing is typed in any field.
    var isBlank: Bool { net.isEmpty && bare.isEmpty && glazed.isEmpty && seconds.isEmpty }
}

extension Field {
    /// The field of the name that a refusal gives.
    init?(key: String) {
        switch key {
        case "net": self = .net
        case "bare": self = .bare
        case "glazed": self = .glazed
        case "seconds": self = .seconds
        default: return nil
        }
    }
}
