package studio.laydown.weigh

import android.content.Context
import android.graphics.Canvas
import android.graphics.Paint
import android.graphics.Path
import android.util.AttributeSet
import android.view.View
import studio.laydown.R
import studio.laydown.core.Gauge

/**
 * Where the reading lies: a line; on it, between two brackets, the accepted span with the aim as a tick; and the reading as a pointer
 * from above, with a bar as wide as the scale cannot tell. Told by shape, so that it reads without colour. A guess's span has no
 * brackets: nothing is accepted yet.
 */
class GaugeView(context: Context, attributes: AttributeSet?) : View(context, attributes) {
    var gauge: Gauge? = null
        set(value) {
            field = value
            contentDescription = context.getString(words(value))
            invalidate()
        }

    private val dp = resources.displayMetrics.density
    private val paint = Paint(Paint.ANTI_ALIAS_FLAG).apply {
        strokeCap = Paint.Cap.ROUND
        strokeJoin = Paint.Join.ROUND
    }
    private val pointer = Path()

    private val line = context.getColor(R.color.line)
    private val span = context.getColor(R.color.within_ground)
    private val bracket = context.getColor(R.color.within)
    private val ink = context.getColor(R.color.ink)
    private val quiet = context.getColor(R.color.quiet)

    override fun onDraw(canvas: Canvas) {
        val gauge = gauge ?: return
        val room = width - 2 * EDGE * dp
        fun x(at: Double) = EDGE * dp + (at * room).toFloat()
        val middle = height - 12 * dp

        stroke(line, 4)
        canvas.drawLine(x(0.0), middle, x(1.0), middle, paint)
        paint.style = Paint.Style.FILL
        paint.color = if (gauge.guess) line else span
        canvas.drawRoundRect(x(gauge.low), middle - 8 * dp, x(gauge.high), middle + 8 * dp, 3 * dp, 3 * dp, paint)
        if (!gauge.guess) {
            bracket(canvas, x(gauge.low), middle, 1)
            bracket(canvas, x(gauge.high), middle, -1)
        }
        stroke(if (gauge.guess) ink else bracket, 2)
        canvas.drawLine(x(gauge.aim), middle - 8 * dp, x(gauge.aim), middle + 8 * dp, paint)

        val reading = gauge.reading ?: return
        stroke(quiet, 3)
        val from = (reading - gauge.blur).coerceAtLeast(0.0)
        val to = (reading + gauge.blur).coerceAtMost(1.0)
        canvas.drawLine(x(from), middle, x(to), middle, paint)
        paint.style = Paint.Style.FILL
        paint.color = ink
        val at = x(reading)
        pointer.rewind()
        pointer.moveTo(at, middle + dp)
        pointer.lineTo(at - 9 * dp, middle - 16 * dp)
        pointer.lineTo(at + 9 * dp, middle - 16 * dp)
        pointer.close()
        canvas.drawPath(pointer, paint)
    }

    /** A bracket that opens towards the span: [towards] is 1 for its lower end and -1 for its upper. */
    private fun bracket(canvas: Canvas, at: Float, middle: Float, towards: Int) {
        stroke(bracket, 3)
        canvas.drawLine(at, middle - 9 * dp, at, middle + 9 * dp, paint)
        canvas.drawLine(at, middle - 9 * dp, at + 4 * dp * towards, middle - 9 * dp, paint)
        canvas.drawLine(at, middle + 9 * dp, at + 4 * dp * towards, middle + 9 * dp, paint)
    }

    private fun stroke(color: Int, width: Int) {
        paint.style = Paint.Style.STROKE
        paint.color = color
        paint.strokeWidth = width * dp
    }

    private fun words(gauge: Gauge?): Int {
        val reading = gauge?.reading ?: return R.string.gauge_none
        return when {
            gauge.guess -> R.string.gauge_guess
            reading + gauge.blur < gauge.low -> R.string.gauge_below
            reading - gauge.blur > gauge.high -> R.string.gauge_above
            reading - gauge.blur >= gauge.low && reading + gauge.blur <= gauge.high -> R.string.gauge_inside
            else -> R.string.gauge_edge
        }
    }

    private companion object {
        const val EDGE = 10
    }
}
