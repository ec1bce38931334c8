package studio.laydown

import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import studio.laydown.desktop.Phone
import java.io.File
import java.util.concurrent.CountDownLatch

/** The phone is turned while a command is under way: its answer comes all the same, and what it could not do is said. */
@RunWith(RobolectricTestRunner::class)
class TurnTest {
    private val app: LaydownApplication get() = RuntimeEnvironment.getApplication() as LaydownApplication

    @Test
    fun aCoatIsSavedAndSaidOnceThePhoneIsTurned() = Pottery.furnished().use { phone ->
        phone.typeAWeight()
        whileHeld {
            phone.tap("Save")
            phone.rotate()
        }
        phone.until("Undo")
        assertTrue(phone.texts().toString(), phone.texts().any { it.startsWith("Saved: Breakfast mug, ") })
        assertFalse("the digits are gone", phone.shows("20.9"))
        phone.tap("Undo")
        phone.countsAgain()
    }

    @Test
    fun aCoatThatCouldNotBeSavedIsSaidOnceThePhoneIsTurnedAndItsDigitsStay() = Pottery.furnished().use { phone ->
        phone.typeAWeight()
        whileHeld {
            phone.withoutTheFile { phone.tap("Save") }
            phone.rotate()
        }
        phone.await("why it was not saved") { phone.texts().any(::isWhy) }
        assertTrue(phone.shows("20.9"))
        phone.tap("Save")
        phone.until("Undo")
        phone.tap("Undo")
        phone.countsAgain()
    }

    @Test
    fun anEditorThatIsSavedIsLeftOnceThePhoneIsTurned() = Pottery.furnished().use { phone ->
        phone.editTheBowl()
        whileHeld {
            phone.tap("Save")
            phone.rotate()
        }
        phone.until("Large bowl is saved.")
        phone.until("Forms")
    }

    @Test
    fun anEditorThatCouldNotBeSavedSaysSoOnceThePhoneIsTurned() = Pottery.furnished().use { phone ->
        phone.editTheBowl()
        whileHeld {
            phone.withoutTheFile { phone.tap("Save") }
            phone.rotate()
        }
        phone.await("why it was not saved") { phone.texts().any(::isWhy) }
        phone.until("Large bowl")
        phone.tap("Save")
        phone.until("Large bowl is saved.")
    }

    @Test
    fun whatCouldNotBeSavedIsSaidOnAnotherPageToo() = Pottery.furnished().use { phone ->
        phone.typeAWeight()
        whileHeld {
            phone.withoutTheFile { phone.tap("Save") }
            phone.tap("Buckets")
        }
        phone.await("why it was not saved") { phone.texts().any(::isWhy) }
        assertEquals("there is nothing to undo", null, phone.labels().find { it.text == "Undo" })
    }

    private fun Phone.typeAWeight() {
        until("Coat, after tare  g")
        await("the studio") { texts().any { it.startsWith("Aim for ") } }
        key("20.9")
        until("WITHIN")
    }

    /** What was saved was saved once: with it undone the day counts as before. The count has room where the phone stands. */
    private fun Phone.countsAgain() {
        until("Redo")
        rotate()
        touch("Buckets")
        touch("Weigh")
        until("3 coats today, 1 within.")
    }

    private fun Phone.editTheBowl() {
        touch("Studio")
        touch("Soup bowl")
        fillField("Name", "Large bowl")
        until("Save")
    }

    /** Does [work] while the studio is busy with something else, and lets it go on afterwards. */
    private fun whileHeld(work: () -> Unit) {
        val held = CountDownLatch(1)
        app.work.ask({ held.await() }) {}
        try {
            work()
        } finally {
            held.countDown()
        }
    }

    /** What is asked of the studio in [work] finds its file gone; what comes after finds it again. */
    private fun Phone.withoutTheFile(work: () -> Unit) {
        val away = File(Pottery.file.path + ".away")
        app.work.ask({ check(Pottery.file.renameTo(away)) }) { it.getOrThrow() }
        work()
        app.work.ask({ check(away.renameTo(Pottery.file)) }) { it.getOrThrow() }
    }

    private fun isWhy(text: String) = "moved or deleted" in text
}
