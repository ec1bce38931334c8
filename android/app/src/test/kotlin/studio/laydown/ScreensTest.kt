package studio.laydown

import org.junit.Assert.assertEquals
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.ParameterizedRobolectricTestRunner
import org.robolectric.ParameterizedRobolectricTestRunner.Parameters
import studio.laydown.desk.Look
import studio.laydown.desk.Phone

/**
 * Every screen and state of the app, in every look, each on a new phone: a picture of each in target/screens, and each audited
 * for size, names and words that are cut. Add a screen by adding a test: the way to it, as a potter goes there.
 */
@RunWith(ParameterizedRobolectricTestRunner::class)
class ScreensTest(private val look: Look) {
    @Test
    fun bench() = screen("bench") { tap("Tap") }

    @Test
    fun question() = screen("bench-question") { tap("Ask") }

    private fun screen(name: String, go: Phone.() -> Unit) = Phone(look).use { phone ->
        phone.go()
        phone.screenshot("$name-${look.words}")
        assertEquals(emptyList<String>(), phone.audit())
    }

    companion object {
        @JvmStatic
        @Parameters(name = "{0}")
        fun looks(): List<Array<Any>> = Look.ALL.map { arrayOf(it) }
    }
}
