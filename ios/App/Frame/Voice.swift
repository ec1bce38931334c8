import AVFoundation
import UIKit

/// The phone's own voice.
@MainActor
final class Voice {
    private let voice = {
        let voice = AVSpeechSynthesizer()
        // The system lowers the music that plays in the workshop, and raises it again.
        voice.usesApplicationAudioSession = false
        return voice
    }()

    /// Says words aloud; what is still being said is about what stood there before.
    func say(_ words: String) {
        // Two voices at once cannot be understood.
        if UIAccessibility.isVoiceOverRunning {
            return UIAccessibility.post(notification: .announcement, argument: words)
        }
        voice.stopSpeaking(at: .immediate)
        let utterance = AVSpeechUtterance(string: words)
        // The words are English, whatever the phone's language. Without an English voice the phone's own must do.
        utterance.voice = AVSpeechSynthesisVoice(language: "en-GB")
        voice.speak(utterance)
    }
}
