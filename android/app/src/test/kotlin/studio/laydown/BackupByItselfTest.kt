package studio.laydown

import android.app.Activity
import android.app.job.JobParameters
import android.app.job.JobScheduler
import android.content.Intent
import android.os.Looper
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Rule
import org.junit.Test
import org.junit.rules.TemporaryFolder
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadow.api.Shadow
import studio.laydown.core.Now
import studio.laydown.core.Studio
import studio.laydown.desktop.Card
import studio.laydown.desktop.Phone
import studio.laydown.setup.BackupJob
import java.io.File
import java.time.Clock
import java.time.Duration

/** Backups that are made by themselves, onto a card that can be taken out, be full and be worn out. */
@RunWith(RobolectricTestRunner::class)
class BackupByItselfTest {
    @get:Rule
    val folder = TemporaryFolder()

    private lateinit var card: Card
    @Before
    fun insertCard() {
        card = Card.insert(folder.newFolder("card"))
    }

    private val app get() = RuntimeEnvironment.getApplication() as LaydownApplication

    @Test
    fun aFolderIsChosenAndAFirstBackupGoesThereAtOnce() = page { phone ->
        phone.chooseCard()
        phone.await("the first backup") { phone.said("Backup saved and verified.") != null }
        val made = card.files.single()
        assertTrue(made, made.matches(Regex("laydown-\\d{4}-\\d\\d-\\d\\d-\\d{4}\\.zip")))
        assertTrue(takenIn(card.file(made)).startsWith("Restored: "))
        assertTrue(phone.texts().any { it.startsWith("Last backup: ") })
        assertTrue(phone.scrollTo(Card.NAME))
        phone.restart()
        phone.toBackup()
        assertTrue("the folder is known after the app was ended", phone.scrollTo(Card.NAME))
        assertEquals("nothing is new: no other file", listOf(made), card.files)
    }

    @Test
    fun theJobMakesOneOnlyWhenItIsDueAndSomethingIsNew() = page { phone ->
        phone.chooseCard()
        phone.await("the first backup") { card.files.size == 1 && phone.said("Backup saved and verified.") != null }
        pass(Duration.ofDays(8))
        job()
        assertEquals("nothing is new", 1, card.files.size)
        phone.saveACoat()
        job()
        assertEquals(2, card.files.size)
        phone.saveACoat()
        job()
        assertEquals("not due yet", 2, card.files.size)
        phone.toBackup()
        phone.touch("How often")
        phone.touch("Never")
        phone.await("the choice") { phone.said("Automatic backup is off.") != null }
        pass(Duration.ofDays(60))
        job()
        assertEquals(2, card.files.size)
    }

    @Test
    fun theJobWorksWithoutTheAppInFront() {
        Pottery.furnished().close()
        useCard()
        job()
        assertTrue(takenIn(card.file(card.files.single())).startsWith("Restored: "))
        assertNotNull("the system starts it from time to time", app.getSystemService(JobScheduler::class.java).allPendingJobs.singleOrNull())
    }

    @Test
    fun oneThatIsOverdueIsMadeWhenTheAppIsOpened() {
        Pottery.furnished().close()
        useCard()
        Phone().use { phone -> phone.await("the backup") { card.files.size == 1 && card.file(card.files.single()).length() > 0 } }
    }

    @Test
    fun theNewestFiveStayAndNoOtherFileIsTouched() = page { phone ->
        card.file("laydown-2020-01-01-0900.zip").writeText("a backup of another phone")
        card.file("holiday.jpg").writeText("a picture")
        phone.chooseCard()
        phone.await("the first backup") { phone.said("Backup saved and verified.") != null }
        repeat(6) {
            pass(Duration.ofMinutes(1))
            phone.touch("Back up there now")
            phone.await("one more") { phone.said("Last backup: 10:${16 + it}.") != null && phone.said("Working.") == null }
        }
        val stay = (17..21).map { "laydown-2026-11-25-10$it.zip" }
        assertEquals((stay + "laydown-2020-01-01-0900.zip" + "holiday.jpg").sorted(), card.files)
        assertEquals("a backup of another phone", card.file("laydown-2020-01-01-0900.zip").readText())
    }

    @Test
    fun whatGoesWrongIsSaidAndNothingOlderIsLost() = page { phone ->
        phone.chooseCard()
        phone.await("the first backup") { phone.said("Backup saved and verified.") != null }
        val made = card.files
        card.isIn = false
        phone.triesAndSays("backup folder not found")
        card.isIn = true
        card.isFull = true
        phone.triesAndSays("the folder is full")
        assertEquals("what could not be finished does not stay", made, card.files)
        card.isFull = false
        card.isWornOut = true
        phone.triesAndSays("the file in the folder does not match what laydown wrote")
        assertEquals(made, card.files)
        card.isWornOut = false
        app.contentResolver.releasePersistableUriPermission(Card.tree, LEAVE)
        phone.triesAndSays("laydown may no longer write to the folder")
        phone.back()
        phone.await("the Studio screen") { phone.texts().any { it.startsWith("No backup was made (") } }
        phone.touch("Backup")
        phone.chooseCard()
        phone.await("another chance") { phone.said("No backup was made (") == null && phone.said("Working.") == null }
        phone.touch("Back up there now")
        phone.await("one more") { card.files.size == 2 && phone.said("No backup was made (") == null }
    }

    @Test
    fun turningBackFromTheFolderIsSaid() = page { phone ->
        phone.touch("Backup folder")
        phone.await("the request") { phone.request?.intent?.action == Intent.ACTION_OPEN_DOCUMENT_TREE }
        phone.kill()
        phone.answer(Activity.RESULT_CANCELED)
        phone.await("the sentence") { phone.said("No folder was chosen.") != null }
    }

    // ---- what a person, and the system, do ----

    private fun page(work: (Phone) -> Unit) = Pottery.furnished().use {
        it.toBackup()
        work(it)
    }

    private fun Phone.triesAndSays(trouble: String) {
        touch("Back up there now")
        await("\"$trouble\"") { texts().any { trouble in it } || scrollTo("Make a backup") && texts().any { trouble in it } }
    }

    /** Back to Weigh, and one more coat. */
    private fun Phone.saveACoat() {
        if (!shows("Weigh")) back()
        touch("Weigh")
        ready()
        key("20.4")
        touch("Save")
        await("what was kept") { texts().any { it.startsWith("Saved: ") } }
    }

    /** Chosen in the core, as before the app was ended. */
    private fun useCard() {
        app.contentResolver.takePersistableUriPermission(Card.tree, LEAVE)
        var chosen: Result<Unit>? = null
        app.work.ask({ now -> setBackupFolder(now, Card.tree.toString(), Card.NAME) }) { chosen = it }
        await { chosen != null }
        checkNotNull(chosen).getOrThrow()
    }

    private fun job() {
        val service = Robolectric.buildService(BackupJob::class.java).create().get()
        assertTrue(service.onStartJob(Shadow.newInstanceOf(JobParameters::class.java)))
        await { shadowOf(service).isJobFinished }
    }

    private fun await(done: () -> Boolean) {
        val end = System.nanoTime() + Duration.ofSeconds(20).toNanos()
        while (!done()) {
            check(System.nanoTime() < end) { "waited in vain" }
            Thread.sleep(2)
            shadowOf(Looper.getMainLooper()).idle()
        }
    }

    private fun pass(time: Duration) {
        val later = Clock.offset(app.clock(), time)
        app.clock = { later }
    }

    /** What a studio of its own says when it takes the file in. */
    private fun takenIn(file: File): String {
        val now = Now(app.clock().millis(), 0)
        return Studio.open(File(folder.root, "other.laydown").path, now).use { it.restore(now, file.path) }
    }

    private companion object {
        const val LEAVE = Intent.FLAG_GRANT_READ_URI_PERMISSION or Intent.FLAG_GRANT_WRITE_URI_PERMISSION
    }
}

/** From the app's first page to Backup. */
fun Phone.toBackup() {
    touch("Studio")
    touch("Backup")
    until("Make a backup")
}

/** Chooses the card that is in the phone as the folder for backups. */
fun Phone.chooseCard() {
    touch("Backup folder")
    await("the request") { request?.intent?.action == Intent.ACTION_OPEN_DOCUMENT_TREE }
    answer(Activity.RESULT_OK, Intent().setData(Card.tree))
    await("the folder") { said("Working.") == null && scrollTo(Card.NAME) }
}
