package studio.laydown

import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.desktop.NothingToTap
import studio.laydown.desktop.Phone

/** Setting the studio up: every sheet is the same page, so each of its ways is tried once. */
@RunWith(RobolectricTestRunner::class)
class EditorTest {
    @Test
    fun fromNothingToTheFirstVerdict() = Pottery.empty().use { phone ->
        phone.touch("A form")
        phone.fill("Breakfast mug", "Mug")
        phone.touch("Rounded mug")
        phone.fill("ml", "350 ml")
        // They come below what is there when one begins to scroll.
        phone.await("the areas") {
            phone.scroll()
            phone.texts().any { it.startsWith("Inside: ") }
        }
        phone.tap("Save")
        phone.until("Mug is saved.")
        phone.touch("A glaze")
        phone.fill("Ash white", "Celadon")
        phone.tap("Save")
        phone.until("Celadon is saved.")
        phone.touch("A scale")
        phone.fill("Bench scale", "Kitchen scale")
        phone.fill("g", "2 kg", nth = 0)
        phone.fill("g", "0.1", nth = 0)
        phone.tap("Save")
        phone.ready()
        phone.key("24")
        phone.await("the last digit") { phone.texts().any { it.startsWith("Type every digit the scale shows") } }
        phone.key(".0")
        phone.await("a verdict that is no more than a guess") { phone.texts().any { it.endsWith("YOUR FIRST GUESS") } }
        phone.key("5")
        phone.longTap("Delete a digit; hold to clear")
        phone.drag(0.5f, 0.3f, 0.5f, 0.15f)
        phone.await("that the bucket was never checked") { phone.texts().any { it.startsWith("Note: ") && "SG" in it } }
    }

    @Test
    fun whatIsMissingIsSaidBesideItsFieldAndTheRestStays() = adding("Add a scale") { phone ->
        phone.fill("Bench scale", "Little scale")
        phone.fill("g", "five", nth = 0)
        phone.tap("Save")
        phone.await("the sentence") { phone.refusals().isNotEmpty() }
        assertTrue(phone.shows("Little scale"))
        assertTrue(phone.shows("five"))
        assertFalse(phone.texts().any { "is saved" in it })
    }

    @Test
    fun fieldsComeAndGoAndTheRestSavesWhatIsTyped() = adding("Add a form") { phone ->
        phone.fill("Breakfast mug", "Platter")
        phone.touch("Areas")
        phone.await("the areas to fill in") { phone.said("Glazed area inside") != null }
        phone.touch("Capacity")
        phone.await("the area to go") { phone.said("Glazed area inside") == null }
        phone.rotate()
        phone.until("Platter")
    }

    @Test
    fun leavingAsksFirst() = adding("Add a form") { phone ->
        phone.fill("Breakfast mug", "Jug")
        phone.tap("Back")
        phone.until("Save changes?")
        phone.tap("Stay here")
        phone.until("Jug")
        phone.back()
        phone.until("Save changes?")
        phone.tap("Discard")
        phone.until("Forms")
        assertFalse(phone.shows("Jug"))
    }

    @Test
    fun leavingUnchangedDoesNotAsk() = adding("Add a form") { phone ->
        phone.back()
        phone.until("Forms")
    }

    @Test
    fun puttingAwayIsUndone() = Pottery.furnished().use { phone ->
        phone.touch("Studio")
        phone.touch("Soup bowl")
        phone.touch("Archive this form")
        phone.until("Soup bowl is archived.")
        assertFalse(phone.shows("Soup bowl"))
        phone.tap("Undo")
        phone.until("Soup bowl")
    }

    @Test
    fun aBucketIsCheckedWithAHydrometer() = Pottery.furnished().use { phone ->
        phone.touch("Buckets")
        phone.touch("Iron red")
        phone.touch("Check")
        phone.touch("SG or hydrometer")
        phone.fill("1.45", "40 Be")
        phone.await("what follows") { phone.texts().any { it.startsWith("SG 1.38") } }
        phone.tap("Save this check")
        phone.until("First bucket checked: SG 1.381.")
    }

    @Test
    fun whatWasThinnedIsCheckedNext() = Pottery.furnished().use { phone ->
        phone.touch("Buckets")
        phone.touch("Ash white")
        phone.touch("Thin")
        phone.touch("Another SG")
        phone.fill("1.42", "1.42")
        phone.fill("ml", "10 l")
        phone.await("the water") { phone.texts().any { it.startsWith("Add ") && it.endsWith(" of water.") } }
        phone.tap("Done: check it next")
        phone.until("Method")
        phone.back()
        phone.await("the entry") { phone.texts().any { it.startsWith("Water added: ") } }
    }

    @Test
    fun aNewLotLeadsToItsPage() = Pottery.furnished().use { phone ->
        phone.touch("Buckets")
        phone.touch("Ash white")
        phone.touch("Mix a new lot")
        phone.fill("g", "1000")
        phone.await("the water") { phone.texts().any { it.startsWith("Water: ") } }
        phone.tap("Save as a new bucket")
        phone.until("SG not checked")
        phone.until("Notebook")
    }

    @Test
    fun theDecimalMarkIsTheUsers() = Pottery.furnished().use { phone ->
        phone.touch("Studio")
        phone.touch("Units, sound and touch")
        phone.touch("Comma, 19,4")
        phone.tap("Save")
        phone.until("Saved.")
        phone.tap("Weigh")
        phone.await("the aim") { phone.texts().any { it.startsWith("Aim for 20,5 g") } }
        phone.key("20,9")
        phone.until("WITHIN")
        assertTrue(phone.shows("20,9"))
    }

    @Test
    fun aEditorOutlivesTheEndOfItsActivity() = adding("Add a form") { phone ->
        phone.fill("Breakfast mug", "Jug")
        phone.rotate()
        phone.until("New form")
        phone.until("Jug")
        assertEquals(emptyList<String>(), phone.audit())
    }

    private fun adding(what: String, work: (Phone) -> Unit) = Pottery.furnished().use { phone ->
        phone.touch("Studio")
        phone.touch(what)
        phone.until("Name")
        work(phone)
    }

    /** Taps the field that shows [hint] and writes into it. */
    private fun Phone.fill(hint: String, text: String, nth: Int? = null) {
        await("a field with \"$hint\"") {
            try {
                tap(hint, nth)
                true
            } catch (notYet: NothingToTap) {
                false
            }
        }
        type(text)
        idle(300)
    }

    private fun Phone.refusals() = texts().filter { "weight" in it.lowercase() || "number" in it.lowercase() }
}
