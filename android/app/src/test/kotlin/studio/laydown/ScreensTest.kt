package studio.laydown

import org.junit.Assert.assertEquals
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.desk.Look
import studio.laydown.desk.Phone

/**
 * Every screen and state of the app, in every look: a picture of each in target/screens, and each audited for size, names and
 * words that are cut. Add a screen by adding a test: the way to it, as a potter goes there.
 */
@RunWith(RobolectricTestRunner::class)
class ScreensTest {
    @Test
    fun bench() = screen("bench") { tap("Tap") }

    @Test
    fun question() = screen("bench-question") { tap("Ask") }

    private fun screen(name: String, go: Phone.() -> Unit) {
        val faults = Look.ALL.flatMap { look ->
            Phone(look).use { phone ->
                phone.go()
                phone.screenshot("$name-${look.words}")
                phone.audit().map { "$name-${look.words}: $it" }
            }
        }
        assertEquals(emptyList<String>(), faults)
    }
}
