import Foundation

/// What a scene has written down of itself, as JSON.
enum Saved {
    /// Nil where nothing was written, or by a version that wrote it otherwise: then one begins anew.
    static func read<Value: Decodable>(_ type: Value.Type, from data: Data?) -> Value? {
        data.flatMap { try? JSONDecoder().decode(type, from: $0) }
    }

    /// Nil for what cannot be written, which texts and places can.
    static func write(_ value: some Encodable) -> Data? {
        try? JSONEncoder().encode(value)
    }
}
