package studio.laydown

import android.app.Activity
import android.content.Intent
import android.net.Uri
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import studio.laydown.desktop.Phone

/** A potter's own spreadsheet: looked at, corrected, taken in, and undone. */
@RunWith(RobolectricTestRunner::class)
class ImportTest {
    private val place = Uri.parse("content://elsewhere/readings.csv")

    @Test
    fun aEditorIsLookedAtCorrectedAndTakenIn() = page { phone ->
        phone.choose("Date,Form,Glaze,Side,Wet weight (g),Mood\n2025-03-04,Breakfast mug,Ash white,inside,20.4,good\n2025-03-05,Tall jug,Ash white,inside,31.0,tired\n")
        phone.await("what was found") { phone.scrollTo("1 reading would be imported. 1 line cannot be imported.") }
        phone.await("the question") { phone.scrollTo("Form “Tall jug”") }
        // What the jug is can be said: then both lines can be taken in.
        phone.touch("Form “Tall jug”")
        phone.touch("Breakfast mug")
        phone.await("both") { phone.scrollTo("2 readings would be imported.") }
        phone.touch("Import 2 readings")
        phone.await("that they are in") { phone.texts().any { it.startsWith("2 readings") } }
        phone.touch("Undo")
        phone.await("that they are out again") { phone.shows("Undone.") }
    }

    @Test
    fun whatIsNoEditorIsSaid() = page { phone ->
        phone.choose("")
        phone.await("the sentence") { phone.texts().any { "empty" in it || "nothing" in it.lowercase() } }
        phone.touch("Choose the file")
        phone.await("the request") { phone.request != null }
        phone.answer(Activity.RESULT_CANCELED)
        phone.await("the sentence") { phone.said("No file was chosen.") != null }
    }

    @Test
    fun whatWasChosenOutlivesATurn() = page { phone ->
        phone.choose("Date,Form,Glaze,Side,Wet weight (g)\n2025-03-04,Breakfast mug,Ash white,inside,20.4\n")
        phone.await("what was found") { phone.scrollTo("1 reading would be imported.") }
        phone.rotate()
        phone.await("what was found") { phone.scrollTo("1 reading would be imported.") }
    }

    private fun page(work: (Phone) -> Unit) = Pottery.furnished().use { phone ->
        phone.touch("Studio")
        phone.touch("Backup")
        phone.touch("Your spreadsheet")
        work(phone)
    }

    private fun Phone.choose(text: String) {
        touch("Choose the file")
        await("the request") { request?.intent?.action == Intent.ACTION_OPEN_DOCUMENT }
        shadowOf(activity.contentResolver).registerInputStream(place, text.byteInputStream())
        answer(Activity.RESULT_OK, Intent().setData(place))
    }
}
