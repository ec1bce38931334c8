package studio.laydown

import android.content.Context
import android.util.AttributeSet
import android.view.View
import android.view.ViewGroup

/** Lays its children out one after the other, as words in a line, and goes on in the next line. */
class ChipsView(context: Context, attributes: AttributeSet?) : ViewGroup(context, attributes) {
    private val gap = resources.getDimensionPixelSize(R.dimen.gap)

    private val shown: List<View> get() = (0 until childCount).map(::getChildAt).filter { it.visibility != GONE }

    override fun onMeasure(widthMeasureSpec: Int, heightMeasureSpec: Int) {
        val width = MeasureSpec.getSize(widthMeasureSpec)
        measureChildren(MeasureSpec.makeMeasureSpec(width, MeasureSpec.AT_MOST), MeasureSpec.UNSPECIFIED)
        setMeasuredDimension(width, place(width) { _, _, _ -> })
    }

    override fun onLayout(changed: Boolean, left: Int, top: Int, right: Int, bottom: Int) {
        val mirrored = layoutDirection == LAYOUT_DIRECTION_RTL
        place(width) { child, x, y ->
            val start = if (mirrored) width - x - child.measuredWidth else x
            child.layout(start, y, start + child.measuredWidth, y + child.measuredHeight)
        }
    }

    /** Goes through the children with their places; answers with the height of all. */
    private fun place(width: Int, put: (View, Int, Int) -> Unit): Int {
        var x = 0
        var y = 0
        var tall = 0
        for (child in shown) {
            if (x > 0 && x + child.measuredWidth > width) {
                x = 0
                y += tall + gap
                tall = 0
            }
            put(child, x, y)
            x += child.measuredWidth + gap
            tall = maxOf(tall, child.measuredHeight)
        }
        return y + tall
    }
}
