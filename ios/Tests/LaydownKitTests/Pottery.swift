import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

/// An invented pottery in a folder of its own, laid out through the studio's own commands.
@MainActor
final class Pottery {
    /// Begins on 2026-11-25, a quarter past ten in the morning, and goes on by a second with each call.
    private final class Clock: @unchecked Sendable {
        // Read where calls are asked for, which is on the main actor alone.
        private var unixMs: Int64 = 1_795_601_700_000

        func now() -> Now {
            unixMs += 1000
            return Now(unixMs: unixMs, utcOffsetS: 0)
        }
    }

    /// Is there as long as a studio may be opened in it.
    final class Folder: Sendable {
        let url = FileManager.default.temporaryDirectory.appendingPathComponent(UUID().uuidString)

        deinit {
            try? FileManager.default.removeItem(at: url)
        }
    }

    private let clock = Clock()
    private let place = Folder()
    var folder: URL { place.url }
    /// Outlives the app.
    let phone: Phone
    private(set) var frame: AppModel

    /// A phone on which laydown was just opened.
    init(phone: Phone = .invented()) async throws {
        self.phone = phone
        frame = Pottery.frame(in: place, clock, phone)
        await frame.open()
        try #require(frame.failure == nil)
    }

    private static func frame(in place: Folder, _ clock: Clock, _ phone: Phone) -> AppModel {
        let work = StudioWork(clock: clock.now, recover: StudioFolder(place.url).recover) {
            try StudioFolder(place.url).open($0)
        }
        return AppModel(work: work, transferFolder: StudioFolder(place.url).transferFolder, phone: phone)
    }

    /// Ends the app and opens it again.
    func reopen() async throws {
        frame = Pottery.frame(in: place, clock, phone)
        await frame.open()
        try #require(frame.failure == nil)
    }

    /// A studio that can weigh: a form, a glaze with its bucket, a scale.
    static func furnished(phone: Phone = .invented()) async throws -> Pottery {
        let pottery = try await Pottery(phone: phone)
        try await pottery.editor(.form, ["name": "Breakfast mug", "class": "cylinder_mug", "capacity": "350 ml"])
        try await pottery.editor(.glaze, ["name": "Ash white", "sensitivity": "medium", "specific_gravity": "1.45"])
        try await pottery.editor(.scale, ["name": "Bench scale", "capacity": "2000 g", "step": "0.1 g"])
        return pottery
    }

    /// The same with three coats, each on a piece of its own, and a kiln with a firing into which nothing has been put yet.
    ///
    /// - Returns: The pottery and the firing's id.
    static func loading() async throws -> (Pottery, String) {
        let pottery = try await furnished()
        for net in ["20.5", "19.1", "22.9"] { try await pottery.coat(net) }
        try await pottery.editor(.kiln, ["name": "Garden kiln", "round": "yes", "across": "40 cm", "shelves": "2"])
        let firing = try await pottery.editor(.firing, ["cone": "6"]).id
        return (pottery, firing)
    }

    /// The same after the firing, when nothing has been looked at yet.
    static func fired() async throws -> (Pottery, String) {
        let (pottery, firing) = try await loading()
        _ = try await pottery.frame.work.ask { try $0.loadAll(now: $1, firing: firing) }
        _ = try await pottery.frame.work.ask { try $0.advance(now: $1, firing: firing) }
        return (pottery, firing)
    }

    /// Saves a sheet as a potter does, without a screen.
    @discardableResult
    func editor(_ kind: EditorKind, _ values: [String: String], subject: String = "") async throws -> CommandResult {
        let values = values.map { Value(key: $0.key, text: $0.value) }
        let entry = EditorEntry(kind: kind, id: "", subject: subject, values: values)
        return try await frame.work.ask { try $0.saveRecord(now: $1, entry: entry) }
    }

    /// Saves a coat.
    @discardableResult
    func coat(_ net: String) async throws -> CommandResult {
        try await frame.work.ask { studio, now in
            var entry = try studio.weigh(now: now, entry: nil).entry
            entry.net = net
            entry.zone = .inside
            return try studio.save(now: now, entry: entry)
        }
    }

    /// What lies in the folder of what is on its way.
    func handedOver() throws -> [String] {
        let folder = folder.appendingPathComponent("handover")
        guard FileManager.default.fileExists(atPath: folder.path) else { return [] }
        return try FileManager.default.contentsOfDirectory(atPath: folder.path)
    }
}

extension Phone {
    /// A phone whose folders are those of this machine, and which keeps its secrets as long as it lives.
    static func invented(
        secrets: any Secrets = SecretsInMemory(), folders: any Folders = FoldersHere(), isMetered: Bool = false
    ) -> Phone {
        Phone(secrets: secrets, folders: folders) { isMetered }
    }
}

final class SecretsInMemory: Secrets, @unchecked Sendable {
    private let lock = NSLock()
    private var saved: [String: String] = [:]
    /// Whether it takes no secret; set before it is used.
    var isFull = false

    func all() -> [String: String] { lock.withLock { saved } }
    func save(_ secret: String, under key: String) throws {
        if isFull { throw SecretNotSaved() }
        lock.withLock { saved[key] = secret }
    }
    func forget(_ key: String) throws { lock.withLock { saved[key] = nil } }
}

/// Folders found again by their paths.
struct FoldersHere: Folders {
    func handle(of folder: URL) throws -> String { folder.path }
    func reach<ActivityResult>(_ handle: String, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
        guard FileManager.default.fileExists(atPath: handle) else { throw FolderError.Gone }
        return try work(URL(fileURLWithPath: handle, isDirectory: true))
    }
    func read<ActivityResult>(_ url: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
        try work(url)
    }
    func write<ActivityResult>(_ url: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult {
        try work(url)
    }
    func size(of file: URL) throws -> UInt64 {
        try #require(FileManager.default.attributesOfItem(atPath: file.path)[.size] as? NSNumber).uint64Value
    }
    func delete(_ url: URL) throws { try FileManager.default.removeItem(at: url) }
}

/// A picture of an invented vase before a plain wall, as a PNG file.
enum Picture {
    static let width = 240
    static let height = 320

    static func vase() -> Data {
        var rows: [UInt8] = []
        for y in 0..<height {
            rows.append(0)  // this row is not filtered
            for x in 0..<width { rows.append(isClay(x, y) ? 90 : 225) }
        }
        return png(grey: rows)
    }

    /// A foot, a belly and a neck that opens again at the rim.
    private static func isClay(_ x: Int, _ y: Int) -> Bool {
        guard (60..<260).contains(y) else { return false }
        let up = Double(260 - y) / 200
        let radius = 34 + 40 * sin(up * .pi) - 12 * up + (up > 0.85 ? (up - 0.85) * 90 : 0)
        return abs(Double(x) - 120) <= radius
    }

    private static func png(grey rows: [UInt8]) -> Data {
        var file = Data([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A])
        let eightBitsGrey: [UInt8] = [8, 0, 0, 0, 0]
        file += chunk("IHDR", bigEndian(UInt32(width)) + bigEndian(UInt32(height)) + eightBitsGrey)
        file += chunk("IDAT", zlib(rows))
        file += chunk("IEND", [])
        return file
    }

    /// Not compressed: blocks of bytes as they are.
    private static func zlib(_ bytes: [UInt8]) -> [UInt8] {
        var stream: [UInt8] = [0x78, 0x01]
        for start in stride(from: 0, to: bytes.count, by: 65535) {
            let block = bytes[start..<min(start + 65535, bytes.count)]
            let size = UInt16(block.count)
            stream.append(start + block.count == bytes.count ? 1 : 0)
            for part in [size, ~size] { stream += [UInt8(part & 0xFF), UInt8(part >> 8)] }
            stream += block
        }
        var (a, b): (UInt32, UInt32) = (1, 0)
        for byte in bytes {
            a = (a + UInt32(byte)) % 65521
            b = (b + a) % 65521
        }
        return stream + bigEndian(b << 16 | a)
    }

    private static func chunk(_ name: String, _ body: [UInt8]) -> [UInt8] {
        let named = Array(name.utf8) + body
        var crc: UInt32 = .max
        for byte in named {
            crc ^= UInt32(byte)
            for _ in 0..<8 { crc = crc & 1 == 1 ? crc >> 1 ^ 0xEDB8_8320 : crc >> 1 }
        }
        return bigEndian(UInt32(body.count)) + named + bigEndian(~crc)
    }

    private static func bigEndian(_ number: UInt32) -> [UInt8] {
        [24, 16, 8, 0].map { UInt8(truncatingIfNeeded: number >> $0) }
    }
}
