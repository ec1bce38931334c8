package studio.laydown

import android.app.Activity
import android.content.Intent
import android.net.Uri
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import studio.laydown.desktop.Phone
import java.io.ByteArrayOutputStream

/** A backup is made, read again from where it came to lie, and taken in on another phone. */
@RunWith(RobolectricTestRunner::class)
class BackupTest {
    private val place = Uri.parse("content://elsewhere/backup.zip")

    @Test
    fun aBackupIsMadeAndReadAgain() = page(Pottery.furnished()) { phone ->
        val saved = phone.makeBackup()
        phone.await("what was made") { phone.said("Backup saved and verified: ") != null }
        assertTrue("a zip", saved.decodeToString(0, 2) == "PK")
        assertTrue(phone.texts().any { it.startsWith("Last backup: ") })
        phone.back()
        phone.await("the row") { phone.scrollTo("Backup") }
        assertTrue(phone.texts().any { it.startsWith("Last backup: ") })
    }

    @Test
    fun aBackupIsTakenInTwiceAsOnce() = page(Pottery.furnished()) { phone ->
        val saved = phone.makeBackup()
        phone.await("what was made") { phone.said("Backup saved and verified: ") != null }
        phone.restore(saved)
        phone.await("that it was there") { phone.said("Nothing to restore. This phone already has ") != null }
        phone.restore(saved.copyOf(saved.size / 2))
        phone.await("that it is no backup") { phone.said("This file is not a laydown backup.") != null }
    }

    @Test
    fun whatDidNotArriveWholeIsNoBackup() = page(Pottery.furnished()) { phone ->
        phone.makeBackup { it.copyOf(it.size - 100) }
        phone.await("that it is no backup") { phone.said("This file is not a laydown backup.") != null }
        assertTrue(phone.texts().contains("No backup made on this phone yet."))
    }

    @Test
    fun turningBackIsSaidAndThePageOutlivesTheProcess() = page(Pottery.furnished()) { phone ->
        phone.touch("Restore a backup, or what another phone sent")
        phone.await("the request") { phone.request?.intent?.action == Intent.ACTION_OPEN_DOCUMENT }
        phone.answer(Activity.RESULT_CANCELED)
        phone.await("the sentence") { phone.said("No file was chosen.") != null }
        phone.touch("Make a backup")
        phone.await("the request") { phone.request?.intent?.action == Intent.ACTION_CREATE_DOCUMENT }
        phone.kill()
        val out = phone.place(then = { it })
        phone.answer(Activity.RESULT_OK, Intent().setData(place))
        phone.await("what was made") { phone.said("Backup saved and verified: ") != null }
        assertTrue(out.size() > 0)
    }

    @Test
    fun aPlaceThatCannotBeReachedIsSaid() = page(Pottery.furnished()) { phone ->
        phone.touch("Restore a backup, or what another phone sent")
        phone.await("the request") { phone.request != null }
        phone.answer(Activity.RESULT_OK, Intent().setData(Uri.parse("content://studio.laydown.pictures/gone")))
        phone.await("the sentence") { phone.said("That place cannot be read or written, or is full.") != null }
    }

    @Test
    fun everythingIsSentToAnotherApp() = page(Pottery.furnished()) { phone ->
        phone.touch("Send everything to another app or phone")
        phone.await("the request") { phone.request != null }
        val send = checkNotNull(checkNotNull(phone.request).intent.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java))
        val uri = checkNotNull(send.getParcelableExtra(Intent.EXTRA_STREAM, Uri::class.java))
        assertEquals("application/zip", phone.activity.contentResolver.getType(uri))
        val bytes = checkNotNull(phone.activity.contentResolver.openInputStream(uri)).use { it.readBytes() }
        assertEquals("PK", bytes.decodeToString(0, 2))
    }

    @Test
    fun readingsGoOutAsATableAndTheJournalComesInAgain() = page(Pottery.furnished()) { phone ->
        phone.touch("Tables for a spreadsheet")
        phone.touch("Readings")
        val table = phone.putExport("text/csv", "laydown-readings-2026-11-25.csv")
        phone.await("what was written") { phone.said("Saved: Readings.") != null }
        val text = table.decodeToString()
        assertTrue(text, text.startsWith("\uFEFFat,form,glaze,") && "Breakfast mug,Ash white" in text)

        phone.touch("Journal as JSON lines")
        val journal = phone.putExport("application/x-ndjson", "laydown-journal-2026-11-25.jsonl")
        phone.await("what was written") { phone.said("Saved: ")?.endsWith("like a backup.") == true }
        phone.restore(journal)
        phone.await("that it was there") { phone.said("Nothing to restore. This phone already has ") != null }
    }

    @Test
    fun aTableThatDidNotArriveWholeIsNotSaidToBeWritten() = page(Pottery.furnished()) { phone ->
        phone.touch("Tables for a spreadsheet")
        phone.touch("All tables")
        phone.putExport("application/zip", "laydown-tables-2026-11-25.zip") { it.copyOf(it.size - 1) }
        phone.await("the sentence") { phone.said("That place cannot be read or written, or is full.") != null }
    }

    @Test
    fun aTableIsSentToAnotherApp() = page(Pottery.furnished()) { phone ->
        phone.touch("Tables for a spreadsheet")
        phone.touch("Forms")
        phone.touch("Send to another app")
        phone.await("the request") { phone.request?.intent?.action == Intent.ACTION_CHOOSER }
        val send = checkNotNull(checkNotNull(phone.request).intent.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java))
        val uri = checkNotNull(send.getParcelableExtra(Intent.EXTRA_STREAM, Uri::class.java))
        assertEquals("text/csv", phone.activity.contentResolver.getType(uri))
        val text = checkNotNull(phone.activity.contentResolver.openInputStream(uri)).use { it.readBytes() }.decodeToString()
        assertTrue(text, "Soup bowl" in text)
    }

    private fun page(phone: Phone, work: (Phone) -> Unit) = phone.use {
        it.touch("Studio")
        it.touch("Backup")
        it.until("Make a backup")
        work(it)
    }

    /** Makes a backup; what comes to lie in its place is what [then] makes of it. */
    private fun Phone.makeBackup(then: (ByteArray) -> ByteArray = { it }): ByteArray {
        touch("Make a backup")
        await("the request") { request?.intent?.action == Intent.ACTION_CREATE_DOCUMENT }
        assertTrue(checkNotNull(request).intent.getStringExtra(Intent.EXTRA_TITLE).orEmpty().matches(Regex("laydown-\\d{4}-\\d\\d-\\d\\d\\.zip")))
        val out = place(then)
        answer(Activity.RESULT_OK, Intent().setData(place))
        await("the end of the work") { said("Working.") == null && out.size() > 0 }
        return out.toByteArray()
    }

    /** Puts the file into a folder; what comes to lie there is what [then] makes of it. */
    private fun Phone.putExport(type: String, name: String, then: (ByteArray) -> ByteArray = { it }): ByteArray {
        touch("Save to a folder")
        await("the request") { request?.intent?.action == Intent.ACTION_CREATE_DOCUMENT }
        val asked = checkNotNull(request).intent
        assertEquals(type to name, asked.type to asked.getStringExtra(Intent.EXTRA_TITLE))
        val out = place(then)
        answer(Activity.RESULT_OK, Intent().setData(place))
        await("the end of the work") { said("Working.") == null && out.size() > 0 }
        return out.toByteArray()
    }

    private fun Phone.place(then: (ByteArray) -> ByteArray): ByteArrayOutputStream {
        val out = ByteArrayOutputStream()
        shadowOf(activity.contentResolver).registerOutputStream(place, out)
        shadowOf(activity.contentResolver).registerInputStreamSupplier(place) { then(out.toByteArray()).inputStream() }
        return out
    }

    private fun Phone.restore(bytes: ByteArray) {
        touch("Restore a backup, or what another phone sent")
        await("the request") { request?.intent?.action == Intent.ACTION_OPEN_DOCUMENT }
        shadowOf(activity.contentResolver).registerInputStreamSupplier(place) { bytes.inputStream() }
        answer(Activity.RESULT_OK, Intent().setData(place))
    }
}
