import Foundation
import LaydownCore

/// What only the phone itself can do: tests bring their own.
public struct Phone: Sendable {
    /// Where it keeps what is secret.
    let secrets: any Secrets
    /// How it reaches folders outside of the app.
    let folders: any Folders
    /// Whether every byte costs on the network that it is on.
    let isMetered: @Sendable () -> Bool

    /// - Parameters:
    ///   - secrets: Where it keeps what is secret.
    ///   - folders: How it reaches folders outside of the app.
    ///   - isMetered: Whether every byte costs on the network that it is on.
    public init(secrets: any Secrets, folders: any Folders, isMetered: @escaping @Sendable () -> Bool) {
        self.secrets = secrets
        self.folders = folders
        self.isMetered = isMetered
    }
}

/// The passwords and the passphrase of the place the sync location, by the keys of the sheet's fields. Nothing of them is
/// written down anywhere else.
public protocol Secrets: Sendable {
    /// All that are kept. One that cannot be read is asked for again, like one that was never typed.
    func all() -> [String: String]

    /// Saves a secret in the place of the one under this key.
    ///
    /// - Throws: `SecretNotSaved`.
    func save(_ secret: String, under key: String) throws

    /// Forgets the secret under this key, if there is one.
    ///
    /// - Throws: `SecretNotSaved`.
    func forget(_ key: String) throws
}

/// The phone did not take a secret, or did not let go of it.
public struct SecretNotSaved: Error {
    /// There is nothing to say of it that the potter could use.
    public init() {}
}

extension Secrets {
    /// Saves what was typed in the sheet's secret fields, where it is not empty, and forgets what is no field any more.
    func save(_ typed: [String: String], of fields: Set<String>) throws {
        for key in all().keys where !fields.contains(key) { try forget(key) }
        for (key, secret) in typed where fields.contains(key) && !secret.isEmpty { try save(secret, under: key) }
    }

    /// Forgets them all.
    func forgetAll() throws {
        for key in all().keys { try forget(key) }
    }
}

/// Folders outside of the app, on the phone, a card, or wherever another app reaches. Not for the main actor: they may lie far
/// away.
public protocol Folders: Sendable {
    /// What a folder that has just been chosen is found again by, after the app was ended too.
    ///
    /// - Throws: When it may not be used.
    func handle(of folder: URL) throws -> String

    /// Does `work` where the folder lies now, which may be used only as long as that takes.
    ///
    /// - Throws: `FolderError` where the folder cannot be reached, else what `work` throws.
    func reach<ActivityResult>(_ handle: String, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult

    /// Reads a file or a folder inside of it, once whoever keeps it has fetched it, and while nobody else writes it.
    func read<ActivityResult>(_ url: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult

    /// Writes a file inside of it while nobody else reads or writes it.
    func write<ActivityResult>(_ url: URL, _ work: (URL) throws -> ActivityResult) throws -> ActivityResult

    /// How long a file inside of it is, bytes, also where whoever keeps it has not fetched it yet.
    func size(of file: URL) throws -> UInt64

    /// Deletes a file inside of it while nobody else reads or writes it.
    func delete(_ url: URL) throws
}

extension FolderError {
    /// What a failure of the storage, or of whoever keeps the folder, is called.
    init(_ problem: any Error) {
        self =
            switch problem {
            case let problem as FolderError: problem
            case let problem as POSIXError: FolderError(code: problem.code)
            case let problem as CocoaError:
                ((problem as NSError).userInfo[NSUnderlyingErrorKey] as? POSIXError).flatMap { FolderError($0) }
                    .flatMap { $0 == .Failed ? nil : $0 } ?? FolderError(code: problem.code)
            default: .Failed
            }
    }

    private init(code: POSIXErrorCode) {
        self =
            switch code {
            case .ENOENT, .ENOTDIR, .ENODEV, .ETIMEDOUT, .ENETDOWN, .ENETUNREACH, .EHOSTUNREACH, .EHOSTDOWN: .Gone
            case .EACCES, .EPERM, .EROFS: .NotAllowed
            case .ENOSPC, .EDQUOT: .Full
            default: .Failed
            }
    }

    private init(code: CocoaError.Code) {
        self =
            switch code {
            case .fileNoSuchFile, .fileReadNoSuchFile: .Gone
            case .fileReadNoPermission, .fileWriteNoPermission, .fileWriteVolumeReadOnly: .NotAllowed
            case .fileWriteOutOfSpace: .Full
            default: .Failed
            }
    }
}
