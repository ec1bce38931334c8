package studio.laydown

import org.json.JSONObject
import org.junit.AfterClass
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.core.EditorEntry
import studio.laydown.core.EditorKind
import studio.laydown.core.HttpCall
import studio.laydown.core.HttpClient
import studio.laydown.core.HttpRequest
import studio.laydown.core.Now
import studio.laydown.core.ProgressListener
import studio.laydown.core.Stop
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import studio.laydown.core.SyncProgress
import studio.laydown.core.Value
import studio.laydown.sync.SocketHttpClient
import java.io.File
import java.net.InetAddress
import java.net.InetSocketAddress
import java.net.Proxy
import java.net.ProxySelector
import java.net.ServerSocket
import java.net.Socket
import java.net.SocketAddress
import java.net.URI
import java.security.KeyStore
import java.security.cert.CertificateFactory
import java.time.Instant
import java.util.concurrent.Callable
import java.util.concurrent.Executors
import java.util.concurrent.atomic.AtomicInteger
import java.util.concurrent.atomic.AtomicReference
import javax.net.ssl.SSLContext
import javax.net.ssl.SSLSocketFactory
import javax.net.ssl.TrustManagerFactory
import kotlin.concurrent.thread
import kotlin.io.path.createTempDirectory
import kotlin.system.measureTimeMillis

/** Rounds by the phone's own network, with real servers and with one that means no good. See tests/remote/serve.py. */
@RunWith(RobolectricTestRunner::class)
class HttpClientTest {
    @Test
    fun twoStudiosAreInStepThroughWebDavByTheCertificateOfTheirOwnAuthority() = inStep(webdav("${servers["good"]}/step/"), trusting())

    @Test
    fun twoStudiosAreInStepThroughWebDavInTheirOwnNetworkWithoutEncryption() = inStep(webdav("${servers["plain"]}/step/"), SocketHttpClient { true })

    @Test
    fun twoStudiosAreInStepThroughS3() = inStep(
        mapOf("kind" to "s3", "address" to servers.getValue("s3"), "region" to "us-east-1", "bucket" to "pots", "prefix" to "studio", "key" to "potter", "secret" to PASSWORD),
        SocketHttpClient { true },
    )

    /** [place] is a new one; [client] may be used again and again. */
    private fun inStep(place: Map<String, String>, client: SocketHttpClient) = client.use {
        Phone(place).use { sink ->
            Phone(place).use { kiln ->
                sink.call("Tablet by the sink")
                kiln.call("Phone at the kiln")
                assertEquals("Sent: 1 entry.", sink.sync(client))
                assertEquals("Received: 1 entry. Sent: 1 entry.", kiln.sync(client))
                assertEquals("Received: 1 entry.", sink.sync(client))
                for (phone in listOf(sink, kiln)) assertEquals("Nothing was new on either side.", phone.sync(client, check = true))
                assertEquals(listOf("Phone at the kiln", "Tablet by the sink"), sink.names())
                assertEquals(sink.names(), kiln.names())
            }
        }
    }

    /** What goes wrong, what is said of it, and by which client it is met. All at once, for each tries again a few times. */
    @Test
    fun whateverTheNetworkDoesIsSaidAndNothingIsLost() {
        val nobody = ServerSocket(0, 1, InetAddress.getLoopbackAddress()).use { "http://127.0.0.1:${it.localPort}/" }
        val hostile = servers["hostile"]
        val online = SocketHttpClient { true }
        val trusting = trusting()
        val cases = listOf(
            Triple("https://storage.invalid/", SocketHttpClient { false }, "This phone has no network."),
            Triple("https://storage.invalid/", online, "No server has this name."),
            Triple(nobody, online, "No answer."),
            Triple("${servers["good"]}/", online, "This phone does not trust the server's certificate"),
            Triple("${servers["expired"]}/", trusting, "The server's certificate is out of date, or this phone's clock is wrong."),
            Triple("${servers["other_host"]}/", trusting, "The certificate belongs to another server"),
            Triple("$hostile/locked/", online, "The server does not accept the name and password"),
            Triple("$hostile/longer/", online, "The sync location did not respond as expected."),
            Triple("$hostile/shorter/", online, "The connection broke."),
            Triple("$hostile/endless/", online, "There are more files there than laydown reads."),
            Triple("$hostile/dropped/", online, "The connection broke."),
            Triple("$hostile/garbage/", online, "The connection broke."),
            Triple("$hostile/portal/", online, "The sync location did not respond as expected."),
            Triple("$hostile/circle/", online, "The server sends laydown to another server"),
            Triple("$hostile/away/", online, "The server sends laydown to another server"),
        )
        val threads = Executors.newFixedThreadPool(cases.size)
        val met = cases.map { (address, client, sentence) ->
            threads.submit(Callable {
                Phone(webdav(address)).use { phone ->
                    phone.call("Tablet by the sink")
                    val refused = runCatching { phone.sync(client) }.exceptionOrNull()
                    val said = (refused as? StudioException)?.sentence
                    val noted = phone.studio.devices(phone.now).sync.notes.joinToString { it.text }
                    // Nothing is lost: it is all there, and goes once there is a good server.
                    phone.choose(webdav("${servers["good"]}/after/"))
                    val after = phone.sync(trusting)
                    val isWell = said.orEmpty().startsWith(sentence) && sentence in noted && "Sent: 1 entry." in after
                    "$address: $said; $noted; $after".takeUnless { isWell }
                }
            })
        }.mapNotNull { it.get() }
        threads.shutdown()
        assertEquals("", met.joinToString("\n"))
        assertFalse("somebody called another host", "/witness" in File(folder, "asked").readText())
    }

    @Test
    fun stopIsObeyedWhileAServerSaysNothingOrHardlyAnything() {
        for (trick in listOf("silent", "slow")) {
            Phone(webdav("${servers["hostile"]}/$trick/")).use { phone ->
                val stop = Stop()
                val refused = AtomicReference<Throwable>()
                val round = thread { refused.set(runCatching { phone.sync(SocketHttpClient { true }, stop = stop) }.exceptionOrNull()) }
                awaitThat { "/$trick/" in File(folder, "asked").readText() }
                val took = measureTimeMillis {
                    stop.stop()
                    round.join(30_000)
                }
                assertTrue("$trick: $took ms", took < 3_000)
                assertEquals("Stopped.", (refused.get() as StudioException).sentence.take(8))
            }
        }
    }

    @Test
    fun aNetworkThatHangsIsNotWaitedFor() {
        val hangs = object : HttpClient {
            override fun begin(request: HttpRequest): HttpCall {
                while (true) Thread.sleep(1_000)
            }
        }
        Phone(webdav("https://storage.example/")).use { phone ->
            val stop = Stop()
            val round = thread { runCatching { phone.sync(hangs, stop = stop) } }
            Thread.sleep(300)
            stop.stop()
            round.join(3_000)
            assertFalse(round.isAlive)
        }
    }

    @Test
    fun aRoundGoesThroughTheProxyOfTheNetworkThatSeesNothingOfIt() {
        val calls = AtomicInteger()
        val proxy = ServerSocket(0, 50, InetAddress.getLoopbackAddress())
        thread(isDaemon = true) { runCatching { while (true) proxy.accept().let { thread(isDaemon = true) { carry(it, calls) } } } }
        val before = ProxySelector.getDefault()
        ProxySelector.setDefault(object : ProxySelector() {
            override fun select(uri: URI) = listOf(Proxy(Proxy.Type.HTTP, InetSocketAddress("127.0.0.1", proxy.localPort)))
            override fun connectFailed(uri: URI, address: SocketAddress, e: java.io.IOException) = Unit
        })
        try {
            trusting().use { client -> Phone(webdav("${servers["good"]}/proxy/")).use { it.call("Tablet by the sink"); assertTrue("Sent: 1 entry." in it.sync(client)) } }
            assertTrue("nobody called the proxy", calls.get() > 0)
        } finally {
            ProxySelector.setDefault(before)
            proxy.close()
        }
    }

    /** What a proxy does with a CONNECT. */
    private fun carry(client: Socket, calls: AtomicInteger) {
        val input = client.getInputStream()
        val head = StringBuilder()
        while (!head.endsWith("\r\n\r\n")) head.append(input.read().toChar())
        val (host, port) = Regex("""CONNECT ([^:]+):(\d+) HTTP/1\.1""").find(head)!!.destructured
        assertFalse("authorization" in head.toString().lowercase())
        calls.incrementAndGet()
        val server = Socket(host, port.toInt())
        client.getOutputStream().write("HTTP/1.1 200 Through\r\n\r\n".toByteArray())
        thread(isDaemon = true) { runCatching { server.getInputStream().copyTo(client.getOutputStream()) }; client.close() }
        runCatching { input.copyTo(server.getOutputStream()) }
        server.close()
    }

    @Test
    fun plainHttpIsRefusedOnTheInternet() {
        Phone(emptyMap()).use { phone ->
            val entry = editor(EditorKind.SYNC_LOCATION, webdav("http://files.example.org/dav"))
            val refused = runCatching { phone.studio.saveRecord(phone.now, entry) }.exceptionOrNull() as StudioException.Refused
            assertEquals("address" to "Over http:// anyone on the internet could read your password and files. Use https:// for this server.", refused.field to refused.sentence)
            val near = phone.studio.editor(phone.now, editor(EditorKind.SYNC_LOCATION, webdav("http://192.168.1.20/dav")))
            assertNull(near.fields.firstOrNull { it.refusal.isNotEmpty() })
            assertTrue(near.results.any { it.text.startsWith("With http:// anyone on this network can read") })
        }
    }

    // ---- the phones ----

    private class Phone(place: Map<String, String>) : AutoCloseable {
        val now = Now(Instant.parse("2026-11-25T09:00:00Z").toEpochMilli(), 0)
        val studio = Studio.open(File(createTempDirectory("phone").toFile(), "studio.laydown").path, now)
        private var secrets = emptyList<Value>()

        init {
            if (place.isNotEmpty()) choose(place)
        }

        fun choose(place: Map<String, String>) {
            studio.saveRecord(now, editor(EditorKind.SYNC_LOCATION, place))
            secrets = place.filterKeys { it == "password" || it == "secret" }.map { (key, text) -> Value(key, text) }
        }

        fun call(name: String) = studio.saveRecord(now, editor(EditorKind.PREFERENCE, mapOf("phone" to name)))

        /** The names of the two that it knows of, its own among them. */
        fun names(): List<String> {
            val titles = studio.devices(now).devices.joinToString { it.title }
            return listOf("Phone at the kiln", "Tablet by the sink").filter { it in titles }
        }

        fun sync(client: HttpClient, check: Boolean = false, stop: Stop = Stop()): String {
            val nobody = object : ProgressListener {
                override fun progress(progress: SyncProgress) = Unit
            }
            return studio.syncNow(now, secrets, false, check, null, client, nobody, stop)
        }

        override fun close() = studio.close()
    }

    companion object {
        private const val PASSWORD = "slip and sieve"
        private val folder = createTempDirectory("servers").toFile()
        private val process: Process by lazy {
            val repo = generateSequence(File("").absoluteFile) { it.parentFile }.first { File(it, "tests/remote/serve.py").exists() }
            val python = File(repo, "target/remote/venv/bin/python")
            check(python.exists()) { "The servers are not installed. Type: make remote" }
            ProcessBuilder(python.path, File(repo, "tests/remote/serve.py").path, "all", folder.path).redirectError(File(folder, "errors")).start().also {
                check(it.inputStream.bufferedReader().readLine() == "ready") { File(folder, "errors").readText() }
            }
        }

        /** Where each of them is. */
        private val servers: Map<String, String> by lazy {
            process
            JSONObject(File(folder, "servers.json").readText()).let { all -> all.keys().asSequence().associateWith(all::getString) }
        }

        @AfterClass
        @JvmStatic
        fun end() {
            process.destroyForcibly()
            process.waitFor()
            folder.deleteRecursively()
        }

        private fun webdav(address: String) =
            mapOf("kind" to "webdav", "address" to address, "user" to "potter", "password" to PASSWORD)

        private fun editor(kind: EditorKind, values: Map<String, String>) =
            EditorEntry(kind, "", "", values.map { (key, text) -> Value(key, text) })

        /** A phone on which the authority's certificate was installed. */
        private fun trusting(): SocketHttpClient {
            servers
            val store = KeyStore.getInstance(KeyStore.getDefaultType()).apply { load(null) }
            File(folder, "authority.pem").inputStream().use { store.setCertificateEntry("studio", CertificateFactory.getInstance("X.509").generateCertificate(it)) }
            val trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm()).apply { init(store) }
            val context: SSLContext = SSLContext.getInstance("TLS").apply { init(null, trust.trustManagers, null) }
            return SocketHttpClient(context.socketFactory as SSLSocketFactory) { true }
        }

        private fun awaitThat(holds: () -> Boolean) {
            val until = System.nanoTime() + 30_000_000_000
            while (!holds()) {
                check(System.nanoTime() < until) { "it does not come about" }
                Thread.sleep(20)
            }
        }
    }
}
