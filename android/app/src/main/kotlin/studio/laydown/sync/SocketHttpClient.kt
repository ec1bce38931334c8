package studio.laydown.sync

import studio.laydown.core.HttpAnswer
import studio.laydown.core.HttpCall
import studio.laydown.core.HttpClient
import studio.laydown.core.HttpHeader
import studio.laydown.core.HttpRequest
import studio.laydown.core.NetworkException
import java.io.BufferedInputStream
import java.io.IOException
import java.net.ConnectException
import java.net.InetAddress
import java.net.InetSocketAddress
import java.net.NoRouteToHostException
import java.net.Proxy
import java.net.ProxySelector
import java.net.Socket
import java.net.SocketTimeoutException
import java.net.URI
import java.net.URL
import java.net.UnknownHostException
import java.security.cert.CertPathBuilderException
import java.security.cert.CertPathValidatorException
import java.security.cert.CertificateException
import java.security.cert.CertificateExpiredException
import java.security.cert.CertificateNotYetValidException
import java.util.concurrent.ConcurrentLinkedDeque
import javax.net.ssl.SSLException
import javax.net.ssl.SSLPeerUnverifiedException
import javax.net.ssl.SSLSocket
import javax.net.ssl.SSLSocketFactory

/**
 * The phone's network as the core asks for it: HTTP/1.1 (RFC 9112) over the platform's own sockets, certificates and proxies.
 *
 * Not by `HttpURLConnection`: WebDAV asks by PROPFIND and MKCOL, which it refuses. On a JVM its `method` field can be set behind its
 * back, but on Android an https connection hides the one that counts in `com.android.okhttp`, where apps may not look since
 * Android 9. Plain http goes to the phone's own network alone, and so past every proxy.
 *
 * @param tls What says which certificates are trusted; tests bring their own.
 * @param isOnline Whether the phone is on a network at all.
 */
class SocketHttpClient(private val tls: SSLSocketFactory = SSLSocketFactory.getDefault() as SSLSocketFactory, private val isOnline: () -> Boolean) :
    HttpClient, AutoCloseable {
    /** Connections that are open and wait for another request: with TLS, making one takes longer than most answers. */
    private val idle = ConcurrentLinkedDeque<HttpConnection>()

    override fun begin(request: HttpRequest): HttpCall = SocketCall(request)

    override fun close() = generateSequence { idle.poll() }.forEach(HttpConnection::close)

    private inner class SocketCall(private val request: HttpRequest) : HttpCall {
        private val url = URL(request.url)
        private val isSecure = url.protocol == "https"
        private val port = if (url.port < 0) url.defaultPort else url.port
        private val origin = "${url.protocol}://${url.host}:$port"

        /** What [cancel] closes. */
        @Volatile private var socket: Socket? = null

        @Volatile private var isCancelled = false
        private var connection: HttpConnection? = null
        private var body: Body = Body.None

        override fun answer(): HttpAnswer = named {
            val reused = takeIdle()
            val answer = if (reused != null) exchangeAgain(reused) else exchange(connect())
            body = bodyOf(answer)
            answer
        }

        override fun read(most: UInt): ByteArray = named {
            val connection = connection ?: return@named ByteArray(0)
            val (part, rest) = connection.read(body, most.toInt())
            body = rest
            if (part.isEmpty()) release(connection)
            part
        }

        override fun cancel() {
            isCancelled = true
            // The bare socket: closing one with TLS may wait for what is being written.
            socket?.close()
        }

        // ---- connections ----

        private fun takeIdle(): HttpConnection? {
            val waiting = idle.firstOrNull { it.origin == origin && idle.remove(it) } ?: return null
            if (waiting.isUsable()) return waiting.also { hold(it.bare) }
            waiting.close()
            return null
        }

        private fun release(connection: HttpConnection) {
            this.connection = null
            if (connection.stays && !isCancelled) idle.add(connection) else connection.close()
        }

        private fun hold(bare: Socket) {
            socket = bare
            if (isCancelled) bare.close()
        }

        private fun connect(): HttpConnection {
            val host = url.host.removeSurrounding("[", "]")
            val proxy = if (isSecure) proxy() else Proxy.NO_PROXY
            val bare = when (proxy.type()) {
                Proxy.Type.SOCKS -> Socket(proxy).also { open(it, InetSocketAddress.createUnresolved(host, port)) }
                Proxy.Type.HTTP -> tunnel(proxy.address() as InetSocketAddress)
                else -> reach(InetAddress.getAllByName(host).map { InetSocketAddress(it, port) })
            }
            if (!isSecure) return HttpConnection(origin, bare, bare)
            val secure = tls.createSocket(bare, host, port, true) as SSLSocket
            secure.sslParameters = secure.sslParameters.apply { endpointIdentificationAlgorithm = "HTTPS" }
            secure.startHandshake()
            return HttpConnection(origin, bare, secure)
        }

        private fun proxy(): Proxy = ProxySelector.getDefault()?.select(URI("https", null, url.host, port, "/", null, null))?.firstOrNull() ?: Proxy.NO_PROXY

        /** The first of a host's addresses that answers. */
        private fun reach(addresses: List<InetSocketAddress>): Socket {
            var problem: IOException? = null
            for (address in addresses) {
                try {
                    return Socket().also { open(it, address) }
                } catch (e: IOException) {
                    if (isCancelled) throw e
                    problem = e
                }
            }
            throw problem ?: UnknownHostException()
        }

        private fun open(bare: Socket, address: InetSocketAddress) {
            hold(bare)
            bare.tcpNoDelay = true
            bare.soTimeout = request.silenceMs.toInt()
            try {
                bare.connect(address, request.connectMs.toInt())
            } catch (e: IOException) {
                bare.close()
                throw e
            }
        }

        /** A way through an HTTP proxy that sees nothing but the host (RFC 9110, CONNECT). */
        private fun tunnel(proxy: InetSocketAddress): Socket {
            val address = if (proxy.isUnresolved) InetSocketAddress(proxy.hostString, proxy.port) else proxy
            val bare = Socket().also { open(it, address) }
            val way = HttpConnection(origin, bare, bare)
            way.write("CONNECT ${url.host}:$port HTTP/1.1\r\nHost: ${url.host}:$port\r\n\r\n".toByteArray(), ByteArray(0))
            val answer = way.readHead()
            // Whatever came after the head would be lost in the proxy's buffer, and a server says nothing before it is asked.
            if (answer.status.toInt() !in 200..299 || way.hasMore()) throw ConnectException("the proxy refuses")
            return bare
        }

        // ---- the request ----

        private fun exchange(connection: HttpConnection): HttpAnswer {
            this.connection = connection
            val lines = mutableListOf("${request.method} ${url.file.ifEmpty { "/" }} HTTP/1.1", "Host: ${hostHeader()}", "Content-Length: ${request.body.size}")
            request.headers.mapTo(lines) { "${it.name}: ${it.value}" }
            // A server may refuse what it has not read to its end: its answer says more than a broken pipe.
            val unsent = runCatching { connection.write((lines.joinToString("\r\n") + "\r\n\r\n").toByteArray(), request.body) }.exceptionOrNull()
            val answer = try {
                connection.readHead()
            } catch (e: IOException) {
                throw unsent ?: e
            }
            if (unsent != null) connection.stays = false
            return answer
        }

        /** Over a connection that the server may have given up meanwhile: then once more over a new one, for all that is asked can be asked twice. */
        private fun exchangeAgain(reused: HttpConnection): HttpAnswer = try {
            exchange(reused)
        } catch (e: IOException) {
            reused.close()
            if (isCancelled || reused.answered || e is SocketTimeoutException) throw e
            exchange(connect())
        }

        private fun hostHeader() = if (url.port < 0) url.host else "${url.host}:${url.port}"

        private fun bodyOf(answer: HttpAnswer): Body {
            val lengths = answer.all("Content-Length").distinct()
            val codings = answer.all("Transfer-Encoding")
            return when {
                request.method == "HEAD" || answer.status.toInt() in listOf(204, 304) -> Body.None
                codings.isEmpty() && lengths.size == 1 -> Body.Exactly(lengths.single().toLongOrNull()?.takeIf { it >= 0 } ?: throw Garbled("a length that is none"))
                codings.isEmpty() && lengths.isEmpty() -> Body.UntilClosed.also { connection?.stays = false }
                lengths.isEmpty() && codings.single().equals("chunked", ignoreCase = true) -> Body.Chunk(0)
                else -> throw Garbled("two lengths")
            }
        }

        // ---- what went wrong ----

        private fun <T> named(work: () -> T): T = try {
            work()
        } catch (e: IOException) {
            connection?.close()
            throw if (isCancelled) NetworkException.Stopped() else problem(e)
        }

        private fun problem(e: IOException): NetworkException {
            val causes = generateSequence<Throwable>(e) { it.cause }.toList()
            return when {
                causes.any { it is CertificateExpiredException || it is CertificateNotYetValidException } -> NetworkException.CertificateDate()
                causes.any { it is CertPathValidatorException || it is CertPathBuilderException } -> NetworkException.Certificate()
                causes.any { it is CertificateException || it is SSLPeerUnverifiedException } -> NetworkException.CertificateHost()
                causes.any { it is SocketTimeoutException } -> NetworkException.TimedOut()
                e is SSLException -> NetworkException.Broken("${e.javaClass.simpleName} of TLS")
                !isOnline() -> NetworkException.NoNetwork()
                e is UnknownHostException -> NetworkException.UnknownHost()
                e is ConnectException || e is NoRouteToHostException -> NetworkException.Refused()
                e is Garbled -> NetworkException.Broken(e.what)
                else -> NetworkException.Broken(e.javaClass.simpleName)
            }
        }
    }
}

/** What came is no HTTP. */
private class Garbled(val what: String) : IOException(what)

/** What is left of an answer's body. */
private sealed interface Body {
    data object None : Body
    data class Exactly(val left: Long) : Body

    /** So much is left of the chunk that is being read; 0 before each. */
    data class Chunk(val left: Long) : Body
    data object UntilClosed : Body
}

private fun HttpAnswer.all(name: String) = headers.filter { it.name.equals(name, ignoreCase = true) }.map { it.value }

/** One connection to a server, for one request at a time. */
private class HttpConnection(val origin: String, val bare: Socket, socket: Socket) {
    private val input = BufferedInputStream(socket.getInputStream())
    private val output = socket.getOutputStream()
    private var idleSince = System.nanoTime()

    /** Whether it can serve another request. */
    var stays = true

    /** Whether anything came of the answer that is waited for. */
    var answered = false
        private set

    fun close() = bare.close()

    fun hasMore() = input.available() > 0

    /** Whether another request may go over it: nothing has come unasked, and the server has hardly had the time to close it. */
    fun isUsable() = !bare.isClosed && !hasMore() && System.nanoTime() - idleSince < LONGEST_IDLE_NS

    fun write(head: ByteArray, body: ByteArray) {
        answered = false
        output.write(head)
        output.write(body)
        output.flush()
    }

    /** The head of the answer; those that only say that one is to come are passed over. */
    fun readHead(): HttpAnswer {
        var left = MOST_HEAD
        fun line() = readLine(left).also { left -= it.length + 2 }
        while (true) {
            val (version, status) = STATUS_LINE.matchEntire(line())?.destructured ?: throw Garbled("no status line")
            val headers = generateSequence { line().ifEmpty { null } }.map { line ->
                val (name, value) = HEADER.matchEntire(line)?.destructured ?: throw Garbled("no header")
                HttpHeader(name, value)
            }.toList()
            val answer = HttpAnswer(status.toUShort(), headers)
            if (status.toInt() < 200) continue
            stays = stays && version == "1" && answer.all("Connection").none { it.contains("close", ignoreCase = true) }
            return answer
        }
    }

    /** At most so many bytes of [body], and what is left of it then; none at its end. */
    fun read(body: Body, most: Int): Pair<ByteArray, Body> = when (body) {
        Body.None -> end()
        Body.UntilClosed -> some(most).let { if (it.isEmpty()) end() else it to body }
        is Body.Exactly -> if (body.left == 0L) end() else within(body.left, most).let { it to Body.Exactly(body.left - it.size) }
        is Body.Chunk -> {
            val size = if (body.left > 0) body.left else readLine(MOST_CHUNK_LINE).substringBefore(';').trim().toLongOrNull(16) ?: -1L
            if (size < 0) throw Garbled("a chunk without a length")
            if (size == 0L) {
                var left = MOST_HEAD
                while (true) left -= readLine(left).ifEmpty { break }.length + 2
                end()
            } else {
                val part = within(size, most)
                if (part.size.toLong() == size && readLine(2).isNotEmpty()) throw Garbled("a chunk that does not end")
                part to Body.Chunk(size - part.size)
            }
        }
    }

    private fun end(): Pair<ByteArray, Body> {
        idleSince = System.nanoTime()
        return ByteArray(0) to Body.None
    }

    private fun within(left: Long, most: Int) = some(minOf(left, most.toLong()).toInt()).ifEmpty { throw Garbled("the answer ended too soon") }

    private fun some(most: Int): ByteArray {
        val bytes = ByteArray(most)
        val read = input.read(bytes)
        return if (read == most) bytes else bytes.copyOf(maxOf(read, 0))
    }

    /** A line without its end. */
    private fun readLine(most: Int): String {
        val line = StringBuilder()
        while (true) {
            val byte = input.read()
            if (byte < 0) throw Garbled("the answer ended too soon")
            answered = true
            if (byte == '\n'.code && line.endsWith('\r')) return line.dropLast(1).toString()
            if (line.length >= most) throw Garbled("a head that is too long")
            line.append(byte.toChar())
        }
    }

    private companion object {
        const val MOST_HEAD = 64 shl 10
        const val MOST_CHUNK_LINE = 256
        const val LONGEST_IDLE_NS = 4_000_000_000
        val STATUS_LINE = Regex("""HTTP/1\.([01]) ([1-5]\d\d)(?: .*)?""")
        val HEADER = Regex("""([!#$%&'*+\-.^_`|~0-9A-Za-z]+):[ \t]*(.*?)[ \t]*""")
    }
}

private fun ByteArray.ifEmpty(other: () -> ByteArray) = if (isEmpty()) other() else this
