import LaydownCore

/// The life of one piece: its coats, its firings, its photographs.
@MainActor
public final class PieceScreen {
    /// All that it shows; nil until the studio has answered.
    public var view: PieceView? { latest.view }
    /// The piece's id.
    public let id: String

    private let frame: AppModel
    private let latest = Latest<PieceView>()

    /// - Parameters:
    ///   - frame: The house around the screen.
    ///   - id: The piece's id.
    public init(frame: AppModel, id: String) {
        self.frame = frame
        self.id = id
    }

    /// The photographs taken after one firing.
    public struct PhotosOfFiring: Sendable {
        /// The firing, or when they were taken where they belong to none.
        public let caption: String
        /// The photographs, the oldest first.
        public let photos: [PhotoView]
    }

    /// The photographs of each firing, in the order in which the first of each was taken.
    public var photosByFiring: [PhotosOfFiring] {
        var captions: [String] = []
        for photo in view?.photos ?? [] where !captions.contains(photo.caption) { captions.append(photo.caption) }
        return captions.map { caption in
            PhotosOfFiring(caption: caption, photos: (view?.photos ?? []).filter { $0.caption == caption })
        }
    }

    /// Reads the piece.
    public func refresh() async {
        let id = id
        await frame.show(latest) { try $0.piece(now: $1, id: id) }
    }

    /// Takes a photograph off.
    @discardableResult
    public func takeOff(_ photo: PhotoView) -> Task<Void, Never> {
        Task {
            if await frame.save({ try $0.removePhoto(now: $1, id: photo.id) }, refused: frame.fail) { await refresh() }
        }
    }
}
