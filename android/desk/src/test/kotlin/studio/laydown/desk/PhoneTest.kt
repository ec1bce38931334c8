package studio.laydown.desk

import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.R

/** The harness itself: each thing a person can do to the phone reaches the app, and what the app does is noticed. */
@RunWith(RobolectricTestRunner::class)
class PhoneTest {
    @Test
    fun tapsAreFeltHeardAndSeen() = Phone().use {
        it.tap("Tap")
        it.tap(R.id.tap)
        assertTrue(it.shows("2 taps"))
        assertEquals(listOf("1 tap", "2 taps"), it.said)
        assertEquals(2, it.ticks)
    }

    @Test
    fun typesBeyondAscii() = Phone().use {
        it.tap("Note")
        it.type("Glasur: grün – 31,5 g")
        assertTrue(it.texts().toString(), it.shows("Glasur: grün – 31,5 g"))
    }

    @Test
    fun dialogsTakeAllTouches() = Phone().use {
        it.tap("Tap")
        it.tap("Ask")
        assertTrue(it.shows("Start again at nought?"))
        val hidden = runCatching { it.tap("Tap") }.exceptionOrNull()
        assertTrue("$hidden", hidden is IllegalStateException)
        it.tap("Yes")
        assertTrue(it.shows("0 taps"))
        it.tap("Ask")
        it.back()
        assertTrue(!it.shows("Start again at nought?"))
    }

    @Test
    fun activitiesStackAndComeBack() = Phone().use {
        it.tap("Row 1")
        assertEquals(listOf("laydown"), it.texts())
        it.rotate()
        it.back()
        assertTrue(it.shows("Workbench"))
        it.back()
        assertTrue(it.left)
        it.launch()
        assertTrue(it.shows("Workbench"))
    }

    @Test
    fun listsScrollAndToastsPass() = Phone().use {
        it.scroll()
        assertTrue(!it.shows("Row 1"))
        it.tap("Row 20")
        assertEquals("Row 20", it.toast)
        it.idle(2_100)
        assertEquals(null, it.toast)
    }

    @Test
    fun wheelsScroll() = Phone().use {
        it.wheel(400f, 1000f, -4f)
        assertTrue(!it.shows("Row 1"))
        it.wheel(400f, 1000f, 4f)
        assertTrue(it.shows("Row 1"))
    }

    @Test
    fun stateOutlivesEveryLook() = Phone().use {
        it.tap("Note")
        it.type("kept")
        it.tap("Tap")
        for (look in Look.ALL) {
            it.look = look
            assertTrue("$look: ${it.texts()}", it.shows("kept") && it.shows("1 tap"))
            assertEquals(if (look.landscape) 1782 else 822, it.size.x)
        }
        it.restart()
        assertTrue(it.shows("kept") && it.shows("1 tap"))
    }

    @Test
    fun picturesAreTheSameEveryTime() = Phone().use { phone ->
        phone.tap("Ask")
        val first = phone.picture()
        val second = phone.picture()
        assertTrue(first.sameAs(second))
        assertTrue("the dialog's surroundings are darkened", android.graphics.Color.luminance(first.getPixel(400, 300)) < 0.4f)
    }
}
