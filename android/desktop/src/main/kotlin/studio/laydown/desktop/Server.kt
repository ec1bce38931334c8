package studio.laydown.desktop

import com.sun.net.httpserver.HttpExchange
import com.sun.net.httpserver.HttpServer
import java.io.IOException
import java.net.InetAddress
import java.net.InetSocketAddress
import java.util.concurrent.Executors

/** What the page asked for makes no sense, or not now; the message says why. */
internal class Refused(message: String) : Exception(message)

/**
 * Serves the page, the pictures and the state on the loopback address, and passes on what is done on the page. Answers only this
 * machine's own browser on this very page: another site's script, or a name rebound to this address, is refused.
 *
 * @param port the port to listen on; 0 for any that is free
 * @param act does lines of input (see [Desktop]) on the phone's thread; throws [Refused] if one makes no sense
 * @param file answers the app's request for a picture or another file with this name and these bytes
 * @param fromCard what lies on the phone's memory card under a name; null if nothing does
 */
internal class Server(
    port: Int,
    private val frames: Frames,
    private val act: (List<String>) -> Unit,
    private val file: (String, ByteArray) -> Unit,
    private val fromCard: (String) -> ByteArray?,
) {
    private val http = HttpServer.create(InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0)

    /** Where the page is. */
    val address = "http://127.0.0.1:${http.address.port}"

    private val hosts = setOf("127.0.0.1:${http.address.port}", "localhost:${http.address.port}")

    init {
        http.executor = Executors.newCachedThreadPool { Thread(it, "desk-http").apply { isDaemon = true } }
        http.createContext("/") { exchange -> exchange.use(::answer) }
        http.start()
    }

    fun stop() = http.stop(0)

    private fun answer(exchange: HttpExchange) {
        if (!trusted(exchange)) return exchange.send(403, TEXT, "not from here".toByteArray())
        val path = exchange.requestURI.path
        when (exchange.requestMethod) {
            "GET" -> get(exchange, path)
            "POST" -> post(exchange, path)
            else -> exchange.send(405, TEXT, "GET or POST".toByteArray())
        }
    }

    private fun trusted(exchange: HttpExchange): Boolean {
        val host = exchange.requestHeaders.getFirst("Host")
        val origin = exchange.requestHeaders.getFirst("Origin")
        val ownOrigin = hosts.any { origin == "http://$it" }
        return host in hosts && (ownOrigin || (origin == null && exchange.requestMethod == "GET"))
    }

    private fun get(exchange: HttpExchange, path: String) {
        val after = exchange.requestURI.query?.toIntOrNull() ?: 0
        when (path) {
            "/frame" -> {
                val frame = frames.frameAfter(after, PATIENCE_MS) ?: return exchange.send(204)
                exchange.responseHeaders.set("X-Number", frame.number.toString())
                exchange.send(200, frame.type, frame.bytes)
            }
            "/state" -> {
                val state = frames.stateAfter(after, PATIENCE_MS) ?: return exchange.send(204)
                exchange.responseHeaders.set("X-Number", state.number.toString())
                exchange.send(200, "application/json; charset=utf-8", state.json.toByteArray())
            }
            "/card" -> {
                val bytes = fromCard(exchange.requestURI.query.orEmpty()) ?: return exchange.send(404, TEXT, "no such file".toByteArray())
                exchange.responseHeaders.set("Content-Disposition", "attachment")
                exchange.send(200, "application/octet-stream", bytes)
            }
            else -> {
                val (file, type) = PAGE[path] ?: return exchange.send(404, TEXT, "no such page".toByteArray())
                exchange.responseHeaders.set("Content-Security-Policy", "default-src 'self'; img-src 'self' data:; frame-ancestors 'none'")
                exchange.send(200, type, checkNotNull(javaClass.getResourceAsStream("/page/$file")).use { it.readBytes() })
            }
        }
    }

    private fun post(exchange: HttpExchange, path: String) {
        val body = exchange.requestBody.readNBytes(LARGEST + 1)
        if (body.size > LARGEST) return exchange.send(413, TEXT, "too large".toByteArray())
        try {
            when (path) {
                "/do" -> act(body.decodeToString().lines().filter { it.isNotEmpty() })
                "/file" -> file(exchange.requestURI.query.orEmpty(), body)
                else -> return exchange.send(404, TEXT, "no such page".toByteArray())
            }
            exchange.send(204)
        } catch (refused: Refused) {
            exchange.send(400, TEXT, refused.message.orEmpty().toByteArray())
        } catch (problem: Exception) {
            problem.printStackTrace()
            exchange.send(500, TEXT, problem.toString().toByteArray())
        }
    }

    private fun HttpExchange.send(status: Int, type: String? = null, body: ByteArray = ByteArray(0)) {
        type?.let { responseHeaders.set("Content-Type", it) }
        responseHeaders.set("Cache-Control", "no-store")
        responseHeaders.set("X-Content-Type-Options", "nosniff")
        try {
            sendResponseHeaders(status, if (body.isEmpty()) -1 else body.size.toLong())
            responseBody.use { it.write(body) }
        } catch (_: IOException) {
            // The browser has closed or reloaded the page, as it may: there is nobody left to answer.
        }
    }

    private companion object {
        const val PATIENCE_MS = 10_000L
        const val LARGEST = 40 * 1024 * 1024
        const val TEXT = "text/plain; charset=utf-8"
        val PAGE = mapOf(
            "/" to ("index.html" to "text/html; charset=utf-8"),
            "/page.css" to ("page.css" to "text/css; charset=utf-8"),
            "/page.js" to ("page.js" to "text/javascript; charset=utf-8"),
            "/icon.svg" to ("icon.svg" to "image/svg+xml"),
        )
    }
}

private inline fun HttpExchange.use(block: (HttpExchange) -> Unit) = try {
    block(this)
} finally {
    close()
}
