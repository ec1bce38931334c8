package studio.laydown

import android.graphics.Bitmap
import android.graphics.Canvas
import android.graphics.Rect
import android.text.TextPaint
import android.view.View
import android.view.ViewGroup
import android.widget.ScrollView
import android.widget.TextView
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.desktop.Look
import studio.laydown.desktop.Phone
import kotlin.math.abs

/** The Weigh screen fits every phone: no digit is lost, nothing scrolls, nothing moves. */
@RunWith(RobolectricTestRunner::class)
class BenchTest {
    @Test
    fun theReadingNeverLosesADigit() = weighing { phone ->
        typeTwice(phone, "1412.3")
        for (look in LOOKS) {
            phone.look = look
            phone.until("Glazed piece 1412.3 g")
            val readings = phone.part<ViewGroup>(R.id.readings)
            assertEquals("$look", 2, readings.childCount)
            for (at in 0 until readings.childCount) {
                val cell = readings.getChildAt(at)
                assertTrue("$look: a field is ${cell.dp(cell.height)} dp high", cell.dp(cell.height) >= 72)
                val digits = cell.get<TextView>(R.id.reading_text)
                assertTrue("$look: digits of ${digits.dp(digits.textSize.toInt())} dp", digits.dp(digits.textSize.toInt()) in 14f..40f)
                assertSameInk("$look, field $at", digits, "1412.3", phone.picture())
            }
        }
    }

    @Test
    fun digitsGetSmallerAsMoreAreTyped() = weighing { phone ->
        phone.look = Look.SMALL
        phone.await("the way") { phone.shows(ScreensTest.WAY) }
        typeTwice(phone, "14123.45")
        phone.until("Glazed piece 14123.45 g")
        for (at in 0..1) {
            val digits = phone.part<ViewGroup>(R.id.readings).getChildAt(at).get<TextView>(R.id.reading_text)
            assertSameInk("field $at", digits, "14123.45", phone.picture())
        }
    }

    @Test
    fun fieldsStandAboveOneAnotherWhereLettersAreLargeOrTheScreenIsNarrow() = weighing { phone ->
        typeTwice(phone, "1412.3")
        fun above(look: Look): Boolean {
            phone.look = look
            phone.until("Glazed piece 1412.3 g")
            val readings = phone.part<ViewGroup>(R.id.readings)
            return readings.getChildAt(0).bottom <= readings.getChildAt(1).top
        }
        assertFalse(above(Look()))
        assertTrue(above(Look(fontScale = 1.3f)))
        assertTrue(above(Look(across = 360, along = 740)))
        // There both would push the aim off the screen; their digits are as large as above.
        assertFalse(above(Look.SMALL))
    }

    @Test
    fun nothingScrollsAndKeysAndSlotHaveTheirHeight() = weighing { phone ->
        for ((across, along) in SIZES + (360 to 800) + (393 to 852)) for (two in listOf(false, true)) {
            phone.look = Look(across = across, along = along)
            phone.await("the way") { phone.activity.window.decorView.findViewById<View>(R.id.way)?.contentDescription != null }
            if (phone.part<ViewGroup>(R.id.readings).childCount != (if (two) 2 else 1)) phone.tap(R.id.way)
            phone.await("the fields") { phone.part<ViewGroup>(R.id.readings).childCount == if (two) 2 else 1 }
            val where = "$across by $along, two weights: $two"
            val scroll = phone.part<ScrollView>(R.id.scroll)
            assertFalse("$where: it scrolls by ${scroll.getChildAt(0).height - scroll.height} px", scroll.canScrollVertically(1))
            val readings = phone.part<ViewGroup>(R.id.readings)
            assertTrue("$where: the fields reach beyond their row", readings.getChildAt(readings.childCount - 1).right <= readings.width)
            assertEquals(where, emptyList<String>(), phone.audit())
            val slot = phone.part<View>(R.id.slot)
            assertTrue("$where: the slot has ${slot.dp(slot.height)} dp", slot.dp(slot.height - slot.paddingTop - slot.paddingBottom) >= 112)
            val key = phone.part<View>(R.id.key_5)
            assertTrue("$where: a key has ${key.dp(key.width)} by ${key.dp(key.height)} dp", key.dp(key.height) >= 56 && key.dp(key.width) >= 48)
        }
    }

    @Test
    fun nothingMovesWhenAVerdictComesAndWhenItIsSaved() = weighing { phone ->
        for (look in listOf(Look(), Look(across = 360, along = 740), Look.SMALL, Look(landscape = true), Look(fontScale = 1.5f))) {
            phone.look = look
            phone.await("the aim") { phone.texts().any { it.startsWith("Aim for ") } }
            val before = phone.places()
            phone.key("20.9")
            phone.until("WITHIN")
            assertEquals("$look: as the verdict comes", before, phone.places())
            phone.tap("Save")
            phone.until("Undo")
            assertEquals("$look: as it is saved", before, phone.places())
            phone.tap(R.id.target)
            phone.until("Details")
            assertEquals("$look: as the details open", before, phone.places())
            phone.back()
            phone.key("1")
            phone.tap("Delete a digit; hold to clear")
        }
    }

    @Test
    fun withLargerTextNothingShrinks() = weighing { phone ->
        phone.key("20.9")
        for ((across, along) in SIZES) {
            var before = emptyMap<Int, Float>()
            for (scale in SCALES) {
                phone.look = Look(across = across, along = along, fontScale = scale)
                phone.until("WITHIN")
                val sizes = WORDS.associateWith { phone.part<TextView>(it).textSize }
                for ((id, size) in sizes) {
                    val name = phone.activity.resources.getResourceEntryName(id)
                    assertTrue("$across by $along: $name shrinks to $size at $scale", size >= before.getOrDefault(id, 0f))
                }
                before = sizes
            }
        }
    }

    @Test
    fun saveFollowsTheVerdict() = weighing { phone ->
        val save = { phone.part<TextView>(R.id.save) }
        assertFalse(save().isEnabled)
        phone.key("20.9")
        phone.until("WITHIN")
        assertTrue(save().isEnabled && !save().isActivated && save().text == "Save")
        for (digits in listOf("17.2", "24.0")) {
            phone.longTap("Delete a digit; hold to clear")
            phone.key(digits)
            phone.until("Save as it is")
            assertTrue(digits, save().isEnabled && save().isActivated)
        }
        phone.longTap("Delete a digit; hold to clear")
        phone.key("900")
        phone.await("the refusal") { phone.texts().any { it.startsWith("900.0 g is more glaze") } }
        assertFalse(save().isEnabled)
        phone.longTap("Delete a digit; hold to clear")
        phone.key("17.2")
        phone.touch("Save as it is")
        phone.await("what was saved") { phone.said("Saved: Breakfast mug, inside, 17.2 g, short.") != null }
    }

    @Test
    fun afterSavingTheOtherSideAndUndoStandInOneRow() = weighing { phone ->
        phone.key("20.9")
        phone.until("WITHIN")
        phone.tap("Save")
        phone.until("Undo")
        val (undo, next) = listOf("Undo", "Outside of this piece").map { words -> phone.labels().single { it.text == words }.bounds }
        assertTrue("$undo and $next", undo.top == next.top && undo.bottom == next.bottom && undo.left > next.right)
    }

    private fun weighing(work: (Phone) -> Unit) = Pottery.furnished().use { phone ->
        phone.await("the studio") { phone.texts().any { it.startsWith("Aim for ") } }
        work(phone)
    }

    private fun typeTwice(phone: Phone, digits: String) {
        phone.tap(ScreensTest.WAY)
        phone.until("Bare piece  g")
        phone.key(digits)
        phone.touch("Next: Glazed piece")
        phone.await("the last field") { phone.shows("Save") }
        phone.key(digits)
    }

    /** Where on the screen everything lies that a thumb may be on its way to. */
    private fun Phone.places(): Map<String, Rect> = STAYING.associate { id ->
        val at = IntArray(2).also(part<View>(id)::getLocationOnScreen)
        activity.resources.getResourceEntryName(id) to part<View>(id).let { Rect(at[0], at[1], at[0] + it.width, at[1] + it.height) }
    }

    private fun <T : View> Phone.part(id: Int): T = activity.window.decorView.get(id)

    private fun View.dp(pixels: Int): Float = pixels / resources.displayMetrics.density

    /** That the dots where [view] lies show [words] and nothing less: they are set beside the same words painted alone. */
    private fun assertSameInk(what: String, view: TextView, words: String, picture: Bitmap) {
        val at = IntArray(2).also(view::getLocationOnScreen)
        val shown = Bitmap.createBitmap(picture, at[0], at[1], view.width, view.height)
        val ground = shown.getPixel(0, 0)
        val paint = TextPaint(view.paint).apply { color = view.currentTextColor }
        val painted = Bitmap.createBitmap((paint.measureText(words) + 16).toInt(), (paint.textSize * 2).toInt(), Bitmap.Config.ARGB_8888)
        Canvas(painted).apply {
            drawColor(ground)
            drawText(words, 8f, paint.textSize * 1.5f, paint)
        }
        val near = far(ground, paint.color) / 5
        fun isInk(dot: Int) = far(dot, paint.color) < near
        val (one, other) = ink(shown, ::isInk) to ink(painted, ::isInk)
        assertTrue("$what: ${one.width()} by ${one.height()} dots instead of ${other.width()} by ${other.height()}",
            abs(one.width() - other.width()) <= 1 && abs(one.height() - other.height()) <= 1)
        var different = 0
        for (y in 0 until minOf(one.height(), other.height())) for (x in 0 until minOf(one.width(), other.width())) {
            if (isInk(shown.getPixel(one.left + x, one.top + y)) != isInk(painted.getPixel(other.left + x, other.top + y))) different++
        }
        val share = different.toDouble() / (one.width() * one.height())
        // Letters may lie half a dot beside where they are painted alone.
        assertTrue("$what: ${(share * 100).toInt()}% of the dots differ", share < 0.06)
        listOf(shown, painted, picture).forEach(Bitmap::recycle)
    }

    /** The box around all dots that are ink. */
    private fun ink(picture: Bitmap, isInk: (Int) -> Boolean): Rect {
        val box = Rect(Int.MAX_VALUE, Int.MAX_VALUE, 0, 0)
        for (y in 0 until picture.height) for (x in 0 until picture.width) {
            if (isInk(picture.getPixel(x, y))) box.set(minOf(box.left, x), minOf(box.top, y), maxOf(box.right, x + 1), maxOf(box.bottom, y + 1))
        }
        return box
    }

    /** How far two colours are apart, over their red, green and blue. */
    private fun far(one: Int, other: Int): Int = listOf(16, 8, 0).sumOf { abs((one shr it and 0xFF) - (other shr it and 0xFF)) }

    private companion object {
        val SIZES = listOf(320 to 568, 360 to 740, 411 to 891)
        val SCALES = listOf(1f, 1.3f, 1.5f, 2f)
        val LOOKS = SIZES.flatMap { (across, along) ->
            SCALES.flatMap { scale ->
                listOf(false, true).flatMap { night ->
                    listOf(false, true).map { lying -> Look(night, lying, scale, across = across, along = along) }
                }
            }
        }
        val WORDS = listOf(
            R.id.chosen_form, R.id.chosen_glaze, R.id.chosen_zone, R.id.chosen_scale, R.id.target_wet, R.id.target_span,
            R.id.verdict_headline, R.id.verdict_act, R.id.verdict_detail, R.id.reading_label, R.id.reading_text, R.id.way, R.id.save, R.id.key_5,
        )
        val STAYING = listOf(
            R.id.choose_form, R.id.choose_glaze, R.id.choose_zone, R.id.choose_scale, R.id.target, R.id.slot, R.id.readings, R.id.way,
            R.id.key_1, R.id.key_5, R.id.key_0, R.id.key_delete, R.id.save,
        )
    }
}
