package studio.laydown.desk

import android.graphics.Bitmap
import android.graphics.BitmapFactory
import android.graphics.Canvas
import android.graphics.Color
import android.graphics.Paint
import android.graphics.RectF
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import java.io.File
import kotlin.math.ceil

/** Puts all pictures of the folder of screens on one sheet, `contact-sheet.png`, each with its name below. */
@RunWith(RobolectricTestRunner::class)
class ContactSheet {
    @Test
    fun make() {
        val folder = File(checkNotNull(System.getProperty(Phone.SCREENS)) { "-D${Phone.SCREENS} names no folder" })
        val files = folder.listFiles { file -> file.extension == "png" && file.nameWithoutExtension != SHEET }.orEmpty().sorted()
        check(files.isNotEmpty()) { "no pictures in $folder" }
        val sheet = draw(files)
        File(folder, "$SHEET.png").outputStream().use { check(sheet.compress(Bitmap.CompressFormat.PNG, 100, it)) }
        println("${files.size} screens and $SHEET.png in ${folder.canonicalPath}")
    }

    private fun draw(files: List<File>): Bitmap {
        val rows = ceil(files.size / COLUMNS.toFloat()).toInt()
        val sheet = Bitmap.createBitmap(COLUMNS * CELL + GAP, rows * (CELL + NAME) + GAP, Bitmap.Config.ARGB_8888)
        val canvas = Canvas(sheet)
        canvas.drawColor(Color.rgb(122, 118, 112))
        val smooth = Paint(Paint.FILTER_BITMAP_FLAG or Paint.ANTI_ALIAS_FLAG)
        val words = Paint(Paint.ANTI_ALIAS_FLAG).apply {
            color = Color.WHITE
            textSize = 20f
            textAlign = Paint.Align.CENTER
        }
        files.forEachIndexed { i, file ->
            val left = GAP + (i % COLUMNS) * CELL.toFloat()
            val top = GAP + (i / COLUMNS) * (CELL + NAME).toFloat()
            val screen = checkNotNull(BitmapFactory.decodeFile(file.path)) { "$file is not a picture" }
            val room = CELL - GAP
            val scale = minOf(room / screen.width.toFloat(), room / screen.height.toFloat())
            val (width, height) = screen.width * scale to screen.height * scale
            val x = left + (room - width) / 2
            canvas.drawBitmap(screen, null, RectF(x, top, x + width, top + height), smooth)
            canvas.drawText(file.nameWithoutExtension, left + room / 2, top + height + NAME * 0.6f, words)
            screen.recycle()
        }
        return sheet
    }

    private companion object {
        const val SHEET = "contact-sheet"
        const val COLUMNS = 4
        const val CELL = 560
        const val NAME = 40
        const val GAP = 20
    }
}
