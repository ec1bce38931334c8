package studio.laydown.findings

import android.content.Context
import android.graphics.Canvas
import android.graphics.DashPathEffect
import android.graphics.Paint
import android.graphics.Path
import android.util.AttributeSet
import android.view.View
import studio.laydown.R
import studio.laydown.core.AxisTick
import studio.laydown.core.ChartView
import studio.laydown.core.LegendEntry
import studio.laydown.core.Mark
import studio.laydown.core.Stroke

/** How the parts of a chart are painted, in the chart and in what stands for what. */
private class ChartPaints(context: Context) {
    val dp = context.resources.displayMetrics.density
    private val fill = Paint(Paint.ANTI_ALIAS_FLAG)
    private val line = Paint(Paint.ANTI_ALIAS_FLAG).apply {
        style = Paint.Style.STROKE
        strokeCap = Paint.Cap.ROUND
        strokeJoin = Paint.Join.ROUND
    }
    private val path = Path()
    private val inks = mapOf(
        Mark.THIN to context.getColor(R.color.short_of), Mark.RIGHT to context.getColor(R.color.within),
        Mark.THICK to context.getColor(R.color.over), Mark.COAT to context.getColor(R.color.quiet),
        Mark.OUTLIER to context.getColor(R.color.over),
    )
    private val surface = context.getColor(R.color.surface)
    private val band = context.getColor(R.color.within_ground)
    private val bandEdge = context.getColor(R.color.within)
    private val ink = context.getColor(R.color.ink)
    private val accent = context.getColor(R.color.accent)
    private val frame = context.getColor(R.color.line)

    fun band(canvas: Canvas, left: Float, top: Float, right: Float, bottom: Float) {
        fill.color = band
        canvas.drawRect(left, top, right, bottom, fill)
        // Its ground alone is too faint to be seen by everyone.
        stroke(bandEdge, 1f)
        canvas.drawRect(left, top, right, bottom, line)
    }

    /** The axes: a line below and one on the left. */
    fun axes(canvas: Canvas, left: Float, top: Float, right: Float, bottom: Float) {
        stroke(frame, 2f)
        canvas.drawLine(left, top, left, bottom, line)
        canvas.drawLine(left, bottom, right, bottom, line)
    }

    /** A short line from an axis outwards. */
    fun tick(canvas: Canvas, fromX: Float, fromY: Float, toX: Float, toY: Float) {
        stroke(frame, 2f)
        canvas.drawLine(fromX, fromY, toX, toY, line)
    }

    fun line(canvas: Canvas, stroke: Stroke, xs: List<Float>, ys: List<Float>) {
        when (stroke) {
            Stroke.AIM -> stroke(ink, 2f)
            Stroke.BEST -> stroke(accent, 2.5f, 7f)
            Stroke.AVERAGE -> stroke(accent, 3f)
            Stroke.EDGE -> stroke(accent, 2f, dash = 2f, gap = 5f)
        }
        path.rewind()
        for (at in xs.indices) if (at == 0) path.moveTo(xs[at], ys[at]) else path.lineTo(xs[at], ys[at])
        canvas.drawPath(path, line)
    }

    /** Told apart by shape; an edge in the colour of the ground keeps two that touch from running together. */
    fun mark(canvas: Canvas, mark: Mark, x: Float, y: Float) {
        val size = SIZE * dp
        path.rewind()
        when (mark) {
            Mark.THIN -> triangle(x, y, size, 1)
            Mark.THICK -> triangle(x, y, size, -1)
            Mark.RIGHT -> path.addCircle(x, y, size, Path.Direction.CW)
            Mark.COAT -> path.addCircle(x, y, size * 0.6f, Path.Direction.CW)
            Mark.OUTLIER -> {
                stroke(inks.getValue(mark), 2.5f)
                canvas.drawLine(x - size, y - size, x + size, y + size, line)
                canvas.drawLine(x - size, y + size, x + size, y - size, line)
                return
            }
        }
        fill.color = inks.getValue(mark)
        canvas.drawPath(path, fill)
        stroke(surface, 1f)
        canvas.drawPath(path, line)
    }

    /** A triangle whose point is below ([towards] 1) or above (−1) its base. */
    private fun triangle(x: Float, y: Float, size: Float, towards: Int) {
        path.moveTo(x, y + size * 1.2f * towards)
        path.lineTo(x - size * 1.15f, y - size * 0.8f * towards)
        path.lineTo(x + size * 1.15f, y - size * 0.8f * towards)
        path.close()
    }

    private fun stroke(color: Int, width: Float, dash: Float? = null, gap: Float? = dash) {
        line.color = color
        line.strokeWidth = width * dp
        line.pathEffect = if (dash == null || gap == null) null else DashPathEffect(floatArrayOf(dash * dp, gap * dp), 0f)
    }

    private companion object {
        const val SIZE = 5.5f
    }
}

/** A chart of the core's, scaled to this view. Whoever listens hears its words. */
class ChartPlot(context: Context, attributes: AttributeSet?) : View(context, attributes) {
    var chart: ChartView? = null
        set(value) {
            field = value
            contentDescription = value?.words
            requestLayout()
            invalidate()
        }

    private val paints = ChartPaints(context)
    private val dp = paints.dp
    private val words = Paint(Paint.ANTI_ALIAS_FLAG).apply {
        color = context.getColor(R.color.quiet)
        textSize = resources.getDimension(R.dimen.chart_words)
    }
    private val high = words.fontMetrics.run { descent - ascent }

    override fun onMeasure(widthMeasureSpec: Int, heightMeasureSpec: Int) {
        // Room for the numbers and for what they are, each on a line of its own.
        val tall = resources.getDimension(R.dimen.chart) + MARGIN * dp + TICK * dp + 2 * high + GAP * dp
        setMeasuredDimension(MeasureSpec.getSize(widthMeasureSpec), tall.toInt())
    }

    override fun onDraw(canvas: Canvas) {
        val chart = chart ?: return
        val left = (chart.up.maxOfOrNull { words.measureText(it.words) } ?: 0f) + (TICK + GAP) * dp
        val top = MARGIN * dp
        val right = width - MARGIN * dp
        val bottom = top + resources.getDimension(R.dimen.chart)
        fun x(at: Double) = left + (right - left) * at.toFloat()
        fun y(at: Double) = top + (bottom - top) * at.toFloat()

        for (band in chart.bands) paints.band(canvas, x(band.from.x), y(band.from.y), x(band.to.x), y(band.to.y))
        paints.axes(canvas, left, top, right, bottom)
        for (tick in chart.up) up(canvas, tick, left, y(tick.at))
        across(canvas, chart.across, bottom, ::x)
        words.textAlign = Paint.Align.RIGHT
        canvas.drawText(chart.acrossTitle, right, bottom + (TICK + GAP) * dp + high - words.fontMetrics.ascent, words)
        for (line in chart.lines) paints.line(canvas, line.stroke, line.spots.map { x(it.x) }, line.spots.map { y(it.y) })
        for (dot in chart.dots) paints.mark(canvas, dot.mark, x(dot.at.x), y(dot.at.y))
    }

    private fun up(canvas: Canvas, tick: AxisTick, axis: Float, y: Float) {
        paints.tick(canvas, axis - TICK * dp, y, axis, y)
        words.textAlign = Paint.Align.RIGHT
        canvas.drawText(tick.words, axis - (TICK + GAP) * dp, y + high / 2 - words.fontMetrics.descent, words)
    }

    /** The words stay within the view, and those that would run into the ones before them are left out. */
    private fun across(canvas: Canvas, ticks: List<AxisTick>, axis: Float, x: (Double) -> Float) {
        words.textAlign = Paint.Align.LEFT
        var free = 0f
        for (tick in ticks) {
            val at = x(tick.at)
            paints.tick(canvas, at, axis, at, axis + TICK * dp)
            val wide = words.measureText(tick.words)
            val start = (at - wide / 2).coerceIn(0f, (width - wide).coerceAtLeast(0f))
            if (start < free) continue
            canvas.drawText(tick.words, start, axis + (TICK + GAP) * dp - words.fontMetrics.ascent, words)
            free = start + wide + GAP * dp
        }
    }

    private companion object {
        const val MARGIN = 8
        const val TICK = 4
        const val GAP = 4
    }
}

/** What stands for something in a chart, by itself. */
class ChartKey(context: Context, attributes: AttributeSet?) : View(context, attributes) {
    var entry: LegendEntry? = null
        set(value) {
            field = value
            invalidate()
        }

    private val paints = ChartPaints(context)

    override fun onDraw(canvas: Canvas) {
        val entry = entry ?: return
        val middle = height / 2f
        val edge = EDGE * paints.dp
        val (mark, stroke) = entry.mark to entry.stroke
        when {
            mark != null -> paints.mark(canvas, mark, width / 2f, middle)
            stroke != null -> paints.line(canvas, stroke, listOf(edge, width - edge), listOf(middle, middle))
            else -> paints.band(canvas, edge, edge, width - edge, height - edge)
        }
    }

    private companion object {
        const val EDGE = 3
    }
}
