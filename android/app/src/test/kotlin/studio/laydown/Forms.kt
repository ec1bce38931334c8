package studio.laydown

import android.graphics.Bitmap
import android.graphics.Canvas
import android.graphics.Color
import android.graphics.Paint
import android.graphics.Path
import android.graphics.Rect
import android.view.KeyEvent
import android.view.View
import android.view.ViewGroup
import android.widget.EditText
import android.widget.TextView
import studio.laydown.core.Grip
import studio.laydown.desktop.Phone
import studio.laydown.drawing.DrawingView
import java.io.ByteArrayOutputStream

/** Goes to a new form that is known by measured points. */
fun Phone.byPoints() = newForm("Measured points")

/** Goes to a new form that is known by a photograph. */
fun Phone.byPhoto() {
    newForm("Side photo")
    await("the ways to a photograph") { scrollTo("Take a photo") }
}

private fun Phone.newForm(way: String) {
    touch("Studio")
    touch("Add a form")
    touch("Straight mug")
    touch(way)
}

/** Takes a photograph with the phone's camera app. */
fun Phone.photograph(file: ByteArray) {
    touch("Take a photo")
    answerPhoto(file)
}

private val Phone.drawing: DrawingView? get() = activity.findViewById<DrawingView>(R.id.drawing)

/** Scrolls what is [called] so into sight; false while it is not there. */
fun Phone.scrollTo(called: String): Boolean {
    val view = window().firstOrNull { it is TextView && it.text.toString() == called && it.isShown } ?: return false
    view.requestRectangleOnScreen(Rect(0, 0, view.width, view.height), true)
    idle()
    return true
}

/** What can be dragged in the drawing; null where nothing is drawn. */
fun Phone.grips(): List<Grip>? = drawing?.drawing?.grips

/** Scrolls so far that the whole drawing is seen, with what is said above it. */
fun Phone.drawingOnTop() {
    await("a drawing") { drawing?.let { it.height > 0 } == true }
    val wanted = size.y / 5
    var before = -1
    // As often as the thumb needs, until it is there or the page ends.
    while (true) {
        val at = IntArray(2).also(checkNotNull(drawing)::getLocationOnScreen)[1]
        if (at <= wanted || at == before) return
        before = at
        val part = ((at - wanted) / size.y.toFloat()).coerceAtMost(0.4f)
        drag(0.5f, 0.6f, 0.5f, 0.6f - part)
    }
}

/** Where the grip of this key is on the screen, in pixels. */
fun Phone.grip(key: String): Pair<Float, Float> {
    val view = checkNotNull(drawing) { "nothing is drawn; on the screen: ${texts()}" }
    val grip = checkNotNull(grips()?.firstOrNull { it.key == key }) { "no grip \"$key\" among ${grips()?.map { it.key }}" }
    return at(view, grip.at.x, grip.at.y)
}

/** Where a place of the drawing is on the screen, in pixels. */
fun Phone.spot(x: Double, y: Double) = at(checkNotNull(drawing), x, y)

private fun at(view: DrawingView, x: Double, y: Double): Pair<Float, Float> {
    val place = IntArray(2).also(view::getLocationOnScreen)
    return place[0] + x.toFloat() * view.width to place[1] + y.toFloat() * view.width
}

/** Takes hold of a grip and drags it, by parts of the drawing's width, without letting go. Answers where the finger is. */
fun Phone.holdGrip(key: String, byX: Float, byY: Float, restMs: Long = 0): Pair<Float, Float> {
    val (x, y) = grip(key)
    val width = checkNotNull(drawing).width
    val to = x + byX * width to y + byY * width
    hold(x, y, to.first, to.second, restMs)
    return to
}

/** Drags a grip by parts of the drawing's width, after the finger has rested on it for [restMs]. */
fun Phone.dragGrip(key: String, byX: Float, byY: Float, restMs: Long = 0) {
    val (x, y) = holdGrip(key, byX, byY, restMs)
    lift(x, y)
}

fun Phone.tapGrip(key: String) {
    val (x, y) = grip(key)
    tapAt(x, y)
}

/** What is said to be wrong, beside the fields that can be seen. */
fun Phone.refusals(): List<String> = window().filterIsInstance<TextView>()
    .filter { it.id == R.id.field_refusal_text && it.isShown }.map { it.text.toString() }

/** What stands in the table of points, row by row. */
fun Phone.table(): List<List<String>> = cells().map { row -> row.map { it.text.toString() } }

/** The same once the answers to all that the finger did have come: it stays as it is for a while. */
fun Phone.tableAtRest(): List<List<String>> {
    var before = table()
    var still = 0
    await("the table to come to rest") {
        Thread.sleep(20)
        val now = table()
        still = if (now == before) still + 1 else 0
        before = now
        still >= 15
    }
    return before
}

private fun Phone.cells(): List<List<EditText>> = window().filter { it.id == R.id.row_cells }
    .map { row -> row.all().filterIsInstance<EditText>() }

/** The sentence that begins so, wherever on the page it stands; null while there is none. */
fun Phone.said(beginning: String): String? =
    window().filterIsInstance<TextView>().firstOrNull { it.isShown && it.text.startsWith(beginning) }?.text?.toString()

/** Writes [text] into a cell of the table of points; rows and columns are counted from 0. */
fun Phone.fillCell(row: Int, column: Int, text: String) = fill("a cell", text) { cells().getOrNull(row)?.getOrNull(column) }

/** Writes [text] into the field under this label. */
fun Phone.fillField(label: String, text: String) = fill("the field \"$label\"", text) {
    window().firstOrNull { it is TextView && it.id == R.id.field_label && it.text.toString() == label }
        ?.let { (it.parent as View).all().filterIsInstance<EditText>().firstOrNull() }
}

private fun Phone.fill(what: String, text: String, field: () -> EditText?) {
    await(what) { field() != null }
    val view = checkNotNull(field())
    view.requestRectangleOnScreen(Rect(0, 0, view.width, view.height), true)
    idle()
    val place = IntArray(2).also(view::getLocationOnScreen)
    tapAt(place[0] + view.width / 2f, place[1] + view.height / 2f)
    press(KeyEvent.KEYCODE_MOVE_END)
    repeat(view.text.length) { press(KeyEvent.KEYCODE_DEL) }
    type(text)
    idle(300)
}

/** Every view of the window, seen or not. */
fun Phone.window(): List<View> = activity.window.decorView.let { root -> listOf(root) + root.all() }

private fun View.all(): List<View> =
    if (this is ViewGroup) (0 until childCount).flatMap { at -> getChildAt(at).let { listOf(it) + it.all() } } else emptyList()

/** Photographs as the camera would give them, drawn here. */
object Picture {
    /** A vase before a plain ground. */
    fun vase(): ByteArray = jpeg {
        val paint = Paint(Paint.ANTI_ALIAS_FLAG).apply { color = Color.rgb(120, 74, 52) }
        val path = Path().apply {
            moveTo(520f, 780f)
            cubicTo(380f, 640f, 400f, 420f, 540f, 300f)
            lineTo(530f, 220f)
            lineTo(670f, 220f)
            lineTo(660f, 300f)
            cubicTo(800f, 420f, 820f, 640f, 680f, 780f)
            close()
        }
        drawPath(path, paint)
    }

    /** A ground with nothing before it. */
    fun plain(): ByteArray = jpeg {}

    private fun jpeg(paint: Canvas.() -> Unit): ByteArray {
        val bitmap = Bitmap.createBitmap(1200, 900, Bitmap.Config.ARGB_8888)
        val canvas = Canvas(bitmap)
        canvas.drawColor(Color.rgb(214, 210, 202))
        canvas.paint()
        val bytes = ByteArrayOutputStream()
        check(bitmap.compress(Bitmap.CompressFormat.JPEG, 92, bytes)) { "cannot write the picture" }
        bitmap.recycle()
        return bytes.toByteArray()
    }
}
