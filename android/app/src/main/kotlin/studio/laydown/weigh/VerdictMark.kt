package studio.laydown.weigh

import android.content.Context
import android.graphics.Canvas
import android.graphics.Paint
import android.graphics.Path
import android.util.AttributeSet
import android.view.View
import studio.laydown.R
import studio.laydown.core.VerdictKind
import kotlin.math.min

/**
 * A verdict as a shape that is known at arm's length: within is a filled disc with a check on it; short an arrow that falls away
 * under the line; over an arrow that rises above it; cannot tell a broken ring with a wave; a guess an open diamond round a dot.
 */
class VerdictMark(context: Context, attributes: AttributeSet?) : View(context, attributes) {
    var kind: VerdictKind? = null
        set(value) {
            field = value
            invalidate()
        }

    private val paint = Paint(Paint.ANTI_ALIAS_FLAG).apply {
        strokeCap = Paint.Cap.ROUND
        strokeJoin = Paint.Join.ROUND
    }
    private val path = Path()

    override fun onDraw(canvas: Canvas) {
        val kind = kind ?: return
        val side = min(width, height).toFloat()
        canvas.save()
        canvas.translate((width - side) / 2, (height - side) / 2)
        // Drawn on a square of 48.
        canvas.scale(side / 48, side / 48)
        paint.color = context.getColor(kind.ink)
        when (kind) {
            VerdictKind.WITHIN -> within(canvas)
            VerdictKind.SHORT -> arrow(canvas, up = false)
            VerdictKind.OVER -> arrow(canvas, up = true)
            VerdictKind.CANNOT_TELL -> cannotTell(canvas)
            VerdictKind.GUESS -> guess(canvas)
            VerdictKind.PROBABLY_WITHIN -> probablyWithin(canvas)
        }
        canvas.restore()
    }

    private fun within(canvas: Canvas) {
        paint.style = Paint.Style.FILL
        canvas.drawCircle(24f, 24f, 20f, paint)
        stroke(5f, context.getColor(R.color.surface))
        path.rewind()
        path.moveTo(14.5f, 24.5f)
        path.lineTo(21.5f, 31.5f)
        path.lineTo(33.5f, 17.5f)
        canvas.drawPath(path, paint)
    }

    /** As within, but the disc is open. */
    private fun probablyWithin(canvas: Canvas) {
        stroke(4.5f, paint.color)
        canvas.drawCircle(24f, 24f, 19f, paint)
        path.rewind()
        path.moveTo(14.5f, 24.5f)
        path.lineTo(21.5f, 31.5f)
        path.lineTo(33.5f, 17.5f)
        canvas.drawPath(path, paint)
    }

    /** An arrow away from the line that the coat should have met. */
    private fun arrow(canvas: Canvas, up: Boolean) {
        val color = paint.color
        paint.style = Paint.Style.FILL
        path.rewind()
        val (tip, wings, tail) = if (up) Triple(4f, 22f, 34f) else Triple(44f, 26f, 14f)
        path.moveTo(24f, tip)
        path.lineTo(42f, wings)
        path.lineTo(31f, wings)
        path.lineTo(31f, tail)
        path.lineTo(17f, tail)
        path.lineTo(17f, wings)
        path.lineTo(6f, wings)
        path.close()
        canvas.drawPath(path, paint)
        stroke(5f, color)
        val level = if (up) 42f else 6f
        canvas.drawLine(10f, level, 38f, level, paint)
    }

    private fun cannotTell(canvas: Canvas) {
        stroke(4.5f, paint.color)
        for (start in listOf(20f, 110f, 200f, 290f)) canvas.drawArc(5f, 5f, 43f, 43f, start, 50f, false, paint)
        path.rewind()
        path.moveTo(14f, 26f)
        path.cubicTo(18f, 17f, 22f, 20f, 24f, 24f)
        path.cubicTo(26f, 28f, 30f, 31f, 34f, 22f)
        canvas.drawPath(path, paint)
    }

    private fun guess(canvas: Canvas) {
        val color = paint.color
        stroke(4.5f, color)
        path.rewind()
        path.moveTo(24f, 5f)
        path.lineTo(43f, 24f)
        path.lineTo(24f, 43f)
        path.lineTo(5f, 24f)
        path.close()
        canvas.drawPath(path, paint)
        paint.style = Paint.Style.FILL
        canvas.drawCircle(24f, 24f, 5f, paint)
    }

    private fun stroke(width: Float, color: Int) {
        paint.style = Paint.Style.STROKE
        paint.strokeWidth = width
        paint.color = color
    }
}

/** The colour of a verdict's words and mark. */
val VerdictKind.ink: Int
    get() = when (this) {
        VerdictKind.WITHIN, VerdictKind.PROBABLY_WITHIN -> R.color.within
        VerdictKind.SHORT -> R.color.short_of
        VerdictKind.OVER -> R.color.over
        VerdictKind.CANNOT_TELL -> R.color.cannot_tell
        VerdictKind.GUESS -> R.color.ink
    }

/** The card a verdict lies on. */
val VerdictKind.card: Int
    get() = when (this) {
        VerdictKind.WITHIN -> R.drawable.within_card
        VerdictKind.SHORT -> R.drawable.short_of_card
        VerdictKind.OVER -> R.drawable.over_card
        VerdictKind.CANNOT_TELL -> R.drawable.cannot_tell_card
        VerdictKind.GUESS, VerdictKind.PROBABLY_WITHIN -> R.drawable.guess_card
    }
