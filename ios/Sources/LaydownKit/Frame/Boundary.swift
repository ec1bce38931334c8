import Foundation
import LaydownCore

extension Now {
    /// This moment by the device's clock and time zone.
    public static func onThisDevice() -> Now {
        let date = Date()
        return Now(
            unixMs: Int64((date.timeIntervalSince1970 * 1000).rounded(.down)),
            utcOffsetS: Int32(TimeZone.current.secondsFromGMT(for: date)))
    }
}

extension StudioError {
    /// What is wrong and what to do, to be shown as it is.
    public var sentence: String {
        // No default: a new kind of error must be given its sentence here before this compiles.
        switch self {
        case .Refused(_, let sentence), .Missing(let sentence), .Busy(let sentence), .Full(let sentence),
            .Newer(let sentence), .NotAStudio(let sentence), .Damaged(let sentence), .Unreadable(let sentence),
            .Elsewhere(let sentence):
            return sentence
        }
    }

    /// Whether it is said where the potter stands, who then goes on; any other failure is said over the whole screen.
    var isSaidInPlace: Bool {
        switch self {
        case .Refused, .Full, .Busy, .Elsewhere: true
        case .Missing, .Newer, .NotAStudio, .Damaged, .Unreadable: false
        }
    }
}

/// The library on this device is not the one that this shell was built with.
struct LibraryMismatch: Error {}

/// What a failure is called, in words for the potter.
func sentence(of problem: any Error) -> String {
    switch problem {
    case let problem as StudioError: problem.sentence
    case is LibraryMismatch: Words.otherBuild
    case is SecretNotSaved: Words.secretNotSaved
    default: Words.broken
    }
}
