import Foundation
import LaydownCore
import Testing

@testable import LaydownKit

/// Rounds by the phone's own network, with real servers and with one that means no good: tests/remote/serve.py, started by ios.mk,
/// which also has this machine trust the servers' authority.
@Suite struct HttpClientTests {
    private static let password = "slip and sieve"
    /// Whether this machine trusts the servers' authority: only a tool chain in a root of its own can be made to.
    private static let trusts = ProcessInfo.processInfo.environment["LAYDOWN_TRUSTED"] != nil
    private static let good = trusts ? "good" : "plain"
    private let folder = URL(fileURLWithPath: ProcessInfo.processInfo.environment["LAYDOWN_SERVERS"] ?? "")

    /// Where each of the servers is.
    private func server(_ name: String) throws -> String {
        let said = try Data(contentsOf: folder.appendingPathComponent("servers.json"))
        return try #require((try JSONDecoder().decode([String: String].self, from: said))[name])
    }

    /// What was asked of the hostile server.
    private func asked() throws -> String {
        try String(contentsOf: folder.appendingPathComponent("asked"), encoding: .utf8)
    }

    private func webdav(_ address: String) -> [String: String] {
        ["kind": "webdav", "address": address, "user": "potter", "password": Self.password]
    }

    private func inStep(_ place: [String: String]) throws {
        let (sink, kiln) = (try Studying(place), try Studying(place))
        try sink.call("Tablet by the sink")
        try kiln.call("Phone at the kiln")
        #expect(try sink.sync() == "Sent: 1 entry.")
        #expect(try kiln.sync() == "Received: 1 entry. Sent: 1 entry.")
        #expect(try sink.sync() == "Received: 1 entry.")
        for phone in [sink, kiln] { #expect(try phone.sync(check: true) == "Nothing was new on either side.") }
        #expect(try sink.names() == ["Phone at the kiln", "Tablet by the sink"])
        #expect(try kiln.names() == sink.names())
    }

    @Test func twoStudiosAreInStepThroughWebDavByTheCertificateOfTheirOwnAuthority() throws {
        try inStep(webdav("\(try server(Self.good))/step/"))
    }

    @Test func twoStudiosAreInStepThroughWebDavInTheirOwnNetworkWithoutEncryption() throws {
        try inStep(webdav("\(try server("plain"))/\(Self.trusts ? "step" : "proxy")/"))
    }

    @Test func twoStudiosAreInStepThroughS3() throws {
        try inStep([
            "kind": "s3", "address": try server("s3"), "region": "us-east-1", "bucket": "pots", "prefix": "studio",
            "key": "potter", "secret": Self.password,
        ])
    }

    /// What goes wrong, and what is said of it. All at once, for each tries again a few times.
    @Test func whateverTheNetworkDoesIsSaidAndNothingIsLost() async throws {
        let hostile = try server("hostile")
        let untrusted = "This phone does not trust the server's certificate"
        let cases = [
            ("https://storage.invalid/", "No server has this name."),
            ("http://127.0.0.1:9/", "No answer."),
            ("\(try server("expired"))/", Self.trusts ? "The server's certificate is out of date" : untrusted),
            ("\(try server("other_host"))/", Self.trusts ? "The certificate belongs to another server" : untrusted),
            ("\(hostile)/locked/", "The server does not accept the name and password"),
            ("\(hostile)/longer/", "The sync location did not respond as expected."),
            ("\(hostile)/shorter/", "The connection broke."),
            ("\(hostile)/endless/", "There are more files there than laydown reads."),
            ("\(hostile)/dropped/", "The connection broke."),
            ("\(hostile)/garbage/", "The connection broke."),
            ("\(hostile)/portal/", "The sync location did not respond as expected."),
            ("\(hostile)/circle/", "The server sends laydown to another server"),
            ("\(hostile)/away/", "The server sends laydown to another server"),
        ]
        let good = webdav("\(try server(Self.good))/after/")
        let rounds = cases.map { address, sentence in
            let place = webdav(address)
            return onThread {
                let phone = try Studying(place)
                try phone.call("Tablet by the sink")
                var said = ""
                do { said = try phone.sync() } catch let problem as StudioError { said = problem.sentence }
                let noted = try phone.studio.devices(now: phone.now).sync.notes.map(\.text).joined(separator: ", ")
                // Nothing is lost: it is all there, and goes once there is a good server.
                try phone.choose(good)
                let after = try phone.sync()
                let isWell = said.hasPrefix(sentence) && noted.contains(sentence) && after.contains("Sent: 1 entry.")
                return isWell ? nil : "\(address): \(said); \(noted); \(after)"
            }
        }
        for round in rounds { #expect(try await round.value ?? "" == "") }
        #expect(!(try asked().contains("/witness")))
    }

    @Test(arguments: ["silent", "slow"])
    func stopIsObeyedWhileAServerSaysNothingOrHardlyAnything(_ trick: String) async throws {
        let phone = try Studying(webdav("\(try server("hostile"))/\(trick)/"))
        let stop = Stop()
        let round = onThread {
            do { return try phone.sync(stop: stop) } catch let problem as StudioError { return problem.sentence }
        }
        while !(try asked().contains("/\(trick)/")) { try await Task.sleep(for: .milliseconds(20)) }
        let begun = ContinuousClock.now
        stop.stop()
        #expect(try await round.value.hasPrefix("Stopped."))
        #expect(ContinuousClock.now - begun < .seconds(3))
    }
}

/// A phone of the studio, which belongs to one thread at a time.
private final class Studying: @unchecked Sendable {
    let now = Now(unixMs: 1_795_601_700_000, utcOffsetS: 0)
    let studio: Studio
    private let folder = Pottery.Folder()
    private var secrets: [Value] = []

    init(_ place: [String: String]) throws {
        try FileManager.default.createDirectory(at: folder.url, withIntermediateDirectories: true)
        studio = try Studio.open(path: folder.url.appendingPathComponent("studio.laydown").path, now: now)
        try choose(place)
    }

    private func save(_ kind: EditorKind, _ values: [String: String]) throws {
        let values = values.map { Value(key: $0.key, text: $0.value) }
        _ = try studio.saveRecord(now: now, entry: EditorEntry(kind: kind, id: "", subject: "", values: values))
    }

    func choose(_ place: [String: String]) throws {
        try save(.syncLocation, place)
        secrets = place.filter { ["password", "secret"].contains($0.key) }.map { Value(key: $0.key, text: $0.value) }
    }

    func call(_ name: String) throws {
        try save(.preference, ["phone": name])
    }

    /// The names of the two that it knows of, its own among them.
    func names() throws -> [String] {
        let titles = try studio.devices(now: now).devices.map(\.title).joined()
        return ["Phone at the kiln", "Tablet by the sink"].filter { titles.contains($0) }
    }

    func sync(check: Bool = false, stop: Stop = Stop()) throws -> String {
        return try studio.syncNow(
            now: now, secrets: secrets, metered: false, check: check, folder: nil, client: SessionHttpClient.shared,
            listener: Nobody(),
            stop: stop)
    }
}

private final class Nobody: ProgressListener {
    func progress(progress: SyncProgress) {}
}

/// Does what waits for a network on a thread of its own, as the app does.
private func onThread<Value: Sendable>(_ work: @escaping @Sendable () throws -> Value) -> Task<Value, any Error> {
    Task {
        try await withCheckedThrowingContinuation { done in
            Thread { done.resume(with: Result(catching: work)) }.start()
        }
    }
}
