package studio.laydown.weigh

import android.content.Context
import android.util.AttributeSet
import android.view.ViewGroup
import studio.laydown.R

/**
 * What is chosen, the slot, and the reading with its keys, above one another. The keys are as high as they are; the slot takes what
 * room is left, and never less than it always needs, so that nothing in it and around it moves when a verdict comes or goes. Only
 * where large letters need more room than there is does the part above the slot scroll.
 */
class BenchLayout(context: Context, attributes: AttributeSet?) : ViewGroup(context, attributes) {
    private val least = resources.getDimensionPixelSize(R.dimen.slot)
    private val parts get() = (0 until childCount).map(::getChildAt)

    override fun onMeasure(widthMeasureSpec: Int, heightMeasureSpec: Int) {
        val width = MeasureSpec.getSize(widthMeasureSpec)
        val height = MeasureSpec.getSize(heightMeasureSpec)
        val (upper, slot) = parts
        val keys = parts.getOrNull(2)
        keys?.measure(exactly(width), MeasureSpec.makeMeasureSpec(height, MeasureSpec.AT_MOST))
        upper.measure(exactly(width), MeasureSpec.makeMeasureSpec(0, MeasureSpec.UNSPECIFIED))
        val room = (height - (keys?.measuredHeight ?: 0)).coerceAtLeast(0)
        val slotHeight = (room - upper.measuredHeight).coerceAtLeast(least).coerceAtMost(room)
        upper.measure(exactly(width), exactly(room - slotHeight))
        slot.measure(exactly(width), exactly(slotHeight))
        setMeasuredDimension(width, height)
    }

    override fun onLayout(changed: Boolean, left: Int, top: Int, right: Int, bottom: Int) {
        var y = 0
        for (part in parts) {
            part.layout(0, y, part.measuredWidth, y + part.measuredHeight)
            y += part.measuredHeight
        }
    }

    private fun exactly(size: Int) = MeasureSpec.makeMeasureSpec(size, MeasureSpec.EXACTLY)
}
