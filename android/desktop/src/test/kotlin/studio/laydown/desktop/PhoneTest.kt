package studio.laydown.desktop

import android.app.Activity
import android.graphics.Color
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertThrows
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import java.io.ByteArrayOutputStream

/** The phone itself: each thing a person can do to it reaches the app, and what the app does is noticed. */
@RunWith(RobolectricTestRunner::class)
class PhoneTest {
    private fun bench() = Phone(first = Bench::class.java)

    @Test
    fun tapsAreFeltHeardAndSeen() = bench().use {
        it.tap("Tap")
        it.tap(Bench.TAP)
        assertTrue(it.shows("2 taps"))
        assertEquals(listOf("1 taps", "2 taps"), it.said)
        assertEquals(2, it.ticks)
    }

    @Test
    fun typesBeyondAscii() = bench().use {
        it.tap("Note")
        it.type("Glasur: grün – 31,5 g")
        assertTrue(it.texts().toString(), it.shows("Glasur: grün – 31,5 g"))
    }

    @Test
    fun dialogsTakeAllTouches() = bench().use {
        it.tap("Tap")
        it.tap("Ask")
        assertTrue(it.shows("Start again at nought?"))
        assertThrows(IllegalStateException::class.java) { it.tap("Tap") }
        it.tap("Yes")
        assertTrue(it.shows("0 taps"))
        it.tap("Ask")
        it.back()
        assertFalse(it.shows("Start again at nought?"))
    }

    @Test
    fun aDialogGoesWithItsActivity() = bench().use {
        it.tap("Ask")
        it.rotate()
        assertFalse(it.shows("Start again at nought?"))
    }

    @Test
    fun activitiesStackAndComeBackWithAnAnswer() = bench().use {
        it.tap("Next")
        assertEquals(listOf("Second"), it.texts())
        it.back()
        assertTrue(it.texts().toString(), it.shows("Back with clay"))
    }

    @Test
    fun anActivityOutOfSightIsMadeAnewWhenItComesBack() = bench().use {
        it.tap("Next")
        it.look = it.look.copy(night = true)
        it.back()
        val night = it.activity.resources.configuration.isNightModeActive
        assertTrue(it.texts().toString(), night && it.shows("Row 1"))
    }

    @Test
    fun backLeavesAndTheIconOpensAgain() = bench().use {
        it.back()
        assertTrue(it.left)
        assertEquals(emptyList<String>(), it.texts())
        it.launch()
        assertTrue(it.shows("0 taps"))
    }

    @Test
    fun listsScrollAndToastsPass() = bench().use {
        it.scroll()
        assertFalse(it.shows("Row 1"))
        it.tap("Row 15")
        assertEquals("Row 15", it.toast)
        it.idle(2_100)
        assertEquals(null, it.toast)
    }

    @Test
    fun wheelsScroll() = bench().use {
        it.wheel(400f, 1200f, -4f)
        assertFalse(it.shows("Row 1"))
        it.wheel(400f, 1200f, 4f)
        assertTrue(it.shows("Row 1"))
    }

    @Test
    fun photographsAreAnswered() = bench().use {
        val taken = ByteArrayOutputStream()
        shadowOf(it.activity.contentResolver).registerOutputStreamSupplier(Bench.PHOTO) { taken }
        it.tap("Photograph")
        it.answerPhoto(byteArrayOf(1, 2, 3))
        assertArrayEquals(byteArrayOf(1, 2, 3), taken.toByteArray())
        assertTrue(it.shows("Photographed"))
        it.tap("Photograph")
        it.answer(Activity.RESULT_CANCELED)
        assertTrue(it.shows("Turned back"))
        assertEquals(null, it.request)
    }

    @Test
    fun stateOutlivesEveryLookAndARestart() = bench().use {
        it.tap("Note")
        it.type("kept")
        it.tap("Tap")
        for (look in Look.ALL) {
            it.look = look
            assertTrue("$look: ${it.texts()}", it.shows("kept") && it.shows("1 taps"))
            assertEquals(
                when {
                    look.landscape -> 1782
                    look == Look.SMALL -> 640
                    else -> 822
                },
                it.size.x,
            )
        }
        it.restart()
        assertTrue(it.texts().toString(), it.shows("kept") && it.shows("1 taps"))
    }

    @Test
    fun everyLookHasItsName() = assertEquals(
        listOf("light", "dark", "font-1.5", "landscape", "320x568", "de-rDE", "en-rXA"),
        Look.ALL.map { it.words },
    )

    @Test
    fun picturesAreTheSameEveryTimeAndDarkenedBehindADialog() = bench().use {
        val before = it.picture()
        assertTrue(before.sameAs(it.picture()))
        it.tap("Ask")
        val behind = it.picture().getPixel(800, 1000)
        assertTrue(Color.luminance(behind) < 0.5f * Color.luminance(before.getPixel(800, 1000)))
    }

    @Test
    fun theAuditFindsWhatATouchAndAnEarCannotUse() = bench().use {
        assertEquals(
            listOf("ImageButton is 20 by 20 dp; a thumb needs 48 by 48", "ImageButton takes a tap and has no name to be read out"),
            it.audit().filter { fault -> fault.startsWith("ImageButton") },
        )
    }
}
