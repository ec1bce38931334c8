package studio.laydown.desktop

import android.graphics.Bitmap
import android.graphics.BitmapFactory
import android.graphics.Canvas
import android.graphics.Color
import android.graphics.Paint
import android.graphics.RectF
import android.text.TextPaint
import android.text.TextUtils
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import java.io.File

/** Puts all pictures of the folder of screens on one sheet, `contact-editor.png`, each with its name below. */
@RunWith(RobolectricTestRunner::class)
class ContactSheet {
    @Test
    fun make() {
        val folder = File(checkNotNull(System.getProperty(Phone.SCREENS)) { "-D${Phone.SCREENS} names no folder" })
        val files = folder.listFiles { file -> file.extension == "png" && file.nameWithoutExtension != EDITOR }.orEmpty().sorted()
        check(files.isNotEmpty()) { "no pictures in $folder" }
        val editor = draw(files)
        File(folder, "$EDITOR.png").outputStream().use { check(editor.compress(Bitmap.CompressFormat.PNG, 100, it)) }
        println("${files.size} screens and $EDITOR.png in ${folder.canonicalPath}")
    }

    /** All at one scale, from left to right and down, as lines of words are set. */
    private fun draw(files: List<File>): Bitmap {
        // Sizes first and pictures one at a time: together they would not fit into memory.
        val sizes = files.map { file ->
            BitmapFactory.Options().also {
                it.inJustDecodeBounds = true
                BitmapFactory.decodeFile(file.path, it)
            }
        }
        val places = mutableListOf<RectF>()
        var (left, top, lowest) = Triple(GAP, GAP, GAP)
        for (size in sizes) {
            val (width, height) = size.outWidth * SCALE to size.outHeight * SCALE
            if (left + width + GAP > WIDTH && left > GAP) {
                left = GAP
                top = lowest + NAME
            }
            places += RectF(left, top, left + width, top + height)
            left += width + GAP
            lowest = maxOf(lowest, top + height)
        }
        val editor = Bitmap.createBitmap(WIDTH, (lowest + NAME).toInt(), Bitmap.Config.ARGB_8888)
        val canvas = Canvas(editor)
        canvas.drawColor(Color.rgb(214, 208, 198))
        for ((i, place) in places.withIndex()) {
            val screen = checkNotNull(BitmapFactory.decodeFile(files[i].path)) { "${files[i]} is not a picture" }
            canvas.drawBitmap(screen, null, place, smooth)
            screen.recycle()
            val name = TextUtils.ellipsize(files[i].nameWithoutExtension, words, place.width(), TextUtils.TruncateAt.MIDDLE)
            canvas.drawText(name, 0, name.length, place.left, place.bottom + NAME / 2, words)
        }
        return editor
    }

    private val smooth = Paint(Paint.FILTER_BITMAP_FLAG or Paint.ANTI_ALIAS_FLAG)
    private val words = TextPaint(Paint.ANTI_ALIAS_FLAG).apply {
        color = Color.rgb(40, 37, 33)
        textSize = 19f
    }

    private companion object {
        const val EDITOR = "contact-sheet"
        const val WIDTH = 2000
        const val SCALE = 0.36f
        const val NAME = 48f
        const val GAP = 24f
    }
}
