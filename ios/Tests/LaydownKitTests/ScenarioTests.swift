import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

/// The scenarios in tests/scenarios, played through the generated Swift: Rust and Kotlin play the same files.
@Suite struct ScenarioTests {
    @Test func everyScenarioAnswersAsWritten() throws {
        var differences: [String] = []
        var played = 0
        let files = try FileManager.default.contentsOfDirectory(at: Stage.here, includingPropertiesForKeys: nil)
        for file in files.sorted(by: { $0.path < $1.path }) where file.pathExtension == "json" {
            let scenario = try #require(
                try JSONSerialization.jsonObject(with: Data(contentsOf: file)) as? [String: Any])
            let stage = try Stage(utcOffsetS: With(scenario).number("utc_offset_s"))
            for (at, step) in try #require(scenario["steps"] as? [[String: Any]]).enumerated() {
                let (outcome, answer) = try stage.play(step)
                let said = "\(step["call"] ?? ""): \(step["say"] ?? "")"
                let place = "\(file.lastPathComponent), step \(at + 1) (\(said)): \(outcome)"
                differences += compare(place, step[outcome], answer)
                played += 1
            }
        }
        #expect(played > 100, "only \(played) steps were found")
        #expect(differences.isEmpty, "\(differences.joined(separator: "\n"))")
    }
}

/// A value of a record, as it is compared with what a scenario says.
private indirect enum Plain: CustomStringConvertible {
    case nothing
    case text(String)
    case flag(Bool)
    case number(Double)
    /// One of an enum's values, by its name.
    case one(String)
    case list([Plain])
    /// Fields by their names in Rust.
    case record([String: Plain])

    init(_ value: Any) throws {
        let mirror = Mirror(reflecting: value)
        switch value {
        case is Void: self = .nothing
        case let text as String: self = .text(text)
        case let flag as Bool: self = .flag(flag)
        case let number as Double: self = .number(number)
        case let number as any BinaryInteger: self = .number(Double(number))
        default:
            switch mirror.displayStyle {
            case .optional: self = try mirror.children.first.map { try Plain($0.value) } ?? .nothing
            case .enum where mirror.children.isEmpty: self = .one("\(value)")
            case .collection: self = .list(try mirror.children.map { try Plain($0.value) })
            case .struct: self = .record(try Plain.fields(of: mirror))
            default: throw Unknown(what: "\(type(of: value))")
            }
        }
    }

    init(refused error: StudioError) throws {
        let variant = try #require(Mirror(reflecting: error).children.first)
        // One value stands without a tuple around it in some versions of Swift's mirrors.
        var fields = (variant.value as? String).map { ["sentence": Plain.text($0)] } ?? [:]
        if fields.isEmpty { fields = try Plain.fields(of: Mirror(reflecting: variant.value)) }
        self = .record(fields.merging(["error": .text(variant.label ?? "")]) { $1 })
    }

    private static func fields(of mirror: Mirror) throws -> [String: Plain] {
        let fields = try mirror.children.map { child in
            let name = (child.label ?? "").replacing(#/[A-Z]/#) { "_" + $0.output.lowercased() }
            return (name, try Plain(child.value))
        }
        return Dictionary(uniqueKeysWithValues: fields)
    }

    var description: String {
        switch self {
        case .nothing: "null"
        case .text(let text), .one(let text): text
        case .flag(let flag): "\(flag)"
        case .number(let number): "\(number)"
        case .list(let items): "\(items)"
        case .record(let fields): "\(fields)"
        }
    }

    /// The text at a JSON pointer.
    func text(at place: String) throws -> String {
        var within = self
        for part in place.split(separator: "/") {
            switch within {
            case .list(let items): within = items[try #require(Int(part))]
            case .record(let fields): within = try #require(fields[String(part)])
            default: throw Unknown(what: place)
            }
        }
        guard case .text(let text) = within else { throw Unknown(what: place) }
        return text
    }
}

/// What a scenario asks for and there is not.
private struct Unknown: Error {
    let what: String
}

/// The studios of one scenario, and the names it has for ids.
private final class Stage {
    static let here = URL(fileURLWithPath: #filePath).appendingPathComponent("../../../../tests/scenarios")
        .standardizedFileURL

    private let folder = FileManager.default.temporaryDirectory.appendingPathComponent(UUID().uuidString)
    private let utcOffsetS: Int
    private var studios: [String: Studio] = [:]
    private var names: [String: String] = [:]
    private var unixMs: Int64 = 0
    private var numbered = 0

    init(utcOffsetS: Int) throws {
        self.utcOffsetS = utcOffsetS
        try FileManager.default.createDirectory(at: folder, withIntermediateDirectories: true)
        // Copies, for the studio lays a smaller picture beside the one it is given.
        for file in ["vase.png", "readings.csv"] {
            try FileManager.default.copyItem(
                at: Stage.here.appendingPathComponent(file), to: folder.appendingPathComponent(file))
        }
    }

    deinit {
        try? FileManager.default.removeItem(at: folder)
    }

    /// Plays one step; says whether it was answered or refused, and with what, under the scenario's names.
    func play(_ step: [String: Any]) throws -> (String, Plain) {
        if let at = step["at"] as? String {
            unixMs = Int64(try Date(at, strategy: .iso8601).timeIntervalSince1970 * 1000)
        } else {
            unixMs += 1000
        }
        let now = Now(unixMs: unixMs, utcOffsetS: Int32(utcOffsetS))
        let with = With(eachText(step["with"] ?? [String: Any](), known) as? [String: Any] ?? [:])
        var outcome = "answers"
        let answer: Plain
        do {
            let name = step["studio"] as? String ?? "studio"
            let studio =
                try studios[name] ?? Studio.open(path: folder.appendingPathComponent("\(name).laydown").path, now: now)
            studios[name] = studio
            answer = try Plain(try studio.call(try With(step).text("call"), now, with))
        } catch let error as StudioError {
            outcome = "refuses"
            answer = try Plain(refused: error)
        }
        for (name, place) in step["bind"] as? [String: String] ?? [:] { names[try answer.text(at: place)] = "$\(name)" }
        return (outcome, named(answer))
    }

    /// What a text of the scenario stands for.
    private func known(_ text: String) -> String {
        if let (known, _) = names.first(where: { $0.value == text }) { return known }
        return text.replacing("$folder", with: folder.path)
    }

    private func eachText(_ value: Any, _ change: (String) -> String) -> Any {
        switch value {
        case let text as String: change(text)
        case let items as [Any]: items.map { eachText($0, change) }
        case let fields as [String: Any]: fields.mapValues { eachText($0, change) }
        default: value
        }
    }

    /// The answer with names in place of what differs from run to run: ids, and the folder.
    private func named(_ answer: Plain) -> Plain {
        switch answer {
        case .text(let text): .text(named(text))
        case .list(let items): .list(items.map(named))
        case .record(let fields):
            .record(
                fields.sorted { $0.key < $1.key }
                    .reduce(into: [:]) { sorted, field in sorted[field.key] = named(field.value) })
        default: answer
        }
    }

    private func named(_ text: String) -> String {
        if let name = names[text] { return name }
        return text.replacing(folder.path, with: "$folder")
            .replacing(#/[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/#) { found in
                let id = String(found.output)
                if names[id] == nil {
                    numbered += 1
                    names[id] = "$\(numbered)"
                }
                return names[id] ?? id
            }
    }
}

/// What a step calls with.
private struct With {
    let given: [String: Any]

    init(_ given: [String: Any]) { self.given = given }

    private func get<T>(_ key: String) throws -> T { try #require(given[key] as? T, "\(key) in \(given)") }

    func text(_ key: String) throws -> String { try get(key) }
    func texts(_ key: String) throws -> [String] { try get(key) }
    func flag(_ key: String) throws -> Bool { try get(key) }
    func number(_ key: String) throws -> Int { try get(key) }
    func of(_ key: String) throws -> With { With(try get(key)) }
    private func typed(_ key: String) -> String { given[key] as? String ?? "" }

    func spot(_ key: String) throws -> Spot {
        let spot = try of(key).given
        return Spot(
            x: try #require(spot["x"] as? NSNumber).doubleValue, y: try #require(spot["y"] as? NSNumber).doubleValue)
    }

    func values(_ key: String) -> [Value] {
        let values = given[key] as? [String: String] ?? [:]
        return values.sorted { $0.key < $1.key }.map { Value(key: $0.key, text: $0.value) }
    }

    /// The value of an enum that the scenario names.
    private func one<T>(_ key: String, of all: [T]) throws -> T? {
        guard let name = given[key] as? String else { return nil }
        return try #require(all.first { folded("\($0)") == folded(name) }, "no \(key) is called \(name)")
    }

    func kind() throws -> EditorKind {
        let kinds: [EditorKind] = [
            .form, .body, .kiln, .firing, .witnessCones, .piece, .glaze, .bucket, .check, .bucketEntry, .mix, .thin,
            .vessel, .scale, .tile, .control, .coat, .dryWeight, .scaleTest, .bisqueLot, .tileLadder, .preference,
            .syncLocation,
        ]
        return try #require(try one("kind", of: kinds))
    }

    func weighEntry() throws -> WeighEntry? {
        guard given["entry"] != nil else { return nil }
        let entry = try of("entry")
        return WeighEntry(
            form: entry.typed("form"), bucket: entry.typed("bucket"),
            zone: try entry.one("zone", of: [.inside, .outside, .whole]), scale: entry.typed("scale"),
            way: try entry.one("way", of: [.net, .twoWeights]), piece: entry.typed("piece"),
            field: try entry.one("field", of: [.net, .bare, .glazed, .seconds]) ?? .net, net: entry.typed("net"),
            bare: entry.typed("bare"), glazed: entry.typed("glazed"), draft: entry.typed("draft"),
            confirmed: entry.typed("confirmed"), seconds: entry.typed("seconds"))
    }

    func editorEntry() throws -> EditorEntry {
        let entry = try of("entry")
        return EditorEntry(
            kind: try entry.kind(), id: entry.typed("id"), subject: entry.typed("subject"),
            values: entry.values("values"), draft: entry.typed("draft"))
    }

    func touch() throws -> Touch {
        let touch = try of("touch")
        switch try touch.text("how") {
        case "move": return .move(grip: try touch.text("grip"), to: try touch.spot("to"))
        case "add": return .add(at: try touch.spot("at"))
        case "remove": return .remove(grip: try touch.text("grip"))
        case let how: throw Unknown(what: how)
        }
    }

    func trouble() throws -> BackupTrouble {
        let troubles: [BackupTrouble] = [
            .placeGone, .notAllowed, .placeFull, .phoneFull, .notMade, .notWhole, .noAnswer,
        ]
        return try #require(try one("trouble", of: troubles))
    }

    func answer() throws -> ClashAnswer? {
        try one("answer", of: [ClashAnswer.ours, .theirs, .both])
    }

    func choice() throws -> TargetChoice? {
        try one("choice", of: [TargetChoice.allEvidence, .bestEvidence, .kept])
    }

    func look() throws -> Assessment {
        let look = try of("look")
        switch try look.text("of") {
        case "thickness": return .thickness(zone: try look.text("zone"), thickness: try look.text("thickness"))
        case "fault": return .fault(fault: try look.text("fault"), on: try look.flag("on"))
        case "where": return .where(touch: try look.touch())
        case "liking": return .liking(stars: UInt8(try look.number("stars")))
        case "note": return .note(text: try look.text("text"))
        case "control": return .control(on: try look.flag("on"))
        case "again": return .again(on: try look.flag("on"))
        case let of: throw Unknown(what: of)
        }
    }
}

/// Whether it was told how far a sync is. The call that tells it is waited for, so that nobody reads meanwhile.
private final class ProgressRelay: ProgressListener, @unchecked Sendable {
    private(set) var told = false

    func progress(progress: SyncProgress) { told = true }
}

extension Studio {
    fileprivate func call(_ call: String, _ now: Now, _ with: With) throws -> Any {
        func text(_ key: String) throws -> String { try with.text(key) }
        switch call {
        case "weigh": return try weigh(now: now, entry: try with.weighEntry())
        case "pieces_to_glaze":
            return try piecesToGlaze(now: now, entry: try #require(try with.weighEntry()), code: try text("code"))
        case "remember": return try remember(now: now, entry: try #require(try with.weighEntry()))
        case "save": return try save(now: now, entry: try #require(try with.weighEntry()))
        case "coat": return try coat(now: now, id: try text("id"))
        case "set_control": return try setControl(now: now, id: try text("id"), control: try with.flag("control"))
        case "choose_target":
            return try chooseTarget(now: now, target: try text("target"), choice: try #require(try with.choice()))
        case "why_target": return try whyTarget(now: now, target: try text("target"))
        case "set_counts":
            return try setCounts(
                now: now, target: try text("target"), firing: try text("firing"), piece: try text("piece"),
                counts: try with.flag("counts"))
        case "remove_coat": return try removeCoat(now: now, id: try text("id"))
        case "undo": return try undo(now: now, token: try text("token"))
        case "redo": return try redo(now: now, token: try text("token"))
        case "recent_changes": return try recentChanges(now: now)
        case "history": return try history(now: now, id: try text("id"))
        case "archived": return try archived(now: now)
        case "unarchive": return try unarchive(now: now, kind: try with.kind(), id: try text("id"))
        case "meanwhile": return try meanwhile(now: now)
        case "meanwhile_read": return try meanwhileRead(now: now)
        case "settle_clash":
            return try settleClash(now: now, id: try text("id"), answer: try #require(try with.answer()))
        case "devices": return try devices(now: now)
        case "sync_now":
            let eye = ProgressRelay()
            // The shell's own, so that every call for a file goes over the boundary and back.
            let place = URL(fileURLWithPath: try text("folder"), isDirectory: true)
            try FileManager.default.createDirectory(at: place, withIntermediateDirectories: true)
            let folder = SyncFolder(place, FoldersHere())
            let (metered, check) = (try with.flag("metered"), try with.flag("check"))
            let sentence = try syncNow(
                now: now, secrets: with.values("secrets"), metered: metered, check: check, folder: folder,
                client: nil, listener: eye, stop: Stop())
            #expect(eye.told, "nobody was told how far it was")
            return sentence
        case "forget_sync_location": return try forgetSyncLocation(now: now)
        case "set_up_as_new_phone": return try setUpAsNewPhone(now: now)
        case "buckets": return try buckets(now: now)
        case "bucket": return try bucket(now: now, id: try text("id"))
        case "setup": return try setup(now: now)
        case "editor": return try editor(now: now, entry: try with.editorEntry())
        case "save_record": return try saveRecord(now: now, entry: try with.editorEntry())
        case "remove": return try remove(now: now, kind: try with.kind(), id: try text("id"))
        case "touch": return try touch(now: now, entry: try with.editorEntry(), touch: try with.touch())
        case "photograph": return try photograph(now: now, entry: try with.editorEntry(), file: try text("file"))
        case "backup": return try backup(now: now)
        case "back_up": return try backUp(into: try text("into"))
        case "backed_up": return try backedUp(now: now, copy: try text("copy"))
        case "set_backup_schedule": return try setBackupSchedule(now: now, every: try text("every"))
        case "set_backup_folder":
            return try setBackupFolder(now: now, place: try text("place"), called: try text("called"))
        case "backup_due": return try backupDue(now: now, asked: try with.flag("asked")) as Any
        case "automatic_backup_done":
            let (place, file) = (try text("place"), try text("file"))
            return try automaticBackupDone(now: now, place: place, file: file, copy: try text("copy"))
        case "backups_removed": return try backupsRemoved(now: now, files: try with.texts("files"))
        case "backup_failed": return try backupFailed(now: now, trouble: try with.trouble())
        case "export": return try export(what: try text("what"), into: try text("into"))
        case "restore": return try restore(now: now, from: try text("from"))
        case "import": return try `import`(now: now, file: try text("file"), columns: with.values("chosen"))
        case "import_spreadsheet":
            return try importSpreadsheet(now: now, file: try text("file"), columns: with.values("chosen"))
        case "kiln": return try kiln(now: now)
        case "firing": return try firing(now: now, id: try text("id"))
        case "load":
            let (pieces, shelf) = (try with.texts("pieces"), UInt32(try with.number("shelf")))
            return try load(now: now, firing: try text("firing"), pieces: pieces, shelf: shelf)
        case "load_all": return try loadAll(now: now, firing: try text("firing"))
        case "place":
            return try place(now: now, firing: try text("firing"), piece: try text("piece"), to: try with.spot("to"))
        case "take_out": return try takeOut(now: now, firing: try text("firing"), piece: try text("piece"))
        case "set_checklist_item":
            let done = try with.flag("done")
            return try setChecklistItem(now: now, firing: try text("firing"), what: try text("what"), done: done)
        case "advance": return try advance(now: now, firing: try text("firing"))
        case "assessment": return try assessment(now: now, firing: try text("firing"), piece: try text("piece"))
        case "assess":
            return try assess(now: now, firing: try text("firing"), piece: try text("piece"), look: try with.look())
        case "save_photo":
            let (piece, firing) = (try text("piece"), try text("firing"))
            return try savePhoto(now: now, piece: piece, firing: firing, file: try text("file"))
        case "remove_photo": return try removePhoto(now: now, id: try text("id"))
        case "piece": return try piece(now: now, id: try text("id"))
        case "find_pieces": return try findPieces(now: now, wanted: with.values("wanted"), limit: 0)
        case "compare": return try compare(now: now, left: try text("left"), right: try text("right"))
        case "contact_sheet": return try contactSheet(now: now, firing: try text("firing"))
        case "piece_sheet": return try pieceSheet(now: now, firing: try text("firing"), piece: try text("piece"))
        case "write_pdf":
            return try writePdf(title: try text("title"), pages: try with.texts("pages"), into: try text("into"))
        case "sizes": return try sizes(now: now, known: try text("known"))
        case "findings": return try findings(now: now)
        case "glaze_findings": return try glazeFindings(now: now, id: try text("id"))
        case "answer_drift": return try answerDrift(now: now, id: try text("id"))
        case "write_charts":
            return try writeCharts(now: now, id: try text("id"), into: try text("into"))
        case "adopt_best": return try adoptBest(now: now, id: try text("id"), best: try text("best"))
        case "preferences": return try preferences()
        default: throw Unknown(what: call)
        }
    }
}

/// A name as one word in lower case: each language writes the values of an enum in its own way.
private func folded(_ name: String) -> String { name.replacing("_", with: "").lowercased() }

/// Where an answer is not what laydown wrote. Places on a drawing or a gauge are written to a millionth of it.
private func compare(_ place: String, _ written: Any?, _ answer: Plain) -> [String] {
    switch (written, answer) {
    case (is NSNull, .nothing): return []
    case (let written as String, .text(let answer)) where written == answer: return []
    case (let written as String, .one(let answer)) where folded(written) == folded(answer): return []
    case (let written as Bool, .flag(let answer)) where written == answer: return []
    case (let written as NSNumber, .number(let answer)) where abs(written.doubleValue - answer) <= 1e-6: return []
    case (let written as [Any], .list(let answer)) where written.count == answer.count:
        return zip(written, answer).enumerated().flatMap { compare("\(place)[\($0)]", $1.0, $1.1) }
    case (let written as [String: Any], .record(let answer)) where Set(written.keys) == Set(answer.keys):
        return answer.sorted { $0.key < $1.key }.flatMap { compare("\(place).\($0.key)", written[$0.key], $0.value) }
    default: return ["\(place)\n  written: \(written ?? "no such outcome")\n  answer:  \(answer)"]
    }
}
