package studio.laydown

import android.app.Activity
import android.content.Intent
import com.sun.net.httpserver.HttpExchange
import com.sun.net.httpserver.HttpServer
import studio.laydown.desktop.Card
import studio.laydown.desktop.Phone
import java.io.File
import java.net.InetAddress
import java.net.InetSocketAddress
import java.util.concurrent.Executors
import kotlin.io.path.createTempDirectory

/** Another app's empty folder, called "Shelf", and where it lies. */
fun shelf(): Pair<Card, File> {
    val folder = File(createTempDirectory("elsewhere").toFile(), "Shelf").apply { mkdir() }
    return Card.insert(folder, folder.name) to folder
}

/** Chooses the [shelf] on the page of the phones, sealed if there is a [passphrase]. */
fun Phone.meetThere(passphrase: String?) {
    touch("Choose a location")
    chooseShelf()
    if (passphrase != null) {
        touch("Encrypt with a passphrase")
        fillField("Passphrase", passphrase)
    }
    savePlace()
}

/** Chooses the [shelf] on the sheet, as its own app would be asked for it. */
fun Phone.chooseShelf() {
    touch("Choose the folder")
    await("the request") { request?.intent?.action == Intent.ACTION_OPEN_DOCUMENT_TREE }
    answer(Activity.RESULT_OK, Intent().setData(Card.tree))
    await("the folder") { scrollTo("Shelf") }
}

/** Chooses a WebDAV server at [address] on the page of the phones. */
fun Phone.meetAt(address: String) {
    touch("Choose a location")
    touch("A WebDAV server")
    fillField("Address", address)
    fillField("Name on the server", "sink")
    fillField("Password", Loopback.PASSWORD)
    savePlace()
}

/** Saves the sheet of the place, which nothing undoes. */
fun Phone.savePlace() {
    touch("Save")
    until("Saved.")
    check(!shows("Undo")) { "there is nothing to take back" }
}

/** A server on this machine alone that gives every request to [answer]. */
class Loopback(answer: (HttpExchange) -> Unit) : AutoCloseable {
    private val threads = Executors.newCachedThreadPool { Thread(it).apply { isDaemon = true } }
    private val server = HttpServer.create(InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0).apply {
        executor = threads
        createContext("/") { exchange ->
            try {
                answer(exchange)
            } finally {
                exchange.close()
            }
        }
        start()
    }

    /** Of a folder there. */
    val address: String get() = "http://127.0.0.1:${server.address.port}/dav"

    override fun close() {
        server.stop(0)
        threads.shutdownNow()
    }

    companion object {
        const val PASSWORD = "only for the sink"
    }
}
