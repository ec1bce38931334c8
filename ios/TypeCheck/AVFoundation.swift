// Not AVFoundation: see SwiftUI.swift beside this file.

import Foundation

private func notAVFoundation() -> Never { fatalError("declarations to check types against") }

public enum AVSpeechBoundary: Sendable { case immediate, word }
public final class AVSpeechSynthesisVoice { public init?(language: String?) { notAVFoundation() } }
public final class AVSpeechUtterance {
    public init(string: String) { notAVFoundation() }
    public var voice: AVSpeechSynthesisVoice?
}
public final class AVSpeechSynthesizer {
    public init() { notAVFoundation() }
    public var usesApplicationAudioSession: Bool {
        get { notAVFoundation() }
        set { notAVFoundation() }
    }
    @discardableResult public func stopSpeaking(at: AVSpeechBoundary) -> Bool { notAVFoundation() }
    public func speak(_ utterance: AVSpeechUtterance) { notAVFoundation() }
}
public struct AVMediaType: Sendable { public static let video = AVMediaType() }
public enum AVAuthorizationStatus: Sendable { case notDetermined, restricted, denied, authorized }
public final class AVCaptureDevice {
    public static func authorizationStatus(for type: AVMediaType) -> AVAuthorizationStatus { notAVFoundation() }
}
