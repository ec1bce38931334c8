package studio.laydown

import android.content.Context
import android.graphics.Canvas
import android.graphics.Paint
import android.graphics.Path
import android.util.AttributeSet
import android.view.View
import studio.laydown.core.Point
import kotlin.math.min

/** A form's outline, drawn whole from its right half: filled quietly, with its wall as a line and the rim open. */
class OutlineView(context: Context, attributes: AttributeSet?) : View(context, attributes) {
    var outline: List<Point> = emptyList()
        set(value) {
            field = value
            invalidate()
        }

    private val dp = resources.displayMetrics.density
    private val clay = Paint(Paint.ANTI_ALIAS_FLAG).apply { color = context.getColor(R.color.bisque) }
    private val wall = Paint(Paint.ANTI_ALIAS_FLAG).apply {
        color = context.getColor(R.color.ink)
        style = Paint.Style.STROKE
        strokeWidth = 2 * dp
        strokeJoin = Paint.Join.ROUND
        strokeCap = Paint.Cap.ROUND
    }
    private val path = Path()

    override fun onDraw(canvas: Canvas) {
        if (outline.isEmpty()) return
        // One scale for both ways, so that a plate stays flat and a vase tall.
        val edge = 2 * dp
        val widest = outline.maxOf { it.radius }.toFloat()
        val tallest = outline.maxOf { it.height }.toFloat()
        val scale = min((width - 2 * edge) / (2 * widest), (height - 2 * edge) / tallest)
        val axis = width / 2f
        val foot = (height + tallest * scale) / 2
        fun Point.y() = foot - height.toFloat() * scale
        path.rewind()
        outline.asReversed().forEachIndexed { at, point ->
            val x = axis - point.radius.toFloat() * scale
            if (at == 0) path.moveTo(x, point.y()) else path.lineTo(x, point.y())
        }
        outline.forEach { path.lineTo(axis + it.radius.toFloat() * scale, it.y()) }
        canvas.drawPath(path, clay)
        canvas.drawPath(path, wall)
    }
}
