package studio.laydown.desktop

import android.app.Activity
import android.content.Intent
import android.graphics.Bitmap
import android.graphics.Point
import android.graphics.Rect
import android.net.Uri
import android.os.Looper
import android.os.SystemClock
import android.provider.MediaStore
import android.speech.tts.TextToSpeech
import android.util.DisplayMetrics
import android.view.KeyEvent
import android.view.View
import android.view.WindowInsets
import android.view.WindowInsetsController
import android.widget.Toast
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadow.api.Shadow
import org.robolectric.shadows.ShadowApplication
import org.robolectric.shadows.ShadowChoreographer
import org.robolectric.shadows.ShadowDisplay
import org.robolectric.shadows.ShadowTextToSpeech
import org.robolectric.shadows.ShadowToast
import org.robolectric.shadows.ShadowView
import org.robolectric.util.ReflectionHelpers
import org.robolectric.util.ReflectionHelpers.ClassParameter
import java.io.File
import java.time.Duration

/** There is nothing of that name where a finger could reach it, or more than one. What a tap itself does wrong is never this. */
class NothingToTap(message: String) : IllegalStateException(message)

/**
 * A phone with the app on it, held as a person holds it: it is looked at and touched, never reached into. The tests, the pictures
 * of the screens and the desk all use this one.
 *
 * Runs inside a Robolectric test, on its main thread. In a test, [use] starts and ends it:
 * ```
 * @Test fun keepsAReading() = Phone().use {
 *     it.tap("Mug, 350 ml")
 *     it.type("19.4")
 *     it.tap("Save")
 *     assertEquals(emptyList<String>(), it.audit())
 * }
 * ```
 */
class Phone(
    look: Look = Look(),
    /** What the clock in the status bar says. */
    private val clock: () -> String = { "10:15" },
    /** Where the app opens; its icon's activity unless told. */
    private val first: Class<out Activity> = ofIcon(),
) : AutoCloseable {
    private val tasks = Tasks()
    private val hand = Hand()
    private val painter = Picture()
    private var toastsSeen = 0
    private var toastUntil = 0L
    private val heard = mutableListOf<String>()
    private var heardFrom: TextToSpeech? = null
    private var heardOfIt = 0

    /** How the phone is held and set. Changing it makes the activity in front anew, its state kept. */
    var look: Look = look
        set(value) {
            if (value == field) return
            field = value
            atOnce {
                value.apply()
                // Android tells the app before it makes an activity anew.
                val app = RuntimeEnvironment.getApplication()
                app.onConfigurationChanged(app.resources.configuration)
                tasks.recreate()
            }
            idle()
        }

    init {
        look.apply()
        putBars()
        launch()
    }

    // ---- what a person sees ----

    /** The activity in front. Fails if the app has been left. */
    val activity: Activity get() = checkNotNull(tasks.top) { "the app has been left" }

    /** Whether the app has been left, by the back key or of its own accord. */
    val left: Boolean get() = tasks.top == null

    /** The size of the screen in pixels. */
    val size: Point get() = Point().also { @Suppress("DEPRECATION") ShadowDisplay.getDefaultDisplay().getRealSize(it) }

    /** Every word on the screen, as [Label]s, from the lowest window up. */
    fun labels(): List<Label> = windows().flatMap { window ->
        window.views().mapNotNull { view ->
            val words = view.called
            val seen = view.seen()
            if (words.isEmpty() || seen == null) null else Label(words, seen, view.tapTarget() != null)
        }
    }

    /** Every text on the screen, in the order in which it is drawn. */
    fun texts(): List<String> = labels().map { it.text }

    /** Whether this text can be seen, word for word. */
    fun shows(text: String): Boolean = text in texts()

    /** The toast on the screen, if there is one. */
    var toast: String? = null
        private set

    /** What the app has said aloud, the oldest first. */
    val said: List<String> get() = heard

    /** How many haptic ticks the app has given. */
    var ticks = 0
        private set

    /** What the app waits for from another app. */
    val request: Request? get() = tasks.request

    /** A picture of the whole screen, all windows, as large as the phone's. The caller recycles it. */
    fun picture(): Bitmap {
        val size = size
        return Bitmap.createBitmap(size.x, size.y, Bitmap.Config.ARGB_8888).also(::paint)
    }

    /** Paints the screen into a bitmap of the phone's size. */
    fun paint(into: Bitmap) {
        val over = Picture.Over(clock(), toast, bars(), darkOnLight())
        painter.paint(into, windows(), over, metrics())
    }

    /** Writes the picture to `NAME.png` in the folder of screens (system property `laydown.screens`). */
    fun screenshot(name: String): File {
        val folder = File(checkNotNull(System.getProperty(SCREENS)) { "-D$SCREENS names no folder" })
        check(folder.isDirectory || folder.mkdirs()) { "cannot make $folder" }
        val file = File(folder, "$name.png")
        val picture = picture()
        file.outputStream().use { check(picture.compress(Bitmap.CompressFormat.PNG, 100, it)) { "cannot write $file" } }
        picture.recycle()
        return file
    }

    /** What is wrong with this screen for someone who reads it by ear or works it with a thumb; empty if nothing. */
    fun audit(): List<String> {
        val picture = picture()
        return (audit(windows()) + faint(reachable(), picture)).also { picture.recycle() }
    }

    // ---- what a person does ----

    /**
     * Taps what is [called] so: its text, its description or its hint, word for word. Scrolls it into view if it is out of sight.
     * Of several with one name, [nth] picks, from 0 in the order in which they are drawn.
     */
    fun tap(called: String, nth: Int? = null) = tap(target(called, nth))

    /** Taps the view of this resource id. */
    fun tap(id: Int) = tap(target(id))

    /** Saves the finger on what is [called] so until it counts as a long press. */
    fun longTap(called: String, nth: Int? = null) {
        val at = middle(target(called, nth))
        hand.down(at.first, at.second)
        idle(LONG_PRESS_MS)
        hand.up(at.first, at.second)
        idle()
    }

    /** Taps the screen at a point, in pixels. */
    fun tapAt(x: Float, y: Float) {
        hand.down(x, y)
        pass(PRESS_MS)
        hand.up(x, y)
        idle()
    }

    /** Types into whatever has the focus. */
    fun type(text: String) {
        hand.type(text)
        idle()
    }

    /** Presses one key, by Android's key code. */
    fun press(keyCode: Int) {
        hand.key(keyCode)
        idle()
    }

    /** The back key. */
    fun back() = press(KeyEvent.KEYCODE_BACK)

    /** Drags from one point to another, in parts of the screen's width and height (0 to 1), without a fling unless asked for. */
    fun drag(fromX: Float, fromY: Float, toX: Float, toY: Float, fling: Boolean = false) {
        val (w, h) = size.let { it.x.toFloat() to it.y.toFloat() }
        hand.drag(fromX * w, fromY * h, toX * w, toY * h, DRAG_MS, fling)
        idle()
    }

    /** Lays the finger down at one point, rests it there for [restMs], moves it to another, in pixels, and keeps it there. */
    fun hold(fromX: Float, fromY: Float, toX: Float, toY: Float, restMs: Long = 0) {
        hand.down(fromX, fromY)
        if (restMs > 0) idle(restMs)
        moveTo((fromX + toX) / 2, (fromY + toY) / 2)
        moveTo(toX, toY)
    }

    /** Moves the finger that is down. */
    fun moveTo(x: Float, y: Float) {
        idle(FRAME_MS)
        hand.move(x, y)
        idle(FRAME_MS)
    }

    /** Lifts the finger that is down. */
    fun lift(x: Float, y: Float) {
        hand.up(x, y)
        idle()
    }

    /** Scrolls the content by [part] of the screen's height; down the page if positive. */
    fun scroll(part: Float = 0.4f) = drag(0.5f, 0.5f + part / 2, 0.5f, 0.5f - part / 2)

    /** Turns a wheel over a point in pixels by [lines], down if negative. */
    fun wheel(x: Float, y: Float, lines: Float) {
        roll(x, y, lines)
        idle()
    }

    /** Turns the phone from upright to lying or back. */
    fun rotate() {
        look = look.copy(landscape = !look.landscape)
    }

    /** Answers the app's request for a picture with this file's bytes: as the camera does, or as one who chose it. */
    fun answerPhoto(bytes: ByteArray) {
        val asked = checkNotNull(request) { "the app has asked for nothing" }
        check(asked.isPicture) { "the app has not asked for a picture" }
        if (!asked.isPhoto) {
            shadowOf(activity.contentResolver).registerInputStreamSupplier(CHOSEN) { bytes.inputStream() }
            return answer(Activity.RESULT_OK, Intent().setData(CHOSEN))
        }
        val place = asked.intent.getParcelableExtra(MediaStore.EXTRA_OUTPUT, Uri::class.java)
        checkNotNull(place) { "the app has not said where the photograph goes" }
        val out = checkNotNull(activity.contentResolver.openOutputStream(place, "w")) { "cannot write to $place" }
        out.use { it.write(bytes) }
        answer(Activity.RESULT_OK)
    }

    /**
     * The system ends the app while another app is in front, as it does when it needs the room, and makes it anew from what it saved.
     * What [request] asks for is still awaited, and may be answered before the app has come up again.
     */
    fun kill() = atOnce { tasks.kill() }

    /** Answers the app's request as the other app would; [Activity.RESULT_CANCELED] if the person turned back. */
    fun answer(resultCode: Int, data: Intent? = null) {
        tasks.answer(resultCode, data)
        idle()
    }

    // ---- time ----

    /** Lets this much of the phone's time pass, and whatever is due in it happen. */
    fun idle(ms: Long = SETTLED_MS) {
        pass(ms)
        while (settled()) pass(SETTLED_MS)
    }

    /** Lets time pass until [done], for work on other threads; fails after [seconds] of real time, naming [what]. */
    fun await(what: String, seconds: Int = 10, done: () -> Boolean) {
        val end = System.nanoTime() + Duration.ofSeconds(seconds.toLong()).toNanos()
        while (!done()) {
            check(System.nanoTime() < end) { "waited $seconds s in vain for $what; on the screen: ${texts()}" }
            Thread.sleep(2)
            idle(16)
        }
    }

    /** Ends the app as the system does when it needs the room, without a word, and opens it again. */
    fun restart() {
        atOnce { tasks.end() }
        launch()
    }

    /** Opens the app as its icon does. */
    fun launch() {
        atOnce { tasks.launch(first) }
        idle()
    }

    override fun close() = atOnce { tasks.end() }

    // ---- for the desk, which lives in real time ----

    internal fun windows(): List<Window> = Window.all(tasks.stopped)

    internal val fingers: Hand get() = hand

    internal fun roll(x: Float, y: Float, lines: Float) {
        reachable().lastOrNull { it.bounds.contains(x.toInt(), y.toInt()) }?.let { hand.wheel(it, x, y, lines) }
    }

    /** Frames come one by one, as time passes, rather than all an animation has at once. */
    internal fun comeAlive() {
        ShadowChoreographer.setFrameDelay(Duration.ofMillis(FRAME_MS))
        ShadowChoreographer.setPaused(true)
    }

    /** As [idle], but for exactly this long. True if an activity came or went. */
    internal fun live(ms: Long): Boolean {
        pass(ms)
        return settled()
    }

    private fun settled(): Boolean {
        if (!tasks.waiting) return false
        atOnce { tasks.settle() }
        return true
    }

    /** Robolectric needs a new activity's first frame within the call that makes it, so frames are not held back then. */
    private fun atOnce(work: () -> Unit) {
        val alive = ShadowChoreographer.isPaused()
        if (alive) {
            ShadowChoreographer.setPaused(false)
            // A frame that was held back would keep the new ones waiting.
            shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(2 * FRAME_MS))
        }
        try {
            work()
        } finally {
            if (alive) ShadowChoreographer.setPaused(true)
        }
    }

    private fun pass(ms: Long) {
        shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(ms))
        hear()
        feel()
        readToast()
    }

    private fun hear() {
        val voice = ShadowTextToSpeech.getLastTextToSpeechInstance() ?: return
        if (voice !== heardFrom) {
            heardFrom = voice
            heardOfIt = 0
        }
        val all = shadowOf(voice).spokenTextList
        heard += all.drop(heardOfIt)
        heardOfIt = all.size
        while (heard.size > REMEMBERED) heard.removeAt(0)
    }

    /** Robolectric keeps the last haptic feedback on each view; taken off it once counted. */
    private fun feel() {
        for (view in windows().flatMap { it.views() }) {
            val shadow = Shadow.extract<ShadowView>(view)
            if (shadow.lastHapticFeedbackPerformed() < 0) continue
            ticks++
            ReflectionHelpers.setField(ShadowView::class.java, shadow, "hapticFeedbackPerformed", -1)
        }
    }

    private fun readToast() {
        val now = SystemClock.uptimeMillis()
        val shown = ShadowToast.shownToastCount()
        if (shown > toastsSeen) {
            toastsSeen = shown
            val long = ShadowToast.getLatestToast()?.duration == Toast.LENGTH_LONG
            toast = ShadowToast.getTextOfLatestToast()
            toastUntil = now + if (long) LONG_TOAST_MS else SHORT_TOAST_MS
        }
        if (now >= toastUntil) toast = null
    }

    private fun tap(view: View) {
        val (x, y) = middle(view)
        tapAt(x, y)
    }

    /** The windows that a touch can reach: down to the first that takes every touch. */
    private fun reachable(): List<Window> {
        val all = windows()
        val lowest = all.indexOfLast { it.modal }.coerceAtLeast(0)
        return all.drop(lowest)
    }

    private fun target(called: String, nth: Int?): View {
        val named = reachable().flatMap { it.views() }.filter { it.called == called || it.words == called }
        val targets = named.map { it.tapTarget() ?: it }.distinct()
        val tappable = targets.filter { it.tapTarget() != null }.ifEmpty { targets }
        if (tappable.isEmpty()) throw NothingToTap("nothing is called \"$called\"; on the screen: ${texts()}")
        if (nth == null && tappable.size > 1) throw NothingToTap("${tappable.size} things are called \"$called\"; say which")
        return tappable[nth ?: 0]
    }

    private fun target(id: Int): View = checkNotNull(reachable().flatMap { it.views() }.firstOrNull { it.id == id }) {
        "no view #${activity.resources.getResourceEntryName(id)}; on the screen: ${texts()}"
    }

    private fun middle(view: View): Pair<Float, Float> {
        // A person waits until what moves has come to rest: a tap on a list that still scrolls only stops it.
        idle(SCROLLED_MS)
        val whole = Rect(0, 0, view.width, view.height)
        if (view.seen()?.let { it.width() < whole.width() || it.height() < whole.height() } != false) {
            view.requestRectangleOnScreen(whole, true)
            idle()
        }
        val seen = checkNotNull(view.seen()) { "\"${view.called}\" is out of sight" }
        return seen.exactCenterX() to seen.exactCenterY()
    }

    private fun metrics(): DisplayMetrics = RuntimeEnvironment.getApplication().resources.displayMetrics

    /** What the system's bars take at the edges, as the window in front was told. */
    private fun bars(): Rect = windows().firstOrNull()?.root?.rootWindowInsets
        ?.getInsets(WindowInsets.Type.systemBars())?.let { Rect(it.left, it.top, it.right, it.bottom) } ?: Rect()

    private fun darkOnLight(): Boolean = tasks.top?.window?.insetsController?.systemBarsAppearance
        ?.let { it and WindowInsetsController.APPEARANCE_LIGHT_STATUS_BARS != 0 } ?: false

    /** Robolectric has no bars unless told, and its way of telling is its own. */
    private fun putBars() {
        val type = Class.forName("org.robolectric.shadows.SystemUi")
        val ui = ReflectionHelpers.callStaticMethod<Any>(type, "systemUiForDefaultDisplay")
        fun bar(kind: String, name: String) = ClassParameter.from(
            Class.forName("org.robolectric.shadows.SystemUi\$$kind"), ReflectionHelpers.getStaticField<Any>(type, name),
        )
        ReflectionHelpers.callInstanceMethod<Unit>(
            ui, "setBehavior", bar("StatusBarBehavior", "STANDARD_STATUS_BAR"), bar("NavigationBarBehavior", "GESTURAL_NAVIGATION"),
        )
    }

    /** A text on the screen: where it can be seen, in pixels, and whether it takes a tap. */
    data class Label(val text: String, val bounds: Rect, val takesTap: Boolean)

    companion object {
        /** Names the folder that [screenshot] writes to. */
        const val SCREENS = "laydown.screens"

        private fun ofIcon(): Class<out Activity> {
            val app = RuntimeEnvironment.getApplication()
            val icon = Intent(Intent.ACTION_MAIN).addCategory(Intent.CATEGORY_LAUNCHER).setPackage(app.packageName)
            val found = checkNotNull(app.packageManager.queryIntentActivities(icon, 0).singleOrNull()) {
                "the manifest must name one activity for the launcher"
            }
            return Class.forName(found.activityInfo.name).asSubclass(Activity::class.java)
        }

        private val CHOSEN: Uri = Uri.parse("content://studio.laydown.desktop/chosen")

        // A list row answers more than a tenth of a second after the finger lifts.
        private const val SETTLED_MS = 200L
        private const val FRAME_MS = 16L
        private const val PRESS_MS = 48L
        private const val SCROLLED_MS = 300L
        private const val LONG_PRESS_MS = 700L
        private const val DRAG_MS = 300L
        private const val SHORT_TOAST_MS = 2_000L
        private const val LONG_TOAST_MS = 3_500L
        private const val REMEMBERED = 100
    }
}
