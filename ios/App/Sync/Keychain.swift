import Foundation
import LaydownKit
import Security

/// Secrets in the system's keychain: on this phone alone, neither in its backups nor on the person's other devices, and readable
/// from the first unlocking after a start on.
struct Keychain: Secrets {
    /// What all of them are filed under.
    private let service = "studio.laydown.sync-place"

    func all() -> [String: String] {
        let query = item([
            kSecMatchLimit as String: kSecMatchLimitAll, kSecReturnAttributes as String: true,
            kSecReturnData as String: true,
        ])
        var found: CFTypeRef?
        guard SecItemCopyMatching(query, &found) == errSecSuccess, let items = found as? [[String: Any]] else {
            return [:]
        }
        let pairs = items.compactMap { item -> (String, String)? in
            guard let key = item[kSecAttrAccount as String] as? String,
                let secret = item[kSecValueData as String] as? Data
            else { return nil }
            return (key, String(decoding: secret, as: UTF8.self))
        }
        return Dictionary(pairs) { first, _ in first }
    }

    func save(_ secret: String, under key: String) throws {
        try forget(key)
        let saved = item([
            kSecAttrAccount as String: key, kSecValueData as String: Data(secret.utf8),
            kSecAttrAccessible as String: kSecAttrAccessibleAfterFirstUnlockThisDeviceOnly,
        ])
        guard SecItemAdd(saved, nil) == errSecSuccess else { throw SecretNotSaved() }
    }

    func forget(_ key: String) throws {
        let status = SecItemDelete(item([kSecAttrAccount as String: key]))
        guard status == errSecSuccess || status == errSecItemNotFound else { throw SecretNotSaved() }
    }

    private func item(_ more: [String: Any]) -> CFDictionary {
        let whose: [String: Any] = [kSecClass as String: kSecClassGenericPassword, kSecAttrService as String: service]
        return NSDictionary(dictionary: whose.merging(more) { $1 }) as CFDictionary
    }
}
