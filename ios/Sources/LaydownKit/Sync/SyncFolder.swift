import Foundation
import LaydownCore

/// The folder the sync location, as the core asks for it, for one meeting.
final class SyncFolder: Folder {
    private let root: URL
    private let folders: any Folders

    /// - Parameters:
    ///   - root: Where it lies, for as long as the sync takes.
    ///   - folders: The way to read and write in it.
    init(_ root: URL, _ folders: any Folders) {
        self.root = root
        self.folders = folders
    }

    func get(path: String) throws -> Data? {
        try inFolder { try folders.read(root.appendingPathComponent(path)) { try Data(contentsOf: $0) } }
    }

    func put(path: String, bytes: Data) throws {
        do {
            // Else a folder would be made where a card was pulled out.
            guard isThere else { throw FolderError.Gone }
            let file = root.appendingPathComponent(path)
            try FileManager.default.createDirectory(
                at: file.deletingLastPathComponent(), withIntermediateDirectories: true)
            try folders.write(file) { try bytes.write(to: $0, options: .atomic) }
        } catch {
            throw FolderError(error)
        }
    }

    func remove(path: String) throws -> Bool {
        _ = try inFolder { try folders.delete(root.appendingPathComponent(path)) }
        return true
    }

    func list() throws -> [FolderEntry] {
        let top = "devices"
        return try inFolder { try files(in: root.appendingPathComponent(top, isDirectory: true), called: top) } ?? []
    }

    private func files(in folder: URL, called path: String) throws -> [FolderEntry] {
        let children = try folders.read(folder) {
            try FileManager.default.contentsOfDirectory(at: $0, includingPropertiesForKeys: [.isDirectoryKey])
        }
        return try children.flatMap { child in
            guard let name = SyncFolder.name(of: child) else { return [FolderEntry]() }
            let path = "\(path)/\(name)"
            if try child.resourceValues(forKeys: [.isDirectoryKey]).isDirectory == true {
                return try files(in: child, called: path)
            }
            return [FolderEntry(path: path, size: try folders.size(of: folder.appendingPathComponent(name)))]
        }
    }

    /// What a file is called. A file that has not been fetched yet may be stood for by a hidden one named after it; anything
    /// else that is hidden is nobody's: nil.
    private static func name(of child: URL) -> String? {
        let name = child.lastPathComponent
        guard name.hasPrefix(".") else { return name }
        return name.wholeMatch(of: #/\.(.+)\.icloud/#).map { String($0.output.1) }
    }

    private var isThere: Bool {
        var isFolder = ObjCBool(false)
        return FileManager.default.fileExists(atPath: root.path, isDirectory: &isFolder) && isFolder.boolValue
    }

    /// What is looked for in the folder; nil where it is not there, which is no failure as long as the folder itself is.
    private func inFolder<ActivityResult>(_ look: () throws -> ActivityResult) throws -> ActivityResult? {
        do {
            return try look()
        } catch {
            let problem = FolderError(error)
            guard problem == .Gone, isThere else { throw problem }
            return nil
        }
    }
}

/// A folder that could not be reached: says so to whoever asks for anything in it.
final class ShutFolder: Folder {
    private let problem: FolderError

    init(_ problem: FolderError) {
        self.problem = problem
    }

    func get(path: String) throws -> Data? { throw problem }
    func put(path: String, bytes: Data) throws { throw problem }
    func remove(path: String) throws -> Bool { throw problem }
    func list() throws -> [FolderEntry] { throw problem }
}
