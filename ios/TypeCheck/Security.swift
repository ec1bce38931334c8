// Not Security: see SwiftUI.swift beside this file. Core Foundation's types are those that they can be taken for.

import Foundation

private func notSecurity() -> Never { fatalError("declarations to check types against") }

public typealias CFString = String
public typealias CFDictionary = NSDictionary
public typealias CFTypeRef = AnyObject
public typealias OSStatus = Int32

public var kSecClass: CFString { notSecurity() }
public var kSecClassGenericPassword: CFString { notSecurity() }
public var kSecAttrService: CFString { notSecurity() }
public var kSecAttrAccount: CFString { notSecurity() }
public var kSecAttrAccessible: CFString { notSecurity() }
public var kSecAttrAccessibleAfterFirstUnlockThisDeviceOnly: CFString { notSecurity() }
public var kSecValueData: CFString { notSecurity() }
public var kSecMatchLimit: CFString { notSecurity() }
public var kSecMatchLimitAll: CFString { notSecurity() }
public var kSecReturnAttributes: CFString { notSecurity() }
public var kSecReturnData: CFString { notSecurity() }
public var errSecSuccess: OSStatus { notSecurity() }
public var errSecItemNotFound: OSStatus { notSecurity() }

// swift-format-ignore: AlwaysUseLowerCamelCase
public func SecItemCopyMatching(_ query: CFDictionary, _ result: UnsafeMutablePointer<CFTypeRef?>?) -> OSStatus {
    notSecurity()
}
// swift-format-ignore: AlwaysUseLowerCamelCase
public func SecItemAdd(_ attributes: CFDictionary, _ result: UnsafeMutablePointer<CFTypeRef?>?) -> OSStatus {
    notSecurity()
}
// swift-format-ignore: AlwaysUseLowerCamelCase
public func SecItemDelete(_ query: CFDictionary) -> OSStatus { notSecurity() }
