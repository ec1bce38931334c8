package studio.laydown.desktop

import android.graphics.Bitmap
import android.graphics.Canvas
import android.graphics.Color
import android.graphics.Paint
import android.graphics.Rect
import android.graphics.RectF
import android.text.Layout
import android.text.StaticLayout
import android.text.TextPaint
import android.util.DisplayMetrics
import android.view.View
import org.robolectric.util.ReflectionHelpers
import org.robolectric.util.ReflectionHelpers.ClassParameter

/**
 * Paints the phone's screen: every window at its place with its shadows, and what on a phone the system draws around them
 * (the dimming behind a dialog, a toast, the status bar, the bar of gesture navigation).
 */
internal class Picture {
    private var scratch: Bitmap? = null
    private val paint = Paint(Paint.ANTI_ALIAS_FLAG)
    private val text = TextPaint(Paint.ANTI_ALIAS_FLAG)

    /** What the system draws over the app. */
    class Over(val clock: String, val toast: String?, val bars: Rect, val darkOnLight: Boolean)

    /** Paints [windows], lowest first, and what lies [over] them. */
    fun paint(into: Bitmap, windows: List<Window>, over: Over, metrics: DisplayMetrics) {
        val canvas = Canvas(into)
        canvas.drawColor(Color.BLACK)
        for (window in windows) {
            if (window.dim > 0f) canvas.drawColor(Color.argb((window.dim * 255).toInt(), 0, 0, 0))
            val bounds = window.bounds
            if (bounds.isEmpty) continue
            val own = scratchOf(bounds.width(), bounds.height())
            render(window.root, own)
            canvas.drawBitmap(own, bounds.left.toFloat(), bounds.top.toFloat(), null)
        }
        bars(canvas, over, metrics, dimmed = windows.any { it.dim > 0f })
        over.toast?.let { toast(canvas, it, over.bars, metrics) }
    }

    /** With the hardware renderer, which alone draws elevation shadows; Robolectric keeps the call to itself. */
    private fun render(root: View, into: Bitmap) {
        ReflectionHelpers.callStaticMethod<Unit>(
            RENDERER, "takeScreenshot", ClassParameter.from(View::class.java, root), ClassParameter.from(Bitmap::class.java, into),
        )
    }

    private fun scratchOf(width: Int, height: Int): Bitmap {
        scratch?.let {
            if (it.width == width && it.height == height) return it
            it.recycle()
        }
        return Bitmap.createBitmap(width, height, Bitmap.Config.ARGB_8888).also { scratch = it }
    }

    private fun bars(canvas: Canvas, over: Over, metrics: DisplayMetrics, dimmed: Boolean) {
        val dp = metrics.density
        val ink = if (over.darkOnLight && !dimmed) Color.argb(200, 0, 0, 0) else Color.argb(230, 255, 255, 255)
        val middle = over.bars.top / 2f
        text.color = ink
        text.textSize = 13 * dp
        text.isFakeBoldText = true
        text.textAlign = Paint.Align.LEFT
        canvas.drawText(over.clock, 20 * dp, middle + 5 * dp, text)
        text.isFakeBoldText = false
        paint.color = ink
        paint.style = Paint.Style.FILL
        val right = canvas.width - 20 * dp
        canvas.drawRoundRect(RectF(right - 20 * dp, middle - 5 * dp, right - 2 * dp, middle + 5 * dp), 2.5f * dp, 2.5f * dp, paint)
        canvas.drawRect(right - 2 * dp, middle - 2 * dp, right, middle + 2 * dp, paint)
        if (over.bars.bottom > 0) {
            val at = canvas.height - over.bars.bottom / 2f
            val half = 54 * dp
            canvas.drawRoundRect(RectF(canvas.width / 2f - half, at - 2 * dp, canvas.width / 2f + half, at + 2 * dp), 2 * dp, 2 * dp, paint)
        }
    }

    private fun toast(canvas: Canvas, words: String, bars: Rect, metrics: DisplayMetrics) {
        val dp = metrics.density
        text.color = Color.WHITE
        @Suppress("DEPRECATION") // a toast scales as the rest of the phone's words do
        text.textSize = 14 * metrics.scaledDensity
        text.textAlign = Paint.Align.LEFT
        val room = (canvas.width - 96 * dp).toInt()
        val lines = StaticLayout.Builder.obtain(words, 0, words.length, text, room)
            .setAlignment(Layout.Alignment.ALIGN_CENTER).build()
        val widest = (0 until lines.lineCount).maxOf(lines::getLineWidth)
        val bottom = canvas.height - bars.bottom - 48 * dp
        val box = RectF(
            (canvas.width - widest) / 2 - 20 * dp, bottom - lines.height - 24 * dp, (canvas.width + widest) / 2 + 20 * dp, bottom,
        )
        paint.color = Color.argb(235, 50, 48, 46)
        val round = minOf(box.height() / 2, 24 * dp)
        canvas.drawRoundRect(box, round, round, paint)
        canvas.save()
        canvas.translate((canvas.width - room) / 2f, box.top + 12 * dp)
        lines.draw(canvas)
        canvas.restore()
    }

    private companion object {
        val RENDERER: Class<*> = Class.forName("org.robolectric.shadows.HardwareRenderingScreenshot")
    }
}
