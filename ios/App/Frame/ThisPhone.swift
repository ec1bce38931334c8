import Dispatch
import LaydownKit
import Network

extension Phone {
    /// The phone that the app runs on.
    static var thisOne: Phone {
        let network = NetworkWatch()
        return Phone(secrets: Keychain(), folders: BookmarkedFolders()) { network.isMetered }
    }
}

/// What the system says of the network that the phone is on. It may be asked from anywhere.
private final class NetworkWatch: @unchecked Sendable {
    private let monitor = NWPathMonitor()

    init() {
        // Until it is started it knows of no network.
        monitor.start(queue: DispatchQueue(label: "network"))
    }

    /// Whether every byte costs: a mobile network, another phone's hotspot, or a network that the person has asked the system to
    /// spare.
    var isMetered: Bool {
        let path = monitor.currentPath
        return path.isExpensive || path.isConstrained
    }
}
