package studio.laydown.sync

import android.content.Context
import android.net.ConnectivityManager
import android.net.Uri
import android.os.Handler
import android.os.Looper
import studio.laydown.StudioWork
import studio.laydown.core.SyncProgress
import studio.laydown.core.Stop
import studio.laydown.core.StudioException
import studio.laydown.core.ProgressListener
import java.util.concurrent.atomic.AtomicReference

/**
 * The meeting under way, if one is. It belongs to the app and not to a page, so that it goes on while the phone is turned or another
 * page is looked at. All of it but [agree][begin] itself happens on the main thread.
 */
class SyncRunner(private val context: Context, private val work: StudioWork, private val secrets: Secrets) {
    private val main = Handler(Looper.getMainLooper())
    private var stop: Stop? = null

    /** Whether one is under way. */
    val running: Boolean get() = stop != null

    /** Whether it was told to stop and has not ended yet. */
    var stopping = false
        private set

    /** How far it is; null before it knows. */
    var progressed: SyncProgress? = null
        private set

    /** What broke within the app, until somebody says it. What the place or the studio refused is told by the view of the phones. */
    private var broken: Throwable? = null

    /** Told when it is further, and when it has ended. */
    var watcher: (() -> Unit)? = null

    /** Begins one, unless one is under way. [folder] is what the sheet's field was given, [check] has all that lies there read again. */
    fun begin(folder: String, check: Boolean) {
        if (running) return
        val mine = Stop()
        stop = mine
        stopping = false
        val foreignFolder = folder.ifEmpty { null }?.let { TreeFolder(context.contentResolver, Uri.parse(it)) }
        val networks = context.getSystemService(ConnectivityManager::class.java)
        val metered = networks.isActiveNetworkMetered
        val client = SocketHttpClient { networks.activeNetwork != null }
        work.inBackground({ now -> client.use { syncNow(now, secrets.all(), metered, check, foreignFolder, it, ProgressRelay(), mine) } }) { result ->
            broken = result.exceptionOrNull().takeUnless { it is StudioException }
            stop = null
            progressed = null
            mine.close()
            watcher?.invoke()
        }
        watcher?.invoke()
    }

    /** Has it end soon. */
    fun stop() {
        stop?.stop()
        stopping = running
        watcher?.invoke()
    }

    /** What broke, told once. */
    fun takeBroken(): Throwable? = broken.also { broken = null }

    /** Of the news that come faster than they can be shown only the last counts. */
    private inner class ProgressRelay : ProgressListener {
        private val latest = AtomicReference<SyncProgress>()

        override fun progress(progress: SyncProgress) {
            if (latest.getAndSet(progress) == null) main.post(::tell)
        }

        private fun tell() {
            val news = latest.getAndSet(null)
            if (!running) return
            this@SyncRunner.progressed = news
            watcher?.invoke()
        }
    }
}
