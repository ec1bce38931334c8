package studio.laydown.desktop

import android.app.Activity
import android.graphics.Rect
import android.view.View
import android.view.ViewGroup
import android.view.WindowManager.LayoutParams
import android.view.WindowManagerGlobal
import android.widget.AdapterView
import android.widget.TextView

/** One window on the phone's screen: the root of its views, and how it lies there. */
internal class Window private constructor(val root: View, private val order: Int) {
    private val params = root.layoutParams as LayoutParams

    /** Where the window lies on the screen, in pixels. */
    val bounds: Rect = IntArray(2).also(root::getLocationOnScreen).let { (x, y) -> Rect(x, y, x + root.width, y + root.height) }

    /** How much the windows below are darkened, 0 to 1. */
    val dim: Float = if (params.flags and LayoutParams.FLAG_DIM_BEHIND != 0) params.dimAmount else 0f

    /** Whether it takes every touch, its own or not, so that nothing below can be reached. */
    val modal: Boolean = params.flags and (LayoutParams.FLAG_NOT_TOUCH_MODAL or LayoutParams.FLAG_NOT_TOUCHABLE) == 0

    /** Every view that is on the screen, parents before children. */
    fun views(): Sequence<View> = shown(root)

    private fun shown(view: View): Sequence<View> = sequence {
        if (view.visibility == View.VISIBLE && view.alpha > 0f) {
            yield(view)
            if (view is ViewGroup) for (i in 0 until view.childCount) yieldAll(shown(view.getChildAt(i)))
        }
    }

    companion object {
        /** The windows on the screen, the lowest first; those of [stopped] activities are not on it. */
        fun all(stopped: List<Activity>): List<Window> {
            val roots = WindowManagerGlobal.getInstance().windowViews.filter { it.isAttachedToWindow && it.isShown }
            val tokens = stopped.map { it.activityToken }.toSet()
            val gone = roots.filter { (it.layoutParams as LayoutParams).token in tokens }.toSet()
            val goneWindows = gone.map { it.windowToken }.toSet()
            return roots.filter { it !in gone && (it.layoutParams as LayoutParams).token !in goneWindows }
                .mapIndexed { i, root -> Window(root, i) }
                // As the window manager does: by kind of window, then by age.
                .sortedWith(compareBy({ it.params.type }, { it.order }))
        }
    }
}

/** What a person calls this view: its description, else its words, else its hint. Empty if it has none. */
internal val View.called: String
    get() = contentDescription?.toString()?.trim()?.ifEmpty { null }
        ?: (this as? TextView)?.let { words.ifEmpty { hint?.toString()?.trim().orEmpty() } }.orEmpty()

/** The words this view shows. */
internal val View.words: String
    get() = (this as? TextView)?.text?.toString()?.trim().orEmpty()

/** The part of this view that can be seen, in pixels of the screen; null if none. */
internal fun View.seen(): Rect? {
    val part = Rect()
    if (!getGlobalVisibleRect(part) || part.isEmpty) return null
    val window = IntArray(2).also(rootView::getLocationOnScreen)
    part.offset(window[0], window[1])
    return part
}

/** This view or the nearest one around it that takes a tap. */
internal fun View.tapTarget(): View? =
    generateSequence(this) { it.parent as? View }.firstOrNull { it.isClickable || it.parent is AdapterView<*> }
