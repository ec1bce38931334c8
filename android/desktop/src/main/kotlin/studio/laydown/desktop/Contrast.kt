package studio.laydown.desktop

import android.graphics.Bitmap
import android.graphics.Color
import android.graphics.Rect
import android.graphics.drawable.Drawable
import android.graphics.drawable.RippleDrawable
import android.view.View
import android.widget.EditText
import android.widget.ImageButton
import android.widget.ImageView
import android.widget.Switch
import android.widget.TextView

/** How far two colours stand apart, from 1 to 21: the contrast ratio of https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio. */
fun contrast(one: Int, other: Int): Double {
    val (light, dark) = listOf(Color.luminance(one), Color.luminance(other)).sortedDescending()
    return (light + 0.05) / (dark + 0.05)
}

/**
 * What on [picture] is too faint, measured from its dots: words under 4.5 to 1 (WCAG 2.2, 1.4.3), and edges of what is tapped or
 * typed into and switches under 3 to 1 (1.4.11). What is disabled may be faint.
 */
internal fun faint(windows: List<Window>, picture: Bitmap): List<String> =
    windows.flatMap { window -> window.views().filter { it.seen() != null && it.isEnabled }.flatMap { faintWords(it, picture) + faintEdge(it, picture) } }

private fun faintWords(view: View, picture: Bitmap): List<String> {
    if (view !is TextView || view.words.isEmpty()) return emptyList()
    val room = inside(view) ?: return emptyList()
    val dots = picture.dots(room)
    val ground = dots.groupingBy { it }.eachCount().maxBy { it.value }.key
    val ratio = dots.toSet().maxOf { contrast(it, ground) }
    return if (ratio >= WORDS) emptyList() else listOf("the words of ${view.described()} stand out %.1f to 1".format(ratio))
}

/** Where the words of a view are seen, without its padding; null unless at least their first line is. */
private fun inside(view: TextView): Rect? {
    val (x, y) = IntArray(2).also(view::getLocationOnScreen)
    val top = y + view.totalPaddingTop
    val room = Rect(x + view.totalPaddingLeft, top, x + view.width - view.totalPaddingRight, y + view.height - view.totalPaddingBottom)
    val line = view.layout?.getLineBottom(0) ?: return null
    val seen = view.seen() ?: return null
    return room.takeIf { it.intersect(seen) && it.top == top && it.height() >= line && it.width() > 1 }
}

private fun faintEdge(view: View, picture: Bitmap): List<String> {
    if (!view.isClickable && view !is EditText) return emptyList()
    // A photograph is seen by what is on it.
    if (view is ImageView && view !is ImageButton) return emptyList()
    val ratio = if (view is Switch) trackOf(view, picture) else edgeOf(view, picture)
    return if (ratio == null || ratio >= SHAPES) emptyList() else listOf("the edge of ${view.described()} stands out %.1f to 1".format(ratio))
}

/** How far the edge of a view that has one stands out from what lies around it, at the faintest of its sides; null if none is seen. */
fun edgeOf(view: View, picture: Bitmap): Double? {
    if (!view.background.isDrawn()) return null
    val seen = view.seen() ?: return null
    val whole = Rect(seen).takeIf { seen.width() == view.width && seen.height() == view.height } ?: return null
    val ratios = mutableListOf<Double>()
    fun along(x: Int, y: Int, dx: Int, dy: Int) {
        if (x - OUT * dx !in 0 until picture.width || y - OUT * dy !in 0 until picture.height) return
        val ground = picture.getPixel(x - OUT * dx, y - OUT * dy)
        ratios += (0 until IN).maxOf { contrast(ground, picture.getPixel(x + it * dx, y + it * dy)) }
    }
    along(whole.left, whole.centerY(), 1, 0)
    along(whole.right - 1, whole.centerY(), -1, 0)
    along(whole.centerX(), whole.top, 0, 1)
    along(whole.centerX(), whole.bottom - 1, 0, -1)
    return ratios.minOrNull()
}

/** How far a switch's own drawing stands out from the card it lies on. */
fun trackOf(view: Switch, picture: Bitmap): Double? {
    val seen = view.seen() ?: return null
    if (seen.height() != view.height) return null
    val track = view.trackDrawable.bounds
    val (x, y) = IntArray(2).also(view::getLocationOnScreen)
    val line = Rect(x + track.left, y + track.centerY(), x + track.right, y + track.centerY() + 1)
    val ground = picture.getPixel(line.left - 4, line.top)
    return picture.dots(line).maxOf { contrast(it, ground) }
}

/** Whether this paints anything while no finger is on it. */
private fun Drawable?.isDrawn(): Boolean = when (this) {
    null -> false
    is RippleDrawable -> (0 until numberOfLayers).any { getId(it) != android.R.id.mask }
    else -> true
}

private fun Bitmap.dots(room: Rect): List<Int> {
    val dots = IntArray(room.width() * room.height())
    getPixels(dots, 0, room.width(), room.left, room.top, room.width(), room.height())
    return dots.asList()
}

private const val WORDS = 4.5
private const val SHAPES = 3.0

/** How many dots outside an edge its ground is measured, and how many inwards the edge may reach. */
private const val OUT = 2
private const val IN = 7
