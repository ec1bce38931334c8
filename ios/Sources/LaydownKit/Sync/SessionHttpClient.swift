import Foundation
import LaydownCore

#if canImport(FoundationNetworking)
    import FoundationNetworking
#endif

/// The phone's network as the core asks for it: by URLSession, with the platform's certificates and proxies. There
/// is one as long as the app runs: a session that ends holds others up, and its open connections serve the next round.
final class SessionHttpClient: HttpClient, @unchecked Sendable {
    static let shared = SessionHttpClient()

    private let session: URLSession
    private let calls = RunningCalls()

    private init() {
        let configuration = URLSessionConfiguration.ephemeral
        configuration.httpCookieStorage = nil
        configuration.httpShouldSetCookies = false
        configuration.urlCache = nil
        configuration.urlCredentialStorage = nil
        configuration.requestCachePolicy = .reloadIgnoringLocalCacheData
        configuration.httpMaximumConnectionsPerHost = 8
        session = URLSession(configuration: configuration, delegate: calls, delegateQueue: nil)
    }

    func begin(request: HttpRequest) throws -> any HttpCall {
        guard let url = URL(string: request.url) else { throw NetworkError.Broken(details: "no address") }
        var asked = URLRequest(url: url)
        asked.httpMethod = request.method
        for header in request.headers { asked.setValue(header.value, forHTTPHeaderField: header.name) }
        // Whole, for a stream could not be sent again over another connection.
        if !request.body.isEmpty { asked.httpBody = request.body }
        // Of its silence, before and during the answer: it has no other for reaching the server.
        asked.timeoutInterval = Double(request.silenceMs) / 1000
        let call = SessionCall(session.dataTask(with: asked))
        calls.add(call)
        return call
    }
}

/// A request and its answer. The session tells it what came, and the core's thread waits for that.
private final class SessionCall: HttpCall, @unchecked Sendable {
    /// So much may wait here until the core takes it, before the session is told to pause.
    private static let mostWaiting = 256 << 10

    let task: URLSessionDataTask
    private let changed = NSCondition()
    // All of it under the lock.
    private var head: HttpAnswer?
    private var waiting = Data()
    /// How much of that the core has taken.
    private var taken = 0
    private var isPaused = false
    /// How it ended; nil while it goes on.
    private var end: Result<Void, NetworkError>?

    init(_ task: URLSessionDataTask) {
        self.task = task
    }

    func answer() throws -> HttpAnswer {
        task.resume()
        return try wait {
            if let head { return head }
            try end?.get()
            return end == nil ? nil : HttpAnswer(status: 0, headers: [])
        }
    }

    func read(most: UInt32) throws -> Data {
        let part: Data = try wait {
            if taken == waiting.count {
                try end?.get()
                return end == nil ? nil : Data()
            }
            let part = Data(waiting.dropFirst(taken).prefix(Int(most)))
            taken += part.count
            // Seldom, for what is left is copied then.
            if taken > waiting.count / 2 {
                waiting = Data(waiting.dropFirst(taken))
                taken = 0
            }
            return part
        }
        changed.lock()
        let goesOn = isPaused && waiting.count - taken < Self.mostWaiting / 2
        if goesOn { isPaused = false }
        changed.unlock()
        if goesOn { task.resume() }
        return part
    }

    func cancel() {
        ended(.failure(.Stopped))
        // There a task that is cancelled while it ends takes the process with it ("a task that is not in the registry"):
        // it runs out by itself, after its silence at the latest, and nobody listens to it.
        #if !canImport(FoundationNetworking)
            task.cancel()
        #endif
    }

    private func wait<Value>(for value: () throws -> Value?) rethrows -> Value {
        changed.lock()
        defer { changed.unlock() }
        while true {
            if let value = try value() { return value }
            changed.wait()
        }
    }

    // ---- told by the session ----

    func answered(_ response: URLResponse) {
        guard let response = response as? HTTPURLResponse else { return }
        let headers = response.allHeaderFields.map { HttpHeader(name: "\($0.key)", value: "\($0.value)") }
        changed.lock()
        head = HttpAnswer(status: UInt16(clamping: response.statusCode), headers: headers)
        changed.broadcast()
        changed.unlock()
    }

    func received(_ data: Data) {
        changed.lock()
        // What comes after the end is nobody's.
        if end == nil { waiting.append(data) }
        #if canImport(FoundationNetworking)
            // A task that is paused there holds up its whole session. The core ends a call that brings too much.
            let isFull = false
        #else
            let isFull = waiting.count - taken > Self.mostWaiting && !isPaused && end == nil
        #endif
        if isFull { isPaused = true }
        changed.broadcast()
        changed.unlock()
        if isFull { task.suspend() }
    }

    /// The first word counts.
    func ended(_ how: Result<Void, NetworkError>) {
        changed.lock()
        end = end ?? how
        changed.broadcast()
        changed.unlock()
    }
}

/// Hands what the session tells to the calls that it is about.
private final class RunningCalls: NSObject, URLSessionDataDelegate, @unchecked Sendable {
    private let lock = NSLock()
    /// By their tasks' numbers; under the lock.
    private var calls: [Int: SessionCall] = [:]

    func add(_ call: SessionCall) {
        lock.withLock { calls[call.task.taskIdentifier] = call }
    }

    private func call(_ task: URLSessionTask) -> SessionCall? {
        lock.withLock { calls[task.taskIdentifier] }
    }

    func urlSession(
        _ session: URLSession, dataTask: URLSessionDataTask, didReceive response: URLResponse,
        completionHandler: @escaping @Sendable (URLSession.ResponseDisposition) -> Void
    ) {
        call(dataTask)?.answered(response)
        completionHandler(.allow)
    }

    func urlSession(_ session: URLSession, dataTask: URLSessionDataTask, didReceive data: Data) {
        call(dataTask)?.received(data)
    }

    /// The core follows redirects itself, and only where they lead to the same server.
    func urlSession(
        _ session: URLSession, task: URLSessionTask, willPerformHTTPRedirection response: HTTPURLResponse,
        newRequest request: URLRequest, completionHandler: @escaping @Sendable (URLRequest?) -> Void
    ) {
        completionHandler(nil)
    }

    #if canImport(FoundationNetworking)
        /// Asked for a password after the head of an answer has come, it would wait for one for ever. The core has sent what it has,
        /// and the status says the rest.
        func urlSession(
            _ session: URLSession, task: URLSessionTask, didReceive challenge: URLAuthenticationChallenge,
            completionHandler: @escaping @Sendable (URLSession.AuthChallengeDisposition, URLCredential?) -> Void
        ) {
            call(task)?.ended(.success(()))
            completionHandler(.cancelAuthenticationChallenge, nil)
        }
    #endif

    func urlSession(_ session: URLSession, task: URLSessionTask, didCompleteWithError error: (any Error)?) {
        let call = lock.withLock { calls.removeValue(forKey: task.taskIdentifier) }
        call?.ended(error.map { .failure(NetworkError($0)) } ?? .success(()))
    }
}

extension NetworkError {
    /// What a failure of URLSession is called.
    init(_ problem: any Error) {
        guard let problem = problem as? URLError else {
            self = .Broken(details: "an error of the session")
            return
        }
        self =
            switch problem.code {
            case .notConnectedToInternet, .dataNotAllowed, .internationalRoamingOff: NetworkError.NoNetwork
            case .cannotFindHost, .dnsLookupFailed: NetworkError.UnknownHost
            case .cannotConnectToHost: NetworkError.Refused
            case .timedOut: NetworkError.TimedOut
            case .serverCertificateHasBadDate, .serverCertificateNotYetValid: NetworkError.CertificateDate
            case .serverCertificateUntrusted, .serverCertificateHasUnknownRoot:
                // errSSLHostNameMismatch, as Apple's systems tell it (from memory); others say no more than that they refuse.
                problem.userInfo["_kCFStreamErrorCodeKey"] as? Int == -9843
                    ? NetworkError.CertificateHost : NetworkError.Certificate
            case .cancelled: NetworkError.Stopped
            default:
                NetworkError(ofCurl: problem.localizedDescription)
                    ?? .Broken(details: "URLSession \(problem.code.rawValue)")
            }
    }

    /// Where there is no Apple, certificates are refused by curl, which says why in its text alone.
    private init?(ofCurl text: String) {
        guard text.hasPrefix("SSL") else { return nil }
        self =
            if text.contains("expired") || text.contains("not yet valid") {
                NetworkError.CertificateDate
            } else if text.contains("subject name") {
                NetworkError.CertificateHost
            } else if text.contains("certificate") {
                NetworkError.Certificate
            } else {
                .Broken(details: "TLS")
            }
    }
}
