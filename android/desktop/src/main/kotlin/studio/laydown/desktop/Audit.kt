package studio.laydown.desktop

import android.view.View
import android.view.ViewGroup
import android.widget.AdapterView
import android.widget.EditText
import android.widget.SeekBar
import android.widget.TextView

/** Looks over the windows for what keeps someone from using them; one sentence for each fault, none if all is well. */
internal fun audit(windows: List<Window>): List<String> = windows.flatMap { window ->
    val density = window.root.resources.displayMetrics.density
    window.views().filter { it.seen() != null }.flatMap { view -> tooSmall(view, density) + nameless(view) + cut(view) }
}

/** What a thumb has to hit: 48 dp both ways, as the platform's guidance has it. */
private fun tooSmall(view: View, density: Float): List<String> {
    if (!view.takesTaps()) return emptyList()
    val width = view.width / density
    val height = view.height / density
    if (width >= SMALLEST && height >= SMALLEST) return emptyList()
    return listOf("${view.described()} is %.0f by %.0f dp; a thumb needs $SMALLEST by $SMALLEST".format(width, height))
}

private fun nameless(view: View): List<String> {
    if (!view.takesTaps() || view is AdapterView<*>) return emptyList()
    val named = view.spoken() || view.let { it !is EditText && it.hasSpokenChild() }
    return if (named) emptyList() else listOf("${view.described()} takes a tap and has no name to be read out")
}

/** Words that do not fit are words nobody reads. */
private fun cut(view: View): List<String> {
    if (view !is TextView || view is EditText || view.ellipsize != null) return emptyList()
    val lines = view.layout ?: return emptyList()
    val room = view.height - view.compoundPaddingTop - view.compoundPaddingBottom
    val wide = view.width - view.compoundPaddingLeft - view.compoundPaddingRight
    val widest = (0 until lines.lineCount).maxOfOrNull(lines::getLineMax) ?: 0f
    if (widest > wide + 2) return listOf("${view.described()} is cut: its words need ${widest.toInt()} px across and have $wide")
    // Two pixels: the font's own padding rounds up.
    if (lines.height <= room + 2) return emptyList()
    return listOf("${view.described()} is cut: its words need ${lines.height} px and have $room")
}

private fun View.takesTaps() = isEnabled && (isClickable || isLongClickable || this is SeekBar)

private fun View.spoken(): Boolean = createAccessibilityNodeInfo().let { node ->
    !node.contentDescription.isNullOrBlank() || !node.text.isNullOrBlank() || !node.hintText.isNullOrBlank()
}

private fun View.hasSpokenChild(): Boolean =
    this is ViewGroup && (0 until childCount).map(::getChildAt).any { it.isShown && (it.spoken() || it.hasSpokenChild()) }

internal fun View.described(): String {
    // Ids made at run time have no package, and so no name.
    val id = if (id != View.NO_ID && id ushr 24 != 0) resources.getResourceEntryName(id) else null
    return listOfNotNull(javaClass.simpleName, id?.let { "#$it" }, called.ifEmpty { null }?.let { "\"$it\"" }).joinToString(" ")
}

private const val SMALLEST = 48
