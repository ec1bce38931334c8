package studio.laydown

import android.content.Intent
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import studio.laydown.core.BUILD_STAMP
import studio.laydown.core.StudioException
import java.io.File
import java.time.Instant

/** What a person can send when the app does not start. */
@RunWith(RobolectricTestRunner::class)
class StartupReportTest {
    private val app: LaydownApplication get() = RuntimeEnvironment.getApplication() as LaydownApplication
    private val file: File get() = File(app.getExternalFilesDir(null), "start-up-report.txt")

    @Test
    fun aStartThatGoesWellSaysWhichBuildsAndWhichPhone() {
        Pottery.furnished().use { phone ->
            phone.ready()
            val lines = file.readLines()
            assertTrue(lines.toString(), "Reached: the studio is open" in lines)
            assertTrue(lines.toString(), "Build of the library: $BUILD_STAMP" in lines)
            assertTrue(lines.toString(), "Build of the screens: $BUILD_STAMP" in lines)
            assertTrue(lines.toString(), "Last error: none" in lines)
            assertTrue(lines.toString(), lines.any { Regex("Schema of the studio's file: [1-9]\\d*").matches(it) })
            assertTrue(lines.toString(), lines.any { "Android 15 (API 35)" in it })
            assertFalse(lines.toString(), lines.any { it.startsWith("The start before") })
        }
    }

    @Test
    fun aLibraryThatDoesNotLoadIsSaidAndTheReportGoesToAnotherApp() {
        app.library = { throw UnsatisfiedLinkError("dlopen failed: cannot locate symbol \"getrandom\"") }
        Pottery.empty().use { phone ->
            phone.until("Share start-up report")
            assertTrue(phone.texts().toString(), phone.texts().any { "cannot start on this phone" in it })
            assertFalse(phone.shows("Try again"))
            // A class that failed once fails again without saying why: the report keeps what was said first.
            app.library = { throw NoClassDefFoundError("Could not initialize class") }
            var asked: Result<Unit>? = null
            app.work.ask({ }) { asked = it }
            phone.await("the second try") { asked != null }
            phone.tap("Share start-up report")
            val chooser = checkNotNull(shadowOf(phone.activity).nextStartedActivity)
            val sent = checkNotNull(chooser.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java))
            val text = sent.getStringExtra(Intent.EXTRA_TEXT).orEmpty()
            assertTrue(text, "Build of the library: not loaded" in text)
            assertTrue(text, "cannot locate symbol \"getrandom\"" in text)
            assertTrue(text, "Reached: loading the library" in text)
            assertEquals(text.lines().drop(2), file.readText().lines().drop(2))
        }
    }

    @Test
    fun aLibraryOfAnotherBuildIsNamedInTheReport() {
        app.library = { "0000000000000000" }
        Pottery.empty().use { phone ->
            phone.until("Share start-up report")
            assertTrue(phone.texts().toString(), phone.texts().any { "install is incomplete" in it })
            assertTrue(file.readText(), "Build of the library: 0000000000000000" in file.readText())
            assertTrue(file.readText(), "LibraryMismatch" in file.readText())
            assertFalse(Pottery.file.exists())
        }
    }

    @Test
    fun aStartThatTheSystemEndedIsToldAtTheNextOne() {
        val report = { StartupReport(app, Pottery.file) { Instant.EPOCH } }
        report().reached(StartupStep.LIBRARY)
        assertTrue("The start before ended at: loading the library" in report().text())
    }

    @Test
    fun nothingOfTheStudioIsInIt() {
        val report = StartupReport(app, Pottery.file) { Instant.EPOCH }
        report.failed(StudioException.Refused("glaze", "Celadon of the north shelf cannot be saved."))
        report.failed(IllegalStateException("Celadon", StudioException.Unreadable("Celadon")))
        assertTrue(report.text(), "java.lang.IllegalStateException" in report.text())
        assertTrue(report.text(), "Because of: StudioException.Unreadable" in report.text())
        assertFalse(report.text(), "Celadon" in report.text() || "Celadon" in file.readText())
    }

    @Test
    fun aPhoneWithoutRoomForTheReportStillOpens() {
        file.mkdirs()
        Pottery.furnished().use { phone ->
            phone.until("Weigh")
            assertTrue(file.isDirectory)
        }
    }

    @Test
    fun whatEndsTheAppIsInTheReportAndStillEndsIt() {
        var ended: Throwable? = null
        val thread = Thread { throw NoSuchMethodError("no such method here") }
        thread.uncaughtExceptionHandler = app.reporting { _, problem -> ended = problem }
        thread.start()
        thread.join()
        assertTrue(file.readText(), "no such method here" in file.readText())
        assertTrue("$ended", ended is NoSuchMethodError)
    }
}
