import AVFoundation

/// The phone's own voice.
@MainActor
final class Voice {
    private let voice = AVSpeechSynthesizer()

    /// Says words aloud; what is still being said is about what stood there before.
    func say(_ words: String) {
        voice.stopSpeaking(at: .immediate)
        voice.speak(AVSpeechUtterance(string: words))
    }
}
