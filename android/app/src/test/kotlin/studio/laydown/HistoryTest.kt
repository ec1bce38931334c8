package studio.laydown

import android.widget.EditText
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.desk.Phone

/** What was done lately is taken back and done again, from wherever one is. */
@RunWith(RobolectricTestRunner::class)
class HistoryTest {
    @Test
    fun aCoatIsTakenBackAndDoneAgainFromAnotherTab() = Pottery.furnished().use { phone ->
        phone.touch("Buckets")
        phone.await("the buckets") { phone.said("Ash white") != null }
        phone.touch("What was done lately")
        phone.touch("Coat: Breakfast mug, inside, 20.9 g")
        phone.touch("Take it back")
        phone.until("Taken back.")
        phone.touch("Coat: Breakfast mug, inside, 20.9 g")
        phone.touch("Do it again")
        phone.until("Done again.")
        phone.touch("Coat: Breakfast mug, inside, 20.9 g")
        phone.touch("Its history")
        phone.await("all that was said of it") { phone.texts().any { "Wet weight: 20.9 g" in it } }
    }

    @Test
    fun whatWasSaidOfAGlazeIsTakenBackAlone() = Pottery.furnished().use { phone ->
        phone.touch("Studio")
        phone.touch("Ash white")
        phone.await("the sheet as it is kept") { phone.window().any { it is EditText && it.text.toString() == "Ash white" } }
        phone.fillField("Name", "Snow")
        phone.tap("Keep")
        phone.until("Snow is kept.")
        phone.touch("Snow")
        phone.touch("Its history")
        phone.touch("Name: Snow")
        phone.touch("Take it back")
        phone.until("Glaze: Ash white")
        assertTrue(phone.texts().any { it.endsWith("taken back") })
    }

    @Test
    fun theHistoryIsThereAgainOnceThePhoneIsTurned() = Pottery.furnished().use { phone ->
        phone.touch("What was done lately")
        phone.until("Coat: Breakfast mug, inside, 20.9 g")
        phone.rotate()
        phone.until("Coat: Breakfast mug, inside, 20.9 g")
    }

    @Test
    fun thisPhoneIsGivenAName() = Pottery.furnished().use { phone ->
        phone.touch("Studio")
        phone.touch("Phones of this studio")
        phone.touch("This phone")
        phone.fillField("Name of this phone", "Tablet by the sink")
        phone.tap("Keep")
        phone.await("the name") { phone.scrollTo("This phone (Tablet by the sink)") }
    }
}
