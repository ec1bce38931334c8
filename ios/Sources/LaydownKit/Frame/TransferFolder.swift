import Foundation

/// The folder of what is on its way to or from another app: pictures, backups. Nothing in it is of use later, and the
/// phone's own backups leave it out.
public struct TransferFolder: Sendable {
    private let folder: URL

    /// - Parameter folder: Its own and nobody else's: whatever lies in it may be deleted. Made when something is first put
    ///   into it.
    public init(folder: URL) {
        self.folder = folder
    }

    /// Another such folder beside this one, for what must outlive a `clear` of this.
    func beside(named name: String) -> TransferFolder {
        TransferFolder(folder: folder.deletingLastPathComponent().appendingPathComponent(name, isDirectory: true))
    }

    /// Writes a picture whole into a file of its own. No two have one name, since views know a picture by its file.
    ///
    /// - Throws: When the phone is full.
    func write(picture: Data) throws -> URL {
        let file = try place(named: "piece-\(UUID().uuidString).jpg")
        try picture.write(to: file, options: .atomic)
        return file
    }

    /// A place for a file of this name; what lay there is taken away.
    ///
    /// - Throws: When the folder cannot be made or the old file not be taken away.
    public func place(named name: String) throws -> URL {
        try makeFolder(folder)
        try leaveOutOfBackups(folder)
        let file = folder.appendingPathComponent(name)
        if FileManager.default.fileExists(atPath: file.path) { try FileManager.default.removeItem(at: file) }
        return file
    }

    /// Copies what another app named into a file here. Not for the main actor: it may lie far away.
    ///
    /// - Throws: When it cannot be read, or the phone is full.
    func fetch(_ url: URL, named name: String) throws -> URL {
        let file = try place(named: name)
        #if canImport(Darwin)
            let opened = url.startAccessingSecurityScopedResource()
            defer { if opened { url.stopAccessingSecurityScopedResource() } }
        #endif
        try FileManager.default.copyItem(at: url, to: file)
        return file
    }

    /// Deletes the pictures as they were taken, which may say where, if the system ended the app in between. The copies that
    /// the core makes to be shown, and names so, may belong to a sheet that is still being filled in.
    func sweep() {
        clear { $0.hasSuffix(".upright.jpg") }
    }

    /// Deletes one file, if it is there.
    func delete(_ file: URL) {
        // What cannot be deleted now goes with the next `clear`.
        try? FileManager.default.removeItem(at: file)
    }

    /// Deletes everything but the files whose paths are in `wanted`.
    func clear(except wanted: Set<String> = []) {
        // By name: the system knows one folder under several paths.
        let names = Set(wanted.map { URL(fileURLWithPath: $0).lastPathComponent })
        clear { names.contains($0) }
    }

    private func clear(saving isWanted: (String) -> Bool) {
        let files = (try? FileManager.default.contentsOfDirectory(at: folder, includingPropertiesForKeys: nil)) ?? []
        for file in files where !isWanted(file.lastPathComponent) { delete(file) }
    }
}
