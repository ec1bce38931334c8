package studio.laydown

import android.app.Activity
import android.app.DatePickerDialog
import android.content.DialogInterface
import android.content.Intent
import android.graphics.BitmapFactory
import android.graphics.Rect
import android.net.Uri
import android.os.Bundle
import android.os.ParcelFileDescriptor
import android.print.PageRange
import android.print.PrintAttributes
import android.print.PrintDocumentAdapter
import android.print.PrintDocumentInfo
import android.view.KeyEvent
import android.widget.EditText
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowDialog
import studio.laydown.core.ContactSheetView
import studio.laydown.core.ContactTile
import studio.laydown.desktop.Phone
import studio.laydown.kiln.ContactSheet
import studio.laydown.kiln.Pages
import java.io.File

/** A load, a firing and its unloading, as a potter does it with dusty hands. */
@RunWith(RobolectricTestRunner::class)
class KilnTest {
    @Test
    fun aKilnAndAFiringAreBegun() = Pottery.furnished().use { phone ->
        phone.touch("Kiln")
        phone.until("4 pieces are waiting for a firing.")
        phone.touch("Add a kiln first")
        phone.fillField("Name", "Little kiln")
        phone.touch("Round shelves")
        phone.fillField("Shelf diameter", "40")
        phone.fillField("Number of shelves", "1")
        phone.tap("Save")
        phone.touch("Start a firing")
        phone.touch("Cone 8")
        phone.tap("Start loading")
        phone.until("Being loaded")
        assertTrue("begin leads into the load", phone.shows("Firing 1: cone 8, Little kiln"))
        phone.back()
        phone.until("Find a piece")
    }

    @Test
    fun aFiringIsGivenItsDayFromTheCalendar() = Pottery.loading().use { phone ->
        phone.firing()
        phone.touch("Change")
        phone.await("the day") { phone.scrollTo("Date") }
        phone.touch(phone.window().first { it.contentDescription?.startsWith("Date, ") == true }.contentDescription.toString())
        val calendar = ShadowDialog.getLatestDialog() as DatePickerDialog
        calendar.updateDate(2026, 10, 2)
        calendar.onClick(calendar, DialogInterface.BUTTON_POSITIVE)
        calendar.dismiss()
        phone.await("the day that was picked") { phone.window().any { it.contentDescription == "Date, 2 Nov 2026" } }
    }

    @Test
    fun witnessConesAreAskedWhereTheyArePlacedAndQuestioned() = Pottery.loading().use { phone ->
        phone.firing()
        phone.touch("None yet. Placed beside the ware, they show how much heat it got.")
        phone.touch("Other cones")
        phone.fillField("Which cones", "05 06 07")
        phone.await("the question") { phone.scrollTo("Did you mean 5, 6, 7?") }
        phone.touch("Yes, 5, 6, 7")
        phone.touch("Save")
        phone.await("the cones") { phone.scrollTo("5, 6, 7") }
    }

    @Test
    fun piecesThatWereNeverWeighedAreAddedAndRenamed() = Pottery.loading().use { phone ->
        phone.firing()
        phone.touch("Add pieces that were not weighed")
        phone.fillField("Name", "Teapot")
        phone.fillField("Code or mark on the foot", "t7")
        phone.touch("Save")
        phone.until("1 piece on shelf 1.")
        phone.await("the piece in the plan") { phone.grips()?.map { it.label } == listOf("T7") }
        phone.touch("Teapot, T7")
        phone.touch("Its name, code and form")
        phone.fillField("Name", "Big teapot")
        phone.touch("Save")
        phone.await("its new name") { phone.shows("Big teapot, T7") }
    }

    @Test
    fun aFiredPlanIsAPictureToLookAt() = Pottery.fired().use { phone ->
        phone.firing()
        phone.await("the plan") { phone.grips()?.size == 4 }
        val grip = checkNotNull(phone.grips()).first()
        phone.drawingOnTop()
        phone.dragGrip(grip.key, byX = 0.1f, byY = 0.3f, restMs = 600)
        phone.idle(500)
        assertEquals(grip.at, checkNotNull(phone.grips()).first().at)
        phone.drawingOnTop()
        phone.tapGrip(grip.key)
        phone.await("which it is") { phone.shows(grip.name) }
    }

    @Test
    fun piecesAreLoadedMovedAndTakenOut() = Pottery.loading().use { phone ->
        phone.firing()
        val mug = phone.first("Breakfast mug, ")
        phone.touch(mug)
        phone.touch("Load the ticked pieces")
        phone.until("Choose a shelf")
        phone.touch("Shelf 1: 0 pieces, 100% free")
        phone.until("1 piece on shelf 1.")
        phone.await("the piece in the plan") { phone.grips()?.map { it.name } == listOf(mug) }
        phone.drawingOnTop()
        val grip = checkNotNull(phone.grips()).single()
        // A finger that does not rest scrolls the page, and moves no pot.
        phone.dragGrip(grip.key, byX = 0f, byY = 0.2f)
        phone.idle(500)
        assertEquals(grip.at, checkNotNull(phone.grips()).single().at)
        phone.drawingOnTop()
        phone.dragGrip(grip.key, byX = 0.1f, byY = 0.4f, restMs = 600)
        phone.until("Moved.")
        phone.await("the new place") { phone.grips()?.single()?.at?.let { it.y > grip.at.y + 0.3 } == true }
        phone.touch("Undo")
        phone.await("the old place") { phone.grips()?.single()?.at == grip.at }
        phone.drawingOnTop()
        phone.tapGrip(grip.key)
        phone.touch("Remove from load")
        phone.await("an empty shelf") { phone.grips()?.isEmpty() == true }
        phone.touch("Undo")
        phone.await("the piece again") { phone.grips()?.size == 1 }
    }

    @Test
    fun tenPiecesStandOnAChosenShelfAfterThreeTaps() = Pottery.loading(more = 6).use { phone ->
        phone.firing()
        phone.touch("Tick all")
        phone.touch("Load the ticked pieces")
        phone.touch("Shelf 2: 0 pieces, 100% free")
        phone.until("10 pieces on shelf 2.")
    }

    @Test
    fun ticksOutliveRotationAndAreTakenOffAgain() = Pottery.loading().use { phone ->
        phone.firing()
        val mug = phone.first("Breakfast mug, ")
        phone.touch(mug)
        phone.await("the button for what is ticked") { phone.scrollTo("Load the ticked pieces") }
        phone.rotate()
        phone.await("the button for what is ticked") { phone.scrollTo("Load the ticked pieces") }
        phone.touch(mug)
        phone.await("the button for all") { phone.scrollTo("Load all waiting pieces") }
    }

    @Test
    fun whatWasLookedAtIsTickedAndRemembered() = Pottery.loading().use { phone ->
        phone.firing()
        val foot = "Glaze cleaned off the foot, and a little up the wall."
        phone.touch("$foot To do")
        phone.until("$foot Done")
        phone.rotate()
        phone.await("the mark") { phone.window().any { it.isShown && it.contentDescription == "$foot Done" } }
    }

    @Test
    fun aFiringIsAskedAboutBeforeItIsFired() = Pottery.loading().use { phone ->
        phone.firing()
        phone.touch("Load all waiting pieces")
        phone.until("4 pieces loaded.")
        phone.touch("Mark as fired")
        phone.touch("Not yet")
        assertTrue(phone.said("Being loaded") != null)
        phone.touch("Mark as fired")
        phone.touch("Yes")
        phone.touch("Look at the pieces")
        phone.await("the first piece") { phone.said("1 of 4, shelf 1") != null }
    }

    @Test
    fun everyTapIsSavedAndTheWayOnIsShort() = looking { phone ->
        phone.touch("Inside: Right")
        phone.until("Inside: Right, chosen")
        phone.touch("Your rating: 4")
        phone.until("Your rating: 4, chosen")
        phone.until("Saved: inside right, rated 4 of 5.")
        phone.touch("Undo")
        phone.until("Your rating: 4")
        phone.touch("Redo")
        phone.until("Your rating: 4, chosen")
        phone.touch("Next piece")
        phone.await("the next piece") { phone.said("3 of 4") != null }
        phone.touch("Previous piece")
        phone.until("Inside: Right, chosen")
    }

    @Test
    fun aCallInTheMiddleLosesNothing() = looking { phone ->
        phone.touch("Runs")
        phone.await("the outline to tap") { phone.grips() != null }
        phone.write("drips at the foot")
        phone.kill()
        phone.await("the piece again") { phone.said("2 of 4") != null }
        phone.await("what was written") { phone.noteLine()?.text?.toString() == "drips at the foot" }
        assertTrue("the fault is saved", phone.isChosen("Runs"))
        phone.touch("Next piece")
        phone.await("the next piece") { phone.said("3 of 4") != null }
        phone.touch("Previous piece")
        phone.await("the note still") { phone.said("2 of 4") != null && phone.noteLine()?.text?.toString() == "drips at the foot" }
    }

    @Test
    fun aFaultIsPlacedOnTheOutline() = looking { phone ->
        phone.touch("Crawling")
        phone.await("the outline") { phone.grips()?.isEmpty() == true }
        phone.drawingOnTop()
        val (x, y) = phone.spot(0.8, 0.15)
        phone.tapAt(x, y)
        phone.await("its place") { phone.grips()?.singleOrNull()?.name == "Crawling, at the rim" }
        phone.drawingOnTop()
        phone.dragGrip("crawling", byX = -0.6f, byY = 0.3f)
        phone.await("its new place") { phone.grips()?.singleOrNull()?.name?.endsWith("inside") == true }
        phone.drawingOnTop()
        phone.tapGrip("crawling")
        phone.touch("Remove this mark")
        phone.await("no place") { phone.grips()?.isEmpty() == true }
    }

    @Test
    fun aPhotographIsSavedEvenIfTheProcessEnds() = looking { phone ->
        phone.touch("Take a photo")
        phone.answerPhoto(Picture.vase())
        phone.await("the photograph") { phone.photographs() == 1 }
        phone.touch("Take a photo")
        phone.kill()
        phone.answerPhoto(Picture.plain())
        phone.await("two photographs") { phone.photographs() == 2 }
        phone.touch("Photo 1 of 2. Tap to look closer.")
        phone.touch("Remove photo")
        phone.await("one photograph") { phone.photographs() == 1 }
        phone.touch("Undo")
        phone.await("two photographs") { phone.photographs() == 2 }
        phone.touch("Next piece")
        phone.await("the next piece has none") { phone.said("3 of 4") != null && phone.photographs() == 0 }
    }

    @Test
    fun whatIsWrongWithAPictureIsSaid() = looking { phone ->
        phone.touch("Take a photo")
        phone.answer(Activity.RESULT_CANCELED)
        phone.await("the sentence") { phone.said("No picture was taken.") != null }
        phone.touch("Take a photo")
        phone.answerPhoto(ByteArray(0))
        phone.await("the sentence") { phone.said("The camera gave an empty picture.") != null }
        phone.touch("Take a photo")
        phone.answerPhoto("This is a letter.".toByteArray())
        phone.await("the sentence") { phone.said("This picture is not JPEG or PNG") != null }
        phone.touch("Take a photo")
        phone.answerPhoto(byteArrayOf(0, 0, 0, 24) + "ftypheic".toByteArray() + ByteArray(64))
        phone.await("the sentence") { phone.said("This is a HEIC picture") != null }
        shadowOf(phone.activity.application).checkActivities(true)
        phone.touch("Take a photo")
        phone.await("the sentence") { phone.said("No camera app responds on this phone.") != null }
        assertEquals(0, phone.photographs())
        phone.touch("Inside: Right")
        phone.until("Inside: Right, chosen")
    }

    @Test
    fun aPictureIsChosenFromThePhone() = looking { phone ->
        phone.touch("Choose a picture on this phone")
        assertEquals(Intent.ACTION_OPEN_DOCUMENT, phone.request?.intent?.action)
        phone.answerPhoto(Picture.vase())
        phone.await("the photograph") { phone.photographs() == 1 }
    }

    @Test
    fun aPieceIsFoundByTheCodeOnItsFoot() = Pottery.fired().use { phone ->
        phone.firing()
        phone.touch("Look at the pieces: 3 left")
        val title = phone.first("Breakfast mug, ")
        phone.back()
        phone.back()
        phone.touch("Find a piece")
        phone.touch("Its first letters will do")
        phone.type("3O79A")
        phone.await("the sentence") { phone.window().any { it.id == R.id.find_refusal && it.isShown } }
        repeat(5) { phone.press(KeyEvent.KEYCODE_DEL) }
        // Its first letters narrow, and all of them find it.
        phone.type(title.takeLast(5).take(4).lowercase())
        phone.await("the piece") { phone.texts().any { it == title } }
        phone.type(title.takeLast(1).lowercase())
        phone.until("1 piece")
        phone.touch(title)
        phone.until("As weighed")
    }

    @Test
    fun piecesAreFoundByWhatIsKnownOfThem() = Pottery.fired().use { phone ->
        phone.touch("Kiln")
        phone.touch("Find a piece")
        phone.until("4 pieces")
        phone.touch("Fault: With or without faults")
        phone.touch("Runs")
        phone.until("1 piece")
        phone.rotate()
        phone.await("what was chosen") { phone.scrollTo("Runs") }
        phone.rotate()
        phone.touch("Fault: Runs")
        phone.touch("Crazing")
        phone.until("No piece matches. Remove a filter.")
    }

    @Test
    fun twoPiecesStandSideBySide() = Pottery.fired().use { phone ->
        phone.coatOf("22.9 g")
        phone.touch("The whole piece")
        val title = phone.first("Breakfast mug, ")
        phone.touch("Compare with another piece")
        phone.await("the control piece") { phone.said("Inside: wet weight, different") != null }
        val beside = phone.texts().filter { it.startsWith("Breakfast mug, ") }.toSet() - title
        assertEquals("${phone.texts()}", 1, beside.size)
        phone.touch(beside.single())
        phone.until("Compare with")
    }

    @Test
    fun theContactSheetIsShared() = Pottery.fired().use { phone ->
        phone.firing()
        phone.touch("Contact sheet")
        phone.touch("Share as a picture")
        val chooser = checkNotNull(shadowOf(phone.activity).nextStartedActivity)
        val send = checkNotNull(chooser.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java))
        assertEquals(Intent.ACTION_SEND to "image/jpeg", send.action to send.type)
        val uri = checkNotNull(send.getParcelableExtra(Intent.EXTRA_STREAM, Uri::class.java))
        assertTrue(send.flags and Intent.FLAG_GRANT_READ_URI_PERMISSION != 0)
        val picture = checkNotNull(phone.activity.contentResolver.openInputStream(uri)).use(BitmapFactory::decodeStream)
        assertEquals(1239 to 1754, picture.width to picture.height)
    }

    @Test
    fun onePieceWithItsRecordIsSharedAsAPicture() = looking { phone ->
        phone.touch("This piece as a picture")
        phone.await("the page") { phone.texts().any { it.startsWith("Firing 1: cone 6, Garden kiln, ") && "Breakfast mug" in it } }
        phone.touch("Share as a picture")
        val chooser = checkNotNull(shadowOf(phone.activity).nextStartedActivity)
        val send = checkNotNull(chooser.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java))
        assertEquals(Intent.ACTION_SEND to "image/jpeg", send.action to send.type)
    }

    @Test
    fun theContactSheetIsSharedAsADocument() = Pottery.fired().use { phone ->
        phone.firing()
        phone.touch("Contact sheet")
        phone.touch("Share as a PDF")
        phone.await("the document") { shadowOf(phone.activity).peekNextStartedActivity() != null }
        val send = checkNotNull(shadowOf(phone.activity).nextStartedActivity.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java))
        val uri = checkNotNull(send.getParcelableExtra(Intent.EXTRA_STREAM, Uri::class.java))
        assertEquals("application/pdf", phone.activity.contentResolver.getType(uri))
        val document = checkNotNull(phone.activity.contentResolver.openInputStream(uri)).use { it.readBytes() }.toString(Charsets.ISO_8859_1)
        assertTrue("one page", document.startsWith("%PDF-") && "/Count 1" in document && document.trimEnd().endsWith("%%EOF"))
        assertTrue("at 200 to the inch", "/Width 1652" in document && "/Height 2338" in document)
    }

    @Test
    fun theContactSheetIsPrintedPageByPage() = Pottery.empty().use {
        val document = File.createTempFile("contact", ".pdf").apply { writeText("what was bound") }
        val tiles = (1..7).map { ContactTile("", "Mug $it", listOf("Inside, Ash white: 19.6 g"), "Shelf 1, back") }
        val editor = ContactSheet(ContactSheetView("Cone 6", listOf("Cone 6 bent: right on target."), "7 pieces.", tiles), "No photo") { page, of -> "$page/$of" }
        assertEquals(2, editor.size)
        val pages = Pages(document, editor.size, "Cone 6")
        var info: PrintDocumentInfo? = null
        pages.onLayout(null, PrintAttributes.Builder().build(), null, laidOut { info = it }, Bundle())
        assertEquals(2 to "Cone 6.pdf", info?.pageCount to info?.name)
        val printed = File.createTempFile("printed", ".pdf")
        var written: Array<PageRange>? = null
        val into = ParcelFileDescriptor.open(printed, ParcelFileDescriptor.MODE_WRITE_ONLY)
        pages.onWrite(arrayOf(PageRange.ALL_PAGES), into, null, object : PrintDocumentAdapter.WriteResultCallback() {
            override fun onWriteFinished(pages: Array<PageRange>) {
                written = pages
            }
        })
        assertEquals(listOf(PageRange.ALL_PAGES) to "what was bound", written?.toList() to printed.readText())
        val second = editor.picture(1f)
        assertEquals("one below the other", 595 to 2 * 842, second.width to second.height)
    }

    @Test
    fun whereNobodyPrintsThatIsSaid() = Pottery.fired().use { phone ->
        phone.firing()
        phone.touch("Contact sheet")
        phone.touch("Print")
        phone.await("the sentence") { phone.scrollTo("This phone cannot print. Share the picture instead.") }
    }

    @Test
    fun anEarlierLoadCanBeFilledInAfterwards() = Pottery.loading().use { phone ->
        phone.firing()
        phone.touch("Mark as fired")
        phone.touch("Yes")
        phone.await("the pieces that wait") { phone.scrollTo("Add a missed piece") }
        assertFalse(phone.texts().any { it.startsWith("Look at the pieces") })
        phone.touch(phone.first("Breakfast mug, "))
        phone.touch("Load the ticked pieces")
        phone.touch("Shelf 2: 0 pieces")
        phone.touch("Look at the pieces")
        phone.await("the piece") { phone.said("1 of 1, shelf 2") != null }
        phone.touch("Back to firing")
        phone.await("the firing") { phone.scrollTo("Fired, to be unloaded") }
    }

    // ---- helpers ----

    private fun looking(work: (Phone) -> Unit) = Pottery.fired().use { phone ->
        phone.firing()
        phone.touch("Look at the pieces: 3 left")
        phone.await("a piece that has not been looked at") { phone.said("2 of 4") != null }
        work(phone)
    }

    private fun Phone.firing() {
        touch("Kiln")
        touch("Firing 1: cone 6, Garden kiln")
    }

    /** The first text that begins so, once there is one; not what a whole row is called. */
    private fun Phone.first(beginning: String): String {
        fun found() = texts().firstOrNull { it.startsWith(beginning) && !it.endsWith(" To do") }
        await("\"$beginning…\"") { found() != null }
        return checkNotNull(found())
    }

    private fun Phone.noteLine(): EditText? = window().filterIsInstance<EditText>().firstOrNull { it.isShown }

    private fun Phone.write(text: String) {
        val line = checkNotNull(noteLine())
        line.requestRectangleOnScreen(Rect(0, 0, line.width, line.height), true)
        idle()
        val place = IntArray(2).also(line::getLocationOnScreen)
        tapAt(place[0] + line.width / 2f, place[1] + line.height / 2f)
        type(text)
    }

    private fun Phone.isChosen(fault: String) = window().any { it.isShown && it.contentDescription == "$fault, chosen" }

    private fun Phone.photographs() = window().count { it.isShown && it.contentDescription?.startsWith("Photo ") == true }

    private fun laidOut(done: (PrintDocumentInfo) -> Unit) = object : PrintDocumentAdapter.LayoutResultCallback() {
        override fun onLayoutFinished(info: PrintDocumentInfo, changed: Boolean) = done(info)
    }
}
