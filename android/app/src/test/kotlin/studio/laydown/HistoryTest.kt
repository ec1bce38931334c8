package studio.laydown

import android.widget.EditText
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.desktop.Phone

/** Recent changes is undone and done again, from wherever one is. */
@RunWith(RobolectricTestRunner::class)
class HistoryTest {
    @Test
    fun aCoatIsTakenBackAndDoneAgainFromAnotherTab() = Pottery.furnished().use { phone ->
        phone.touch("Buckets")
        phone.await("the buckets") { phone.said("Ash white") != null }
        phone.touch("Recent changes")
        phone.touch("Coat: Breakfast mug, inside, 20.9 g")
        phone.touch("Undo")
        phone.until("Undone.")
        phone.touch("Coat: Breakfast mug, inside, 20.9 g")
        phone.touch("Redo")
        phone.until("Redone.")
        phone.touch("Coat: Breakfast mug, inside, 20.9 g")
        phone.touch("History")
        phone.await("all that was said of it") { phone.texts().any { "Wet weight: 20.9 g" in it } }
    }

    @Test
    fun whatWasSaidOfAGlazeIsTakenBackAlone() = Pottery.furnished().use { phone ->
        phone.touch("Studio")
        phone.touch("Ash white")
        phone.await("the sheet as it is saved") { phone.window().any { it is EditText && it.text.toString() == "Ash white" } }
        phone.fillField("Name", "Snow")
        phone.tap("Save")
        phone.until("Snow is saved.")
        phone.touch("Snow")
        phone.touch("History")
        phone.touch("Name: Snow")
        phone.touch("Undo")
        phone.until("Glaze: Ash white")
        assertTrue(phone.texts().any { it.endsWith("undone") })
    }

    @Test
    fun theHistoryIsThereAgainOnceThePhoneIsTurned() = Pottery.furnished().use { phone ->
        phone.touch("Recent changes")
        phone.until("Coat: Breakfast mug, inside, 20.9 g")
        phone.rotate()
        phone.until("Coat: Breakfast mug, inside, 20.9 g")
    }

    @Test
    fun thisPhoneIsGivenAName() = Pottery.furnished().use { phone ->
        phone.touch("Studio")
        phone.touch("Phones in this studio")
        phone.touch("This phone")
        phone.fillField("Phone name", "Tablet by the sink")
        phone.tap("Save")
        phone.await("the name") { phone.scrollTo("This phone (Tablet by the sink)") }
    }
}
