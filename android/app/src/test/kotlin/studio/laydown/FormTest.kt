package studio.laydown

import android.app.Activity
import android.content.Intent
import android.net.Uri
import android.provider.MediaStore
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.desktop.Phone
import java.util.concurrent.CountDownLatch

/** Forms drawn, dragged, typed into a table and photographed, as a potter does it. */
@RunWith(RobolectricTestRunner::class)
class FormTest {
    @Test
    fun aDraggedPointChangesTheTableAndWhatFollows() = points { phone ->
        val before = phone.table()
        val held = phone.said("Holds ")
        val place = phone.grip("point.3")
        val finger = phone.holdGrip("point.3", byX = -0.15f, byY = 0.02f)
        phone.await("the table to follow the finger") { phone.table()[3] != before[3] && phone.said("Holds ") != held }
        assertTrue("the finger is still down: ${phone.texts()}", phone.texts().any { it.startsWith("Point 4: ") })
        assertEquals("the page scrolls under the finger", place.second, phone.grip("point.3").second, 0.05f * phone.size.x)
        assertEquals(before.filterIndexed { at, _ -> at != 3 }, phone.table().filterIndexed { at, _ -> at != 3 })
        phone.lift(finger.first, finger.second)
        assertFalse(phone.texts().any { it.startsWith("Point 4: ") })
        phone.touch("Undo")
        phone.await("what stood there before") { phone.table() == before && phone.said("Holds ") == held }
        assertFalse(phone.scrollTo("Undo"))
    }

    @Test
    fun aPointHeldAtTheEdgeStaysUnderTheFinger() = points { phone ->
        val (x, y) = phone.holdGrip("point.4", byX = 0.2f, byY = -0.2f)
        phone.await("a higher rim") { phone.table()[4][0] != "9.2" }
        phone.idle()
        val foreignFolder = phone.tableAtRest()[4]
        repeat(10) { phone.moveTo(x + it % 2, y) }
        phone.idle()
        assertEquals("the finger rests", foreignFolder, phone.table()[4])
        phone.lift(x, y)
    }

    @Test
    fun aFingerBesideTheGripsScrollsThePage() = points { phone ->
        val before = phone.table()
        val y = phone.spot(0.2, 0.5).second
        phone.drag(0.2f, y / phone.size.y, 0.2f, y / phone.size.y - 0.2f)
        assertNotEquals(y, phone.spot(0.2, 0.5).second)
        assertEquals(before, phone.table())
    }

    @Test
    fun takingHoldIsFelt() = points { phone ->
        val before = phone.ticks
        phone.dragGrip("point.3", byX = -0.1f, byY = 0f)
        assertEquals(before + 1, phone.ticks)
    }

    @Test
    fun theGlazeLineIsDragged() = points { phone ->
        val outside = phone.said("Outside: ")
        phone.dragGrip("bare_foot", byX = 0f, byY = -0.15f)
        phone.await("a smaller area") { phone.said("Outside: ") != outside }
        phone.drawingOnTop()
        phone.touch("Undo")
        phone.await("the area of before") { phone.said("Outside: ") == outside }
    }

    @Test
    fun aPointIsAddedAndTakenAway() = points { phone ->
        val before = phone.table()
        val (lower, upper) = phone.grip("point.3") to phone.grip("point.4")
        phone.tapAt((lower.first + upper.first) / 2, (lower.second + upper.second) / 2)
        phone.await("one more point") { phone.table().size == before.size + 1 }
        phone.tapGrip("point.4")
        phone.touch("Remove this point")
        phone.await("the points of before") { phone.table() == before }
        phone.touch("Undo")
        phone.await("the added point") { phone.table().size == before.size + 1 }
        phone.touch("Undo")
        phone.await("the points of before again") { phone.table() == before }
    }

    @Test
    fun pointsAreTypedAndTheWrongOneIsNamed() = points { phone ->
        val held = phone.said("Holds ")
        phone.fillCell(4, 1, "wide")
        phone.await("the sentence") { phone.refusals().any { it.startsWith("Point 5: ") } }
        assertEquals("wide", phone.table()[4][1])
        phone.fillCell(4, 1, "9.4")
        phone.await("another capacity") { phone.refusals().isEmpty() && phone.said("Holds ") != held }
        phone.touch("Add a row")
        phone.await("an empty row") { phone.table().last() == listOf("", "", "") }
        val rows = phone.table().size
        phone.touch("Remove row $rows")
        phone.await("one row less") { phone.table().size == rows - 1 }
    }

    @Test
    fun whatWasDraggedIsSaved() = points { phone ->
        phone.dragGrip("point.4", byX = -0.12f, byY = 0f)
        phone.await("another table") { phone.table()[4][1] != "8" }
        val table = phone.tableAtRest()
        phone.rotate()
        phone.await("the same table") { phone.table() == table }
        phone.rotate()
        phone.await("the same table") { phone.table() == table }
        phone.fillField("Name", "Little cup")
        phone.tap("Save")
        phone.until("Little cup is saved.")
        phone.touch("Little cup")
        phone.await("the points kept") { phone.table() == table }
    }

    @Test
    fun aPhotographIsTracedAndItsSizeEntered() = photograph { phone ->
        phone.photograph(Picture.vase())
        phone.await("the outline") { phone.grips() != null }
        phone.fillField("Size", "18 cm")
        phone.await("what it holds") { phone.said("Holds ") != null }
        assertEquals(emptyList<String>(), phone.refusals())
    }

    @Test
    fun aPictureInWorkIsSaidToBeLookedAt() = photograph { phone ->
        val busy = CountDownLatch(1)
        (phone.activity.application as LaydownApplication).work.ask({ busy.await() }) {}
        phone.photograph(Picture.vase())
        assertTrue("${phone.texts()}", phone.shows("Finding the piece in the picture…"))
        busy.countDown()
        phone.await("the outline") { phone.grips() != null && phone.said("Looking for the piece") == null }
        assertTrue("the picture is in sight: ${phone.texts()}", phone.texts().any { it.startsWith("Your photo") })
    }

    @Test
    fun theCameraIsLetWriteToOnePlaceOnly() = photograph { phone ->
        phone.touch("Take a photo")
        val intent = checkNotNull(phone.request).intent
        val place = intent.getParcelableExtra(MediaStore.EXTRA_OUTPUT, Uri::class.java)
        assertEquals(place, intent.clipData?.getItemAt(0)?.uri)
        val write = Intent.FLAG_GRANT_WRITE_URI_PERMISSION or Intent.FLAG_GRANT_READ_URI_PERMISSION
        assertEquals(write, intent.flags and write)
    }

    @Test
    fun aPhotographOutlivesTheEndOfTheProcess() = photograph { phone ->
        phone.fillField("Name", "Tall vase")
        phone.touch("Take a photo")
        phone.kill()
        phone.answerPhoto(Picture.vase())
        phone.await("the outline") { phone.grips() != null }
        assertTrue(phone.scrollTo("Tall vase"))
    }

    @Test
    fun aPictureWithoutAPieceIsSaidAndTheRestStays() = photograph { phone ->
        phone.fillField("Name", "Tall vase")
        phone.photograph(Picture.vase())
        phone.await("the outline") { phone.grips() != null }
        phone.photograph(Picture.plain())
        phone.await("the sentence") { phone.refusals().isNotEmpty() }
        assertTrue("the picture of before is still there", phone.grips() != null)
        assertTrue(phone.scrollTo("Tall vase"))
        phone.photograph(Picture.vase())
        phone.await("no sentence") { phone.refusals().isEmpty() }
    }

    @Test
    fun turningBackFromTheCameraIsSaid() = photograph { phone ->
        phone.touch("Take a photo")
        phone.answer(Activity.RESULT_CANCELED)
        phone.await("the sentence") { phone.refusals() == listOf("No picture was taken. Nothing was changed.") }
        phone.photograph(ByteArray(0))
        phone.await("the sentence") { phone.refusals() == listOf("The camera gave an empty picture. Take it again.") }
    }

    @Test
    fun whatIsNoPictureIsSaid() = photograph { phone ->
        phone.photograph("This is a letter.".toByteArray())
        phone.await("the sentence") { phone.refusals().isNotEmpty() }
        phone.rotate()
        phone.await("the sentence still") { phone.refusals().isNotEmpty() }
    }

    @Test
    fun aPictureIsChosenFromThePhone() = photograph { phone ->
        phone.touch("Choose a picture")
        assertEquals(Intent.ACTION_OPEN_DOCUMENT, phone.request?.intent?.action)
        phone.answerPhoto(Picture.vase())
        phone.await("the outline") { phone.grips() != null }
    }

    @Test
    fun aPictureThatIsGoneIsSaid() = photograph { phone ->
        phone.touch("Choose a picture")
        phone.answer(Activity.RESULT_OK, Intent().setData(Uri.parse("content://studio.laydown.pictures/gone")))
        phone.await("the sentence") { phone.refusals().any { "cannot be read" in it } }
    }

    @Test
    fun sizesGoByTheChosenAmount() = Pottery.furnished().use { phone ->
        phone.touch("Studio")
        phone.touch("Compare sizes")
        phone.until("Breakfast mug")
        phone.until("Soup bowl")
        assertTrue(phone.texts().any { it.startsWith("Target: ") })
        phone.touch("Breakfast mug, inside")
        phone.until("Choose an amount")
        phone.back()
        phone.rotate()
        phone.until("Based on")
    }

    private fun points(work: (Phone) -> Unit) = Pottery.furnished().use { phone ->
        phone.byPoints()
        phone.drawingOnTop()
        work(phone)
    }

    private fun photograph(work: (Phone) -> Unit) = Pottery.furnished().use { phone ->
        phone.byPhoto()
        work(phone)
    }
}
