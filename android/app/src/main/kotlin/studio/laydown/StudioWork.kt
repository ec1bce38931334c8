package studio.laydown

import android.os.Handler
import android.os.Looper
import studio.laydown.core.Now
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import java.time.Clock
import java.util.concurrent.Executors
import kotlin.concurrent.thread

/**
 * The one thread on which the studio is opened, asked and told, one call after the other. Answers come back on the main thread, in
 * the order of the questions.
 */
class StudioWork(private val open: (Now) -> Studio, private val recover: (Now) -> String, private val clock: () -> Clock) : AutoCloseable {
    private val only = Executors.newSingleThreadExecutor { Thread(it, "studio").apply { isDaemon = true } }
    private val main = Handler(Looper.getMainLooper())
    private var studio: Studio? = null

    /** Makes [call] on the studio's thread and hands [answer] what came of it. */
    fun <T> ask(call: Studio.(Now) -> T, answer: (Result<T>) -> Unit) {
        val now = now()
        only.execute {
            val result = runCatching { opened(now).call(now) }
            main.post { answer(result) }
        }
    }

    /** As [ask], but on a thread of its own once the studio is open: for what takes long, while weighing goes on. */
    fun <T> inBackground(call: Studio.(Now) -> T, answer: (Result<T>) -> Unit) = ask({ this }) { opened ->
        val now = now()
        thread(name = "aside", isDaemon = true) {
            val result = opened.mapCatching { it.call(now) }
            main.post { answer(result) }
        }
    }

    /** Saves what can be read of a damaged studio; the next question opens the new one. */
    fun recover(answer: (Result<String>) -> Unit) {
        val now = now()
        only.execute {
            studio?.close()
            studio = null
            val result = runCatching { recover(now) }
            main.post { answer(result) }
        }
    }

    /** Does [work] that needs no studio on a thread of its own: a file may lie far away. */
    fun <T> io(work: () -> T, answer: (Result<T>) -> Unit) {
        thread(name = "elsewhere", isDaemon = true) {
            val result = runCatching(work)
            main.post { answer(result) }
        }
    }

    override fun close() {
        only.execute { studio?.close() }
        only.shutdown()
    }

    private fun opened(now: Now) = studio ?: open(now).also { studio = it }

    /** The one place where the time comes from. */
    private fun now(): Now {
        val clock = clock()
        val instant = clock.instant()
        return Now(instant.toEpochMilli(), clock.zone.rules.getOffset(instant).totalSeconds)
    }
}

/** The sentence that each failure of the studio carries. */
val StudioException.sentence: String
    get() = when (this) {
        is StudioException.Refused -> sentence
        is StudioException.Missing -> sentence
        is StudioException.Busy -> sentence
        is StudioException.Full -> sentence
        is StudioException.Newer -> sentence
        is StudioException.NotAStudio -> sentence
        is StudioException.Damaged -> sentence
        is StudioException.Unreadable -> sentence
        is StudioException.Elsewhere -> sentence
    }
