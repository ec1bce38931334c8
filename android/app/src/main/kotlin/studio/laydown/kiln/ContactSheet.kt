package studio.laydown.kiln

import android.graphics.Bitmap
import android.graphics.Canvas
import android.graphics.Color
import android.graphics.Paint
import android.graphics.RectF
import android.text.Layout
import android.text.StaticLayout
import android.text.TextPaint
import android.text.TextUtils
import studio.laydown.core.ContactSheetView
import studio.laydown.core.ContactTile
import kotlin.math.min

/** A firing on pages of A4, in points of 1/72 inch: black on white, since it is to be printed. */
class ContactSheet(private val editor: ContactSheetView, private val noPhoto: String, private val pageOf: (Int, Int) -> String) {
    /** One piece by itself has the whole page. */
    private val across = if (editor.tiles.size == 1) 1 else ACROSS
    private val down = if (editor.tiles.size == 1) 1 else DOWN
    private val pages = editor.tiles.chunked(across * down).ifEmpty { listOf(emptyList()) }

    private val title = words(18f, bold = true)
    private val strong = words(if (editor.tiles.size == 1) 20f else 10f, bold = true)
    private val plain = words(if (editor.tiles.size == 1) 14f else 9f, bold = false)
    private val frame = Paint(Paint.ANTI_ALIAS_FLAG).apply {
        style = Paint.Style.STROKE
        strokeWidth = 0.75f
        color = Color.DKGRAY
    }
    private val smooth = Paint(Paint.FILTER_BITMAP_FLAG or Paint.ANTI_ALIAS_FLAG)

    private fun words(size: Float, bold: Boolean) = TextPaint(Paint.ANTI_ALIAS_FLAG).apply {
        textSize = size
        color = Color.BLACK
        isFakeBoldText = bold
    }

    /** All pages below one another as one picture, [scale] pixels to a point. */
    fun picture(scale: Float): Bitmap = painted(scale, pages.size) { canvas ->
        for (page in pages.indices) {
            draw(canvas, page)
            canvas.translate(0f, HEIGHT.toFloat())
        }
    }

    /** One page by itself. */
    fun page(number: Int, scale: Float): Bitmap = painted(scale, 1) { draw(it, number) }

    private fun painted(scale: Float, pages: Int, draw: (Canvas) -> Unit): Bitmap {
        val bitmap = Bitmap.createBitmap((WIDTH * scale).toInt(), (HEIGHT * scale).toInt() * pages, Bitmap.Config.ARGB_8888)
        val canvas = Canvas(bitmap)
        canvas.drawColor(Color.WHITE)
        canvas.scale(scale, scale)
        draw(canvas)
        return bitmap
    }

    /** How many pages there are. */
    val size: Int get() = pages.size

    private fun draw(canvas: Canvas, page: Int) {
        var y = EDGE
        y += canvas.write(editor.title, title, EDGE, y, WIDTH - 2 * EDGE, lines = 2) + GAP / 2
        for (line in editor.firing) y += canvas.write(line, plain, EDGE, y, WIDTH - 2 * EDGE, lines = 2)
        if (editor.summary.isNotEmpty()) y += canvas.write(editor.summary, plain, EDGE, y, WIDTH - 2 * EDGE, lines = 3)
        y += GAP
        val width = (WIDTH - 2 * EDGE - (across - 1) * GAP) / across
        val height = (HEIGHT - EDGE - FOOT - y - (down - 1) * GAP) / down
        pages[page].forEachIndexed { at, tile ->
            draw(canvas, tile, EDGE + at % across * (width + GAP), y + at / across * (height + GAP), width, height)
        }
        canvas.write(pageOf(page + 1, pages.size), plain, EDGE, HEIGHT - FOOT, WIDTH - 2 * EDGE, lines = 1)
    }

    private fun draw(canvas: Canvas, tile: ContactTile, x: Float, y: Float, width: Float, height: Float) {
        val room = RectF(x, y, x + width, y + height - if (editor.tiles.size == 1) WORDS_OF_ONE else WORDS)
        val photo = picture(tile.photo, needed = (width * 3).toInt())
        if (photo == null) {
            canvas.drawRect(room, frame)
            canvas.write(noPhoto, plain, x + GAP, room.centerY() - 6, width - 2 * GAP, lines = 1)
        } else {
            val scale = min(room.width() / photo.width, room.height() / photo.height)
            val (across, down) = photo.width * scale to photo.height * scale
            val left = room.centerX() - across / 2
            // One by itself hangs from the top, with its record right under it; those in rows stand on one line.
            if (editor.tiles.size == 1) room.bottom = room.top + down
            canvas.drawBitmap(photo, null, RectF(left, room.bottom - down, left + across, room.bottom), smooth)
            photo.recycle()
        }
        var below = room.bottom + GAP / 3
        below += canvas.write(tile.title, strong, x, below, width, lines = 1)
        for (coat in tile.coats.take(MOST_COATS)) below += canvas.write(coat, plain, x, below, width, lines = 2)
        canvas.write(tile.detail, plain, x, below, width, lines = 3)
    }

    /** Writes [text] into a column and answers how much of its height it took. */
    private fun Canvas.write(text: String, paint: TextPaint, x: Float, y: Float, width: Float, lines: Int): Float {
        val layout = StaticLayout.Builder.obtain(text, 0, text.length, paint, width.toInt())
            .setAlignment(Layout.Alignment.ALIGN_NORMAL).setIncludePad(false).setMaxLines(lines).setEllipsize(TextUtils.TruncateAt.END).build()
        save()
        translate(x, y)
        layout.draw(this)
        restore()
        return layout.height.toFloat()
    }

    private companion object {
        const val WIDTH = 595
        const val HEIGHT = 842
        const val EDGE = 36f
        const val FOOT = 30f
        const val GAP = 12f
        const val WORDS = 92f
        const val WORDS_OF_ONE = 180f
        const val MOST_COATS = 3
        const val ACROSS = 2
        const val DOWN = 3
    }
}
