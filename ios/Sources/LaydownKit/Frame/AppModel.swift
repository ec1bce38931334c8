import Foundation
import LaydownCore
import Observation

/// The house around the screens: the studio they ask, what was kept last, and what is said when nothing can be shown.
@MainActor @Observable
public final class AppModel {
    /// Why nothing can be shown, and what can be done about it.
    public struct Failure: Equatable, Sendable {
        /// What can be done.
        public enum WeighMode: Equatable, Sendable {
            /// The same may be tried again.
            case tryAgain
            /// The same may be tried again, or what can be read of the damaged file saved.
            case saveReadable
            /// What is gone is not asked for again.
            case back
            /// Nothing but installing laydown again.
            case none
        }

        /// What is wrong and what to do.
        public let sentence: String
        /// What the button does.
        public let way: WeighMode
    }

    /// What this phone does beside showing; nil until the studio is open.
    public private(set) var preferences: Preferences?
    /// Why nothing can be shown; nil when all is well.
    public private(set) var failure: Failure?
    /// What was kept last.
    public let offer = UndoOffer()
    /// The meeting of the studio's phones.
    public let sync: SyncRunner
    /// Makes the backups that are made by themselves.
    public let backups: BackupsByThemselves

    @ObservationIgnored let work: StudioWork
    @ObservationIgnored let transferFolder: TransferFolder
    @ObservationIgnored let phone: Phone
    @ObservationIgnored private let screens = Screens()

    /// - Parameters:
    ///   - work: The way to the studio.
    ///   - transferFolder: Where files lie on their way.
    ///   - phone: What only the phone can do.
    public init(work: StudioWork, transferFolder: TransferFolder, phone: Phone) {
        self.work = work
        self.transferFolder = transferFolder
        self.phone = phone
        sync = SyncRunner(work: work, phone: phone)
        backups = BackupsByThemselves(
            work: work, folders: phone.folders, onTheWay: transferFolder.beside(named: "backup"))
    }

    /// The app's own: the studio in `folder`.
    public convenience init(folder: StudioFolder, phone: Phone) {
        self.init(
            work: StudioWork(recover: folder.recover, open: folder.open), transferFolder: folder.transferFolder,
            phone: phone)
    }

    /// The screen that a page shows. A page that was made anew, as when the phone is turned, is given the one it showed before.
    ///
    /// - Parameters:
    ///   - name: What it shows, the same for the same.
    ///   - isOver: Whether there is nothing left to do on a screen, so that a new one is begun.
    ///   - make: Makes a new one.
    /// - Returns: The screen.
    public func screen<Screen: AnyObject>(
        _ name: String, isOver: (Screen) -> Bool = { _ in false }, make: () -> Screen
    ) -> Screen {
        screens.screen(name, isOver: isOver, make: make)
    }

    /// Opens the studio, or tries to again.
    public func open() async {
        if preferences == nil { transferFolder.sweep() }
        do {
            preferences = try await work.ask { studio, _ in try studio.preferences() }
            failure = nil
        } catch {
            fail(error)
        }
    }

    /// Saves what can be read of a damaged studio, and says how much that was.
    public func saveReadable() async {
        do {
            failure = Failure(sentence: try await work.recover(), way: .back)
        } catch {
            fail(error)
        }
    }

    /// Undoes what was kept last, or does it again.
    @discardableResult
    public func toggleUndo() -> Task<Void, Never> {
        guard offer.beginTurn() else { return Task {} }
        return Task {
            do {
                try await offer.toggleUndo(on: work)
            } catch {
                if let sentence = refusal(of: error) { offer.refuse(sentence) }
            }
        }
    }

    /// Says over the whole screen why nothing can be shown. Nothing is deleted.
    func fail(_ problem: any Error) {
        let way: Failure.WeighMode =
            switch problem {
            case StudioError.Missing: .back
            case StudioError.Damaged: .saveReadable
            case is LibraryMismatch: .none
            default: .tryAgain
            }
        offer.clear()
        failure = Failure(sentence: sentence(of: problem), way: way)
    }

    /// What is to be said in place of a problem; nil if it was said over the whole screen.
    func refusal(of problem: any Error) -> String? {
        switch problem {
        case let problem as StudioError where problem.isSaidInPlace: return problem.sentence
        case is SecretNotSaved: return sentence(of: problem)
        default:
            fail(problem)
            return nil
        }
    }

    /// Asks for what a screen shows.
    @discardableResult
    func show<View>(_ latest: Latest<View>, _ question: @escaping StudioWork.Call<View>) async -> View? {
        await latest.ask(work, question, refused: fail)
    }

    /// Gives a command that keeps something, and offers to take it back. `refused` is given why nothing was kept.
    ///
    /// - Returns: Whether it was kept.
    func save(_ command: @escaping StudioWork.Call<CommandResult>, refused: (any Error) -> Void) async -> Bool {
        await saved(command, refused: refused) != nil
    }

    /// As `save`.
    ///
    /// - Returns: What was kept; nil where nothing was.
    func saved(
        _ command: @escaping StudioWork.Call<CommandResult>, refused: (any Error) -> Void
    ) async -> CommandResult? {
        do {
            let saved = try await work.ask(command)
            offer.tell(saved)
            return saved
        } catch {
            refused(error)
            return nil
        }
    }

    /// Remembers something without a word.
    func tell(_ command: @escaping StudioWork.Call<Void>) async {
        do {
            try await work.ask(command)
        } catch {
            fail(error)
        }
    }

    /// Whether a picture that came is one; writes it whole to a file, gives that to `call`, and takes it away again.
    ///
    /// - Throws: `StudioError`, or `NoPicture` with the sentence.
    func handOver<ActivityResult: Sendable>(
        picture: Data, to call: @escaping @Sendable (Studio, Now, String) throws -> ActivityResult
    ) async throws -> ActivityResult {
        guard !picture.isEmpty else { throw NoPicture(sentence: Words.emptyPicture) }
        let transferFolder = transferFolder
        return try await work.ask { studio, now in
            guard let file = try? transferFolder.write(picture: picture) else {
                throw NoPicture(sentence: Words.pictureNotCopied)
            }
            // The picture as it was taken may say where; the copy that is shown does not.
            defer { transferFolder.delete(file) }
            return try call(studio, now, file.path)
        }
    }

    /// Writes a file that another app can take, beside the weighing, since it takes long. `refused` is given the sentence
    /// when it could not be written.
    ///
    /// - Returns: The file; nil if it could not be written.
    func fileToShare(
        titled title: String, ending: String, refused: (String) -> Void,
        write: @escaping @Sendable (TransferFolder, URL, Studio, Now) throws -> Void
    ) async -> URL? {
        // A title may hold what no file's name can.
        let name = title.components(separatedBy: CharacterSet(charactersIn: "/\\:")).joined(separator: "-")
        let transferFolder = transferFolder
        do {
            return try await work.inBackground { studio, now in
                transferFolder.clear()
                guard let file = try? transferFolder.place(named: "\(name).\(ending)") else {
                    throw NoPicture(sentence: Words.pictureNotCopied)
                }
                try write(transferFolder, file, studio, now)
                return file
            }
        } catch let problem as NoPicture {
            refused(problem.sentence)
        } catch {
            refused(refusal(of: error) ?? "")
        }
        return nil
    }
}

/// A picture that did not get as far as the studio.
struct NoPicture: Error {
    let sentence: String
}
