@file:Suppress("DEPRECATION") // Robolectric tells networks apart by these alone

package studio.laydown

import android.app.Activity
import android.content.Intent
import android.net.ConnectivityManager
import android.net.NetworkInfo
import android.view.View
import android.widget.EditText
import android.widget.TextView
import com.sun.net.httpserver.HttpExchange
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowLog
import org.robolectric.shadows.ShadowNetworkInfo
import studio.laydown.core.Now
import studio.laydown.core.EditorEntry
import studio.laydown.core.EditorKind
import studio.laydown.core.SyncProgress
import studio.laydown.core.Stop
import studio.laydown.core.Studio
import studio.laydown.core.Value
import studio.laydown.core.ProgressListener
import studio.laydown.core.folderAt
import studio.laydown.desktop.Phone
import studio.laydown.sync.Secrets
import java.io.File
import java.security.KeyStore
import java.time.Instant
import java.util.concurrent.CountDownLatch
import java.util.zip.ZipFile
import kotlin.io.path.createTempDirectory

/** The phones of a studio meet in a folder of another app's, or on a server, and agree; and what goes wrong is said. */
@RunWith(RobolectricTestRunner::class)
class SyncTest {
    private val toClose = mutableListOf<AutoCloseable>()

    @After
    fun close() = toClose.forEach(AutoCloseable::close)

    private fun hold(answer: (HttpExchange) -> Unit) = Loopback(answer).also { toClose += it }

    @Test
    fun twoPhonesSyncNowThroughAFolderAndNothingSecretIsWrittenDown() {
        val (_, shelf) = shelf()
        val kiln = Other(shelf, PASSPHRASE)
        kiln.studio.saveRecord(kiln.now, editor(EditorKind.PREFERENCE, "phone" to "Phone at the kiln"))
        assertEquals("Sent: 1 entry.", kiln.syncNow())
        page { phone ->
            phone.meetThere(PASSPHRASE)
            phone.until("The phones sync in the folder “Shelf”. Encrypted with a passphrase.")
            phone.touch("Sync now")
            phone.await("what came") { phone.said("Last sync: 10:15. Received: 1 entry. Sent: ") != null }
            phone.await("the other phone") { phone.scrollTo("Phone at the kiln") }
            assertTrue(kiln.syncNow().startsWith("Received: "))
            phone.touch("Sync now")
            phone.await("that they agree") { phone.said("Last sync: 10:15. Nothing was new on either side.") != null }

            val app = RuntimeEnvironment.getApplication()
            val stored = app.dataDir.walk().filter(File::isFile).toList()
            assertTrue(stored.any { it.parentFile!!.name == "secrets" } && stored.any { it.name.startsWith("studio.laydown") })
            val backup = File(createTempDirectory("backup").toFile(), "backup.zip")
            Studio.open(Pottery.file.path, kiln.now).use {
                it.backUp(backup.path)
                assertFalse(PASSPHRASE in it.devices(kiln.now).toString() + it.editor(kiln.now, editor(EditorKind.SYNC_LOCATION)))
            }
            for (file in stored + shelf.walk().filter(File::isFile)) assertFalse("${file.name} holds the passphrase", PASSPHRASE in file.readText(Charsets.ISO_8859_1))
            ZipFile(backup).use { zip ->
                for (entry in zip.entries()) {
                    val text = zip.getInputStream(entry).use { it.readBytes().toString(Charsets.ISO_8859_1) }
                    assertFalse("${entry.name} in the backup", PASSPHRASE in text || "Shelf" in text)
                }
            }
            assertFalse(ShadowLog.getLogs().any { PASSPHRASE in it.msg.orEmpty() })
        }
    }

    @Test
    fun whatWasDoneElsewhereIsSaidOnceAndADisagreementIsSettled() {
        val (_, shelf) = shelf()
        page { phone ->
            phone.meetThere(PASSPHRASE)
            phone.touch("Sync now")
            phone.await("what went") { phone.said("Last sync: 10:15. Sent: ") != null }
            // The other phone hears of it, renames a scale and archives a form.
            val kiln = Other(shelf, PASSPHRASE)
            kiln.syncNow()
            val sections = kiln.studio.setup(kiln.now).sections
            val scale = sections.single { it.editor == EditorKind.SCALE }.rows.single().id
            val bowl = sections.single { it.editor == EditorKind.FORM }.rows.single { it.title == "Soup bowl" }.id
            kiln.studio.saveRecord(kiln.now, editor(EditorKind.SCALE, "name" to "Old scale").copy(id = scale))
            kiln.studio.remove(kiln.now, EditorKind.FORM, bowl)
            kiln.syncNow()
            // Meanwhile the scale is renamed here too.
            phone.back()
            phone.touch("Bench scale")
            phone.fillField("Name", "New scale")
            phone.touch("Save")
            phone.touch("Phones in this studio")
            phone.touch("Sync now")
            phone.touch("Two phones disagree on 1 thing")
            phone.until("Form: Soup bowl: archived on another phone. You find it under Archived.")
            phone.touch("Keep both")
            phone.until("Settled.")
            phone.await("that it is settled") { !phone.shows("Keep both") }
            phone.back()
            phone.back()
            phone.await("both names") { phone.scrollTo("New scale / Old scale") }
            assertFalse("said once", phone.scrollTo("On your other phones"))
            phone.touch("Archived")
            phone.touch("Soup bowl")
            phone.touch("Bring it back")
            phone.until("Nothing is archived.")
        }
    }

    @Test
    fun aWrongPassphraseIsSaidAndTypedAgain() {
        val (_, shelf) = shelf()
        Other(shelf, PASSPHRASE).syncNow()
        page { phone ->
            phone.meetThere("slip and seive")
            phone.touch("Sync now")
            phone.await("the sentence") { phone.said("Tried 10:15. This is not the passphrase of the files there:") != null }
            phone.touch("Change the location")
            phone.await("that one is saved") { phone.hint("Passphrase") == "Saved on this phone. Type to replace it." }
            assertEquals("", phone.typed("Passphrase"))
            phone.fillField("Passphrase", PASSPHRASE)
            // It is still there when the phone is turned, and nowhere among what is written down.
            phone.rotate()
            phone.await("the passphrase") { phone.typed("Passphrase") == PASSPHRASE }
            phone.rotate()
            phone.await("the passphrase") { phone.typed("Passphrase") == PASSPHRASE }
            phone.savePlace()
            phone.touch("Sync now")
            phone.await("what went") { phone.said("Last sync: 10:15. Sent: ") != null }
        }
    }

    @Test
    fun photographsWaitWhereEveryByteCosts() {
        val (card, shelf) = shelf()
        card.tellsSizes = false
        page(Pottery::fired) { phone ->
            network(ConnectivityManager.TYPE_MOBILE)
            phone.meetThere(passphrase = null)
            phone.touch("Sync now")
            phone.await("what waits") { phone.said("1 photo waits for a network that costs nothing.") != null }
            assertEquals(0, shelf.walk().count { it.extension == "picture" })
            network(ConnectivityManager.TYPE_WIFI)
            phone.touch("Sync now")
            phone.await("what went") { phone.said("Last sync: 10:15. Sent: 1 photo.") != null }
            assertEquals(1, shelf.walk().count { it.extension == "picture" })
            phone.touch("Sync now")
            phone.await("that it is known to be there") { phone.said("Last sync: 10:15. Nothing was new on either side.") != null }
        }
    }

    @Test
    fun aFolderThatIsGoneOrFullOrRenamesIsSaid() {
        val (card, shelf) = shelf()
        page { phone ->
            phone.touch("Choose a location")
            phone.touch("Choose the folder")
            phone.await("the request") { phone.request?.intent?.action == Intent.ACTION_OPEN_DOCUMENT_TREE }
            phone.answer(Activity.RESULT_CANCELED)
            phone.until("No folder was chosen. Nothing was changed.")
            phone.chooseShelf()
            phone.savePlace()
            card.ending = ".bin"
            phone.touch("Sync now")
            phone.await("that it failed") { phone.said("Tried 10:15. The sync location did not respond as expected.") != null }
            assertEquals(emptyList<File>(), shelf.walk().filter(File::isFile).toList())
            card.ending = ""
            card.isFull = true
            phone.touch("Sync now")
            phone.await("that it is full") { phone.said("Tried 10:15. The sync location is full.") != null }
            shelf.deleteRecursively()
            phone.touch("Sync now")
            phone.await("that it is gone") { phone.said("Tried 10:15. Folder not found") != null }
        }
    }

    @Test
    fun aServerThatRefusesOrDoesNotAnswerIsSaid() {
        val server = hold { it.sendResponseHeaders(401, -1) }
        page { phone ->
            phone.meetAt(server.address)
            phone.touch("Sync now")
            phone.await("the sentence") { phone.said("Tried 10:15. The server does not accept the name and password") != null }
            close()
            phone.touch("Sync now")
            phone.await("that nobody answers", seconds = 60) { phone.said("Tried 10:15. No answer.") != null }
        }
    }

    @Test
    fun aSyncGoesOnWhileThePhoneIsTurnedAndIsStopped() {
        val leave = CountDownLatch(1)
        val server = hold { leave.await() }
        page { phone ->
            phone.meetAt(server.address)
            phone.touch("Sync now")
            phone.until("Checking. You can keep weighing.")
            phone.rotate()
            phone.until("Checking. You can keep weighing.")
            phone.back()
            phone.touch("Phones in this studio")
            phone.touch("Stop")
            phone.await("the end") { phone.said("Tried 10:15. Stopped.") != null }
            leave.countDown()
        }
    }

    @Test
    fun aPlaceIsForgottenWithItsSecrets() {
        val server = hold { it.sendResponseHeaders(401, -1) }
        page { phone ->
            phone.meetAt(server.address)
            val app = RuntimeEnvironment.getApplication() as LaydownApplication
            assertEquals(listOf(Value("password", Loopback.PASSWORD)), app.secrets.all())
            phone.touch("Forget this location")
            phone.touch("Forget it")
            phone.await("the way to a new one") { phone.scrollTo("Choose a location") }
            assertEquals(emptyList<Value>(), app.secrets.all())
            assertEquals(emptyList<String>(), File(app.noBackupFilesDir, "secrets").list().orEmpty().toList())
        }
    }

    @Test
    fun aSecretIsSealedAndIsTypedAgainWhenTheKeystoreWasEmptied() {
        val folder = createTempDirectory("secrets").toFile()
        val secrets = Secrets(folder)
        secrets.save(setOf("password", "passphrase"), mapOf("password" to Loopback.PASSWORD, "passphrase" to PASSPHRASE))
        assertEquals(listOf(Value("passphrase", PASSPHRASE), Value("password", Loopback.PASSWORD)), Secrets(folder).all())
        assertFalse(folder.listFiles()!!.any { Loopback.PASSWORD in it.readText(Charsets.ISO_8859_1) })
        // One cannot stand in for the other, nor can one that was changed.
        File(folder, "password").copyTo(File(folder, "passphrase"), overwrite = true)
        assertEquals(listOf(Value("password", Loopback.PASSWORD)), secrets.all())
        // Left empty it stays; what is no field any more goes.
        secrets.save(setOf("password"), mapOf("password" to ""))
        assertEquals(listOf("password"), folder.list()!!.toList())
        KeyStore.getInstance("AndroidKeyStore").apply { load(null) }.deleteEntry("meeting_place")
        assertEquals(emptyList<Value>(), secrets.all())
    }

    // ---- the page ----

    private fun page(phone: () -> Phone = Pottery::furnished, work: (Phone) -> Unit) = phone().use {
        it.touch("Studio")
        it.touch("Phones in this studio")
        it.until("Choose a location")
        work(it)
    }

    private fun Phone.field(label: String) = window().filterIsInstance<TextView>()
        .firstOrNull { it.id == R.id.field_label && it.text.toString() == label }
        ?.let { (it.parent as View).findViewById<EditText>(R.id.text) }

    private fun Phone.hint(label: String) = field(label)?.hint?.toString()

    private fun Phone.typed(label: String) = field(label)?.text?.toString()

    private fun network(type: Int) {
        val manager = RuntimeEnvironment.getApplication().getSystemService(ConnectivityManager::class.java)
        val info = ShadowNetworkInfo.newInstance(NetworkInfo.DetailedState.CONNECTED, type, 0, true, NetworkInfo.State.CONNECTED)
        shadowOf(manager).setActiveNetworkInfo(info)
        assertEquals(type == ConnectivityManager.TYPE_MOBILE, manager.isActiveNetworkMetered)
    }

    // ---- the others ----

    /** Another phone of the studio, which reaches the same folder by its path. */
    private inner class Other(private val shelf: File, private val passphrase: String) {
        val now = Now(Instant.parse("2026-11-25T09:00:00Z").toEpochMilli(), 0)
        val studio = Studio.open(File(createTempDirectory("other").toFile(), "studio.laydown").path, now).also { toClose += it }

        init {
            val place = editor(EditorKind.SYNC_LOCATION, "kind" to "folder", "folder" to "Shelf\n$shelf", "sealed" to "yes", "passphrase" to passphrase)
            studio.saveRecord(now, place)
        }

        fun syncNow(): String = Stop().use { stop ->
            val nobody = object : ProgressListener {
                override fun progress(progress: SyncProgress) = Unit
            }
            studio.syncNow(now, listOf(Value("passphrase", passphrase)), false, false, folderAt(shelf.path), null, nobody, stop)
        }
    }

    private fun editor(kind: EditorKind, vararg values: Pair<String, String>) =
        EditorEntry(kind, "", "", values.map { (key, text) -> Value(key, text) })

    private companion object {
        const val PASSPHRASE = "slip and sieve"
    }
}
