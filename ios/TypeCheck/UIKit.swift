// Not UIKit: see SwiftUI.swift beside this file.

@_exported import SwiftUI

private func notUIKit() -> Never { fatalError("declarations to check types against") }

public typealias UIImage = UIImageStandIn
public typealias UIColor = UIColorStandIn

extension UIImageStandIn {
    public convenience init?(data: Data) { notUIKit() }
    public func jpegData(compressionQuality: CGFloat) -> Data? { notUIKit() }
}
public enum UIUserInterfaceStyle: Sendable { case unspecified, light, dark }
public final class UITraitCollection { public var userInterfaceStyle: UIUserInterfaceStyle { notUIKit() } }
extension UIColorStandIn {
    public convenience init(dynamicProvider: @escaping @Sendable (UITraitCollection) -> UIColorStandIn) { notUIKit() }
    public convenience init(red: CGFloat, green: CGFloat, blue: CGFloat, alpha: CGFloat) { notUIKit() }
}

@MainActor public enum UIAccessibility {
    public struct Notification: Sendable { public static let announcement = Notification() }
    public static var isVoiceOverRunning: Bool { notUIKit() }
    public static func post(notification: Notification, argument: Any?) { notUIKit() }
}
@MainActor open class UIViewController: NSObject {}
@MainActor public final class UIApplication {
    public static var shared: UIApplication { notUIKit() }
    public var isIdleTimerDisabled: Bool {
        get { notUIKit() }
        set { notUIKit() }
    }
}
@MainActor public final class UIActivityViewController: UIViewController {
    public struct ActivityType: Hashable, Sendable {}
    public var completionWithItemsHandler: ((ActivityType?, Bool, [Any]?, (any Error)?) -> Void)?
    public init(activityItems: [Any], applicationActivities: [Never]?) { notUIKit() }
}
@MainActor public protocol UIImagePickerControllerDelegate: AnyObject {
    func imagePickerController(
        _ picker: UIImagePickerController, didFinishPickingMediaWithInfo info: [UIImagePickerController.InfoKey: Any])
    func imagePickerControllerDidCancel(_ picker: UIImagePickerController)
}
@MainActor public protocol UINavigationControllerDelegate: AnyObject {}
@MainActor public final class UIImagePickerController: UIViewController {
    public struct InfoKey: Hashable, Sendable { public static let originalImage = InfoKey() }
    public enum SourceType: Sendable { case camera, photoLibrary }
    public static func isSourceTypeAvailable(_ type: SourceType) -> Bool { notUIKit() }
    public var sourceType: SourceType {
        get { notUIKit() }
        set { notUIKit() }
    }
    public weak var delegate: (any UIImagePickerControllerDelegate & UINavigationControllerDelegate)?
}
@MainActor public final class UIPrintInfo {
    public static func printInfo() -> UIPrintInfo { notUIKit() }
    public var jobName: String {
        get { notUIKit() }
        set { notUIKit() }
    }
}
@MainActor public final class UIPrintInteractionController {
    public static var shared: UIPrintInteractionController { notUIKit() }
    public var printInfo: UIPrintInfo? {
        get { notUIKit() }
        set { notUIKit() }
    }
    public var printingItem: Any? {
        get { notUIKit() }
        set { notUIKit() }
    }
    @discardableResult
    public func present(
        animated: Bool, completionHandler: ((UIPrintInteractionController, Bool, (any Error)?) -> Void)? = nil
    ) -> Bool { notUIKit() }
}
