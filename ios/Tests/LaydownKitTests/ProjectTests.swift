import Foundation
import Testing

/// The Xcode project and what it takes along, as far as they can be read without Xcode.
@Suite struct ProjectTests {
    private let root = URL(fileURLWithPath: #filePath).deletingLastPathComponent().deletingLastPathComponent()
        .deletingLastPathComponent()

    private func read(_ path: String) throws -> [String: Any] {
        let bytes = try Data(contentsOf: root.appendingPathComponent(path))
        let list = try PropertyListSerialization.propertyList(from: bytes, format: nil)
        return try #require(list as? [String: Any])
    }

    @Test func everyObjectOfTheProjectIsThereAndUsed() throws {
        let project = try read("Project/Laydown.xcodeproj/project.pbxproj")
        let objects = try #require(project["objects"] as? [String: [String: Any]])
        var named: Set<String> = [try #require(project["rootObject"] as? String)]
        func note(_ value: Any) {
            switch value {
            case let text as String: if text.hasPrefix("1A00000000") { named.insert(text) }
            case let list as [Any]: list.forEach(note)
            case let table as [String: Any]: table.values.forEach(note)
            default: break
            }
        }
        objects.values.forEach(note)
        #expect(named == Set(objects.keys))
        for folder in objects.values where folder["isa"] as? String == "PBXFileSystemSynchronizedRootGroup" {
            let path = try #require(folder["path"] as? String)
            #expect(FileManager.default.fileExists(atPath: root.appendingPathComponent("Project/\(path)").path))
        }
    }

    @Test func theCameraAndTheNetworkAreAskedForWithAReason() throws {
        let info = try read("Project/Info.plist")
        for key in ["NSCameraUsageDescription", "NSLocalNetworkUsageDescription"] {
            #expect((info[key] as? String)?.isEmpty == false, "\(key)")
        }
        // Plain http only to a server of the studio's own network; the core refuses it anywhere else.
        #expect(info["NSAppTransportSecurity"] as? [String: Bool] == ["NSAllowsLocalNetworking": true])
    }

    @Test func theSystemKnowsTheTaskThatBackUpsAreMadeBy() throws {
        let info = try read("Project/Info.plist")
        let source = try String(
            contentsOf: root.appendingPathComponent("App/Setup/BackupTime.swift"), encoding: .utf8)
        let identifier = try #require(source.firstMatch(of: #/identifier = "([^"]+)"/#)).output.1
        #expect(info["BGTaskSchedulerPermittedIdentifiers"] as? [String] == [String(identifier)])
        #expect(info["UIBackgroundModes"] as? [String] == ["processing"])
    }

    @Test func nothingIsTrackedAndNothingCollected() throws {
        let privacy = try read("App/Resources/PrivacyInfo.xcprivacy")
        #expect(privacy["NSPrivacyTracking"] as? Bool == false)
        #expect((privacy["NSPrivacyCollectedDataTypes"] as? [Any])?.isEmpty == true)
    }
}
