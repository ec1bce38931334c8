import LaydownCore

/// A page that lies on top of a tab.
public enum Place: Hashable, Sendable {
    /// The record of one coat.
    case coat(String)
    /// One bucket.
    case bucket(String)
    /// Something that is filled in: a new one where `id` is empty. `subject` is the glaze of a bucket, the bucket of a check.
    case editor(EditorKind, id: String = "", subject: String = "")
    /// What every form should take.
    case sizes
    /// Every caution in full.
    case cautions
    /// Everything into one file.
    case backup
    /// One firing.
    case firing(String)
    /// A piece of a firing after it; the first one not yet looked at where `piece` is empty.
    case look(firing: String, piece: String = "")
    /// A firing on a page, or one piece of it.
    case contactSheet(firing: String, piece: String = "")
    /// The life of one piece.
    case piece(String)
    /// A piece beside another.
    case compare(String)
    /// Pieces that are looked for.
    case find
    /// What fired pots say of one glaze.
    case glazeFindings(String)
    /// All that was ever said of the thing with this id; what was done lately where it is empty.
    case history(String)
    /// The phones of the studio.
    case devices
    /// A potter's own spreadsheet, taken in.
    case `import`
    /// Why a target is what it is.
    case why(target: String)
    /// What was archived.
    case archived
    /// What other phones did meanwhile.
    case meanwhile
}

// Written down so that one is found where one was after the system has ended the app. What a newer or older version wrote
// and this one does not know is no place, and one begins at the tab.
extension Place: Codable {
    /// Reads a place.
    public init(from decoder: any Decoder) throws {
        var parts = try decoder.unkeyedContainer()
        let page = try parts.decode(String.self)
        func id() throws -> String { try parts.decode(String.self) }
        switch page {
        case "coat": self = .coat(try id())
        case "bucket": self = .bucket(try id())
        case "sheet":
            let name = try id()
            guard let kind = EditorKind.all.first(where: { $0.name == name }) else {
                throw DecodingError.dataCorruptedError(in: parts, debugDescription: "no sheet is called \(name)")
            }
            self = .editor(kind, id: try id(), subject: try id())
        case "sizes": self = .sizes
        case "archived": self = .archived
        case "meanwhile": self = .meanwhile
        case "cautions": self = .cautions
        case "backup": self = .backup
        case "firing": self = .firing(try id())
        case "look": self = .look(firing: try id(), piece: try id())
        case "contact_sheet": self = .contactSheet(firing: try id(), piece: (try? id()) ?? "")
        case "piece": self = .piece(try id())
        case "compare": self = .compare(try id())
        case "find": self = .find
        case "glaze_findings": self = .glazeFindings(try id())
        case "history": self = .history(try id())
        case "devices": self = .devices
        case "import": self = .import
        case "why": self = .why(target: try id())
        default: throw DecodingError.dataCorruptedError(in: parts, debugDescription: "no page is called \(page)")
        }
    }

    /// Writes the place down: the page's name, then what it is about.
    public func encode(to encoder: any Encoder) throws {
        var parts = encoder.unkeyedContainer()
        for part in written { try parts.encode(part) }
    }

    private var written: [String] {
        switch self {
        case .coat(let id): ["coat", id]
        case .bucket(let id): ["bucket", id]
        case .editor(let kind, let id, let subject): ["sheet", kind.name, id, subject]
        case .sizes: ["sizes"]
        case .cautions: ["cautions"]
        case .backup: ["backup"]
        case .firing(let id): ["firing", id]
        case .look(let firing, let piece): ["look", firing, piece]
        case .contactSheet(let firing, let piece): ["contact_sheet", firing, piece]
        case .piece(let id): ["piece", id]
        case .compare(let id): ["compare", id]
        case .find: ["find"]
        case .glazeFindings(let id): ["glaze_findings", id]
        case .history(let id): ["history", id]
        case .devices: ["devices"]
        case .import: ["import"]
        case .why(let target): ["why", target]
        case .archived: ["archived"]
        case .meanwhile: ["meanwhile"]
        }
    }
}

extension EditorKind {
    static let all: [EditorKind] = [
        .form, .body, .kiln, .firing, .witnessCones, .piece, .glaze, .bucket, .check, .bucketEntry, .mix, .thin,
        .vessel, .scale, .tile, .control, .coat, .dryWeight, .scaleTest, .bisqueLot, .tileLadder,
        .preference,
        .syncLocation,
    ]

    /// By what name it is written down.
    public var name: String {
        // No default: a new kind must be given its name here, and a place in the list above.
        switch self {
        case .form: "form"
        case .body: "body"
        case .bisqueLot: "bisque_lot"
        case .kiln: "kiln"
        case .firing: "firing"
        case .witnessCones: "witness_cones"
        case .piece: "piece"
        case .glaze: "glaze"
        case .bucket: "bucket"
        case .check: "check"
        case .bucketEntry: "bucket_entry"
        case .mix: "mix"
        case .thin: "thin"
        case .vessel: "vessel"
        case .scale: "scale"
        case .scaleTest: "scale_test"
        case .tile: "tile"
        case .tileLadder: "tile_ladder"
        case .control: "control"
        case .coat: "coat"
        case .dryWeight: "dry_weight"
        case .preference: "preference"
        case .syncLocation: "meeting_place"
        }
    }
}
