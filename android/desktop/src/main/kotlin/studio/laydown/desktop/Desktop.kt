package studio.laydown.desktop

import android.app.Activity
import android.content.Intent
import android.graphics.Bitmap
import android.net.Uri
import android.view.KeyEvent
import android.view.View
import android.view.ViewTreeObserver
import org.json.JSONArray
import org.json.JSONObject
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import java.io.ByteArrayOutputStream
import java.io.File
import java.net.URLDecoder
import java.time.LocalTime
import java.time.format.DateTimeFormatter
import java.util.concurrent.CompletableFuture
import java.util.concurrent.CountDownLatch
import java.util.concurrent.ExecutionException
import java.util.concurrent.LinkedBlockingQueue
import java.util.concurrent.TimeUnit

/**
 * The phone on a desk: the app in real time, seen and touched through a page in a browser, until the process is told to end.
 *
 * System properties: `laydown.port` (0, the default, for any free one), and those of [PhoneApplication].
 * The page sends lines: `down X Y`, `move X Y`, `up X Y`, `wheel X Y LINES` in pixels of the screen, `type TEXT` (percent-encoded),
 * `key back|enter|delete|tab|left|right|up|down`, `night on|off`, `turn`, `font SCALE`, `restart`, `card in|out`, `full on|off`.
 * What the app asks other apps for is answered by `cancel`, by a file that the page sends, or by the phone's memory card: `place`
 * (where to write), `folder`, `take` (what the app hands on). The card is a folder beside what the app stores.
 */
@RunWith(RobolectricTestRunner::class)
class Desktop {
    private class Job(val work: () -> Unit) {
        val done = CompletableFuture<Unit>()
    }

    private val jobs = LinkedBlockingQueue<Job>()
    private val frames = Frames()
    private val ended = CountDownLatch(1)

    @Volatile
    private var ending = false

    private lateinit var phone: Phone
    private lateinit var card: Card
    private var stopped: String? = null

    // ---- pictures ----
    private var front: Bitmap? = null
    private var back: Bitmap? = null
    private var dirty = true
    private var crisp = false
    private var changedAt = 0L
    private var taken = 0
    private var minute = ""
    private var told = 0 to 0
    private val watchedRoots = mutableMapOf<View, ViewTreeObserver.OnPreDrawListener>()

    @Test
    fun run() {
        Runtime.getRuntime().addShutdownHook(Thread {
            ending = true
            ended.await(3, TimeUnit.SECONDS)
        })
        phone = Phone(clock = { LocalTime.now().format(CLOCK) })
        card = Card.insert(checkNotNull(System.getProperty(PhoneApplication.DATA)).let { File(it, "card") }.apply { mkdirs() })
        val server = Server(Integer.getInteger("laydown.port", 0), frames, ::act, ::file, ::fromCard)
        println("laydown phone: ${server.address}")
        try {
            phone.comeAlive()
            live()
        } finally {
            server.stop()
            phone.close()
            ended.countDown()
        }
    }

    private fun live() {
        var last = System.nanoTime()
        while (!ending) {
            jobs.poll(TURN_MS, TimeUnit.MILLISECONDS)?.let(::carryOut)
            val now = System.nanoTime()
            val passed = (now - last) / 1_000_000
            last += passed * 1_000_000
            if (stopped == null) guarded { if (phone.live(passed)) dirty = true }
            guarded { look(now) }
        }
    }

    private fun carryOut(job: Job) {
        dirty = true
        try {
            job.work()
            job.done.complete(Unit)
        } catch (refused: Refused) {
            job.done.completeExceptionally(refused)
        } catch (fault: Exception) {
            stop(fault)
            job.done.complete(Unit)
        }
    }

    private fun guarded(work: () -> Unit) = try {
        work()
    } catch (fault: Exception) {
        stop(fault)
    }

    /** What the app throws ends the app, as on a phone, not the desk. */
    private fun stop(fault: Exception) {
        fault.printStackTrace()
        stopped = "${fault.javaClass.simpleName}: ${fault.message}"
        phone.close()
        dirty = true
    }

    // ---- what the page shows ----

    private fun look(now: Long) {
        watchWindows()
        val time = LocalTime.now().format(CLOCK)
        if (time != minute) {
            minute = time
            dirty = true
        }
        // What is said or felt need not change the picture.
        val sensed = phone.said.size to phone.ticks
        if (sensed != told) {
            told = sensed
            dirty = true
        }
        if (!frames.watched) return
        if (dirty) takePicture(now)
        val still = now - changedAt > STILL_NS
        if (still && !crisp) front?.let { show(it, Bitmap.CompressFormat.PNG, "image/png", 100) }
    }

    private fun takePicture(now: Long) {
        dirty = false
        val size = phone.size
        val next = back?.takeIf { it.width == size.x && it.height == size.y }
            ?: Bitmap.createBitmap(size.x, size.y, Bitmap.Config.ARGB_8888).also { back?.recycle() }
        phone.paint(next)
        if (++taken % PICTURES_BETWEEN_COLLECTIONS == 0) {
            // Each picture leaves native buffers behind that only the collector frees, and it does not feel their weight.
            System.gc()
        }
        frames.tell(state())
        if (front?.sameAs(next) == true) {
            back = next
            return
        }
        back = front
        front = next
        changedAt = now
        show(next, Bitmap.CompressFormat.JPEG, "image/jpeg", 88)
    }

    /** JPEG while things move, since it is made in a sixth of the time; PNG once they rest. */
    private fun show(picture: Bitmap, format: Bitmap.CompressFormat, type: String, quality: Int) {
        val bytes = ByteArrayOutputStream(256 * 1024)
        check(picture.compress(format, quality, bytes)) { "cannot encode the picture" }
        crisp = format == Bitmap.CompressFormat.PNG
        frames.show(type, bytes.toByteArray())
    }

    /** A window that is about to draw is a reason to look again, and so is one that came or went. */
    private fun watchWindows() {
        val roots = phone.windows().map { it.root }
        if (watchedRoots.keys.retainAll(roots.toSet())) dirty = true
        for (root in roots) {
            if (root in watchedRoots) continue
            val listener = ViewTreeObserver.OnPreDrawListener {
                dirty = true
                true
            }
            root.viewTreeObserver.addOnPreDrawListener(listener)
            watchedRoots[root] = listener
            dirty = true
        }
    }

    private fun state(): String = JSONObject()
        .put("night", phone.look.night)
        .put("landscape", phone.look.landscape)
        .put("font", phone.look.fontScale.toDouble())
        .put("said", phone.said.lastOrNull() ?: JSONObject.NULL)
        .put("saidTimes", phone.said.size)
        .put("ticks", phone.ticks)
        .put("left", phone.left)
        .put("stopped", stopped ?: JSONObject.NULL)
        .put("request", phone.request?.what ?: JSONObject.NULL)
        .put("card", JSONObject().put("in", card.isIn).put("full", card.isFull).put("files", JSONArray(card.files)))
        .put("toast", phone.toast ?: JSONObject.NULL)
        .put("labels", JSONArray(phone.labels().map { label ->
            JSONObject().put("text", label.text).put("tap", label.takesTap)
                .put("x", label.bounds.centerX()).put("y", label.bounds.centerY())
        }))
        .toString()

    // ---- what is done on the page ----

    /** Called on a thread of the server; returns when the phone's thread has done it. */
    private fun onPhone(work: () -> Unit) {
        val job = Job(work)
        jobs.put(job)
        try {
            job.done.get(ANSWER_SECONDS, TimeUnit.SECONDS)
        } catch (failed: ExecutionException) {
            throw failed.cause ?: failed
        }
    }

    private fun act(lines: List<String>) = onPhone { lines.forEach(::act) }

    private fun act(line: String) {
        val words = line.split(' ')
        fun word(i: Int) = words.getOrNull(i) ?: throw Refused("\"$line\" is too short")
        fun number(i: Int) = word(i).toFloatOrNull() ?: throw Refused("\"${words[i]}\" is no number")
        val hand = phone.fingers
        when (words.first()) {
            "down" -> hand.down(number(1), number(2))
            "move" -> hand.move(number(1), number(2))
            "up" -> hand.up(number(1), number(2))
            "wheel" -> phone.roll(number(1), number(2), number(3))
            "type" -> hand.type(decoded(word(1)))
            "key" -> hand.key(KEYS[word(1)] ?: throw Refused("no key \"${words[1]}\""))
            "night" -> phone.look = phone.look.copy(night = word(1) == "on")
            "turn" -> phone.rotate()
            "font" -> phone.look = phone.look.copy(fontScale = number(1).also { if (it !in 0.8f..2f) throw Refused("$it is out of range") })
            "restart" -> reopen()
            "card" -> card.isIn = word(1) == "in"
            "full" -> card.isFull = word(1) == "on"
            "cancel" -> asked().let { phone.answer(Activity.RESULT_CANCELED) }
            "place" -> answer(card.place(asked("place").intent.getStringExtra(Intent.EXTRA_TITLE) ?: "file"))
            "folder" -> asked("folder").let { answer(Card.tree) }
            "take" -> take(asked("share"))
            else -> throw Refused("cannot \"${words.first()}\"")
        }
    }

    /** A file that the page sends, for what the app has asked for. */
    private fun file(name: String, bytes: ByteArray) = onPhone {
        when (asked().what) {
            "photo", "picture" -> phone.answerPhoto(bytes)
            "file" -> answer(card.put(name.substringAfterLast('/'), bytes))
            else -> throw Refused("the app has not asked for a file")
        }
    }

    /** The bytes of a file that lies on the card; null if none of this name does. */
    private fun fromCard(name: String): ByteArray? {
        var bytes: ByteArray? = null
        onPhone { if (name in card.files) bytes = card.file(name).readBytes() }
        return bytes
    }

    /** Copies onto the card what the app hands on, as another app would keep it. */
    private fun take(share: Request) {
        val handed = share.handedOn ?: throw Refused("the app hands on no file")
        val bytes = checkNotNull(phone.activity.contentResolver.openInputStream(handed)).use { it.readBytes() }
        card.put(handed.lastPathSegment?.substringAfterLast('/') ?: "file", bytes)
        phone.answer(Activity.RESULT_OK)
    }

    private fun answer(place: Uri) = phone.answer(Activity.RESULT_OK, Intent().setData(place))

    private fun asked(what: String? = null): Request {
        val asked = phone.request ?: throw Refused("the app has asked for nothing")
        if (what != null && asked.what != what) throw Refused("the app has not asked for that")
        return asked
    }

    private fun decoded(word: String): String = try {
        URLDecoder.decode(word, Charsets.UTF_8)
    } catch (_: IllegalArgumentException) {
        throw Refused("\"$word\" is not percent-encoded")
    }

    private fun reopen() {
        stopped = null
        phone.restart()
    }

    private companion object {
        const val TURN_MS = 8L
        const val STILL_NS = 250_000_000L
        const val PICTURES_BETWEEN_COLLECTIONS = 60
        const val ANSWER_SECONDS = 20L
        val CLOCK: DateTimeFormatter = DateTimeFormatter.ofPattern("HH:mm")
        val KEYS = mapOf(
            "back" to KeyEvent.KEYCODE_BACK,
            "enter" to KeyEvent.KEYCODE_ENTER,
            "delete" to KeyEvent.KEYCODE_DEL,
            "tab" to KeyEvent.KEYCODE_TAB,
            "left" to KeyEvent.KEYCODE_DPAD_LEFT,
            "right" to KeyEvent.KEYCODE_DPAD_RIGHT,
            "up" to KeyEvent.KEYCODE_DPAD_UP,
            "down" to KeyEvent.KEYCODE_DPAD_DOWN,
        )
    }
}
